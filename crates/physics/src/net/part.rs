//! The parts: for each one function from its stated inputs to elementary networks.
//!
//! No part knows of its neighbours, of uncertainty or of text. Steps named here are what a
//! derivation shows.

use num_complex::Complex64;

use super::R0;
use super::complex::{C, c};
use super::element::{
    El, NEPER_OF_POWER, free, into_impedance, loss, out_of_impedance, share, two,
};
use super::input::{Input, Reader, Spread};
use super::scalar::Real;
use super::solve::Tail;
use crate::{C0, COPPER_TEMPCO, DB_PER_NEPER, ETA0, MU0};

/// The conditions under which a part is built.
#[derive(Clone, Copy, Debug)]
pub struct Context {
    /// Frequency, Hz.
    pub hz: f64,
    /// True if phases of one way are needed (fields of several antennas add).
    pub phased: bool,
}

/// Attenuation of a cable at the frequency, at its reference temperature.
#[derive(Clone, Debug)]
pub enum Rate {
    /// `k1 √f + k2 f`, f in MHz; dB/m.
    TwoTerm {
        /// Conductor coefficient, dB/m/√MHz.
        k1: Input,
        /// Dielectric coefficient, dB/m/MHz.
        k2: Input,
    },
    /// Conductor and dielectric part at this frequency, dB/m.
    Split {
        /// Conductor part.
        conductor: Input,
        /// Dielectric part.
        dielectric: Input,
    },
    /// Dimensions of a coaxial line.
    Coax(Box<Coax>),
    /// Dimensions of two parallel wires.
    Wires(Box<Wires>),
}

/// A coaxial line by its dimensions, SI units.
#[derive(Clone, Debug)]
pub struct Coax {
    /// Diameter over the inner conductor, m.
    pub inner: Input,
    /// Inner diameter of the outer conductor, m.
    pub outer: Input,
    /// Relative permittivity.
    pub permittivity: Input,
    /// Loss tangent.
    pub loss_tangent: Input,
    /// Effective over actual diameter of a stranded inner conductor, for the impedance.
    pub strand_diameter: Input,
    /// Factor of the inner conductor's strands on its resistance.
    pub strand: Input,
    /// Factor of the braid on the outer conductor's resistance.
    pub braid: Input,
    /// Resistivity of the inner conductor, ohm m.
    pub inner_resistivity: Input,
    /// Resistivity of the outer conductor, ohm m.
    pub outer_resistivity: Input,
}

/// Two parallel wires, SI units.
#[derive(Clone, Debug)]
pub struct Wires {
    /// Diameter of each wire, m.
    pub diameter: Input,
    /// Distance of the centres, m.
    pub spacing: Input,
    /// Effective relative permittivity.
    pub permittivity: Input,
    /// Resistivity, ohm m.
    pub resistivity: Input,
}

/// Length of a line.
#[derive(Clone, Debug)]
pub enum Length {
    /// Metres.
    Metres(Input),
    /// Wavelengths in the line at `at_hz`: cut once, whatever the frequency.
    Waves {
        /// Their number.
        count: Input,
        /// Frequency it was cut for, Hz.
        at_hz: f64,
    },
}

/// A line of cable.
#[derive(Clone, Debug)]
pub struct Line {
    /// Attenuation.
    pub rate: Rate,
    /// Factor on it: 1 with the relative uncertainty of the cable's figures.
    pub scale: Input,
    /// Characteristic impedance, ohm; none where it follows from the dimensions.
    pub z0: Option<Input>,
    /// Velocity factor; none where it follows from the dimensions.
    pub velocity: Option<Input>,
    /// Conductor temperature, °C.
    pub celsius: Input,
    /// Temperature of the stated attenuation, °C.
    pub reference_c: f64,
    /// Length.
    pub length: Length,
    /// Loss added by age or water, dB.
    pub added: Option<Input>,
    /// True if its electrical length is known, at least roughly.
    pub spread: Spread,
    /// Its phase.
    pub phase: u32,
    /// Stated SWR of its ends beyond what the cable's impedance does, and two phases.
    pub swr: Option<(Input, u32)>,
}

/// Loss of a device.
#[derive(Clone, Debug)]
pub enum Loss {
    /// Stated, dB.
    Stated(Input),
    /// Coupling of a coupler, dB: the loss is that of its main line.
    Coupling(Input),
    /// To one arm of a divider of so many, the others ending matched.
    Arm(Box<Junction>, u32),
}

