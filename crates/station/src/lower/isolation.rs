//! Isolation between antennas, noise and blocking at an offset, `limit 1 dB desense`.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{Dim, Measure};
use downlead_syntax::{Atom, AtomKind, Stmt};

use super::rules::{slot, slots};
use crate::cx::{Cur, Cx};
use crate::forms::Form;
use crate::forms::site::{BLOCKING, ISOLATION, IsolationSlot, NOISES, Offset, SIDEBAND_NOISE};
use crate::model::{
    AntennaOf, AtOffset, Figure, Isolated, Isolation, Name, Node, Step, Transmitter, When,
};
use crate::quals::{Quals, missing};

/// What is measured at an offset.
#[derive(Clone, Copy)]
pub(super) enum What {
    /// Noise over the carrier, dBc/Hz.
    Noise,
    /// Level that blocks a receiver, dBm.
    Blocking,
}

impl What {
    fn words(self) -> (Dim, &'static str, &'static str) {
        match self {
            What::Noise => (
                Dim::SidebandNoise,
                "the noise of a transmitter",
                "noise -145 dBc/Hz at 600 kHz",
            ),
            What::Blocking => (
                Dim::Level,
                "a blocking level",
                "blocking -25 dBm at 600 kHz",
            ),
        }
    }
}

/// A level or noise below zero, which an offset follows.
fn value<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, a: &Atom, what: What) -> Option<(Measure, Loc)> {
    let (dim, noun, example) = what.words();
    let v = cx.value(s, a)?;
    let m = cx.measure(&v, dim, noun, example)?;
    // 30 dBm at a receiver burn it, and noise over the carrier is no carrier
    let most = if matches!(what, What::Noise) {
        0.0
    } else {
        30.0
    };
    if m.value < most {
        return Some((m, v.loc));
    }
    let sign = Loc::new(
        v.loc.item,
        downlead_base::Span::new(v.loc.span.start, v.loc.span.start),
    );
    cx.push(
        Diagnostic::new(
            &codes::IMPOSSIBLE_VALUE,
            v.loc,
            match what {
                What::Noise => "Noise in 1 Hz is far below its carrier: a negative figure.",
                What::Blocking => "No receiver withstands such a level.",
            },
        )
        .at("without its minus?")
        .fix(format!("write `-{}`", cx.text(v.loc.span)), sign, "-"),
    );
    None
}

/// An offset in Hz, above zero.
fn offset<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, a: &Atom) -> Option<f64> {
    let v = cx.value(s, a)?;
    let v = cx.alone(&v, "an offset");
    cx.positive(&v, Dim::Frequency, "an offset", "600 kHz")
        .map(|m| m.value)
}

/// A line of its own: `noise -145 dBc/Hz at 600 kHz`.
fn line<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, form: &'static Form, what: What) -> Option<AtOffset> {
    let read = slots(cx, s, form);
    // the transceiver's line has the noise figure in front of the same three
    let shift = u8::from(std::ptr::eq(form, &raw const NOISES));
    let at = |id: Offset| slot(&read, id.id() + shift);
    let (m, loc) = value(cx, s, at(Offset::Value)?.0, what)?;
    let (one, beyond) = match (at(Offset::At), at(Offset::Beyond)) {
        (Some((_, args)), None) => (args, false),
        (None, Some((_, args))) => (args, true),
        _ => return None,
    };
    let offset_hz = offset(cx, s, one.first()?)?;
    let mut q = Quals::default();
    qualifiers(cx, s, &mut q);
    (!s.is_broken()).then(|| AtOffset {
        figure: q.figure(m, loc, false),
        offset_hz,
        beyond,
    })
}

/// `noise …` in the block of a transmitter, or of a transceiver (`both`).
pub(super) fn sideband_noise<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, both: bool, t: &mut Transmitter) {
    let form = if both { &NOISES } else { &SIDEBAND_NOISE };
    let found = line(cx, s, form, What::Noise);
    add(cx, found, &mut t.noise, &mut t.broken_noise);
}

/// `blocking …` in the block of a receiver or transceiver.
pub(super) fn blocking<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, list: &mut crate::model::List<AtOffset>) {
    let found = line(cx, s, &BLOCKING, What::Blocking);
    add(cx, found, list, &mut false);
}

