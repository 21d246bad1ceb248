//! Plain Monte Carlo of a network (JCGM 101:2008): pseudo-random draws of all inputs and phases,
//! to check what the derivatives and the small sample of [`super::evaluate`] give.
//!
//! It shares the parts and the solver with them, and nothing else: no quasi-random points, no
//! derivatives, no mean phasors. Fixed seeds and operations in a fixed order: the same bits on
//! every platform.

use super::Network;
use super::complex::{C, c};
use super::evaluate::TAIL;
use super::input::{Input, Reader, Shape, Spread, drawn};
use super::scalar::{Lanes, Real, WIDTH};

/// Fewest draws: below it the ends of the interval are a handful of points.
pub const FEWEST: usize = 1_000;

/// So many draws are made where `draws` are asked for: at least [`FEWEST`], and whole blocks.
#[must_use]
pub fn whole(draws: usize) -> usize {
    draws.max(FEWEST).next_multiple_of(WIDTH)
}

/// Statistics of the draws of one quantity, dB over 1 W.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drawn {
    /// Draws, a multiple of 8.
    pub draws: usize,
    /// Mean.
    pub mean: f64,
    /// Standard deviation.
    pub u: f64,
    /// 2.275 % quantile.
    pub low: f64,
    /// 97.725 % quantile.
    pub high: f64,
}

/// xoshiro256++ (Blackman and Vigna, ACM TOMS 47, 2021), seeded by splitmix64.
pub(super) struct Random([u64; 4]);

impl Random {
    pub(super) fn new(seed: u64) -> Self {
        let mut x = seed;
        Random(core::array::from_fn(|_| {
            x = x.wrapping_add(0x9e37_79b9_7f4a_7c15);
            let z = (x ^ (x >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
            let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
            z ^ (z >> 31)
        }))
    }

    fn next(&mut self) -> u64 {
        let s = &mut self.0;
        let out = s[0].wrapping_add(s[3]).rotate_left(23).wrapping_add(s[0]);
        let t = s[1] << 17;
        s[2] ^= s[0];
        s[3] ^= s[1];
        s[1] ^= s[2];
        s[0] ^= s[3];
        s[2] ^= t;
        s[3] = s[3].rotate_left(45);
        out
    }

    /// Uniform over 0 to 1, neither of them.
    #[allow(clippy::cast_precision_loss, reason = "53 bits")]
    fn share(&mut self) -> f64 {
        ((self.next() >> 11) as f64 + 0.5) * (1.0 / (1_u64 << 53) as f64)
    }

    pub(super) fn shares(&mut self) -> Lanes {
        Lanes(core::array::from_fn(|_| self.share()))
    }

    /// Standardised values of a cause.
    pub(super) fn values(&mut self, shape: Shape) -> Lanes {
        let of = Lanes::of;
        match shape {
            Shape::Rectangular => (self.shares() - of(0.5)) * of(2.0 * libm::sqrt(3.0)),
            // Box and Muller, Ann. Math. Stat. 29, 1958
            Shape::Normal => {
                let radius = (of(-2.0) * self.shares().ln_e()).sqrt();
                radius * (of(core::f64::consts::TAU) * self.shares()).sin_cos().1
            }
        }
    }
}

/// Reader of [`WIDTH`] draws.
struct Draws {
    /// Standardised values by cause.
    values: Vec<Lanes>,
    /// Shares of a turn by phase; of those that follow from figures none are drawn.
    turns: Vec<Lanes>,
}

impl Draws {
    fn angle(&self, phase: u32) -> Lanes {
        let none = Lanes::of(0.0);
        Lanes::of(core::f64::consts::TAU) * self.turns.get(phase as usize).copied().unwrap_or(none)
    }
}

impl Reader for Draws {
    type T = Lanes;
    #[inline(always)]
    fn get(&self, i: &Input) -> Lanes {
        drawn(i, |cause| self.values[cause as usize].0)
    }
    #[inline(always)]
    fn coherence(&self, phase: u32, _: Lanes, spread: Spread) -> C<Lanes> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => {
                let (sin, cos) = self.angle(phase).sin_cos();
                c(cos, sin)
            }
        }
    }
    #[inline(always)]
    fn half_sine(&self, phase: u32) -> Lanes {
        // sin((a − π)/2) of an angle a from 0 to 2π
        -(Lanes::of(0.5) * self.angle(phase)).sin_cos().1
    }
}

impl Network {
    /// EIRP (the power delivered where nothing radiates) by `draws` random draws of every input
    /// and open phase, see [`whole`].
    #[must_use]
    pub fn draw(&self, draws: usize, seed: u64) -> Drawn {
        let blocks = whole(draws) / WIDTH;
        let mut random = Random::new(seed);
        let mut reader = Draws {
            values: vec![Lanes::of(0.0); self.inputs.shapes().len()],
            turns: vec![Lanes::of(0.0); self.inputs.phases()],
        };
        let mut all = Vec::with_capacity(blocks * WIDTH);
        for _ in 0..blocks {
            for (v, shape) in reader.values.iter_mut().zip(self.inputs.shapes()) {
                *v = random.values(*shape);
            }
            for (i, t) in reader.turns.iter_mut().enumerate() {
                if self.inputs.is_free(i) {
                    *t = random.shares();
                }
            }
            all.extend(self.level(&reader).0);
        }
        summed_up(all)
    }
}

