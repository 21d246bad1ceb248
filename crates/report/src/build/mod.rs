//! From results to shapes.

pub mod bench;
pub mod card;
pub mod chain;
pub mod compare;
pub mod diff;
pub mod overview;
pub mod remarks;
pub mod trends;
mod unjudged;
pub mod verify;

mod rules;
mod site;
