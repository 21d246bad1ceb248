//! Connectors: square-root loss and impedance bumps.

use crate::{LineParams, SMatrix, mismatch};

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
}
