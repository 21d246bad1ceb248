//! What differs outside the chains: stations, definitions, findings.

use std::collections::BTreeMap;
use std::fmt::Debug;

use downlead_base::{Diagnostic, Severity};
use downlead_eval::Scope;
use downlead_eval::facts::{Differs, differs};
use downlead_station::Lowered;
use downlead_station::model::{Antenna, Meaning, PartData, Station};

use super::State;
use crate::build::exposure;
use crate::shape::compare::{DefinitionChange, FindingChange, StationChange};
use crate::shape::exposure::SpotStep;

/// The files a file sees, itself last.
fn visible(s: State<'_>) -> Vec<usize> {
    fn collect(s: State<'_>, at: usize, out: &mut Vec<usize>, seen: &mut Vec<usize>) {
        if seen.contains(&at) {
            return;
        }
        seen.push(at);
        for (u, _) in s.snapshot.uses(at) {
            collect(s, *u, out, seen);
        }
        out.push(at);
    }
    let mut out = Vec::new();
    collect(s, s.file, &mut out, &mut Vec::new());
    out
}

/// The texts of a file and of all it uses; the file's own name does not count.
pub(super) fn texts(s: State<'_>) -> Vec<(&str, &str)> {
    let files = visible(s).into_iter();
    files
        .filter_map(|i| {
            let f = s.snapshot.files().get(i)?;
            let path = if i == s.file { "" } else { f.path.as_str() };
            Some((path, f.text()))
        })
        .collect()
}

/// What files of readings and networks hold, as a fingerprint.
pub(super) fn attachments(s: State<'_>) -> Option<u64> {
    Some(s.scope()?.env().attachments.fingerprint())
}

fn stations_of(s: State<'_>) -> Vec<&Station> {
    let items = s.scope().into_iter().flat_map(Scope::items);
    items
        .filter_map(|i| match &i.1.meaning {
            Meaning::Station(st) => Some(&**st),
            _ => None,
        })
        .collect()
}

/// What of each station that is in both states was moved, and what came and went.
pub(super) fn stations(old: State<'_>, new: State<'_>) -> Vec<StationChange> {
    let (was, is) = (stations_of(old), stations_of(new));
    let mut out = Vec::new();
    for now in &is {
        let then = was.iter().find(|s| s.name.text == now.name.text);
        out.push(StationChange {
            name: now.name.text.to_string(),
            was: then.is_some(),
            is: true,
            line: new.places.line(now.name.loc),
            placed: then.map_or_else(Vec::new, |t| placed(t, now)),
            spots: then.map_or_else(Vec::new, |t| spots(old, new, &t.name.text)),
        });
    }
    for then in was
        .iter()
        .filter(|s| is.iter().all(|n| n.name.text != s.name.text))
    {
        out.push(StationChange {
            name: then.name.text.to_string(),
            was: true,
            is: false,
            line: 0,
            placed: Vec::new(),
            spots: Vec::new(),
        });
    }
    out
}

/// Spots of a station whose exposure is to be pointed out.
fn spots(old: State<'_>, new: State<'_>, name: &str) -> Vec<SpotStep> {
    let of = |s: State<'_>| exposure::of_station(s.scope()?, name).cloned();
    let mut all = exposure::steps(of(old).as_ref(), of(new).as_ref());
    all.retain(SpotStep::speaks);
    all
}

/// What a coordinator or licence fixes beside powers: place, heights, key-down shares.
fn placed(a: &Station, b: &Station) -> Vec<String> {
    let mut out = Vec::new();
    let changed = |x: &dyn Debug, y: &dyn Debug| differs(x, y) == Differs::InValue;
    if changed(&(a.position, &a.datum), &(b.position, &b.datum)) {
        out.push("position".to_owned());
    }
    if changed(&a.ground_amsl, &b.ground_amsl) {
        out.push("ground".to_owned());
    }
    // what the exposure of people rests on
    if changed(&a.spots, &b.spots) {
        out.push("spots".to_owned());
    }
    let neighbours = |s: &Station| (s.site.beside.clone(), s.site.alone.clone());
    if changed(&neighbours(a), &neighbours(b)) {
        out.push("neighbours of the site".to_owned());
    }
    let between = |s: &Station| (s.site.isolations.clone(), s.site.noise.clone());
    if changed(&between(a), &between(b)) {
        out.push("isolation or noise of the site".to_owned());
    }
    let reflection = |s: &Station| s.under.iter().map(|u| u.reflection).collect::<Vec<_>>();
    if changed(&reflection(a), &reflection(b)) {
        out.push("reflection".to_owned());
    }
    for now in &b.parts {
        let Some(tag) = &now.tag else { continue };
        let then = a
            .parts
            .iter()
            .find(|p| p.tag.as_ref().map(|t| &t.text) == Some(&tag.text));
        match (then.map(|p| &p.data), &now.data) {
            (Some(PartData::Antenna(x)), PartData::Antenna(y)) => {
                let height = |a: &Antenna| a.height_agl;
                if changed(&height(x), &height(y)) {
                    out.push(format!("height of {}", tag.text));
                }
                if changed(&x.size, &y.size) {
                    out.push(format!("size of {}", tag.text));
                }
            }
            (Some(x), y) => {
                let keyed = |d: &PartData| {
                    d.transmitter()
                        .map(|t| (t.keyed, t.keyed_in_s, t.mode, t.duty))
                };
                if changed(&keyed(x), &keyed(y)) {
                    out.push(format!("time keyed of {}", tag.text));
                }
            }
            _ => {}
        }
    }
    out
}

