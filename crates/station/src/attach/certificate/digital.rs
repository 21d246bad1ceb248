//! A digital calibration certificate: XML with quantities in the form of D-SI.
//!
//! Element names are those of the certificate's schema (3.x) and of D-SI (1.3 and 2.x); namespaces are
//! not looked at. Of each list of a result, what a quantity is follows from its `refType` and its
//! unit: a frequency has hertz; `correction`, `correctionFactor`, `measurementError`, `referenceValue`,
//! `measuredValue` and `nominalValue` are named, with any prefix before them.

use downlead_quantity::{DB_PER_RELATIVE, from_db};
use roxmltree::{Document, Node};

use super::Certificate;
use super::table::point;

/// What a quantity of a result is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Role {
    Frequency,
    Level,
    Reference,
    Measured,
    Factor,
    Correction,
    Error,
}

/// Unit as D-SI writes it.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Unit {
    /// So many hertz.
    Hertz(f64),
    /// So many watts.
    Watt(f64),
    Percent,
    Decibel,
    One,
}

/// A list of values with their uncertainty.
struct Quantity {
    role: Role,
    unit: Unit,
    line: u64,
    values: Vec<f64>,
    /// Expanded, in the unit of the values.
    expanded: Vec<f64>,
    k: Vec<f64>,
}

/// Reads a certificate, with its problems.
pub(super) fn read(text: &str) -> Certificate {
    let mut out = Certificate::default();
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let doc = match Document::parse(text) {
        Ok(doc) => doc,
        Err(e) => {
            let message = format!("It is no XML that can be read: {e}.");
            out.problem(u64::from(e.pos().row), message, None);
            return out;
        }
    };
    let root = doc.root_element();
    if named(root, "digitalCalibrationCertificate") {
        administrative(root, &mut out);
        for result in root.descendants().filter(|n| named(*n, "result")) {
            one(result, &mut out);
        }
    } else {
        let message = format!(
            "It is no digital calibration certificate: its root is `{}`.",
            root.tag_name().name()
        );
        out.problem(line(root), message, None);
    }
    out
}

fn named(n: Node<'_, '_>, name: &str) -> bool {
    n.is_element() && n.tag_name().name() == name
}

fn line(n: Node<'_, '_>) -> u64 {
    u64::from(n.document().text_pos_at(n.range().start).row)
}

fn child<'a, 'i>(n: Node<'a, 'i>, name: &str) -> Option<Node<'a, 'i>> {
    n.children().find(|c| named(*c, name))
}

fn text_of<'a>(n: Node<'a, '_>, name: &str) -> Option<&'a str> {
    let found = n.descendants().find(|c| named(*c, name))?;
    found.text().map(str::trim).filter(|t| !t.is_empty())
}

/// The last part of a reference type: `basic_measuredValue` is a `measuredValue`.
fn ref_type<'a>(n: Node<'a, '_>) -> &'a str {
    n.attribute("refType").unwrap_or("")
}

fn administrative(root: Node<'_, '_>, out: &mut Certificate) {
    out.number = text_of(root, "uniqueIdentifier").map(Into::into);
    out.from = text_of(root, "endPerformanceDate")
        .or_else(|| text_of(root, "beginPerformanceDate"))
        .map(day);
    // a statement that says until when it holds
    let until = root.descendants().find(|n| {
        named(*n, "statement") && (is(ref_type(*n), "validUntil") || is(ref_type(*n), "dueDate"))
    });
    out.until = until.and_then(|n| text_of(n, "date")).map(day);
}

/// The day of a date, which may carry a zone.
fn day(text: &str) -> Box<str> {
    text.get(..10).unwrap_or(text).into()
}

/// Whether one of the words of a reference type ends in `word`, after any prefix.
fn is(types: &str, word: &str) -> bool {
    types.split_whitespace().any(|t| {
        t.strip_suffix(word)
            .is_some_and(|prefix| prefix.is_empty() || prefix.ends_with('_'))
    })
}