/// Place of a balun's loss: 0 in series with the line, 1 across it.
pub type Sits = Input;

/// A part between source and end.
#[derive(Clone, Debug)]
pub enum Part {
    /// A line.
    Line(Box<Line>),
    /// Filter, pad, duplexer leg, coupler's main line …: loss, SWR of both ports, three phases
    /// (one where no SWR is stated).
    Device {
        /// Loss.
        loss: Loss,
        /// SWR.
        swr: Option<Input>,
        /// First phase.
        phase: u32,
    },
    /// Mated pairs: loss of each (`k √(f/GHz)` or constant), impedance bump (ohm, electrical
    /// length in m), stated SWR; a phase between pairs.
    Pairs {
        /// Their number.
        count: u32,
        /// Loss of one: dB, or dB/√GHz.
        loss: Input,
        /// True if the loss is proportional to the square root of frequency.
        root: bool,
        /// Bump.
        bump: Option<(Input, Input)>,
        /// SWR of one.
        swr: Option<Input>,
        /// First of `phases_of_pairs` phases.
        phase: u32,
    },
    /// Isolator, circulator, amplifier: other forward than back.
    OneWay {
        /// Loss forward, dB; negative for a gain.
        forward: Input,
        /// Loss backward, dB; none: nothing passes.
        backward: Option<Input>,
        /// SWR.
        swr: Option<Input>,
        /// True if it is reversed.
        turned: bool,
        /// Two phases.
        phase: u32,
    },
    /// A balun: loss in its place, then the ratio of impedances (side away from the source over
    /// the source's).
    Balun {
        /// Loss between its design impedances, dB.
        loss: Input,
        /// Ratio.
        ratio: Input,
        /// Place of the loss.
        sits: Sits,
        /// True if it is passed from the side away from the source, as on receive.
        turned: bool,
        /// A phase.
        phase: u32,
    },
    /// A tuner.
    Tuner {
        /// Loss, dB.
        loss: Input,
    },
    /// A two-port of a file.
    Measured {
        /// S11, S12, S21, S22 in 50 ohm.
        s: [Complex64; 4],
        /// True if the phases are known.
        phase_known: bool,
        /// Error of the file's losses, dB (nominally 0).
        error: Input,
        /// Three phases.
        phase: u32,
    },
    /// Several in a row that count as one, or none.
    Several(Vec<Part>),
    /// A reflecting source as a lossless two-port after a matched one: the antenna of a receive
    /// chain.
    Source(Load),
}

/// The stated form of a reflection.
#[derive(Clone, Debug)]
pub enum Load {
    /// None.
    Matched,
    /// SWR (or return loss); angle unknown.
    Swr {
        /// SWR.
        swr: Input,
        /// Its phase.
        phase: u32,
    },
    /// Impedance, ohm.
    Impedance {
        /// Resistance.
        resistance: Input,
        /// Reactance.
        reactance: Input,
    },
    /// A reflection coefficient of a file.
    Gamma {
        /// In 50 ohm.
        gamma: Complex64,
        /// True if its angle is known.
        phase_known: bool,
        /// A phase.
        phase: u32,
    },
}

/// Gain of an antenna.
#[derive(Clone, Debug)]
pub struct Gain {
    /// dBi.
    pub dbi: Input,
    /// Efficiency still to be taken off, 0 to 1.
    pub efficiency: Option<Input>,
    /// True if it includes the mismatch.
    pub realized: bool,
}

/// A junction of branches.
#[derive(Clone, Debug)]
pub enum Junction {
    /// Matched at all ports, arms isolated from each other: what comes back unlike ends in its
    /// resistor. Share of power of each arm, and excess loss in dB.
    Divider {
        /// Shares; empty for equal ones.
        shares: Vec<Input>,
        /// Excess loss, dB.
        excess: Input,
        /// Total loss to each arm instead of both, dB.
        total: Option<Input>,
    },
    /// Lines joined in parallel.
    Tee {
        /// Loss of the junction, dB.
        excess: Input,
    },
}

/// The end of a stretch.
#[derive(Clone, Debug)]
pub enum End {
    /// A load or antenna.
    Load(Load, Option<Gain>),
    /// Branches, with the SWR of the junction's input (and three phases).
    Branches {
        /// On what.
        junction: Junction,
        /// SWR of its input.
        swr: Option<(Input, u32)>,
        /// The branches.
        arms: Vec<Stretch>,
    },
}

