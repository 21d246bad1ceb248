//! Bounds over all phases: the range of an output over unknown phases, and the least loss.

use super::complex::C;
use super::element::{El, NEPER_OF_POWER};
use super::evaluate::{Evaluation, Phase};
use super::input::{Favourable, Input, Nominal, Reader, Shape, Spread, seeded};
use super::levels::{Angles, Levels};
use super::part::{Context, End, Part, Stretch};
use super::sample::Dimension;
use super::scalar::{Dual, Real, WIDTH};
use super::{Fields, Network};

/// Lanes that look for the least; the others look for the greatest.
const HALF: usize = WIDTH / 2;

/// Points of a search, −1 to 1.
const SPREAD: [f64; WIDTH] = [
    -1.0,
    -5.0 / 7.0,
    -3.0 / 7.0,
    -1.0 / 7.0,
    1.0 / 7.0,
    3.0 / 7.0,
    5.0 / 7.0,
    1.0,
];

/// Half of the range a phase may turn by, rad.
fn window(p: &Phase) -> f64 {
    p.reach().min(core::f64::consts::PI)
}

/// The angle within ±`window` where `a + b cos x + c sin x`, known at −120°, 0° and 120°, is
/// greatest.
fn best_angle([low, middle, high]: [f64; 3], window: f64) -> f64 {
    let c = (high - low) / libm::sqrt(3.0);
    let b = (2.0 * middle - low - high) / 3.0;
    let x = libm::atan2(c, b);
    if x.abs() <= window {
        return x;
    }
    let at = |x: f64| b * libm::cos(x) + c * libm::sin(x);
    if at(window) >= at(-window) {
        window
    } else {
        -window
    }
}

impl Network {
    /// Least and greatest power delivered to the ends, dB over 1 W at the nominal figures, over all phases that the text leaves open: unknown ones over a whole turn,
    /// others as far as their ± reaches. None where no phase is open.
    ///
    /// One phase at a time 1/P is a constant plus a sinusoid for a source that holds its forward
    /// power, so each step of the search is exact; several starts, the last of them the extremes
    /// of what was met on the way.
    #[must_use]
    pub fn reach(&self, e: &Evaluation) -> Option<(f64, f64)> {
        let open: Vec<(usize, f64)> = e
            .phases
            .iter()
            .enumerate()
            .map(|(i, p)| (i, window(p)))
            .filter(|p| p.1 > 1e-6)
            .collect();
        if open.is_empty() {
            return None;
        }
        let levels = std::cell::RefCell::new(Levels::new(self, e.phases.len()));
        let level = |x: &[[f64; WIDTH]]| levels.borrow_mut().at(x);
        let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
        let tuned = has_tuner(&self.feed);
        // with a tuner, and where the powers of several ends add up, 1/P is no sinusoid of a phase;
        // nor is it one of an angle that a phase only follows in part
        let several = matches!(self.feed.end, End::Branches { .. });
        let bent = |p: usize| tuned || several || e.phases[p].leans_in_part();
        // strong reflections have more than one extreme: several starts
        let strong = e.phases.iter().any(|p| p.deviation() > 0.0)
            && e.output(super::evaluate::Quantity::Delivered)
                .is_some_and(|o| o.residual > 1e-3);
        let start = |a: f64| fixed_start(&open, e.phases.len(), a);
        let mut starts = vec![start(0.3)];
        if tuned || several {
            starts = vec![sampled_start(&open, e.phases.len(), &level)];
        } else if strong {
            starts.extend([1.9, 4.1].map(start));
            starts.push(sampled_start(&open, e.phases.len(), &level));
        }
        for mut x in starts {
            let mut before = (f64::INFINITY, f64::NEG_INFINITY);
            for _ in 0..8 {
                for (p, w) in &open {
                    if bent(*p) {
                        searched(&mut x, *p, *w, &level);
                        continue;
                    }
                    let old = x[*p];
                    for (k, a) in x[*p].iter_mut().enumerate() {
                        #[allow(clippy::cast_precision_loss, reason = "0 to 3")]
                        let step = (k % HALF) as f64 - 1.0;
                        *a = core::f64::consts::TAU / 3.0 * step;
                    }
                    let y = level(&x).map(|db| libm::exp(-db * NEPER_OF_POWER));
                    x[*p] = old;
                    // 1/P greatest: least power
                    let low = best_angle([y[0], y[1], y[2]], *w);
                    let high = best_angle([-y[HALF], -y[HALF + 1], -y[HALF + 2]], *w);
                    x[*p][..HALF].fill(low);
                    x[*p][HALF..].fill(high);
                }
                let y = level(&x);
                least = least.min(y[0]);
                most = most.max(y[HALF]);
                let enough = if tuned || several { 1e-4 } else { 1e-6 };
                if (before.0 - y[0]).abs() < enough && (before.1 - y[HALF]).abs() < enough {
                    break;
                }
                before = (y[0], y[HALF]);
            }
        }
        Some((least, most))
    }

