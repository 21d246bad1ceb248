//! Which reading does not fit the others of one transmitter: all of them, with the loss of what was
//! in line taken off, tell its power at their time.

use super::stats::chi_square_survival;

/// What one reading says of the transmitter's power.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seen {
    /// When, minutes.
    pub minutes: f64,
    /// Natural logarithm of the power in W, with the loss of what was in line taken off.
    pub ln_w: f64,
    /// Standard uncertainty of that.
    pub u: f64,
}

/// What explains readings that do not lie on one line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Odd {
    /// One of them is off (its index).
    Reading(usize),
    /// The power jumped after this many of them, in order of time, by so much (natural logarithm).
    Jump(usize, f64),
    /// The transmitter drifted more than on other bands.
    Drift,
}

/// The explanation of readings that do not fit each other.
#[derive(Debug, Clone, PartialEq)]
pub struct Explained {
    /// χ² of all readings about one line, and its probability.
    pub chi2: f64,
    /// Probability of a larger one.
    pub p: f64,
    /// χ² that is left with each explanation, least first: those that explain it about as well
    /// as the first (less than [`APART`] more). The first is the best.
    pub candidates: Vec<(Odd, f64)>,
}

/// Explanations whose χ² differ by less than this are equally good: 5 % of χ² with one degree
/// of freedom are above 3.84.
pub const APART: f64 = 3.84;

/// A straight line through readings, with what is known of the drift beforehand.
struct Line {
    level: f64,
    slope: f64,
    /// Covariance of the two: of the level, of both, of the slope.
    cov: (f64, f64, f64),
}

/// The readings (in order of time) about a line whose change from first to last is known to be zero
/// ± `drift` (standard, natural logarithm), and what explains them if they do not lie on it with a
/// probability of less than `unlikely`. None where they fit, are too few, or nothing single explains
/// them.
#[must_use]
pub fn odd_one_out(seen: &[Seen], drift: f64, unlikely: f64) -> Option<Explained> {
    let (first, last) = (seen.first()?, seen.last()?);
    let span = last.minutes - first.minutes;
    if seen.len() < 3 || span <= 0.0 || drift <= 0.0 || !seen.iter().all(|s| s.u > 0.0) {
        return None;
    }
    let x = |s: &Seen| (s.minutes - first.minutes) / span;
    let line = line(seen, x, drift);
    let left = |s: &Seen| s.ln_w - line.level - line.slope * x(s);
    let of_drift = line.slope * line.slope / (drift * drift);
    let chi2 = of_drift + seen.iter().map(|s| square(left(s) / s.u)).sum::<f64>();
    let p = chi_square_survival(chi2, seen.len() as f64 - 1.0);
    if p >= unlikely || !chi2.is_finite() {
        return None;
    }
    let mut all: Vec<(Odd, f64)> = Vec::new();
    for (i, s) in seen.iter().enumerate() {
        let (a, b, c) = line.cov;
        let lever = (a + 2.0 * b * x(s) + c * x(s) * x(s)) / (s.u * s.u);
        if lever < 1.0 - 1e-9 {
            let gain = square(left(s) / s.u) / (1.0 - lever);
            all.push((Odd::Reading(i), chi2 - gain));
        }
    }
    let lever = line.cov.2 / (drift * drift);
    if lever < 1.0 - 1e-9 {
        all.push((Odd::Drift, chi2 - of_drift / (1.0 - lever)));
    }
    all.extend(jump(seen));
    all.sort_by(|a, b| a.1.total_cmp(&b.1));
    let best = all.first()?.1;
    // one more is explained than before
    if chi_square_survival(best.max(0.0), (seen.len() as f64 - 2.0).max(1.0)) < 0.01 {
        return None;
    }
    all.retain(|c| c.1 < best + APART);
    Some(Explained {
        chi2,
        p,
        candidates: all,
    })
}