/// Parts from a source to an end.
#[derive(Clone, Debug)]
pub struct Stretch {
    /// Parts; a node follows each.
    pub parts: Vec<Part>,
    /// End.
    pub end: End,
}

/// Size of the reflection coefficient of an SWR or a return loss.
fn reflection<R: Reader>(r: &R, swr: &Input) -> R::T {
    let one = R::T::of(1.0);
    let x = r.get(swr);
    if swr.is_return_loss() {
        x.ratio_of_loss().sqrt()
    } else {
        (x - one) / (x + one)
    }
    .step("|Γ|")
}

/// S22 of a reciprocal part of which only |S11| = |S22| = g and |S21|² = t are known: −g turned by
/// whatever angle ψ leaves it passive, `g² + t + 2 g √t |sin ψ/2| ≤ 1`.
fn lean<R: Reader>(r: &R, phase: u32, g: R::T, t: R::T) -> C<R::T> {
    let one = R::T::of(1.0);
    let room = (one - g * g - t).at_least(0.0);
    let most = room / (R::T::of(2.0) * g * t.sqrt() + R::T::of(1e-9));
    -r.leaning(phase, most.at_most(1.0)).scale(g)
}

/// A reciprocal reflecting part of power ratio `t`: three phases.
fn reflecting<R: Reader>(r: &R, g: R::T, t: R::T, phase: u32, out: &mut Vec<El<R::T>>) {
    let inner = lean(r, phase + 2, g, t);
    let s21 = t.sqrt();
    out.extend([free(r, phase), two(g, s21, s21, inner), free(r, phase + 1)]);
}

/// Attenuation, impedance and velocity of a line at its frequency and temperature.
#[derive(Clone, Copy, Debug)]
pub struct Constants<T> {
    /// Conductor loss, dB/m.
    pub conductor: T,
    /// Dielectric loss, dB/m.
    pub dielectric: T,
    /// Nominal characteristic impedance, ohm.
    pub z0: T,
    /// Velocity factor.
    pub velocity: T,
}

impl Line {
    /// Constants of the line (IEC 60028 for the temperature of copper, from memory; dimensions by
    /// Pozar, Microwave Engineering 4e, sec. 2.2 and 2.7).
    pub fn constants<R: Reader>(&self, cx: &Context, r: &R) -> Constants<R::T> {
        let of = R::T::of;
        let one = of(1.0);
        let mhz = cx.hz * 1e-6;
        let tempco = of(COPPER_TEMPCO);
        let warm = ((one + tempco * (r.get(&self.celsius) - of(20.0)))
            / (one + tempco * (of(self.reference_c) - of(20.0))))
        .sqrt()
        .step("temperature factor F");
        let mut z0 = self.z0.as_ref().map(|z| r.get(z));
        let mut velocity = self.velocity.as_ref().map(|v| r.get(v));
        let f = R::T::named("f, MHz", mhz);
        let root = f.sqrt();
        let (conductor, dielectric) = match &self.rate {
            Rate::TwoTerm { k1, k2 } => (r.get(k1) * root, r.get(k2) * f),
            Rate::Split {
                conductor,
                dielectric,
            } => (r.get(conductor), r.get(dielectric)),
            Rate::Coax(x) => {
                let permittivity = r.get(&x.permittivity);
                let (inner, outer) = (r.get(&x.inner), r.get(&x.outer));
                let effective = inner * r.get(&x.strand_diameter);
                let z = *z0.get_or_insert_with(|| {
                    (of(ETA0 / core::f64::consts::TAU) / permittivity.sqrt()
                        * (outer / effective).ln_e())
                    .step("impedance, ohm")
                });
                let v = *velocity
                    .get_or_insert_with(|| (one / permittivity.sqrt()).step("velocity factor"));
                let sheet = of(core::f64::consts::PI * 1e6 * MU0);
                let inside =
                    (sheet * r.get(&x.inner_resistivity)).sqrt() * r.get(&x.strand) / inner;
                let outside =
                    (sheet * r.get(&x.outer_resistivity)).sqrt() * r.get(&x.braid) / outer;
                let k1 = ((inside + outside) * of(DB_PER_NEPER / core::f64::consts::TAU) / z)
                    .step("k1, dB/m/√MHz");
                let k2 = (of(core::f64::consts::PI * 1e6 / C0 * DB_PER_NEPER)
                    * r.get(&x.loss_tangent)
                    / v)
                    .step("k2, dB/m/MHz");
                (k1 * root, k2 * f)
            }
            Rate::Wires(w) => {
                let permittivity = r.get(&w.permittivity);
                let (d, s) = (r.get(&w.diameter), r.get(&w.spacing));
                let z = *z0.get_or_insert_with(|| {
                    let q = s / d;
                    // acosh q
                    let acosh = (q + (q * q - one).sqrt()).ln_e();
                    (of(ETA0 / core::f64::consts::PI) / permittivity.sqrt() * acosh)
                        .step("impedance, ohm")
                });
                velocity.get_or_insert_with(|| (one / permittivity.sqrt()).step("velocity factor"));
                let sheet = (of(core::f64::consts::PI * 1e6 * MU0) * r.get(&w.resistivity)).sqrt();
                let k1 = (sheet * of(DB_PER_NEPER / core::f64::consts::PI) / (d * z))
                    .step("k1, dB/m/√MHz");
                (k1 * root, of(0.0))
            }
        };
        let scale = r.get(&self.scale);
        Constants {
            conductor: (scale * conductor * warm).step("conductor loss, dB/m"),
            dielectric: (scale * dielectric).step("dielectric loss, dB/m"),
            z0: z0.unwrap_or(of(R0)),
            velocity: velocity.unwrap_or(one),
        }
    }

