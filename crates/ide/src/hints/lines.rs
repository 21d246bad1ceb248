//! What gathers on the lines of a document, and what is common to all hints.

use std::collections::BTreeMap;

use downlead_base::{Loc, Span};
use downlead_eval::result::{BandResult, ChainResult, NodeResult};
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

    /// Adds a piece; words alone run on.
    pub(super) fn put(&mut self, part: LabelPart) {
        match part.tooltip.is_none() && part.target.is_none() {
            true => self.word(part.text),
            false => self.parts.push(part),
        }
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
        let text = self.text;
        let aligned = self.c.aligned;
        let mut out: Vec<InlayHint> = self
            .lines
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
                let (parts, whole) = shorten(l.parts);
                let details = self.c.hint_details;
                let whole = whole.filter(|_| details != HintDetails::Never);
                let more = l.more || whole.is_some() && details == HintDetails::Later;
                let whole = whole.filter(|_| details == HintDetails::Now);
                let tooltip: Vec<String> = whole.into_iter().chain(l.tooltip).collect();
                InlayHint {
                    offset,
                    parts,
                    tooltip: tooltip.join(gap),
                    more,
                    edits,
                    pad_left: true,
                }
            })
            .collect();
        if aligned {
            super::aligned::align(text, &mut out);
        }
        out
    }
}

/// A band's name before its numbers, where there are several.
pub(super) fn label(b: &BandResult, many: bool) -> String {
    if !many && b.point.is_none() {
        return String::new();
    }
    format!("{} ", b.place())
}

/// A hint is at most so many characters long; what does not fit is in its tooltip.
pub(super) const LONGEST: usize = 60;

/// Whether several bands show the same figures.
pub(super) fn alike(rows: &[(String, Vec<LabelPart>)]) -> bool {
    let text = |r: &(String, Vec<LabelPart>)| -> String {
        let parts = r.1.iter().map(|p| p.text.as_str());
        parts.collect()
    };
    rows.len() > 1 && rows.iter().skip(1).all(|r| text(r) == text(&rows[0]))
}

/// Characters of the figures of several bands beside each other.
pub(super) fn width(rows: &[(String, Vec<LabelPart>)]) -> usize {
    let parts = rows
        .iter()
        .flat_map(|r| &r.1)
        .map(|p| p.text.chars().count());
    let labels = rows.iter().map(|r| r.0.chars().count());
    parts.chain(labels).sum::<usize>() + 3 * rows.len().saturating_sub(1)
}

/// Two rows at most, by index: all, or the last and the first, in whose place stands the band that
/// is nearest to a limit.
pub(super) fn chosen(rows: &[(&BandResult, &NodeResult)], bands: &[&BandResult]) -> Vec<usize> {
    let last = rows.len().saturating_sub(1);
    if rows.len() <= 2 {
        return (0..rows.len()).collect();
    }
    let margin = |b: &&BandResult| b.limits.iter().map(|l| l.margin_db).min_by(f64::total_cmp);
    let nearest = bands.iter().filter_map(|b| Some((margin(b)?, *b)));
    let nearest = nearest.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, b)| b);
    let at = rows
        .iter()
        .position(|r| nearest.is_some_and(|n| std::ptr::eq(n, r.0)));
    let mut out = vec![at.filter(|i| *i != last).unwrap_or(0), last];
    out.sort_unstable();
    out
}

/// The parts that fit, with a sign that there is more; and the whole text if it was cut.
fn shorten(mut parts: Vec<LabelPart>) -> (Vec<LabelPart>, Option<String>) {
    let count = |parts: &[LabelPart]| parts.iter().map(|p| p.text.chars().count()).sum::<usize>();
    if count(&parts) <= LONGEST {
        return (parts, None);
    }
    let whole: String = parts.iter().map(|p| p.text.as_str()).collect();
    // of several statements the last ones say what comes out of it
    if let Some(first) = parts.iter().position(|p| p.text == BESIDE) {
        let mut from = first;
        while count(&parts[from..]) > LONGEST - 1
            && let Some(next) = parts[from + 1..].iter().position(|p| p.text == BESIDE)
        {
            from += next + 1;
        }
        if count(&parts[from..]) < LONGEST {
            parts.drain(..from);
            parts[0].text.insert(0, '…');
            return (parts, Some(whole));
        }
    }
    while parts.len() > 1 && count(&parts) > LONGEST - 2 {
        parts.pop();
    }
    if count(&parts) > LONGEST - 2
        && let Some(last) = parts.last_mut()
    {
        let kept: String = last.text.chars().take(LONGEST - 2).collect();
        let end = kept.rfind([',', ';', '|']).or_else(|| kept.rfind(' '));
        last.text = kept[..end.unwrap_or(kept.len())].to_owned();
    }
    if let Some(last) = parts.last_mut() {
        let bare = last.text.trim_end_matches([' ', ',', ';', '|', '·']);
        last.text.truncate(bare.len());
        last.text.push_str(" …");
    }
    (parts, Some(whole))
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
