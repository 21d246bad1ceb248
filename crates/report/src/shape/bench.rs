//! Bench sessions as a value: the stable shape that `bench --format json` prints.
//!
//! Numbers are in SI units or dB, the name holds the unit. `uncertainty` is expanded (k = 2)
//! unless the coverage is given with it, `standard` is k = 1. More fields may be added;
//! none is renamed or removed within one `schema`.

use downlead_station::session::ReadingKind;
use schemars::JsonSchema;
use serde::Serialize;

use super::chain::DiagnosticReport;
use super::loss_law::LossLaw;
use super::run::RunsReport;
use super::word::{BenchSlope, Coefficient, LengthFrom, ReadingVerdict, Word};

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-bench/1";

/// All bench sessions of a set of files.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct BenchReport {
    /// Always `downlead-bench/1`.
    pub schema: &'static str,
    /// Sessions in the order of the files.
    pub sessions: Vec<SessionReport>,
    /// Pieces that sessions of different days have in common.
    pub trends: Vec<TrendReport>,
    /// All findings, in order of place.
    pub diagnostics: Vec<DiagnosticReport>,
}

/// A piece over the years, by the ratio of its measured loss to the expected one.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TrendReport {
    /// The piece.
    pub piece: String,
    /// Its cable.
    pub cable: String,
    /// In order of date.
    pub points: Vec<DatedReport>,
    /// Slope of the straight line through them, per year of 365.25 days.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ratio_per_year: Option<f64>,
    /// Its expanded uncertainty (95.45 %).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ratio_per_year_uncertainty: Option<f64>,
    /// `rising`, `falling`, or `cannot-tell` where neither is significant.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub direction: Option<BenchSlope>,
}

/// A ratio at a date.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DatedReport {
    /// Date as written.
    pub date: String,
    /// Measured over expected.
    pub ratio: f64,
    /// Its expanded uncertainty (k = 2) by the readings, without sheet and length.
    pub ratio_uncertainty: f64,
}

/// One session.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SessionReport {
    /// Its name.
    pub name: String,
    /// Its title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// File it stands in.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Date as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// Who read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub person: Option<String>,
    /// Temperature of the bench, °C.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub temperature_c: Option<f64>,
    /// Instruments in the order they were used.
    pub instruments: Vec<InstrumentReport>,
    /// Readings taken.
    pub readings: usize,
    /// Imported rows that could not be taken.
    pub rows_lost: usize,
    /// Number of comparisons by verdict.
    pub verdicts: VerdictCounts,
    /// Bands in the order they appear.
    pub bands: Vec<BandReport>,
    /// Pieces in the order of the text.
    pub pieces: Vec<PieceReport>,
    /// One a piece and band, piece by piece.
    pub results: Vec<ResultReport>,
    /// SWR from forward and reflected power.
    pub reflections: Vec<SwrReport>,
    /// What the uncertainty of the comparisons consists of, largest first.
    #[serde(rename = "doubt")]
    pub contributions: Vec<ContributionReport>,
    /// What was assumed because the text does not say it.
    pub assumptions: Vec<String>,
    /// Its pieces as runs of the length that was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub runs: Option<RunsReport>,
}

/// How many comparisons came to which verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct VerdictCounts {
    /// Agree.
    pub agrees: usize,
    /// Differ by more than the uncertainty.
    pub differs: usize,
    /// Cannot tell.
    pub cannot_tell: usize,
}

/// An instrument with its errors, standard (k = 1).
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct InstrumentReport {
    /// Its name; empty where the session names none.
    pub name: String,
    /// Its title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Standard uncertainty of its scale, share of the reading.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_of_reading: Option<f64>,
    /// Standard uncertainty, share of full scale.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_of_full_scale: Option<f64>,
    /// Standard uncertainty of its scale, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_db: Option<f64>,
    /// Full scale, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub full_scale_w: Option<f64>,
    /// Resolution, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub resolution_w: Option<f64>,
    /// Standard uncertainty of its linearity, share of the reading.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_linearity: Option<f64>,
    /// Standard uncertainty of its linearity, share of full scale.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_linearity_of_full_scale: Option<f64>,
    /// Standard deviation of one reading, share of the reading.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub standard_repeatability: Option<f64>,
    /// Directivity, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub directivity_db: Option<f64>,
    /// The certificate its readings are corrected by.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub certificate: Option<CertificateReport>,
    /// By which share its readings were found to be too high, percent: they are corrected.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub recalled_percent: Option<f64>,
    /// From which day on, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub recalled_since: Option<String>,
    /// Calibration date as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub calibrated: Option<String>,
    /// Date the next calibration is due, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub due: Option<String>,
}

