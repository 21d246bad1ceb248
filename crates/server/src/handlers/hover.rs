//! `textDocument/hover`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn hover(st: &mut State, p: HoverParams) -> Result<Option<Hover>> {
    let p = p.text_document_position_params;
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::hover(v.snapshot, v.doc, v.offset(p.position), &v.config);
    Ok(found.map(|h| Hover {
        contents: HoverContents::Markup(v.markup(&h.text)),
        range: Some(v.range(h.span)),
    }))
}
