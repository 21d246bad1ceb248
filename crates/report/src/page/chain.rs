//! The report on chains.

use downlead_base::{Code, Severity, codes};
use downlead_quantity::{power, power_dbm};

use super::{caution, findings, note};
use crate::document::{Block, Column, Document, Level, Place, Table, Text};
use crate::shape::chain::{BandReport, ChainReport, DiagnosticReport, Report, StationReport};
use crate::words::answer::{answers, closing};
use crate::words::chain::{self as words, Row};
use crate::words::figure::counted;

/// What of a report a page shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct With {
    /// Findings at the end: for formats whose reader does not see them elsewhere.
    pub findings: bool,
}

/// Widest source in a table that is short of room.
const SOURCE: u8 = 24;

fn columns<'a>() -> [Column<Row<'a>>; 11] {
    [
        Column::left("part", |r: &Row<'a>| {
            let indent = if r.node.branch.is_some() { "  " } else { "" };
            format!("{indent}{}", r.node.name()).into()
        }),
        Column::left("kind", |r: &Row<'a>| r.node.kind.word().into()).drop(7),
        Column::right("join dB", |r: &Row<'a>| {
            r.joins_db.map(words::loss_cell).unwrap_or_default().into()
        })
        .drop(5),
        Column::right("loss dB", |r: &Row<'a>| {
            words::loss_cell(r.node.loss_db).into()
        }),
        Column::right("cumulative dB", |r: &Row<'a>| db(r.node.cumulative_loss_db)).drop(3),
        // below a microwatt, as in reception, the level alone says it
        Column::right("power", |r: &Row<'a>| {
            let w = r.node.power_w.filter(|w| *w >= 1e-6);
            w.map(power).unwrap_or_default().into()
        })
        .drop(1),
        Column::right("forward", |r: &Row<'a>| {
            r.node.forward_w.map(power).unwrap_or_default().into()
        })
        .drop(4),
        Column::right("level", |r: &Row<'a>| level(r).into()),
        Column::right("U dB", |r: &Row<'a>| db(r.node.uncertainty_db)).drop(2),
        Column::right("SWR", |r: &Row<'a>| {
            r.node.swr.map(words::swr).unwrap_or_default().into()
        })
        .drop(6),
        Column::left("from", |r: &Row<'a>| words::source(r.node).into())
            .drop(8)
            .shrink(SOURCE),
    ]
}

fn db(value: Option<f64>) -> Text {
    value.map(words::db_cell).unwrap_or_default().into()
}

fn level(r: &Row<'_>) -> String {
    match (r.node.power_dbm, r.node.power_w) {
        (Some(dbm), _) => format!("{dbm:.1} dBm"),
        (None, Some(w)) => power_dbm(w),
        (None, None) => String::new(),
    }
}

/// The page.
#[must_use]
pub fn page(report: &Report, with: With) -> Document {
    let mut doc = Document {
        title: title(report),
        widest: None,
        blocks: Vec::new(),
    };
    let mut first = true;
    for s in &report.stations {
        if station(&mut doc, s, if first { &report.diagnostics } else { &[] }) {
            first = false;
        }
    }
    if first {
        warnings(&mut doc, &report.diagnostics);
    }
    for l in &report.links {
        super::link::link(&mut doc, l);
    }
    if with.findings {
        findings(&mut doc, &report.diagnostics);
    }
    match doc.blocks.is_empty() {
        true => doc.push(Block::Paragraph(
            "No chain in these files: nothing to compute.".into(),
        )),
        false => caution(&mut doc),
    }
    doc
}

fn title(report: &Report) -> String {
    let names: Vec<&str> = report
        .stations
        .iter()
        .map(|s| s.name.as_str())
        .filter(|n| !n.is_empty())
        .collect();
    match names.is_empty() {
        true => "Feed chains".to_owned(),
        false => format!("Feed chains: {}", names.join(", ")),
    }
}

/// Name and title of a station.
#[must_use]
pub fn station_words(s: &StationReport) -> String {
    match (s.name.as_str(), &s.title) {
        ("", _) => match s.chains.as_slice() {
            [one] => one.name.clone(),
            many => many.first().map_or(String::new(), |c| c.file.clone()),
        },
        (name, Some(title)) => format!("{name}: {title}"),
        (name, None) => name.to_owned(),
    }
}

