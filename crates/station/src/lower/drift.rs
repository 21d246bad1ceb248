//! `drift 0.5 % in 10 min, bow 10 %`: how far the transmitter of a bench may drift.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::Dim;
use downlead_syntax::Stmt;

use crate::cx::{Cur, Cx};
use crate::quals::missing;
use crate::session::Session;

const EXAMPLE: &str = "drift 0.5 % in 10 min, bow 10 %";

/// Reads the line: a share in a time holds where the baseline was read once, a bow between two.
pub(super) fn drift<'a>(cx: &mut Cx<'a>, st: Stmt<'a>, session: &mut Session) {
    let had = cx.diags.len();
    for (n, g) in st.groups().enumerate() {
        let mut c = Cur::new(st, g);
        c.i = usize::from(n == 0);
        if n == 0 && c.at_value(cx) {
            session.drift_per_minute = per_minute(cx, &mut c);
            if session.drift_per_minute.is_none() {
                // the rest of the group belongs to it
                continue;
            }
        }
        while !c.done() {
            if !c.eat(cx, "bow") {
                c.unexpected(cx, "the drift of a transmitter", &["bow", "in"]);
                break;
            }
            session.step_share = share(cx, &mut c, "a bow");
        }
    }
    let none = session.drift_per_minute.is_none() && session.step_share.is_none();
    if none && cx.diags.len() == had {
        let c = Cur::new(st, &[]);
        missing(cx, &c, "how far it may drift follows", EXAMPLE);
    }
}

/// `0.5 % in 10 min`, a share a minute.
fn per_minute<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>) -> Option<f64> {
    let share = share(cx, c, "a drift")?;
    if !c.eat(cx, "in") {
        missing(cx, c, "`in` and the time it takes follow", EXAMPLE);
        return None;
    }
    let v = c.need(cx, "a time follows", EXAMPLE)?;
    let v = cx.alone(&v, "the time of a drift");
    let time = cx.positive(&v, Dim::Time, "the time of a drift", "10 min")?;
    Some(share * 60.0 / time.value)
}

/// A share from 0 to 100 %.
fn share<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, what: &str) -> Option<f64> {
    let v = c.need(cx, "a share in percent follows", EXAMPLE)?;
    let v = cx.alone(&v, what);
    let m = cx.measure(&v, Dim::Percent, what, EXAMPLE)?;
    if (0.0..=1.0).contains(&m.value) {
        return Some(m.value);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            format!("{} lies between 0 % and 100 %.", crate::cx::capital(what)),
        )
        .at("cannot be"),
    );
    None
}
