//! Files that are named or used, and circles of them.

use std::sync::Arc;

use downlead_base::{Diagnostic, codes};
use downlead_station::model::Meaning;
use downlead_station::{LoadError, Loader, keyword_of, normalise};
use downlead_syntax::{File, Item};
use rustc_hash::FxHashMap;

use super::later::When;
use super::near_file;
use super::outside::outside;
use super::{Cache, FileEntry, ON, Snapshot};
use crate::network;

/// Files nested deeper than this by `use` are refused.
const MAX_USE_DEPTH: usize = 64;

impl Snapshot {
    /// Loads the named files and all they use, and computes everything.
    pub fn load(roots: &[String], loader: &dyn Loader) -> Snapshot {
        Snapshot::load_when(roots, loader, When::Now)
    }

    pub(super) fn load_when(roots: &[String], loader: &dyn Loader, when: When) -> Snapshot {
        let mut s = Snapshot {
            files: Vec::new(),
            scopes: Vec::new(),
            load_diagnostics: Vec::new(),
            known: FxHashMap::default(),
            cache: Cache::default(),
            evidences: super::recorded::Evidences::default(),
            unfinished: false,
            later: super::later::Later::default(),
            as_of: None,
        };
        for r in roots {
            let path = normalise("", r).unwrap_or_else(|| r.clone());
            if let Some(i) = s.files.iter().position(|f| f.path == path) {
                s.files[i].root = true;
                continue;
            }
            s.open(&path, loader, true, 0);
        }
        s.cycles();
        s.compute(loader, ON, when);
        s
    }

    fn open(&mut self, path: &str, loader: &dyn Loader, root: bool, depth: usize) -> usize {
        let (tree, error) = match loader.read(path) {
            Ok(text) => (File::parse(text), None),
            Err(e) => (File::parse(""), Some(e)),
        };
        self.add(path, tree, error, root, loader, depth)
    }

    pub(super) fn add(
        &mut self,
        path: &str,
        tree: File,
        error: Option<LoadError>,
        root: bool,
        loader: &dyn Loader,
        depth: usize,
    ) -> usize {
        let at = self.files.len();
        self.files.push(FileEntry {
            path: path.to_owned(),
            tree,
            error,
            root,
            uses: Vec::new(),
        });
        self.follow(at, loader, depth);
        at
    }

    /// Opens what a file uses.
    fn follow(&mut self, at: usize, loader: &dyn Loader, depth: usize) {
        let items: Vec<Arc<Item>> = self.files[at]
            .tree
            .items()
            .iter()
            .filter(|p| keyword_of(&p.item) == Some("use"))
            .map(|p| Arc::clone(&p.item))
            .collect();
        for item in items {
            let low = self
                .cache
                .lower
                .get(&item, &downlead_station::Lets::default(), 0);
            let Meaning::Use(name) = &low.meaning else {
                continue;
            };
            let base = self.files[at].path.clone();
            let Some(path) = normalise(&base, &name.text) else {
                self.load_diagnostics.push(outside(name, loader));
                continue;
            };
            if let Some(d) = network::used(name) {
                self.load_diagnostics.push(d);
                continue;
            }
            if let Some(i) = self.files.iter().position(|f| f.path == path) {
                self.files[at].uses.push((i, name.loc));
                continue;
            }
            if depth >= MAX_USE_DEPTH {
                self.load_diagnostics.push(
                    Diagnostic::new(
                        &codes::USE_CYCLE,
                        name.loc,
                        format!("More than {MAX_USE_DEPTH} files use each other in a row."),
                    )
                    .at("too deep"),
                );
                continue;
            }
            if let Some(tree) = self.known.get(&path).cloned() {
                // the same tree: identities of its items must not change
                let i = self.add(&path, tree, None, false, loader, depth + 1);
                self.files[at].uses.push((i, name.loc));
                continue;
            }
            match loader.read(&path) {
                Err(LoadError::OutsideRoot) => {
                    self.load_diagnostics.push(outside(name, loader));
                }
                Err(e) => {
                    let d = near_file::not_read(name, &path, &e, loader);
                    self.load_diagnostics.push(d);
                }
                Ok(text) => {
                    let i = self.add(&path, File::parse(text), None, false, loader, depth + 1);
                    self.files[at].uses.push((i, name.loc));
                }
            }
        }
    }

    /// Reports circles of `use`.
    fn cycles(&mut self) {
        let n = self.files.len();
        let mut state = vec![0u8; n];
        let mut found = Vec::new();
        for start in 0..n {
            if state[start] == 0 {
                self.visit(start, &mut state, &mut Vec::new(), &mut found);
            }
        }
        self.load_diagnostics.extend(found);
    }

    fn visit(&self, at: usize, state: &mut [u8], path: &mut Vec<usize>, out: &mut Vec<Diagnostic>) {
        state[at] = 1;
        path.push(at);
        for (next, loc) in &self.files[at].uses {
            match state[*next] {
                0 => self.visit(*next, state, path, out),
                1 => {
                    let from = path.iter().position(|p| p == next).unwrap_or(0);
                    let ring: Vec<&str> = path[from..]
                        .iter()
                        .chain([next])
                        .map(|i| self.files[*i].path.as_str())
                        .collect();
                    out.push(
                        Diagnostic::new(
                            &codes::USE_CYCLE,
                            *loc,
                            format!(
                                "These files use each other in a circle: {}.",
                                ring.join(" → ")
                            ),
                        )
                        .at("closes the circle")
                        .help("Move what both need into a third file."),
                    );
                }
                _ => {}
            }
        }
        path.pop();
        state[at] = 2;
    }

    /// Follows all `use` statements again.
    pub(super) fn reload(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool, when: When) {
        self.load_diagnostics.clear();
        let old = std::mem::take(&mut self.files);
        self.known = old
            .iter()
            .filter(|f| f.error.is_none())
            .map(|f| (f.path.clone(), f.tree.clone()))
            .collect();
        for f in old.iter().filter(|f| f.root) {
            if let Some(i) = self.files.iter().position(|g| g.path == f.path) {
                self.files[i].root = true;
                continue;
            }
            self.add(&f.path, f.tree.clone(), f.error.clone(), true, loader, 0);
        }
        self.known.clear();
        self.cycles();
        self.compute(loader, stop, when);
    }
}
