//! S-, Z-, Y-, H- and G-parameters of one frequency into each other, and S-parameters into
//! another reference. Power waves with real reference resistances (Kurokawa, IEEE Trans. MTT-13,
//! 1965), where they equal pseudo waves and travelling waves; two-port formulas as in Frickey,
//! IEEE Trans. MTT-42, 1994, table I (from memory), checked against scikit-rf.
//!
//! Matrices are row-major slices of length n·n: element (i, j) at `i * n + j`, so S21 of a
//! two-port is at 2.

use crate::matrix::{ONE, right_divide};
use num_complex::Complex64;

/// The network parameters that a file holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Parameter {
    /// Scattering parameters, no unit.
    #[default]
    S,
    /// Impedances, ohm.
    Z,
    /// Admittances, siemens.
    Y,
    /// Hybrid parameters of a two-port, V1 and I2 from I1 and V2: ohm, 1, 1, siemens.
    H,
    /// Inverse hybrid parameters of a two-port, I1 and V2 from V1 and I2: siemens, 1, 1, ohm.
    G,
}

impl Parameter {
    /// The letter in the option line.
    #[must_use]
    pub fn letter(self) -> char {
        match self {
            Parameter::S => 'S',
            Parameter::Z => 'Z',
            Parameter::Y => 'Y',
            Parameter::H => 'H',
            Parameter::G => 'G',
        }
    }

    /// True if only two-ports have them.
    #[must_use]
    pub fn is_hybrid(self) -> bool {
        matches!(self, Parameter::H | Parameter::G)
    }
}

/// Divides parameters in ohm and siemens by the references, as files of version 1 hold them:
/// Zij/√(Ri·Rj), Yij·√(Ri·Rj), and for H and G as their units demand. S stays.
///
/// # Panics
/// If the matrix has not n·n elements for the n references, or n is not 2 for H and G.
pub fn normalise(parameter: Parameter, m: &mut [Complex64], z0: &[f64]) {
    scale(parameter, m, z0, false);
}

/// The reverse of [`normalise`].
///
/// # Panics
/// As [`normalise`].
pub fn denormalise(parameter: Parameter, m: &mut [Complex64], z0: &[f64]) {
    scale(parameter, m, z0, true);
}

fn scale(parameter: Parameter, m: &mut [Complex64], z0: &[f64], back: bool) {
    let n = z0.len();
    assert_eq!(m.len(), n * n, "a square matrix");
    assert!(
        !parameter.is_hybrid() || n == 2,
        "hybrid parameters are for two ports"
    );
    let mut multiply = |i: usize, j: usize, factor: f64| {
        let x = &mut m[i * n + j];
        *x = if back { *x / factor } else { *x * factor };
    };
    match parameter {
        Parameter::S => {}
        Parameter::Z | Parameter::Y => {
            for i in 0..n {
                for j in 0..n {
                    // equal references give exactly R, not √(R·R)
                    let mean = if z0[i] == z0[j] {
                        z0[i]
                    } else {
                        (z0[i] * z0[j]).sqrt()
                    };
                    multiply(
                        i,
                        j,
                        if parameter == Parameter::Z {
                            1.0 / mean
                        } else {
                            mean
                        },
                    );
                }
            }
        }
        Parameter::H => {
            let ratio = (z0[1] / z0[0]).sqrt();
            multiply(0, 0, 1.0 / z0[0]);
            multiply(0, 1, ratio);
            multiply(1, 0, ratio);
            multiply(1, 1, z0[1]);
        }
        Parameter::G => {
            let ratio = (z0[0] / z0[1]).sqrt();
            multiply(0, 0, z0[0]);
            multiply(0, 1, ratio);
            multiply(1, 0, ratio);
            multiply(1, 1, 1.0 / z0[1]);
        }
    }
}

/// `(1 + sign·m)` and `(1 - sign·m)`.
fn bilinear(m: &[Complex64], n: usize) -> (Vec<Complex64>, Vec<Complex64>) {
    let mut plus = m.to_vec();
    let mut minus: Vec<Complex64> = m.iter().map(|z| -z).collect();
    for i in 0..n {
        plus[i * n + i] += ONE;
        minus[i * n + i] += ONE;
    }
    (plus, minus)
}

fn quotient(m: &mut [Complex64], top: &[Complex64], mut bottom: Vec<Complex64>, n: usize) -> bool {
    m.copy_from_slice(top);
    right_divide(m, &mut bottom, n)
}

