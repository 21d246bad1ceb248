//! What is answered to what, one file a group. Handlers convert and ask; they work nothing out.

pub(crate) mod actions;
pub(crate) mod commands;
pub(crate) mod edits;
pub(crate) mod go;
pub(crate) mod hints;
pub(crate) mod marks;
pub(crate) mod reading;
pub(crate) mod structure;
pub(crate) mod texts;
pub(crate) mod tokens;
pub(crate) mod workspace;
