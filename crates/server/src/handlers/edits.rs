//! Changes of texts: formatting and renaming.

use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

use crate::state::State;
use crate::view::refused;

pub(crate) fn format(st: &mut State, p: DocumentFormattingParams) -> Result<Option<Vec<TextEdit>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    Ok(Some(v.own_edits(&ide::format(v.snapshot, v.doc))))
}

pub(crate) fn format_range(
    st: &mut State,
    p: DocumentRangeFormattingParams,
) -> Result<Option<Vec<TextEdit>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
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
    let Some(v) = st.view(&at.text_document.uri)? else {
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

pub(crate) fn prepare_rename(
    st: &mut State,
    p: TextDocumentPositionParams,
) -> Result<Option<PrepareRenameResponse>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let (span, placeholder) =
        ide::prepare_rename(v.snapshot, v.doc, v.offset(p.position)).map_err(refused)?;
    Ok(Some(PrepareRenameResponse::RangeWithPlaceholder {
        range: v.range(span),
        placeholder,
    }))
}

pub(crate) fn rename(st: &mut State, p: RenameParams) -> Result<Option<WorkspaceEdit>> {
    let at = p.text_document_position;
    let Some(v) = st.wide_view(&at.text_document.uri)? else {
        return Ok(None);
    };
    let edits =
        ide::rename(v.snapshot, v.doc, v.offset(at.position), &p.new_name).map_err(refused)?;
    Ok(Some(v.workspace_edit(&edits)))
}
