//! What a part stands, and shares.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::Stmt;

use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::model::Rating;
use crate::quals::{Quals, missing};
use crate::words::own;

/// A mean power rating: `1.1 kW at 100 MHz, ambient 40 °C, conductor 80 °C` from the cursor's
/// statement.
pub(super) fn rating<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, skip: usize) -> Option<Rating> {
    let mut out = None;
    let (mut ambient, mut conductor, mut stated) = (40.0, 80.0, false);
    let mut q = Quals::default();
    let mut first = true;
    for g in s.groups() {
        let mut c = Cur::new(s, g);
        if first {
            c.i = skip;
            first = false;
            let Some(v) = c.val(cx) else {
                missing(cx, &c, "a power follows", "rating 300 W");
                return None;
            };
            let v = cx.alone(&v, "a rating");
            let m = cx.power(&v, "a rating", "300 W")?;
            out = Some((m.value, v.loc));
        }
        while !c.done() {
            if c.eat(cx, "ambient") {
                if let Some(m) = c
                    .val(cx)
                    .map(|v| cx.alone(&v, "the temperature of a rating"))
                    .and_then(|v| cx.temperature(&v))
                {
                    ambient = m.value;
                    stated = true;
                }
            } else if c.eat(cx, "conductor") {
                if let Some(m) = c
                    .val(cx)
                    .map(|v| cx.alone(&v, "the temperature of a rating"))
                    .and_then(|v| cx.measure(&v, Dim::Temperature, "a temperature", "80 °C"))
                {
                    conductor = m.value;
                    stated = true;
                }
            } else if !q.take(cx, &mut c) {
                q.unexpected(cx, &c, "a rating", own(Context::Cable, "rating"));
                break;
            }
        }
    }
    let (watts, loc) = out?;
    if conductor <= ambient {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                loc,
                "The conductor's highest temperature lies above the ambient one.",
            )
            .at("the wrong way round"),
        );
        return None;
    }
    Some(Rating {
        watts,
        at_hz: q.at_frequency,
        ambient_c: ambient,
        conductor_c: conductor,
        temperatures_stated: stated,
        loc,
    })
}

/// A rating of which only the power is said, in a part's own line.
pub(super) fn plain_rating(cx: &mut Cx<'_>, v: &Val) -> Option<Rating> {
    let v = cx.alone(v, "a rating");
    let m = cx.power(&v, "a rating", "300 W")?;
    Some(Rating {
        watts: m.value,
        at_hz: None,
        ambient_c: 40.0,
        conductor_c: 80.0,
        temperatures_stated: false,
        loc: v.loc,
    })
}

/// A share between 0 and 1 written in percent.
pub(super) fn share(cx: &mut Cx<'_>, v: &Val, what: &str) -> Option<Measure> {
    let m = cx.measure(v, Dim::Percent, what, "50 %")?;
    let top = v.upper.map_or(v.q.value, |u| u.value);
    if m.value > 0.0 && v.q.value >= 0.0 && top <= 1.0 {
        cx.within_bounds(v, &m, 0.0, what);
        return Some(m);
    }
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            format!(
                "{} lies above 0 % and not above 100 %.",
                crate::cx::capital(what)
            ),
        )
        .at("cannot be"),
    );
    None
}
