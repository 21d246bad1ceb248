//! The sheet of a station: the stable shape of `report --sheet`.

use downlead_eval::licence::RuleVerdict;
use downlead_station::model::Direction;
use schemars::JsonSchema;
use serde::Serialize;

use super::OriginReport;
use crate::shape::card::TestPoint;
use crate::shape::exposure::KeepClearReport;
use crate::shape::rules::{DutyReport, FixedReport, SaidReport};
use crate::shape::word::{Point, Word};

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-sheet/1";

/// Sheets of all stations.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SheetFile {
    /// Always `downlead-sheet/1`.
    pub schema: &'static str,
    /// What the verdicts are worth.
    pub caution: &'static str,
    /// What to do before work.
    pub safety: Vec<&'static str>,
    /// One a station.
    pub sheets: Vec<SiteSheet>,
}

/// What is to be known of a station at the site.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SiteSheet {
    /// Tag; empty for chains outside a station.
    pub station: String,
    /// Title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// File of the station.
    pub file: String,
    /// Its line, from 1.
    pub line: u32,
    /// Where the sheet comes from.
    pub origin: OriginReport,
    /// Degrees north.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub latitude_deg: Option<f64>,
    /// Degrees east.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub longitude_deg: Option<f64>,
    /// Datum as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub datum: Option<String>,
    /// Ground above mean sea level, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ground_m: Option<f64>,
    /// Its antennas.
    pub antennas: Vec<AntennaReport>,
    /// Licences and rules it is under.
    pub papers: Vec<PaperReport>,
    /// Chains on each band.
    pub chains: Vec<SheetChain>,
    /// Limits and clauses compared, and those that could not be.
    pub limits: Vec<SheetLimit>,
    /// What the papers fix.
    pub fixed: Vec<FixedReport>,
    /// Thresholds that are reached, or may be.
    pub duties: Vec<DutyReport>,
    /// Questions without an answer.
    pub questions: Vec<SaidReport>,
    /// Conditions, which are not judged.
    pub conditions: Vec<SaidReport>,
    /// Distances to keep.
    pub keep_clear: Vec<KeepClearReport>,
    /// Stations on the same site.
    pub neighbours: Vec<String>,
    /// That there are none: who has looked, and when.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub alone: Option<String>,
    /// What to read where, after each device and before the antennas.
    pub points: Vec<SheetPoint>,
    /// What a sheet should say and the text does not.
    pub missing: Vec<String>,
    /// What was assumed.
    pub assumptions: Vec<String>,
    /// Errors of the file.
    pub errors: usize,
    /// Warnings of the file.
    pub warnings: usize,
}

/// An antenna.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct AntennaReport {
    /// Tag, or the kind where it has none.
    pub antenna: String,
    /// Height of its highest point above ground, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub height_m: Option<f64>,
    /// Height above average terrain, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub haat_m: Option<f64>,
    /// Length, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub size_m: Option<f64>,
}

/// A licence or rules.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PaperReport {
    /// Name.
    pub name: String,
    /// Whether it is a paper of one's own.
    pub licence: bool,
    /// Title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Who issued it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub authority: Option<String>,
    /// Who holds it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub holder: Option<String>,
    /// Edition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub edition: Option<String>,
    /// Date.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dated: Option<String>,
    /// Last day.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub until: Option<String>,
}

/// A chain on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SheetChain {
    /// Chain.
    pub chain: String,
    /// `transmit` or `receive`.
    pub direction: Word<Direction>,
    /// Band.
    pub band: String,
    /// Point of a band that is a range.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub point: Option<Point>,
    /// Hz.
    pub frequency_hz: f64,
    /// Power at the transmitter, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub transmitter_w: Option<f64>,
    /// Total loss, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_db: Option<f64>,
    /// Power into the antenna, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub antenna_w: Option<f64>,
    /// ERP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_w: Option<f64>,
    /// EIRP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eirp_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of ERP and EIRP, or of the loss on receive, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Receive: signal needed at the antenna, dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sensitivity_dbm: Option<f64>,
    /// Whether every part could be computed.
    pub complete: bool,
    /// File.
    pub file: String,
    /// Line, from 1.
    pub line: u32,
}

/// A limit of a chain, or a clause of a licence or rules.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SheetLimit {
    /// Chain.
    pub chain: String,
    /// Band.
    pub band: String,
    /// Hz.
    pub frequency_hz: f64,
    /// Document and clause.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cite: Option<String>,
    /// `erp`, `eirp`, `output` or `dc-input`, with the kind of power where the clause says it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quantity: Option<String>,
    /// W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit_w: Option<f64>,
    /// Value compared, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub value_w: Option<f64>,
    /// Limit over value, dB; negative when over.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of the value, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// As in `downlead-report/1`, `rules`.
    pub verdict: Word<RuleVerdict>,
    /// What is missing for a verdict.
    pub missing: Vec<String>,
}

/// A test point of a chain.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SheetPoint {
    /// Chain.
    pub chain: String,
    /// Band.
    pub band: String,
    /// Instrument whose own error is in the spans.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// What may be read.
    pub at: TestPoint,
}
