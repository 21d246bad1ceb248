//! Best times over many rounds, which a busy machine spoils less than means; also something for a profiler.
#![allow(clippy::print_stdout)]

use std::hint::black_box;
use std::time::Instant;

use downlead_base::Span;
use downlead_syntax::{File, format, tokens};

#[path = "../benches/generate/mod.rs"]
mod generate;

fn main() {
    let rounds: u32 = std::env::args()
        .nth(1)
        .and_then(|n| n.parse().ok())
        .unwrap_or(50);
    let clean = generate::station_file(10_000, 0);
    let broken = generate::station_file(10_000, 50);
    let toml = generate::toml_file(clean.len());
    let file = File::parse(clean.as_str());
    let run = clean[clean.len() / 2..]
        .find("run M1 ")
        .map_or(0, |i| clean.len() / 2 + i + 7) as u32;
    let place = Span::new(run, run + 1);
    let mut tree_sitter = tree_sitter::Parser::new();
    let grammar = tree_sitter
        .set_language(&tree_sitter_toml_ng::LANGUAGE.into())
        .is_ok();

    // in turn, so that what else the machine does meets all alike
    let mut jobs: Vec<Job<'_>> = vec![
        (
            "lex",
            clean.len(),
            Box::new(|| _ = black_box(tokens(&clean).count())),
        ),
        (
            "parse, clean",
            clean.len(),
            Box::new(|| _ = black_box(File::parse(clean.as_str()))),
        ),
        (
            "parse, an error every 50 lines",
            broken.len(),
            Box::new(|| _ = black_box(File::parse(broken.as_str()))),
        ),
        (
            "format",
            clean.len(),
            Box::new(|| _ = black_box(format(&clean))),
        ),
        (
            "toml DeTable",
            toml.len(),
            Box::new(|| _ = black_box(toml::de::DeTable::parse(&toml).is_ok())),
        ),
        (
            "toml Table",
            toml.len(),
            Box::new(|| _ = black_box(toml.parse::<toml::Table>().is_ok())),
        ),
        (
            "edit of one digit",
            1,
            Box::new(|| _ = black_box(file.edit(place, "7"))),
        ),
        (
            "edit and the whole text",
            1,
            Box::new(|| _ = black_box(file.edit(place, "7").text().len())),
        ),
    ];
    if grammar {
        jobs.push((
            "tree-sitter TOML",
            toml.len(),
            Box::new(|| _ = black_box(tree_sitter.parse(&toml, None))),
        ));
    }
    let mut best = vec![f64::INFINITY; jobs.len()];
    for _ in 0..rounds {
        for ((_, _, job), best) in jobs.iter_mut().zip(&mut best) {
            let start = Instant::now();
            job();
            *best = best.min(start.elapsed().as_secs_f64());
        }
    }
    for ((name, bytes, _), best) in jobs.iter().zip(best) {
        println!(
            "{name:32} {:9.1} us {:8.1} MB/s",
            best * 1e6,
            *bytes as f64 / best / 1e6
        );
    }
}

type Job<'a> = (&'static str, usize, Box<dyn FnMut() + 'a>);
