//! Ten thousand bench readings: losses with their budgets, and a fit of every five.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use downlead_physics::measure::*;
use std::hint::black_box;

const READINGS: usize = 10_000;
const MHZ: [f64; 5] = [3.7, 14.2, 50.3, 145.3, 434.5];

/// Pieces one after another, a baseline every ten readings.
fn session(meters: &[Meter]) -> (Baselines, Vec<Level>) {
    let sag = |i: usize| 60.0 * (1.0 - 2e-5 * i as f64);
    let baselines: Vec<Level> = (0..=READINGS / 10)
        .map(|k| Level::one(READINGS + k, 0, sag(10 * k), 10.0 * k as f64))
        .collect();
    let pieces = (0..READINGS)
        .map(|i| {
            let mhz = MHZ[i % 5];
            let db = 0.25 * (0.058 * mhz.sqrt() + 0.0011 * mhz) + 0.01 * (i % 7) as f64;
            Level::one(i, 0, sag(i) * 10_f64.powf(-0.1 * db), i as f64 + 0.5)
        })
        .collect();
    (
        Baselines::new(&baselines, meters).expect("baselines"),
        pieces,
    )
}

fn bench(c: &mut Criterion) {
    let meters = [Meter::PERFECT
        .of_reading(0.05)
        .linearity(0.01)
        .repeatability(0.006)
        .resolution(0.1)];
    let (baselines, pieces) = session(&meters);
    let around = Around {
        ends: Some(Ends::new(0.05, 0.05, 0.03, 0.03, 1.0)),
        ..Around::default()
    };
    let mut group = c.benchmark_group("measure");
    group.throughput(Throughput::Elements(READINGS as u64));
    group.bench_function("10000 readings evaluated and fitted", |b| {
        let mut budget = Budget::new();
        let rules = Rules::default();
        b.iter(|| {
            let mut sum = 0.0;
            for five in black_box(&pieces).chunks(5) {
                let mut points = [FitPoint {
                    f_hz: 0.0,
                    db_per_m: 0.0,
                    u_db_per_m: 0.0,
                }; 5];
                for ((p, piece), mhz) in points.iter_mut().zip(five).zip(MHZ) {
                    let loss =
                        substitution(&baselines, piece, &meters, &rules, &around, &mut budget)
                            .expect("a loss");
                    *p = FitPoint {
                        f_hz: mhz * 1e6,
                        db_per_m: loss.db / 25.0,
                        u_db_per_m: loss.u_db / 25.0,
                    };
                }
                let fit = fit(&points, &FitRules::default()).expect("five frequencies");
                sum += fit.predict(100e6).db_per_m;
            }
            sum
        });
    });
    group.finish();
}

criterion_group!(benches, bench);
criterion_main!(benches);
