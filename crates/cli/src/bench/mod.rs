//! Bench sessions as text, Markdown, CSV and JSON. Each is a pure function of the shape.

mod bars;
mod csv;
mod markdown;
pub(crate) mod plots;
mod text;
pub(crate) mod words;

pub(crate) use csv::csv;
pub(crate) use markdown::markdown;
pub(crate) use text::text;
