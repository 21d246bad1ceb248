//! Inverse questions at the cursor: the largest power that keeps a limit, the longest cable that
//! keeps an expectation, what two readings say about the part between them.

use downlead_base::{Loc, Span};
use downlead_eval::result::{BandResult, ChainResult, NodeResult, ReadingResult, Verdict};
use downlead_eval::{Scope, Snapshot};
use downlead_quantity::{Dim, UnitId, db, from_db, number, power, sig, to_db, unit, w_to_dbm};
use downlead_station::model::{
    Basis, Device, Expect, Figure, LimitQuantity, LineLength, Meaning, Part, PartData, ReadPower,
    Step, When,
};
use downlead_syntax::{AtomKind, ExprKind, Number};

use crate::rename::item_with_edits;
use crate::resolve::statement_of;
use crate::view::{Action, ActionKind, Doc, Place, TextEdit, View, doc_text, line_end, line_start};

/// What the cursor's line asks.
struct Ask<'a, 's> {
    view: &'a View<'s>,
    doc: Doc,
    lines: Span,
}

impl Ask<'_, '_> {
    fn on(&self, loc: Loc) -> bool {
        self.view.place(loc).is_some_and(|p| {
            p.doc == self.doc && p.span.start <= self.lines.end && self.lines.start <= p.span.end
        })
    }
}

/// Inverse questions for the lines a range touches.
pub(super) fn questions(s: &Snapshot, doc: Doc, range: Span, out: &mut Vec<Action>) {
    let Doc::File(file) = doc else { return };
    let view = View::new(s);
    let text = doc_text(s, doc);
    let ask = Ask {
        view: &view,
        doc,
        lines: Span::new(line_start(text, range.start), line_end(text, range.end)),
    };
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (item, low, result) in scope.items() {
            if !ask.on(Loc::new(item.id, Span::new(0, item.len))) {
                continue;
            }
            for chain in &result.chains {
                powers(&ask, low, chain, out);
                lengths(&ask, s, scope, &low.meaning, chain, out);
                readings(&ask, &low.meaning, chain, out);
            }
        }
    }
}

fn parts(meaning: &Meaning) -> Vec<&Part> {
    fn steps<'m>(list: &'m [Step], out: &mut Vec<&'m Part>) {
        for x in list {
            match x {
                Step::Part { part, branches } => {
                    out.push(part);
                    branches.iter().for_each(|b| steps(&b.steps, out));
                }
                Step::Use { branches, .. } => branches.iter().for_each(|b| steps(&b.steps, out)),
                _ => {}
            }
        }
    }
    let mut out = Vec::new();
    match meaning {
        Meaning::Station(st) => {
            out.extend(st.parts.iter());
            st.chains.iter().for_each(|c| steps(&c.steps, &mut out));
        }
        Meaning::Chain(c) => steps(&c.steps, &mut out),
        _ => {}
    }
    out
}

/// The number a location begins with, if it is one.
fn number_at(view: &View<'_>, loc: Loc) -> Option<(TextEdit, Number)> {
    let (place, item, stmt) = statement_of(view, loc)?;
    let atom = stmt
        .atoms()
        .iter()
        .find(|a| a.span.start == loc.span.start && matches!(a.kind, AtomKind::Value(_)))?;
    let ExprKind::Number(n) = stmt.value(*atom)?.expr().kind() else {
        return None;
    };
    let span = n.digits.join(n.unit_span).shift(item.start);
    Some((
        TextEdit {
            doc: place.doc,
            span,
            text: String::new(),
        },
        n,
    ))
}

/// Watts in the unit of a number as written, rounded down to three digits.
fn power_like(watts: f64, id: UnitId) -> Option<String> {
    let u = unit(id);
    Some(match u.dim {
        Dim::Power => {
            let v = u.from_base(watts);
            let step = libm::pow(10.0, libm::floor(libm::log10(v)) - 2.0);
            format!(
                "{} {}",
                sig(libm::floor(v / step + 1e-9) * step, 3),
                u.symbol()
            )
        }
        Dim::Level => format!(
            "{:.2} {}",
            libm::floor(u.from_base(w_to_dbm(watts)) * 100.0) / 100.0,
            u.symbol()
        ),
        _ => return None,
    })
}

