//! What a text states under one key, through the revisions of its file.

use std::sync::Arc;

use rustc_hash::FxHashMap;

use super::Recording;

/// Something stated that can be found again in another revision.
pub(super) trait Stated: Clone {
    /// What it is found again by.
    fn key(&self) -> &str;
    /// Whether it says the same.
    fn same(&self, other: &Self) -> bool;
}

/// What is stated in one file through the revisions.
#[derive(Clone, Debug)]
pub(super) struct States<S> {
    by_key: FxHashMap<Box<str>, Vec<State<S>>>,
    newest: Option<Arc<Recording>>,
}

impl<S> Default for States<S> {
    fn default() -> Self {
        States {
            by_key: FxHashMap::default(),
            newest: None,
        }
    }
}

/// What is stated under one key, in the order of the text, from one revision on.
#[derive(Clone, Debug)]
struct State<S> {
    list: Vec<S>,
    by: Arc<Recording>,
}

/// Something that says another thing than in the state before.
pub(super) struct Changed<'s, S> {
    pub(super) was: &'s S,
    pub(super) now: S,
    /// When it was recorded as it was.
    pub(super) by: &'s Recording,
}

impl<S: Stated> States<S> {
    pub(super) fn is_empty(&self) -> bool {
        self.by_key.is_empty()
    }

    /// Follows what is stated into the next revision.
    pub(super) fn add(&mut self, all: impl IntoIterator<Item = S>, revision: &Arc<Recording>) {
        for (key, list) in by_key(all) {
            let states = self.by_key.entry(key).or_default();
            if !states.last().is_some_and(|s| all_same(&s.list, &list)) {
                states.push(State {
                    list,
                    by: Arc::clone(revision),
                });
            }
        }
        self.newest = Some(Arc::clone(revision));
    }

    /// What has changed beside the newest committed state; where that says the same and came with
    /// the newest commit of the file, beside the one before. What goes back to an earlier state
    /// mends a slip and is left out.
    pub(super) fn changed(&self, all: impl IntoIterator<Item = S>) -> Vec<Changed<'_, S>> {
        let mut out = Vec::new();
        for (key, list) in by_key(all) {
            let Some(states) = self.by_key.get(&key) else {
                continue;
            };
            let Some((before, earlier)) = self.state_before(states, &list) else {
                continue;
            };
            for (was, now) in pairs(&before.list, list) {
                if !earlier.iter().any(|s| s.list.iter().any(|e| e.same(&now))) {
                    let by = &*before.by;
                    out.push(Changed { was, now, by });
                }
            }
        }
        out
    }

    fn state_before<'s>(
        &self,
        states: &'s [State<S>],
        list: &[S],
    ) -> Option<(&'s State<S>, &'s [State<S>])> {
        let (newest, earlier) = states.split_last()?;
        if !all_same(&newest.list, list) {
            return Some((newest, earlier));
        }
        let of_newest_commit = self
            .newest
            .as_ref()
            .is_some_and(|n| Arc::ptr_eq(n, &newest.by));
        let (before, earlier) = earlier.split_last()?;
        of_newest_commit.then_some((before, earlier))
    }
}

fn by_key<S: Stated>(all: impl IntoIterator<Item = S>) -> indexmap::IndexMap<Box<str>, Vec<S>> {
    let mut out = indexmap::IndexMap::<Box<str>, Vec<S>>::new();
    for s in all {
        out.entry(s.key().into()).or_default().push(s);
    }
    out
}

fn all_same<S: Stated>(a: &[S], b: &[S]) -> bool {
    a.len() == b.len() && a.iter().zip(b).all(|(a, b)| a.same(b))
}

/// Those of one key that differ, old beside new. None where lines were added or removed: old and
/// new ones cannot be matched then.
fn pairs<S: Stated>(before: &[S], now: Vec<S>) -> Vec<(&S, S)> {
    if before.len() != now.len() {
        return Vec::new();
    }
    let mut left: Vec<&S> = before.iter().collect();
    let mut moved = Vec::new();
    for n in now {
        match left.iter().position(|b| b.same(&n)) {
            Some(i) => drop(left.remove(i)),
            None => moved.push(n),
        }
    }
    left.into_iter().zip(moved).collect()
}
