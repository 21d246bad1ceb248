//! Fits as a value: the stable shape that `fit --format json` prints.

use schemars::JsonSchema;
use serde::Serialize;

use super::loss_law::LossLaw;
use super::word::Coefficient;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-fit/1";

/// All fits of a run.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FitFile {
    /// Always `downlead-fit/1`.
    pub schema: &'static str,
    /// One a piece, network or sheet.
    pub fits: Vec<OneFit>,
}

/// One fit of `k1 √f + k2 f`. `uncertainty` is expanded (k = 2), `standard` is k = 1.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OneFit {
    /// What was fitted, in words.
    pub subject: String,
    /// Why there is no fit, and what to add.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
    /// The two coefficients.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub coefficients: Option<Coefficients>,
    /// The points.
    pub points: Vec<FitPointReport>,
    /// Loss at usual frequencies, at 20 °C.
    pub predictions: Vec<PredictionReport>,
    /// What was left out or assumed.
    pub notes: Vec<String>,
    /// A definition in the language.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub definition: Option<String>,
}

/// The two coefficients with their uncertainty.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Coefficients {
    /// The two coefficients.
    #[serde(flatten)]
    pub law: LossLaw,
    /// Covariance of the two (k = 1), in the product of their units.
    pub covariance: f64,
    /// `k1` or `k2`, where that would have come out negative and was held at 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub held_at_zero: Option<Coefficient>,
    /// Relative standard uncertainty that all points share.
    pub standard_shared: f64,
    /// Sum of squared standardised residuals; absent where the uncertainty was found from the
    /// scatter.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub chi_square: Option<f64>,
    /// Degrees of freedom.
    pub degrees_of_freedom: usize,
    /// Probability of a larger chi-square.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub p: Option<f64>,
    /// The point that does not fit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub outlier: Option<String>,
    /// A frequency to read at too, Hz.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub add_frequency_hz: Option<f64>,
}

/// A point and how the fit meets it.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FitPointReport {
    /// Band, or the frequency in words.
    pub label: String,
    /// Hz.
    pub frequency_hz: f64,
    /// dB/m.
    pub loss_db_per_m: f64,
    /// Standard uncertainty, dB/m.
    pub standard_db_per_m: f64,
    /// The fit there, dB/m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fitted_db_per_m: Option<f64>,
    /// Measured less fitted, in standard uncertainties.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub residual: Option<f64>,
}

/// The fit at a frequency, at 20 °C.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PredictionReport {
    /// Hz.
    pub frequency_hz: f64,
    /// dB/m.
    pub loss_db_per_m: f64,
    /// Expanded uncertainty (k = 2), dB/m.
    pub uncertainty_db_per_m: f64,
    /// Whether the points reach there.
    pub inside: bool,
}
