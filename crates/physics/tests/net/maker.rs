//! Random chains and trees from the whole part table.

use downlead_physics::net::input::{Input, Inputs, Shape, Spread};
use downlead_physics::net::part::{
    Coax, End, Gain, Junction, Length, Line, Load, Loss, Part, Rate, Stretch, Wires,
    phases_of_pairs,
};
use downlead_physics::net::{Fields, Network};
use num_complex::Complex64;

/// Pseudo-random numbers: splitmix64 (Steele, Lea, Flood 2014; constants from memory).
#[derive(Clone)]
pub(crate) struct Rng(pub(crate) u64);

impl Rng {
    pub(crate) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }
    /// 0 to 1.
    pub(crate) fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }
    pub(crate) fn below(&mut self, n: usize) -> usize {
        ((self.unit() * n as f64) as usize).min(n - 1)
    }
    pub(crate) fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }
    pub(crate) fn chance(&mut self, p: f64) -> bool {
        self.unit() < p
    }
    pub(crate) fn normal(&mut self) -> f64 {
        let r = libm::sqrt(-2.0 * libm::log(1.0 - self.unit()));
        r * libm::cos(std::f64::consts::TAU * self.unit())
    }
}

/// A network with what its draws may not leave.
pub(crate) struct Chain {
    pub(crate) network: Network,
    /// Bounds of the figure of each cause.
    pub(crate) bounds: Vec<(f64, f64)>,
    /// Its description, for messages.
    pub(crate) said: String,
}

/// Makes parts and keeps their inputs.
pub(crate) struct Maker {
    pub(crate) inputs: Inputs,
    pub(crate) bounds: Vec<(f64, f64)>,
    pub(crate) said: String,
    /// Factor on all uncertainties.
    pub(crate) shrink: f64,
}

impl Default for Maker {
    fn default() -> Self {
        Maker {
            inputs: Inputs::default(),
            bounds: Vec::new(),
            said: String::new(),
            shrink: 1.0,
        }
    }
}

pub(crate) fn gain() -> Gain {
    Gain {
        dbi: Input::exact("gain, dBi", 0.0),
        efficiency: None,
        realized: false,
    }
}

impl Maker {
    /// A figure of its own cause; exact where `u` is 0.
    pub(crate) fn of(
        &mut self,
        name: &'static str,
        value: f64,
        u: f64,
        shape: Shape,
        (low, high): (f64, f64),
    ) -> Input {
        let cause = self.inputs.cause(shape);
        self.bounds.push((low, high));
        self.inputs
            .input(name, value, u * self.shrink, cause)
            .within(low, high)
    }

    /// A figure with a rectangular half-width, never negative.
    pub(crate) fn pm(&mut self, name: &'static str, value: f64, half: f64) -> Input {
        let u = half / libm::sqrt(3.0);
        self.of(name, value, u, Shape::Rectangular, (0.0, f64::INFINITY))
    }

