//! Cascades over many frequencies without allocation.

use crate::{C0, DB_PER_NEPER, SMatrix, TwoTerm, cx};
use core::f64::consts::PI;
use downlead_quantity::from_db;
use num_complex::Complex64;

/// One element of a swept cascade, described so that it can be evaluated at any frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Element {
    /// A line with two-term attenuation.
    Line {
        /// Length, m.
        length_m: f64,
        /// Nominal characteristic impedance, ohm.
        r0_ohm: f64,
        /// Velocity factor.
        velocity_factor: f64,
        /// Attenuation.
        loss: TwoTerm,
    },
    /// A matched attenuator, dB.
    Attenuator {
        /// Loss, dB.
        loss_db: f64,
    },
    /// A matched loss `k·√f`, f in GHz: a connector.
    SqrtLoss {
        /// Coefficient, dB/√GHz.
        k_db: f64,
    },
    /// Resistance and inductance in series.
    Series {
        /// Ohm.
        ohm: f64,
        /// Henry.
        henry: f64,
    },
    /// Conductance and capacitance across the line.
    Shunt {
        /// Siemens.
        siemens: f64,
        /// Farad.
        farad: f64,
    },
    /// A two-port that does not change with frequency, in the sweep's reference impedance.
    Fixed(SMatrix),
}

/// Chain matrix divided by a positive real factor whose logarithm is kept apart, so that very
/// lossy chains do not overflow.
#[derive(Clone, Copy)]
struct Chain {
    a: Complex64,
    b: Complex64,
    c: Complex64,
    d: Complex64,
}

/// Scattering matrix of the cascade of `elements` (in the order the power flows) at `f_hz` in the
/// reference `r0_ohm`.
#[must_use]
pub fn at(elements: &[Element], f_hz: f64, r0_ohm: f64) -> SMatrix {
    let mhz = f_hz * 1e-6;
    let root = libm::sqrt(mhz);
    let omega = 2.0 * PI * f_hz;
    // voltages over √R0 and currents times √R0: the reference drops out
    let mut m = Chain {
        a: cx::real(1.0),
        b: cx::real(0.0),
        c: cx::real(0.0),
        d: cx::real(1.0),
    };
    let mut nepers = 0.0;
    let mut attenuator_db = 0.0;
    // what the chain matrices of fixed two-ports were multiplied by, each way
    let (mut k21, mut k12) = (cx::real(1.0), cx::real(1.0));
    for element in elements {
        match *element {
            Element::Line {
                length_m,
                r0_ohm: z0,
                velocity_factor,
                loss,
            } => {
                let (ac, ad) = (loss.k1 * root / DB_PER_NEPER, loss.k2 * mhz / DB_PER_NEPER);
                let beta = omega / (C0 * velocity_factor);
                let al = (ac + ad) * length_m;
                let (sh, ch) = cx::sinh_cosh_scaled(cx::c(al, beta * length_m));
                // Zc = z0 (1 − jx), 1/Zc = (1 + jx)/(z0 (1 + x²))
                let x = (ac - ad) / beta;
                let z = z0 / r0_ohm;
                let b = cx::c(sh.re + x * sh.im, sh.im - x * sh.re) * z;
                let c = cx::c(sh.re - x * sh.im, sh.im + x * sh.re) * (1.0 / (z * (1.0 + x * x)));
                m = Chain {
                    a: m.a * ch + m.b * c,
                    b: m.a * b + m.b * ch,
                    c: m.c * ch + m.d * c,
                    d: m.c * b + m.d * ch,
                };
                nepers += al;
            }
            Element::Attenuator { loss_db } => {
                m = attenuate(m, from_db(-loss_db));
                attenuator_db += loss_db;
            }
            Element::SqrtLoss { k_db } => {
                let loss_db = k_db * libm::sqrt(f_hz * 1e-9);
                m = attenuate(m, from_db(-loss_db));
                attenuator_db += loss_db;
            }
            Element::Series { ohm, henry } => {
                let z = cx::c(ohm, omega * henry) / r0_ohm;
                m.b += m.a * z;
                m.d += m.c * z;
            }
            Element::Shunt { siemens, farad } => {
                let y = cx::c(siemens, omega * farad) * r0_ohm;
                m.a += m.b * y;
                m.c += m.d * y;
            }
            Element::Fixed(s) => {
                // chain matrix times S21 (so that S21 = 0 stays finite)
                let one = cx::real(1.0);
                let cross = s.s12 * s.s21;
                let (p, q) = (one + s.s11, one - s.s11);
                let (u, v) = (one + s.s22, one - s.s22);
                let a = (p * v + cross) * 0.5;
                let b = (p * u - cross) * 0.5;
                let c = (q * v - cross) * 0.5;
                let d = (q * u + cross) * 0.5;
                m = Chain {
                    a: m.a * a + m.b * c,
                    b: m.a * b + m.b * d,
                    c: m.c * a + m.d * c,
                    d: m.c * b + m.d * d,
                };
                k21 *= s.s21;
                k12 *= s.s12;
            }
        }
    }
    let scale = libm::exp(-nepers) * from_db(-0.5 * attenuator_db);
    let d = cx::real(1.0) / (m.a + m.b + m.c + m.d);
    SMatrix {
        s11: (m.a + m.b - m.c - m.d) * d,
        s12: k12 * d * (2.0 * scale),
        s21: k21 * d * (2.0 * scale),
        s22: (m.b + m.d - m.a - m.c) * d,
    }
}

/// Appends a matched attenuator of power ratio `t` (chain matrix times its amplitude ratio).
fn attenuate(m: Chain, t: f64) -> Chain {
    let (same, cross) = (0.5 * (1.0 + t), 0.5 * (1.0 - t));
    Chain {
        a: m.a * same + m.b * cross,
        b: m.a * cross + m.b * same,
        c: m.c * same + m.d * cross,
        d: m.c * cross + m.d * same,
    }
}

/// Evaluates the cascade at every frequency of `f_hz` into `out`; the shorter of the two decides
/// how many are done, and that number is returned. No allocation.
pub fn sweep(elements: &[Element], f_hz: &[f64], r0_ohm: f64, out: &mut [SMatrix]) -> usize {
    let n = f_hz.len().min(out.len());
    for (f, s) in f_hz.iter().zip(out.iter_mut()) {
        *s = at(elements, *f, r0_ohm);
    }
    n
}
