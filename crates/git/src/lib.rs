//! Earlier states of texts: read by the program `git`, which is asked and never told to change
//! anything.

mod history;
mod lookup;
mod program;
mod revision;

pub use history::{head, is_shallow, recorded};
pub use revision::Revision;
