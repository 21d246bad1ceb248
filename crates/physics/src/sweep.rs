//! Cascades over many frequencies without allocation.

use crate::lanes::{Chains, Complexes, LANES, Lane, MAX_PHASE, each, exp_negative, sin_cos};
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

impl Chain {
    /// Chain matrix of a scattering matrix, times its S21 (so that S21 = 0 stays finite).
    fn of_scattering(s: SMatrix) -> Self {
        let one = cx::real(1.0);
        let cross = s.s12 * s.s21;
        let (p, q) = (one + s.s11, one - s.s11);
        let (u, v) = (one + s.s22, one - s.s22);
        Self {
            a: (p * v + cross) * 0.5,
            b: (p * u - cross) * 0.5,
            c: (q * v - cross) * 0.5,
            d: (q * u + cross) * 0.5,
        }
    }
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
                let Chain { a, b, c, d } = Chain::of_scattering(s);
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

/// Evaluates the cascade at every frequency of `f_hz` (> 0, hertz) into `out`; the shorter of the
/// two decides how many are done, and that number is returned. No allocation. Agrees with [`at`]
/// to rounding.
pub fn sweep(elements: &[Element], f_hz: &[f64], r0_ohm: f64, out: &mut [SMatrix]) -> usize {
    let n = f_hz.len().min(out.len());
    for (f, out) in f_hz[..n].chunks(LANES).zip(out[..n].chunks_mut(LANES)) {
        block(elements, f, r0_ohm, out);
    }
    n
}

/// Radians per hertz of a line.
fn phase_per_hz(length_m: f64, velocity_factor: f64) -> f64 {
    2.0 * PI * length_m / (C0 * velocity_factor)
}

/// One block of at most [`LANES`] frequencies.
// one index for a dozen arrays: what the vectoriser wants
#[allow(clippy::needless_range_loop)]
fn block(elements: &[Element], f_hz: &[f64], r0_ohm: f64, out: &mut [SMatrix]) {
    let highest = f_hz.iter().fold(0.0, |a: f64, f| a.max(*f));
    let simple = f_hz.iter().all(|f| f.is_finite() && *f >= 0.0)
        && elements.iter().all(|e| match *e {
            Element::Line {
                length_m,
                velocity_factor,
                loss,
                ..
            } => {
                let phase = phase_per_hz(length_m, velocity_factor) * highest;
                (0.0..MAX_PHASE).contains(&phase) && loss.k1 >= 0.0 && loss.k2 >= 0.0
            }
            Element::SqrtLoss { k_db } => k_db >= 0.0,
            _ => true,
        });
    if !simple {
        for (f, s) in f_hz.iter().zip(out) {
            *s = at(elements, *f, r0_ohm);
        }
        return;
    }
    // a last block that is not full repeats its last frequency
    let last = f_hz[f_hz.len() - 1];
    let f: Lane = each(|i| f_hz.get(i).copied().unwrap_or(last));
    let mhz = each(|i| f[i] * 1e-6);
    let root = each(|i| libm::sqrt(mhz[i]));
    let per_hz = each(|i| 1.0 / f[i]);

    let mut m = Chains::through();
    let (mut k21, mut k12) = (cx::real(2.0), cx::real(2.0));
    for element in elements {
        match *element {
            Element::Line {
                length_m,
                r0_ohm: z0,
                velocity_factor,
                loss,
            } => {
                let (kc, kd) = (loss.k1 / DB_PER_NEPER, loss.k2 / DB_PER_NEPER);
                let turn = phase_per_hz(length_m, velocity_factor);
                let per_beta = C0 * velocity_factor / (2.0 * PI);
                let (z, y) = (z0 / r0_ohm, r0_ohm / z0);
                for i in 0..LANES {
                    let (ac, ad) = (kc * root[i], kd * mhz[i]);
                    let al = (ac + ad) * length_m;
                    let e = exp_negative(-2.0 * al);
                    let (sin, cos) = sin_cos(turn * f[i]);
                    let (plus, minus) = (0.5 + 0.5 * e, 0.5 - 0.5 * e);
                    let (sh, ch) = ((minus * cos, plus * sin), (plus * cos, minus * sin));
                    let x = (ac - ad) * per_beta * per_hz[i];
                    let y = y / (1.0 + x * x);
                    let b = ((sh.0 + x * sh.1) * z, (sh.1 - x * sh.0) * z);
                    let c = ((sh.0 - x * sh.1) * y, (sh.1 + x * sh.0) * y);
                    m.append(i, ch, b, c, ch);
                    m.nepers[i] += al;
                }
            }
            Element::Attenuator { loss_db } => {
                let t = from_db(-loss_db);
                for i in 0..LANES {
                    m.attenuate(i, 0.5 + 0.5 * t, 0.5 - 0.5 * t);
                    m.nepers[i] += loss_db / DB_PER_NEPER;
                }
            }
            Element::SqrtLoss { k_db } => {
                // √GHz from √MHz
                let k = k_db / DB_PER_NEPER * libm::sqrt(1e-3);
                for i in 0..LANES {
                    let al = k * root[i];
                    let t = exp_negative(-2.0 * al);
                    m.attenuate(i, 0.5 + 0.5 * t, 0.5 - 0.5 * t);
                    m.nepers[i] += al;
                }
            }
            Element::Series { ohm, henry } => {
                let (r, l) = (ohm / r0_ohm, 2.0 * PI * henry / r0_ohm);
                for i in 0..LANES {
                    let x = l * f[i];
                    m.b.re[i] += m.a.re[i] * r - m.a.im[i] * x;
                    m.b.im[i] += m.a.im[i] * r + m.a.re[i] * x;
                    m.d.re[i] += m.c.re[i] * r - m.c.im[i] * x;
                    m.d.im[i] += m.c.im[i] * r + m.c.re[i] * x;
                }
            }
            Element::Shunt { siemens, farad } => {
                let (g, c) = (siemens * r0_ohm, 2.0 * PI * farad * r0_ohm);
                for i in 0..LANES {
                    let b = c * f[i];
                    m.a.re[i] += m.b.re[i] * g - m.b.im[i] * b;
                    m.a.im[i] += m.b.im[i] * g + m.b.re[i] * b;
                    m.c.re[i] += m.d.re[i] * g - m.d.im[i] * b;
                    m.c.im[i] += m.d.im[i] * g + m.d.re[i] * b;
                }
            }
            Element::Fixed(s) => {
                let fixed = Chain::of_scattering(s);
                let pair = |z: Complex64| (z.re, z.im);
                for i in 0..LANES {
                    let [a, b, c, d] = [fixed.a, fixed.b, fixed.c, fixed.d].map(pair);
                    m.append(i, a, b, c, d);
                }
                k21 *= s.s21;
                k12 *= s.s12;
            }
        }
    }
    finish(&m, k12, k21, out);
}

/// Scattering matrices of a block of chain matrices.
fn finish(m: &Chains, k12: Complex64, k21: Complex64, out: &mut [SMatrix]) {
    let scale = each(|i| exp_negative(-m.nepers[i]));
    for (i, s) in out.iter_mut().enumerate() {
        let at = |z: &Complexes| cx::c(z.re[i], z.im[i]);
        let (a, b, c, d) = (at(&m.a), at(&m.b), at(&m.c), at(&m.d));
        let sum = a + b + c + d;
        let over = sum.conj() * (1.0 / sum.norm_sqr());
        let through = over * scale[i];
        *s = SMatrix {
            s11: (a + b - c - d) * over,
            s12: k12 * through,
            s21: k21 * through,
            s22: (b + d - a - c) * over,
        };
    }
}
