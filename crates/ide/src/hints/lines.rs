//! What gathers on the lines of a document, and what is common to all hints.

use std::collections::BTreeMap;

use downlead_base::{Loc, Span};
use downlead_eval::result::{BandResult, ChainResult};
use downlead_station::model::{Meaning, PartData, Step};
use rustc_hash::{FxHashMap, FxHashSet};

use crate::config::{Config, HintDetails};
use crate::inlay::{InlayHint, LabelPart};
use crate::status::Status;
use crate::view::{Doc, Place, TextEdit, View, line_end, newline};

/// What gathers on one line.
#[derive(Default)]
pub(super) struct Line {
    pub(super) parts: Vec<LabelPart>,
    pub(super) tooltip: Vec<String>,
    pub(super) pins: Vec<String>,
    /// Whether these are left for later.
    pub(super) more: bool,
}

/// Between what two statements on one line come to.
const BESIDE: &str = " · ";

impl Line {
    pub(super) fn push(
        &mut self,
        text: impl Into<String>,
        tooltip: Option<String>,
        target: Option<Place>,
    ) {
        self.parts.push(LabelPart {
            text: text.into(),
            tooltip,
            target,
        });
    }

    pub(super) fn word(&mut self, text: impl Into<String>) {
        let text = text.into();
        match self.parts.last_mut() {
            _ if text.is_empty() => {}
            // words alone run on
            Some(last) if last.tooltip.is_none() && last.target.is_none() => {
                last.text.push_str(&text)
            }
            _ => self.push(text, None, None),
        }
    }
}

pub(super) struct Hints<'v, 's> {
    pub(super) view: &'v View<'s>,
    pub(super) doc: Doc,
    pub(super) text: &'s str,
    pub(super) range: Span,
    pub(super) c: &'v Config,
    pub(super) lines: BTreeMap<u32, Line>,
    /// Ends of lines on which several statements have something to show.
    pub(super) shared: FxHashSet<u32>,
    /// What the hints say of each statement, on each band.
    pub(super) judged: Vec<(Loc, Status)>,
}

impl Hints<'_, '_> {
    /// The tooltip of a piece, as far as it is wanted now.
    pub(super) fn tip(&self, words: impl FnOnce() -> String) -> Option<String> {
        match self.c.hint_details {
            HintDetails::Now => Some(words()),
            HintDetails::Later => Some(String::new()),
            HintDetails::Never => None,
        }
    }

    /// Whether the tooltip of a line is wanted now; if later, notes that there is one.
    pub(super) fn explains(&mut self, end: u32) -> bool {
        match self.c.hint_details {
            HintDetails::Now => true,
            HintDetails::Later => {
                self.at(end).more = true;
                false
            }
            HintDetails::Never => false,
        }
    }

    pub(super) fn at(&mut self, offset: u32) -> &mut Line {
        self.lines.entry(offset).or_default()
    }

    /// Notes the lines on which several statements of an item stand, `J1; IS1`.
    pub(super) fn shared(&mut self, chains: &[ChainResult]) {
        let mut first: FxHashMap<u32, Loc> = FxHashMap::default();
        let places = chains.iter().flat_map(|c| {
            let nodes = c.bands.iter().flat_map(|b| b.nodes.iter());
            let nodes = nodes.filter(|n| !n.kind.is_join());
            std::iter::once(c.loc).chain(nodes.flat_map(|n| [n.chain, n.def]))
        });
        for loc in places {
            if let Some(end) = self.end_of(loc)
                && *first.entry(end).or_insert(loc) != loc
            {
                self.shared.insert(end);
            }
        }
    }

    /// The line of a statement; where several stand on it, what follows is set off and named.
    pub(super) fn begin(&mut self, end: u32, name: &str) -> &mut Line {
        let shared = self.shared.contains(&end);
        let line = self.lines.entry(end).or_default();
        if !line.parts.is_empty() {
            line.push(BESIDE, None, None);
        }
        if shared && !name.is_empty() {
            line.word(format!("{name} "));
        }
        line
    }

