//! Two states of the items that rest on a recalled definition, compared result by result.
//!
//! Both states are computed from the same text but for the line `recalled`, bit for bit, so what differs
//! rests on the definition, and what is the same does not, or its error cancels.

use downlead_eval::{Places, Snapshot};
use downlead_station::model::Meaning;
use serde_json::{Map, Value};

use crate::shape::recall::{Effect, RecallRow};

/// The results of these items (index of the scope and of the item), one value a scope.
#[must_use]
pub fn states(s: &Snapshot, items: &[(usize, usize)]) -> Vec<Value> {
    let places = Places::new(s);
    let all_links = super::link::links(s).links;
    items
        .chunk_by(|a, b| a.0 == b.0)
        .map(|of| {
            let scope = &s.scopes()[of[0].0];
            let mut names: Vec<&str> = Vec::new();
            let mut sessions = Vec::new();
            let mut links = Vec::new();
            for (_, i) in of {
                let (_, low, r) = &scope.items()[*i];
                match &low.meaning {
                    Meaning::Station(st) => names.push(&st.name.text),
                    Meaning::Chain(c) => names.push(&c.name.text),
                    Meaning::Session(x) => {
                        if let Some(found) = &r.session {
                            sessions.push(super::bench::session(&places, x, found, scope.env()));
                        }
                    }
                    Meaning::Link(l) => {
                        links.extend(all_links.iter().filter(|x| x.name == *l.name.text));
                    }
                    _ => {}
                }
            }
            let wanted = |station: &str, chain: &str| {
                names.contains(&station) || station.is_empty() && names.contains(&chain)
            };
            let mut stations = super::chain::stations(&places, scope, &wanted);
            stations.retain(|st| {
                names.contains(&st.name.as_str()) || st.name.is_empty() && !st.chains.is_empty()
            });
            serde_json::json!({ "stations": stations, "sessions": sessions, "links": links })
        })
        .collect()
}

/// Where a result stands.
#[derive(Clone, Default)]
struct Context {
    file: String,
    line: u64,
    of: String,
    chain: String,
    band: String,
    /// The list it is in.
    list: String,
}

/// What differs between two states. A session that was read with the instrument `read_with` and on
/// which nothing differs is one row.
#[must_use]
pub fn compared(
    before: &[Value],
    after: &[Value],
    read_with: Option<&str>,
    since: Option<&str>,
) -> Vec<RecallRow> {
    let mut out = Vec::new();
    for (a, b) in before.iter().zip(after) {
        walk(a, b, &Context::default(), &mut out);
        for s in list(a, "sessions") {
            if !earlier(s["date"].as_str(), since) {
                cancels(s, read_with, &mut out);
            }
        }
    }
    out
}

/// Whether a day lies before the first one; of two that differ in detail, the common part counts.
fn earlier(date: Option<&str>, since: Option<&str>) -> bool {
    let (Some(d), Some(s)) = (date, since) else {
        return false;
    };
    let n = d.len().min(s.len());
    d.get(..n) < s.get(..n)
}

fn list<'v>(v: &'v Value, name: &str) -> &'v [Value] {
    v[name].as_array().map_or(&[], |a| a)
}

fn text(v: &Value) -> String {
    v.as_str().unwrap_or("").to_owned()
}

/// A session in which the instrument's error cancels altogether.
fn cancels(s: &Value, read_with: Option<&str>, out: &mut Vec<RecallRow>) {
    let Some(name) = read_with else { return };
    let with = list(s, "instruments").iter().any(|i| i["name"] == name);
    let of = text(&s["name"]);
    let file = text(&s["file"]);
    let moved = out.iter().any(|r| r.of == of && r.file == file);
    if !with || moved {
        return;
    }
    out.push(RecallRow {
        effect: Effect::Cancels,
        line: s["line"].as_u64().unwrap_or(0),
        of,
        file,
        chain: String::new(),
        band: String::new(),
        what: "session".to_owned(),
        about: format!("{} results", list(s, "results").len()),
        verdict: None,
        verdict_recalled: None,
        figure: None,
        value: None,
        value_recalled: None,
    });
}

fn walk(a: &Value, b: &Value, cx: &Context, out: &mut Vec<RecallRow>) {
    match (a, b) {
        (Value::Array(x), Value::Array(y)) => {
            for (x, y) in x.iter().zip(y) {
                walk(x, y, cx, out);
            }
        }
        (Value::Object(x), Value::Object(y)) => object(x, y, cx, out),
        _ => {}
    }
}

/// Figures of a band or a station that have no verdict, the plainest first.
const PLAIN: &[&str] = &[
    "erp_w",
    "antenna_w",
    "sensitivity_dbm",
    "total_loss_db",
    "noise_figure_db",
];

