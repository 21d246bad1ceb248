//! The report as text, Markdown, CSV and JSON. Each is a pure function of the report.

pub(crate) mod cells;
mod csv;
mod markdown;
pub(crate) mod plots;
mod text;
pub(crate) mod words;

pub(crate) use csv::csv;
pub(crate) use downlead_report::write::json::{json, schema};
pub(crate) use markdown::{findings, inline, markdown};
pub(crate) use text::{Columns, text};

/// Stands under every report a person reads.
pub(crate) const CAUTION: &str = "This sets figures side by side; it certifies nothing. Whether a station complies, exposure to its \
     fields included, is a matter of your local rules and those who apply them.";

#[cfg(test)]
mod tests;
