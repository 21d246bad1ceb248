//! How far a spot is from an antenna.

use downlead_station::model::{Spot, SpotAt};

use super::Refused;
use super::sources::Mast;

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