fn object(a: &Map<String, Value>, b: &Map<String, Value>, cx: &Context, out: &mut Vec<RecallRow>) {
    let mut cx = cx.clone();
    if let Some(f) = a.get("file").and_then(Value::as_str) {
        f.clone_into(&mut cx.file);
    }
    if let Some(l) = a.get("line").and_then(Value::as_u64) {
        cx.line = l;
    }
    let name = |key: &str| a.get(key).and_then(Value::as_str).map(str::to_owned);
    match cx.list.as_str() {
        "stations" | "sessions" | "links" => cx.of = name("name").unwrap_or_default(),
        "chains" => cx.chain = name("name").unwrap_or_default(),
        "pieces" | "results" => cx.chain = name("piece").unwrap_or_default(),
        _ => {}
    }
    if let Some(band) = name("band") {
        cx.band = band;
    }
    // what a trial of the two states compares anyway
    if matches!(
        cx.list.as_str(),
        "diagnostics" | "budget" | "nodes" | "instruments"
    ) {
        return;
    }
    if a.contains_key("verdict") || b.contains_key("verdict") {
        return judged(a, b, &cx, out);
    }
    if let Some(key) = PLAIN.iter().find(|k| differs(a.get(**k), b.get(**k))) {
        out.push(row(
            Effect::Moves,
            &cx,
            "figure",
            a,
            Some(((*key).to_owned(), a, b)),
        ));
    }
    for (key, x) in a {
        let Some(y) = b.get(key) else { continue };
        let mut inner = cx.clone();
        key.clone_into(&mut inner.list);
        walk(x, y, &inner, out);
    }
}

type Moved<'a> = (String, &'a Map<String, Value>, &'a Map<String, Value>);

fn judged(a: &Map<String, Value>, b: &Map<String, Value>, cx: &Context, out: &mut Vec<RecallRow>) {
    let flips = a.get("verdict") != b.get("verdict");
    // the figures that say most of a result come first
    const TELLING: &[&str] = &["difference_db", "margin_db", "ratio"];
    let by_name = TELLING.iter().map(|k| (*k).to_owned());
    let mut keys = by_name.chain(a.keys().cloned());
    let key =
        keys.find(|k| k != "line" && differs(a.get(k), b.get(k)) && number(a.get(k)).is_some());
    let inner = a
        .iter()
        .any(|(k, x)| k != "line" && b.get(k).is_none_or(|y| apart(x, y)));
    if !flips && key.is_none() && !inner {
        return;
    }
    let effect = if flips { Effect::Flips } else { Effect::Moves };
    let what = match cx.list.as_str() {
        "whole" => "whole piece",
        "rows" => "log reading",
        plural => plural.strip_suffix('s').unwrap_or(plural),
    };
    let mut r = row(effect, cx, what, a, key.map(|k| (k, a, b)));
    let verdict =
        |m: &Map<String, Value>| m.get("verdict").and_then(Value::as_str).map(str::to_owned);
    r.verdict = verdict(a);
    r.verdict_recalled = verdict(b);
    out.push(r);
}

fn row(
    effect: Effect,
    cx: &Context,
    what: &str,
    a: &Map<String, Value>,
    moved: Option<Moved<'_>>,
) -> RecallRow {
    let about: Vec<String> = ["quantity", "set", "cite", "source", "date", "name"]
        .iter()
        .filter_map(|k| a.get(*k).and_then(Value::as_str))
        .filter(|t| **t != cx.of && **t != cx.chain && **t != cx.band)
        .map(str::to_owned)
        .collect();
    let of = |m: &Map<String, Value>, key: &str| number(m.get(key));
    RecallRow {
        effect,
        file: cx.file.clone(),
        line: cx.line,
        of: cx.of.clone(),
        chain: cx.chain.clone(),
        band: cx.band.clone(),
        what: what.to_owned(),
        about: about.join(", "),
        verdict: None,
        verdict_recalled: None,
        value: moved.as_ref().and_then(|(k, a, _)| of(a, k)),
        value_recalled: moved.as_ref().and_then(|(k, _, b)| of(b, k)),
        figure: moved.map(|m| m.0),
    }
}

fn number(v: Option<&Value>) -> Option<f64> {
    v.and_then(Value::as_f64)
}

/// Whether two figures differ; a figure that is there in one state only does.
fn differs(a: Option<&Value>, b: Option<&Value>) -> bool {
    match (a, b) {
        (None, None) => false,
        (Some(a), Some(b)) => apart(a, b),
        _ => true,
    }
}

/// Whether two values differ in any figure: by more than arithmetic in another order makes.
fn apart(a: &Value, b: &Value) -> bool {
    const SAME: f64 = 1e-9;
    match (a, b) {
        (Value::Array(x), Value::Array(y)) => {
            x.len() != y.len() || x.iter().zip(y).any(|(x, y)| apart(x, y))
        }
        (Value::Object(x), Value::Object(y)) => x
            .iter()
            .any(|(k, x)| k != "line" && y.get(k).is_none_or(|y| apart(x, y))),
        _ => match (a.as_f64(), b.as_f64()) {
            (Some(x), Some(y)) => (x - y).abs() > SAME * x.abs().max(y.abs()).max(1e-3),
            _ => a != b,
        },
    }
}
