//! The two coefficients of a cable from losses measured at several frequencies.

use super::cable::variance;
use super::correlated::Correlated;
use super::odd::APART;
use super::stats::{chi_square_survival, normal_quantile, student_two_sided};
use super::trend::UNLIKELY;
use crate::TwoTerm;
use crate::line::conductor_temperature_factor;
use crate::table::{Normal, TableError, normal, solve};

/// Chance of calling any point of a good set an outlier.
const OUTLIER_CHANCE: f64 = 0.05;
/// Above this condition number (of the normal matrix with its diagonal scaled to 1) the
/// frequencies are too alike: with 3 % a point, k2 is then not known to a factor of two.
const MOST_CONDITION: f64 = 1000.0;
/// A good set has three frequencies over a ratio of ten (common practice).
const GOOD_RATIO: f64 = 10.0;
const GOOD_COUNT: usize = 3;
/// A fit is not carried on further than this ratio above its highest point (common practice).
const MOST_BEYOND: f64 = 2.0;

/// A measured attenuation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitPoint {
    /// Hz.
    pub f_hz: f64,
    /// dB/m.
    pub db_per_m: f64,
    /// Standard uncertainty in dB/m, without [`FitRules::shared`].
    pub u_db_per_m: f64,
}

/// Further parameters of a fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FitRules {
    /// Temperature of the cable while measured, °C.
    pub celsius: f64,
    /// Relative standard uncertainty common to all points (length, connector rule, linearity).
    pub shared: f64,
}

impl Default for FitRules {
    /// 20 °C, nothing shared.
    fn default() -> Self {
        Self {
            celsius: 20.0,
            shared: 0.0,
        }
    }
}

/// Why there is no fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FitError {
    /// Fewer than two different frequencies.
    TooFew {
        /// Their number.
        frequencies: usize,
        /// A frequency to measure at too, Hz (NaN without any point).
        add_hz: f64,
    },
    /// A value that is not positive and finite; index of the point.
    NotPositive(usize),
    /// Frequencies too alike to tell the two coefficients apart.
    Singular {
        /// Condition number of the scaled normal matrix.
        condition: f64,
        /// A frequency to measure at too, Hz.
        add_hz: f64,
    },
}

impl core::fmt::Display for FitError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::TooFew { frequencies, .. } => {
                write!(
                    f,
                    "{frequencies} frequencies do not determine two coefficients"
                )
            }
            Self::NotPositive(i) => write!(f, "point {} is not positive", i + 1),
            Self::Singular { .. } => write!(f, "the frequencies are too alike"),
        }
    }
}

impl core::error::Error for FitError {}

/// A coefficient that would have come out negative and was held at 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Clamped {
    /// The conductor's.
    K1,
    /// The dielectric's.
    K2,
}

/// The point that does not fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlier {
    /// Index as given.
    pub index: usize,
    /// Its residual over the residual's own standard deviation.
    pub residual: f64,
    /// The bound it is beyond.
    pub bound: f64,
    /// Another point without which the others fit about as well: which of the two is wrong cannot
    /// be told.
    pub rival: Option<usize>,
}

/// Advice for improving a weak set of points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Advice {
    /// A frequency to measure at too, Hz.
    pub add_hz: f64,
    /// Highest over lowest frequency now.
    pub ratio: f64,
    /// Different frequencies now.
    pub frequencies: usize,
}