fn one(result: Node<'_, '_>, out: &mut Certificate) {
    let before = out.problems.len();
    let mut all = Vec::new();
    for q in result.descendants().filter(|n| named(*n, "quantity")) {
        let lists = q
            .descendants()
            .filter(|n| named(*n, "realListXMLList") || (named(*n, "real") && !within_list(*n)));
        for list in lists {
            if let Some(found) = quantity(q, list, out) {
                all.push(found);
            }
        }
    }
    if out.problems.len() > before {
        return;
    }
    points(result, &all, out);
}

/// Whether a value is part of the uncertainty or of another list.
fn within_list(n: Node<'_, '_>) -> bool {
    n.ancestors()
        .skip(1)
        .any(|a| named(a, "realListXMLList") || named(a, "real"))
}

fn role(types: &str, unit: Unit) -> Option<Role> {
    let words = [
        ("correctionFactor", Role::Factor),
        ("correction", Role::Correction),
        ("measurementError", Role::Error),
        ("referenceValue", Role::Reference),
        ("measuredValue", Role::Measured),
        ("nominalValue", Role::Level),
    ];
    match unit {
        Unit::Hertz(_) => Some(Role::Frequency),
        _ => words.iter().find(|(w, _)| is(types, w)).map(|w| w.1),
    }
}

/// A quantity that takes part; others (temperatures, humidity) are passed over.
fn quantity(q: Node<'_, '_>, list: Node<'_, '_>, out: &mut Certificate) -> Option<Quantity> {
    let single = named(list, "real");
    let own = |n: Node<'_, '_>, one: &str, many: &str| -> Option<String> {
        let name = if single { one } else { many };
        child(n, name).and_then(|c| c.text()).map(str::to_owned)
    };
    let at = line(list);
    let unit_text = own(list, "unit", "unitXMLList")?;
    let units: Vec<&str> = unit_text.split_whitespace().collect();
    let (unit, same) = (
        unit(units.first()?)?,
        units.windows(2).all(|w| w[0] == w[1]),
    );
    let role = role(ref_type(q), unit)?;
    if !same {
        let message = "The units of one list differ.";
        out.problem(at, message, Some("Write all values of a list in one unit."));
        return None;
    }
    let values = numbers(&own(list, "value", "valueXMLList")?, at, out)?;
    let (mut expanded, mut k) = (Vec::new(), Vec::new());
    let words = [
        ("expandedMU", "valueExpandedMU"),
        ("expandedMUXMLList", "valueExpandedMUXMLList"),
        ("expandedUnc", "uncertainty"),
        ("expandedUncXMLList", "uncertaintyXMLList"),
    ];
    for (holder, name) in words {
        let Some(u) = list.descendants().find(|n| named(*n, holder)) else {
            continue;
        };
        let factors = ["coverageFactor", "coverageFactorXMLList"];
        let factor = factors.iter().find_map(|f| child(u, f)?.text());
        expanded = numbers(child(u, name)?.text()?, at, out)?;
        k = numbers(factor.unwrap_or(""), at, out)?;
    }
    Some(Quantity {
        role,
        unit,
        line: at,
        values,
        expanded,
        k,
    })
}

/// `\mega\hertz`, `\watt`, `\percent`.
fn unit(text: &str) -> Option<Unit> {
    let parts: Vec<&str> = text.split('\\').filter(|p| !p.is_empty()).collect();
    let prefix = |p: &str| {
        Some(match p {
            "giga" => 1e9,
            "mega" => 1e6,
            "kilo" => 1e3,
            "milli" => 1e-3,
            "micro" => 1e-6,
            _ => return None,
        })
    };
    let (scale, base) = match parts[..] {
        [base] => (1.0, base),
        [p, base] => (prefix(p)?, base),
        _ => return None,
    };
    match base {
        "hertz" => Some(Unit::Hertz(scale)),
        "watt" => Some(Unit::Watt(scale)),
        "percent" if parts.len() == 1 => Some(Unit::Percent),
        "decibel" if parts.len() == 1 => Some(Unit::Decibel),
        "one" if parts.len() == 1 => Some(Unit::One),
        _ => None,
    }
}

