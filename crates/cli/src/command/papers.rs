//! `downlead report` with `--sheet`, `--materials` or `--coordination`: papers that are handed over.

use std::io;
use std::ops::ControlFlow;

use downlead_base::{Severity, sha256};
use downlead_report::build::paper::{From, form, materials, site_sheet};
use downlead_report::document::Document;
use downlead_report::page::paper as page;
use downlead_report::shape::paper::FileReport;
use downlead_report::shape::paper::form::{FormFile, SCHEMA as FORM};
use downlead_report::shape::paper::materials::{MaterialsFile, SCHEMA as MATERIALS};
use downlead_report::shape::paper::site_sheet::{SCHEMA as SHEET, SheetFile};
use downlead_report::sheet;
use downlead_report::write::html::paper;
use downlead_report::write::json::json;
use downlead_report::write::markdown::{UNLINKED, markdown};
use downlead_report::write::text::text;
use schemars::JsonSchema;
use serde::Serialize;

use super::printed::{begin, beside};
use super::{Loaded, judged};
use crate::args::{ReportArgs, ReportFormat};
use crate::files::Group;
use crate::loader::DiskLoader;
use crate::ui::{Outcome, Ui};

pub(crate) fn run(args: &ReportArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let asked = &args.papers;
    if let Some(name) = &asked.coordination {
        return coordination(args, name, ui);
    }
    if asked.materials {
        let mut all = MaterialsFile {
            schema: MATERIALS,
            caution: "",
            stations: Vec::new(),
        };
        return made(
            args,
            ui,
            |_| Ok(()),
            |s, from| materials::materials(s, asked.spare, from),
            |one: MaterialsFile| {
                all.caution = one.caution;
                all.stations.extend(one.stations);
                all.clone()
            },
            (page::materials::page, sheet::materials),
        );
    }
    let mut all = SheetFile {
        schema: SHEET,
        caution: "",
        safety: Vec::new(),
        sheets: Vec::new(),
    };
    made(
        args,
        ui,
        |_| Ok(()),
        site_sheet::sheets,
        |one: SheetFile| {
            (all.caution, all.safety) = (one.caution, one.safety);
            all.sheets.extend(one.sheets);
            all.clone()
        },
        (page::site_sheet::page, sheet::site_sheet),
    )
}

/// A form that wants what the text lacks fails: nothing fills the field.
fn coordination(args: &ReportArgs, name: &str, ui: &mut Ui) -> io::Result<Outcome> {
    let mut all = FormFile {
        schema: FORM,
        caution: "",
        form: name.to_owned(),
        title: None,
        edition: None,
        dated: None,
        stations: Vec::new(),
    };
    let lacks = std::cell::Cell::new(false);
    let known = |loaded: &Loaded| {
        let mut known: Vec<String> = loaded.snapshots.iter().flat_map(form::known).collect();
        known.dedup();
        match (known.iter().any(|k| k == name), known.is_empty()) {
            (true, _) => Ok(()),
            (false, true) => Err(format!(
                "--coordination {name}: these files see no form; one is written with lines `field \"ERP\" erp in W, to 1 W` in `rules`"
            )),
            (false, false) => Err(format!(
                "--coordination {name}: there is no such form; there are {}",
                known.join(", ")
            )),
        }
    };
    let outcome = made(
        args,
        ui,
        known,
        |s, from| form::forms(s, name, from),
        |one: FormFile| {
            let missing = one.stations.iter().any(|s| !s.missing.is_empty());
            lacks.set(lacks.get() || missing);
            if !one.stations.is_empty() {
                (all.title, all.edition, all.dated) = (one.title, one.edition, one.dated);
            }
            all.caution = one.caution;
            all.stations.extend(one.stations);
            all.clone()
        },
        (page::form::page, sheet::form),
    )?;
    Ok(match lacks.get() {
        true => outcome.max(Outcome::Findings),
        false => outcome,
    })
}

type Shown<T> = (fn(&T) -> Document, fn(&T) -> Result<String, csv::Error>);

/// Loads the files, makes a paper of each root, adds them up and prints them.
fn made<T: Serialize + JsonSchema>(
    args: &ReportArgs,
    ui: &mut Ui,
    refuse: impl Fn(&Loaded) -> Result<(), String>,
    make: impl Fn(&crate::model::Snapshot, From<'_>) -> T,
    mut add: impl FnMut(T) -> T,
    (page, csv): Shown<T>,
) -> io::Result<Outcome> {
    let (gathered, loaded) = match begin::<T>(&args.shape, &args.inputs, args.format, false, ui)? {
        ControlFlow::Continue(all) => all,
        ControlFlow::Break(outcome) => return Ok(outcome),
    };
    let variant = args.papers.variant.as_deref();
    let Some(loaded) = super::varied::with(variant, &gathered, loaded, ui) else {
        return Ok(Outcome::Trouble);
    };
    if let Err(why) = refuse(&loaded) {
        ui.complain(&why);
        return Ok(Outcome::Trouble);
    }
    let mut all = None;
    for (group, snapshot) in gathered.groups.iter().zip(&loaded.snapshots) {
        let loader = group.loader();
        let files = |path: &str| file(group, &loader, path, args.format);
        let from = From {
            files: &files,
            variant,
        };
        all = Some(add(make(snapshot, from)));
    }
    let Some(all) = all else {
        return Ok(loaded.outcome);
    };
    let out = match args.format {
        ReportFormat::Text => text(&page(&all), ui.look()),
        ReportFormat::Json => json(&all)?,
        ReportFormat::Markdown => markdown(&page(&all), UNLINKED),
        ReportFormat::Html => paper(&page(&all)),
        ReportFormat::Csv => csv(&all).map_err(io::Error::other)?,
    };
    ui.print(&out)?;
    Ok(ended(&loaded, ui))
}

/// A paper is to be printed: what is wrong goes beside it.
fn ended(loaded: &Loaded, ui: &mut Ui) -> Outcome {
    beside(&loaded.findings, Severity::Error, ui);
    loaded.outcome.max(judged(&loaded.findings, false))
}

/// What a file holds, and its last commit.
fn file(group: &Group, loader: &DiskLoader, path: &str, format: ReportFormat) -> FileReport {
    let bytes = loader.bytes(path).ok();
    let text = bytes.as_deref().map(String::from_utf8_lossy);
    let state = text
        .filter(|_| !group.is_input(path))
        .and_then(|t| downlead_git::state(&group.root.join(path), &t));
    FileReport {
        // people get names that lead from here to the file, programs names below the root
        file: match format {
            ReportFormat::Text | ReportFormat::Html => group.shown(path),
            _ => path.to_owned(),
        },
        sha256: bytes.as_deref().map(sha256),
        revision: state.as_ref().map(|s| s.short().to_owned()),
        revised: state.as_ref().map(|s| s.date.clone()),
        changed: state.is_some_and(|s| s.changed),
    }
}
