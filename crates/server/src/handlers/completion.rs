//! `textDocument/completion`.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use tower_lsp::jsonrpc::Result;

pub(crate) fn completion(
    st: &mut State,
    p: CompletionParams,
) -> Result<Option<CompletionResponse>> {
    let p = p.text_document_position;
    let Some(v) = st.text_view(&p.text_document.uri)? else {
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
        filter_text: Some(c.filter.map_or_else(|| c.label.clone(), str::to_owned)),
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
