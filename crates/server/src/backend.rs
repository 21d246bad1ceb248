//! The protocol's methods: each sends one job to the state, in the order of the wire.

use std::sync::Arc;
use std::sync::atomic::Ordering;
use std::sync::mpsc::Sender;

use ls_types::request::{
    GotoDeclarationParams, GotoDeclarationResponse, GotoImplementationParams,
    GotoImplementationResponse, GotoTypeDefinitionParams, GotoTypeDefinitionResponse,
};
use ls_types::*;
use serde::Serialize;
use serde_json::Value;
use tokio::sync::oneshot;
use tower_lsp::LanguageServer;
use tower_lsp::jsonrpc::{Error, Result};

use crate::capabilities::offer;
use crate::handlers::{
    actions, commands, edits, go, hints, marks, reading, structure, texts, tokens, workspace,
};
use crate::peer::{FirstWords, Peer};
use crate::raw::Raws;
use crate::state::{Ahead, Job, State, Waiting};

/// The methods.
pub(crate) struct Backend {
    pub(crate) jobs: Sender<Job>,
    pub(crate) first: Arc<FirstWords>,
    pub(crate) watch_parent: Box<dyn Fn(u32) + Send + Sync>,
    /// Whether the request that panics is there: for tests.
    pub(crate) faulty: bool,
    pub(crate) raws: Arc<Raws>,
    pub(crate) ahead: Arc<Ahead>,
}

impl Backend {
    fn tell(&self, job: impl FnOnce(&mut State) + Send + 'static) {
        // fails only when the session is over
        _ = self.jobs.send(Box::new(job));
    }

    /// Runs `job` on the state. If whoever asked is gone before its turn, it is skipped.
    async fn ask<T: Send + 'static>(
        &self,
        job: impl FnOnce(&mut State) -> Result<T> + Send + 'static,
    ) -> Result<T> {
        let (answer, wait) = oneshot::channel();
        let (_waiting, cancel) = Waiting::new();
        self.ahead.requests.fetch_add(1, Ordering::SeqCst);
        self.tell(move |st| {
            st.ahead.requests.fetch_sub(1, Ordering::SeqCst);
            if cancel.is_set() {
                return;
            }
            _ = answer.send(st.run_asked(cancel, job));
        });
        wait.await.unwrap_or_else(|_| Err(Error::internal_error()))
    }

    /// Runs `job` on the state; its answer goes out as the bytes it writes.
    async fn ask_raw(
        &self,
        job: impl FnOnce(&mut State) -> Result<Vec<u8>> + Send + 'static,
    ) -> Result<Value> {
        Ok(self.raws.stand_in(self.ask(job).await?))
    }

    pub(crate) async fn virtual_document(&self, p: commands::Wanted) -> Result<String> {
        self.ask(move |st| commands::virtual_document(st, p)).await
    }

    pub(crate) async fn content(&self, p: commands::Wanted) -> Result<Value> {
        self.ask(move |st| commands::content(st, p)).await
    }

    /// For tests, if the session was made for them: gives the text of a document as the server has
    /// it, or panics in the place asked for.
    pub(crate) async fn probe(&self, p: Value) -> Result<Value> {
        if !self.faulty {
            return Err(Error::method_not_found());
        }
        if let Some(uri) = p
            .get("text")
            .and_then(Value::as_str)
            .and_then(|u| u.parse::<Uri>().ok())
        {
            return self
                .ask(move |st| {
                    Ok(st
                        .docs
                        .get(&uri)
                        .map_or(Value::Null, |d| Value::String(d.text.clone())))
                })
                .await;
        }
        assert!(
            p.get("panic").and_then(Value::as_str) != Some("handler"),
            "injected"
        );
        self.ask(|_| panic!("injected")).await
    }
}

