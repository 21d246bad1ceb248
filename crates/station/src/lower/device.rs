//! Devices: everything between two connectors that is not a line. Also `device NAME { … }`
//! definitions of a library.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::Stmt;

use super::band::frequency_range;
use super::head::{declared, meant, no_keyword, unknown_statement};
use super::network::{self, Ports};
use super::rating::rating;
use super::unused::unused;
use super::{kinds, leg};
use crate::cx::{Cur, Cx};
use crate::keywords::Context;
use crate::model::{
    Basis, Device, DeviceClass, Figure, List, Meta, Name, NetworkFile, PartKind, Port, When,
};
use crate::quals::{Quals, ends, missing, rest, twice};
use crate::words;

/// Lines of a device whose figures enter every result.
const FIGURES: &[&str] = &[
    "loss",
    "return-loss",
    "swr",
    "isolation",
    "gain",
    "noise",
    "excess",
    "coupled",
    "ratio",
    "split",
    "tee",
];

/// Figures of a device while they are gathered.
#[derive(Default)]
pub(super) struct Draft {
    pub(super) device: Device,
    pub(super) loss: Vec<Figure>,
    pub(super) network: Vec<NetworkFile>,
    pub(super) passes: Vec<(f64, f64)>,
    pub(super) ports: Vec<Port>,
    pub(super) swr: Vec<Figure>,
    pub(super) gain: Vec<Figure>,
    pub(super) excess: Vec<Figure>,
    pub(super) meta: Meta,
    /// What only one kind of part has: where it stands, the word, the kind.
    pub(super) only: Vec<(Loc, &'static str, PartKind)>,
    /// Where an isolation stands.
    pub(super) isolation: Option<Loc>,
    /// Where the shares of a divider stand.
    pub(super) split: Option<Loc>,
    /// A part of a station or chain, not a definition.
    pub(super) part: bool,
    /// Whether a figure that enters results is there but could not be read.
    pub(super) broken: bool,
}

impl Draft {
    /// Whether its line has stated no main figure yet.
    pub(super) fn has_no_figure(&self) -> bool {
        self.gain.is_empty() && self.device.ways.is_none() && self.device.coupling.is_none()
    }

    /// The finished device. A plain path becomes a port without a name.
    pub(super) fn finish(mut self, head: Name) -> Device {
        if !self.loss.is_empty()
            || !self.network.is_empty()
            || (self.ports.is_empty() && !self.passes.is_empty())
        {
            let name = Name {
                text: "".into(),
                loc: head.loc,
            };
            self.ports.insert(
                0,
                Port {
                    name,
                    loss: self.loss.into(),
                    passes: self.passes.into(),
                    network: self.network.into(),
                    rejects: List::default(),
                },
            );
        }
        self.device.ports = self.ports.into();
        self.device.swr = self.swr.into();
        self.device.gain = self.gain.into();
        self.device.excess = self.excess.into();
        self.device.broken = self.broken;
        self.device
    }
}

/// Reads a word at the cursor that only some statements have. False if there is none.
pub(super) type Own<'o, 'a> = &'o mut dyn FnMut(&mut Cx<'a>, &mut Cur<'a>) -> bool;

/// A loss with what follows it in the same statement, beginning at the cursor of group 0.
pub(super) fn loss_figure<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
    what: &str,
    own: Own<'_, 'a>,
) -> Option<Figure> {
    let mut q = Quals::default();
    let mut value = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
            match cur.val(cx) {
                Some(v) => value = cx.loss(&v, what).map(|(m, p)| (m, p, v.loc)),
                None => {
                    missing(cx, &cur, &format!("{what} follows"), "0.55 dB ± 0.15 dB");
                    return None;
                }
            }
        }
        while !cur.done() {
            if !own(cx, &mut cur) && !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, what, words::own(Context::Device, "loss"));
                break;
            }
        }
    }
    let (m, percent, loc) = value.filter(|_| !q.broken)?;
    Some(q.figure(m, loc, percent))
}

/// No words of its own.
pub(super) fn none<'a>(_: &mut Cx<'a>, _: &mut Cur<'a>) -> bool {
    false
}

