//! From a fitted subject to the shape that is printed.

use downlead_physics::measure::LossFit;
use downlead_report::shape::fit::{Coefficients, FitPointReport, OneFit, PredictionReport};
use downlead_report::shape::loss_law::{LossLaw, held_at_zero, refused};

use super::{Subject, definition};

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
        outlier_or: f.outlier.and_then(|o| Some(s.point(o.rival?))),
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
