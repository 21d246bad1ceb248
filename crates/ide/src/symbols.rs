//! Symbols of a document as a tree, and of all files by a few letters.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::keywords::Context;
use downlead_station::library;
use downlead_station::model::PartKind;
use downlead_syntax::{AtomKind, Stmt};

use crate::names::inner_context;
use crate::view::{Doc, Place, tree};

/// What a symbol is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the words speak for themselves")]
pub enum SymbolKind {
    Station,
    Chain,
    Branch,
    Part,
    Port,
    Band,
    Let,
    Cable,
    Connector,
    Device,
    Instrument,
    Place,
    Session,
    Readings,
}

/// A symbol with what is in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Symbol {
    /// Name.
    pub name: String,
    /// What else its statement says.
    pub detail: String,
    /// Kind.
    pub kind: SymbolKind,
    /// The whole statement.
    pub span: Span,
    /// The name in it.
    pub focus: Span,
    /// What is in it.
    pub children: Vec<Symbol>,
}

/// A symbol of some file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WorkspaceSymbol {
    /// Name.
    pub name: String,
    /// Kind.
    pub kind: SymbolKind,
    /// The station it is in.
    pub container: Option<String>,
    /// Its name.
    pub place: Place,
}

/// The symbols of a document.
#[must_use]
pub fn document_symbols(s: &Snapshot, doc: Doc) -> Vec<Symbol> {
    let Some(t) = tree(s, doc) else {
        return Vec::new();
    };
    t.items()
        .iter()
        .flat_map(|p| {
            p.item
                .statements()
                .filter_map(move |x| symbol(x, Context::Top, p.start))
        })
        .collect()
}

fn symbol(s: Stmt<'_>, cx: Context, start: u32) -> Option<Symbol> {
    let word = s.keyword()?;
    let piece = cx == Context::Session && word == "piece";
    let part = piece
        || matches!(cx, Context::Station | Context::Chain) && PartKind::from_word(word).is_some();
    let kind = match (cx, word) {
        (Context::Top, "band") => SymbolKind::Band,
        (Context::Top, "let") => SymbolKind::Let,
        (Context::Top, "cable") => SymbolKind::Cable,
        (Context::Top, "connector") => SymbolKind::Connector,
        (Context::Top, "device") => SymbolKind::Device,
        (Context::Top, "instrument") => SymbolKind::Instrument,
        (Context::Top, "station") => SymbolKind::Station,
        (Context::Top | Context::Station, "chain") => SymbolKind::Chain,
        (Context::Station, "place") => SymbolKind::Place,
        (Context::Top, "session") => SymbolKind::Session,
        (Context::Session, "readings") => SymbolKind::Readings,
        (Context::Chain, "branch") => SymbolKind::Branch,
        (Context::Device, "port" | "high" | "low") => SymbolKind::Port,
        _ if part => SymbolKind::Part,
        _ => return None,
    };
    let atoms = s.atoms();
    let named = |a: &&downlead_syntax::Atom| match kind {
        // a part's second word is its tag only if it is a word
        SymbolKind::Part => {
            a.kind == AtomKind::Word
                && s.text(**a) != "of"
                && !(matches!(word, "connector" | "adapter") && atoms.len() == 2)
        }
        SymbolKind::Port => word == "port",
        _ => matches!(a.kind, AtomKind::Word | AtomKind::Value(_)),
    };
    let name = match kind {
        // the band or the file
        SymbolKind::Readings => atoms.get(2)?,
        _ => atoms.get(1).filter(named).or(atoms.first())?,
    };
    // an untagged connector of a chain is no symbol worth a line
    if part && cx == Context::Chain && name.span == atoms.first()?.span {
        return None;
    }
    let head = s.slice(s.head_span());
    let detail: String = if part {
        head.trim().to_owned()
    } else {
        s.slice(Span::new(
            name.span.end,
            s.head_span().end.max(name.span.end),
        ))
        .trim()
        .trim_start_matches('=')
        .trim()
        .to_owned()
    };
    let inner = inner_context(word, cx);
    let mut children: Vec<Symbol> = Vec::new();
    if let (Some(b), Some(inner)) = (s.block(), inner) {
        for x in b.iter() {
            match symbol(x, inner, start) {
                Some(y) => children.push(y),
                // branches under the tag of a divider
                None => children.extend(
                    x.block()
                        .into_iter()
                        .flat_map(|b| b.iter())
                        .filter_map(|y| symbol(y, Context::Chain, start))
                        .filter(|y| y.kind == SymbolKind::Branch),
                ),
            }
        }
    }
    Some(Symbol {
        name: s.text(*name).to_owned(),
        detail,
        kind,
        span: s.span().shift(start),
        focus: name.span.shift(start),
        children,
    })
}

/// How many symbols an answer has at most.
const MOST: usize = 256;

/// Symbols of all files whose name holds the letters of `query` in their order, the best first;
/// those of the library too when something is asked for.
#[must_use]
pub fn workspace_symbols(s: &Snapshot, query: &str) -> Vec<WorkspaceSymbol> {
    let mut found: Vec<(u32, usize, WorkspaceSymbol)> = Vec::new();
    let files = (0..s.files().len()).map(Doc::File);
    let extra = if query.is_empty() {
        0
    } else {
        library().files.len()
    };
    for doc in files.chain((0..extra).map(Doc::Library)) {
        for x in document_symbols(s, doc) {
            gather(&x, None, doc, query, &mut found);
        }
    }
    found.sort_by_key(|a| (a.0, a.1));
    found.truncate(MOST);
    found.into_iter().map(|x| x.2).collect()
}

fn gather(
    x: &Symbol,
    container: Option<&str>,
    doc: Doc,
    query: &str,
    out: &mut Vec<(u32, usize, WorkspaceSymbol)>,
) {
    if x.kind != SymbolKind::Port
        && let Some(score) = score(&x.name, query)
    {
        let library = u32::from(matches!(doc, Doc::Library(_)));
        out.push((
            score * 2 + library,
            out.len(),
            WorkspaceSymbol {
                name: x.name.clone(),
                kind: x.kind,
                container: container.map(str::to_owned),
                place: Place { doc, span: x.focus },
            },
        ));
    }
    for c in &x.children {
        gather(c, Some(&x.name), doc, query, out);
    }
}

/// Smaller is better: equal, prefix, inside, letters in order.
fn score(name: &str, query: &str) -> Option<u32> {
    let (n, q) = (name.to_lowercase(), query.to_lowercase());
    if n == q {
        return Some(0);
    }
    if n.starts_with(&q) {
        return Some(1);
    }
    if let Some(i) = n.find(&q) {
        // after a dash a word begins
        return Some(if n[..i].ends_with(['-', '_', '.']) {
            2
        } else {
            3
        });
    }
    let mut rest = n.chars();
    let mut gaps = 0;
    for c in q.chars() {
        let skipped = rest.position(|x| x == c)?;
        gaps += u32::try_from(skipped.min(50)).unwrap_or(50);
    }
    Some(4 + gaps)
}
