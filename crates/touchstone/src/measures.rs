//! Figures of one complex number: SWR, return loss, gain, and reflection through a line.

use crate::matrix::{ONE, abs};
use num_complex::Complex64;

/// Standing-wave ratio of a reflection; infinite when all or more comes back.
#[must_use]
pub fn swr(reflection: Complex64) -> f64 {
    let g = abs(reflection);
    if g >= 1.0 {
        f64::INFINITY
    } else {
        (1.0 + g) / (1.0 - g)
    }
}

/// Return loss in dB, −20·log10|Γ|: positive for a passive load, infinite for a perfect one.
#[must_use]
pub fn return_loss_db(reflection: Complex64) -> f64 {
    -gain_db(reflection)
}

/// 20·log10|S| in dB; −∞ for nothing.
#[must_use]
pub fn gain_db(s: Complex64) -> f64 {
    20.0 * libm::log10(abs(s))
}

/// Angle in degrees, −180 to 180.
#[must_use]
pub fn angle_deg(s: Complex64) -> f64 {
    libm::atan2(s.im, s.re) * (180.0 / core::f64::consts::PI)
}

/// The impedance of a reflection coefficient in a reference of `z0` ohm; not finite for an open.
#[must_use]
pub fn impedance(reflection: Complex64, z0: f64) -> Complex64 {
    (ONE + reflection) / (ONE - reflection) * z0
}

/// A reflection in the reference `from` (ohm) seen in the reference `to` (ohm). Works for an
/// open, which has no impedance.
#[must_use]
pub fn reflection_in(reflection: Complex64, from: f64, to: f64) -> Complex64 {
    let r = (to - from) / (to + from);
    (reflection - r) / (ONE - reflection * r)
}

/// Magnitude of the reflection at the far end of a line that shows `reflection` (magnitude) at
/// the near end and has `matched_loss_db` one way: |Γ|·10^(A/10). `None` if that is more than
/// all, so that the loss or the reading is wrong, or if either is negative.
#[must_use]
pub fn reflection_beyond_loss(reflection: f64, matched_loss_db: f64) -> Option<f64> {
    let far = reflection * libm::exp10(matched_loss_db / 10.0);
    (reflection >= 0.0 && matched_loss_db >= 0.0 && far <= 1.0).then_some(far)
}

/// A magnitude and an angle in degrees. Multiples of 90° are exact.
#[must_use]
pub fn polar_deg(magnitude: f64, degrees: f64) -> Complex64 {
    let turned = if degrees.abs() < 1e9 {
        degrees
    } else {
        degrees % 360.0
    };
    // adding and taking away 1.5·2^52 rounds to a whole number
    let quarters = (turned / 90.0 + 6_755_399_441_055_744.0) - 6_755_399_441_055_744.0;
    let rest = turned - 90.0 * quarters;
    let (sin, cos) = libm::sincos(rest * (core::f64::consts::PI / 180.0));
    // two's complement: −1 & 3 is 3, three quarters on
    #[expect(clippy::cast_possible_truncation, reason = "below 1e9/90")]
    let quarter = quarters as i64 & 3;
    let (re, im) = match quarter {
        0 => (cos, sin),
        1 => (-sin, cos),
        2 => (-cos, -sin),
        _ => (sin, -cos),
    };
    Complex64::new(magnitude * re, magnitude * im)
}
