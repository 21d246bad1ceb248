//! A network at its stated figures: what its numbers are before any uncertainty of a figure counts.

use super::complex::C;
use super::input::Stated;
use super::part::Context;
use super::solve::{Arrived, Tail};
use super::{Fields, Network};

/// A boundary between parts, for 1 W of the source.
#[derive(Clone, Copy, Debug)]
pub struct StatedNode {
    /// Forward power, W.
    pub forward: f64,
    /// Mean reflection coefficient in 50 ohm.
    pub gamma: C<f64>,
    /// Share of the forward power that comes back with a phase of which nothing is known.
    pub stray: f64,
}

impl StatedNode {
    /// Reflected over forward power.
    #[must_use]
    pub fn back(&self) -> f64 {
        self.gamma.norm() + self.stray
    }

    /// Net power, W.
    #[must_use]
    pub fn net(&self) -> f64 {
        self.forward * (1.0 - self.back())
    }
}

/// A network solved at its stated figures.
#[derive(Clone, Debug)]
pub struct StatedNetwork {
    /// Nodes in the order of [`super::solve::Solved::nodes`].
    pub nodes: Vec<StatedNode>,
    /// Ends in the order of [`super::solve::Solved::ends`].
    pub ends: Vec<Arrived<f64>>,
}

impl Network {
    /// True if phases of one way are followed.
    fn phases(&self) -> bool {
        self.phased && self.fields == Fields::ByLength
    }

    /// The conditions under which its parts are built.
    #[must_use]
    pub fn context(&self) -> Context {
        Context {
            hz: self.hz,
            phased: self.phases(),
        }
    }

