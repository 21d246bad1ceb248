//! `textDocument/didOpen`, `didChange`, `didSave`, `didClose`.

use crate::docs::Home;
use crate::outbox::Kind;
use crate::state::State;
use ls_types::*;
use std::time::Duration;

pub(crate) fn opened(st: &mut State, p: DidOpenTextDocumentParams) {
    let d = p.text_document;
    st.open(d.uri, d.version, d.text);
}

pub(crate) fn changed(st: &mut State, p: DidChangeTextDocumentParams) {
    let encoding = st.peer.encoding;
    let change = st.docs.tick();
    let Some(doc) = st.docs.get_mut(&p.text_document.uri) else {
        st.out.log(
            Kind::Warning,
            format!(
                "A change of {}, which is not open.",
                p.text_document.uri.as_str()
            ),
        );
        return;
    };
    doc.apply(p.content_changes, encoding);
    doc.version = p.text_document.version;
    doc.change = change;
    doc.prepared = false;
    let Home::Space { key, path } = doc.home.clone() else {
        return;
    };
    st.release_later(&p.text_document.uri);
    let mut cost = Duration::ZERO;
    let mut seen_elsewhere = false;
    if let Some(space) = st.spaces.get_mut(&key) {
        space.changed();
        cost = space.cost;
        seen_elsewhere = space.snapshot().is_some_and(|s| is_used(s, &path));
    }
    st.due.publish_after(cost);
    st.due.unsettle();
    if seen_elsewhere {
        st.due.refresh_soon();
    }
}

/// True if another file uses this one and shows its changes.
fn is_used(s: &downlead_eval::Snapshot, path: &str) -> bool {
    let Some(file) = s.files().iter().position(|f| f.path == path) else {
        return false;
    };
    (0..s.files().len()).any(|i| i != file && s.uses(i).iter().any(|(u, _)| *u == file))
}

pub(crate) fn saved(st: &mut State, p: DidSaveTextDocumentParams) {
    st.look_at_disk();
    st.release_of(&p.text_document.uri);
    // something may have been committed since
    if let Some(Home::Space { key, .. }) = st.docs.get(&p.text_document.uri).map(|d| d.home.clone())
    {
        if let Some(space) = st.spaces.get_mut(&key) {
            space.recall.stale = true;
        }
        st.recall(&key);
    }
}

pub(crate) fn closed(st: &mut State, p: DidCloseTextDocumentParams) {
    st.close(&p.text_document.uri);
    st.wipe_unopened();
}
