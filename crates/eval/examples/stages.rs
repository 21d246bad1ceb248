//! Where the time of a 10,000-line file goes: the shortest of many runs of each stage, which is
//! steadier than a mean on a busy machine.
//!
//!     cargo run --release -p downlead-eval --example stages
#![allow(clippy::print_stdout, reason = "a measuring program")]

use downlead_report::Reports as _;
use std::hint::black_box;
use std::time::{Duration, Instant};

use downlead_base::Span;
use downlead_eval::{Snapshot, Stage};
use downlead_station::{Env, LowerCache, library};
use downlead_syntax::File;
use downlead_testkit::{Files, RUN_LINE, large_file};

fn shortest<T>(name: &str, runs: u32, mut f: impl FnMut() -> T) {
    let mut best = Duration::MAX;
    for _ in 0..runs {
        let start = Instant::now();
        let kept = black_box(f());
        best = best.min(start.elapsed());
        drop(kept);
    }
    println!("{name:44} {:9.1} µs", best.as_secs_f64() * 1e6);
}

fn main() {
    let _ = library();
    let text = large_file(10_000);
    let files = Files::default().with("main.downlead", text.as_str());
    let load = || Snapshot::load(&["main.downlead".to_owned()], &files);
    println!("{} bytes", text.len());
    let tree = File::parse(text.as_str());
    shortest("parse", 30, || File::parse(text.as_str()));
    shortest("lower everything", 30, || {
        let mut cache = LowerCache::default();
        let env = Env::gather(&[&tree], &mut cache, &mut Vec::new());
        tree.items()
            .iter()
            .map(|p| cache.get(&p.item, &env.lets, env.lets_key))
            .collect::<Vec<_>>()
    });
    shortest("cold: parse, lower, evaluate", 30, load);
    let later = || Snapshot::load_for_later(&["main.downlead".to_owned()], &files);
    let all = Span::new(0, u32::MAX);
    shortest("cold: the first stage of everything", 30, || {
        let mut s = later();
        s.evaluate(0, all, Stage::First, &|| false);
        s
    });
    let mut s = load();
    shortest("findings", 30, || s.diagnostics());
    shortest("report", 30, || s.report());
    let at = |line: &str| (text.find(line).expect("the line") + line.len() - 1) as u32;
    for (name, at) in [
        ("edit: a length of one station", at(RUN_LINE) - 4),
        ("edit: a comment", at("// the tr")),
        ("edit: a named value all stations use", at("let tower = 30")),
        ("edit: the cable all stations use", at("loss 0.1216")),
    ] {
        let mut n = 0u32;
        shortest(name, 60, || {
            n = n % 8 + 1;
            s.edit(0, Span::new(at, at + 1), &n.to_string(), &files);
        });
    }
    // a screen of 60 lines, as an editor asks for it
    let middle = at("station hill-50 ");
    let screen = Span::new(middle, middle + 60 * 28);
    let run = "run M1 ";
    let length = text[middle as usize..].find(run).expect("a run") + middle as usize + run.len();
    for (name, at) in [
        ("screen: a length of a station on it", length as u32),
        ("screen: the cable all stations use", at("loss 0.1216")),
    ] {
        for (stage, word) in [(Stage::First, "first stage"), (Stage::Whole, "whole")] {
            let mut n = 0u32;
            shortest(&format!("{name}, {word}"), 60, || {
                n = n % 8 + 1;
                let digit = n.to_string();
                s.edit_for_later(0, &[(Span::new(at, at + 1), &digit)], &files);
                s.evaluate(0, screen, stage, &|| false)
            });
        }
    }
    shortest("syntax's own edit of a line", 60, || {
        tree.edit(Span::new(at(RUN_LINE) - 4, at(RUN_LINE) - 3), "7")
    });
}
