//! Laws of every network: random chains and trees from the whole part table, fixed seeds.
//!
//! The uncertainty is compared with plain Monte Carlo of the same inputs by a reader of this file
//! (pseudo-random numbers, JCGM 101:2008), powers with a solver of this file that sets up all waves
//! as one system of linear equations.

#[path = "net/maker.rs"]
mod maker;
#[path = "net/waves.rs"]
mod waves;

use downlead_physics::net::complex::{C, c};
use downlead_physics::net::evaluate::{Evaluation, Output, Quantity, TAIL};
use downlead_physics::net::input::{Input, Nominal, Reader, Shape, Spread};
use downlead_physics::net::part::{Context, End, Length, Line, Load, Part, Stretch};
use downlead_physics::net::scalar::{Lanes, Real, WIDTH};
use downlead_physics::net::solve::Tail;
use downlead_physics::net::{Fields, Network};
use maker::{Chain, Maker, Rng, gain, random, shrunk};

/// One point of all figures and phases: standardised values of the causes, angles of the phases.
struct Draw<'a> {
    z: &'a [[f64; WIDTH]],
    angles: &'a [[f64; WIDTH]],
    bounds: &'a [(f64, f64)],
    /// True if phases that follow from figures are turned by their angle as well.
    all_phases: bool,
}

/// Value, standard uncertainty and cause of an input.
fn figure(i: &Input) -> (f64, f64, usize) {
    let (value, u, cause) = i.key();
    (f64::from_bits(value), f64::from_bits(u), cause as usize)
}

impl Reader for Draw<'_> {
    type T = Lanes;
    fn get(&self, i: &Input) -> Lanes {
        let (value, u, cause) = figure(i);
        let (Some(z), true) = (self.z.get(cause), u != 0.0) else {
            return Lanes::of(value);
        };
        let (low, high) = self.bounds[cause];
        Lanes(z.map(|z| (value + u * z).clamp(low, high)))
    }
    fn coherence(&self, phase: u32, _: Lanes, spread: Spread) -> C<Lanes> {
        if spread == Spread::Known && !self.all_phases {
            return C::one();
        }
        let a = self.angles[phase as usize];
        c(Lanes(a.map(f64::cos)), Lanes(a.map(f64::sin)))
    }
    fn half_sine(&self, phase: u32) -> Lanes {
        Lanes(self.angles[phase as usize].map(|a| (0.5 * a).sin()))
    }
}

fn draws(rng: &mut Rng, shapes: &[Shape]) -> Vec<[f64; WIDTH]> {
    let one = |rng: &mut Rng, s: &Shape| match s {
        Shape::Rectangular => rng.between(-1.0, 1.0) * 3f64.sqrt(),
        Shape::Normal => rng.normal(),
    };
    shapes
        .iter()
        .map(|s| core::array::from_fn(|_| one(rng, s)))
        .collect()
}

fn angles(rng: &mut Rng, half: impl Iterator<Item = f64>) -> Vec<[f64; WIDTH]> {
    half.map(|w| core::array::from_fn(|_| rng.between(-w, w)))
        .collect()
}

/// A whole turn for every phase.
fn all_open(n: &Network) -> impl Iterator<Item = f64> {
    std::iter::repeat_n(std::f64::consts::PI, n.inputs.phases())
}

/// EIRP and delivered power of random draws, dB over 1 W.
fn monte_carlo(chain: &Chain, rng: &mut Rng, runs: usize) -> [Vec<f64>; 2] {
    let n = &chain.network;
    let mut out = [Vec::with_capacity(runs), Vec::with_capacity(runs)];
    for _ in 0..runs / WIDTH {
        let z = draws(rng, n.inputs.shapes());
        let turned = angles(rng, all_open(n));
        let (eirp, delivered) = n.levels(&Draw {
            z: &z,
            angles: &turned,
            bounds: &chain.bounds,
            all_phases: false,
        });
        out[0].extend(eirp.0);
        out[1].extend(delivered.0);
    }
    out
}

fn moments(x: &[f64]) -> (f64, f64) {
    let n = x.len() as f64;
    let mean = x.iter().sum::<f64>() / n;
    let v = x.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / n;
    (mean, v.sqrt())
}

