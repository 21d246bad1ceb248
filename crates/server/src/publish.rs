//! Sends diagnostics and refresh requests when they are due.

use std::hash::{Hash, Hasher};
use std::time::Instant;

use ls_types::{Diagnostic, DiagnosticSeverity, Range, Uri};
use rustc_hash::FxHasher;
use serde::Serialize;
use serde_json::json;

use crate::diagnostics::diagnostic;
use crate::docs::{Home, Key};
use crate::space::Broken;
use crate::state::{For, State};
use crate::view::View;

impl State {
    /// Sends the diagnostics and refresh requests that are due.
    pub(crate) fn settle(&mut self) {
        let now = Instant::now();
        if self.due.publish.is_some_and(|at| at <= now) || self.due.starved() {
            let whom = match self.due.starved() {
                true => For::Overdue,
                false => For::Diagnostics,
            };
            let since = self.due.since.take();
            self.due.publish = None;
            let keys: Vec<Key> = self.spaces.keys().cloned().collect();
            for key in keys {
                if !self.publish_space(&key, whom) {
                    // the job that stopped it runs first
                    self.due.publish_now();
                    self.due.since = since;
                }
            }
        }
        if self.due.refresh.is_some_and(|at| at <= now) {
            self.due.refresh = None;
            let p = &self.peer;
            for (can, method) in [
                (p.refresh_hints, "workspace/inlayHint/refresh"),
                (p.refresh_values, "workspace/inlineValue/refresh"),
                (p.refresh_lenses, "workspace/codeLens/refresh"),
                (p.refresh_tokens, "workspace/semanticTokens/refresh"),
                (
                    p.pull && p.refresh_diagnostics,
                    "workspace/diagnostic/refresh",
                ),
            ] {
                if can {
                    self.out.refresh(method, serde_json::Value::Null);
                }
            }
        }
    }

    /// Publishes the diagnostics of a space. False if a newer job stopped it.
    fn publish_space(&mut self, key: &Key, whom: For) -> bool {
        let Some(space) = self.spaces.get(key) else {
            return true;
        };
        let generation = space.generation;
        if space.published == generation {
            return true;
        }
        let sound = match self.sync(key, whom) {
            Ok(()) => true,
            Err(Broken::Failed) => false,
            Err(Broken::Stopped) => return false,
        };
        if !self.peer.pull {
            self.send_findings(key, sound);
        }
        if let Some(space) = self.spaces.get_mut(key) {
            space.published = generation;
        }
        self.tell_watchers(key);
        if sound {
            self.recall(key);
        }
        true
    }

    /// Sends the findings of a space that is up to date; if it is not sound, that the server failed.
    pub(crate) fn send_findings(&mut self, key: &Key, sound: bool) {
        let all = if sound {
            self.findings(key)
        } else {
            let open = self.docs.of(key);
            let uris = open.iter().map(|(_, d)| d.uri.clone());
            uris.map(|u| (u, vec![broken()])).collect()
        };
        let mut unopened = Vec::new();
        for (uri, diagnostics) in all {
            let Some(doc) = self.docs.get_mut(&uri) else {
                unopened.push((uri, diagnostics));
                continue;
            };
            let params = Published {
                uri: &uri,
                diagnostics: &diagnostics,
                version: doc.version,
            };
            let Ok(params) = serde_json::to_vec(&params) else {
                continue;
            };
            let mut hasher = FxHasher::default();
            params.hash(&mut hasher);
            let digest = hasher.finish();
            if doc.published == Some((doc.version, digest)) {
                continue;
            }
            doc.published = Some((doc.version, digest));
            self.out.publish(uri.as_str(), &params);
            self.told(&uri, &diagnostics);
        }
        self.publish_unopened(key, unopened);
    }

    /// Notifies the client that texts generated from documents of the space have changed.
    fn tell_watchers(&mut self, key: &Key) {
        for (made, source) in &self.watched {
            let here = self
                .docs
                .get(source)
                .is_some_and(|d| matches!(&d.home, Home::Space { key: k, .. } if k == key));
            if !here {
                continue;
            }
            if self.peer.virtual_documents {
                self.out
                    .notify("downlead/virtualDocumentChanged", json!({ "uri": made }));
            }
            if self.peer.fetches_content {
                self.out.refresh(
                    "workspace/textDocumentContent/refresh",
                    json!({ "uri": made }),
                );
            }
        }
    }

    /// Diagnostics of all open documents of a space that is up to date, and of what they use.
    fn findings(&self, key: &Key) -> Vec<(Uri, Vec<Diagnostic>)> {
        let Some(snapshot) = self.spaces.get(key).and_then(|s| s.snapshot()) else {
            return Vec::new();
        };
        let open = self.docs.of(key);
        let Some((_, first)) = open.first() else {
            return Vec::new();
        };
        let mut all = downlead_ide::diagnostics(snapshot, &self.config_of(&first.uri));
        let unopened = self.of_unopened(key, snapshot, &all);
        open.iter()
            .filter_map(|(path, doc)| {
                let file = snapshot.files().iter().position(|f| f.path == *path)?;
                let found = std::mem::take(all.get_mut(file)?);
                let found = self.ripe(snapshot, doc, file, found);
                let view = View::of_file(self, key, snapshot, doc, file);
                Some((
                    doc.uri.clone(),
                    found.iter().map(|f| diagnostic(&view, f)).collect(),
                ))
            })
            .chain(unopened)
            .collect()
    }
}

/// Parameters of `textDocument/publishDiagnostics`.
#[derive(Serialize)]
struct Published<'a> {
    uri: &'a Uri,
    diagnostics: &'a [Diagnostic],
    version: i32,
}

/// Shown when the server itself fails on a text.
fn broken() -> Diagnostic {
    Diagnostic {
        range: Range::default(),
        severity: Some(DiagnosticSeverity::ERROR),
        source: Some("downlead".to_owned()),
        message: "The server failed on this text, which is a fault in the server. It tries again when the text changes.".to_owned(),
        ..Diagnostic::default()
    }
}
