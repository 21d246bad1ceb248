//! The pieces of a session as runs of one length: what `bench --length --at` adds.

use schemars::JsonSchema;
use serde::Serialize;

/// The pieces of a session, each as a run of the same length of its cable, by its own fit.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RunsReport {
    /// Length of the run, m.
    pub length_m: f64,
    /// Its expanded uncertainty (k = 2), m.
    pub length_uncertainty_m: f64,
    /// Power at its near end, W.
    pub power_w: f64,
    /// Temperature of the run, °C: that of the bench, else 20.
    pub temperature_c: f64,
    /// One a frequency.
    pub frequencies: Vec<RunsAtReport>,
}

/// One frequency.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RunsAtReport {
    /// Hz.
    pub frequency_hz: f64,
    /// By loss, least first.
    pub ranking: Vec<RunReport>,
    /// Pieces without an answer.
    pub refused: Vec<NoRunReport>,
}

/// A run of the cable of one piece. Joins are not in it.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RunReport {
    /// Rank; pieces that cannot be distinguished from their neighbour share one.
    pub rank: usize,
    /// Number of pieces that share it.
    pub sharing: usize,
    /// The piece.
    pub piece: String,
    /// Loss, dB.
    pub loss_db: f64,
    /// Its expanded uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// Power at the far end, W.
    pub power_w: f64,
    /// Its expanded uncertainty (k = 2), W.
    pub power_uncertainty_w: f64,
    /// Loss beyond that of the best piece, dB; absent of the best.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub more_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of that difference, dB: what both share counts once.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub more_uncertainty_db: Option<f64>,
    /// Power that the best piece delivers beyond this one, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub less_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of that difference, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub less_uncertainty_w: Option<f64>,
    /// Whether the frequency lies between the lowest and the highest of the readings; else the
    /// fitted law is carried on, by a factor of two at most.
    pub inside: bool,
}

/// A piece without an answer.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NoRunReport {
    /// The piece.
    pub piece: String,
    /// Why, in words.
    pub why: String,
}
