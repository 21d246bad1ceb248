//! The shape of a verification.

use downlead_eval::verify::{self, Compared, Quantity};
use downlead_eval::{Places, Snapshot};

use crate::shape::verify::{ChainVerification, Comparison, Estimate, SCHEMA, Verification};
use crate::shape::word::{Point, Unit, Verified, Word};

/// Verifies every chain on every band with so many random draws.
#[must_use]
pub fn verification(s: &Snapshot, draws: usize) -> Verification {
    let places = Places::new(s);
    let all = s.verify(draws);
    Verification {
        schema: SCHEMA,
        draws: verify::draws_made(draws),
        chains: all.iter().map(|v| chain(&places, v)).collect(),
    }
}

fn chain(places: &Places<'_>, v: &verify::Verified<'_>) -> ChainVerification {
    let (file, _, line) = places.at(v.chain.loc);
    ChainVerification {
        station: v.station.map_or(String::new(), |s| s.name.text.to_string()),
        chain: places.text(v.chain.name).to_owned(),
        direction: Word(v.chain.direction),
        file,
        line,
        band: v.band.band.to_string(),
        point: v.band.point.and_then(Point::of),
        frequency_hz: v.band.hz,
        compared: v.compared.as_ref().map(comparison),
    }
}

fn comparison(c: &Compared) -> Comparison {
    let (quantity, unit) = match c.quantity {
        Quantity::Eirp => (Verified::Eirp, Unit::Watt),
        Quantity::Delivered => (Verified::Delivered, Unit::Watt),
        Quantity::Loss => (Verified::Loss, Unit::Decibel),
    };
    Comparison {
        quantity,
        unit,
        derivatives: estimate(c.derivatives),
        reported: estimate(c.reported),
        method: Word(c.method),
        drawn: estimate(c.drawn),
        loss_floor_db: c.loss_floor_db,
        loss_worst_db: c.loss_worst_db,
    }
}

fn estimate(e: verify::Estimate) -> Estimate {
    Estimate {
        mean: e.mean,
        uncertainty_db: e.uncertainty_db,
        low: e.low,
        high: e.high,
    }
}
