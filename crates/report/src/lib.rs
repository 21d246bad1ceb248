//! What is printed of results: the stable shapes of the JSON, the words, and documents that
//! writers put as text, Markdown, CSV or HTML.
//!
//! Everything is a function of its arguments: width, characters and the names of files are given.

pub mod build;
pub mod document;
pub mod page;
pub mod shape;
pub mod sheet;
pub mod words;
pub mod write;

use downlead_eval::Snapshot;

/// The reports of a snapshot as methods.
pub trait Reports {
    /// The report on all named files.
    fn report(&self) -> shape::chain::Report;
}

impl Reports for Snapshot {
    fn report(&self) -> shape::chain::Report {
        build::chain::report(self)
    }
}