/// The same in a line with other figures, after its word.
pub(super) fn in_line<'a>(
    cx: &mut Cx<'a>,
    cur: &mut Cur<'a>,
    what: What,
    list: &mut crate::model::List<AtOffset>,
    broken: &mut bool,
) {
    let (_, noun, example) = what.words();
    let found = (|| {
        let Some(a) = cur.peek().filter(|_| cur.at_value(cx)) else {
            missing(cx, cur, &format!("{noun} follows"), example);
            return None;
        };
        cur.i += 1;
        let read = value(cx, cur.stmt, a, what);
        let beyond = cur.word(cx) == Some("beyond");
        if !(beyond || cur.word(cx) == Some("at")) {
            missing(cx, cur, "the offset at which it holds follows", example);
            return None;
        }
        cur.i += 1;
        let Some(a) = cur.peek().filter(|_| cur.at_value(cx)) else {
            missing(cx, cur, "the offset at which it holds follows", example);
            return None;
        };
        cur.i += 1;
        let offset_hz = offset(cx, cur.stmt, a)?;
        let (m, loc) = read?;
        Some(AtOffset {
            figure: Figure::always(m, loc),
            offset_hz,
            beyond,
        })
    })();
    add(cx, found, list, broken);
}

fn add(
    cx: &mut Cx<'_>,
    found: Option<AtOffset>,
    list: &mut crate::model::List<AtOffset>,
    broken: &mut bool,
) {
    let Some(one) = found else {
        *broken = true;
        return;
    };
    let same = |x: &&AtOffset| x.offset_hz == one.offset_hz;
    if let Some(first) = list.iter().find(same) {
        cx.push(
            Diagnostic::new(
                &codes::FIGURE_TWICE,
                one.figure.loc,
                format!(
                    "There are two figures at {}; the first is used.",
                    downlead_quantity::frequency(one.offset_hz)
                ),
            )
            .at("not used")
            .also(first.figure.loc, "the first")
            .help("Keep one of them."),
        );
        return;
    }
    let mut all = std::mem::take(list).into_vec();
    all.push(one);
    *list = all.into();
}

/// What is said about a figure, wherever it stands in its line.
fn qualifiers<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, q: &mut Quals) {
    for g in s.groups() {
        let mut cur = Cur::new(s, g);
        while !cur.done() {
            let own = matches!(cur.word(cx), Some("at" | "beyond" | "on"));
            if own || !q.take(cx, &mut cur) {
                cur.i += 1;
            }
        }
    }
}

/// Whether a line `limit` of a chain is one of a desense.
pub(super) fn is_desense(cx: &Cx<'_>, s: Stmt<'_>) -> bool {
    s.atoms()
        .iter()
        .any(|a| a.kind == AtomKind::Word && cx.text(a.span) == "desense")
}

/// `limit 1 dB desense, "club rule 5"`.
pub(super) fn desense<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, loc: Loc) -> Option<Step> {
    let mut q = Quals::of(crate::keywords::Context::Chain, "limit");
    let a = s.atoms().get(1)?;
    let v = cx.value(s, a)?;
    let v = cx.alone(&v, "a limit");
    let db = cx.positive(&v, Dim::Decibel, "a desense", "1 dB")?.value;
    for (n, g) in s.groups().enumerate() {
        let mut cur = Cur::new(s, g);
        cur.i = if n == 0 { 2 } else { 0 };
        while !cur.done() {
            if !(cur.eat(cx, "desense") || q.take(cx, &mut cur)) {
                // which is said by the table
                return None;
            }
        }
    }
    if q.meta.source.is_none() && !s.is_broken() {
        let d = Diagnostic::new(
            &codes::LIMIT_WITHOUT_SOURCE,
            loc,
            "This limit names no document or clause.",
        )
        .at("where is it written?")
        .help("Add it in quotes: `limit 1 dB desense, \"club rule 5\"`.");
        cx.push(d);
    }
    let node = Node::Desense {
        db,
        source: q.meta.source,
        on: q.on.into(),
    };
    Some(Step::Node(Box::new(node), loc))
}

/// The words of some atoms, each with its place: `to` makes one atom of what is about it.
fn words<'a>(cx: &Cx<'a>, atoms: &[Atom]) -> Vec<Name> {
    let mut out = Vec::new();
    for a in atoms {
        let text = cx.text(a.span);
        let mut at = 0;
        for word in text.split_whitespace() {
            let from = at + text[at..].find(word).unwrap_or(0);
            at = from + word.len();
            let place = |n: usize| a.span.start + u32::try_from(n).unwrap_or(0);
            out.push(Name {
                text: word.into(),
                loc: cx.loc(downlead_base::Span::new(place(from), place(at))),
            });
        }
    }
    out
}

/// `A9 of harbour to A1`.
fn antennas(words: &[Name]) -> Option<[AntennaOf; 2]> {
    let at = words.iter().position(|w| &*w.text == "to")?;
    let one = |w: &[Name]| match w {
        [antenna] => Some(AntennaOf {
            antenna: antenna.clone(),
            station: None,
        }),
        [antenna, of, station] if &*of.text == "of" => Some(AntennaOf {
            antenna: antenna.clone(),
            station: Some(station.clone()),
        }),
        _ => None,
    };
    Some([one(&words[..at])?, one(&words[at + 1..])?])
}

