//! Earlier states of texts, read by the program `git`. It is queried read-only and changes
//! nothing.

mod history;
mod lookup;
mod program;
mod revision;

pub use history::{head, is_shallow, recorded};
pub use revision::Revision;
