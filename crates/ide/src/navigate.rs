//! Definition, declaration, type definition, implementation, links of `use`.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::normalise;

use crate::names::{Class, NameKind};
use crate::references::references;
use crate::resolve::{Def, class_of, name_at, piece, resolve, statements};
use crate::view::{Doc, Place, View, doc_path, doc_text, tree};

/// A place that a name leads to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Link {
    /// The name that was asked about.
    pub origin: Span,
    /// The whole statement.
    pub target: Place,
    /// The name in it.
    pub focus: Span,
}

/// The path of a `use` and what it leads to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DocumentLink {
    /// The path with its quotes.
    pub span: Span,
    /// The file.
    pub target: Doc,
    /// What a reader sees.
    pub tooltip: String,
}

fn link(origin: Span, d: &Def<'_>) -> Link {
    Link {
        origin,
        target: d.full(),
        focus: d.focus().span,
    }
}

/// Where the name at an offset is defined; of a path of `use`, the file.
#[must_use]
pub fn definition(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Link> {
    if let Some((placed, n)) = name_at(s, doc, offset) {
        return resolve(s, doc, placed, &n)
            .map(|d| link(n.span, &d))
            .into_iter()
            .collect();
    }
    let Some((placed, p)) = piece(s, doc, offset) else {
        return Vec::new();
    };
    if p.class != Class::Path {
        return Vec::new();
    }
    let span = p.span.shift(placed.start);
    document_links(s, doc)
        .into_iter()
        .filter(|l| l.span == span)
        .map(|l| Link {
            origin: span,
            target: Place {
                doc: l.target,
                span: Span::new(0, 0),
            },
            focus: Span::new(0, 0),
        })
        .collect()
}

/// The same as the definition: the language has no declarations apart from it.
#[must_use]
pub fn declaration(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Link> {
    definition(s, doc, offset)
}

/// What the thing at an offset is an example of: the cable, connector or device of a part.
#[must_use]
pub fn type_definition(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Link> {
    let Some((placed, n)) = name_at(s, doc, offset) else {
        return Vec::new();
    };
    let Some(d) = resolve(s, doc, placed, &n) else {
        return Vec::new();
    };
    match n.kind {
        NameKind::Tag => class_of(s, &d)
            .map(|c| link(n.span, &c))
            .into_iter()
            .collect(),
        k if k.is_global() => vec![link(n.span, &d)],
        _ => Vec::new(),
    }
}

/// Where the thing at an offset is put to use: the lines of chains, the parts of a cable.
#[must_use]
pub fn implementation(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Link> {
    let Some((_, n)) = name_at(s, doc, offset) else {
        return Vec::new();
    };
    references(s, doc, offset, false)
        .into_iter()
        .map(|p| Link {
            origin: n.span,
            target: p,
            focus: p.span,
        })
        .collect()
}

/// The files a document uses.
#[must_use]
pub fn document_links(s: &Snapshot, doc: Doc) -> Vec<DocumentLink> {
    let Doc::File(file) = doc else {
        return Vec::new();
    };
    if file >= s.files().len() {
        return Vec::new();
    }
    let view = View::new(s);
    let mut out: Vec<DocumentLink> = s
        .uses(file)
        .iter()
        .filter_map(|(target, loc)| {
            let place = view.place(*loc).filter(|p| p.doc == doc)?;
            let target = Doc::File(*target);
            Some(DocumentLink {
                span: place.span,
                target,
                tooltip: format!("open {}", doc_path(s, target)),
            })
        })
        .collect();
    out.sort_by_key(|l| l.span);
    debug_assert!(
        out.iter()
            .all(|l| doc_text(s, doc).get(l.span.range()).is_some())
    );
    out
}

/// A path of a file of readings or of a network, which is none of the language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileLink {
    /// The path with its quotes.
    pub span: Span,
    /// The file, below the root.
    pub path: String,
}

/// The paths behind `from` in a document.
#[must_use]
pub fn file_links(s: &Snapshot, doc: Doc) -> Vec<FileLink> {
    let Some(tree) = tree(s, doc) else {
        return Vec::new();
    };
    let base = doc_path(s, doc);
    let mut out = Vec::new();
    for p in tree.items() {
        statements(&p.item, &mut |stmt| {
            for w in stmt.atoms().windows(2) {
                let named = stmt.text(w[0]) == "from";
                let path = stmt.string(w[1]).filter(|_| named);
                if let Some(path) = path.and_then(|t| normalise(&base, t)) {
                    let span = w[1].span.shift(p.start);
                    out.push(FileLink { span, path });
                }
            }
        });
    }
    out
}