/// `passes LOW to HIGH` at the cursor.
pub(super) fn passes<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>, out: &mut Vec<(f64, f64)>) -> bool {
    if !cur.eat(cx, "passes") {
        return false;
    }
    match cur.val(cx) {
        Some(v) => out.extend(frequency_range(cx, &v, "a pass band")),
        None => missing(cx, cur, "a pass band follows", "passes 144 MHz to 148 MHz"),
    }
    true
}

/// A block of frequencies and losses: `loss { 145 MHz 0.5 dB; 435 MHz 0.6 dB }`.
pub(super) fn loss_table<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
    what: &str,
    own: Own<'_, 'a>,
) -> Vec<Figure> {
    let mut q = Quals::default();
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        cur.i = if n == 0 { skip } else { 0 };
        while !cur.done() {
            if !own(cx, &mut cur) && !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, what, &[]);
                break;
            }
        }
    }
    let mut out: Vec<Figure> = Vec::new();
    for row in s.block().into_iter().flat_map(|b| b.iter()) {
        let mut cur = Cur::new(row, row.atoms());
        let (Some(f), Some(a)) = (cur.val(cx), cur.val(cx)) else {
            missing(
                cx,
                &cur,
                "a row of the table is a frequency and a loss",
                "145 MHz 0.5 dB",
            );
            continue;
        };
        let (Some(hz), Some((m, percent))) =
            (cx.frequency(&f, "a table's frequency"), cx.loss(&a, what))
        else {
            continue;
        };
        if !cur.done() {
            cur.unexpected(cx, "a loss table", &[]);
        }
        if out.iter().any(|o| o.when == When::At(hz)) {
            let d = Diagnostic::new(
                &codes::DUPLICATE_NAME,
                f.loc,
                "This frequency occurs twice in the table.",
            )
            .at("again");
            cx.push(d);
            continue;
        }
        out.push(Figure {
            when: When::At(hz),
            value: m,
            meta: q.meta.clone().into(),
            loc: a.loc,
            percent,
        });
    }
    out.sort_by(|a, b| match (&a.when, &b.when) {
        (When::At(x), When::At(y)) => x.total_cmp(y),
        _ => std::cmp::Ordering::Equal,
    });
    out
}

/// An SWR or return loss with its qualifiers; return loss becomes an SWR.
pub(super) fn swr_figure<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    skip: usize,
    return_loss: bool,
) -> Option<Figure> {
    let mut q = Quals::default();
    let mut value = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
            let Some(v) = cur.val(cx) else {
                missing(
                    cx,
                    &cur,
                    "a figure follows",
                    if return_loss {
                        "return-loss 20 dB"
                    } else {
                        "swr 1.3"
                    },
                );
                return None;
            };
            value = if return_loss {
                return_loss_to_swr(cx, &v)
            } else {
                cx.swr(&v)
            }
            .map(|m| (m, v.loc));
        }
        while !cur.done() {
            if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "an SWR", &[]);
                break;
            }
        }
    }
    let (m, loc) = value.filter(|_| !q.broken)?;
    Some(q.figure(m, loc, false))
}

/// Return loss in dB to SWR.
pub(super) fn return_loss_to_swr(cx: &mut Cx<'_>, v: &crate::cx::Val) -> Option<Measure> {
    let m = cx.measure(v, Dim::Decibel, "a return loss", "20 dB")?;
    if m.value <= 0.0 || v.q.value < 0.0 {
        let d = Diagnostic::new(
            &codes::SWR_BELOW_ONE,
            v.loc,
            "A return loss is positive: what comes back is weaker than what went out.",
        )
        .at("not positive");
        cx.push(d);
        return None;
    }
    cx.within_bounds(v, &m, 0.0, "a return loss");
    // of what reflects all but nothing the SWR stays a number
    let g = libm::exp(-m.value / 20.0 * core::f64::consts::LN_10).min(1.0 - 1e-9);
    let swr = (1.0 + g) / (1.0 - g);
    // d(swr)/d(RL dB) = -swr-slope * g ln10/20
    let u = 2.0 / ((1.0 - g) * (1.0 - g)) * g * core::f64::consts::LN_10 / 20.0 * m.u;
    Some(Measure {
        value: swr,
        u,
        return_loss: true,
        ..m
    })
}

