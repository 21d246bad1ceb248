//! Mean, uncertainty, coverage interval and probability of every output of a network.
//!
//! Derivatives by all causes come from one pass over dual numbers (GUM, JCGM 100:2008, 5.1.3; what
//! has one cause is added with its sign before it is squared, 5.2). The first points of the sample
//! check them; where they do not suffice, all inputs and phases are sampled together (JCGM
//! 101:2008), and the result passes from one to the other without a step.

use super::complex::{C, c};
use super::input::{Input, Inputs, Reader, Shape, Spread, drawn, mean_leaning, seeded};
use super::part::Context;
use super::sample::{Dimension, POINTS};
use super::scalar::{Dual, Lanes, Real, WIDTH};
use super::solve::Solved;
use super::{Fields, Network};

/// dB per neper of power.
const DB: f64 = 10.0 / core::f64::consts::LN_10;

/// Less power than this is none: −3000 dB.
const NOTHING_W: f64 = 1e-300;

/// Residual of the check over the uncertainty below which derivatives are enough, and above which
/// the sample is taken.
pub(super) const ENOUGH: (f64, f64) = (0.02, 0.04);

/// Added to the uncertainty before that comparison: a residual of 0.002 dB shows in no digit.
pub(super) const FLOOR_DB: f64 = 0.1;

/// The same for a reflected share of power.
const FLOOR_BACK: f64 = 0.02;

/// Points of the check.
pub(super) const CHECKED: usize = 32;

/// Probability beyond two standard deviations of a normal distribution, one side: the
/// one-sided level of every interval and verdict.
pub const TAIL: f64 = 0.022_750_131_948_179_21;

/// The quantity of an output.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// EIRP, dB over 1 W.
    Eirp,
    /// Power delivered to all ends, dB over 1 W.
    Delivered,
    /// Forward power at a node, dB over 1 W.
    Forward(usize),
    /// Net power at a node, dB over 1 W.
    Net(usize),
    /// Reflected over forward power at a node.
    Back(usize),
}

/// One output.
#[derive(Clone, Debug)]
pub struct Output {
    /// Mean over all uncertain figures.
    pub mean: f64,
    /// Standard uncertainty.
    pub u: f64,
    /// Of a power: its own mean in W, which is above the power of the mean level. Of a net power by
    /// the sample where there is one, else that of a normal spread of the level.
    pub mean_w: f64,
    /// 2.275 % quantile.
    pub low: f64,
    /// 97.725 % quantile.
    pub high: f64,
    /// Share of the sample in the result, 0 to 1.
    pub weight: f64,
    /// Standard uncertainty that the derivatives do not show (products of reflections,
    /// curvature).
    pub residual: f64,
    linear: (f64, f64),
    samples: Vec<f64>,
}

impl Output {
    /// Probability that it exceeds `limit`.
    #[must_use]
    pub fn above(&self, limit: f64) -> f64 {
        let (mean, u) = self.linear;
        let normal = if u > 0.0 {
            0.5 * libm::erfc((limit - mean) / u / core::f64::consts::SQRT_2)
        } else if mean > limit {
            1.0
        } else {
            0.0
        };
        if self.samples.is_empty() || self.weight == 0.0 {
            return normal;
        }
        #[allow(clippy::cast_precision_loss, reason = "a count")]
        let n = self.samples.len() as f64;
        let k = self.samples.partition_point(|x| *x <= limit);
        let part = match (
            k.checked_sub(1).and_then(|k| self.samples.get(k)),
            self.samples.get(k),
        ) {
            (Some(a), Some(b)) if b > a => (limit - a) / (b - a) - 0.5,
            _ => 0.0,
        };
        #[allow(clippy::cast_precision_loss, reason = "a count")]
        let below = ((k as f64 + part) / n).clamp(0.0, 1.0);
        (1.0 - self.weight) * normal + self.weight * (1.0 - below)
    }

    /// Mean and standard uncertainty by the derivatives alone, what they do not show included.
    #[must_use]
    pub fn by_derivatives(&self) -> (f64, f64) {
        self.linear
    }

    /// The sampled values in order; empty where none were kept.
    #[must_use]
    pub fn samples(&self) -> &[f64] {
        &self.samples
    }
}