    /// Length in metres.
    pub fn metres<R: Reader>(&self, k: &Constants<R::T>, r: &R) -> R::T {
        match &self.length {
            Length::Metres(m) => r.get(m),
            Length::Waves { count, at_hz } => {
                let wave = R::T::named("wavelength in free space, m", C0 / at_hz);
                (r.get(count) * wave * k.velocity).step("length, m")
            }
        }
    }

    fn matched_loss<R: Reader>(&self, k: &Constants<R::T>, r: &R) -> R::T {
        ((k.conductor + k.dielectric) * self.metres(k, r)).step("matched loss, dB")
    }

    fn build<R: Reader>(&self, cx: &Context, r: &R, out: &mut Vec<El<R::T>>) {
        let of = R::T::of;
        let one = of(1.0);
        let k = self.constants(cx, r);
        let matched = self.matched_loss(&k, r);
        let turn = R::T::named("2π f/c, rad/m", core::f64::consts::TAU * cx.hz / C0);
        let beta = (turn / k.velocity).step("phase constant β, rad/m");
        let way = match &self.length {
            // cut by its phase: the velocity does not enter
            Length::Waves { count, at_hz } => {
                r.get(count) * of(core::f64::consts::TAU * cx.hz / at_hz)
            }
            Length::Metres(m) => beta * r.get(m),
        };
        let round = (of(2.0) * way).step("phase there and back, rad");
        if let Some((swr, phase)) = &self.swr {
            reflecting(
                r,
                reflection(r, swr),
                {
                    let g = reflection(r, swr);
                    one - g * g
                },
                *phase,
                out,
            );
        }
        // R0 (1 − j (α_c − α_d)/β): R, L, G, C with R ≪ ωL and G ≪ ωC. That goes with the length:
        // at a phase of its own it would make a short line an amplifier
        let reactive = match self.spread {
            Spread::Known => (-(k.z0 * (k.conductor - k.dielectric) / (of(DB_PER_NEPER) * beta)))
                .step("reactance of the line's impedance, ohm"),
            Spread::Free => of(0.0),
        };
        let zc = c(k.z0, reactive);
        let g = ((zc - C::real(of(R0))) / (zc + C::real(of(R0)))).step("g real", "g imaginary");
        let kappa = r.coherence(self.phase, round, self.spread);
        out.extend([
            into_impedance(g),
            El::Shift {
                power: share(matched),
                round: (C::turn(one, -round) * kappa).step("E real", "E imaginary"),
                coherence: kappa.norm(),
                way: if cx.phased {
                    C::turn(one, -way)
                } else {
                    C::one()
                },
            },
            out_of_impedance(g),
        ]);
        if let Some(added) = &self.added {
            out.push(loss(r.get(added)));
        }
    }
}

impl Loss {
    fn db<R: Reader>(&self, r: &R) -> R::T {
        match self {
            Loss::Stated(l) => r.get(l).step("loss, dB"),
            Loss::Coupling(k) => {
                let left = (R::T::of(1.0) - share(r.get(k))).step("share left in the main line");
                left.loss_of_ratio().step("loss of the main line, dB")
            }
            Loss::Arm(j, ways) => j
                .matched_loss(*ways as usize, 0, r)
                .step("loss to one arm, dB"),
        }
    }
}

