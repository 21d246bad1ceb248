//! `downlead bench`: sessions of readings against what the cables promise.

use std::collections::HashMap;
use std::io;
use std::path::Path;

use downlead_base::Severity;
use downlead_eval::Places;

use super::{judged, load};
use crate::args::{BenchArgs, BenchTable, ReportFormat};
use crate::bench;
use crate::bench::plots::Plot;
use crate::bench::shape::{BenchReport, SCHEMA};
use crate::draw::draw;
use crate::files::gather;
use crate::loader::plain_io;
use crate::report;
use crate::ui::{Outcome, Ui};
use crate::write;

pub(crate) fn run(args: &BenchArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.schema {
        ui.print(&report::schema::<BenchReport>()?)?;
        return Ok(Outcome::Clean);
    }
    if args.table != BenchTable::Results && args.format != ReportFormat::Csv {
        ui.complain("--table goes with --format csv; the other formats hold all tables");
        return Ok(Outcome::Trouble);
    }
    let gathered = gather(&args.paths, args.root.as_deref());
    let loaded = load(&gathered, ui);
    if loaded.files == 0 {
        return Ok(loaded.outcome);
    }
    let mut all = BenchReport {
        schema: SCHEMA,
        sessions: Vec::new(),
        trends: Vec::new(),
        diagnostics: Vec::new(),
    };
    let mut plots = Vec::new();
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let places = Places::new(snapshot);
        for (s, r, env) in bench::build::sessions(snapshot) {
            let mut one = bench::build::session(&places, s, r, env);
            if args.plot.is_some() {
                plots.extend(bench::plots::of_session(s, r, env, &one));
            }
            if args.format == ReportFormat::Text {
                one.file.insert_str(0, &group.prefix);
            }
            all.sessions.push(one);
        }
        all.diagnostics.extend(snapshot.report().diagnostics);
    }
    let series = bench::trends::series(&all.sessions);
    all.trends = series.iter().map(bench::trends::report).collect();
    let mut outcome = loaded.outcome;
    if let Some(folder) = &args.plot {
        plots.extend(bench::plots::trends(&series));
        outcome = outcome.max(write_plots(folder, &plots, ui));
    }
    match args.format {
        ReportFormat::Text => {
            let style = ui.style;
            ui.print(&bench::text(&all, style))?;
        }
        ReportFormat::Json => ui.print(&report::json(&all)?)?,
        ReportFormat::Markdown => ui.print(&bench::markdown(&all))?,
        ReportFormat::Csv => ui.print(&bench::csv(&all, args.table).map_err(io::Error::other)?)?,
    }
    if matches!(args.format, ReportFormat::Text | ReportFormat::Csv) {
        let style = ui.error_style;
        let drawn = draw(&loaded.findings, style, |f| f.severity >= Severity::Warning);
        if !drawn.is_empty() {
            ui.note(drawn.trim_end());
        }
    }
    let undecided = args.strict
        && all
            .sessions
            .iter()
            .any(|s| s.verdicts.differs + s.verdicts.cannot_tell > 0);
    let strict = if undecided {
        Outcome::Findings
    } else {
        Outcome::Clean
    };
    Ok(outcome
        .max(judged(&loaded.findings, args.strict))
        .max(strict))
}

/// Writes the pictures; a name taken twice gets a number.
pub(super) fn write_plots(folder: &Path, plots: &[Plot], ui: &mut Ui) -> Outcome {
    if plots.is_empty() {
        ui.complain("--plot: there is no reading to draw");
        return Outcome::Trouble;
    }
    let mut taken: HashMap<&str, usize> = HashMap::new();
    for plot in plots {
        let times = taken.entry(&plot.name).or_insert(0);
        *times += 1;
        let again = if *times > 1 {
            format!("-{times}")
        } else {
            String::new()
        };
        let path = folder.join(format!("{}{again}.svg", plot.name));
        if let Err(e) = write::replace(&path, &plot.svg) {
            ui.complain(&format!("{}: {}", path.display(), plain_io(&e)));
            return Outcome::Trouble;
        }
        if ui.watched {
            ui.note(&format!("wrote {}", path.display()));
        }
    }
    Outcome::Clean
}
