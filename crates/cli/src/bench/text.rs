//! Bench sessions as plain text for a terminal or a printer.

use std::fmt::Write as _;

use downlead_quantity::number;
use unicode_width::UnicodeWidthStr;

use super::{bars, words};
use crate::report::Columns;
use crate::ui::{Style, printable, wrapped};
use downlead_report::shape::bench::*;

/// Widest line of running words.
pub(crate) const WIDTH: usize = 96;

/// Stands under every session.
pub(crate) const RULE: &str = "differs: the difference exceeds its doubt U (k = 2); agrees: it does not, and U is at most half of the \
     expected loss; cannot tell: it is more. To tell it: a meter so many times better, or a piece so long.";

/// All sessions.
pub(crate) fn text(report: &BenchReport, style: Style) -> String {
    if report.sessions.is_empty() {
        return "No bench session in these files: nothing to compute.\n".to_owned();
    }
    let mut out = String::new();
    for s in &report.sessions {
        session(s, style, &mut out);
    }
    if !report.trends.is_empty() {
        let _ = writeln!(
            out,
            "{}\n",
            style.bold("over the years, measured over expected loss")
        );
        for t in &report.trends {
            let _ = writeln!(out, "  {}", wrapped(&printable(&words::trend(t)), WIDTH, 2));
        }
        out.push('\n');
    }
    out
}

fn session(s: &SessionReport, style: Style, out: &mut String) {
    let title = match &s.title {
        Some(t) => format!("{}: {t}", s.name),
        None => s.name.clone(),
    };
    let place = format!("{}:{}", s.file, s.line);
    let _ = writeln!(
        out,
        "{}  {}\n",
        style.bold(&printable(&title)),
        style.faint(&printable(&place))
    );
    lines(&head(s), out);
    for p in &s.pieces {
        out.push('\n');
        piece(s, p, style, out);
    }
    out.push('\n');
    ranking(s, style, out);
    lines(&tail(s), out);
    let rule = wrapped(RULE, WIDTH, 2);
    if s.results.iter().any(|r| r.verdict.is_some()) {
        let _ = writeln!(out, "\n  {}", style.faint(&rule));
    }
    let _ = writeln!(out);
}

/// Names and what stands behind them, aligned and wrapped.
fn lines(lines: &[(&str, String)], out: &mut String) {
    let width = lines.iter().map(|(n, _)| n.width()).max().unwrap_or(0);
    let mut before = "";
    for (name, words) in lines {
        let shown = if *name == before { "" } else { name };
        let _ = writeln!(
            out,
            "  {shown}{}  {}",
            " ".repeat(width - shown.width()),
            wrapped(&printable(words), WIDTH, width + 4)
        );
        before = name;
    }
}

pub(super) fn head(s: &SessionReport) -> Vec<(&'static str, String)> {
    let mut read = s.date.clone().unwrap_or_else(|| "no date".to_owned());
    if let Some(p) = &s.person {
        read += &format!(" by {p}");
    }
    if let Some(c) = s.temperature_c {
        read += &format!(", at {} °C", number(c, 1));
    }
    read += &format!(", {} readings", s.readings);
    if s.rows_lost > 0 {
        let rows = if s.rows_lost == 1 { "row" } else { "rows" };
        read += &format!("; {} {rows} of other files could not be taken", s.rows_lost);
    }
    let mut out = vec![("read", read)];
    out.extend(s.instruments.iter().map(|i| ("with", words::instrument(i))));
    out.push(("verdicts", words::counts(s.verdicts)));
    out
}

