//! The comparison as Markdown.

use downlead_eval::result::Verdict;
use downlead_quantity::{db, decibel_signed, number, power};

use super::{BandChange, ChainChange, Comparison, Figures, LimitState, Pair, PartChange, SAME_DB};
use crate::markdown::{escape, table};
use crate::words::under_or_over;

/// The comparison as Markdown. `old` and `new` name the two states: `HEAD~2`, `the text as it is`.
#[must_use]
pub fn compare_markdown(c: &Comparison, path: &str, old: &str, new: &str) -> String {
    let mut out = format!(
        "# What changes on the air: {}\n\nThen: {}. Now: {}.\n\n",
        escape(path),
        escape(old),
        escape(new)
    );
    let (moved, still): (Vec<_>, Vec<_>) = c.chains.iter().partition(|x| differs(x));
    if moved.is_empty() {
        out.push_str(match (c.same_text, c.chains.is_empty()) {
            (true, _) => "The texts are the same.\n\n",
            (false, true) => "There is no chain in either.\n\n",
            (false, false) => "The text differs, and nothing changes on the air.\n\n",
        });
    }
    for x in &moved {
        chain(&mut out, x);
    }
    if !moved.is_empty() && !still.is_empty() {
        let names: Vec<String> = still.iter().map(|x| escape(&x.name)).collect();
        out.push_str(&format!("The same as before: {}.\n\n", names.join(", ")));
    }
    let mut renamed: Vec<String> = Vec::new();
    for (then, now) in c
        .chains
        .iter()
        .flat_map(|x| &x.bands)
        .flat_map(|b| &b.renamed)
    {
        let words = escape(&format!("{then} is now {now}"));
        if !renamed.contains(&words) {
            renamed.push(words);
        }
    }
    if !renamed.is_empty() {
        out.push_str(&format!("Renamed: {}.\n\n", renamed.join(", ")));
    }
    around(&mut out, c);
    out.trim_end().to_owned() + "\n"
}

/// Definitions and findings that came and went.
fn around(out: &mut String, c: &Comparison) {
    let rows: Vec<Vec<String>> = c
        .definitions
        .iter()
        .map(|d| {
            let how = match (d.was, d.is) {
                (false, _) => "new",
                (_, false) => "gone",
                _ => "changed",
            };
            vec![d.name.clone(), how.to_owned()]
        })
        .collect();
    section(out, "Definitions", &["definition", "is"], &rows);
    let rows: Vec<Vec<String>> = c
        .findings
        .iter()
        .map(|f| {
            let how = if f.new { "new" } else { "gone" };
            vec![how.to_owned(), f.code.to_owned(), f.message.clone()]
        })
        .collect();
    section(
        out,
        "Errors and warnings",
        &["is", "code", "message"],
        &rows,
    );
}

fn section(out: &mut String, title: &str, head: &[&str], rows: &[Vec<String>]) {
    if !rows.is_empty() {
        out.push_str(&format!("## {title}\n\n{}\n", table(head, rows)));
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
        a.verdict != b.verdict
            || (a.margin_db - b.margin_db).abs() >= SAME_DB
            || (a.uncertainty_db - b.uncertainty_db).abs() >= SAME_DB
            || decibels(a.limit_w, b.limit_w).abs() >= SAME_DB
    })
}

fn chain(out: &mut String, c: &ChainChange) {
    let direction = match (c.direction.old, c.direction.new) {
        (Some(a), Some(b)) if a != b => format!("{b}, was {a}"),
        (Some(_), None) => "gone".to_owned(),
        (None, Some(b)) => format!("{b}, new"),
        (a, b) => b.or(a).unwrap_or("").to_owned(),
    };
    out.push_str(&format!("## {} ({direction})\n\n", escape(&c.name)));
    for b in c.bands.iter().filter(|b| band_differs(b)) {
        band(out, b);
    }
}

fn band(out: &mut String, b: &BandChange) {
    let state = match (&b.figures.old, &b.figures.new) {
        (Some(_), None) => ", gone",
        (None, Some(_)) => ", new",
        _ => "",
    };
    out.push_str(&format!("### {}{state}\n\n", escape(&b.band)));
    if let Some(why) = reason(b) {
        out.push_str(&format!("{}\n\n", escape(&why)));
    }
    let f = &b.figures;
    let mut list = rows(f.old.as_ref(), f.new.as_ref());
    list.extend(
        b.limits
            .iter()
            .filter(|l| limit_differs(&l.state))
            .map(|l| limit(l.quantity, &l.state)),
    );
    if !list.is_empty() {
        out.push_str(&format!(
            "{}\n",
            table(&["", "then", "now", "change"], &list)
        ));
    }
    for (when, f) in [("Then", &b.figures.old), ("Now", &b.figures.new)] {
        if f.as_ref().is_some_and(|f| !f.complete) {
            out.push_str(&format!(
                "{when}, not all parts could be computed; what depends on them is not known.\n\n"
            ));
        }
    }
    if b.reordered {
        out.push_str("The parts stand in another order.\n\n");
    }
    // a chain that came or went whole needs no list of what is in the report
    if b.figures.both().is_some() && !b.parts.is_empty() {
        let list: Vec<Vec<String>> = b.parts.iter().map(part).collect();
        out.push_str(&format!(
            "{}\n",
            table(&["part", "then", "now", "loss then", "loss now"], &list)
        ));
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

type Row = Vec<String>;

fn dash() -> String {
    "–".to_owned()
}

/// The figures that differ. Of a band that came or went: all it has.
fn rows(old: Option<&Figures>, new: Option<&Figures>) -> Vec<Row> {
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
        out.push(vec![name.to_owned(), shown(a), shown(b), change]);
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
        "± (k = 2)",
        &|f| f.uncertainty_db,
        &db,
        &difference,
        &apart_db,
    );
    out
}

fn limit(quantity: &str, l: &Pair<LimitState>) -> Row {
    let words = |s: &LimitState| {
        format!(
            "{} {}, {}",
            under_or_over(s.margin_db),
            power(s.limit_w),
            verdict(s.verdict)
        )
    };
    let shown = |s: &Option<LimitState>| s.as_ref().map_or_else(dash, words);
    let change = match l.both() {
        Some((a, b)) => decibel_signed(b.margin_db - a.margin_db),
        None if l.new.is_some() => "new".to_owned(),
        None => "gone".to_owned(),
    };
    vec![
        format!("{quantity} limit"),
        shown(&l.old),
        shown(&l.new),
        change,
    ]
}

fn verdict(v: Verdict) -> &'static str {
    match v {
        Verdict::Yes => "met",
        Verdict::No => "not met",
        Verdict::CannotTell => "cannot tell",
    }
}

fn part(p: &PartChange) -> Row {
    let (then, now) = (&p.state.old, &p.state.new);
    let text = |s: &Option<(String, Option<f64>)>| s.as_ref().map_or_else(dash, |s| s.0.clone());
    let loss = |s: &Option<(String, Option<f64>)>| match s {
        Some((_, Some(loss))) => db(*loss),
        Some((_, None)) => "not known".to_owned(),
        None => dash(),
    };
    let new = match (then, now) {
        (Some(a), Some(b)) if a.0 == b.0 => "as before".to_owned(),
        _ => text(now),
    };
    vec![p.name.clone(), text(then), new, loss(then), loss(now)]
}
