//! Commands, and the documents the server makes.

use downlead_base::code_named;
use downlead_eval::Snapshot;
use downlead_git::Revision;
use downlead_ide as ide;
use downlead_station::LoadError;
use ls_types::{ExecuteCommandParams, Uri};
use serde::Deserialize;
use serde_json::{Value, json};
use tower_lsp::jsonrpc::{Error, Result};

use crate::docs::Home;
use crate::outbox::Kind;
use crate::space::Key;
use crate::state::State;
use crate::uris;
use crate::view::{View, refused};

/// The one argument of the commands; an address alone will do.
#[derive(Deserialize)]
struct Argument {
    uri: Uri,
    name: Option<String>,
    line: Option<u32>,
    format: Option<String>,
    revision: Option<String>,
    /// Whether to open the answer too, for clients that drop what a command returns.
    #[serde(default)]
    show: bool,
}

fn argument(p: &ExecuteCommandParams) -> Result<Argument> {
    let first = p
        .arguments
        .first()
        .ok_or_else(|| Error::invalid_params("an object with `uri` is needed"))?;
    let second = match p.command.as_str() {
        "downlead.compare" => "revision",
        _ => "name",
    };
    let whole = match first {
        Value::String(uri) => json!({ "uri": uri, second: p.arguments.get(1) }),
        other => other.clone(),
    };
    serde_json::from_value(whole).map_err(|e| Error::invalid_params(e.to_string()))
}

pub(crate) fn execute(st: &mut State, p: ExecuteCommandParams) -> Result<Option<Value>> {
    match p.command.as_str() {
        "downlead.report" => {
            let a = argument(&p)?;
            let text = report(st, &a.uri, a.name.as_deref())?;
            if a.show {
                show(
                    st,
                    "report",
                    "report.md",
                    &made_report(&a.uri, a.name.as_deref()),
                    &a.uri,
                    &text,
                );
            }
            Ok(Some(Value::String(text)))
        }
        "downlead.explain" => {
            let a = argument(&p)?;
            let line = a
                .line
                .ok_or_else(|| Error::invalid_params("`line`, counted from 1, is needed"))?;
            let text = explain(st, &a.uri, line)?;
            if a.show {
                show(
                    st,
                    "explain",
                    "explanation.md",
                    &made_explanation(&a.uri, line),
                    &a.uri,
                    &text,
                );
            }
            Ok(Some(Value::String(text)))
        }
        "downlead.compare" => {
            let a = argument(&p)?;
            let revision = a.revision.as_deref().unwrap_or(LATEST);
            let text = compare(st, &a.uri, revision)?;
            if a.show {
                show(
                    st,
                    "compare",
                    "changes.md",
                    &made_comparison(&a.uri, revision),
                    &a.uri,
                    &text,
                );
            }
            Ok(Some(Value::String(text)))
        }
        "downlead.export" => {
            let a = argument(&p)?;
            let format = a.format.as_deref().unwrap_or("json");
            let v = open(st, &a.uri)?;
            match format {
                "json" => serde_json::to_value(downlead_report::build::chain::report(v.snapshot))
                    .map(Some)
                    .map_err(|_| Error::internal_error()),
                "markdown" => Ok(Some(Value::String(report(st, &a.uri, a.name.as_deref())?))),
                "html" => Ok(Some(Value::String(page(st, &a.uri, a.name.as_deref())?))),
                _ => Err(Error::invalid_params(
                    "`format` is `json`, `markdown` or `html`",
                )),
            }
        }
        "downlead.apply" => {
            let edit = p
                .arguments
                .into_iter()
                .next()
                .ok_or_else(|| Error::invalid_params("an edit is needed"))?;
            if !st.peer.apply_edit {
                return Err(refused("This editor takes no edits from a server."));
            }
            st.out.ask("workspace/applyEdit", edit, |_| {});
            Ok(None)
        }
        other => Err(Error::invalid_params(format!(
            "there is no command `{other}`"
        ))),
    }
}

fn open<'a>(st: &'a mut State, uri: &Uri) -> Result<View<'a>> {
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
        .ok_or_else(|| match name {
            Some(name) => refused(format!("There is nothing named `{name}` to report on.")),
            None => refused("There is nothing to report on: no station, no chain and no session."),
        })
}

/// The report as a page that loads nothing; its rows say where they follow from.
fn page(st: &mut State, uri: &Uri, name: Option<&str>) -> Result<String> {
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has no report."));
    };
    ide::report_document(v.snapshot, file, name)
        .map(|doc| downlead_report::write::html::html(&doc))
        .ok_or_else(|| {
            refused("There is nothing to report on: no station, no chain and no session.")
        })
}

fn explain(st: &mut State, uri: &Uri, line: u32) -> Result<String> {
    let v = open(st, uri)?;
    let ide::Doc::File(file) = v.doc else {
        return Err(refused("The built-in library has nothing to explain."));
    };
    ide::explain_markdown(v.snapshot, file, line)
        .map(|text| v.linked(&text))
        .ok_or_else(|| refused("Nothing is worked out on this line."))
}

/// What is compared with unless said otherwise.
const LATEST: &str = "HEAD";

/// What the change since a revision means on the air.
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

fn made_comparison(uri: &Uri, revision: &str) -> String {
    format!(
        "uri={}&revision={}",
        uris::escape(uri.as_str()),
        uris::escape(revision)
    )
}

fn made_report(uri: &Uri, name: Option<&str>) -> String {
    match name {
        Some(name) => format!(
            "uri={}&name={}",
            uris::escape(uri.as_str()),
            uris::escape(name)
        ),
        None => format!("uri={}", uris::escape(uri.as_str())),
    }
}

fn made_explanation(uri: &Uri, line: u32) -> String {
    format!("uri={}&line={line}", uris::escape(uri.as_str()))
}

/// Opens a made text in the editor: under our own scheme if the client can, else as a file; if it
/// can open nothing for us, as a message.
fn show(st: &mut State, kind: &str, title: &str, query: &str, source: &Uri, text: &str) {
    let own = st.peer.virtual_documents || st.peer.fetches_content;
    let uri = if own {
        uris::own(&format!("{kind}/{title}"), Some(query))
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

/// Parameters of `downlead/virtualDocument` and of `workspace/textDocumentContent`.
#[derive(Debug, Deserialize)]
pub(crate) struct Wanted {
    uri: Uri,
}

/// The text of a document of the server's own scheme.
pub(crate) fn virtual_document(st: &mut State, p: Wanted) -> Result<String> {
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
    match path.split('/').next() {
        Some("report") => report(st, &source, field("name").as_deref()),
        Some("explain") => {
            let line = field("line")
                .and_then(|l| l.parse().ok())
                .ok_or_else(|| Error::invalid_params("`line` is missing"))?;
            explain(st, &source, line)
        }
        Some("compare") => {
            let revision = field("revision").unwrap_or_else(|| LATEST.to_owned());
            compare(st, &source, &revision)
        }
        _ => Err(refused("There is no such document.")),
    }
}

/// The same as the protocol's own request has it.
pub(crate) fn content(st: &mut State, p: Wanted) -> Result<Value> {
    Ok(json!({ "text": virtual_document(st, p)? }))
}
