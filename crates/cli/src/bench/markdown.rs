//! Bench sessions as Markdown.

use std::fmt::Write as _;

use super::{text, words};
use crate::report::{findings, inline};
use crate::ui::Style;
use downlead_report::shape::bench::*;

/// All sessions.
pub(crate) fn markdown(report: &BenchReport) -> String {
    let mut out = String::from("# Bench sessions\n");
    for s in &report.sessions {
        session(s, &mut out);
    }
    if !report.trends.is_empty() {
        out.push_str("\n## Over the years, measured over expected loss\n\n");
        for t in &report.trends {
            let _ = writeln!(out, "- {}", inline(&words::trend(t)));
        }
    }
    findings(&report.diagnostics, &mut out);
    out
}

fn session(s: &SessionReport, out: &mut String) {
    let title = match &s.title {
        Some(t) => format!("{t} ({})", s.name),
        None => s.name.clone(),
    };
    let _ = writeln!(out, "\n## {}\n", inline(&title));
    for (name, words) in text::head(s) {
        let _ = writeln!(out, "- {name}: {}", inline(&words));
    }
    for p in &s.pieces {
        piece(s, p, out);
    }
    ranking(s, out);
    out.push_str("\n### Drift of the baseline\n\n");
    for d in words::drift(&s.bands) {
        let _ = writeln!(out, "- {}", inline(&d));
    }
    if !s.reflections.is_empty() {
        out.push_str("\n### SWR\n\n");
        for w in words::swrs(&s.reflections) {
            let _ = writeln!(out, "- {}", inline(&w));
        }
    }
    out.push_str("\n### Doubt and assumptions\n\n");
    for d in &s.doubt {
        let _ = writeln!(out, "- doubt from {}", inline(&words::doubt(d)));
    }
    for a in &s.assumptions {
        let _ = writeln!(out, "- assumed: {}", inline(a));
    }
    let _ = writeln!(out, "\n{}", text::RULE);
}

fn piece(s: &SessionReport, p: &PieceReport, out: &mut String) {
    let _ = writeln!(out, "\n### {}\n", inline(&words::piece_head(p)));
    out.push_str("| band | MHz | loss, dB | through | expected, dB | differs by, dB | ± U, dB | verdict | to tell it | by |\n");
    out.push_str("|---|---:|---:|---:|---:|---:|---:|---|---|---|\n");
    for r in s.results.iter().filter(|r| r.piece == p.piece) {
        let mut cells = words::result_cells(r);
        cells.push(r.method.to_owned());
        let cells: Vec<String> = cells.iter().map(|c| inline(c)).collect();
        let _ = writeln!(out, "| {} |", cells.join(" | "));
    }
    out.push('\n');
    if let Some(w) = &p.whole {
        let _ = writeln!(
            out,
            "- as a whole: {}",
            inline(&words::whole(w, Style::PLAIN))
        );
    }
    if let Some(f) = &p.fit {
        let _ = writeln!(out, "- its own fit: {}", inline(&words::fit(f)));
    }
    if let Some(why) = &p.fit_refused {
        let _ = writeln!(out, "- its own fit: none, {}", inline(why));
    }
    for l in &p.lengths {
        let _ = writeln!(
            out,
            "- length: {}",
            inline(&words::electrical(l, Style::PLAIN))
        );
    }
}

fn ranking(s: &SessionReport, out: &mut String) {
    out.push_str("\n### Loss per 100 m, least first\n\n| band | rank | piece | dB/100 m (k = 2) | |\n|---|---|---|---:|---|\n");
    for b in &s.bands {
        for r in &b.ranking {
            let cells = [
                b.band.clone(),
                format!("{}{}", r.rank, if r.sharing > 1 { "=" } else { "" }),
                r.piece.clone(),
                words::per_100(r.loss_db_per_m, r.uncertainty_db_per_m),
                if r.trusted {
                    String::new()
                } else {
                    "less than five times its doubt: do not scale it up".to_owned()
                },
            ];
            let cells: Vec<String> = cells.iter().map(|c| inline(c)).collect();
            let _ = writeln!(out, "| {} |", cells.join(" | "));
        }
    }
}
