//! `textDocument/formatting`, `rangeFormatting`, `onTypeFormatting`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn format(st: &mut State, p: DocumentFormattingParams) -> Result<Option<Vec<TextEdit>>> {
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    Ok(Some(v.own_edits(&ide::format(v.snapshot, v.doc))))
}

pub(crate) fn format_range(
    st: &mut State,
    p: DocumentRangeFormattingParams,
) -> Result<Option<Vec<TextEdit>>> {
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    Ok(Some(v.own_edits(&ide::format_range(
        v.snapshot,
        v.doc,
        v.span(p.range),
    ))))
}

pub(crate) fn format_on_type(
    st: &mut State,
    p: DocumentOnTypeFormattingParams,
) -> Result<Option<Vec<TextEdit>>> {
    let at = p.text_document_position;
    let Some(v) = st.text_view(&at.text_document.uri)? else {
        return Ok(None);
    };
    let Some(ch) = p.ch.chars().next() else {
        return Ok(None);
    };
    Ok(Some(v.own_edits(&ide::format_on_type(
        v.snapshot,
        v.doc,
        v.offset(at.position),
        ch,
    ))))
}
