//! A uniform line at one frequency: attenuation in two terms, temperature, propagation constant
//! and complex characteristic impedance.

use crate::{C0, COPPER_TEMPCO, DB_PER_NEPER, cx};
use num_complex::Complex64;

/// Attenuation as `k1·√f + k2·f`, f in MHz: conductors and dielectric.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoTerm {
    /// Conductor coefficient, dB/m/√MHz.
    pub k1: f64,
    /// Dielectric coefficient, dB/m/MHz.
    pub k2: f64,
}

impl TwoTerm {
    /// Conductor and dielectric part in dB/m at `f_hz`.
    ///
    /// Source: skin effect (√f) and constant loss tangent (f); Pozar, Microwave Engineering 4e,
    /// ch. 2 low-loss line (section from memory).
    #[must_use]
    pub fn split(self, f_hz: f64) -> (f64, f64) {
        let mhz = f_hz * 1e-6;
        (self.k1 * libm::sqrt(mhz), self.k2 * mhz)
    }

    /// Attenuation in dB/m at `f_hz`.
    #[must_use]
    pub fn at(self, f_hz: f64) -> f64 {
        let (c, d) = self.split(f_hz);
        c + d
    }

    /// The same cable with its conductors at `celsius` instead of 20 °C.
    #[must_use]
    pub fn at_temperature(self, celsius: f64) -> Self {
        Self {
            k1: self.k1 * conductor_temperature_factor(celsius),
            k2: self.k2,
        }
    }
}

/// Attenuation in dB/m from coefficients (dB/m/√MHz, dB/m/MHz) at `f_hz`.
#[must_use]
pub fn attenuation(k1: f64, k2: f64, f_hz: f64) -> f64 {
    TwoTerm { k1, k2 }.at(f_hz)
}

/// Factor on the conductor loss when the conductor is at `celsius` instead of 20 °C:
/// `√(1 + 0.00393 (T − 20))`. The square root comes from the skin effect; the dielectric part is
/// left alone. NaN below about −234 °C.
///
/// Source: coefficient of annealed copper, IEC 60028 (from memory).
#[must_use]
pub fn conductor_temperature_factor(celsius: f64) -> f64 {
    libm::sqrt(1.0 + COPPER_TEMPCO * (celsius - 20.0))
}

/// Factor on the conductor loss between a data-sheet temperature and the actual one, both °C.
#[must_use]
pub fn conductor_temperature_ratio(reference_celsius: f64, celsius: f64) -> f64 {
    conductor_temperature_factor(celsius) / conductor_temperature_factor(reference_celsius)
}

/// Wavelength on the line in metres.
#[must_use]
pub fn wavelength(f_hz: f64, velocity_factor: f64) -> f64 {
    C0 * velocity_factor / f_hz
}

/// A uniform line as the mismatch and network formulas need it, at one frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineParams {
    /// Nominal (real) characteristic impedance, ohm.
    pub r0_ohm: f64,
    /// Velocity of propagation relative to light in vacuum.
    pub velocity_factor: f64,
    /// Attenuation by the conductors, dB/m.
    pub alpha_c_db_per_m: f64,
    /// Attenuation by the dielectric, dB/m.
    pub alpha_d_db_per_m: f64,
}

impl LineParams {
    /// A line with a two-term attenuation at `f_hz`.
    #[must_use]
    pub fn two_term(r0_ohm: f64, velocity_factor: f64, loss: TwoTerm, f_hz: f64) -> Self {
        let (alpha_c_db_per_m, alpha_d_db_per_m) = loss.split(f_hz);
        Self {
            r0_ohm,
            velocity_factor,
            alpha_c_db_per_m,
            alpha_d_db_per_m,
        }
    }

    /// A line without loss.
    #[must_use]
    pub const fn lossless(r0_ohm: f64, velocity_factor: f64) -> Self {
        Self {
            r0_ohm,
            velocity_factor,
            alpha_c_db_per_m: 0.0,
            alpha_d_db_per_m: 0.0,
        }
    }

    /// Matched loss of `length_m`, dB.
    #[must_use]
    pub fn matched_loss(&self, length_m: f64) -> f64 {
        (self.alpha_c_db_per_m + self.alpha_d_db_per_m) * length_m
    }

    /// Phase constant, rad/m.
    #[must_use]
    pub fn beta(&self, f_hz: f64) -> f64 {
        2.0 * core::f64::consts::PI * f_hz / (C0 * self.velocity_factor)
    }

    /// Propagation constant `γ = α + jβ`, Np/m and rad/m.
    #[must_use]
    pub fn gamma(&self, f_hz: f64) -> Complex64 {
        cx::c(
            (self.alpha_c_db_per_m + self.alpha_d_db_per_m) / DB_PER_NEPER,
            self.beta(f_hz),
        )
    }

    /// Complex characteristic impedance `R0 (1 − j (α_c − α_d)/β)`, ohm.
    ///
    /// Derived from R, L, G, C per metre with R ≪ ωL and G ≪ ωC; valid while α ≪ β, for coaxial
    /// cable above about 0.1 MHz.
    #[must_use]
    pub fn zc(&self, f_hz: f64) -> Complex64 {
        let excess = (self.alpha_c_db_per_m - self.alpha_d_db_per_m) / DB_PER_NEPER;
        cx::c(self.r0_ohm, -self.r0_ohm * excess / self.beta(f_hz))
    }
}
