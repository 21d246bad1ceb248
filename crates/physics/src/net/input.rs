//! Stated figures with their uncertainty and its cause, and the readers that are the only way to
//! their numbers.

use super::complex::{C, c};
use super::scalar::{Dual, Lanes, Real, WIDTH};

/// Distribution of a standardised cause (mean 0, standard deviation 1).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shape {
    /// Rectangular, −√3 to √3 (JCGM 100:2008, 4.3.7).
    Rectangular,
    /// Normal.
    Normal,
}

impl Shape {
    /// Characteristic function, the mean of e^(jaz).
    #[must_use]
    pub fn mean_phasor(self, a: f64) -> f64 {
        match self {
            Shape::Rectangular => {
                let x = libm::sqrt(3.0) * a;
                if x.abs() < 1e-6 {
                    1.0
                } else {
                    libm::sin(x) / x
                }
            }
            Shape::Normal => libm::exp(-0.5 * a * a),
        }
    }

    /// Reach of the distribution in standard deviations: √3, or 2 of a normal one.
    #[must_use]
    pub fn reach(self) -> f64 {
        match self {
            Shape::Rectangular => libm::sqrt(3.0),
            Shape::Normal => 2.0,
        }
    }
}

/// No cause.
const NONE: u32 = u32::MAX;

/// A stated figure. Its number cannot be had but through a [`Reader`].
#[derive(Clone, Copy, Debug)]
pub struct Input {
    value: f64,
    u: f64,
    low: f64,
    high: f64,
    cause: u32,
    /// True for a return loss in dB in the place of an SWR.
    return_loss: bool,
    /// Its name, for derivations.
    pub(super) name: &'static str,
    /// Key of its source in the table of its maker.
    pub(super) source: u32,
}

impl Input {
    /// A figure taken as exact.
    #[must_use]
    pub const fn exact(name: &'static str, value: f64) -> Self {
        Input {
            value,
            u: 0.0,
            low: f64::NEG_INFINITY,
            high: f64::INFINITY,
            cause: NONE,
            return_loss: false,
            name,
            source: NONE,
        }
    }

    /// Its nominal value: for display next to the result, never for the result.
    #[must_use]
    pub const fn nominal(&self) -> f64 {
        self.value
    }

    /// True if an uncertainty belongs to it.
    #[must_use]
    pub fn is_uncertain(&self) -> bool {
        self.u != 0.0
    }

    /// Mean power over the power of this level in dB, which its uncertainty makes larger.
    #[must_use]
    pub fn mean_of_power(&self) -> f64 {
        let u = self.u * core::f64::consts::LN_10 / 10.0;
        libm::exp(0.5 * u * u)
    }

    /// The same with bounds that no draw leaves: a loss is not negative, an SWR not below 1.
    #[must_use]
    pub const fn within(mut self, low: f64, high: f64) -> Self {
        self.low = low;
        self.high = high;
        self
    }

    /// The same with the key of its source.
    #[must_use]
    pub const fn from_source(mut self, source: u32) -> Self {
        self.source = source;
        self
    }

    /// The same as a return loss in dB in the place of an SWR.
    #[must_use]
    pub const fn of_return_loss(mut self) -> Self {
        self.return_loss = true;
        self
    }

    /// True if it is a return loss in dB.
    #[must_use]
    pub const fn is_return_loss(&self) -> bool {
        self.return_loss
    }

    /// The bits that decide a result: value, uncertainty and cause.
    #[must_use]
    pub fn key(&self) -> (u64, u64, u32) {
        (self.value.to_bits(), self.u.to_bits(), self.cause)
    }
}

/// Causes of uncertainty and open phases of a network.
#[derive(Clone, Debug, Default)]
pub struct Inputs {
    shapes: Vec<Shape>,
    /// True if each phase is sampled by itself; one that follows from figures is not.
    phases: Vec<bool>,
}

impl Inputs {
    /// A new cause.
    pub fn cause(&mut self, shape: Shape) -> u32 {
        self.shapes.push(shape);
        u32::try_from(self.shapes.len() - 1).unwrap_or(NONE)
    }

