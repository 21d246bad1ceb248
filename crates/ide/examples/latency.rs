//! Times of the features on texts of 100 and 10,000 lines:
//! `cargo run --release -p downlead-ide --example latency`.
#![allow(clippy::print_stdout, reason = "a table for people")]
#![allow(clippy::disallowed_methods, reason = "it takes times")]

use std::time::Instant;

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide::*;
use downlead_testkit::{Files, large_file};

fn time<T>(name: &str, mut f: impl FnMut() -> T) {
    let mut all: Vec<u128> = (0..60)
        .map(|_| {
            let t = Instant::now();
            std::hint::black_box(f());
            t.elapsed().as_micros()
        })
        .collect();
    all.sort_unstable();
    println!(
        "  {name:<22} {:>7} µs median {:>7} µs worst",
        all[30], all[59]
    );
}

fn main() {
    for lines in [100, 10_000] {
        let text = large_file(lines);
        let files = Files::default().with("main.downlead", text.clone());
        let mut s = Snapshot::load(&["main.downlead".to_owned()], &files);
        let doc = Doc::File(0);
        let c = Config::default();
        let len = text.len() as u32;
        let at = text
            .rfind("    run")
            .or_else(|| text.rfind("run "))
            .unwrap_or(0) as u32
            + 6;
        let window = Span::new(at.saturating_sub(2000), (at + 1000).min(len));
        println!(
            "{} lines, {} findings",
            text.lines().count(),
            file_diagnostics(&s, 0, &c).len()
        );
        time("edit and evaluate", || {
            s.edit(0, Span::new(at, at), "1", &files);
            s.edit(0, Span::new(at, at + 1), "", &files);
        });
        time("hints, all", || inlay_hints(&s, doc, Span::new(0, len), &c));
        time("hints, a screen", || inlay_hints(&s, doc, window, &c));
        time("findings", || file_diagnostics(&s, 0, &c));
        time("tokens, all", || semantic_tokens(&s, doc, None));
        time("tokens, a screen", || {
            semantic_tokens(&s, doc, Some(window))
        });
        time("hover", || hover(&s, doc, at, &c));
        time("completion", || completion(&s, doc, at, &c));
        time("signature", || signature_help(&s, doc, at));
        time("references", || references(&s, doc, at, true));
        time("highlights", || highlights(&s, doc, at));
        time("symbols", || document_symbols(&s, doc));
        time("lenses", || code_lenses(&s, doc, &c));
        time("folding", || folding_ranges(&s, doc));
        time("actions", || code_actions(&s, doc, Span::new(at, at), &c));
        time("format", || format(&s, doc));
        time("on type", || format_on_type(&s, doc, at, '}'));
    }
}
