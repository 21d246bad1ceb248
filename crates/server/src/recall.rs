//! Earlier states of files with readings, as far as `git` was asked for them.

use std::collections::BTreeMap;
use std::sync::Arc;

use downlead_eval::history::Recorded;

/// The answers about the files of a space.
#[derive(Default)]
pub(crate) struct Recall {
    /// By path; none while the request is pending, or if there is no earlier state.
    pub(crate) files: BTreeMap<String, Option<Arc<Recorded>>>,
    /// True if there may be files that were not requested.
    pub(crate) due: bool,
    /// True if there may be newer commits.
    pub(crate) stale: bool,
    /// True while a request is pending; there is one at a time.
    pub(crate) asked: bool,
    /// Number of resets. An answer to a request of an earlier round is dropped.
    pub(crate) round: u64,
    /// The commit the last answer was about.
    pub(crate) head: Option<String>,
}

impl Recall {
    /// The earlier states known, by path.
    pub(crate) fn known(&self) -> impl Iterator<Item = (&str, &Arc<Recorded>)> {
        self.files
            .iter()
            .filter_map(|(p, r)| Some((p.as_str(), r.as_ref()?)))
    }

    /// Drops all answers.
    pub(crate) fn forget(&mut self) {
        *self = Recall {
            due: true,
            round: self.round + 1,
            ..Recall::default()
        };
    }
}
