//! The network evaluator against an independent reference: chain matrices in numpy with 100,000
//! random draws (`tests/reference/net.py`), and closed forms.

use downlead_physics::net::evaluate::Quantity;
use downlead_physics::net::input::{Input, Inputs, Shape, Spread};
use downlead_physics::net::part::{
    End, Gain, Junction, Length, Line, Load, Loss, Part, Rate, Stretch,
};
use downlead_physics::net::{Fields, Network};

/// k1 and k2 per 100 m, velocity factor, impedance.
struct Cable(f64, f64, f64, f64);
const RG6: Cable = Cable(0.8679, 0.00428, 0.659, 75.0);
const C75: Cable = Cable(0.64, 0.0043, 0.66, 75.0);
const A50: Cable = Cable(1.42, 0.0046, 0.659, 50.0);
const WINDOW: Cable = Cable(0.1761, 0.0, 0.905, 400.0);
const FLEX: Cable = Cable(1.2, 0.006, 0.66, 50.0);
const MAIN: Cable = Cable(0.4, 0.0016, 0.85, 50.0);

struct Chain {
    inputs: Inputs,
    parts: Vec<Part>,
}

impl Chain {
    fn new() -> Self {
        Chain {
            inputs: Inputs::default(),
            parts: Vec::new(),
        }
    }
    fn pm(&mut self, name: &'static str, value: f64, half: f64) -> Input {
        let cause = self.inputs.cause(Shape::Rectangular);
        self.inputs.input(name, value, half / 3f64.sqrt(), cause)
    }
    fn line_of(&mut self, k: &Cable, length: (f64, f64), dv: f64, loss: f64) -> Part {
        let length = self.pm("length, m", length.0, length.1).within(0.0, 1e9);
        let velocity = self.pm("velocity factor", k.2, dv);
        let cause = self.inputs.cause(Shape::Normal);
        let scale = self
            .inputs
            .input("scale", 1.0, loss, cause)
            .within(0.0, 1e9);
        let phase = self.inputs.line_phase(Spread::Known);
        Part::Line(Box::new(Line {
            rate: Rate::TwoTerm {
                k1: Input::exact("k1", k.0 / 100.0),
                k2: Input::exact("k2", k.1 / 100.0),
            },
            scale,
            z0: Some(Input::exact("impedance", k.3)),
            velocity: Some(velocity),
            celsius: Input::exact("temperature", 20.0),
            reference_c: 20.0,
            length: Length::Metres(length),
            added: None,
            spread: Spread::Known,
            phase,
            swr: None,
        }))
    }
    fn line(mut self, k: &Cable, length: (f64, f64), dv: f64, loss: f64) -> Self {
        let l = self.line_of(k, length, dv, loss);
        self.parts.push(l);
        self
    }
    fn tuner(mut self) -> Self {
        self.parts.push(Part::Tuner {
            loss: Input::exact("loss", 0.0),
        });
        self
    }
    fn device(mut self, db: f64, half: f64, gamma: f64) -> Self {
        let loss = self.pm("loss", db, half).within(0.0, 1e9);
        let phase = self.inputs.phase(3);
        let swr = (gamma > 0.0).then(|| Input::exact("SWR", (1.0 + gamma) / (1.0 - gamma)));
        self.parts.push(Part::Device {
            loss: Loss::Stated(loss),
            swr,
            phase,
        });
        self
    }
    fn end(self, hz: f64, end: End) -> Network {
        Network {
            hz,
            level: Input::exact("power, dBW", 0.0),
            inputs: self.inputs,
            feed: Stretch {
                parts: self.parts,
                end,
            },
            phased: false,
            fields: Fields::InPhase,
        }
    }
    fn ohm(self, hz: f64, r: f64, x: f64) -> Network {
        self.end(
            hz,
            End::Load(
                Load::Impedance {
                    resistance: Input::exact("R", r),
                    reactance: Input::exact("X", x),
                },
                Some(no_gain()),
            ),
        )
    }
    fn swr(mut self, hz: f64, s: f64, half: f64) -> Network {
        let swr = self.pm("SWR", s, half).within(1.0, 1e9);
        let phase = self.inputs.phase(1);
        self.end(hz, End::Load(Load::Swr { swr, phase }, Some(no_gain())))
    }
}

fn no_gain() -> Gain {
    Gain {
        dbi: Input::exact("gain", 0.0),
        efficiency: None,
        realized: false,
    }
}

