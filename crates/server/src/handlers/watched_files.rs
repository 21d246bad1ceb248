//! `workspace/didChangeWatchedFiles`.

use crate::state::State;
use crate::uris;
use ls_types::*;

/// Files were made, changed or removed outside the editor.
pub(crate) fn changed(st: &mut State, p: DidChangeWatchedFilesParams) {
    let mut found = false;
    for change in p.changes {
        let Some(path) = uris::to_path(&change.uri) else {
            continue;
        };
        if st.docs.get(&change.uri).is_some() {
            // the editor's text of an open document takes precedence
            continue;
        }
        for space in st.spaces.values_mut() {
            if space.root().is_some_and(|r| path.starts_with(r)) {
                space.rearranged();
                found = true;
            }
        }
    }
    if found {
        st.due.publish_now();
        st.due.refresh_soon();
    }
}