/// At a limit: the transmitter power that just keeps it, the uncertainty allowed for.
fn powers(
    ask: &Ask<'_, '_>,
    low: &downlead_station::Lowered,
    chain: &ChainResult,
    out: &mut Vec<Action>,
) {
    let asked: Vec<Loc> = chain
        .bands
        .iter()
        .flat_map(|b| b.limits.iter().map(|l| l.loc))
        .filter(|l| ask.on(*l))
        .collect();
    let Some(first) = asked.first() else { return };
    let parts = parts(&low.meaning);
    // one figure may feed several bands: the strictest counts
    let mut best: Vec<(Loc, f64, Verdict, String)> = Vec::new();
    for b in &chain.bands {
        let Some(feed) = b.nodes.first().filter(|n| n.kind.sends()) else {
            continue;
        };
        let Some(part) = parts.iter().find(|p| p.loc == feed.def) else {
            continue;
        };
        let Some(t) = part.data.transmitter() else {
            continue;
        };
        let figure = t
            .power
            .iter()
            .map(|p| &p.0)
            .find(|f| matches!(&f.when, When::Bands(n) if n.iter().any(|n| n.text == b.band)))
            .or_else(|| {
                t.power
                    .iter()
                    .map(|p| &p.0)
                    .find(|f| f.when == When::Always)
            });
        let Some(figure) = figure else { continue };
        for l in b.limits.iter().filter(|l| l.loc == *first) {
            let Some(safe) = l.safe_w.filter(|w| *w > 0.0) else {
                continue;
            };
            let name = part
                .tag
                .as_ref()
                .map_or_else(|| "the transmitter".to_owned(), |t| t.text.to_string());
            match best.iter_mut().find(|x| x.0 == figure.loc) {
                Some(x) if safe < x.1 => *x = (figure.loc, safe, l.verdict, name),
                Some(_) => {}
                None => best.push((figure.loc, safe, l.verdict, name)),
            }
        }
    }
    for (loc, watts, verdict, name) in best {
        let Some((mut edit, n)) = number_at(ask.view, loc) else {
            continue;
        };
        let Some(text) = n.unit.and_then(|u| power_like(watts, u)) else {
            continue;
        };
        edit.text.clone_from(&text);
        let met = verdict == Verdict::Yes;
        let title = if met {
            format!(
                "Turn {name} up to `{text}`, the most that keeps the limit with its uncertainty"
            )
        } else {
            format!(
                "Turn {name} down to `{text}`, the most that keeps the limit with its uncertainty"
            )
        };
        let mut a = Action::new(
            title,
            if met {
                ActionKind::Rewrite
            } else {
                ActionKind::QuickFix
            },
            vec![edit],
        );
        if !met {
            a.codes = vec!["limit-not-met", "limit-cannot-tell"];
            a.finding = ask.view.place(*first).map(|p| p.span);
        }
        out.push(a);
    }
}

/// What an expectation asks at least, W, and the value in a result.
fn wanted(e: &Expect, b: &BandResult, at: Loc) -> Option<(f64, f64)> {
    let node = b
        .nodes
        .iter()
        .filter(|n| n.chain.span.start <= at.span.start)
        .max_by_key(|n| n.chain.span.start)?;
    // in dB: how much less loss is wanted, and what may be lost still
    Some(match e {
        Expect::Power(..) | Expect::Loss(..) if !node.power_known => return None,
        Expect::Power(w, half) => (to_db(node.power_w / w), *half),
        Expect::Loss(l, half) => (l - node.cumulative_db, *half),
        Expect::Radiated(LimitQuantity::Eirp, w, half, _) => (to_db(b.eirp_w? / w), *half),
        Expect::Radiated(_, w, half, _) => (to_db(b.erp_w()? / w), *half),
        Expect::Swr(..) => return None,
    })
}

