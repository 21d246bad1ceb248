//! From a station to the form of an office.

use downlead_eval::form::{Entry, Filled, filled};
use downlead_eval::{Places, Snapshot};
use downlead_quantity::{number, sig};
use downlead_station::model::{FieldKind, FieldWhat, FormField, Meaning, Rounding, RuleSet};

use super::{AID, From};
use crate::shape::paper::form::{FieldReport, FormBlock, FormFile, FormStation, SCHEMA};

/// The names of all forms that the named files can see.
#[must_use]
pub fn known(s: &Snapshot) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for scope in s.scopes() {
        let env = scope.env();
        let names = env.names_of(downlead_station::NameKind::Rules);
        let sets = names.into_iter().filter_map(|n| env.rule_set(n));
        all.extend(
            sets.filter(|r| !r.fields.is_empty())
                .map(|r| r.name.text.to_string()),
        );
    }
    all.sort_unstable();
    all.dedup();
    all
}

/// The form of a name, filled in for all stations of the named files.
#[must_use]
pub fn forms(s: &Snapshot, name: &str, from: From<'_>) -> FormFile {
    let places = Places::new(s);
    let mut file = FormFile {
        schema: SCHEMA,
        caution: AID,
        form: name.to_owned(),
        title: None,
        edition: None,
        dated: None,
        stations: Vec::new(),
    };
    // a form may stand in a file of its own beside those of the stations
    let of = |scope: &'_ downlead_eval::Scope| {
        scope
            .env()
            .rule_set(name)
            .filter(|r| !r.fields.is_empty())
            .cloned()
    };
    let Some(set) = s.scopes().iter().find_map(of) else {
        return file;
    };
    let set = &set;
    let text = |t: &Option<Box<str>>| t.as_ref().map(ToString::to_string);
    for scope in s.scopes() {
        (file.title, file.edition, file.dated) =
            (text(&set.title), text(&set.edition), text(&set.dated));
        for (_, low, result) in scope.items() {
            let Meaning::Station(st) = &low.meaning else {
                continue;
            };
            let blocks = filled(set, st, &result.chains, scope.env());
            let blocks: Vec<FormBlock> = blocks.iter().map(|b| block(&places, set, b)).collect();
            let mut origin = super::origin(s, scope, Some(st), from);
            // the form's own file, where it is none of the station's; one of the library goes with the version
            let form = (!set.built_in).then(|| (from.files)(&places.at(set.name.loc).0));
            if let Some(form) = form.filter(|f| !origin.files.contains(f)) {
                origin.files.push(form);
            }
            file.stations.push(FormStation {
                station: st.name.text.to_string(),
                title: text(&st.title),
                origin,
                missing: missing(&blocks),
                blocks,
            });
        }
    }
    file
}

fn missing(blocks: &[FormBlock]) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for b in blocks {
        for f in &b.fields {
            if let Some(why) = f.missing {
                let words = format!("\"{}\" ({}): {why}", f.label, b.chain);
                if !all.contains(&words) {
                    all.push(words);
                }
            }
        }
    }
    all
}

fn block(places: &Places<'_>, set: &RuleSet, b: &Filled) -> FormBlock {
    let (file, _, line) = places.at(b.head);
    FormBlock {
        chain: places.text(b.chain).to_owned(),
        band: match b.point {
            Some(p) => format!("{} {p}", b.band),
            None => b.band.to_string(),
        },
        frequency_hz: b.hz,
        file,
        line,
        fields: b
            .entries
            .iter()
            .map(|(i, e)| field(&set.fields[*i], e))
            .collect(),
    }
}

fn field(f: &FormField, e: &Entry) -> FieldReport {
    let base = FieldReport {
        label: f.label.to_string(),
        what: f.what.word(),
        entry: None,
        unit: f.unit,
        exact: None,
        rounded: None,
        rounding: None,
        uncertainty_db: None,
        over_w: None,
        by_hand: false,
        missing: None,
    };
    match e {
        Entry::Number {
            exact,
            rounded,
            uncertainty_db,
            over,
        } => FieldReport {
            entry: Some(shown(f, *rounded)),
            exact: Some(*exact),
            rounded: Some(*rounded),
            rounding: f.step.map(|s| rounding(f, s)),
            uncertainty_db: *uncertainty_db,
            over_w: *over,
            ..base
        },
        Entry::Words(w) => FieldReport {
            entry: Some(w.to_string()),
            ..base
        },
        Entry::Blank => FieldReport {
            by_hand: true,
            ..base
        },
        Entry::Missing(why) => FieldReport {
            missing: Some(why.words()),
            ..base
        },
    }
}

fn rounding(f: &FormField, step: f64) -> String {
    let unit = match f.unit {
        Some("dBm" | "dBW" | "dBi" | "dBd") => "dB",
        Some("degrees") => "°",
        Some(u) => u,
        None => "",
    };
    let side = match f.rounding {
        Rounding::Nearest => "to the nearest",
        Rounding::Up => "up to",
        Rounding::Down => "down to",
    };
    let space = if unit == "°" { "" } else { " " };
    format!("{side} {}{space}{unit}", number(step, 9))
}

/// A value in the form's unit, with as many decimals as its step has.
fn shown(f: &FormField, x: f64) -> String {
    if f.what.kind() == FieldKind::Angle {
        return angle(f, x);
    }
    let digits = match f.decimals() {
        Some(d) => format!("{x:.d$}"),
        // a frequency has all its digits
        None if f.what.kind() == FieldKind::Frequency => number(x, 9),
        None => sig(x, 4),
    };
    // -0 is 0
    let digits = match digits.trim_start_matches(['-', '0', '.']).is_empty() {
        true => digits.trim_start_matches('-').to_owned(),
        false => digits,
    };
    format!("{digits} {}", f.unit.unwrap_or(""))
}

/// `49.3333° S`, or `49° 20′ 00″ S`.
fn angle(f: &FormField, x: f64) -> String {
    let letters = match f.what {
        FieldWhat::Latitude => ["N", "S"],
        _ => ["E", "W"],
    };
    let letter = if x < 0.0 { letters[1] } else { letters[0] };
    let x = x.abs();
    if f.unit == Some("dms") {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "at most 648,000"
        )]
        let seconds = (x * 3600.0).round() as u32;
        let (d, m, s) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
        return format!("{d}° {m:02}′ {s:02}″ {letter}");
    }
    match f.decimals() {
        Some(d) => format!("{x:.d$}° {letter}"),
        None => format!("{}° {letter}", number(x, 6)),
    }
}
