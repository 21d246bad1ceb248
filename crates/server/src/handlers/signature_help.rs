//! `textDocument/signatureHelp`: the form of the statement at the cursor.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn signature_help(
    st: &mut State,
    p: SignatureHelpParams,
) -> Result<Option<SignatureHelp>> {
    let p = p.text_document_position_params;
    let Some(v) = st.text_view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let Some(help) = ide::signature_help(v.snapshot, v.doc, v.offset(p.position)) else {
        return Ok(None);
    };
    let words =
        |text: &str| (!text.is_empty()).then(|| Documentation::MarkupContent(v.markup(text)));
    let active = help
        .signatures
        .get(help.active)
        .and_then(|s| s.active)
        .map(|n| n as u32);
    let signature = |s: &ide::Signature| {
        let parameter = |p: &ide::Parameter| {
            let slice = s.label.get(p.label.range()).unwrap_or("");
            let label = if v.state.peer.label_offsets {
                // the protocol counts these in UTF-16 whatever was agreed for positions
                let units = |text: &str| text.encode_utf16().count() as u32;
                let start = units(s.label.get(..p.label.start as usize).unwrap_or(""));
                ParameterLabel::LabelOffsets([start, start + units(slice)])
            } else {
                ParameterLabel::Simple(slice.to_owned())
            };
            ParameterInformation {
                label,
                documentation: words(&p.documentation),
            }
        };
        SignatureInformation {
            label: s.label.clone(),
            documentation: words(&s.documentation),
            parameters: Some(s.parameters.iter().map(parameter).collect()),
            active_parameter: s.active.map(|n| n as u32),
        }
    };
    Ok(Some(SignatureHelp {
        signatures: help.signatures.iter().map(signature).collect(),
        active_signature: Some(help.active as u32),
        active_parameter: active,
    }))
}
