//! Converting units in place, keeping the digits that were written.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_quantity::{Dim, UnitId, dbm_to_w, unit, w_to_dbm};
use downlead_syntax::{AtomKind, Expr, ExprKind, Item, Number, Placed, Value};

use crate::resolve::{name_at, statements};
use crate::view::{Action, ActionKind, Doc, TextEdit, item_at, tidy, tree};

/// A number of the text with what stands around it.
struct Site {
    number: Number,
    /// Nothing but the number and its uncertainty: its kind may change.
    alone: bool,
    /// A number with unit that is its `±`.
    uncertainty: Option<Number>,
    /// Relative to the item.
    span: Span,
}

/// Units a unit is converted to, the likeliest first. Other kinds only where `alone`.
fn targets(id: UnitId, alone: bool, base: f64) -> Vec<&'static str> {
    let u = unit(id);
    match (u.dim, u.symbol()) {
        (Dim::Length, "m" | "km") => vec!["ft"],
        (Dim::Length, "mm" | "cm") => vec!["in"],
        (Dim::Length, "ft" | "yd" | "mi") => vec!["m"],
        (Dim::Length, "in") => vec!["mm"],
        (Dim::Power, _) if alone => vec!["dBm"],
        // a sensitivity has no watts that people read
        (Dim::Level, _) if alone && base >= 20.0 => vec!["W"],
        (Dim::Level, _) if alone && base >= -10.0 => vec!["mW"],
        (Dim::Level, _) if alone && base >= -40.0 => vec!["µW"],
        (Dim::GainIsotropic, _) if alone => vec!["dBd"],
        (Dim::GainDipole, _) if alone => vec!["dBi"],
        (Dim::LossRate, "dB/100 m") => vec!["dB/100 ft"],
        (Dim::LossRate, "dB/100 ft" | "dB/m" | "dB/km" | "dB/ft") => vec!["dB/100 m"],
        (Dim::RootCoefficient, "dB/100 m/sqrt(MHz)") => vec!["dB/100 ft/sqrt(MHz)"],
        (Dim::RootCoefficient, _) => vec!["dB/100 m/sqrt(MHz)"],
        (Dim::LinearCoefficient, "dB/100 m/MHz") => vec!["dB/100 ft/MHz"],
        (Dim::LinearCoefficient, _) => vec!["dB/100 m/MHz"],
        (Dim::Temperature, "°C") => vec!["°F"],
        (Dim::Temperature, _) => vec!["°C"],
        (Dim::Frequency, "MHz") => vec!["GHz", "kHz"],
        (Dim::Frequency, _) => vec!["MHz"],
        _ => Vec::new(),
    }
}

/// A number in one unit as a number in another.
fn value_in(n: f64, from: UnitId, to: UnitId) -> Option<f64> {
    let (a, b) = (unit(from), unit(to));
    let base = a.to_base(n);
    let base = match (a.dim, b.dim) {
        (x, y) if x == y => base,
        (Dim::Power, Dim::Level) => (base > 0.0).then(|| w_to_dbm(base))?,
        (Dim::Level, Dim::Power) => dbm_to_w(base),
        (Dim::GainIsotropic, Dim::GainDipole) => base - downlead_quantity::DIPOLE_DBI,
        (Dim::GainDipole, Dim::GainIsotropic) => base + downlead_quantity::DIPOLE_DBI,
        _ => return None,
    };
    Some(b.from_base(base)).filter(|v| v.is_finite())
}

fn decimals(digits: &str) -> usize {
    let mantissa = digits.split(['e', 'E']).next().unwrap_or(digits);
    mantissa.split_once('.').map_or(0, |(_, d)| d.len())
}

/// The fewest digits in the new unit from which the old ones come back exactly, and that move no
/// result: 0.2 % of a power is less than 0.01 dB.
fn converted(digits: &str, value: f64, from: UnitId, to: UnitId) -> Option<String> {
    let new = value_in(value, from, to)?;
    let shown = decimals(digits);
    // `1e-3` says its digits in its own way: keep three
    let back_as = |v: f64| format!("{v:.shown$}");
    let want = back_as(value);
    (0..12).map(|d| format!("{new:.d$}")).find(|t| {
        t.parse::<f64>()
            .ok()
            .and_then(|v| value_in(v, to, from))
            .is_some_and(|back| {
                let b = back_as(back);
                let exact = matches!(unit(from).dim, Dim::Temperature)
                    || (back - value).abs() <= 2e-3 * value.abs()
                    || unit(from).dim == Dim::Level && (back - value).abs() < 0.01;
                exact && (b == want || (b == "-0" && want == "0"))
            })
    })
}