/// A fitted cable.
#[derive(Debug, Clone, PartialEq)]
pub struct LossFit {
    /// Coefficients at the temperature of the measurement, both ≥ 0.
    pub coefficients: TwoTerm,
    /// Coefficients at 20 °C.
    pub at_20: TwoTerm,
    /// Temperature of the measurement, °C.
    pub celsius: f64,
    /// Standard uncertainty of `k1` by the points; of one held at 0 too.
    pub u_k1: f64,
    /// Standard uncertainty of `k2` by the points; of one held at 0 too.
    pub u_k2: f64,
    /// Correlation of the two; close to −1, so compare curves and never coefficients.
    pub correlation: f64,
    /// A coefficient held at 0.
    pub clamped: Option<Clamped>,
    /// Sum of squared standardised residuals.
    pub chi2: f64,
    /// Degrees of freedom: points less free coefficients.
    pub dof: usize,
    /// Probability of a larger χ²; NaN without degrees of freedom.
    pub p: f64,
    /// (measured − fitted)/u of each point, in the order given.
    pub residuals: Vec<f64>,
    /// The point that does not fit, if any.
    pub outlier: Option<Outlier>,
    /// Factor that widens the uncertainties of the coefficients, because the points scatter more
    /// than their own uncertainty explains: √(χ²/dof) where p is below 0.05, 1 otherwise, as of a trend.
    pub widened: f64,
    /// Condition number of the scaled normal matrix.
    pub condition: f64,
    /// Advice, if the set is weak.
    pub advice: Option<Advice>,
    /// Relative standard uncertainty common to all points.
    pub shared: f64,
    /// Lowest and highest frequency, Hz.
    pub range_hz: (f64, f64),
}

/// A fitted attenuation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prediction {
    /// dB/m.
    pub db_per_m: f64,
    /// Standard uncertainty, dB/m, with what all points share.
    pub u_db_per_m: f64,
    /// Part of it by the points.
    pub u_random: f64,
    /// Ratio of the frequency to the nearest end of the range, 1 inside.
    pub beyond: f64,
    /// More than twice the highest frequency measured: not to be used.
    pub refused: bool,
}

/// Fits `k1·√f + k2·f` by least squares with weights 1/u² and both coefficients ≥ 0 (active set:
/// with two unknowns the negative one is held at 0 and the other solved alone).
///
/// The point with the largest residual is named as an outlier when that residual, over its own
/// standard deviation `u·√(1 − h)` (h its leverage), exceeds what the largest of n good ones
/// exceeds once in twenty times: the normal quantile at `1 − 0.05/(2n)` (Bonferroni).
///
/// # Errors
/// Fewer than two frequencies, values that are not positive, or frequencies too alike.
pub fn fit(points: &[FitPoint], rules: &FitRules) -> Result<LossFit, FitError> {
    let good = |x: f64| x > 0.0 && x.is_finite();
    let bad = |p: &FitPoint| !(good(p.f_hz) && good(p.db_per_m) && good(p.u_db_per_m));
    if let Some(i) = points.iter().position(bad) {
        return Err(FitError::NotPositive(i));
    }
    let set = Frequencies::of(points);
    if set.count < 2 {
        return Err(FitError::TooFew {
            frequencies: set.count,
            add_hz: set.to_add(),
        });
    }
    let triples: Vec<_> = points
        .iter()
        .map(|p| (p.f_hz, p.db_per_m, p.u_db_per_m))
        .collect();
    let singular = |condition| FitError::Singular {
        condition,
        add_hz: set.to_add(),
    };
    let n = normal(&triples).map_err(|e| match e {
        TableError::Empty
        | TableError::NotPositive(_)
        | TableError::Duplicate(_)
        | TableError::Singular => singular(f64::INFINITY),
    })?;
    // the scaled matrix is 1, r; r, 1 with eigenvalues 1 ± r
    let condition = {
        let root = libm::sqrt(n.s11 * n.s22);
        let less = n.det / (root * (root + n.s12)); // 1 − r without cancellation
        (2.0 - less) / less
    };
    if condition > MOST_CONDITION {
        return Err(singular(condition));
    }
    let coefficients = solve(&n);
    Ok(describe(points, rules, &set, &n, coefficients, condition))
}

