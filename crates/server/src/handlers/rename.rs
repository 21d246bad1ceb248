//! `textDocument/prepareRename` and `rename`.

use crate::state::State;
use crate::view::refused;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

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