fn sites(item: &Item) -> Vec<Site> {
    fn inner(e: Expr<'_>, alone: bool, uncertainty: Option<Number>, out: &mut Vec<Site>) {
        match e.kind() {
            ExprKind::Number(number) if number.unit.is_some() => out.push(Site {
                number,
                alone,
                uncertainty,
                span: number.digits.join(number.unit_span),
            }),
            ExprKind::Neg(x) | ExprKind::Per(x, _) => inner(x, false, None, out),
            ExprKind::Binary(_, l, r) => {
                inner(l, false, None, out);
                inner(r, false, None, out);
            }
            _ => {}
        }
    }
    let mut out = Vec::new();
    statements(item, &mut |s| {
        for a in s.atoms() {
            let AtomKind::Value(_) = a.kind else { continue };
            let Some(v) = s.value(*a) else { continue };
            let v: Value<'_> = v;
            let uncertainty = v.tolerance().and_then(|(t, _)| match t.kind() {
                ExprKind::Number(n) => Some(n),
                _ => None,
            });
            let plain = matches!(v.expr().kind(), ExprKind::Number(_)) && v.upper().is_none();
            inner(v.expr(), plain, uncertainty, &mut out);
            if let Some(u) = v.upper() {
                inner(u, false, None, &mut out);
            }
        }
    });
    out
}

/// The edits that convert one number; an error in words where its uncertainty prevents it.
fn edits(
    doc: Doc,
    item: &Item,
    start: u32,
    site: &Site,
    to: UnitId,
) -> Result<Vec<TextEdit>, String> {
    let from = site.number.unit.ok_or_else(String::new)?;
    let glued = site.number.digits.end == site.number.unit_span.start;
    let gap = if glued { "" } else { " " };
    let one = |n: &Number, text: String| TextEdit {
        doc,
        span: n.digits.join(n.unit_span).shift(start),
        text: format!("{text}{gap}{}", unit(to).symbol()),
    };
    let text = converted(item.slice(site.number.digits), site.number.value, from, to)
        .ok_or_else(|| "it cannot be written in that unit".to_owned())?;
    let mut out = vec![one(&site.number, text)];
    if let Some(d) = site.uncertainty {
        let same_kind = d.unit.is_some_and(|u| unit(u).dim == unit(from).dim);
        match (d.unit, unit(from).dim) {
            (Some(u), Dim::Length) if same_kind => {
                let text =
                    converted(item.slice(d.digits), d.value, u, to).ok_or_else(String::new)?;
                out.push(one(&d, text));
            }
            (Some(u), Dim::Power | Dim::Level | Dim::Temperature) if same_kind => {
                return Err(format!("its uncertainty is in {}", unit(u).symbol()));
            }
            _ => {}
        }
    }
    Ok(out)
}

/// A number of an item in another unit, as text.
pub(super) fn to_unit(item: &Item, n: &Number, symbol: &str) -> Option<String> {
    let to = UnitId::parse(symbol)?;
    let text = converted(item.slice(n.digits), n.value, n.unit?, to)?;
    Some(format!("{text} {symbol}"))
}

/// The levels within a span as powers.
pub(super) fn levels_to_powers(item: &Item, doc: Doc, start: u32, span: Span) -> Vec<TextEdit> {
    let mut out = Vec::new();
    for site in sites(item) {
        let n = &site.number;
        let inside = span.start <= site.span.start && site.span.end <= span.end;
        let Some(u) = n.unit.filter(|u| inside && unit(*u).dim == Dim::Level) else {
            continue;
        };
        let symbol = match unit(u).to_base(n.value) {
            l if l >= 20.0 => "W",
            l if l >= -10.0 => "mW",
            _ => "µW",
        };
        if let Some(text) = to_unit(item, n, symbol) {
            out.push(TextEdit {
                doc,
                span: site.span.shift(start),
                text,
            });
        }
    }
    out
}

/// All lengths of an item in the units `from` in the other unit: the long ones in the first of
/// `to`, those in inches or millimetres in the second.
pub(super) fn lengths(
    item: &Item,
    doc: Doc,
    start: u32,
    from: &[&str],
    to: [&str; 2],
) -> Vec<TextEdit> {
    let mut out = Vec::new();
    for site in sites(item) {
        let symbol = site.number.unit.map_or("", |u| unit(u).symbol());
        if !from.contains(&symbol) {
            continue;
        }
        let short = matches!(symbol, "in" | "mm" | "cm");
        let to = UnitId::parse(to[usize::from(short)]);
        if let Some(Ok(e)) = to.map(|to| edits(doc, item, start, &site, to)) {
            out.extend(e);
        }
    }
    out
}

/// The number at an offset of the document.
fn site_at(placed: &Placed, offset: u32) -> Option<Site> {
    let local = offset - placed.start;
    sites(&placed.item)
        .into_iter()
        .find(|x| x.span.touches(local))
}

