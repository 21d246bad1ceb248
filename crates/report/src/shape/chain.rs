//! The report as a value: the stable shape that `report --format json` prints.
//!
//! Numbers are in SI units or dB, the unit stands in the name. More fields may be added;
//! none is renamed or removed within one `schema`.

use downlead_base::Severity;
use downlead_eval::result::{Method, NodeKind};
use downlead_station::model::{Basis, Direction, LimitQuantity};
use schemars::JsonSchema;
use serde::Serialize;

use super::link::LinkReport;
use super::rules::{RuleReport, StationRulesReport};
use super::site::SiteReport;
use super::word::{Cause, LimitVerdict, Point, PowerMode, ReadingVerdict, Slope, Wave, Word};

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-report/1";

/// Everything computed from a set of files.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Report {
    /// Always `downlead-report/1`.
    pub schema: &'static str,
    /// Stations in the order of the files; chains outside a station belong to one named "".
    pub stations: Vec<StationReport>,
    /// Links between stations, in the order of the files.
    pub links: Vec<LinkReport>,
    /// All findings, in order of place.
    pub diagnostics: Vec<DiagnosticReport>,
}

/// One station.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StationReport {
    /// Its tag.
    pub name: String,
    /// Its title, if it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Its chains in the order of the text.
    pub chains: Vec<ChainReport>,
    /// What its licences and rules say of it as a whole; absent where it is under none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rules: Option<StationRulesReport>,
    /// Exposure of people; absent where it has neither spots nor rules with limits of exposure.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub exposure: Option<super::exposure::ExposureReport>,
    /// What the carriers of its site do to its receive channels; absent where it has none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub site: Option<SiteReport>,
}

/// One chain on all its bands.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ChainReport {
    /// Its name.
    pub name: String,
    /// `transmit` or `receive`.
    pub direction: Word<Direction>,
    /// File it stands in.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Results per band, or per frequency where the band is a range.
    pub bands: Vec<BandReport>,
}

/// A chain at one frequency.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct BandReport {
    /// Band name, or the frequency in words.
    pub band: String,
    /// `low`, `middle` or `high` where the band is a range; inside it `edge` where a clause has one, `gap` between clauses.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub point: Option<Point>,
    /// Frequency evaluated, Hz.
    pub frequency_hz: f64,
    /// Whether every part could be computed. If false, what could not be known is absent: the totals and SWR where a
    /// loss or a reflection is missing, the powers where the transmitter's is, ERP and EIRP where a gain is.
    pub complete: bool,
    /// `fixed-forward` (no tuner) or `tuner`.
    pub power_mode: PowerMode,
    /// Parts, joins and branches in order.
    pub nodes: Vec<NodeReport>,
    /// Loss from the transmitter's stated power to the antenna (or antenna to receiver), dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub total_loss_db: Option<f64>,
    /// Net power into the antenna or load, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub antenna_w: Option<f64>,
    /// Effective radiated power over a half-wave dipole, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_w: Option<f64>,
    /// Effective radiated power over isotropic, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eirp_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of ERP and EIRP (of the antenna power where there is no gain; of the loss on receive), dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Interval of 95 % (quantiles 2.275 % and 97.725 %) of that quantity about its value, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub interval_db: Option<[f64; 2]>,
    /// How uncertainty and interval were found: `derivatives` (JCGM 100), `sample` (JCGM 101) or `both`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub method: Option<Word<Method>>,
    /// The least loss that passive parts of the stated figures can have, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_floor_db: Option<f64>,
    /// Smallest and largest total loss over all phases of reflections that the text leaves open, dB, where they differ.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_worst_db: Option<[f64; 2]>,
    /// Extra loss in wet weather, stated as `wet`, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wet_extra_db: Option<f64>,
    /// The powers with that loss.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wet: Option<WetReport>,
    /// SWR the transmitter sees (nominal; rms over unknown phases). Absent on receive.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub transmitter_swr: Option<f64>,
    /// Largest SWR the transmitter may see over unknown phases.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub transmitter_swr_worst: Option<f64>,
    /// Receive: signal at the antenna that just meets the receiver's sensitivity, dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sensitivity_dbm: Option<f64>,
    /// Receive: noise figure of the system at the antenna, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub noise_figure_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of that sensitivity, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sensitivity_uncertainty_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of that noise figure, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub noise_figure_uncertainty_db: Option<f64>,
    /// Mean power at the antenna after mode duty and key-down share, W, where both are known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub antenna_mean_w: Option<f64>,
    /// Mean ERP over time, after duty and key-down share, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_mean_w: Option<f64>,
    /// Mean EIRP over time, after duty and key-down share, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eirp_mean_w: Option<f64>,
    /// What of the transmitter's power comes out at a coupler's side arm or at a leg that rejects it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub taps: Vec<TapReport>,
    /// Limits compared.
    pub limits: Vec<LimitReport>,
    /// Limits that could not be judged.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub limits_not_judged: Vec<UnjudgedReport>,
    /// Clauses of the licences and rules that the station is under, the worst first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub rules: Vec<RuleReport>,
    /// Readings compared.
    pub readings: Vec<ReadingReport>,
    /// Logs of readings.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub logs: Vec<LogReport>,
    /// What the uncertainty consists of, largest first.
    pub budget: Vec<BudgetReport>,
    /// What was assumed because the text does not say it.
    pub assumptions: Vec<String>,
}

