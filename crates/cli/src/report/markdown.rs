//! The report as Markdown: a heading, a table and lists for each chain and band.

use std::fmt::Write as _;

use downlead_quantity::{power, power_dbm};

use super::words::{self, Row};
use crate::model::{BandReport, ChainReport, DiagnosticReport, Report};
use crate::ui::{Style, printable};

/// The whole report.
pub(crate) fn markdown(report: &Report) -> String {
    let mut out = String::from("# Feed chains\n");
    for station in &report.stations {
        let title = match (&station.title, station.name.as_str()) {
            (Some(title), "") => title.clone(),
            (Some(title), name) => format!("{title} ({name})"),
            (None, "") => "Chains outside a station".to_owned(),
            (None, name) => name.to_owned(),
        };
        let _ = writeln!(out, "\n## {}", inline(&title));
        for chain in &station.chains {
            for band in &chain.bands {
                one(chain, band, &mut out);
            }
        }
    }
    findings(&report.diagnostics, &mut out);
    let _ = writeln!(out, "\n---\n\n{}", super::CAUTION);
    out
}

/// The findings, under a head of their own.
pub(crate) fn findings(all: &[DiagnosticReport], out: &mut String) {
    if all.is_empty() {
        return;
    }
    out.push_str("\n## Findings\n\n");
    for d in all {
        let _ = writeln!(
            out,
            "- {} `{}` {}:{}: {}",
            d.severity,
            d.code,
            inline(&d.file),
            d.line,
            inline(&d.message)
        );
    }
}

fn one(chain: &ChainReport, band: &BandReport, out: &mut String) {
    let _ = writeln!(out, "\n### {}\n", inline(&words::heading(chain, band)));
    out.push_str("| part | kind | joins before, dB | loss, dB | so far, dB | power | level | ±, dB (k = 2) | SWR | from |\n");
    out.push_str("|---|---|---:|---:|---:|---:|---:|---:|---:|---|\n");
    for Row { node, joins_db } in words::rows(&band.nodes) {
        let part = match &node.branch {
            Some(branch) => format!("{} in {branch}", words::part(node)),
            None => words::part(node),
        };
        let cells = [
            part,
            node.kind.to_owned(),
            words::joins_cell(joins_db),
            words::loss_cell(node.loss_db),
            words::maybe_db_cell(node.cumulative_loss_db),
            node.power_w
                .filter(|w| *w >= 1e-6)
                .map(power)
                .unwrap_or_default(),
            node.power_w.map(power_dbm).unwrap_or_default(),
            words::maybe_db_cell(node.uncertainty_db),
            words::swr_cell(node.swr),
            words::source(node),
        ];
        let cells: Vec<String> = cells.iter().map(|c| inline(c)).collect();
        let _ = writeln!(out, "| {} |", cells.join(" | "));
    }
    out.push('\n');
    if !band.complete {
        let _ = writeln!(out, "**Not complete: {}.**\n", words::INCOMPLETE);
    }
    for (name, words) in words::totals(chain, band) {
        let _ = writeln!(out, "- {name}: {}", inline(&words));
    }
    for l in &band.limits {
        let _ = writeln!(out, "- limit {}", inline(&words::limit(l, Style::PLAIN)));
    }
    for r in &band.readings {
        let _ = writeln!(out, "- read {}", inline(&words::reading(r, Style::PLAIN)));
    }
    for l in band.logs.iter().flat_map(words::log) {
        let _ = writeln!(out, "- logged: {}", inline(&l));
    }
    for b in words::budget(&band.budget, 3) {
        let _ = writeln!(out, "- doubt from {}", inline(&b));
    }
    for a in &band.assumptions {
        let _ = writeln!(out, "- assumed: {}", inline(a));
    }
}

/// Text that stays text in Markdown, on one line.
pub(crate) fn inline(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in printable(text).chars() {
        match c {
            '\n' | '\r' | '\t' => out.push(' '),
            '|' | '\\' | '`' | '*' | '_' | '<' | '[' | ']' | '#' | '&' => {
                out.push('\\');
                out.push(c);
            }
            c => out.push(c),
        }
    }
    out
}