/// Figures of a device that contradict each other.
pub(super) fn contradictions(cx: &mut Cx<'_>, d: &Device, who: &str) {
    for p in &d.ports {
        let port = if p.name.text.is_empty() {
            String::new()
        } else {
            format!(".{}", p.name.text)
        };
        twice(
            cx,
            &format!("The loss of `{who}{port}`"),
            &p.loss,
            downlead_quantity::db,
        );
        twice(
            cx,
            &format!("What `{who}{port}` rejects"),
            &p.rejects,
            downlead_quantity::db,
        );
        network::twice(
            cx,
            &format!("The loss of `{who}{port}`"),
            &p.network,
            &p.loss,
        );
        if p.name.text.is_empty() {
            network::twice(cx, &format!("The gain of `{who}`"), &p.network, &d.gain);
        }
    }
    twice(cx, &format!("The SWR of `{who}`"), &d.swr, swr_words);
    twice(
        cx,
        &format!("The excess loss of `{who}`"),
        &d.excess,
        downlead_quantity::db,
    );
    if let Some(p) = d.ports.iter().find(|p| p.name.text.is_empty()) {
        network::twice(cx, &format!("The SWR of `{who}`"), &p.network, &d.swr);
    }
    twice(
        cx,
        &format!("The gain of `{who}`"),
        &d.gain,
        downlead_quantity::db,
    );
}

/// An SWR in figures.
pub(super) fn swr_words(swr: f64) -> String {
    format!("{swr:.2}")
}

/// One line of a device's block.
pub(super) fn device_line<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, d: &mut Draft, kind: Option<PartKind>) {
    let mut cur = Cur::new(s, super::head::first_group(s));
    cur.i = 1;
    let Some(w) = s.keyword() else {
        no_keyword(cx, s, Context::Device);
        return;
    };
    if figure_line(cx, s, w, d) || leg_line(cx, s, &mut cur, d, kind) {
        return;
    }
    if word_line(cx, s, &mut cur, d, kind) {
        rest(cx, s, &mut cur, "a device");
        return;
    }
    d.broken |= meant(w, FIGURES);
    unknown_statement(cx, s, w, Context::Device);
}

/// A line that states figures which may hold at some frequencies or on some bands only. False if
/// it states none.
fn figure_line<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, w: &str, d: &mut Draft) -> bool {
    match w {
        "loss" => {
            let mut own = |cx: &mut Cx<'a>, cur: &mut Cur<'a>| {
                passes(cx, cur, &mut d.passes) || kinds::sits(cx, cur, &mut d.only, &mut d.device)
            };
            let what = "a device's loss";
            if s.block().is_some() {
                d.loss.extend(loss_table(cx, s, 1, what, &mut own));
            } else {
                let figure = loss_figure(cx, s, 1, what, &mut own);
                d.broken |= figure.is_none();
                d.loss.extend(figure);
            }
        }
        "return-loss" | "swr" => {
            let figure = swr_figure(cx, s, 1, w == "return-loss");
            d.broken |= figure.is_none();
            d.swr.extend(figure);
        }
        "rating" => d.device.rating = rating(cx, s, 1).map(Box::new),
        "gain" => {
            let figure = gain_figure(cx, s, 1);
            d.broken |= figure.is_none();
            d.gain.extend(figure);
        }
        "excess" => {
            let excess = loss_figure(cx, s, 1, "an excess loss", &mut none);
            d.broken |= excess.is_none();
            d.excess.extend(excess);
        }
        _ => return false,
    }
    true
}

