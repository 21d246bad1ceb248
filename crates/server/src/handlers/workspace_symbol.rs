//! `workspace/symbol`.

use crate::docs::Key;
use crate::handlers::document_symbol::{named, symbol_kind};
use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

#[allow(deprecated, reason = "the protocol's literal has the field")]
pub(crate) fn symbols(
    st: &mut State,
    p: WorkspaceSymbolParams,
) -> Result<Option<WorkspaceSymbolResponse>> {
    let keys: Vec<Key> = st.spaces.keys().cloned().collect();
    let mut all = Vec::new();
    for key in &keys {
        if st.cancel.is_set() {
            break;
        }
        if st.sync_wide(key).is_err() {
            continue;
        }
        let Some(snapshot) = st.spaces.get(key).and_then(|s| s.wide()) else {
            continue;
        };
        let Some(v) = st.space_view(key, snapshot) else {
            continue;
        };
        for s in ide::workspace_symbols(snapshot, &p.query) {
            let Some(location) = v.location(s.place) else {
                continue;
            };
            all.push(SymbolInformation {
                name: named(&s.name),
                kind: symbol_kind(s.kind),
                tags: None,
                deprecated: None,
                location,
                container_name: s.container,
            });
        }
    }
    Ok(Some(WorkspaceSymbolResponse::Flat(all)))
}