    pub(crate) fn line(&mut self, rng: &mut Rng, hz: f64) -> Part {
        let z = rng.one_of(&[50.0, 50.0, 50.0, 75.0, 93.0, 300.0, 450.0]);
        let wires = z > 200.0;
        let metres = libm::exp(rng.between(libm::log(0.3), libm::log(30.0)));
        let maybe = |rng: &mut Rng, p: f64, most: f64| {
            if rng.chance(p) {
                rng.between(0.0, most)
            } else {
                0.0
            }
        };
        let velocity_pm = maybe(rng, 0.5, 0.02);
        let impedance_pm = maybe(rng, 0.3, 0.04) * z;
        let own_z = rng.chance(0.8);
        let rate = match rng.below(5) {
            0 if !wires => Rate::Split {
                conductor: Input::exact("conductor loss, dB/m", rng.between(0.01, 0.1)),
                dielectric: Input::exact("dielectric loss, dB/m", rng.between(0.0, 0.01)),
            },
            1 if !wires => {
                let outer = rng.between(0.003, 0.02);
                let e: f64 = rng.between(1.3, 2.3);
                let ratio = libm::exp(z * libm::sqrt(e) / 59.96);
                let pm = maybe(rng, 0.5, 0.02);
                Rate::Coax(Box::new(Coax {
                    inner: self.pm("inner, m", outer / ratio, pm * outer / ratio),
                    outer: self.pm("outer, m", outer, pm * outer),
                    permittivity: self.pm("permittivity", e, 0.5 * pm * e),
                    loss_tangent: self.pm("loss tangent", 2e-4, 1e-4 * rng.unit()),
                    strand_diameter: Input::exact("strand diameter", 1.0),
                    strand: self.pm("strand", 1.2, 0.1 * rng.unit()),
                    braid: self.pm("braid", 1.9, 0.3 * rng.unit()),
                    inner_resistivity: Input::exact("resistivity", 1.72e-8),
                    outer_resistivity: self.pm("resistivity", 1.8e-8, 2e-9 * rng.unit()),
                }))
            }
            2 if wires => {
                let e = rng.between(1.0, 1.2);
                let d = rng.between(0.001, 0.003);
                let s = d * libm::cosh(z * libm::sqrt(e) / 119.92);
                let pm = maybe(rng, 0.5, 0.03);
                Rate::Wires(Box::new(Wires {
                    diameter: self.pm("wire, m", d, pm * d),
                    spacing: self.pm("spacing, m", s, pm * s),
                    permittivity: self.pm("permittivity", e, 0.02 * rng.unit()),
                    resistivity: Input::exact("resistivity", 1.72e-8),
                }))
            }
            _ => {
                let (k1, k2) = if wires {
                    (rng.between(0.05, 0.3), 0.0)
                } else {
                    (rng.between(0.2, 1.5), rng.between(0.0005, 0.008))
                };
                let pm = maybe(rng, 0.2, 0.1);
                Rate::TwoTerm {
                    k1: self.pm("k1", k1 / 100.0, pm * k1 / 100.0),
                    k2: self.pm("k2", k2 / 100.0, pm * k2 / 100.0),
                }
            }
        };
        let dimensions = matches!(rate, Rate::Coax(_) | Rate::Wires(_));
        let scale = match rng.below(3) {
            0 => Input::exact("factor on the loss", 1.0),
            k => {
                let shape = [Shape::Normal, Shape::Rectangular][k - 1];
                let u = rng.between(0.01, 0.15);
                self.of("factor on the loss", 1.0, u, shape, (0.0, f64::INFINITY))
            }
        };
        let free = rng.chance(0.1);
        let spread = if free { Spread::Free } else { Spread::Known };
        let v = rng.between(0.62, 0.95);
        let length = if rng.chance(0.1) {
            Length::Waves {
                count: self.pm(
                    "length, wavelengths",
                    metres * hz / 3e8 / v,
                    maybe(rng, 0.5, 0.02),
                ),
                at_hz: hz * rng.between(0.9, 1.1),
            }
        } else {
            let pm = maybe(rng, 0.5, 0.04) * metres;
            Length::Metres(self.pm("length, m", metres, pm))
        };
        let temperature_pm = maybe(rng, 0.3, 25.0);
        let celsius = self.of(
            "temperature, °C",
            rng.between(-10.0, 30.0),
            temperature_pm / libm::sqrt(3.0),
            Shape::Rectangular,
            (f64::NEG_INFINITY, f64::INFINITY),
        );
        let added = rng.chance(0.15).then(|| {
            let db = rng.between(0.1, 1.0);
            let pm = db * rng.unit();
            self.pm("added loss, dB", db, pm)
        });
        let swr = rng.chance(0.1).then(|| {
            let s = self.swr(rng, 1.3);
            (s, self.inputs.phase(3))
        });
        self.said += &format!("line {z} ohm {metres:.2} m; ");
        Part::Line(Box::new(Line {
            rate,
            scale,
            z0: (!dimensions || own_z).then(|| self.pm("impedance, ohm", z, impedance_pm)),
            velocity: (!dimensions || own_z).then(|| self.pm("velocity factor", v, velocity_pm)),
            celsius,
            reference_c: 20.0,
            length,
            added,
            spread,
            phase: self.inputs.line_phase(spread),
            swr,
        }))
    }

    /// An SWR from 1 to `most`, perhaps with a ±.
    pub(crate) fn swr(&mut self, rng: &mut Rng, most: f64) -> Input {
        if rng.chance(0.2) {
            // the same range as a return loss
            let least = -20.0 * libm::log10((most - 1.0) / (most + 1.0));
            let (db, pm) = (rng.between(least, least + 12.0), rng.between(0.0, 0.25));
            let u = pm * db / libm::sqrt(3.0);
            let bounds = (0.0, f64::INFINITY);
            return self
                .of("return loss, dB", db, u, Shape::Rectangular, bounds)
                .of_return_loss();
        }
        let s = rng.between(1.0, most);
        let pm = if rng.chance(0.5) {
            rng.between(0.0, 0.5) * (s - 1.0)
        } else {
            0.0
        };
        let u = pm / libm::sqrt(3.0);
        self.of("SWR", s, u, Shape::Rectangular, (1.0, f64::INFINITY))
    }

