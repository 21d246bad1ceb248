//! `workspace/executeCommand`.

use crate::handlers::virtual_document::{Generated, html_report, open};
use crate::state::State;
use crate::view::refused;
use ls_types::{ExecuteCommandParams, Uri};
use serde::Deserialize;
use serde_json::{Value, json};
use tower_lsp::jsonrpc::{Error, Result};

/// The one argument of the commands; an address alone will do.
#[derive(Deserialize)]
struct Argument {
    uri: Uri,
    name: Option<String>,
    line: Option<u32>,
    format: Option<String>,
    revision: Option<String>,
    /// True to open the answer too, for clients that ignore the result of a command.
    #[serde(default)]
    show: bool,
}

fn argument(p: &ExecuteCommandParams) -> Result<Argument> {
    let first = p
        .arguments
        .first()
        .ok_or_else(|| Error::invalid_params("an object with `uri` is needed"))?;
    let second = match p.command.as_str() {
        "downlead.compare" => "revision",
        _ => "name",
    };
    let whole = match first {
        Value::String(uri) => json!({ "uri": uri, second: p.arguments.get(1) }),
        other => other.clone(),
    };
    serde_json::from_value(whole).map_err(|e| Error::invalid_params(e.to_string()))
}

pub(crate) fn execute(st: &mut State, p: ExecuteCommandParams) -> Result<Option<Value>> {
    match p.command.as_str() {
        "downlead.report" => generate(st, &p, |a| Ok(Generated::Report(a.name.clone()))),
        "downlead.explain" => generate(st, &p, |a| {
            let needed = || Error::invalid_params("`line`, counted from 1, is needed");
            a.line.map(Generated::Explanation).ok_or_else(needed)
        }),
        "downlead.compare" => generate(st, &p, |a| Ok(Generated::comparison(a.revision.clone()))),
        "downlead.export" => export(st, &p).map(Some),
        "downlead.apply" => apply(st, p).map(|()| None),
        other => Err(Error::invalid_params(format!(
            "there is no command `{other}`"
        ))),
    }
}

/// The generated text; also shown if the arguments have `show`.
fn generate(
    st: &mut State,
    p: &ExecuteCommandParams,
    of: fn(&Argument) -> Result<Generated>,
) -> Result<Option<Value>> {
    let a = argument(p)?;
    let generated = of(&a)?;
    let text = generated.text(st, &a.uri)?;
    if a.show {
        generated.show(st, &a.uri, &text);
    }
    Ok(Some(Value::String(text)))
}

fn export(st: &mut State, p: &ExecuteCommandParams) -> Result<Value> {
    let a = argument(p)?;
    let format = a.format.as_deref().unwrap_or("json");
    let v = open(st, &a.uri)?;
    match format {
        "json" => serde_json::to_value(downlead_report::build::chain::report(v.snapshot))
            .map_err(|_| Error::internal_error()),
        "html" => html_report(st, &a.uri, a.name.as_deref()).map(Value::String),
        "markdown" => Generated::Report(a.name)
            .text(st, &a.uri)
            .map(Value::String),
        _ => Err(Error::invalid_params(
            "`format` is `json`, `markdown` or `html`",
        )),
    }
}

/// Sends an edit of a code action, for clients that cannot apply it themselves.
fn apply(st: &mut State, p: ExecuteCommandParams) -> Result<()> {
    let edit = p
        .arguments
        .into_iter()
        .next()
        .ok_or_else(|| Error::invalid_params("an edit is needed"))?;
    if !st.peer.apply_edit {
        return Err(refused("This editor takes no edits from a server."));
    }
    st.out.ask("workspace/applyEdit", edit, |_| {});
    Ok(())
}
