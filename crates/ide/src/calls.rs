//! Call hierarchy: what feeds a part, and what it feeds, along its chains.

use downlead_base::{Loc, Span};
use downlead_eval::Snapshot;
use downlead_station::model::{Branch, Chain, Meaning, Part, Station, Step};

use crate::names::NameKind;
use crate::resolve::{name_at, resolve};
use crate::symbols::SymbolKind;
use crate::view::{Doc, Place, View};

/// A part in the hierarchy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CallItem {
    /// Tag, or the kind of a part without one.
    pub name: String,
    /// Its statement.
    pub detail: String,
    /// Always a part.
    pub kind: SymbolKind,
    /// Its statement.
    pub place: Place,
    /// Its name in it; names it in later questions.
    pub focus: Place,
}

/// A neighbour and the lines of chains that say so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Call {
    /// The neighbour.
    pub item: CallItem,
    /// Lines of chains: the neighbour's for what feeds, the asked part's for what is fed.
    pub spans: Vec<Span>,
}

/// A line of a chain with its part.
#[derive(Clone, Copy)]
struct Stop<'m> {
    part: &'m Part,
    line: Loc,
}

/// The part at an offset.
#[must_use]
pub fn prepare_calls(s: &Snapshot, doc: Doc, offset: u32) -> Vec<CallItem> {
    let view = View::new(s);
    let focus = match name_at(s, doc, offset) {
        Some((placed, n)) if matches!(n.kind, NameKind::Tag | NameKind::Port) => {
            let tag = match n.kind {
                NameKind::Tag => resolve(s, doc, placed, &n),
                _ => {
                    // of `DU1.high`, the part before the dot
                    let at = n.span.start.saturating_sub(2);
                    name_at(s, doc, at)
                        .filter(|(_, t)| t.kind == NameKind::Tag)
                        .and_then(|(p, t)| resolve(s, doc, p, &t))
                }
            };
            tag.map(|d| d.focus())
        }
        _ => None,
    };
    let mut out = Vec::new();
    each_edge(s, doc, &mut |stop, _| {
        let item = item(&view, stop.part);
        let Some(item) = item else { return };
        let line = view.place(stop.line);
        let here = match focus {
            Some(f) => item.focus == f,
            // an untagged part: the cursor on its line
            None => line
                .is_some_and(|p| p.doc == doc && p.span.touches(offset) && stop.part.tag.is_none()),
        };
        if here && !out.contains(&item) {
            out.push(item);
        }
    });
    out
}

/// What feeds a part.
#[must_use]
pub fn incoming_calls(s: &Snapshot, item: Place) -> Vec<Call> {
    neighbours(s, item, true)
}

/// What a part feeds.
#[must_use]
pub fn outgoing_calls(s: &Snapshot, item: Place) -> Vec<Call> {
    neighbours(s, item, false)
}

fn neighbours(s: &Snapshot, of: Place, upstream: bool) -> Vec<Call> {
    let view = View::new(s);
    let mut out: Vec<Call> = Vec::new();
    each_edge(s, of.doc, &mut |stop, next| {
        let Some(next) = next else { return };
        let (asked, other) = if upstream { (next, stop) } else { (stop, next) };
        if item(&view, asked.part).is_none_or(|i| i.focus != of) {
            return;
        }
        let (Some(neighbour), Some(line)) = (item(&view, other.part), view.place(stop.line)) else {
            return;
        };
        match out.iter_mut().find(|c| c.item == neighbour) {
            Some(c) => {
                if !c.spans.contains(&line.span) {
                    c.spans.push(line.span);
                }
            }
            None => out.push(Call {
                item: neighbour,
                spans: vec![line.span],
            }),
        }
    });
    out
}

fn item(view: &View<'_>, part: &Part) -> Option<CallItem> {
    let place = view.place(part.loc)?;
    let focus = match &part.tag {
        Some(t) => view.place(t.loc)?,
        None => {
            let word = crate::view::to32(part.kind.word().len());
            Place {
                doc: place.doc,
                span: Span::new(
                    place.span.start,
                    (place.span.start + word).min(place.span.end),
                ),
            }
        }
    };
    let name = part
        .tag
        .as_ref()
        .map_or_else(|| part.kind.word().to_owned(), |t| t.text.to_string());
    Some(CallItem {
        name,
        detail: view.slice(place).trim().to_owned(),
        kind: SymbolKind::Part,
        place,
        focus,
    })
}

/// Calls `f` with every line of the chains of a document and the lines after it.
fn each_edge(s: &Snapshot, doc: Doc, f: &mut dyn FnMut(Stop<'_>, Option<Stop<'_>>)) {
    let Doc::File(file) = doc else { return };
    for scope in s.scopes().iter().filter(|x| x.file() == file) {
        for (_, low, _) in scope.items() {
            match &low.meaning {
                Meaning::Station(st) => st.chains.iter().for_each(|c| chain(c, Some(st), f)),
                Meaning::Chain(c) => chain(c, None, f),
                _ => {}
            }
        }
    }
}

fn chain<'m>(c: &'m Chain, st: Option<&'m Station>, f: &mut dyn FnMut(Stop<'_>, Option<Stop<'_>>)) {
    steps(&c.steps, st, None, f);
}

/// Walks the steps; `before` is the divider whose branch this is.
fn steps<'m>(
    list: &'m [Step],
    st: Option<&'m Station>,
    before: Option<Stop<'m>>,
    f: &mut dyn FnMut(Stop<'_>, Option<Stop<'_>>),
) {
    let mut last = before;
    let mut branches: &[Branch] = &[];
    for x in list {
        let (stop, inner): (Stop<'m>, &'m [Branch]) = match x {
            Step::Part { part, branches } => (
                Stop {
                    part,
                    line: part.loc,
                },
                branches,
            ),
            Step::Use {
                tag, loc, branches, ..
            } => {
                let found = st.and_then(|st| {
                    st.parts
                        .iter()
                        .find(|p| p.tag.as_ref().is_some_and(|t| t.text == tag.text))
                });
                match found {
                    Some(part) => (Stop { part, line: *loc }, branches),
                    None => {
                        last = None;
                        continue;
                    }
                }
            }
            Step::Node(..) => continue,
            Step::Broken(_) => {
                last = None;
                continue;
            }
        };
        if let Some(l) = last {
            f(l, Some(stop));
        }
        last = Some(stop);
        branches = inner;
    }
    if let Some(l) = last {
        if branches.is_empty() {
            f(l, None);
        }
        for b in branches {
            steps(&b.steps, st, Some(l), f);
        }
    }
}
