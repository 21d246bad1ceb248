//! Reading a two-port of 100,001 points in each format, and writing it.

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use downlead_touchstone::{Complex64, Format, Network, WriteOptions, read, write};
use std::hint::black_box;

/// A lossy, mismatched line from 1 to 1001 MHz.
fn network(points: u32) -> Network {
    let (mut f, mut s) = (Vec::new(), Vec::new());
    for k in 0..points {
        let mhz = 1.0 + f64::from(k) * 0.01;
        let (sin, cos) = libm::sincos(mhz * 0.37);
        let loss = 1.0 / (1.0 + mhz * 0.002);
        let through = Complex64::new(cos * loss, -sin * loss);
        let back = Complex64::new(0.1 * sin * loss, 0.07 * cos);
        f.push(mhz * 1e6);
        s.extend([back, through, through, back * 0.9]);
    }
    Network::new(f, s, vec![50.0; 2]).expect("a network")
}

fn bench(c: &mut Criterion) {
    let network = network(100_001);
    let mut group = c.benchmark_group("touchstone");
    for format in [Format::RI, Format::MA, Format::DB] {
        let options = WriteOptions {
            format,
            ..WriteOptions::default()
        };
        let text = write(&network, &options).expect("S always writes");
        group.throughput(Throughput::Bytes(text.len() as u64));
        group.bench_function(format!("read 100001 points .s2p {}", format.name()), |b| {
            b.iter(|| read(black_box(text.as_bytes()), Some(2)));
        });
        group.bench_function(format!("write 100001 points .s2p {}", format.name()), |b| {
            b.iter(|| write(black_box(&network), &options));
        });
    }
    group.finish();
}

criterion_group!(benches, bench);
criterion_main!(benches);