fn describe(
    points: &[FitPoint],
    rules: &FitRules,
    set: &Frequencies,
    n: &Normal,
    coefficients: TwoTerm,
    condition: f64,
) -> LossFit {
    let clamped = if coefficients.k2 == 0.0 {
        Some(Clamped::K2)
    } else if coefficients.k1 == 0.0 {
        Some(Clamped::K1)
    } else {
        None
    };
    // what is not known of a coefficient that was held at zero is not zero: the readings leave it as
    // open as if it had come out there
    let (u_k1, u_k2, correlation) = (
        libm::sqrt(n.s22 / n.det),
        libm::sqrt(n.s11 / n.det),
        -n.s12 / libm::sqrt(n.s11 * n.s22),
    );
    let residuals: Vec<f64> = points
        .iter()
        .map(|p| (p.db_per_m - coefficients.at(p.f_hz)) / p.u_db_per_m)
        .collect();
    let chi2 = residuals.iter().map(|r| r * r).sum();
    let free = if clamped.is_some() { 1 } else { 2 };
    let dof = points.len() - free;
    let mut fit = LossFit {
        coefficients,
        at_20: TwoTerm {
            k1: coefficients.k1 / conductor_temperature_factor(rules.celsius),
            k2: coefficients.k2,
        },
        celsius: rules.celsius,
        u_k1,
        u_k2,
        correlation,
        clamped,
        chi2,
        dof,
        p: chi_square_survival(chi2, dof as f64),
        residuals,
        outlier: None,
        widened: 1.0,
        condition,
        advice: set.advice(),
        shared: rules.shared,
        range_hz: (set.low, set.high),
    };
    fit.outlier = outlier(points, &fit, n);
    fit.widened = widened(fit.chi2, fit.dof, fit.p);
    fit.u_k1 *= fit.widened;
    fit.u_k2 *= fit.widened;
    fit
}

/// Factor that widens uncertainties where the points scatter more than their own explain.
fn widened(chi2: f64, dof: usize, p: f64) -> f64 {
    if p < UNLIKELY {
        libm::sqrt(chi2 / dof as f64)
    } else {
        1.0
    }
}

/// Each residual over its own standard deviation `u √(1 − h)`, with `h` the leverage of the point
/// in the coefficients that are free; none where the fit goes through the point whatever it is.
fn studentised(points: &[FitPoint], fit: &LossFit, n: &Normal) -> Vec<Option<f64>> {
    points
        .iter()
        .zip(&fit.residuals)
        .map(|(p, r)| {
            let (f, u) = (p.f_hz * 1e-6, p.u_db_per_m);
            let root = libm::sqrt(f);
            let h = match fit.clamped {
                None => (n.s22 * f - 2.0 * n.s12 * root * f + n.s11 * f * f) / n.det,
                Some(Clamped::K2) => f / n.s11,
                Some(Clamped::K1) => f * f / n.s22,
            };
            let left = 1.0 - h / (u * u);
            (left >= 1e-9).then(|| r / libm::sqrt(left))
        })
        .collect()
}

fn outlier(points: &[FitPoint], fit: &LossFit, n: &Normal) -> Option<Outlier> {
    if fit.dof == 0 {
        return None;
    }
    let bound = -normal_quantile(0.5 * OUTLIER_CHANCE / points.len() as f64);
    let all = studentised(points, fit, n);
    largest(&all, bound, |r| r)
}

/// The largest of residuals made comparable by `size`, if it is beyond `bound`.
fn largest(all: &[Option<f64>], bound: f64, size: impl Fn(f64) -> f64) -> Option<Outlier> {
    let mut order: Vec<(usize, f64)> = all
        .iter()
        .enumerate()
        .filter_map(|(i, r)| Some((i, (*r)?)))
        .collect();
    order.sort_by(|a, b| b.1.abs().total_cmp(&a.1.abs()));
    let (index, r) = *order.first()?;
    let residual = size(r);
    // leaving a point out takes the square of its residual from χ²
    let rival = order
        .get(1)
        .filter(|o| r * r - o.1 * o.1 < APART)
        .map(|o| o.0);
    (residual.abs() > bound).then_some(Outlier {
        index,
        residual,
        bound,
        rival,
    })
}

