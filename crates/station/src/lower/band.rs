//! Bands, and ranges of frequency.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::Dim;
use downlead_syntax::Stmt;

use super::head::{declared, no_keyword, unknown_statement};
use super::off_band::{off_the_name, off_the_pair};
use crate::cx::{Cur, Cx, Val};
use crate::keywords::Context;
use crate::model::{Band, BandKind};
use crate::quals::missing;

pub(super) fn band<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<Band> {
    let name = declared(cx, cur, "a band", "band 2m 145.3 MHz")?;
    let kind = if let Some(block) = stmt.block() {
        let mut pair: [Option<(f64, Val)>; 2] = [None, None];
        for s in block.iter() {
            let mut c = Cur::new(s, s.atoms());
            c.i = 1;
            match s.keyword() {
                Some(w @ ("transmit" | "receive")) => match c.val(cx) {
                    Some(v) => {
                        let f = cx.frequency(&v, "a band's frequency");
                        pair[usize::from(w == "receive")] = f.map(|f| (f, v));
                        if !c.done() {
                            c.unexpected(cx, "a band", &[]);
                        }
                    }
                    None => missing(cx, &c, "a frequency follows", "transmit 146.9 MHz"),
                },
                Some(w) => unknown_statement(cx, s, w, Context::Band),
                None => no_keyword(cx, s, Context::Band),
            }
        }
        let [transmit, receive] = pair.map(|p| p.map(|p| p.0));
        if transmit.is_none() && receive.is_none() {
            if cx.diags.is_empty() {
                missing(
                    cx,
                    cur,
                    "a band needs a frequency",
                    "band 2m { transmit 146.9 MHz; receive 146.3 MHz }",
                );
            }
            return None;
        }
        off_the_pair(cx, &name, pair);
        BandKind::Pair { transmit, receive }
    } else {
        let had = cx.diags.len();
        let Some(v) = cur.val(cx) else {
            if cx.diags.len() == had {
                missing(cx, cur, "a band needs a frequency", "band 2m 145.3 MHz");
            }
            return None;
        };
        if cx.unit_on_one_end(&v, &[Dim::Frequency]) {
            return None;
        }
        let low = cx.frequency(&Val { upper: None, ..v }, "a band's frequency")?;
        match v.upper {
            None => {
                off_the_name(cx, &name, low, &v);
                BandKind::Single(low)
            }
            Some(u) => {
                let high = cx.frequency(
                    &Val {
                        q: u,
                        upper: None,
                        half: None,
                        ..v
                    },
                    "a band's frequency",
                )?;
                if high <= low {
                    cx.push(
                        Diagnostic::new(
                            &codes::IMPOSSIBLE_VALUE,
                            v.loc,
                            "A band's upper edge lies above its lower one.",
                        )
                        .at("the wrong way round"),
                    );
                    return None;
                }
                off_the_name(cx, &name, low, &v);
                BandKind::Range(low, high)
            }
        }
    };
    if !cur.done() {
        cur.unexpected(cx, "a band", &[]);
    }
    Some(Band { name, kind })
}

/// `A to B` in Hz, rising.
pub(super) fn frequency_range(cx: &mut Cx<'_>, v: &Val, what: &str) -> Option<(f64, f64)> {
    let Some(up) = v.upper else {
        cx.push(
            Diagnostic::new(
                &codes::MISSING_VALUE,
                v.loc,
                format!("{} is a range.", crate::cx::capital(what)),
            )
            .at("only one frequency")
            .help("Written for example `144 MHz to 148 MHz`."),
        );
        return None;
    };
    // zero is a fair lower edge here, so the radio-frequency check does not apply
    if cx.unit_on_one_end(v, &[Dim::Frequency]) {
        return None;
    }
    if v.q.dim != Dim::Frequency || up.dim != Dim::Frequency {
        let bad = if v.q.dim == Dim::Frequency { up } else { v.q };
        cx.wrong_kind(
            &Val { q: bad, ..*v },
            &[Dim::Frequency],
            what,
            "144 MHz to 148 MHz",
        );
        return None;
    }
    if up.value <= v.q.value || v.q.value < 0.0 {
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                v.loc,
                format!(
                    "{} runs from the lower to the higher frequency.",
                    crate::cx::capital(what)
                ),
            )
            .at("the wrong way round"),
        );
        return None;
    }
    Some((v.q.value, up.value))
}
