//! `chain NAME on BANDS { … }`.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{DB_PER_RELATIVE, Dim, Measure, Shape, to_db};
use downlead_syntax::{AtomKind, Stmt};

use super::check::names_band;
use super::head::{declared, no_keyword, unknown_statement};
use super::{ends, part};
use crate::cx::{Cur, Cx, Val, first_of};
use crate::keywords::{Context, keyword};
use crate::model::{
    BandRef, Branch, Chain, Direction, Expect, LimitQuantity, Name, Node, PartKind, Phasing, Read,
    ReadPower, Step,
};
use crate::quals::{self, Quals, missing};
use crate::words::{OF_FIGURES, own};

pub(super) fn chain<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    cur: &mut Cur<'a>,
    places: &[Name],
) -> Option<Chain> {
    let name = declared(cx, cur, "a chain", "chain talk-out on 2m transmit { … }")?;
    let loc = cx.loc(stmt.head_span());
    let mut bands = Vec::new();
    let mut direction = None;
    if cur.eat(cx, "on") {
        listed(cx, cur, &mut bands);
    }
    direction_word(cx, cur, &mut direction);
    if !cur.done() {
        cur.unexpected(cx, "a chain's head", &["on", "transmit", "receive"]);
    }
    for g in stmt.groups().skip(1) {
        let mut c = Cur::new(stmt, g);
        listed(cx, &mut c, &mut bands);
        direction_word(cx, &mut c, &mut direction);
        if !c.done() {
            c.unexpected(cx, "a chain's head", &["transmit", "receive"]);
        }
    }
    if bands.is_empty()
        && !stmt.is_broken()
        && cx
            .diags
            .iter()
            .all(|d| !loc.span.touches(d.primary.loc.span.start))
    {
        let d = Diagnostic::new(&codes::MISSING_VALUE, loc, format!("Chain `{}` says on no band.", name.text))
            .at("no band")
            .help("Written for example `chain talk-out on 2m transmit { … }` or `chain what-if on 145.3 MHz { … }`.");
        cx.push(d);
    }
    let mut phasing = None;
    let steps = match stmt.block() {
        Some(b) => steps(cx, b.iter(), places, &mut phasing),
        None => {
            missing(cx, cur, "a chain has a block", "chain talk-out on 2m { … }");
            return None;
        }
    };
    Some(Chain {
        name,
        loc,
        bands: bands.into(),
        direction,
        steps: steps.into(),
        phasing,
    })
}

fn direction_word<'a>(cx: &Cx<'a>, cur: &mut Cur<'a>, direction: &mut Option<Direction>) {
    if cur.eat(cx, "transmit") {
        *direction = Some(Direction::Transmit);
    } else if cur.eat(cx, "receive") {
        *direction = Some(Direction::Receive);
    }
}

/// Bands or frequencies that follow each other directly.
fn listed<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, out: &mut Vec<BandRef>) {
    loop {
        let (had, at) = (out.len(), cur.i);
        band(cx, cur, out);
        if let Some(n) = (out.len() > had).then(|| out.pop()).flatten() {
            match out.iter().find(|b| b.name().text == n.name().text) {
                Some(first) => quals::said_twice(cx, n.name(), first.name().loc),
                None => out.push(n),
            }
        }
        let more = cur.peek().is_some_and(|a| match a.kind {
            AtomKind::Value(_) => true,
            // the usual end of the list needs no look at the table
            AtomKind::Word => {
                !matches!(cx.text(a.span), "transmit" | "receive") && names_band(cx, cur.stmt, a)
            }
            _ => false,
        });
        // what is no band stays where it is
        if !more || cur.i == at {
            return;
        }
    }
}

pub(super) fn band<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, out: &mut Vec<BandRef>) {
    // a frequency is a value of that kind; `2m` is a name
    let at = cur.i;
    if cur.at_value(cx) {
        let whole = cx.text(cur.next_span());
        let had = cx.diags.len();
        if let Some(v) = cur.val(cx)
            && v.q.dim == Dim::Frequency
        {
            let loc = v.loc;
            let text = first_of(whole, &["±", "+/-", " k ", " to "])
                .map_or(whole, |at| whole[..at].trim_end());
            if let Some(f) = cx.frequency(&v, "a chain's frequency") {
                out.push(BandRef::Frequency(
                    f,
                    Name {
                        text: text.into(),
                        loc,
                    },
                ));
            }
            return;
        }
        cx.diags.truncate(had);
        cur.i = at;
        if super::band_slip::reported(cx, cur) {
            return;
        }
    }
    match cur.name(cx) {
        Some(n) => out.push(BandRef::Named(n)),
        None => missing(cx, cur, "a band or frequency follows", "on 2m, 433 MHz"),
    }
}

