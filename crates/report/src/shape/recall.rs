//! What rests on an instrument or a sheet that was recalled: the stable shape of `recall --format json`.

use schemars::JsonSchema;
use serde::Serialize;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-recall/1";

/// What a recall does to a set of files.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RecallReport {
    /// Always `downlead-recall/1`.
    pub schema: &'static str,
    /// The instrument or cable.
    pub name: String,
    /// `instrument` or `cable`.
    pub kind: &'static str,
    /// By which share it is off, percent: readings too high, or a loss larger than the sheet says.
    pub share_percent: f64,
    /// From which day on, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub since: Option<String>,
    /// Where it is defined: file and line.
    pub definitions: Vec<String>,
    /// What rests on it, in the order of the files.
    pub rows: Vec<RecallRow>,
}

/// What happens to one result.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Effect {
    /// Its verdict becomes another one.
    Flips,
    /// Its figures move, the verdict stays.
    Moves,
    /// It rests on it, and the error cancels.
    Cancels,
}

/// A result that rests on it.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RecallRow {
    /// What happens to it.
    pub effect: Effect,
    /// File.
    pub file: String,
    /// Line, from 1.
    pub line: u64,
    /// The station, session or link; empty for a chain by itself.
    pub of: String,
    /// The chain, or the piece of a session.
    pub chain: String,
    /// Band or frequency; empty for all bands.
    pub band: String,
    /// What it is: `reading`, `limit`, `rule`, `result`, `radiated`, …
    pub what: String,
    /// More about it: a date, a document, a quantity.
    pub about: String,
    /// Verdict before; absent of a figure without one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<String>,
    /// Verdict with the recall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict_recalled: Option<String>,
    /// Name of the figure that moves most plainly, as in the JSON of the report it is from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub figure: Option<String>,
    /// It before.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub value: Option<f64>,
    /// It with the recall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub value_recalled: Option<f64>,
}
