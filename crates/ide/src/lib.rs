//! What an editor asks about a set of files: hints, hover, completion, navigation, changes.
//!
//! One snapshot, one file a feature, plain results in byte offsets. No protocol types, no files,
//! no clock, no state: everything is a function of a [`Snapshot`](downlead_eval::Snapshot).

mod cables;
mod completion;
mod config;
mod diagnostics;
mod format;
mod hints;
mod hover;
mod markdown;
mod names;
mod qualifiers;
mod resolve;
mod signature;
mod situation;
mod snippets;
mod view;
mod words;

pub use completion::{Completion, CompletionKind, completion};
pub use config::{Config, HintKinds};
pub use diagnostics::{Finding, Related, diagnostics, file_diagnostics};
pub use format::{format, format_on_type, format_range, minimal_edits};
pub use hints::{InlayHint, LabelPart, inlay_hints};
pub use hover::{Hover, hover};
pub use signature::{Parameter, Signature, SignatureHelp, signature_help};
pub use view::{Action, ActionKind, Doc, Place, TextEdit, doc_of_path, doc_path, doc_text};