/// Quantile of sorted values.
fn quantile(sorted: &[f64], p: f64) -> f64 {
    sorted[((p * sorted.len() as f64) as usize).min(sorted.len() - 1)]
}

/// Largest, and that which 99 of 100 stay below.
fn worst_of(x: &mut [f64]) -> (f64, f64) {
    x.sort_by(f64::total_cmp);
    (x[x.len() - 1], quantile(x, 0.99))
}

#[test]
fn uncertainty_agrees_with_plain_monte_carlo() {
    const CHAINS: usize = 1000;
    const RUNS: usize = 8192;
    let mut rng = Rng(0x5eed_0001);
    let (mut off, mut means, mut ends) = (Vec::new(), Vec::new(), Vec::new());
    for k in 0..CHAINS {
        let chain = random(&mut rng, k);
        let e = chain.network.evaluate(&[]);
        let x = monte_carlo(&chain, &mut rng, RUNS);
        for (q, mut x) in [Quantity::Eirp, Quantity::Delivered].into_iter().zip(x) {
            let Some(o) = e.output(q) else { continue };
            let (mean, sd) = moments(&x);
            let error = (o.u / sd - 1.0).abs();
            let fine = 2.0 * (o.u - sd).abs() < 0.005;
            off.push(if fine { 0.0 } else { error });
            means.push(((o.mean - mean).abs() - 0.002).max(0.0) / sd);
            x.sort_by(f64::total_cmp);
            for (end, p) in [(o.low, TAIL), (o.high, 1.0 - TAIL)] {
                // between the sample's and two standard deviations, by the share of each
                let other = mean + if p < 0.5 { -2.0 * sd } else { 2.0 * sd };
                let want = o.weight * quantile(&x, p) + (1.0 - o.weight) * other;
                ends.push(((end - want).abs() - 0.005).max(0.0) / sd);
            }
        }
    }
    let beyond = off.iter().filter(|e| **e > 0.05).count();
    let (worst, _) = worst_of(&mut off);
    assert!(
        beyond * 100 <= off.len(),
        "{beyond} of {} beyond 5 %",
        off.len()
    );
    assert!(worst < 0.12, "U off by {worst}");
    let (worst, most) = worst_of(&mut means);
    assert!(
        most < 0.05 && worst < 0.15,
        "means off by {most} u, {worst} u"
    );
    let (worst, most) = worst_of(&mut ends);
    assert!(
        most < 0.25 && worst < 0.5,
        "ends of intervals off by {most} u, {worst} u"
    );
}

/// Quantities of a network besides what is radiated: all nodes.
fn at_nodes(e: &Evaluation) -> impl Iterator<Item = Quantity> {
    (0..e.nodes).flat_map(|k| [Quantity::Forward(k), Quantity::Net(k), Quantity::Back(k)])
}

#[test]
fn nodes_agree_with_plain_monte_carlo() {
    let mut rng = Rng(0x5eed_0002);
    let (mut level, mut back) = (Vec::new(), Vec::new());
    for k in 0..200 {
        let chain = random(&mut rng, k);
        let n = &chain.network;
        let e = n.evaluate(&[]);
        let mut x: Vec<Vec<f64>> = vec![Vec::new(); 3 * e.nodes];
        for _ in 0..8192 / WIDTH {
            let z = draws(&mut rng, n.inputs.shapes());
            let turned = angles(&mut rng, all_open(n));
            let r = Draw {
                z: &z,
                angles: &turned,
                bounds: &chain.bounds,
                all_phases: false,
            };
            let s = n.by(&r);
            let source = r.get(&n.level);
            for (i, node) in s.nodes.iter().enumerate() {
                for l in 0..WIDTH {
                    let f = node.forward.0[l];
                    x[3 * i].push(10.0 * f.log10() + source.0[l]);
                    x[3 * i + 1].push(10.0 * node.net().0[l].log10() + source.0[l]);
                    x[3 * i + 2].push(node.back.0[l]);
                }
            }
        }
        for (q, x) in at_nodes(&e).zip(&x) {
            let o = e.output(q).expect("a node");
            let (mean, sd) = moments(x);
            if matches!(q, Quantity::Back(_)) {
                // as sizes of the reflection
                let size = |x: f64| x.max(0.0).sqrt();
                back.push((size(o.mean) - size(mean)).abs());
            } else {
                let fine = 2.0 * (o.u - sd).abs() < 0.01;
                level.push(if fine { 0.0 } else { (o.u / sd - 1.0).abs() });
            }
        }
    }
    let (worst, most) = worst_of(&mut level);
    // thousands of outputs, the worst of which meets a poor corner of the sample
    assert!(most < 0.05 && worst < 0.2, "levels off by {most}, {worst}");
    let (worst, most) = worst_of(&mut back);
    assert!(most < 0.01 && worst < 0.03, "|Γ| off by {most}, {worst}");
}

