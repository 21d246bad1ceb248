//! The names this crate takes from the evaluator, in one place.

pub(crate) use crate::shim::catalogue;
pub(crate) use crate::shim::report::*;
pub(crate) use crate::shim::{Derivation, Snapshot};
pub(crate) use downlead_station::{LoadError, Loader};
