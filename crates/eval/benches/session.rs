//! Ten thousand readings of a bench session: imported from a table, evaluated, compared with
//! what the cables promise, and fitted.

use criterion::{Criterion, criterion_group, criterion_main};
use downlead_eval::Snapshot;
use downlead_testkit::Files;
use std::fmt::Write as _;
use std::hint::black_box;

const BANDS: usize = 100;
const PIECES: usize = 98;

fn files() -> Files {
    let mut table = String::from("frequency_mhz,piece,time_min,forward_w\n");
    for b in 0..BANDS {
        // from 2 MHz to 1 GHz, evenly on a logarithmic scale
        let mhz = 2.0 * libm::pow(500.0, b as f64 / (BANDS - 1) as f64);
        let _ = writeln!(table, "{mhz:.4},baseline,0,60");
        for p in 0..PIECES {
            // 10 m to 40 m of about RG-213, each a little off in its own way
            let length = 10.0 + 30.0 * p as f64 / PIECES as f64;
            let off = 1.0 + 0.03 * libm::sin((7 * p + 3 * b) as f64);
            let db = length / 100.0 * (0.567 * libm::sqrt(mhz) + 0.0097 * mhz) * off;
            let w = 60.0 * libm::pow(10.0, -db / 10.0);
            let _ = writeln!(table, "{mhz:.4},P{p},{},{w:.5}", p + 1);
        }
        let _ = writeln!(table, "{mhz:.4},baseline,{},59.5", PIECES + 1);
    }
    let mut text = String::from(
        "instrument W1 {\n    accuracy 5 % of reading\n}\n\nsession many {\n    read 2026-07-19 with W1 by QY5BEN\n    temperature 12 °C\n",
    );
    for p in 0..PIECES {
        let length = 10.0 + 30.0 * p as f64 / PIECES as f64;
        let _ = writeln!(
            text,
            "    piece P{p} {length:.3} m ± 0.02 m of rg-213, connector 2 of n-pair"
        );
    }
    text.push_str("    readings from \"many.csv\"\n}\n");
    Files::default()
        .with("many.downlead", text.as_str())
        .with("many.csv", table.as_str())
}

fn session(c: &mut Criterion) {
    let files = files();
    let roots = ["many.downlead".to_owned()];
    let s = Snapshot::load(&roots, &files);
    let found = s.scopes()[0]
        .items()
        .iter()
        .find_map(|x| x.2.session.as_ref());
    let (readings, cells) = found.map_or((0, 0), |r| (r.readings, r.cells.len()));
    assert_eq!((readings, cells), (BANDS * (PIECES + 2), BANDS * PIECES));
    c.bench_function("10,000 readings: import, evaluate, fit", |b| {
        b.iter(|| black_box(Snapshot::load(&roots, &files)));
    });
}

/// Eighty thousand readings of one piece, on so many bands.
fn one_piece(bands: usize) -> Files {
    let each = 80_000 / bands - 2;
    let mut table = String::from("frequency_mhz,piece,time_min,forward_w\n");
    for b in 0..bands {
        let mhz = 2.0 * libm::pow(500.0, b as f64 / (bands - 1) as f64);
        let _ = writeln!(table, "{mhz:.5},baseline,0,60");
        for p in 0..each {
            let off = 1.0 + 0.002 * libm::sin((7 * p + 3 * b) as f64);
            let db = 0.2 * (0.567 * libm::sqrt(mhz) + 0.0097 * mhz) * off;
            let w = 60.0 * libm::pow(10.0, -db / 10.0);
            let _ = writeln!(table, "{mhz:.5},P,{},{w:.5}", p + 1);
        }
        let _ = writeln!(table, "{mhz:.5},baseline,{},59.5", each + 1);
    }
    let text = "instrument W1 {\n    accuracy 5 % of reading\n}\n\nsession many {\n    read 2026-07-19 with W1 by QY5BEN\n    temperature 12 °C\n    \
                piece P 20 m ± 0.02 m of rg-213\n    readings from \"many.csv\"\n}\n\nchain beside on 145.3 MHz {\n    transmitter 25 W carrier\n    \
                run 28 m of rg-213\n    antenna 4.5 dBi\n}\n";
    Files::default()
        .with("many.downlead", text)
        .with("many.csv", table.as_str())
}

fn large(c: &mut Criterion) {
    let roots = ["many.downlead".to_owned()];
    for bands in [4, 400, 26_666] {
        let files = one_piece(bands);
        c.bench_function(
            &format!("80,000 readings of one piece on {bands} bands"),
            |b| {
                b.iter(|| black_box(Snapshot::load(&roots, &files)));
            },
        );
        let mut s = Snapshot::load(&roots, &files);
        let at = s.files()[0].text().find("28 m").expect("the run") as u32;
        let mut digit = false;
        c.bench_function(&format!("a keystroke beside them, {bands} bands"), |b| {
            b.iter(|| {
                digit = !digit;
                let text = if digit { "9" } else { "8" };
                s.edit(0, downlead_base::Span::new(at + 1, at + 2), text, &files);
            });
        });
    }
}

criterion_group! {
    name = benches;
    config = Criterion::default().sample_size(10);
    targets = session, large
}
criterion_main!(benches);
