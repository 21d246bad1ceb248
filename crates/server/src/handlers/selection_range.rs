//! `textDocument/selectionRange`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn selection_ranges(
    st: &mut State,
    p: SelectionRangeParams,
) -> Result<Option<Vec<SelectionRange>>> {
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let one = |at: &Position| {
        let offset = v.offset(*at);
        let spans = ide::selection_ranges(v.snapshot, v.doc, offset);
        let mut made: Option<SelectionRange> = None;
        for s in spans.iter().rev() {
            made = Some(SelectionRange {
                range: v.range(*s),
                parent: made.map(Box::new),
            });
        }
        // one for every position, as the protocol wants
        made.unwrap_or_else(|| {
            let here = v.position(offset);
            SelectionRange {
                range: Range {
                    start: here,
                    end: here,
                },
                parent: None,
            }
        })
    };
    Ok(Some(p.positions.iter().map(one).collect()))
}
