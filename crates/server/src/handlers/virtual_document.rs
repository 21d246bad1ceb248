//! Documents that the server generates: reports, derivations, comparisons, pages of codes.

use crate::docs::Home;
use crate::docs::Key;
use crate::outbox::Kind;
use crate::state::State;
use crate::uris;
use crate::view::{View, refused};
use downlead_base::code_named;
use downlead_eval::Snapshot;
use downlead_git::Revision;
use downlead_ide as ide;
use downlead_station::LoadError;
use ls_types::Uri;
use serde::Deserialize;
use serde_json::{Value, json};
use tower_lsp::jsonrpc::{Error, Result};

/// A text that the server generates from a document.
pub(crate) enum Generated {
    /// The report of all, or of one station, chain or session.
    Report(Option<String>),
    /// The derivation of a line, counted from 1.
    Explanation(u32),
    /// Comparison with a revision.
    Comparison(String),
}

impl Generated {
    /// Comparison with `HEAD` if no revision is given.
    pub(crate) fn comparison(revision: Option<String>) -> Generated {
        Generated::Comparison(revision.unwrap_or_else(|| "HEAD".to_owned()))
    }

    /// The text in Markdown.
    ///
    /// # Errors
    /// If the document is not open or has nothing of this kind.
    pub(crate) fn text(&self, st: &mut State, source: &Uri) -> Result<String> {
        match self {
            Generated::Report(name) => report(st, source, name.as_deref()),
            Generated::Explanation(line) => explain(st, source, *line),
            Generated::Comparison(revision) => compare(st, source, revision),
        }
    }

    /// Path and query of its address.
    fn address(&self, source: &Uri) -> (&'static str, &'static str, String) {
        let source = uris::escape(source.as_str());
        match self {
            Generated::Report(Some(name)) => (
                "report",
                "report.md",
                format!("uri={source}&name={}", uris::escape(name)),
            ),
            Generated::Report(None) => ("report", "report.md", format!("uri={source}")),
            Generated::Explanation(line) => (
                "explain",
                "explanation.md",
                format!("uri={source}&line={line}"),
            ),
            Generated::Comparison(revision) => (
                "compare",
                "changes.md",
                format!("uri={source}&revision={}", uris::escape(revision)),
            ),
        }
    }

    /// Opens the text in the editor: under our own scheme if the client can, else as a file, else
    /// as a message.
    pub(crate) fn show(&self, st: &mut State, source: &Uri, text: &str) {
        let (kind, title, query) = self.address(source);
        let own = st.peer.virtual_documents || st.peer.fetches_content;
        let uri = if own {
            uris::own(&format!("{kind}/{title}"), Some(&query))
        } else {
            st.library.made_file(source, title, text)
        };
        match uri {
            Some(uri) if st.peer.show_document => {
                if own {
                    st.watched.insert(uri.as_str().to_owned(), source.clone());
                }
                st.out.ask(
                    "window/showDocument",
                    json!({ "uri": uri, "takeFocus": false }),
                    |_| {},
                );
            }
            _ => st.out.show(Kind::Info, text),
        }
    }
}

pub(crate) fn open<'a>(st: &'a mut State, uri: &Uri) -> Result<View<'a>> {
    st.view(uri)?
        .ok_or_else(|| refused("This document is not open."))
}

fn report(st: &mut State, uri: &Uri, name: Option<&str>) -> Result<String> {
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has no report."));
    };
    ide::report_markdown(v.snapshot, file, name)
        .map(|text| v.linked(&text))
        .ok_or_else(|| nothing(name))
}

fn nothing(name: Option<&str>) -> Error {
    match name {
        Some(name) => refused(format!("There is nothing named `{name}` to report on.")),
        None => refused("There is nothing to report on: no station, no chain and no session."),
    }
}

/// The report with level diagrams as an HTML page that loads nothing; its rows name the lines they follow from.
pub(super) fn html_report(st: &mut State, uri: &Uri, name: Option<&str>) -> Result<String> {
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has no report."));
    };
    ide::illustrated_report(v.snapshot, file, name)
        .map(|doc| downlead_report::write::html::html(&doc))
        .ok_or_else(|| nothing(name))
}

