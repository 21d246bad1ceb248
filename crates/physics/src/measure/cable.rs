//! One verdict on a cable measured at several frequencies.

use super::compare::Verdict;
use super::correlated::Correlated;
use super::stats::chi_square_survival;
use crate::uncertainty::en;

/// Measured and expected at one frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// dB.
    pub measured_db: f64,
    /// dB.
    pub expected_db: f64,
    /// Standard uncertainty of the measurement, dB.
    pub u_measured_db: f64,
    /// Standard uncertainty of the expectation, dB (for En; what is common to all points also
    /// belongs into the shared part).
    pub u_expected_db: f64,
}

/// A cable against its expectation over all frequencies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WholeCable {
    /// Measured over expected, weighted mean (geometric).
    pub ratio: f64,
    /// Its natural logarithm.
    pub ln_ratio: f64,
    /// Standard uncertainty of that.
    pub u_ln: f64,
    /// Part of it from the measurements.
    pub u_random: f64,
    /// Part of it common to all points.
    pub u_shared: f64,
    /// Sum of squared deviations over their uncertainties (with what points share): whether one factor
    /// holds at all frequencies.
    pub chi2: f64,
    /// Degrees of freedom: points used less one.
    pub dof: usize,
    /// Probability of a larger χ²; NaN with one point.
    pub p: f64,
    /// Index of the point with the largest |En|.
    pub worst: usize,
    /// Its En number (k = 2), with its sign.
    pub worst_en: f64,
    /// Points used; the rest measured no loss, or one below its own expanded uncertainty.
    pub used: usize,
    /// `Differs` when the mean is beyond its expanded uncertainty, `CannotTell` when that exceeds
    /// a half (of the ratio), `Agrees` otherwise.
    pub verdict: Verdict,
}

/// Below this probability of χ² no one factor holds at all frequencies by the measurements alone.
/// Where a frequency differs beyond the uncertainty of the expectation too, a mean near one then says
/// nothing of the cable: too high here and too low there cancel in it (our choice).
pub const NO_ONE_FACTOR: f64 = 1e-3;

/// Weighted mean of `ln(measured/expected)` with what all points share added after (`u_shared`,
/// relative: length, common scale, library). Percentages of lost power must never be averaged:
/// opposite errors cancel in them.
///
/// Weights come from the measurements' uncertainty over the expected loss, so that a reading that
/// is low by chance does not weigh more. None when no point has a loss above its expanded
/// uncertainty.
///
/// `common` holds, for every cause that acts on several points (an error of one meter's full
/// scale, the scales of two meters, an adapter), its signed contribution to each point, dB: a part
/// of that point's `u_measured_db` that does not average out (GUM, JCGM 100:2008, 5.2.2).
#[must_use]
pub fn whole_cable(points: &[Point], common: &[Vec<f64>], u_shared: f64) -> Option<WholeCable> {
    let good = |p: &&Point| {
        p.measured_db > 0.0
            && p.expected_db > 2.0 * p.u_measured_db
            && p.u_measured_db > 0.0
            && p.measured_db.is_finite()
            && p.expected_db.is_finite()
    };
    let ln = |p: &Point| libm::log(p.measured_db / p.expected_db);
    let weight = |p: &Point| {
        let u = p.u_measured_db / p.expected_db;
        1.0 / (u * u)
    };
    let (mut sum, mut weights, mut used) = (0.0, 0.0, 0_usize);
    for p in points.iter().filter(good) {
        sum += weight(p) * ln(p);
        weights += weight(p);
        used += 1;
    }
    if used == 0 {
        return None;
    }
    let ln_ratio = sum / weights;
    let chi2 = about_one_factor(points, common, good);
    let (worst, worst_en) = worst(points);
    let shares: Vec<f64> = points
        .iter()
        .map(|p| {
            if good(&p) {
                weight(p) / weights / p.expected_db
            } else {
                0.0
            }
        })
        .collect();
    let u: Vec<f64> = points.iter().map(|p| p.u_measured_db).collect();
    let u_random = libm::sqrt(variance(&shares, &shares, &u, common));
    let u_ln = libm::hypot(u_random, u_shared);
    let verdict = if ln_ratio.abs() > 2.0 * u_ln {
        Verdict::Differs
    } else if 2.0 * u_ln > 0.5 {
        Verdict::CannotTell
    } else {
        Verdict::Agrees
    };
    Some(WholeCable {
        ratio: libm::exp(ln_ratio),
        ln_ratio,
        u_ln,
        u_random,
        u_shared,
        chi2,
        dof: used - 1,
        p: chi_square_survival(chi2, (used - 1) as f64),
        worst,
        worst_en,
        used,
        verdict,
    })
}

/// χ² of `ln(measured/expected)` about one factor for all points, with the covariance of the points
/// by the causes they share: what acts on all alike is no deviation, and what acts on some is one.
fn about_one_factor(points: &[Point], common: &[Vec<f64>], good: impl Fn(&&Point) -> bool) -> f64 {
    let at: Vec<usize> = (0..points.len()).filter(|i| good(&&points[*i])).collect();
    let of = |i: &usize| &points[*i];
    let y: Vec<f64> = at
        .iter()
        .map(|i| libm::log(of(i).measured_db / of(i).expected_db))
        .collect();
    let u: Vec<f64> = at
        .iter()
        .map(|i| of(i).u_measured_db / of(i).expected_db)
        .collect();
    let shared: Vec<Vec<f64>> = common
        .iter()
        .map(|row| at.iter().map(|i| row[*i] / of(i).expected_db).collect())
        .collect();
    let ones = vec![1.0; y.len()];
    Correlated::new(&u, &shared).chi_square(&y, &[&ones])
}

/// Covariance of two sums `Σ a·x` and `Σ b·x` of values with the standard uncertainties `u`, of
/// which the causes in `common` are a part that several values share (GUM, JCGM 100:2008, 5.2.2).
pub(super) fn variance(a: &[f64], b: &[f64], u: &[f64], common: &[Vec<f64>]) -> f64 {
    let dot = |w: &[f64], s: &[f64]| -> f64 { w.iter().zip(s).map(|(w, s)| w * s).sum() };
    let together: f64 = common.iter().map(|s| dot(a, s) * dot(b, s)).sum();
    let own = (0..u.len()).map(|i| {
        let shared: f64 = common.iter().map(|s| s[i] * s[i]).sum();
        a[i] * b[i] * (u[i] * u[i] - shared).max(0.0)
    });
    together + own.sum::<f64>()
}

fn worst(points: &[Point]) -> (usize, f64) {
    let mut worst = (0, 0.0_f64);
    for (i, p) in points.iter().enumerate() {
        let e = en(
            p.measured_db,
            p.expected_db,
            2.0 * p.u_measured_db,
            2.0 * p.u_expected_db,
        );
        if e.abs() > worst.1.abs() {
            worst = (i, e);
        }
    }
    worst
}
