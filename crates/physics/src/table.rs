//! Attenuation from the points of a data sheet: interpolation and fits.

use crate::net::scalar::Real;
use crate::{LineParams, TwoTerm};

/// Why a table of points cannot be used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum TableError {
    /// No points.
    Empty,
    /// A frequency or attenuation that is not positive and finite; index of the point.
    NotPositive(usize),
    /// A frequency given twice; index of the second.
    Duplicate(usize),
    /// Too few points or frequencies too alike for a fit.
    Singular,
}

impl core::fmt::Display for TableError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Empty => write!(f, "no points"),
            Self::NotPositive(i) => write!(f, "point {} is not positive", i + 1),
            Self::Duplicate(i) => write!(f, "point {} repeats a frequency", i + 1),
            Self::Singular => write!(f, "the points do not determine two coefficients"),
        }
    }
}

impl core::error::Error for TableError {}

/// Method by which a value was taken from a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// The two-term law through the two neighbouring points.
    TwoTerm,
    /// A straight line in log attenuation over log frequency, because the two-term law through
    /// the neighbours would have a negative coefficient.
    LogLog,
    /// A single point carried on by the square-root law.
    SquareRoot,
    /// Outside the table: the two-term law fitted to all points, scaled to the end point.
    Extrapolated,
}

/// Attenuation read from a table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TableLoss {
    /// Conductor part, dB/m.
    pub alpha_c_db_per_m: f64,
    /// Dielectric part, dB/m.
    pub alpha_d_db_per_m: f64,
    /// Its method.
    pub method: Method,
    /// Ratio of the frequency to the nearest end of the table, ≥ 1; exactly 1 inside.
    pub outside: f64,
}

impl TableLoss {
    /// Attenuation, dB/m.
    #[must_use]
    pub fn db_per_m(&self) -> f64 {
        self.alpha_c_db_per_m + self.alpha_d_db_per_m
    }

    /// The same with the conductor part times `factor` (see
    /// [`crate::line::conductor_temperature_ratio`]).
    #[must_use]
    pub fn with_conductor_factor(self, factor: f64) -> Self {
        Self {
            alpha_c_db_per_m: self.alpha_c_db_per_m * factor,
            ..self
        }
    }

    /// As a line of `r0_ohm` and `velocity_factor`, at the frequency it was read for.
    #[must_use]
    pub fn line(self, r0_ohm: f64, velocity_factor: f64) -> LineParams {
        LineParams {
            r0_ohm,
            velocity_factor,
            alpha_c_db_per_m: self.alpha_c_db_per_m,
            alpha_d_db_per_m: self.alpha_d_db_per_m,
        }
    }
}

/// Points of a data sheet (Hz, dB/m), in order of frequency.
#[derive(Debug, Clone, PartialEq)]
pub struct LossTable {
    points: Vec<(f64, f64)>,
    /// Fit of all points with both coefficients ≥ 0, for outside the table.
    fit: TwoTerm,
}

impl LossTable {
    /// Takes points (Hz, dB/m) in any order.
    ///
    /// # Errors
    /// No points, a value that is not positive and finite, or a repeated frequency; indices refer
    /// to the order given (for a duplicate: to the sorted order).
    pub fn new(points: &[(f64, f64)]) -> Result<Self, TableError> {
        check(points)?;
        let mut points = points.to_vec();
        points.sort_by(|a, b| a.0.total_cmp(&b.0));
        if let Some(i) = points.windows(2).position(|w| w[0].0 >= w[1].0) {
            return Err(TableError::Duplicate(i + 1));
        }
        let fit = if points.len() == 1 {
            TwoTerm {
                k1: points[0].1 / libm::sqrt(points[0].0 * 1e-6),
                k2: 0.0,
            }
        } else {
            fit_two_term(&points)?.coefficients
        };
        Ok(Self { points, fit })
    }

    /// The points, in order of frequency.
    #[must_use]
    pub fn points(&self) -> &[(f64, f64)] {
        &self.points
    }

    /// Lowest and highest frequency, Hz.
    #[must_use]
    pub fn range(&self) -> (f64, f64) {
        (self.points[0].0, self.points[self.points.len() - 1].0)
    }

    /// Attenuation at `f_hz`: exact at the points, the two-term law between neighbours.
    #[must_use]
    pub fn at(&self, f_hz: f64) -> TableLoss {
        let (low, high) = self.range();
        let Some([p, q]) = self.neighbours(f_hz) else {
            return self.beyond(f_hz, low, high);
        };
        let law = through(p, q);
        if law.k1 >= 0.0 && law.k2 >= 0.0 {
            let (alpha_c_db_per_m, alpha_d_db_per_m) = law.split(f_hz);
            return TableLoss {
                alpha_c_db_per_m,
                alpha_d_db_per_m,
                method: Method::TwoTerm,
                outside: 1.0,
            };
        }
        let slope = libm::log(q.1 / p.1) / libm::log(q.0 / p.0);
        let a = p.1 * libm::exp(slope * libm::log(f_hz / p.0));
        // flatter than √f: all conductor; steeper than f: all dielectric
        let (alpha_c_db_per_m, alpha_d_db_per_m) = if law.k2 < 0.0 { (a, 0.0) } else { (0.0, a) };
        TableLoss {
            alpha_c_db_per_m,
            alpha_d_db_per_m,
            method: Method::LogLog,
            outside: 1.0,
        }
    }

