//! Two states of files: where they come from, and how their differences are written for programs.

pub(crate) mod args;
pub(crate) mod compare;
pub(crate) mod formats;
pub(crate) mod pairs;
pub(crate) mod revisions;
pub(crate) mod vary;
