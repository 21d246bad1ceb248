//! `downlead fit`: a cable as it is, from readings, a network file or a data sheet's table.

use std::fs;
use std::io;
use std::path::Path;
use std::time::Instant;

use downlead_base::{Severity, codes};
use downlead_report::page::fit::page;
use downlead_report::write::json::{json, schema};
use downlead_report::write::text::text;
use downlead_station::attach::is_network;
use downlead_syntax::{File, newline};

use super::printed::beside;
use super::{judged, load};
use crate::args::{FitArgs, FitFormat};
use crate::files::{EXTENSION, gather};
use crate::fit::source::{NetworkFacts, network, piece, sheet};
use crate::fit::{Subject, definition, of, options};
use crate::loader::{in_words, plain_io, read_regular};
use crate::model::{LoadError, Snapshot};
use crate::ui::{Outcome, Ui};
use crate::write::{self, Refusal};
use downlead_report::build::bench::sessions;
use downlead_report::shape::fit::{FitFile, SCHEMA};
use downlead_report::shape::loss_law::refused;

pub(crate) fn run(args: &FitArgs, ui: &mut Ui) -> io::Result<Outcome> {
    if args.shape.schema {
        ui.print(&schema::<FitFile>()?)?;
        return Ok(Outcome::Clean);
    }
    let Some(file) = &args.file else {
        return Ok(Outcome::Trouble);
    };
    if let Some(path) = &args.write
        && path.extension().is_none_or(|e| e != EXTENSION)
    {
        ui.complain(&format!(
            "--write {}: a definition goes into a file that ends in .{EXTENSION}, such as cables.{EXTENSION}",
            path.display()
        ));
        return Ok(Outcome::Trouble);
    }
    let found = match is_network(&file.to_string_lossy()) {
        true => of_network(args, file, ui).map(|s| (vec![s], Outcome::Clean)),
        false => of_text(args, file, ui),
    };
    let (mut subjects, outcome) = match found {
        Ok(found) => found,
        Err(message) => {
            ui.complain(&message);
            return Ok(Outcome::Trouble);
        }
    };
    if let Some(name) = &args.name {
        match subjects.as_mut_slice() {
            [one] => one.cable.name.clone_from(name),
            _ => {
                ui.complain("--name is for one cable; --piece says of which piece");
                return Ok(Outcome::Trouble);
            }
        }
    }
    for s in &subjects {
        if let Ok(f) = &s.fit
            && let Some(why) = definition::wrong(&s.cable.name, &definition::of(s, f))
        {
            ui.complain(&format!(
                "`{}` cannot name a cable: {why} (--name gives another)",
                s.cable.name
            ));
            return Ok(Outcome::Trouble);
        }
    }
    print(args, &subjects, ui)?;
    let refused = subjects.iter().any(|s| s.fit.is_err());
    let mut outcome = outcome.max(if refused {
        Outcome::Findings
    } else {
        Outcome::Clean
    });
    if let Some(path) = &args.write {
        outcome = outcome.max(append(path, &subjects, ui));
    }
    Ok(outcome)
}

fn print(args: &FitArgs, subjects: &[Subject], ui: &mut Ui) -> io::Result<()> {
    let fits: Vec<_> = subjects.iter().map(of).collect();
    match args.format {
        FitFormat::Json => ui.print(&json(&FitFile {
            schema: SCHEMA,
            fits,
        })?),
        FitFormat::Definition => {
            let all: Vec<String> = fits.into_iter().filter_map(|f| f.definition).collect();
            ui.print(&all.join("\n"))?;
            for s in subjects {
                if let Err(e) = &s.fit {
                    let why = refused(e, &|i| s.point(i));
                    ui.complain(&format!("{}: no fit: {why}", s.title));
                }
            }
            Ok(())
        }
        FitFormat::Text => {
            let look = ui.look();
            let all: Vec<String> = fits.iter().map(|f| text(&page(f), look)).collect();
            ui.print(&all.join("\n"))
        }
    }
}

/// Options that belong to the other kind of file.
fn none_of(given: &[(&str, bool)], why: &str) -> Result<(), String> {
    match given.iter().find(|g| g.1) {
        Some((name, _)) => Err(format!("{name} {why}")),
        None => Ok(()),
    }
}

