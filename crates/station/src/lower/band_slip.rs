//! Slips where a band or frequency belongs: `145.3 Mhz`, `145,3 MHz`, `2 m`.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{Dim, similar_units, unit};
use downlead_syntax::{AtomKind, ExprKind};

use crate::cx::{Cur, Cx};

/// Reads a value that is no frequency as the slip it is. True if it has been reported.
pub(super) fn reported<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> bool {
    let Some(atom) = cur.peek().copied() else {
        return false;
    };
    let Some(view) = cur.stmt.value(atom) else {
        return false;
    };
    let ExprKind::Number(n) = view.expr().kind() else {
        return false;
    };
    let text = cx.text(atom.span);
    let Some(u) = n.unit else {
        return number(cx, cur, atom.span, text);
    };
    if unit(u).dim != Dim::Length || !text.contains([' ', '\t']) {
        return false;
    }
    let name: String = text.split_whitespace().collect();
    cur.i += 1;
    let loc = cx.loc(atom.span);
    cx.push(
        Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            format!("`{text}` is a length; a band's name has no blank: `{name}`."),
        )
        .at("a band's name?")
        .fix(format!("write `{name}`"), loc, name),
    );
    true
}

fn number<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, span: downlead_base::Span, text: &str) -> bool {
    // the comma of `145,3 MHz` has been reported
    let rest = cx.item.text().get(span.end as usize..).unwrap_or("");
    let mut after = rest.chars();
    if after.next() == Some(',') && after.next().is_some_and(|c| c.is_ascii_digit()) {
        cur.i += 1;
        return true;
    }
    let next = cur
        .atoms
        .get(cur.i + 1)
        .filter(|a| a.kind == AtomKind::Word);
    let Some(next) = next else { return false };
    let word = cx.text(next.span);
    let of_frequency =
        |s: &&&str| downlead_quantity::units_of(Dim::Frequency).any(|u| u.symbol() == **s);
    let near = similar_units(word);
    let Some(u) = near.iter().find(of_frequency) else {
        return false;
    };
    cur.i += 2;
    let loc = cx.loc(next.span);
    cx.push(
        Diagnostic::new(&codes::UNKNOWN_UNIT, loc, format!("`{word}` is no unit."))
            .at(format!("`{text} {u}` is a frequency"))
            .help(format!("Did you mean `{u}`?"))
            .fix(format!("write `{u}`"), loc, *u)
            .preferred(),
    );
    true
}
