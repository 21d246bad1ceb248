//! Pictures of bench sessions.

pub(crate) mod asked;
pub(crate) mod plots;
