//! Meaning and results of every scope; what still holds is kept.

use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId, Loc, codes};
use downlead_station::model::{Meaning, Name};
use downlead_station::{Attachments, Env, Loader, Lowered};
use downlead_syntax::{File, Item};
use rustc_hash::{FxHashMap, FxHashSet};

use super::later::{Later, Todo, When};
use super::parallel::evaluate_all;
use super::{Scope, Snapshot};
use crate::stage::Stage;

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

    /// Computes what a change touched: now, unless `stop` says so, or when it is asked for.
    pub(super) fn compute(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool, when: When) {
        self.unfinished = true;
        let mut later = Later::default();
        let mut scopes = Vec::new();
        let mut alive: FxHashSet<(ItemId, usize)> = FxHashSet::default();
        for file in 0..self.files.len() {
            if !self.files[file].root {
                continue;
            }
            let (mut scope, todo) = self.scope(file, loader, &mut alive);
            match when {
                When::Asked => later.add(scopes.len(), &scope, &todo),
                When::Now => {
                    let done = evaluate_all(&scope, &todo, Stage::Whole, stop);
                    let all = done.len() == todo.len();
                    for (at, r) in done {
                        self.replace(&mut scope, at, r);
                    }
                    if !all {
                        return;
                    }
                }
            }
            scopes.push(scope);
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
        self.later = later;
        // a file that no scope holds any more is read again when it is named again
        self.cache.attached.retain(|_, a| Arc::strong_count(a) > 1);
        if self.later.is_empty() {
            self.compare_recorded();
        }
    }

    /// What a root file and the files it uses mean, with the results there were before; and which
    /// of its items are to be computed. Notes in `alive` which results are still in use.
    fn scope(
        &mut self,
        file: usize,
        loader: &dyn Loader,
        alive: &mut FxHashSet<(ItemId, usize)>,
    ) -> (Scope, Vec<Todo>) {
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
        let mut todo = Vec::new();
        let mut names: FxHashMap<Box<str>, Loc> = FxHashMap::default();
        for (item, low) in own {
            if let Some(n) = result_name(&low.meaning)
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
            let known = self.cache.results.get(&key);
            let holds = known.is_some_and(|(stamp, r)| {
                *stamp == low.stamp
                    && r.depends
                        .iter()
                        .all(|(k, n, id)| env.identity(*k, n) == *id)
            });
            if !holds || known.is_some_and(|k| k.1.provisional) {
                todo.push(Todo {
                    item: items.len(),
                    have: holds.then_some(Stage::First),
                });
            }
            // until then what there was
            let result =
                known.map_or_else(|| Arc::clone(&self.cache.nothing), |k| Arc::clone(&k.1));
            items.push((item, low, result));
        }
        let scope = Scope {
            file,
            env: Arc::new(env),
            items,
            used,
            diagnostics,
        };
        (scope, todo)
    }

    /// How many items and results are kept for the next version: little more than there are, however
    /// often the text was edited.
    #[must_use]
    pub fn kept(&self) -> (usize, usize) {
        (self.cache.lower.len(), self.cache.results.len())
    }
}

/// The name under which results are shown.
fn result_name(meaning: &Meaning) -> Option<&Name> {
    match meaning {
        Meaning::Station(s) => Some(&s.name),
        Meaning::Chain(c) => Some(&c.name),
        Meaning::Session(s) => Some(&s.name),
        Meaning::Variant(v) => Some(&v.name),
        _ => None,
    }
}
