//! Values with more digits than their uncertainty supports.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{DB_PER_RELATIVE, Dim, Unit, from_db, sig, unit};
use downlead_syntax::{AtomKind, ExprKind, Number, Stmt, Value};

use crate::cx::Cx;
use crate::evidence::is_reading;

/// Reports values with a `±` that have more digits than it supports. Readings stay as they were
/// read.
pub(super) fn too_fine<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) {
    if !is_reading(s) {
        for a in s.atoms() {
            if matches!(a.kind, AtomKind::Value(_))
                && let Some(v) = s.value(*a)
                && let Some(d) = finding(cx, v)
            {
                cx.push(d);
            }
        }
    }
    for inner in s.block().iter().flat_map(|b| b.iter()) {
        too_fine(cx, inner);
    }
}

fn finding(cx: &Cx<'_>, v: Value<'_>) -> Option<Diagnostic> {
    let (tolerance, coverage) = v.tolerance()?;
    let (ExprKind::Number(n), ExprKind::Number(t)) = (v.expr().kind(), tolerance.kind()) else {
        return None;
    };
    // a value below its own uncertainty has no significant digits at all
    let expanded = expanded(n, t, coverage).filter(|u| *u <= n.value.abs())?;
    let decimals = decimals(cx.text(n.digits))?;
    // the uncertainty is stated with two digits at most and the value as far as they reach (GUM,
    // JCGM 100:2008, 7.2.6); one digit more is tolerated
    let reach = 1 - libm::floor(libm::log10(expanded)) as i32;
    if decimals < reach.max(0) + 2 {
        return None;
    }
    let symbol = n.unit.map_or("", |u| unit(u).symbol());
    let blank = if symbol.is_empty() { "" } else { " " };
    let kept = usize::try_from(reach).unwrap_or(0);
    let rounded = format!("{:.kept$}", n.value);
    let d = Diagnostic::new(
        &codes::EXCESS_DIGITS,
        cx.loc(n.digits),
        format!(
            "The uncertainty of {}{blank}{symbol} is {}{blank}{symbol}: the last digits are not significant; write `{rounded}{blank}{symbol}`.",
            cx.text(n.digits),
            two_digits(expanded)
        ),
    )
    .at("more digits than its uncertainty supports")
    .fix(
        format!("write `{rounded}{blank}{symbol}`"),
        cx.loc(n.digits),
        rounded,
    );
    Some(d)
}

/// With two digits, also where it is more than a hundred: `230` of 234.5.
fn two_digits(value: f64) -> String {
    let step = libm::exp10(libm::floor(libm::log10(value)) - 1.0);
    if step > 1.0 {
        return sig(libm::round(value / step) * step, 2);
    }
    sig(value, 2)
}

/// The uncertainty (k = 2; of a plain `±` the half-width) in the value's own unit.
fn expanded(n: Number, t: Number, coverage: Option<f64>) -> Option<f64> {
    let k = match coverage {
        Some(k) if k > 0.0 => 2.0 / k,
        Some(_) => return None,
        None => 1.0,
    };
    let step = |u: &Unit| u.to_base(1.0) - u.to_base(0.0);
    let (of, by) = (n.unit.map(unit), t.unit.map(unit));
    let dim = |u: Option<&Unit>| u.map_or(Dim::Count, |u| u.dim);
    let half = match (dim(of), dim(by)) {
        // a percentage of a level or gain is one of its power
        (Dim::Level | Dim::GainIsotropic | Dim::GainDipole | Dim::SidebandNoise, Dim::Percent) => {
            DB_PER_RELATIVE * t.value / 100.0
        }
        (d, Dim::Percent) if d != Dim::Percent && d != Dim::Temperature => {
            n.value.abs() * t.value / 100.0
        }
        (Dim::Power, Dim::Decibel) => n.value.abs() * (from_db(t.value) - 1.0),
        (Dim::Level | Dim::GainIsotropic | Dim::GainDipole | Dim::SidebandNoise, Dim::Decibel) => {
            t.value
        }
        (a, b) if a == b => t.value * by.map_or(1.0, step) / of.map_or(1.0, step),
        _ => return None,
    };
    let u = half * k;
    (u.is_finite() && u > 0.0).then_some(u)
}

/// Digits behind the point; none of what is written with a power of ten.
fn decimals(digits: &str) -> Option<i32> {
    if digits.contains(['e', 'E']) {
        return None;
    }
    let behind = digits.split_once('.').map_or("", |d| d.1);
    i32::try_from(behind.trim_end_matches('0').len()).ok()
}
