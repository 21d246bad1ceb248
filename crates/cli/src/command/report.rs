//! `downlead report`: chain tables and totals.

use std::io;

use downlead_base::Severity;

use super::bench::write_plots;
use super::{judged, load};
use crate::args::{ReportArgs, ReportFormat, Table};
use crate::draw::draw;
use crate::files::gather;
use crate::model::{Report, SCHEMA};
use crate::report;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.schema {
        ui.print(&report::schema::<Report>()?)?;
        return Ok(Outcome::Clean);
    }
    if args.table != Table::Nodes && args.format != ReportFormat::Csv {
        ui.complain("--table goes with --format csv; the other formats hold all tables");
        return Ok(Outcome::Trouble);
    }
    let gathered = gather(&args.paths, args.root.as_deref());
    let loaded = load(&gathered, ui);
    if loaded.files == 0 {
        return Ok(loaded.outcome);
    }
    let mut all = Report {
        schema: SCHEMA,
        stations: Vec::new(),
        diagnostics: Vec::new(),
    };
    let mut plots = Vec::new();
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let mut one = snapshot.report();
        if args.format == ReportFormat::Text {
            // people get names that lead from here to the file, programs names below the root
            let chains = one.stations.iter_mut().flat_map(|s| &mut s.chains);
            chains.for_each(|c| c.file.insert_str(0, &group.prefix));
        }
        if args.plot.is_some() {
            plots.extend(report::plots::of_logs(snapshot));
        }
        all.stations.extend(one.stations);
        all.diagnostics.extend(one.diagnostics);
    }
    let mut outcome = loaded.outcome;
    if let Some(folder) = &args.plot {
        outcome = outcome.max(write_plots(folder, &plots, ui));
    }
    match args.format {
        ReportFormat::Text => {
            let style = ui.style;
            ui.print(&report::text(&all, style))?;
        }
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
    Ok(outcome.max(judged(&loaded.findings, false)))
}
