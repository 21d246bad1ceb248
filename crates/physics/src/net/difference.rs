//! Uncertainty of the difference between two networks that share causes (GUM, JCGM 100:2008, 5.2):
//! what moves both alike cancels.
//!
//! By derivatives, checked and where they do not suffice replaced by a sample of all figures and
//! phases of both networks together, as [`super::evaluate`] does for one network.

use super::Network;
use super::complex::C;
use super::evaluate::{
    CHECKED, ENOUGH, Evaluation, FLOOR_DB, Points, Quantity, TAIL, quantile, smooth,
};
use super::input::{Input, Reader, Spread, drawn};
use super::sample::{Dimension, POINTS};
use super::scalar::{Lanes, Real, WIDTH};
use super::verify::{Drawn, Random, summed_up, whole};

/// Which causes and open phases of a second network are those of a first.
#[derive(Clone, Debug, Default)]
pub struct Shared {
    /// Of each cause of the second network its number in the first.
    pub causes: Vec<Option<u32>>,
    /// Of each phase of the second network its number in the first.
    pub phases: Vec<Option<u32>>,
}

impl Shared {
    /// The same from the second network to a first of `causes` causes and `phases` phases.
    #[must_use]
    fn reversed(&self, causes: usize, phases: usize) -> Shared {
        let turned = |list: &[Option<u32>], count: usize| {
            let mut out = vec![None; count];
            for (i, at) in list.iter().enumerate() {
                if let Some(o) = at.and_then(|at| out.get_mut(at as usize)) {
                    *o = u32::try_from(i).ok();
                }
            }
            out
        };
        Shared {
            causes: turned(&self.causes, causes),
            phases: turned(&self.phases, phases),
        }
    }
}

/// What is compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Compared {
    /// EIRP, dB over 1 W.
    Radiated,
    /// Power delivered to all ends, dB over 1 W.
    Delivered,
    /// Power of the source over the power delivered, dB.
    Loss,
}

impl Compared {
    fn quantity(self) -> Quantity {
        match self {
            Compared::Radiated => Quantity::Eirp,
            Compared::Delivered | Compared::Loss => Quantity::Delivered,
        }
    }
}

/// The second network's output less the first's, dB.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Difference {
    /// Difference of the means.
    pub mean: f64,
    /// Standard uncertainty.
    pub u: f64,
    /// Lower end of the interval of 95 % (2.275 %).
    pub low: f64,
    /// Its upper end (97.725 %).
    pub high: f64,
}

/// A network with its evaluation.
pub type Known<'n> = (&'n Network, &'n Evaluation);

/// The difference of an output between two evaluated networks. None where one of them has no such
/// output.
#[must_use]
pub fn difference(
    old: Known<'_>,
    new: Known<'_>,
    shared: &Shared,
    of: Compared,
) -> Option<Difference> {
    let (a, b) = (old.1.output(of.quantity())?, new.1.output(of.quantity())?);
    // the sample depends on which network is the first: always the same one of the two, so that
    // the difference the other way round is the same but for its sign
    let key = |o: &super::evaluate::Output, (net, _): Known<'_>| {
        (o.mean, o.u, net.level.nominal(), net.inputs.columns())
    };
    if key(a, old) > key(b, new) {
        let inputs = &old.0.inputs;
        let shared = shared.reversed(inputs.shapes().len(), inputs.phases());
        return difference(new, old, &shared, of).map(|d| Difference {
            mean: -d.mean,
            u: d.u,
            low: -d.high,
            high: -d.low,
        });
    }
    let mut mean = b.mean - a.mean;
    if of == Compared::Loss {
        mean = (new.0.level.nominal() - old.0.level.nominal()) - mean;
    }
    if !mean.is_finite() {
        return None;
    }
    let both = Both::new(old, new, shared, of);
    let mut u = both.linear();
    let (r, x) = both.residual(u);
    u = libm::hypot(u, r);
    let weight = if both.follows_apart() {
        1.0
    } else {
        smooth(ENOUGH, x)
    };
    let (mut low, mut high) = (mean - 2.0 * u, mean + 2.0 * u);
    if weight > 0.0
        && let Some(s) = both.sample()
    {
        let mix = |a: f64, b: f64| (1.0 - weight) * a + weight * b;
        u = mix(u, s.u);
        // about the mean that the two results have
        low = mix(low, mean + (s.low - s.mean));
        high = mix(high, mean + (s.high - s.mean));
    }
    if key(a, old) == key(b, new) {
        // neither is the first
        let half = 0.5 * (high - low);
        (low, high) = (mean - half, mean + half);
    }
    Some(Difference { mean, u, low, high })
}