/// A network evaluated.
#[derive(Clone, Debug)]
pub struct Evaluation {
    /// Outputs in the order of [`Evaluation::index`].
    outputs: Vec<Output>,
    /// Derivatives by each column, output after output.
    terms: Vec<f64>,
    columns: usize,
    causes: usize,
    radiates: bool,
    /// Number of nodes.
    pub nodes: usize,
    /// Knowledge of each phase.
    pub phases: Vec<Phase>,
}

/// Knowledge of one phase.
#[derive(Clone, Debug)]
pub struct Phase {
    /// True if the phase is not uniformly distributed.
    pub spread: Spread,
    /// Sine of half of the largest angle of a phase that passivity limits.
    lean: f64,
    /// Derivative of the round trip's angle by each cause, rad.
    turn: Vec<f64>,
    /// Mean of the phasor.
    rho: f64,
    along: f64,
    across: f64,
    /// Variance of the angle, rad².
    variance: f64,
    /// Largest turn of the phase by all its causes together, rad.
    reach: f64,
}

impl Phase {
    const NONE: Phase = Phase {
        spread: Spread::Known,
        lean: 0.0,
        turn: Vec::new(),
        rho: 1.0,
        along: 0.0,
        across: 0.0,
        variance: 0.0,
        reach: 0.0,
    };

    /// Standard deviation of the round trip's angle, rad; infinite where nothing is known of it.
    #[must_use]
    pub fn deviation(&self) -> f64 {
        match self.spread {
            Spread::Free => f64::INFINITY,
            Spread::Known => libm::sqrt(self.variance),
        }
    }

    /// Largest turn of the round trip's angle with all its causes at the ends of their ±, rad;
    /// infinite where nothing is known of it.
    #[must_use]
    pub fn reach(&self) -> f64 {
        match self.spread {
            Spread::Free => f64::INFINITY,
            Spread::Known => self.reach,
        }
    }

    /// True if passivity limits its angle to less than a turn.
    #[must_use]
    pub fn leans_in_part(&self) -> bool {
        self.lean > 0.0 && self.lean < 1.0
    }

    /// Cosine and sine of the round trip at a point of the sample, and what is linear in its
    /// causes; `z` are the causes' values at lane `k`.
    fn drawn(
        &self,
        z: &[[f64; WIDTH]],
        k: usize,
        dimension: &Dimension,
        point: usize,
    ) -> (f64, f64, f64) {
        match self.spread {
            Spread::Known => {
                let d: f64 = self.turn.iter().zip(z).map(|(a, z)| a * z[k]).sum();
                let (s, c) = libm::sincos(-d);
                (c, s, -d)
            }
            Spread::Free if self.lean > 0.0 => {
                let s = self.lean * dimension.half_sine(point);
                (
                    1.0 - 2.0 * s * s,
                    2.0 * s * libm::sqrt((1.0 - s * s).max(0.0)),
                    0.0,
                )
            }
            Spread::Free => {
                let (c, s) = dimension.turn(point);
                (c, s, 0.0)
            }
        }
    }

    fn of_angle(turn: Vec<f64>, spread: Spread, shapes: &[Shape]) -> Phase {
        let (mut r1, mut r2, mut variance, mut reach) = (1.0, 1.0, 0.0, 0.0);
        for (shape, a) in shapes.iter().zip(&turn) {
            if *a != 0.0 {
                reach += shape.reach() * a.abs();
                r1 *= shape.mean_phasor(*a);
                r2 *= shape.mean_phasor(2.0 * a);
                variance += a * a;
            }
        }
        if spread == Spread::Free {
            (r1, r2) = (0.0, 0.0);
        }
        Phase {
            spread,
            lean: 0.0,
            rho: r1,
            along: libm::sqrt((0.5 * (1.0 + r2) - r1 * r1).max(0.0)),
            // what the causes themselves do not explain to first order
            across: libm::sqrt((0.5 * (1.0 - r2) - r1 * r1 * variance).max(0.0)),
            variance,
            reach,
            turn,
        }
    }

    fn leaning(most: f64) -> Phase {
        // moments of the phasor: mean 1 − s², variances s⁴/2 along and 2s² − 3s⁴/2 across
        let s2 = most * most;
        Phase {
            spread: Spread::Free,
            lean: most,
            rho: 1.0 - s2,
            along: s2 * core::f64::consts::FRAC_1_SQRT_2,
            across: libm::sqrt((2.0 * s2 - 1.5 * s2 * s2).max(0.0)),
            ..Phase::NONE
        }
    }
}