    /// Largest reflection that the source can see over all open phases: reached by some, exceeded
    /// by none. None where no phase is open.
    ///
    /// The reflections that are possible at a place fill a disc, and a two-port maps a disc to a
    /// disc; a free phase turns it about 0. Junctions without isolation are searched instead.
    #[must_use]
    pub fn largest_reflection(&self, e: &Evaluation) -> Option<f64> {
        if e.phases.iter().all(|p| window(p) <= 1e-6) {
            return None;
        }
        let r = Windows(&e.phases);
        let mut tail = self.feed.build(
            &Context {
                hz: self.hz,
                phased: false,
            },
            &r,
        );
        match disc(&mut tail) {
            Some(d) => Some((d.centre() + d.radius).min(1.0)),
            None => self.searched_reflection(e),
        }
    }

    fn searched_reflection(&self, e: &Evaluation) -> Option<f64> {
        let open: Vec<(usize, f64)> = e
            .phases
            .iter()
            .enumerate()
            .map(|(i, p)| (i, window(p)))
            .filter(|p| p.1 > 1e-6)
            .collect();
        if open.is_empty() {
            return None;
        }
        let back = |x: &[[f64; WIDTH]]| {
            let s = self.by(&Angles(x));
            s.nodes.first().map_or([0.0; WIDTH], |n| n.back.0)
        };
        let mut best = 0.0_f64;
        for start in [0.3, 1.9, 4.1] {
            let mut x = vec![[0.0; WIDTH]; e.phases.len()];
            for (i, w) in &open {
                #[allow(clippy::cast_precision_loss, reason = "an index")]
                let a = (start * (*i as f64 + 1.0) + 3.1) % 6.2 - 3.1;
                x[*i] = [a * w / core::f64::consts::PI; WIDTH];
            }
            let mut before = -1.0;
            for _ in 0..10 {
                for (p, w) in &open {
                    // |Γ| in one phase is a ratio of sinusoids: a coarse search, then a parabola
                    let mut centre = 0.0;
                    let mut half = *w;
                    for _ in 0..4 {
                        for (a, t) in x[*p].iter_mut().zip(SPREAD) {
                            *a = (centre + half * t).clamp(-w, *w);
                        }
                        let y = back(&x);
                        let k = (0..WIDTH)
                            .max_by(|a, b| y[*a].total_cmp(&y[*b]))
                            .unwrap_or(0);
                        centre = x[*p][k];
                        half *= 0.35;
                    }
                    x[*p] = [centre; WIDTH];
                }
                let y = back(&x)[0];
                best = best.max(y);
                if (y - before).abs() < 1e-9 {
                    break;
                }
                before = y;
            }
        }
        Some(libm::sqrt(best.clamp(0.0, 1.0)))
    }