/// Every definition that a file sees, without chains and parts: by name, how it is written down.
enum Defined<'s> {
    Item(&'s Lowered),
    Value(&'s dyn Debug),
}

fn defined(s: State<'_>) -> BTreeMap<String, Defined<'_>> {
    let mut out = BTreeMap::new();
    let Some(scope) = s.scope() else { return out };
    let env = scope.env();
    for (name, v) in &env.lets {
        out.insert(format!("let {name}"), Defined::Value(v));
    }
    for (name, low) in &env.bands {
        out.insert(format!("band {name}"), Defined::Item(low));
    }
    let kinds = [
        ("cable", &env.cables),
        ("connector", &env.connectors),
        ("device", &env.devices),
        ("instrument", &env.instruments),
    ];
    for (word, all) in kinds {
        for (name, (_, low)) in all {
            out.insert(format!("{word} {name}"), Defined::Item(low));
        }
    }
    for (_, low, _) in scope.items() {
        match &low.meaning {
            Meaning::Station(st) => in_station(st, &mut out),
            Meaning::Session(x) => {
                out.insert(format!("session {}", x.name.text), Defined::Item(low));
            }
            _ => {}
        }
    }
    out
}

fn in_station<'s>(st: &'s Station, out: &mut BTreeMap<String, Defined<'s>>) {
    let name = &st.name.text;
    if st.position.is_some() {
        out.insert(format!("{name}: position"), Defined::Value(&st.position));
    }
    if st.ground_amsl.is_some() {
        out.insert(format!("{name}: ground"), Defined::Value(&st.ground_amsl));
    }
    if st.joins.is_some() {
        out.insert(format!("{name}: joins"), Defined::Value(&st.joins));
    }
    for p in &st.places {
        out.insert(format!("{name}: place {}", p.name.text), Defined::Value(p));
    }
}

fn apart(a: &Defined<'_>, b: &Defined<'_>) -> Differs {
    match (a, b) {
        (Defined::Item(x), Defined::Item(y)) if std::ptr::eq(*x, *y) => Differs::Not,
        (Defined::Item(x), Defined::Item(y)) => differs(&x.meaning, &y.meaning),
        (Defined::Value(x), Defined::Value(y)) => differs(*x, *y),
        _ => Differs::InValue,
    }
}

pub(super) fn definitions(old: State<'_>, new: State<'_>) -> Vec<DefinitionChange> {
    let (was, is) = (defined(old), defined(new));
    let mut out = Vec::new();
    for (name, now) in &is {
        let then = was.get(name);
        let how = then.map_or(Differs::InValue, |t| apart(t, now));
        if how != Differs::Not {
            out.push(DefinitionChange {
                name: name.clone(),
                how,
                was: then.is_some(),
                is: true,
            });
        }
    }
    for name in was.keys().filter(|n| !is.contains_key(*n)) {
        out.push(DefinitionChange {
            name: name.clone(),
            how: Differs::InValue,
            was: true,
            is: false,
        });
    }
    out
}

pub(super) fn findings(old: State<'_>, new: State<'_>) -> Vec<FindingChange> {
    let of = |s: State<'_>| -> Vec<(&'static str, bool, String, u32)> {
        let path = s
            .snapshot
            .files()
            .get(s.file)
            .map_or("", |f| f.path.as_str());
        let here = |d: &Diagnostic| {
            let (file, _, line) = s.places.at(d.primary.loc);
            (file == path).then_some(line)
        };
        s.snapshot
            .diagnostics()
            .iter()
            .filter(|d| d.severity >= Severity::Warning)
            .filter_map(|d| {
                let message = d.message.lines().next().unwrap_or("").to_owned();
                Some((d.code.id, d.severity == Severity::Error, message, here(d)?))
            })
            .collect()
    };
    let (was, is) = (of(old), of(new));
    let mut out = Vec::new();
    for (list, other, new) in [(&is, &was, true), (&was, &is, false)] {
        for (code, error, message, line) in list {
            if !other.iter().any(|o| o.0 == *code && o.2 == *message) {
                out.push(FindingChange {
                    new,
                    code,
                    error: *error,
                    message: message.clone(),
                    line: *line,
                });
            }
        }
    }
    out
}
