//! The law `k1 √f + k2 f` through points of loss, as `bench` and `fit` put it.

use downlead_physics::measure::{Clamped, FitError, LossFit};
use downlead_quantity::frequency;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::Coefficient;
use crate::words::figure::with_uncertainty;

/// Metres in the trade's unit of length for losses.
pub const PER: f64 = 100.0;

/// The two coefficients with their uncertainty.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LossLaw {
    /// Temperature of the points, °C.
    pub temperature_c: f64,
    /// dB/m per root of MHz at that temperature.
    pub k1_db_per_m_per_sqrt_mhz: f64,
    /// Expanded uncertainty (k = 2) by the points.
    pub k1_uncertainty_db_per_m_per_sqrt_mhz: f64,
    /// dB/m per MHz.
    pub k2_db_per_m_per_mhz: f64,
    /// Expanded uncertainty (k = 2) by the points.
    pub k2_uncertainty_db_per_m_per_mhz: f64,
    /// k1 at 20 °C.
    pub k1_at_20c_db_per_m_per_sqrt_mhz: f64,
    /// Correlation of the two.
    pub correlation: f64,
}

impl LossLaw {
    /// Those of a fit.
    pub fn of(f: &LossFit) -> LossLaw {
        LossLaw {
            temperature_c: f.celsius,
            k1_db_per_m_per_sqrt_mhz: f.coefficients.k1,
            k1_uncertainty_db_per_m_per_sqrt_mhz: 2.0 * f.u_k1,
            k2_db_per_m_per_mhz: f.coefficients.k2,
            k2_uncertainty_db_per_m_per_mhz: 2.0 * f.u_k2,
            k1_at_20c_db_per_m_per_sqrt_mhz: f.at_20.k1,
            correlation: f.correlation,
        }
    }

    /// k1 with its uncertainty, in dB/100 m per root of MHz; a plain 0 where it was held there.
    pub fn k1(&self) -> String {
        coefficient(
            self.k1_db_per_m_per_sqrt_mhz,
            self.k1_uncertainty_db_per_m_per_sqrt_mhz,
        )
    }

    /// k2 with its uncertainty, in dB/100 m per MHz; a plain 0 where it was held there.
    pub fn k2(&self) -> String {
        coefficient(
            self.k2_db_per_m_per_mhz,
            self.k2_uncertainty_db_per_m_per_mhz,
        )
    }
}

fn coefficient(k: f64, u: f64) -> String {
    if k == 0.0 && u == 0.0 {
        "0".to_owned()
    } else {
        per_100(k, u)
    }
}

fn per_100(k: f64, u: f64) -> String {
    let (k, u) = with_uncertainty(PER * k, PER * u, 6);
    format!("{k} ± {u}")
}

/// Which coefficient would have come out negative and was held at 0.
pub fn held_at_zero(f: &LossFit) -> Option<Coefficient> {
    f.clamped.map(|c| match c {
        Clamped::K1 => Coefficient::K1,
        Clamped::K2 => Coefficient::K2,
    })
}

/// Why there is no fit, and what to do; `point` names a point.
pub fn refused(e: &FitError, point: &dyn Fn(usize) -> String) -> String {
    match e {
        FitError::TooFew {
            frequencies,
            add_hz,
        } => {
            let n = match frequencies {
                0 => "no frequency".to_owned(),
                1 => "one frequency".to_owned(),
                n => format!("{n} frequencies"),
            };
            let add = if add_hz.is_finite() {
                format!("; read at {} too", frequency(tidy(*add_hz)))
            } else {
                String::new()
            };
            format!("{n} cannot give two coefficients{add}")
        }
        FitError::NotPositive(i) => format!(
            "the loss on {} is not above zero once the joins are taken off: leave that reading out, or use a longer piece",
            point(*i)
        ),
        FitError::Singular { add_hz, .. } => format!(
            "the frequencies are too alike to tell the two coefficients apart; read at {} too",
            frequency(tidy(*add_hz))
        ),
    }
}

/// A frequency to advise, with two digits: no transmitter is set to 13.7382 MHz.
pub fn tidy(hz: f64) -> f64 {
    let step = libm::pow(10.0, libm::floor(libm::log10(hz)) - 1.0);
    libm::round(hz / step) * step
}
