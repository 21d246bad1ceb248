//! One document as a request sees it, and the way from bytes to the protocol's places.

use std::borrow::Cow;
use std::cell::RefCell;
use std::rc::Rc;

use downlead_base::Span;
use downlead_eval::{Snapshot, Stage};
use downlead_ide::{Config, Doc, Place};
use ls_types::{
    DocumentChanges, Location, LocationLink, MarkupContent, MarkupKind, OneOf,
    OptionalVersionedTextDocumentIdentifier, Position, Range, TextDocumentEdit, TextEdit, Uri,
    WorkspaceEdit,
};
use rustc_hash::FxHashMap;
use serde_json::Value;
use tower_lsp::jsonrpc::{Error, ErrorCode, Result};

use crate::disk;
use crate::docs::{Document, Home, Key};
use crate::positions::Lines;
use crate::space::Broken;
use crate::state::{For, State};

/// A document in a snapshot of its own version.
pub(crate) struct View<'a> {
    pub(crate) state: &'a State,
    pub(crate) snapshot: &'a Snapshot,
    pub(crate) doc: Doc,
    pub(crate) text: &'a str,
    pub(crate) config: Config,
    pub(crate) uri: &'a Uri,
    pub(crate) version: i32,
    key: Option<&'a Key>,
    lines: Cow<'a, Lines>,
    others: RefCell<FxHashMap<Doc, Rc<Other>>>,
}

struct Other {
    uri: Option<Uri>,
    version: Option<i32>,
    lines: Lines,
}

/// The error of a request when evaluation panicked on the texts.
pub(crate) fn broken() -> Error {
    Error {
        message: "The server failed on this text; it tries again when the text changes.".into(),
        ..Error::internal_error()
    }
}

/// The error of a request without a snapshot: the text has changed, or evaluation panicked.
fn unready(why: Broken) -> Error {
    match why {
        Broken::Failed => broken(),
        Broken::Stopped => Error {
            code: ErrorCode::ContentModified,
            message: "The text was changed meanwhile.".into(),
            data: None,
        },
    }
}

/// A request that cannot be met, in words for the user (`RequestFailed` of the protocol).
pub(crate) fn refused(why: impl Into<Cow<'static, str>>) -> Error {
    Error {
        code: ErrorCode::ServerError(-32803),
        message: why.into(),
        data: None,
    }
}

/// Document and version that an answer was made for, from its `data`.
pub(crate) fn origin(data: Option<&Value>) -> Option<(Uri, i32)> {
    let data = data?;
    let uri = data.get("uri")?.as_str()?.parse().ok()?;
    let version = data.get("version")?.as_i64()?.try_into().ok()?;
    Some((uri, version))
}

/// What a request needs.
#[derive(Clone, Copy, PartialEq)]
enum Need {
    /// All results of the open documents.
    Whole,
    /// Those of all files below the root too.
    Wide,
    /// Those in a range of the document.
    First(Range, Stage),
    /// None.
    Text,
}