/// One part at one frequency.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NodeReport {
    /// Tag, or the kind in words for a part without one.
    pub part: String,
    /// Keyword of the part: `run`, `duplexer`, `join`, …
    pub kind: Word<NodeKind>,
    /// Port, where the chain names one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub port: Option<String>,
    /// Branch path such as `DV1/upper`, where the part stands in a branch.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub branch: Option<String>,
    /// Loss of net power in this part, dB (negative for an amplifier). On the transmitter: its mismatch loss.
    /// Where something after the part could not be computed: its loss between matched ends. Absent where it is not
    /// known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_db: Option<f64>,
    /// Loss so far, this part included, dB. Absent, like the net power, where something before or after it could not
    /// be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cumulative_loss_db: Option<f64>,
    /// Net power after this part, W. Receive: the level here when the receiver just gets its sensitivity, or absent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub power_w: Option<f64>,
    /// The same in dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub power_dbm: Option<f64>,
    /// Forward power after this part, W, where it differs from the net power, or where only it is known: it follows
    /// from what stands before.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub forward_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of the power after this part, dB; of the forward power where only that is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of the forward power after this part, dB: of what a wattmeter there reads.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub forward_uncertainty_db: Option<f64>,
    /// SWR looking on from the node after this part. Absent where something there could not be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub swr: Option<f64>,
    /// Heat in this part, W (mean over the cycle of the carrier as stated, not over duty).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heat_w: Option<f64>,
    /// Of a line of cable: its characteristic impedance, ohm (50 where none is stated, which is listed as assumed).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub impedance_ohm: Option<f64>,
    /// Of a line of cable: its velocity factor (0.66 where none is stated, which is listed as assumed where it matters).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub velocity_factor: Option<f64>,
    /// Receive: noise figure of this stage between matched ends, dB. Each counts with the loss so far of the row before
    /// it (Friis), which gives that of the system. Absent for the antenna, and where an amplifier or the receiver states none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub noise_figure_db: Option<f64>,
    /// Receive: physical temperature of a part without a supply, from which its noise figure follows, °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// `read`, `sheet`, `rated`, `displayed`, `guess`, `library`, `stated` or `computed`.
    pub basis: Word<Basis>,
    /// Source in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
    /// File and line of the part's definition.
    pub file: String,
    /// Line of the part's definition, from 1.
    pub line: u32,
    /// Line of the chain statement that uses it, from 1 (of the chain's file).
    pub chain_line: u32,
}

/// The powers of a chain in wet weather.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct WetReport {
    /// Net power into the antenna or load, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub antenna_w: Option<f64>,
    /// ERP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_w: Option<f64>,
    /// EIRP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eirp_w: Option<f64>,
}

/// Power at another port than the chain takes.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TapReport {
    /// Tag of the part.
    pub part: String,
    /// Port, or `coupled`.
    pub port: String,
    /// Power there into a matched load, W.
    pub power_w: f64,
    /// The same in dBm.
    pub power_dbm: f64,
    /// Expanded uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// Line of the chain statement, from 1.
    pub chain_line: u32,
}

