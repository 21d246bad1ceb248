//! `workspace/didChangeWorkspaceFolders`.

use crate::state::State;
use ls_types::*;

pub(crate) fn changed(st: &mut State, p: DidChangeWorkspaceFoldersParams) {
    st.peer
        .folders
        .retain(|f| !p.event.removed.iter().any(|r| r.uri == *f));
    for added in p.event.added {
        if !st.peer.folders.contains(&added.uri) {
            st.peer.folders.push(added.uri);
        }
    }
    st.rehome();
    st.due.refresh_soon();
}