    /// A figure with a standard uncertainty `u` by `cause`; exact where `u` is 0. Signed: of two
    /// figures of one cause, one may fall as the other rises.
    #[must_use]
    pub fn input(&self, name: &'static str, value: f64, u: f64, cause: u32) -> Input {
        let exact = Input::exact(name, value);
        if u == 0.0 || !u.is_finite() {
            return exact;
        }
        Input { u, cause, ..exact }
    }

    /// `n` new phases of which nothing is known; the number of the first.
    pub fn phase(&mut self, n: u32) -> u32 {
        let first = self.phases.len();
        self.phases.resize(first + n as usize, true);
        u32::try_from(first).unwrap_or(NONE)
    }

    /// A new phase of a line.
    pub fn line_phase(&mut self, spread: Spread) -> u32 {
        self.phases.push(spread == Spread::Free);
        u32::try_from(self.phases.len() - 1).unwrap_or(NONE)
    }

    /// Dimension of the sample that each phase takes, then each cause. Phases that follow from
    /// figures take none of their own: another such line changes no draw.
    #[must_use]
    pub fn dimensions(&self) -> Vec<usize> {
        let mut next = 0;
        let mut out: Vec<usize> = self
            .phases
            .iter()
            .map(|free| {
                let here = next;
                next += usize::from(*free);
                if *free { here } else { 0 }
            })
            .collect();
        out.extend(next..next + self.shapes.len());
        out
    }

    /// Shapes of the causes, by number.
    #[must_use]
    pub fn shapes(&self) -> &[Shape] {
        &self.shapes
    }

    /// True if a phase is drawn by itself; one that follows from figures is not.
    pub(super) fn is_free(&self, phase: usize) -> bool {
        self.phases.get(phase).copied().unwrap_or(false)
    }

    /// Number of phases.
    #[must_use]
    pub fn phases(&self) -> usize {
        self.phases.len()
    }

    /// Number of causes and phasors' two components: columns of a gradient.
    #[must_use]
    pub fn columns(&self) -> usize {
        self.shapes.len() + 2 * self.phases()
    }
}

/// Knowledge of a phase other than its angle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spread {
    /// As far as the figures tell from which its angle follows.
    Known,
    /// Nothing.
    Free,
}

/// Turns inputs into scalars.
pub trait Reader {
    /// The scalar.
    type T: Real;
    /// The number of an input, with all that its uncertainty does to it.
    fn get(&self, i: &Input) -> Self::T;
    /// Factor of the round trip's phasor e^(−jθ), θ = `round`: 1 where its
    /// phase is as computed, a phasor of any angle where it is free, and in between its mean and
    /// fluctuation.
    fn coherence(&self, phase: u32, round: Self::T, spread: Spread) -> C<Self::T>;
    /// Sine of half of a free angle: mean 0.
    fn half_sine(&self, phase: u32) -> Self::T;
    /// Phasor e^(jψ) with sin ψ/2 = `most` · sin φ/2, φ free.
    fn leaning(&self, phase: u32, most: Self::T) -> C<Self::T> {
        let (one, two) = (Self::T::of(1.0), Self::T::of(2.0));
        let s = most * self.half_sine(phase);
        c(
            one - two * s * s,
            two * s * (one - s * s).at_least(0.0).sqrt(),
        )
    }
}

/// Mean of the phasor of [`Reader::leaning`]: 1 − 2 sin²(ψ/2) on average.
pub(super) fn mean_leaning<T: Real>(most: T) -> C<T> {
    C::real(T::of(1.0) - most * most)
}

/// Stated values; of phases that are free the mean of their phasor, which is 0. What a formula of
/// them gives is the result before any uncertainty of a figure is counted.
#[derive(Clone, Copy, Debug)]
pub struct Stated;

impl Reader for Stated {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        i.value
    }
    fn coherence(&self, _: u32, _: f64, spread: Spread) -> C<f64> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::zero(),
        }
    }
    fn half_sine(&self, _: u32) -> f64 {
        0.0
    }
    fn leaning(&self, _: u32, most: f64) -> C<f64> {
        mean_leaning(most)
    }
}

