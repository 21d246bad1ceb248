//! What only some kinds of device have: the ratio of a balun, the shares of a divider, which way an
//! isolator lies, what a leg rejects.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{DB_PER_RELATIVE, Dim, Measure, from_db, percent};
use downlead_syntax::Stmt;

use super::device::Draft;
use crate::cx::{Cur, Cx};
use crate::model::{Device, List, PartKind, Sits};
use crate::quals::missing;

/// Where a word stands, the word, and the only kind of part that has it.
pub(super) type Only = (Loc, &'static str, PartKind);

/// `4:1` after `ratio`.
pub(super) fn ratio<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, at: Loc, d: &mut Draft) {
    const EXAMPLE: &str = "ratio 4:1";
    d.only.push((at, "ratio", PartKind::Balun));
    if let Some(v) = cur.need(cx, "a ratio of impedances follows", EXAMPLE) {
        d.device.ratio = cx.positive(&v, Dim::Count, "a ratio of impedances", EXAMPLE);
    }
}

/// `series` or `shunt` at the cursor.
pub(super) fn sits<'a>(
    cx: &Cx<'a>,
    cur: &mut Cur<'a>,
    only: &mut Vec<Only>,
    device: &mut Device,
) -> bool {
    let at = cx.loc(cur.next_span());
    let Some(s) = Sits::ALL.into_iter().find(|s| cur.eat(cx, s.word())) else {
        return false;
    };
    only.push((at, s.word(), PartKind::Balun));
    device.sits = Some(s);
    true
}

/// `70 % 30 %` or `1.55 dB 5.23 dB` after `split`: shares of power in the order of the branches.
pub(super) fn split<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, at: Loc, d: &mut Draft) {
    const EXAMPLE: &str = "split 70 % 30 %";
    d.only.push((at, "split", PartKind::Divider));
    d.split = Some(at);
    let (mut shares, mut broken) = (Vec::new(), false);
    let mut end = at;
    while cur.at_value(cx) {
        // a wrong one has its finding, and the others are read all the same
        let Some(v) = cur.val(cx) else {
            broken = true;
            continue;
        };
        end = v.loc;
        let share = if v.q.dim == Dim::Decibel {
            cx.loss(&v, "the loss to a branch").map(|(m, _)| {
                let share = from_db(-m.value);
                Measure {
                    value: share,
                    u: share * m.u / DB_PER_RELATIVE,
                    ..m
                }
            })
        } else {
            super::rating::share(cx, &v, "the share of a branch")
        };
        broken |= share.is_none();
        shares.extend(share);
    }
    if broken {
        return;
    }
    if shares.len() < 2 {
        missing(cx, cur, "the share of each branch follows", EXAMPLE);
        return;
    }
    let sum: f64 = shares.iter().map(|s| s.value).sum();
    // a half rounded to 3.01 dB is no contradiction
    if sum > 1.0005 {
        let loc = Loc::new(at.item, at.span.join(end.span));
        cx.push(
            Diagnostic::new(
                &codes::IMPOSSIBLE_VALUE,
                loc,
                format!(
                    "The branches would get {} of the power together; a divider has no more than 100 % to give.",
                    percent(sum)
                ),
            )
            .at("more than all")
            .help("A half is 3.01 dB, a third 4.77 dB, a quarter 6.02 dB."),
        );
        return;
    }
    if sum > 1.0 {
        shares = shares.into_iter().map(|s| s.scaled(1.0 / sum)).collect();
    }
    d.device.split = shares.into();
}

/// `tee`: a plain junction.
pub(super) fn tee(at: Loc, d: &mut Draft) {
    d.only.push((at, "tee", PartKind::Divider));
    d.device.tee = true;
}

