//! Latency as a client sees it: from a change of the text to its diagnostics and hints.
//!
//! `cargo run --release -p downlead-server --example latency [LINES…]` prints medians and 99th
//! percentiles in milliseconds over two pipes, as an editor sees them, for files of 100 and 10,000
//! lines. `--edits N` (default 300) changes one length; every tenth changes the cable all depend on.

#![allow(
    clippy::print_stdout,
    reason = "a program that prints what it measures"
)]

#[path = "../tests/driver/mod.rs"]
mod driver;

use std::time::{Duration, Instant};

use downlead_testkit::{CABLE_LINE, RUN_LINE, large_file};
use driver::Client;
use serde_json::{Value, json};

const URI: &str = "untitled:large";

fn main() {
    let mut edits = 300;
    let mut sizes = Vec::new();
    let mut words = std::env::args().skip(1);
    while let Some(w) = words.next() {
        if w == "--edits" {
            edits = words.next().and_then(|n| n.parse().ok()).unwrap_or(edits);
        } else if let Ok(n) = w.parse() {
            sizes.push(n);
        }
    }
    if sizes.is_empty() {
        sizes = vec![100, 10_000];
    }
    for lines in sizes {
        measure(lines, edits);
    }
}

fn measure(lines: usize, edits: usize) {
    let text = large_file(lines);
    let begun = Instant::now();
    let mut c = Client::start();
    let greeted = begun.elapsed();
    c.open(URI, &text);
    c.hints_of(0, 60);
    let first = begun.elapsed();
    c.diagnostics(URI, 1);
    println!("{} lines, {} kB", text.lines().count(), text.len() / 1000);
    println!(
        "  start to greeting {:.1} ms, to first hints {:.1} ms, to diagnostics {:.1} ms",
        ms(greeted),
        ms(first),
        ms(begun.elapsed())
    );

    let runs: Vec<usize> = lines_that(&text, RUN_LINE);
    let cable = lines_that(&text, CABLE_LINE)[0];
    let before = memory();
    let mut times: [Vec<Duration>; 5] = Default::default();
    for i in 0..edits {
        let version = i as i64 + 2;
        let local = i % 10 != 9;
        let (line, column) = if local {
            (runs[(i * 7919) % runs.len()], RUN_LINE.len() - 3)
        } else {
            (cable, CABLE_LINE.find("0.").expect("a figure") + 5)
        };
        let digit = ((i / 10) % 9 + 1).to_string();
        let range = json!({ "start": { "line": line, "character": column }, "end": { "line": line, "character": column + 1 } });
        let begun = Instant::now();
        c.change(URI, version, json!([{ "range": range, "text": digit }]));
        let top = line.saturating_sub(30);
        let hints = c.begin_hints(top, top + 60);
        let got = c.wait(|m| m["id"] == hints && m.get("method").is_none());
        let hinted = begun.elapsed();
        assert!(
            got["result"].as_array().is_some_and(|h| !h.is_empty()),
            "hints"
        );
        c.wait(|m| m["params"]["version"] == version);
        times[usize::from(!local)].push(hinted);
        times[2 + usize::from(!local)].push(begun.elapsed());
        if i % 20 == 0 {
            let begun = Instant::now();
            c.hints_of(0, lines + 1000);
            times[4].push(begun.elapsed());
        }
        c.inbox.clear();
        c.forget();
    }
    for (name, t) in [
        "hints, a length changed",
        "hints, the cable of all changed",
        "diagnostics, a length changed",
        "diagnostics, the cable of all changed",
        "hints of the whole file, nothing changed",
    ]
    .iter()
    .zip(&mut times)
    {
        t.sort();
        if let Some(last) = t.last() {
            let at = |p: usize| ms(t[(t.len() * p / 100).min(t.len() - 1)]);
            println!(
                "  {name}: median {:.2} ms, 99 % {:.2} ms, longest {:.2} ms ({} times)",
                at(50),
                at(99),
                ms(*last),
                t.len()
            );
        }
    }
    println!(
        "  memory (this client included): {before} kB before, {} kB after {edits} edits",
        memory()
    );
    assert_eq!(c.finish(), 0);
}

impl Client {
    fn begin_hints(&mut self, from: usize, to: usize) -> i64 {
        let range = json!({ "start": { "line": from, "character": 0 }, "end": { "line": to, "character": 0 } });
        self.begin(
            "textDocument/inlayHint",
            json!({ "textDocument": { "uri": URI }, "range": range }),
        )
    }

    fn hints_of(&mut self, from: usize, to: usize) -> Value {
        let id = self.begin_hints(from, to);
        self.answer(id)
    }
}

fn lines_that(text: &str, begin: &str) -> Vec<usize> {
    text.lines()
        .enumerate()
        .filter(|(_, l)| l.starts_with(begin))
        .map(|(i, _)| i)
        .collect()
}

fn ms(t: Duration) -> f64 {
    t.as_secs_f64() * 1000.0
}

/// Resident memory in kB; 0 where it is not available.
fn memory() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status
        .lines()
        .find_map(|l| l.strip_prefix("VmRSS:"))
        .unwrap_or("0");
    line.split_whitespace()
        .next()
        .and_then(|n| n.parse().ok())
        .unwrap_or(0)
}
