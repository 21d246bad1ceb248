//! `textDocument/codeLens`: the results of chains and links to their reports.

use crate::state::State;
use downlead_ide as ide;
use ls_types::*;
use serde_json::json;
use tower_lsp::jsonrpc::Result;

pub(crate) fn code_lenses(st: &mut State, p: CodeLensParams) -> Result<Option<Vec<CodeLens>>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let found = ide::code_lenses(v.snapshot, v.doc, &v.config);
    // at the end of a line a lens follows a hint, and both are figures
    let divider = if v.state.peer.lenses_above { "" } else { "· " };
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
                title: format!("{divider}{}", l.title),
                command: command.to_owned(),
                arguments: Some(vec![arguments]),
            }),
            data: None,
        }
    };
    Ok(Some(found.into_iter().map(lens).collect()))
}