/// A line about one leg or port, or about a file of all. False if it is about neither.
fn leg_line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    cur: &mut Cur<'a>,
    d: &mut Draft,
    kind: Option<PartKind>,
) -> bool {
    match s.keyword() {
        Some("from") if kind != Some(PartKind::Divider) => {
            let what = "a device's file";
            let file = network::statement(cx, s, 0, what, Ports::Two, &mut |cx, cur| {
                passes(cx, cur, &mut d.passes)
            });
            d.broken |= file.is_none();
            d.network.extend(file);
        }
        Some("high" | "low") => {
            leg::port(cx, s, d, cx.name_at(s.atoms()[0].span), 1, "a leg's loss");
        }
        Some("port") => match cur.name(cx) {
            Some(n) => leg::port(cx, s, d, n, 2, "a port's loss"),
            None => missing(cx, cur, "a port has a name and a loss", "port a 3.3 dB"),
        },
        _ => return false,
    }
    true
}

/// A line of one word and what belongs to it. False if it is none of a device.
fn word_line<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    cur: &mut Cur<'a>,
    d: &mut Draft,
    kind: Option<PartKind>,
) -> bool {
    match s.keyword() {
        Some(w @ ("ratio" | "split" | "tee")) => {
            let at = cx.loc(s.atoms()[0].span);
            match w {
                "ratio" => kinds::ratio(cx, cur, at, d),
                "split" => kinds::split(cx, cur, at, d),
                _ => kinds::tee(at, d),
            }
        }
        Some("isolation") => {
            if let Some(v) = cur.val(cx) {
                d.device.isolation = cx.loss(&v, "an isolation").map(|m| m.0);
                d.isolation = Some(v.loc);
            } else {
                missing(cx, cur, "an isolation follows", "isolation 85 dB");
            }
            d.broken |= d.device.isolation.is_none();
        }
        Some("voltage") => {
            if let Some(v) = cur.need(cx, "a working voltage follows", "voltage 500 V") {
                let v = cx.alone(&v, "a working voltage");
                d.device.voltage = cx
                    .positive(&v, Dim::Voltage, "a working voltage", "500 V")
                    .map(|m| m.value);
            }
        }
        Some("passes") => {
            cur.i = 0;
            passes(cx, cur, &mut d.passes);
        }
        Some("noise") => {
            d.device.noise_figure = noise_figure(cx, cur);
            d.broken |= d.device.noise_figure.is_none();
        }
        Some("ways") => {
            if let Some(v) = cur.need(cx, "a number of branches follows", "ways 2") {
                d.device.ways = ways(cx, &v);
            }
            d.broken |= d.device.ways.is_none();
        }
        Some("coupled") => {
            if let Some(v) = cur.need(cx, "a coupling follows", "coupled 20 dB") {
                d.device.coupling = cx.loss(&v, "a coupling").map(|m| m.0);
            }
            d.broken |= d.device.coupling.is_none();
        }
        Some("reversed") => match kind {
            Some(k) if k.has_direction() && d.part => d.device.reversed = true,
            _ => kinds::misplaced_reversed(cx, s),
        },
        Some("source") => match cur.string(cx) {
            Some(t) => d.meta.source = Some(t),
            None => missing(
                cx,
                cur,
                "the document follows in quotes",
                "source \"IS-2 p. 3\"",
            ),
        },
        _ => return false,
    }
    true
}

/// Gain of an amplifier in dB.
pub(super) fn gain_figure<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, skip: usize) -> Option<Figure> {
    let mut q = Quals::default();
    let mut value = None;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        if n == 0 {
            cur.i = skip;
            let v = cur.need(cx, "a gain follows", "gain 13 dB")?;
            value = cx
                .measure(&v, Dim::Decibel, "an amplifier's gain", "13 dB")
                .map(|m| (m, v.loc));
        }
        while !cur.done() {
            if !q.take(cx, &mut cur) {
                q.unexpected(cx, &cur, "a gain", &[]);
                break;
            }
        }
    }
    let (m, loc) = value.filter(|_| !q.broken)?;
    Some(q.figure(m, loc, false))
}

