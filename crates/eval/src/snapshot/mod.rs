//! A set of files with everything computed from them, and how an edit changes it.

mod accepted;
mod attach;
mod compute;
mod depends;
mod edit;
mod findings;
mod indented;
mod item;
mod later;
mod load;
mod near_file;
mod outside;
mod parallel;
pub(crate) mod recall;
mod recorded;
mod variant;

pub use accepted::{Accepted, Found};
pub(crate) use item::chains_of;
use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId, Loc, Span};
use downlead_station::{Attachment, Env, LoadError, LowerCache, Lowered};
use downlead_syntax::{File, Item};
use rustc_hash::FxHashMap;

use crate::result::ItemResult;
use recorded::Evidences;
pub use variant::Tried;

/// A file of the set.
pub struct FileEntry {
    /// Path relative to the root.
    pub path: String,
    /// Text and tree; empty if it could not be read.
    pub tree: File,
    /// Why it could not be read.
    pub error: Option<LoadError>,
    /// Whether it was named, rather than used by another.
    pub root: bool,
    /// Files it uses, by index, with the place of the statement.
    pub(crate) uses: Vec<(usize, Loc)>,
}

impl FileEntry {
    /// Its text.
    #[must_use]
    pub fn text(&self) -> &str {
        self.tree.text()
    }
}

/// One scope: a named file and all it uses.
pub struct Scope {
    pub(crate) file: usize,
    pub(crate) env: Arc<Env>,
    pub(crate) items: Vec<Evaluated>,
    /// Items of files that are only used and have no scope of their own.
    used: Vec<Arc<Lowered>>,
    pub(crate) diagnostics: Vec<Diagnostic>,
}

/// An item with its meaning and what was computed from it.
pub type Evaluated = (Arc<Item>, Arc<Lowered>, Arc<ItemResult>);

impl Scope {
    /// Index of the named file.
    #[must_use]
    pub fn file(&self) -> usize {
        self.file
    }

    /// What the file can see.
    #[must_use]
    pub fn env(&self) -> &Env {
        &self.env
    }

    /// Its items in the order of the text.
    #[must_use]
    pub fn items(&self) -> &[Evaluated] {
        &self.items
    }
}

/// Results kept from one version to the next.
#[derive(Default)]
pub(crate) struct Cache {
    lower: LowerCache,
    /// With the lowering they were computed from.
    results: FxHashMap<(ItemId, usize), (u64, Arc<ItemResult>)>,
    /// The result of items of which there is nothing to tell.
    nothing: Arc<ItemResult>,
    /// Files of readings and networks by path.
    attached: FxHashMap<String, Arc<Attachment>>,
}

/// A set of files with everything computed from them.
pub struct Snapshot {
    pub(crate) files: Vec<FileEntry>,
    pub(crate) scopes: Vec<Scope>,
    pub(crate) load_diagnostics: Vec<Diagnostic>,
    /// Trees of the last version while `use` statements are followed again.
    known: FxHashMap<String, File>,
    cache: Cache,
    /// Readings beside what was first recorded.
    evidences: Evidences,
    /// Whether the last change was stopped before all was computed.
    unfinished: bool,
    /// The items whose results are of an earlier state, or of the first stage.
    later: later::Later,
    /// The day as of which acceptances are judged.
    as_of: Option<Box<str>>,
}

/// Never stops.
const ON: &dyn Fn() -> bool = &|| false;

impl Snapshot {
    /// The files.
    #[must_use]
    pub fn files(&self) -> &[FileEntry] {
        &self.files
    }

    /// One scope for each named file.
    #[must_use]
    pub fn scopes(&self) -> &[Scope] {
        &self.scopes
    }

    /// Indices of the files a file uses directly, each with the place of the path.
    #[must_use]
    pub fn uses(&self, file: usize) -> &[(usize, Loc)] {
        &self.files[file].uses
    }

    /// Where a place is: index of the file and range in it. None for the built-in library.
    #[must_use]
    pub fn place(&self, loc: Loc) -> Option<(usize, Span)> {
        self.files.iter().enumerate().find_map(|(i, f)| {
            let p = f.tree.items().iter().find(|p| p.item.id == loc.item)?;
            Some((i, loc.span.shift(p.start)))
        })
    }

    /// File and offset of every item.
    pub(crate) fn index(&self) -> FxHashMap<ItemId, (usize, u32)> {
        let mut m = FxHashMap::default();
        for (i, f) in self.files.iter().enumerate() {
            for p in f.tree.items() {
                m.insert(p.item.id, (i, p.start));
            }
        }
        m
    }
}