/// A calibration certificate.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CertificateReport {
    /// Its file.
    pub file: String,
    /// Its number.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub number: Option<String>,
    /// Day of the calibration, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from: Option<String>,
    /// Last day on which it holds, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub until: Option<String>,
    /// Lowest frequency, Hz.
    pub lowest_hz: f64,
    /// Highest frequency, Hz.
    pub highest_hz: f64,
    /// Number of its points.
    pub points: usize,
    /// Whether it held on the day of the session.
    pub holds: bool,
}

/// A band of a session.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct BandReport {
    /// Name, or the frequency in words.
    pub band: String,
    /// Hz.
    pub frequency_hz: f64,
    /// Drift of the baselines over the session, percent of the power; absent without baselines.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drift_percent: Option<f64>,
    /// The same per minute; absent with one baseline or without times.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drift_percent_per_minute: Option<f64>,
    /// Minutes between the first baseline and the last.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drift_minutes: Option<f64>,
    /// Scatter of three and more baselines about their line, percent.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drift_scatter_percent: Option<f64>,
    /// Pieces by loss per length, least first.
    pub ranking: Vec<RankReport>,
}

/// A place in a ranking.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RankReport {
    /// Rank; pieces that cannot be distinguished from their neighbour share one.
    pub rank: usize,
    /// Number of pieces that share it.
    pub sharing: usize,
    /// The piece.
    pub piece: String,
    /// Loss per length with the joins taken off, dB/m.
    pub loss_db_per_m: f64,
    /// Its expanded uncertainty (k = 2), dB/m.
    pub uncertainty_db_per_m: f64,
    /// Whether the measured loss is at least five times its uncertainty: a smaller one is not to
    /// be scaled up.
    pub trusted: bool,
}

/// A piece as a whole.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PieceReport {
    /// Its name.
    pub piece: String,
    /// Its cable; empty where none is named.
    pub cable: String,
    /// Length, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_m: Option<f64>,
    /// Expanded uncertainty (k = 2), m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_uncertainty_m: Option<f64>,
    /// Joins that come into the line with it.
    pub joins: Vec<JoinReport>,
    /// Its temperature, °C.
    pub temperature_c: f64,
    /// Line, from 1.
    pub line: u32,
    /// Number of its comparisons by verdict.
    pub verdicts: VerdictCounts,
    /// Bands on which a reading looks like a slip: the piece is judged without them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub slip_bands: Vec<String>,
    /// All bands together.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub whole: Option<WholeReport>,
    /// Its own two coefficients.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fit: Option<FitReport>,
    /// Why there is no fit, and what to add.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fit_refused: Option<String>,
    /// Readings of its electrical length.
    pub lengths: Vec<LengthReport>,
}

/// Joins of one kind.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct JoinReport {
    /// How many.
    pub count: u32,
    /// Kind.
    pub connector: String,
}

/// A piece over all its bands: weighted mean ratio of measured to expected loss.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct WholeReport {
    /// Measured over expected.
    pub ratio: f64,
    /// Lower edge (k = 2).
    pub ratio_low: f64,
    /// Upper edge (k = 2).
    pub ratio_high: f64,
    /// Standard uncertainty (k = 1) of the ratio by the readings alone, without what all bands share
    /// (sheet, length).
    pub ratio_standard_by_readings: f64,
    /// Squared deviations of the bands from that mean over their uncertainties.
    pub chi_square: f64,
    /// Degrees of freedom.
    pub degrees_of_freedom: usize,
    /// Probability of a larger chi-square if one ratio holds on all bands; below 1e-9 it is 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub p: Option<f64>,
    /// Band furthest off.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub worst_band: Option<String>,
    /// Its difference over the expanded uncertainty of the difference.
    pub worst_en: f64,
    /// Bands used; on the others the loss is below its own uncertainty.
    pub bands_used: usize,
    /// `agrees`, `differs` or `cannot-tell`.
    pub verdict: ReadingVerdict,
}

/// `k1 √f + k2 f` through the readings of a piece.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FitReport {
    /// The two coefficients.
    #[serde(flatten)]
    pub law: LossLaw,
    /// Relative standard uncertainty that all readings share (length).
    pub standard_shared: f64,
    /// `k1` or `k2`, where that would have come out negative and was held at 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub held_at_zero: Option<Coefficient>,
    /// Sum of squared standardised residuals.
    pub chi_square: f64,
    /// Degrees of freedom.
    pub degrees_of_freedom: usize,
    /// Probability of a larger chi-square.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub p: Option<f64>,
    /// Band with the largest residual.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub worst_band: Option<String>,
    /// That residual in standard uncertainties.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub worst_residual: Option<f64>,
    /// Band that does not fit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub outlier_band: Option<String>,
    /// Another band that may be the wrong one instead: without it the others fit about as well.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub outlier_or_band: Option<String>,
    /// A frequency to read at too, Hz, where the set is weak.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub add_frequency_hz: Option<f64>,
    /// Lowest frequency, Hz.
    pub lowest_hz: f64,
    /// Highest frequency, Hz.
    pub highest_hz: f64,
}

