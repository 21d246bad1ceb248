//! `textDocument/prepareTypeHierarchy` and its types: parts and their library entries.

use crate::handlers::document_symbol::symbol_kind;
use crate::state::State;
use crate::view::View;
use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_ide as ide;
use ls_types::*;
use serde::{Deserialize, Serialize};
use tower_lsp::jsonrpc::{Error, Result};

/// The `data` of an item: the open document, the item's own document and its range there.
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

pub(crate) fn prepare(
    st: &mut State,
    p: TypeHierarchyPrepareParams,
) -> Result<Option<Vec<TypeHierarchyItem>>> {
    if !st.peer.type_hierarchy {
        // offered only to clients that register it
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