macro_rules! asked {
    ($($(#[$meta:meta])* $name:ident($params:ty) -> $result:ty = $handler:path;)*) => {
        $($(#[$meta])* async fn $name(&self, p: $params) -> Result<$result> {
            self.ask(move |st| $handler(st, p)).await
        })*
    };
}

/// What has long answers.
macro_rules! asked_raw {
    ($($name:ident($params:ty) = $handler:path;)*) => {
        impl Backend {
            $(pub(crate) async fn $name(&self, p: $params) -> Result<Value> {
                self.ask_raw(move |st| written(&$handler(st, p)?)).await
            })*

            pub(crate) async fn hints(&self, p: InlayHintParams) -> Result<Value> {
                self.ask_raw(move |st| hints::hints(st, p)).await
            }
        }
    };
}

/// A change of a text, counted until its turn has come.
pub(crate) fn change(ahead: &Ahead, p: DidChangeTextDocumentParams) -> Job {
    ahead.changes.fetch_add(1, Ordering::SeqCst);
    Box::new(move |st| {
        st.ahead.changes.fetch_sub(1, Ordering::SeqCst);
        texts::changed(st, p);
    })
}

/// An answer as bytes.
pub(crate) fn written(answer: &impl Serialize) -> Result<Vec<u8>> {
    serde_json::to_vec(answer).map_err(|_| Error::internal_error())
}

asked_raw! {
    lenses(CodeLensParams) = reading::lenses;
    symbols(DocumentSymbolParams) = structure::symbols;
    folds(FoldingRangeParams) = structure::folds;
    tokens(SemanticTokensParams) = tokens::full;
    tokens_changed(SemanticTokensDeltaParams) = tokens::delta;
}

macro_rules! told {
    ($($name:ident($params:ty) = $handler:path;)*) => {
        $(async fn $name(&self, p: $params) {
            self.tell(move |st| $handler(st, p));
        })*
    };
}

impl LanguageServer for Backend {
    // answered here and at once, so that what follows without waiting is not refused
    async fn initialize(&self, _: InitializeParams) -> Result<InitializeResult> {
        let peer = Peer::read(&self.first.take());
        let answer = offer(&peer);
        if let Some(id) = peer.process {
            (self.watch_parent)(id);
        }
        self.tell(move |st| st.begin(peer));
        Ok(answer)
    }

    async fn initialized(&self, _: InitializedParams) {
        let jobs = self.jobs.clone();
        self.tell(move |st| workspace::initialized(st, &jobs));
    }

    async fn shutdown(&self) -> Result<()> {
        Ok(())
    }

    async fn did_change(&self, p: DidChangeTextDocumentParams) {
        // fails only when the session is over
        _ = self.jobs.send(change(&self.ahead, p));
    }

    async fn did_change_configuration(&self, p: DidChangeConfigurationParams) {
        let jobs = self.jobs.clone();
        self.tell(move |st| workspace::configuration(st, p, &jobs));
    }

    told! {
        did_open(DidOpenTextDocumentParams) = texts::opened;
        did_save(DidSaveTextDocumentParams) = texts::saved;
        did_close(DidCloseTextDocumentParams) = texts::closed;
        did_change_workspace_folders(DidChangeWorkspaceFoldersParams) = workspace::folders;
        did_change_watched_files(DidChangeWatchedFilesParams) = workspace::watched;
    }

    asked! {
        hover(HoverParams) -> Option<Hover> = reading::hover;
        inlay_hint_resolve(InlayHint) -> InlayHint = hints::resolve_hint;
        document_color(DocumentColorParams) -> Vec<ColorInformation> = marks::swatches;
        color_presentation(ColorPresentationParams) -> Vec<ColorPresentation> = marks::presentations;
        inline_value(InlineValueParams) -> Option<Vec<InlineValue>> = marks::values;
        completion(CompletionParams) -> Option<CompletionResponse> = reading::completion;
        signature_help(SignatureHelpParams) -> Option<SignatureHelp> = reading::signatures;
        goto_definition(GotoDefinitionParams) -> Option<GotoDefinitionResponse> = go::definition;
        goto_declaration(GotoDeclarationParams) -> Option<GotoDeclarationResponse> = go::declaration;
        goto_type_definition(GotoTypeDefinitionParams) -> Option<GotoTypeDefinitionResponse> = go::type_definition;
        goto_implementation(GotoImplementationParams) -> Option<GotoImplementationResponse> = go::implementation;
        references(ReferenceParams) -> Option<Vec<Location>> = go::references;
        document_highlight(DocumentHighlightParams) -> Option<Vec<DocumentHighlight>> = go::highlights;
        linked_editing_range(LinkedEditingRangeParams) -> Option<LinkedEditingRanges> = go::linked;
        prepare_call_hierarchy(CallHierarchyPrepareParams) -> Option<Vec<CallHierarchyItem>> = go::prepare_calls;
        incoming_calls(CallHierarchyIncomingCallsParams) -> Option<Vec<CallHierarchyIncomingCall>> = go::incoming;
        outgoing_calls(CallHierarchyOutgoingCallsParams) -> Option<Vec<CallHierarchyOutgoingCall>> = go::outgoing;
        prepare_type_hierarchy(TypeHierarchyPrepareParams) -> Option<Vec<TypeHierarchyItem>> = go::prepare_types;
        supertypes(TypeHierarchySupertypesParams) -> Option<Vec<TypeHierarchyItem>> = go::supertypes;
        subtypes(TypeHierarchySubtypesParams) -> Option<Vec<TypeHierarchyItem>> = go::subtypes;
        symbol(WorkspaceSymbolParams) -> Option<WorkspaceSymbolResponse> = structure::workspace_symbols;
        selection_range(SelectionRangeParams) -> Option<Vec<SelectionRange>> = structure::selections;
        document_link(DocumentLinkParams) -> Option<Vec<DocumentLink>> = structure::document_links;
        semantic_tokens_range(SemanticTokensRangeParams) -> Option<SemanticTokensRangeResult> = tokens::range;
        code_action(CodeActionParams) -> Option<CodeActionResponse> = actions::actions;
        code_action_resolve(CodeAction) -> CodeAction = actions::resolve;
        formatting(DocumentFormattingParams) -> Option<Vec<TextEdit>> = edits::format;
        range_formatting(DocumentRangeFormattingParams) -> Option<Vec<TextEdit>> = edits::format_range;
        on_type_formatting(DocumentOnTypeFormattingParams) -> Option<Vec<TextEdit>> = edits::format_on_type;
        prepare_rename(TextDocumentPositionParams) -> Option<PrepareRenameResponse> = edits::prepare_rename;
        rename(RenameParams) -> Option<WorkspaceEdit> = edits::rename;
        will_rename_files(RenameFilesParams) -> Option<WorkspaceEdit> = workspace::will_rename;
        diagnostic(DocumentDiagnosticParams) -> DocumentDiagnosticReportResult = texts::diagnostic;
        execute_command(ExecuteCommandParams) -> Option<LSPAny> = commands::execute;
    }
}
