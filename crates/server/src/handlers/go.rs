//! From a name to what it means, to where else it stands, along the signal path.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide as ide;
use ls_types::request::{
    GotoDeclarationParams, GotoDeclarationResponse, GotoImplementationParams,
    GotoImplementationResponse, GotoTypeDefinitionParams, GotoTypeDefinitionResponse,
};
use ls_types::*;
use serde::{Deserialize, Serialize};
use tower_lsp::jsonrpc::{Error, Result};

use crate::handlers::structure::symbol_kind;
use crate::state::State;
use crate::view::View;

type Find = fn(&Snapshot, ide::Doc, u32) -> Vec<ide::Link>;

fn links(
    st: &mut State,
    p: &TextDocumentPositionParams,
    find: Find,
) -> Result<Option<GotoDefinitionResponse>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = find(v.snapshot, v.doc, v.offset(p.position));
    let links: Vec<LocationLink> = found.iter().filter_map(|l| v.link(l)).collect();
    if links.is_empty() {
        return Ok(None);
    }
    Ok(Some(if v.state.peer.link_support {
        GotoDefinitionResponse::Link(links)
    } else {
        let plain = links.into_iter().map(|l| Location {
            uri: l.target_uri,
            range: l.target_selection_range,
        });
        GotoDefinitionResponse::Array(plain.collect())
    }))
}

pub(crate) fn definition(
    st: &mut State,
    p: GotoDefinitionParams,
) -> Result<Option<GotoDefinitionResponse>> {
    links(st, &p.text_document_position_params, ide::definition)
}

pub(crate) fn declaration(
    st: &mut State,
    p: GotoDeclarationParams,
) -> Result<Option<GotoDeclarationResponse>> {
    links(st, &p.text_document_position_params, ide::declaration)
}

pub(crate) fn type_definition(
    st: &mut State,
    p: GotoTypeDefinitionParams,
) -> Result<Option<GotoTypeDefinitionResponse>> {
    links(st, &p.text_document_position_params, ide::type_definition)
}

pub(crate) fn implementation(
    st: &mut State,
    p: GotoImplementationParams,
) -> Result<Option<GotoImplementationResponse>> {
    links(st, &p.text_document_position_params, ide::implementation)
}

