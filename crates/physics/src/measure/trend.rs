//! Values measured over the years: do they rise or fall?

use super::stats::chi_square_survival;
use crate::uncertainty::coverage_factor;

const DAYS_PER_YEAR: f64 = 365.25;
/// Scatter less likely than this is more than the stated uncertainty explains.
pub(super) const UNLIKELY: f64 = 0.05;

/// A value at a date.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrendPoint {
    /// Days from any fixed date.
    pub days: f64,
    /// The value.
    pub value: f64,
    /// Its standard uncertainty, without what all values share.
    pub u: f64,
}

/// Which way the values go.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// Up, beyond the uncertainty.
    Rising,
    /// Down, beyond the uncertainty.
    Falling,
    /// Neither exceeds the uncertainty.
    NotBeyondDoubt,
}

/// A straight line through dated values.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trend {
    /// Slope per year of 365.25 days.
    pub per_year: f64,
    /// Its standard uncertainty.
    pub u_per_year: f64,
    /// Coverage factor for 95.45 %.
    pub k: f64,
    /// Weighted mean date, days.
    pub mean_days: f64,
    /// Value of the line there.
    pub at_mean: f64,
    /// Its standard uncertainty.
    pub u_at_mean: f64,
    /// Sum of squared standardised deviations from the line.
    pub chi2: f64,
    /// Degrees of freedom: points less two.
    pub dof: usize,
    /// Probability of a larger χ²; NaN for two points.
    pub p: f64,
    /// The values scatter more than their uncertainty explains (χ² test, 5 %): uncertainties are
    /// widened by `√(χ²/dof)` and `k` is Student's.
    pub widened: bool,
    /// True if the slope exceeds its expanded uncertainty.
    pub direction: Direction,
}

impl Trend {
    /// The line at a date, and its standard uncertainty.
    #[must_use]
    pub fn at(&self, days: f64) -> (f64, f64) {
        let years = (days - self.mean_days) / DAYS_PER_YEAR;
        (
            self.at_mean + self.per_year * years,
            libm::hypot(self.u_at_mean, self.u_per_year * years),
        )
    }

    /// When the line reaches a value, in days; None when it is level.
    #[must_use]
    pub fn reaches(&self, value: f64) -> Option<f64> {
        let years = (value - self.at_mean) / self.per_year;
        let days = self.mean_days + years * DAYS_PER_YEAR;
        days.is_finite().then_some(days)
    }
}

/// Weighted straight line through dated values (weights 1/u²). None with fewer than two dates or
/// an uncertainty that is not positive.
#[must_use]
pub fn trend(points: &[TrendPoint]) -> Option<Trend> {
    let good =
        |p: &TrendPoint| p.u > 0.0 && p.u.is_finite() && p.days.is_finite() && p.value.is_finite();
    if points.len() < 2 || !points.iter().all(good) {
        return None;
    }
    let weight = |p: &TrendPoint| 1.0 / (p.u * p.u);
    let weights: f64 = points.iter().map(weight).sum();
    let mean = |of: fn(&TrendPoint) -> f64| {
        points.iter().map(|p| weight(p) * of(p)).sum::<f64>() / weights
    };
    let (mean_days, at_mean) = (mean(|p| p.days), mean(|p| p.value));
    let (mut dd, mut dv) = (0.0, 0.0);
    for p in points {
        let years = (p.days - mean_days) / DAYS_PER_YEAR;
        dd += weight(p) * years * years;
        dv += weight(p) * years * (p.value - at_mean);
    }
    if dd <= 0.0 {
        return None;
    }
    let per_year = dv / dd;
    let chi2 = points.iter().map(|p| {
        let line = at_mean + per_year * (p.days - mean_days) / DAYS_PER_YEAR;
        weight(p) * (p.value - line) * (p.value - line)
    });
    let chi2: f64 = chi2.sum();
    let dof = points.len() - 2;
    let p = chi_square_survival(chi2, dof as f64);
    let widened = p < UNLIKELY;
    let (wider, k) = if widened {
        let dof = dof as f64;
        (libm::sqrt(chi2 / dof), coverage_factor(dof))
    } else {
        (1.0, 2.0)
    };
    let u_per_year = wider / libm::sqrt(dd);
    let direction = if per_year > k * u_per_year {
        Direction::Rising
    } else if per_year < -k * u_per_year {
        Direction::Falling
    } else {
        Direction::NotBeyondDoubt
    };
    Some(Trend {
        per_year,
        u_per_year,
        k,
        mean_days,
        at_mean,
        u_at_mean: wider / libm::sqrt(weights),
        chi2,
        dof,
        p,
        widened,
        direction,
    })
}
