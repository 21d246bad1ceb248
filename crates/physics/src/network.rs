//! Two-ports as scattering matrices in a real reference impedance.

use crate::{LineParams, cx};
use downlead_quantity::{from_db, to_db};
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

const ZERO: Complex64 = Complex64::new(0.0, 0.0);
const ONE: Complex64 = Complex64::new(1.0, 0.0);

impl SMatrix {
    /// A through connection.
    pub const IDENTITY: Self = Self {
        s11: ZERO,
        s12: ONE,
        s21: ONE,
        s22: ZERO,
    };

    /// A reciprocal two-port.
    #[must_use]
    pub const fn reciprocal(s11: Complex64, s21: Complex64, s22: Complex64) -> Self {
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

    /// A matched attenuator of `loss_db`, no phase.
    #[must_use]
    pub fn attenuator(loss_db: f64) -> Self {
        Self::reciprocal(ZERO, cx::real(from_db(-0.5 * loss_db)), ZERO)
    }

    /// A lossless reflective device with |S11| = |S22| = `gamma` and real entries; its insertion
    /// loss is the mismatch loss of `gamma`.
    #[must_use]
    pub fn reflective(gamma: f64) -> Self {
        let t = libm::sqrt((1.0 - gamma) * (1.0 + gamma));
        Self::reciprocal(cx::real(gamma), cx::real(t), cx::real(-gamma))
    }

    /// A device with a measured insertion loss (|S21| between matched ends) and reflections; all
    /// entries real.
    #[must_use]
    pub fn device(loss_db: f64, s11: f64, s22: f64) -> Self {
        Self::reciprocal(
            cx::real(s11),
            cx::real(from_db(-0.5 * loss_db)),
            cx::real(s22),
        )
    }

    /// A series impedance `z` in the reference `r0_ohm`.
    #[must_use]
    pub fn series(z: Complex64, r0_ohm: f64) -> Self {
        let d = z + 2.0 * r0_ohm;
        Self::reciprocal(z / d, cx::real(2.0 * r0_ohm) / d, z / d)
    }

    /// A shunt admittance `y` (siemens) in the reference `r0_ohm`.
    #[must_use]
    pub fn shunt(y: Complex64, r0_ohm: f64) -> Self {
        let n = y * r0_ohm;
        let d = n + 2.0;
        Self::reciprocal(-n / d, cx::real(2.0) / d, -n / d)
    }

    /// A step from a line of `from_ohm` (port 1) to one of `to_ohm` (port 2), each port in its
    /// own impedance.
    #[must_use]
    pub fn step(from_ohm: f64, to_ohm: f64) -> Self {
        let rho = (to_ohm - from_ohm) / (to_ohm + from_ohm);
        let t = 2.0 * libm::sqrt(from_ohm * to_ohm) / (to_ohm + from_ohm);
        Self::reciprocal(cx::real(rho), cx::real(t), cx::real(-rho))
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

    /// This two-port followed by `next` (port 2 of this one to port 1 of the next):
    /// `S21 = S21a S21b/(1 − S22a S11b)` and so on.
    ///
    /// Source: Pozar 4e, ch. 4, signal flow graphs (section from memory).
    #[must_use]
    pub fn then(&self, next: &Self) -> Self {
        let d = ONE / (ONE - self.s22 * next.s11);
        Self {
            s11: self.s11 + self.s12 * self.s21 * next.s11 * d,
            s12: self.s12 * next.s12 * d,
            s21: self.s21 * next.s21 * d,
            s22: next.s22 + next.s12 * next.s21 * self.s22 * d,
        }
    }

    /// Cascade of all, in the order the power flows; a through connection for none.
    #[must_use]
    pub fn cascade<'a>(parts: impl IntoIterator<Item = &'a Self>) -> Self {
        parts
            .into_iter()
            .fold(Self::IDENTITY, |all, part| all.then(part))
    }

    /// The same two-port in another real reference impedance at both ports, ohm.
    #[must_use]
    pub fn rereferenced(&self, from_ohm: f64, to_ohm: f64) -> Self {
        SMatrix::step(to_ohm, from_ohm)
            .then(self)
            .then(&SMatrix::step(from_ohm, to_ohm))
    }

    /// Reflection seen into port 1 with `load` on port 2.
    #[must_use]
    pub fn gamma_in(&self, load: Complex64) -> Complex64 {
        self.s11 + self.s12 * self.s21 * load / (ONE - self.s22 * load)
    }

    /// Reflection seen into port 2 with a source of reflection `source` on port 1.
    #[must_use]
    pub fn gamma_out(&self, source: Complex64) -> Complex64 {
        self.s22 + self.s12 * self.s21 * source / (ONE - self.s11 * source)
    }

    /// Insertion gain in dB between matched ends, `20 log10|S21|` (negative for a loss).
    #[must_use]
    pub fn gain(&self) -> f64 {
        to_db(self.s21.norm_sqr())
    }

    /// Transducer gain in dB: power in the load over the power available from the source.
    ///
    /// Source: Pozar 4e, ch. 12, two-port power gains (section from memory).
    #[must_use]
    pub fn transducer_gain(&self, source: Complex64, load: Complex64) -> f64 {
        let g_in = self.gamma_in(load);
        let n = (1.0 - source.norm_sqr()) * self.s21.norm_sqr() * (1.0 - load.norm_sqr());
        let d = (ONE - source * g_in).norm_sqr() * (ONE - self.s22 * load).norm_sqr();
        to_db(n / d)
    }

    /// Operating (power) gain in dB: power in the load over the net power into port 1.
    ///
    /// Source: Pozar 4e, ch. 12 (section from memory).
    #[must_use]
    pub fn operating_gain(&self, load: Complex64) -> f64 {
        let n = self.s21.norm_sqr() * (1.0 - load.norm_sqr());
        let d = (1.0 - self.gamma_in(load).norm_sqr()) * (ONE - self.s22 * load).norm_sqr();
        to_db(n / d)
    }

    /// Available gain in dB: power available at port 2 over that available from the source; its
    /// negative is the loss that makes the noise figure of a passive two-port.
    ///
    /// Source: Pozar 4e, ch. 12 (section from memory).
    #[must_use]
    pub fn available_gain(&self, source: Complex64) -> f64 {
        let n = (1.0 - source.norm_sqr()) * self.s21.norm_sqr();
        let d = (ONE - self.s11 * source).norm_sqr() * (1.0 - self.gamma_out(source).norm_sqr());
        to_db(n / d)
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

    /// Whether the two-port gives out no more power than it gets, within `tolerance` of power.
    #[must_use]
    pub fn is_passive(&self, tolerance: f64) -> bool {
        self.max_power_out() <= 1.0 + tolerance
    }
}