fn piece(s: &SessionReport, p: &PieceReport, style: Style, out: &mut String) {
    let rows: Vec<&ResultReport> = s.results.iter().filter(|r| r.piece == p.piece).collect();
    let mut head = words::piece_head(p);
    // one method for all bands is said once
    let one = rows.first().map(|r| r.method);
    let one = one.filter(|m| rows.iter().all(|r| r.method == *m));
    if let Some(m) = one {
        head += &format!("; by {m}");
    }
    let _ = writeln!(out, "  {}", style.bold(&printable(&head)));
    if rows.is_empty() {
        let _ = writeln!(out, "  no reading of it could be used");
    } else {
        table(&rows, one.is_none(), style, out);
    }
    let mut more: Vec<(&str, String)> = Vec::new();
    if let Some(w) = &p.whole {
        more.push(("as a whole", words::whole(w, style)));
    }
    if let Some(f) = &p.fit {
        more.push(("its own fit", words::fit(f)));
    }
    if let Some(why) = &p.fit_refused {
        more.push(("its own fit", format!("none: {why}")));
    }
    more.extend(
        p.lengths
            .iter()
            .map(|l| ("length", words::electrical(l, style))),
    );
    lines_painted(&more, out);
}

/// As [`lines`], for words that hold colours.
fn lines_painted(lines: &[(&str, String)], out: &mut String) {
    for (name, words) in lines {
        let _ = writeln!(out, "  {name:<11}  {}", wrapped(words, WIDTH, 15));
    }
}

fn table(rows: &[&ResultReport], method: bool, style: Style, out: &mut String) {
    let mut t = Columns::default();
    t.left("band")
        .right("MHz")
        .right("loss dB")
        .right("through")
        .right("expected")
        .right("differs by")
        .right("± U")
        .left("verdict")
        .left("to tell it");
    if method {
        t.left("by");
    }
    for r in rows {
        let mut cells = words::result_cells(r);
        if method {
            cells.push(r.method.to_owned());
        }
        t.row(cells);
    }
    let mut drawn = String::new();
    t.write(style, &mut drawn);
    // widths are counted without colours, so these come last
    if style.colour {
        for word in ["agrees", "differs", "cannot-tell"] {
            let plain = words::verdict(word, Style::PLAIN);
            drawn = drawn.replace(&plain, &words::verdict(word, style));
        }
    }
    out.push_str(&drawn);
}

fn ranking(s: &SessionReport, style: Style, out: &mut String) {
    let bands: Vec<&BandReport> = s.bands.iter().filter(|b| b.ranking.len() > 1).collect();
    if bands.is_empty() {
        return;
    }
    let _ = writeln!(out, "  {}", style.bold("loss in dB per 100 m, least first"));
    let mut names = 0;
    for r in bands.iter().flat_map(|b| &b.ranking) {
        names = names.max(r.piece.width());
    }
    let mut open = false;
    for b in bands {
        let _ = writeln!(
            out,
            "  {}",
            printable(&downlead_report::words::figure::band_in_words(
                &b.band,
                b.frequency_hz
            ))
        );
        for (r, bar) in b.ranking.iter().zip(bars::bars(&b.ranking)) {
            let rank = format!("{}{}", r.rank, if r.sharing > 1 { "=" } else { "" });
            let value = words::per_100(r.loss_db_per_m, r.uncertainty_db_per_m);
            let piece = printable(&r.piece);
            let gap = " ".repeat(names - r.piece.width());
            let line = format!("    {rank:<3} {piece}{gap}  {value:>14}  {bar}");
            let _ = writeln!(out, "{}", line.trim_end());
            open |= !r.trusted;
        }
    }
    let mut key =
        "= cannot be told apart from a neighbour of the same rank; ├─●─┤ value and doubt (k = 2)"
            .to_owned();
    if open {
        key += "; ○ the loss is less than five times its doubt: do not scale it up";
    }
    let _ = writeln!(out, "  {}\n", style.faint(&wrapped(&key, WIDTH, 2)));
}

fn tail(s: &SessionReport) -> Vec<(&'static str, String)> {
    let mut out = Vec::new();
    out.extend(words::drift(&s.bands).into_iter().map(|d| ("drift", d)));
    out.extend(words::swrs(&s.reflections).into_iter().map(|w| ("SWR", w)));
    let all: Vec<String> = s.doubt.iter().map(words::doubt).collect();
    if !all.is_empty() {
        out.push((
            "doubt from",
            all.join(", ") + ", standard, by share of the variance",
        ));
    }
    out.extend(s.assumptions.iter().map(|a| ("assumed", a.clone())));
    out
}
