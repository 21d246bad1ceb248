//! `licence NAME { … }` and `rules NAME { … }`: clauses, what is fixed, questions, conditions.
//!
//! Reads by the table's own loop: what does not belong is reported by the check after lowering.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::Dim;
use downlead_syntax::{Atom, Stmt};

use super::head::{declared, no_keyword, unknown_statement};
use super::law::law;
use super::station::{angle, letter};
use crate::cx::{Cur, Cx, nearest};
use crate::forms::rules::{AnswerSlot, ClauseSlot, ExampleSlot, FixedSlot, StepSlot, UnderSlot};
use crate::forms::{self, Block, Form, Met, Reader, Slot};
use crate::keywords::Context;
use crate::model::{
    Amount, Answer, Ask, Clause, Condition, Confidence, Counted, Example, Fixed, FixedWhat,
    Frequencies, LimitQuantity, Name, PowerKind, RuleSet, StepRow, Under, Variable,
};
use crate::quals::missing;

/// One slot that was read: its number, what it begins with, what follows.
pub(super) type Read<'a> = (u8, &'a Atom, &'a [Atom]);

/// The slots of a line that can be read.
pub(super) fn slots<'a>(cx: &Cx<'a>, s: Stmt<'a>, form: &'static Form) -> Vec<Read<'a>> {
    let known = forms::Known {
        lets: cx.lets,
        places: &[],
    };
    let mut r = Reader::new(form, s, known);
    let mut out = Vec::new();
    while let Some(m) = r.next() {
        if let Met::Slot {
            slot: Slot { id, .. },
            head,
            args,
            ..
        } = m
        {
            out.push((*id, head, args));
        }
    }
    out
}

/// Whether the table of statements finds nothing wrong with a line.
pub(super) fn clean<'a>(cx: &Cx<'a>, s: Stmt<'a>, form: &'static Form) -> bool {
    let known = forms::Known {
        lets: cx.lets,
        places: &[],
    };
    let mut r = Reader::new(form, s, known);
    !s.is_broken() && std::iter::from_fn(|| r.next()).all(|m| !matches!(m, Met::Problem(_)))
}

pub(super) fn text_of(cx: &Cx<'_>, a: &Atom) -> Box<str> {
    cx.text(a.span).trim_matches('"').into()
}

pub(super) fn quoted(cx: &Cx<'_>, a: &Atom) -> Name {
    Name {
        text: text_of(cx, a),
        loc: cx.loc(a.span),
    }
}

pub(super) fn name_of(cx: &Cx<'_>, a: &Atom) -> Name {
    cx.name_at(a.span)
}

/// The slot of that number in what was read.
pub(super) fn slot<'a>(read: &[Read<'a>], id: u8) -> Option<(&'a Atom, &'a [Atom])> {
    read.iter().find(|r| r.0 == id).map(|r| (r.1, r.2))
}

