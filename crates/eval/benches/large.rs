//! Speed on a file of 10,000 lines: parsed and evaluated from cold, one edited line, the report.

use downlead_report::Reports as _;
use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::library;
use downlead_testkit::{Files, RUN_LINE, large_file};

const MAIN: &str = "main.downlead";

fn load(files: &Files) -> Snapshot {
    Snapshot::load(&[MAIN.to_owned()], files)
}

/// The last digit of a number in the first line that begins like that.
fn digit(text: &str, line: &str) -> Span {
    let at = text.find(line).expect("the line");
    let end = at
        + line
            .rfind(|c: char| c.is_ascii_digit())
            .map_or(line.len(), |i| i + 1);
    Span::new((end - 1) as u32, end as u32)
}

fn large(c: &mut Criterion) {
    // the library is read once a process
    let _ = library();
    let text = large_file(10_000);
    let files = Files::default().with(MAIN, text.as_str());
    let first = load(&files);
    assert!(
        first
            .diagnostics()
            .iter()
            .all(|d| d.severity < downlead_base::Severity::Error || d.code.id == "limit-not-met")
    );
    drop(first);

    let mut group = c.benchmark_group("10,000 lines");
    group.sample_size(20);
    group.throughput(Throughput::Bytes(text.len() as u64));
    group.bench_function("cold: parse and evaluate", |b| {
        b.iter(|| load(black_box(&files)))
    });
    let snapshot = load(&files);
    group.bench_function("findings", |b| b.iter(|| snapshot.diagnostics()));
    group.bench_function("report as a value", |b| b.iter(|| snapshot.report()));
    group.finish();

    let mut group = c.benchmark_group("one edited line of 10,000");
    for (name, line) in [
        ("a run of one station", RUN_LINE),
        ("a named value that each station uses", "let tower = 30"),
        ("the cable that all stations use", "    loss 0.1216"),
    ] {
        let span = digit(&text, line);
        let mut snapshot = load(&files);
        let mut n = 0u32;
        group.bench_function(name, |b| {
            b.iter(|| {
                n = (n + 1) % 9;
                snapshot.edit(0, span, &(n + 1).to_string(), &files);
            });
        });
    }
    let at = text.find("// the transmitters").expect("a comment") as u32;
    let mut snapshot = load(&files);
    group.bench_function("a comment", |b| {
        b.iter(|| snapshot.edit(0, Span::new(at + 3, at + 4), "t", &files));
    });
    group.finish();
}

criterion_group!(benches, large);
criterion_main!(benches);
