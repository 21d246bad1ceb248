//! An inlay hint: position, label in parts, tooltip, edits.

use crate::view::{Place, TextEdit};

/// A hint at the end of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InlayHint {
    /// Where: the end of the line.
    pub offset: u32,
    /// Its text in pieces.
    pub parts: Vec<LabelPart>,
    /// More about it.
    pub tooltip: String,
    /// Whether a tooltip or edits were left for later.
    pub more: bool,
    /// Edits that pin the shown value as an assertion; may be empty.
    pub edits: Vec<TextEdit>,
    /// Whether a blank stands before it.
    pub pad_left: bool,
}

/// A piece of a hint.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabelPart {
    /// Text.
    pub text: String,
    /// More about it; empty if it is left for later.
    pub tooltip: Option<String>,
    /// Where a click leads.
    pub target: Option<Place>,
}

impl LabelPart {
    /// Words alone.
    pub(crate) fn word(text: impl Into<String>) -> LabelPart {
        LabelPart {
            text: text.into(),
            tooltip: None,
            target: None,
        }
    }
}

impl InlayHint {
    /// The whole text.
    #[must_use]
    pub fn text(&self) -> String {
        self.parts.iter().map(|p| p.text.as_str()).collect()
    }
}
