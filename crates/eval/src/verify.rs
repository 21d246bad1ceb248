//! The result of each chain beside two others of the same network: that of the derivatives alone,
//! and plain Monte Carlo.
//!
//! Nothing is kept for it: the network of a chain is built again when this is asked for.

use downlead_physics::net::evaluate::{Output, Quantity as Of};
use downlead_physics::net::verify::{Drawn, whole};
use downlead_quantity::from_db;
use downlead_station::model::{Direction, Meaning, Station};

use crate::chain::{Computed, Cx, compute};
use crate::explain::chains_of;
use crate::point::Point;
use crate::result::{BandResult, ChainResult, Method};
use crate::snapshot::{Scope, Snapshot};
use crate::walk::walk;

/// Seed of the draws: the same in every run.
const SEED: u64 = 0x646f_776e_6c65_6164;

/// A chain on a band, computed in several ways.
#[derive(Clone, Debug)]
pub struct Verified<'s> {
    /// The station, if it stands in one.
    pub station: Option<&'s Station>,
    /// The chain.
    pub chain: &'s ChainResult,
    /// Its result on the band.
    pub band: &'s BandResult,
    /// What is compared; none where a part could not be computed.
    pub compared: Option<Compared>,
}

/// The quantity that is compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// Radiated power over isotropic, W.
    Eirp,
    /// Power into the antenna or load, W.
    Delivered,
    /// Loss of a receive chain, dB.
    Loss,
}

/// One quantity, computed in several ways.
#[derive(Clone, Debug)]
pub struct Compared {
    /// What is compared.
    pub quantity: Quantity,
    /// By derivatives alone (JCGM 100), with the check of what they do not show.
    pub derivatives: Estimate,
    /// As the report gives it.
    pub reported: Estimate,
    /// How the report found it.
    pub method: Method,
    /// By random draws of all figures and open phases (JCGM 101).
    pub drawn: Estimate,
    /// The least loss that passive parts of the stated figures can have, dB.
    pub loss_floor_db: Option<f64>,
    /// Smallest and largest loss at the stated figures over all open phases, dB, where they differ.
    pub loss_worst_db: Option<[f64; 2]>,
}

/// Mean, uncertainty and interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// Mean (of a power: of its level in dB), W or dB.
    pub mean: f64,
    /// Expanded uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// Lower end of the interval of 95 % (2.275 %).
    pub low: f64,
    /// Upper end (97.725 %).
    pub high: f64,
}

/// How a level in dB over 1 W is shown.
#[derive(Clone, Copy)]
enum Shown {
    Watts,
    /// As the loss of 1 W.
    Loss,
}

impl Shown {
    fn estimate(self, mean: f64, u: f64, [low, high]: [f64; 2]) -> Estimate {
        let (mean, low, high) = match self {
            Shown::Watts => (from_db(mean), from_db(low), from_db(high)),
            Shown::Loss => (-mean, -high, -low),
        };
        Estimate {
            mean,
            uncertainty_db: 2.0 * u,
            low,
            high,
        }
    }
}

impl Snapshot {
    /// Every chain on every band with so many random draws, in the order of the files.
    #[must_use]
    pub fn verify(&self, draws: usize) -> Vec<Verified<'_>> {
        let mut chains = Vec::new();
        for scope in &self.scopes {
            for (_, low, result) in &scope.items {
                for (c, model) in result.chains.iter().zip(chains_of(&low.meaning)) {
                    let station = match &low.meaning {
                        Meaning::Station(st) => Some(&**st),
                        _ => None,
                    };
                    let cx = Cx {
                        station,
                        chain: model,
                        env: &scope.env,
                        direction: c.direction,
                    };
                    chains.extend(c.bands.iter().map(|band| Verified {
                        station,
                        chain: c,
                        band,
                        compared: band.total_db.and_then(|_| {
                            compared(&rebuilt(scope, &cx, band), c.direction, band, draws)
                        }),
                    }));
                }
            }
        }
        chains
    }
}

/// The number of draws that are made when so many are asked for: whole blocks.
#[must_use]
pub fn draws_made(draws: usize) -> usize {
    whole(draws)
}

/// The chain on a band, evaluated once more with all that its numbers are made of.
pub(crate) fn rebuilt<'m>(scope: &Scope, cx: &Cx<'m>, b: &BandResult) -> Computed<'m> {
    // what is wrong with the chain was reported when it was evaluated
    let mut reported = Vec::new();
    let stops = walk(&cx.chain.steps, cx.station, &mut reported);
    let point = Point {
        band: b.band.clone(),
        part: b.point,
        hz: b.hz,
        named: scope.env.band(&b.band).is_some(),
    };
    compute(cx, &stops, &point, &mut reported)
}

fn compared(
    c: &Computed<'_>,
    direction: Direction,
    b: &BandResult,
    draws: usize,
) -> Option<Compared> {
    let e = &c.evaluation;
    let (quantity, shown, q) = match (direction, b.eirp_w) {
        (Direction::Receive, _) => (Quantity::Loss, Shown::Loss, Of::Delivered),
        (_, Some(_)) => (Quantity::Eirp, Shown::Watts, Of::Eirp),
        (_, None) => (Quantity::Delivered, Shown::Watts, Of::Delivered),
    };
    // an antenna whose gain is not known radiates what is not known
    if q == Of::Delivered && e.output(Of::Eirp).is_some() {
        return None;
    }
    let output = e.output(q)?;
    let all = [output.mean, output.u, output.low, output.high];
    if !all.iter().all(|x| x.is_finite()) {
        return None;
    }
    let drawn = c.net.draw(draws, SEED);
    Some(Compared {
        quantity,
        derivatives: derivatives(shown, output),
        reported: reported(shown, output, b),
        method: b.method.unwrap_or(Method::Derivatives),
        drawn: by_draws(shown, &drawn),
        loss_floor_db: b.floor_db.filter(|x| x.is_finite()),
        loss_worst_db: b.worst_db.filter(|w| w.iter().all(|x| x.is_finite())),
    })
}

fn derivatives(shown: Shown, o: &Output) -> Estimate {
    let (mean, u) = o.by_derivatives();
    shown.estimate(mean, u, [mean - 2.0 * u, mean + 2.0 * u])
}

fn reported(shown: Shown, o: &Output, b: &BandResult) -> Estimate {
    // the interval as shown, which ends where passive parts do
    let interval = b.interval_db.unwrap_or([0.0, 0.0]);
    shown.estimate(o.mean, o.u, interval.map(|db| o.mean + db))
}

fn by_draws(shown: Shown, d: &Drawn) -> Estimate {
    shown.estimate(d.mean, d.u, [d.low, d.high])
}