fn steps<'a>(
    cx: &mut Cx<'a>,
    stmts: impl Iterator<Item = Stmt<'a>>,
    places: &[Name],
    phasing: &mut Option<Phasing>,
) -> Vec<Step> {
    let mut out = Vec::new();
    for s in stmts {
        let loc = cx.loc(s.head_span());
        let Some(word) = s.keyword() else {
            no_keyword(cx, s, Context::Chain);
            out.push(Step::Broken(loc));
            continue;
        };
        match word {
            "read" => out.extend(read(cx, s, loc)),
            "readings" => out.extend(log(cx, s, loc)),
            "expect" => out.extend(expect(cx, s, loc)),
            "limit" if super::isolation::is_desense(cx, s) => {
                out.extend(super::isolation::desense(cx, s, loc));
            }
            "limit" => out.extend(limit(cx, s, loc)),
            "branches" => {
                let mut c = Cur::new(s, s.atoms());
                c.i = 1;
                if c.eat(cx, "in") && c.eat(cx, "phase") {
                    *phasing = Some(Phasing::InPhase);
                } else if c.eat(cx, "apart") {
                    *phasing = Some(Phasing::Apart);
                } else {
                    missing(cx, &c, "how the branches add follows", "branches in phase");
                    continue;
                }
                quals::ends(cx, s, &c, "`branches`");
            }
            _ => {
                if let Some(k) = part::kind_of(s) {
                    let p = part::part(cx, s, k, places);
                    let branches = branches(cx, s, places, phasing, k == PartKind::Divider);
                    out.push(Step::Part {
                        part: Box::new(p),
                        branches: branches.into(),
                    });
                } else if s.is_broken() {
                    out.push(Step::Broken(loc));
                } else if keyword(word).is_some() {
                    unknown_statement(cx, s, word, Context::Chain);
                    out.push(Step::Broken(loc));
                } else {
                    out.push(tag(cx, s, word, loc, places, phasing));
                }
            }
        }
    }
    out
}

fn tag<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    word: &str,
    loc: Loc,
    places: &[Name],
    phasing: &mut Option<Phasing>,
) -> Step {
    let atom = s.atoms()[0].span;
    let (tag, port) = match word.split_once('.') {
        Some((t, p)) => {
            let at = u32::try_from(t.len()).unwrap_or(0);
            let first = downlead_base::Span::new(atom.start, atom.start + at);
            let second = downlead_base::Span::new(atom.start + at + 1, atom.end);
            (
                Name {
                    text: t.into(),
                    loc: cx.loc(first),
                },
                Some(Name {
                    text: p.into(),
                    loc: cx.loc(second),
                }),
            )
        }
        None => (cx.name_at(atom), None),
    };
    let mut c = Cur::new(s, s.atoms());
    c.i = 1;
    if !c.done() {
        // `rum 28 m of x`: a misspelt kind of part rather than a tag with something behind it
        if let Some(n) = PartKind::meant(word) {
            let at = cx.loc(atom);
            let d = Diagnostic::new(
                &codes::UNKNOWN_STATEMENT,
                at,
                format!("`{word}` is no statement in a chain."),
            )
            .at("not known");
            cx.push(super::head::meant_for(cx, s, d, at, n));
            return Step::Broken(loc);
        }
        c.unexpected(cx, "a chain's line, which names one part", &[]);
    }
    let branches = branches(cx, s, places, phasing, true);
    Step::Use {
        tag,
        port: port.map(Box::new),
        loc,
        branches: branches.into(),
    }
}