    /// A loss and the SWR of a device that is passive anywhere within their ±.
    fn lossy(&mut self, rng: &mut Rng, reflects: bool) -> (Input, Option<Input>, f64) {
        let db = rng.between(0.1, 3.0);
        let half = if rng.chance(0.6) {
            rng.between(0.0, 0.6) * db
        } else {
            0.0
        };
        let loss = self.pm("loss, dB", db, half);
        let swr = reflects.then(|| {
            let most = libm::sqrt(1.0 - libm::pow(10.0, -(db - half) / 10.0));
            let g = rng.between(0.02, 0.25).min(0.9 * most);
            let s = (1.0 + g) / (1.0 - g);
            let half = if rng.chance(0.5) {
                rng.between(0.0, 0.08) * (s - 1.0)
            } else {
                0.0
            };
            let u = half / libm::sqrt(3.0);
            self.of("SWR", s, u, Shape::Rectangular, (1.0, f64::INFINITY))
        });
        (loss, swr, db)
    }

    pub(crate) fn part(&mut self, rng: &mut Rng, hz: f64) -> Part {
        match rng.below(14) {
            0..=4 => self.line(rng, hz),
            5 | 6 => {
                let reflects = rng.chance(0.8);
                let (loss, swr, db) = self.lossy(rng, reflects);
                self.said += &format!("device {db:.2} dB; ");
                Part::Device {
                    loss: Loss::Stated(loss),
                    swr,
                    phase: self.inputs.phase(3),
                }
            }
            7 => {
                let db = rng.between(6.0, 20.0);
                let pm = rng.between(0.0, 0.1) * db;
                self.said += &format!("coupler {db:.1} dB; ");
                Part::Device {
                    loss: Loss::Coupling(self.pm("coupling, dB", db, pm)),
                    swr: None,
                    phase: self.inputs.phase(1),
                }
            }
            8 => {
                let ways = 2 + rng.below(3) as u32;
                self.said += &format!("one arm of {ways}; ");
                let pm = 0.2 * rng.unit();
                let junction = Junction::Divider {
                    shares: Vec::new(),
                    excess: self.pm("excess loss, dB", 0.2, pm),
                    total: None,
                };
                Part::Device {
                    loss: Loss::Arm(Box::new(junction), ways),
                    swr: Some(self.swr(rng, 1.3)),
                    phase: self.inputs.phase(3),
                }
            }
            9 => {
                let count = 1 + rng.below(4) as u32;
                let bump = rng.chance(0.5);
                let swr = !bump && rng.chance(0.3);
                let phase = self.inputs.phase(phases_of_pairs(count, bump, swr));
                self.said += &format!("{count} pairs; ");
                let pm = 0.04 * rng.unit();
                Part::Pairs {
                    count,
                    loss: self.pm("loss of a pair", 0.05, pm),
                    root: rng.chance(0.5),
                    bump: bump.then(|| {
                        let (a, b) = (5.0 * rng.unit(), 0.01 * rng.unit());
                        (
                            self.pm("bump, ohm", 33.0, a),
                            self.pm("length of the bump, m", 0.049, b),
                        )
                    }),
                    swr: swr.then(|| self.swr(rng, 1.1)),
                    phase,
                }
            }
            10 => {
                let turned = rng.chance(0.3);
                let amplifier = !turned && rng.chance(0.2);
                let isolation = rng.between(10.0, 35.0);
                let (a, b) = (0.15 * rng.unit(), 3.0 * rng.unit());
                self.said += if amplifier {
                    "amplifier; "
                } else if turned {
                    "isolator turned; "
                } else {
                    "isolator; "
                };
                let forward = if amplifier {
                    let u = 0.5 * rng.unit();
                    let bounds = (f64::NEG_INFINITY, f64::INFINITY);
                    self.of("loss forward, dB", -10.0, u, Shape::Normal, bounds)
                } else {
                    self.pm("loss forward, dB", 0.5, a)
                };
                let backward = (turned || (!amplifier && rng.chance(0.8)))
                    .then(|| self.pm("isolation, dB", isolation, b));
                Part::OneWay {
                    forward,
                    backward,
                    swr: rng.chance(0.5).then(|| self.swr(rng, 1.15)),
                    turned,
                    phase: self.inputs.phase(2),
                }
            }
            11 => {
                let ratio = rng.one_of(&[0.25, 1.0, 4.0, 9.0]);
                let pm = 0.1 * rng.unit();
                self.said += &format!("balun {ratio}; ");
                Part::Balun {
                    loss: self.pm("loss, dB", 0.15, pm),
                    ratio: Input::exact("ratio", ratio),
                    sits: self.of(
                        "share across",
                        0.5,
                        0.5 / libm::sqrt(3.0),
                        Shape::Rectangular,
                        (0.0, 1.0),
                    ),
                    turned: rng.chance(0.3),
                    phase: self.inputs.phase(1),
                }
            }
            _ => {
                let phase_known = rng.chance(0.5);
                self.said += if phase_known {
                    "file; "
                } else {
                    "file without phases; "
                };
                let s = passive(rng);
                let u = 0.1 * rng.unit();
                // the least loss of the file is 0.3 dB, its error stays below
                let error = self.of(
                    "error of the file, dB",
                    0.0,
                    u,
                    Shape::Rectangular,
                    (-0.2, 0.2),
                );
                Part::Measured {
                    s,
                    phase_known,
                    error,
                    phase: if phase_known { 0 } else { self.inputs.phase(3) },
                }
            }
        }
    }