/// Two networks with one set of sample dimensions.
struct Both<'n> {
    old: Known<'n>,
    new: Known<'n>,
    shared: &'n Shared,
    of: Compared,
    dimensions: [Vec<Dimension>; 2],
}

impl<'n> Both<'n> {
    fn new(old: Known<'n>, new: Known<'n>, shared: &'n Shared, of: Compared) -> Self {
        let first = old.0.inputs.dimensions();
        let mut next = first.iter().map(|d| d + 1).max().unwrap_or(0);
        let (phases, causes) = (new.0.inputs.phases(), new.0.inputs.shapes().len());
        let old_phases = old.0.inputs.phases();
        let mut fresh = || {
            next += 1;
            next - 1
        };
        let mut second = Vec::with_capacity(phases + causes);
        for p in 0..phases {
            let same = shared.phases.get(p).copied().flatten();
            second.push(match same {
                _ if !new.0.inputs.is_free(p) => 0,
                Some(q) if old.0.inputs.is_free(q as usize) => first[q as usize],
                _ => fresh(),
            });
        }
        for c in 0..causes {
            let same = shared.causes.get(c).copied().flatten();
            second.push(
                match same.and_then(|s| first.get(old_phases + s as usize)) {
                    Some(d) => *d,
                    None => fresh(),
                },
            );
        }
        let looked_up = |d: Vec<usize>| d.into_iter().map(Dimension::new).collect();
        Both {
            old,
            new,
            shared,
            of,
            dimensions: [looked_up(first), looked_up(second)],
        }
    }

    /// Derivatives of what is compared by each column of a network.
    fn terms(&self, (net, e): Known<'_>) -> Vec<f64> {
        let mut d = e.terms_of(self.of.quantity()).to_vec();
        if self.of == Compared::Loss {
            d.iter_mut().for_each(|d| *d = -*d);
            let (_, u, cause) = net.level.key();
            if net.level.is_uncertain()
                && let Some(d) = d.get_mut(cause as usize)
            {
                *d += f64::from_bits(u);
            }
        }
        d
    }

    /// Standard uncertainty by the derivatives: of a shared cause only the difference counts.
    fn linear(&self) -> f64 {
        let (mut a, b) = (self.terms(self.old), self.terms(self.new));
        let causes = self.new.0.inputs.shapes().len();
        let old_causes = self.old.0.inputs.shapes().len();
        let mut square = 0.0;
        for (c, d) in b.iter().take(causes).enumerate() {
            let mut d = *d;
            if let Some(s) = self.shared.causes.get(c).copied().flatten()
                && let Some(o) = a.get_mut(s as usize)
            {
                d -= *o;
                *o = 0.0;
            }
            square += d * d;
        }
        for (p, pair) in b[causes..].chunks_exact(2).enumerate() {
            let mut pair = [pair[0], pair[1]];
            let at = self.shared.phases.get(p).copied().flatten();
            // one that follows from figures has its fluctuation by them where the figures are shared
            if let Some(at) = at.map(|q| old_causes + 2 * q as usize)
                && at + 1 < a.len()
            {
                pair[0] -= a[at];
                pair[1] -= a[at + 1];
                (a[at], a[at + 1]) = (0.0, 0.0);
            }
            square += pair[0] * pair[0] + pair[1] * pair[1];
        }
        square += a.iter().map(|d| d * d).sum::<f64>();
        libm::sqrt(square)
    }

