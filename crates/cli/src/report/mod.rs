//! Pictures of reports.

pub(crate) mod plots;
