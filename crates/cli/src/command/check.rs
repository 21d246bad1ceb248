//! `downlead check`: all findings.

use std::io;

use downlead_base::Severity;

use super::{Loaded, fix, judged, load_with};
use crate::args::{CheckArgs, CheckFormat};
use crate::conclusion::{Conclusion, capped};
use crate::draw::{DRAWN, draw};
use crate::files::{Gathered, Group, gather};
use crate::findings::Finding;
use crate::formats;
use crate::streamed;
use crate::ui::{Outcome, Ui};

/// Of one kind of finding no more than this are shown.
const OF_A_KIND: usize = 20;

pub(crate) fn run(args: &CheckArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if let Some(paper) = &args.sheet {
        return super::stale::run(paper, ui);
    }
    let gathered = gather(&args.paths, args.within.root.as_deref());
    let mut fixed = Outcome::Clean;
    if args.fix {
        fixed = fix::run(args, &gathered, ui)?;
        // a text from standard input went to standard output; a dry run only shows
        if args.dry_run || gathered.groups.iter().any(Group::has_input) {
            return Ok(fixed);
        }
    }
    let (loaded, mut conclusion) = loaded(args, &gathered, ui);
    let findings = &loaded.findings;
    match args.format {
        CheckFormat::Text | CheckFormat::Short => {
            conclusion.count(findings);
            let lines = conclusion.lines(loaded.files, ui.quiet, args.notes);
            let shown = if ui.quiet {
                String::new()
            } else {
                shown(args, findings, ui)
            };
            if args.format == CheckFormat::Text || ui.quiet {
                ui.print(&lines)?;
                if !shown.is_empty() {
                    ui.print("\n")?;
                }
            }
            ui.print(&shown)?;
        }
        CheckFormat::Json => formats::json(findings, ui)?,
        CheckFormat::Sarif => formats::sarif(findings, ui)?,
        CheckFormat::Github => ui.print(&formats::github(findings))?,
    }
    let open = match args.strict && conclusion.leaves_open() {
        true => Outcome::Findings,
        false => Outcome::Clean,
    };
    let judged = judged(findings, args.strict).max(open);
    let outcome = loaded.outcome.max(fixed).max(judged);
    // the program ends here: to give back every finding of a long run one by one is time for nothing
    if !ui.repeats {
        std::mem::forget(loaded);
    }
    Ok(outcome)
}

/// The findings, and what was compared: of many files set by set.
fn loaded(args: &CheckArgs, gathered: &Gathered, ui: &mut Ui) -> (Loaded, Conclusion) {
    let as_of = args.as_of.as_deref();
    // earlier states are asked for of all files at once
    if let Some(all) = (!args.history)
        .then(|| streamed::check(gathered, as_of))
        .flatten()
    {
        let troubles = gathered.trouble.iter().chain(&all.unread);
        let mut outcome = Outcome::Clean;
        for trouble in troubles {
            ui.complain(trouble);
            outcome = Outcome::Trouble;
        }
        let loaded = Loaded {
            snapshots: Vec::new(),
            findings: all.findings,
            files: all.files,
            outcome,
        };
        return (loaded, all.conclusion);
    }
    let loaded = load_with(gathered, ui, args.history, as_of);
    let mut conclusion = Conclusion::default();
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        conclusion.add(group, snapshot);
    }
    (loaded, conclusion)
}

/// The findings for people or one a line, and how many are left out.
fn shown(args: &CheckArgs, findings: &crate::findings::Findings, ui: &Ui) -> String {
    let wanted = |f: &&Finding| args.notes || f.severity >= Severity::Warning;
    let all = findings.list.iter().filter(wanted);
    let (of_a_kind, at_once) = match args.all {
        true => (usize::MAX, usize::MAX),
        false => (OF_A_KIND, DRAWN),
    };
    let (kept, more) = capped(all, of_a_kind);
    let mut out = match args.format {
        CheckFormat::Short => formats::short(&kept, &findings.files),
        _ => draw(&findings.files, kept, at_once, ui.drawing(ui.style)),
    };
    if args.notes {
        out += &formats::accepted(&findings.accepted, &findings.files);
    }
    let dots = if ui.look().ascii { "..." } else { "…" };
    for (code, n) in more {
        out += &format!("{dots} and {n} more of {code} (--all)\n");
    }
    out
}