fn branches<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    places: &[Name],
    phasing: &mut Option<Phasing>,
    may: bool,
) -> Vec<Branch> {
    let mut out: Vec<Branch> = Vec::new();
    for b in s.block().into_iter().flat_map(|b| b.iter()) {
        if b.keyword() != Some("branch") {
            if s.keyword()
                .is_some_and(|w| part::kind_of(s).is_none() && keyword(w).is_none())
            {
                match b.keyword() {
                    Some(w) => unknown_statement(cx, b, w, Context::Chain),
                    None => no_keyword(cx, b, Context::Chain),
                }
            }
            continue;
        }
        let loc = cx.loc(b.head_span());
        let mut c = Cur::new(b, b.atoms());
        c.i = 1;
        let name = c
            .name(cx)
            .map_or_else(|| (out.len() + 1).to_string().into(), |n| n.text);
        quals::ends(cx, b, &c, "`branch`");
        if !may {
            let d = Diagnostic::new(
                &codes::MISPLACED_STATEMENT,
                loc,
                "Only a divider has branches.",
            )
            .at("not here");
            cx.push(d);
            continue;
        }
        let inner = match b.block() {
            Some(block) => steps(cx, block.iter(), places, phasing),
            None => {
                missing(cx, &c, "a branch has a block", "branch { antenna 6 dBi }");
                Vec::new()
            }
        };
        out.push(Branch {
            name,
            loc,
            steps: inner.into(),
        });
    }
    out
}

/// Half-width of what an expectation allows, in dB: as stated, or the half of an interval, or
/// `default`. A percentage of a power is one of its watts, of a loss one of its dB.
fn half_db(v: &Val, default: f64) -> f64 {
    let of_power = v.q.watts();
    if let Some(up) = v.upper {
        return match of_power.zip(up.watts()) {
            Some((w, w2)) => DB_PER_RELATIVE * (w2 - w) / (w2 + w),
            None if v.q.dim == Dim::Percent => {
                0.5 * (to_db(1.0 - v.q.value) - to_db(1.0 - up.value))
            }
            None => 0.5 * (up.value - v.q.value),
        };
    }
    match (v.half, of_power) {
        (Some((h, _)), Some(_)) if h.dim == Dim::Percent => DB_PER_RELATIVE * h.value,
        (Some((h, _)), Some(w)) if h.dim == Dim::Power => DB_PER_RELATIVE * h.value / w,
        (Some((h, _)), None) if h.dim == Dim::Percent && v.q.dim != Dim::Percent => {
            h.value * v.q.value.abs()
        }
        (Some((h, _)), None) if h.dim == Dim::Percent => {
            DB_PER_RELATIVE * h.value / (1.0 - v.q.value)
        }
        (Some((h, _)), _) => h.value,
        (None, _) => default,
    }
}

/// Tolerance that the written digits imply: half a step of the last digit, relative.
fn digits(cx: &Cx<'_>, v: &Val) -> f64 {
    let text = cx.text(v.loc.span);
    let number: &str = text
        .split(|c: char| !(c.is_ascii_digit() || c == '.'))
        .find(|s| !s.is_empty())
        .unwrap_or("1");
    let decimals = number.split_once('.').map_or(0, |(_, d)| d.len());
    0.5 * libm::pow(10.0, -(f64::from(u32::try_from(decimals).unwrap_or(0))))
}

/// The kind of power at the cursor.
fn wave<'a>(cx: &Cx<'a>, cur: &mut Cur<'a>) -> Option<ReadPower> {
    [ReadPower::Forward, ReadPower::Reflected, ReadPower::Net]
        .into_iter()
        .find(|k| cur.eat(cx, k.word()))
}

/// Asks which power a reading is of: of the wave towards the antenna, of the one that comes back,
/// or of the two. A word that is none of these goes.
fn which_power<'a>(cx: &mut Cx<'a>, cur: &Cur<'a>, v: &Val) {
    let end = v.loc.span.end;
    let mut gap = cx.loc(downlead_base::Span::new(end, end));
    let word = cur.word(cx).unwrap_or("");
    let waves = ["forward", "reflected", "net"];
    if word == "swr" {
        let at = cx.loc(cur.next_span());
        cx.push(
            Diagnostic::new(
                &codes::WORDS_EXCLUDE,
                at,
                "A reading is of a power or of an SWR.",
            )
            .at("a second reading")
            .also(v.loc, "the first one")
            .help("Two readings are two lines: `read 5 W forward`, `read swr 1.2`."),
        );
        return;
    }
    let mut d = Diagnostic::new(
        &codes::MISSING_VALUE,
        v.loc,
        "A reading of power says whether it is forward, reflected or net: 9 W forward with 3 W back is 6 W net.",
    )
    .at("which power?");
    // what stands there in place of the wave
    if !word.is_empty() && keyword(word).is_none() && !OF_FIGURES.contains(&word) {
        let wrong = cur.next_span();
        gap = cx.loc(downlead_base::Span::new(end, wrong.end));
        d = d.also(cx.loc(wrong), format!("not `{word}`"));
        if let Some(n) = crate::cx::nearest(word, waves.into_iter()) {
            cx.push(
                d.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), gap, format!(" {n}"))
                    .preferred(),
            );
            return;
        }
    }
    for w in waves {
        d = d.fix(format!("write `{w}`"), gap, format!(" {w}"));
    }
    cx.push(d);
}

