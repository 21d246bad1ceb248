//! What a change of the text means on the air.

use downlead_quantity::{db, decibel_signed, number, power};

use super::note;
use crate::document::{Answer, Block, Column, Document, Level, Table, Text};
use crate::shape::compare::{
    BandChange, ChainChange, Comparison, Figures, LimitState, Pair, PartChange, PartState, SAME_DB,
};
use crate::words::chain::under_or_over;

/// A figure, then and now, and its change.
type Figure = [String; 4];

static FIGURES: &[Column<Figure>] = &[
    Column::left("", |r| (&r[0]).into()),
    Column::right("then", |r| (&r[1]).into()),
    Column::right("now", |r| (&r[2]).into()),
    Column::right("change", |r| (&r[3]).into()),
];

static PARTS: &[Column<[String; 5]>] = &[
    Column::left("part", |r| (&r[0]).into()),
    Column::left("then", |r| (&r[1]).into()),
    Column::left("now", |r| (&r[2]).into()),
    Column::right("loss then", |r| (&r[3]).into()),
    Column::right("loss now", |r| (&r[4]).into()),
];

static DEFINITIONS: &[Column<(String, &'static str)>] = &[
    Column::left("definition", |r| (&r.0).into()),
    Column::left("is", |r| r.1.into()),
];

static FINDINGS: &[Column<(&'static str, &'static str, String)>] = &[
    Column::left("is", |r| r.0.into()),
    Column::left("code", |r| r.1.into()),
    Column::left("message", |r| (&r.2).into()),
];

/// The page. `old` and `new` name the two states: `HEAD~2`, `the text as it is`.
#[must_use]
pub fn page(c: &Comparison, path: &str, old: &str, new: &str) -> Document {
    let title = format!("What changes on the air: {path}");
    let mut doc = Document {
        title: title.clone(),
        widest: None,
        blocks: Vec::new(),
    };
    doc.heading(1, title, None);
    let (moved, still): (Vec<_>, Vec<_>) = c.chains.iter().partition(|x| differs(x));
    let lines = conclusion(&moved);
    if !lines.is_empty() {
        doc.push(Block::Answers(lines));
    }
    if moved.is_empty() {
        note(
            &mut doc,
            match (c.same_text, c.chains.is_empty()) {
                (true, _) => "The texts are the same.",
                (false, true) => "There is no chain in either.",
                (false, false) => "The text differs, and nothing changes on the air.",
            },
        );
    }
    note(&mut doc, format!("Then: {old}. Now: {new}."));
    for x in &moved {
        chain(&mut doc, x);
    }
    if !moved.is_empty() && !still.is_empty() {
        let names: Vec<&str> = still.iter().map(|x| x.name.as_str()).collect();
        note(
            &mut doc,
            format!("The same as before: {}.", names.join(", ")),
        );
    }
    renamed(&mut doc, c);
    around(&mut doc, c);
    doc
}

/// The largest changes of what is radiated or needed, and verdicts that moved.
fn conclusion(moved: &[&ChainChange]) -> Vec<Answer> {
    let mut out: Vec<(f64, Answer)> = Vec::new();
    for c in moved {
        for b in c.bands.iter().filter(|b| band_differs(b)) {
            let verdicts: Vec<String> = b.limits.iter().filter_map(turned).collect();
            let (step, words) = step(b);
            let weight = step.abs() + if verdicts.is_empty() { 0.0 } else { 1000.0 };
            let cells: Vec<Text> = vec![
                (&b.band).into(),
                (&c.name).into(),
                words.into(),
                verdicts.join(", ").into(),
            ];
            let answer = Answer {
                short: cells.clone(),
                cells,
                at: None,
            };
            out.push((weight, answer));
        }
    }
    out.sort_by(|a, b| b.0.total_cmp(&a.0));
    out.into_iter()
        .map(|x| x.1)
        .take(crate::words::answer::MOST)
        .collect()
}

/// A limit whose verdict is another: `erp limit met, was cannot tell`.
fn turned(l: &crate::shape::compare::LimitChange) -> Option<String> {
    let (a, b) = l.state.both()?;
    (a.verdict != b.verdict).then(|| {
        format!(
            "{} limit {}, was {}",
            l.quantity,
            b.verdict.words(),
            a.verdict.words()
        )
    })
}

/// By how much the result of a band moved, dB, and in words.
fn step(b: &BandChange) -> (f64, String) {
    let Some((old, new)) = b.figures.both() else {
        let words = if b.figures.new.is_some() {
            "new"
        } else {
            "gone"
        };
        return (100.0, words.to_owned());
    };
    if let Some((a, b)) = old.eirp_w.zip(new.eirp_w) {
        let d = decibels(a, b);
        return (d, format!("radiated power {}", decibel_signed(d)));
    }
    if let Some((a, b)) = old.sensitivity_dbm.zip(new.sensitivity_dbm) {
        return (b - a, format!("sensitivity {}", decibel_signed(b - a)));
    }
    match old.loss_db.zip(new.loss_db) {
        Some((a, b)) => (b - a, format!("loss {}", decibel_signed(b - a))),
        None => (0.0, "other parts".to_owned()),
    }
}

fn renamed(doc: &mut Document, c: &Comparison) {
    let mut renamed: Vec<String> = Vec::new();
    for (then, now) in c
        .chains
        .iter()
        .flat_map(|x| &x.bands)
        .flat_map(|b| &b.renamed)
    {
        let words = format!("{then} is now {now}");
        if !renamed.contains(&words) {
            renamed.push(words);
        }
    }
    if !renamed.is_empty() {
        note(doc, format!("Renamed: {}.", renamed.join(", ")));
    }
}

/// Definitions and findings that came and went.
fn around(doc: &mut Document, c: &Comparison) {
    let rows: Vec<(String, &'static str)> = c
        .definitions
        .iter()
        .map(|d| {
            let how = match (d.was, d.is) {
                (false, _) => "new",
                (_, false) => "gone",
                _ => "changed",
            };
            (d.name.clone(), how)
        })
        .collect();
    if !rows.is_empty() {
        doc.heading(2, "Definitions", None);
        doc.table(Table::of(DEFINITIONS, &rows, |_| None));
    }
    let rows: Vec<(&'static str, &'static str, String)> = c
        .findings
        .iter()
        .map(|f| {
            let how = if f.new { "new" } else { "gone" };
            (how, f.code, f.message.clone())
        })
        .collect();
    if !rows.is_empty() {
        doc.heading(2, "Errors and warnings", None);
        doc.table(Table::of(FINDINGS, &rows, |_| None));
    }
}

fn differs(c: &ChainChange) -> bool {
    c.direction.old != c.direction.new || c.bands.iter().any(band_differs)
}

fn band_differs(b: &BandChange) -> bool {
    let figures = match b.figures.both() {
        Some((a, b)) => !rows(Some(a), Some(b)).is_empty() || a.complete != b.complete,
        None => true,
    };
    figures
        || b.reordered
        || !b.parts.is_empty()
        || b.limits.iter().any(|l| limit_differs(&l.state))
}

fn limit_differs(l: &Pair<LimitState>) -> bool {
    l.both().is_none_or(|(a, b)| {
        let apart = |x: Option<f64>, y: Option<f64>| match x.zip(y) {
            Some((x, y)) => (x - y).abs() >= SAME_DB,
            None => x.is_some() != y.is_some(),
        };
        let limits = a.limit_w.zip(b.limit_w);
        a.verdict != b.verdict
            || apart(a.margin_db, b.margin_db)
            || apart(a.uncertainty_db, b.uncertainty_db)
            || limits.is_some_and(|(x, y)| decibels(x, y).abs() >= SAME_DB)
    })
}

fn chain(doc: &mut Document, c: &ChainChange) {
    let direction = match (c.direction.old, c.direction.new) {
        (Some(a), Some(b)) if a != b => format!("{b}, was {a}"),
        (Some(_), None) => "gone".to_owned(),
        (None, Some(b)) => format!("{b}, new"),
        (a, b) => b.or(a).unwrap_or("").to_owned(),
    };
    doc.heading(2, format!("{} ({direction})", c.name), None);
    for b in c.bands.iter().filter(|b| band_differs(b)) {
        band(doc, b);
    }
}

fn band(doc: &mut Document, b: &BandChange) {
    let state = match (&b.figures.old, &b.figures.new) {
        (Some(_), None) => ", gone",
        (None, Some(_)) => ", new",
        _ => "",
    };
    doc.heading(3, format!("{}{state}", b.band), None);
    if let Some(why) = reason(b) {
        note(doc, why);
    }
    let f = &b.figures;
    let mut list = rows(f.old.as_ref(), f.new.as_ref());
    for r in &mut list {
        let step = match r[0].as_str() {
            "ERP" | "EIRP" => b.moved.radiated,
            "chain loss" => b.moved.loss,
            _ => None,
        };
        if let Some(step) = step {
            r[3] = format!("{} ± {}", r[3], db(step.uncertainty_db));
        }
    }
    list.extend(
        b.limits
            .iter()
            .filter(|l| limit_differs(&l.state))
            .map(|l| limit(l.quantity, &l.state)),
    );
    let mut table = Table::new(FIGURES);
    list.iter().for_each(|r| table.row(FIGURES, r, None));
    doc.table(table);
    for (when, f) in [("Then", &b.figures.old), ("Now", &b.figures.new)] {
        if f.as_ref().is_some_and(|f| !f.complete) {
            let words = format!(
                "{when}, not all parts could be computed; what depends on them is not known."
            );
            doc.push(Block::Note(Level::Warning, words.into()));
        }
    }
    if b.reordered {
        note(doc, "The parts are in another order.");
    }
    // a chain that came or went whole needs no list of what is in the report
    if b.figures.both().is_some() && !b.parts.is_empty() {
        let list: Vec<[String; 5]> = b.parts.iter().map(part).collect();
        doc.table(Table::of(PARTS, &list, |_| None));
    }
}

/// Which figures moved the result, and by how much: what the transmitter gives, what the chain
/// loses, what the antenna adds.
fn reason(b: &BandChange) -> Option<String> {
    let (old, new) = b.figures.both()?;
    let radiated = decibels(old.eirp_w?, new.eirp_w?);
    if radiated.abs() < SAME_DB {
        return None;
    }
    let mut why = Vec::new();
    if let Some((a, b)) = old.transmitter_w.zip(new.transmitter_w) {
        let d = decibels(a, b);
        if d.abs() >= SAME_DB {
            why.push(format!(
                "the transmitter gives {} {}",
                db(d.abs()),
                more_or_less(d)
            ));
        }
    }
    let lost = new.loss_db? - old.loss_db?;
    if lost.abs() >= SAME_DB {
        let mut most: Vec<(&PartChange, f64)> = b
            .parts
            .iter()
            .filter_map(|p| Some((p, p.added_db()?)))
            .filter(|p| p.1.abs() >= SAME_DB)
            .collect();
        most.sort_by(|a, b| b.1.abs().total_cmp(&a.1.abs()));
        let names: Vec<String> = most
            .iter()
            .take(3)
            .map(|(p, added)| format!("{} {}", p.name, decibel_signed(*added)))
            .collect();
        let names = if names.is_empty() {
            String::new()
        } else {
            format!(" ({})", names.join(", "))
        };
        why.push(format!(
            "the chain loses {} {}{names}",
            db(lost.abs()),
            more_or_less(lost)
        ));
    }
    if let Some((a, b)) = old.gain_dbi.zip(new.gain_dbi)
        && (b - a).abs() >= SAME_DB
    {
        why.push(format!(
            "the antenna gains {} {}",
            db((b - a).abs()),
            more_or_less(b - a)
        ));
    }
    let because = if why.is_empty() {
        String::new()
    } else {
        format!(": {}", why.join(", "))
    };
    Some(format!(
        "Radiated power {}{because}.",
        decibel_signed(radiated)
    ))
}

fn more_or_less(step: f64) -> &'static str {
    if step > 0.0 { "more" } else { "less" }
}

fn decibels(from: f64, to: f64) -> f64 {
    downlead_quantity::w_to_dbm(to) - downlead_quantity::w_to_dbm(from)
}

fn dash() -> String {
    "–".to_owned()
}

/// The figures that differ. Of a band that came or went: all it has.
fn rows(old: Option<&Figures>, new: Option<&Figures>) -> Vec<Figure> {
    let mut out = Vec::new();
    let both = |get: &dyn Fn(&Figures) -> Option<f64>| (old.and_then(get), new.and_then(get));
    let mut row = |name: &str,
                   get: &dyn Fn(&Figures) -> Option<f64>,
                   show: &dyn Fn(f64) -> String,
                   step: &dyn Fn(f64, f64) -> String,
                   apart: &dyn Fn(f64, f64) -> bool| {
        let (a, b) = both(get);
        let change = match (a, b) {
            (None, None) => return,
            (Some(a), Some(b)) if !apart(a, b) => return,
            (Some(a), Some(b)) => step(a, b),
            (None, Some(_)) => "new".to_owned(),
            (Some(_), None) => "gone".to_owned(),
        };
        let shown = |x: Option<f64>| x.map_or_else(dash, show);
        out.push([name.to_owned(), shown(a), shown(b), change]);
    };
    let difference = |a: f64, b: f64| decibel_signed(b - a);
    let ratio = |a: f64, b: f64| decibel_signed(decibels(a, b));
    let apart_db = |a: f64, b: f64| (b - a).abs() >= SAME_DB;
    let apart_w = |a: f64, b: f64| decibels(a, b).abs() >= SAME_DB;
    let mhz = |hz: f64| downlead_quantity::frequency(hz);
    let up = |a: f64, b: f64| {
        let sign = if b > a { "+" } else { "-" };
        format!("{sign}{}", downlead_quantity::frequency((b - a).abs()))
    };
    row("frequency", &|f| Some(f.hz), &mhz, &up, &|a, b| {
        (b - a).abs() >= 1.0
    });
    row(
        "transmitter",
        &|f| f.transmitter_w,
        &power,
        &ratio,
        &apart_w,
    );
    row("chain loss", &|f| f.loss_db, &db, &difference, &apart_db);
    row(
        "antenna gain",
        &|f| f.gain_dbi,
        &|g| format!("{} dBi", number(g, 2)),
        &difference,
        &apart_db,
    );
    row("ERP", &|f| f.erp_w, &power, &ratio, &apart_w);
    row("EIRP", &|f| f.eirp_w, &power, &ratio, &apart_w);
    row(
        "sensitivity at the antenna",
        &|f| f.sensitivity_dbm,
        &|l| format!("{l:.1} dBm"),
        &difference,
        &|a, b| (b - a).abs() >= 0.05,
    );
    row(
        "SWR",
        &|f| f.swr.filter(|s| s.is_finite()),
        &|s| number(s, 2),
        &|a, b| format!("{:+.2}", b - a),
        &apart_db,
    );
    row(
        "uncertainty (k = 2)",
        &|f| f.uncertainty_db,
        &db,
        &difference,
        &apart_db,
    );
    out
}

fn limit(quantity: &str, l: &Pair<LimitState>) -> Figure {
    let words = |s: &LimitState| match s.margin_db.zip(s.limit_w) {
        Some((m, w)) => format!("{} {}, {}", under_or_over(m), power(w), s.verdict.words()),
        None => s.verdict.words(),
    };
    let shown = |s: &Option<LimitState>| s.as_ref().map_or_else(dash, words);
    let change = match l.both() {
        Some((a, b)) => a
            .margin_db
            .zip(b.margin_db)
            .map_or_else(String::new, |(x, y)| decibel_signed(y - x)),
        None if l.new.is_some() => "new".to_owned(),
        None => "gone".to_owned(),
    };
    [
        format!("{quantity} limit"),
        shown(&l.old),
        shown(&l.new),
        change,
    ]
}

fn part(p: &PartChange) -> [String; 5] {
    let (then, now) = (&p.state.old, &p.state.new);
    let text = |s: &Option<PartState>| s.as_ref().map_or_else(dash, |s| s.text.clone());
    let loss = |s: &Option<PartState>| match s {
        Some(PartState {
            loss_db: Some(loss),
            ..
        }) => db(*loss),
        Some(_) => "not known".to_owned(),
        None => dash(),
    };
    let new = match (then, now) {
        (Some(a), Some(b)) if a.text == b.text => "as before".to_owned(),
        _ => text(now),
    };
    [p.name.clone(), text(then), new, loss(then), loss(now)]
}
