//! Exposure of people: places where they can be, and limits of fields in rules.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::Dim;
use downlead_syntax::{Atom, AtomKind, Expr, ExprKind, Stmt};

use super::law::any_law;
use super::rules::{
    Read, clean, figure, frequencies, name_of, quoted, slot, slots, text_of, without_range,
};
use crate::cx::{Cur, Cx};
use crate::forms::Form;
use crate::forms::exposure::{SPOT, SpotSlot};
use crate::forms::rules::ClauseSlot;
use crate::model::{
    Confidence, ExposureClause, Field, Name, Spot, SpotAt, Tier, UnreadSpot, Variable,
};
use crate::quals::missing;

/// Whether a line `limit` of rules is one of a field, by the unit of its value.
pub(super) fn is_field(s: Stmt<'_>) -> bool {
    fn of(e: Expr<'_>) -> bool {
        match e.kind() {
            ExprKind::Number(n) => n
                .unit
                .is_some_and(|u| Field::of(downlead_quantity::unit(u).dim).is_some()),
            ExprKind::Neg(x) | ExprKind::Per(x, _) => of(x),
            ExprKind::Binary(_, a, b) => of(a) || of(b),
            ExprKind::Name(_) => false,
        }
    }
    s.atoms()
        .get(1)
        .filter(|a| matches!(a.kind, AtomKind::Value(_)))
        .and_then(|a| s.value(*a))
        .is_some_and(|v| of(v.expr()))
}

/// A limit of a field.
pub(super) fn clause<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    (form, read): (&'static Form, &[Read<'a>]),
    licence: bool,
) -> Option<ExposureClause> {
    let loc = cx.loc(s.head_span());
    let at = |id: ClauseSlot| slot(read, id.id());
    let head = at(ClauseSlot::Value).map(|(a, _)| a)?;
    let (law, dim) = any_law(cx, s, head)?;
    let field = Field::of(dim)?;
    if let Some(f) = law
        .factors
        .iter()
        .find(|f| f.variable != Variable::Frequency)
    {
        let d = Diagnostic::new(
            &codes::RULE_LAW,
            law.loc,
            format!(
                "A limit of exposure goes by the frequency, and this one goes by {}.",
                f.variable.noun()
            ),
        )
        .at("not a law of the frequency")
        .help("Written for example `2 W/m2 * (frequency / 300 MHz)`.");
        cx.push(d);
        return None;
    }
    if misplaced(cx, read) {
        return None;
    }
    let on = match at(ClauseSlot::On) {
        Some((_, args)) => frequencies(cx, s, args)?,
        None => without_range(cx, s)?,
    };
    let Some(tier) = at(ClauseSlot::Tier).and_then(|(a, _)| Tier::from_word(cx.text(a.span)))
    else {
        without_tier(
            cx,
            loc,
            "For whom is this limit: `public` or `occupational`?",
        );
        return None;
    };
    let averaging_s = match at(ClauseSlot::Averaging) {
        Some((_, args)) => Some(figure(
            cx,
            s,
            args.first()?,
            Dim::Time,
            "an averaging time",
            "30 min",
        )?),
        None => None,
    };
    let date = |id: ClauseSlot| at(id).and_then(|(_, a)| Some(text_of(cx, a.first()?)));
    let (since, until) = (date(ClauseSlot::Since), date(ClauseSlot::Until));
    let cite = at(ClauseSlot::Cite).map(|(a, _)| quoted(cx, a));
    let confidence = at(ClauseSlot::Confidence)
        .and_then(|(_, a)| Confidence::from_word(cx.text(a.first()?.span)));
    if s.is_broken() {
        return None;
    }
    if clean(cx, s, form) {
        super::rules::needs_source(cx, loc, cite.is_some(), confidence.is_some() || licence);
    }
    Some(ExposureClause {
        loc,
        field,
        law,
        on,
        tier,
        averaging_s,
        since,
        until,
        cite,
        confidence,
    })
}

