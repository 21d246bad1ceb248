//! Bench sessions: pieces of cable beside what their sheets say.

use downlead_quantity::{frequency, length, number};

use super::{findings, note};
use crate::document::{Answer, Block, Column, Document, Place, Table, Text};
use crate::shape::bench::*;
use crate::shape::word::ReadingVerdict;
use crate::words::answer::MOST;
use crate::words::bars::bars;
use crate::words::bench as words;
use crate::words::chain::db_cell;
use crate::words::figure::{band_in_words, counted};
use crate::words::piece::{orders, sentence};
use crate::words::verdict::{Judged, text};

/// Stands under every session.
pub const RULE: &str = "differs: the difference exceeds its uncertainty U (k = 2); agrees: it does not, and U is at most half of the \
     expected loss; cannot tell: U is more. To tell it: a meter so many times better, or a piece so long.";

/// The page; `with_findings` for formats whose reader does not see them elsewhere.
#[must_use]
pub fn page(report: &BenchReport, with_findings: bool) -> Document {
    let names: Vec<&str> = report.sessions.iter().map(|s| s.name.as_str()).collect();
    let mut doc = Document {
        title: format!("Bench sessions: {}", names.join(", ")),
        widest: None,
        blocks: Vec::new(),
    };
    if report.sessions.is_empty() {
        doc.push(Block::Paragraph(
            "No bench session in these files: nothing to compute.".into(),
        ));
        return doc;
    }
    for s in &report.sessions {
        session(&mut doc, s);
    }
    if !report.trends.is_empty() {
        doc.heading(2, "over the years, measured over expected loss", None);
        let trends = report.trends.iter().map(|t| words::trend(t).into());
        doc.push(Block::List(trends.collect()));
    }
    if with_findings {
        findings(&mut doc, &report.diagnostics);
    }
    doc
}

/// One session.
pub fn session(doc: &mut Document, s: &SessionReport) {
    let at = Place::new(&s.file, s.line);
    doc.heading(1, opening(s), Some(at));
    let lines = answers(s);
    if !lines.is_empty() {
        doc.push(Block::Answers(lines));
    }
    let mut below: Vec<Text> = order(s).into_iter().map(Text::from).collect();
    below.extend(s.runs.iter().flat_map(super::run::sentence));
    if !below.is_empty() {
        doc.push(Block::Answers(below.into_iter().map(alone).collect()));
    }
    if let Some(r) = &s.runs {
        super::run::runs(doc, r);
    }
    doc.facts(head(s));
    for p in &s.pieces {
        piece(doc, s, p);
    }
    ranking(doc, s);
    doc.facts(tail(s));
    if s.results.iter().any(|r| r.verdict.is_some()) {
        note(doc, RULE);
    }
}

/// `four-cables, 2026-07-19, 54 readings with W3 at 12 °C`.
fn opening(s: &SessionReport) -> String {
    let mut out = s.name.clone();
    if let Some(d) = &s.date {
        out += &format!(", {d}");
    }
    out += &format!(", {}", counted(s.readings, "reading"));
    let meters: Vec<&str> = s
        .instruments
        .iter()
        .map(|i| i.name.as_str())
        .filter(|n| !n.is_empty())
        .collect();
    if !meters.is_empty() {
        out += &format!(" with {}", meters.join(", "));
    }
    if let Some(c) = s.temperature_c {
        out += &format!(" at {} °C", number(c, 1));
    }
    out
}

/// A line of the conclusion that is one sentence.
fn alone(words: Text) -> Answer {
    Answer {
        cells: vec![words.clone()],
        short: vec![words],
        at: None,
    }
}

/// A line a piece; the worst where there are more than a few.
fn answers(s: &SessionReport) -> Vec<Answer> {
    let said = |p: &&PieceReport| p.verdicts.all() > 0 || !p.slip_bands.is_empty();
    let mut pieces: Vec<&PieceReport> = s.pieces.iter().filter(said).collect();
    let more = pieces.len() > MOST;
    if more {
        pieces.sort_by_key(|p| std::cmp::Reverse(verdict(p).map(Judged::sign)));
        pieces.truncate(MOST - 1);
    }
    let mut out: Vec<Answer> = pieces.iter().map(|p| answer(s, p)).collect();
    if more {
        let words = Text::from(format!("and {} more below", s.pieces.len() - out.len()));
        out.push(alone(words));
    }
    out
}

/// The verdict on a piece as a whole; where there is none, the worst of its bands.
fn verdict(p: &PieceReport) -> Option<ReadingVerdict> {
    p.whole
        .as_ref()
        .map(|w| w.verdict)
        .or_else(|| p.verdicts.worst())
}

