//! A site: receive channels, what falls into them, and what was searched.

use downlead_quantity::frequency;

use super::chain::station_words;
use super::note;
use crate::document::{Column, Document, Place, Table, Text};
use crate::shape::chain::{Report, StationReport};
use crate::shape::site::{HitReport, ReceiverReport, SiteReport};
use crate::words::site as words;

/// The sites of all stations, and nothing else.
#[must_use]
pub fn page(all: &Report) -> Document {
    let mut doc = Document {
        title: "Sites".to_owned(),
        ..Document::default()
    };
    for s in &all.stations {
        if s.site.is_some() {
            let at = s.chains.first().map(|c| Place::new(&c.file, c.line));
            doc.heading(1, station_words(s), at);
            section(&mut doc, s);
        }
    }
    if doc.blocks.is_empty() {
        note(
            &mut doc,
            "No station has a receive chain and a carrier.".to_owned(),
        );
    }
    doc
}

/// The section of a station that says what stands on its site.
pub(super) fn stated(doc: &mut Document, s: &StationReport) {
    if s.site
        .as_ref()
        .is_some_and(|x| x.alone || !x.beside.is_empty() || limited(x))
    {
        section(doc, s);
    }
}

/// Whether it states a limit of a desense.
fn limited(x: &SiteReport) -> bool {
    x.desense.iter().any(|d| d.limit_db.is_some())
}

fn section(doc: &mut Document, s: &StationReport) {
    let Some(site) = &s.site else { return };
    doc.heading(
        2,
        "Carriers and receive channels of the site".to_owned(),
        None,
    );
    doc.table(Table::of(&receivers(), &site.receivers, |_| None));
    if !site.intermodulation.is_empty() {
        doc.table(Table::of(&hits(), &site.intermodulation, |_| None));
    }
    doc.facts(facts(site));
    note(doc, words::CAUTION.to_owned());
    super::desense::section(doc, site);
}

fn receivers() -> [Column<ReceiverReport>; 4] {
    [
        Column::left("receiver", |r: &ReceiverReport| r.name.as_str().into()),
        Column::right("frequency", |r: &ReceiverReport| frequency(r.hz).into()),
        Column::right("width", |r: &ReceiverReport| {
            words::width(r.width_hz).into()
        }),
        Column::right("falls into it", |r: &ReceiverReport| match r.found {
            0 => "nothing".into(),
            n => n.to_string().into(),
        }),
    ]
}

fn hits() -> [Column<HitReport>; 6] {
    [
        Column::left("receiver", |h: &HitReport| h.receiver.as_str().into()),
        Column::left("what", |h: &HitReport| words::kind(h).into()),
        Column::left("made of", |h: &HitReport| h.product.as_str().into()),
        Column::right("falls on", |h: &HitReport| frequency(h.hz).into()),
        Column::right("off", |h: &HitReport| words::off(h).into()),
        Column::right("width", |h: &HitReport| {
            words::width(Some(h.width_hz)).into()
        }),
    ]
}

fn facts(site: &SiteReport) -> Vec<(&'static str, Text)> {
    let mut facts = vec![("beside", Text::from(words::neighbours(site)))];
    facts.extend(
        words::searched(site)
            .into_iter()
            .map(|w| ("searched", w.into())),
    );
    let left = site.not_searched.iter().map(words::not_searched);
    facts.extend(left.map(|w| ("not searched", w.into())));
    facts
}
