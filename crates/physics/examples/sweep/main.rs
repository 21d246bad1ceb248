//! Sweeps the reference chain and prints the seconds of the fastest of some runs, then the real
//! and imaginary parts of S11, S12, S21, S22, one frequency a line. Arguments: points, runs.
//! `tests/reference/sweep_bench.py` runs this beside scikit-rf.

mod chain;

use downlead_physics::SMatrix;
use downlead_physics::sweep::sweep;
use std::io::{BufWriter, Write};
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let argument = |i: usize, default: u32| match std::env::args().nth(i) {
        Some(text) => text.parse::<u32>(),
        None => Ok(default),
    };
    let (points, runs) = (argument(1, 10_001)?, argument(2, 20)?);
    let (elements, r0) = chain::chain()?;
    let f = chain::grid(points);
    let mut out = vec![SMatrix::IDENTITY; f.len()];
    let mut best = f64::INFINITY;
    for _ in 0..runs.max(1) {
        let start = Instant::now();
        sweep(&elements, std::hint::black_box(&f), r0, &mut out);
        best = best.min(start.elapsed().as_secs_f64());
        std::hint::black_box(&out);
    }
    let mut to = BufWriter::new(std::io::stdout().lock());
    writeln!(to, "{best:e}")?;
    for s in &out {
        for z in [s.s11, s.s12, s.s21] {
            write!(to, "{:e} {:e} ", z.re, z.im)?;
        }
        writeln!(to, "{:e} {:e}", s.s22.re, s.s22.im)?;
    }
    to.flush()?;
    Ok(())
}
