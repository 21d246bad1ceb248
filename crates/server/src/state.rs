//! Server state, owned by a single thread; jobs run in the order of the wire.

use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::time::{Duration, Instant};

use downlead_eval::Snapshot;
use downlead_ide::Config;
use downlead_station::{LoadError, Loader};
use ls_types::Uri;
use serde_json::Value;
use tower_lsp::jsonrpc::Error;

use crate::config::Settings;
use crate::docs::{Document, Documents, Home, Key};
use crate::due::Due;
use crate::jobs::{Ahead, Cancel, Jobs};
use crate::library::Library;
use crate::outbox::{Kind, Outbox};
use crate::peer::Peer;
use crate::space::{Broken, Fault, Space};
use crate::uris;

/// The reason for an evaluation: it decides when the evaluation is stopped.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum For {
    /// A request: until it is cancelled, or a newer change makes its answer worthless.
    Request,
    /// Diagnostics: until something else is wanted.
    Diagnostics,
    /// Diagnostics that are overdue.
    Overdue,
}

/// Shorter work is not stopped for a newer change.
const BRIEF: Duration = Duration::from_millis(50);
/// Work that is overdue is not stopped before this.
const LONG: Duration = Duration::from_secs(1);

/// The state.
pub(crate) struct State {
    pub(crate) peer: Peer,
    pub(crate) out: Outbox,
    pub(crate) docs: Documents,
    pub(crate) spaces: BTreeMap<Key, Space>,
    pub(crate) library: Library,
    pub(crate) due: Due,
    pub(crate) cancel: Cancel,
    pub(crate) ahead: Arc<Ahead>,
    pub(crate) jobs: Jobs<State>,
    /// Generated texts whose changes the client is notified of: their address, and their source's.
    pub(crate) watched: BTreeMap<String, Uri>,
    settings: Settings,
    folder_settings: Vec<(Uri, Settings)>,
    complained: Vec<String>,
    nothing: Snapshot,
    fault: Fault,
    looked: Instant,
    panics: u32,
}

struct Nothing;

impl Loader for Nothing {
    fn read(&self, _: &str) -> Result<Arc<str>, LoadError> {
        Err(LoadError::NotFound)
    }
}

/// Interval of checks of the disk when the client does not watch files, and only while the
/// client is busy with us: idle costs nothing.
const LOOK: Duration = Duration::from_secs(2);

impl State {
    pub(crate) fn new(out: Outbox, fault: Fault, ahead: Arc<Ahead>, jobs: Jobs<State>) -> State {
        State {
            peer: Peer::read(&Value::Null),
            out,
            docs: Documents::default(),
            spaces: BTreeMap::new(),
            library: Library::default(),
            due: Due::default(),
            cancel: Cancel::default(),
            ahead,
            jobs,
            watched: BTreeMap::new(),
            settings: Settings::default(),
            folder_settings: Vec::new(),
            complained: Vec::new(),
            nothing: Snapshot::load(&[], &Nothing),
            fault,
            looked: Instant::now(),
            panics: 0,
        }
    }

    /// Runs a request, which may be cancelled meanwhile; a panic in it is its answer.
    pub(crate) fn run_request<T>(
        &mut self,
        cancel: Cancel,
        job: impl FnOnce(&mut State) -> Result<T, Error>,
    ) -> Result<T, Error> {
        self.cancel = cancel;
        let done = catch_unwind(AssertUnwindSafe(|| job(self)));
        self.cancel = Cancel::default();
        done.unwrap_or_else(|_| {
            self.panicked();
            Err(Error::internal_error())
        })
    }

    /// After a panic: results may be incomplete and are dropped.
    pub(crate) fn panicked(&mut self) {
        for space in self.spaces.values_mut() {
            space.rearranged();
        }
        self.panics += 1;
        if self.panics == 1 {
            self.out.show(
                Kind::Error,
                "Downlead: something went wrong inside the server. It goes on; its log says more.",
            );
        }
        self.out.log(
            Kind::Error,
            "A request ended in a panic; its place is in the server's standard error.",
        );
    }

    /// `initialize` was answered.
    pub(crate) fn begin(&mut self, peer: Peer) {
        self.library
            .files_for_all(peer.virtual_documents || peer.fetches_content);
        if let Some(read) = Settings::read(&peer.options) {
            if let Some(s) = read.settings {
                self.settings = s;
            }
            self.complain(read.complaints);
        }
        self.peer = peer;
    }

