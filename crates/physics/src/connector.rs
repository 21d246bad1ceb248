//! Connectors: square-root loss and impedance bumps.

use crate::{C0, LineParams, SMatrix, mismatch};
use core::f64::consts::PI;

/// Loss in dB of a mated pair by the square-root rule: `k·√f`, f in GHz, `k` in dB/√GHz.
///
/// The rule and values near 0.05 for N are those of the IEC 61169 sectional standards and
/// MIL-PRF-39012 (values from memory); the loss of a pair includes its reflection
/// (MIL-PRF-39012E, paragraph after 4.6.23).
#[must_use]
pub fn sqrt_loss(k_db_per_sqrt_ghz: f64, f_hz: f64) -> f64 {
    k_db_per_sqrt_ghz * libm::sqrt(f_hz * 1e-9)
}

/// A connector of constant impedance that differs from the line's: a short lossless line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bump {
    /// Impedance inside the connector, ohm.
    pub z_ohm: f64,
    /// Electrical length, metres in vacuum.
    pub electrical_m: f64,
}

impl Bump {
    /// Scattering matrix in the reference `r0_ohm` at `f_hz`.
    #[must_use]
    pub fn network(&self, f_hz: f64, r0_ohm: f64) -> SMatrix {
        SMatrix::line(
            &LineParams::lossless(self.z_ohm, 1.0),
            f_hz,
            self.electrical_m,
            r0_ohm,
        )
    }

    /// |S11| in the reference `r0_ohm` at `f_hz`.
    #[must_use]
    pub fn gamma(&self, f_hz: f64, r0_ohm: f64) -> f64 {
        crate::cx::abs(self.network(f_hz, r0_ohm).s11)
    }

    /// Reflective loss in dB between matched ends.
    #[must_use]
    pub fn loss(&self, f_hz: f64, r0_ohm: f64) -> f64 {
        mismatch::mismatch_loss(self.gamma(f_hz, r0_ohm))
    }

    /// Estimate of |S11| of a short bump: `(π f L/c)·|Z/Z0 − Z0/Z|`.
    #[must_use]
    pub fn gamma_small(&self, f_hz: f64, r0_ohm: f64) -> f64 {
        let q = self.z_ohm / r0_ohm;
        PI * f_hz * self.electrical_m / C0 * (q - 1.0 / q).abs()
    }
}
