//! Noise of a receiver, alone and on its site.

use downlead_physics::noise::{T0_K, thermal_noise};
use downlead_physics::path::{Surroundings, external_noise};
use downlead_physics::site::noise_floor;
use downlead_quantity::{from_db, to_db};
use downlead_station::model::{Around, LinkNoise, Receiver, Station};

use super::{DesenseAssumed, Floor, SiteFloor};
use crate::cause::{Budget, Cause};
use crate::result::BandResult;

/// Noise of a receiver in 1 Hz, alone and with that of its site.
pub(super) fn floor<'m>(
    st: &Station,
    receiver: &Receiver,
    result: Option<&BandResult>,
) -> (Option<Floor>, [Budget<'m>; 2], Vec<DesenseAssumed>) {
    let none = || [Budget::default(), Budget::default()];
    let mut budget = Budget::default();
    let mut assumed = Vec::new();
    let Some(own) = receiver.noise_figure else {
        return (None, none(), assumed);
    };
    let chain = result.and_then(|b| Some((b, b.noise_figure_db?, b.total_db?)));
    let amplified = result.is_some_and(|b| b.nodes.iter().any(|n| n.matched_db < 0.0));
    let kt0 = thermal_noise(1.0, T0_K);
    let alone = match (amplified, chain) {
        (false, _) => noise_floor(own.value),
        // what amplifiers before the receiver add is in the system's figure at the antenna
        (true, Some((_, system, lost))) => kt0 + system - lost,
        (true, None) => return (None, none(), assumed),
    };
    let u = match (amplified, chain) {
        (true, Some((b, ..))) => b.noise_figure_u_db.unwrap_or(0.0) / 2.0,
        _ => own.u,
    };
    if let Some(b) = result.and_then(|b| b.nodes.last()) {
        budget.add(Cause::Noise(b.def), u);
    }
    let mut on_site = budget.clone();
    let around = match &st.site.noise {
        None => {
            assumed.push(DesenseAssumed::NoSiteNoise);
            None
        }
        Some((LinkNoise::Read(m), loc)) => {
            on_site.add(Cause::Device(*loc), m.u);
            Some(SiteFloor {
                around: None,
                external_db: None,
                dbm_hz: alone + m.value,
            })
        }
        Some((LinkNoise::Around(a), _)) => {
            let median = result.and_then(|b| external_noise(surroundings(*a), b.hz).ok());
            match (median, chain) {
                (Some(e), Some((_, system, lost))) => Some(SiteFloor {
                    around: Some(*a),
                    external_db: Some(e.median_db),
                    dbm_hz: kt0 + to_db(from_db(e.median_db) - 1.0 + from_db(system)) - lost,
                }),
                _ => {
                    assumed.push(DesenseAssumed::NoiseRange);
                    None
                }
            }
        }
    };
    // noise from outside never makes a receiver quieter than it is alone
    let site = around.map(|s| SiteFloor {
        dbm_hz: s.dbm_hz.max(alone),
        ..s
    });
    let floor = Floor {
        alone_dbm_hz: alone,
        site,
    };
    (Some(floor), [budget, on_site], assumed)
}

/// The surroundings of the recommendation.
fn surroundings(a: Around) -> Surroundings {
    match a {
        Around::City => Surroundings::City,
        Around::Residential => Surroundings::Residential,
        Around::Rural => Surroundings::Rural,
        Around::QuietRural => Surroundings::QuietRural,
    }
}
