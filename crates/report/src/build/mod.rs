//! From results to shapes.

pub mod bench;
pub mod card;
pub mod chain;
mod rules;
pub mod trends;
pub mod verify;
