//! How far a spot is from an antenna.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::number;
use downlead_station::model::{Name, Spot, SpotAt};

use super::Refused;
use super::sources::{Mast, Radiator};

/// Distance from a spot to the nearest part of an antenna, m.
///
/// # Errors
/// What is missing for it.
pub(super) fn distance(spot: &Spot, antenna: &Mast, station: Option<&str>) -> Result<f64, Refused> {
    match &spot.at {
        SpotAt::Beside(out, agl) => {
            let (low, high) = antenna.height_m.ok_or(Refused::NoHeight)?;
            // without its length the nearest part is not known
            let size = antenna.size_m.ok_or(Refused::NoSize)?;
            // anywhere within its uncertainty: the nearest counts
            let gap = (low - size - agl).max(agl - high).max(0.0);
            Ok(libm::hypot(*out, gap))
        }
        SpotAt::From(all) => all
            .iter()
            .find(|(_, a, s)| *a.text == *antenna.tag && s.as_ref().map(|s| &*s.text) == station)
            .map(|x| x.0)
            .ok_or(Refused::NoDistance),
    }
}

/// Nearest distance at which the size of an antenna need not be known, m (our choice).
pub(super) const WITHOUT_SIZE_M: f64 = 10.0;

/// Two distances of a spot that together are less than the gap between their antennas; which is reported.
pub(super) fn impossible(spot: &Spot, all: &[Radiator<'_>], out: &mut Vec<Diagnostic>) -> bool {
    let SpotAt::From(named) = &spot.at else {
        return false;
    };
    // lowest and highest point above ground, m, each within its uncertainty
    let reach = |antenna: &Name, station: Option<&Name>| {
        let station = station.map(|s| &*s.text);
        let own = all.iter().filter(|r| r.station == station);
        let mast = own.flat_map(|r| &r.antennas);
        let found = mast.into_iter().find(|a| *a.tag == *antenna.text)?;
        let (low, high) = found.height_m?;
        Some((low - found.size_m?, high))
    };
    for (i, (d1, a, s1)) in named.iter().enumerate() {
        for (d2, b, s2) in &named[i + 1..] {
            let both = reach(a, s1.as_ref()).zip(reach(b, s2.as_ref()));
            let Some((x, y)) = both else { continue };
            let gap = (x.0 - y.1).max(y.0 - x.1);
            if d1 + d2 >= gap * (1.0 - 1e-9) {
                continue;
            }
            let of = |n: &Name, s: &Option<Name>| match s {
                Some(s) => format!("{} of {}", n.text, s.text),
                None => n.text.to_string(),
            };
            let m = |x: f64| format!("{} m", number(x, 2));
            out.push(
                Diagnostic::new(
                    &codes::SPOT_IMPOSSIBLE,
                    spot.name.loc,
                    format!(
                        "`{}` is {} from {} and {} from {}, but these are {} apart.",
                        spot.name.text,
                        m(*d1),
                        of(a, s1),
                        m(*d2),
                        of(b, s2),
                        m(gap)
                    ),
                )
                .at("no place has both distances")
                .also(a.loc, "one of them")
                .also(b.loc, "the other")
                .help("Measure to the nearest part of each antenna, or place the spot with `out` and `agl`. Nothing is judged there until then."),
            );
            return true;
        }
    }
    false
}