    /// EIRP over the power delivered to all ends together that no division of it can exceed, dB, at
    /// the nominal gains: where fields add, the sum of the gains (Cauchy and Schwarz). None where
    /// nothing radiates.
    #[must_use]
    pub fn most_gain(&self) -> Option<f64> {
        let mut gains = Vec::new();
        self.feed.gains(&mut gains);
        let most = match self.fields {
            Fields::Apart => gains.iter().copied().fold(0.0, f64::max),
            Fields::InPhase | Fields::ByLength => gains.iter().sum(),
        };
        (!gains.is_empty()).then(|| libm::log(most) / NEPER_OF_POWER)
    }

    /// A loss that nothing passive falls below, dB, at the nominal figures: no part delivers more
    /// than its maximum available share, whatever surrounds it. Of branches the best counts.
    #[must_use]
    pub fn floor(&self) -> f64 {
        floor_of(&self.feed, self.hz, &|p, cx, els, angle| {
            p.build(cx, &NominalAt(angle), els);
        })
    }

    /// The same at the stated corner that loses least: every figure at the end of its ± towards
    /// which the floor falls.
    #[must_use]
    pub fn favourable_floor(&self) -> f64 {
        const N: usize = 24;
        let causes = self.inputs.shapes().len();
        let mut rises = vec![0.0; causes];
        for base in (0..causes).step_by(N) {
            let d = floor_slopes::<N>(&self.feed, self.hz, base);
            for (rise, d) in rises[base..].iter_mut().zip(d) {
                *rise = d;
            }
        }
        floor_of(&self.feed, self.hz, &|p, cx, els, angle| {
            p.build(
                cx,
                &Favourable {
                    inputs: &self.inputs,
                    rises: &rises,
                    angle,
                },
                els,
            );
        })
    }
}

impl Stretch {
    /// Gains of all ends, power ratios; of one that counts the mismatch what it could be at most.
    fn gains(&self, out: &mut Vec<f64>) {
        match &self.end {
            End::Load(load, Some(g)) => {
                let r = Nominal { angles: &[] };
                let size = if g.realized {
                    load.reflection(&r).0.norm()
                } else {
                    0.0
                };
                out.push(libm::exp(g.nepers(&r)) / (1.0 - size).max(1e-12));
            }
            End::Load(_, None) => {}
            End::Branches { arms, .. } => arms.iter().for_each(|a| a.gains(out)),
        }
    }
}

/// Angles spread over the windows.
fn fixed_start(open: &[(usize, f64)], phases: usize, start: f64) -> Vec<[f64; WIDTH]> {
    let mut x = vec![[0.0; WIDTH]; phases];
    for (i, w) in open {
        #[allow(clippy::cast_precision_loss, reason = "an index")]
        let a = (start * (*i as f64 + 1.0) + 3.1) % 6.2 - 3.1;
        x[*i] = [a * w / core::f64::consts::PI; WIDTH];
    }
    x
}

/// The lowest (first half of the lanes) and highest of 512 points of the sample.
fn sampled_start(
    open: &[(usize, f64)],
    phases: usize,
    level: &dyn Fn(&[[f64; WIDTH]]) -> [f64; WIDTH],
) -> Vec<[f64; WIDTH]> {
    let dimensions: Vec<Dimension> = (0..open.len()).map(Dimension::new).collect();
    let mut x = vec![[0.0; WIDTH]; phases];
    let mut out = x.clone();
    let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
    for block in 0..512 / WIDTH {
        for ((i, w), d) in open.iter().zip(&dimensions) {
            x[*i] = core::array::from_fn(|k| {
                let flat = d.value(Shape::Rectangular, block * WIDTH + k);
                flat / libm::sqrt(3.0) * w
            });
        }
        let y = level(&x);
        for k in 0..WIDTH {
            if y[k] < least {
                least = y[k];
                for (i, _) in open {
                    let a = x[*i][k];
                    out[*i][..HALF].fill(a);
                }
            }
            if y[k] > most {
                most = y[k];
                for (i, _) in open {
                    let a = x[*i][k];
                    out[*i][HALF..].fill(a);
                }
            }
        }
    }
    out
}

