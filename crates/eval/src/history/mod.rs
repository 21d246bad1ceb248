//! Compares texts with their earlier states. A reading that was changed after it had been
//! committed is no longer the value read on that day; a changed length may be mistyped.

mod figures;
mod lengths;
mod states;

use std::sync::Arc;

use downlead_base::{Diagnostic, Edit, Fix, Loc, Span, codes};
use downlead_station::ReadingsFile;
use downlead_station::evidence::{
    CORRECTED, Evidence, Place, evidence, item_evidence, table_evidence,
};
use downlead_syntax::{File, Item};
use rustc_hash::FxHashMap;

/// When and by whom a state of a file was recorded.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Recording {
    /// The revision's name, short.
    pub revision: Box<str>,
    /// Day it was made, `2026-07-19`.
    pub date: Box<str>,
    /// The same moment in seconds since 1970.
    pub seconds: i64,
    /// Who made it.
    pub author: Box<str>,
}

/// What is amended within this time after the first commit was not recorded yet (our choice: a
/// day's readings are often brought into order in the evening).
const DRAFT_S: i64 = 24 * 3600;

/// The readings of one file as they were first recorded, and its lengths of cable as they were.
#[derive(Clone, Debug, Default)]
pub struct Recorded {
    by_key: FxHashMap<Box<str>, Vec<Slot>>,
    /// When the present texts are looked at, seconds since 1970.
    now: Option<i64>,
    lengths: lengths::Lengths,
    figures: figures::Figures,
}

/// One reading through the revisions.
#[derive(Clone, Debug)]
struct Slot {
    first: Evidence,
    by: Arc<Recording>,
    /// When it came in, seconds since 1970.
    begun: i64,
    /// As of the last revision.
    now: Evidence,
}

impl Slot {
    fn is_draft(&self, seconds: i64) -> bool {
        (seconds - self.begun).abs() <= DRAFT_S
    }

    /// A correction that gives its reason is the record from then on; one reason is for one change.
    fn is_corrected_by(&self, now: &Evidence) -> bool {
        now.corrected.is_some() && now.corrected != self.now.corrected
    }
}

impl Recorded {
    /// What the revisions of a file hold, the oldest first; `path` says whether it is a text or a
    /// table.
    pub fn of<'t>(
        path: &str,
        revisions: impl IntoIterator<Item = (Recording, &'t str)>,
    ) -> Recorded {
        let mut out = Recorded::default();
        for (revision, text) in revisions {
            let revision = Arc::new(revision);
            let all = if is_text(path) {
                let tree = File::parse(text);
                out.lengths.add(&tree, &revision);
                out.figures.add(&tree, &revision);
                evidence(&tree)
            } else {
                table_evidence(&ReadingsFile::parse(text))
            };
            out.add(all, &revision);
        }
        out
    }

    /// The same, looked at in that second since 1970: what came in less than a day before may still
    /// be amended.
    #[must_use]
    pub fn seen_at(mut self, seconds: i64) -> Recorded {
        self.now = Some(seconds);
        self
    }

    /// Whether there is nothing in it to compare with.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.by_key.is_empty() && self.lengths.is_empty() && self.figures.is_empty()
    }

    /// Follows each reading into the next revision.
    fn add(&mut self, all: Vec<Evidence>, revision: &Arc<Recording>) {
        for (key, list) in by_key(all) {
            // what is missing in a revision may have been added on another branch: it stays known
            let slots = self.by_key.remove(&key).unwrap_or_default();
            let (pairs, new) = pair(slots, list);
            let mut slots: Vec<Slot> = pairs
                .into_iter()
                .map(|(slot, now)| {
                    let amended = slot.is_draft(revision.seconds) && !slot.now.same(&now);
                    if amended || slot.is_corrected_by(&now) {
                        return Slot {
                            first: now.clone(),
                            by: Arc::clone(revision),
                            now,
                            ..slot
                        };
                    }
                    Slot { now, ..slot }
                })
                .collect();
            slots.extend(new.into_iter().map(|now| Slot {
                first: now.clone(),
                by: Arc::clone(revision),
                begun: revision.seconds,
                now,
            }));
            self.by_key.insert(key, slots);
        }
    }

    /// What is said of an item of a text: readings that were changed since, lengths and other
    /// figures that look mistyped.
    pub(crate) fn of_item(&self, item: &Item) -> Vec<Diagnostic> {
        let changed = self.changed(item_evidence(item));
        let readings = changed.iter().filter_map(in_text);
        readings
            .chain(self.lengths.compare(item))
            .chain(self.figures.compare(item))
            .collect()
    }

    /// The same of the readings of a table, told where it is taken.
    pub(crate) fn of_table(&self, table: &ReadingsFile, loc: Loc) -> Vec<Diagnostic> {
        let changed = self.changed(table_evidence(table));
        changed.iter().map(|c| in_table(loc, c)).collect()
    }

    /// The readings that are not as they were recorded and do not say why, in the order given.
    fn changed(&self, all: Vec<Evidence>) -> Vec<(Evidence, &Slot)> {
        let mut out = Vec::new();
        for (key, list) in by_key(all) {
            let Some(slots) = self.by_key.get(&key) else {
                continue;
            };
            let (pairs, _) = pair(slots.iter().collect(), list);
            out.extend(
                pairs
                    .into_iter()
                    .filter(|(slot, now)| !slot.first.stands_in(now))
                    .filter(|(slot, now)| !slot.is_corrected_by(now))
                    .filter(|(slot, _)| !self.now.is_some_and(|t| slot.is_draft(t)))
                    .map(|(slot, now)| (now, slot)),
            );
        }
        out
    }
}

