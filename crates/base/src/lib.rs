//! Types that all other crates share: byte spans, item locations, the line index, diagnostics.
//!
//! Positions are byte offsets everywhere. Lines and columns appear only at the edges
//! (the command line and the language server), through [`LineIndex`].

mod code;
mod diagnostic;
mod sha256;
mod span;

pub use code::{CODES, Code, code_named, codes};
pub use diagnostic::{Diagnostic, Edit, Fix, Label, Severity};
pub use line_index::{LineCol, LineIndex, TextSize, WideEncoding};
pub use sha256::sha256;
pub use span::{ItemId, Loc, Span};
