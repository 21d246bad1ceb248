//! `textDocument/prepareCallHierarchy` and its calls: the signal path.

use crate::handlers::document_symbol::symbol_kind;
use crate::state::State;
use crate::view::View;
use downlead_base::Span;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn prepare(
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
