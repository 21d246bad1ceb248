//! Earlier states of texts, read by the program `git`. It is queried read-only and changes
//! nothing. And the root folder of a file, which is its repository where there is one.

mod beside;
mod history;
mod lookup;
mod program;
mod repository;
mod revision;
mod root;
mod state;

pub use beside::names_beside;
pub use history::{head, is_shallow, recorded};
pub use repository::{At, Change, Commit, Repository, Tree};
pub use revision::Revision;
pub use root::{MARKER, home, root_of};
pub use state::{State, state};