/// Conversions of the number at an offset.
pub(super) fn one(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    let Some(site) = site_at(placed, offset) else {
        return;
    };
    // `2m` in the place of a name is a name
    if name_at(s, doc, offset).is_some_and(|(_, n)| n.span == site.span.shift(placed.start)) {
        return;
    }
    let Some(id) = site.number.unit else { return };
    for symbol in targets(id, site.alone, unit(id).to_base(site.number.value)) {
        let Some(to) = UnitId::parse(symbol) else {
            continue;
        };
        match edits(doc, &placed.item, placed.start, &site, to) {
            Ok(e) => {
                let shown = e.first().map_or("", |x| &x.text).to_owned();
                out.push(Action::new(
                    format!("Convert to `{shown}`"),
                    ActionKind::Rewrite,
                    tidy(e),
                ));
            }
            Err(why) if !why.is_empty() => {
                let mut a = Action::new(
                    format!("Convert to {symbol}"),
                    ActionKind::Rewrite,
                    Vec::new(),
                );
                a.disabled = Some(why);
                out.push(a);
            }
            Err(_) => {}
        }
    }
}

/// Conversions of all numbers of the kind at an offset, in the whole file.
pub(super) fn file(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let (Some(placed), Some(t)) = (item_at(s, doc, offset), tree(s, doc)) else {
        return;
    };
    let Some(site) = site_at(placed, offset) else {
        return;
    };
    let Some(id) = site.number.unit else { return };
    let (dim, what, pairs): (Dim, &str, &[(&[&str], &str)]) =
        match (unit(id).dim, unit(id).symbol()) {
            (Dim::Length, "ft" | "in" | "yd" | "mi") => (
                Dim::Length,
                "lengths to metres and millimetres",
                &[(&["ft", "yd", "mi"], "m"), (&["in"], "mm")],
            ),
            (Dim::Length, _) => (
                Dim::Length,
                "lengths to feet and inches",
                &[(&["m", "km"], "ft"), (&["mm", "cm"], "in")],
            ),
            (Dim::Power, _) => (
                Dim::Power,
                "powers to dBm",
                &[(&["W", "mW", "µW", "kW"], "dBm")],
            ),
            (Dim::Level, _) => (Dim::Level, "levels to watts", &[(&["dBm", "dBW"], "W")]),
            _ => return,
        };
    let mut all = Vec::new();
    let mut count = 0;
    for p in t.items() {
        let names: Vec<Span> = crate::resolve::pieces_of(s, doc, &p.item)
            .into_iter()
            .filter(|x| matches!(x.class, crate::names::Class::Name(..)))
            .map(|x| x.span)
            .collect();
        for site in sites(&p.item) {
            let Some(u) = site.number.unit.filter(|u| unit(*u).dim == dim) else {
                continue;
            };
            if names.contains(&site.span) || (matches!(dim, Dim::Power | Dim::Level) && !site.alone)
            {
                continue;
            }
            let Some((_, to)) = pairs.iter().find(|x| x.0.contains(&unit(u).symbol())) else {
                continue;
            };
            if dim == Dim::Level && unit(u).to_base(site.number.value) < 0.0 {
                continue;
            }
            if let Some(Ok(e)) = UnitId::parse(to).map(|to| edits(doc, &p.item, p.start, &site, to))
            {
                count += 1;
                all.extend(e);
            }
        }
    }
    if count > 1 {
        out.push(Action::new(
            format!("Convert all {count} {what} in this file"),
            ActionKind::Rewrite,
            tidy(all),
        ));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn to(text: &str, from: &str, unit: &str) -> String {
        converted(
            text,
            text.parse().unwrap(),
            UnitId::parse(from).unwrap(),
            UnitId::parse(unit).unwrap(),
        )
        .unwrap()
    }

    /// Factors: 0.3048 m and 25.4 mm exactly (international yard and pound agreement of 1959).
    #[test]
    fn digits_are_kept() {
        assert_eq!(to("46", "m", "ft"), "151");
        assert_eq!(to("151", "ft", "m"), "46");
        assert_eq!(to("1.4", "m", "ft"), "4.6");
        // 10 log10(32000) = 45.0515
        assert_eq!(to("32", "W", "dBm"), "45.05");
        assert_eq!(to("32.0", "W", "dBm"), "45.05");
        assert_eq!(to("100", "W", "dBm"), "50");
        assert_eq!(to("0.5", "W", "dBm"), "26.99");
        assert_eq!(to("5.20", "dBi", "dBd"), "3.05");
        assert_eq!(to("20", "°C", "°F"), "68");
        assert_eq!(to("145.3", "MHz", "GHz"), "0.1453");
    }
}
