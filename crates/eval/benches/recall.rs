//! A recall over a thousand stations in memory, 32 files at a time on one core: half of them read with
//! the instrument, all of them with the cable.

use std::fmt::Write as _;
use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use downlead_eval::Snapshot;
use downlead_report::build::recall::{compared, states};
use downlead_station::NameKind;
use downlead_testkit::Files;

const STATIONS: usize = 1000;

fn files() -> (Vec<String>, Files) {
    let mut all = Files::default().with(
        "meters.downlead",
        "instrument W1 {\n    accuracy 5 % of reading\n}\ninstrument W2 {\n    accuracy 5 % of reading\n}\n",
    );
    let mut names = Vec::new();
    for i in 0..STATIONS {
        let meter = if i % 2 == 0 { "W1" } else { "W2" };
        let mut text = String::new();
        let _ = write!(
            text,
            "use \"meters.downlead\"\nstation site{i} {{\n    transmitter TX1 20 W ± 5 % carrier\n    run M1 28 m of rg-213\n    \
             antenna A1 4.5 dBi ± 0.5 dB, swr 1.3\n    chain talk on 145.3 MHz {{\n        TX1\n        \
             read {} W forward, 2026-03-04 with {meter} by QY2TEC\n        M1\n        A1\n        limit 50 W erp, \"TSO 14\"\n    }}\n    \
             chain high on 434.5 MHz {{\n        TX1\n        M1\n        A1\n        limit 50 W erp, \"TSO 14\"\n    }}\n}}\n",
            20 + i % 5
        );
        let name = format!("site{i}.downlead");
        all.put(&name, &text);
        names.push(name);
    }
    (names, all)
}

/// Number of results that rest on it.
fn rows(kind: NameKind, name: &str, line: &str, (names, files): &(Vec<String>, Files)) -> usize {
    let with = (kind == NameKind::Instrument).then_some(name);
    let of_set = |set: &[String]| {
        let mut s = Snapshot::load_for_later(set, files);
        let items = s.resting_on(kind, name);
        s.evaluate_items(&items);
        let before = states(&s, &items);
        assert!(s.recall(kind, name, line, files).is_ok());
        s.evaluate_items(&items);
        compared(&before, &states(&s, &items), with, None).len()
    };
    names.chunks(32).map(of_set).sum()
}

fn recall(c: &mut Criterion) {
    let all = files();
    let instrument = || {
        rows(
            NameKind::Instrument,
            "W1",
            "recalled +6 % since 2026-01",
            &all,
        )
    };
    let cable = || rows(NameKind::Cable, "rg-213", "recalled +6 %", &all);
    assert_eq!(instrument(), STATIONS / 2);
    assert!(cable() >= 4 * STATIONS);
    c.bench_function("recall of an instrument, 1,000 stations", |b| {
        b.iter(|| black_box(instrument()))
    });
    c.bench_function("recall of a cable, 1,000 stations", |b| {
        b.iter(|| black_box(cable()))
    });
}

criterion_group! {
    name = benches;
    config = Criterion::default().sample_size(10);
    targets = recall
}
criterion_main!(benches);
