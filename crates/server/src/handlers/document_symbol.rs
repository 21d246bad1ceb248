//! `textDocument/documentSymbol`: the outline.

use crate::state::State;
use crate::view::View;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

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
pub(crate) fn named(name: &str) -> String {
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