/// Refuses what this kind of part does not have, and what contradicts itself.
pub(super) fn only_of_kind(cx: &mut Cx<'_>, d: &mut Draft, kind: PartKind, who: &str) {
    legs(cx, d, kind, who);
    let only = std::mem::take(&mut d.only);
    for (loc, word, of) in only.iter().filter(|o| o.2 != kind) {
        match of {
            PartKind::Balun => (d.device.ratio, d.device.sits) = (None, None),
            _ => (d.device.split, d.device.tee) = (List::default(), false),
        }
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                *loc,
                format!(
                    "`{word}` is said of {}, and this is {}.",
                    of.with_article(),
                    kind.with_article()
                ),
            )
            .at("not here")
            .help(if *of == PartKind::Balun {
                "Written for example `balun BA1 0.1 dB series, ratio 4:1`."
            } else {
                "Written for example `divider DV1 2 way, split 70 % 30 %`, or `divider T1 tee`."
            }),
        );
    }
    if kind != PartKind::Divider {
        return;
    }
    let tee = only.iter().find(|o| o.1 == "tee").map(|o| o.0);
    if let (Some(tee), Some(split)) = (tee, d.split) {
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                split,
                "How a plain junction divides follows from what its branches are; it has no `split`.",
            )
            .at("not of a `tee`")
            .also(tee, "the junction")
            .help("Leave one of the two out."),
        );
        d.device.split = List::default();
        return;
    }
    let shares = u32::try_from(d.device.split.len()).unwrap_or(u32::MAX);
    match (d.device.ways, d.split) {
        (Some(n), Some(loc)) if shares > 0 && n != shares => {
            cx.push(
                Diagnostic::new(
                    &codes::IMPOSSIBLE_VALUE,
                    loc,
                    format!("The divider has {n} branches and shares for {shares}."),
                )
                .at("one share a branch"),
            );
            d.device.split = List::default();
        }
        (None, Some(_)) if shares > 0 => d.device.ways = Some(shares),
        (None, None) if d.device.tee => d.device.ways = Some(2),
        _ => {}
    }
}

pub(super) fn misplaced_reversed<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) {
    let loc = cx.loc(s.atoms()[0].span);
    cx.push(
        Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            "`reversed` is said of an isolator, circulator, coupler, amplifier or preamplifier where it is installed, and of a network file.",
        )
        .at("not here")
        .help("Written for example `isolator IS1 of club-isolator, reversed`."),
    );
}

/// What the legs of a duplexer and the like keep off.
fn legs(cx: &mut Cx<'_>, d: &mut Draft, kind: PartKind, who: &str) {
    if !kind.has_legs() {
        for p in &mut d.ports {
            let Some(f) = std::mem::take(&mut p.rejects).into_vec().into_iter().next() else {
                continue;
            };
            cx.push(
                Diagnostic::new(
                    &codes::UNEXPECTED_WORD,
                    f.loc,
                    format!(
                        "`rejects` is said of a leg or port of a duplexer, diplexer, combiner or switch, and this is {}.",
                        kind.with_article()
                    ),
                )
                .at("not here")
                .help("The loss of other parts at other frequencies goes into a table: `loss { 145 MHz 0.5 dB; 435 MHz 40 dB }`."),
            );
        }
        return;
    }
    let Some(loc) = d.isolation else { return };
    if d.device.isolation.is_none() || d.ports.iter().any(|p| !p.rejects.is_empty()) {
        return;
    }
    let example = match kind {
        PartKind::Duplexer => "high 1.5 dB, rejects 85 dB at 146.3 MHz",
        PartKind::Diplexer => "high 0.3 dB, rejects 50 dB on 2m",
        _ => "port a 0.1 dB, rejects 60 dB",
    };
    let leg = if matches!(kind, PartKind::Duplexer | PartKind::Diplexer) {
        "leg"
    } else {
        "port"
    };
    cx.push(
        Diagnostic::new(
            &codes::ISOLATION_NOT_USED,
            loc,
            format!("The isolation of `{who}` enters no number: it does not say which {leg} keeps off what."),
        )
        .at("not used")
        .help(format!("Say in each {leg} how much it rejects, and where: `{example}`.")),
    );
}