fn has_tuner(s: &Stretch) -> bool {
    fn one(p: &Part) -> bool {
        match p {
            Part::Tuner { .. } => true,
            Part::Several(all) => all.iter().any(one),
            _ => false,
        }
    }
    s.parts.iter().any(one)
        || matches!(&s.end, End::Branches { arms, .. } if arms.iter().any(has_tuner))
}

/// Turns phase `p` within ±`w` to where the level is least (first half of the lanes) and greatest
/// (second half): four points over the window and its present value, then closer about the best.
fn searched(
    x: &mut [[f64; WIDTH]],
    p: usize,
    w: f64,
    level: &dyn Fn(&[[f64; WIDTH]]) -> [f64; WIDTH],
) {
    const POINTS: [f64; HALF] = [-1.0, -1.0 / 3.0, 1.0 / 3.0, 1.0];
    let signs = [-1.0, 1.0];
    let mut centre = [x[p][0], x[p][HALF]];
    let y = level(x);
    let mut best = [signs[0] * y[0], signs[1] * y[HALF]];
    for half in [1.0, 0.25, 0.06].map(|s| s * w) {
        // about the whole window first, then about the best
        let about = if half == w { [0.0; 2] } else { centre };
        for (k, a) in x[p].iter_mut().enumerate() {
            *a = (about[k / HALF] + half * POINTS[k % HALF]).clamp(-w, w);
        }
        let y = level(x);
        for k in 0..WIDTH {
            let side = k / HALF;
            if signs[side] * y[k] > best[side] {
                best[side] = signs[side] * y[k];
                centre[side] = x[p][k];
            }
        }
    }
    x[p][..HALF].fill(centre[0]);
    x[p][HALF..].fill(centre[1]);
}

/// Reader at nominal values that hands a phase's window on in its coherence: `(1 − w/π)²`.
struct Windows<'a>(&'a [Phase]);

impl Reader for Windows<'_> {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        i.nominal()
    }
    fn coherence(&self, phase: u32, _: f64, _: Spread) -> C<f64> {
        let w = self.0.get(phase as usize).map_or(0.0, window);
        C::real(1.0 - w / core::f64::consts::PI)
    }
    fn half_sine(&self, _: u32) -> f64 {
        // between free phases the largest angle gives the largest reflection
        1.0
    }
}

/// Reflections that are possible at a place.
#[derive(Clone, Copy)]
struct Disc {
    at: C<f64>,
    radius: f64,
}

impl Disc {
    fn centre(&self) -> f64 {
        libm::sqrt(self.at.norm())
    }

    /// Through a two-port: `s11 + back Γ/(1 − s22 Γ)` of all Γ in the disc.
    fn through(self, s11: C<f64>, back: C<f64>, s22: C<f64>) -> Disc {
        // z = 1 − s22 Γ runs over a disc that leaves 0 out; so does 1/z, and Γ/(1 − s22 Γ) is
        // (1/z − 1)/s22
        let q = s22.norm();
        if q < 1e-24 {
            return Disc {
                at: s11 + back * self.at,
                radius: libm::sqrt(back.norm()) * self.radius,
            };
        }
        let z = C::one() - s22 * self.at;
        let rho = libm::sqrt(q) * self.radius;
        let d = z.norm() - rho * rho;
        if d <= 0.0 {
            return Disc {
                at: C::zero(),
                radius: 1.0,
            };
        }
        let inverse = super::complex::c(z.re / d, -z.im / d);
        let k = back / s22;
        Disc {
            at: s11 + k * (inverse - C::one()),
            radius: libm::sqrt(k.norm()) * rho / d,
        }
    }

    /// Turned by any angle within ±`window`.
    fn turned(self, window: f64) -> Disc {
        if window <= 0.0 {
            return self;
        }
        let c = self.centre();
        if window >= 0.5 * core::f64::consts::PI {
            return Disc {
                at: C::zero(),
                radius: c + self.radius,
            };
        }
        // the disc about the arc of the centre
        let (sin, cos) = libm::sincos(window);
        Disc {
            at: self.at.scale(cos),
            radius: (self.radius + c * sin).min(c + self.radius),
        }
    }
}

