//! Complex numbers over any scalar.

use core::ops::{Add, Div, Mul, Neg, Sub};

use super::scalar::Real;

/// A complex number.
#[derive(Clone, Copy, Debug)]
pub struct C<T> {
    /// Real part.
    pub re: T,
    /// Imaginary part.
    pub im: T,
}

/// A complex number of its parts.
#[inline(always)]
pub fn c<T>(re: T, im: T) -> C<T> {
    C { re, im }
}

impl<T: Real> C<T> {
    /// A real number.
    #[inline(always)]
    pub fn real(x: T) -> Self {
        c(x, T::of(0.0))
    }
    /// Constant of a plain complex number.
    #[inline(always)]
    pub fn of(z: num_complex::Complex64) -> Self {
        c(T::of(z.re), T::of(z.im))
    }
    /// 0.
    #[inline(always)]
    #[must_use]
    pub fn zero() -> Self {
        c(T::of(0.0), T::of(0.0))
    }
    /// 1.
    #[inline(always)]
    #[must_use]
    pub fn one() -> Self {
        c(T::of(1.0), T::of(0.0))
    }
    /// Square of the magnitude.
    #[inline(always)]
    pub fn norm(self) -> T {
        self.re * self.re + self.im * self.im
    }
    /// Times a real number.
    #[inline(always)]
    #[must_use]
    pub fn scale(self, k: T) -> Self {
        c(self.re * k, self.im * k)
    }
    /// Gives both parts a name in a derivation; the identity everywhere else.
    #[inline(always)]
    #[must_use]
    pub fn step(self, re: &'static str, im: &'static str) -> Self {
        c(self.re.step(re), self.im.step(im))
    }
    /// `magnitude · e^(j angle)`.
    #[inline(always)]
    pub fn turn(magnitude: T, angle: T) -> Self {
        let (sin, cos) = angle.sin_cos();
        c(magnitude * cos, magnitude * sin)
    }
}

impl<T: Real> Add for C<T> {
    type Output = Self;
    #[inline(always)]
    fn add(self, o: Self) -> Self {
        c(self.re + o.re, self.im + o.im)
    }
}

impl<T: Real> Sub for C<T> {
    type Output = Self;
    #[inline(always)]
    fn sub(self, o: Self) -> Self {
        c(self.re - o.re, self.im - o.im)
    }
}

impl<T: Real> Mul for C<T> {
    type Output = Self;
    #[inline(always)]
    fn mul(self, o: Self) -> Self {
        c(
            self.re * o.re - self.im * o.im,
            self.re * o.im + self.im * o.re,
        )
    }
}

impl<T: Real> Div for C<T> {
    type Output = Self;
    #[inline(always)]
    fn div(self, o: Self) -> Self {
        let r = T::of(1.0) / o.norm();
        c(
            (self.re * o.re + self.im * o.im) * r,
            (self.im * o.re - self.re * o.im) * r,
        )
    }
}

impl<T: Real> Neg for C<T> {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        c(-self.re, -self.im)
    }
}