#[track_caller]
fn check(n: &Network, mean: f64, expanded: f64) {
    let e = n.evaluate(&[]);
    let o = e.output(Quantity::Eirp).expect("radiates");
    assert!(
        (-o.mean - mean).abs() < 0.006,
        "mean {}, wanted {mean}",
        -o.mean
    );
    let u = 2.0 * o.u;
    assert!(
        (u - expanded).abs() < 0.02 * expanded + 0.003,
        "U {u}, wanted {expanded}"
    );
    // and so do random draws of the same network, which know of no derivative
    let d = n.draw(100_000, 3);
    assert!(
        (-d.mean - mean).abs() < 0.006 + 0.005 * expanded,
        "drawn mean {}, wanted {mean}",
        -d.mean
    );
    assert!(
        (2.0 * d.u - expanded).abs() < 0.02 * expanded + 0.003,
        "drawn U {}, wanted {expanded}",
        2.0 * d.u
    );
}

#[test]
fn a_75_ohm_line_has_a_plain_uncertainty() {
    let n = Chain::new()
        .line(&RG6, (30.0, 0.0), 0.007, 0.05)
        .ohm(146.9e6, 50.0, 0.0);
    check(&n, 3.706, 0.403);
}

#[test]
fn length_and_velocity_count_where_waves_stand() {
    let l = |dl, dv, loss| {
        Chain::new()
            .line(&WINDOW, (18.0, dl), dv, loss)
            .ohm(14.2e6, 120.0, -60.0)
    };
    check(&l(0.5, 0.0, 0.0), 4.483, 1.543);
    check(&l(0.0, 0.02, 0.0), 4.484, 1.236);
    check(&l(0.5, 0.02, 0.2), 4.462, 1.952);
    let e = l(0.5, 0.0, 0.0).evaluate(&[]);
    let o = e.output(Quantity::Eirp).expect("radiates");
    assert!(
        (-o.high - 3.18).abs() < 0.05 && (-o.low - 5.71).abs() < 0.05,
        "{o:?}"
    );
    check(
        &Chain::new()
            .line(&C75, (12.1, 0.05), 0.0, 0.0)
            .ohm(145.3e6, 38.0, -12.0),
        1.863,
        0.224,
    );
}

#[test]
fn from_known_to_unknown_phase_without_a_step() {
    let at = |v: f64| {
        Chain::new()
            .line(&A50, (1.2, 0.0), 0.0, 0.0)
            .line(&C75, (17.35, 0.0), 0.66 * v, 0.0)
            .ohm(146.9e6, 38.0, -12.0)
    };
    for (v, want) in [
        (0.001, 0.073),
        (0.003, 0.215),
        (0.004, 0.282),
        (0.01, 0.583),
    ] {
        let n = at(v);
        let e = n.evaluate(&[]);
        let u = 2.0 * e.output(Quantity::Eirp).expect("radiates").u;
        assert!((u - want).abs() < 0.03 * want, "{v}: {u}, wanted {want}");
    }
    let mut last: Option<f64> = None;
    for k in 0..400 {
        let n = at(f64::from(k) * 1.5e-4);
        let u = 2.0 * n.evaluate(&[]).output(Quantity::Eirp).expect("radiates").u;
        if let Some(l) = last {
            assert!((u - l).abs() < 0.02, "{k}: {l} then {u}");
        }
        last = Some(u);
    }
}

#[test]
fn forward_power_at_nodes_before_an_unknown_load_angle() {
    let n = Chain::new()
        .line(&FLEX, (3.0, 0.0), 0.0, 0.0)
        .line(&MAIN, (25.0, 0.0), 0.0, 0.0)
        .line(&FLEX, (2.0, 0.0), 0.0, 0.0)
        .swr(435e6, 3.0, 0.0);
    let e = n.evaluate(&[]);
    for (k, want) in [(1, 41.31), (2, 24.55), (3, 21.62)] {
        let o = e.output(Quantity::Forward(k)).expect("a node");
        let w = 50.0 * 10f64.powf(o.mean / 10.0);
        assert!((w - want).abs() < 0.01, "node {k}: {w}, wanted {want}");
    }
}

fn divided(tuner: bool, alike: bool) -> Network {
    let mut c = Chain::new();
    if tuner {
        c = c.tuner();
    }
    let same = c.inputs.phase(1);
    let arms = (0..2)
        .map(|_| {
            let phase = if alike { same } else { c.inputs.phase(1) };
            let line = c.line_of(&Cable(1.1, 0.004, 0.85, 50.0), (2.0, 0.0), 0.0, 0.0);
            Stretch {
                parts: vec![line],
                end: End::Load(
                    Load::Swr {
                        swr: Input::exact("SWR", 3.0),
                        phase,
                    },
                    Some(no_gain()),
                ),
            }
        })
        .collect();
    c.end(
        145e6,
        End::Branches {
            junction: Junction::Divider {
                shares: Vec::new(),
                excess: Input::exact("excess", 0.1),
                total: None,
            },
            swr: None,
            arms,
        },
    )
}

