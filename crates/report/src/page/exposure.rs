//! Exposure of people at spots: a table a spot, the distances to keep, and the cautions.

use downlead_quantity::{number, power};

use super::note;
use crate::document::{Block, Column, Document, Level, Place, Table, Text};
use crate::shape::chain::{Report, StationReport};
use crate::shape::exposure::{ExposureReport, KeepClearReport, SourceReport, SpotReport};
use crate::words::exposure as words;

/// A source with its spot.
type Row<'a> = (&'a SpotReport, &'a SourceReport);

fn columns<'a>() -> [Column<Row<'a>>; 11] {
    [
        Column::left("transmitter", |r: &Row<'a>| words::who(r.1).into()),
        Column::left("antenna", |r: &Row<'a>| r.1.antenna.as_str().into()).drop(5),
        Column::right("mean", |r: &Row<'a>| watts(r.1.mean_w)).drop(4),
        Column::right("EIRP", |r: &Row<'a>| watts(r.1.eirp_w)),
        Column::right("U dB", |r: &Row<'a>| number(r.1.uncertainty_db, 2).into()).drop(2),
        Column::right("nearest part", |r: &Row<'a>| {
            r.1.distance_m
                .map(|m| metres(m, 2))
                .unwrap_or_default()
                .into()
        }),
        Column::left("zone", |r: &Row<'a>| match r.1.zone {
            Some("near") => "near: upper estimate".into(),
            zone => zone.unwrap_or_default().into(),
        })
        .drop(3),
        Column::right("W/m2", |r: &Row<'a>| {
            r.1.density_w_m2
                .map(|d| number(d, 5))
                .unwrap_or_default()
                .into()
        })
        .drop(1),
        Column::right("limit", |r: &Row<'a>| {
            r.1.limit.clone().unwrap_or_default().into()
        }),
        Column::right("of limit", |r: &Row<'a>| match (r.1.share, r.1.refused) {
            (Some(x), _) if r.1.counts => words::share(x).into(),
            (Some(x), _) => format!("({})", words::share(x)).into(),
            (None, Some(why)) => why.into(),
            (None, None) => Text::default(),
        }),
        Column::left("clause", |r: &Row<'a>| {
            r.1.cite.clone().unwrap_or_default().into()
        })
        .drop(6),
    ]
}

fn watts(w: Option<f64>) -> Text {
    w.map(power).unwrap_or_default().into()
}

fn metres(x: f64, decimals: usize) -> String {
    format!("{} m", number(x, decimals))
}

fn clear_columns<'a>() -> [Column<&'a KeepClearReport>; 6] {
    [
        Column::left("antenna", |k: &&KeepClearReport| k.antenna.as_str().into()),
        Column::left("for", |k: &&KeepClearReport| k.tier.into()),
        Column::right("keep clear", |k: &&KeepClearReport| match k.missing {
            Some(why) => why.into(),
            None => k.keep_m.map(|m| metres(m, 1)).unwrap_or_default().into(),
        }),
        Column::right("computed", |k: &&KeepClearReport| {
            k.computed_m
                .map(|m| metres(m, 2))
                .unwrap_or_default()
                .into()
        })
        .drop(1),
        Column::right("with the uncertainty", |k: &&KeepClearReport| {
            let m = k.with_uncertainty_m;
            m.map(|m| metres(m, 2)).unwrap_or_default().into()
        })
        .drop(2),
        Column::left("rules", |k: &&KeepClearReport| k.set.as_str().into()).drop(3),
    ]
}

/// The section of a station with spots or rules of exposure.
pub(super) fn section(doc: &mut Document, s: &StationReport) {
    let Some(e) = &s.exposure else { return };
    let at = s.chains.first().map(|c| Place::new(&c.file, c.line));
    doc.heading(2, "Exposure of people".to_owned(), at);
    spots(doc, e);
    for c in e.cautions {
        note(doc, (*c).to_owned());
    }
}

fn spots(doc: &mut Document, e: &ExposureReport) {
    for s in &e.spots {
        let place = Place::new(&s.file, s.line);
        let dated = s
            .dated
            .as_ref()
            .map_or_else(String::new, |d| format!(" ({d})"));
        doc.heading(
            3,
            format!("spot {}, {}: {}", s.name, s.tier, s.at),
            Some(place.clone()),
        );
        let verdict = words::conclusion(s);
        doc.push(Block::Paragraph(verdict.into()));
        let rows: Vec<Row<'_>> = s.sources.iter().map(|x| (s, x)).collect();
        if !rows.is_empty() {
            doc.table(Table::of(&columns(), &rows, |r| {
                Some(Place::new(&r.0.file, r.0.line))
            }));
        }
        let mut facts: Vec<(&'static str, Text)> = vec![(
            "rules",
            format!(
                "{}{dated}; field x {}, power x {}, by reflection",
                s.set,
                number(s.reflection, 2),
                number(s.reflection * s.reflection, 2)
            )
            .into(),
        )];
        facts.push((
            "above 5 %",
            match s.above_five_percent.is_empty() {
                true => "no transmitter".into(),
                false => s.above_five_percent.join(", ").into(),
            },
        ));
        if s.sources.iter().any(|x| !x.counts && x.share.is_some()) {
            facts.push((
                "in brackets",
                "a transmitter is on one band at a time: its largest share counts".into(),
            ));
        }
        let down = s.sources.iter().filter_map(|x| {
            let db = downlead_quantity::db(x.down_db?);
            Some(format!("{} {db} below its peak", words::who(x)))
        });
        let down: Vec<String> = down.collect();
        if !down.is_empty() {
            facts.push(("pattern", down.join(", ").into()));
        }
        facts.extend(s.assumptions.iter().map(|a| ("assumed", (*a).into())));
        doc.facts(facts);
    }
    for s in &e.not_judged {
        let place = Place::new(&s.file, s.line);
        doc.heading(3, words::called(s), Some(place));
        doc.push(Block::Note(Level::Warning, words::not_judged(s).into()));
    }
    let rows: Vec<&KeepClearReport> = e.keep_clear.iter().collect();
    if !rows.is_empty() {
        doc.heading(
            3,
            "Distances to keep, all that feeds an antenna on".to_owned(),
            None,
        );
        doc.table(Table::of(&clear_columns(), &rows, |_| None));
        note(
            doc,
            "Each of them counts its own antenna alone: where others are on, the sums at the spots decide.",
        );
    }
}

/// A worksheet of the exposure alone, with lines to sign.
#[must_use]
pub fn page(report: &Report) -> Document {
    let mut doc = Document {
        title: "Exposure of people".to_owned(),
        widest: None,
        blocks: Vec::new(),
    };
    let mut any = false;
    for s in &report.stations {
        let Some(e) = &s.exposure else { continue };
        any = true;
        let at = s.chains.first().map(|c| Place::new(&c.file, c.line));
        doc.heading(1, super::chain::station_words(s), at);
        spots(&mut doc, e);
    }
    if any {
        doc.heading(2, "Cautions".to_owned(), None);
        for c in words::CAUTIONS {
            doc.push(Block::Note(Level::Plain, (*c).into()));
        }
        doc.facts(vec![
            (
                "computed by",
                "____________________   date ____________".into(),
            ),
            (
                "checked by",
                "____________________   date ____________".into(),
            ),
        ]);
    } else {
        doc.push(Block::Paragraph(
            "No station of these files has a spot or is under rules with limits of exposure: nothing to compute.".into(),
        ));
    }
    doc
}
