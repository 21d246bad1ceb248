//! `textDocument/inlineValue`: computed values while a debug session runs.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn inline_values(
    st: &mut State,
    p: InlineValueParams,
) -> Result<Option<Vec<InlineValue>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::inline_values(v.snapshot, v.doc, v.span(p.range), &v.config);
    let value = |x: ide::InlineValue| {
        InlineValue::Text(InlineValueText {
            range: v.range(x.span),
            text: x.text,
        })
    };
    Ok(Some(found.into_iter().map(value).collect()))
}
