//! Elementary networks in 50 ohm: what parts are made of.

use super::complex::C;
use super::input::{Reader, Spread};
pub use super::scalar::NEPER_OF_POWER;
use super::scalar::Real;

/// An elementary network.
#[derive(Clone, Copy, Debug)]
pub enum El<T> {
    /// Two-port, port 1 towards the source; `back` is S12·S21.
    Two {
        /// S11.
        s11: C<T>,
        /// S12·S21.
        back: C<T>,
        /// S21.
        s21: C<T>,
        /// S22.
        s22: C<T>,
    },
    /// Matched attenuator with a phase.
    Shift {
        /// Power ratio, one way.
        power: T,
        /// Phasor of the round trip.
        round: C<T>,
        /// Square of the magnitude of its mean.
        coherence: T,
        /// Phasor of one way; 1 where no fields are added.
        way: C<T>,
    },
    /// Absorbs reflections: the parts after it get `power` of the incident power, whatever it
    /// reflects.
    Tuner {
        /// Power ratio.
        power: T,
    },
    /// Boundary between parts.
    Node,
}

impl<T: Real> El<T> {
    /// Reflection before it (mean, incoherent power) of that after it.
    #[inline(always)]
    pub fn seen(&self, g: C<T>, v: T) -> (C<T>, T) {
        let one = T::of(1.0);
        match *self {
            El::Two { s11, back, s22, .. } => {
                let d = C::one() - s22 * g;
                let q = back / d;
                (s11 + q * g, v * q.norm() * (one / d.norm()))
            }
            El::Shift {
                power,
                round,
                coherence,
                ..
            } => {
                let v = power * power * (v + g.norm() * (one - coherence));
                ((g * round).scale(power), v)
            }
            El::Tuner { .. } => (C::zero(), T::of(0.0)),
            El::Node => (g, v),
        }
    }

    /// The same of a reflection without incoherent power, where that after it is not asked for.
    #[inline(always)]
    #[must_use]
    pub fn seen_known(&self, g: C<T>) -> C<T> {
        match *self {
            El::Two { s11, back, s22, .. } => s11 + back / (C::one() - s22 * g) * g,
            El::Shift { power, round, .. } => (g * round).scale(power),
            El::Tuner { .. } => C::zero(),
            El::Node => g,
        }
    }

    /// The same in another scalar.
    #[must_use]
    pub fn map<U>(&self, f: impl Fn(T) -> U) -> El<U> {
        let z = |c: C<T>| C {
            re: f(c.re),
            im: f(c.im),
        };
        match *self {
            El::Two {
                s11,
                back,
                s21,
                s22,
            } => El::Two {
                s11: z(s11),
                back: z(back),
                s21: z(s21),
                s22: z(s22),
            },
            El::Shift {
                power,
                round,
                coherence,
                way,
            } => El::Shift {
                power: f(power),
                round: z(round),
                coherence: f(coherence),
                way: z(way),
            },
            El::Tuner { power } => El::Tuner { power: f(power) },
            El::Node => El::Node,
        }
    }

    /// Forward power after it, of `f` that comes; the reflection is that after it.
    #[inline(always)]
    pub fn passed(&self, f: T, g: C<T>, v: T) -> T {
        match *self {
            El::Two { s21, s22, .. } => {
                let d = C::one() - s22 * g;
                f * s21.norm() / d.norm()
            }
            El::Shift { power, .. } => f * power,
            El::Tuner { power } => f * power / (T::of(1.0) - g.norm() - v),
            El::Node => f,
        }
    }
}

/// Power ratio of a loss in dB.
#[inline(always)]
pub fn share<T: Real>(db: T) -> T {
    db.ratio_of_loss()
}

/// A matched loss without length, dB.
#[inline(always)]
pub fn loss<T: Real>(db: T) -> El<T> {
    El::Shift {
        power: share(db),
        round: C::one(),
        coherence: T::of(1.0),
        way: C::one(),
    }
}

/// A two-port of real parameters but for S22.
#[inline(always)]
pub fn two<T: Real>(s11: T, s12: T, s21: T, s22: C<T>) -> El<T> {
    El::Two {
        s11: C::real(s11),
        back: C::real(s12 * s21),
        s21: C::real(s21),
        s22,
    }
}

/// A distance of unknown electrical length.
#[inline(always)]
pub fn free<R: Reader>(r: &R, phase: u32) -> El<R::T> {
    let one = R::T::of(1.0);
    let k = r.coherence(phase, R::T::of(0.0), Spread::Free);
    El::Shift {
        power: one,
        round: k,
        coherence: k.norm(),
        way: C::one(),
    }
}

/// From 50 ohm into an impedance whose reflection is `g`.
#[inline(always)]
pub fn into_impedance<T: Real>(g: C<T>) -> El<T> {
    El::Two {
        s11: g,
        back: C::one() - g * g,
        s21: C::one() + g,
        s22: -g,
    }
}

/// From an impedance whose reflection is `g` back to 50 ohm.
#[inline(always)]
pub fn out_of_impedance<T: Real>(g: C<T>) -> El<T> {
    El::Two {
        s11: -g,
        back: C::one() - g * g,
        s21: C::one() - g,
        s22: g,
    }
}