    pub(crate) fn load(&mut self, rng: &mut Rng) -> Load {
        match rng.below(8) {
            0 => Load::Matched,
            1..=3 => {
                self.said += "SWR";
                Load::Swr {
                    swr: self.swr(rng, 4.0),
                    phase: self.inputs.phase(1),
                }
            }
            4 | 5 => {
                let r = rng.between(15.0, 200.0);
                let pm = rng.between(0.0, 0.3) * r;
                self.said += "ohm";
                Load::Impedance {
                    resistance: self.pm("resistance, ohm", r, pm),
                    reactance: {
                        let (x, u) = (rng.between(-80.0, 80.0), 15.0 * rng.unit());
                        let bounds = (f64::NEG_INFINITY, f64::INFINITY);
                        self.of("reactance, ohm", x, u, Shape::Normal, bounds)
                    },
                }
            }
            _ => {
                let gamma = polar(rng.between(0.0, 0.6), rng.between(-3.1, 3.1));
                let phase_known = rng.chance(0.5);
                self.said += "file";
                Load::Gamma {
                    gamma,
                    phase_known,
                    phase: if phase_known { 0 } else { self.inputs.phase(1) },
                }
            }
        }
    }

    fn gain(&mut self, rng: &mut Rng) -> Gain {
        let u = if rng.chance(0.3) {
            0.3 * rng.unit()
        } else {
            0.0
        };
        let bounds = (f64::NEG_INFINITY, f64::INFINITY);
        Gain {
            dbi: self.of(
                "gain, dBi",
                rng.between(0.0, 9.0),
                u,
                Shape::Rectangular,
                bounds,
            ),
            efficiency: rng.chance(0.2).then(|| {
                let u = 0.05 * rng.unit();
                self.of("efficiency", 0.85, u, Shape::Rectangular, (1e-6, 1.0))
            }),
            realized: rng.chance(0.1),
        }
    }

