//! What the repository says of earlier states of files with readings. `git` is asked beside the
//! work, and what it answers comes back as a job.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, PoisonError};

use downlead_eval::history::Recorded;

use crate::direct::Direct;
use crate::space::Key;
use crate::state::{Job, State};

/// The way back to the thread that owns the state; gone when the server ends.
#[derive(Clone)]
pub(crate) struct Back(pub(crate) Arc<Mutex<Option<Direct>>>);

impl Back {
    fn send(&self, job: Job) {
        let direct = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(d) = direct.as_ref() {
            // a state that ended needs no answer
            _ = d.jobs.send(job);
        }
    }
}

/// What was asked and answered about the files of a space.
#[derive(Default)]
pub(crate) struct Recall {
    /// By path; none while it is asked, or if there is nothing.
    files: BTreeMap<String, Option<Arc<Recorded>>>,
    /// Whether there may be files that were not asked for.
    pub(crate) due: bool,
    /// Whether something may have been committed since.
    pub(crate) stale: bool,
    /// Whether an answer is awaited; there is one question at a time.
    asked: bool,
    /// Of answers to questions before this many changes of mind nothing is wanted.
    round: u64,
    /// The commit the last answer was about.
    head: Option<String>,
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

/// What `git` says.
struct Answer {
    head: Option<String>,
    files: Vec<(String, Option<Recorded>)>,
}

impl State {
    /// Asks for what is not known yet of a space that is up to date, and for all where another commit
    /// is out than the one it was asked of.
    pub(crate) fn recall(&mut self, key: &Key) {
        let Key::Root(root) = key else { return };
        let (root, wanted) = (root.clone(), self.wants_history(key));
        let Some(space) = self.spaces.get_mut(key) else {
            return;
        };
        let recall = &space.recall;
        if !wanted || recall.asked || !(recall.due || recall.stale) {
            return;
        }
        let Some(snapshot) = space.snapshot() else {
            return;
        };
        let all = snapshot.files_to_recall();
        let recall = &mut space.recall;
        let new: Vec<String> = all
            .iter()
            .filter(|f| !recall.files.contains_key(*f))
            .cloned()
            .collect();
        let stale = std::mem::take(&mut recall.stale);
        recall.due = false;
        if new.is_empty() && !stale || all.is_empty() {
            return;
        }
        for f in &new {
            recall.files.insert(f.clone(), None);
        }
        let (known, round) = (recall.head.clone(), recall.round);
        let (back, key) = (self.back.clone(), key.clone());
        let begun = std::thread::Builder::new()
            .name("history".to_owned())
            .spawn(move || {
                let head = downlead_git::head(&root);
                let files = ask(&root, if head == known { new } else { all });
                let answer = Answer { head, files };
                back.send(Box::new(move |st| st.recalled(&key, round, answer)));
            });
        // without a thread readings are simply not compared
        recall.asked = begun.is_ok();
    }

    fn wants_history(&self, key: &Key) -> bool {
        self.docs
            .of(key)
            .first()
            .is_some_and(|(_, d)| self.settings_of(&d.uri).history)
    }

    fn recalled(&mut self, key: &Key, round: u64, answer: Answer) {
        let Some(space) = self.spaces.get_mut(key) else {
            return;
        };
        if space.recall.round != round {
            return;
        }
        space.recall.asked = false;
        space.recall.head = answer.head;
        let mut news = Vec::new();
        for (path, recorded) in answer.files {
            let recorded = recorded.filter(|r| !r.is_empty()).map(Arc::new);
            let before = space.recall.files.insert(path.clone(), recorded.clone());
            if recorded.is_some() || before.flatten().is_some() {
                news.push((path, recorded.unwrap_or_default()));
            }
        }
        if !news.is_empty() {
            space.remember(news);
            space.changed();
            self.due.publish_now();
            if self.peer.pull {
                self.due.refresh_soon();
            }
        }
        // what came up meanwhile
        self.recall(key);
    }
}

/// Not in a repository, not committed, no `git`: then there is nothing to compare with.
fn ask(root: &std::path::Path, files: Vec<String>) -> Vec<(String, Option<Recorded>)> {
    files
        .into_iter()
        .map(|f| {
            let path: PathBuf = root.join(&f);
            let recorded = downlead_git::recorded(&path).ok().flatten();
            (f, recorded)
        })
        .collect()
}