fn numbers(text: &str, at: u64, out: &mut Certificate) -> Option<Vec<f64>> {
    let read = |t: &str| t.parse::<f64>().ok().filter(|v| v.is_finite());
    let all: Option<Vec<f64>> = text.split_whitespace().map(read).collect();
    if all.is_none() {
        let shown: String = text.trim().chars().take(40).collect();
        out.problem(at, format!("`{shown}` are no numbers."), None);
    }
    all
}

/// A value of a list; one value stands for all.
fn nth(list: &[f64], i: usize) -> Option<f64> {
    match list {
        [one] => Some(*one),
        many => many.get(i).copied(),
    }
}

fn points(result: Node<'_, '_>, all: &[Quantity], out: &mut Certificate) {
    let of = |r: Role| all.iter().find(|q| q.role == r);
    let by = [Role::Factor, Role::Correction, Role::Error, Role::Reference];
    let Some(said) = by.into_iter().find_map(of) else {
        // a result about something else
        return;
    };
    let Some(frequency) = of(Role::Frequency) else {
        let message = "A result with corrections has no list of frequencies (a unit of hertz).";
        return out.problem(line(result), message, None);
    };
    if said.expanded.is_empty() || said.k.is_empty() {
        let message = "A correction has no expanded uncertainty, or no coverage factor.";
        return out.problem(said.line, message, None);
    }
    let level = of(Role::Measured).or_else(|| of(Role::Level));
    let n = frequency.values.len().max(said.values.len());
    for list in [Some(frequency), Some(said), level].into_iter().flatten() {
        if !(list.values.len() == n || list.values.len() == 1) {
            let message = format!("A list has {} values, and others {n}.", list.values.len());
            return out.problem(list.line, message, None);
        }
    }
    for i in 0..n {
        let level_w = level.and_then(|l| match l.unit {
            Unit::Watt(scale) => Some(scale * nth(&l.values, i)?),
            _ => None,
        });
        let Unit::Hertz(scale) = frequency.unit else {
            return;
        };
        let hz = nth(&frequency.values, i).map(|v| scale * v);
        match (hz, factor(said, i, level_w)) {
            (Some(hz), Some((f, expanded, k))) => {
                point(said.line, (hz, level_w), f, (expanded, k), out);
            }
            _ => {
                let message = "A correction in this unit needs the level it holds at, in watts.";
                return out.problem(said.line, message, None);
            }
        }
    }
}

/// Factor on a reading, its relative expanded uncertainty, and k.
fn factor(q: &Quantity, i: usize, level_w: Option<f64>) -> Option<(f64, f64, f64)> {
    let (v, u, k) = (nth(&q.values, i)?, nth(&q.expanded, i)?, nth(&q.k, i)?);
    let sign = if q.role == Role::Error { -1.0 } else { 1.0 };
    let (factor, relative) = match (q.role, q.unit) {
        (Role::Reference, Unit::Watt(s)) => {
            let f = s * v / level_w?;
            (f, u / v)
        }
        (Role::Factor, Unit::One) => (v, u / v),
        (Role::Correction | Role::Error, Unit::Percent) => {
            let f = 1.0 + 0.01 * sign * v;
            (f, 0.01 * u / f)
        }
        (Role::Correction | Role::Error, Unit::One) => {
            let f = 1.0 + sign * v;
            (f, u / f)
        }
        (Role::Correction | Role::Error, Unit::Decibel) => (from_db(sign * v), u / DB_PER_RELATIVE),
        (Role::Correction | Role::Error, Unit::Watt(s)) => {
            let f = 1.0 + sign * s * v / level_w?;
            (f, s * u / (level_w? * f))
        }
        _ => return None,
    };
    Some((factor, relative, k))
}