pub(crate) fn references(st: &mut State, p: ReferenceParams) -> Result<Option<Vec<Location>>> {
    let at = p.text_document_position;
    let Some(v) = st.wide_view(&at.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::references(
        v.snapshot,
        v.doc,
        v.offset(at.position),
        p.context.include_declaration,
    );
    Ok(Some(
        found
            .into_iter()
            .filter_map(|place| v.location(place))
            .collect(),
    ))
}

/// Always answered: one client asks whether it is offered or not, and shows a refusal to the user.
pub(crate) fn highlights(
    st: &mut State,
    p: DocumentHighlightParams,
) -> Result<Option<Vec<DocumentHighlight>>> {
    let p = p.text_document_position_params;
    let Ok(Some(v)) = st.view(&p.text_document.uri) else {
        return Ok(Some(Vec::new()));
    };
    let found = ide::highlights(v.snapshot, v.doc, v.offset(p.position));
    let one = |h: &ide::Highlight| DocumentHighlight {
        range: v.range(h.span),
        kind: Some(match h.kind {
            ide::HighlightKind::Text => DocumentHighlightKind::TEXT,
            ide::HighlightKind::Read => DocumentHighlightKind::READ,
            ide::HighlightKind::Write => DocumentHighlightKind::WRITE,
        }),
    };
    Ok(Some(found.iter().map(one).collect()))
}

pub(crate) fn linked(
    st: &mut State,
    p: LinkedEditingRangeParams,
) -> Result<Option<LinkedEditingRanges>> {
    let p = p.text_document_position_params;
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let spans = ide::linked_ranges(v.snapshot, v.doc, v.offset(p.position));
    let ranges: Vec<Range> = spans.into_iter().map(|s| v.range(s)).collect();
    Ok((!ranges.is_empty()).then_some(LinkedEditingRanges {
        ranges,
        word_pattern: None,
    }))
}

pub(crate) fn prepare_calls(
    st: &mut State,
    p: CallHierarchyPrepareParams,
) -> Result<Option<Vec<CallHierarchyItem>>> {
    let p = p.text_document_position_params;
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::prepare_calls(v.snapshot, v.doc, v.offset(p.position));
    let items: Vec<_> = found.iter().filter_map(|i| call_item(&v, i)).collect();
    Ok((!items.is_empty()).then_some(items))
}

fn call_item(v: &View<'_>, i: &ide::CallItem) -> Option<CallHierarchyItem> {
    Some(CallHierarchyItem {
        name: i.name.clone(),
        kind: symbol_kind(i.kind),
        tags: None,
        detail: (!i.detail.is_empty()).then(|| i.detail.clone()),
        uri: v.uri_of(i.place.doc)?,
        range: v.range_in(i.place.doc, i.place.span),
        selection_range: v.range_in(i.focus.doc, i.focus.span),
        data: None,
    })
}

/// The place of an item the client hands back.
fn asked(v: &View<'_>, item: &CallHierarchyItem) -> ide::Place {
    ide::Place {
        doc: v.doc,
        span: v.span(item.selection_range),
    }
}

pub(crate) fn incoming(
    st: &mut State,
    p: CallHierarchyIncomingCallsParams,
) -> Result<Option<Vec<CallHierarchyIncomingCall>>> {
    let Some(v) = st.view(&p.item.uri)? else {
        return Ok(None);
    };
    let found = ide::incoming_calls(v.snapshot, asked(&v, &p.item));
    let one = |c: ide::Call| {
        let doc = c.item.place.doc;
        Some(CallHierarchyIncomingCall {
            from: call_item(&v, &c.item)?,
            from_ranges: ranges(&v, doc, &c.spans),
        })
    };
    Ok(Some(found.into_iter().filter_map(one).collect()))
}

pub(crate) fn outgoing(
    st: &mut State,
    p: CallHierarchyOutgoingCallsParams,
) -> Result<Option<Vec<CallHierarchyOutgoingCall>>> {
    let Some(v) = st.view(&p.item.uri)? else {
        return Ok(None);
    };
    let found = ide::outgoing_calls(v.snapshot, asked(&v, &p.item));
    let one = |c: ide::Call| {
        Some(CallHierarchyOutgoingCall {
            to: call_item(&v, &c.item)?,
            from_ranges: ranges(&v, v.doc, &c.spans),
        })
    };
    Ok(Some(found.into_iter().filter_map(one).collect()))
}

fn ranges(v: &View<'_>, doc: ide::Doc, spans: &[Span]) -> Vec<Range> {
    spans.iter().map(|s| v.range_in(doc, *s)).collect()
}

/// What is put into an item: the document that was open, the item's own and where it stands there.
#[derive(Deserialize, Serialize)]
struct TypeOrigin {
    uri: Uri,
    path: String,
    start: u32,
    end: u32,
}

fn type_item(v: &View<'_>, i: &ide::TypeItem) -> Option<TypeHierarchyItem> {
    let origin = TypeOrigin {
        uri: v.uri.clone(),
        path: ide::doc_path(v.snapshot, i.focus.doc),
        start: i.focus.span.start,
        end: i.focus.span.end,
    };
    Some(TypeHierarchyItem {
        name: i.name.clone(),
        kind: symbol_kind(i.kind),
        tags: None,
        detail: (!i.detail.is_empty()).then(|| i.detail.clone()),
        uri: v.uri_of(i.place.doc)?,
        range: v.range_in(i.place.doc, i.place.span),
        selection_range: v.range_in(i.focus.doc, i.focus.span),
        data: serde_json::to_value(origin).ok(),
    })
}

pub(crate) fn prepare_types(
    st: &mut State,
    p: TypeHierarchyPrepareParams,
) -> Result<Option<Vec<TypeHierarchyItem>>> {
    if !st.peer.type_hierarchy {
        // announced to nobody else
        return Err(Error::method_not_found());
    }
    let Some(v) = st.view(&p.text_document_position_params.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::prepare_types(
        v.snapshot,
        v.doc,
        v.offset(p.text_document_position_params.position),
    );
    Ok(found.and_then(|i| type_item(&v, &i)).map(|i| vec![i]))
}

fn types(
    st: &mut State,
    item: TypeHierarchyItem,
    find: fn(&Snapshot, ide::Place) -> Vec<ide::TypeItem>,
) -> Result<Option<Vec<TypeHierarchyItem>>> {
    let origin = item.data.and_then(|d| serde_json::from_value(d).ok());
    let Some(TypeOrigin {
        uri,
        path,
        start,
        end,
    }) = origin
    else {
        return Err(Error::invalid_params("the item's `data` is needed"));
    };
    // parts in files that are not open count too
    let Some(v) = st.wide_view(&uri)? else {
        return Ok(None);
    };
    let Some(doc) = ide::doc_of_path(v.snapshot, &path) else {
        return Ok(None);
    };
    let span = Span::new(start.min(end), end);
    let found = find(v.snapshot, ide::Place { doc, span });
    Ok(Some(
        found.iter().filter_map(|i| type_item(&v, i)).collect(),
    ))
}

pub(crate) fn supertypes(
    st: &mut State,
    p: TypeHierarchySupertypesParams,
) -> Result<Option<Vec<TypeHierarchyItem>>> {
    types(st, p.item, ide::supertypes)
}

pub(crate) fn subtypes(
    st: &mut State,
    p: TypeHierarchySubtypesParams,
) -> Result<Option<Vec<TypeHierarchyItem>>> {
    types(st, p.item, ide::subtypes)
}
