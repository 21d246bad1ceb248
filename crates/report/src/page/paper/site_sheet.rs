//! The sheet of a station, for the wall of the site: one page.

use downlead_quantity::{db, frequency, number, power, power_dbm};

use super::{closing, heading, nothing};
use crate::document::{Block, Column, Document, Level, Place, Run, Table, Text};
use crate::page::card::span;
use crate::shape::paper::site_sheet::{
    AntennaReport, PaperReport, SheetChain, SheetFile, SheetLimit, SheetPoint, SiteSheet,
};
use crate::words::answer::spanned;
use crate::words::chain::NOT_KNOWN;
use crate::words::rules as rule_words;
use crate::words::verdict::Judged as _;

/// Widest citation in a table that is short of room.
const CITATION: u8 = 28;

fn watts(w: Option<f64>) -> Text {
    w.map_or_else(|| NOT_KNOWN.to_owned(), power).into()
}

fn band(c: &SheetChain) -> String {
    match c.point {
        Some(p) => format!("{} {}", c.band, p.word()),
        None => c.band.clone(),
    }
}

static SENT: &[Column<SheetChain>] = &[
    Column::left("chain", |c| (&c.chain).into()),
    Column::left("band", |c| band(c).into()),
    Column::right("frequency", |c| frequency(c.frequency_hz).into()),
    Column::right("at radio", |c| watts(c.transmitter_w)),
    Column::right("loss", |c| {
        c.loss_db.map_or_else(|| NOT_KNOWN.to_owned(), db).into()
    }),
    Column::right("at antenna", |c| watts(c.antenna_w)),
    Column::right("ERP (95 % of cases)", |c| {
        let known = c.erp_w.map(|w| spanned(w, c.uncertainty_db));
        known.unwrap_or_else(|| NOT_KNOWN.to_owned()).into()
    }),
    Column::right("U dB", |c: &SheetChain| {
        c.uncertainty_db.map(db).unwrap_or_default().into()
    })
    .drop(1),
];

static HEARD: &[Column<SheetChain>] = &[
    Column::left("chain", |c| (&c.chain).into()),
    Column::left("band", |c| band(c).into()),
    Column::right("frequency", |c| frequency(c.frequency_hz).into()),
    Column::right("loss", |c| {
        c.loss_db.map_or_else(|| NOT_KNOWN.to_owned(), db).into()
    }),
    Column::right("needed at antenna", |c| {
        let known = c.sensitivity_dbm.map(|d| format!("{d:.1} dBm"));
        known.unwrap_or_else(|| NOT_KNOWN.to_owned()).into()
    }),
];

static LIMITS: &[Column<SheetLimit>] = &[
    Column::left("band", |l| (&l.band).into()),
    Column::left("limit", |l| {
        let quantity = l.quantity.as_deref().map(quantity).unwrap_or_default();
        match l.limit_w {
            Some(w) => format!("{} {quantity}", power(w)),
            None => quantity,
        }
        .into()
    }),
    Column::left("clause", |l: &SheetLimit| {
        l.cite.clone().unwrap_or_default().into()
    })
    .shrink(CITATION),
    Column::right("value", |l| l.value_w.map(power).unwrap_or_default().into()),
    Column::left("verdict", |l| {
        let words = Text(vec![l.verdict.0.run()]);
        let margin = l.margin_db.map(|m| {
            let side = if m < 0.0 { "over" } else { "left" };
            format!(", {} {side}", db(m.abs()))
        });
        words.plus(&margin.unwrap_or_default())
    }),
    Column::right("U dB", |l| {
        l.uncertainty_db.map(db).unwrap_or_default().into()
    }),
];

fn quantity(words: &str) -> String {
    let (what, kind) = words.split_once(' ').unwrap_or((words, ""));
    let what = match what {
        "erp" | "eirp" => what.to_uppercase(),
        "dc-input" => "DC input".to_owned(),
        other => other.to_owned(),
    };
    match kind {
        "" => what,
        kind => format!("{what} {kind}"),
    }
}

