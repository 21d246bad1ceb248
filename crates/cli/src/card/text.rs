//! Cards as plain text of 80 columns, Markdown and CSV.

use std::fmt::Write as _;

use downlead_quantity::{frequency, number, power, sig};
use unicode_width::UnicodeWidthStr;

use super::SAFETY;
use crate::report::cells::{maybe, number as plain, table, text as words};
use crate::report::inline;
use crate::report::words::{NOT_KNOWN, shorten, swr_cell};
use crate::ui::{Style, printable, wrapped};
use downlead_report::shape::card::{Card, CardFile, Earlier, TestPoint};

/// Fits a sheet of paper and a narrow terminal.
const WIDTH: usize = 80;
fn heading(c: &Card) -> String {
    let mut out = if c.station.is_empty() {
        c.chain.clone()
    } else {
        format!("{}: {}", c.station, c.chain)
    };
    let f = frequency(c.frequency_hz);
    if c.band != f {
        out += &format!(", {}", c.band);
    }
    if let Some(p) = c.point {
        out += &format!(" {p}");
    }
    format!("{out}, {f}")
}

/// What the spans hold.
fn footing(c: &Card) -> String {
    match &c.instrument {
        Some(m) if c.instrument_set_power => format!(
            "May read: 95 in 100 readings with {m} lie there if the text is right. It set the transmitter too, so \
             its scale cancels; with another meter, allow for both (--with METER)."
        ),
        Some(m) => format!(
            "May read: 95 in 100 readings with {m} lie there if the text is right; its own error is in it."
        ),
        None => "May read: 95 in 100 powers lie there if the text is right. No meter is known, so its own error \
                 is not in it; --with METER puts it in."
            .to_owned(),
    }
}

/// `30.4 to 33.6 W`: both ends in the same unit.
fn span(p: &TestPoint) -> String {
    let (Some(low), Some(high)) = (p.low_w, p.high_w) else {
        return String::new();
    };
    // the unit of the upper end, as `power` would choose it
    let shown = power(high);
    let (scale, unit) = match shown.rsplit_once(' ') {
        Some((_, "kW")) => (1e-3, "kW"),
        Some((_, "mW")) => (1e3, "mW"),
        Some((_, "µW")) => (1e6, "µW"),
        _ => (1.0, "W"),
    };
    format!("{} to {} {unit}", sig(low * scale, 3), sig(high * scale, 3))
}

fn earlier(r: &Earlier) -> String {
    let what = match (r.read_w, r.read_swr) {
        (Some(w), _) => format!("{} {}", power(w), r.quantity),
        (None, Some(s)) => format!("SWR {}", number(s, 2)),
        (None, None) => r.quantity.to_owned(),
    };
    let date = r.date.as_ref().map_or(String::new(), |d| format!(", {d}"));
    let with = r
        .instrument
        .as_ref()
        .map_or(String::new(), |i| format!(" with {i}"));
    format!(
        "{what}{date}{with}: {}",
        crate::report::words::verdict(r.verdict, Style::PLAIN)
    )
}

/// All cards, one under the other.
pub(crate) fn text(file: &CardFile, style: Style) -> String {
    if file.cards.is_empty() {
        return "No transmit chain in these files: there is no power to read.\n".to_owned();
    }
    let mut out = String::new();
    for c in &file.cards {
        one(c, style, &mut out);
    }
    for line in SAFETY {
        let _ = writeln!(out, "{}", wrapped(line, WIDTH, 0));
    }
    out
}

