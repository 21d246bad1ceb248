//! `downlead bench`: sessions of readings against what the cables promise.

use std::io;
use std::ops::ControlFlow;

use downlead_base::Severity;
use downlead_eval::Places;
use downlead_report::{page, sheet};

use super::judged;
use super::printed::{Forms, begin, beside, holds_findings, print, write_files, write_plots};
use crate::args::{BenchArgs, BenchTable, ReportFormat};
use crate::bench;
use crate::bench::asked::Asking;
use crate::ui::{Outcome, Ui};
use downlead_report::shape::bench::{BenchReport, SCHEMA};

pub(crate) fn run(args: &BenchArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let table = args.table != BenchTable::Results;
    let (gathered, loaded) =
        match begin::<BenchReport>(&args.shape, &args.inputs, args.format, table, ui)? {
            ControlFlow::Continue(all) => all,
            ControlFlow::Break(outcome) => return Ok(outcome),
        };
    let mut all = BenchReport {
        schema: SCHEMA,
        sessions: Vec::new(),
        trends: Vec::new(),
        diagnostics: Vec::new(),
    };
    let asked = match Asking::of(args) {
        Ok(asked) => asked,
        Err(why) => {
            ui.complain(&why);
            return Ok(Outcome::Trouble);
        }
    };
    let mut plots = Vec::new();
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let places = Places::new(snapshot);
        for (s, r, env) in downlead_report::build::bench::sessions(snapshot) {
            let mut one = downlead_report::build::bench::session(&places, s, r, env);
            if let Some(asked) = &asked {
                match asked.answer(s, r) {
                    Ok(runs) => one.runs = Some(runs),
                    Err(why) => {
                        ui.complain(&why);
                        return Ok(Outcome::Trouble);
                    }
                }
            }
            if args.plot.is_some() {
                plots.extend(bench::plots::of_session(s, r, env, &one));
            }
            if matches!(args.format, ReportFormat::Text | ReportFormat::Html) {
                one.file = group.shown(&one.file);
            }
            all.sessions.push(one);
        }
        all.diagnostics
            .extend(downlead_report::build::chain::report(snapshot).diagnostics);
    }
    let series = downlead_report::build::trends::series(&all.sessions);
    all.trends = series
        .iter()
        .map(downlead_report::build::trends::report)
        .collect();
    let mut outcome = loaded.outcome;
    if let Some(folder) = &args.plot {
        plots.extend(bench::plots::trends(&series));
        outcome = outcome.max(write_plots(folder, &plots, ui));
    }
    if let Some(folder) = &args.certificate {
        let made: Vec<_> = all.sessions.iter().map(bench::plots::certificate).collect();
        outcome = outcome.max(write_files(folder, ("--certificate", "xml"), &made, ui));
    }
    let forms = Forms {
        page: &|all| page::bench::page(all, holds_findings(args.format)),
        csv: &|all| sheet::bench(all, args.table.into()),
    };
    print(&all, args.format, &forms, ui)?;
    if !holds_findings(args.format) {
        beside(&loaded.findings, Severity::Warning, ui);
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
