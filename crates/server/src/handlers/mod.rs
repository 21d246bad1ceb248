//! One file for each request or notification, named as the protocol names it. A handler asks
//! `downlead_ide` and converts the answer; it computes nothing itself.

pub(crate) mod call_hierarchy;
pub(crate) mod code_action;
pub(crate) mod code_lens;
pub(crate) mod completion;
pub(crate) mod configuration;
pub(crate) mod definition;
pub(crate) mod diagnostic;
pub(crate) mod document_color;
pub(crate) mod document_highlight;
pub(crate) mod document_link;
pub(crate) mod document_symbol;
pub(crate) mod execute_command;
pub(crate) mod folding_range;
pub(crate) mod formatting;
pub(crate) mod hover;
pub(crate) mod inlay_hint;
pub(crate) mod inline_value;
pub(crate) mod linked_editing_range;
pub(crate) mod probe;
pub(crate) mod references;
pub(crate) mod rename;
pub(crate) mod rename_files;
pub(crate) mod selection_range;
pub(crate) mod semantic_tokens;
pub(crate) mod signature_help;
pub(crate) mod text_sync;
pub(crate) mod type_hierarchy;
pub(crate) mod virtual_document;
pub(crate) mod watched_files;
pub(crate) mod workspace_folders;
pub(crate) mod workspace_symbol;