/// Reader of derivatives by the columns `base` to `base + N`.
struct Gradient<'a, const N: usize> {
    inputs: &'a Inputs,
    base: usize,
    /// All turns are known from passes before; else they are noted.
    known: bool,
    phases: std::cell::RefCell<&'a mut Vec<Phase>>,
}

impl<const N: usize> Gradient<'_, N> {
    fn phasor(&self, phase: u32, mean: Dual<N>, along: f64, across: f64) -> C<Dual<N>> {
        let (mut re, mut im) = (mean, Dual::of(0.0));
        let column = self.inputs.shapes().len() + 2 * phase as usize;
        if let Some(at) = column.checked_sub(self.base)
            && at < N
        {
            re.d[at] += along;
        }
        if let Some(at) = (column + 1).checked_sub(self.base)
            && at < N
        {
            im.d[at] += across;
        }
        c(re, im)
    }
}

impl<const N: usize> Reader for Gradient<'_, N> {
    type T = Dual<N>;

    fn get(&self, i: &Input) -> Dual<N> {
        seeded(i, self.base)
    }

    fn coherence(&self, phase: u32, round: Dual<N>, spread: Spread) -> C<Dual<N>> {
        let mut phases = self.phases.borrow_mut();
        let Some(here) = phases.get_mut(phase as usize) else {
            return C::one();
        };
        let causes = self.inputs.shapes().len();
        if !self.known {
            if here.turn.is_empty() {
                here.turn = vec![0.0; causes];
            }
            let from = self.base.min(causes);
            let to = (self.base + N).min(causes);
            here.turn[from..to].copy_from_slice(&round.d[..to - from]);
            let turn = std::mem::take(&mut here.turn);
            *here = Phase::of_angle(turn, spread, self.inputs.shapes());
        }
        let (rho, along, across) = (here.rho, here.along, here.across);
        drop(phases);
        self.phasor(phase, Dual::of(rho), along, across)
    }

    fn half_sine(&self, _: u32) -> Dual<N> {
        Dual::of(0.0)
    }

    fn leaning(&self, phase: u32, most: Dual<N>) -> C<Dual<N>> {
        let p = Phase::leaning(most.v);
        let (along, across) = (p.along, p.across);
        if let Some(here) = self.phases.borrow_mut().get_mut(phase as usize) {
            *here = p;
        }
        self.phasor(phase, mean_leaning(most).re, along, across)
    }
}

/// Reader of [`WIDTH`] points of the sample.
pub(super) struct Points<'a> {
    dimensions: &'a [Dimension],
    shapes: &'a [Shape],
    phases: usize,
    first: usize,
}

impl<'a> Points<'a> {
    /// The points from `first` on; `dimensions` are those of the phases, then of the causes.
    pub(super) fn new(dimensions: &'a [Dimension], inputs: &'a Inputs, first: usize) -> Self {
        Points {
            dimensions,
            shapes: inputs.shapes(),
            phases: inputs.phases(),
            first,
        }
    }
}

impl Reader for Points<'_> {
    type T = Lanes;

    #[inline(always)]
    fn get(&self, i: &Input) -> Lanes {
        drawn(i, |cause| {
            let shape = self.shapes[cause as usize];
            let d = &self.dimensions[self.phases + cause as usize];
            core::array::from_fn(|k| d.value(shape, self.first + k))
        })
    }

    #[inline(always)]
    fn coherence(&self, phase: u32, _: Lanes, spread: Spread) -> C<Lanes> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => {
                let d = &self.dimensions[phase as usize];
                let (mut re, mut im) = ([0.0; WIDTH], [0.0; WIDTH]);
                for k in 0..WIDTH {
                    (re[k], im[k]) = d.turn(self.first + k);
                }
                c(Lanes(re), Lanes(im))
            }
        }
    }

    #[inline(always)]
    fn half_sine(&self, phase: u32) -> Lanes {
        let d = &self.dimensions[phase as usize];
        Lanes(core::array::from_fn(|k| d.half_sine(self.first + k)))
    }
}