/// Findings that a conclusion must not hide: ratings that are exceeded, and errors in the files, which
/// leave figures out. Verdicts have lines of their own.
fn warnings(doc: &mut Document, all: &[DiagnosticReport]) {
    const NAMED: usize = 2;
    let of = |code: &'static Code| all.iter().filter(|d| d.code == code.id);
    let exceeded: Vec<&DiagnosticReport> = of(&codes::RATING_EXCEEDED)
        .chain(of(&codes::VOLTAGE_EXCEEDED))
        .collect();
    for d in exceeded.iter().take(NAMED) {
        let at = Place::new(&d.file, d.line);
        let words =
            Text::from(format!("{} ", d.message)).with(Text::link(at.to_string(), at.clone()));
        doc.push(Block::Note(Level::Warning, words));
    }
    if let Some(more) = exceeded.len().checked_sub(NAMED).filter(|n| *n > 0) {
        let words = format!("{} exceeded.", counted(more, "more rating"));
        doc.push(Block::Note(Level::Warning, words.into()));
    }
    let judged = [
        &codes::RATING_EXCEEDED,
        &codes::LIMIT_NOT_MET,
        &codes::READING_CONTRADICTS,
        &codes::EXPECTATION_MISSED,
    ];
    let mut files: Vec<&str> = Vec::new();
    let mut errors = 0;
    for d in all {
        if d.severity.0 == Severity::Error && !judged.iter().any(|c| c.id == d.code) {
            errors += 1;
            if !files.contains(&d.file.as_str()) {
                files.push(&d.file);
            }
        }
    }
    if errors > 0 {
        let words = format!(
            "{} in {}: figures that depend on them are missing.",
            counted(errors, "error"),
            files.join(", ")
        );
        doc.push(Block::Note(Level::Warning, words.into()));
    }
}

/// One station, with the findings that belong to the conclusion. False where there is nothing to show.
fn station(doc: &mut Document, s: &StationReport, found: &[DiagnosticReport]) -> bool {
    let lines = answers(s);
    if lines.is_empty() {
        return false;
    }
    let at = s.chains.first().map(|c| Place::new(&c.file, c.line));
    doc.heading(1, station_words(s), at);
    doc.push(Block::Answers(lines));
    warnings(doc, found);
    if let Some(words) = closing(s) {
        note(doc, words);
    }
    super::rules::section(doc, s);
    super::exposure::section(doc, s);
    super::site::stated(doc, s);
    for chain in &s.chains {
        for band in &chain.bands {
            one(doc, chain, band);
        }
    }
    true
}

fn one(doc: &mut Document, chain: &ChainReport, band: &BandReport) {
    let at = Some(Place::new(&chain.file, chain.line));
    doc.heading(2, words::heading(chain, band), at);
    doc.table(nodes(chain, band));
    if !band.complete {
        doc.push(Block::Note(Level::Warning, words::INCOMPLETE.into()));
    }
    let mut facts = words::totals(chain, band);
    facts.extend(band.limits.iter().map(|l| ("limit", words::limit(l))));
    let open = band.limits_not_judged.iter();
    facts.extend(open.map(|l| ("limit", words::not_judged(l))));
    facts.extend(band.readings.iter().map(|r| ("read", words::reading(r))));
    let logs = band.logs.iter().flat_map(words::log);
    facts.extend(logs.map(|l| ("logged", l.into())));
    let budget = words::budget(&band.budget, 3);
    facts.extend(budget.into_iter().map(|b| ("uncertainty", b.into())));
    facts.extend(band.assumptions.iter().map(|a| ("assumed", a.into())));
    doc.facts(facts);
}

fn nodes(chain: &ChainReport, band: &BandReport) -> Table {
    let columns = columns();
    let mut table = Table::new(&columns);
    let mut branch: Option<&str> = None;
    for row in &words::rows(&band.nodes) {
        if row.node.branch.as_deref() != branch {
            branch = row.node.branch.as_deref();
            table.title(match branch {
                Some(path) => format!("branch {path}"),
                None => "all branches".to_owned(),
            });
        }
        let at = Place::new(&row.node.file, row.node.line);
        // what the library defines has its place in the chain
        let own = row.node.file == chain.file || !row.node.file.starts_with("library/");
        let at = match own {
            true => at,
            false => Place::new(&chain.file, row.node.chain_line),
        };
        table.row(&columns, row, Some(at));
    }
    table.without_empty()
}