/// A licence (true) or rules.
pub(super) fn rules<'a>(
    cx: &mut Cx<'a>,
    stmt: Stmt<'a>,
    cur: &mut Cur<'a>,
    licence: bool,
) -> Option<RuleSet> {
    let (what, example) = match licence {
        true => ("a licence", "licence tso-14-0093 { … }"),
        false => ("a set of rules", "rules thrennock-amateur { … }"),
    };
    let name = declared(cx, cur, what, example)?;
    let title = cur.string(cx);
    if !cur.done() {
        cur.unexpected(cx, &format!("the head of {what}"), &[]);
    }
    let Some(block) = stmt.block() else {
        missing(cx, cur, &format!("{what} has a block"), example);
        return None;
    };
    let mut set = RuleSet {
        licence,
        name,
        title,
        authority: None,
        jurisdiction: None,
        service: None,
        edition: None,
        dated: None,
        until: None,
        holder: None,
        classes: Box::default(),
        asks: Box::default(),
        clauses: Box::default(),
        fixed: Box::default(),
        conditions: Box::default(),
        exposure: Box::default(),
        reflection: None,
        fields: Box::default(),
        built_in: cx.built_in,
    };
    let lines = match forms::top().form(stmt.keyword()) {
        Some(form) => form.block,
        None => Block::None,
    };
    let (mut asks, mut clauses, mut fixed, mut conditions) =
        (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    let (mut exposure, mut fields) = (Vec::new(), Vec::new());
    for s in block.iter() {
        let Some(word) = s.keyword() else {
            no_keyword(cx, s, Context::Rules);
            continue;
        };
        let Some(form) = lines.form(Some(word)) else {
            unknown_statement(cx, s, word, Context::Rules);
            continue;
        };
        let read = slots(cx, s, form);
        let first = read.first().map(|r| r.1);
        let text = first.map(|a| text_of(cx, a));
        match word {
            "authority" => set.authority = text,
            "jurisdiction" => set.jurisdiction = text,
            "service" => set.service = text,
            "edition" => set.edition = text,
            "dated" => set.dated = text,
            "until" => set.until = text,
            "holder" => set.holder = text,
            "class" => set.classes = read.iter().map(|r| name_of(cx, r.1)).collect(),
            "ask" => {
                if let (Some(a), Some(text)) = (s.atoms().get(1), text) {
                    asks.push(Ask {
                        name: name_of(cx, a),
                        text,
                    });
                }
            }
            "condition" => conditions.extend(condition(cx, s, &read)),
            "fixed" => fixed.extend(fixed_line(cx, s, &read)),
            "field" => fields.extend(super::form::field(cx, s, &read)),
            "reflection" => {
                set.reflection = first.and_then(|a| super::exposure::reflection(cx, s, a))
            }
            "limit" if super::exposure::is_field(s) => {
                exposure.extend(super::exposure::clause(cx, s, (form, &read), licence));
            }
            _ => clauses.extend(clause(cx, s, form, &read, licence)),
        }
    }
    set.asks = asks.into();
    set.clauses = clauses.into();
    set.fixed = fixed.into();
    set.exposure = exposure.into();
    set.fields = fields.into();
    set.conditions = conditions.into();
    names(cx, &set);
    Some(set)
}

fn condition<'a>(cx: &Cx<'a>, s: Stmt<'a>, read: &[Read<'a>]) -> Option<Condition> {
    let mut texts = read.iter().map(|r| quoted(cx, r.1));
    Some(Condition {
        text: texts.next()?.text,
        cite: texts.next(),
        loc: cx.loc(s.head_span()),
    })
}

fn fixed_line<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, read: &[Read<'a>]) -> Option<Fixed> {
    let mut what = None;
    let mut dim = Dim::Length;
    if let Some((_, args)) = slot(read, FixedSlot::Position.id()) {
        let mut c = Cur::new(s, args);
        let lat = angle(cx, &mut c)?;
        let south = letter(cx, &mut c, ["N", "S"])?;
        let lon = angle(cx, &mut c)?;
        let west = letter(cx, &mut c, ["E", "W"])?;
        let sign = |negative: bool, x: f64| if negative { -x } else { x };
        let datum = slot(read, FixedSlot::Datum.id()).map(|(a, _)| text_of(cx, a));
        what = Some(FixedWhat::Position(
            sign(south, lat),
            sign(west, lon),
            datum,
        ));
    } else if let Some((_, args)) = slot(read, FixedSlot::Height.id()) {
        let m = figure(cx, s, args.first()?, Dim::Length, "a height", "26 m agl")?;
        let of = args.get(3).map(|a| name_of(cx, a));
        what = Some(FixedWhat::Height(m, of));
    } else if let Some((_, args)) = slot(read, FixedSlot::Frequency.id()) {
        dim = Dim::Frequency;
        let hz = figure(cx, s, args.first()?, dim, "a frequency", "146.9137 MHz")?;
        what = Some(FixedWhat::Frequency(hz));
    }
    let what = what?;
    let within = match slot(read, FixedSlot::Within.id()) {
        Some((_, args)) => {
            let example = if dim == Dim::Length { "0.5 m" } else { "1 kHz" };
            figure(cx, s, args.first()?, dim, "how far it may be off", example)?
        }
        None => {
            if !s.is_broken() {
                let d = Diagnostic::new(
                    &codes::MISSING_VALUE,
                    cx.loc(s.head_span()),
                    "How far may it be off? Without that every last digit would count.",
                )
                .at("`within` is missing")
                .help("Written for example `fixed height 26 m agl of A1, within 0.5 m, \"clause 6\"`.");
                cx.push(d);
            }
            return None;
        }
    };
    Some(Fixed {
        what,
        within,
        cite: slot(read, FixedSlot::Cite.id()).map(|(a, _)| quoted(cx, a)),
        loc: cx.loc(s.head_span()),
    })
}