fn read<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, loc: Loc) -> Option<Step> {
    let mut q = Quals::of(Context::Chain, "read");
    let mut value = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let swr = cur.eat(cx, "swr");
            let Some(v) = cur.val(cx) else {
                missing(
                    cx,
                    &cur,
                    "what was read follows",
                    "read 16.2 W forward, 2026-07-04 with W1 by QY2TEC",
                );
                return None;
            };
            if swr {
                value = cx.swr(&v).map(|m| (Read::Swr(m), v));
            } else {
                let m = cx.power(&v, "a reading", "16.2 W forward");
                let word = cur.next_span();
                let kind = wave(cx, &mut cur);
                if kind.is_some() {
                    q.said.note(cx, s, word);
                }
                if kind.is_none() && m.is_some() {
                    which_power(cx, &cur, &v);
                    return None;
                }
                value = m.zip(kind).map(|(m, k)| (Read::Power(k, m), v));
            }
        }
        while !cur.done() {
            let word = cur.next_span();
            if matches!(value, Some((Read::Power(..), _))) && wave(cx, &mut cur).is_some() {
                q.said.note(cx, s, word);
            } else if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "a reading", own(Context::Chain, "read"));
                break;
            }
        }
    }
    let (read, v) = value?;
    q.meta.basis = crate::model::Basis::Read;
    let node = Node::Read {
        read,
        own_tolerance: v.half.is_some() || v.upper.is_some(),
        // a ± in watts goes with the unit; one in percent or dB does not
        unit: v
            .unit
            .filter(|_| v.upper.is_none() && v.half.is_none_or(|(h, _)| h.dim != Dim::Power))
            .map(|u| (u, v.unit_loc)),
        meta: q.meta,
        on: q.on.into(),
    };
    Some(Step::Node(Box::new(node), loc))
}

/// The value of an expectation, whose `±` are bounds: a `k` would say that they are none.
fn bounds(cx: &mut Cx<'_>, v: Val) -> Val {
    if v.coverage.is_none() {
        return v;
    }
    cx.push(
        Diagnostic::new(
            &codes::UNCERTAINTY_NOT_USED,
            v.loc,
            "The ± of an expectation is how far the value may be off, and takes no `k`.",
        )
        .at("not used"),
    );
    Val {
        half: v.half.map(|(h, _)| (h, Shape::Rectangular)),
        coverage: None,
        ..v
    }
}

/// `readings from "site.csv"`.
fn log<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, loc: Loc) -> Option<Step> {
    let mut c = Cur::new(s, super::head::first_group(s));
    c.i = 1;
    if !c.eat(cx, "from") {
        missing(
            cx,
            &c,
            "`from` and the file follow",
            "readings from \"site.csv\" with W1",
        );
        return None;
    }
    let file = super::session::file(cx, &mut c, "site.csv")?;
    let mut q = Quals::of(Context::Chain, "readings");
    for (n, g) in s.groups().enumerate() {
        let mut own = Cur::new(s, g);
        let cur = if n == 0 { &mut c } else { &mut own };
        while !cur.done() {
            if !q.take(cx, cur) {
                q.unexpected(cx, cur, "`readings from`", &[]);
                break;
            }
        }
    }
    let node = Node::Log {
        file,
        instrument: q.meta.instrument.map(|n| *n),
        on: q.on.into(),
    };
    Some(Step::Node(Box::new(node), loc))
}

