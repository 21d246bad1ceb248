//! `recalled +6 % since 2026-01`: what was found out later about an instrument or a sheet.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::{Dim, Measure, number};

use crate::cx::{Cur, Cx, Val};
use crate::model::{Cable, CableLoss, Recalled};

const EXAMPLE: &str = "recalled +6 %";

/// What follows `recalled`; `dated` where a day may stand.
pub(super) fn recalled<'a>(cx: &mut Cx<'a>, c: &mut Cur<'a>, dated: bool) -> Option<Recalled> {
    let v = c.need(cx, "a share with its sign follows", EXAMPLE)?;
    let bare = Val {
        coverage: None,
        ..v
    };
    let v = cx.alone(&bare, "by how much it was off");
    if v.q.dim != Dim::Percent {
        cx.wrong_kind(&v, &[Dim::Percent], "by how much it was off", EXAMPLE);
        return None;
    }
    // half of what it should be, or twice, is another instrument or another cable
    if v.q.value == 0.0 || !(-0.5..=1.0).contains(&v.q.value) {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!(
                    "What was found to be off is from -50 % to +100 %, and not 0; this is {} %.",
                    number(100.0 * v.q.value, 3)
                ),
            )
            .at("not a correction")
            .help("Readings that are 6 % too high are written `recalled +6 %`."),
        );
        return None;
    }
    let since = match dated && c.eat(cx, "since") {
        true => match c.date(cx) {
            Some(d) => Some(d),
            None => {
                crate::quals::missing(cx, c, "`since` is followed by a date", "since 2026-01");
                None
            }
        },
        false => None,
    };
    Some(Recalled {
        share: v.q.value,
        since,
    })
}

/// Makes the loss of a cable larger by a share, its uncertainty with it.
pub(super) fn apply(c: &mut Cable) {
    let (Some(r), Some(loss)) = (&c.recalled, &mut c.loss) else {
        return;
    };
    let factor = 1.0 + r.share;
    let scale = |m: &mut Measure, by: f64| {
        m.value *= by;
        m.u *= by;
    };
    match loss {
        CableLoss::TwoTerm { k1, k2 } => {
            scale(k1, factor);
            scale(k2, factor);
        }
        CableLoss::Table(points) => points.iter_mut().for_each(|p| scale(&mut p.1, factor)),
        // the loss of a conductor goes with the root of its resistivity
        CableLoss::Construction(k) => {
            scale(&mut k.inner_resistivity, factor * factor);
            scale(&mut k.outer_resistivity, factor * factor);
            scale(&mut k.loss_tangent, factor);
        }
        CableLoss::Wires(w) => scale(&mut w.resistivity, factor * factor),
        // so much loss in a shorter piece
        CableLoss::Network { length, .. } => scale(length, 1.0 / factor),
    }
}
