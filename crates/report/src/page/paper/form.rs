//! A form filled in, for people.

use downlead_quantity::{db, frequency, number, power};

use super::{closing, heading};
use crate::document::{Block, Column, Document, Level, Place, Table};
use crate::shape::paper::form::{FieldReport, FormFile, FormStation};

static FIELDS: &[Column<FieldReport>] = &[
    Column::left("field", |f| (&f.label).into()),
    Column::left("entry", |f| entry(f).into()),
    Column::left("before rounding", |f: &FieldReport| exact(f).into()),
    Column::left("rounding", |f: &FieldReport| {
        f.rounding.clone().unwrap_or_default().into()
    })
    .drop(2),
    Column::left("is", |f: &FieldReport| f.what.into()).drop(1),
];

fn entry(f: &FieldReport) -> String {
    match (&f.entry, f.missing) {
        (Some(e), _) => e.clone(),
        (None, Some(why)) => format!("MISSING: {why}"),
        (None, None) => "______________________".to_owned(),
    }
}

fn exact(f: &FieldReport) -> String {
    let (Some(x), true) = (f.exact, f.rounding.is_some()) else {
        return String::new();
    };
    let unit = f.unit.unwrap_or("");
    let u = f
        .uncertainty_db
        .map_or(String::new(), |u| format!(" (U {})", db(u)));
    let over = f.over_w.map_or(String::new(), |w| {
        format!("; rounding alone puts it over the limit of {}", power(w))
    });
    format!(
        "{} {unit}{u}{over}",
        number(
            x,
            if f.unit.is_some_and(|u| u.ends_with("Hz")) {
                9
            } else {
                4
            }
        )
    )
}

/// The page.
#[must_use]
pub fn page(file: &FormFile) -> Document {
    let mut doc = Document {
        title: format!("Form {}", file.form),
        widest: None,
        blocks: Vec::new(),
    };
    for s in &file.stations {
        station(&mut doc, file, s);
    }
    if file.stations.is_empty() {
        super::super::note(
            &mut doc,
            "No station in these files: there is nothing to fill in.",
        );
    }
    doc
}

fn station(doc: &mut Document, file: &FormFile, s: &FormStation) {
    let name = heading(&s.station, s.title.as_ref(), &s.origin);
    doc.heading(1, format!("{}, {name}", file.form), None);
    let said = [
        file.title.clone(),
        file.edition.clone(),
        file.dated.as_ref().map(|d| format!("dated {d}")),
    ];
    let said: Vec<String> = said.into_iter().flatten().collect();
    if !said.is_empty() {
        doc.push(Block::Paragraph(format!("{}.", said.join(", ")).into()));
    }
    if !s.missing.is_empty() {
        let words = format!("Not complete. {}.", s.missing.join("; "));
        doc.push(Block::Note(Level::Warning, words.into()));
    }
    if s.blocks.is_empty() {
        super::super::note(
            doc,
            "The station has no transmit chain: there is nothing to fill in.",
        );
    }
    for b in &s.blocks {
        let f = frequency(b.frequency_hz);
        let of = match b.band == f {
            true => f,
            false => format!("{}, {f}", b.band),
        };
        doc.heading(
            2,
            format!("{} on {of}", b.chain),
            Some(Place::new(&b.file, b.line)),
        );
        let mut t = Table::new(FIELDS);
        b.fields.iter().for_each(|f| t.row(FIELDS, f, None));
        doc.table(t.without_empty());
    }
    closing(doc, &s.origin, file.caution);
}