/// Whether a limit of a field says what only one of a power can; which is reported.
fn misplaced(cx: &mut Cx<'_>, read: &[Read<'_>]) -> bool {
    use ClauseSlot as C;
    const OF_FIELDS: [ClauseSlot; 8] = [
        C::Value,
        C::On,
        C::Tier,
        C::Averaging,
        C::Since,
        C::Until,
        C::Cite,
        C::Confidence,
    ];
    let averaging = slot(read, C::Averaging.id()).and_then(|(_, args)| args.first());
    for (id, head, _) in read {
        if OF_FIELDS.iter().any(|s| s.id() == *id) {
            continue;
        }
        let word = cx.text(head.span);
        let kind = *id == C::Kind.id();
        let d = match (kind, word, averaging) {
            (true, "mean", _) | (true, "pep", None) => continue,
            (true, _, Some(time)) => Diagnostic::new(
                &codes::PEP_AGAINST_MEAN,
                cx.loc(head.span),
                format!(
                    "This limit goes by the mean over {}, and says {}.",
                    cx.text(time.span),
                    if word == "pep" { "PEP" } else { "carrier power" }
                ),
            )
            .at("another quantity")
            .help("Remove the word, or the averaging time: without one the peak of the envelope counts."),
            _ => Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                cx.loc(head.span),
                format!("`{word}` has no meaning in a limit of a field."),
            )
            .at("said of a power")
            .help("Written for example `limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7.1\"`."),
        };
        cx.push(d);
        return true;
    }
    false
}

/// Asks who can be there, or for whom a limit is.
fn without_tier(cx: &mut Cx<'_>, loc: Loc, question: &str) {
    let end = Loc::new(loc.item, Span::new(loc.span.end, loc.span.end));
    let d = Diagnostic::new(&codes::SPOT_WITHOUT_TIER, loc, question)
        .at("which of the two?")
        .help("Anyone can be at a public place; limits for those who work there are five times higher in most rules.")
        .fix("write `public`", end, ", public")
        .fix("write `occupational`", end, ", occupational");
    cx.push(d);
}

/// The factor of reflection on the field, 1 to 2.
pub(super) fn reflection<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, a: &'a Atom) -> Option<f64> {
    let x = figure(cx, s, a, Dim::Count, "a factor of reflection", "1.6")?;
    if (1.0..=2.0).contains(&x) {
        return Some(x);
    }
    let d = Diagnostic::new(
        &codes::IMPOSSIBLE_VALUE,
        cx.loc(a.span),
        "Reflection raises the field by a factor from 1 (free space) to 2 (total reflection).",
    )
    .at("cannot be")
    .help("1.6 is over realistic ground. It is the factor on the field: on the power density it is 2.56.");
    cx.push(d);
    None
}

/// `in 6 min` after a share of time, s.
pub(super) fn window<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<f64> {
    let v = cur.need(cx, "a time follows", "keyed 50 % in 6 min")?;
    let v = cx.alone(&v, "the window of a share keyed");
    cx.positive(&v, Dim::Time, "the window of a share keyed", "6 min")
        .map(|m| m.value)
}

/// The length of an antenna, m.
pub(super) fn size<'a>(cx: &mut Cx<'a>, cur: &mut Cur<'a>) -> Option<downlead_quantity::Measure> {
    let v = cur.need(cx, "a length follows", "size 2.7 m")?;
    let v = cx.alone(&v, "the size of an antenna");
    cx.positive(&v, Dim::Length, "the size of an antenna", "2.7 m")
}

/// The lines `spot` of a station, gathered.
#[derive(Default)]
pub(super) struct Spots {
    read: Vec<Spot>,
    unread: Vec<UnreadSpot>,
}

