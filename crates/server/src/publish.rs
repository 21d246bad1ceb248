//! Diagnostics to the client, and the word that hints are to be asked for again.

use std::hash::{Hash, Hasher};
use std::time::{Duration, Instant};

use downlead_base::Severity;
use downlead_ide::{Doc, Finding};
use ls_types::{
    CodeDescription, Diagnostic, DiagnosticRelatedInformation, DiagnosticSeverity, DiagnosticTag,
    NumberOrString, Range, Uri,
};
use rustc_hash::FxHasher;
use serde::Serialize;
use serde_json::json;

use crate::docs::Home;
use crate::space::{Broken, Key};
use crate::state::{For, State};
use crate::uris;
use crate::view::View;

/// Texts are told to have settled after this.
const SETTLED: Duration = Duration::from_millis(300);
/// Diagnostics wait no longer than this, however busy the client is.
const STARVED: Duration = Duration::from_millis(250);
/// Evaluation that takes longer than this waits for a pause in typing.
const QUICK: Duration = Duration::from_millis(15);

/// What is to be done when there is nothing else to do.
#[derive(Default)]
pub(crate) struct Due {
    publish: Option<Instant>,
    since: Option<Instant>,
    refresh: Option<Instant>,
}

impl Due {
    pub(crate) fn publish_now(&mut self) {
        self.publish_after(Duration::ZERO);
    }

    /// Publishes after a pause as long as the evaluation is slow.
    pub(crate) fn publish_after(&mut self, cost: Duration) {
        let now = Instant::now();
        let pause = if cost < QUICK {
            Duration::ZERO
        } else {
            (2 * cost).min(Duration::from_millis(200))
        };
        self.publish = Some(now + pause);
        self.since.get_or_insert(now);
    }

    /// Asks for a refresh when the texts have settled.
    pub(crate) fn refresh_soon(&mut self) {
        self.refresh = Some(Instant::now() + SETTLED);
    }

    pub(crate) fn refresh_now(&mut self) {
        self.refresh = Some(Instant::now());
    }

    /// A change of a text: a refresh that waits goes on waiting.
    pub(crate) fn unsettle(&mut self) {
        if self.refresh.is_some() {
            self.refresh_soon();
        }
    }

    pub(crate) fn next(&self) -> Option<Instant> {
        [self.publish, self.refresh].into_iter().flatten().min()
    }

    pub(crate) fn starved(&self) -> bool {
        self.since.is_some_and(|s| s.elapsed() > STARVED)
    }
}

impl State {
    /// Does what is due.
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
                    // what stopped it comes first
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

    /// False if it was stopped for something newer.
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
        let uris: Vec<Uri> = self
            .docs
            .of(key)
            .iter()
            .map(|(_, d)| d.uri.clone())
            .collect();
        if !self.peer.pull {
            let all = if sound {
                self.findings(key)
            } else {
                uris.iter().map(|u| (u.clone(), vec![broken()])).collect()
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
            }
            self.publish_unopened(key, unopened);
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

    /// The made texts that follow a source in that space have changed.
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

/// What is sent of a document.
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

/// A finding as the protocol has it.
pub(crate) fn diagnostic(view: &View<'_>, f: &Finding) -> Diagnostic {
    let peer = &view.state.peer;
    let mut message = f.message.clone();
    let mut related = Vec::new();
    for r in &f.related {
        let Some(location) = view.location(r.place) else {
            continue;
        };
        if peer.related {
            related.push(DiagnosticRelatedInformation {
                location,
                message: r.message.clone(),
            });
        } else {
            let line = location.range.start.line + 1;
            let place = match r.place.doc == view.doc {
                true => format!("line {line}"),
                false => format!(
                    "{} line {line}",
                    downlead_ide::doc_path(view.snapshot, r.place.doc)
                ),
            };
            message.push_str(&format!("\n{place}: {}", r.message));
        }
    }
    let page =
        || uris::own(&format!("code/{}.md", f.code), None).map(|href| CodeDescription { href });
    Diagnostic {
        range: view.range(f.span),
        severity: Some(match f.severity {
            Severity::Error => DiagnosticSeverity::ERROR,
            Severity::Warning => DiagnosticSeverity::WARNING,
            Severity::Info => DiagnosticSeverity::INFORMATION,
            Severity::Hint => DiagnosticSeverity::HINT,
        }),
        code: Some(NumberOrString::String(f.code.to_owned())),
        code_description: (peer.code_pages && peer.virtual_documents)
            .then(page)
            .flatten(),
        source: Some("downlead".to_owned()),
        message,
        related_information: (!related.is_empty()).then_some(related),
        tags: (f.unnecessary && peer.unnecessary).then(|| vec![DiagnosticTag::UNNECESSARY]),
        data: None,
    }
}

/// Diagnostics of one document, for clients that pull.
pub(crate) fn pulled(view: &View<'_>) -> Vec<Diagnostic> {
    let Doc::File(file) = view.doc else {
        return Vec::new();
    };
    downlead_ide::file_diagnostics(view.snapshot, file, &view.config)
        .iter()
        .map(|f| diagnostic(view, f))
        .collect()
}
