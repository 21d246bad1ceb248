//! The server's capabilities, as offered to a client.

use ls_types::*;

use crate::peer::Peer;

/// Commands of `workspace/executeCommand`.
pub(crate) const COMMANDS: [&str; 5] = [
    "downlead.report",
    "downlead.explain",
    "downlead.compare",
    "downlead.export",
    "downlead.apply",
];

/// The answer to `initialize`.
pub(crate) fn offer(peer: &Peer) -> InitializeResult {
    InitializeResult {
        capabilities: capabilities(peer),
        server_info: Some(ServerInfo {
            name: "downlead".to_owned(),
            version: Some(env!("CARGO_PKG_VERSION").to_owned()),
        }),
        ..InitializeResult::default()
    }
}

/// The legend of semantic tokens.
pub(crate) fn legend() -> SemanticTokensLegend {
    SemanticTokensLegend {
        token_types: downlead_ide::TokenKind::ALL
            .iter()
            .map(|k| SemanticTokenType::new(k.name()))
            .collect(),
        token_modifiers: downlead_ide::TOKEN_MODIFIERS
            .iter()
            .map(|m| SemanticTokenModifier::new(m))
            .collect(),
    }
}

fn capabilities(peer: &Peer) -> ServerCapabilities {
    let letters = |all: &str| Some(all.chars().map(String::from).collect::<Vec<_>>());
    ServerCapabilities {
        position_encoding: Some(peer.encoding.kind()),
        text_document_sync: Some(text_sync()),
        hover_provider: Some(HoverProviderCapability::Simple(true)),
        completion_provider: Some(CompletionOptions {
            trigger_characters: letters(". \""),
            resolve_provider: Some(false),
            ..CompletionOptions::default()
        }),
        signature_help_provider: Some(SignatureHelpOptions {
            trigger_characters: letters(" ,"),
            ..SignatureHelpOptions::default()
        }),
        definition_provider: Some(OneOf::Left(true)),
        declaration_provider: Some(DeclarationCapability::Simple(true)),
        type_definition_provider: Some(TypeDefinitionProviderCapability::Simple(true)),
        implementation_provider: Some(ImplementationProviderCapability::Simple(true)),
        references_provider: Some(OneOf::Left(true)),
        document_highlight_provider: Some(OneOf::Left(true)),
        document_symbol_provider: Some(OneOf::Left(true)),
        workspace_symbol_provider: Some(OneOf::Left(true)),
        code_action_provider: Some(code_actions(peer)),
        code_lens_provider: Some(CodeLensOptions {
            resolve_provider: Some(false),
        }),
        document_formatting_provider: Some(OneOf::Left(true)),
        document_range_formatting_provider: Some(OneOf::Left(true)),
        document_on_type_formatting_provider: Some(DocumentOnTypeFormattingOptions {
            first_trigger_character: "\n".to_owned(),
            more_trigger_character: Some(vec!["}".to_owned(), ";".to_owned()]),
        }),
        rename_provider: Some(if peer.prepare_rename {
            OneOf::Right(RenameOptions {
                prepare_provider: Some(true),
                work_done_progress_options: WorkDoneProgressOptions::default(),
            })
        } else {
            OneOf::Left(true)
        }),
        document_link_provider: Some(DocumentLinkOptions {
            resolve_provider: Some(false),
            work_done_progress_options: WorkDoneProgressOptions::default(),
        }),
        folding_range_provider: Some(FoldingRangeProviderCapability::Simple(true)),
        selection_range_provider: Some(SelectionRangeProviderCapability::Simple(true)),
        linked_editing_range_provider: Some(LinkedEditingRangeServerCapabilities::Simple(true)),
        call_hierarchy_provider: Some(CallHierarchyServerCapability::Simple(true)),
        semantic_tokens_provider: Some(semantic_tokens()),
        inlay_hint_provider: Some(OneOf::Right(InlayHintServerCapabilities::Options(
            InlayHintOptions {
                resolve_provider: Some(!peer.hint_resolve.is_empty()),
                ..InlayHintOptions::default()
            },
        ))),
        // of an empty list until the user wants swatches: a registration that comes and goes with
        // the setting would be for some clients only
        color_provider: Some(ColorProviderCapability::Simple(true)),
        inline_value_provider: Some(OneOf::Left(true)),
        diagnostic_provider: peer.pull.then(|| {
            DiagnosticServerCapabilities::Options(DiagnosticOptions {
                identifier: Some("downlead".to_owned()),
                inter_file_dependencies: true,
                workspace_diagnostics: false,
                ..DiagnosticOptions::default()
            })
        }),
        execute_command_provider: Some(ExecuteCommandOptions {
            commands: COMMANDS.map(str::to_owned).to_vec(),
            ..ExecuteCommandOptions::default()
        }),
        workspace: Some(workspace()),
        experimental: Some(serde_json::json!({ "downlead": { "virtualDocument": true } })),
        ..ServerCapabilities::default()
    }
}

fn code_actions(peer: &Peer) -> CodeActionProviderCapability {
    if peer.action_literals {
        CodeActionProviderCapability::Options(CodeActionOptions {
            code_action_kinds: Some(
                [
                    "quickfix",
                    "refactor",
                    "refactor.extract",
                    "refactor.inline",
                    "refactor.rewrite",
                    "source.fixAll.downlead",
                ]
                .into_iter()
                .map(CodeActionKind::from)
                .collect(),
            ),
            resolve_provider: Some(peer.action_resolve),
            ..CodeActionOptions::default()
        })
    } else {
        CodeActionProviderCapability::Simple(true)
    }
}

fn workspace() -> WorkspaceServerCapabilities {
    WorkspaceServerCapabilities {
        workspace_folders: Some(WorkspaceFoldersServerCapabilities {
            supported: Some(true),
            change_notifications: Some(OneOf::Left(true)),
        }),
        file_operations: Some(WorkspaceFileOperationsServerCapabilities {
            will_rename: Some(FileOperationRegistrationOptions {
                filters: vec![FileOperationFilter {
                    scheme: Some("file".to_owned()),
                    pattern: FileOperationPattern {
                        glob: "**/*.downlead".to_owned(),
                        matches: Some(FileOperationPatternKind::File),
                        options: None,
                    },
                }],
            }),
            ..WorkspaceFileOperationsServerCapabilities::default()
        }),
    }
}

fn text_sync() -> TextDocumentSyncCapability {
    TextDocumentSyncCapability::Options(TextDocumentSyncOptions {
        open_close: Some(true),
        change: Some(TextDocumentSyncKind::INCREMENTAL),
        save: Some(TextDocumentSyncSaveOptions::SaveOptions(SaveOptions {
            include_text: Some(false),
        })),
        ..TextDocumentSyncOptions::default()
    })
}

fn semantic_tokens() -> SemanticTokensServerCapabilities {
    SemanticTokensServerCapabilities::SemanticTokensOptions(SemanticTokensOptions {
        legend: legend(),
        range: Some(true),
        full: Some(SemanticTokensFullOptions::Delta { delta: Some(true) }),
        ..SemanticTokensOptions::default()
    })
}
