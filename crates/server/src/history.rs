//! Asks `git` for earlier states of files with readings, on a thread of its own. The answer comes
//! back as a job.

use std::path::PathBuf;
use std::sync::Arc;

use downlead_eval::history::Recorded;

use crate::docs::Key;
use crate::state::State;

/// The answer of `git`.
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
        let (jobs, key) = (self.jobs.clone(), key.clone());
        let begun = std::thread::Builder::new()
            .name("history".to_owned())
            .spawn(move || {
                let head = downlead_git::head(&root);
                let files = ask(&root, if head == known { new } else { all });
                let answer = Answer { head, files };
                jobs.send(move |st| st.recalled(&key, round, answer));
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
        // files that were added meanwhile
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