/// Half of what a phase may turn by, rad.
fn window(e: &Evaluation, p: usize) -> f64 {
    e.phases[p].reach().min(std::f64::consts::PI)
}

/// Of chains the range is found by steps that are exact in each phase, of trees and after tuners
/// by search.
#[test]
fn bounds_contain_every_sample() {
    let mut rng = Rng(0x5eed_0003);
    let range = [0.02, 0.1];
    let reflection = [1e-6, 0.02];
    for k in 0..600 {
        let chain = random(&mut rng, k);
        let n = &chain.network;
        let e = n.evaluate(&[]);
        let reach = n.reach(&e);
        let largest = n.largest_reflection(&e);
        let searched = usize::from(matches!(n.feed.end, End::Branches { .. }) || k % 5 == 4);
        // nominal figures, all phases within what the text leaves open
        for _ in 0..1024 / WIDTH {
            let turned = angles(&mut rng, (0..e.phases.len()).map(|p| window(&e, p)));
            let r = Draw {
                z: &[],
                angles: &turned,
                bounds: &chain.bounds,
                all_phases: true,
            };
            let (_, y) = n.levels(&r);
            let back = n.by(&r).nodes[0].back;
            for l in 0..WIDTH {
                if let Some((least, most)) = reach {
                    let out = (least - y.0[l]).max(y.0[l] - most);
                    // where strong reflections make several hills the search may miss the highest
                    assert!(
                        out < range[searched] + 0.05 * (most - least),
                        "chain {k}: {} outside {least} .. {most}: {}",
                        y.0[l],
                        chain.said
                    );
                }
                if let Some(g) = largest {
                    let size = back.0[l].max(0.0).sqrt();
                    assert!(
                        size < g + reflection[searched],
                        "chain {k}: |Γ| {size} over {g}: {}",
                        chain.said
                    );
                }
            }
        }
        // all figures, normal ones within two standard deviations
        let floor = n.favourable_floor();
        for _ in 0..1024 / WIDTH {
            let z = draws(&mut rng, n.inputs.shapes());
            let z: Vec<_> = z.iter().map(|z| z.map(|z| z.clamp(-2.0, 2.0))).collect();
            let turned = angles(&mut rng, all_open(n));
            let r = Draw {
                z: &z,
                angles: &turned,
                bounds: &chain.bounds,
                all_phases: false,
            };
            let s = n.by(&r);
            for l in 0..WIDTH {
                let delivered: f64 = s.ends.iter().map(|e| e.net.0[l]).sum();
                let loss = -10.0 * delivered.log10();
                assert!(
                    loss > floor - 1e-3,
                    "chain {k}: loss {loss} below the floor {floor}: {}",
                    chain.said
                );
            }
        }
    }
}

/// Nominal figures and random phases as plain numbers.
fn built(n: &Network, rng: &mut Rng) -> (Tail<f64>, Vec<f64>) {
    let a: Vec<f64> = (0..n.inputs.phases())
        .map(|_| rng.between(-3.1, 3.1))
        .collect();
    let cx = Context {
        hz: n.hz,
        phased: false,
    };
    (n.feed.build(&cx, &Nominal { angles: &a }), a)
}

