//! Writers: a shape as JSON or CSV, a document as text, Markdown or HTML.

pub mod csv;
pub mod digital;
pub mod html;
pub mod json;
pub mod markdown;
pub mod plain;
pub mod style;
pub mod text;