fn one(c: &Card, style: Style, out: &mut String) {
    let head = shorten(&printable(&heading(c)), WIDTH);
    let _ = writeln!(out, "{}", style.bold(&head));
    let place = format!("{}:{}", c.file, c.line);
    let _ = writeln!(out, "{}\n", style.faint(&printable(&place)));
    let _ = writeln!(
        out,
        "date ________________   who ____________________   meter ____________________\n"
    );
    out.push_str("at               forward  may read            dBm    SWR  today W     SWR\n");
    let mut branch: Option<&str> = None;
    for p in &c.points {
        if p.branch.as_deref() != branch {
            branch = p.branch.as_deref();
            let name = branch.map_or_else(|| "all branches".to_owned(), |b| format!("branch {b}"));
            let _ = writeln!(out, "{}", printable(&name));
        }
        row(p, out);
    }
    let _ = writeln!(out, "\n{}\n", wrapped(&printable(&footing(c)), WIDTH, 0));
}

fn row(p: &TestPoint, out: &mut String) {
    let at = shorten(&printable(&p.at), 15);
    let gap = " ".repeat(15 - at.width().min(15));
    let _ = writeln!(
        out,
        "{at}{gap} {:>8}  {:<17} {:>5} {:>6}  __________  _________",
        p.forward_w.map_or_else(|| "-".to_owned(), power),
        if p.forward_w.is_some() {
            span(p)
        } else {
            NOT_KNOWN.to_owned()
        },
        p.forward_dbm.map(|d| format!("{d:.1}")).unwrap_or_default(),
        swr_cell(p.swr),
    );
    for r in &p.read {
        let _ = writeln!(out, "    {}", shorten(&printable(&earlier(r)), WIDTH - 4));
    }
}

/// All cards as Markdown.
pub(crate) fn markdown(file: &CardFile) -> String {
    let mut out = String::from("# Expected readings\n");
    for c in &file.cards {
        let _ = writeln!(out, "\n## {}\n", inline(&heading(c)));
        out.push_str("date \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_ who \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_ meter \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\n\n");
        out.push_str(
            "| at | forward | may read | dBm | SWR | today, W | today, SWR | read before |\n",
        );
        out.push_str("|---|---:|---|---:|---:|---|---|---|\n");
        for p in &c.points {
            let at = match &p.branch {
                Some(b) => format!("{} in {b}", p.at),
                None => p.at.clone(),
            };
            let before: Vec<String> = p.read.iter().map(earlier).collect();
            let cells = [
                at,
                p.forward_w.map_or_else(|| NOT_KNOWN.to_owned(), power),
                span(p),
                p.forward_dbm.map(|d| format!("{d:.1}")).unwrap_or_default(),
                swr_cell(p.swr),
                String::new(),
                String::new(),
                before.join("; "),
            ];
            let cells: Vec<String> = cells.iter().map(|c| inline(c)).collect();
            let _ = writeln!(out, "| {} |", cells.join(" | "));
        }
        let _ = writeln!(out, "\n{}", inline(&footing(c)));
    }
    out.push_str("\n---\n\n");
    for line in SAFETY {
        let _ = writeln!(out, "{line}");
    }
    out
}

/// All test points as CSV, with empty columns to fill.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub(crate) fn csv(file: &CardFile) -> Result<String, csv::Error> {
    let head = [
        "station",
        "chain",
        "band",
        "point",
        "frequency_hz",
        "at",
        "branch",
        "forward_w",
        "low_w",
        "high_w",
        "forward_dbm",
        "uncertainty_db",
        "swr",
        "instrument",
        "today_w",
        "today_swr",
        "today_date",
        "today_person",
        "today_instrument",
    ];
    let mut rows = Vec::new();
    for c in &file.cards {
        for p in &c.points {
            let mut row = vec![
                c.station.clone(),
                c.chain.clone(),
                c.band.clone(),
                c.point.unwrap_or_default().to_owned(),
                plain(c.frequency_hz),
                p.at.clone(),
                words(p.branch.as_ref()),
                maybe(p.forward_w),
                maybe(p.low_w),
                maybe(p.high_w),
                maybe(p.forward_dbm),
                maybe(p.uncertainty_db),
                maybe(p.swr),
                words(c.instrument.as_ref()),
            ];
            row.resize(head.len(), String::new());
            rows.push(row);
        }
    }
    table(&head, rows)
}