    /// Whether a phase that follows from figures counts in one network and is no phase of the other:
    /// its figures may be shared all the same, and its derivatives say nothing of that.
    fn follows_apart(&self) -> bool {
        let taken = |q: usize| {
            let all = self.shared.phases.iter().flatten();
            all.into_iter().any(|s| *s as usize == q)
        };
        let counts = |known: Known<'_>, apart: &dyn Fn(usize) -> bool| {
            let (inputs, terms) = (&known.0.inputs, self.terms(known));
            let pairs = terms[inputs.shapes().len()..].chunks_exact(2).enumerate();
            pairs
                .filter(|(p, pair)| !inputs.is_free(*p) && (pair[0] != 0.0 || pair[1] != 0.0))
                .any(|(p, _)| apart(p))
        };
        let mine = |p: usize| self.shared.phases.get(p).copied().flatten().is_none();
        counts(self.new, &mine) || counts(self.old, &|q| !taken(q))
    }

    /// What is compared at the points from `first` on.
    fn points(&self, first: usize) -> [Lanes; 2] {
        let at = |(net, _): Known<'_>, dimensions: &[Dimension]| {
            let r = Points::new(dimensions, &net.inputs, first);
            self.value(net, &r)
        };
        [
            at(self.old, &self.dimensions[0]),
            at(self.new, &self.dimensions[1]),
        ]
    }

    fn value<R: Reader<T = Lanes>>(&self, net: &Network, r: &R) -> Lanes {
        let (radiated, delivered) = net.levels(r);
        match self.of {
            Compared::Radiated => radiated,
            Compared::Delivered => delivered,
            Compared::Loss => r.get(&net.level) - delivered,
        }
    }

    /// By how much the derivatives miss the difference (rms of the first points), and that beside
    /// its uncertainty.
    fn residual(&self, u: f64) -> (f64, f64) {
        let mut square = 0.0;
        let all = [self.old, self.new];
        let mut z = all.map(|(net, _)| vec![[0.0; WIDTH]; net.inputs.columns()]);
        let terms = all.map(|k| self.terms(k));
        let mean = all.map(|(net, e)| {
            let o = e.stated(self.of.quantity());
            match self.of {
                Compared::Loss => net.level.nominal() - o,
                _ => o,
            }
        });
        for block in 0..CHECKED / WIDTH {
            let have = self.points(block * WIDTH);
            for (i, (net, e)) in all.iter().enumerate() {
                let dimensions = &self.dimensions[i];
                e.standardised(&net.inputs, dimensions, block * WIDTH, &mut z[i]);
            }
            for k in 0..WIDTH {
                let mut r = have[1].0[k] - have[0].0[k];
                for i in 0..all.len() {
                    let linear: f64 = terms[i].iter().zip(&z[i]).map(|(d, z)| d * z[k]).sum();
                    r += (mean[i] + linear) * if i == 0 { 1.0 } else { -1.0 };
                }
                square += r * r;
            }
        }
        #[allow(clippy::cast_precision_loss, reason = "a count")]
        let r = libm::sqrt(square / CHECKED as f64);
        let r = if r.is_finite() { r } else { 0.0 };
        (r, r / (u + FLOOR_DB))
    }

    /// The sample of both together.
    fn sample(&self) -> Option<Difference> {
        let mut all = Vec::with_capacity(POINTS);
        for block in 0..POINTS / WIDTH {
            let [a, b] = self.points(block * WIDTH);
            all.extend((b - a).0);
        }
        #[allow(clippy::cast_precision_loss, reason = "a count")]
        let n = POINTS as f64;
        let mean = all.iter().sum::<f64>() / n;
        let u = libm::sqrt(all.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / n);
        if !(mean.is_finite() && u.is_finite()) {
            return None;
        }
        all.sort_unstable_by(f64::total_cmp);
        let (low, high) = (quantile(&all, TAIL), quantile(&all, 1.0 - TAIL));
        Some(Difference { mean, u, low, high })
    }
}

/// The difference by random draws of all figures and open phases of both networks together (JCGM
/// 101:2008): no quasi-random points and no derivatives, to check [`difference`].
#[must_use]
pub fn drawn_together(
    old: &Network,
    new: &Network,
    shared: &Shared,
    of: Compared,
    draws: usize,
    seed: u64,
) -> Drawn {
    let blocks = whole(draws) / WIDTH;
    let mut random = Random::new(seed);
    let mut both = [Drawing::of(old), Drawing::of(new)];
    let mut all = Vec::with_capacity(blocks * WIDTH);
    for _ in 0..blocks {
        for d in &mut both {
            d.draw(&mut random);
        }
        let [first, second] = &mut both;
        second.take(first, shared);
        let value = |d: &Drawing<'_>| {
            let (radiated, delivered) = d.net.levels(d);
            match of {
                Compared::Radiated => radiated,
                Compared::Delivered => delivered,
                Compared::Loss => d.get(&d.net.level) - delivered,
            }
        };
        all.extend((value(second) - value(first)).0);
    }
    summed_up(all)
}

/// Draws of one network.
struct Drawing<'n> {
    net: &'n Network,
    values: Vec<Lanes>,
    turns: Vec<Lanes>,
}

impl<'n> Drawing<'n> {
    fn of(net: &'n Network) -> Self {
        Drawing {
            net,
            values: vec![Lanes::of(0.0); net.inputs.shapes().len()],
            turns: vec![Lanes::of(0.0); net.inputs.phases()],
        }
    }