/// Mean, standard deviation and quantiles.
pub(super) fn summed_up(mut all: Vec<f64>) -> Drawn {
    #[allow(clippy::cast_precision_loss, reason = "a count")]
    let n = all.len() as f64;
    let first = all.first().copied().unwrap_or(0.0);
    // about one of them, so that no digits are lost
    let off = all.iter().map(|x| x - first).sum::<f64>() / n;
    let mean = first + off;
    let u = libm::sqrt(all.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / n);
    let mut at = |p: f64| {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "within the list"
        )]
        let k = ((p * n) as usize).min(all.len() - 1);
        *all.select_nth_unstable_by(k, f64::total_cmp).1
    };
    let (low, high) = (at(TAIL), at(1.0 - TAIL));
    Drawn {
        draws: all.len(),
        mean,
        u,
        low,
        high,
    }
}

#[cfg(test)]
mod tests {
    use super::super::input::Inputs;
    use super::super::part::{End, Load, Loss, Part, Stretch};
    use super::super::{Fields, Network};
    use super::*;

    #[test]
    fn the_generator_is_the_published_one() {
        // first outputs of xoshiro256++ from the state 1, 2, 3, 4 (the authors' reference code)
        let mut r = Random([1, 2, 3, 4]);
        let want = [
            41_943_041,
            58_720_359,
            3_588_806_011_781_223,
            3_591_011_842_654_386,
        ];
        assert_eq!(want.map(|_| r.next()), want);
    }

    #[test]
    fn shares_and_values_have_their_moments() {
        let mut r = Random::new(1);
        for shape in [Shape::Rectangular, Shape::Normal] {
            let x: Vec<f64> = (0..125_000).flat_map(|_| r.values(shape).0).collect();
            let n = x.len() as f64;
            let mean = x.iter().sum::<f64>() / n;
            let moment = |k: i32| x.iter().map(|x| x.powi(k)).sum::<f64>() / n;
            // of 10^6 draws the mean scatters by 0.001, the variance by at most 0.0014
            assert!(mean.abs() < 0.005, "{shape:?} {mean}");
            assert!((moment(2) - 1.0).abs() < 0.007, "{shape:?}");
            let fourth = match shape {
                Shape::Rectangular => 1.8,
                Shape::Normal => 3.0,
            };
            assert!((moment(4) - fourth).abs() < 0.05, "{shape:?}");
        }
    }

    /// A level and a pad, both with a known distribution, by hand.
    #[test]
    fn what_can_be_computed_by_hand_is_drawn() {
        let mut inputs = Inputs::default();
        let (flat, normal) = (
            inputs.cause(Shape::Rectangular),
            inputs.cause(Shape::Normal),
        );
        let level = inputs.input("power, dBW", 17.0, 0.3, normal);
        let loss = inputs.input("loss, dB", 3.0, 0.4, flat);
        let net = |level, loss, inputs| Network {
            hz: 145e6,
            level,
            inputs,
            feed: Stretch {
                parts: vec![Part::Device {
                    loss: Loss::Stated(loss),
                    swr: None,
                    phase: 0,
                }],
                end: End::Load(Load::Matched, None),
            },
            phased: false,
            fields: Fields::InPhase,
        };
        inputs.phase(1);
        let both = net(level, loss, inputs.clone()).draw(200_000, 7);
        assert!((both.mean - 14.0).abs() < 0.005, "{both:?}");
        assert!((both.u - 0.5).abs() < 0.005, "{both:?}");
        // a rectangle alone: its quantiles are straight
        let exact = Input::exact("power, dBW", 17.0);
        let pad = net(exact, loss, inputs.clone()).draw(200_000, 7);
        let end = 0.4 * libm::sqrt(3.0) * (1.0 - 2.0 * TAIL);
        assert!((pad.low - (14.0 - end)).abs() < 0.003, "{pad:?}");
        assert!((pad.high - (14.0 + end)).abs() < 0.003, "{pad:?}");
        // a normal one alone: two standard deviations
        let tone = net(level, Input::exact("loss, dB", 3.0), inputs.clone()).draw(200_000, 7);
        assert!((tone.low - (14.0 - 0.6)).abs() < 0.01, "{tone:?}");
        assert!((tone.high - (14.0 + 0.6)).abs() < 0.01, "{tone:?}");
        // the same draws again, and others
        let again = |seed| net(level, loss, inputs.clone()).draw(10_000, seed);
        assert_eq!(again(7), again(7));
        assert!(again(7) != again(8));
        assert_eq!(net(level, loss, inputs.clone()).draw(1, 7).draws, FEWEST);
    }
}