    /// Solved at the stated figures; free phases at the mean of their phasor, which is 0.
    #[must_use]
    pub fn stated(&self) -> StatedNetwork {
        let mut tail: Tail<f64> = self.feed.build(&self.context(), &Stated);
        let first = tail.inward();
        let solved = tail.solve(self.phases());
        let mut seen = vec![first];
        tail.reflections(&mut seen);
        let nodes = solved.nodes.iter().zip(seen);
        StatedNetwork {
            nodes: nodes
                .map(|(n, (gamma, stray))| StatedNode {
                    forward: n.forward,
                    gamma,
                    stray,
                })
                .collect(),
            ends: solved.ends,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::element::{El, NEPER_OF_POWER};
    use super::super::input::{Input, Inputs, Spread, Stated};
    use super::super::part::{
        Context, End, Gain, Junction, Length, Line, Load, Loss, Part, Rate, Stretch,
    };
    use super::super::record::{Recording, record};
    use super::*;

    fn exact(name: &'static str, x: f64) -> Input {
        Input::exact(name, x)
    }

    fn line(metres: f64, ohm: f64, inputs: &mut Inputs) -> Part {
        Part::Line(Box::new(Line {
            rate: Rate::TwoTerm {
                k1: exact("k1, dB/m/√MHz", 0.006),
                k2: exact("k2, dB/m/MHz", 0.000_05),
            },
            scale: exact("factor on the loss", 1.0),
            z0: Some(exact("impedance, ohm", ohm)),
            velocity: Some(exact("velocity factor", 0.66)),
            celsius: exact("temperature, °C", 35.0),
            reference_c: 20.0,
            length: Length::Metres(exact("length, m", metres)),
            added: Some(exact("added loss, dB", 0.1)),
            spread: Spread::Known,
            phase: inputs.line_phase(Spread::Known),
            swr: None,
        }))
    }

    fn network() -> Network {
        let mut inputs = Inputs::default();
        let arm = |inputs: &mut Inputs, metres: f64, swr: f64| Stretch {
            parts: vec![line(metres, 75.0, inputs)],
            end: End::Load(
                Load::Swr {
                    swr: exact("SWR", swr),
                    phase: inputs.phase(1),
                },
                Some(Gain {
                    dbi: exact("gain, dBi", 3.0),
                    efficiency: None,
                    realized: false,
                }),
            ),
        };
        let parts = vec![
            Part::Pairs {
                count: 2,
                loss: exact("loss of a pair, dB/√GHz", 0.1),
                root: true,
                bump: Some((
                    exact("impedance of the bump, ohm", 35.0),
                    exact("length of the bump, m", 0.04),
                )),
                swr: None,
                phase: inputs.phase(1),
            },
            line(7.3, 75.0, &mut inputs),
            Part::Device {
                loss: Loss::Stated(exact("loss, dB", 0.7)),
                swr: Some(exact("SWR", 1.4)),
                phase: inputs.phase(3),
            },
            Part::Several(Vec::new()),
        ];
        let arms = vec![arm(&mut inputs, 3.0, 1.8), arm(&mut inputs, 4.1, 2.6)];
        Network {
            hz: 145e6,
            level: exact("power, dBW", 0.0),
            feed: Stretch {
                parts,
                end: End::Branches {
                    junction: Junction::Divider {
                        shares: Vec::new(),
                        excess: exact("excess loss, dB", 0.2),
                        total: None,
                    },
                    swr: None,
                    arms,
                },
            },
            inputs,
            phased: true,
            fields: Fields::ByLength,
        }
    }

    /// The reflection after a part as seen through its networks: share before it, and forward power
    /// passed on.
    fn seen(els: &[El<f64>], mut g: C<f64>, mut v: f64) -> (f64, f64) {
        let mut passed = 1.0;
        for e in els.iter().rev() {
            passed = e.passed(passed, g, v);
            (g, v) = e.seen(g, v);
        }
        (g.norm() + v, passed)
    }

    fn built(part: &Part, cx: &Context) -> Vec<El<f64>> {
        let mut els = Vec::new();
        part.build(cx, &Stated, &mut els);
        els
    }

    /// A part seen for itself, from the reflection after it, gives what the solved network has
    /// before it; on the tape it has the same numbers.
    #[test]
    fn each_part_by_itself_is_what_the_network_has() {
        let n = network();
        let s = n.stated();
        let cx = n.context();
        for (k, part) in n.feed.parts.iter().enumerate() {
            let (before, after) = (s.nodes[k], s.nodes[k + 1]);
            let els = built(part, &cx);
            let (back, passed) = seen(&els, after.gamma, after.stray);
            assert!((back - before.back()).abs() < 1e-14, "{k}");
            assert!((passed * before.forward / after.forward - 1.0).abs() < 1e-13);
            let (taped, steps) = record(|| {
                let mut els = Vec::new();
                part.build(&cx, &Recording, &mut els);
                els.iter()
                    .map(|e| e.map(super::super::record::Rec::value))
                    .collect::<Vec<_>>()
            });
            let (taped_back, taped_passed) = seen(&taped, after.gamma, after.stray);
            assert!((taped_back - back).abs() < 1e-14, "{k}");
            assert!((taped_passed / passed - 1.0).abs() < 1e-13);
            assert_eq!(els.is_empty(), steps.is_empty());
        }
    }

    /// The closed form of a pair's loss, with a bump or an SWR, is that of its networks between
    /// matched ends.
    #[test]
    fn the_loss_of_a_pair_is_that_of_its_networks() {
        for (ohm, metres, hz) in [(35.0, 0.04, 145e6), (90.0, 0.02, 1.3e9), (50.0, 0.04, 1e9)] {
            let part = Part::Pairs {
                count: 1,
                loss: exact("loss of a pair, dB", 0.05),
                root: false,
                bump: Some((
                    exact("impedance of the bump, ohm", ohm),
                    exact("length of the bump, m", metres),
                )),
                swr: None,
                phase: 0,
            };
            let cx = Context { hz, phased: false };
            let (_, passed) = seen(&built(&part, &cx), C::zero(), 0.0);
            let direct = -libm::log(passed) / NEPER_OF_POWER;
            assert!((part.matched_loss(&cx, &Stated) - direct).abs() < 1e-12);
        }
        let part = Part::Pairs {
            count: 1,
            loss: exact("loss of a pair, dB", 0.05),
            root: false,
            bump: None,
            swr: Some(exact("SWR", 1.6)),
            phase: 0,
        };
        let cx = Context {
            hz: 1e9,
            phased: false,
        };
        let (_, passed) = seen(&built(&part, &cx), C::zero(), 0.0);
        let direct = -libm::log(passed) / NEPER_OF_POWER;
        assert!((part.matched_loss(&cx, &Stated) - direct).abs() < 1e-12);
    }

    /// The power at an end, in dB, is a harmonic function of a free phasor: its mean over the
    /// phase is the value at the phasor's mean. Nothing else is uncertain here.
    #[test]
    fn what_arrives_has_the_stated_value_as_mean_over_a_phase() {
        let mut n = network();
        let End::Branches { arms, .. } = n.feed.end else {
            panic!("the network has branches")
        };
        n.feed = arms.into_iter().next().expect("two arms");
        let s = n.stated();
        let last = s.nodes.len() - 1;
        let e = n.evaluate(&[]);
        let mean = e
            .output(super::super::evaluate::Quantity::Net(last))
            .map_or(f64::NAN, |o| o.mean);
        let db = libm::log(s.nodes[last].net()) / NEPER_OF_POWER;
        assert!(db < -0.5 && (mean - db).abs() < 1e-9, "{mean} {db}");
    }
}