    /// The points next to a frequency, where the two-term law or a straight line in log-log through
    /// them gives its attenuation; none outside the table.
    #[must_use]
    pub fn neighbours(&self, f_hz: f64) -> Option<[(f64, f64); 2]> {
        let (low, high) = self.range();
        if f_hz < low || f_hz > high || self.points.len() == 1 {
            return None;
        }
        let i = self
            .points
            .partition_point(|p| p.0 < f_hz)
            .clamp(1, self.points.len() - 1);
        Some([self.points[i - 1], self.points[i]])
    }

    fn beyond(&self, f_hz: f64, low: f64, high: f64) -> TableLoss {
        let (end, outside) = if f_hz < low {
            (self.points[0], low / f_hz)
        } else {
            (self.points[self.points.len() - 1], (f_hz / high).max(1.0))
        };
        let scale = end.1 / self.fit.at(end.0);
        let (c, d) = self.fit.split(f_hz);
        TableLoss {
            alpha_c_db_per_m: c * scale,
            alpha_d_db_per_m: d * scale,
            method: if self.points.len() == 1 {
                Method::SquareRoot
            } else {
                Method::Extrapolated
            },
            outside,
        }
    }
}

fn check(points: &[(f64, f64)]) -> Result<(), TableError> {
    if points.is_empty() {
        return Err(TableError::Empty);
    }
    let good = |x: f64| x.is_finite() && x > 0.0;
    match points.iter().position(|p| !good(p.0) || !good(p.1)) {
        Some(i) => Err(TableError::NotPositive(i)),
        None => Ok(()),
    }
}

/// The two-term law through two points (Hz, dB/m); a coefficient may come out negative.
#[must_use]
pub fn through(p: (f64, f64), q: (f64, f64)) -> TwoTerm {
    let (k1, k2) = through_of((p.0 * 1e-6, p.1), (q.0 * 1e-6, q.1));
    TwoTerm { k1, k2 }
}

/// The same over any scalar: `k1` in dB/m/√MHz and `k2` in dB/m/MHz through two points in MHz and
/// dB/m.
pub fn through_of<T: Real>(p: (T, T), q: (T, T)) -> (T, T) {
    let (s1, s2) = (p.0.sqrt(), q.0.sqrt());
    // divide each equation by √f: a/√f = k1 + k2 √f
    let (y1, y2) = (p.1 / s1, q.1 / s2);
    let k2 = ((y2 - y1) / (s2 - s1)).step("k2, dB/m/MHz");
    ((y1 - k2 * s1).step("k1, dB/m/√MHz"), k2)
}

/// A least-squares fit of the two-term law.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// The coefficients, both ≥ 0.
    pub coefficients: TwoTerm,
    /// `fit/data − 1` of each point, in the order given.
    pub residuals: Vec<f64>,
    /// Root mean square of the residuals.
    pub rms: f64,
    /// Largest residual by size, and its index.
    pub worst: (usize, f64),
}

/// Fits `k1·√f + k2·f` to points (Hz, dB/m) by least squares of the relative deviation, with
/// both coefficients ≥ 0.
///
/// # Errors
/// Fewer than two points, values not positive, or all points at one frequency.
pub fn fit_two_term(points: &[(f64, f64)]) -> Result<Fit, TableError> {
    check(points)?;
    let weighted: Vec<(f64, f64, f64)> = points.iter().map(|p| (p.0, p.1, p.1)).collect();
    let coefficients = solve(&normal(&weighted)?);
    let residuals: Vec<f64> = points
        .iter()
        .map(|p| coefficients.at(p.0) / p.1 - 1.0)
        .collect();
    let mut worst = (0, 0.0_f64);
    let mut sum = 0.0;
    for (i, r) in residuals.iter().enumerate() {
        sum += r * r;
        if r.abs() > worst.1.abs() {
            worst = (i, *r);
        }
    }
    let rms = libm::sqrt(sum / residuals.len() as f64);
    Ok(Fit {
        coefficients,
        residuals,
        rms,
        worst,
    })
}

/// Normal equations of the two-term law (MHz, dB/m), weights 1/u²: matrix, right side,
/// determinant.
pub(crate) struct Normal {
    pub(crate) s11: f64,
    pub(crate) s12: f64,
    pub(crate) s22: f64,
    b1: f64,
    b2: f64,
    pub(crate) det: f64,
}

/// Of points (Hz, dB/m, standard uncertainty in dB/m).
pub(crate) fn normal(points: &[(f64, f64, f64)]) -> Result<Normal, TableError> {
    let (mut s11, mut s12, mut s22, mut b1, mut b2) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for &(f, a, u) in points {
        let mhz = f * 1e-6;
        let (x, y, a) = (libm::sqrt(mhz) / u, mhz / u, a / u);
        s11 += x * x;
        s12 += x * y;
        s22 += y * y;
        b1 += x * a;
        b2 += y * a;
    }
    let det = s11 * s22 - s12 * s12;
    if points.len() < 2 || det <= 1e-12 * s11 * s22 {
        return Err(TableError::Singular);
    }
    Ok(Normal {
        s11,
        s12,
        s22,
        b1,
        b2,
        det,
    })
}

/// The coefficients, both ≥ 0.
pub(crate) fn solve(n: &Normal) -> TwoTerm {
    let k1 = (n.b1 * n.s22 - n.b2 * n.s12) / n.det;
    let k2 = (n.b2 * n.s11 - n.b1 * n.s12) / n.det;
    // with two unknowns a negative one is clamped and the other solved alone
    if k2 < 0.0 {
        TwoTerm {
            k1: n.b1 / n.s11,
            k2: 0.0,
        }
    } else if k1 < 0.0 {
        TwoTerm {
            k1: 0.0,
            k2: n.b2 / n.s22,
        }
    } else {
        TwoTerm { k1, k2 }
    }
}