/// One plain figure of a kind, above zero where it is a frequency.
pub(super) fn figure<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    a: &'a Atom,
    dim: Dim,
    what: &str,
    example: &str,
) -> Option<f64> {
    let v = cx.value(s, a)?;
    let v = cx.alone(&v, what);
    cx.measure(&v, dim, what, example).map(|m| m.value)
}

/// `on 144 MHz to 148 MHz`, `on 2m 70cm`.
pub(super) fn frequencies<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    args: &'a [Atom],
) -> Option<Frequencies> {
    let first = args.first()?;
    let value = match first.kind {
        downlead_syntax::AtomKind::Value(_) => s.value(*first),
        _ => None,
    };
    let ranged = value.as_ref().is_some_and(|v| v.upper().is_some());
    let hertz = ranged
        || value
            .and_then(|v| v.number())
            .and_then(|n| n.unit)
            .is_some_and(|u| downlead_quantity::unit(u).dim == Dim::Frequency);
    if !hertz {
        return Some(Frequencies::Bands(
            args.iter().map(|a| name_of(cx, a)).collect(),
        ));
    }
    let v = cx.value(s, first)?;
    if ranged {
        let (low, high) = super::band::frequency_range(cx, &v, "where a clause holds")?;
        return Some(Frequencies::Range(low, high));
    }
    let low = cx.measure(
        &v,
        Dim::Frequency,
        "where a clause holds",
        "144 MHz to 148 MHz",
    )?;
    Some(Frequencies::Range(low.value, low.value))
}

/// A clause without frequencies holds everywhere; one whose range cannot be read holds nowhere, and that is
/// said here or by the table.
pub(super) fn without_range<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Frequencies> {
    let Some(on) = s.atoms().iter().position(|a| cx.text(a.span) == "on") else {
        return Some(Frequencies::All);
    };
    let range = s.atoms().get(on + 1)?;
    let ranged = s.value(*range).is_some_and(|v| v.upper().is_some());
    if let Some(v) = ranged.then(|| cx.value(s, range)).flatten() {
        cx.unit_on_one_end(&v, &[Dim::Frequency]);
    }
    None
}

