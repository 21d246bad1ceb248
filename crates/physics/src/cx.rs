//! Complex functions built on [`libm`] only.
//!
//! `num-complex` calls the platform's floating-point library for its own `exp`, `norm` and so
//! on, which differs in the last bits between platforms; these functions do not.

use num_complex::Complex64;

/// Shorthand for a complex number.
#[inline]
#[must_use]
pub const fn c(re: f64, im: f64) -> Complex64 {
    Complex64::new(re, im)
}

/// A real number as a complex one.
#[inline]
#[must_use]
pub const fn real(re: f64) -> Complex64 {
    Complex64::new(re, 0.0)
}

/// Magnitude.
#[inline]
#[must_use]
pub fn abs(z: Complex64) -> f64 {
    libm::hypot(z.re, z.im)
}

/// Angle in radians, −π…π.
#[inline]
#[must_use]
pub fn arg(z: Complex64) -> f64 {
    libm::atan2(z.im, z.re)
}

/// Magnitude and angle (radians) to a complex number.
#[inline]
#[must_use]
pub fn polar(magnitude: f64, angle: f64) -> Complex64 {
    let (sin, cos) = libm::sincos(angle);
    c(magnitude * cos, magnitude * sin)
}

/// `e^z`.
#[inline]
#[must_use]
pub fn exp(z: Complex64) -> Complex64 {
    polar(libm::exp(z.re), z.im)
}

/// Natural logarithm, principal branch.
#[inline]
#[must_use]
pub fn ln(z: Complex64) -> Complex64 {
    c(libm::log(abs(z)), arg(z))
}

/// Square root, principal branch (real part not negative).
#[must_use]
pub fn sqrt(z: Complex64) -> Complex64 {
    if z.re == 0.0 && z.im == 0.0 {
        return c(0.0, z.im);
    }
    // the half-angle form loses nothing to cancellation on either side of the imaginary axis
    let t = libm::sqrt(0.5 * (abs(z) + z.re.abs()));
    if z.re >= 0.0 {
        c(t, z.im / (2.0 * t))
    } else {
        c(z.im.abs() / (2.0 * t), t.copysign(z.im))
    }
}
