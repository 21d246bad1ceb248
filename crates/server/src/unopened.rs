//! Findings of files that are not open but used by open ones: under their own addresses, cleared
//! when they are fixed, opened, removed or no longer used.

use std::hash::{Hash, Hasher};

use downlead_base::Severity;
use downlead_eval::Snapshot;
use downlead_ide::Finding;
use ls_types::{Diagnostic, Uri};
use rustc_hash::FxHasher;
use serde_json::json;

use crate::diagnostics::diagnostic;
use crate::docs::{Document, Key};
use crate::state::State;
use crate::uris;
use crate::view::View;

impl State {
    /// Errors and warnings of the files of a space that are used and not open. `found` has the
    /// findings of all files by index.
    pub(crate) fn of_unopened(
        &self,
        key: &Key,
        snapshot: &Snapshot,
        found: &[Vec<Finding>],
    ) -> Vec<(Uri, Vec<Diagnostic>)> {
        let Key::Root(root) = key else {
            return Vec::new();
        };
        let mut out = Vec::new();
        for (i, file) in snapshot.files().iter().enumerate() {
            let list = found.get(i).map_or(&[][..], Vec::as_slice);
            let bad = |f: &&Finding| f.severity >= Severity::Warning;
            if file.root || list.iter().find(bad).is_none() {
                continue;
            }
            let Some(uri) = uris::from_path(&root.join(&file.path)) else {
                continue;
            };
            let doc = Document::closed(uri.clone(), file.text());
            let view = View::of_file(self, key, snapshot, &doc, i);
            let diagnostics = list.iter().filter(bad).map(|f| diagnostic(&view, f));
            out.push((uri, diagnostics.collect()));
        }
        out
    }

    /// Sends them if they differ from those sent before, and clears those that are gone.
    pub(crate) fn publish_unopened(&mut self, key: &Key, all: Vec<(Uri, Vec<Diagnostic>)>) {
        let mut old = std::mem::take(&mut self.docs.shown);
        for (uri, diagnostics) in all {
            let params = json!({ "uri": uri, "diagnostics": diagnostics });
            let mut hasher = FxHasher::default();
            let params = params.to_string();
            params.hash(&mut hasher);
            let digest = hasher.finish();
            let before = old.remove(uri.as_str());
            if before.is_none_or(|(_, d)| d != digest) {
                self.out.publish(uri.as_str(), params.as_bytes());
            }
            self.docs
                .shown
                .insert(uri.as_str().to_owned(), (key.clone(), digest));
        }
        for (uri, (of, digest)) in old {
            if of != *key && self.spaces.contains_key(&of) {
                self.docs.shown.insert(uri, (of, digest));
            } else {
                self.wipe(&uri);
            }
        }
    }

    /// Clears the diagnostics of files that no open document uses any more.
    pub(crate) fn wipe_unopened(&mut self) {
        for (uri, (of, digest)) in std::mem::take(&mut self.docs.shown) {
            if self.spaces.contains_key(&of) {
                self.docs.shown.insert(uri, (of, digest));
            } else {
                self.wipe(&uri);
            }
        }
    }

    /// Clears them, unless the document is open: then its own findings are sent.
    fn wipe(&mut self, uri: &str) {
        let open = uri
            .parse()
            .ok()
            .is_some_and(|u| self.docs.get(&u).is_some());
        if !open {
            let none = json!({ "uri": uri, "diagnostics": [] });
            self.out.publish(uri, none.to_string().as_bytes());
        }
    }
}