/// An electrical length against the tape.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LengthReport {
    /// `resonance`, `delay` or `phase`.
    pub by: LengthFrom,
    /// Length by its waves, m.
    pub length_m: f64,
    /// Expanded uncertainty (k = 2), m.
    pub uncertainty_m: f64,
    /// That less the tape's, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub difference_m: Option<f64>,
    /// Expanded uncertainty (k = 2) of the difference, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub difference_uncertainty_m: Option<f64>,
    /// `agrees`, `differs` or `cannot-tell`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<ReadingVerdict>,
    /// Velocity factor with which both lengths are equal.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub velocity_factor: Option<f64>,
    /// Expanded uncertainty (k = 2) of that.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub velocity_factor_uncertainty: Option<f64>,
    /// Line, from 1.
    pub line: u32,
}

/// A piece on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ResultReport {
    /// The piece.
    pub piece: String,
    /// Band name, or the frequency in words.
    pub band: String,
    /// Hz.
    pub frequency_hz: f64,
    /// How the loss was found.
    pub method: &'static str,
    /// Readings of the piece.
    pub readings: usize,
    /// Measured loss, dB.
    pub loss_db: f64,
    /// Its expanded uncertainty, dB.
    pub loss_uncertainty_db: f64,
    /// Coverage factor of that.
    pub loss_coverage: f64,
    /// Lower edge of the loss, dB.
    pub loss_low_db: f64,
    /// Upper edge of the loss, dB; null where the reading may have been nothing.
    pub loss_high_db: f64,
    /// Share of the power that comes through, percent.
    pub through_percent: f64,
    /// Loss against the first baseline, drift not taken out, dB.
    pub uncorrected_loss_db: f64,
    /// Expected loss, cable and joins, dB; absent where the cable is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_db: Option<f64>,
    /// Its expanded uncertainty (k = 2), dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub expected_uncertainty_db: Option<f64>,
    /// The joins' part of the expected loss, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub joins_db: Option<f64>,
    /// Measured less expected, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub difference_db: Option<f64>,
    /// Expanded uncertainty of the difference, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Difference over that.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub en: Option<f64>,
    /// `agrees`, `differs` or `cannot-tell`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub verdict: Option<ReadingVerdict>,
    /// True where a reading looks like a slip: it has no verdict, and the piece is judged without it.
    pub slip: bool,
    /// Cannot tell: by what factor the meter's part of the uncertainty must shrink; absent where no
    /// meter helps: the expectation is too loose, or the transmitter drifted too much.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub better_meter_factor: Option<f64>,
    /// Cannot tell: how long the piece must be, m; absent where no length helps.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub longer_piece_m: Option<f64>,
    /// Whether most of the uncertainty is how the baseline changed meanwhile.
    pub drift_prevails: bool,
    /// Measured loss per length, joins taken off, dB/m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_db_per_m: Option<f64>,
    /// Its expanded uncertainty (k = 2), dB/m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_uncertainty_db_per_m: Option<f64>,
    /// Whether the loss is at least five times its uncertainty.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub trusted: Option<bool>,
    /// Half the return loss with the end open less that with it shorted, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub half_difference_db: Option<f64>,
    /// What the uncertainty of the comparison consists of, largest first.
    pub budget: Vec<CauseReport>,
}

/// A contribution to an uncertainty.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CauseReport {
    /// The cause.
    pub cause: String,
    /// Its standard uncertainty (k = 1), dB.
    pub standard_db: f64,
}

/// A contribution over all comparisons of a session.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ContributionReport {
    /// The cause.
    pub cause: String,
    /// Smallest standard uncertainty (k = 1), dB.
    pub smallest_standard_db: f64,
    /// Largest standard uncertainty (k = 1), dB.
    pub largest_standard_db: f64,
    /// Its share of the variance of all comparisons, 0 to 1.
    pub share: f64,
}

/// SWR from forward and reflected power.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SwrReport {
    /// What was in the line: `baseline`, `through`, …
    pub reading: Word<ReadingKind>,
    /// The piece.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub piece: Option<String>,
    /// Band name, or the frequency in words.
    pub band: String,
    /// Hz.
    pub frequency_hz: f64,
    /// SWR.
    pub swr: f64,
    /// Least it can be with the meter's errors (worst case).
    pub swr_low: f64,
    /// Most it can be; null where it has no end.
    pub swr_high: f64,
    /// Decimals that mean something; absent where only a bound is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub decimals: Option<usize>,
    /// Line of the reading, from 1; of an imported one that of its `readings` line.
    pub line: u32,
    /// File it was imported from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub imported_from: Option<String>,
    /// Line in that file, from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub imported_line: Option<u64>,
}
