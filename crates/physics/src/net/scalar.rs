//! Scalars: one trait, four implementations. A formula written over [`Real`] gives its value
//! (`f64`), its value with all derivatives ([`Dual`]), eight samples at once ([`Lanes`]) or its
//! own derivation ([`super::record::Rec`]).

use core::ops::{Add, Div, Mul, Neg, Sub};

use crate::lanes;

/// The operations that formulas need of a number. The names of exponential and logarithm are other than those of
/// `f64`, whose last bits differ between platforms.
pub trait Real:
    Copy
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
{
    /// A constant.
    fn of(x: f64) -> Self;
    /// The smaller of the two: a choice, no formula.
    fn at_most(self, x: f64) -> Self;
    /// The larger of the two.
    fn at_least(self, x: f64) -> Self;
    /// The larger of two numbers: a choice, no formula.
    fn larger(self, o: Self) -> Self;
    /// e to this power; arguments below −700 count as −700 in lanes.
    fn exp_e(self) -> Self;
    /// Natural logarithm; of a positive number.
    fn ln_e(self) -> Self;
    /// Square root.
    fn sqrt(self) -> Self;
    /// Sine and cosine; |x| below 10⁶ in lanes.
    fn sin_cos(self) -> (Self, Self);
    /// A constant that has a name in a derivation.
    #[inline(always)]
    fn named(_name: &'static str, x: f64) -> Self {
        Self::of(x)
    }
    /// Power ratio of a loss of so many dB, `10^(−x/10)`.
    #[inline(always)]
    #[must_use]
    fn ratio_of_loss(self) -> Self {
        (-self * Self::of(NEPER_OF_POWER)).exp_e()
    }
    /// Loss of this power ratio in dB, `−10 log10 x`.
    #[inline(always)]
    #[must_use]
    fn loss_of_ratio(self) -> Self {
        self.ln_e() * Self::of(-1.0 / NEPER_OF_POWER)
    }
    /// Gives the number a name in a derivation; the identity everywhere else.
    #[inline(always)]
    #[must_use]
    fn step(self, _name: &'static str) -> Self {
        self
    }
}

/// ln(10)/10: nepers of power per dB.
pub const NEPER_OF_POWER: f64 = core::f64::consts::LN_10 / 10.0;

impl Real for f64 {
    #[inline(always)]
    fn of(x: f64) -> f64 {
        x
    }
    #[inline(always)]
    fn at_most(self, x: f64) -> f64 {
        if self > x { x } else { self }
    }
    #[inline(always)]
    fn at_least(self, x: f64) -> f64 {
        if self < x { x } else { self }
    }
    fn larger(self, o: f64) -> f64 {
        if o > self { o } else { self }
    }
    fn exp_e(self) -> f64 {
        libm::exp(self)
    }
    fn ln_e(self) -> f64 {
        libm::log(self)
    }
    fn sqrt(self) -> f64 {
        libm::sqrt(self)
    }
    fn sin_cos(self) -> (f64, f64) {
        libm::sincos(self)
    }
}

#[inline(always)]
fn fill<const N: usize>(f: impl Fn(usize) -> f64) -> [f64; N] {
    let mut out = [0.0; N];
    for (i, x) in out.iter_mut().enumerate() {
        *x = f(i);
    }
    out
}

/// A value and its derivatives by N standardised causes (forward automatic differentiation).
#[derive(Clone, Copy, Debug)]
pub struct Dual<const N: usize> {
    /// Value.
    pub v: f64,
    /// Derivative by each cause, times the standard uncertainty of what it moves.
    pub d: [f64; N],
}

impl<const N: usize> Dual<N> {
    #[inline(always)]
    fn through(self, v: f64, slope: f64) -> Self {
        Dual {
            v,
            d: fill(|i| self.d[i] * slope),
        }
    }
}

impl<const N: usize> Add for Dual<N> {
    type Output = Self;
    #[inline(always)]
    fn add(self, o: Self) -> Self {
        Dual {
            v: self.v + o.v,
            d: fill(|i| self.d[i] + o.d[i]),
        }
    }
}

impl<const N: usize> Sub for Dual<N> {
    type Output = Self;
    #[inline(always)]
    fn sub(self, o: Self) -> Self {
        Dual {
            v: self.v - o.v,
            d: fill(|i| self.d[i] - o.d[i]),
        }
    }
}

impl<const N: usize> Mul for Dual<N> {
    type Output = Self;
    #[inline(always)]
    #[allow(clippy::suspicious_arithmetic_impl, reason = "the product rule")]
    fn mul(self, o: Self) -> Self {
        Dual {
            v: self.v * o.v,
            d: fill(|i| self.d[i] * o.v + self.v * o.d[i]),
        }
    }
}