fn is_text(path: &str) -> bool {
    std::path::Path::new(path)
        .extension()
        .is_some_and(|e| e.eq_ignore_ascii_case("downlead"))
}

fn by_key(all: Vec<Evidence>) -> indexmap::IndexMap<Box<str>, Vec<Evidence>> {
    let mut out = indexmap::IndexMap::<Box<str>, Vec<Evidence>>::new();
    for e in all {
        out.entry(e.key.clone()).or_default().push(e);
    }
    out
}

/// Which of the readings of one key is which: first those that stayed as they were, then the rest
/// in their order. What is left of the new ones came in; what is left of the old ones is gone.
fn pair<S: std::borrow::Borrow<Slot>>(
    slots: Vec<S>,
    list: Vec<Evidence>,
) -> (Vec<(S, Evidence)>, Vec<Evidence>) {
    let mut open: Vec<Option<S>> = slots.into_iter().map(Some).collect();
    let mut pairs = Vec::new();
    let mut rest = Vec::new();
    for e in list {
        let stayed = open
            .iter_mut()
            .find(|s| s.as_ref().is_some_and(|s| s.borrow().now.same(&e)));
        match stayed.and_then(Option::take) {
            Some(slot) => pairs.push((slot, e)),
            None => rest.push(e),
        }
    }
    let mut open = open.into_iter().flatten();
    let mut new = Vec::new();
    for e in rest {
        match open.next() {
            Some(slot) => pairs.push((slot, e)),
            None => new.push(e),
        }
    }
    (pairs, new)
}

fn recorded(slot: &Slot) -> String {
    let Recording {
        revision,
        date,
        author,
        ..
    } = &*slot.by;
    format!(
        "{} when {author} recorded it on {date} ({revision})",
        slot.first.shown()
    )
}

fn in_text((now, slot): &(Evidence, &Slot)) -> Option<Diagnostic> {
    let Place::Statement(loc) = now.place else {
        return None;
    };
    let places: Vec<Loc> = now.figures.iter().filter_map(|f| f.loc).collect();
    let changed = now
        .figures
        .iter()
        .zip(&slot.first.figures)
        .filter(|(n, f)| !n.same(f));
    let at = changed.clone().find_map(|(n, _)| n.loc).unwrap_or(loc);
    let end = Loc::new(loc.item, Span::new(loc.span.end, loc.span.end));
    let mut d = Diagnostic::new(
        &codes::READING_EDITED,
        at,
        format!(
            "This reading was {}; now it is {}.",
            recorded(slot),
            now.shown()
        ),
    )
    .at("changed afterwards")
    .help(format!(
        "A reading stays as it was read. Write it as it was recorded, or say after it why it differs now: `{CORRECTED} \"…\"`."
    ));
    if places.len() == slot.first.figures.len() {
        let edits = changed
            .filter_map(|(n, f)| {
                Some(Edit {
                    loc: n.loc?,
                    text: f.text.to_string(),
                })
            })
            .collect();
        d.fixes.push(Fix {
            title: "write it as it was recorded".to_owned(),
            edits,
            preferred: false,
        });
    }
    Some(d.fix(
        "keep the new figure and say what it was",
        end,
        format!(
            ", {CORRECTED} \"was {}\"",
            slot.first.shown().replace('"', "'")
        ),
    ))
}

fn in_table(loc: Loc, (now, slot): &(Evidence, &Slot)) -> Diagnostic {
    let line = match now.place {
        Place::Line(n) => n,
        Place::Statement(_) => 0,
    };
    Diagnostic::new(
        &codes::READING_EDITED,
        loc,
        format!(
            "The reading in line {line} was {}; now it is {}.",
            recorded(slot),
            now.shown()
        ),
    )
    .at("changed afterwards")
    .help(format!(
        "A reading stays as it was read. Write it as it was recorded, or say in a column `{CORRECTED}` why it is another now."
    ))
}
