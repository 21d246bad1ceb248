//! Documents and places: from item-relative locations to byte ranges of a document.

use std::sync::OnceLock;

use downlead_base::{ItemId, Loc, Span};
use downlead_eval::{Scope, Snapshot};
use downlead_station::{Env, library};
pub(crate) use downlead_syntax::newline;
use downlead_syntax::{File, Placed, Stmt};
use rustc_hash::{FxHashMap, FxHashSet};

/// A document.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Doc {
    /// A file of the snapshot, by index.
    File(usize),
    /// A file of the built-in library, by index. It cannot be changed.
    Library(usize),
}

/// A range in a document.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Place {
    /// The document.
    pub doc: Doc,
    /// Bytes.
    pub span: Span,
}

/// A change of a document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TextEdit {
    /// The document, never one of the library.
    pub doc: Doc,
    /// What is replaced; empty for an insertion.
    pub span: Span,
    /// By what.
    pub text: String,
}

/// Kind of a change that is offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the protocol's kinds")]
pub enum ActionKind {
    QuickFix,
    Refactor,
    Extract,
    Inline,
    Rewrite,
    FixAll,
}

impl ActionKind {
    /// Its name with editors.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            ActionKind::QuickFix => "quickfix",
            ActionKind::Refactor => "refactor",
            ActionKind::Extract => "refactor.extract",
            ActionKind::Inline => "refactor.inline",
            ActionKind::Rewrite => "refactor.rewrite",
            ActionKind::FixAll => "source.fixAll.downlead",
        }
    }
}

/// A change that is offered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Action {
    /// What the user reads.
    pub title: String,
    /// Kind.
    pub kind: ActionKind,
    /// The edits, sorted, not overlapping.
    pub edits: Vec<TextEdit>,
    /// The one clear answer.
    pub preferred: bool,
    /// Why it cannot be taken, if so.
    pub disabled: Option<String>,
    /// Codes of the findings it mends.
    pub codes: Vec<&'static str>,
    /// The finding it mends.
    pub finding: Option<Span>,
}

impl Action {
    pub(crate) fn new(title: impl Into<String>, kind: ActionKind, edits: Vec<TextEdit>) -> Self {
        Action {
            title: title.into(),
            kind,
            edits,
            preferred: false,
            disabled: None,
            codes: Vec::new(),
            finding: None,
        }
    }
}

/// Path of a document: of the library `library/NAME`.
#[must_use]
pub fn doc_path(s: &Snapshot, doc: Doc) -> String {
    match doc {
        Doc::File(i) => s
            .files()
            .get(i)
            .map_or_else(String::new, |f| f.path.clone()),
        Doc::Library(i) => library()
            .files
            .get(i)
            .map_or_else(String::new, |f| format!("library/{}", f.0)),
    }
}

/// Text of a document.
#[must_use]
pub fn doc_text(s: &Snapshot, doc: Doc) -> &str {
    tree(s, doc).map_or("", File::text)
}

/// The document of that path, `library/NAME` for the library.
#[must_use]
pub fn doc_of_path(s: &Snapshot, path: &str) -> Option<Doc> {
    if let Some(i) = s.files().iter().position(|f| f.path == path) {
        return Some(Doc::File(i));
    }
    let name = path.strip_prefix("library/")?;
    library()
        .files
        .iter()
        .position(|f| f.0 == name)
        .map(Doc::Library)
}

/// The parsed text of a document.
pub(crate) fn tree(s: &Snapshot, doc: Doc) -> Option<&File> {
    match doc {
        Doc::File(i) => s.files().get(i).map(|f| &f.tree),
        Doc::Library(i) => library().files.get(i).map(|f| &f.1),
    }
}

fn library_index() -> &'static FxHashMap<ItemId, (usize, u32)> {
    static INDEX: OnceLock<FxHashMap<ItemId, (usize, u32)>> = OnceLock::new();
    INDEX.get_or_init(|| {
        let mut m = FxHashMap::default();
        for (i, (_, f)) in library().files.iter().enumerate() {
            for p in f.items() {
                m.insert(p.item.id, (i, p.start));
            }
        }
        m
    })
}

/// A snapshot with an index of its items.
pub(crate) struct View<'s> {
    pub(crate) s: &'s Snapshot,
    index: FxHashMap<ItemId, (usize, u32)>,
    /// Where the lines of each file end, once it was asked for.
    lines: Box<[OnceLock<Vec<u32>>]>,
}

impl<'s> View<'s> {
    pub(crate) fn new(s: &'s Snapshot) -> Self {
        let mut index = FxHashMap::default();
        for (i, f) in s.files().iter().enumerate() {
            for p in f.tree.items() {
                index.insert(p.item.id, (i, p.start));
            }
        }
        View {
            s,
            index,
            lines: s.files().iter().map(|_| OnceLock::new()).collect(),
        }
    }

    /// Path of a document, as [`doc_path`] gives it.
    pub(crate) fn path(&self, doc: Doc) -> &str {
        static LIBRARY: OnceLock<Vec<String>> = OnceLock::new();
        let path = match doc {
            Doc::File(i) => self.s.files().get(i).map(|f| &f.path),
            Doc::Library(i) => LIBRARY
                .get_or_init(|| {
                    let all = 0..library().files.len();
                    all.map(|i| doc_path(self.s, Doc::Library(i))).collect()
                })
                .get(i),
        };
        path.map_or("", String::as_str)
    }

