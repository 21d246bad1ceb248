//! Parses a generated file many times, for a profiler, and prints the best time.
#![allow(clippy::print_stdout)]

use std::hint::black_box;
use std::time::Instant;

use downlead_syntax::{File, tokens};

#[path = "../benches/generate/mod.rs"]
#[allow(dead_code)]
mod generate;

fn main() {
    let text = generate::station_file(10_000, 0);
    let rounds = std::env::args()
        .nth(1)
        .and_then(|n| n.parse().ok())
        .unwrap_or(200);
    let best = |f: &dyn Fn()| {
        (0..rounds)
            .map(|_| {
                let start = Instant::now();
                f();
                start.elapsed()
            })
            .min()
            .unwrap_or_default()
            .as_secs_f64()
    };
    let megabytes = text.len() as f64 / 1e6;
    let lex = best(&|| {
        black_box(tokens(&text).count());
    });
    println!("lex   {:.1} MB/s", megabytes / lex);
    let parse = best(&|| {
        black_box(File::parse(text.as_str()));
    });
    println!("parse {:.1} MB/s", megabytes / parse);
}