    /// Parts and an end; `depth` junctions at most.
    pub(crate) fn stretch(&mut self, rng: &mut Rng, hz: f64, most: usize, depth: usize) -> Stretch {
        let parts = (0..rng.below(most + 1))
            .map(|_| self.part(rng, hz))
            .collect();
        let end = if depth > 0 {
            let n = 2 + rng.below(2);
            let excess_pm = 0.2 * rng.unit();
            let excess = self.pm("excess loss, dB", 0.25, excess_pm);
            let junction = match rng.below(4) {
                0 => {
                    self.said += "tee (";
                    Junction::Tee { excess }
                }
                1 => {
                    self.said += "unequal divider (";
                    let shares = (0..n)
                        .map(|_| {
                            let (x, pm) = (rng.between(0.1, 1.0) / n as f64, 0.02 * rng.unit());
                            self.pm("share", x, pm)
                        })
                        .collect();
                    Junction::Divider {
                        shares,
                        excess,
                        total: None,
                    }
                }
                2 => {
                    self.said += "divider by loss (";
                    let pm = 0.3 * rng.unit();
                    Junction::Divider {
                        shares: Vec::new(),
                        excess,
                        total: Some(self.pm("total, dB", 10.0 * libm::log10(n as f64) + 0.4, pm)),
                    }
                }
                _ => {
                    self.said += "divider (";
                    Junction::Divider {
                        shares: Vec::new(),
                        excess,
                        total: None,
                    }
                }
            };
            let swr = rng.chance(0.3).then(|| {
                let s = self.swr(rng, 1.3);
                (s, self.inputs.phase(3))
            });
            let arms = (0..n)
                .map(|k| {
                    let deeper = if k == 0 { depth - 1 } else { 0 };
                    let s = self.stretch(rng, hz, 2, deeper);
                    self.said += " | ";
                    s
                })
                .collect();
            self.said += ")";
            End::Branches {
                junction,
                swr,
                arms,
            }
        } else {
            let load = self.load(rng);
            End::Load(load, Some(self.gain(rng)))
        };
        Stretch { parts, end }
    }
}

/// The same bits on every platform.
fn polar(size: f64, angle: f64) -> Complex64 {
    let (sin, cos) = libm::sincos(angle);
    Complex64::new(size * cos, size * sin)
}

/// Scattering parameters of a lossy two-port: S11, S12, S21, S22; every other one not reciprocal.
fn passive(rng: &mut Rng) -> [Complex64; 4] {
    let turn = |rng: &mut Rng| rng.between(-3.1, 3.1);
    let t = libm::pow(10.0, -rng.between(0.3, 3.0) / 20.0);
    // room for what is reflected: g² + t² + 2 g t ≤ 1 at any phases
    let g = 0.8 * (1.0 - t);
    let (a, b) = (g * rng.unit(), g * rng.unit());
    let back = if rng.chance(0.5) {
        1.0
    } else {
        rng.between(0.01, 0.5)
    };
    let through = turn(rng);
    [
        polar(a, turn(rng)),
        polar(t * back, if back == 1.0 { through } else { turn(rng) }),
        polar(t, through),
        polar(b, turn(rng)),
    ]
}

/// A random chain or tree; every fifth with a tuner, every fourth with branches.
pub(crate) fn random(rng: &mut Rng, k: usize) -> Chain {
    shrunk(rng, k, 1.0)
}

/// The same with all uncertainties multiplied by a factor.
pub(crate) fn shrunk(rng: &mut Rng, k: usize, shrink: f64) -> Chain {
    let hz = rng.one_of(&[1.9e6, 3.6e6, 14.2e6, 50e6, 145.3e6, 434.5e6]);
    let mut m = Maker {
        said: format!("{} MHz: ", hz / 1e6),
        shrink,
        ..Maker::default()
    };
    let depth = if k % 4 == 3 { 1 + rng.below(2) } else { 0 };
    let most = if depth > 0 { 3 } else { 7 };
    let tuner = k % 5 == 4;
    let tuner_loss = tuner.then(|| {
        m.said += "tuner; ";
        let pm = 0.1 * rng.unit();
        m.pm("loss, dB", 0.1, pm)
    });
    // a receive chain begins in the reflection of its antenna
    let source = (!tuner && rng.chance(0.1)).then(|| {
        m.said += "source ";
        Part::Source(m.load(rng))
    });
    let mut feed = m.stretch(rng, hz, most, depth);
    if let Some(s) = source {
        feed.parts.insert(0, s);
    }
    if let Some(loss) = tuner_loss {
        let at = rng.below(2).min(feed.parts.len());
        feed.parts.insert(at, Part::Tuner { loss });
    }
    let u = 0.2 * rng.unit();
    let bounds = (f64::NEG_INFINITY, f64::INFINITY);
    let level = m.of("power, dBW", 17.0, u, Shape::Normal, bounds);
    let fields = rng.one_of(&[Fields::InPhase, Fields::ByLength, Fields::Apart]);
    Chain {
        network: Network {
            hz,
            level,
            inputs: m.inputs,
            feed,
            phased: fields == Fields::ByLength,
            fields,
        },
        bounds: m.bounds,
        said: m.said + &format!(" {fields:?}"),
    }
}
