//! What is computed only when it is asked for: first what a person looks at, the rest in idle time.

use std::sync::Arc;

use downlead_base::{ItemId, Span};
use downlead_station::Loader;
use rustc_hash::{FxHashMap, FxHashSet};

use super::edit::uses_of;
use super::parallel::evaluate_all;
use super::{ON, Scope, Snapshot};
use crate::result::ItemResult;
use crate::stage::Stage;

/// When the items that a change touched are computed.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum When {
    /// At once, to the last stage.
    Now,
    /// When they are asked for.
    Asked,
}

/// An item of a scope that is to be computed.
#[derive(Clone, Copy)]
pub(super) struct Todo {
    /// Its index in the scope.
    pub(super) item: usize,
    /// What there is of its present state; none where its result is of an earlier one.
    pub(super) have: Option<Stage>,
}

/// The items that are to be computed, by scope and identity.
#[derive(Default)]
pub(super) struct Later(FxHashMap<(usize, ItemId), Todo>);

impl Later {
    pub(super) fn add(&mut self, scope: usize, of: &Scope, todo: &[Todo]) {
        for t in todo {
            self.0.insert((scope, of.items[t.item].0.id), *t);
        }
    }

    pub(super) fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl Snapshot {
    /// Loads the named files and all they use. Their items are computed when
    /// [`Snapshot::evaluate`] or [`Snapshot::finish`] asks for them.
    pub fn load_for_later(roots: &[String], loader: &dyn Loader) -> Snapshot {
        Snapshot::load_when(roots, loader, When::Asked)
    }

    /// Replaces ranges of a file, each of the text that those before it left. What the change
    /// touches is computed when [`Snapshot::evaluate`] or [`Snapshot::finish`] asks for it; until
    /// then there are the results of before.
    pub fn edit_for_later(&mut self, file: usize, edits: &[(Span, &str)], loader: &dyn Loader) {
        let Some(entry) = self.files.get_mut(file) else {
            return;
        };
        let before = uses_of(&entry.tree);
        for (range, text) in edits {
            entry.tree = entry.tree.edit(*range, text);
        }
        entry.error = None;
        if uses_of(&entry.tree) == before {
            self.compute(loader, ON, When::Asked);
        } else {
            self.reload(loader, ON, When::Asked);
        }
    }

    /// Whether all is computed to the last stage.
    #[must_use]
    pub fn is_finished(&self) -> bool {
        !self.unfinished && self.later.is_empty()
    }

    /// Whether a change was stopped before all was computed: [`Snapshot::finish`] or the next edit
    /// goes on.
    #[must_use]
    pub fn is_stopped(&self) -> bool {
        self.unfinished
    }

    /// Whether an item in a range of a file has results of the first stage only.
    #[must_use]
    pub fn is_provisional(&self, file: usize, range: Span) -> bool {
        self.asked(file, range)
            .any(|(_, t)| t.have == Some(Stage::First))
    }

    /// Computes the items in a range of a file to a stage at least, unless `stop` says so, which is
    /// asked before each. Whether all are computed; those of a change that was stopped are not.
    pub fn evaluate(
        &mut self,
        file: usize,
        range: Span,
        stage: Stage,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        let todo: Vec<(usize, Todo)> = self
            .asked(file, range)
            .filter(|(_, t)| t.have < Some(stage))
            .collect();
        !self.unfinished && self.do_these(todo, stage, stop)
    }

    /// The items to be computed in a range of a file.
    fn asked(&self, file: usize, range: Span) -> impl Iterator<Item = (usize, Todo)> {
        let items = self.files.get(file).map_or(&[][..], |f| f.tree.items());
        let from = items.partition_point(|p| p.start + p.item.len < range.start);
        let here = items[from..]
            .iter()
            .take_while(move |p| p.start <= range.end)
            .map(|p| p.item.id);
        let scopes = self.scopes.iter().enumerate();
        let of_file = scopes.filter(move |(_, s)| s.file == file).map(|(i, _)| i);
        let of_file: Vec<usize> = of_file.collect();
        here.flat_map(move |id| of_file.clone().into_iter().map(move |s| (s, id)))
            .filter_map(|key| Some((key.0, *self.later.0.get(&key)?)))
    }

    /// Computes all that was left for later to the last stage. Whether it was not stopped.
    pub(super) fn finish_later(&mut self, stop: &dyn Fn() -> bool) -> bool {
        if self.later.is_empty() {
            return true;
        }
        let mut todo: Vec<(usize, Todo)> = self.later.0.iter().map(|(k, t)| (k.0, *t)).collect();
        todo.sort_unstable_by_key(|(scope, t)| (*scope, t.item));
        let done = self.do_these(todo, Stage::Whole, stop);
        if done {
            self.compare_recorded();
        }
        done
    }

    /// Computes those of some items that were left for later.
    pub(super) fn evaluate_wanted(
        &mut self,
        wanted: &FxHashSet<(usize, ItemId)>,
        stage: Stage,
        stop: &dyn Fn() -> bool,
    ) {
        let all = self.later.0.iter().filter(|(k, _)| wanted.contains(k));
        let mut todo: Vec<(usize, Todo)> = all.map(|(k, t)| (k.0, *t)).collect();
        todo.sort_unstable_by_key(|(scope, t)| (*scope, t.item));
        self.do_these(todo, stage, stop);
    }

    fn do_these(
        &mut self,
        todo: Vec<(usize, Todo)>,
        stage: Stage,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        let mut all = true;
        let mut scopes = std::mem::take(&mut self.scopes);
        for of_one in todo.chunk_by(|a, b| a.0 == b.0) {
            let scope = &mut scopes[of_one[0].0];
            let todo: Vec<Todo> = of_one.iter().map(|x| x.1).collect();
            let done = evaluate_all(scope, &todo, stage, stop);
            all &= done.len() == todo.len();
            for (at, r) in done {
                let key = (of_one[0].0, scope.items[at].0.id);
                if r.provisional {
                    let have = Some(Stage::First);
                    self.later.0.insert(key, Todo { item: at, have });
                } else {
                    self.later.0.remove(&key);
                }
                self.replace(scope, at, r);
            }
        }
        self.scopes = scopes;
        all
    }

    /// Puts a result in its place, and keeps it for the next version.
    pub(super) fn replace(&mut self, scope: &mut Scope, at: usize, r: ItemResult) {
        let (item, low, result) = &mut scope.items[at];
        // of most definitions there is nothing to tell: they share one
        *result = if r.is_empty() {
            Arc::clone(&self.cache.nothing)
        } else {
            Arc::new(r)
        };
        let key = (item.id, scope.file);
        self.cache
            .results
            .insert(key, (low.stamp, Arc::clone(result)));
    }
}