/// EIRP over the source's forward power in nepers of power; fields of several antennas add. None
/// where nothing radiates.
fn radiated<T: Real>(s: &Solved<T>, fields: Fields) -> Option<T> {
    let level = |e: &super::solve::Arrived<T>| Some(e.driving.at_least(NOTHING_W).ln_e() + e.gain?);
    let mut radiating = s.ends.iter().filter(|e| e.gain.is_some());
    let first = radiating.next()?;
    let first_level = level(first)?;
    if radiating.next().is_none() {
        return Some(first_level);
    }
    if fields == Fields::Apart {
        // the strongest of each sample
        let mut most = first_level;
        for e in s.ends.iter().filter(|e| e.gain.is_some()) {
            most = most.larger(level(e)?);
        }
        return Some(most);
    }
    let half = T::of(0.5);
    let mut sum = C::zero();
    for e in s.ends.iter().filter(|e| e.gain.is_some()) {
        // relative to the first, so that the exponential keeps its range
        let size = ((level(e)? - first_level) * half).exp_e();
        sum = sum
            + match fields {
                Fields::ByLength => e.phasor.scale(size),
                _ => C::real(size),
            };
    }
    Some(first_level + sum.norm().at_least(NOTHING_W).ln_e())
}

/// The end that radiates most at the stated values.
fn strongest(s: &Solved<f64>) -> usize {
    let level = |e: &super::solve::Arrived<f64>| e.gain.map(|g| libm::log(e.driving) + g);
    let mut best = (0, f64::NEG_INFINITY);
    for (i, e) in s.ends.iter().enumerate() {
        if let Some(l) = level(e)
            && l > best.1
        {
            best = (i, l);
        }
    }
    best.0
}

/// Level of a power for 1 W of the source, dB over 1 W; `level` is that of the source.
pub(super) fn level_db<T: Real>(power: T, level: T) -> T {
    power.at_least(NOTHING_W).ln_e() * T::of(DB) + level
}

/// All outputs, in the order of [`Evaluation::index`].
fn outputs<T: Real>(level: T, s: &Solved<T>, fields: Fields, out: &mut Vec<T>) -> bool {
    some_outputs(level, s, fields, &|_| true, out)
}

/// The same with 0 in the place of powers at nodes that are not wanted, by their index.
fn some_outputs<T: Real>(
    level: T,
    s: &Solved<T>,
    fields: Fields,
    wanted: &dyn Fn(usize) -> bool,
    out: &mut Vec<T>,
) -> bool {
    let k = T::of(DB);
    let db = |x: T| level_db(x, level);
    out.clear();
    let radiated = radiated(s, fields);
    out.push(radiated.map_or(T::of(0.0), |x| x * k + level));
    let mut delivered = T::of(0.0);
    for e in &s.ends {
        delivered = delivered + e.net;
    }
    out.push(db(delivered));
    for n in &s.nodes {
        for power in [n.forward, n.net()] {
            out.push(match wanted(out.len()) {
                true => db(power),
                false => T::of(0.0),
            });
        }
        out.push(n.back);
    }
    radiated.is_some()
}

impl Network {
    pub(super) fn solved<R: Reader>(&self, r: &R) -> Solved<R::T> {
        let phased = self.phased && self.fields == Fields::ByLength;
        let cx = Context {
            hz: self.hz,
            phased,
        };
        self.feed.build(&cx, r).solve(phased)
    }

    fn outputs<R: Reader>(&self, r: &R, out: &mut Vec<R::T>) -> bool {
        let solved = self.solved(r);
        outputs(r.get(&self.level), &solved, self.fields, out)
    }

    /// Solved at the nominal values, free phases at `angles` (missing ones 0), for 1 W.
    #[must_use]
    pub fn at(&self, angles: &[f64]) -> Solved<f64> {
        self.solved(&super::input::Nominal { angles })
    }

    /// Solved by any reader, for 1 W.
    pub fn by<R: Reader>(&self, r: &R) -> Solved<R::T> {
        self.solved(r)
    }

    /// EIRP, or the power delivered where nothing radiates, dB over 1 W, by any reader.
    pub(super) fn level<R: Reader>(&self, r: &R) -> R::T {
        let s = self.solved(r);
        let nepers = radiated(&s, self.fields).unwrap_or_else(|| {
            let mut delivered = R::T::of(0.0);
            for e in &s.ends {
                delivered = delivered + e.net;
            }
            delivered.at_least(NOTHING_W).ln_e()
        });
        nepers * R::T::of(DB) + r.get(&self.level)
    }

