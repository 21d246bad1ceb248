//! From results to shapes.

pub mod bench;
pub mod card;
pub mod chain;
pub mod trends;
pub mod verify;

mod rules;