impl<const N: usize> Div for Dual<N> {
    type Output = Self;
    #[inline(always)]
    fn div(self, o: Self) -> Self {
        let r = 1.0 / o.v;
        let q = self.v * r;
        Dual {
            v: q,
            d: fill(|i| (self.d[i] - q * o.d[i]) * r),
        }
    }
}

impl<const N: usize> Neg for Dual<N> {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        Dual {
            v: -self.v,
            d: fill(|i| -self.d[i]),
        }
    }
}

impl<const N: usize> Real for Dual<N> {
    #[inline(always)]
    fn of(v: f64) -> Self {
        Dual { v, d: [0.0; N] }
    }
    fn at_most(self, x: f64) -> Self {
        if self.v > x { Self::of(x) } else { self }
    }
    fn at_least(self, x: f64) -> Self {
        if self.v < x { Self::of(x) } else { self }
    }
    fn larger(self, o: Self) -> Self {
        if o.v > self.v { o } else { self }
    }
    fn exp_e(self) -> Self {
        let e = libm::exp(self.v);
        self.through(e, e)
    }
    fn ln_e(self) -> Self {
        self.through(libm::log(self.v), 1.0 / self.v)
    }
    fn sqrt(self) -> Self {
        let s = libm::sqrt(self.v);
        self.through(s, if s > 0.0 { 0.5 / s } else { 0.0 })
    }
    fn sin_cos(self) -> (Self, Self) {
        let (s, c) = libm::sincos(self.v);
        (self.through(s, c), self.through(c, -s))
    }
}

/// Samples done side by side.
pub const WIDTH: usize = 8;

/// [`WIDTH`] samples of one number. Additions, multiplications, divisions and square roots in a
/// fixed order: the bits do not depend on the platform.
#[derive(Clone, Copy, Debug)]
pub struct Lanes(pub [f64; WIDTH]);

impl Add for Lanes {
    type Output = Self;
    #[inline(always)]
    fn add(self, o: Self) -> Self {
        Lanes(fill(|i| self.0[i] + o.0[i]))
    }
}

impl Sub for Lanes {
    type Output = Self;
    #[inline(always)]
    fn sub(self, o: Self) -> Self {
        Lanes(fill(|i| self.0[i] - o.0[i]))
    }
}

impl Mul for Lanes {
    type Output = Self;
    #[inline(always)]
    fn mul(self, o: Self) -> Self {
        Lanes(fill(|i| self.0[i] * o.0[i]))
    }
}

impl Div for Lanes {
    type Output = Self;
    #[inline(always)]
    fn div(self, o: Self) -> Self {
        Lanes(fill(|i| self.0[i] / o.0[i]))
    }
}

impl Neg for Lanes {
    type Output = Self;
    #[inline(always)]
    fn neg(self) -> Self {
        Lanes(fill(|i| -self.0[i]))
    }
}

impl Real for Lanes {
    #[inline(always)]
    fn of(x: f64) -> Self {
        Lanes([x; WIDTH])
    }
    #[inline(always)]
    fn at_most(self, x: f64) -> Self {
        Lanes(fill(|i| if self.0[i] > x { x } else { self.0[i] }))
    }
    #[inline(always)]
    fn at_least(self, x: f64) -> Self {
        Lanes(fill(|i| if self.0[i] < x { x } else { self.0[i] }))
    }
    #[inline(always)]
    fn larger(self, o: Self) -> Self {
        Lanes(fill(|i| {
            if o.0[i] > self.0[i] {
                o.0[i]
            } else {
                self.0[i]
            }
        }))
    }
    #[inline(always)]
    fn exp_e(self) -> Self {
        Lanes(fill(|i| lanes::exp_negative(self.0[i])))
    }
    #[inline(always)]
    fn ln_e(self) -> Self {
        Lanes(fill(|i| lanes::ln(self.0[i])))
    }
    #[inline(always)]
    fn sqrt(self) -> Self {
        // correctly rounded by IEEE 754: the same everywhere
        Lanes(fill(|i| self.0[i].sqrt()))
    }
    #[inline(always)]
    fn sin_cos(self) -> (Self, Self) {
        let (mut s, mut c) = ([0.0; WIDTH], [0.0; WIDTH]);
        for i in 0..WIDTH {
            (s[i], c[i]) = lanes::sin_cos(self.0[i]);
        }
        (Lanes(s), Lanes(c))
    }
}