#[test]
fn powers_and_heat_are_those_of_the_waves() {
    let mut rng = Rng(0x5eed_0004);
    for k in 0..400 {
        let chain = random(&mut rng, k);
        let (tail, a) = built(&chain.network, &mut rng);
        let want = waves::solve(&tail);
        let got = chain.network.at(&a);
        assert_eq!(got.nodes.len(), want.nodes.len(), "{}", chain.said);
        for (g, w) in got.nodes.iter().zip(&want.nodes) {
            assert!(
                (g.forward / w.0 - 1.0).abs() < 1e-9,
                "{k} {g:?} {w:?}: {}",
                chain.said
            );
            assert!(
                (g.back - w.1).abs() < 1e-9,
                "{k} {g:?} {w:?}: {}",
                chain.said
            );
        }
        assert_eq!(got.ends.len(), want.ends.len());
        for (g, w) in got.ends.iter().zip(&want.ends) {
            assert!(
                (g.net - w).abs() < 1e-9 * w.abs().max(1e-3),
                "{k} {g:?} {w}: {}",
                chain.said
            );
        }
        let heat: f64 = want.heat.iter().sum();
        let arrived: f64 = got.ends.iter().map(|e| e.net).sum();
        let sum = heat + arrived + got.nodes[0].back;
        let size = want.heat.iter().fold(1.0, |m: f64, h| m.max(h.abs()));
        assert!((sum - 1.0).abs() < 1e-9 * size, "{k} {sum}: {}", chain.said);
        if !chain.said.contains("amplifier") {
            let least = want.heat.iter().fold(0.0, |m: f64, h| m.min(*h));
            assert!(least > -1e-9, "{k}: {:?}: {}", want.heat, chain.said);
        }
    }
}

/// A chain of one long line, whole or as two pieces that share all causes.
fn whole_or_split(rng: &mut Rng, k: usize) -> (Chain, Chain) {
    let hz = rng.one_of(&[14.2e6, 50e6, 145.3e6]);
    let build = |split: bool, mut rng: Rng| {
        let mut m = Maker::default();
        let before = k.is_multiple_of(2).then(|| m.part(&mut rng, hz));
        let mut line = loop {
            if let Part::Line(l) = m.line(&mut rng, hz)
                && let Length::Metres(_) = &l.length
                && l.spread == Spread::Known
            {
                break *l;
            }
        };
        // what is added or reflected at an end belongs to one piece
        line.swr = None;
        line.added = None;
        let at = 0.1 + 0.8 * rng.unit();
        let mut parts: Vec<Part> = before.into_iter().collect();
        if split {
            let Length::Metres(whole) = &line.length else {
                unreachable!()
            };
            let (value, u, cause) = figure(whole);
            for share in [at, 1.0 - at] {
                let name = "length, m";
                let piece = m.inputs.input(name, share * value, share * u, cause as u32);
                parts.push(Part::Line(Box::new(Line {
                    length: Length::Metres(piece.within(0.0, f64::INFINITY)),
                    phase: m.inputs.line_phase(Spread::Known),
                    ..line.clone()
                })));
            }
        } else {
            // the phase that the piece of the other chain takes
            m.inputs.line_phase(Spread::Known);
            parts.push(Part::Line(Box::new(line)));
        }
        let load = m.load(&mut rng);
        Chain {
            network: Network {
                hz,
                level: Input::exact("power, dBW", 0.0),
                inputs: m.inputs,
                feed: Stretch {
                    parts,
                    end: End::Load(load, Some(gain())),
                },
                phased: false,
                fields: Fields::InPhase,
            },
            bounds: m.bounds,
            said: m.said,
        }
    };
    let seed = Rng(rng.next());
    (build(false, seed.clone()), build(true, seed))
}

#[test]
fn a_line_split_in_two_is_the_same_line() {
    let mut rng = Rng(0x5eed_0005);
    let mut off = Vec::new();
    for k in 0..400 {
        let (whole, split) = whole_or_split(&mut rng, k);
        let of = |c: &Chain| {
            let e = c.network.evaluate(&[]);
            let o = e.output(Quantity::Eirp).expect("radiates");
            (o.mean, 2.0 * o.u)
        };
        let (a, b) = (of(&whole), of(&split));
        let away = (a.0 - b.0).abs().max((a.1 - b.1).abs());
        off.push(away / a.1.max(0.1));
    }
    // 1 % of U; between derivatives and sample the two may differ by what either leaves out
    let (worst, most) = worst_of(&mut off);
    assert!(most < 0.01 && worst < 0.03, "{most}, {worst}");
}