#[allow(clippy::too_many_lines, reason = "one line with many slots")]
fn clause<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    form: &'static Form,
    read: &[Read<'a>],
    licence: bool,
) -> Option<Clause> {
    let loc = cx.loc(s.head_span());
    let had = cx.diags.len();
    let at = |id: ClauseSlot| slot(read, id.id());
    let word = |id: ClauseSlot| slot(read, id.id()).map(|(a, _)| cx.text(a.span));
    let counted = word(ClauseSlot::Counted).map(|w| match w {
        "erp" => Counted::Power(LimitQuantity::Erp),
        "eirp" => Counted::Power(LimitQuantity::Eirp),
        "output" => Counted::Power(LimitQuantity::Output),
        _ => Counted::DcInput,
    });
    let kind = word(ClauseSlot::Kind).and_then(|w| {
        [PowerKind::Carrier, PowerKind::Pep, PowerKind::Mean]
            .into_iter()
            .find(|k| k.word() == w)
    });
    let asks = at(ClauseSlot::If).and_then(|(_, a)| Some(name_of(cx, a.first()?)));
    let date = |id: ClauseSlot| at(id).and_then(|(_, a)| Some(text_of(cx, a.first()?)));
    let (since, until) = (date(ClauseSlot::Since), date(ClauseSlot::Until));
    let all = |id: u8| {
        read.iter()
            .filter(move |r| r.0 == id)
            .filter_map(|r| r.2.first())
    };
    let instead = all(ClauseSlot::Instead.id())
        .map(|a| quoted(cx, a))
        .collect();
    let classes = all(ClauseSlot::Class.id())
        .map(|a| name_of(cx, a))
        .collect();
    let cite = at(ClauseSlot::Cite).map(|(a, _)| quoted(cx, a));
    let confidence = at(ClauseSlot::Confidence)
        .and_then(|(_, a)| Confidence::from_word(cx.text(a.first()?.span)));
    let duty = date(ClauseSlot::Then);
    let bound = [(ClauseSlot::Above, true), (ClauseSlot::Below, false)]
        .into_iter()
        .find_map(|(id, above)| {
            let (_, args) = at(id)?;
            let v = Variable::from_word(cx.text(args.get(1)?.span))?;
            Some((v, above, *args.first()?))
        });
    let bound = match bound {
        Some((v, above, a)) => {
            // the atom itself stands in the statement
            let a = s.atoms().iter().find(|x| x.span == a.span)?;
            Some((
                v,
                above,
                figure(cx, s, a, Dim::Length, "a height", "7 m haat")?,
            ))
        }
        None => None,
    };
    let on = match at(ClauseSlot::On) {
        Some((_, args)) => frequencies(cx, s, args)?,
        None => without_range(cx, s)?,
    };
    let head = at(ClauseSlot::Value).map(|(a, _)| a);
    let main = match head {
        Some(a) => Some(law(cx, s, a)?),
        None => None,
    };
    let (steps, examples) = block(cx, s, form);
    let amount = match (main, steps) {
        (Some(law), None) => Amount::Law(law),
        (None, Some(steps)) => {
            let (v, rows) = ordered(cx, steps)?;
            Amount::Steps(v, rows)
        }
        (Some(_), Some(steps)) => {
            let d = Diagnostic::new(
                &codes::RULE_STEPS,
                steps[0].loc,
                "The clause states a power already; its steps say another.",
            )
            .at("two powers")
            .also(loc, "the clause")
            .help("Write the power in the steps only: `limit erp … { haat to 150 m 60 W }`.");
            cx.push(d);
            return None;
        }
        // said by the table, or by the line itself
        (None, None) => return None,
    };
    let Some(counted) = counted else {
        if cx.diags.len() == had && !s.is_broken() {
            without_quantity(cx, s, head, loc);
        }
        return None;
    };
    if s.is_broken() {
        return None;
    }
    // after a word that means nothing here the rest of the group is not read
    if clean(cx, s, form) {
        needs_source(cx, loc, cite.is_some(), confidence.is_some() || licence);
    }
    let is_threshold = s.keyword() == Some("threshold");
    Some(Clause {
        loc,
        duty: match is_threshold {
            true => Some(duty.unwrap_or_default()),
            false => None,
        },
        counted,
        kind,
        total: at(ClauseSlot::Total).is_some(),
        amount,
        on,
        classes,
        bound,
        allocated: at(ClauseSlot::Allocated).is_some(),
        asks,
        since,
        until,
        instead,
        cite,
        confidence,
        examples,
    })
}

