//! Findings that the text accepts: each is set aside with its reason, until its last day.

use downlead_base::{Diagnostic, ItemId, Loc, Severity, Span, codes};
use downlead_station::evidence::item_tables;
use downlead_station::model::{Accept, Covers};
use downlead_station::normalise;
use downlead_syntax::{AtomKind, Item, Stmt};
use rustc_hash::{FxHashMap, FxHashSet};

use super::Snapshot;

/// A finding that the text accepts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Accepted {
    /// The finding.
    pub finding: Diagnostic,
    /// Why it is accepted, as written.
    pub reason: Box<str>,
    /// The last day, as written.
    pub until: Box<str>,
    /// Where the acceptance stands.
    pub by: Loc,
}

/// All findings, those that are accepted in a list of their own.
#[derive(Clone, Debug, Default)]
pub struct Found {
    /// What is to be corrected or known, in order of file and place.
    pub diagnostics: Vec<Diagnostic>,
    /// What is accepted, in the same order.
    pub accepted: Vec<Accepted>,
}

/// The newest date of a file, and where it is written.
type Newest = (Box<str>, Option<Loc>);

/// An acceptance at its place.
struct Stated<'s> {
    accept: &'s Accept,
    /// Where its finding may be.
    item: ItemId,
    line: Span,
    /// The newest date of its file, where its last day is before it.
    ended: Option<(Box<str>, Option<Loc>)>,
    /// Whether the file is computed, so that it can be said whether anything needs it.
    computed: bool,
    needed: bool,
}

/// Codes whose findings need the history of the files.
const OF_HISTORY: [&str; 3] = [
    codes::READING_EDITED.id,
    codes::LENGTH_MISTYPED.id,
    codes::FIGURE_MISTYPED.id,
];

impl Snapshot {
    /// A day as of which acceptances are judged; without it the newest date in each file is taken.
    pub fn set_as_of(&mut self, day: Option<String>) {
        self.as_of = day.map(Into::into);
    }

    /// The newest date in a file and its tables of readings, as written. Days that lie ahead by what
    /// they say (`until`, `due`) do not count.
    #[must_use]
    pub fn newest_date(&self, file: usize) -> Option<Box<str>> {
        (file < self.files.len())
            .then(|| self.newest(file))
            .flatten()
            .map(|x| x.0)
    }

    /// Takes accepted findings out of all; adds what is to be said of the acceptances.
    pub(super) fn set_aside(&self, all: &mut Vec<Diagnostic>) -> Vec<Accepted> {
        let mut stated = self.acceptances();
        if stated.is_empty() {
            return Vec::new();
        }
        let mut accepted = Vec::new();
        let mut kept = Vec::with_capacity(all.len());
        for d in all.drain(..) {
            let of = stated.iter_mut().find(|s| s.accepts(&d));
            match of {
                Some(s) => {
                    s.needed = true;
                    if s.ended.is_some() {
                        kept.push(d);
                        continue;
                    }
                    accepted.push(Accepted {
                        finding: d,
                        reason: s.accept.reason.clone(),
                        until: s.accept.until.clone(),
                        by: s.accept.loc,
                    });
                }
                None => kept.push(d),
            }
        }
        *all = kept;
        let broken: FxHashSet<ItemId> = all
            .iter()
            .filter(|d| d.severity == Severity::Error)
            .map(|d| d.primary.loc.item)
            .collect();
        let whole = self.is_finished();
        for s in &stated {
            let history = OF_HISTORY.contains(&s.accept.code.id) && !self.has_recorded();
            let judged = whole && s.computed && !history && !broken.contains(&s.item);
            match &s.ended {
                Some((newest, at)) if s.needed => all.push(ended(s.accept, newest, *at)),
                _ if !s.needed && judged => all.push(self.not_needed(s.accept)),
                _ => {}
            }
        }
        accepted
    }

