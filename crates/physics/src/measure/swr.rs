//! Standing-wave ratio from forward and reflected power.

use super::meter::Meter;
use crate::mismatch::{return_loss, swr_from_gamma};

/// A standing-wave ratio with its intervals.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SwrReading {
    /// Standing-wave ratio.
    pub swr: f64,
    /// Least it may be with both meters at their limits.
    pub low: f64,
    /// Most it may be with both meters at their limits; may be infinite.
    pub high: f64,
    /// Lower end of the interval for k = 2.
    pub u_low: f64,
    /// Upper end of the interval for k = 2; may be infinite.
    pub u_high: f64,
    /// Decimals worth printing: the worst-case interval is at most two of the last one wide. None
    /// when only a lower bound is known.
    pub decimals: Option<usize>,
    /// dB; infinite without reflection.
    pub return_loss_db: f64,
    /// |Γ|.
    pub reflection: f64,
}

/// Standing-wave ratio from forward and reflected power in W, each with its meter (their errors
/// taken as independent). None when forward is not positive or reflected is negative.
#[must_use]
pub fn swr(
    forward_w: f64,
    forward: &Meter,
    reflected_w: f64,
    reflected: &Meter,
) -> Option<SwrReading> {
    let finite = forward_w.is_finite() && reflected_w.is_finite();
    if !finite || forward_w <= 0.0 || reflected_w < 0.0 {
        return None;
    }
    let (f_limit, r_limit) = (forward.limits_w(forward_w), reflected.limits_w(reflected_w));
    let q = reflected_w / forward_w;
    let low = of_ratio((reflected_w - r_limit) / (forward_w + f_limit));
    let high = if forward_w > f_limit {
        of_ratio((reflected_w + r_limit) / (forward_w - f_limit))
    } else {
        f64::INFINITY
    };
    let u_q = libm::hypot(
        reflected.u_watts(reflected_w),
        q * forward.u_watts(forward_w),
    ) / forward_w;
    let reflection = libm::sqrt(q);
    Some(SwrReading {
        swr: of_ratio(q),
        low,
        high,
        u_low: of_ratio(q - 2.0 * u_q),
        u_high: of_ratio(q + 2.0 * u_q),
        decimals: decimals(0.5 * (high - low)),
        return_loss_db: return_loss(reflection),
        reflection,
    })
}

/// Standing-wave ratio of reflected over forward power.
fn of_ratio(q: f64) -> f64 {
    if q >= 1.0 {
        f64::INFINITY
    } else {
        swr_from_gamma(libm::sqrt(q.max(0.0)))
    }
}

/// One to three; None for an infinite interval. Without a decimal every match would be `1`.
fn decimals(half_width: f64) -> Option<usize> {
    if !half_width.is_finite() {
        return None;
    }
    let steps = [0.001, 0.01];
    Some(3 - steps.iter().filter(|&&step| half_width > step).count())
}
