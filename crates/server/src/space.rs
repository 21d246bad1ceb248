//! A space: the open documents that share a root folder, and what was computed from them.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant};

use downlead_eval::Snapshot;
use downlead_station::{LoadError, Loader};
use rustc_hash::FxHashMap;

use crate::disk::{self, Stamp};
use crate::docs::{Documents, difference};

/// Which space.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) enum Key {
    /// The files below a folder.
    Root(PathBuf),
    /// One document that has no folder, by its address.
    Alone(String),
}

/// Evaluation failed on these texts; the cause was reported.
#[derive(Debug)]
pub(crate) struct Broken;

/// A text that makes evaluation panic: for tests of what then happens.
#[derive(Clone, Debug, Default)]
pub(crate) struct Fault(pub(crate) Option<String>);

impl Fault {
    fn strike(&self, text: &str) {
        if let Some(word) = &self.0 {
            assert!(!text.contains(word.as_str()), "injected");
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
    /// Files read from the disk, or looked for in vain, as they then were.
    stamps: RefCell<BTreeMap<String, Stamp>>,
    wide: Option<Wide>,
    /// Grows with every change of a text, of the set of documents or of a file.
    pub(crate) generation: u64,
    pub(crate) published: u64,
    failed: Option<u64>,
    stale: bool,
    /// How long the last change took to work out.
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

    /// Whether the next look must load everything.
    pub(crate) fn must_load(&self) -> bool {
        self.stale || self.snapshot.is_none()
    }

    /// Whether files read from the disk are no longer what they were.
    pub(crate) fn disk_changed(&self) -> bool {
        let Key::Root(root) = &self.key else {
            return false;
        };
        self.stamps
            .borrow()
            .iter()
            .any(|(path, old)| disk::stamp(&root.join(path)) != *old)
    }

    /// Brings the snapshot to the documents' texts.
    ///
    /// # Errors
    /// [`Broken`] if evaluation panics on them, also when begun anew.
    pub(crate) fn sync(&mut self, docs: &Documents) -> Result<bool, Broken> {
        if self.failed == Some(self.generation) {
            return Err(Broken);
        }
        let open = docs.of(&self.key);
        if !self.must_load()
            && open
                .iter()
                .all(|(p, d)| self.has.get(*p) == Some(&d.change))
        {
            return Ok(false);
        }
        let begun = Instant::now();
        let done = self.follow(docs) || self.load(docs);
        self.cost = begun.elapsed();
        if done {
            self.failed = None;
            self.has = open
                .iter()
                .map(|(p, d)| ((*p).to_owned(), d.change))
                .collect();
            Ok(true)
        } else {
            self.failed = Some(self.generation);
            self.snapshot = None;
            Err(Broken)
        }
    }

    /// Edits the snapshot; false if it must be loaded.
    fn follow(&mut self, docs: &Documents) -> bool {
        if self.stale {
            return false;
        }
        let Some(mut snapshot) = self.snapshot.take() else {
            return false;
        };
        let sources = Sources {
            key: &self.key,
            docs,
            stamps: &self.stamps,
        };
        let edited = catch_unwind(AssertUnwindSafe(|| {
            for (path, doc) in docs.of(&self.key) {
                let file = snapshot.files().iter().position(|f| f.path == path)?;
                if let Some((span, text)) = difference(snapshot.files()[file].text(), &doc.text) {
                    self.fault.strike(&doc.text);
                    snapshot.edit(file, span, text, &sources);
                }
            }
            Some(snapshot)
        }));
        self.snapshot = edited.ok().flatten();
        self.snapshot.is_some()
    }

    fn load(&mut self, docs: &Documents) -> bool {
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
                self.fault.strike(&doc.text);
            }
            Snapshot::load(&roots, &sources)
        }));
        self.snapshot = loaded.ok();
        self.stale = false;
        self.snapshot.is_some()
    }

    /// The snapshot of the open documents, as of the last `sync`.
    pub(crate) fn snapshot(&self) -> Option<&Snapshot> {
        self.snapshot.as_ref()
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
        // stamps of files that only this snapshot reads are none of the other's business
        let stamps = RefCell::default();
        let sources = Sources {
            key: &self.key,
            docs,
            stamps: &stamps,
        };
        let loaded = catch_unwind(AssertUnwindSafe(|| {
            for (_, doc) in docs.of(&self.key) {
                self.fault.strike(&doc.text);
            }
            Snapshot::load(&roots, &sources)
        }));
        let snapshot = loaded.map_err(|_| Broken)?;
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
