//! Inlay hints: what each line comes to, at its end.
//!
//! One hint a line, so that positions never jump while values change; numbers are padded so that
//! the width stays.

use std::collections::BTreeMap;

use downlead_base::{Loc, Span};
use downlead_eval::bench::result::SessionResult;
use downlead_eval::result::{
    BandResult, ChainResult, LimitResult, NodeResult, ReadingResult, Verdict,
};
use downlead_eval::{Evaluated, Snapshot};
use downlead_quantity::{db, decibel_signed, number, power, power_dbm};
use downlead_station::model::{Direction, Expect, LimitQuantity, Meaning, Node, PartData, Step};
use downlead_station::session::Session;
use rustc_hash::{FxHashMap, FxHashSet};

use crate::bench::{self, Shown};
use crate::cables;
use crate::config::{Config, HintDetails};
use crate::status::Status;
use crate::view::{Doc, Place, TextEdit, View, doc_text, indent, line_end, line_start, newline};
use crate::words::{both, padded, plus_minus, under_or_over};

/// A hint at the end of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InlayHint {
    /// Where: the end of the line.
    pub offset: u32,
    /// Its text in pieces.
    pub parts: Vec<LabelPart>,
    /// More about it.
    pub tooltip: String,
    /// Whether a tooltip or edits were left for later.
    pub more: bool,
    /// Edits that pin the shown value as an assertion; may be empty.
    pub edits: Vec<TextEdit>,
    /// Whether a blank stands before it.
    pub pad_left: bool,
}

/// A piece of a hint.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabelPart {
    /// Text.
    pub text: String,
    /// More about it; empty if it is left for later.
    pub tooltip: Option<String>,
    /// Where a click leads.
    pub target: Option<Place>,
}

impl InlayHint {
    /// The whole text.
    #[must_use]
    pub fn text(&self) -> String {
        self.parts.iter().map(|p| p.text.as_str()).collect()
    }
}

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

