//! Isolation of antennas and desense of receivers: each transmitter with its two figures.

use downlead_quantity::frequency;

use super::note;
use crate::document::{Column, Document, Place, Table, Text};
use crate::shape::desense::{DesenseReport, IsolationReport, SourceReport};
use crate::shape::site::SiteReport;
use crate::words::desense as words;

/// The sections of a station.
pub(super) fn section(doc: &mut Document, site: &SiteReport) {
    if !site.isolations.is_empty() {
        doc.heading(2, "Isolation of antennas".to_owned(), None);
        let at = |i: &IsolationReport| Some(Place::new(&i.file, i.line));
        doc.table(Table::of(&isolations(), &site.isolations, at));
    }
    // a receiver of which nothing is known here has its place in the JSON only
    let stated = |d: &&DesenseReport| d.limit_db.is_some() || words::says_something(d);
    let all: Vec<&DesenseReport> = site.desense.iter().filter(stated).collect();
    if all.is_empty() {
        return;
    }
    doc.heading(
        2,
        "What the transmitters do to the receivers".to_owned(),
        None,
    );
    for d in all {
        channel(doc, d);
    }
    note(doc, words::CAUTION.to_owned());
}

fn channel(doc: &mut Document, d: &DesenseReport) {
    doc.heading(3, words::channel(d), Some(Place::new(&d.file, d.line)));
    if !d.sources.is_empty() {
        doc.table(Table::of(&noises(), &d.sources, |_| None).without_empty());
        doc.table(Table::of(&carriers(), &d.sources, |_| None).without_empty());
    }
    let mut facts: Vec<(&'static str, Text)> = vec![("together", words::together(d))];
    facts.extend(words::floor(d).map(|f| ("its noise", f.into())));
    let cures = d.sources.iter().flat_map(|s| words::cures(d, s));
    facts.extend(cures.map(|c| ("would do", c.into())));
    facts.extend(d.missing.iter().map(|m| ("missing", m.as_str().into())));
    facts.extend(d.assumed.iter().map(|a| ("assumed", a.as_str().into())));
    doc.facts(facts);
}

fn noises() -> [Column<SourceReport>; 6] {
    [
        Column::left("noise of", |s: &SourceReport| s.transmitter.as_str().into()),
        Column::right("away", |s: &SourceReport| frequency(s.offset_hz).into()),
        Column::right("at the receiver", |s: &SourceReport| words::noise(s).into()),
        Column::right("its noise", |s: &SourceReport| words::to_floor(s).into()),
        Column::left("desense", |s: &SourceReport| words::alone(s).into()),
        Column::left("with site noise", |s: &SourceReport| {
            words::on_site(s).into()
        }),
    ]
}

fn carriers() -> [Column<SourceReport>; 6] {
    [
        Column::left("carrier of", |s: &SourceReport| {
            s.transmitter.as_str().into()
        }),
        Column::right("on", |s: &SourceReport| frequency(s.hz).into()),
        Column::right("at the receiver", |s: &SourceReport| {
            words::carrier(s).into()
        }),
        Column::right("blocking", |s: &SourceReport| words::blocking(s).into()),
        Column::left("the carrier is", |s: &SourceReport| {
            words::to_blocking(s).into()
        }),
        Column::left("verdict", words::blocked),
    ]
}

fn isolations() -> [Column<IsolationReport>; 5] {
    [
        Column::left("from", |i: &IsolationReport| i.from.as_str().into()),
        Column::left("to", |i: &IsolationReport| i.to.as_str().into()),
        Column::right("at", |i: &IsolationReport| frequency(i.hz).into()),
        Column::left("by", |i: &IsolationReport| words::isolated(i).into()),
        Column::right("isolation", |i: &IsolationReport| {
            words::isolation(i).into()
        }),
    ]
}