/// Loss by reflection of a short line of impedance `z` between ends of 50 ohm, dB:
/// `1/|S21|² = 1 + (z/50 − 50/z)²/4 · sin²βl`.
///
/// Source: transmission of a section of line between equal ends, Pozar 4e, ch. 2 (section from
/// memory).
fn bump_loss<R: Reader>(cx: &Context, r: &R, z: &Input, length: &Input) -> R::T {
    let of = R::T::of;
    let z = r.get(z) / of(R0);
    let step = (z - of(1.0) / z).step("step of impedance");
    let turn = R::T::named("2π f/c, rad/m", core::f64::consts::TAU * cx.hz / C0);
    let (sin, _) = (turn * r.get(length)).step("phase, rad").sin_cos();
    let passed = of(1.0) / (of(1.0) + of(0.25) * step * step * sin * sin);
    passed.loss_of_ratio().step("loss by reflection, dB")
}

/// Phases that pairs of connectors need.
#[must_use]
pub fn phases_of_pairs(count: u32, bump: bool, swr: bool) -> u32 {
    if swr {
        3 * count
    } else if bump {
        count.saturating_sub(1)
    } else {
        0
    }
}

impl Part {
    /// Appends the part's elementary networks.
    pub fn build<R: Reader>(&self, cx: &Context, r: &R, out: &mut Vec<El<R::T>>) {
        let of = R::T::of;
        let one = of(1.0);
        match self {
            Part::Line(l) => l.build(cx, r, out),
            Part::Device { loss, swr, phase } => {
                let t = share(loss.db(r));
                match swr {
                    Some(s) => reflecting(r, reflection(r, s), t, *phase, out),
                    None => {
                        let k = r.coherence(*phase, of(0.0), Spread::Free);
                        out.push(El::Shift {
                            power: t,
                            round: k,
                            coherence: k.norm(),
                            way: C::one(),
                        });
                    }
                }
            }
            Part::Pairs { .. } => self.pairs(cx, r, out),
            Part::OneWay { .. } => self.one_way(r, out),
            Part::Balun { .. } => self.balun(r, out),
            Part::Tuner { loss } => out.push(El::Tuner {
                power: share(r.get(loss).step("loss, dB")),
            }),
            Part::Measured { .. } => self.measured(r, out),
            Part::Several(parts) => parts.iter().for_each(|p| p.build(cx, r, out)),
            Part::Source(load) => {
                let (g, phase) = load.reflection(r);
                // lossless: |S21|² = 1 − |Γ|², S11 = −Γ*
                let t = one - g.norm();
                out.push(El::Two {
                    s11: c(-g.re, g.im),
                    back: C::real(t),
                    s21: C::real(t.sqrt()),
                    s22: g,
                });
                if let Some(p) = phase {
                    out.push(free(r, p));
                }
            }
        }
    }

    /// Mated pairs of connectors.
    fn pairs<R: Reader>(&self, cx: &Context, r: &R, out: &mut Vec<El<R::T>>) {
        let Part::Pairs {
            count,
            loss: k,
            root,
            bump,
            swr,
            phase,
        } = self
        else {
            return;
        };
        let of = R::T::of;
        let one = R::T::of(1.0);
        let one_pair = if *root {
            (r.get(k) * R::T::named("f in GHz", cx.hz * 1e-9).sqrt())
                .step("heat loss of a pair, dB")
        } else {
            r.get(k).step("heat loss of a pair, dB")
        };
        if let Some(s) = swr {
            let g = reflection(r, s);
            // what a reflecting pair passes is its loss, never more than is left
            let t = share(one_pair) * (one - g * g);
            for i in 0..*count {
                reflecting(r, g, t, *phase + 3 * i, out);
            }
            return;
        }
        let Some((z, l)) = bump else {
            out.push(loss(one_pair * of(f64::from(*count))));
            return;
        };
        let z = r.get(z);
        let g = C::real(((z - of(R0)) / (z + of(R0))).step("step of impedance"));
        let turn = R::T::named("2π f/c, rad/m", core::f64::consts::TAU * cx.hz / C0);
        let way = turn * r.get(l);
        let round = (of(2.0) * way).step("phase there and back, rad");
        let turn = C::turn(one, -round);
        for i in 0..*count {
            // several pairs are at unknown distances from each other
            if i > 0 {
                out.push(free(r, *phase + i - 1));
            }
            out.extend([
                into_impedance(g),
                El::Shift {
                    power: one,
                    round: turn,
                    coherence: one,
                    way: if cx.phased {
                        C::turn(one, -way)
                    } else {
                        C::one()
                    },
                },
                out_of_impedance(g),
                loss(one_pair),
            ]);
        }
    }