    /// All acceptances of the files.
    fn acceptances(&self) -> Vec<Stated<'_>> {
        let mut out: Vec<Stated<'_>> = Vec::new();
        let own = self.scopes.iter().flat_map(|s| {
            let items = s.items.iter().map(|(_, low, _)| (low, true));
            items.chain(s.used.iter().map(|low| (low, false)))
        });
        for (low, computed) in own {
            for a in &low.accepts {
                if out.iter().any(|s| s.accept.loc == a.loc) {
                    continue;
                }
                let (item, line) = match a.covers {
                    Covers::Line(line) => (a.loc.item, line),
                    Covers::Above => match self.line_above(a.loc.item) {
                        Some(x) => x,
                        // the first line of a file: nothing is above it
                        None => (a.loc.item, Span::new(0, 0)),
                    },
                };
                out.push(Stated {
                    accept: a,
                    item,
                    line,
                    ended: None,
                    computed,
                    needed: false,
                });
            }
        }
        let mut newest: FxHashMap<usize, Option<Newest>> = FxHashMap::default();
        for s in &mut out {
            let Some((file, _)) = self.place(s.accept.loc) else {
                continue;
            };
            let newest = newest.entry(file).or_insert_with(|| self.newest(file));
            if let Some((day, _)) = newest
                && *last_day(&s.accept.until) < **day
            {
                s.ended.clone_from(newest);
            }
        }
        out
    }

    /// The first line of the item above one that is an acceptance itself.
    fn line_above(&self, id: ItemId) -> Option<(ItemId, Span)> {
        let items = self.files.iter().find_map(|f| {
            let at = f.tree.items().iter().position(|p| p.item.id == id)?;
            Some(&f.tree.items()[..at])
        })?;
        items.iter().rev().find_map(|p| {
            let s = p.item.statement().filter(|s| !is_accept(*s))?;
            Some((p.item.id, s.head_span()))
        })
    }

    /// The newest date of a file and of its tables of readings, or the given day.
    fn newest(&self, file: usize) -> Option<Newest> {
        if let Some(day) = &self.as_of {
            return Some((day.clone(), None));
        }
        let mut best: Option<(Box<str>, Option<Loc>)> = None;
        let mut take = |text: &str, at: Option<Loc>| {
            if best.as_ref().is_none_or(|b| *text > *b.0) {
                best = Some((text.into(), at));
            }
        };
        let f = &self.files[file];
        for item in f.tree.items().iter().map(|p| &p.item) {
            for s in item.statements() {
                dates(item, s, &mut take);
            }
            for t in item_tables(item) {
                let path = normalise(&f.path, &t.text);
                let table = path.and_then(|p| self.attached(&p));
                let rows = table.as_ref().and_then(|a| a.readings());
                for row in rows.into_iter().flat_map(|r| &r.rows) {
                    if let Some(day) = &row.date {
                        take(day, Some(t.loc));
                    }
                }
            }
        }
        best
    }

    fn not_needed(&self, a: &Accept) -> Diagnostic {
        let d = Diagnostic::new(
            &codes::ACCEPT_NOT_NEEDED,
            a.loc,
            format!("The line above has no finding `{}` to accept.", a.code.id),
        )
        .at("not needed")
        .help("Remove it, or move it directly below the line with the finding.");
        let item = self
            .files
            .iter()
            .flat_map(|f| f.tree.items())
            .find(|p| p.item.id == a.loc.item);
        match item {
            // not preferred: it may be at the wrong line, and its reason is a person's
            Some(p) => d.fix(
                "remove the acceptance",
                Loc::new(a.loc.item, with_separator(p.item.text(), a.loc.span)),
                "",
            ),
            None => d,
        }
    }
}

impl Stated<'_> {
    fn accepts(&self, d: &Diagnostic) -> bool {
        let at = d.primary.loc;
        std::ptr::eq(self.accept.code, d.code)
            && d.severity < Severity::Error
            && at.item == self.item
            && self.line.start <= at.span.start
            && at.span.start < self.line.end
    }
}

fn ended(a: &Accept, newest: &str, at: Option<Loc>) -> Diagnostic {
    let d = Diagnostic::new(
        &codes::ACCEPT_ENDED,
        a.loc,
        format!(
            "The finding `{}` was accepted until {}, which is before {newest}.",
            a.code.id, a.until
        ),
    )
    .at("ended")
    .help("Correct what is found, or decide again and write a later day.");
    match at {
        Some(loc) => d.also(loc, "the newest date of the file"),
        None => d,
    }
}

fn is_accept(s: Stmt<'_>) -> bool {
    s.keyword() == Some("accept")
}

/// The dates of a statement and its block, but for those that lie ahead by what they say.
fn dates(item: &Item, s: Stmt<'_>, take: &mut dyn FnMut(&str, Option<Loc>)) {
    if is_accept(s) {
        return;
    }
    let mut before = "";
    for a in s.atoms() {
        let text = s.text(*a);
        if a.kind == AtomKind::Date && !matches!(before, "until" | "due") {
            take(text, Some(Loc::new(item.id, a.span)));
        }
        before = text;
    }
    for inner in s.block().into_iter().flat_map(|b| b.iter()) {
        dates(item, inner, take);
    }
}

/// The last day of a day, month or year as written.
fn last_day(date: &str) -> String {
    match date.len() {
        4 => format!("{date}-12-31"),
        7 => format!("{date}-31"),
        _ => date.to_owned(),
    }
}

/// The range of a statement with its line where it is alone there, else with the `;` before it.
fn with_separator(text: &str, span: Span) -> Span {
    let (start, end) = (span.start as usize, span.end as usize);
    let (Some(before), Some(after)) = (text.get(..start), text.get(end..)) else {
        return span;
    };
    let lead = before.trim_end_matches([' ', '\t']);
    let tail = after.trim_start_matches([' ', '\t']);
    let at = |x: usize| u32::try_from(x).unwrap_or(u32::MAX);
    if lead.is_empty() || lead.ends_with('\n') {
        let line_end = tail
            .strip_prefix("\r\n")
            .or_else(|| tail.strip_prefix('\n'));
        if let Some(rest) = line_end {
            return Span::new(at(lead.len()), at(text.len() - rest.len()));
        }
    }
    if let Some(cut) = lead.strip_suffix(';') {
        return Span::new(at(cut.len()), span.end);
    }
    match tail.strip_prefix(';') {
        Some(rest) => Span::new(span.start, at(text.len() - rest.len())),
        None => span,
    }
}