impl Spots {
    /// `spot NAME …`.
    pub(super) fn line<'a>(&mut self, cx: &mut Cx<'a>, s: Stmt<'a>) {
        let mut cur = Cur::new(s, s.atoms());
        cur.i = 1;
        let example = "spot gate 5 m out, 2 m agl, public";
        let name = super::head::declared(cx, &mut cur, "a spot", example);
        let found = name.as_ref().and_then(|n| self.spot(cx, s, n.clone()));
        match found {
            Some(spot) if clean(cx, s, &SPOT) => self.read.push(spot),
            _ => self.unread.push(UnreadSpot {
                name: name.map_or_else(Box::default, |n| n.text),
                loc: cx.loc(s.head_span()),
            }),
        }
    }

    /// All of them, those that could be read first.
    pub(super) fn finish(self) -> (Box<[Spot]>, Box<[UnreadSpot]>) {
        (self.read.into(), self.unread.into())
    }

    fn spot<'a>(&self, cx: &mut Cx<'a>, s: Stmt<'a>, name: Name) -> Option<Spot> {
        if let Some(first) = self.read.iter().find(|x| x.name.text == name.text) {
            super::station::duplicate(cx, &name, &first.name.clone());
            return None;
        }
        let read = slots(cx, s, &SPOT);
        let loc = cx.loc(s.head_span());
        let at = place(cx, s, &read, &name)?;
        let tier =
            slot(&read, SpotSlot::Tier.id()).and_then(|(a, _)| Tier::from_word(cx.text(a.span)));
        if s.is_broken() {
            return None;
        }
        let Some(tier) = tier else {
            let question = format!(
                "Who can be at `{}`: `public` or `occupational`? Their limits differ by five in most rules.",
                name.text
            );
            without_tier(cx, loc, &question);
            return None;
        };
        Some(Spot {
            name,
            tier,
            at,
            loc,
        })
    }
}

/// A length that is not negative, m.
fn metres<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, a: &Atom, what: &str) -> Option<f64> {
    let v = cx.value(s, a)?;
    let v = cx.alone(&v, what);
    let m = cx.measure(&v, Dim::Length, what, "5 m")?.value;
    if m >= 0.0 && m.is_finite() {
        return Some(m);
    }
    let d = Diagnostic::new(
        &codes::IMPOSSIBLE_VALUE,
        v.loc,
        format!("{} is not negative.", crate::cx::capital(what)),
    )
    .at("cannot be");
    cx.push(d);
    None
}

/// Where a spot is.
fn place<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, read: &[Read<'a>], name: &Name) -> Option<SpotAt> {
    let from: Vec<_> = read.iter().filter(|r| r.0 == SpotSlot::From.id()).collect();
    let out = slot(read, SpotSlot::Out.id()).map(|r| r.0);
    let agl = slot(read, SpotSlot::Agl.id()).map(|r| r.0);
    if let (Some(_), Some((_, head, _))) = (out.or(agl), from.first()) {
        let d = Diagnostic::new(
            &codes::SPOT_WITHOUT_DISTANCE,
            cx.loc(head.span),
            format!(
                "`{}` is placed twice, from the mast and by its distance from an antenna.",
                name.text
            ),
        )
        .at("which of the two?")
        .help("Keep `out` and `agl`, or the distances from all antennas of the site.");
        cx.push(d);
        return None;
    }
    if let Some(out) = out {
        let Some(agl) = agl else {
            let c = Cur::new(s, s.atoms());
            let example = "spot gate 5 m out, 2 m agl, public";
            missing(
                cx,
                &c,
                "the height of the head above ground follows",
                example,
            );
            return None;
        };
        let out = metres(cx, s, out, "the distance from the mast")?;
        return Some(SpotAt::Beside(
            out,
            metres(cx, s, agl, "the height of the head")?,
        ));
    }
    let mut all = Vec::new();
    for (_, head, args) in from {
        let d = metres(cx, s, head, "the distance from an antenna")?;
        let antenna = name_of(cx, args.first()?);
        // the word `of` stands between the two names
        let other = args[1..].last().map(|a| name_of(cx, a));
        all.push((d, antenna, other));
    }
    (!all.is_empty()).then(|| SpotAt::From(all.into()))
}
