//! Fits as a value: the stable shape that `fit --format json` prints.

use downlead_physics::measure::LossFit;
use schemars::JsonSchema;
use serde::Serialize;

use super::{Subject, definition};
use crate::loss_law::{LossLaw, held_at_zero, refused};

/// Name and version of the JSON shape.
pub(crate) const SCHEMA: &str = "downlead-fit/1";

/// All fits of a run.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct FitFile {
    /// Always `downlead-fit/1`.
    pub(crate) schema: &'static str,
    /// One a piece, network or sheet.
    pub(crate) fits: Vec<OneFit>,
}

/// One fit of `k1 √f + k2 f`. `uncertainty` is expanded (k = 2), `standard` is k = 1.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct OneFit {
    /// What was fitted, in words.
    pub(crate) subject: String,
    /// Why there is no fit, and what to add.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) refused: Option<String>,
    /// The two coefficients.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) coefficients: Option<Coefficients>,
    /// The points.
    pub(crate) points: Vec<FitPointReport>,
    /// Loss at usual frequencies, at 20 °C.
    pub(crate) predictions: Vec<PredictionReport>,
    /// What was left out or assumed.
    pub(crate) notes: Vec<String>,
    /// A definition in the language.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) definition: Option<String>,
}

/// The two coefficients with their doubt.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct Coefficients {
    /// The two coefficients.
    #[serde(flatten)]
    pub(crate) law: LossLaw,
    /// Covariance of the two (k = 1), in the product of their units.
    pub(crate) covariance: f64,
    /// `k1` or `k2`, where that would have come out negative and was held at 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) held_at_zero: Option<&'static str>,
    /// Relative standard uncertainty that all points share.
    pub(crate) standard_shared: f64,
    /// Sum of squared standardised residuals; absent where the doubt was found from the scatter.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) chi_square: Option<f64>,
    /// Degrees of freedom.
    pub(crate) degrees_of_freedom: usize,
    /// Probability of a larger chi-square.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) p: Option<f64>,
    /// The point that does not fit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) outlier: Option<String>,
    /// A frequency to read at too, Hz.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) add_frequency_hz: Option<f64>,
}

/// A point and how the fit meets it.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct FitPointReport {
    /// Band, or the frequency in words.
    pub(crate) label: String,
    /// Hz.
    pub(crate) frequency_hz: f64,
    /// dB/m.
    pub(crate) loss_db_per_m: f64,
    /// Standard uncertainty, dB/m.
    pub(crate) standard_db_per_m: f64,
    /// The fit there, dB/m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) fitted_db_per_m: Option<f64>,
    /// Measured less fitted, in standard uncertainties.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) residual: Option<f64>,
}

/// The fit at a frequency, at 20 °C.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct PredictionReport {
    /// Hz.
    pub(crate) frequency_hz: f64,
    /// dB/m.
    pub(crate) loss_db_per_m: f64,
    /// Expanded uncertainty (k = 2), dB/m.
    pub(crate) uncertainty_db_per_m: f64,
    /// Whether the points reach there.
    pub(crate) inside: bool,
}

/// Frequencies people ask for, Hz.
const USUAL: [f64; 16] = [
    1.8e6, 3.5e6, 7e6, 10e6, 14e6, 21e6, 28e6, 50e6, 70e6, 100e6, 145e6, 220e6, 435e6, 900e6,
    1.3e9, 2.4e9,
];

/// The fit of a subject as it is printed.
pub(crate) fn of(s: &Subject) -> OneFit {
    let fit = s.fit.as_ref().ok();
    OneFit {
        subject: s.title.clone(),
        refused: s.fit.as_ref().err().map(|e| refused(e, &|i| s.point(i))),
        coefficients: fit.map(|f| coefficients(s, f)),
        points: s
            .samples
            .iter()
            .enumerate()
            .map(|(i, p)| FitPointReport {
                label: p.label.clone(),
                frequency_hz: p.hz,
                loss_db_per_m: p.db_per_m,
                standard_db_per_m: p.u_db_per_m,
                fitted_db_per_m: fit.map(|f| f.predict(p.hz).db_per_m),
                residual: fit.and_then(|f| f.residuals.get(i).copied()),
            })
            .collect(),
        predictions: fit.map_or_else(Vec::new, predictions),
        notes: s.notes.clone(),
        definition: fit.map(|f| definition::of(s, f)),
    }
}

fn coefficients(s: &Subject, f: &LossFit) -> Coefficients {
    let judged = !s.from_scatter && f.dof > 0;
    Coefficients {
        law: LossLaw::of(f),
        covariance: f.correlation * f.u_k1 * f.u_k2,
        held_at_zero: held_at_zero(f),
        standard_shared: f.shared,
        chi_square: judged.then_some(f.chi2),
        degrees_of_freedom: f.dof,
        p: Some(f.p).filter(|p| judged && p.is_finite()),
        outlier: f.outlier.map(|o| s.point(o.index)),
        add_frequency_hz: f.advice.map(|a| a.add_hz),
    }
}

/// From half the lowest point to twice the highest; beyond that a fit is not carried on.
fn predictions(f: &LossFit) -> Vec<PredictionReport> {
    USUAL
        .iter()
        .map(|hz| (*hz, f.predict_at(*hz, 20.0)))
        .filter(|(_, p)| p.beyond <= 2.0 && !p.refused)
        .map(|(hz, p)| PredictionReport {
            frequency_hz: hz,
            loss_db_per_m: p.db_per_m,
            uncertainty_db_per_m: 2.0 * p.u_db_per_m,
            inside: p.beyond <= 1.0,
        })
        .collect()
}