    /// Settings from the client, for all or for one folder.
    pub(crate) fn configure(&mut self, folder: Option<&Uri>, value: &Value) {
        let Some(read) = Settings::read(value) else {
            return;
        };
        self.complain(read.complaints);
        let Some(new) = read.settings else { return };
        let slot = match folder {
            None => &mut self.settings,
            Some(f) => match self.folder_settings.iter().position(|(u, _)| u == f) {
                Some(i) => &mut self.folder_settings[i].1,
                None => {
                    self.folder_settings
                        .push((f.clone(), self.settings.clone()));
                    &mut self.folder_settings.last_mut().expect("just pushed").1
                }
            },
        };
        if *slot == new {
            return;
        }
        let moved = slot.root != new.root;
        let history = slot.history != new.history;
        *slot = new;
        if moved {
            self.rehome();
        }
        for space in self.spaces.values_mut() {
            space.changed();
            if history {
                space.recall.forget();
                space.rearranged();
            }
        }
        self.due.publish_now();
        self.due.refresh_now();
    }

    fn complain(&mut self, complaints: Vec<String>) {
        for c in complaints {
            self.out.log(Kind::Warning, &*c);
            if !self.complained.contains(&c) {
                self.out.show(Kind::Warning, format!("Downlead: {c}"));
                self.complained.push(c);
            }
        }
    }

    /// Settings in force for a document.
    pub(crate) fn settings_of(&self, uri: &Uri) -> &Settings {
        let path = uris::to_path(uri);
        let folder = self
            .folder_settings
            .iter()
            .filter(|(f, _)| match (&path, uris::to_path(f)) {
                (Some(p), Some(f)) => p.starts_with(f),
                _ => false,
            })
            .max_by_key(|(f, _)| f.as_str().len());
        folder.map_or(&self.settings, |(_, s)| s)
    }

    /// Configuration of the features for a document.
    pub(crate) fn config_of(&self, uri: &Uri) -> Config {
        self.settings_of(uri)
            .config(self.peer.markdown, self.peer.snippets)
    }

    fn folder_paths(&self) -> impl Iterator<Item = PathBuf> {
        self.peer.folders.iter().filter_map(uris::to_path)
    }

    /// The space or library that a document belongs to.
    pub(crate) fn home_of(&self, uri: &Uri) -> Home {
        if uri.scheme().as_str() == uris::SCHEME {
            let path = uris::unescape(uri.path().as_str());
            return match self.library.index_of(path.trim_start_matches('/')) {
                Some(i) => Home::Library(i),
                None => Home::Made,
            };
        }
        let Some(path) = uris::to_path(uri) else {
            return self.home_of_unsaved(uri);
        };
        if let Some(i) = self.library.index_of_file(&path) {
            return Home::Library(i);
        }
        let root = self.root_for(uri, &path);
        match uris::below(&root, &path) {
            Some(path) => Home::Space {
                key: Key::Root(root),
                path,
            },
            None => self.home_of_unsaved(uri),
        }
    }

    fn root_for(&self, uri: &Uri, path: &Path) -> PathBuf {
        let folder = self
            .folder_paths()
            .filter(|f| path.starts_with(f))
            .max_by_key(|f| f.as_os_str().len());
        if let Some(set) = &self.settings_of(uri).root {
            let set = match folder.clone().or_else(|| self.folder_paths().next()) {
                Some(f) => f.join(set),
                None => PathBuf::from(set),
            };
            if set.is_absolute() && path.starts_with(&set) {
                return set;
            }
        }
        let text = self.docs.get(uri).map(|doc| doc.text.as_str());
        let home = downlead_git::home();
        downlead_git::root_of(path, text, folder.as_deref(), home.as_deref())
    }

    /// A text that is no file belongs to the first folder, under a name that no file has.
    fn home_of_unsaved(&self, uri: &Uri) -> Home {
        let text = uris::unescape(uri.as_str());
        let scheme = uri.scheme().as_str();
        let last = text
            .rsplit(['/', '\\', ':'])
            .find(|s| !s.is_empty())
            .unwrap_or("text")
            .to_owned();
        let key = match self.folder_paths().next() {
            Some(folder) => Key::Root(folder),
            None => Key::Alone(uri.as_str().to_owned()),
        };
        let taken = |p: &str| self.docs.at(&key, p).is_some_and(|d| d.uri != *uri);
        let mut path = format!("{scheme}:{last}");
        let mut n = 2;
        while taken(&path) {
            path = format!("{scheme}:{last}~{n}");
            n += 1;
        }
        Home::Space { key, path }
    }

