//! `connector NAME { … }` at the left margin.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::Dim;
use downlead_syntax::Stmt;

use super::head::{declared, no_keyword, unknown_statement};
use super::rating::rating;
use crate::cx::{Cur, Cx};
use crate::keywords::Context;
use crate::model::{Basis, Connector, ConnectorLoss, Meta};
use crate::quals::{Quals, missing};

pub(super) fn connector<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    cur: &mut Cur<'a>,
) -> Option<Connector> {
    let name = declared(cx, cur, "a connector", "connector n-pair { … }")?;
    let mut c = Connector {
        name,
        title: cur.string(cx),
        families: None,
        loss: None,
        bump: None,
        swr: None,
        limit_hz: None,
        rating: None,
        voltage: None,
        meta: Meta::default(),
        built_in: cx.built_in,
    };
    if !cur.done() {
        cur.unexpected(cx, "a connector's head", &[]);
    }
    if c.built_in {
        c.meta.basis = Basis::Library;
    }
    let had = cx.diags.len();
    let mut swr_loc = None;
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        line(cx, s, &mut c, &mut swr_loc);
    }
    if let Some(loc) = swr_loc.filter(|_| c.bump.is_some()) {
        c.swr = None;
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                loc,
                format!(
                    "What `{}` reflects is given twice, by its bump and here; the bump is used.",
                    c.name.text
                ),
            )
            .at("not used")
            .help("Remove one of them."),
        );
    }
    if c.loss.is_none() && c.bump.is_none() && cx.diags.len() == had && !stmt.is_broken() {
        let loc = cx.loc(stmt.head_span());
        let d = Diagnostic::new(&codes::MISSING_VALUE, loc, format!("Connector `{}` has neither a loss nor a bump.", c.name.text))
            .at("no figures")
            .help("Written for example `loss 0.05 dB ± 50 % at 1 GHz` (it grows with the root of frequency).");
        cx.push(d);
    }
    Some(c)
}

fn line<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Connector, swr_loc: &mut Option<Loc>) {
    let mut cur = Cur::new(s, s.atoms());
    cur.i = 1;
    match s.keyword() {
        Some("loss") => return loss(cx, s, c),
        Some("family") => match cur.name(cx) {
            Some(n) => c.families = Some((n.text.clone(), n.text)),
            None => missing(cx, &cur, "the connector family follows", "family n"),
        },
        Some("joins") => match two_names(cx, s, &mut cur) {
            Some(pair) => c.families = Some(pair),
            None => missing(cx, &cur, "an adapter joins two families", "joins n to uhf"),
        },
        Some("bump") => {
            let (z, l) = (cur.val(cx), cur.val(cx));
            if let (Some(z), Some(l)) = (z, l) {
                let z = cx.positive(&z, Dim::Impedance, "a bump's impedance", "33.3 ohm");
                let l = cx.positive(&l, Dim::Length, "a bump's electrical length", "49 mm");
                if let (Some(z), Some(l)) = (z, l) {
                    c.bump = Some((z, l));
                }
            } else {
                missing(
                    cx,
                    &cur,
                    "a bump is an impedance and an electrical length",
                    "bump 33.3 ohm 49.0 mm",
                );
            }
        }
        Some(w @ ("swr" | "return-loss")) => {
            let example = if w == "swr" {
                "swr 1.05"
            } else {
                "return-loss 32 dB"
            };
            if let Some(v) = cur.need(cx, "what one pair reflects follows", example) {
                c.swr = if w == "swr" {
                    cx.swr(&v)
                } else {
                    super::device::return_loss_to_swr(cx, &v)
                };
                swr_loc.get_or_insert(v.loc);
            }
        }
        Some("limit") => {
            if let Some(v) = cur.need(cx, "the highest frequency follows", "limit 300 MHz") {
                c.limit_hz = cx.frequency(&v, "a connector's highest frequency");
            }
        }
        Some("voltage") => {
            if let Some(v) = cur.need(cx, "a working voltage follows", "voltage 500 V") {
                let v = cx.alone(&v, "a working voltage");
                c.voltage = cx
                    .positive(&v, Dim::Voltage, "a working voltage", "500 V")
                    .map(|m| m.value);
            }
        }
        Some("rating") => {
            c.rating = rating(cx, s, 1);
            return;
        }
        Some("source") => match cur.string(cx) {
            Some(t) => c.meta.source = Some(t),
            None => missing(
                cx,
                &cur,
                "the document follows in quotes",
                "source \"IEC 61169-16\"",
            ),
        },
        Some(w) => return unknown_statement(cx, s, w, Context::Connector),
        None => return no_keyword(cx, s, Context::Connector),
    }
    if !cur.done() {
        cur.unexpected(cx, "a connector", &[]);
    }
}

fn loss<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, c: &mut Connector) {
    let mut q = Quals::default();
    let mut value = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            value = cur.val(cx);
            if value.is_none() {
                missing(cx, &cur, "a loss follows", "loss 0.05 dB ± 50 % at 1 GHz");
                return;
            }
        }
        while !cur.done() {
            if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "a connector's loss", &[]);
                break;
            }
        }
    }
    let Some(v) = value else { return };
    let Some((m, _)) = cx.loss(&v, "a connector's loss") else {
        return;
    };
    c.loss = Some(match q.at_frequency {
        // its ± grows with the loss
        Some(f) => ConnectorLoss::Root(m.scaled(1.0 / libm::sqrt(f / 1e9))),
        None => ConnectorLoss::Constant(m),
    });
    let source = c.meta.source.take();
    let basis = c.meta.basis;
    c.meta = q.meta;
    if c.meta.basis == Basis::Stated {
        c.meta.basis = basis;
    }
    if c.meta.source.is_none() {
        c.meta.source = source;
    }
}

/// `n to uhf`: to the parser two words with `to` between them are a range of named values.
fn two_names<'a>(cx: &Cx<'a>, s: Stmt<'a>, cur: &mut Cur<'a>) -> Option<(Box<str>, Box<str>)> {
    let atom = cur.peek()?;
    let value = s.value(*atom)?;
    let (a, b) = (cx.text(value.expr().span()), cx.text(value.upper()?.span()));
    let plain =
        |t: &str| !t.is_empty() && !t.contains(|c: char| c.is_whitespace() || "±()+*/".contains(c));
    if !plain(a) || !plain(b) {
        return None;
    }
    cur.i += 1;
    Some((a.into(), b.into()))
}