/// Asks for the citation of a clause, and how sure its text is.
pub(super) fn needs_source(cx: &mut Cx<'_>, loc: Loc, cited: bool, sure: bool) {
    if !cited {
        let d = Diagnostic::new(
            &codes::LIMIT_WITHOUT_SOURCE,
            loc,
            "This clause names no citation.",
        )
        .at("where is it written?")
        .help("Add it in quotes: `limit 30 W erp, \"clause 4\"`.");
        cx.push(d);
    }
    if !sure {
        let end = Loc::new(loc.item, Span::new(loc.span.end, loc.span.end));
        let mut d = Diagnostic::new(
            &codes::RULE_WITHOUT_CONFIDENCE,
            loc,
            "How sure is this text? Rules that others wrote are judged by what was read of them.",
        )
        .at("`confidence` is missing")
        .help("`high`: the text was seen. `medium`: a source that cites it. `low`: from memory; it only warns.");
        for w in ["high", "medium", "low"] {
            d = d.fix(
                format!("write `confidence {w}`"),
                end,
                format!(", confidence {w}"),
            );
        }
        cx.push(d);
    }
}

fn without_quantity<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, head: Option<&Atom>, loc: Loc) {
    let after = head.map_or_else(
        || {
            let word = s.atoms().first().map_or(loc.span, |a| a.span);
            word.end
        },
        |a| a.span.end,
    );
    let end = Loc::new(loc.item, Span::new(after, after));
    let mut d = Diagnostic::new(
        &codes::RULE_WITHOUT_QUANTITY,
        head.map_or(loc, |a| cx.loc(a.span)),
        "A rule says which power it means: `output` (at the transmitter), `erp`, `eirp`. 1 W ERP is 1.64 W EIRP.",
    )
    .at("which power?");
    for w in ["erp", "eirp", "output"] {
        d = d.fix(format!("write `{w}`"), end, format!(" {w}"));
    }
    cx.push(d);
}

/// A step as read.
struct Step {
    variable: Variable,
    above: bool,
    edge: f64,
    law: crate::model::Law,
    loc: Loc,
}

/// Steps and worked examples in the block of a clause.
fn block<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    form: &'static Form,
) -> (Option<Vec<Step>>, Box<[Example]>) {
    let (mut steps, mut examples) = (Vec::new(), Vec::new());
    for line in s.block().into_iter().flat_map(|b| b.iter()) {
        let Some(f) = form.block.form(line.keyword()) else {
            match line.keyword() {
                Some(w) => unknown_statement(cx, line, w, Context::Clause),
                None => no_keyword(cx, line, Context::Clause),
            }
            continue;
        };
        let read = slots(cx, line, f);
        match line.keyword() {
            Some(w @ ("passes" | "fails")) => {
                examples.extend(example(cx, line, &read, w == "passes"));
            }
            Some(w) => {
                if let Some(v) = Variable::from_word(w) {
                    steps.extend(step(cx, line, &read, v));
                }
            }
            None => {}
        }
    }
    ((!steps.is_empty()).then_some(steps), examples.into())
}

fn step<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, read: &[Read<'a>], variable: Variable) -> Option<Step> {
    let (above, args) = match slot(read, StepSlot::Above.id()) {
        Some((_, args)) => (true, args),
        None => (false, slot(read, StepSlot::To.id())?.1),
    };
    let example = match variable.dim() {
        Dim::Frequency => "3 kHz",
        _ => "150 m",
    };
    Some(Step {
        variable,
        above,
        edge: figure(
            cx,
            s,
            args.first()?,
            variable.dim(),
            variable.noun(),
            example,
        )?,
        law: law(cx, s, args.get(1)?)?,
        loc: cx.loc(s.head_span()),
    })
}

