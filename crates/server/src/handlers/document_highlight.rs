//! `textDocument/documentHighlight`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

/// Always answered: one client asks whether it is offered or not, and shows a refusal to the user.
pub(crate) fn highlights(
    st: &mut State,
    p: DocumentHighlightParams,
) -> Result<Option<Vec<DocumentHighlight>>> {
    let p = p.text_document_position_params;
    let Ok(Some(v)) = st.text_view(&p.text_document.uri) else {
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