#[test]
fn a_divider_gives_back_what_its_arms_reflect_alike() {
    // by hand: |Γ| 0.5 through 0.1 dB twice and the line twice; the halves add
    let n = divided(false, true);
    let line = (1.1 / 100.0 * 145f64.sqrt() + 0.004 / 100.0 * 145.0) * 2.0;
    let gamma = 0.5 * 10f64.powf(-(2.0 * (line + 0.1)) / 20.0);
    let e = n.evaluate(&[]);
    let back = e.output(Quantity::Back(0)).expect("a node").mean;
    assert!(
        (back.sqrt() - gamma).abs() < 2e-3,
        "{} {gamma}",
        back.sqrt()
    );
    // with a tuner what is reflected is sent again: net loss over net power in
    let t = divided(true, true).evaluate(&[]);
    let lost = -t.output(Quantity::Delivered).expect("delivered").mean;
    let want = line + 0.1 - 10.0 * (0.75 / (1.0 - gamma * gamma)).log10();
    assert!((lost - want).abs() < 0.01, "{lost}, wanted {want}");
}

#[test]
fn energy_is_kept_in_lossless_trees() {
    let mut c = Chain::new();
    let arm = |c: &mut Chain, m: f64, r: f64, x: f64| {
        let line = c.line_of(&Cable(0.0, 0.0, 0.7, 75.0), (m, 0.0), 0.0, 0.0);
        Stretch {
            parts: vec![line],
            end: End::Load(
                Load::Impedance {
                    resistance: Input::exact("R", r),
                    reactance: Input::exact("X", x),
                },
                None,
            ),
        }
    };
    let inner = [arm(&mut c, 1.3, 30.0, 20.0), arm(&mut c, 0.7, 90.0, -45.0)];
    let first = c.line_of(&Cable(0.0, 0.0, 0.8, 60.0), (0.9, 0.0), 0.0, 0.0);
    let nested = Stretch {
        parts: vec![first],
        end: End::Branches {
            junction: Junction::Tee {
                excess: Input::exact("excess", 0.0),
            },
            swr: None,
            arms: inner.into(),
        },
    };
    let other = arm(&mut c, 2.1, 51.0, 7.0);
    let n = c.end(
        100e6,
        End::Branches {
            junction: Junction::Tee {
                excess: Input::exact("excess", 0.0),
            },
            swr: None,
            arms: vec![nested, other],
        },
    );
    let s = n.at(&[]);
    let arrived: f64 = s.ends.iter().map(|e| e.net).sum();
    let back = s.nodes[0].back;
    assert!((arrived + back - 1.0).abs() < 1e-12, "{arrived} + {back}");
}

#[test]
fn three_reflecting_parts_with_and_without_a_tuner() {
    // C07 of the published set: jumper, device, run of stated return loss, SWR at the end
    let n = Chain::new()
        .device(0.5, 0.0, 0.0)
        .device(0.4, 0.05, 0.1)
        .swr(145e6, 1.5, 0.0);
    let e = n.evaluate(&[]);
    let o = e.output(Quantity::Eirp).expect("radiates");
    let outer = n.favourable_floor();
    assert!(-o.high >= outer && outer >= 0.0);
    let (least, most) = n.reach(&e).expect("open phases");
    assert!(least < o.mean && o.mean < most);
}

#[test]
fn many_causes_go_through_in_passes() {
    // 60 lines of three causes and a phase each: 300 columns
    let mut c = Chain::new();
    for i in 0..60 {
        c = c.line(&C75, (0.3 + 0.01 * f64::from(i), 0.002), 0.002, 0.03);
    }
    let n = c.ohm(145e6, 60.0, 10.0);
    assert!(n.inputs.columns() > 200);
    let e = n.evaluate(&[]);
    let d = e.by_cause(Quantity::Eirp);
    // central differences of the value by each length, all other figures held
    let lengths: f64 = d.iter().step_by(3).map(|x| x * x).sum::<f64>();
    assert!(lengths > 0.0);
    assert!(e.output(Quantity::Eirp).expect("radiates").u > 0.0);
}

#[test]
fn the_same_bits_every_time() {
    let n = Chain::new()
        .line(&WINDOW, (18.0, 0.5), 0.02, 0.2)
        .ohm(14.2e6, 120.0, -60.0);
    let a = n.evaluate(&[0]);
    let b = n.evaluate(&[0]);
    let bits = |e: &downlead_physics::net::evaluate::Evaluation| {
        e.output(Quantity::Eirp)
            .expect("radiates")
            .samples()
            .iter()
            .map(|x| x.to_bits())
            .collect::<Vec<_>>()
    };
    assert_eq!(bits(&a), bits(&b));
    assert!(!bits(&a).is_empty());
}
