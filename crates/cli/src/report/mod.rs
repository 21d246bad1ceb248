//! What `report` takes, and its pictures.

pub(crate) mod args;
pub(crate) mod plots;
