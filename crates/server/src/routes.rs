//! The table of all document methods: name of the method, handler.

use rustc_hash::FxHashMap;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use tower_lsp::jsonrpc::{Error, Result};

use crate::handlers::*;
use crate::jobs::Job;
use crate::state::State;

/// A request with its parameters, to be run on the state. Its answer is JSON.
pub(crate) type Ask = Box<dyn FnOnce(&mut State) -> Result<Vec<u8>> + Send>;
type Decode<T> = Box<dyn Fn(Option<Value>) -> Result<T> + Send>;

/// One row of the table: takes the parameters of a call.
pub(crate) enum Route {
    Request(Decode<Ask>),
    Notification(Decode<Job<State>>),
    /// A notification that changes a text, and so may stop evaluations of the older text.
    Change(Decode<Job<State>>),
}

/// The table.
pub(crate) struct Routes(FxHashMap<&'static str, Route>);

impl Routes {
    pub(crate) fn get(&self, method: &str) -> Option<&Route> {
        self.0.get(method)
    }

    /// All document methods. `probe`: also the request that tests use.
    pub(crate) fn new(with_probe: bool) -> Routes {
        let mut routes = Routes(FxHashMap::default())
            .notify("textDocument/didOpen", text_sync::opened)
            .change("textDocument/didChange", text_sync::changed)
            .notify("textDocument/didSave", text_sync::saved)
            .notify("textDocument/didClose", text_sync::closed)
            .notify("workspace/didChangeConfiguration", configuration::changed)
            .notify(
                "workspace/didChangeWorkspaceFolders",
                workspace_folders::changed,
            )
            .notify("workspace/didChangeWatchedFiles", watched_files::changed)
            .request("textDocument/hover", hover::hover)
            .request("textDocument/completion", completion::completion)
            .request("textDocument/signatureHelp", signature_help::signature_help)
            .written("textDocument/inlayHint", inlay_hint::inlay_hints)
            .request("inlayHint/resolve", inlay_hint::resolve)
            .request("textDocument/inlineValue", inline_value::inline_values)
            .request("textDocument/documentColor", document_color::colors)
            .request(
                "textDocument/colorPresentation",
                document_color::presentations,
            )
            .request("textDocument/codeLens", code_lens::code_lenses)
            .request("textDocument/definition", definition::definition)
            .request("textDocument/declaration", definition::declaration)
            .request("textDocument/typeDefinition", definition::type_definition)
            .request("textDocument/implementation", definition::implementation)
            .request("textDocument/references", references::references)
            .request(
                "textDocument/documentHighlight",
                document_highlight::highlights,
            )
            .request(
                "textDocument/linkedEditingRange",
                linked_editing_range::linked_ranges,
            )
            .request("textDocument/prepareCallHierarchy", call_hierarchy::prepare)
            .request("callHierarchy/incomingCalls", call_hierarchy::incoming)
            .request("callHierarchy/outgoingCalls", call_hierarchy::outgoing)
            .request("textDocument/prepareTypeHierarchy", type_hierarchy::prepare)
            .request("typeHierarchy/supertypes", type_hierarchy::supertypes)
            .request("typeHierarchy/subtypes", type_hierarchy::subtypes)
            .request("textDocument/documentSymbol", document_symbol::symbols)
            .request("workspace/symbol", workspace_symbol::symbols)
            .request("textDocument/foldingRange", folding_range::folding_ranges)
            .request(
                "textDocument/selectionRange",
                selection_range::selection_ranges,
            )
            .request("textDocument/documentLink", document_link::document_links)
            .request("textDocument/semanticTokens/full", semantic_tokens::full)
            .request(
                "textDocument/semanticTokens/full/delta",
                semantic_tokens::delta,
            )
            .request("textDocument/semanticTokens/range", semantic_tokens::range)
            .request("textDocument/codeAction", code_action::code_actions)
            .request("codeAction/resolve", code_action::resolve)
            .request("textDocument/formatting", formatting::format)
            .request("textDocument/rangeFormatting", formatting::format_range)
            .request("textDocument/onTypeFormatting", formatting::format_on_type)
            .request("textDocument/prepareRename", rename::prepare_rename)
            .request("textDocument/rename", rename::rename)
            .request("workspace/willRenameFiles", rename_files::will_rename)
            .request("textDocument/diagnostic", diagnostic::diagnostic)
            .request("workspace/executeCommand", execute_command::execute)
            .request("downlead/virtualDocument", virtual_document::text)
            .request("workspace/textDocumentContent", virtual_document::content);
        if with_probe {
            let route = Route::Request(Box::new(probe::decode));
            routes.0.insert("downlead/probe", route);
        }
        routes
    }

    fn request<P, R>(
        mut self,
        method: &'static str,
        handler: fn(&mut State, P) -> Result<R>,
    ) -> Routes
    where
        P: DeserializeOwned + Send + 'static,
        R: Serialize + 'static,
    {
        let decode = move |params| -> Result<Ask> {
            let p: P = decoded(params)?;
            Ok(Box::new(move |st| {
                serde_json::to_vec(&handler(st, p)?).map_err(|_| Error::internal_error())
            }))
        };
        self.0.insert(method, Route::Request(Box::new(decode)));
        self
    }

    /// A request whose handler writes the JSON itself.
    fn written<P>(
        mut self,
        method: &'static str,
        handler: fn(&mut State, P) -> Result<Vec<u8>>,
    ) -> Routes
    where
        P: DeserializeOwned + Send + 'static,
    {
        let decode = move |params| -> Result<Ask> {
            let p: P = decoded(params)?;
            Ok(Box::new(move |st| handler(st, p)))
        };
        self.0.insert(method, Route::Request(Box::new(decode)));
        self
    }

    fn notify<P: DeserializeOwned + Send + 'static>(
        mut self,
        method: &'static str,
        handler: fn(&mut State, P),
    ) -> Routes {
        self.0.insert(method, Route::Notification(job_of(handler)));
        self
    }

    fn change<P: DeserializeOwned + Send + 'static>(
        mut self,
        method: &'static str,
        handler: fn(&mut State, P),
    ) -> Routes {
        self.0.insert(method, Route::Change(job_of(handler)));
        self
    }
}

fn job_of<P: DeserializeOwned + Send + 'static>(handler: fn(&mut State, P)) -> Decode<Job<State>> {
    Box::new(move |params| {
        let p: P = decoded(params)?;
        Ok(Box::new(move |st| handler(st, p)))
    })
}

fn decoded<P: DeserializeOwned>(params: Option<Value>) -> Result<P> {
    let params = params.ok_or_else(|| Error::invalid_params("Missing params field"))?;
    serde_json::from_value(params).map_err(|e| Error::invalid_params(e.to_string()))
}