    fn draw(&mut self, random: &mut Random) {
        for (v, shape) in self.values.iter_mut().zip(self.net.inputs.shapes()) {
            *v = random.values(*shape);
        }
        for t in &mut self.turns {
            *t = random.shares();
        }
    }

    fn take(&mut self, first: &Drawing<'_>, shared: &Shared) {
        let each = |mine: &mut [Lanes], theirs: &[Lanes], which: &[Option<u32>]| {
            for (v, w) in mine.iter_mut().zip(which) {
                if let Some(x) = w.and_then(|w| theirs.get(w as usize)) {
                    *v = *x;
                }
            }
        };
        each(&mut self.values, &first.values, &shared.causes);
        each(&mut self.turns, &first.turns, &shared.phases);
    }

    fn angle(&self, phase: u32) -> Lanes {
        let none = Lanes::of(0.0);
        Lanes::of(core::f64::consts::TAU) * self.turns.get(phase as usize).copied().unwrap_or(none)
    }
}

impl Reader for Drawing<'_> {
    type T = Lanes;

    fn get(&self, i: &Input) -> Lanes {
        drawn(i, |cause| self.values[cause as usize].0)
    }

    fn coherence(&self, phase: u32, _: Lanes, spread: Spread) -> C<Lanes> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => {
                let (sin, cos) = self.angle(phase).sin_cos();
                super::complex::c(cos, sin)
            }
        }
    }

    fn half_sine(&self, phase: u32) -> Lanes {
        -(Lanes::of(0.5) * self.angle(phase)).sin_cos().1
    }
}

#[cfg(test)]
mod tests {
    use super::super::Fields;
    use super::super::input::{Inputs, Shape};
    use super::super::part::{End, Load, Loss, Part, Stretch};
    use super::*;

    /// A source and two pads, all uncertain.
    fn chain(level: f64, first: f64, second: f64) -> Network {
        let mut inputs = Inputs::default();
        let causes = [
            inputs.cause(Shape::Normal),
            inputs.cause(Shape::Rectangular),
            inputs.cause(Shape::Rectangular),
        ];
        let level = inputs.input("power, dBW", level, 0.3, causes[0]);
        let pads = [
            inputs.input("loss, dB", first, 0.4, causes[1]),
            inputs.input("loss, dB", second, 0.2, causes[2]),
        ];
        let part = |loss| Part::Device {
            loss: Loss::Stated(loss),
            swr: None,
            phase: inputs.phase(1),
        };
        let parts = pads.map(part).to_vec();
        Network {
            hz: 145e6,
            level,
            inputs,
            feed: Stretch {
                parts,
                end: End::Load(Load::Matched, None),
            },
            phased: false,
            fields: Fields::InPhase,
        }
    }

    /// JCGM 100:2008, 5.2.2, by hand: what is shared cancels, what is not adds as squares.
    #[test]
    fn what_is_shared_cancels() {
        let (old, new) = (chain(17.0, 3.0, 1.0), chain(17.0, 3.0, 2.0));
        let (a, b) = (old.evaluate(&[]), new.evaluate(&[]));
        let of = |causes: [Option<u32>; 3], of| {
            let shared = Shared {
                causes: causes.to_vec(),
                phases: vec![Some(0), Some(1)],
            };
            let d = difference((&old, &a), (&new, &b), &shared, of).unwrap();
            let drawn = drawn_together(&old, &new, &shared, of, 100_000, 3);
            assert!((drawn.u - d.u).abs() < 0.01 * d.u + 1e-9, "{drawn:?} {d:?}");
            d
        };
        let all = of([Some(0), Some(1), None], Compared::Delivered);
        assert!((all.mean + 1.0).abs() < 1e-9);
        assert!((all.u - libm::sqrt(2.0 * 0.04)).abs() < 1e-9, "{all:?}");
        let none = of([None; 3], Compared::Delivered);
        let want = libm::sqrt(2.0 * (0.09 + 0.16 + 0.04));
        assert!((none.u - want).abs() < 1e-9, "{none:?}");
        // the power of the source is no part of a loss
        let loss = of([None, Some(1), None], Compared::Loss);
        assert!((loss.mean - 1.0).abs() < 1e-9);
        assert!((loss.u - libm::sqrt(2.0 * 0.04)).abs() < 1e-9, "{loss:?}");
        let same = of([Some(0), Some(1), Some(2)], Compared::Delivered);
        assert!(same.u < 1e-12, "{same:?}");
    }
}