/// A limit against its value.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LimitReport {
    /// `erp`, `eirp` or `output`.
    pub quantity: Word<LimitQuantity>,
    /// The limit, W.
    pub limit_w: f64,
    /// The value compared, W.
    pub value_w: f64,
    /// Limit over value, dB; negative when over.
    pub margin_db: f64,
    /// Expanded uncertainty (k = 2) of the value, dB.
    pub uncertainty_db: f64,
    /// Probability that the limit is exceeded; the verdict is `met` up to 0.02275 and `not-met` from 0.97725 on. Nearer
    /// than 1e-9 to 0 or 1 it is 0 or 1: no uncertainty is known that far out.
    pub probability_exceeded: f64,
    /// `met`, `not-met` or `cannot-tell`.
    pub verdict: LimitVerdict,
    /// Transmitter setting that would just meet the limit with the uncertainty allowed for, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub safe_setting_w: Option<f64>,
    /// Document and clause.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
    /// Line, from 1.
    pub line: u32,
    /// File it is in.
    pub file: String,
}

/// A limit that could not be judged, because what it limits is not known.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct UnjudgedReport {
    /// `erp`, `eirp` or `output`.
    pub quantity: Word<LimitQuantity>,
    /// The limit, W.
    pub limit_w: f64,
    /// File it is in.
    pub file: String,
    /// Line, from 1.
    pub line: u32,
}

/// Readings of a log at one point.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LogReport {
    /// Path of the log as written.
    pub file: String,
    /// Its rows by date.
    pub rows: Vec<LogRowReport>,
    /// Straight lines through three readings or more.
    pub trends: Vec<TrendReport>,
    /// Line of the statement, from 1.
    pub line: u32,
}

/// One row of a log.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LogRowReport {
    /// Line in the log, from 1.
    pub log_line: u64,
    /// Date as written.
    pub date: String,
    /// `forward`, `reflected` or `swr`.
    pub quantity: Wave,
    /// Read, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_w: Option<f64>,
    /// Expected, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_w: Option<f64>,
    /// SWR read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_swr: Option<f64>,
    /// SWR expected.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_swr: Option<f64>,
    /// Read over expected, dB (forward power).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub difference_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of it, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// `agrees`, `differs` or `cannot-tell`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<ReadingVerdict>,
    /// Instrument.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// Tag of a part before it that was installed after the row was read: it is not judged.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub older_than: Option<String>,
}

/// How the readings of a log move.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TrendReport {
    /// `forward`, `reflected` or `swr`.
    pub quantity: Wave,
    /// First date.
    pub from: String,
    /// Last date.
    pub to: String,
    /// Number of readings.
    pub readings: usize,
    /// Change of power, dB a year.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub db_per_year: Option<f64>,
    /// Change of SWR a year.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub swr_per_year: Option<f64>,
    /// Its expanded uncertainty, in the same unit.
    pub uncertainty_per_year: f64,
    /// `rising`, `falling` or `not-beyond-doubt`.
    pub direction: Slope,
}

/// A reading against what the chain says.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReadingReport {
    /// `forward`, `reflected`, `net` or `swr`.
    pub quantity: Wave,
    /// Reading, W (absent for an SWR).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_w: Option<f64>,
    /// Expected, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_w: Option<f64>,
    /// SWR read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_swr: Option<f64>,
    /// SWR expected.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_swr: Option<f64>,
    /// Read over expected, dB (of power; for SWR the difference of return loss).
    pub difference_db: f64,
    /// Expanded uncertainty (k = 2) of the difference, dB.
    pub uncertainty_db: f64,
    /// `agrees`, `differs` or `cannot-tell`.
    pub verdict: ReadingVerdict,
    /// Date as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// Instrument.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// Line, from 1.
    pub line: u32,
}

/// A contributor to the uncertainty.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct BudgetReport {
    /// The cause, in words.
    pub cause: Cause,
    /// Its standard uncertainty in the result, dB (k = 1, with sign dropped).
    pub standard_db: f64,
    /// Its share of the variance, 0 to 1.
    pub share: f64,
}

/// A finding.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DiagnosticReport {
    /// Code of the diagnostics table.
    pub code: &'static str,
    /// `error`, `warning`, `information` or `hint`.
    pub severity: Word<Severity>,
    /// What is wrong.
    pub message: String,
    /// Advice.
    pub help: Vec<String>,
    /// File.
    pub file: String,
    /// Line, from 1.
    pub line: u32,
    /// Column in characters, from 1.
    pub column: u32,
}

impl NodeReport {
    /// The part with its port: `DU1.high`.
    #[must_use]
    pub fn name(&self) -> String {
        match &self.port {
            Some(port) => format!("{}.{port}", self.part),
            None => self.part.clone(),
        }
    }
}