/// Reflections that are possible at the beginning of a tail; none past a junction whose arms act
/// on each other.
fn disc(t: &mut super::solve::Tail<f64>) -> Option<Disc> {
    let mut d = Disc {
        at: t.load,
        radius: 0.0,
    };
    if !t.arms.is_empty() {
        let n = t.ports.len();
        let coupled = (1..n).any(|i| (1..n).any(|j| t.ports[i][j].norm() > 0.0));
        if coupled {
            return None;
        }
        d.at = t.ports[0][0];
        for (i, arm) in t.arms.iter_mut().enumerate() {
            let a = disc(arm)?;
            let q = t.ports[0][i + 1] * t.ports[i + 1][0];
            d.at = d.at + q * a.at;
            d.radius += libm::sqrt(q.norm()) * a.radius;
        }
    }
    for e in t.els.iter().rev() {
        d = match *e {
            El::Two { s11, back, s22, .. } => d.through(s11, back, s22),
            El::Shift {
                power,
                round,
                coherence,
                ..
            } => {
                let k = libm::sqrt(coherence);
                let w = core::f64::consts::PI * (1.0 - k);
                let round = if k > 1e-9 {
                    round.scale(1.0 / k)
                } else {
                    C::one()
                };
                Disc {
                    at: (d.at * round).scale(power),
                    radius: d.radius * power,
                }
                .turned(w)
            }
            El::Tuner { .. } => Disc {
                at: C::zero(),
                radius: 0.0,
            },
            El::Node => d,
        };
    }
    Some(d)
}

/// Nominal values, all free phases at one angle.
struct NominalAt(f64);

impl Reader for NominalAt {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        i.nominal()
    }
    fn coherence(&self, _: u32, _: f64, spread: Spread) -> C<f64> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::turn(1.0, self.0),
        }
    }
    fn half_sine(&self, _: u32) -> f64 {
        libm::sin(0.5 * self.0)
    }
}

type Builder<'a> = dyn Fn(&Part, &Context, &mut Vec<El<f64>>, f64) + 'a;

/// The floor of one part, dB, and the angle of its free phases at which it is reached.
fn floor_of_part(p: &Part, cx: &Context, build: &Builder<'_>) -> (f64, f64) {
    let mut els = Vec::new();
    let mut best = (f64::INFINITY, 0.0);
    for k in 0..12 {
        els.clear();
        let angle = f64::from(k) * core::f64::consts::TAU / 12.0;
        build(p, cx, &mut els, angle);
        let db = -libm::log(best_share(&els)) / NEPER_OF_POWER;
        if db < best.0 {
            best = (db, angle);
        }
    }
    best
}

fn floor_of(s: &Stretch, hz: f64, build: &Builder<'_>) -> f64 {
    let cx = Context { hz, phased: false };
    let mut sum = 0.0;
    for p in &s.parts {
        let best = floor_of_part(p, &cx, build).0;
        // an amplifier's gain counts; rounding of a lossless part does not
        sum += if best.abs() < 1e-12 { 0.0 } else { best };
    }
    if let End::Branches { arms, .. } = &s.end {
        sum += arms
            .iter()
            .map(|a| floor_of(a, hz, build))
            .fold(f64::INFINITY, f64::min)
            .min(1e9);
    }
    sum
}

/// Nominal values with their derivatives by the causes numbered `base` to `base + N`, all free
/// phases at one angle.
struct Slope<const N: usize> {
    base: usize,
    angle: f64,
}