    /// Line number of a place, from 1. Tooltips of a long file ask for thousands.
    pub(crate) fn line(&self, p: Place) -> u32 {
        let text = doc_text(self.s, p.doc);
        let Doc::File(i) = p.doc else {
            return line_number(text, p.span.start);
        };
        let ends = self.lines[i].get_or_init(|| line_ends(text));
        to32(ends.partition_point(|e| *e < clamp(text, p.span.start)) + 1)
    }

    /// Document and range of a location.
    pub(crate) fn place(&self, loc: Loc) -> Option<Place> {
        if let Some((f, start)) = self.index.get(&loc.item) {
            return Some(Place {
                doc: Doc::File(*f),
                span: loc.span.shift(*start),
            });
        }
        let (f, start) = library_index().get(&loc.item)?;
        Some(Place {
            doc: Doc::Library(*f),
            span: loc.span.shift(*start),
        })
    }

    /// Text at a location.
    pub(crate) fn text(&self, loc: Loc) -> &'s str {
        self.place(loc).map_or("", |p| self.slice(p))
    }

    /// Text at a place.
    pub(crate) fn slice(&self, p: Place) -> &'s str {
        doc_text(self.s, p.doc).get(p.span.range()).unwrap_or("")
    }
}

/// The files a file sees, itself last, each once (as the evaluation gathers them).
pub(crate) fn visible(s: &Snapshot, file: usize) -> Vec<usize> {
    fn collect(s: &Snapshot, at: usize, seen: &mut FxHashSet<usize>, out: &mut Vec<usize>) {
        if !seen.insert(at) {
            return;
        }
        for (u, _) in s.uses(at) {
            collect(s, *u, seen, out);
        }
        out.push(at);
    }
    let mut out = Vec::new();
    collect(s, file, &mut FxHashSet::default(), &mut out);
    out
}

/// The scope whose names a document sees: its own, or that of the first file that uses it.
pub(crate) fn scope_of(s: &Snapshot, doc: Doc) -> Option<&Scope> {
    let Doc::File(file) = doc else { return None };
    s.scopes().iter().find(|x| x.file() == file).or_else(|| {
        s.scopes()
            .iter()
            .find(|x| visible(s, x.file()).contains(&file))
    })
}

/// The names a document sees.
pub(crate) fn env_of(s: &Snapshot, doc: Doc) -> Option<&Env> {
    scope_of(s, doc).map(Scope::env)
}

/// The item that holds an offset.
pub(crate) fn item_at(s: &Snapshot, doc: Doc, offset: u32) -> Option<&Placed> {
    let t = tree(s, doc)?;
    t.items().get(t.item_at(offset.min(t.len()))?)
}

/// The offset, not beyond the text and not inside a character.
pub(crate) fn clamp(text: &str, offset: u32) -> u32 {
    let mut at = (offset as usize).min(text.len());
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    u32::try_from(at).unwrap_or(u32::MAX)
}

/// Start of the line of an offset.
pub(crate) fn line_start(text: &str, offset: u32) -> u32 {
    let at = clamp(text, offset) as usize;
    text[..at].rfind('\n').map_or(0, |i| to32(i + 1))
}

/// End of the line of an offset, before its line end.
pub(crate) fn line_end(text: &str, offset: u32) -> u32 {
    let at = clamp(text, offset) as usize;
    let end = text[at..].find('\n').map_or(text.len(), |i| at + i);
    to32(if text[at..end].ends_with('\r') {
        end - 1
    } else {
        end
    })
}

/// Blanks before the first character of the line of an offset.
pub(crate) fn indent(text: &str, offset: u32) -> &str {
    let start = line_start(text, offset) as usize;
    let rest = &text[start..];
    &rest[..rest.len() - rest.trim_start_matches([' ', '\t']).len()]
}

/// Where the lines of a text end.
fn line_ends(text: &str) -> Vec<u32> {
    let all = text.bytes().zip(0..);
    all.filter(|(b, _)| *b == b'\n').map(|(_, i)| i).collect()
}

/// Line number from 1.
pub(crate) fn line_number(text: &str, offset: u32) -> u32 {
    let at = clamp(text, offset) as usize;
    to32(
        text.as_bytes()[..at]
            .iter()
            .filter(|b| **b == b'\n')
            .count()
            + 1,
    )
}

pub(crate) fn to32(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// The statements from the outermost to the innermost one that hold an item-relative offset.
/// An unclosed block reaches to the end of its item.
pub(crate) fn path_at(item: &downlead_syntax::Item, offset: u32) -> Vec<Stmt<'_>> {
    let mut path = Vec::new();
    let mut level = item.statements();
    'down: loop {
        for st in level.clone() {
            let span = st.span();
            let open = st.block().is_some_and(|b| !b.is_closed());
            if span.start <= offset && (offset <= span.end || open) {
                // the statement before may end where this one begins
                if span.end == offset && !open && level.clone().any(|o| o.span().start == offset) {
                    continue;
                }
                path.push(st);
                match st.block() {
                    Some(b) if offset > b.span().start => {
                        level = b.iter();
                        continue 'down;
                    }
                    _ => return path,
                }
            }
        }
        return path;
    }
}

/// Sorts edits and drops those that repeat or overlap an earlier one.
pub(crate) fn tidy(mut edits: Vec<TextEdit>) -> Vec<TextEdit> {
    edits.sort_by_key(|a| (a.doc, a.span.start, a.span.end));
    let mut out: Vec<TextEdit> = Vec::with_capacity(edits.len());
    for e in edits {
        if let Some(last) = out.last() {
            let same = last.doc == e.doc;
            if same && (e.span.start < last.span.end || (e == *last)) {
                continue;
            }
        }
        out.push(e);
    }
    out
}