impl State {
    /// The document, up to date. None if it is not open.
    ///
    /// # Errors
    /// If the server fails on its text.
    pub(crate) fn view(&mut self, uri: &Uri) -> Result<Option<View<'_>>> {
        self.look(uri, Need::Whole)
    }

    /// The same in a snapshot of all files below the root, open or not.
    ///
    /// # Errors
    /// If the server fails on one of the texts.
    pub(crate) fn wide_view(&mut self, uri: &Uri) -> Result<Option<View<'_>>> {
        self.look(uri, Need::Wide)
    }

    /// The document as a text with its meaning, for what needs no results: those there are may be of
    /// an earlier text.
    ///
    /// # Errors
    /// If the server fails on its text.
    pub(crate) fn text_view(&mut self, uri: &Uri) -> Result<Option<View<'_>>> {
        self.look(uri, Need::Text)
    }

    /// The document with the results in a range of it at a stage of evaluation at least. Results
    /// elsewhere may be of an earlier text.
    ///
    /// # Errors
    /// If the server fails on its text.
    pub(crate) fn view_first(
        &mut self,
        uri: &Uri,
        range: Range,
        stage: Stage,
    ) -> Result<Option<View<'_>>> {
        self.look(uri, Need::First(range, stage))
    }

    fn look(&mut self, uri: &Uri, need: Need) -> Result<Option<View<'_>>> {
        self.maybe_look_at_disk();
        let Some(doc) = self.docs.get(uri) else {
            return Ok(None);
        };
        let home = doc.home.clone();
        match &home {
            Home::Made => Ok(None),
            Home::Library(i) => {
                let doc = self.docs.get(uri).expect("open");
                let text = downlead_ide::doc_text(self.nothing(), Doc::Library(*i));
                Ok(Some(View {
                    state: self,
                    snapshot: self.nothing(),
                    doc: Doc::Library(*i),
                    text,
                    config: self.config_of(uri),
                    uri: &doc.uri,
                    version: doc.version,
                    key: None,
                    lines: Cow::Owned(Lines::new(text)),
                    others: RefCell::default(),
                }))
            }
            Home::Space { key, path } => {
                let wide = need == Need::Wide;
                match need {
                    Need::First(range, stage) => {
                        let doc = self.docs.get(uri).expect("open");
                        let span = doc.lines.span(&doc.text, range, self.peer.encoding);
                        self.sync_first(key, path, span, stage).map_err(unready)?;
                    }
                    Need::Text => {
                        // beyond the end there is nothing to compute
                        let none = Span::new(u32::MAX, u32::MAX);
                        let first = Stage::First;
                        self.sync_first(key, path, none, first).map_err(unready)?;
                    }
                    Need::Whole | Need::Wide => {
                        self.sync(key, For::Request).map_err(unready)?;
                    }
                }
                if wide {
                    self.sync_wide(key)?;
                }
                let Some(space) = self.spaces.get(key) else {
                    return Ok(None);
                };
                let snapshot = if wide { space.wide() } else { space.snapshot() };
                let Some(snapshot) = snapshot else {
                    return Err(broken());
                };
                let Some(file) = snapshot.files().iter().position(|f| f.path == *path) else {
                    return Ok(None);
                };
                let doc = self.docs.get(uri).expect("open");
                Ok(Some(View::of_file(self, &space.key, snapshot, doc, file)))
            }
        }
    }

    pub(crate) fn sync_wide(&mut self, key: &Key) -> Result<()> {
        let Some(space) = self.spaces.get_mut(key) else {
            return Ok(());
        };
        let cancel = self.cancel.clone();
        let progress = self
            .peer
            .progress
            .then(|| self.out.progress("Reading all stations"));
        let done = space.sync_wide(&self.docs, &|| cancel.is_set());
        drop(progress);
        done.map_err(|_| broken())
    }

    /// A view of no document, for answers about whole spaces.
    pub(crate) fn space_view<'a>(
        &'a self,
        key: &'a Key,
        snapshot: &'a Snapshot,
    ) -> Option<View<'a>> {
        let (path, doc) = *self.docs.of(key).first()?;
        let file = snapshot.files().iter().position(|f| f.path == path)?;
        Some(View::of_file(self, key, snapshot, doc, file))
    }
}

impl<'a> View<'a> {
    /// The files on the disk that this text may name, below the same root.
    pub(crate) fn files_to_name(&self) -> Vec<String> {
        match self.key {
            Some(Key::Root(root)) => disk::find_usable(root, &|| self.state.cancel.is_set()),
            _ => Vec::new(),
        }
    }

