//! The search for products of 50 carriers, up to the fifth order: 44 million products, to be
//! done within a second. `cargo bench -p downlead-physics --bench site`.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use downlead_physics::site::{Channel, products_in_channels};

/// Channels of 12.5 kHz, spread unevenly over 40 MHz from `first` on.
fn spread(count: u32, first: f64) -> Vec<Channel> {
    let channel = |i: u32| Channel {
        hz: first + 12.5e3 * f64::from(i * i % 61 * 52 + i),
        width_hz: 12.5e3,
    };
    (0..count).map(channel).collect()
}

fn search(c: &mut Criterion) {
    let carriers = spread(50, 146e6);
    let channels = spread(50, 146e6 - 600e3);
    let mut group = c.benchmark_group("intermodulation");
    group.sample_size(10);
    group.bench_function("50 carriers, 50 receivers, orders 2 to 5", |b| {
        b.iter(|| {
            let mut hits = 0_u64;
            products_in_channels(black_box(&carriers), &channels, 2..=5, |_, _| hits += 1);
            hits
        });
    });
    group.finish();
}

criterion_group!(benches, search);
criterion_main!(benches);
