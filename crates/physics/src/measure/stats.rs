//! Distributions: χ², normal and Student quantiles.

use crate::uncertainty::incomplete_beta;

/// Probability that χ² with `dof` degrees of freedom exceeds `x`: the regularised upper
/// incomplete gamma function `Q(dof/2, x/2)`. NaN for `dof` ≤ 0 or NaN; 1 for `x` ≤ 0.
///
/// Source: Abramowitz and Stegun 26.4.19 with 6.5.29 (series) and 6.5.31 (continued fraction);
/// numbers from memory.
#[must_use]
pub fn chi_square_survival(x: f64, dof: f64) -> f64 {
    if x.is_nan() || dof.is_nan() || dof <= 0.0 {
        return f64::NAN;
    }
    if x <= 0.0 {
        return 1.0;
    }
    if x.is_infinite() {
        return 0.0;
    }
    let (a, z) = (0.5 * dof, 0.5 * x);
    let front = libm::exp(a * libm::log(z) - z - libm::lgamma(a));
    if z < a + 1.0 {
        1.0 - front * lower_series(a, z)
    } else {
        front * upper_fraction(a, z)
    }
}

fn lower_series(a: f64, z: f64) -> f64 {
    let mut term = 1.0 / a;
    let mut sum = term;
    for n in 1..10_000_u32 {
        term *= z / (a + f64::from(n));
        sum += term;
        if term < sum * 1e-17 {
            break;
        }
    }
    sum
}

/// Lentz's method.
fn upper_fraction(a: f64, z: f64) -> f64 {
    let tiny = 1e-300;
    let mut b = z + 1.0 - a;
    let mut c = 1.0 / tiny;
    let mut d = 1.0 / b;
    let mut h = d;
    for n in 1..10_000_u32 {
        let n = f64::from(n);
        let an = -n * (n - a);
        b += 2.0;
        d = an * d + b;
        if d.abs() < tiny {
            d = tiny;
        }
        c = b + an / c;
        if c.abs() < tiny {
            c = tiny;
        }
        d = 1.0 / d;
        let step = d * c;
        h *= step;
        if (step - 1.0).abs() < 1e-15 {
            break;
        }
    }
    h
}

/// Value a standard normal variable stays below with probability `p`; ±∞ at 1 and 0, NaN
/// outside.
#[must_use]
pub fn normal_quantile(p: f64) -> f64 {
    if !(0.0..=1.0).contains(&p) {
        return f64::NAN;
    }
    if p > 0.5 {
        return -normal_quantile(1.0 - p);
    }
    if p == 0.0 {
        return f64::NEG_INFINITY;
    }
    // below is erfc(−x/√2)/2, which keeps its digits in the tail; 40 is far outside of what f64 holds
    let below = |x: f64| 0.5 * libm::erfc(-x / core::f64::consts::SQRT_2);
    bisect(-40.0, 0.0, |x| below(x) < p)
}

/// Value that Student's t with `dof` degrees of freedom exceeds in size with probability
/// `outside`; the normal quantile for infinite `dof`. NaN for `outside` not between 0 and 1 or
/// `dof` below 1.
#[must_use]
pub fn student_two_sided(outside: f64, dof: f64) -> f64 {
    if !(outside > 0.0 && outside <= 1.0) || dof.is_nan() || dof < 1.0 {
        return f64::NAN;
    }
    if dof.is_infinite() {
        return -normal_quantile(0.5 * outside);
    }
    let exceeds = |t: f64| incomplete_beta(0.5 * dof, 0.5, dof / (dof + t * t)) > outside;
    let mut high = 2.0;
    while exceeds(high) && high < 1e150 {
        high *= 2.0;
    }
    bisect(0.0, high, exceeds)
}

/// The place between `low` and `high` up to which `before` holds, to the last bit.
fn bisect(mut low: f64, mut high: f64, before: impl Fn(f64) -> bool) -> f64 {
    loop {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            return middle;
        }
        if before(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
}
