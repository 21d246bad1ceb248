//! Pictures of bench sessions.

pub(crate) mod plots;