fn answer(s: &SessionReport, p: &PieceReport) -> Answer {
    let v = verdict(p);
    let what = match &p.whole {
        Some(w) => {
            let (ratio, u) = words::ratio(w, 2);
            match w.verdict {
                ReadingVerdict::Differs => {
                    format!("loses {ratio} ± {u} times what its sheet says")
                }
                ReadingVerdict::Agrees => format!("as its sheet says ({ratio} ± {u})"),
                ReadingVerdict::CannotTell => {
                    format!("{ratio} ± {u} times what its sheet says")
                }
            }
        }
        None if p.verdicts.all() == 0 => "not judged".to_owned(),
        None => p.verdicts.words(),
    };
    let what = match &p.slip_bands[..] {
        [] => what,
        bands => format!("{what}, without the slip on {}", bands.join(", ")),
    };
    let word = v.map(text).unwrap_or_default();
    let long = p.length_m.map(length).unwrap_or_default();
    Answer {
        cells: vec![
            (&p.piece).into(),
            long.into(),
            (&p.cable).into(),
            what.clone().into(),
            worst(s, p).into(),
            word.clone(),
        ],
        short: vec![(&p.piece).into(), word, what.into()],
        at: Some(Place::new(&s.file, p.line)),
    }
}

/// The band that is furthest off, or the bands on which the piece is too short to tell.
fn worst(s: &SessionReport, p: &PieceReport) -> String {
    let of = |v: ReadingVerdict| {
        let mine = s.results.iter().filter(|r| r.piece == p.piece);
        mine.filter(|r| r.verdict == Some(v)).collect::<Vec<_>>()
    };
    let en = |r: &&&ResultReport| r.en.map_or(0.0, f64::abs);
    if let Some(r) = of(ReadingVerdict::Differs)
        .iter()
        .max_by(|a, b| en(a).total_cmp(&en(b)))
    {
        let by = r.difference_db.unwrap_or(0.0);
        return format!("worst on {}, {by:+.2} dB", r.band);
    }
    let open = of(ReadingVerdict::CannotTell);
    let highest = open
        .iter()
        .max_by(|a, b| a.frequency_hz.total_cmp(&b.frequency_hz));
    match highest {
        Some(r) if open.len() == 1 => format!("cannot tell on {}", r.band),
        Some(r) => format!(
            "cannot tell on {} up to {}",
            counted(open.len(), "band"),
            frequency(r.frequency_hz)
        ),
        None => String::new(),
    }
}

/// `per 100 m  D < C < B < A on every band; not all distinguished on 160m, 80m`.
fn order(s: &SessionReport) -> Option<String> {
    let ranked: Vec<&BandReport> = s.bands.iter().filter(|b| b.ranking.len() > 1).collect();
    let telling = ranked.iter().max_by(|a, b| {
        (a.ranking.len().cmp(&b.ranking.len())).then(a.frequency_hz.total_cmp(&b.frequency_hz))
    })?;
    let names =
        |b: &BandReport| -> Vec<String> { b.ranking.iter().map(|r| r.piece.clone()).collect() };
    let every = ranked.iter().all(|b| names(b) == names(telling));
    let mut out = "loss per 100 m: ".to_owned();
    let mut last = None;
    for r in &telling.ranking {
        out += match last {
            None => "",
            Some(rank) if rank == r.rank => " = ",
            Some(_) => " < ",
        };
        out += &r.piece;
        last = Some(r.rank);
    }
    out += &match every && ranked.len() > 1 {
        true => " on every band".to_owned(),
        false => format!(" on {}", telling.band),
    };
    let shared: Vec<&str> = ranked
        .iter()
        .filter(|b| b.band != telling.band && b.ranking.iter().any(|r| r.sharing > 1))
        .map(|b| b.band.as_str())
        .collect();
    if !shared.is_empty() {
        out += &format!("; not all distinguished on {}", shared.join(", "));
    }
    Some(out)
}

fn head(s: &SessionReport) -> Vec<(&'static str, Text)> {
    let mut read = s.date.clone().unwrap_or_else(|| "no date".to_owned());
    if let Some(p) = &s.person {
        read += &format!(" by {p}");
    }
    if let Some(c) = s.temperature_c {
        read += &format!(", at {} °C", number(c, 1));
    }
    read += &format!(
        ", {} on {}",
        counted(s.readings, "reading"),
        counted(s.bands.len(), "band")
    );
    if s.rows_lost > 0 {
        let rows = counted(s.rows_lost, "row");
        read += &format!("; {rows} of other files could not be taken");
    }
    let mut out: Vec<(&str, Text)> = Vec::new();
    if let Some(t) = &s.title {
        out.push(("title", t.into()));
    }
    out.push(("read", read.into()));
    let with = s
        .instruments
        .iter()
        .map(|i| ("with", words::instrument(i).into()));
    out.extend(with);
    out.push(("verdicts", s.verdicts.words().into()));
    out
}

