//! A space: the open documents that share a root folder, and what was computed from them.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, Instant};

use downlead_base::Span;
use downlead_eval::history::Recorded;
use downlead_eval::{Snapshot, Stage};
use downlead_station::{LoadError, Loader};
use rustc_hash::FxHashMap;

use crate::disk::{self, Stamp};
use crate::docs::{Documents, Key, differences};
use crate::recall::Recall;

/// Why there is no snapshot of these texts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Broken {
    /// Evaluation failed on them; the cause was reported.
    Failed,
    /// Evaluation was stopped because its result is no longer needed. Finished parts are kept.
    Stopped,
}

/// What a request needs of the results.
#[derive(Clone, Copy)]
pub(crate) struct Asked<'a> {
    /// File.
    pub(crate) path: &'a str,
    /// Range in it.
    pub(crate) range: Span,
    /// Stage of evaluation.
    pub(crate) stage: Stage,
}

impl Asked<'_> {
    /// Computes it. Whether it was not stopped.
    fn of(self, s: &mut Snapshot, sources: &Sources<'_>, stop: &dyn Fn() -> bool) -> bool {
        let Some(file) = s.files().iter().position(|f| f.path == self.path) else {
            return s.finish(sources, stop);
        };
        if s.is_stopped() {
            s.edit_for_later(file, &[], sources);
        }
        s.evaluate(file, self.range, self.stage, stop)
    }
}

/// Outcome of an edit of the snapshot.
enum Followed {
    Done,
    Stopped,
    /// It must be loaded.
    Lost,
}

/// A text that makes evaluation panic, for tests. Followed by `-PAUSES`,
/// evaluation takes long; with `-WAITS`, until it is stopped.
#[derive(Clone, Debug, Default)]
pub(crate) struct Fault(pub(crate) Option<String>);

impl Fault {
    fn strike(&self, text: &str, stop: &dyn Fn() -> bool) {
        let word = self.0.as_deref();
        let Some((_, after)) = word.and_then(|w| text.split_once(w)) else {
            return;
        };
        if after.starts_with("-PAUSES") {
            std::thread::sleep(Duration::from_millis(500));
        } else if after.starts_with("-WAITS") {
            let begun = Instant::now();
            while !stop() {
                assert!(begun.elapsed() < Duration::from_secs(20), "never stopped");
                std::thread::sleep(Duration::from_millis(2));
            }
        } else {
            panic!("injected");
        }
    }
}

/// A space.
pub(crate) struct Space {
    pub(crate) key: Key,
    pub(crate) fault: Fault,
    snapshot: Option<Snapshot>,
    /// Change counter of each document whose text the snapshot has, by path.
    has: FxHashMap<String, u64>,
    /// Files read from the disk or not found there, with their state at that time.
    stamps: RefCell<BTreeMap<String, Stamp>>,
    wide: Option<Wide>,
    /// Earlier states of files from the repository.
    pub(crate) recall: Recall,
    /// Grows with every change of a text, of the set of documents or of a file.
    pub(crate) generation: u64,
    pub(crate) published: u64,
    failed: Option<u64>,
    stale: bool,
    /// Duration of the last evaluation.
    pub(crate) cost: Duration,
}

/// All files below the root, not only the open ones: for what concerns files that are not open.
struct Wide {
    generation: u64,
    files: Vec<(String, Stamp)>,
    snapshot: Snapshot,
}

/// Texts: those of open documents before those on the disk.
struct Sources<'a> {
    key: &'a Key,
    docs: &'a Documents,
    stamps: &'a RefCell<BTreeMap<String, Stamp>>,
}

impl Loader for Sources<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        if let Some(doc) = self.docs.at(self.key, path) {
            return Ok(doc.text.as_str().into());
        }
        match self.key {
            Key::Root(root) => {
                self.stamps
                    .borrow_mut()
                    .insert(path.to_owned(), disk::stamp(&root.join(path)));
                disk::read(root, path)
            }
            Key::Alone(_) => Err(LoadError::NotFound),
        }
    }

    fn beside(&self, path: &str) -> Vec<String> {
        match self.key {
            Key::Root(root) => downlead_git::names_beside(root, path),
            Key::Alone(_) => Vec::new(),
        }
    }

    fn root(&self) -> Option<String> {
        match self.key {
            Key::Root(root) => Some(root.display().to_string()),
            Key::Alone(_) => None,
        }
    }
}

impl Space {
    pub(crate) fn new(key: Key, fault: Fault) -> Space {
        Space {
            key,
            fault,
            snapshot: None,
            has: FxHashMap::default(),
            stamps: RefCell::default(),
            wide: None,
            recall: Recall::default(),
            generation: 1,
            published: 0,
            failed: None,
            stale: true,
            cost: Duration::ZERO,
        }
    }