/// Steps in order, without a gap: `to` rows that rise, and at most one `above` that begins where the
/// last one ends.
fn ordered(cx: &mut Cx<'_>, steps: Vec<Step>) -> Option<(Variable, Box<[StepRow]>)> {
    let first = steps.first()?;
    let variable = first.variable;
    let edge = |x: f64| match variable.dim() {
        Dim::Frequency => downlead_quantity::frequency(x),
        _ => format!("{} m", downlead_quantity::number(x, 3)),
    };
    let mut last: Option<(f64, Loc)> = None;
    let mut closed = false;
    let mut rows = Vec::new();
    for s in &steps {
        let wrong = if s.variable != variable {
            Some(format!(
                "These steps go by {}, and this one by {}.",
                variable.noun(),
                s.variable.noun()
            ))
        } else if closed {
            Some("Nothing comes after `above`: it has no end.".to_owned())
        } else {
            match (s.above, last) {
                (true, Some((end, _))) if s.edge > end => Some(format!(
                    "Steps end at {} and begin again at {}: nothing is said between.",
                    edge(end),
                    edge(s.edge)
                )),
                (true, Some((end, _))) if s.edge < end => Some(format!(
                    "The step above {} overlaps the one that ends at {}.",
                    edge(s.edge),
                    edge(end)
                )),
                (false, Some((end, _))) if s.edge <= end => Some(format!(
                    "The step to {} comes after the one to {}: write them in rising order.",
                    edge(s.edge),
                    edge(end)
                )),
                _ => None,
            }
        };
        if let Some(message) = wrong {
            let mut d = Diagnostic::new(&codes::RULE_STEPS, s.loc, message).at("this step");
            if let Some((_, before)) = last {
                d = d.also(before, "the step before");
            }
            cx.push(d);
            return None;
        }
        closed |= s.above;
        rows.push(StepRow {
            to: if s.above { f64::INFINITY } else { s.edge },
            law: s.law.clone(),
        });
        last = Some((s.edge, s.loc));
    }
    Some((variable, rows.into()))
}

fn example<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, read: &[Read<'a>], passes: bool) -> Option<Example> {
    let (value, _) = slot(read, ExampleSlot::Value.id())?;
    let v = cx.value(s, value)?;
    let v = cx.alone(&v, "a worked example");
    let watts = cx.power(&v, "a worked example", "24.7 W")?.value;
    let (_, args) = slot(read, ExampleSlot::At.id())?;
    let hz = figure(
        cx,
        s,
        args.first()?,
        Dim::Frequency,
        "its frequency",
        "146.9 MHz",
    )?;
    let mut known = Vec::new();
    for (id, variable) in [
        (ExampleSlot::Haat, Variable::Haat),
        (ExampleSlot::Height, Variable::Height),
        (ExampleSlot::Distance, Variable::Distance),
        (ExampleSlot::Radius, Variable::Radius),
        (ExampleSlot::Bandwidth, Variable::Bandwidth),
    ] {
        if let Some((_, args)) = slot(read, id.id()) {
            let x = figure(
                cx,
                s,
                args.first()?,
                variable.dim(),
                variable.noun(),
                "30 m",
            )?;
            known.push((variable, x));
        }
    }
    Some(Example {
        passes,
        watts,
        hz,
        known: known.into(),
        loc: cx.loc(s.head_span()),
    })
}

/// Names within the set: citations that are replaced, classes, questions.
fn names(cx: &mut Cx<'_>, set: &RuleSet) {
    let cites: Vec<&str> = set
        .clauses
        .iter()
        .filter_map(|c| c.cite.as_ref())
        .map(|c| &*c.text)
        .collect();
    for c in &set.clauses {
        for i in &c.instead {
            if cites.contains(&&*i.text) {
                continue;
            }
            let mut d = Diagnostic::new(
                &codes::UNKNOWN_CITATION,
                i.loc,
                format!("No row of {} is cited \"{}\".", set.name.text, i.text),
            )
            .at("no such citation");
            if let Some(n) = nearest(&i.text, cites.iter().copied()) {
                d = d.help(format!("Near is \"{n}\".")).fix(
                    format!("write \"{n}\""),
                    i.loc,
                    format!("\"{n}\""),
                );
            }
            cx.push(d);
        }
        let classes = || set.classes.iter().map(|c| &*c.text);
        for k in &c.classes {
            if !classes().any(|n| n == &*k.text) {
                unknown(cx, k, "class", &set.name.text, classes().collect(), "class");
            }
        }
        if let Some(q) = &c.asks {
            let asks = || set.asks.iter().map(|a| &*a.name.text);
            if !asks().any(|n| n == &*q.text) {
                unknown(cx, q, "question", &set.name.text, asks().collect(), "ask");
            }
        }
    }
}