    /// EIRP in dB over 1 W and power delivered, dB over 1 W, by any reader.
    pub fn levels<R: Reader>(&self, r: &R) -> (R::T, R::T) {
        let mut out = Vec::new();
        self.outputs(r, &mut out);
        (out[0], out[1])
    }

    /// Share of the field that each end contributes at the stated values, in the order of ends;
    /// where antennas radiate apart, all of it is the strongest's. Of what radiates nothing all
    /// ends count alike.
    #[must_use]
    pub fn end_shares(&self) -> Vec<f64> {
        let s = self.at(&[]);
        let field = |e: &super::solve::Arrived<f64>| {
            e.gain.map_or(0.0, |g| libm::sqrt(e.driving * libm::exp(g)))
        };
        if self.fields == Fields::Apart {
            let best = strongest(&s);
            return (0..s.ends.len())
                .map(|i| if i == best { 1.0 } else { 0.0 })
                .collect();
        }
        let total: f64 = s.ends.iter().map(field).sum();
        #[allow(clippy::cast_precision_loss, reason = "a few ends")]
        let even = 1.0 / s.ends.len().max(1) as f64;
        s.ends
            .iter()
            .map(|e| if total > 0.0 { field(e) / total } else { even })
            .collect()
    }

    /// Means, uncertainties and intervals of all outputs. `judged` says of which nodes' forward
    /// and net powers the sample is kept in order (for quantiles and probabilities); those of EIRP
    /// and delivered power always are.
    #[must_use]
    pub fn evaluate(&self, judged: &[usize]) -> Evaluation {
        let mut e = self.linear();
        self.refine(&mut e, judged, true);
        e
    }

    /// The first stage of [`Network::evaluate`]: means and uncertainties by derivatives, and how
    /// far each output needs the sample, which [`Network::refine`] takes.
    #[must_use]
    pub fn linear(&self) -> Evaluation {
        let columns = self.inputs.columns();
        // each column is computed by itself: how many are done together changes no bit
        let mut e = match columns {
            0..=24 => self.gradient::<24>(),
            25..=48 => self.gradient::<48>(),
            _ => self.gradient::<72>(),
        };
        if columns > 0 {
            self.check(&mut e, &self.dimensions());
        }
        e
    }

    fn dimensions(&self) -> Vec<Dimension> {
        let all = self.inputs.dimensions();
        all.into_iter().map(Dimension::new).collect()
    }

    /// The second stage: the sample takes the place of what derivatives do not show, in every output
    /// that needs it; in [`Output::mean_w`] if `mean_powers` says so. Once only.
    pub fn refine(&self, e: &mut Evaluation, judged: &[usize], mean_powers: bool) {
        let sampled: Vec<usize> = (0..e.outputs.len())
            .filter(|i| e.outputs[*i].weight > 0.0)
            .collect();
        if !sampled.is_empty() {
            self.sample(e, &self.dimensions(), &sampled, (judged, mean_powers));
        }
    }

    /// Value and all derivatives.
    fn gradient<const N: usize>(&self) -> Evaluation {
        let columns = self.inputs.columns();
        let mut phases = vec![Phase::NONE; self.inputs.phases()];
        let mut e = Evaluation {
            outputs: Vec::new(),
            terms: Vec::new(),
            columns,
            causes: self.inputs.shapes().len(),
            radiates: false,
            nodes: 0,
            phases: Vec::new(),
        };
        let passes = columns.div_ceil(N).max(1);
        if passes > 1 {
            // all turns first: a phasor's mean needs the derivatives of its angle by all causes
            for pass in 0..passes {
                let g = Gradient::<N> {
                    inputs: &self.inputs,
                    base: pass * N,
                    known: false,
                    phases: std::cell::RefCell::new(&mut phases),
                };
                let _ = self.solved(&g);
            }
        }
        let mut out = Vec::new();
        for pass in 0..passes {
            let g = Gradient::<N> {
                inputs: &self.inputs,
                base: pass * N,
                known: passes > 1,
                phases: std::cell::RefCell::new(&mut phases),
            };
            e.radiates = self.outputs(&g, &mut out);
            if pass == 0 {
                e.terms = vec![0.0; out.len() * columns];
                e.outputs = out
                    .iter()
                    .map(|y| Output {
                        mean: y.v,
                        u: 0.0,
                        mean_w: 0.0,
                        low: y.v,
                        high: y.v,
                        weight: 0.0,
                        residual: 0.0,
                        linear: (y.v, 0.0),
                        samples: Vec::new(),
                    })
                    .collect();
            }
            let from = pass * N;
            let to = (from + N).min(columns);
            for (i, y) in out.iter().enumerate() {
                e.terms[i * columns + from..i * columns + to].copy_from_slice(&y.d[..to - from]);
            }
        }
        e.nodes = (e.outputs.len() - 2) / 3;
        e.phases = phases;
        for (i, o) in e.outputs.iter_mut().enumerate() {
            let u2: f64 = e.terms[i * columns..(i + 1) * columns]
                .iter()
                .map(|d| d * d)
                .sum();
            o.set_linear(libm::sqrt(u2));
        }
        e
    }