/// A piece of cable, and the bands it is used on with its loss there in dB.
type Uses<'r> = (&'r NodeResult, Vec<(&'r BandResult, f64)>);

/// What gathers on one line.
#[derive(Default)]
struct Line {
    parts: Vec<LabelPart>,
    tooltip: Vec<String>,
    pins: Vec<String>,
    /// Whether these are left for later.
    more: bool,
}

/// Between what two statements on one line come to.
const BESIDE: &str = " · ";

impl Line {
    fn push(&mut self, text: impl Into<String>, tooltip: Option<String>, target: Option<Place>) {
        self.parts.push(LabelPart {
            text: text.into(),
            tooltip,
            target,
        });
    }

    fn word(&mut self, text: impl Into<String>) {
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
/// meaning and its results, so that whoever asks again and again can keep them.
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
            .filter(|item| !item.2.chains.is_empty() || item.2.session.is_some())
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

struct Hints<'v, 's> {
    view: &'v View<'s>,
    doc: Doc,
    text: &'s str,
    range: Span,
    c: &'v Config,
    lines: BTreeMap<u32, Line>,
    /// Ends of lines on which several statements have something to show.
    shared: FxHashSet<u32>,
    /// What the hints say of each statement, on each band.
    judged: Vec<(Loc, Status)>,
}

impl Hints<'_, '_> {
    /// The tooltip of a piece, as far as it is wanted now.
    fn tip(&self, words: impl FnOnce() -> String) -> Option<String> {
        match self.c.hint_details {
            HintDetails::Now => Some(words()),
            HintDetails::Later => Some(String::new()),
            HintDetails::Never => None,
        }
    }

    /// Whether the tooltip of a line is wanted now; if later, notes that there is one.
    fn explains(&mut self, end: u32) -> bool {
        match self.c.hint_details {
            HintDetails::Now => true,
            HintDetails::Later => {
                self.at(end).more = true;
                false
            }
            HintDetails::Never => false,
        }
    }

    fn at(&mut self, offset: u32) -> &mut Line {
        self.lines.entry(offset).or_default()
    }

    /// Notes the lines on which several statements of an item stand, `J1; IS1`.
    fn shared(&mut self, chains: &[ChainResult]) {
        let mut first: FxHashMap<u32, Loc> = FxHashMap::default();
        let places = chains.iter().flat_map(|c| {
            let nodes = c.bands.iter().flat_map(|b| b.nodes.iter());
            let nodes = nodes.filter(|n| n.kind != "join");
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
    fn begin(&mut self, end: u32, name: &str) -> &mut Line {
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
    fn end_of(&self, loc: Loc) -> Option<u32> {
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

    fn chain(&mut self, chain: &ChainResult, meaning: &Meaning) {
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
                .filter(|n| n.kind != "join" && !broken.contains(&n.def))
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

    fn head(&mut self, chain: &ChainResult, bands: &[&BandResult]) {
        if !self.c.hints.loss {
            return;
        }
        let Some(end) = self.end_of(chain.loc) else {
            return;
        };
        let complete: Vec<&BandResult> = bands.iter().copied().filter(|b| b.complete).collect();
        if complete.is_empty() {
            self.begin(end, "").word("incomplete");
            return;
        }
        let many = chain.bands.len() > 1;
        let line = self.begin(end, "");
        line.word("loss ");
        for (i, b) in ends(&complete).into_iter().enumerate() {
            line.word(separator(i, complete.len()));
            line.push(format!("{}{}", label(b, many), db(b.total_db)), None, None);
        }
        if !self.explains(end) {
            return;
        }
        let line = self.at(end);
        for b in &complete {
            let worst = b.worst_db.map_or_else(String::new, |w| {
                format!(", {} to {} over all phases", db(w[0]), db(w[1]))
            });
            line.tooltip.push(format!(
                "{}: loss {}{worst}",
                label(b, true).trim(),
                db(b.total_db)
            ));
        }
    }

    fn part(&mut self, chain: &ChainResult, bands: &[&BandResult], loc: Loc) {
        if !(self.c.hints.loss || self.c.hints.power || self.c.hints.radiated) {
            return;
        }
        let Some(end) = self.end_of(loc) else { return };
        let rows: Vec<(&BandResult, &NodeResult)> = bands
            .iter()
            .filter_map(|b| {
                Some((
                    *b,
                    b.nodes
                        .iter()
                        .find(|n| n.chain == loc && n.kind != "join")?,
                ))
            })
            .collect();
        let Some((_, first)) = rows.first() else {
            return;
        };
        let many = chain.bands.len() > 1;
        let receive = chain.direction == Direction::Receive;
        let kinds = self.c.hints;
        let target = self.view.place(first.def);
        let target = target.filter(|_| first.def != first.chain);
        let count = rows.len();
        let name = match self.shared.contains(&end) {
            true => name(self.view, first),
            false => String::new(),
        };
        self.begin(end, &name);
        for (i, (b, n)) in ends(&rows).into_iter().enumerate() {
            let so_far = self.tip(|| match n.power_known {
                true => format!("loss of this part; {} so far", db(n.cumulative_db)),
                false => "loss of this part; what stands before is not all known".to_owned(),
            });
            let behind = self.tip(|| match receive {
                true => "level here when the receiver just gets what it needs".to_owned(),
                false => format!(
                    "net power behind it: {}{}",
                    both(n.power_w),
                    plus_minus(n.uncertainty_db)
                ),
            });
            let line = self.at(end);
            line.word(separator(i, count));
            line.word(label(b, many));
            let mut before = false;
            let Some(figures) = Figures::of(n, receive) else {
                line.word(LOSS_NOT_KNOWN);
                continue;
            };
            if let Some(loss) = figures.loss.filter(|_| kinds.loss) {
                line.push(format!("{} dB", padded(&loss, 5)), so_far, target);
                before = true;
            }
            if let Some(value) = figures.power.filter(|_| kinds.power) {
                let arrow = if before { " → " } else { "→ " };
                line.push(format!("{arrow}{}", padded(&value, 7)), behind, None);
            }
            if kinds.radiated {
                self.radiated(end, b, n, receive);
            }
        }
        if !self.explains(end) {
            return;
        }
        let fits = self.can_pin(loc, end);
        let indent = indent(self.text, line_start(self.text, end));
        let line = self.at(end);
        for (b, n) in &rows {
            line.tooltip.push(row(b, n, receive));
            if !receive && fits && n.power_w > 0.0 && n.power_known && b.complete {
                // a frequency that is no band cannot be named behind `on`
                let named = !many || is_name(&b.band);
                if named && b.point.is_none() {
                    let on = if many {
                        format!(" on {}", b.band)
                    } else {
                        String::new()
                    };
                    line.pins.push(pin(indent, b, n, &on));
                }
            }
        }
    }

    fn radiated(&mut self, end: u32, b: &BandResult, n: &NodeResult, receive: bool) {
        if receive {
            if n.kind == "receiver"
                && let Some(level) = b.sensitivity_dbm
            {
                let nf = b
                    .noise_figure_db
                    .map_or_else(String::new, |f| format!(", noise figure {}", db(f)));
                self.at(end)
                    .word(format!(", at the antenna {level:.1} dBm{nf}"));
            }
            return;
        }
        if n.kind != "antenna" || !b.branches.is_empty() {
            return;
        }
        let (Some(erp), Some(eirp)) = (b.erp_w(), b.eirp_w) else {
            return;
        };
        let rest = match b.complete {
            true => plus_minus(b.uncertainty_db),
            false => ", without what is not known".to_owned(),
        };
        let text = format!("ERP {}, EIRP {}{rest}", power(erp), power(eirp));
        let more = self.tip(|| {
            format!(
                "ERP {}, EIRP {}, gain {} dBi",
                both(erp),
                both(eirp),
                number(b.gain_dbi.unwrap_or(0.0), 2)
            )
        });
        let line = self.at(end);
        if !line.parts.is_empty() {
            line.word(", ");
        }
        line.push(text, more, None);
    }

    /// Whether a statement may be put below a line: it has no block, and nothing pinned there yet.
    fn can_pin(&self, loc: Loc, end: u32) -> bool {
        let Some(p) = self.view.place(loc) else {
            return false;
        };
        let tail = self
            .text
            .get(p.span.end as usize..end as usize)
            .unwrap_or("{");
        let next = self.text.get(end as usize..).unwrap_or("").trim_start();
        !tail.contains(['{', ';', '}']) && !next.starts_with("expect ")
    }

    fn limits(&mut self, bands: &[&BandResult]) {
        let mut seen = FxHashSet::default();
        let all: Vec<(&BandResult, &LimitResult)> = bands
            .iter()
            .flat_map(|b| b.limits.iter().map(move |l| (*b, l)))
            .collect();
        for (_, l) in &all {
            if !seen.insert(l.loc) {
                continue;
            }
            let rows: Vec<_> = all.iter().filter(|r| r.1.loc == l.loc).collect();
            let Some(end) = self.end_of(l.loc) else {
                continue;
            };
            self.begin(end, "");
            let judged = rows.iter().map(|(_, l)| (l.loc, l.verdict.into()));
            self.judged.extend(judged);
            // the worst one first: it decides
            let mut shown = rows.clone();
            shown.sort_by(|a, b| a.1.margin_db.total_cmp(&b.1.margin_db));
            let many = rows.len() > 1;
            for (i, (b, l)) in shown.iter().take(2).enumerate() {
                let value = self.tip(|| {
                    format!(
                        "{} is {}, the limit {}",
                        l.quantity.word().to_uppercase(),
                        both(l.value_w),
                        both(l.limit_w)
                    )
                });
                let line = self.at(end);
                if i > 0 {
                    line.word(", ");
                }
                let verdict = match l.verdict {
                    Verdict::Yes => "met",
                    Verdict::No => "not met",
                    Verdict::CannotTell => "cannot tell",
                };
                line.push(
                    format!(
                        "{}{verdict}: {}{}",
                        label(b, many),
                        under_or_over(l.margin_db),
                        plus_minus(l.uncertainty_db)
                    ),
                    value,
                    None,
                );
            }
            if !self.explains(end) {
                continue;
            }
            let line = self.at(end);
            for (b, l) in rows {
                let mut t = format!(
                    "{}: {} {} against {}: {}{}",
                    label(b, true).trim(),
                    l.quantity.word().to_uppercase(),
                    both(l.value_w),
                    power(l.limit_w),
                    under_or_over(l.margin_db),
                    plus_minus(l.uncertainty_db)
                );
                if let Some(w) = l.safe_w.filter(|_| l.verdict != Verdict::Yes) {
                    t.push_str(&format!(
                        "; met beyond doubt at a transmitter power of {}",
                        power(w)
                    ));
                }
                line.tooltip.push(t);
            }
        }
    }

    fn readings(&mut self, bands: &[&BandResult]) {
        let all: Vec<(&BandResult, &ReadingResult)> = bands
            .iter()
            .flat_map(|b| b.readings.iter().map(move |r| (*b, r)))
            .collect();
        let many = bands.len() > 1;
        let mut count: BTreeMap<u32, usize> = BTreeMap::new();
        for (b, r) in &all {
            let Some(end) = self.end_of(r.loc) else {
                continue;
            };
            self.judged.push((r.loc, r.verdict.into()));
            let nth = count.entry(end).or_default();
            *nth += 1;
            if *nth == 1 {
                self.begin(end, "");
            }
            let (word, note) = match r.verdict {
                Verdict::Yes => ("agrees", "the meter could have told a fault of 1 dB"),
                Verdict::No => ("differs", "further off than the doubt of both"),
                Verdict::CannotTell => (
                    "cannot tell",
                    "the doubt is too large for the meter to have told",
                ),
            };
            let show = |x: f64| {
                if r.power.is_some() {
                    power(x)
                } else {
                    format!("SWR {}", number(x, 2))
                }
            };
            if *nth <= 2 {
                let note = self.tip(|| note.to_owned());
                let line = self.at(end);
                if *nth > 1 {
                    line.word(", ");
                }
                line.push(
                    format!(
                        "{}{word}: expected {}, {}{}",
                        label(b, many),
                        show(r.expected),
                        decibel_signed(r.difference_db),
                        plus_minus(r.uncertainty_db)
                    ),
                    note,
                    None,
                );
            }
            if !self.explains(end) {
                continue;
            }
            self.at(end).tooltip.push(format!(
                "{}: read {}, expected {}: {}{}; {note}",
                label(b, true).trim(),
                show(r.read),
                show(r.expected),
                decibel_signed(r.difference_db),
                plus_minus(r.uncertainty_db)
            ));
        }
    }

    fn expectations(&mut self, chain: &ChainResult, bands: &[&BandResult], meaning: &Meaning) {
        for (loc, expect) in expects(meaning, chain.loc) {
            let Some(end) = self.end_of(loc) else {
                continue;
            };
            let many = bands.len() > 1;
            let rows: Vec<String> = bands
                .iter()
                .filter_map(|b| {
                    let n = b
                        .nodes
                        .iter()
                        .filter(|n| n.chain.span.start <= loc.span.start)
                        .max_by_key(|n| n.chain.span.start)?;
                    // behind what is not known no figure holds
                    if !n.power_known && !matches!(expect, Expect::Swr(..)) {
                        return None;
                    }
                    let value = match expect {
                        Expect::Power(..) => n.power_w.is_finite().then(|| power(n.power_w))?,
                        Expect::Loss(..) => db(n.cumulative_db),
                        Expect::Swr(..) => format!("SWR {}", number(n.swr, 2)),
                        Expect::Radiated(LimitQuantity::Eirp, ..) => power(b.eirp_w?),
                        Expect::Radiated(..) => power(b.erp_w()?),
                    };
                    Some(format!("{}{value}", label(b, many)))
                })
                .collect();
            if rows.is_empty() || chain.direction == Direction::Receive {
                continue;
            }
            let line = self.begin(end, "");
            line.word("is ");
            line.word(
                ends(&rows.iter().collect::<Vec<_>>())
                    .into_iter()
                    .map(String::as_str)
                    .collect::<Vec<_>>()
                    .join(", "),
            );
            if self.explains(end) {
                self.at(end).tooltip.extend(rows);
            }
        }
    }

    /// What the readings and pieces of a bench session come to.
    fn session(&mut self, s: &Session, r: &SessionResult) {
        let env = crate::view::env_of(self.view.s, self.doc);
        let shown = bench::of_session(self.view, self.c, s, r, env, &|loc| {
            self.end_of(loc).is_some()
        });
        self.put(shown);
    }

    /// Readings at the site that other files hold.
    fn logs(&mut self, bands: &[&BandResult]) {
        let many = bands.len() > 1;
        let mut shown: Vec<Shown> = Vec::new();
        let mut count: FxHashMap<Loc, usize> = FxHashMap::default();
        for b in bands {
            for l in b.logs.iter().filter(|l| self.end_of(l.loc).is_some()) {
                let nth = count.entry(l.loc).or_default();
                *nth += 1;
                let mut x = bench::of_log(&label(b, many), b, l, self.c);
                // the others are in the tooltip
                if *nth > 2 {
                    x.parts.clear();
                }
                shown.push(x);
            }
        }
        self.put(shown);
    }

    fn put(&mut self, shown: Vec<Shown>) {
        for x in shown {
            if let Some(end) = self.end_of(x.loc) {
                self.judged.extend(x.status.map(|s| (x.loc, s)));
                let line = match x.parts.is_empty() {
                    true => self.at(end),
                    false => self.begin(end, ""),
                };
                line.parts.extend(x.parts);
                line.more |= x.tooltip.as_ref().is_some_and(String::is_empty);
                line.tooltip.extend(x.tooltip.filter(|t| !t.is_empty()));
            }
        }
    }

    /// At the definition of a piece of cable in a station: its loss on the bands it is used on.
    fn definitions(&mut self, chains: &[ChainResult]) {
        if !self.c.hints.loss {
            return;
        }
        // by part, in the order of the text: (band, loss)
        let mut rows: BTreeMap<(u32, u32), Uses<'_>> = BTreeMap::new();
        for b in chains.iter().flat_map(|c| c.bands.iter()) {
            if !self.c.shows(&b.band) {
                continue;
            }
            for n in &b.nodes {
                if matches!(n.kind, "run" | "jumper" | "tail") && n.def != n.chain && n.loss_known {
                    let key = (n.def.span.start, n.def.span.end);
                    let mine = &mut rows.entry(key).or_insert((n, Vec::new())).1;
                    // a pair's two frequencies are one band here
                    if !mine
                        .iter()
                        .any(|r| r.0.band == b.band && r.0.point == b.point)
                    {
                        mine.push((b, n.matched_db));
                    }
                }
            }
        }
        for (n, mine) in rows.into_values() {
            let Some(end) = self.end_of(n.def) else {
                continue;
            };
            let name = n.tag.map_or("", |t| self.view.text(t));
            let line = self.begin(end, name);
            for (i, (b, db)) in ends(&mine).into_iter().enumerate() {
                line.word(separator(i, mine.len()));
                line.word(format!("{}{} dB", label(b, true), padded(&loss(db), 5)));
            }
            if self.explains(end) {
                let line = self.at(end);
                for (b, loss) in mine {
                    line.tooltip
                        .push(format!("{}matched loss {}", label(b, true), db(loss)));
                }
            }
        }
    }

    fn finish(self) -> Vec<InlayHint> {
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

/// Said of a part whose own loss could not be had.
const LOSS_NOT_KNOWN: &str = "loss not known";

/// What a part of a chain comes to on a band.
struct Figures {
    /// Its loss in dB, if it is of interest.
    loss: Option<String>,
    /// The power behind it, or of a receiver's chain the level, if it is known.
    power: Option<String>,
}

impl Figures {
    /// None if its loss is not known.
    fn of(n: &NodeResult, receive: bool) -> Option<Figures> {
        let end = matches!(n.kind, "transmitter" | "antenna" | "load" | "receiver");
        n.loss_known.then(|| Figures {
            loss: (!end || n.loss_db.abs() >= 0.005).then(|| loss(n.loss_db)),
            power: (n.power_known && n.power_w.is_finite()).then(|| match receive {
                true => power_dbm(n.power_w),
                false => power(n.power_w),
            }),
        })
    }
}

/// What a part comes to, with its name: `M1 0.69 dB → 18.1 W`; none if nothing can be said.
pub(crate) fn in_short(view: &View<'_>, n: &NodeResult, receive: bool) -> Option<String> {
    let name = name(view, n);
    let Some(f) = Figures::of(n, receive) else {
        return Some(format!("{name} {LOSS_NOT_KNOWN}"));
    };
    match (f.loss, f.power) {
        (None, None) => None,
        (Some(loss), None) => Some(format!("{name} {loss} dB")),
        (None, Some(power)) => Some(format!("{name} → {power}")),
        (Some(loss), Some(power)) => Some(format!("{name} {loss} dB → {power}")),
    }
}

/// What a part is called where several stand on a line.
fn name(view: &View<'_>, n: &NodeResult) -> String {
    let tag = n.tag.map_or(n.kind, |t| view.text(t));
    match n.port {
        Some(p) => format!("{tag}.{}", view.text(p)),
        None => tag.to_owned(),
    }
}

fn loss(db: f64) -> String {
    let s = format!("{db:.2}");
    if s == "-0.00" { "0.00".to_owned() } else { s }
}

/// A band's name before its numbers, where there are several.
fn label(b: &BandResult, many: bool) -> String {
    if !many && b.point.is_none() {
        return String::new();
    }
    match b.point {
        Some(p) => format!("{} {p} ", b.band),
        None => format!("{} ", b.band),
    }
}

/// Two at most: all, or the first and the last.
fn ends<T: Copy>(rows: &[T]) -> Vec<T> {
    match rows {
        [] | [_] | [_, _] => rows.to_vec(),
        [first, .., last] => vec![*first, *last],
    }
}

fn separator(index: usize, count: usize) -> &'static str {
    match (index, count) {
        (0, _) => "",
        (_, 2) => " | ",
        _ => " … ",
    }
}

fn is_name(band: &str) -> bool {
    !band.contains(' ') && !band.ends_with("Hz")
}

/// A row of the tooltip.
fn row(b: &BandResult, n: &NodeResult, receive: bool) -> String {
    let band = label(b, true).trim().to_owned();
    if !n.loss_known {
        return format!("{band}: its loss is not known, and so nothing behind it");
    }
    if !n.power_known {
        return format!(
            "{band}: loss {}; what stands before is not all known",
            db(n.loss_db)
        );
    }
    let mut t = format!(
        "{band}: loss {}, {} so far",
        db(n.loss_db),
        db(n.cumulative_db)
    );
    if n.power_w.is_finite() {
        t.push_str(&format!(", then {}", both(n.power_w)));
    }
    t.push_str(&plus_minus(n.uncertainty_db));
    if !receive && n.swr > 1.005 {
        t.push_str(&format!(", SWR {}", number(n.swr, 2)));
    }
    if n.kind == "antenna"
        && let (Some(erp), Some(eirp)) = (b.erp_w(), b.eirp_w)
    {
        t.push_str(&format!(
            "; ERP {}, EIRP {}{}",
            both(erp),
            both(eirp),
            plus_minus(b.uncertainty_db)
        ));
    }
    t
}

/// The assertion that holds what is shown.
fn pin(indent: &str, b: &BandResult, n: &NodeResult, on: &str) -> String {
    match b
        .erp_w()
        .filter(|_| n.kind == "antenna" && b.branches.is_empty())
    {
        Some(erp) => format!("{indent}expect erp {}{on}", power(erp)),
        None => format!("{indent}expect {}{on}", power(n.power_w)),
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

/// The expectations of the chain whose head is at `head`.
fn expects(meaning: &Meaning, head: Loc) -> Vec<(Loc, &Expect)> {
    fn steps<'m>(s: &'m [Step], out: &mut Vec<(Loc, &'m Expect)>) {
        for x in s {
            match x {
                Step::Node(n, loc) => {
                    if let Node::Expect { expect, .. } = &**n {
                        out.push((*loc, expect));
                    }
                }
                Step::Part { branches, .. } | Step::Use { branches, .. } => {
                    branches.iter().for_each(|b| steps(&b.steps, out))
                }
                Step::Broken(_) => {}
            }
        }
    }
    let mut out = Vec::new();
    match meaning {
        Meaning::Station(st) => st
            .chains
            .iter()
            .filter(|c| c.loc == head)
            .for_each(|c| steps(&c.steps, &mut out)),
        Meaning::Chain(c) => steps(&c.steps, &mut out),
        _ => {}
    }
    out
}
