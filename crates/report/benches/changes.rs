//! Speed of comparing states and of overviews: two stations of 1,000 lines, and the rows of many
//! files.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use downlead_eval::Snapshot;
use downlead_report::build::compare::compare;
use downlead_report::build::diff::{FileChange, diff};
use downlead_report::build::overview::rows;
use downlead_testkit::{Files, large_file};

const MAIN: &str = "main.downlead";

fn load(text: &str) -> Snapshot {
    Snapshot::load(&[MAIN.to_owned()], &Files::default().with(MAIN, text))
}

fn compared(old: &str, new: &str) -> bool {
    let (a, b) = (load(old), load(new));
    let change = FileChange {
        path: MAIN.to_owned(),
        comparison: compare((&a, 0), (&b, 0)),
    };
    diff("old", "new", &[change]).speaks
}

fn changes(c: &mut Criterion) {
    // the library is read once a process
    let _ = downlead_station::library();
    let old = large_file(1_000);
    let run = old.replacen("run M1 46", "run M1 86", 1);
    let cable = old.replacen("loss 0.1216", "loss 0.2216", 1);
    let layout = old.replace("    run M1", "    // the run\n    run  M1");
    let mut group = c.benchmark_group("two stations of 1,000 lines");
    group.sample_size(20);
    for (name, new, speaks) in [
        ("the same text", &old, false),
        ("other layout", &layout, false),
        ("one run", &run, true),
        ("the cable of all", &cable, true),
    ] {
        assert_eq!(compared(&old, new), speaks, "{name}");
        group.bench_function(name, |b| b.iter(|| compared(black_box(&old), new)));
    }
    group.finish();

    let one = large_file(80);
    let mut files = Files::default();
    let names: Vec<String> = (0..64).map(|n| format!("{n}.downlead")).collect();
    names.iter().for_each(|n| files.put(n, &one));
    c.bench_function("overview of 64 files", |b| {
        b.iter(|| rows(&Snapshot::load(black_box(&names), &files)).len());
    });
}

criterion_group!(benches, changes);
criterion_main!(benches);