fn expect<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, loc: Loc) -> Option<Step> {
    let mut q = Quals::of(Context::Chain, "expect");
    let mut out = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let what = cur
                .word(cx)
                .filter(|w| matches!(*w, "loss" | "swr" | "erp" | "eirp"));
            let word = cx.loc(cur.next_span());
            cur.i += usize::from(what.is_some());
            let Some(v) = cur.val(cx) else {
                missing(
                    cx,
                    &cur,
                    "the expected value follows",
                    "expect 16 W ± 0.3 dB",
                );
                return None;
            };
            let v = bounds(cx, v);
            let step = digits(cx, &v);
            out = match what {
                Some("loss") => cx
                    .loss(&v, "an expected loss")
                    .map(|(m, _)| Expect::Loss(m.value, half_db(&v, step))),
                Some("swr") => cx.swr(&v).map(|m| Expect::Swr(m.value, half_db(&v, step))),
                other => {
                    let quantity = match other {
                        Some("eirp") => Some(LimitQuantity::Eirp),
                        Some(_) => Some(LimitQuantity::Erp),
                        None => None,
                    };
                    // a tolerance from the digits: half a unit of the last one
                    let number = downlead_quantity::unit;
                    let scale = v.unit.map_or(1.0, |u| number(u).to_base(1.0));
                    cx.power(&v, "an expected power", "16 W ± 0.3 dB")
                        .map(|m: Measure| {
                            let relative = if v.q.dim == Dim::Power {
                                step * scale / m.value
                            } else {
                                step / DB_PER_RELATIVE
                            };
                            let half = half_db(&v, DB_PER_RELATIVE * relative);
                            match quantity {
                                Some(q) => Expect::Radiated(q, m.value, half, word),
                                None => Expect::Power(m.value, half),
                            }
                        })
                }
            };
        }
        while !cur.done() {
            if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "an expectation", &[]);
                break;
            }
        }
    }
    out.map(|expect| {
        Step::Node(
            Box::new(Node::Expect {
                expect,
                on: q.on.into(),
            }),
            loc,
        )
    })
}

fn limit<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, loc: Loc) -> Option<Step> {
    let mut q = Quals::of(Context::Chain, "limit");
    let mut value = None;
    let (mut quantity, mut kind) = (None, None);
    // a limit that says two things is not judged by one of them
    let (mut clear, mut stray) = (true, false);
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = 1;
            let Some(v) = cur.val(cx) else {
                missing(
                    cx,
                    &cur,
                    "the limit follows",
                    "limit 30 W erp, \"licence clause 4\"",
                );
                return None;
            };
            let v = cx.alone(&v, "a limit");
            value = cx.power(&v, "a limit", "30 W erp").map(|m| (m, v));
        }
        while !cur.done() {
            let word = cur.next_span();
            let q_word = [
                LimitQuantity::Erp,
                LimitQuantity::Eirp,
                LimitQuantity::Output,
            ]
            .into_iter()
            .find(|k| cur.eat(cx, k.word()));
            if q_word.is_some() {
                quantity = q_word;
                clear &= q.said.note(cx, s, word);
            } else if let Some(k) = ends::power_kind(cx, &mut cur) {
                kind = Some(k);
                clear &= q.said.note(cx, s, word);
            } else if !q.take(cx, &mut cur) {
                stray = true;
                q.unexpected(cx, &cur, "a limit", own(Context::Chain, "limit"));
                break;
            }
        }
    }
    let (m, v) = value.filter(|_| clear)?;
    // a word that was meant as the quantity has its finding
    if quantity.is_none() && stray {
        return None;
    }
    let Some(quantity) = quantity else {
        let end = Loc::new(
            v.loc.item,
            downlead_base::Span::new(v.loc.span.end, v.loc.span.end),
        );
        let w = downlead_quantity::power(m.value);
        let d = Diagnostic::new(
            &codes::LIMIT_WITHOUT_KIND,
            v.loc,
            format!("A limit of {w} on what? ERP, EIRP (1.64 times as large for the same station) or the transmitter's output?"),
        )
        .at("erp, eirp or output?")
        .fix("write `erp`", end, " erp")
        .fix("write `eirp`", end, " eirp")
        .fix("write `output`", end, " output");
        cx.push(d);
        return None;
    };
    if q.meta.source.is_none() && !s.is_broken() {
        let d = Diagnostic::new(
            &codes::LIMIT_WITHOUT_SOURCE,
            loc,
            "This limit names no document or clause.",
        )
        .at("where is it written?")
        .help("Add it in quotes: `limit 30 W erp, \"licence clause 4\"`.");
        cx.push(d);
    }
    let node = Node::Limit {
        quantity,
        watts: m.value,
        kind,
        source: q.meta.source,
        on: q.on.into(),
    };
    Some(Step::Node(Box::new(node), loc))
}
