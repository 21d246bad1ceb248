//! Licences and rules: a table by clause, and what is said of the station as a whole.

use downlead_quantity::power;

use super::note;
use crate::document::{Column, Document, Place, Table};
use crate::shape::chain::{BandReport, ChainReport, StationReport};
use crate::shape::rules::RuleReport;
use crate::words::chain::db_cell;
use crate::words::rules as words;

/// Widest citation in a table that is short of room.
const CITATION: u8 = 28;

/// A clause with the chain and band it is compared on.
type Row<'a> = (&'a ChainReport, &'a BandReport, &'a RuleReport);

fn columns<'a>() -> [Column<Row<'a>>; 10] {
    [
        Column::left("clause", |r: &Row<'a>| words::citation(r.2).into()).shrink(CITATION),
        Column::left("chain", |r: &Row<'a>| r.0.name.as_str().into()).drop(3),
        Column::left("band", |r: &Row<'a>| r.1.band.as_str().into()),
        Column::left("counts", |r: &Row<'a>| words::quantity(r.2).into()).drop(4),
        Column::right("value", |r: &Row<'a>| watts(r.2.value_w)),
        Column::right("limit", |r: &Row<'a>| watts(r.2.limit_w)),
        Column::left("verdict", |r: &Row<'a>| words::verdict(r.2)),
        Column::right("margin", |r: &Row<'a>| words::margin(r.2).into()),
        Column::right("U dB", |r: &Row<'a>| {
            r.2.uncertainty_db.map(db_cell).unwrap_or_default().into()
        })
        .drop(2),
        Column::left("confidence", |r: &Row<'a>| {
            r.2.confidence.clone().unwrap_or_default().into()
        })
        .drop(5),
    ]
}

fn watts(w: Option<f64>) -> crate::document::Text {
    w.map(power).unwrap_or_default().into()
}

/// The section of a station that is under licences or rules.
pub(super) fn section(doc: &mut Document, s: &StationReport) {
    let Some(site) = &s.rules else { return };
    let at = s.chains.first().map(|c| Place::new(&c.file, c.line));
    doc.heading(2, "Licences and rules, clause by clause".to_owned(), at);
    let rows: Vec<Row<'_>> = s
        .chains
        .iter()
        .flat_map(|c| c.bands.iter().map(move |b| (c, b)))
        .flat_map(|(c, b)| b.rules.iter().map(move |r| (c, b, r)))
        .collect();
    if !rows.is_empty() {
        doc.table(Table::of(&columns(), &rows, |r| {
            Some(match (&r.2.clause_file, r.2.clause_line) {
                (Some(f), Some(l)) if !f.starts_with("library/") => Place::new(f, l),
                _ => Place::new(&r.2.file, r.2.line),
            })
        }));
    }
    let mut facts: Vec<(&'static str, crate::document::Text)> = Vec::new();
    for (_, b, r) in &rows {
        let remarks = words::remarks(r);
        if !remarks.is_empty() {
            let of = format!("{}, {}: {remarks}", words::citation(r), b.band);
            facts.push(("note", of.into()));
        }
    }
    facts.extend(site.fixed.iter().map(|f| ("fixed", words::fixed(f))));
    facts.extend(site.duties.iter().map(|d| ("duty", words::duty(d).into())));
    facts.extend(site.questions.iter().map(|q| {
        (
            "question",
            format!("{} ({} {})", q.text, q.set, q.cite).into(),
        )
    }));
    facts.extend(site.conditions.iter().map(|c| {
        (
            "condition",
            format!("not judged: {}; {} {}", c.text, c.set, c.cite).into(),
        )
    }));
    facts.extend(unused(s).into_iter().map(|u| ("unused", u.into())));
    facts.extend(site.sets.iter().map(|x| {
        let parts: Vec<&str> = [&x.title, &x.edition]
            .into_iter()
            .flatten()
            .map(String::as_str)
            .collect();
        let dated = x
            .dated
            .as_ref()
            .map_or(String::new(), |d| format!(", dated {d}"));
        (
            "under",
            format!("{}: {}{dated}", x.name, parts.join(", ")).into(),
        )
    }));
    doc.facts(facts);
    note(doc, site.caution.to_owned());
}

/// Clauses that bear on nothing here: by name where they are few, else their number.
fn unused(s: &StationReport) -> Vec<String> {
    const FEW: usize = 4;
    let Some(site) = &s.rules else {
        return Vec::new();
    };
    let mut out = Vec::new();
    for set in &site.sets {
        let of: Vec<&str> = site
            .unused
            .iter()
            .filter(|u| u.set == set.name)
            .map(|u| u.cite.as_str())
            .collect();
        match of.len() {
            0 => {}
            n if n <= FEW => out.push(format!(
                "no chain is judged by {} {}",
                set.name,
                of.join(", ")
            )),
            n => out.push(format!("no chain is judged by {n} clauses of {}", set.name)),
        }
    }
    out
}