impl LossFit {
    /// The point that does not fit, where the uncertainty of the points was found from their own
    /// scatter: with the point in it, that scatter hides it. Each point is held against the scatter
    /// of the others (externally studentised residuals, Student's t with one degree of freedom less;
    /// Bonferroni as above). `points` are the ones the fit was made from.
    #[must_use]
    pub fn outlier_by_scatter(&self, points: &[FitPoint]) -> Option<Outlier> {
        if self.dof < 2 || self.chi2 <= 0.0 {
            return None;
        }
        let triples: Vec<_> = points
            .iter()
            .map(|p| (p.f_hz, p.db_per_m, p.u_db_per_m))
            .collect();
        let n = normal(&triples).ok()?;
        let dof = self.dof as f64;
        let scale = libm::sqrt(self.chi2 / dof);
        let all: Vec<Option<f64>> = studentised(points, self, &n)
            .into_iter()
            .map(|r| r.map(|r| r / scale))
            .collect();
        let bound = student_two_sided(OUTLIER_CHANCE / points.len() as f64, dof - 1.0);
        largest(&all, bound, |r| {
            let left = (dof - r * r).max(1e-12 * dof);
            r * libm::sqrt((dof - 1.0) / left)
        })
    }

    /// Takes into account that some causes act on several of the points: `common` holds for each
    /// of them its signed contribution to every point, dB/m, a part of that point's own
    /// uncertainty. The coefficients stay as they are; their uncertainty and correlation become those of
    /// two linear combinations of correlated readings (GUM, JCGM 100:2008, 5.2.2). `points` are the
    /// ones the fit was made from.
    pub fn correlate(&mut self, points: &[FitPoint], common: &[Vec<f64>]) {
        let (a, b): (Vec<f64>, Vec<f64>) = follows(points).into_iter().unzip();
        let u: Vec<f64> = points.iter().map(|p| p.u_db_per_m).collect();
        self.chi2 = self.about_the_curve(points, &u, common);
        self.p = chi_square_survival(self.chi2, self.dof as f64);
        self.widened = widened(self.chi2, self.dof, self.p);
        self.u_k1 = libm::sqrt(variance(&a, &a, &u, common));
        self.u_k2 = libm::sqrt(variance(&b, &b, &u, common));
        self.u_k1 *= self.widened;
        self.u_k2 *= self.widened;
        self.correlation =
            self.widened * self.widened * variance(&a, &b, &u, common) / (self.u_k1 * self.u_k2);
    }

    /// χ² of the points about the curve with the covariance of the causes they share: an error of
    /// all points along the curve is no deviation from it.
    fn about_the_curve(&self, points: &[FitPoint], u: &[f64], common: &[Vec<f64>]) -> f64 {
        let of =
            |x: fn(f64) -> f64| -> Vec<f64> { points.iter().map(|p| x(p.f_hz * 1e-6)).collect() };
        let (roots, f) = (of(libm::sqrt), of(|f| f));
        let y: Vec<f64> = points.iter().map(|p| p.db_per_m).collect();
        let columns: &[&[f64]] = match self.clamped {
            None => &[&roots, &f],
            Some(Clamped::K2) => &[&roots],
            Some(Clamped::K1) => &[&f],
        };
        Correlated::new(u, common).chi_square(&y, columns)
    }

    /// How much the attenuation at `f_hz` and `celsius` changes with each of the readings: the
    /// derivative of [`LossFit::predict_at`] by the loss of each point. `points` are the ones the fit
    /// was made from.
    #[must_use]
    pub fn sensitivities(&self, points: &[FitPoint], f_hz: f64, celsius: f64) -> Vec<f64> {
        let factor =
            conductor_temperature_factor(celsius) / conductor_temperature_factor(self.celsius);
        let mhz = f_hz * 1e-6;
        let root = libm::sqrt(mhz) * factor;
        let by = |(k1, k2): (f64, f64)| k1 * root + k2 * mhz;
        follows(points).into_iter().map(by).collect()
    }