    /// Compares what the derivatives predict at the first points with what is there.
    fn check(&self, e: &mut Evaluation, dimensions: &[Dimension]) {
        let count = e.outputs.len();
        let mut square = vec![0.0; count];
        let mut have = Vec::new();
        let mut guess = vec![[0.0; WIDTH]; count];
        let mut z = vec![[0.0; WIDTH]; e.columns];
        for block in 0..CHECKED / WIDTH {
            let first = block * WIDTH;
            self.points(dimensions, first, &|_| true, &mut have);
            e.predict(&self.inputs, dimensions, first, &mut z, &mut guess);
            // the sum of an output runs over its points in order
            for ((s, have), guess) in square.iter_mut().zip(&have).zip(&guess) {
                for (have, guess) in have.0.iter().zip(guess) {
                    let r = have - guess;
                    *s += r * r;
                }
            }
        }
        for (i, (o, s)) in e.outputs.iter_mut().zip(&square).enumerate() {
            #[allow(clippy::cast_precision_loss, reason = "a count")]
            let r = libm::sqrt(s / CHECKED as f64);
            let r = if r.is_finite() { r } else { 0.0 };
            let is_back = is_back(i);
            let x = r / (o.u + if is_back { FLOOR_BACK } else { FLOOR_DB });
            // what derivatives do not show counts, however small
            o.residual = r;
            o.set_linear(libm::hypot(o.u, r));
            o.weight = smooth(ENOUGH, x);
        }
    }

    fn points(
        &self,
        dimensions: &[Dimension],
        first: usize,
        wanted: &dyn Fn(usize) -> bool,
        out: &mut Vec<Lanes>,
    ) {
        let r = Points::new(dimensions, &self.inputs, first);
        let solved = self.solved(&r);
        some_outputs(r.get(&self.level), &solved, self.fields, wanted, out);
    }

    fn sample(
        &self,
        e: &mut Evaluation,
        dimensions: &[Dimension],
        sampled: &[usize],
        (judged, mean_powers): (&[usize], bool),
    ) {
        let mut all = vec![0.0; sampled.len() * POINTS];
        let mut wanted = vec![false; e.outputs.len()];
        sampled.iter().for_each(|i| wanted[*i] = true);
        let mut lanes = Vec::new();
        for block in 0..POINTS / WIDTH {
            self.points(dimensions, block * WIDTH, &|i| wanted[i], &mut lanes);
            for (row, i) in sampled.iter().enumerate() {
                let at = row * POINTS + block * WIDTH;
                all[at..at + WIDTH].copy_from_slice(&lanes[*i].0);
            }
        }
        #[allow(clippy::cast_precision_loss, reason = "a count")]
        let n = POINTS as f64;
        let moments = moments(&all);
        for (row, i) in sampled.iter().enumerate() {
            let x = &mut all[row * POINTS..(row + 1) * POINTS];
            let o = &mut e.outputs[*i];
            let (mean, u) = moments[row];
            if !(mean.is_finite() && u.is_finite()) {
                o.weight = 0.0;
                continue;
            }
            let w = o.weight;
            let mix = |old: f64, new: f64| (1.0 - w) * old + w * new;
            o.mean = mix(o.mean, mean);
            if is_net(*i) && mean_powers {
                let mean_w = x.iter().map(|x| libm::exp(x / DB)).sum::<f64>() / n;
                o.mean_w = mix(o.mean_w, mean_w);
            }
            let kept = *i < 2 || judged.contains(&((*i - 2) / 3));
            let (low, high) = if kept {
                x.sort_unstable_by(f64::total_cmp);
                (quantile(x, TAIL), quantile(x, 1.0 - TAIL))
            } else {
                (mean - 2.0 * u, mean + 2.0 * u)
            };
            o.low = mix(o.low, low);
            o.high = mix(o.high, high);
            o.u = mix(o.u, u);
            if kept {
                o.samples = x.to_vec();
            }
        }
    }
}