fn result_columns<'a>() -> [Column<&'a ResultReport>; 11] {
    [
        Column::left("band", |r: &&'a ResultReport| (&r.band).into()),
        Column::right("MHz", |r: &&'a ResultReport| {
            words::mhz(r.frequency_hz).into()
        })
        .drop(4),
        Column::right("loss dB", |r: &&'a ResultReport| db_cell(r.loss_db).into()),
        Column::right("dB/100 m", |r: &&'a ResultReport| {
            match (r.loss_db_per_m, r.loss_uncertainty_db_per_m) {
                (Some(v), Some(u)) => words::per_100(v, u).into(),
                _ => Text::default(),
            }
        })
        .drop(7),
        Column::right("through", |r: &&'a ResultReport| {
            format!("{:.1} %", r.through_percent).into()
        })
        .drop(5),
        Column::right("expected", |r: &&'a ResultReport| {
            r.expected_db.map(db_cell).unwrap_or_default().into()
        })
        .drop(3),
        Column::right("differs by", |r: &&'a ResultReport| {
            r.difference_db
                .map(words::signed_cell)
                .unwrap_or_default()
                .into()
        }),
        Column::right("± U", |r: &&'a ResultReport| {
            db_cell(r.uncertainty_db.unwrap_or(r.loss_uncertainty_db)).into()
        })
        .drop(1),
        Column::left("verdict", |r: &&'a ResultReport| words::result_verdict(r)),
        Column::left("to tell it", |r: &&'a ResultReport| {
            words::to_tell(r).into()
        })
        .drop(2),
        // one method for all bands is said in the heading
        Column::left("by", |r: &&'a ResultReport| r.method.into()).drop(6),
    ]
}

fn piece(doc: &mut Document, s: &SessionReport, p: &PieceReport) {
    let rows: Vec<&ResultReport> = s.results.iter().filter(|r| r.piece == p.piece).collect();
    let mut head = words::piece_head(p);
    // one method for all bands is said once
    let one = rows.first().map(|r| r.method);
    let one = one.filter(|m| rows.iter().all(|r| r.method == *m));
    if let Some(m) = one {
        head += &format!("; by {m}");
    }
    doc.heading(3, head, Some(Place::new(&s.file, p.line)));
    if rows.is_empty() {
        note(doc, "no reading of it could be used");
    }
    if let Some(words) = sentence(s, p) {
        note(doc, words);
    }
    let columns = result_columns();
    let shown = columns.len() - usize::from(one.is_some());
    let table = Table::of(&columns[..shown], &rows, |_| None);
    doc.table(table);
    let mut more: Vec<(&str, Text)> = Vec::new();
    more.extend(p.whole.iter().map(|w| ("as a whole", words::whole(w))));
    more.extend(p.fit.iter().map(|f| ("its own fit", words::fit(f).into())));
    let refused = p.fit_refused.iter();
    more.extend(refused.map(|why| ("its own fit", format!("none: {why}").into())));
    more.extend(p.lengths.iter().map(|l| ("length", words::electrical(l))));
    doc.facts(more);
}

/// A row of a ranking with its bar.
type Ranked<'a> = (&'a RankReport, String);

fn rank_columns<'a>() -> [Column<Ranked<'a>>; 4] {
    [
        Column::left("rank", |r: &Ranked<'a>| {
            let same = if r.0.sharing > 1 { "=" } else { "" };
            format!("{}{same}", r.0.rank).into()
        }),
        Column::left("piece", |r: &Ranked<'a>| (&r.0.piece).into()),
        Column::right("dB/100 m (k = 2)", |r: &Ranked<'a>| {
            words::per_100(r.0.loss_db_per_m, r.0.uncertainty_db_per_m).into()
        }),
        Column::left("", |r: &Ranked<'a>| (&r.1).into()).drop(1),
    ]
}

fn ranking(doc: &mut Document, s: &SessionReport) {
    // a picture of each order; the figures of every band stand at the pieces
    let orders = orders(&s.bands);
    if orders.is_empty() {
        return;
    }
    doc.heading(3, "loss per 100 m, least first", None);
    let columns = rank_columns();
    let mut table = Table::new(&columns);
    let mut open = false;
    for (b, alike) in orders {
        let mut title = band_in_words(&b.band, b.frequency_hz);
        if !alike.is_empty() {
            let names: Vec<&str> = alike.iter().map(|b| b.band.as_str()).collect();
            title += &format!("; in the same order on {}", names.join(", "));
        }
        table.title(title);
        for (r, bar) in b.ranking.iter().zip(bars(&b.ranking)) {
            open |= !r.trusted;
            table.row(&columns, &(r, bar), None);
        }
    }
    doc.table(table);
    let mut key =
        "= cannot be distinguished from a neighbour of the same rank; ├─●─┤ value and uncertainty (k = 2)"
            .to_owned();
    if open {
        key += "; ○ the loss is less than five times its uncertainty: do not scale it up";
    }
    note(doc, key);
}

fn tail(s: &SessionReport) -> Vec<(&'static str, Text)> {
    let mut out: Vec<(&str, Text)> = Vec::new();
    let drift = words::drift(&s.bands).into_iter();
    out.extend(drift.map(|d| ("drift", d.into())));
    let swrs = words::swrs(&s.reflections).into_iter();
    out.extend(swrs.map(|w| ("SWR", w.into())));
    let all: Vec<String> = s.contributions.iter().map(words::contribution).collect();
    if !all.is_empty() {
        let words = all.join(", ") + ", standard, by share of the variance";
        out.push(("uncertainty", words.into()));
    }
    out.extend(s.assumptions.iter().map(|a| ("assumed", a.into())));
    out
}