    /// Attenuation at `f_hz` at the temperature of the measurement. Its uncertainty comes from the
    /// covariance of the coefficients (GUM 5.2.2), then what all points share is added.
    #[must_use]
    pub fn predict(&self, f_hz: f64) -> Prediction {
        self.with_conductor_factor(f_hz, 1.0)
    }

    /// Attenuation at `f_hz` with the cable at `celsius`.
    #[must_use]
    pub fn predict_at(&self, f_hz: f64, celsius: f64) -> Prediction {
        let ratio =
            conductor_temperature_factor(celsius) / conductor_temperature_factor(self.celsius);
        self.with_conductor_factor(f_hz, ratio)
    }

    fn with_conductor_factor(&self, f_hz: f64, factor: f64) -> Prediction {
        let mhz = f_hz * 1e-6;
        let root = libm::sqrt(mhz) * factor;
        let db_per_m = self.coefficients.k1 * root + self.coefficients.k2 * mhz;
        let (a, b) = (root * self.u_k1, mhz * self.u_k2);
        let variance = a * a + b * b + 2.0 * self.correlation * a * b;
        let u_random = libm::sqrt(variance.max(0.0));
        let (low, high) = self.range_hz;
        Prediction {
            db_per_m,
            u_db_per_m: libm::hypot(u_random, self.shared * db_per_m),
            u_random,
            beyond: (low / f_hz).max(f_hz / high).max(1.0),
            refused: f_hz > MOST_BEYOND * high,
        }
    }
}

/// How both coefficients follow each of the readings (weights 1/u²). Of one held at zero too: what
/// is not known of it is not zero.
fn follows(points: &[FitPoint]) -> Vec<(f64, f64)> {
    let sum = |x: fn(f64) -> f64| -> f64 {
        let term = |p: &FitPoint| x(p.f_hz * 1e-6) / (p.u_db_per_m * p.u_db_per_m);
        points.iter().map(term).sum()
    };
    // Σ f, Σ f√f and Σ f² over u²: the normal matrix
    let (s11, s12, s22) = (sum(|f| f), sum(|f| f * libm::sqrt(f)), sum(|f| f * f));
    let det = s11 * s22 - s12 * s12;
    let one = |p: &FitPoint| {
        let (f, w) = (p.f_hz * 1e-6, 1.0 / (p.u_db_per_m * p.u_db_per_m));
        let root = libm::sqrt(f);
        (
            w * (s22 * root - s12 * f) / det,
            w * (s11 * f - s12 * root) / det,
        )
    };
    points.iter().map(one).collect()
}

/// The frequencies of a set.
struct Frequencies {
    count: usize,
    low: f64,
    high: f64,
}

impl Frequencies {
    fn of(points: &[FitPoint]) -> Self {
        let mut f: Vec<f64> = points.iter().map(|p| p.f_hz).collect();
        f.sort_by(f64::total_cmp);
        f.dedup_by(|a, b| (*a - *b).abs() <= 1e-9 * b.abs());
        Self {
            count: f.len(),
            low: f.first().copied().unwrap_or(f64::NAN),
            high: f.last().copied().unwrap_or(f64::NAN),
        }
    }

    fn ratio(&self) -> f64 {
        self.high / self.low
    }

    /// The frequency that completes a ratio of ten: downwards while that stays above 1 MHz, because the two-term
    /// law must not be carried on upwards; with the span there, the middle.
    fn to_add(&self) -> f64 {
        if self.ratio() >= GOOD_RATIO {
            libm::sqrt(self.low * self.high)
        } else if self.high >= GOOD_RATIO * 1e6 {
            self.high / GOOD_RATIO
        } else {
            self.low * GOOD_RATIO
        }
    }

    fn advice(&self) -> Option<Advice> {
        (self.count < GOOD_COUNT || self.ratio() < GOOD_RATIO).then(|| Advice {
            add_hz: self.to_add(),
            ratio: self.ratio(),
            frequencies: self.count,
        })
    }
}