fn explain(st: &mut State, uri: &Uri, line: u32) -> Result<String> {
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has nothing to explain."));
    };
    ide::explain_markdown(v.snapshot, file, line)
        .map(|text| v.linked(&text))
        .ok_or_else(|| refused("Nothing is computed on this line."))
}

/// The differences in results between a revision and the text as it is.
fn compare(st: &mut State, uri: &Uri, revision: &str) -> Result<String> {
    let home = st.docs.get(uri).map(|d| d.home.clone());
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has no revisions."));
    };
    let path = &v.snapshot.files()[file].path;
    let root = match &home {
        Some(Home::Space {
            key: Key::Root(root),
            ..
        }) if uris::to_path(uri).is_some() => root,
        _ => {
            return Err(refused(
                "This text is in no file, so there is no earlier state to compare with.",
            ));
        }
    };
    let then = Revision::find(root, path, revision).map_err(refused)?;
    let old = Snapshot::load(std::slice::from_ref(path), &then);
    if let Some(why) = then.fault() {
        return Err(refused(why));
    }
    match old.files().first().map(|f| &f.error) {
        Some(None) => {}
        Some(Some(LoadError::NotFound)) | None => {
            return Err(refused(format!("{path} is not in revision `{revision}`.")));
        }
        Some(Some(e)) => {
            return Err(refused(format!(
                "{path} of revision `{revision}` cannot be read: {e}."
            )));
        }
    }
    let name = format!("revision {revision} ({})", then.short());
    let changes = ide::compare((&old, 0), (v.snapshot, file));
    Ok(ide::compare_markdown(
        &changes,
        path,
        &name,
        "the text as it is",
    ))
}

/// Parameters of `downlead/virtualDocument` and of `workspace/textDocumentContent`.
#[derive(Debug, Deserialize)]
pub(crate) struct Wanted {
    uri: Uri,
}

/// The text of a document of the server's own scheme.
pub(crate) fn text(st: &mut State, p: Wanted) -> Result<String> {
    let uri = p.uri;
    if uri.scheme().as_str() != uris::SCHEME {
        return Err(Error::invalid_params(
            "the address is not of the scheme `downlead`",
        ));
    }
    let path = uris::unescape(uri.path().as_str());
    let path = path.trim_start_matches('/');
    if let Some(i) = st.library.index_of(path) {
        return Ok(downlead_station::library().files[i].1.text().to_owned());
    }
    if let Some(code) = path
        .strip_prefix("code/")
        .and_then(|p| p.strip_suffix(".md"))
    {
        return code_named(code)
            .map(|c| c.page.to_owned())
            .ok_or_else(|| refused(format!("There is no code `{code}`.")));
    }
    let query = uri
        .query()
        .map(|q| q.as_str().to_owned())
        .unwrap_or_default();
    // the whole query was escaped once more when it was put into the address
    let query = if query.contains('=') {
        query
    } else {
        uris::unescape(&query)
    };
    let field = |name: &str| {
        query
            .split('&')
            .find_map(|p| p.strip_prefix(name)?.strip_prefix('='))
            .map(uris::unescape)
            .filter(|v| !v.is_empty())
    };
    let source: Uri = field("uri")
        .and_then(|u| u.parse().ok())
        .ok_or_else(|| Error::invalid_params("`uri` is missing"))?;
    st.watched.insert(uri.as_str().to_owned(), source.clone());
    let generated = match path.split('/').next() {
        Some("report") => Generated::Report(field("name")),
        Some("explain") => {
            let line = field("line").and_then(|l| l.parse().ok());
            Generated::Explanation(line.ok_or_else(|| Error::invalid_params("`line` is missing"))?)
        }
        Some("compare") => Generated::comparison(field("revision")),
        _ => return Err(refused("There is no such document.")),
    };
    generated.text(st, &source)
}

/// The same as the protocol's own request has it.
pub(crate) fn content(st: &mut State, p: Wanted) -> Result<Value> {
    Ok(json!({ "text": text(st, p)? }))
}
