//! The client's capabilities, read from the JSON of `initialize`: an unknown kind or a missing field
//! disables only the feature concerned.

use std::path::PathBuf;
use std::str::FromStr;
use std::sync::Mutex;

use ls_types::Uri;
use serde_json::Value;

use crate::positions::Encoding;

/// The parameters of `initialize`, between the guard and the handler.
#[derive(Default)]
pub(crate) struct FirstWords(Mutex<Option<Value>>);

impl FirstWords {
    pub(crate) fn set(&self, value: Value) {
        *self
            .0
            .lock()
            .unwrap_or_else(std::sync::PoisonError::into_inner) = Some(value);
    }

    pub(crate) fn take(&self) -> Value {
        self.0
            .lock()
            .unwrap_or_else(std::sync::PoisonError::into_inner)
            .take()
            .unwrap_or(Value::Null)
    }
}

/// The client's capabilities.
#[derive(Clone, Debug)]
pub(crate) struct Peer {
    pub(crate) encoding: Encoding,
    /// Workspace folders, by address.
    pub(crate) folders: Vec<Uri>,
    pub(crate) process: Option<u32>,
    pub(crate) options: Value,
    pub(crate) markdown: bool,
    pub(crate) snippets: bool,
    pub(crate) link_support: bool,
    pub(crate) nested_symbols: bool,
    pub(crate) versioned_edits: bool,
    pub(crate) action_literals: bool,
    pub(crate) action_resolve: bool,
    pub(crate) action_disabled: bool,
    /// True if it shows inlay hints.
    pub(crate) hints: bool,
    pub(crate) hint_resolve: Vec<String>,
    pub(crate) related: bool,
    pub(crate) unnecessary: bool,
    pub(crate) code_pages: bool,
    pub(crate) pull: bool,
    pub(crate) lines_only: bool,
    pub(crate) fold_limit: usize,
    pub(crate) label_offsets: bool,
    pub(crate) prepare_rename: bool,
    pub(crate) watch: bool,
    pub(crate) configuration: bool,
    pub(crate) configuration_news: bool,
    pub(crate) progress: bool,
    pub(crate) show_document: bool,
    pub(crate) apply_edit: bool,
    pub(crate) refresh_hints: bool,
    pub(crate) refresh_values: bool,
    pub(crate) refresh_lenses: bool,
    pub(crate) refresh_tokens: bool,
    pub(crate) refresh_diagnostics: bool,
    /// Shows lenses above their lines, not at their ends.
    pub(crate) lenses_above: bool,
    /// Opens documents of the scheme `downlead:` by asking for them.
    pub(crate) virtual_documents: bool,
    pub(crate) fetches_content: bool,
    /// Takes a type hierarchy that is announced later.
    pub(crate) type_hierarchy: bool,
}