    /// The folder.
    pub(crate) fn root(&self) -> Option<&Path> {
        match &self.key {
            Key::Root(path) => Some(path),
            Key::Alone(_) => None,
        }
    }

    /// A document's text was changed.
    pub(crate) fn changed(&mut self) {
        self.generation += 1;
    }

    /// Which documents are open, or what is on the disk, was changed.
    pub(crate) fn rearranged(&mut self) {
        self.generation += 1;
        self.stale = true;
    }

    /// True if the next `sync` must load everything.
    pub(crate) fn must_load(&self) -> bool {
        self.stale || self.snapshot.is_none()
    }

    /// True if files read from the disk have changed since.
    pub(crate) fn disk_changed(&self) -> bool {
        let Key::Root(root) = &self.key else {
            return false;
        };
        self.stamps
            .borrow()
            .iter()
            .any(|(path, old)| disk::stamp(&root.join(path)) != *old)
    }

    /// True if the snapshot has the documents' texts.
    fn has_all(&self, docs: &Documents) -> bool {
        !self.must_load()
            && docs
                .of(&self.key)
                .iter()
                .all(|(p, d)| self.has.get(*p) == Some(&d.change))
    }

    /// Brings the snapshot to the documents' texts.
    ///
    /// # Errors
    /// [`Broken`] if evaluation panics on them, also when repeated, or if `stop` returns true.
    pub(crate) fn sync(
        &mut self,
        docs: &Documents,
        stop: &dyn Fn() -> bool,
    ) -> Result<bool, Broken> {
        if self.failed == Some(self.generation) {
            return Err(Broken::Failed);
        }
        if self.has_all(docs) && self.snapshot.as_ref().is_some_and(Snapshot::is_finished) {
            return Ok(false);
        }
        let begun = Instant::now();
        let done = match self.follow(docs, None, stop) {
            Followed::Done => true,
            Followed::Lost => self.load(docs, None),
            Followed::Stopped => {
                // it takes at least as long
                self.cost = self.cost.max(begun.elapsed());
                return Err(Broken::Stopped);
            }
        };
        self.cost = begun.elapsed();
        self.ended(docs, done).map(|()| true)
    }

    /// Brings the snapshot to the documents' texts, and what is in a range of one of them to a stage
    /// of evaluation; the rest is computed by the next [`Space::sync`].
    ///
    /// # Errors
    /// As those of [`Space::sync`].
    pub(crate) fn sync_first(
        &mut self,
        docs: &Documents,
        asked: Asked<'_>,
        stop: &dyn Fn() -> bool,
    ) -> Result<(), Broken> {
        if self.failed == Some(self.generation) {
            return Err(Broken::Failed);
        }
        let begun = Instant::now();
        let done = match self.follow(docs, Some(asked), stop) {
            Followed::Done => true,
            Followed::Lost => self.load(docs, Some(asked)),
            Followed::Stopped => return Err(Broken::Stopped),
        };
        self.all_done_since(begun);
        self.ended(docs, done)
    }

    /// Where nothing is left for later, what was just done is all that the last change costs.
    fn all_done_since(&mut self, begun: Instant) {
        if self.snapshot.as_ref().is_some_and(Snapshot::is_finished) {
            self.cost = begun.elapsed();
        }
    }

    /// Computes what is in a range to the last stage, if the snapshot has the documents' texts.
    /// False if it has not, or was stopped.
    pub(crate) fn refine(
        &mut self,
        docs: &Documents,
        (path, range): (&str, Span),
        stop: &dyn Fn() -> bool,
    ) -> bool {
        if !self.has_all(docs) {
            return false;
        }
        let asked = Asked {
            path,
            range,
            stage: Stage::Whole,
        };
        let begun = Instant::now();
        match self.follow(docs, Some(asked), stop) {
            Followed::Done => {
                self.all_done_since(begun);
                true
            }
            Followed::Stopped => false,
            Followed::Lost => {
                // it panicked: the next synchronization says so
                self.stale = true;
                false
            }
        }
    }

    /// Notes how a synchronization has ended.
    fn ended(&mut self, docs: &Documents, done: bool) -> Result<(), Broken> {
        if done {
            self.failed = None;
            let open = docs.of(&self.key);
            self.has = open
                .iter()
                .map(|(p, d)| ((*p).to_owned(), d.change))
                .collect();
            Ok(())
        } else {
            self.failed = Some(self.generation);
            self.snapshot = None;
            Err(Broken::Failed)
        }
    }

