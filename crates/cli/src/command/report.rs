//! `downlead report`: chain tables and totals.

use std::io;
use std::ops::ControlFlow;

use downlead_base::Severity;
use downlead_report::shape::link::{Links, SCHEMA as LINKS};
use downlead_report::shape::verify::{SCHEMA as VERIFIED, Verification};
use downlead_report::{page, sheet};

use super::judged;
use super::printed::{Forms, begin, beside, holds_findings, print, write_plots};
use crate::args::{ReportArgs, ReportFormat, Table};
use crate::model::{Report, SCHEMA};
use crate::report;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.papers.any() {
        return super::papers::run(args, ui);
    }
    if args.link {
        return links(args, ui);
    }
    if args.verify {
        return verified(args, ui);
    }
    let table = args.table != Table::Nodes;
    let (gathered, loaded) =
        match begin::<Report>(&args.shape, &args.inputs, args.format, table, ui)? {
            ControlFlow::Continue(all) => all,
            ControlFlow::Break(outcome) => return Ok(outcome),
        };
    let variant = args.papers.variant.as_deref();
    let Some(loaded) = super::varied::with(variant, &gathered, loaded, ui) else {
        return Ok(Outcome::Trouble);
    };
    let mut all = Report {
        schema: SCHEMA,
        stations: Vec::new(),
        links: Vec::new(),
        diagnostics: Vec::new(),
    };
    let mut plots = Vec::new();
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let mut one = downlead_report::build::chain::report(snapshot);
        if matches!(args.format, ReportFormat::Text | ReportFormat::Html) {
            // people get names that lead from here to the file, programs names below the root
            let chains = one.stations.iter_mut().flat_map(|s| &mut s.chains);
            chains.for_each(|c| c.file = group.shown(&c.file));
            let links = one.links.iter_mut();
            links.for_each(|l| l.file = group.shown(&l.file));
        }
        if args.plot.is_some() {
            plots.extend(report::plots::of_logs(snapshot));
        }
        all.stations.extend(one.stations);
        all.links.extend(one.links);
        all.diagnostics.extend(one.diagnostics);
    }
    let mut outcome = loaded.outcome;
    if let Some(folder) = &args.plot {
        outcome = outcome.max(write_plots(folder, &plots, ui));
    }
    let forms = Forms {
        page: &|all| {
            if args.site {
                return page::site::page(all);
            }
            let findings = holds_findings(args.format);
            page::chain::page(all, page::chain::With { findings })
        },
        csv: &|all| match args.site {
            true => sheet::desense(all),
            false => sheet::chain(all, args.table.into()),
        },
    };
    let exposure = Forms {
        page: &page::exposure::page,
        csv: &sheet::exposure,
    };
    let forms = if args.exposure { &exposure } else { &forms };
    print(&all, args.format, forms, ui)?;
    if !holds_findings(args.format) {
        beside(&loaded.findings, Severity::Warning, ui);
    }
    Ok(outcome.max(judged(&loaded.findings, false)))
}

/// The links between stations.
fn links(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let (gathered, loaded) =
        match begin::<Links>(&args.shape, &args.inputs, args.format, false, ui)? {
            ControlFlow::Continue(all) => all,
            ControlFlow::Break(outcome) => return Ok(outcome),
        };
    let variant = args.papers.variant.as_deref();
    let Some(loaded) = super::varied::with(variant, &gathered, loaded, ui) else {
        return Ok(Outcome::Trouble);
    };
    let mut all = Links {
        schema: LINKS,
        links: Vec::new(),
    };
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let mut one = downlead_report::build::link::links(snapshot);
        if matches!(args.format, ReportFormat::Text | ReportFormat::Html) {
            let links = one.links.iter_mut();
            links.for_each(|l| l.file = group.shown(&l.file));
        }
        all.links.extend(one.links);
    }
    let forms = Forms {
        page: &page::link::page,
        csv: &sheet::link,
    };
    print(&all, args.format, &forms, ui)?;
    beside(&loaded.findings, Severity::Warning, ui);
    Ok(loaded.outcome.max(judged(&loaded.findings, false)))
}

/// The results beside plain Monte Carlo.
fn verified(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let (gathered, loaded) =
        match begin::<Verification>(&args.shape, &args.inputs, args.format, false, ui)? {
            ControlFlow::Continue(all) => all,
            ControlFlow::Break(outcome) => return Ok(outcome),
        };
    let variant = args.papers.variant.as_deref();
    let Some(loaded) = super::varied::with(variant, &gathered, loaded, ui) else {
        return Ok(Outcome::Trouble);
    };
    let draws = usize::try_from(args.draws).unwrap_or(usize::MAX);
    let mut all = Verification {
        schema: VERIFIED,
        draws,
        chains: Vec::new(),
    };
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let mut one = downlead_report::build::verify::verification(snapshot, draws);
        if matches!(args.format, ReportFormat::Text | ReportFormat::Html) {
            let chains = one.chains.iter_mut();
            chains.for_each(|c| c.file = group.shown(&c.file));
        }
        // rounded up to whole blocks
        all.draws = one.draws;
        all.chains.extend(one.chains);
    }
    let forms = Forms {
        page: &page::verify::page,
        csv: &sheet::verify,
    };
    print(&all, args.format, &forms, ui)?;
    beside(&loaded.findings, Severity::Warning, ui);
    Ok(loaded.outcome.max(judged(&loaded.findings, false)))
}
