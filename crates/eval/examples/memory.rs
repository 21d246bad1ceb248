//! Heap used by a 10,000-line file, in bytes per byte of its text.
//!
//!     cargo run --release -p downlead-eval --example memory
#![allow(clippy::print_stdout, reason = "a measuring program")]

use downlead_report::Reports as _;
use std::alloc::System;

use cap::Cap;
use downlead_eval::Snapshot;
use downlead_station::library;
use downlead_testkit::{Files, large_file};

#[global_allocator]
static HEAP: Cap<System> = Cap::new(System, usize::MAX);

fn main() {
    let _ = library();
    let lines = std::env::args()
        .nth(1)
        .and_then(|n| n.parse().ok())
        .unwrap_or(10_000);
    measure("the large file", large_file(lines));
    measure("the demo station repeated", demo(lines));
}

/// The demo repeater station, again and again, with what it uses in front.
fn demo(lines: usize) -> String {
    let read = |p: &str| std::fs::read_to_string(downlead_testkit::project(p)).expect("an example");
    let mut text = read("examples/thrennock/cables.downlead")
        + &read("examples/thrennock/instruments.downlead");
    let rev = read("examples/pellgarrow/rev4.downlead");
    let (head, station) = rev.split_at(rev.find("station pellgarrow").expect("the station"));
    head.lines()
        .filter(|l| !l.starts_with("use "))
        .for_each(|l| text += &format!("{l}\n"));
    for n in 0.. {
        if text.lines().count() >= lines {
            break;
        }
        text += &station.replacen("pellgarrow", &format!("pellgarrow-{n}"), 1);
    }
    text
}

fn measure(name: &str, text: String) {
    let lines = text.lines().count();
    let size = text.len() as f64;
    let files = Files::default().with("main.downlead", text);
    let before = HEAP.allocated();
    let tree = downlead_syntax::File::parse(files.text("main.downlead").expect("the text").clone());
    let with_tree = HEAP.allocated() - before;
    let held_before = HEAP.allocated();
    let lets = downlead_station::Lets::default();
    let lowered: Vec<_> = tree
        .items()
        .iter()
        .map(|p| downlead_station::lower(&p.item, &lets, false))
        .collect();
    let with_lowered = HEAP.allocated() - held_before;
    drop(lowered);
    drop(tree);
    let snapshot = Snapshot::load(&["main.downlead".to_owned()], &files);
    let held = HEAP.allocated() - before;
    println!("{name}: {lines} lines, {size} bytes");
    println!("tree        {:6.2} x text", with_tree as f64 / size);
    println!("meaning     {:6.2} x text", with_lowered as f64 / size);
    let (mut nodes, mut bands, mut budget, mut other) = (0, 0, 0, 0);
    for (.., r) in snapshot.scopes()[0].items() {
        for b in r.chains.iter().flat_map(|c| &c.bands) {
            nodes += size_of_val(&*b.nodes);
            bands += size_of_val(b);
            budget += size_of_val(&*b.budget);
            other += size_of_val(&*b.limits) + size_of_val(&*b.readings);
        }
        other += r.diagnostics.capacity() * size_of::<downlead_base::Diagnostic>();
    }
    for (name, bytes) in [
        ("nodes", nodes),
        ("bands", bands),
        ("budgets", budget),
        ("other", other),
    ] {
        println!("  {name:12}{:6.2} x text", bytes as f64 / size);
    }
    println!("snapshot    {:6.2} x text held", held as f64 / size);
    let report = snapshot.report();
    let with_report = HEAP.allocated() - before - held;
    println!("report      {:6.2} x text", with_report as f64 / size);
    drop(report);
}
