//! Earlier states of texts, read by the program `git`. It is queried read-only and changes
//! nothing.

mod history;
mod lookup;
mod program;
mod repository;
mod revision;

pub use history::{head, is_shallow, recorded};
pub use repository::{At, Commit, Repository, Tree};
pub use revision::Revision;
