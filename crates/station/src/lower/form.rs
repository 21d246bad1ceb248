//! `field "ERP" erp in W, to 1 W` in a licence or rules.

use downlead_base::{Diagnostic, codes};
use downlead_syntax::{Atom, Stmt};

use super::rules::{Read, name_of, slot, text_of};
use crate::cx::Cx;
use crate::forms::form::FieldSlot;
use crate::model::{FieldKind, FieldWhat, FormField, Rounding};

/// A field of a form.
pub(super) fn field<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, read: &[Read<'a>]) -> Option<FormField> {
    let at = |id: FieldSlot| slot(read, id.id());
    let label = at(FieldSlot::Label).map(|(a, _)| text_of(cx, a))?;
    let (said, _) = at(FieldSlot::What)?;
    let what = FieldWhat::from_word(cx.text(said.span))?;
    let kind = what.kind();
    let wanted = at(FieldSlot::In).and_then(|(_, a)| a.first());
    let step = at(FieldSlot::To).and_then(|(_, a)| a.first());
    if s.is_broken() {
        return None;
    }
    let unit = match wanted {
        Some(a) => {
            let text = cx.text(a.span);
            let known = kind.units().iter().copied().find(|u| *u == text);
            if known.is_none() {
                no_unit(cx, a, &label, what);
                return None;
            }
            known
        }
        None => kind.units().first().copied(),
    };
    let on = at(FieldSlot::On).map_or(&[][..], |(_, a)| a);
    let (step, unit) = match step {
        Some(a) => {
            let (step, unit) = rounding(cx, s, a, (&label, what), unit, wanted.is_some())?;
            (Some(step), Some(unit))
        }
        None => (None, unit),
    };
    Some(FormField {
        what,
        on: on.iter().map(|a| name_of(cx, a)).collect(),
        unit,
        step,
        rounding: match at(FieldSlot::Side).map(|(a, _)| cx.text(a.span)) {
            Some("up") => Rounding::Up,
            Some("down") => Rounding::Down,
            _ => Rounding::Nearest,
        },
        loc: cx.loc(s.head_span()),
        label,
    })
}

fn no_unit(cx: &mut Cx<'_>, a: &Atom, label: &str, what: FieldWhat) {
    let kind = what.kind();
    let message = format!(
        "\"{label}\" is {}, and `{}` is no unit of that.",
        kind.noun(),
        cx.text(a.span)
    );
    let units = kind.units();
    let help = match units.is_empty() {
        true => "Leave the unit out.".to_owned(),
        false => format!("Units are {}.", units.join(", ")),
    };
    let mut d = Diagnostic::new(&codes::FORM_UNIT, cx.loc(a.span), message)
        .at("not its unit")
        .help(help);
    if let [one] = units {
        d = d.fix(format!("write `{one}`"), cx.loc(a.span), (*one).to_owned());
    }
    cx.push(d);
}

/// The step in the field's unit, and that unit: where none is said, that of the step.
fn rounding<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    a: &'a Atom,
    (label, what): (&str, FieldWhat),
    unit: Option<&'static str>,
    said: bool,
) -> Option<(f64, &'static str)> {
    // steps of levels and gains are in dB, of angles in degrees
    let of_step = |u: &'static str| match (what.kind(), u) {
        (FieldKind::Angle, "dms") => None,
        (FieldKind::Angle, _) => Some("°"),
        (_, "dBm" | "dBW" | "dBi" | "dBd") => Some("dB"),
        _ => Some(u),
    };
    let number = s.value(*a).and_then(|v| v.number());
    let written = number.and_then(|n| Some((n.value, downlead_quantity::unit(n.unit?).symbol())));
    let fits = |u: &'static str| written.is_some_and(|(_, w)| of_step(u) == Some(w));
    let unit = match said {
        true => unit.filter(|u| fits(u)),
        false => what.kind().units().iter().copied().find(|u| fits(u)),
    };
    match (unit, written) {
        (Some(unit), Some((step, _))) if step > 0.0 => return Some((step, unit)),
        _ => {}
    }
    let help = match (said, what.kind()) {
        (_, FieldKind::Words | FieldKind::Blank) => {
            "Words are not rounded: leave `to …` out.".to_owned()
        }
        (_, FieldKind::Angle) => {
            "Written for example `in degrees, to 0.0001°`; `in dms` is always in whole seconds."
                .to_owned()
        }
        (_, kind) => {
            let u = unit.or(kind.units().first().copied()).unwrap_or("W");
            format!(
                "A step is above zero and in the field's own unit, for example `in {u}, to 1 {}`.",
                of_step(u).unwrap_or(u)
            )
        }
    };
    let d = Diagnostic::new(
        &codes::FORM_UNIT,
        cx.loc(a.span),
        format!(
            "\"{label}\" is {}; it cannot be rounded to `{}`.",
            what.kind().noun(),
            cx.text(a.span)
        ),
    )
    .at("not a step of it")
    .help(help);
    cx.push(d);
    None
}
