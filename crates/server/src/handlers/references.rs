//! `textDocument/references`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

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