/// The second word of two that belong together: a value without it is understood, and the word is
/// asked for.
pub(super) fn second_word<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    first: &str,
    second: &str,
    example: &str,
) {
    if cur.eat(cx, second) || !cur.at_value(cx) {
        return;
    }
    let at = cur.next_span();
    let gap = cx.loc(downlead_base::Span::new(at.start, at.start));
    cx.push(
        Diagnostic::new(
            &codes::MISSING_VALUE,
            cx.loc(at),
            format!("`{first}` is followed by `{second}`."),
        )
        .at(format!("`{second}` is missing before it"))
        .help(format!("Written for example `{example}`."))
        .fix(format!("write `{second}`"), gap, format!("{second} "))
        .preferred(),
    );
}

/// A noise figure in dB at the cursor, after `noise`.
pub(super) fn noise_figure<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<Measure> {
    second_word(cx, cur, "noise", "figure", "noise figure 6 dB");
    match cur.val(cx) {
        Some(v) => cx.loss(&v, "a noise figure").map(|m| m.0),
        None => {
            missing(cx, cur, "a noise figure follows", "noise figure 6 dB");
            None
        }
    }
}

/// Number of branches of a divider.
pub(super) fn ways(cx: &mut Cx<'_>, v: &crate::cx::Val) -> Option<u32> {
    let v = &cx.alone(v, "a number of branches");
    let m = cx.measure(v, Dim::Count, "a number of branches", "2 way")?;
    if m.value.fract() == 0.0 && (2.0..=64.0).contains(&m.value) {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "checked to be 2 to 64"
        )]
        return Some(m.value as u32);
    }
    let d = Diagnostic::new(
        &codes::IMPOSSIBLE_VALUE,
        v.loc,
        "A divider has 2 to 64 branches.",
    )
    .at("cannot be");
    cx.push(d);
    None
}

/// Says that a word is no kind of device.
fn unknown_kind(cx: &mut Cx<'_>, n: &Name) {
    let kinds = PartKind::ALL.into_iter().filter(|k| k.is_definable());
    let words = kinds.map(|k| (k.word(), crate::forms::of_part(k).also));
    let d = Diagnostic::new(
        &codes::UNEXPECTED_WORD,
        n.loc,
        format!("`{}` is no kind of device.", n.text),
    )
    .at("not known");
    cx.push(match crate::forms::mean(&n.text, words) {
        Some(w) => d
            .help(format!("Did you mean `{w}`?"))
            .fix(format!("write `{w}`"), n.loc, w)
            .preferred(),
        None => d.help("Written for example `kind isolator`."),
    });
}

/// `device NAME "title" { kind KIND … }`.
pub(super) fn class<'a>(cx: &mut Cx<'a>, stmt: Stmt<'a>, cur: &mut Cur<'a>) -> Option<DeviceClass> {
    let name = declared(
        cx,
        cur,
        "a device",
        "device protector-gas { kind protector; loss 0.1 dB to 0.2 dB }",
    )?;
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, "a device's head", &[]);
    }
    let mut kind = None;
    let mut draft = Draft::default();
    for s in stmt.block().into_iter().flat_map(|b| b.iter()) {
        if s.keyword() == Some("kind") {
            let mut c = Cur::new(s, s.atoms());
            c.i = 1;
            match c.name(cx) {
                Some(n) => match PartKind::from_word(&n.text) {
                    Some(k) if k.is_definable() => {
                        kind = Some(k);
                        ends(cx, s, &c, "`kind`");
                    }
                    _ => unknown_kind(cx, &n),
                },
                None => missing(cx, &c, "the kind of device follows", "kind isolator"),
            }
        } else {
            device_line(cx, s, &mut draft, kind);
        }
    }
    let Some(kind) = kind else {
        if cx.diags.is_empty() {
            missing(cx, cur, "a device says its kind", "kind isolator");
        }
        return None;
    };
    kinds::only_of_kind(cx, &mut draft, kind, &name.text);
    let mut meta = std::mem::take(&mut draft.meta);
    if cx.built_in {
        meta.basis = Basis::Library;
    }
    let device = draft.finish(name.clone());
    contradictions(cx, &device, &name.text);
    unused(cx, &device, kind, name.loc);
    Some(DeviceClass {
        name,
        title,
        kind,
        device,
        meta,
        built_in: cx.built_in,
    })
}