static POINTS: &[Column<SheetPoint>] = &[
    Column::left("at", |p: &SheetPoint| (&p.at.at).into()),
    Column::right("forward", |p: &SheetPoint| watts(p.at.forward_w)),
    Column::left("may read", |p: &SheetPoint| span(&p.at).into()),
    Column::right("dBm", |p: &SheetPoint| {
        p.at.forward_w.map(power_dbm).unwrap_or_default().into()
    })
    .drop(1),
    Column::right("SWR", |p: &SheetPoint| {
        p.at.swr
            .map(crate::words::chain::swr)
            .unwrap_or_default()
            .into()
    }),
    Column::left("W today", |_: &SheetPoint| "________".into()),
    Column::left("W reflected", |_: &SheetPoint| "________".into()),
];

/// `49.3333° S 123.1667° W, wgs84`.
fn position(s: &SiteSheet) -> Option<String> {
    let (lat, lon) = (s.latitude_deg?, s.longitude_deg?);
    let side = |x: f64, letters: [&str; 2]| {
        let letter = if x < 0.0 { letters[1] } else { letters[0] };
        // a tenth of a second of arc is 3 m: as much as any form asks for
        format!("{}° {letter}", number(x.abs(), 5))
    };
    let datum = s.datum.as_ref().map_or(String::new(), |d| format!(", {d}"));
    Some(format!(
        "{} {}{datum}",
        side(lat, ["N", "S"]),
        side(lon, ["E", "W"])
    ))
}

fn antenna(a: &AntennaReport) -> String {
    let m = |x: f64, what: &str| format!("{} m {what}", number(x, 2));
    let all: Vec<String> = [
        a.height_m.map(|x| m(x, "above ground")),
        a.haat_m.map(|x| m(x, "above average terrain")),
        a.size_m.map(|x| m(x, "long")),
    ]
    .into_iter()
    .flatten()
    .collect();
    match all.is_empty() {
        true => format!("{}: height not stated", a.antenna),
        false => format!("{}: {}", a.antenna, all.join(", ")),
    }
}

fn paper(p: &PaperReport) -> String {
    let said = [
        p.title.clone(),
        p.authority.clone(),
        p.holder.as_ref().map(|h| format!("holder {h}")),
        p.edition.clone(),
        p.dated.as_ref().map(|d| format!("dated {d}")),
        p.until.as_ref().map(|d| format!("until {d}")),
    ];
    let said: Vec<String> = said.into_iter().flatten().collect();
    match said.is_empty() {
        true => p.name.clone(),
        false => format!("{}: {}", p.name, said.join(", ")),
    }
}

/// The page: one station a sheet of paper.
#[must_use]
pub fn page(file: &SheetFile) -> Document {
    let names: Vec<&str> = file.sheets.iter().map(|s| s.station.as_str()).collect();
    let mut doc = Document {
        title: format!("Site sheet: {}", names.join(", ")),
        widest: None,
        blocks: Vec::new(),
    };
    for s in &file.sheets {
        sheet(&mut doc, s, file);
    }
    if file.sheets.is_empty() {
        nothing(&mut doc, "sheet");
    }
    doc
}