    pub(crate) fn of_file(
        state: &'a State,
        key: &'a Key,
        snapshot: &'a Snapshot,
        doc: &'a Document,
        file: usize,
    ) -> View<'a> {
        View {
            state,
            snapshot,
            doc: Doc::File(file),
            text: &doc.text,
            config: state.config_of(&doc.uri),
            uri: &doc.uri,
            version: doc.version,
            key: Some(key),
            lines: Cow::Borrowed(&doc.lines),
            others: RefCell::default(),
        }
    }

    pub(crate) fn offset(&self, at: Position) -> u32 {
        self.lines.offset(self.text, at, self.state.peer.encoding)
    }

    pub(crate) fn position(&self, offset: u32) -> Position {
        self.lines
            .position(self.text, offset, self.state.peer.encoding)
    }

    /// The line of a byte.
    pub(crate) fn line(&self, offset: u32) -> u32 {
        self.lines.line_of(offset) as u32
    }

    pub(crate) fn span(&self, range: Range) -> Span {
        self.lines.span(self.text, range, self.state.peer.encoding)
    }

    pub(crate) fn range(&self, span: Span) -> Range {
        self.lines.range(self.text, span, self.state.peer.encoding)
    }

    fn other(&self, doc: Doc) -> Rc<Other> {
        if let Some(known) = self.others.borrow().get(&doc) {
            return Rc::clone(known);
        }
        let path = downlead_ide::doc_path(self.snapshot, doc);
        let (uri, version) = match doc {
            Doc::Library(_) => (self.state.library.address(&path), None),
            Doc::File(_) => self.address(&path),
        };
        let lines = Lines::new(downlead_ide::doc_text(self.snapshot, doc));
        let made = Rc::new(Other {
            uri,
            version,
            lines,
        });
        self.others.borrow_mut().insert(doc, Rc::clone(&made));
        made
    }

    fn address(&self, path: &str) -> (Option<Uri>, Option<i32>) {
        let Some(key) = self.key else {
            return (None, None);
        };
        if let Some(open) = self.state.docs.at(key, path) {
            return (Some(open.uri.clone()), Some(open.version));
        }
        match key {
            Key::Root(root) => (crate::uris::from_path(&root.join(path)), None),
            Key::Alone(_) => (None, None),
        }
    }

    /// Address of a document.
    pub(crate) fn uri_of(&self, doc: Doc) -> Option<Uri> {
        if doc == self.doc {
            Some(self.uri.clone())
        } else {
            self.other(doc).uri.clone()
        }
    }

    /// Range of a span in a document.
    pub(crate) fn range_in(&self, doc: Doc, span: Span) -> Range {
        if doc == self.doc {
            return self.range(span);
        }
        let text = downlead_ide::doc_text(self.snapshot, doc);
        self.other(doc)
            .lines
            .range(text, span, self.state.peer.encoding)
    }

    pub(crate) fn location(&self, place: Place) -> Option<Location> {
        Some(Location {
            uri: self.uri_of(place.doc)?,
            range: self.range_in(place.doc, place.span),
        })
    }

    pub(crate) fn link(&self, link: &downlead_ide::Link) -> Option<LocationLink> {
        Some(LocationLink {
            origin_selection_range: Some(self.range(link.origin)),
            target_uri: self.uri_of(link.target.doc)?,
            target_range: self.range_in(link.target.doc, link.target.span),
            target_selection_range: self.range_in(link.target.doc, link.focus),
        })
    }

    /// Words in the form the client reads.
    pub(crate) fn markup(&self, text: &str) -> MarkupContent {
        match self.config.markdown {
            true => MarkupContent {
                kind: MarkupKind::Markdown,
                value: self.linked(text),
            },
            false => MarkupContent {
                kind: MarkupKind::PlainText,
                value: text.to_owned(),
            },
        }
    }

    /// Turns links to places into links the client can follow, or into plain words.
    pub(crate) fn linked(&self, text: &str) -> String {
        const MARK: &str = "](downlead-place:";
        let mut out = String::with_capacity(text.len());
        let mut rest = text;
        while let Some(at) = rest.find(MARK) {
            let (before, after) = (&rest[..at], &rest[at + MARK.len()..]);
            let Some(end) = after.find(')') else { break };
            let (path, line) = after[..end]
                .rsplit_once('#')
                .unwrap_or((&after[..end], "1"));
            let line = line.trim_start_matches('L');
            let path = crate::uris::unescape(path);
            let uri = downlead_ide::doc_of_path(self.snapshot, &path).and_then(|d| self.uri_of(d));
            match uri {
                Some(uri) => {
                    out.push_str(before);
                    out.push_str(&format!("]({}#L{line})", uri.as_str()));
                }
                None => match before.rfind('[') {
                    Some(open) => {
                        out.push_str(&before[..open]);
                        out.push_str(&before[open + 1..]);
                    }
                    None => out.push_str(before),
                },
            }
            rest = &after[end + 1..];
        }
        out.push_str(rest);
        out
    }

    /// An edit of a document; new lines end as the document's do.
    pub(crate) fn text_edit(&self, edit: &downlead_ide::TextEdit) -> TextEdit {
        let text = if edit.doc == self.doc {
            self.text
        } else {
            downlead_ide::doc_text(self.snapshot, edit.doc)
        };
        TextEdit {
            range: self.range_in(edit.doc, edit.span),
            new_text: with_ends_of(text, &edit.text),
        }
    }

    /// Edits of this document only.
    pub(crate) fn own_edits(&self, edits: &[downlead_ide::TextEdit]) -> Vec<TextEdit> {
        edits
            .iter()
            .filter(|e| e.doc == self.doc)
            .map(|e| self.text_edit(e))
            .collect()
    }

    /// Edits of several documents, with the versions they were made for if the client takes them.
    pub(crate) fn workspace_edit(&self, edits: &[downlead_ide::TextEdit]) -> WorkspaceEdit {
        let mut by_doc: Vec<(Doc, Vec<TextEdit>)> = Vec::new();
        for e in edits {
            if matches!(e.doc, Doc::Library(_)) {
                continue;
            }
            match by_doc.iter_mut().find(|(d, _)| *d == e.doc) {
                Some((_, all)) => all.push(self.text_edit(e)),
                None => by_doc.push((e.doc, vec![self.text_edit(e)])),
            }
        }
        let version = |doc: Doc| {
            if doc == self.doc {
                Some(self.version)
            } else {
                self.other(doc).version
            }
        };
        let with_uri = by_doc
            .into_iter()
            .filter_map(|(doc, edits)| Some((self.uri_of(doc)?, version(doc), edits)));
        if self.state.peer.versioned_edits {
            let changes = with_uri.map(|(uri, version, edits)| TextDocumentEdit {
                text_document: OptionalVersionedTextDocumentIdentifier { uri, version },
                edits: edits.into_iter().map(OneOf::Left).collect(),
            });
            WorkspaceEdit {
                document_changes: Some(DocumentChanges::Edits(changes.collect())),
                ..WorkspaceEdit::default()
            }
        } else {
            WorkspaceEdit {
                changes: Some(with_uri.map(|(uri, _, edits)| (uri, edits)).collect()),
                ..WorkspaceEdit::default()
            }
        }
    }
}

/// `new` with the line ends of `text`.
fn with_ends_of(text: &str, new: &str) -> String {
    let crlf = text.find('\n').is_some_and(|i| text[..i].ends_with('\r'));
    match crlf && new.contains('\n') {
        true => new.replace("\r\n", "\n").replace('\n', "\r\n"),
        false => new.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::with_ends_of;

    #[test]
    fn ends_follow_the_document() {
        assert_eq!(with_ends_of("a\r\nb", "x\ny\r\n"), "x\r\ny\r\n");
        assert_eq!(with_ends_of("a\nb\r\n", "x\ny"), "x\ny");
        assert_eq!(with_ends_of("", "x\n"), "x\n");
    }
}