/// Mean and standard deviation of each row of [`POINTS`] values. Each sum has one order; several
/// rows are done side by side.
fn moments(all: &[f64]) -> Vec<(f64, f64)> {
    #[allow(clippy::cast_precision_loss, reason = "a count")]
    let n = POINTS as f64;
    let mut out = Vec::with_capacity(all.len() / POINTS);
    for rows in all.chunks(WIDTH * POINTS) {
        let row = |r: usize, k: usize| rows.get(r * POINTS + k).copied().unwrap_or(0.0);
        let mut sum = [0.0; WIDTH];
        for k in 0..POINTS {
            for (r, s) in sum.iter_mut().enumerate() {
                *s += row(r, k);
            }
        }
        let mean = sum.map(|s| s / n);
        let mut square = [0.0; WIDTH];
        for k in 0..POINTS {
            for (r, s) in square.iter_mut().enumerate() {
                let d = row(r, k) - mean[r];
                *s += d * d;
            }
        }
        let here = rows.len() / POINTS;
        let both = mean.into_iter().zip(square);
        out.extend(both.take(here).map(|(m, s)| (m, libm::sqrt(s / n))));
    }
    out
}

/// True if the output of that index is a reflected share of power.
fn is_back(i: usize) -> bool {
    i >= 2 && (i - 2) % 3 == 2
}

/// True if the output of that index is the net power at a node.
fn is_net(i: usize) -> bool {
    i >= 2 && (i - 2) % 3 == 1
}

/// Quantile of sorted values, each standing for the middle of its share.
pub(super) fn quantile(x: &[f64], p: f64) -> f64 {
    #[allow(clippy::cast_precision_loss, reason = "a count")]
    let at = p * x.len() as f64 - 0.5;
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "within the list"
    )]
    let k = (at.max(0.0) as usize).min(x.len() - 2);
    #[allow(clippy::cast_precision_loss, reason = "a count")]
    let t = at - k as f64;
    x[k] + t * (x[k + 1] - x[k])
}

pub(super) fn smooth((from, to): (f64, f64), x: f64) -> f64 {
    let t = ((x - from) / (to - from)).clamp(0.0, 1.0);
    t * t * (3.0 - 2.0 * t)
}

/// Matched loss of parts in a row and its standard uncertainty, dB, by derivatives.
#[must_use]
pub fn matched_loss(parts: &[super::part::Part], hz: f64, inputs: &Inputs) -> (f64, f64) {
    let cx = Context { hz, phased: false };
    by_derivatives(inputs, |r| {
        let mut sum = Dual::of(0.0);
        for p in parts {
            sum = sum + p.matched_loss(&cx, r);
        }
        sum
    })
}

/// Noise figure of a receiving chain at the antenna and its standard uncertainty, dB; and the same
/// of what it is above the receiver's own.
#[must_use]
pub fn noise_figure(chain: &super::noise::Receiving, hz: f64, inputs: &Inputs) -> [(f64, f64); 2] {
    let cx = Context { hz, phased: false };
    [
        by_derivatives(inputs, |r| chain.noise_figure(&cx, r)),
        by_derivatives(inputs, |r| {
            chain.noise_figure(&cx, r) - r.get(&chain.receiver)
        }),
    ]
}

/// Causes that one pass of [`by_derivatives`] counts.
const PASS: usize = 24;