/// The spare dB of an expectation on its worst band; negative when it is missed by loss.
fn spare(
    s: &Snapshot,
    file: usize,
    line: Loc,
    view: &View<'_>,
    after: Option<(&Snapshot, u32)>,
) -> Option<f64> {
    let (which, shift) = after.map_or((s, 0), |(a, d)| (a, d));
    let place = view.place(line)?;
    // after an edit above it the statement stands elsewhere
    let want = place.span.start.checked_add_signed(shift.cast_signed())?;
    let path = &s.files().get(file)?.path;
    let file = which.files().iter().position(|f| f.path == *path)?;
    let seen = View::new(which);
    let mut worst: Option<f64> = None;
    for scope in which.scopes().iter().filter(|x| x.file() == file) {
        for (_, low, r) in scope.items() {
            for c in &r.chains {
                for (loc, e) in low.meaning.expectations(c.loc) {
                    if seen.place(loc).is_none_or(|p| p.span.start != want) {
                        continue;
                    }
                    for b in &c.bands {
                        if let Some((d, half)) = wanted(e, b, loc) {
                            let x = d + half;
                            worst = Some(worst.map_or(x, |w: f64| w.min(x)));
                        }
                    }
                }
            }
        }
    }
    worst.filter(|w| w.is_finite())
}

/// At an expectation: the longest the main cable before it may be.
fn lengths(
    ask: &Ask<'_, '_>,
    s: &Snapshot,
    scope: &Scope,
    meaning: &Meaning,
    chain: &ChainResult,
    out: &mut Vec<Action>,
) {
    for (loc, _) in meaning.expectations(chain.loc) {
        if !ask.on(loc) {
            continue;
        }
        let Some(have) = spare(s, scope.file(), loc, ask.view, None) else {
            continue;
        };
        // the cable that loses most before the statement
        let all = parts(meaning);
        let cable = chain
            .bands
            .iter()
            .flat_map(|b| b.nodes.iter())
            .filter(|n| n.chain.span.start < loc.span.start && n.kind.is_line())
            .max_by(|a, b| a.loss_db.total_cmp(&b.loss_db));
        let Some(node) = cable else { continue };
        let Some(part) = all.iter().find(|p| p.loc == node.def) else {
            continue;
        };
        let PartData::Line(l) = &part.data else {
            continue;
        };
        let Some(LineLength::Metres(m)) = l.length else {
            continue;
        };
        let Some((edit, n)) = number_at(ask.view, l.length_loc) else {
            continue;
        };
        let Some(id) = n.unit else { continue };
        let rate = node.loss_db / m.value;
        if rate.is_nan() || rate <= 0.0 {
            continue;
        }
        let search = Search {
            s,
            scope,
            ask,
            loc,
            edit,
            unit: id,
        };
        let found = search.longest(m.value + have / rate, rate);
        let name = part.tag.as_ref().map_or_else(
            || format!("the {}", part.kind.word()),
            |t| t.text.to_string(),
        );
        let Some(edit) = found else { continue };
        let missed = have < 0.0;
        let title = format!("Make {name} `{}`, the longest that keeps this", edit.text);
        let kind = match missed {
            true => ActionKind::QuickFix,
            false => ActionKind::Rewrite,
        };
        let mut a = Action::new(title, kind, vec![edit]);
        if missed {
            a.codes = vec!["expectation-missed"];
            a.finding = ask.view.place(loc).map(|p| p.span);
        }
        out.push(a);
    }
}

/// The search for a length that keeps an expectation.
struct Search<'a> {
    s: &'a Snapshot,
    scope: &'a Scope,
    ask: &'a Ask<'a, 'a>,
    /// The expectation.
    loc: Loc,
    /// The edit of the length's number.
    edit: TextEdit,
    /// Unit of the length as written.
    unit: UnitId,
}

