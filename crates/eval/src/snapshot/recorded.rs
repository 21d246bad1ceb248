//! Earlier states of the files, compared with the present ones.

use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId};
use downlead_station::evidence::{item_evidence, item_tables};
use downlead_station::figures::item_figures;
use downlead_station::lengths::item_lengths;
use downlead_station::{is_network, normalise};
use rustc_hash::{FxHashMap, FxHashSet};

use super::Snapshot;
use crate::history::Recorded;

/// What is known of earlier states of a set of files, kept from one version to the next.
#[derive(Default)]
pub(super) struct Evidences {
    /// By path.
    recorded: FxHashMap<String, Arc<Recorded>>,
    /// What was found in each item of files that were recorded.
    items: FxHashMap<ItemId, Vec<Diagnostic>>,
    /// What was found in tables.
    tables: Vec<Diagnostic>,
}

impl Snapshot {
    /// The paths of files of the set that hold readings or lengths of cable, tables too: those whose
    /// earlier states [`Snapshot::set_recorded`] can make something of.
    #[must_use]
    pub fn files_to_recall(&self) -> Vec<String> {
        let mut out = Vec::new();
        let mut seen = FxHashSet::default();
        let mut add = |path: String| {
            if seen.insert(path.clone()) {
                out.push(path);
            }
        };
        for file in self.files() {
            let items = || file.tree.items().iter().map(|p| &p.item);
            let holds = |i: &std::sync::Arc<downlead_syntax::Item>| {
                !item_evidence(i).is_empty()
                    || !item_lengths(i).is_empty()
                    || !item_figures(i).is_empty()
            };
            if items().any(holds) {
                add(file.path.clone());
            }
            for t in items().flat_map(|i| item_tables(i)) {
                if let Some(path) = normalise(&file.path, &t.text).filter(|p| !is_network(p)) {
                    add(path);
                }
            }
        }
        out
    }

    /// Lays earlier states of a file beside it: from now on readings that differ from them, and
    /// lengths that look mistyped beside them, are among [`Snapshot::diagnostics`].
    pub fn set_recorded(&mut self, path: &str, recorded: Arc<Recorded>) {
        self.set_all_recorded([(path.to_owned(), recorded)]);
    }

    /// The same of several files.
    pub fn set_all_recorded(&mut self, all: impl IntoIterator<Item = (String, Arc<Recorded>)>) {
        self.evidences.items.clear();
        for (path, recorded) in all {
            if recorded.is_empty() {
                self.evidences.recorded.remove(&path);
            } else {
                self.evidences.recorded.insert(path, recorded);
            }
        }
        self.compare_recorded();
    }

    /// Whether earlier states of any file are known.
    pub(super) fn has_recorded(&self) -> bool {
        !self.evidences.recorded.is_empty()
    }

    /// Compares what was changed since the last time.
    pub(super) fn compare_recorded(&mut self) {
        if self.evidences.recorded.is_empty() {
            self.evidences = Evidences::default();
            return;
        }
        let mut old = std::mem::take(&mut self.evidences.items);
        let mut items = FxHashMap::default();
        let mut tables = Vec::new();
        let mut seen = FxHashSet::default();
        for file in self.files() {
            let recorded = self.evidences.recorded.get(&file.path);
            for item in file.tree.items().iter().map(|p| &p.item) {
                if let Some(r) = recorded {
                    let found = old.remove(&item.id).unwrap_or_else(|| r.of_item(item));
                    items.insert(item.id, found);
                }
                for t in item_tables(item) {
                    // the same table may be taken at several places
                    if let Some(path) = normalise(&file.path, &t.text)
                        && let Some(r) = self.evidences.recorded.get(&path)
                        && !seen.contains(&path)
                        && let Some(a) = self.attached(&path)
                        && let Some(table) = a.readings()
                    {
                        tables.extend(r.of_table(table, t.loc));
                        seen.insert(path);
                    }
                }
            }
        }
        self.evidences.items = items;
        self.evidences.tables = tables;
    }

    /// Readings that were changed after they had been recorded, lengths that look mistyped.
    pub(super) fn changed_since_recorded(&self) -> impl Iterator<Item = Diagnostic> {
        let of_items = self.evidences.items.values().flatten();
        of_items.chain(&self.evidences.tables).cloned()
    }
}
