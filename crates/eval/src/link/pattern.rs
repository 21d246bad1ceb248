//! What the patterns of the two antennas take from a hop: at the angle toward the other end, or toward the edge
//! between where the ends are not in sight.

use downlead_physics::path::EARTH_M;
use downlead_physics::pattern::{between_db, elevation_deg};
use downlead_station::model::Antenna;

use super::HopResult;

/// What a pattern takes at an angle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taken {
    /// Angle above the horizon, degrees.
    pub angle_deg: f64,
    /// By how much the gain is below its peak, dB.
    pub down_db: f64,
    /// Standard uncertainty of that, dB: the two rows about the angle are its bounds.
    pub u_db: f64,
}

/// Of the sending and of the receiving antenna; none where no pattern is stated on the band, or no angle is known.
pub(super) fn of_hop(
    h: &HopResult,
    k: f64,
    (sent, heard): (Option<&Antenna>, Option<&Antenna>),
    (band_sent, band_heard): (&str, &str),
) -> (Option<Taken>, Option<Taken>) {
    let (Some((a, b)), Some((along, _))) = (h.ends.amsl_m, h.distance) else {
        return (None, None);
    };
    let radius = k * EARTH_M;
    // where the ends are not in sight, each sends toward the edge
    let edge = h.terrain.as_ref().filter(|t| !t.in_sight).map(|t| {
        let line = (a * (along - t.edge.at_m) + b * t.edge.at_m) / along;
        (t.edge.at_m, line + t.edge.above_m)
    });
    let from = |own: f64, other: f64, at: Option<(f64, f64)>| {
        let toward = at.unwrap_or((along, other));
        elevation_deg(own, toward, along, radius)
    };
    let angles = (
        from(a, b, edge),
        from(b, a, edge.map(|(at, h)| (along - at, h))),
    );
    let taken = |antenna: Option<&Antenna>, band: &str, angle_deg: f64| {
        let rows = &antenna?.pattern_on(band)?.rows;
        let (down_db, half) = between_db(rows, angle_deg)?;
        Some(Taken {
            angle_deg,
            down_db,
            u_db: half / libm::sqrt(3.0),
        })
    };
    (
        taken(sent, band_sent, angles.0),
        taken(heard, band_heard, angles.1),
    )
}