impl Search<'_> {
    /// The longest length that keeps the expectation, from a first estimate in m and the loss per
    /// metre, dB: checked and at most twice corrected by the evaluation itself.
    fn longest(&self, mut metres: f64, rate: f64) -> Option<TextEdit> {
        let u = unit(self.unit);
        for _ in 0..3 {
            if metres.is_nan() || metres <= 0.0 {
                return None;
            }
            let v = u.from_base(metres);
            let step = libm::pow(10.0, libm::floor(libm::log10(v)) - 2.0);
            let rounded = libm::floor(v / step + 1e-9) * step;
            let tried = TextEdit {
                text: format!("{} {}", number(rounded, 4), u.symbol()),
                ..self.edit.clone()
            };
            let left = self.spare_with(&tried)?;
            if left >= -1e-9 {
                return Some(tried);
            }
            metres += left / rate - 0.5 * step * u.factor;
        }
        None
    }

    /// What the expectation has to spare, dB, with an edit made.
    fn spare_with(&self, edit: &TextEdit) -> Option<f64> {
        let file = self.scope.file();
        let moved = crate::view::to32(edit.text.len()).wrapping_sub(edit.span.len());
        let above = self
            .ask
            .view
            .place(self.loc)
            .is_some_and(|p| p.span.start > edit.span.start && p.doc == edit.doc);
        let after = item_with_edits(self.s, file, self.loc.item, std::slice::from_ref(edit));
        let shift = if above { moved } else { 0 };
        spare(self.s, file, self.loc, self.ask.view, Some((&after, shift)))
    }
}

/// A reading with what it says.
struct Seen<'r> {
    result: &'r ReadingResult,
    date: Option<String>,
    with: Option<String>,
    by: Option<String>,
}

/// Between two readings on one instrument stands one part: its loss as read instead of the sheet's.
fn readings(ask: &Ask<'_, '_>, meaning: &Meaning, chain: &ChainResult, out: &mut Vec<Action>) {
    for b in &chain.bands {
        let mut list: Vec<Seen<'_>> = b
            .readings
            .iter()
            .filter(|r| r.power == Some(ReadPower::Forward) || r.power == Some(ReadPower::Net))
            .map(|r| {
                let meta = meaning.reading_meta(r.loc);
                Seen {
                    result: r,
                    date: meta.and_then(|m| m.date.as_ref()).map(ToString::to_string),
                    with: meta
                        .and_then(|m| m.instrument.as_ref())
                        .map(|i| i.text.to_string()),
                    by: meta
                        .and_then(|m| m.person.as_ref())
                        .map(ToString::to_string),
                }
            })
            .collect();
        list.sort_by_key(|x| x.result.loc.span.start);
        for w in list.windows(2) {
            if let [first, second] = w
                && let Some(pair) = pair(ask, b, first, second)
                && let Some(part) = parts(meaning).into_iter().find(|p| p.loc == pair.node.def)
            {
                let bands = match meaning {
                    Meaning::Station(_) if !b.band.contains(' ') => true,
                    _ => chain.bands.len() > 1,
                };
                out.extend(pair.action(ask, b, part, bands));
            }
        }
    }
}

/// Two readings on one instrument with one part between them.
struct Pair<'r> {
    first: &'r Seen<'r>,
    second: &'r Seen<'r>,
    node: &'r NodeResult,
    /// Loss of the part as read, dB: that between the readings less that of the joins.
    measured_db: f64,
}

fn pair<'r>(
    ask: &Ask<'_, '_>,
    b: &'r BandResult,
    first: &'r Seen<'r>,
    second: &'r Seen<'r>,
) -> Option<Pair<'r>> {
    if first.with.is_none()
        || first.with != second.with
        || first.result.power != second.result.power
    {
        return None;
    }
    let (from, to) = (first.result.loc.span.start, second.result.loc.span.start);
    let (joins, between): (Vec<&NodeResult>, Vec<&NodeResult>) = b
        .nodes
        .iter()
        .filter(|n| from < n.chain.span.start && n.chain.span.start < to)
        .partition(|n| n.kind.is_join());
    let joins: f64 = joins.iter().map(|n| n.loss_db).sum();
    let [node] = between[..] else { return None };
    let places = [node.chain, node.def, first.result.loc, second.result.loc];
    places.into_iter().any(|l| ask.on(l)).then(|| Pair {
        first,
        second,
        node,
        measured_db: to_db(first.result.read / second.result.read) - joins,
    })
}

