//! `textDocument/foldingRange`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn folding_ranges(
    st: &mut State,
    p: FoldingRangeParams,
) -> Result<Option<Vec<FoldingRange>>> {
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let lines_only = v.state.peer.lines_only;
    let fold = |f: &ide::Fold| {
        let start = v.position(f.span.start);
        let end = v.position(f.span.end);
        // a client that folds whole lines would hide the closing brace
        let end_line = if lines_only && f.kind == ide::FoldKind::Block {
            end.line.saturating_sub(1)
        } else {
            end.line
        };
        (end_line > start.line).then(|| FoldingRange {
            start_line: start.line,
            start_character: (!lines_only).then_some(start.character),
            end_line,
            end_character: (!lines_only).then_some(end.character),
            kind: match f.kind {
                ide::FoldKind::Block => None,
                ide::FoldKind::Comment => Some(FoldingRangeKind::Comment),
                ide::FoldKind::Uses => Some(FoldingRangeKind::Imports),
            },
            collapsed_text: None,
        })
    };
    let found = ide::folding_ranges(v.snapshot, v.doc);
    Ok(Some(
        found
            .iter()
            .filter_map(fold)
            .take(v.state.peer.fold_limit)
            .collect(),
    ))
}
