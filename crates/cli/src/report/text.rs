//! The report as plain text for a terminal or a printer.

use std::fmt::Write as _;

use downlead_quantity::{power, power_dbm};
use unicode_width::UnicodeWidthStr;

use super::words::{self, Row};
use crate::model::{BandReport, ChainReport, Report, StationReport};
use crate::ui::{Style, printable};

/// Widest source in the table; all of it is in the other formats.
const SOURCE_WIDTH: usize = 44;

/// The whole report.
pub(crate) fn text(report: &Report, style: Style) -> String {
    let mut out = String::new();
    for station in &report.stations {
        for chain in &station.chains {
            for band in &chain.bands {
                one(station, chain, band, style, &mut out);
            }
        }
    }
    if out.is_empty() {
        out.push_str("No chain in these files: nothing to compute.\n");
    } else {
        let _ = writeln!(out, "{}", style.faint(super::CAUTION));
    }
    out
}

fn one(
    station: &StationReport,
    chain: &ChainReport,
    band: &BandReport,
    style: Style,
    out: &mut String,
) {
    let mut head = words::heading(chain, band);
    if !station.name.is_empty() {
        head = format!("{}: {head}", station.name);
    }
    let place = format!("{}:{}", chain.file, chain.line);
    let _ = writeln!(
        out,
        "{}  {}\n",
        style.bold(&printable(&head)),
        style.faint(&printable(&place))
    );
    nodes(band, style, out);
    if !band.complete {
        let _ = writeln!(
            out,
            "  {}",
            style.doubtful(&format!("! {}", words::INCOMPLETE))
        );
    }
    out.push('\n');
    let mut lines: Vec<(&str, String)> = words::totals(chain, band);
    lines.extend(
        band.limits
            .iter()
            .map(|l| ("limit", words::limit(l, style))),
    );
    lines.extend(
        band.readings
            .iter()
            .map(|r| ("read", words::reading(r, style))),
    );
    lines.extend(
        band.logs
            .iter()
            .flat_map(words::log)
            .map(|l| ("logged", printable(&l).into_owned())),
    );
    lines.extend(
        words::budget(&band.budget, 3)
            .into_iter()
            .map(|b| ("doubt from", b)),
    );
    lines.extend(
        band.assumptions
            .iter()
            .map(|a| ("assumed", printable(a).into_owned())),
    );
    let width = lines
        .iter()
        .map(|(name, _)| name.width())
        .max()
        .unwrap_or(0);
    let mut before = "";
    for (name, words) in &lines {
        // a name that repeats is printed once
        let shown = if *name == before { "" } else { name };
        let _ = writeln!(
            out,
            "  {}{}  {words}",
            shown,
            " ".repeat(width - shown.width())
        );
        before = name;
    }
    out.push('\n');
}

fn nodes(band: &BandReport, style: Style, out: &mut String) {
    let rows = words::rows(&band.nodes);
    let forward = rows.iter().any(|r| r.node.forward_w.is_some());
    // below a microwatt, as in reception, the level alone says it
    let watts = rows
        .iter()
        .any(|r| r.node.power_w.is_some_and(|w| w >= 1e-6));
    let joins = rows.iter().any(|r| r.joins_db.is_some());
    let mut table = Columns::default();
    table.left("part").left("kind");
    if joins {
        table.right("join dB");
    }
    table.right("loss dB").right("so far dB");
    if watts {
        table.right("power");
    }
    if forward {
        table.right("forward");
    }
    table.right("level").right("± dB").right("SWR").left("from");
    let mut branch: Option<&str> = None;
    for Row { node, joins_db } in &rows {
        if node.branch.as_deref() != branch {
            branch = node.branch.as_deref();
            table.title(match branch {
                Some(path) => format!("branch {path}"),
                None => "all branches".to_owned(),
            });
        }
        let indent = if branch.is_some() { "  " } else { "" };
        let mut cells = vec![
            format!("{indent}{}", words::part(node)),
            node.kind.to_owned(),
        ];
        if joins {
            cells.push(words::joins_cell(*joins_db));
        }
        cells.push(words::loss_cell(node.loss_db));
        cells.push(words::maybe_db_cell(node.cumulative_loss_db));
        if watts {
            cells.push(node.power_w.map(power).unwrap_or_default());
        }
        if forward {
            cells.push(node.forward_w.map(power).unwrap_or_default());
        }
        cells.push(match (node.power_dbm, node.power_w) {
            (Some(dbm), _) => format!("{dbm:.1} dBm"),
            (None, Some(w)) => power_dbm(w),
            (None, None) => String::new(),
        });
        cells.push(words::maybe_db_cell(node.uncertainty_db));
        cells.push(words::swr_cell(node.swr));
        cells.push(words::shorten(&words::source(node), SOURCE_WIDTH));
        table.row(cells);
    }
    table.write(style, out);
}

/// A table with aligned columns, two blanks between them.
#[derive(Default)]
pub(crate) struct Columns {
    heads: Vec<(String, bool)>,
    rows: Vec<Line>,
}

enum Line {
    Cells(Vec<String>),
    Title(String),
}

impl Columns {
    /// A column aligned left.
    pub(crate) fn left(&mut self, head: &str) -> &mut Self {
        self.heads.push((head.to_owned(), false));
        self
    }

    /// A column aligned right.
    pub(crate) fn right(&mut self, head: &str) -> &mut Self {
        self.heads.push((head.to_owned(), true));
        self
    }

    /// A row; the cells are in the order of the columns.
    pub(crate) fn row(&mut self, cells: Vec<String>) {
        self.rows.push(Line::Cells(
            cells
                .iter()
                .map(|c| printable(c).replace(['\n', '\t'], " "))
                .collect(),
        ));
    }

    fn title(&mut self, text: String) {
        self.rows.push(Line::Title(printable(&text).into_owned()));
    }

    /// Writes it, indented by two.
    pub(crate) fn write(&self, style: Style, out: &mut String) {
        let mut widths: Vec<usize> = self.heads.iter().map(|(h, _)| h.width()).collect();
        for row in &self.rows {
            if let Line::Cells(cells) = row {
                for (width, cell) in widths.iter_mut().zip(cells) {
                    *width = (*width).max(cell.width());
                }
            }
        }
        let line = |cells: &mut dyn Iterator<Item = &str>| {
            let mut line = String::new();
            for ((cell, width), (_, right)) in cells.zip(&widths).zip(&self.heads) {
                let gap = " ".repeat(width - cell.width());
                line.push_str("  ");
                line += &if *right {
                    gap + cell
                } else {
                    cell.to_owned() + &gap
                };
            }
            line.trim_end().to_owned()
        };
        let head = line(&mut self.heads.iter().map(|(h, _)| h.as_str()));
        let _ = writeln!(out, "{}", style.faint(&head));
        for row in &self.rows {
            let _ = match row {
                Line::Cells(cells) => {
                    writeln!(out, "{}", line(&mut cells.iter().map(String::as_str)))
                }
                Line::Title(title) => writeln!(out, "  {title}"),
            };
        }
    }
}
