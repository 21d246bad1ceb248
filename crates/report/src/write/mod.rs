//! Writers: a shape as JSON, a document as text, Markdown, CSV or HTML.

pub mod json;
