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

#[cfg(test)]
mod tests {
    use super::*;

    fn close(a: f64, b: f64, within: f64) {
        assert!((a - b).abs() <= within * b.abs(), "{a}, wanted {b}");
    }

    #[test]
    fn wavelengths_are_those_of_the_speed_of_light() {
        // SI: c = 299 792 458 m/s
        close(wavelength(299_792_458.0, 1.0), 1.0, 1e-15);
        close(wavelength(149_896_229.0, 0.5), 1.0, 1e-15);
        close(wavelength(145e6, 0.66), 0.66 * 2.067_534_193_103_448, 1e-12);
    }

    #[test]
    fn the_line_constants_are_those_of_r_l_g_c() {
        // the telegraph equations (Pozar, Microwave Engineering, sec. 2.1): per metre
        let (f, l, c) = (14.2e6, 2.5e-7, 1e-10);
        for (r, g) in [(0.2, 0.0), (0.0, 3e-5), (0.3, 2e-5)] {
            let omega = core::f64::consts::TAU * f;
            let (series, shunt) = (cx::c(r, omega * l), cx::c(g, omega * c));
            let gamma = cx::sqrt(series * shunt);
            let zc = cx::sqrt(series / shunt);
            let r0 = libm::sqrt(l / c);
            let line = LineParams {
                r0_ohm: r0,
                velocity_factor: 1.0 / (C0 * libm::sqrt(l * c)),
                alpha_c_db_per_m: r / (2.0 * r0) * 20.0 / core::f64::consts::LN_10,
                alpha_d_db_per_m: g * r0 / 2.0 * 20.0 / core::f64::consts::LN_10,
            };
            // what is left out is of second order in R/ωL and G/ωC, which are below 0.014
            close(line.gamma(f).re, gamma.re, 1e-4);
            close(line.gamma(f).im, gamma.im, 1e-4);
            close(line.beta(f), gamma.im, 1e-4);
            close(line.zc(f).re, zc.re, 1e-4);
            close(line.zc(f).im, zc.im, 1e-3);
            // power after 25 m of it
            let power = libm::exp(-2.0 * gamma.re * 25.0);
            close(line.matched_loss(25.0), -10.0 * libm::log10(power), 1e-4);
        }
        let line = LineParams::lossless(75.0, 0.8);
        assert!(line.matched_loss(100.0) == 0.0 && line.zc(1e8) == cx::c(75.0, -0.0));
        close(
            line.beta(1e8) * wavelength(1e8, 0.8),
            core::f64::consts::TAU,
            1e-14,
        );
    }

    #[test]
    fn two_terms_go_with_the_root_and_the_frequency() {
        let cable = TwoTerm {
            k1: 0.01,
            k2: 0.0002,
        };
        assert_eq!(cable.split(100e6), (0.1, 0.02));
        close(cable.at(100e6), 0.12, 1e-15);
        close(attenuation(0.01, 0.0002, 400e6), 0.2 + 0.08, 1e-15);
        let line = LineParams::two_term(50.0, 0.85, cable, 100e6);
        close(line.matched_loss(50.0), 6.0, 1e-14);
        assert!(line.r0_ohm == 50.0 && line.velocity_factor == 0.85);
    }

    #[test]
    fn copper_gains_0_393_percent_of_resistance_a_kelvin() {
        // IEC 60028; resistance goes with the square of the loss by skin effect
        close(conductor_temperature_factor(20.0), 1.0, 0.0);
        close(conductor_temperature_factor(70.0).powi(2), 1.1965, 1e-12);
        close(conductor_temperature_factor(-30.0).powi(2), 0.8035, 1e-12);
        close(
            conductor_temperature_ratio(70.0, -30.0).powi(2),
            0.8035 / 1.1965,
            1e-12,
        );
        assert!(conductor_temperature_factor(-240.0).is_nan());
        let warm = TwoTerm { k1: 1.0, k2: 2.0 }.at_temperature(70.0);
        close(warm.k1, 1.1965_f64.sqrt(), 1e-12);
        assert!(warm.k2 == 2.0);
    }
}
