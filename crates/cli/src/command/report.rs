//! `downlead report`: chain tables and totals.

use std::io;

use downlead_base::Severity;

use super::{judged, load};
use crate::args::{ReportArgs, ReportFormat, Table};
use crate::draw::draw;
use crate::files::gather;
use crate::model::{Report, SCHEMA};
use crate::report;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.schema {
        ui.print(&report::schema()?)?;
        return Ok(Outcome::Clean);
    }
    if args.table != Table::Nodes && args.format != ReportFormat::Csv {
        ui.complain("--table goes with --format csv; the other formats hold all tables");
        return Ok(Outcome::Trouble);
    }
    let gathered = gather(&args.paths, args.root.as_deref());
    let loaded = load(&gathered, ui);
    let mut all = Report {
        schema: SCHEMA,
        stations: Vec::new(),
        diagnostics: Vec::new(),
    };
    let mut text = String::new();
    let style = ui.style;
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let one = snapshot.report();
        all.stations.extend(one.stations);
        all.diagnostics.extend(one.diagnostics);
        if args.format == ReportFormat::Text {
            // names lead from here to the file; they differ from root to root
            let part = Report {
                schema: SCHEMA,
                stations: std::mem::take(&mut all.stations),
                diagnostics: Vec::new(),
            };
            text += &report::text(&part, style, &|file| format!("{}{file}", group.prefix));
        }
    }
    match args.format {
        ReportFormat::Text => ui.print(&text)?,
        ReportFormat::Json => ui.print(&report::json(&all)?)?,
        ReportFormat::Markdown => ui.print(&report::markdown(&all))?,
        ReportFormat::Csv => ui.print(&report::csv(&all, args.table).map_err(io::Error::other)?)?,
    }
    // JSON and Markdown carry the findings themselves
    if matches!(args.format, ReportFormat::Text | ReportFormat::Csv) {
        let style = ui.error_style;
        let drawn = draw(&loaded.findings, style, |f| f.severity >= Severity::Warning);
        if !drawn.is_empty() {
            ui.note(drawn.trim_end());
        }
    }
    Ok(loaded.outcome.max(judged(&loaded.findings, false)))
}