impl Peer {
    /// Reads the parameters of `initialize`.
    pub(crate) fn read(params: &Value) -> Peer {
        let caps = params.get("capabilities").unwrap_or(&Value::Null);
        let yes = |path: &str| caps.pointer(path).and_then(Value::as_bool) == Some(true);
        let words = |path: &str| -> Vec<&str> {
            caps.pointer(path)
                .and_then(Value::as_array)
                .into_iter()
                .flatten()
                .filter_map(Value::as_str)
                .collect()
        };
        let given = |path: &str| caps.pointer(path).is_some_and(|v| !v.is_null());
        let options = params
            .get("initializationOptions")
            .cloned()
            .unwrap_or(Value::Null);
        let hover = words("/textDocument/hover/contentFormat");
        let pull_wanted = ["/downlead/diagnostics/pull", "/diagnostics/pull"]
            .iter()
            .any(|p| options.pointer(p).and_then(Value::as_bool) == Some(true));
        let own = ["/downlead/virtualDocuments", "/virtualDocuments"]
            .iter()
            .any(|p| options.pointer(p).and_then(Value::as_bool) == Some(true));
        let lenses_above = options.pointer("/lensesAbove").and_then(Value::as_bool) == Some(true);
        Peer {
            lenses_above,
            encoding: Encoding::choose(&words("/general/positionEncodings")),
            folders: folders(params),
            process: params
                .get("processId")
                .and_then(Value::as_u64)
                .and_then(|p| u32::try_from(p).ok()),
            markdown: hover.contains(&"markdown"),
            snippets: yes("/textDocument/completion/completionItem/snippetSupport"),
            link_support: yes("/textDocument/definition/linkSupport"),
            nested_symbols: yes("/textDocument/documentSymbol/hierarchicalDocumentSymbolSupport"),
            versioned_edits: yes("/workspace/workspaceEdit/documentChanges"),
            action_literals: given("/textDocument/codeAction/codeActionLiteralSupport"),
            action_resolve: words("/textDocument/codeAction/resolveSupport/properties")
                .contains(&"edit")
                && yes("/textDocument/codeAction/dataSupport"),
            action_disabled: yes("/textDocument/codeAction/disabledSupport"),
            hints: given("/textDocument/inlayHint"),
            hint_resolve: words("/textDocument/inlayHint/resolveSupport/properties")
                .iter()
                .map(|s| (*s).to_owned())
                .collect(),
            related: yes("/textDocument/publishDiagnostics/relatedInformation"),
            unnecessary: caps
                .pointer("/textDocument/publishDiagnostics/tagSupport/valueSet")
                .and_then(Value::as_array)
                .is_some_and(|tags| tags.iter().any(|t| t.as_u64() == Some(1))),
            code_pages: yes("/textDocument/publishDiagnostics/codeDescriptionSupport"),
            pull: pull_wanted && given("/textDocument/diagnostic"),
            lines_only: yes("/textDocument/foldingRange/lineFoldingOnly"),
            fold_limit: caps
                .pointer("/textDocument/foldingRange/rangeLimit")
                .and_then(Value::as_u64)
                .and_then(|n| usize::try_from(n).ok())
                .unwrap_or(usize::MAX),
            label_offsets: yes(
                "/textDocument/signatureHelp/signatureInformation/parameterInformation/labelOffsetSupport",
            ),
            prepare_rename: yes("/textDocument/rename/prepareSupport"),
            watch: yes("/workspace/didChangeWatchedFiles/dynamicRegistration"),
            configuration: yes("/workspace/configuration"),
            configuration_news: yes("/workspace/didChangeConfiguration/dynamicRegistration"),
            progress: yes("/window/workDoneProgress"),
            show_document: yes("/window/showDocument/support"),
            apply_edit: yes("/workspace/applyEdit"),
            refresh_hints: yes("/workspace/inlayHint/refreshSupport"),
            refresh_values: yes("/workspace/inlineValue/refreshSupport"),
            refresh_lenses: yes("/workspace/codeLens/refreshSupport"),
            refresh_tokens: yes("/workspace/semanticTokens/refreshSupport"),
            refresh_diagnostics: yes("/workspace/diagnostics/refreshSupport"),
            virtual_documents: own || yes("/experimental/downlead/virtualDocuments"),
            fetches_content: yes("/workspace/textDocumentContent/dynamicRegistration"),
            type_hierarchy: yes("/textDocument/typeHierarchy/dynamicRegistration"),
            options,
        }
    }
}

fn folders(params: &Value) -> Vec<Uri> {
    let many: Vec<Uri> = params
        .get("workspaceFolders")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter_map(|f| f.get("uri").and_then(Value::as_str))
        .filter_map(|u| Uri::from_str(u).ok())
        .collect();
    if !many.is_empty() {
        return many;
    }
    let root = params
        .get("rootUri")
        .and_then(Value::as_str)
        .and_then(|u| Uri::from_str(u).ok());
    let path = || {
        let path = params
            .get("rootPath")
            .and_then(Value::as_str)
            .filter(|p| !p.is_empty())?;
        crate::uris::from_path(&PathBuf::from(path))
    };
    root.or_else(path).into_iter().collect()
}