/// Value and standard uncertainty of a formula of inputs without open phases.
fn by_derivatives(inputs: &Inputs, f: impl Fn(&Gradient<'_, PASS>) -> Dual<PASS>) -> (f64, f64) {
    let mut phases = vec![Phase::NONE; inputs.phases()];
    let (mut value, mut variance) = (0.0, 0.0);
    for pass in 0..inputs.shapes().len().div_ceil(PASS).max(1) {
        let y = f(&Gradient {
            inputs,
            base: pass * PASS,
            known: false,
            phases: std::cell::RefCell::new(&mut phases),
        });
        value = y.v;
        let last = inputs.shapes().len().saturating_sub(pass * PASS).min(PASS);
        variance += y.d[..last].iter().map(|d| d * d).sum::<f64>();
    }
    (value, libm::sqrt(variance))
}

impl Output {
    fn set_linear(&mut self, u: f64) {
        self.u = u;
        self.low = self.mean - 2.0 * u;
        self.high = self.mean + 2.0 * u;
        self.linear = (self.mean, u);
        self.mean_w = libm::exp(self.mean / DB + 0.5 * (u / DB) * (u / DB));
    }
}

impl Evaluation {
    fn index(q: Quantity) -> usize {
        match q {
            Quantity::Eirp => 0,
            Quantity::Delivered => 1,
            Quantity::Forward(k) => 2 + 3 * k,
            Quantity::Net(k) => 3 + 3 * k,
            Quantity::Back(k) => 4 + 3 * k,
        }
    }

    /// An output; none of EIRP where nothing radiates, or of a node that is not there.
    #[must_use]
    pub fn output(&self, q: Quantity) -> Option<&Output> {
        if q == Quantity::Eirp && !self.radiates {
            return None;
        }
        self.outputs.get(Self::index(q))
    }

    /// Whether any output needs the sample.
    #[must_use]
    pub fn needs_sample(&self) -> bool {
        self.outputs.iter().any(|o| o.weight > 0.0)
    }

    /// Its derivatives by each cause.
    #[must_use]
    pub fn by_cause(&self, q: Quantity) -> &[f64] {
        let at = Self::index(q) * self.columns;
        self.terms.get(at..at + self.causes).unwrap_or(&[])
    }

    /// Standard uncertainty of it by each phase, as far as derivatives show.
    pub fn by_phase(&self, q: Quantity) -> impl Iterator<Item = f64> {
        let at = Self::index(q) * self.columns;
        self.terms
            .get(at + self.causes..at + self.columns)
            .unwrap_or(&[])
            .chunks_exact(2)
            .map(|d| libm::hypot(d[0], d[1]))
    }

    /// Its derivatives by every column: causes, then two components of each phasor.
    pub(super) fn terms_of(&self, q: Quantity) -> &[f64] {
        let at = Self::index(q) * self.columns;
        self.terms.get(at..at + self.columns).unwrap_or(&[])
    }

    /// Its value by the derivatives alone.
    pub(super) fn stated(&self, q: Quantity) -> f64 {
        self.output(q).map_or(f64::NAN, |o| o.linear.0)
    }

    /// Prediction of the derivatives at the points from `first` on: linear in the causes and in
    /// the phasors.
    fn predict(
        &self,
        inputs: &Inputs,
        dimensions: &[Dimension],
        first: usize,
        z: &mut [[f64; WIDTH]],
        out: &mut [[f64; WIDTH]],
    ) {
        self.standardised(inputs, dimensions, first, z);
        for (i, (o, y)) in out.iter_mut().zip(&self.outputs).enumerate() {
            let mut sum = [0.0; WIDTH];
            for (d, z) in self.terms[i * self.columns..(i + 1) * self.columns]
                .iter()
                .zip(z.iter())
            {
                for (sum, z) in sum.iter_mut().zip(z) {
                    *sum += d * z;
                }
            }
            *o = sum.map(|sum| y.mean + sum);
        }
    }

    /// Standardised values of all columns at the points from `first` on.
    pub(super) fn standardised(
        &self,
        inputs: &Inputs,
        dimensions: &[Dimension],
        first: usize,
        z: &mut [[f64; WIDTH]],
    ) {
        let (causes, phases) = (self.causes, self.phases.len());
        for (j, shape) in inputs.shapes().iter().enumerate() {
            z[j] = core::array::from_fn(|k| dimensions[phases + j].value(*shape, first + k));
        }
        for (p, ph) in self.phases.iter().enumerate() {
            if ph.spread == Spread::Known && ph.variance == 0.0 {
                continue;
            }
            let at = causes + 2 * p;
            for k in 0..WIDTH {
                let (cos, sin, linear) = ph.drawn(&z[..causes], k, &dimensions[p], first + k);
                z[at][k] = if ph.along > 1e-9 {
                    (cos - ph.rho) / ph.along
                } else {
                    0.0
                };
                z[at + 1][k] = if ph.across > 1e-9 {
                    (sin - ph.rho * linear) / ph.across
                } else {
                    0.0
                };
            }
        }
    }
}

#[cfg(test)]
#[path = "evaluate_tests.rs"]
mod tests;
