//! `downlead check`: all findings.

use std::io;

use downlead_base::Severity;

use super::{fix, judged, load_with};
use crate::args::{CheckArgs, CheckFormat};
use crate::conclusion::{Conclusion, capped};
use crate::draw::{DRAWN, draw};
use crate::files::{Group, gather};
use crate::findings::Finding;
use crate::formats;
use crate::ui::{Outcome, Ui};

/// Of one kind of finding no more than this are shown.
const OF_A_KIND: usize = 20;

pub(crate) fn run(args: &CheckArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let gathered = gather(&args.paths, args.within.root.as_deref());
    let mut fixed = Outcome::Clean;
    if args.fix {
        fixed = fix::run(args, &gathered, ui)?;
        // a text from standard input went to standard output; a dry run only shows
        if args.dry_run || gathered.groups.iter().any(Group::has_input) {
            return Ok(fixed);
        }
    }
    let loaded = load_with(&gathered, ui, args.history, args.as_of.as_deref());
    let findings = &loaded.findings;
    match args.format {
        CheckFormat::Text | CheckFormat::Short => {
            let mut conclusion = Conclusion::default();
            for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
                conclusion.add(group, snapshot);
            }
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
    let outcome = loaded.outcome.max(fixed).max(judged(findings, args.strict));
    // the program ends here: to give back every finding of a long run one by one is time for nothing
    if !ui.repeats {
        std::mem::forget(loaded);
    }
    Ok(outcome)
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