    /// End of the line where a location ends; none outside the range.
    pub(super) fn end_of(&self, loc: Loc) -> Option<u32> {
        let p = self.view.place(loc).filter(|p| p.doc == self.doc)?;
        let end = line_end(self.text, p.span.end);
        (self.range.start <= end && end <= self.range.end).then_some(end)
    }

    fn bands<'c>(&self, chain: &'c ChainResult) -> Vec<&'c BandResult> {
        chain
            .bands
            .iter()
            .filter(|b| self.c.shows(&b.band))
            .collect()
    }

    pub(super) fn chain(&mut self, chain: &ChainResult, meaning: &Meaning) {
        let bands = self.bands(chain);
        if bands.is_empty() {
            return;
        }
        self.head(chain, &bands);
        // the first band has the lines; the others have the same ones
        let broken = broken(meaning);
        let mut seen = FxHashSet::default();
        for b in &bands {
            for n in b
                .nodes
                .iter()
                .filter(|n| !n.kind.is_join() && !broken.contains(&n.def))
            {
                if seen.insert(n.chain) {
                    self.part(chain, &bands, n.chain);
                }
            }
        }
        if self.c.hints.limits {
            self.limits(&bands);
        }
        if self.c.hints.readings {
            self.readings(&bands);
            self.logs(&bands);
            self.expectations(chain, &bands, meaning);
        }
    }

    pub(super) fn finish(self) -> Vec<InlayHint> {
        let nl = newline(self.text);
        self.lines
            .into_iter()
            .filter(|(_, l)| l.parts.iter().any(|p| !p.text.trim().is_empty()))
            .map(|(offset, l)| {
                let text: String = l.pins.iter().map(|p| format!("{nl}{p}")).collect();
                let edits = if text.is_empty() {
                    Vec::new()
                } else {
                    vec![TextEdit {
                        doc: self.doc,
                        span: Span::new(offset, offset),
                        text,
                    }]
                };
                let gap = if self.c.markdown { "  \n" } else { "\n" };
                InlayHint {
                    offset,
                    parts: l.parts,
                    tooltip: l.tooltip.join(gap),
                    more: l.more,
                    edits,
                    pad_left: true,
                }
            })
            .collect()
    }
}

/// A band's name before its numbers, where there are several.
pub(super) fn label(b: &BandResult, many: bool) -> String {
    if !many && b.point.is_none() {
        return String::new();
    }
    match b.point {
        Some(p) => format!("{} {p} ", b.band),
        None => format!("{} ", b.band),
    }
}

/// Two at most: all, or the first and the last.
pub(super) fn ends<T: Copy>(rows: &[T]) -> Vec<T> {
    match rows {
        [] | [_] | [_, _] => rows.to_vec(),
        [first, .., last] => vec![*first, *last],
    }
}

pub(super) fn separator(index: usize, count: usize) -> &'static str {
    match (index, count) {
        (0, _) => "",
        (_, 2) => " | ",
        _ => " … ",
    }
}

/// Parts whose statements could not be understood: nothing is known of them.
fn broken(meaning: &Meaning) -> FxHashSet<Loc> {
    fn steps(s: &[Step], out: &mut FxHashSet<Loc>) {
        for x in s {
            if let Step::Part { part, .. } = x
                && part.data == PartData::Broken
            {
                out.insert(part.loc);
            }
            if let Step::Part { branches, .. } | Step::Use { branches, .. } = x {
                branches.iter().for_each(|b| steps(&b.steps, out));
            }
        }
    }
    let mut out = FxHashSet::default();
    match meaning {
        Meaning::Station(st) => {
            out.extend(
                st.parts
                    .iter()
                    .filter(|p| p.data == PartData::Broken)
                    .map(|p| p.loc),
            );
            st.chains.iter().for_each(|c| steps(&c.steps, &mut out));
        }
        Meaning::Chain(c) => steps(&c.steps, &mut out),
        _ => {}
    }
    out
}
