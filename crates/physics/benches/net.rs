//! A chain of 15 parts as a network: its value, all derivatives with their check, and the sample
//! where standing waves ask for it. `cargo bench -p downlead-physics --bench net`.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use downlead_physics::net::input::{Input, Inputs, Shape, Spread};
use downlead_physics::net::part::{End, Gain, Length, Line, Load, Loss, Part, Rate, Stretch};
use downlead_physics::net::{Fields, Network};

/// Five times line, device, pair; an antenna. `swr` of devices and antenna: none where all is
/// matched.
fn chain(z0: f64, swr: Option<f64>) -> Network {
    let mut inputs = Inputs::default();
    let mut parts = Vec::new();
    let pm = |inputs: &mut Inputs, name, value: f64, u: f64| {
        let cause = inputs.cause(Shape::Rectangular);
        inputs
            .input(name, value, u, cause)
            .within(0.0, f64::INFINITY)
    };
    for i in 0..5 {
        let scale = pm(&mut inputs, "scale", 1.0, 0.03);
        let length = pm(&mut inputs, "length, m", 3.0 + f64::from(i), 0.02);
        let velocity = pm(&mut inputs, "velocity factor", 0.85, 0.005);
        let phase = inputs.line_phase(Spread::Known);
        parts.push(Part::Line(Box::new(Line {
            rate: Rate::TwoTerm {
                k1: Input::exact("k1", 0.006),
                k2: Input::exact("k2", 1e-5),
            },
            scale,
            z0: Some(Input::exact("impedance", z0)),
            velocity: Some(velocity),
            celsius: Input::exact("temperature", 15.0),
            reference_c: 20.0,
            length: Length::Metres(length),
            added: None,
            spread: Spread::Known,
            phase,
            swr: None,
        })));
        let loss = pm(&mut inputs, "loss, dB", 0.5, 0.05);
        let phase = inputs.phase(3);
        parts.push(Part::Device {
            loss: Loss::Stated(loss),
            swr: swr.map(|s| Input::exact("SWR", s)),
            phase,
        });
        let loss = pm(&mut inputs, "loss, dB/√GHz", 0.05, 0.01);
        parts.push(Part::Pairs {
            count: 1,
            loss,
            root: true,
            bump: None,
            swr: None,
            phase: 0,
        });
    }
    let phase = inputs.phase(1);
    let load = match swr {
        Some(s) => Load::Swr {
            swr: Input::exact("SWR", 1.5 * s),
            phase,
        },
        None => Load::Matched,
    };
    let gain = Gain {
        dbi: pm(&mut inputs, "gain, dBi", 5.0, 0.3),
        efficiency: None,
        realized: false,
    };
    Network {
        hz: 146.9e6,
        level: pm(&mut inputs, "power, dBW", 13.0, 0.1),
        inputs,
        feed: Stretch {
            parts,
            end: End::Load(load, Some(gain)),
        },
        phased: false,
        fields: Fields::InPhase,
    }
}

fn net(c: &mut Criterion) {
    let matched = chain(50.0, None);
    let reflecting = chain(75.0, Some(1.3));
    let mut group = c.benchmark_group("15 parts");
    group.bench_function("value", |b| b.iter(|| black_box(&matched).at(&[])));
    group.bench_function("matched: derivatives and check", |b| {
        b.iter(|| black_box(&matched).evaluate(&[]));
    });
    group.bench_function("standing waves: derivatives, check and sample", |b| {
        b.iter(|| black_box(&reflecting).evaluate(&[]));
    });
    group.bench_function("range over all phases", |b| {
        let e = reflecting.evaluate(&[]);
        b.iter(|| black_box(&reflecting).reach(&e));
    });
    group.finish();
}

criterion_group!(benches, net);
criterion_main!(benches);
