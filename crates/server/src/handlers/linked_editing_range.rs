//! `textDocument/linkedEditingRange`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn linked_ranges(
    st: &mut State,
    p: LinkedEditingRangeParams,
) -> Result<Option<LinkedEditingRanges>> {
    let p = p.text_document_position_params;
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let spans = ide::linked_ranges(v.snapshot, v.doc, v.offset(p.position));
    let ranges: Vec<Range> = spans.into_iter().map(|s| v.range(s)).collect();
    Ok((!ranges.is_empty()).then_some(LinkedEditingRanges {
        ranges,
        word_pattern: None,
    }))
}