impl<const N: usize> Reader for Slope<N> {
    type T = Dual<N>;
    fn get(&self, i: &Input) -> Dual<N> {
        seeded(i, self.base)
    }
    fn coherence(&self, _: u32, _: Dual<N>, spread: Spread) -> C<Dual<N>> {
        match spread {
            Spread::Known => C::one(),
            Spread::Free => C::turn(Dual::of(1.0), Dual::of(self.angle)),
        }
    }
    fn half_sine(&self, _: u32) -> Dual<N> {
        Dual::of(libm::sin(0.5 * self.angle))
    }
}

/// Derivatives of the floor by the causes numbered `base` to `base + N`; those of all branches
/// together.
fn floor_slopes<const N: usize>(s: &Stretch, hz: f64, base: usize) -> [f64; N] {
    let cx = Context { hz, phased: false };
    let mut sum = [0.0; N];
    let mut els = Vec::new();
    for p in &s.parts {
        let (_, angle) = floor_of_part(p, &cx, &|p, cx, els, angle| {
            p.build(cx, &NominalAt(angle), els);
        });
        els.clear();
        p.build(&cx, &Slope::<N> { base, angle }, &mut els);
        let share = match Most::of(&els) {
            // √(|S21|²/|S12|²) (k − √(k² − 1)) with k = x/p
            Ok(m) => {
                let root = (m.x * m.x - m.p * m.p).at_least(0.0).sqrt();
                Dual::of(2.0) * m.s21 / (m.x + root)
            }
            Err(power) => power,
        };
        for (sum, d) in sum.iter_mut().zip(share.d) {
            // the share falls as the floor rises
            if d.is_finite() {
                *sum -= d / share.v;
            }
        }
    }
    if let End::Branches { arms, .. } = &s.end {
        for a in arms {
            for (sum, d) in sum.iter_mut().zip(floor_slopes::<N>(a, hz, base)) {
                *sum += d;
            }
        }
    }
    sum
}

/// The terms of the maximum available power ratio of elements in cascade.
struct Most<T> {
    /// |S21|².
    s21: T,
    /// |S12|²·|S21|².
    both: T,
    /// 1 − |S11|² − |S22|² + |Δ|².
    x: T,
    /// 2 |S12 S21|.
    p: T,
}

impl<T: Real> Most<T> {
    /// Of elements; the power ratio itself of a tuner.
    fn of(els: &[El<T>]) -> Result<Self, T> {
        let (one, zero) = (C::<T>::one(), C::<T>::zero());
        // S11, S12·S21, |S21|², S22 of the cascade
        let (mut s11, mut back, mut s21, mut s22) = (zero, one, T::of(1.0), zero);
        for e in els {
            let (b11, bb, b21, b22) = match *e {
                El::Two {
                    s11,
                    back,
                    s21,
                    s22,
                } => (s11, back, s21.norm(), s22),
                El::Shift { power, round, .. } => (zero, round.scale(power), power, zero),
                El::Tuner { power } => return Err(power),
                El::Node => continue,
            };
            let d = one - s22 * b11;
            (s11, s22, s21, back) = (
                s11 + back * b11 / d,
                b22 + bb * s22 / d,
                s21 * b21 / d.norm(),
                back * bb / (d * d),
            );
        }
        let determinant = s11 * s22 - back;
        Ok(Most {
            s21,
            both: back.norm(),
            x: T::of(1.0) - s11.norm() - s22.norm() + determinant.norm(),
            p: T::of(2.0) * back.norm().sqrt(),
        })
    }
}

/// Maximum available power ratio of elements in cascade (Pozar, Microwave Engineering 4e, ch. 12,
/// from memory); of a part that is not stable with every load the maximum stable one.
#[must_use]
pub fn best_share(els: &[El<f64>]) -> f64 {
    let m = match Most::of(els) {
        Ok(m) => m,
        Err(power) => return power,
    };
    if m.p < 1e-12 {
        return m.s21 / m.x;
    }
    let s12 = m.both / m.s21;
    let k = (m.x / m.p).max(1.0);
    libm::sqrt(m.s21 / s12) / (k + libm::sqrt(k * k - 1.0))
}