/// A line `isolation` of a station.
pub(super) fn isolation<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, own: &Name) -> Option<Isolation> {
    let read = slots(cx, s, &ISOLATION);
    let at = |id: IsolationSlot| slot(&read, id.id());
    let loc = cx.loc(s.head_span());
    let ends = s.atoms().iter().skip(1).take_while(|a| !a.comma_before);
    let head: Vec<Atom> = ends.copied().collect();
    // the two names end where the figure begins
    let figure = head
        .iter()
        .position(|a| read.iter().any(|r| r.0 != 0 && r.1.span == a.span));
    let names = &head[..figure.unwrap_or(head.len())];
    let mut ends = antennas(&words(cx, names)).filter(|_| at(IsolationSlot::Ends).is_some())?;
    for e in &mut ends {
        // one's own station may be named too
        e.station = e.station.take().filter(|st| st.text != own.text);
    }
    let [a, b] = &ends;
    if a.antenna.text == b.antenna.text && a.station == b.station {
        cx.push(
            Diagnostic::new(
                &codes::SITE_CONTRADICTS,
                b.antenna.loc,
                format!("`{}` is not isolated from itself.", a.antenna.text),
            )
            .at("the same antenna")
            .help("Name two antennas of the site."),
        );
        return None;
    }
    let metres = |cx: &mut Cx<'a>, a: &Atom| {
        let v = cx.value(s, a)?;
        cx.positive(&v, Dim::Length, "a distance of antennas", "10 m")
    };
    let by = |cx: &mut Cx<'a>| {
        let found = [
            at(IsolationSlot::Measured),
            at(IsolationSlot::Vertical),
            at(IsolationSlot::Horizontal),
        ];
        match found {
            [Some((a, _)), None, None] => {
                let v = cx.value(s, a)?;
                let (m, percent) = cx.loss(&v, "an isolation")?;
                let mut q = Quals::default();
                figure_qualifiers(cx, s, &mut q);
                let f = q.figure(m, v.loc, percent);
                (f.when != When::Always).then_some(Isolated::Measured(f))
            }
            [None, Some((a, _)), None] => metres(cx, a).map(Isolated::Vertical),
            [None, None, Some((a, _))] => metres(cx, a).map(Isolated::Horizontal),
            _ => None,
        }
    };
    let by = by(cx).filter(|_| !s.is_broken())?;
    let mut q = Quals::default();
    qualifiers(cx, s, &mut q);
    Some(Isolation {
        ends,
        by,
        meta: q.meta.into(),
        loc,
    })
}

/// The same with where it holds.
fn figure_qualifiers<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, q: &mut Quals) {
    for g in s.groups() {
        let mut cur = Cur::new(s, g);
        while !cur.done() {
            if !q.take(cx, &mut cur) {
                cur.i += 1;
            }
        }
    }
}

/// Points out an isolation that is stated again, and keeps the first.
pub(super) fn once(cx: &mut Cx<'_>, mut all: Vec<Isolation>) -> Box<[Isolation]> {
    let same = |a: &AntennaOf, b: &AntennaOf| {
        a.antenna.text == b.antenna.text
            && a.station.as_ref().map(|s| &s.text) == b.station.as_ref().map(|s| &s.text)
    };
    let pair = |a: &Isolation, b: &Isolation| {
        let (x, y) = (&a.ends, &b.ends);
        same(&x[0], &y[0]) && same(&x[1], &y[1]) || same(&x[0], &y[1]) && same(&x[1], &y[0])
    };
    let mut kept: Vec<Isolation> = Vec::new();
    for one in all.drain(..) {
        let again = kept.iter().find(|k| {
            pair(k, &one)
                && match (&k.by, &one.by) {
                    (Isolated::Measured(a), Isolated::Measured(b)) => {
                        a.when == b.when || crate::quals::meet(&a.when, &b.when)
                    }
                    (Isolated::Measured(_), _) | (_, Isolated::Measured(_)) => false,
                    _ => true,
                }
        });
        let Some(first) = again else {
            kept.push(one);
            continue;
        };
        let (a, b) = (&one.ends[0].antenna.text, &one.ends[1].antenna.text);
        let code = match one.by {
            Isolated::Measured(_) => &codes::FIGURE_TWICE,
            _ => &codes::SAID_TWICE,
        };
        cx.push(
            Diagnostic::new(
                code,
                one.loc,
                format!("The isolation from `{a}` to `{b}` is stated twice; the first is used."),
            )
            .at("again here")
            .also(first.loc, "first here")
            .help("Keep one of them: it holds both ways. One that was measured and one distance may stand together."),
        );
    }
    kept.into()
}
