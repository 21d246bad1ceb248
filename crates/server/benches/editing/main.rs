//! The real program compared with servers of other languages, over standard input and output as an editor
//! speaks to them, in one run: from a change to its diagnostics and hints, the first answer, what
//! idling costs, memory.
//!
//! `cargo build --release -p downlead && cargo bench -p downlead-server --bench editing`. The
//! program is the one next to this bench, or `DOWNLEAD`. The others are used where they are found:
//! in `target/peers` (`tests/tools/peers.sh` puts them there), in `DOWNLEAD_PEERS`, or on the path.
//! `-- --edits N` edits for times (300), `--long N` edits for memory (10000), `--alone` no others.
//! Prints a Markdown table. Quote ratios within one run: the machine is part of every number.

#![allow(
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "a measuring program"
)]

mod peers;
mod session;

use std::time::{Duration, Instant};

use peers::{Language, languages};
use session::Session;

struct Wanted {
    edits: usize,
    long: usize,
    alone: bool,
}

fn main() {
    let mut wanted = Wanted {
        edits: 300,
        long: 10_000,
        alone: false,
    };
    let mut words = std::env::args().skip(1);
    while let Some(w) = words.next() {
        let mut number = |old| words.next().and_then(|n| n.parse().ok()).unwrap_or(old);
        match w.as_str() {
            "--edits" => wanted.edits = number(wanted.edits),
            "--long" => wanted.long = number(wanted.long),
            "--alone" => wanted.alone = true,
            _ => {}
        }
    }
    println!("Times in milliseconds, median / 99th percentile; memory in MB, resident.\n");
    println!(
        "| server | lines | kB | first answer | change → diagnostics | change → beside a screen | change → beside the whole file | floor | idle, ticks in 3 s | memory |"
    );
    println!("|---|---:|---:|---:|---:|---:|---:|---:|---:|---|");
    for language in languages() {
        if wanted.alone && !language.ours {
            continue;
        }
        let Some(command) = language.command() else {
            eprintln!("{}: not found", language.name);
            continue;
        };
        for lines in [100, 10_000] {
            match measure(&language, &command, lines, &wanted) {
                Ok(row) => println!("{row}"),
                Err(why) => println!("| {} | {lines} | | {why} | | | | | | |", language.name),
            }
        }
    }
}

/// The request sent after a change.
#[derive(Clone, Copy, PartialEq)]
enum Ask {
    Screen,
    Whole,
}

fn measure(
    language: &Language,
    command: &[String],
    lines: usize,
    wanted: &Wanted,
) -> Result<String, String> {
    let text = (language.text)(lines);
    let begun = Instant::now();
    let mut s = Session::start(command, language)?;
    s.open(&text);
    let first = s.ask_beside(0, 60)?;
    let first = first.duration_since(begun);
    s.settle();
    let places: Vec<usize> = (language.places)(&text);
    let mut diagnostics = Vec::new();
    let mut beside = [Vec::new(), Vec::new()];
    // a slow server is not waited for all day
    let patience = Instant::now();
    let mut n = 0;
    for (k, ask) in [Ask::Screen, Ask::Whole].into_iter().enumerate() {
        for i in 0..wanted.edits {
            if patience.elapsed() > Duration::from_secs(60 * (k as u64 + 1)) {
                break;
            }
            if ask == Ask::Whole && (i >= wanted.edits / 3 || !language.ranges) {
                break;
            }
            n += 1;
            let line = places[(n * 7919) % places.len()];
            let at = Instant::now();
            s.change(line, language, n);
            let (from, to) = match ask {
                Ask::Screen => (line.saturating_sub(30), line + 30),
                Ask::Whole => (0, usize::MAX),
            };
            beside[k].push(s.ask_beside(from, to)?.duration_since(at));
            let found = s.wait_diagnostics()?.duration_since(at);
            if ask == Ask::Screen {
                diagnostics.push(found);
            }
        }
    }
    s.settle();
    let mut floor = Vec::new();
    for _ in 0..wanted.edits {
        let at = Instant::now();
        floor.push(s.ask_nothing()?.duration_since(at));
    }
    let ticks = s.ticks();
    std::thread::sleep(Duration::from_secs(3));
    let idle = s.ticks() - ticks;
    let memory = s.memory();
    let mut after = format!("{memory:.1}");
    if language.ours {
        // what it is at first, once the largest answers were made, and much later
        for (from, to) in [(0, wanted.long / 10), (wanted.long / 10, wanted.long)] {
            for i in from..to {
                s.change(places[(i * 7919) % places.len()], language, i);
                if i % 10 == 9 {
                    s.ask_beside(0, 60)?;
                }
            }
            s.settle();
            after += &format!(" → {:.1} ({to} more edits)", s.memory());
        }
    }
    s.finish();
    Ok(format!(
        "| {} | {} | {} | {:.1} | {} | {} | {} | {} | {idle} | {after} |",
        language.name,
        text.lines().count(),
        text.len() / 1000,
        ms(first),
        both(diagnostics),
        both(std::mem::take(&mut beside[0])),
        both(std::mem::take(&mut beside[1])),
        both(floor),
    ))
}

fn ms(t: Duration) -> f64 {
    t.as_secs_f64() * 1000.0
}

fn both(mut t: Vec<Duration>) -> String {
    t.sort();
    let Some(last) = t.len().checked_sub(1) else {
        return "–".to_owned();
    };
    let at = |p: usize| ms(t[(t.len() * p / 100).min(last)]);
    format!("{:.2} / {:.2}", at(50), at(99))
}