    /// An isolator, a circulator or an amplifier.
    fn one_way<R: Reader>(&self, r: &R, out: &mut Vec<El<R::T>>) {
        let Part::OneWay {
            forward,
            backward,
            swr,
            turned,
            phase,
        } = self
        else {
            return;
        };
        let of = R::T::of;
        let f = share(r.get(forward).step("loss forward, dB")).sqrt();
        let b = backward
            .as_ref()
            .map_or(of(0.0), |b| share(r.get(b).step("isolation, dB")).sqrt());
        let g = swr.as_ref().map_or(of(0.0), |s| reflection(r, s));
        let (f, b) = if *turned { (b, f) } else { (f, b) };
        if swr.is_none() && backward.is_none() && !*turned {
            out.push(two(of(0.0), of(0.0), f, C::zero()));
        } else {
            out.extend([
                free(r, *phase),
                two(g, b, f, C::real(-g)),
                free(r, *phase + 1),
            ]);
        }
    }

    /// A balun.
    fn balun<R: Reader>(&self, r: &R, out: &mut Vec<El<R::T>>) {
        let Part::Balun {
            loss,
            ratio,
            sits,
            turned,
            phase,
        } = self
        else {
            return;
        };
        let of = R::T::of;
        let one = R::T::of(1.0);
        let db = r.get(loss).step("loss, dB");
        let across = r.get(sits);
        // normalised to 50 ohm: 20 log10(1 + r/2) is the loss of a series resistor r, and
        // of a conductance across the line
        let lumped = |db: R::T| {
            let grow = (db * of(0.5 * NEPER_OF_POWER)).exp_e();
            of(2.0) * (grow - one)
        };
        let in_series = lumped(db * (one - across)).step("resistance in series, over 50 ohm");
        let in_parallel = lumped(db * across).step("conductance across, times 50 ohm");
        let two_of = |s11: R::T, s21: R::T| two(s11, s21, s21, C::real(s11));
        let d = of(2.0) + in_series;
        let e = of(2.0) + in_parallel;
        let n = r.get(ratio);
        let g = ((one - n) / (one + n)).step("reflection of the ratio");
        let t = (one - g * g).sqrt();
        let shunt = two_of(-(in_parallel / e), of(2.0) / e);
        let series = two_of(in_series / d, of(2.0) / d);
        if *turned {
            out.extend([two(-g, t, t, C::real(g)), series, shunt, free(r, *phase)]);
        } else {
            out.extend([free(r, *phase), shunt, series, two(g, t, t, C::real(-g))]);
        }
    }

    /// A two-port of a file.
    fn measured<R: Reader>(&self, r: &R, out: &mut Vec<El<R::T>>) {
        let Part::Measured {
            s,
            phase_known,
            error,
            phase,
        } = self
        else {
            return;
        };
        let of = R::T::of;
        let f = share(r.get(error)).sqrt();
        let [s11, s12, s21, s22] = *s;
        if *phase_known {
            out.push(El::Two {
                s11: C::of(s11),
                back: C::of(s12 * s21).scale(f * f),
                s21: C::of(s21).scale(f),
                s22: C::of(s22),
            });
            return;
        }
        let size = |z: Complex64| libm::hypot(z.re, z.im);
        let (a, b) = (size(s11), size(s22));
        let (g, t) = (of(libm::sqrt(a * b)), of(size(s12) * size(s21)));
        let inner = lean(r, *phase + 2, g, t);
        let ratio = if a * b > 0.0 { libm::sqrt(b / a) } else { 0.0 };
        let s22 = if ratio > 0.0 {
            inner.scale(of(ratio))
        } else {
            C::real(of(-b))
        };
        out.extend([
            free(r, *phase),
            two(of(a), of(size(s12)) * f, of(size(s21)) * f, s22),
            free(r, *phase + 1),
        ]);
    }

