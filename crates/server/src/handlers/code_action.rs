//! Quick fixes and refactorings.

use downlead_ide as ide;
use ls_types::*;
use serde_json::json;
use tower_lsp::jsonrpc::Result;

use crate::state::State;
use crate::view::{View, origin, refused};

/// True if a kind equals one of those requested, or is a subkind of it.
fn wanted(only: &[CodeActionKind], kind: &str) -> bool {
    only.iter().any(|k| {
        let k = k.as_str();
        k.is_empty()
            || kind == k
            || kind
                .strip_prefix(k)
                .is_some_and(|rest| rest.starts_with('.'))
    })
}

pub(crate) fn code_actions(
    st: &mut State,
    p: CodeActionParams,
) -> Result<Option<CodeActionResponse>> {
    let Some(v) = st.view(&p.text_document.uri)? else {
        return Ok(None);
    };
    let only = p.context.only.as_deref();
    let mut found = found(&v, p.range, only);
    found.retain(|a| match only {
        Some(only) => wanted(only, a.kind.name()),
        // those of the kind `source` only when asked for
        None => a.kind != ide::ActionKind::FixAll,
    });
    if !v.state.peer.action_disabled {
        found.retain(|a| a.disabled.is_none());
    }
    let answer = found.iter().map(|a| {
        if v.state.peer.action_literals {
            CodeActionOrCommand::CodeAction(action(&v, a, &p))
        } else {
            let edit = json!({ "edit": v.workspace_edit(&a.edits), "label": a.title });
            CodeActionOrCommand::Command(Command {
                title: a.title.clone(),
                command: "downlead.apply".to_owned(),
                arguments: Some(vec![edit]),
            })
        }
    });
    Ok(Some(answer.collect()))
}

fn found(v: &View<'_>, range: Range, only: Option<&[CodeActionKind]>) -> Vec<ide::Action> {
    let mut all = ide::code_actions(v.snapshot, v.doc, v.span(range), &v.config);
    let asked = only.is_some_and(|only| wanted(only, ide::ActionKind::FixAll.name()));
    if let (true, ide::Doc::File(file)) = (
        asked && all.iter().all(|a| a.kind != ide::ActionKind::FixAll),
        v.doc,
    ) {
        let edits = ide::fix_all(v.snapshot, file, &v.config);
        if !edits.is_empty() {
            all.push(ide::Action {
                title: "Mend all that has one clear answer".to_owned(),
                kind: ide::ActionKind::FixAll,
                edits,
                preferred: false,
                disabled: None,
                codes: Vec::new(),
                finding: None,
            });
        }
    }
    all
}

fn action(v: &View<'_>, a: &ide::Action, p: &CodeActionParams) -> CodeAction {
    let mends = |d: &&Diagnostic| {
        let code = match &d.code {
            Some(NumberOrString::String(c)) => c.as_str(),
            _ => return false,
        };
        a.codes.contains(&code) && a.finding.is_none_or(|s| v.range(s) == d.range)
    };
    let diagnostics: Vec<Diagnostic> = p
        .context
        .diagnostics
        .iter()
        .filter(mends)
        .cloned()
        .collect();
    // quick fixes are short and complete at once; the others when chosen
    let late =
        v.state.peer.action_resolve && a.kind != ide::ActionKind::QuickFix && a.disabled.is_none();
    CodeAction {
        title: a.title.clone(),
        kind: Some(CodeActionKind::from(a.kind.name())),
        diagnostics: (!diagnostics.is_empty()).then_some(diagnostics),
        edit: (!late && a.disabled.is_none()).then(|| v.workspace_edit(&a.edits)),
        is_preferred: a.preferred.then_some(true),
        disabled: a
            .disabled
            .clone()
            .map(|reason| CodeActionDisabled { reason }),
        data: late.then(|| json!({ "uri": v.uri, "version": v.version, "range": p.range })),
        ..CodeAction::default()
    }
}

/// Adds the edit. For a text that has changed since: the edit for the text as it is now.
pub(crate) fn resolve(st: &mut State, mut old: CodeAction) -> Result<CodeAction> {
    let Some((uri, _)) = origin(old.data.as_ref()) else {
        return Ok(old);
    };
    let range = old
        .data
        .as_ref()
        .and_then(|d| d.get("range"))
        .and_then(|r| serde_json::from_value(r.clone()).ok());
    let (Some(range), Some(v)) = (range, st.view(&uri)?) else {
        return Ok(old);
    };
    let kind = old.kind.clone().unwrap_or(CodeActionKind::EMPTY);
    let only = [kind.clone()];
    let again = found(&v, range, Some(&only));
    let same = again
        .iter()
        .find(|a| a.title == old.title && a.kind.name() == kind.as_str() && a.disabled.is_none());
    match same {
        Some(a) => {
            old.edit = Some(v.workspace_edit(&a.edits));
            Ok(old)
        }
        None => Err(refused(
            "The text has changed, and this is no longer to be done.",
        )),
    }
}
