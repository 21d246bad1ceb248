//! `downlead explain`: the page of a code, or how the numbers on a line come about.

use std::fmt::Write as _;
use std::io;
use std::path::PathBuf;

use downlead_base::{CODES, code_named};
use downlead_report::document::{Column, Table};
use downlead_report::write::text::{Look, table};

use super::load;
use crate::args::ExplainArgs;
use crate::files::{Group, gather};
use crate::model::{Derivation, Snapshot};
use crate::ui::{Outcome, Style, Ui, printable};

/// Steps of steps are followed this far.
const DEEPEST: usize = 8;

pub(crate) fn run(args: &ExplainArgs, ui: &mut Ui) -> io::Result<Outcome> {
    let Some(what) = args.what.as_deref() else {
        let list = list(ui.look());
        ui.print(&list)?;
        return Ok(Outcome::Clean);
    };
    if let Some(code) = code_named(what) {
        let page = page(code, ui.style);
        ui.print(&page)?;
        return Ok(Outcome::Clean);
    }
    let Some((file, line)) = file_and_line(what) else {
        ui.complain(&unknown(what));
        return Ok(Outcome::Trouble);
    };
    let gathered = gather(&[PathBuf::from(file)], args.within.root.as_deref());
    let loaded = load(&gathered, ui);
    let (Some(group), Some(snapshot)) = (gathered.groups.first(), loaded.snapshots.first()) else {
        return Ok(Outcome::Trouble);
    };
    if loaded.outcome != Outcome::Clean {
        return Ok(loaded.outcome);
    }
    let tried;
    let snapshot = match args.variant.as_deref() {
        None => snapshot,
        Some(name) => match super::varied::find(snapshot, name) {
            Ok(found) => {
                tried = found;
                &tried
            }
            Err(why) => {
                ui.complain(&why);
                return Ok(Outcome::Trouble);
            }
        },
    };
    let derivations = group
        .files
        .iter()
        .flat_map(|f| snapshot.explain_line(f, line))
        .collect::<Vec<_>>();
    if derivations.is_empty() {
        ui.complain(&format!(
            "{file}:{line}: no number is computed from this line"
        ));
        return Ok(Outcome::Findings);
    }
    let mut out = String::new();
    for derivation in &derivations {
        show(
            derivation,
            0,
            ui.style,
            &|d| place(d, snapshot, group),
            &mut out,
        );
        out.push('\n');
    }
    ui.print(&out)?;
    Ok(Outcome::Clean)
}

/// `FILE:LINE` or `FILE:LINE:COLUMN`, as messages print it.
fn file_and_line(what: &str) -> Option<(&str, u32)> {
    let (before, last) = what.rsplit_once(':')?;
    let last: u32 = last.parse().ok()?;
    if let Some((file, line)) = before.rsplit_once(':')
        && let Ok(line) = line.parse()
        && !file.is_empty()
    {
        return Some((file, line));
    }
    (!before.is_empty()).then_some((before, last))
}

fn unknown(what: &str) -> String {
    let near = CODES
        .iter()
        .map(|c| (strsim::jaro_winkler(what, c.id), c.id))
        .filter(|(score, _)| *score > 0.8)
        .max_by(|a, b| a.0.total_cmp(&b.0));
    let near = near.map_or(String::new(), |(_, id)| format!("; is {id} meant?"));
    format!("{what} is neither a code nor FILE:LINE{near} (downlead explain lists the codes)")
}

static COLUMNS: &[Column<&downlead_base::Code>] = &[
    Column::left("code", |c: &&downlead_base::Code| c.id.into()),
    Column::left("weight", |c: &&downlead_base::Code| {
        c.severity.name().into()
    }),
    Column::left("what it is about", |c: &&downlead_base::Code| {
        c.title.into()
    }),
];

fn list(look: Look) -> String {
    table(Table::of(COLUMNS, CODES, |_| None), look)
}