    /// Loss between matched ends, dB: of a line that between ends of its own impedance.
    pub fn matched_loss<R: Reader>(&self, cx: &Context, r: &R) -> R::T {
        let of = R::T::of;
        match self {
            Part::Line(l) => {
                let k = l.constants(cx, r);
                let matched = l.matched_loss(&k, r);
                l.added.as_ref().map_or(matched, |a| {
                    (matched + r.get(a)).step("matched loss and added loss, dB")
                })
            }
            Part::Device { loss, .. } => loss.db(r),
            Part::Balun { loss, .. } | Part::Tuner { loss } => r.get(loss),
            Part::OneWay {
                forward,
                backward,
                turned,
                ..
            } => match (turned, backward) {
                (false, _) => r.get(forward),
                (true, Some(b)) => r.get(b),
                (true, None) => of(f64::INFINITY),
            },
            Part::Pairs {
                count,
                loss,
                root,
                bump,
                swr,
                ..
            } => {
                // how the reflections of several meet is not known: each by itself
                let count = R::T::named("pairs", f64::from(*count));
                let mut one = r.get(loss);
                if *root {
                    one = one * R::T::named("f in GHz", cx.hz * 1e-9).sqrt();
                }
                one = one.step("heat loss of a pair, dB");
                let reflected = match (swr, bump) {
                    (Some(s), _) => {
                        let g = reflection(r, s);
                        let left = of(1.0) - g * g;
                        Some(left.loss_of_ratio().step("loss by reflection, dB"))
                    }
                    (None, Some((z, l))) => Some(bump_loss(cx, r, z, l)),
                    (None, None) => None,
                };
                if let Some(x) = reflected {
                    one = (one + x).step("loss of a pair, dB");
                }
                (one * count).step("loss of the pairs, dB")
            }
            Part::Measured { .. } => self.insertion_loss(cx, r),
            Part::Several(parts) => {
                let mut sum = of(0.0);
                for p in parts {
                    sum = sum + p.matched_loss(cx, r);
                }
                sum
            }
            Part::Source(_) => of(0.0),
        }
    }

    /// Loss between ends of 50 ohm, dB.
    fn insertion_loss<R: Reader>(&self, cx: &Context, r: &R) -> R::T {
        let mut t = Tail::default();
        self.build(cx, r, &mut t.els);
        t.els.push(El::Node);
        let s = t.solve(false);
        let last = s.nodes.last().map_or(R::T::of(1.0), |n| n.forward);
        last.at_least(1e-300).loss_of_ratio()
    }
}

impl Load {
    /// The free phase its reflection is turned by.
    fn open_phase(&self) -> Option<u32> {
        match self {
            Load::Swr { phase, .. }
            | Load::Gamma {
                phase_known: false,
                phase,
                ..
            } => Some(*phase),
            _ => None,
        }
    }

    /// Reflection coefficient, and the free phase it is turned by.
    pub fn reflection<R: Reader>(&self, r: &R) -> (C<R::T>, Option<u32>) {
        match self {
            Load::Matched => (C::zero(), None),
            Load::Swr { swr, phase } => (C::real(reflection(r, swr)), Some(*phase)),
            Load::Impedance {
                resistance,
                reactance,
            } => {
                let z = c(r.get(resistance), r.get(reactance));
                let r0 = C::real(R::T::of(R0));
                (((z - r0) / (z + r0)).step("Γ real", "Γ imaginary"), None)
            }
            Load::Gamma {
                gamma,
                phase_known,
                phase,
            } => {
                if *phase_known {
                    (C::of(*gamma), None)
                } else {
                    let size = libm::hypot(gamma.re, gamma.im);
                    (C::real(R::T::of(size)), Some(*phase))
                }
            }
        }
    }
}

impl Gain {
    /// Gain less what the efficiency takes, dBi.
    pub fn decibels<R: Reader>(&self, r: &R) -> R::T {
        let g = r.get(&self.dbi);
        self.efficiency.as_ref().map_or(g, |e| {
            (g - r.get(e).at_least(1e-12).loss_of_ratio()).step("gain with the efficiency, dBi")
        })
    }

    pub(super) fn nepers<R: Reader>(&self, r: &R) -> R::T {
        let mut g = r.get(&self.dbi) * R::T::of(NEPER_OF_POWER);
        if let Some(e) = &self.efficiency {
            g = g + r.get(e).at_least(1e-12).ln_e();
        }
        g
    }
}

impl Stretch {
    /// The elements of an end without branches: the unknown distance of its reflection.
    pub(super) fn end_elements<R: Reader>(&self, r: &R, out: &mut Vec<El<R::T>>) {
        if let End::Load(load, _) = &self.end
            && let Some(p) = load.open_phase()
        {
            out.push(free(r, p));
        }
    }

