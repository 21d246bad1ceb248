//! Inlay hints: what each line comes to, at its end.
//!
//! One hint a line, so that positions never jump while values change; numbers are padded so that
//! the width stays.

mod aligned;
mod lines;
mod parts;
mod radiated;
mod rules;
mod site;
mod verdicts;

use std::collections::BTreeMap;

use downlead_base::{Loc, Span};
use downlead_eval::{Evaluated, Snapshot};
use downlead_station::model::Meaning;
use rustc_hash::FxHashSet;

use crate::cables;
use crate::config::{Config, HintDetails};
use crate::inlay::InlayHint;
use crate::status::Status;
use crate::view::{Doc, View, doc_text};
use lines::Hints;
pub(crate) use parts::in_short;

/// The hint of one line with all its details, for an editor that asks for them later.
#[must_use]
pub fn hint_at(s: &Snapshot, doc: Doc, offset: u32, c: &Config) -> Option<InlayHint> {
    let c = Config {
        hint_details: HintDetails::Now,
        ..c.clone()
    };
    inlay_hints(s, doc, Span::new(offset, offset), &c)
        .into_iter()
        .next()
}

/// The hints of a document whose line ends lie in `range`.
#[must_use]
pub fn inlay_hints(s: &Snapshot, doc: Doc, range: Span, c: &Config) -> Vec<InlayHint> {
    let by_item = HintsByItem::new(s, doc, c);
    let mut out = by_item.of_cables(range);
    for (start, item) in by_item.items() {
        if start + item.0.len >= range.start && start <= range.end {
            out.extend(by_item.of_item(item, range));
        }
    }
    out.sort_by_key(|h| h.offset);
    out
}

/// The hints of a document item by item: those of an item depend on nothing but its text, its
/// meaning and its results, so that a caller that asks often can keep them.
pub struct HintsByItem<'s> {
    view: View<'s>,
    doc: Doc,
    c: Config,
}

impl<'s> HintsByItem<'s> {
    /// Of a document.
    #[must_use]
    pub fn new(s: &'s Snapshot, doc: Doc, c: &Config) -> Self {
        HintsByItem {
            view: View::new(s),
            doc,
            c: c.clone(),
        }
    }

    /// Offset and results of each item that can have hints of its own, in the order of the text.
    pub fn items(&self) -> impl Iterator<Item = (u32, &'s Evaluated)> {
        let file = match self.doc {
            Doc::File(file) if self.c.hints.enabled => Some(file),
            _ => None,
        };
        let scopes = self.view.s.scopes().iter();
        scopes
            .filter(move |x| Some(x.file()) == file)
            .flat_map(|x| x.items())
            .filter(|item| {
                let r = &item.2;
                !r.chains.is_empty()
                    || r.session.is_some()
                    || r.link.is_some()
                    || r.exposure.is_some()
            })
            .filter_map(|item| {
                let whole = Loc::new(item.0.id, Span::new(0, item.0.len));
                Some((self.view.place(whole)?.span.start, item))
            })
    }

    /// The hints of an item whose line ends lie in `range`; of the whole item, give its own.
    #[must_use]
    pub fn of_item(&self, item: &Evaluated, range: Span) -> Vec<InlayHint> {
        self.shown(item, range).finish()
    }

    /// What the hints of an item judge, statement by statement and band by band.
    pub(crate) fn judged(&self, item: &Evaluated) -> Vec<(Loc, Status)> {
        self.shown(item, Span::new(0, u32::MAX)).judged
    }

    fn shown(&self, item: &Evaluated, range: Span) -> Hints<'_, 's> {
        let (_, low, result) = item;
        let mut h = self.begin(range);
        h.shared(&result.chains);
        for chain in &result.chains {
            h.chain(chain, &low.meaning);
        }
        h.definitions(&result.chains);
        if h.c.hints.limits {
            h.rules(&result.chains);
            h.spots_and_hops(&low.meaning, result);
            if let Some(site) = &result.site {
                h.site(site);
            }
        }
        if let (Some(r), Meaning::Session(s)) = (&result.session, &low.meaning)
            && self.c.hints.readings
        {
            h.session(s, r);
        }
        h
    }

    /// The hints at the heads of cables: these depend on the frequencies in use in the whole text.
    #[must_use]
    pub fn of_cables(&self, range: Span) -> Vec<InlayHint> {
        if !self.c.hints.enabled || !self.c.hints.cables {
            return Vec::new();
        }
        let mut h = self.begin(range);
        for (offset, line) in cables::heads(&self.view, self.doc, range, &self.c) {
            h.at(offset).parts.extend(line);
        }
        h.finish()
    }

    fn begin(&self, range: Span) -> Hints<'_, 's> {
        Hints {
            view: &self.view,
            doc: self.doc,
            text: doc_text(self.view.s, self.doc),
            range,
            c: &self.c,
            lines: BTreeMap::new(),
            shared: FxHashSet::default(),
            judged: Vec::new(),
        }
    }
}
