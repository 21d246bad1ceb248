//! `textDocument/documentLink`: used stations, tables of readings, network files.

use crate::docs::Home;
use crate::docs::Key;
use crate::state::State;
use crate::uris;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn document_links(
    st: &mut State,
    p: DocumentLinkParams,
) -> Result<Option<Vec<DocumentLink>>> {
    let root = match st.docs.get(&p.text_document.uri).map(|d| d.home.clone()) {
        Some(Home::Space {
            key: Key::Root(root),
            ..
        }) => Some(root),
        _ => None,
    };
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::document_links(v.snapshot, v.doc);
    // readings and network files, if the space has a folder
    let files = ide::file_links(v.snapshot, v.doc);
    let file = |l: &ide::FileLink| {
        Some(DocumentLink {
            range: v.range(l.span),
            target: Some(uris::from_path(&root.as_ref()?.join(&l.path))?),
            tooltip: Some(l.path.clone()),
            data: None,
        })
    };
    let link = |l: &ide::DocumentLink| {
        Some(DocumentLink {
            range: v.range(l.span),
            target: Some(v.uri_of(l.target)?),
            tooltip: (!l.tooltip.is_empty()).then(|| l.tooltip.clone()),
            data: None,
        })
    };
    let mut all: Vec<DocumentLink> = found.iter().filter_map(link).collect();
    all.extend(files.iter().filter_map(file));
    Ok(Some(all))
}
