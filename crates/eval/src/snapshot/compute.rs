//! Meaning and results of every scope; what still holds is kept.

use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId, Loc, codes};
use downlead_station::model::Meaning;
use downlead_station::{Attachments, Env, Loader, Lowered};
use downlead_syntax::{File, Item};
use rustc_hash::{FxHashMap, FxHashSet};

use super::item::evaluate_item;
use super::{Scope, Snapshot};
use crate::result::ItemResult;

impl Snapshot {
    /// The files a file sees, itself last, each once.
    fn visible(&self, file: usize) -> Vec<usize> {
        let mut order = Vec::new();
        let mut seen = FxHashSet::default();
        self.collect(file, &mut seen, &mut order);
        order
    }

    fn collect(&self, at: usize, seen: &mut FxHashSet<usize>, order: &mut Vec<usize>) {
        if !seen.insert(at) {
            return;
        }
        for (u, _) in &self.files[at].uses {
            self.collect(*u, seen, order);
        }
        order.push(at);
    }

    /// The items of a file that say something, with their meaning.
    fn lowered(&mut self, file: usize, env: &Env) -> Vec<(Arc<Item>, Arc<Lowered>)> {
        let items: Vec<Arc<Item>> = self.files[file]
            .tree
            .items()
            .iter()
            .filter(|p| p.item.statement().is_some())
            .map(|p| Arc::clone(&p.item))
            .collect();
        items
            .into_iter()
            .map(|i| {
                let low = self.cache.lower.get(&i, &env.lets, env.lets_key);
                (i, low)
            })
            .collect()
    }

    pub(super) fn compute(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool) {
        self.unfinished = true;
        let mut scopes = Vec::new();
        let mut alive: FxHashSet<(ItemId, usize)> = FxHashSet::default();
        let nothing: Arc<ItemResult> = Arc::default();
        for file in 0..self.files.len() {
            if !self.files[file].root {
                continue;
            }
            let visible = self.visible(file);
            let trees: Vec<&File> = visible.iter().map(|i| &self.files[*i].tree).collect();
            let mut diagnostics = Vec::new();
            let mut env = Env::gather(&trees, &mut self.cache.lower, &mut diagnostics);
            drop(trees);
            let own = self.lowered(file, &env);
            let mut attachments = Attachments::default();
            self.attach(file, &own, loader, &mut attachments, &mut diagnostics);
            let mut used = Vec::new();
            for i in visible {
                if i == file {
                    continue;
                }
                let theirs = self.lowered(i, &env);
                self.attach(i, &theirs, loader, &mut attachments, &mut diagnostics);
                if !self.files[i].root {
                    used.extend(theirs.into_iter().map(|x| x.1));
                }
            }
            env.attachments = attachments;
            let mut items = Vec::with_capacity(own.len());
            let mut names: FxHashMap<Box<str>, Loc> = FxHashMap::default();
            for (item, low) in own {
                let name = match &low.meaning {
                    Meaning::Station(s) => Some(&s.name),
                    Meaning::Chain(c) => Some(&c.name),
                    Meaning::Session(s) => Some(&s.name),
                    _ => None,
                };
                if let Some(n) = name
                    && let Some(first) = names.insert(n.text.clone(), n.loc)
                {
                    diagnostics.push(
                        Diagnostic::new(
                            &codes::DUPLICATE_NAME,
                            n.loc,
                            format!("`{}` is the name of two things.", n.text),
                        )
                        .at("again here")
                        .also(first, "first here"),
                    );
                }
                let key = (item.id, file);
                alive.insert(key);
                let valid = self.cache.results.get(&key).filter(|(stamp, r)| {
                    *stamp == low.stamp
                        && r.depends
                            .iter()
                            .all(|(k, n, id)| env.identity(*k, n) == *id)
                });
                let result = match valid {
                    Some((_, r)) => Arc::clone(r),
                    None => {
                        if stop() {
                            return;
                        }
                        let r = match evaluate_item(&item, &low, &env) {
                            // of most definitions there is nothing to tell
                            r if r.is_empty() => Arc::clone(&nothing),
                            r => Arc::new(r),
                        };
                        self.cache.results.insert(key, (low.stamp, Arc::clone(&r)));
                        r
                    }
                };
                items.push((item, low, result));
            }
            scopes.push(Scope {
                file,
                env: Arc::new(env),
                items,
                used,
                diagnostics,
            });
        }
        if self.cache.results.len() > alive.len() + alive.len() / 16 + 8 {
            self.cache.results.retain(|k, _| alive.contains(k));
        }
        let ids: FxHashSet<ItemId> = self
            .files
            .iter()
            .flat_map(|f| f.tree.items().iter().map(|p| p.item.id))
            .collect();
        self.cache.lower.sweep(&|id| ids.contains(&id), ids.len());
        self.scopes = scopes;
        self.unfinished = false;
        // a file that no scope holds any more is read again when it is named again
        self.cache.attached.retain(|_, a| Arc::strong_count(a) > 1);
        self.compare_recorded();
    }

    /// How many items and results are kept for the next version: little more than there are, however
    /// often the text was edited.
    #[must_use]
    pub fn kept(&self) -> (usize, usize) {
        (self.cache.lower.len(), self.cache.results.len())
    }
}