fn of_network(args: &FitArgs, file: &Path, ui: &mut Ui) -> Result<Subject, String> {
    let shown = file.display().to_string();
    none_of(
        &[
            ("--session", args.session.is_some()),
            ("--piece", args.piece.is_some()),
            ("--cable", args.cable.is_some()),
            ("--without", !args.without.is_empty()),
        ],
        "goes with a .downlead file, not with a network file",
    )?;
    let Some(length) = &args.length else {
        return Err(format!(
            "{shown}: how long is the cable? Say it as --length \"25.00 m\""
        ));
    };
    let length = options::length(length)?;
    let celsius = args
        .temperature
        .as_deref()
        .map(options::temperature)
        .transpose()?;
    let u_db = args
        .accuracy
        .as_deref()
        .map(options::accuracy)
        .transpose()?;
    let bytes = read_regular(file).map_err(|e| format!("{shown}: {}", in_words(&e)))?;
    let ports = downlead_touchstone::ports_from_name(&shown);
    let read = downlead_touchstone::read(&bytes, ports);
    for n in &read.notes {
        if n.severity >= downlead_touchstone::Severity::Warning {
            ui.note(&format!("{shown}:{n}"));
        }
    }
    let Some(n) = &read.network else {
        return Err(format!("{shown}: no point of it could be read"));
    };
    let facts = NetworkFacts {
        file: &shown,
        length,
        celsius: celsius.unwrap_or(20.0),
        celsius_stated: celsius.is_some(),
        u_db,
    };
    let mut s = network(n, &facts)?;
    if read.rows_left_out > 0 {
        s.notes.push(format!(
            "{} rows of the file could not be read",
            read.rows_left_out
        ));
    }
    Ok(s)
}

fn of_text(args: &FitArgs, file: &Path, ui: &mut Ui) -> Result<(Vec<Subject>, Outcome), String> {
    if file
        .extension()
        .is_some_and(|e| e.eq_ignore_ascii_case("csv"))
    {
        return Err(format!(
            "{}: readings alone do not say what was read with what; name the .downlead file whose session takes them in",
            file.display()
        ));
    }
    none_of(
        &[
            ("--length", args.length.is_some()),
            ("--temperature", args.temperature.is_some()),
            ("--accuracy", args.accuracy.is_some()),
        ],
        "goes with a network file; a session says it in its text",
    )?;
    let gathered = gather(&[file.to_owned()], args.within.root.as_deref());
    let loaded = load(&gathered, ui);
    let Some(snapshot) = loaded.snapshots.first().filter(|_| loaded.files > 0) else {
        return Err("nothing could be read".to_owned());
    };
    let subjects = match &args.cable {
        Some(name) => {
            none_of(
                &[
                    ("--session", args.session.is_some()),
                    ("--piece", args.piece.is_some()),
                    ("--without", !args.without.is_empty()),
                ],
                "does not go with --cable",
            )?;
            let cable = snapshot.scopes().iter().find_map(|s| s.env().cable(name));
            vec![sheet(cable.ok_or_else(|| {
                format!(
                    "{}: there is no cable `{name}` in it or in what it uses",
                    file.display()
                )
            })?)?]
        }
        None => pieces(args, snapshot)?,
    };
    beside(&loaded.findings, Severity::Error, ui);
    Ok((
        subjects,
        loaded.outcome.max(judged(&loaded.findings, false)),
    ))
}

/// The pieces that are asked for, or all of the one session.
fn pieces(args: &FitArgs, snapshot: &Snapshot) -> Result<Vec<Subject>, String> {
    let all: Vec<_> = sessions(snapshot)
        .filter(|(s, ..)| args.session.as_ref().is_none_or(|n| *n == *s.name.text))
        .collect();
    let names = |list: &mut dyn Iterator<Item = &str>| {
        let all: Vec<&str> = list.collect();
        if all.is_empty() {
            "none".to_owned()
        } else {
            all.join(", ")
        }
    };
    let (s, r, env) = match all.as_slice() {
        [one] => *one,
        [] => {
            let there = names(&mut sessions(snapshot).map(|(s, ..)| &*s.name.text));
            return Err(match &args.session {
                Some(n) => format!("there is no session `{n}`; there are: {there}"),
                None => "there is no bench session in it; --cable NAME fits the table of a cable"
                    .to_owned(),
            });
        }
        many => {
            return Err(format!(
                "which session? --session names one of: {}",
                names(&mut many.iter().map(|(s, ..)| &*s.name.text))
            ));
        }
    };
    for w in &args.without {
        if !r.bands.iter().any(|b| *b.band == **w) {
            return Err(format!(
                "--without {w}: there is no such band in the session; there are: {}",
                names(&mut r.bands.iter().map(|b| &*b.band))
            ));
        }
    }
    let wanted: Vec<usize> = (0..r.pieces.len())
        .filter(|i| args.piece.as_ref().is_none_or(|n| *n == *r.pieces[*i].name))
        .collect();
    if wanted.is_empty() {
        let there = names(&mut r.pieces.iter().map(|p| &*p.name));
        return Err(match &args.piece {
            Some(n) => format!(
                "there is no piece `{n}` in session `{}`; there are: {there}",
                s.name.text
            ),
            None => format!("session `{}` has no piece", s.name.text),
        });
    }
    Ok(wanted
        .into_iter()
        .map(|i| piece(s, r, env, i, &args.without))
        .collect())
}

