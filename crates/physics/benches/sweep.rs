//! Sweep of a 12-element cascade over 10,001 frequencies.

#[path = "../examples/sweep/chain.rs"]
mod chain;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use downlead_physics::SMatrix;
use downlead_physics::sweep::sweep;
use std::hint::black_box;

fn bench(c: &mut Criterion) {
    let (elements, r0) = chain::chain().expect("the reference chain reads");
    let f = chain::grid(10_001);
    let mut out = vec![SMatrix::IDENTITY; f.len()];
    let mut group = c.benchmark_group("sweep");
    group.throughput(Throughput::Elements(10_001));
    group.bench_function("12 elements, 10001 points", |b| {
        b.iter(|| sweep(black_box(&elements), black_box(&f), r0, &mut out));
    });
    group.finish();
}

criterion_group!(benches, bench);
criterion_main!(benches);
