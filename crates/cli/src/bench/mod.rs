//! Bench sessions as text, Markdown, CSV and JSON. Each is a pure function of the shape.

mod bars;
pub(crate) mod build;
mod csv;
mod markdown;
pub(crate) mod plots;
pub(crate) mod shape;
mod text;
pub(crate) mod trends;
pub(crate) mod words;

pub(crate) use csv::csv;
pub(crate) use markdown::markdown;
pub(crate) use text::text;
