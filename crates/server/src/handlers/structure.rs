//! The shape of a text: symbols, folds, selections, links.

use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

use crate::docs::Home;
use crate::space::Key;
use crate::state::State;
use crate::uris;
use crate::view::View;

pub(crate) fn symbol_kind(k: ide::SymbolKind) -> SymbolKind {
    use ide::SymbolKind as K;
    match k {
        K::Station => SymbolKind::MODULE,
        K::Chain => SymbolKind::FUNCTION,
        K::Branch => SymbolKind::METHOD,
        K::Part => SymbolKind::OBJECT,
        K::Port => SymbolKind::PROPERTY,
        K::Band => SymbolKind::ENUM_MEMBER,
        K::Let => SymbolKind::CONSTANT,
        K::Cable => SymbolKind::CLASS,
        K::Connector => SymbolKind::STRUCT,
        K::Device => SymbolKind::CLASS,
        K::Instrument => SymbolKind::INTERFACE,
        K::Place => SymbolKind::NAMESPACE,
        K::Session => SymbolKind::MODULE,
        K::Readings => SymbolKind::ARRAY,
    }
}

pub(crate) fn symbols(
    st: &mut State,
    p: DocumentSymbolParams,
) -> Result<Option<DocumentSymbolResponse>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::document_symbols(v.snapshot, v.doc);
    if v.state.peer.nested_symbols {
        return Ok(Some(DocumentSymbolResponse::Nested(
            found.iter().map(|s| nested(&v, s)).collect(),
        )));
    }
    let mut flat = Vec::new();
    for s in &found {
        flatten(&v, s, None, &mut flat);
    }
    Ok(Some(DocumentSymbolResponse::Flat(flat)))
}

#[allow(deprecated, reason = "the protocol's literal has the field")]
fn nested(v: &View<'_>, s: &ide::Symbol) -> DocumentSymbol {
    DocumentSymbol {
        name: named(&s.name),
        detail: (!s.detail.is_empty()).then(|| s.detail.clone()),
        kind: symbol_kind(s.kind),
        tags: None,
        deprecated: None,
        range: v.range(s.span),
        selection_range: v.range(s.focus),
        children: (!s.children.is_empty())
            .then(|| s.children.iter().map(|c| nested(v, c)).collect()),
    }
}

/// An empty name makes one client drop the whole answer.
fn named(name: &str) -> String {
    if name.is_empty() {
        "…".to_owned()
    } else {
        name.to_owned()
    }
}

#[allow(deprecated, reason = "the protocol's literal has the field")]
fn flatten(v: &View<'_>, s: &ide::Symbol, within: Option<&str>, out: &mut Vec<SymbolInformation>) {
    out.push(SymbolInformation {
        name: named(&s.name),
        kind: symbol_kind(s.kind),
        tags: None,
        deprecated: None,
        location: Location {
            uri: v.uri.clone(),
            range: v.range(s.span),
        },
        container_name: within.map(str::to_owned),
    });
    for c in &s.children {
        flatten(v, c, Some(&s.name), out);
    }
}

#[allow(deprecated, reason = "the protocol's literal has the field")]
pub(crate) fn workspace_symbols(
    st: &mut State,
    p: WorkspaceSymbolParams,
) -> Result<Option<WorkspaceSymbolResponse>> {
    let keys: Vec<Key> = st.spaces.keys().cloned().collect();
    let mut all = Vec::new();
    for key in &keys {
        if st.cancel.is_set() {
            break;
        }
        if st.sync_wide(key).is_err() {
            continue;
        }
        let Some(snapshot) = st.spaces.get(key).and_then(|s| s.wide()) else {
            continue;
        };
        let Some(v) = st.space_view(key, snapshot) else {
            continue;
        };
        for s in ide::workspace_symbols(snapshot, &p.query) {
            let Some(location) = v.location(s.place) else {
                continue;
            };
            all.push(SymbolInformation {
                name: named(&s.name),
                kind: symbol_kind(s.kind),
                tags: None,
                deprecated: None,
                location,
                container_name: s.container,
            });
        }
    }
    Ok(Some(WorkspaceSymbolResponse::Flat(all)))
}

pub(crate) fn folds(st: &mut State, p: FoldingRangeParams) -> Result<Option<Vec<FoldingRange>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let lines_only = v.state.peer.lines_only;
    let fold = |f: &ide::Fold| {
        let start = v.position(f.span.start);
        let end = v.position(f.span.end);
        // a client that folds whole lines would hide the closing brace
        let end_line = if lines_only && f.kind == ide::FoldKind::Block {
            end.line.saturating_sub(1)
        } else {
            end.line
        };
        (end_line > start.line).then(|| FoldingRange {
            start_line: start.line,
            start_character: (!lines_only).then_some(start.character),
            end_line,
            end_character: (!lines_only).then_some(end.character),
            kind: match f.kind {
                ide::FoldKind::Block => None,
                ide::FoldKind::Comment => Some(FoldingRangeKind::Comment),
                ide::FoldKind::Uses => Some(FoldingRangeKind::Imports),
            },
            collapsed_text: None,
        })
    };
    let found = ide::folding_ranges(v.snapshot, v.doc);
    Ok(Some(
        found
            .iter()
            .filter_map(fold)
            .take(v.state.peer.fold_limit)
            .collect(),
    ))
}

pub(crate) fn selections(
    st: &mut State,
    p: SelectionRangeParams,
) -> Result<Option<Vec<SelectionRange>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let one = |at: &Position| {
        let offset = v.offset(*at);
        let spans = ide::selection_ranges(v.snapshot, v.doc, offset);
        let mut made: Option<SelectionRange> = None;
        for s in spans.iter().rev() {
            made = Some(SelectionRange {
                range: v.range(*s),
                parent: made.map(Box::new),
            });
        }
        // one for every position, as the protocol wants
        made.unwrap_or_else(|| {
            let here = v.position(offset);
            SelectionRange {
                range: Range {
                    start: here,
                    end: here,
                },
                parent: None,
            }
        })
    };
    Ok(Some(p.positions.iter().map(one).collect()))
}

pub(crate) fn document_links(
    st: &mut State,
    p: DocumentLinkParams,
) -> Result<Option<Vec<DocumentLink>>> {
    let root = match st.docs.get(&p.text_document.uri).map(|d| d.home.clone()) {
        Some(Home::Space {
            key: Key::Root(root),
            ..
        }) => Some(root),
        _ => None,
    };
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::document_links(v.snapshot, v.doc);
    // readings and network files, where there is a folder they can stand in
    let files = ide::file_links(v.snapshot, v.doc);
    let file = |l: &ide::FileLink| {
        Some(DocumentLink {
            range: v.range(l.span),
            target: Some(uris::from_path(&root.as_ref()?.join(&l.path))?),
            tooltip: Some(l.path.clone()),
            data: None,
        })
    };
    let link = |l: &ide::DocumentLink| {
        Some(DocumentLink {
            range: v.range(l.span),
            target: Some(v.uri_of(l.target)?),
            tooltip: (!l.tooltip.is_empty()).then(|| l.tooltip.clone()),
            data: None,
        })
    };
    let mut all: Vec<DocumentLink> = found.iter().filter_map(link).collect();
    all.extend(files.iter().filter_map(file));
    Ok(Some(all))
}