fn sheet(doc: &mut Document, s: &SiteSheet, file: &SheetFile) {
    doc.heading(
        1,
        heading(&s.station, s.title.as_ref(), &s.origin),
        Some(Place::new(&s.file, s.line)),
    );
    if s.errors > 0 {
        let n = crate::words::figure::counted(s.errors, "error");
        let words =
            format!("The text has {n}: `downlead check` says which. Do not work by this sheet.");
        doc.push(Block::Note(Level::Warning, words.into()));
    }
    doc.facts(site(s));
    let of = |sent: bool| {
        s.chains
            .iter()
            .filter(move |c| (c.direction.word() == "transmit") == sent)
    };
    let at = |c: &SheetChain| Some(Place::new(&c.file, c.line));
    let mut sent = Table::new(SENT);
    of(true).for_each(|c| sent.row(SENT, c, at(c)));
    let mut heard = Table::new(HEARD);
    of(false).for_each(|c| heard.row(HEARD, c, at(c)));
    section(doc, "Sent", sent);
    section(
        doc,
        "Limits and clauses",
        Table::of(LIMITS, &s.limits, |_| None),
    );
    doc.facts(judged(s));
    section(doc, "Heard", heard);
    points(doc, s);
    doc.heading(2, "Before work", None);
    doc.push(Block::List(
        file.safety.iter().map(|x| (*x).into()).collect(),
    ));
    if !s.missing.is_empty() || !s.assumptions.is_empty() {
        doc.heading(2, "Not stated, and assumed", None);
        let mut facts: Vec<(&'static str, Text)> =
            s.missing.iter().map(|m| ("not stated", m.into())).collect();
        if !s.assumptions.is_empty() {
            // in one paragraph: a sheet has one page
            facts.push(("assumed", s.assumptions.join("; ").into()));
        }
        doc.facts(facts);
    }
    doc.heading(2, "Where this sheet comes from", None);
    closing(doc, &s.origin, file.caution);
}

fn section(doc: &mut Document, name: &'static str, t: Table) {
    if !t.lines.is_empty() {
        doc.heading(2, name, None);
        doc.table(t.without_empty());
    }
}

fn site(s: &SiteSheet) -> Vec<(&'static str, Text)> {
    let mut facts: Vec<(&'static str, Text)> = Vec::new();
    let stated = |x: Option<String>| x.unwrap_or_else(|| "not stated".to_owned());
    facts.push(("position", stated(position(s)).into()));
    let ground = s
        .ground_m
        .map(|g| format!("{} m above mean sea level", number(g, 1)));
    facts.push(("ground", stated(ground).into()));
    facts.extend(s.antennas.iter().map(|a| ("antenna", antenna(a).into())));
    facts.extend(s.papers.iter().map(|p| ("under", paper(p).into())));
    for k in &s.keep_clear {
        let words = match (k.keep_m, k.missing) {
            (Some(m), _) => format!(
                "{} m from {}, all its bands on, {} ({})",
                number(m, 1),
                k.antenna,
                k.tier,
                k.set
            ),
            (None, why) => format!(
                "no distance for {}, {} ({}): {}",
                k.antenna,
                k.tier,
                k.set,
                why.unwrap_or("not computed")
            ),
        };
        facts.push(("keep clear", words.into()));
    }
    match (&s.alone, s.neighbours.is_empty()) {
        (Some(by), _) => facts.push(("on the site", format!("no other station ({by})").into())),
        (None, false) => facts.push(("on the site", s.neighbours.join(", ").into())),
        (None, true) => facts.push(("on the site", "other stations are not stated".into())),
    }
    facts
}

/// What is fixed, due, asked and demanded.
fn judged(s: &SiteSheet) -> Vec<(&'static str, Text)> {
    let mut facts: Vec<(&'static str, Text)> = Vec::new();
    for l in s.limits.iter().filter(|l| !l.missing.is_empty()) {
        let cite = l.cite.as_deref().unwrap_or("limit");
        let words = format!("{cite}, {}: {}", l.band, l.missing.join("; "));
        facts.push(("note", words.into()));
    }
    facts.extend(s.fixed.iter().map(|f| ("fixed", rule_words::fixed(f))));
    facts.extend(
        s.duties
            .iter()
            .map(|d| ("duty", rule_words::duty(d).into())),
    );
    let said = |what: &'static str, all: &[crate::shape::rules::SaidReport]| {
        all.iter()
            .map(|q| {
                (
                    what,
                    Text::from(format!("{} ({} {})", q.text, q.set, q.cite)),
                )
            })
            .collect::<Vec<_>>()
    };
    facts.extend(said("question", &s.questions));
    facts.extend(said("condition", &s.conditions));
    facts
}

fn points(doc: &mut Document, s: &SiteSheet) {
    if s.points.is_empty() {
        return;
    }
    doc.heading(2, "Readings", None);
    doc.push(Block::Paragraph(Text(vec![Run::Plain(
        "date ______________   who __________________   meter __________________".to_owned(),
    )])));
    let mut t = Table::new(POINTS);
    let mut of = (String::new(), String::new());
    for p in &s.points {
        let here = (p.chain.clone(), p.band.clone());
        if here != of {
            let with = match &p.instrument {
                Some(i) => format!("may read with {i}"),
                None => "no meter is known: its error is not in the spans".to_owned(),
            };
            t.title(format!("{} on {}; {with}", p.chain, p.band));
            of = here;
        }
        t.row(POINTS, p, None);
    }
    doc.table(t);
}
