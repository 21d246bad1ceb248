//! `downlead fmt`: files brought into the usual layout, whole or not at all.

use std::fs;
use std::io;
use std::path::Path;

use crate::args::FmtArgs;
use crate::files::files_of;
use crate::loader::{in_words, read_regular};
use crate::stdin;
use crate::ui::{Outcome, Ui};
use crate::write::{self, Refusal};

pub(crate) fn run(args: &FmtArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.paths.iter().any(|p| p.as_os_str() == stdin::DASH) {
        if args.paths.len() > 1 {
            ui.complain("- (standard input) stands alone");
            return Ok(Outcome::Trouble);
        }
        return stream(args.check, ui);
    }
    let mut outcome = Outcome::Clean;
    let mut trouble = Vec::new();
    let mut seen = std::collections::HashSet::new();
    for path in &args.paths {
        for file in files_of(path, &mut trouble) {
            if !seen.insert(file.clone()) {
                continue;
            }
            let shown = shown(&file);
            match one(&file, args.check) {
                Ok(false) => {}
                Ok(true) => {
                    ui.print(&format!("{shown}\n"))?;
                    if args.check {
                        outcome = outcome.max(Outcome::Findings);
                    }
                }
                Err(why) => {
                    ui.complain(&format!("{shown}: {why}; the file is as it was"));
                    outcome = Outcome::Trouble;
                }
            }
        }
    }
    for line in trouble {
        ui.complain(&line);
        outcome = Outcome::Trouble;
    }
    Ok(outcome)
}

/// From standard input to standard output; with `check` nothing is printed.
fn stream(check: bool, ui: &mut Ui) -> io::Result<Outcome> {
    let text = match stdin::text() {
        Ok(text) => text,
        Err(why) => {
            ui.complain(&format!("standard input: {why}"));
            return Ok(Outcome::Trouble);
        }
    };
    match formatted(&text) {
        Ok(new) if check => Ok(if new == text {
            Outcome::Clean
        } else {
            Outcome::Findings
        }),
        Ok(new) => {
            ui.print(&new)?;
            Ok(Outcome::Clean)
        }
        Err(why) => {
            ui.complain(&format!("standard input: {why}"));
            Ok(Outcome::Trouble)
        }
    }
}

fn text_of(bytes: Vec<u8>) -> Result<String, String> {
    String::from_utf8(bytes).map_err(|e| {
        in_words(&crate::model::LoadError::NotUtf8 {
            offset: e.utf8_error().valid_up_to(),
        })
    })
}

/// The text in its layout. What is not a blank must come out as it went in, else nothing is written.
fn formatted(text: &str) -> Result<String, String> {
    let new = downlead_syntax::format(text);
    // the formatter may also take away a `;` at which it begins a new line
    let marks = |s: &str| {
        s.chars()
            .filter(|c| !c.is_whitespace() && *c != ';')
            .collect::<String>()
    };
    if marks(&new) == marks(text) {
        Ok(new)
    } else {
        Err("the formatter would change more than blanks, which is a mistake of this program; please report it".to_owned())
    }
}

/// Formats one file, named by its real path. Whether it differed.
fn one(path: &Path, check: bool) -> Result<bool, String> {
    let text = text_of(read_regular(path).map_err(|e| in_words(&e))?)?;
    let new = formatted(&text)?;
    if new == text {
        return Ok(false);
    }
    if check {
        return Ok(true);
    }
    match write::over(path, &text, &new) {
        Ok(()) => Ok(true),
        Err(Refusal::Changed) => Err("it was changed by something else meanwhile".to_owned()),
        Err(Refusal::Because(why)) => Err(why),
    }
}

/// The path as a person in the current folder writes it.
fn shown(path: &Path) -> String {
    let here = std::env::current_dir().and_then(fs::canonicalize).ok();
    let relative = here.as_deref().and_then(|h| path.strip_prefix(h).ok());
    relative.unwrap_or(path).display().to_string()
}
