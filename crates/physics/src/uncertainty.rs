//! Uncertainty: shapes of distributions, combination with shared causes, mismatch, instruments.
//!
//! Rules of the GUM (JCGM 100:2008; section numbers from memory).

use crate::DB_PER_NEPER;

/// Standard uncertainty of a rectangular distribution of half-width `a`: `a/√3` (GUM 4.3.7).
#[must_use]
pub fn rectangular(half_width: f64) -> f64 {
    half_width / libm::sqrt(3.0)
}

/// Standard uncertainty of a U-shaped (arcsine) distribution: `a/√2`.
#[must_use]
pub fn u_shaped(half_width: f64) -> f64 {
    half_width / core::f64::consts::SQRT_2
}

/// Root of the sum of squares (independent contributions, GUM 5.1.2).
#[must_use]
pub fn rss(contributions: impl IntoIterator<Item = f64>) -> f64 {
    libm::sqrt(contributions.into_iter().map(|u| u * u).sum())
}

/// One contribution to a result: sensitivity times standard uncertainty, with its sign, and the
/// cause it comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// Identity of the cause; contributions of one cause move together.
    pub cause: usize,
    /// Signed contribution, in the unit of the result.
    pub value: f64,
}

/// Effective degrees of freedom of a combined uncertainty from contributions (u, degrees of
/// freedom; infinite allowed): Welch–Satterthwaite (GUM G.4).
#[must_use]
pub fn welch_satterthwaite(contributions: &[(f64, f64)]) -> f64 {
    let total: f64 = contributions.iter().map(|c| c.0 * c.0).sum();
    let den: f64 = contributions
        .iter()
        .map(|c| c.0 * c.0 * c.0 * c.0 / c.1)
        .sum();
    if den == 0.0 {
        return f64::INFINITY;
    }
    total * total / den
}

/// Probability of a normal variable outside of two standard deviations.
pub(crate) const OUTSIDE_TWO_SIGMA: f64 = 0.045_500_263_896_358_4;

/// Coverage factor for 95.45 % (two sigma) with `dof` degrees of freedom: two-sided quantile of
/// Student's t (GUM G.3, table G.2; effective degrees are truncated to a whole number there, not
/// here). 2 for infinite; NaN below 1.
#[must_use]
pub fn coverage_factor(dof: f64) -> f64 {
    if dof.is_infinite() {
        return 2.0;
    }
    if dof.is_nan() || dof < 1.0 {
        return f64::NAN;
    }
    // p = 0.9545 rounds to k = 2 for a normal distribution, as the GUM's table does
    crate::measure::student_two_sided(OUTSIDE_TWO_SIGMA, dof)
}

/// Regularised incomplete beta function by its continued fraction (Abramowitz and Stegun
/// 26.5.8, Lentz's method).
pub(crate) fn incomplete_beta(a: f64, b: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - incomplete_beta(b, a, 1.0 - x);
    }
    let front = libm::exp(
        libm::lgamma(a + b) - libm::lgamma(a) - libm::lgamma(b)
            + a * libm::log(x)
            + b * libm::log1p(-x),
    ) / a;
    let tiny = 1e-300;
    let fix = |v: f64| if v.abs() < tiny { tiny } else { v };
    let mut c = 1.0;
    let mut d = 1.0 / fix(1.0 - (a + b) * x / (a + 1.0));
    let mut h = d;
    for m in 1..500_u32 {
        let m = f64::from(m);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / fix(1.0 + even * d);
        c = fix(1.0 + even / c);
        h *= d * c;
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / fix(1.0 + odd * d);
        c = fix(1.0 + odd / c);
        let step = d * c;
        h *= step;
        if (step - 1.0).abs() < 1e-15 {
            break;
        }
    }
    front * h
}

/// One state of a two-port in a substitution measurement: sizes of its S-parameters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inserted {
    /// |S11|.
    pub s11: f64,
    /// |S22|.
    pub s22: f64,
    /// |S21| (amplitude, 1 for a through connection).
    pub s21: f64,
}

/// Standard uncertainty in dB of an insertion loss measured by substitution (`a` replaced by `b`)
/// between a source and a load of |Γ| `source` and `load`.
///
/// Source: Harris and Warner 1981, as used in accreditation guides (from memory); checked by
/// simulation.
#[must_use]
pub fn mismatch_substitution(source: f64, load: f64, a: Inserted, b: Inserted) -> f64 {
    let sq = |x: f64| x * x;
    let sum = sq(source) * (sq(a.s11) + sq(b.s11))
        + sq(load) * (sq(a.s22) + sq(b.s22))
        + sq(source * load) * (sq(sq(a.s21)) + sq(sq(b.s21)));
    DB_PER_NEPER * libm::sqrt(0.5 * sum)
}

/// `En` number of two results with their expanded uncertainties: agreement when |En| ≤ 1
/// (ISO/IEC 17043, ISO 13528; from memory).
#[must_use]
pub fn en(measured: f64, expected: f64, expanded_measured: f64, expanded_expected: f64) -> f64 {
    (measured - expected) / libm::hypot(expanded_measured, expanded_expected)
}
