//! Figures at an offset from a carrier or a receive channel.

use downlead_base::Loc;
use downlead_quantity::Measure;
use downlead_station::model::AtOffset;

/// An offset fits a stated one within this share of it (our choice: noise at this distance from a carrier falls by less
/// than half a decibel over it).
const OFFSET_FITS: f64 = 0.05;
/// The figure that holds at an offset: the stated one, a straight line in dB over the logarithm between two, or the last
/// one that says that it holds beyond.
pub(super) fn at_offset(list: &[AtOffset], hz: f64) -> Option<(Measure, Loc)> {
    let near = |a: &&AtOffset| (hz / a.offset_hz - 1.0).abs() <= OFFSET_FITS;
    let closest = |a: &&AtOffset, b: &&AtOffset| {
        let d = |x: &AtOffset| (hz / x.offset_hz - 1.0).abs();
        d(a).total_cmp(&d(b))
    };
    if let Some(a) = list.iter().filter(near).min_by(closest) {
        return Some((a.figure.value, a.figure.loc));
    }
    let below = list.iter().filter(|a| a.offset_hz < hz);
    let below = below.max_by(|a, b| a.offset_hz.total_cmp(&b.offset_hz))?;
    if below.beyond {
        return Some((below.figure.value, below.figure.loc));
    }
    let above = list.iter().filter(|a| a.offset_hz > hz);
    let above = above.min_by(|a, b| a.offset_hz.total_cmp(&b.offset_hz))?;
    let t = libm::log(hz / below.offset_hz) / libm::log(above.offset_hz / below.offset_hz);
    let (a, b) = (&below.figure.value, &above.figure.value);
    let m = Measure {
        value: a.value + t * (b.value - a.value),
        u: a.u.max(b.u),
        ..*a
    };
    Some((m, below.figure.loc))
}

/// Whether a stated offset is used for a distance of frequencies.
pub(super) fn used_at(list: &[AtOffset], one: &AtOffset, hz: f64) -> bool {
    if (hz / one.offset_hz - 1.0).abs() <= OFFSET_FITS || one.beyond && hz > one.offset_hz {
        return true;
    }
    // at one end of a line between two
    let inside = |a: &AtOffset| {
        let (low, high) = (
            a.offset_hz.min(one.offset_hz),
            a.offset_hz.max(one.offset_hz),
        );
        (low..=high).contains(&hz)
    };
    list.iter()
        .any(|a| a.offset_hz != one.offset_hz && inside(a))
}
