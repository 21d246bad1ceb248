//! The result of each chain beside two others of the same network, as `report --verify` prints it.

use downlead_eval::result::Method;
use downlead_station::model::Direction;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::{Point, Unit, Verified, Word};

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-verify/1";

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
    pub direction: Word<Direction>,
    /// File of the chain.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Band name, or the frequency in words.
    pub band: String,
    /// `low`, `middle` or `high` where the band is a range; inside it `edge` where a clause has one, `gap` between clauses.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub point: Option<Point>,
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
    pub quantity: Verified,
    /// `W` or `dB`: the unit of mean, low and high.
    pub unit: Unit,
    /// By derivatives alone (JCGM 100), with the check of what they do not show.
    pub derivatives: Estimate,
    /// As the report gives it.
    pub reported: Estimate,
    /// How the report found it: `derivatives`, `sample` or `both`.
    pub method: Word<Method>,
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