/// Nominal values, with an angle for each free phase.
#[derive(Clone, Copy, Debug)]
pub struct Nominal<'a> {
    /// Angle of each phase, rad; missing ones are 0.
    pub angles: &'a [f64],
}

impl Nominal<'_> {
    fn angle(&self, phase: u32) -> f64 {
        self.angles.get(phase as usize).copied().unwrap_or(0.0)
    }
}

impl Reader for Nominal<'_> {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        i.value
    }
    fn coherence(&self, phase: u32, _: f64, spread: Spread) -> C<f64> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::turn(1.0, self.angle(phase)),
        }
    }
    fn half_sine(&self, phase: u32) -> f64 {
        libm::sin(0.5 * self.angle(phase))
    }
}

/// The corner of the stated figures at which something falls lowest. For the floor of an interval
/// only.
#[derive(Clone, Copy, Debug)]
pub struct Favourable<'a> {
    /// Causes.
    pub inputs: &'a Inputs,
    /// Derivative of what is to fall by each cause; only its sign counts.
    pub rises: &'a [f64],
    /// Angle of all free phases, rad.
    pub angle: f64,
}

impl Reader for Favourable<'_> {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        let cause = i.cause as usize;
        let (Some(shape), Some(rise)) = (self.inputs.shapes().get(cause), self.rises.get(cause))
        else {
            return i.value;
        };
        if i.u == 0.0 || *rise == 0.0 {
            return i.value;
        }
        let z = -shape.reach() * rise.signum();
        (i.value + i.u * z).clamp(i.low, i.high)
    }
    fn coherence(&self, _: u32, _: f64, spread: Spread) -> C<f64> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::turn(1.0, self.angle),
        }
    }
    fn half_sine(&self, _: u32) -> f64 {
        libm::sin(0.5 * self.angle)
    }
}

/// Value and derivative by the causes numbered `base` to `base + N`.
pub(super) fn seeded<const N: usize>(i: &Input, base: usize) -> Dual<N> {
    let mut out = Dual::of(i.value);
    if i.u != 0.0
        && let Some(at) = (i.cause as usize).checked_sub(base)
        && at < N
    {
        out.d[at] = i.u;
    }
    out
}

/// Samples of an input, `z` being those of its cause.
#[inline(always)]
pub(super) fn drawn(i: &Input, z: impl Fn(u32) -> [f64; WIDTH]) -> Lanes {
    if i.u == 0.0 {
        return Lanes::of(i.value);
    }
    let mut x = z(i.cause);
    for x in &mut x {
        *x = i.value + i.u * *x;
    }
    Lanes(x).at_least(i.low).at_most(i.high)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mean_phasor_is_that_of_the_distribution() {
        // numerical integration over the density
        for a in [0.0, 0.1, 0.7, 2.0, 5.0] {
            let n = 20_000;
            let (mut flat, mut normal, mut weight) = (0.0, 0.0, 0.0);
            for k in 0..n {
                let t = (f64::from(k) + 0.5) / f64::from(n);
                flat += libm::cos(a * libm::sqrt(3.0) * (2.0 * t - 1.0)) / f64::from(n);
                let z = 16.0 * (t - 0.5);
                let w = libm::exp(-0.5 * z * z);
                normal += w * libm::cos(a * z);
                weight += w;
            }
            assert!((Shape::Rectangular.mean_phasor(a) - flat).abs() < 1e-6);
            assert!((Shape::Normal.mean_phasor(a) - normal / weight).abs() < 1e-6);
        }
    }

    #[test]
    fn draws_stay_within_what_is_possible() {
        let mut inputs = Inputs::default();
        let cause = inputs.cause(Shape::Normal);
        let loss = inputs
            .input("loss, dB", 0.1, 0.2, cause)
            .within(0.0, f64::INFINITY);
        let x = drawn(&loss, |_| [-3.0, -1.0, -0.5, 0.0, 0.5, 1.0, 2.0, 3.0]);
        assert!(x.0.iter().all(|x| *x >= 0.0));
        assert!((x.0[6] - 0.5).abs() < 1e-15);
    }
}