#[test]
fn a_part_of_0_db_changes_nothing() {
    let mut rng = Rng(0x5eed_0006);
    for k in 0..200 {
        let mut chain = random(&mut rng, k);
        let of = |n: &Network| {
            let e = n.evaluate(&[]);
            let all = [Quantity::Eirp, Quantity::Delivered].map(|q| {
                e.output(q)
                    .map_or([0.0; 4], |o| [o.mean, o.u, o.low, o.high])
            });
            let (least, most) = n.reach(&e).unwrap_or_default();
            let largest = n.largest_reflection(&e).unwrap_or_default();
            // of trees the bounds are searched, and rounding may lead elsewhere
            let tree = matches!(n.feed.end, End::Branches { .. });
            let bounds = [n.floor(), least, most, largest].map(|x| if tree { 0.0 } else { x });
            [all[0], all[1], bounds]
        };
        let before = of(&chain.network);
        let parts = &mut chain.network.feed.parts;
        let at = rng.below(parts.len() + 1);
        // matched, without length: pairs that lose nothing
        parts.insert(
            at,
            Part::Pairs {
                count: 3,
                loss: Input::exact("loss of a pair, dB", 0.0),
                root: true,
                bump: None,
                swr: None,
                phase: 0,
            },
        );
        let at = rng.below(parts.len() + 1);
        parts.insert(at, Part::Several(Vec::new()));
        let after = of(&chain.network);
        for (a, b) in before.iter().flatten().zip(after.iter().flatten()) {
            assert!(
                (a - b).abs() < 1e-6,
                "{k}: {before:?} {after:?}: {}",
                chain.said
            );
        }
    }
}

fn one_way(p: &Part) -> bool {
    match p {
        Part::OneWay { .. } | Part::Tuner { .. } => true,
        Part::Measured { s, .. } => (s[1] - s[2]).norm() > 1e-12,
        Part::Several(all) => all.iter().any(one_way),
        _ => false,
    }
}

#[test]
fn reciprocal_chains_lose_the_same_both_ways() {
    let mut rng = Rng(0x5eed_0007);
    let mut count = 0;
    for k in 0..1500 {
        let mut chain = random(&mut rng, k);
        let feed = &mut chain.network.feed;
        if feed.parts.iter().any(one_way) || feed.parts.is_empty() {
            continue;
        }
        feed.end = End::Load(Load::Matched, Some(gain()));
        let (mut there, _) = built(&chain.network, &mut rng);
        let mut back = Tail::default();
        back.els = waves::reversed(&there.els);
        let [a, b] = [there.solve(false), back.solve(false)].map(|s| s.ends[0].net);
        assert!((a / b - 1.0).abs() < 1e-9, "{k}: {a} {b}: {}", chain.said);
        count += 1;
    }
    assert!(count > 400, "{count}");
}

/// Plain numbers with the causes at some point, free phases at the mean of their phasor.
struct At<'a> {
    z: &'a [f64],
}

impl Reader for At<'_> {
    type T = f64;
    fn get(&self, i: &Input) -> f64 {
        let (value, u, cause) = figure(i);
        value + if u == 0.0 { 0.0 } else { u * self.z[cause] }
    }
    fn coherence(&self, _: u32, _: f64, spread: Spread) -> C<f64> {
        C::real(if spread == Spread::Known { 1.0 } else { 0.0 })
    }
    fn half_sine(&self, _: u32) -> f64 {
        0.0
    }
    fn leaning(&self, _: u32, most: f64) -> C<f64> {
        C::real(1.0 - most * most)
    }
}

#[test]
fn derivatives_are_central_differences() {
    let mut rng = Rng(0x5eed_0008);
    let mut count = 0;
    for k in 0..300 {
        // so small that phases stay known
        let chain = shrunk(&mut rng, k, 1e-6);
        let n = &chain.network;
        let e = n.evaluate(&[]);
        let causes = n.inputs.shapes().len();
        let radiates = e.output(Quantity::Eirp).is_some();
        let all: Vec<Quantity> = [Quantity::Delivered]
            .into_iter()
            .chain(radiates.then_some(Quantity::Eirp))
            .chain(at_nodes(&e))
            .collect();
        let values = |z: &[f64]| -> Vec<f64> {
            let r = At { z };
            let s = n.by(&r);
            let (eirp, delivered) = n.levels(&r);
            let level = r.get(&n.level);
            all.iter()
                .map(|q| match *q {
                    Quantity::Eirp => eirp,
                    Quantity::Delivered => delivered,
                    Quantity::Forward(k) => 10.0 * s.nodes[k].forward.log10() + level,
                    Quantity::Net(k) => 10.0 * s.nodes[k].net().log10() + level,
                    Quantity::Back(k) => s.nodes[k].back,
                })
                .collect()
        };
        let h = 10.0;
        for j in 0..causes {
            let mut z = vec![0.0; causes];
            z[j] = h;
            let up = values(&z);
            z[j] = -h;
            let down = values(&z);
            for ((q, up), down) in all.iter().zip(&up).zip(&down) {
                let want = (up - down) / (2.0 * h) * 1e6;
                let got = e.by_cause(*q)[j] * 1e6;
                let d = (got - want).abs() / (1e-3 + want.abs());
                assert!(
                    d < 1e-4,
                    "chain {k} cause {j} {q:?}: {got}, not {want}: {}",
                    chain.said
                );
                count += 1;
            }
        }
    }
    assert!(count > 50_000, "{count}");
}