/// Turns *normalised* parameters of an `n`-port into S-parameters, in place. False (and `m` of
/// no meaning) if the network has none or they are not finite.
///
/// # Panics
/// If `m` has not n·n elements, or n is not 2 for H and G.
#[must_use]
pub fn s_from_normalised(parameter: Parameter, m: &mut [Complex64], n: usize) -> bool {
    assert_eq!(m.len(), n * n, "a square matrix");
    match parameter {
        Parameter::S => m.iter().all(|z| z.is_finite()),
        Parameter::Z => {
            let (plus, mut minus) = bilinear(m, n);
            minus.iter_mut().for_each(|z| *z = -*z);
            quotient(m, &minus, plus, n)
        }
        Parameter::Y => {
            let (plus, minus) = bilinear(m, n);
            quotient(m, &minus, plus, n)
        }
        Parameter::H | Parameter::G => {
            let [a, b, c, d] = two_port(m);
            let cross = b * c;
            let bottom = (a + 1.0) * (d + 1.0) - cross;
            let top = if parameter == Parameter::H {
                [
                    (a - 1.0) * (d + 1.0) - cross,
                    b * 2.0,
                    c * -2.0,
                    (a + 1.0) * (1.0 - d) + cross,
                ]
            } else {
                [
                    (1.0 - a) * (d + 1.0) + cross,
                    b * -2.0,
                    c * 2.0,
                    (a + 1.0) * (d - 1.0) - cross,
                ]
            };
            put(m, top, bottom)
        }
    }
}

/// Turns S-parameters of an `n`-port into *normalised* other ones, in place. False (and `m` of
/// no meaning) if there are none: an open has no Z, a through line of no length neither Z nor Y.
///
/// # Panics
/// As [`s_from_normalised`].
#[must_use]
pub fn normalised_from_s(parameter: Parameter, m: &mut [Complex64], n: usize) -> bool {
    assert_eq!(m.len(), n * n, "a square matrix");
    match parameter {
        Parameter::S => m.iter().all(|z| z.is_finite()),
        Parameter::Z => {
            let (plus, minus) = bilinear(m, n);
            quotient(m, &plus, minus, n)
        }
        Parameter::Y => {
            let (plus, minus) = bilinear(m, n);
            quotient(m, &minus, plus, n)
        }
        Parameter::H | Parameter::G => {
            let [a, b, c, d] = two_port(m);
            let cross = b * c;
            let (p, q) = ((a + 1.0) * (d + 1.0) - cross, (1.0 - a) * (1.0 - d) - cross);
            if parameter == Parameter::H {
                let bottom = (1.0 - a) * (d + 1.0) + cross;
                put(m, [p, b * 2.0, c * -2.0, q], bottom)
            } else {
                let bottom = (a + 1.0) * (1.0 - d) + cross;
                put(m, [q, b * -2.0, c * 2.0, p], bottom)
            }
        }
    }
}

fn two_port(m: &[Complex64]) -> [Complex64; 4] {
    m.try_into().expect("hybrid parameters are for two ports")
}

fn put(m: &mut [Complex64], top: [Complex64; 4], bottom: Complex64) -> bool {
    let size = top.iter().map(Complex64::norm_sqr).fold(1.0, f64::max);
    if bottom.norm_sqr() <= size * 1e-30 {
        return false;
    }
    for (x, t) in m.iter_mut().zip(top) {
        *x = t / bottom;
    }
    m.iter().all(|z| z.is_finite())
}

/// Turns S-parameters in the references `from` into those in the references `to` (ohm), in
/// place. It needs no Z or Y, so it works for opens, shorts and through lines. False only if
/// the network would be singular in the new reference, which a passive one cannot be.
///
/// With r = (to − from)/(to + from) of each port on the diagonal and K of the wave scaling,
/// S' = K·(S − r)·(1 − r·S)⁻¹·K⁻¹.
///
/// # Panics
/// If the matrix has not n·n elements for n references before and after.
#[must_use]
pub fn re_reference(s: &mut [Complex64], from: &[f64], to: &[f64]) -> bool {
    let n = from.len();
    assert!(s.len() == n * n && to.len() == n, "a square matrix");
    if from == to {
        return s.iter().all(|z| z.is_finite());
    }
    let r: Vec<f64> = from
        .iter()
        .zip(to)
        .map(|(a, b)| (b - a) / (b + a))
        .collect();
    let mut bottom: Vec<Complex64> = (0..n * n).map(|k| s[k] * -r[k / n]).collect();
    for i in 0..n {
        bottom[i * n + i] += ONE;
        s[i * n + i] -= r[i];
    }
    if !right_divide(s, &mut bottom, n) {
        return false;
    }
    let scale = |a: f64, b: f64| (a + b) / (a * b).sqrt();
    let k: Vec<f64> = from.iter().zip(to).map(|(a, b)| scale(*a, *b)).collect();
    for i in 0..n {
        for j in 0..n {
            if i != j {
                s[i * n + j] *= k[i] / k[j];
            }
        }
    }
    s.iter().all(|z| z.is_finite())
}
