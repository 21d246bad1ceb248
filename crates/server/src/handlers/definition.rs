//! `textDocument/definition`, `declaration`, `typeDefinition`, `implementation`.

use crate::state::State;
use downlead_eval::Snapshot;
use downlead_ide as ide;
use ls_types::request::{
    GotoDeclarationParams, GotoDeclarationResponse, GotoImplementationParams,
    GotoImplementationResponse, GotoTypeDefinitionParams, GotoTypeDefinitionResponse,
};
use ls_types::*;
use tower_lsp::jsonrpc::Result;

type Find = fn(&Snapshot, ide::Doc, u32) -> Vec<ide::Link>;

fn links(
    st: &mut State,
    p: &TextDocumentPositionParams,
    find: Find,
) -> Result<Option<GotoDefinitionResponse>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = find(v.snapshot, v.doc, v.offset(p.position));
    let links: Vec<LocationLink> = found.iter().filter_map(|l| v.link(l)).collect();
    if links.is_empty() {
        return Ok(None);
    }
    Ok(Some(if v.state.peer.link_support {
        GotoDefinitionResponse::Link(links)
    } else {
        let plain = links.into_iter().map(|l| Location {
            uri: l.target_uri,
            range: l.target_selection_range,
        });
        GotoDefinitionResponse::Array(plain.collect())
    }))
}

pub(crate) fn definition(
    st: &mut State,
    p: GotoDefinitionParams,
) -> Result<Option<GotoDefinitionResponse>> {
    links(st, &p.text_document_position_params, ide::definition)
}

pub(crate) fn declaration(
    st: &mut State,
    p: GotoDeclarationParams,
) -> Result<Option<GotoDeclarationResponse>> {
    links(st, &p.text_document_position_params, ide::declaration)
}

pub(crate) fn type_definition(
    st: &mut State,
    p: GotoTypeDefinitionParams,
) -> Result<Option<GotoTypeDefinitionResponse>> {
    links(st, &p.text_document_position_params, ide::type_definition)
}

pub(crate) fn implementation(
    st: &mut State,
    p: GotoImplementationParams,
) -> Result<Option<GotoImplementationResponse>> {
    links(st, &p.text_document_position_params, ide::implementation)
}