/// What the others say a reading should have been: natural logarithm of the transmitter's power at
/// its time, and the standard uncertainty of that.
#[must_use]
pub fn without(seen: &[Seen], index: usize, drift: f64) -> Option<(f64, f64)> {
    let (first, last) = (seen.first()?, seen.last()?);
    let span = last.minutes - first.minutes;
    let x = |s: &Seen| (s.minutes - first.minutes) / span;
    let others: Vec<Seen> = seen
        .iter()
        .enumerate()
        .filter(|(i, _)| *i != index)
        .map(|(_, s)| *s)
        .collect();
    if others.is_empty() || span <= 0.0 {
        return None;
    }
    let l = line(&others, x, drift);
    let at = x(seen.get(index)?);
    let (a, b, c) = l.cov;
    let u = libm::sqrt((a + 2.0 * b * at + c * at * at).max(0.0));
    Some((l.level + l.slope * at, u))
}

fn line(seen: &[Seen], x: impl Fn(&Seen) -> f64, drift: f64) -> Line {
    let (mut s0, mut s1, mut s2) = (0.0, 0.0, 1.0 / (drift * drift));
    let (mut y0, mut y1) = (0.0, 0.0);
    // about the first, so that few digits are lost
    let base = seen.first().map_or(0.0, |s| s.ln_w);
    for s in seen {
        let w = 1.0 / (s.u * s.u);
        let (at, y) = (x(s), s.ln_w - base);
        s0 += w;
        s1 += w * at;
        s2 += w * at * at;
        y0 += w * y;
        y1 += w * at * y;
    }
    let det = s0 * s2 - s1 * s1;
    Line {
        level: base + (s2 * y0 - s1 * y1) / det,
        slope: (s0 * y1 - s1 * y0) / det,
        cov: (s2 / det, -s1 / det, s0 / det),
    }
}

/// The jump that leaves the least χ², with two readings at least on either side.
fn jump(seen: &[Seen]) -> Option<(Odd, f64)> {
    let base = seen.first()?.ln_w;
    let sums: Vec<(f64, f64, f64)> = seen
        .iter()
        .scan((0.0, 0.0, 0.0), |sum, s| {
            let (w, y) = (1.0 / (s.u * s.u), s.ln_w - base);
            *sum = (sum.0 + w, sum.1 + w * y, sum.2 + w * y * y);
            Some(*sum)
        })
        .collect();
    let all = *sums.last()?;
    let left = |s: (f64, f64, f64)| (s.2 - s.1 * s.1 / s.0).max(0.0);
    (2..seen.len().saturating_sub(1))
        .map(|n| {
            let (before, after) = (
                sums[n - 1],
                (
                    all.0 - sums[n - 1].0,
                    all.1 - sums[n - 1].1,
                    all.2 - sums[n - 1].2,
                ),
            );
            let by = after.1 / after.0 - before.1 / before.0;
            (Odd::Jump(n, by), left(before) + left(after))
        })
        .min_by(|a, b| a.1.total_cmp(&b.1))
}

fn square(x: f64) -> f64 {
    x * x
}

/// How a figure may have been written wrongly.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Slip {
    /// Two digits next to each other are swapped.
    Swapped,
    /// The decimal point is lost or in the wrong place.
    Point,
}

/// The figure that was meant, if one slip makes `written` a figure near `fits` (whose relative
/// standard uncertainty is `u`): within three of those, or 2 %.
#[must_use]
pub fn slip(written: f64, fits: f64, u: f64) -> Option<(Slip, f64)> {
    let near = |v: f64| v > 0.0 && (libm::log(v / fits)).abs() <= (3.0 * u).max(0.02);
    let points = [0.1, 10.0, 0.01, 100.0].map(|f| (Slip::Point, written * f));
    let text = format!("{written}");
    let swaps = swapped(&text);
    points
        .into_iter()
        .chain(swaps.into_iter().map(|v| (Slip::Swapped, v)))
        .filter(|(_, v)| near(*v))
        .min_by(|a, b| {
            let off = |v: f64| (libm::log(v / fits)).abs();
            off(a.1).total_cmp(&off(b.1))
        })
}

/// The figures of which two digits next to each other are exchanged.
fn swapped(text: &str) -> Vec<f64> {
    let digits: Vec<usize> = (0..text.len())
        .filter(|i| text.as_bytes()[*i].is_ascii_digit())
        .collect();
    digits
        .windows(2)
        .filter_map(|w| {
            let mut bytes = text.as_bytes().to_vec();
            bytes.swap(w[0], w[1]);
            let v: f64 = String::from_utf8(bytes).ok()?.parse().ok()?;
            (v.to_string() != text).then_some(v)
        })
        .collect()
}