/// Adds the definitions to a file, all or none; one that is there stays as it is.
fn append(path: &Path, subjects: &[Subject], ui: &mut Ui) -> Outcome {
    let begun = Instant::now();
    let done = loop {
        match added(path, subjects) {
            // another program wrote it: what is there now counts
            Err(Refusal::Changed) if begun.elapsed() < write::PATIENCE => {}
            done => break done,
        }
    };
    let shown = path.display();
    let why = match done {
        Ok(names) => {
            if ui.watched && !names.is_empty() {
                ui.note(&format!("{shown}: {} added", names.join(", ")));
            }
            return Outcome::Clean;
        }
        Err(Refusal::Because(why)) => why,
        Err(Refusal::Changed) => "other programs keep changing it".to_owned(),
    };
    ui.complain(&format!("{shown}: {why}; nothing was added"));
    Outcome::Trouble
}

/// Adds them to the file as it is now; their names.
fn added(path: &Path, subjects: &[Subject]) -> Result<Vec<String>, Refusal> {
    let because = |why: &str| Refusal::Because(why.to_owned());
    let before = match fs::metadata(path) {
        Err(e) if e.kind() == io::ErrorKind::NotFound => None,
        _ => match read_regular(path).map(String::from_utf8) {
            Ok(Ok(text)) => Some(text),
            Ok(Err(_)) => return Err(because("it is not UTF-8 text")),
            // it was there just now
            Err(LoadError::NotFound) => return Err(Refusal::Changed),
            Err(e) => return Err(Refusal::Because(in_words(&e))),
        },
    };
    if before.is_none() && path.is_symlink() {
        return Err(because("it is a link that leads nowhere"));
    }
    let mut text = before.clone().unwrap_or_default();
    if let Some(fault) = first_fault(&text) {
        return Err(Refusal::Because(fault));
    }
    let there = Snapshot::load(&[options::TEXT.to_owned()], &options::Text(&text));
    let there = definition::cables(&there);
    let end = newline(&text);
    let mut names = Vec::new();
    for s in subjects {
        let Ok(f) = &s.fit else { continue };
        if there.contains(&s.cable.name) || names.contains(&s.cable.name) {
            return Err(Refusal::Because(format!(
                "there is a cable `{}` already, which stays as it is (--name gives another name)",
                s.cable.name
            )));
        }
        if !text.is_empty() {
            text.push_str(if text.ends_with('\n') { "" } else { end });
            text.push_str(end);
        }
        text += &definition::of(s, f).replace('\n', end);
        names.push(s.cable.name.clone());
    }
    if names.is_empty() {
        return Ok(names);
    }
    match before {
        Some(before) => write::over(path, &before, &text)?,
        None => write::new(path, &text).map_err(|e| match e.kind() {
            io::ErrorKind::AlreadyExists => Refusal::Changed,
            _ => Refusal::Because(plain_io(&e)),
        })?,
    }
    Ok(names)
}

/// The first place of a text that cannot be read. A definition added to that text might become a
/// part of a block that is still open.
fn first_fault(text: &str) -> Option<String> {
    let file = File::parse(text);
    let all = file.items().iter().flat_map(|placed| {
        let own = placed.item.diagnostics().iter();
        own.map(move |d| ((placed.start + d.primary.loc.span.start) as usize, d))
    });
    let errors = all.filter(|(_, d)| d.severity == Severity::Error);
    // a line in the wrong place is often no more than what a slip elsewhere leads to
    let (at, fault) =
        errors.min_by_key(|(at, d)| (d.code.id == codes::MISPLACED_STATEMENT.id, *at))?;
    let line = 1 + text[..at].matches('\n').count();
    Some(format!(
        "line {line} must be corrected first: {}",
        fault.message.trim_end_matches('.')
    ))
}
