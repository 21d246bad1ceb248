//! What is read beside or above the text: hover, hints, lenses, completion, signatures.

use downlead_ide as ide;
use ls_types::*;
use serde_json::{Value, json};
use tower_lsp::jsonrpc::Result;

use crate::state::State;

pub(crate) fn hover(st: &mut State, p: HoverParams) -> Result<Option<Hover>> {
    let p = p.text_document_position_params;
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::hover(v.snapshot, v.doc, v.offset(p.position), &v.config);
    Ok(found.map(|h| Hover {
        contents: HoverContents::Markup(v.markup(&h.text)),
        range: Some(v.range(h.span)),
    }))
}

/// Document and version that were put into `data`.
pub(crate) fn origin(data: Option<&Value>) -> Option<(Uri, i32)> {
    let data = data?;
    let uri = data.get("uri")?.as_str()?.parse().ok()?;
    let version = data.get("version")?.as_i64()?.try_into().ok()?;
    Some((uri, version))
}

pub(crate) fn lenses(st: &mut State, p: CodeLensParams) -> Result<Option<Vec<CodeLens>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::code_lenses(v.snapshot, v.doc, &v.config);
    let lens = |l: ide::Lens| {
        let (command, arguments) = match l.command {
            ide::LensCommand::Report { file, name } => (
                "downlead.report",
                json!({ "uri": v.uri_of(ide::Doc::File(file)), "name": name, "show": true }),
            ),
            ide::LensCommand::Explain { file, line } => (
                "downlead.explain",
                json!({ "uri": v.uri_of(ide::Doc::File(file)), "line": line, "show": true }),
            ),
        };
        CodeLens {
            range: v.range(l.span),
            command: Some(Command {
                title: l.title,
                command: command.to_owned(),
                arguments: Some(vec![arguments]),
            }),
            data: None,
        }
    };
    Ok(Some(found.into_iter().map(lens).collect()))
}

pub(crate) fn completion(
    st: &mut State,
    p: CompletionParams,
) -> Result<Option<CompletionResponse>> {
    let p = p.text_document_position;
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let files = || v.files_to_name();
    let found = ide::completion_with(v.snapshot, v.doc, v.offset(p.position), &v.config, &files);
    let item = |c: ide::Completion| CompletionItem {
        kind: Some(kind(c.kind)),
        detail: c.detail,
        documentation: c
            .documentation
            .map(|d| Documentation::MarkupContent(v.markup(&d))),
        // what is typed is compared with the text that is there
        filter_text: Some(c.label.clone()),
        label: c.label,
        sort_text: Some(c.sort),
        preselect: c.preselect.then_some(true),
        insert_text_format: Some(if c.snippet {
            InsertTextFormat::SNIPPET
        } else {
            InsertTextFormat::PLAIN_TEXT
        }),
        text_edit: Some(CompletionTextEdit::Edit(TextEdit {
            range: v.range(c.replace),
            new_text: c.insert,
        })),
        ..CompletionItem::default()
    };
    let items = found.into_iter().map(item).collect();
    Ok(Some(CompletionResponse::List(CompletionList {
        is_incomplete: false,
        items,
    })))
}

fn kind(k: ide::CompletionKind) -> CompletionItemKind {
    use ide::CompletionKind as K;
    match k {
        K::Keyword => CompletionItemKind::KEYWORD,
        K::Tag => CompletionItemKind::VARIABLE,
        K::Port => CompletionItemKind::FIELD,
        K::Band => CompletionItemKind::ENUM_MEMBER,
        K::Cable => CompletionItemKind::CLASS,
        K::Connector => CompletionItemKind::STRUCT,
        K::Device => CompletionItemKind::MODULE,
        K::Instrument => CompletionItemKind::INTERFACE,
        K::Unit => CompletionItemKind::UNIT,
        K::Let => CompletionItemKind::CONSTANT,
        K::Place => CompletionItemKind::REFERENCE,
        K::Qualifier => CompletionItemKind::PROPERTY,
        K::File => CompletionItemKind::FILE,
        K::Snippet => CompletionItemKind::SNIPPET,
        K::Person => CompletionItemKind::TEXT,
        K::Family => CompletionItemKind::ENUM,
    }
}

pub(crate) fn signatures(st: &mut State, p: SignatureHelpParams) -> Result<Option<SignatureHelp>> {
    let p = p.text_document_position_params;
    let Some(v) = st.view(&p.text_document.uri)? else {
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
