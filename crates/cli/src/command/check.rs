//! `downlead check`: all findings.

use std::io;

use downlead_base::Severity;
use downlead_report::words::figure::counted;

use super::{judged, load_with};
use crate::args::{CheckArgs, CheckFormat};
use crate::draw::draw;
use crate::files::gather;
use crate::findings::Findings;
use crate::formats;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &CheckArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let gathered = gather(&args.paths, args.within.root.as_deref());
    let loaded = load_with(&gathered, ui, args.history);
    let findings = &loaded.findings;
    match args.format {
        CheckFormat::Text => {
            let drawing = ui.drawing(ui.style);
            ui.print(&draw(findings, drawing, |f| {
                args.notes || f.severity >= Severity::Warning
            }))?;
        }
        CheckFormat::Json => formats::json(findings, ui)?,
        CheckFormat::Sarif => formats::sarif(findings, ui)?,
        CheckFormat::Github => ui.print(&formats::github(findings))?,
    }
    if ui.watched {
        let summary = summary(
            findings,
            loaded.files,
            args.notes || args.format != CheckFormat::Text,
        );
        ui.note(&summary);
    }
    let outcome = loaded.outcome.max(judged(findings, args.strict));
    // the program ends here: to give back every finding of a long run one by one is time for nothing
    std::mem::forget(loaded);
    Ok(outcome)
}

/// `3 files: no errors, 1 warning; --notes shows 4 notes`.
fn summary(findings: &Findings, files: usize, notes_shown: bool) -> String {
    let errors = findings.count(Severity::Error);
    let warnings = findings.count(Severity::Warning);
    let notes = findings.count(Severity::Info) + findings.count(Severity::Hint);
    let word = |n: usize, what: &str| {
        if n == 0 {
            format!("no {what}s")
        } else {
            counted(n, what)
        }
    };
    let mut line = format!(
        "{}: {}, {}",
        counted(files, "file"),
        word(errors, "error"),
        word(warnings, "warning")
    );
    if notes > 0 {
        let lead = if notes_shown { "" } else { "; --notes shows" };
        line += &format!(
            "{}{} {}",
            if notes_shown { "," } else { "" },
            lead,
            counted(notes, "note")
        );
    }
    line
}
