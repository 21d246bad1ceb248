//! Two-ports as scattering matrices in a real reference impedance.

use crate::{LineParams, cx};
use downlead_quantity::to_db;
use num_complex::Complex64;

/// Scattering matrix of a two-port at one frequency, both ports in one real reference impedance
/// (which the caller keeps; cascades must not mix references).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SMatrix {
    /// Reflection at port 1.
    pub s11: Complex64,
    /// Transmission from port 2 to port 1.
    pub s12: Complex64,
    /// Transmission from port 1 to port 2.
    pub s21: Complex64,
    /// Reflection at port 2.
    pub s22: Complex64,
}

const ONE: Complex64 = Complex64::new(1.0, 0.0);

impl SMatrix {
    const fn reciprocal(s11: Complex64, s21: Complex64, s22: Complex64) -> Self {
        Self {
            s11,
            s12: s21,
            s21,
            s22,
        }
    }

    /// A line of `length_m` in the reference `r0_ohm`, exact for a complex characteristic
    /// impedance and any loss.
    #[must_use]
    pub fn line(line: &LineParams, f_hz: f64, length_m: f64, r0_ohm: f64) -> Self {
        let zc = line.zc(f_hz);
        let rho = (zc - r0_ohm) / (zc + r0_ohm);
        let gl = line.gamma(f_hz) * length_m;
        let once = cx::exp(-gl);
        let twice = once * once;
        let rho2 = rho * rho;
        let d = ONE / (ONE - rho2 * twice);
        let s11 = rho * (ONE - twice) * d;
        Self::reciprocal(s11, once * (ONE - rho2) * d, s11)
    }

    /// The two-port turned round.
    #[must_use]
    pub const fn reversed(&self) -> Self {
        Self {
            s11: self.s22,
            s12: self.s21,
            s21: self.s12,
            s22: self.s11,
        }
    }

    /// Insertion gain in dB between matched ends, `20 log10|S21|` (negative for a loss).
    #[must_use]
    pub fn gain(&self) -> f64 {
        to_db(self.s21.norm_sqr())
    }

    /// Largest power gain over all excitations (largest singular value squared, dimensionless):
    /// at most 1 for a passive two-port.
    #[must_use]
    pub fn max_power_out(&self) -> f64 {
        // eigenvalues of S* S, a 2×2 Hermitian matrix
        let a = self.s11.norm_sqr() + self.s21.norm_sqr();
        let d = self.s12.norm_sqr() + self.s22.norm_sqr();
        let b = self.s11.conj() * self.s12 + self.s21.conj() * self.s22;
        0.5 * (a + d + libm::sqrt((a - d) * (a - d) + 4.0 * b.norm_sqr()))
    }
}
