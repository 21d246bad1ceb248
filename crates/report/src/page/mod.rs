//! Pages: shapes as documents. Each opens with its conclusion.

pub mod bench;
pub mod card;
pub mod chain;
pub mod compare;
mod desense;
pub mod diff;
pub mod exposure;
pub mod fit;
pub mod link;
pub mod overview;
pub mod paper;
pub mod recall;
mod rules;
mod run;
pub mod site;
pub mod variants;
pub mod verify;

use crate::document::{Block, Document, Level, Text};
use crate::shape::chain::DiagnosticReport;
use crate::shape::word::Worded;

/// Stands under every report.
pub const CAUTION: &str = "This sets figures side by side; it certifies nothing. Whether a station complies, exposure to its \
     fields included, is a matter of your local rules and those who apply them.";

/// The caution at the end of a page.
fn caution(doc: &mut Document) {
    doc.push(Block::Paragraph(CAUTION.into()));
}

/// A remark.
fn note(doc: &mut Document, words: impl Into<Text>) {
    doc.push(Block::Note(Level::Plain, words.into()));
}

/// Findings under a heading of their own, where there are any.
fn findings(doc: &mut Document, all: &[DiagnosticReport]) {
    if all.is_empty() {
        return;
    }
    doc.heading(2, "Findings", None);
    let list = all.iter().map(|d| {
        let place = crate::document::Place::new(&d.file, d.line);
        Text::from(format!("{} ", d.severity.word()))
            .and(crate::document::Run::Code(d.code.to_owned()))
            .plus(" ")
            .with(Text::link(place.to_string(), place.clone()))
            .plus(&format!(": {}", d.message))
    });
    doc.push(Block::List(list.collect()));
}

#[cfg(test)]
mod tests;
