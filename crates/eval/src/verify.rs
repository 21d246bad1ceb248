//! The result of each chain beside two others of the same network: that of the derivatives alone,
//! and plain Monte Carlo.
//!
//! Nothing is kept for it: the network of a chain is built again when this is asked for.

use downlead_physics::net::evaluate::{Output, Quantity};
use downlead_physics::net::verify::{Drawn, whole};
use downlead_quantity::from_db;
use downlead_station::model::{Direction, Meaning};
use schemars::JsonSchema;
use serde::Serialize;

use crate::build::Places;
use crate::chain::{Computed, Cx, compute};
use crate::explain::chains_of;
use crate::point::Point;
use crate::result::{BandResult, ChainResult};
use crate::snapshot::{Scope, Snapshot};
use crate::walk::walk;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-verify/1";

/// Seed of the draws: the same in every run.
const SEED: u64 = 0x646f_776e_6c65_6164;

/// What was verified.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Verification {
    /// Always `downlead-verify/1`.
    pub schema: &'static str,
    /// Random draws of each chain on each band.
    pub draws: usize,
    /// Chains on their bands, in the order of the files.
    pub chains: Vec<ChainVerification>,
}

/// A chain on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ChainVerification {
    /// Tag of the station; empty outside one.
    pub station: String,
    /// The chain.
    pub chain: String,
    /// `transmit` or `receive`.
    pub direction: &'static str,
    /// File of the chain.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Band name, or the frequency in words.
    pub band: String,
    /// `low`, `middle` or `high` where the band is a range.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub point: Option<&'static str>,
    /// Frequency evaluated, Hz.
    pub frequency_hz: f64,
    /// What is compared; absent where a part could not be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub compared: Option<Comparison>,
}

/// One quantity, computed in several ways.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Comparison {
    /// `eirp`, `delivered` (power into the antenna or load) or `loss` (on receive).
    pub quantity: &'static str,
    /// `W` or `dB`: the unit of mean, low and high.
    pub unit: &'static str,
    /// By derivatives alone (JCGM 100), with the check of what they do not show.
    pub derivatives: Estimate,
    /// As the report gives it.
    pub reported: Estimate,
    /// How the report found it: `derivatives`, `sample` or `both`.
    pub method: &'static str,
    /// By random draws of all figures and open phases (JCGM 101).
    pub drawn: Estimate,
    /// The least loss that passive parts of the stated figures can have, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_floor_db: Option<f64>,
    /// Smallest and largest loss at the stated figures over all open phases, dB, where they differ.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_worst_db: Option<[f64; 2]>,
}

/// Mean, uncertainty and interval.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Estimate {
    /// Mean (of a power: of its level in dB).
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
    /// Verifies every chain on every band with so many random draws.
    #[must_use]
    pub fn verify(&self, draws: usize) -> Verification {
        let places = Places::new(self);
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
                    let bands = c.bands.iter();
                    chains.extend(bands.map(|b| one(&places, scope, &cx, c, b, draws)));
                }
            }
        }
        Verification {
            schema: SCHEMA,
            draws: whole(draws),
            chains,
        }
    }
}

fn one(
    places: &Places<'_>,
    scope: &Scope,
    cx: &Cx<'_>,
    c: &ChainResult,
    b: &BandResult,
    draws: usize,
) -> ChainVerification {
    let (file, _, line) = places.at(c.loc);
    ChainVerification {
        station: cx
            .station
            .map_or(String::new(), |s| s.name.text.to_string()),
        chain: places.text(c.name).to_owned(),
        direction: c.direction.word(),
        file,
        line,
        band: b.band.to_string(),
        point: b.point,
        frequency_hz: b.hz,
        compared: b
            .total_db
            .and_then(|_| compared(&rebuilt(scope, cx, b), c.direction, b, draws)),
    }
}

/// The chain on a band, evaluated once more with all that its numbers are made of.
fn rebuilt<'m>(scope: &Scope, cx: &Cx<'m>, b: &BandResult) -> Computed<'m> {
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
) -> Option<Comparison> {
    let e = &c.evaluation;
    let (quantity, shown, q) = match (direction, b.eirp_w) {
        (Direction::Receive, _) => ("loss", Shown::Loss, Quantity::Delivered),
        (_, Some(_)) => ("eirp", Shown::Watts, Quantity::Eirp),
        (_, None) => ("delivered", Shown::Watts, Quantity::Delivered),
    };
    // an antenna whose gain is not known radiates what is not known
    if q == Quantity::Delivered && e.output(Quantity::Eirp).is_some() {
        return None;
    }
    let output = e.output(q)?;
    let all = [output.mean, output.u, output.low, output.high];
    if !all.iter().all(|x| x.is_finite()) {
        return None;
    }
    let drawn = c.net.draw(draws, SEED);
    Some(Comparison {
        quantity,
        unit: match shown {
            Shown::Watts => "W",
            Shown::Loss => "dB",
        },
        derivatives: derivatives(shown, output),
        reported: reported(shown, output, b),
        method: b.method.map_or("derivatives", |m| m.word()),
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
