//! What an editor asks about a set of files: hints, hover, completion, navigation, changes.
//!
//! One snapshot, one file a feature, plain results in byte offsets. No protocol types, no files,
//! no clock, no state: everything is a function of a [`Snapshot`](downlead_eval::Snapshot).

mod actions;
mod bench;
mod cables;
mod calls;
mod compare;
mod completion;
mod config;
mod diagnostics;
mod documents;
mod format;
mod highlight;
mod hints;
mod hover;
mod inlay;
mod inline;
mod lens_rules;
mod level_diagram;
mod markdown;
mod names;
mod navigate;
mod radiated;
mod references;
mod rename;
mod resolve;
mod rules;
mod signature;
mod site;
mod situation;
mod snippets;
mod status;
mod structure;
mod swatches;
mod symbols;
mod tokens;
mod types;
mod unfinished;
mod view;
mod words;

pub use actions::{code_actions, fix_all};
pub use bench::{MeasuredCable, brought, cable_definition, fitted_cable, measured_cable};
pub use calls::{Call, CallItem, incoming_calls, outgoing_calls, prepare_calls};
pub use compare::{
    BandChange, ChainChange, Comparison, DefinitionChange, Figures, FindingChange, LimitChange,
    LimitState, Pair, PartChange, compare, compare_markdown,
};
pub use completion::{Completion, CompletionKind, completion, completion_with};
pub use config::{Config, HintDetails, HintKinds};
pub use diagnostics::{Finding, Related, diagnostics, file_diagnostics};
pub use documents::{
    Lens, LensCommand, code_lenses, explain_markdown, illustrated_report, report_document,
    report_markdown,
};
pub use format::{format, format_on_type, format_range, minimal_edits};
pub use highlight::{Highlight, HighlightKind, highlights, linked_ranges};
pub use hints::{HintsByItem, hint_at, inlay_hints};
pub use hover::{Hover, hover};
pub use inlay::{InlayHint, LabelPart};
pub use inline::{InlineValue, inline_values};
pub use navigate::{
    DocumentLink, FileLink, Link, declaration, definition, document_links, file_links,
    implementation, type_definition,
};
pub use references::references;
pub use rename::{prepare_rename, rename};
pub use signature::{Parameter, Signature, SignatureHelp, signature_help};
pub use status::Status;
pub use structure::{Fold, FoldKind, folding_ranges, selection_ranges};
pub use swatches::{Swatch, swatches};
pub use symbols::{Symbol, SymbolKind, WorkspaceSymbol, document_symbols, workspace_symbols};
pub use tokens::{TOKEN_MODIFIERS, Token, TokenKind, semantic_tokens};
pub use types::{TypeItem, prepare_types, subtypes, supertypes};
pub use unfinished::premature;
pub use view::{Action, ActionKind, Doc, Place, TextEdit, doc_of_path, doc_path, doc_text};