/// A chain in which one ± grows from 0 to a whole: 50-ohm jumper, the swept part, 75-ohm line, end.
fn swept(what: &str, share: f64) -> Network {
    let mut m = Maker::default();
    let half = |name: &str, most: f64| if what == name { share * most } else { 0.0 };
    let line = |m: &mut Maker, z: f64, metres: f64, pm: [f64; 5]| {
        let [length, velocity, impedance, scale, celsius] = pm;
        let any = (f64::NEG_INFINITY, f64::INFINITY);
        Part::Line(Box::new(Line {
            rate: downlead_physics::net::part::Rate::TwoTerm {
                k1: Input::exact("k1", 0.0064),
                k2: Input::exact("k2", 0.000_043),
            },
            scale: m.of(
                "factor on the loss",
                1.0,
                scale,
                Shape::Normal,
                (0.0, f64::INFINITY),
            ),
            z0: Some(m.pm("impedance, ohm", z, impedance)),
            velocity: Some(m.pm("velocity factor", 0.66, velocity)),
            celsius: m.of("temperature", 20.0, celsius, Shape::Rectangular, any),
            reference_c: 20.0,
            length: Length::Metres(m.pm("length, m", metres, length)),
            added: None,
            spread: Spread::Known,
            phase: m.inputs.line_phase(Spread::Known),
            swr: None,
        }))
    };
    let mut parts = vec![line(&mut m, 50.0, 1.2, [0.0; 5])];
    if what.starts_with("device") {
        parts.push(Part::Device {
            loss: downlead_physics::net::part::Loss::Stated(m.pm(
                "loss, dB",
                1.0,
                half("device loss", 1.0),
            )),
            swr: Some(m.of(
                "SWR",
                1.3,
                half("device swr", 0.17),
                Shape::Rectangular,
                (1.0, f64::INFINITY),
            )),
            phase: m.inputs.phase(3),
        });
    }
    if what.starts_with("isolator") {
        parts.push(Part::OneWay {
            forward: m.pm("loss", 0.5, half("isolator loss", 0.5)),
            backward: Some(m.pm("isolation", 12.0, half("isolator isolation", 8.0))),
            swr: None,
            turned: false,
            phase: m.inputs.phase(2),
        });
    }
    if what.starts_with("tuner") {
        parts.insert(
            0,
            Part::Tuner {
                loss: Input::exact("loss", 0.1),
            },
        );
    }
    let pm = [
        half("length", 1.5) + half("tuner length", 1.5) + half("tree length", 1.5),
        half("velocity", 0.06),
        half("impedance", 10.0),
        half("scale", 0.3),
        half("temperature", 60.0),
    ];
    parts.push(line(&mut m, 75.0, 17.35, pm));
    let any = (f64::NEG_INFINITY, f64::INFINITY);
    let load = if what.contains("swr") {
        Load::Swr {
            swr: m.of(
                "SWR",
                2.0,
                half("swr", 0.9),
                Shape::Rectangular,
                (1.0, f64::INFINITY),
            ),
            phase: m.inputs.phase(1),
        }
    } else {
        Load::Impedance {
            resistance: m.pm("resistance", 38.0, half("resistance", 35.0)),
            reactance: m.of(
                "reactance",
                -12.0,
                half("reactance", 60.0),
                Shape::Normal,
                any,
            ),
        }
    };
    let end = End::Load(load, Some(gain()));
    let feed = if what.starts_with("tree") {
        let other = Stretch {
            parts: vec![line(&mut m, 50.0, 3.0, [0.0; 5])],
            end: end.clone(),
        };
        End::Branches {
            junction: downlead_physics::net::part::Junction::Tee {
                excess: Input::exact("excess", 0.0),
            },
            swr: None,
            arms: vec![Stretch { parts, end }, other],
        }
    } else {
        return Network {
            hz: 146.9e6,
            level: Input::exact("power", 0.0),
            inputs: m.inputs,
            feed: Stretch { parts, end },
            phased: false,
            fields: Fields::InPhase,
        };
    };
    Network {
        hz: 146.9e6,
        level: Input::exact("power", 0.0),
        inputs: m.inputs,
        feed: Stretch {
            parts: Vec::new(),
            end: feed,
        },
        phased: true,
        fields: Fields::ByLength,
    }
}

