//! Earlier states of files with readings, as far as `git` was asked for them.

use std::collections::BTreeMap;
use std::sync::Arc;

use downlead_eval::history::Recorded;

/// What was asked and answered about the files of a space.
#[derive(Default)]
pub(crate) struct Recall {
    /// By path; none while it is asked, or if there is nothing.
    pub(crate) files: BTreeMap<String, Option<Arc<Recorded>>>,
    /// Whether there may be files that were not asked for.
    pub(crate) due: bool,
    /// Whether something may have been committed since.
    pub(crate) stale: bool,
    /// Whether an answer is awaited; there is one question at a time.
    pub(crate) asked: bool,
    /// Of answers to questions before this many changes of mind nothing is wanted.
    pub(crate) round: u64,
    /// The commit the last answer was about.
    pub(crate) head: Option<String>,
}

impl Recall {
    /// What is known, by path.
    pub(crate) fn known(&self) -> impl Iterator<Item = (&str, &Arc<Recorded>)> {
        self.files
            .iter()
            .filter_map(|(p, r)| Some((p.as_str(), r.as_ref()?)))
    }

    /// Nothing is known any more.
    pub(crate) fn forget(&mut self) {
        *self = Recall {
            due: true,
            round: self.round + 1,
            ..Recall::default()
        };
    }
}