    /// Edits the snapshot; computes all, or what is asked for.
    fn follow(
        &mut self,
        docs: &Documents,
        asked: Option<Asked<'_>>,
        stop: &dyn Fn() -> bool,
    ) -> Followed {
        if self.stale {
            return Followed::Lost;
        }
        let Some(mut snapshot) = self.snapshot.take() else {
            return Followed::Lost;
        };
        let sources = Sources {
            key: &self.key,
            docs,
            stamps: &self.stamps,
        };
        let edited = catch_unwind(AssertUnwindSafe(|| {
            for (path, doc) in docs.of(&self.key) {
                let file = snapshot.files().iter().position(|f| f.path == path)?;
                let edits = differences(snapshot.files()[file].text(), &doc.text);
                if !edits.is_empty() {
                    self.fault.strike(&doc.text, stop);
                    match asked {
                        None => _ = snapshot.edit_all_until(file, &edits, &sources, stop),
                        Some(_) => snapshot.edit_for_later(file, &edits, &sources),
                    }
                }
            }
            let done = match asked {
                None => snapshot.finish(&sources, stop),
                Some(asked) => asked.of(&mut snapshot, &sources, stop),
            };
            Some((snapshot, done))
        }));
        match edited.ok().flatten() {
            Some((snapshot, done)) => {
                self.snapshot = Some(snapshot);
                match done {
                    true => Followed::Done,
                    false => Followed::Stopped,
                }
            }
            None => Followed::Lost,
        }
    }

    fn load(&mut self, docs: &Documents, asked: Option<Asked<'_>>) -> bool {
        self.snapshot = None;
        self.stamps.borrow_mut().clear();
        let open = docs.of(&self.key);
        let roots: Vec<String> = open.iter().map(|(p, _)| (*p).to_owned()).collect();
        let sources = Sources {
            key: &self.key,
            docs,
            stamps: &self.stamps,
        };
        let loaded = catch_unwind(AssertUnwindSafe(|| {
            for (_, doc) in &open {
                self.fault.strike(&doc.text, &|| false);
            }
            match asked {
                None => Snapshot::load(&roots, &sources),
                Some(asked) => {
                    let mut snapshot = Snapshot::load_for_later(&roots, &sources);
                    asked.of(&mut snapshot, &sources, &|| false);
                    snapshot
                }
            }
        }));
        self.snapshot = loaded.ok();
        self.stale = false;
        self.recall.due = true;
        if let Some(snapshot) = &mut self.snapshot {
            let known = self.recall.known();
            snapshot.set_all_recorded(known.map(|(p, r)| (p.to_owned(), Arc::clone(r))));
        }
        self.snapshot.is_some()
    }

    /// The snapshot of the open documents, as of the last `sync`.
    pub(crate) fn snapshot(&self) -> Option<&Snapshot> {
        self.snapshot.as_ref()
    }

    /// Passes earlier states of files to the snapshot.
    pub(crate) fn remember(&mut self, all: Vec<(String, Arc<Recorded>)>) {
        if let Some(snapshot) = &mut self.snapshot {
            snapshot.set_all_recorded(all);
        }
    }

    /// Brings the snapshot of all files to the texts and the disk.
    ///
    /// # Errors
    /// [`Broken`] if evaluation panics on them.
    pub(crate) fn sync_wide(
        &mut self,
        docs: &Documents,
        stop: &dyn Fn() -> bool,
    ) -> Result<(), Broken> {
        let files = match &self.key {
            Key::Root(root) => disk::find(root, stop),
            Key::Alone(_) => Vec::new(),
        };
        if self
            .wide
            .as_ref()
            .is_some_and(|w| w.generation == self.generation && w.files == files)
        {
            return Ok(());
        }
        self.wide = None;
        let mut roots: Vec<String> = docs
            .of(&self.key)
            .iter()
            .map(|(p, _)| (*p).to_owned())
            .collect();
        roots.extend(files.iter().map(|(p, _)| p.clone()));
        roots.sort();
        roots.dedup();
        // stamps of files that only this snapshot reads must not mark the other one as changed
        let stamps = RefCell::default();
        let sources = Sources {
            key: &self.key,
            docs,
            stamps: &stamps,
        };
        let loaded = catch_unwind(AssertUnwindSafe(|| {
            for (_, doc) in docs.of(&self.key) {
                self.fault.strike(&doc.text, stop);
            }
            Snapshot::load(&roots, &sources)
        }));
        let snapshot = loaded.map_err(|_| Broken::Failed)?;
        self.wide = Some(Wide {
            generation: self.generation,
            files,
            snapshot,
        });
        Ok(())
    }

    /// The snapshot of all files, as of the last `sync_wide`.
    pub(crate) fn wide(&self) -> Option<&Snapshot> {
        self.wide.as_ref().map(|w| &w.snapshot)
    }
}