impl Pair<'_> {
    /// The edit that writes the loss as read; `bands`: whether it has to say its band.
    fn action(
        &self,
        ask: &Ask<'_, '_>,
        b: &BandResult,
        part: &Part,
        bands: bool,
    ) -> Option<Action> {
        let name = part.tag.as_ref().map_or_else(
            || format!("the {}", part.kind.word()),
            |t| t.text.to_string(),
        );
        match &part.data {
            PartData::Device(d) => self.replaced(ask, b, d, &name),
            PartData::Line(l) if l.cable.is_some() && l.added.is_empty() => {
                let p = ask.view.place(part.loc)?;
                let on = match bands {
                    true => format!(" on {}", b.band),
                    false => String::new(),
                };
                self.added(p, &on, &name)
            }
            _ => None,
        }
    }

    /// A device's loss, replaced by what was read.
    fn replaced(
        &self,
        ask: &Ask<'_, '_>,
        b: &BandResult,
        d: &Device,
        name: &str,
    ) -> Option<Action> {
        let port = self.node.port().map(|p| ask.view.text(p));
        let figures = d
            .ports
            .iter()
            .find(|p| port.map_or(p.name.text.is_empty(), |q| *p.name.text == *q))
            .map_or(&[][..], |p| &p.loss);
        let f = the_figure(figures, &b.band).filter(|f| f.meta.basis != Basis::Read)?;
        let place = ask.view.place(f.loc).filter(|_| self.measured_db > 0.0)?;
        let loss = db(self.measured_db);
        let mut edits = vec![TextEdit {
            doc: place.doc,
            span: place.span,
            text: loss.clone(),
        }];
        edits.extend(replace_source(ask.view, f.loc, &said(self.second)));
        Some(Action::new(
            format!("Replace the loss of {name} by `{loss}`, as read"),
            ActionKind::Rewrite,
            crate::view::tidy(edits),
        ))
    }

    /// What a line loses beyond its cable's table, where the meter could tell it.
    fn added(&self, p: Place, on: &str, name: &str) -> Option<Action> {
        let more = self.measured_db - self.node.loss_db;
        let (first, second) = (self.first.result, self.second.result);
        if more <= second.uncertainty_db.max(first.uncertainty_db) || from_db(more) <= 1.0 {
            return None;
        }
        Some(Action::new(
            format!(
                "Add {} to {name}, as read ({} for {})",
                db(more),
                power(second.read),
                power(second.expected)
            ),
            ActionKind::Rewrite,
            vec![TextEdit {
                doc: p.doc,
                span: Span::new(p.span.end, p.span.end),
                text: format!(", added {}{on}", db(more)),
            }],
        ))
    }
}

fn said(x: &Seen<'_>) -> String {
    let mut t = "read".to_owned();
    if let Some(d) = &x.date {
        t.push_str(&format!(" {d}"));
    }
    if let Some(w) = &x.with {
        t.push_str(&format!(" with {w}"));
    }
    if let Some(b) = &x.by {
        t.push_str(&format!(" by {b}"));
    }
    t
}

fn the_figure<'f>(figures: &'f [Figure], band: &str) -> Option<&'f Figure> {
    let on = figures
        .iter()
        .find(|f| matches!(&f.when, When::Bands(n) if n.iter().any(|n| &*n.text == band)));
    on.or_else(|| figures.iter().find(|f| f.when == When::Always))
}

/// Puts `read …` in the place of the group that says where the figure was from, or behind all.
fn replace_source(view: &View<'_>, loc: Loc, said: &str) -> Option<TextEdit> {
    let (place, item, stmt) = statement_of(view, loc)?;
    for g in stmt.groups().skip(1) {
        if matches!(
            stmt.text(*g.first()?),
            "sheet" | "guess" | "rated" | "displayed" | "typical" | "maximum"
        ) {
            let span = g.first()?.span.join(g.last()?.span).shift(item.start);
            return Some(TextEdit {
                doc: place.doc,
                span,
                text: said.to_owned(),
            });
        }
    }
    let end = stmt.head_span().shift(item.start).end;
    Some(TextEdit {
        doc: place.doc,
        span: Span::new(end, end),
        text: format!(", {said}"),
    })
}