    /// Opens a document in its space.
    pub(crate) fn open(&mut self, uri: Uri, version: i32, text: String) {
        let home = self.home_of(&uri);
        let change = self.docs.tick();
        if let Home::Space { key, .. } = &home {
            self.space(key).rearranged();
        }
        let mut new = Document::new(uri, version, text, home, change);
        if let Some(old) = self.docs.get(&new.uri) {
            new.published = old.published;
        }
        self.docs.insert(new);
        self.due.publish_now();
        self.look_at_disk();
    }

    /// Closes a document and clears its diagnostics.
    pub(crate) fn close(&mut self, uri: &Uri) {
        let Some(doc) = self.docs.remove(uri) else {
            return;
        };
        if let Home::Space { key, .. } = &doc.home {
            if self.docs.of(key).is_empty() {
                self.spaces.remove(key);
            } else {
                self.space(key).rearranged();
                self.due.publish_now();
                self.due.refresh_soon();
            }
        }
        if !self.peer.pull && matches!(doc.home, Home::Space { .. }) {
            let none = serde_json::json!({ "uri": uri, "diagnostics": [] });
            self.out.publish(uri.as_str(), none.to_string().as_bytes());
        }
    }

    pub(crate) fn space(&mut self, key: &Key) -> &mut Space {
        if !self.spaces.contains_key(key) {
            self.spaces
                .insert(key.clone(), Space::new(key.clone(), self.fault.clone()));
        }
        self.spaces.get_mut(key).expect("just inserted")
    }

    /// Assigns all documents to spaces again, after folders or the root were changed.
    pub(crate) fn rehome(&mut self) {
        let uris: Vec<Uri> = self.docs.iter().map(|d| d.uri.clone()).collect();
        for uri in uris {
            let home = self.home_of(&uri);
            if let Home::Space { key, .. } = &home {
                self.space(key).rearranged();
            }
            if let Some(doc) = self.docs.get_mut(&uri) {
                doc.home = home;
            }
        }
        let docs = &self.docs;
        self.spaces.retain(|key, _| !docs.of(key).is_empty());
        for space in self.spaces.values_mut() {
            space.rearranged();
        }
        self.due.publish_now();
    }

    /// Reads closed files again if they were changed on the disk.
    pub(crate) fn look_at_disk(&mut self) {
        self.looked = Instant::now();
        let mut found = false;
        for space in self.spaces.values_mut() {
            if !space.must_load() && space.disk_changed() {
                space.rearranged();
                // another branch may be out now
                space.recall.stale = true;
                found = true;
            }
        }
        if found {
            self.due.publish_now();
            self.due.refresh_soon();
        }
    }

    /// The same, now and then, for clients that do not watch files.
    pub(crate) fn maybe_look_at_disk(&mut self) {
        if !self.peer.watch && self.looked.elapsed() > LOOK {
            self.look_at_disk();
        }
    }

    /// The snapshot for texts that belong to no space.
    pub(crate) fn nothing(&self) -> &Snapshot {
        &self.nothing
    }

    /// Brings a space up to date; shows progress if that takes long.
    pub(crate) fn sync(&mut self, key: &Key, whom: For) -> Result<(), Broken> {
        let Some(space) = self.spaces.get_mut(key) else {
            return Ok(());
        };
        let slow = space.must_load() || space.cost > Duration::from_millis(50);
        let progress =
            (slow && self.peer.progress).then(|| self.out.progress("Evaluating stations"));
        let before = space.generation;
        let (cancel, ahead) = (self.cancel.clone(), Arc::clone(&self.ahead));
        let begun = Instant::now();
        let stop = move || {
            let newer = ahead.changes.load(Ordering::SeqCst) > 0;
            let asked = ahead.requests.load(Ordering::SeqCst) > 0;
            match whom {
                For::Request => cancel.is_set() || newer && begun.elapsed() > BRIEF,
                For::Diagnostics => (newer || asked) && begun.elapsed() > BRIEF,
                For::Overdue => newer && begun.elapsed() > LONG,
            }
        };
        let result = space.sync(&self.docs, &stop);
        drop(progress);
        if result == Err(Broken::Failed) && space.published != before {
            self.out.log(
                Kind::Error,
                "Evaluation panicked on the present text. It is tried again when the text changes.",
            );
        }
        result.map(|_| ())
    }
}