fn unknown(cx: &mut Cx<'_>, name: &Name, what: &str, set: &str, known: Vec<&str>, word: &str) {
    let mut d = Diagnostic::new(
        &codes::UNKNOWN_IN_RULES,
        name.loc,
        format!("There is no {what} `{}` in {set}.", name.text),
    )
    .at("not defined there");
    d = match nearest(&name.text, known.iter().copied()) {
        Some(n) => d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), name.loc, n),
        None if known.is_empty() => d.help(format!("It is defined by a line `{word} …` there.")),
        None => d.help(format!("There are: {}.", known.join(", "))),
    };
    cx.push(d);
}

/// `under NAME, class full { … }` in a station.
pub(super) fn under<'a>(cx: &mut Cx<'a>, s: Stmt<'a>) -> Option<Under> {
    let form = &forms::rules::UNDER;
    let Some(name) = s.atoms().get(1).map(|a| name_of(cx, a)) else {
        let c = Cur::new(s, s.atoms());
        missing(cx, &c, "the licence or rules follow", "under tso-14-0093");
        return None;
    };
    let read = slots(cx, s, form);
    let classes = read
        .iter()
        .filter_map(|(id, head, args)| {
            if *id == UnderSlot::Reflection.id() {
                return None;
            }
            let a = if *id == UnderSlot::Class.id() {
                args.first()?
            } else {
                head
            };
            Some(name_of(cx, a))
        })
        .collect();
    let reflection = slot(&read, UnderSlot::Reflection.id())
        .and_then(|(_, args)| super::exposure::reflection(cx, s, args.first()?));
    let (mut answers, mut known, mut allocated) = (Vec::new(), Vec::new(), Vec::new());
    for row in s.block().into_iter().flat_map(|b| b.iter()) {
        let Some(f) = form.block.form(row.keyword()) else {
            continue;
        };
        let read = slots(cx, row, f);
        let by = slot(&read, AnswerSlot::By.id()).map(|(a, _)| text_of(cx, a));
        if let Some((a, args)) = slot(&read, AnswerSlot::Answer.id())
            && let Some(said) = args.first()
        {
            answers.push(Answer {
                name: name_of(cx, a),
                yes: cx.text(said.span) == "yes",
                by,
            });
            continue;
        }
        if let Some((_, args)) = slot(&read, AnswerSlot::Allocated.id()) {
            allocated.extend(frequencies(cx, row, args));
        }
        for (id, v) in [
            (AnswerSlot::Radius, Variable::Radius),
            (AnswerSlot::Distance, Variable::Distance),
            (AnswerSlot::Bandwidth, Variable::Bandwidth),
        ] {
            if let Some((_, args)) = slot(&read, id.id())
                && let Some(a) = args.first()
                && let Some(x) = figure(cx, row, a, v.dim(), v.noun(), "16 km")
            {
                known.push((v, x));
            }
        }
    }
    Some(Under {
        name,
        classes,
        reflection,
        answers: answers.into(),
        known: known.into(),
        allocated: allocated.into(),
        loc: cx.loc(s.head_span()),
    })
}

/// The newest date of a statement and its block.
pub(super) fn newest(s: Stmt<'_>) -> Option<Box<str>> {
    fn of<'a>(s: Stmt<'a>, best: &mut &'a str) {
        for a in s.atoms() {
            if a.kind == downlead_syntax::AtomKind::Date && s.text(*a) > *best {
                *best = s.text(*a);
            }
        }
        s.block()
            .into_iter()
            .flat_map(|b| b.iter())
            .for_each(|s| of(s, best));
    }
    let mut best = "";
    of(s, &mut best);
    (!best.is_empty()).then(|| best.into())
}
