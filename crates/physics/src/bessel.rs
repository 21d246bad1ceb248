//! Modified Bessel functions of complex argument, as far as round conductors need them.
//!
//! Scaled so that nothing overflows: `e^(−z) I_n(z)` and `e^(z) K_n(z)` for n = 0, 1 and Re z > 0.
//! Power series for small arguments, asymptotic series for large ones (Abramowitz and Stegun
//! 9.6.10 to 9.6.13 and 9.7.1, 9.7.2).

use crate::construction::{CladWire, skin_depth};
use crate::cx;
use core::f64::consts::PI;
use num_complex::Complex64;

/// Above this magnitude the asymptotic series are used: their smallest term is about
/// `e^(−2|z|)`, and the power series of K loses about `e^(1.7|z|)`, so both stay near 1e-9.
const SWITCH: f64 = 11.0;

/// Euler's constant.
const EULER: f64 = 0.577_215_664_901_532_9;

/// Scaled modified Bessel functions of order 0 and 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Modified {
    /// `e^(−z) I0(z)`.
    pub i0: Complex64,
    /// `e^(−z) I1(z)`.
    pub i1: Complex64,
    /// `e^(z) K0(z)`.
    pub k0: Complex64,
    /// `e^(z) K1(z)`.
    pub k1: Complex64,
}

/// Scaled I0, I1, K0, K1 of `z` with 0 < arg z ≤ π/4 (conductors have 45°); relative error below
/// 2e-8.
#[must_use]
pub fn modified(z: Complex64) -> Modified {
    if cx::abs(z) > SWITCH {
        asymptotic(z)
    } else {
        series(z)
    }
}

fn series(z: Complex64) -> Modified {
    let q = z * z * 0.25;
    let log = cx::ln(z * 0.5) + EULER;
    // I0 = Σ q^k/(k!)², I1 = z/2 Σ q^k/(k!(k+1)!), and the harmonic sums of K0, K1
    let mut t0 = cx::real(1.0);
    let mut t1 = cx::real(1.0);
    let mut i0 = t0;
    let mut i1 = t1;
    let mut h = 0.0; // harmonic number of k
    let mut s0 = cx::real(0.0);
    let mut s1 = cx::real(1.0); // (H_k + H_{k+1}) at k = 0
    for k in 1..80_u32 {
        let kf = f64::from(k);
        t0 = t0 * q / (kf * kf);
        t1 = t1 * q / (kf * (kf + 1.0));
        h += 1.0 / kf;
        i0 += t0;
        i1 += t1;
        s0 += t0 * h;
        s1 += t1 * (2.0 * h + 1.0 / (kf + 1.0));
        if t0.norm_sqr() < 1e-36 * i0.norm_sqr() {
            break;
        }
    }
    let i1 = z * 0.5 * i1;
    let k0 = s0 - log * i0;
    let k1 = cx::real(1.0) / z + log * i1 - z * 0.25 * s1;
    let (up, down) = (cx::exp(z), cx::exp(-z));
    Modified {
        i0: i0 * down,
        i1: i1 * down,
        k0: k0 * up,
        k1: k1 * up,
    }
}

fn asymptotic(z: Complex64) -> Modified {
    let sum = |mu: f64, sign: f64| {
        let mut term = cx::real(1.0);
        let mut total = term;
        for k in 1..60_u32 {
            let odd = f64::from(2 * k - 1);
            let next = term * (sign * (mu - odd * odd) / (8.0 * f64::from(k))) / z;
            // an asymptotic series is cut at its smallest term
            if next.norm_sqr() >= term.norm_sqr() || next.norm_sqr() < 1e-36 {
                break;
            }
            term = next;
            total += term;
        }
        total
    };
    let i = cx::real(1.0) / cx::sqrt(z * (2.0 * PI));
    let k = cx::sqrt(cx::real(0.5 * PI) / z);
    let (k0, k1) = (k * sum(0.0, 1.0), k * sum(4.0, 1.0));
    // the decaying part of I, e^(−2z) beside the growing one, still counts at |z| = 11; this
    // sign of it holds above the real axis
    let small = cx::c(0.0, 1.0 / PI) * cx::exp(z * -2.0);
    Modified {
        i0: i * sum(0.0, -1.0) + small * k0,
        i1: i * sum(4.0, -1.0) - small * k1,
        k0,
        k1,
    }
}

/// `(1 + j)/δ` times a radius.
fn skin_argument(radius_m: f64, delta_m: f64) -> Complex64 {
    cx::c(radius_m / delta_m, radius_m / delta_m)
}

/// Resistance of a solid wire over the skin-effect law.
pub(crate) fn wire_ratio(diameter_m: f64, resistivity: f64, f_hz: f64) -> f64 {
    let z = skin_argument(0.5 * diameter_m, skin_depth(resistivity, 1.0, f_hz));
    let m = modified(z);
    // surface impedance (1 + j)/(σδ) · I0/I1; the law is its real part with I0/I1 = 1
    (cx::c(1.0, 1.0) * m.i0 / m.i1).re
}

/// Resistance of a copper-clad steel wire over the skin-effect law of annealed copper.
///
/// In each layer E = A I0(γr) + B K0(γr) and H = (σ/γ)(A I1 − B K1); E/H is continuous at the
/// boundary and finite on the axis.
pub(crate) fn wire_ratio_clad(wire: &CladWire, f_hz: f64) -> f64 {
    let outer = 0.5 * wire.diameter_m;
    let core = outer - wire.copper_m;
    let d_cu = skin_depth(wire.copper_resistivity, 1.0, f_hz);
    let d_fe = skin_depth(wire.steel_resistivity, wire.steel_permeability, f_hz);
    let fe = modified(skin_argument(core, d_fe));
    let (x, y) = (skin_argument(core, d_cu), skin_argument(outer, d_cu));
    let (mx, my) = (modified(x), modified(y));
    // E/H of the core in units of the copper's wave impedance
    let q = fe.i0 / fe.i1 * (wire.steel_resistivity * d_cu / (wire.copper_resistivity * d_fe));
    let rho = (mx.i0 - q * mx.i1) / (mx.k0 + q * mx.k1);
    let back = rho * cx::exp((x - y) * 2.0);
    let ratio = (my.i0 - back * my.k0) / (my.i1 + back * my.k1);
    let to_annealed = libm::sqrt(wire.copper_resistivity / crate::RHO_COPPER);
    (cx::c(1.0, 1.0) * ratio).re * to_annealed
}