    /// Builds the stretch over the reader's scalar.
    pub fn build<R: Reader>(&self, cx: &Context, r: &R) -> Tail<R::T> {
        let of = R::T::of;
        let one = of(1.0);
        let mut t = Tail::default();
        t.els.reserve(4 * self.parts.len() + 4);
        for p in &self.parts {
            p.build(cx, r, &mut t.els);
            t.els.push(El::Node);
        }
        match &self.end {
            End::Load(load, gain) => {
                let (g, _) = load.reflection(r);
                self.end_elements(r, &mut t.els);
                t.load = g;
                if let Some(gain) = gain {
                    t.gain = Some(gain.nepers(r));
                    t.realized = gain.realized;
                }
            }
            End::Branches {
                junction,
                swr,
                arms,
            } => {
                if let Some((s, phase)) = swr {
                    let g = reflection(r, s);
                    reflecting(r, g, one - g * g, *phase, &mut t.els);
                }
                t.ports = junction.ports(arms.len(), r);
                t.arms = arms
                    .iter()
                    .map(|a| {
                        let mut arm = a.build(cx, r);
                        // the boundary where the branch begins
                        arm.els.insert(0, El::Node);
                        arm
                    })
                    .collect();
            }
        }
        t
    }
}

impl Junction {
    /// Scattering matrix, port 0 towards the source.
    pub fn ports<R: Reader>(&self, arms: usize, r: &R) -> Vec<Vec<C<R::T>>> {
        let of = R::T::of;
        #[allow(clippy::cast_precision_loss, reason = "a few arms")]
        let n = arms as f64;
        match self {
            Junction::Divider {
                shares,
                excess,
                total,
            } => {
                let mut s = vec![vec![C::zero(); arms + 1]; arms + 1];
                let left = share(r.get(excess));
                let mut stated: Vec<R::T> = shares.iter().map(|s| r.get(s)).collect();
                let all: f64 = shares.iter().map(Input::nominal).sum();
                let exact: f64 = shares
                    .iter()
                    .filter(|s| !s.is_uncertain())
                    .map(Input::nominal)
                    .sum();
                if all > 1.0 - 1e-9 && exact > 0.0 {
                    // what one branch gets more than stated the branches of exact shares get less
                    let mut over = of(-1.0);
                    for x in &stated {
                        over = over + *x;
                    }
                    for (x, s) in stated.iter_mut().zip(shares) {
                        if !s.is_uncertain() {
                            *x = *x - over * of(s.nominal() / exact);
                        }
                    }
                }
                let mut sum = of(0.0);
                for x in &stated {
                    sum = sum + *x;
                }
                for i in 0..arms {
                    let part = match (total, stated.get(i)) {
                        (Some(t), _) => share(r.get(t)),
                        (None, Some(x)) => left * *x / sum.at_least(1.0),
                        (None, None) => left * of(1.0 / n),
                    }
                    .step("share of an arm");
                    let a = C::real(part.at_least(0.0).sqrt());
                    s[0][i + 1] = a;
                    s[i + 1][0] = a;
                }
                s
            }
            Junction::Tee { excess } => {
                let all = arms + 1;
                let a = share(r.get(excess)).sqrt();
                (0..all)
                    .map(|i| {
                        (0..all)
                            .map(|j| {
                                let x = 2.0 / (n + 1.0) - if i == j { 1.0 } else { 0.0 };
                                C::real(of(x) * a)
                            })
                            .collect()
                    })
                    .collect()
            }
        }
    }

    /// Loss to an arm between matched ends, dB.
    pub fn matched_loss<R: Reader>(&self, arms: usize, arm: usize, r: &R) -> R::T {
        #[allow(clippy::cast_precision_loss, reason = "a few arms")]
        let n = arms as f64;
        if let Junction::Divider {
            shares,
            excess,
            total,
        } = self
        {
            if let Some(total) = total {
                return r.get(total).step("loss to one arm, dB");
            }
            if shares.is_empty() {
                let split = -R::T::named("arms", n).loss_of_ratio();
                return (split + r.get(excess)).step("loss to one arm, dB");
            }
        }
        let s = self.ports(arms, r);
        let t = s
            .first()
            .and_then(|row| row.get(arm + 1))
            .map_or(R::T::of(1.0), |x| x.norm());
        t.at_least(1e-300)
            .loss_of_ratio()
            .step("loss to one arm, dB")
    }
}