/// The page, with its examples' fences turned into indented text.
fn page(code: &downlead_base::Code, style: Style) -> String {
    let mut out = format!("{} ({})\n\n", style.bold(code.id), code.severity.name());
    let mut inside = false;
    for line in code.page.lines() {
        if line.starts_with("```") {
            inside = !inside;
        } else if inside {
            let _ = writeln!(out, "    {line}");
        } else if let Some(heading) = line.strip_prefix('#') {
            let _ = writeln!(
                out,
                "{}",
                style.bold(heading.trim_start_matches('#').trim())
            );
        } else {
            let _ = writeln!(out, "{line}");
        }
    }
    out
}

/// Where a derivation's figure stands, as `file:line`.
fn place(d: &Derivation, snapshot: &Snapshot, group: &Group) -> Option<String> {
    let (file, span) = snapshot.place(d.place?)?;
    let file = snapshot.files().get(file)?;
    let line = file
        .text()
        .as_bytes()
        .get(..span.start as usize)?
        .iter()
        .filter(|b| **b == b'\n')
        .count()
        + 1;
    Some(format!("{}:{line}", group.shown(&file.path)))
}

/// A derivation and, indented below it, those of its operands.
fn show(
    d: &Derivation,
    depth: usize,
    style: Style,
    place: &dyn Fn(&Derivation) -> Option<String>,
    out: &mut String,
) {
    let pad = "    ".repeat(depth);
    let title = printable(&d.title);
    let title = if depth == 0 {
        style.bold(&title)
    } else {
        title.into_owned()
    };
    let _ = writeln!(out, "{pad}{title}: {}", printable(&d.value));
    for (lead, words) in [("", &d.formula), ("= ", &d.substituted)] {
        if !words.is_empty() {
            let _ = writeln!(out, "{pad}    {lead}{}", printable(words));
        }
    }
    let from = match (&d.source, place(d)) {
        (Some(source), Some(place)) => Some(format!("{}, {place}", printable(source))),
        (Some(source), None) => Some(printable(source).into_owned()),
        (None, place) => place,
    };
    if let Some(from) = from {
        let _ = writeln!(out, "{pad}    {}", style.faint(&format!("from {from}")));
    }
    if depth < DEEPEST {
        for step in &d.steps {
            show(step, depth + 1, style, place, out);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_is_told_from_a_code() {
        assert_eq!(file_and_line("a.downlead:31"), Some(("a.downlead", 31)));
        assert_eq!(file_and_line("a.downlead:31:7"), Some(("a.downlead", 31)));
        assert_eq!(
            file_and_line("C:\\a.downlead:31"),
            Some(("C:\\a.downlead", 31))
        );
        assert_eq!(file_and_line(":31"), None);
        assert_eq!(file_and_line("limit-not-met"), None);
        assert_eq!(file_and_line("a:99999999999"), None);
    }

    #[test]
    fn a_mistyped_code_is_helped() {
        assert!(unknown("limit-not-meet").contains("is limit-not-met meant?"));
        assert!(!unknown("zzz").contains("meant"));
    }

    #[test]
    fn steps_are_indented_below_what_they_make() {
        let leaf = |title: &str, value: &str| Derivation {
            title: title.to_owned(),
            value: value.to_owned(),
            formula: String::new(),
            substituted: String::new(),
            source: Some("sheet 3".to_owned()),
            place: None,
            steps: Vec::new(),
        };
        let root = Derivation {
            formula: "loss = a(f) × length".to_owned(),
            substituted: "1.65 dB/100 m × 46 m".to_owned(),
            source: None,
            steps: vec![leaf("a(f)", "1.65 dB/100 m"), leaf("length", "46 m")],
            ..leaf("loss of M1", "0.76 dB")
        };
        let mut out = String::new();
        show(&root, 0, Style { colour: false }, &|_| None, &mut out);
        let expected = "loss of M1: 0.76 dB\n    loss = a(f) × length\n    = 1.65 dB/100 m × 46 m\n    \
                        a(f): 1.65 dB/100 m\n        from sheet 3\n    length: 46 m\n        from sheet 3\n";
        assert_eq!(out, expected);
    }
}
