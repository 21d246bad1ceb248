//! The names this crate takes from the evaluator, in one place.

pub(crate) use downlead_eval::catalogue;
pub(crate) use downlead_eval::{Derivation, Snapshot};
pub(crate) use downlead_report::shape::chain::*;
pub(crate) use downlead_station::{LoadError, Loader};