#[test]
fn nothing_jumps_as_an_uncertainty_grows() {
    const STEPS: usize = 1000;
    for what in [
        "length",
        "velocity",
        "impedance",
        "scale",
        "temperature",
        "device loss",
        "device swr",
        "isolator loss",
        "isolator isolation",
        "tuner length",
        "swr",
        "resistance",
        "reactance",
        "tree length",
    ] {
        let fields = |k: usize| -> Vec<f64> {
            let n = swept(what, k as f64 / STEPS as f64);
            let e = n.evaluate(&[]);
            let of = |o: &Output| [o.mean, o.u, o.low, o.high];
            let mut out: Vec<f64> = Vec::new();
            for q in [Quantity::Eirp, Quantity::Delivered]
                .into_iter()
                .chain(at_nodes(&e))
            {
                let o = e.output(q).expect("an output");
                match q {
                    Quantity::Back(_) => out.extend(&of(o)[..2]),
                    _ => out.extend(of(o)),
                }
            }
            let o = e.output(Quantity::Eirp).expect("an output");
            out.extend([-3.0, -2.5, -2.0].map(|l| o.above(l)));
            out.extend(n.largest_reflection(&e));
            out
        };
        let all: Vec<Vec<f64>> = (0..=STEPS).map(fields).collect();
        for f in 0..all[0].len() {
            let x: Vec<f64> = all
                .iter()
                .map(|a| a.get(f).copied().unwrap_or(0.0))
                .collect();
            let step = |k: usize| (x[k + 1] - x[k]).abs();
            let mean = (0..STEPS).map(step).sum::<f64>() / STEPS as f64;
            for k in 0..STEPS {
                assert!(
                    step(k) < 40.0 * (mean + 2e-5),
                    "{what}, field {f}, step {k}: {} then {}, mean step {mean}",
                    x[k],
                    x[k + 1]
                );
            }
        }
    }
}

/// FNV-1a (Fowler, Noll, Vo; constants from memory) of the bits of outputs.
fn hash_of(seed: u64) -> u64 {
    let mut rng = Rng(seed);
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    for k in 0..50 {
        let chain = random(&mut rng, k);
        let n = &chain.network;
        let e = n.evaluate(&[0]);
        let mut x = Vec::new();
        for q in [Quantity::Eirp, Quantity::Delivered]
            .into_iter()
            .chain(at_nodes(&e))
        {
            if let Some(o) = e.output(q) {
                x.extend([o.mean, o.u, o.low, o.high, o.above(o.mean - 0.1)]);
            }
            x.extend_from_slice(e.by_cause(q));
        }
        let (least, most) = n.reach(&e).unwrap_or_default();
        x.extend([least, most, n.floor(), n.favourable_floor()]);
        x.extend(n.largest_reflection(&e));
        for byte in x.iter().flat_map(|x| x.to_bits().to_le_bytes()) {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }
    hash
}

/// Bit for bit the same twice, and on every platform. A changed formula needs a new
/// value here.
#[test]
fn the_same_bits_everywhere() {
    let hash = hash_of(0x5eed_000a);
    assert_eq!(hash, hash_of(0x5eed_000a));
    assert_eq!(
        hash, 0x5cbf_915e_d79a_a44f,
        "the outputs of fixed chains have other bits: {hash:#x}"
    );
}
