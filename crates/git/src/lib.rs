//! Earlier states of texts, read by the program `git`. It is queried read-only and changes
//! nothing. And the root folder of a file, which is its repository where there is one.

mod history;
mod lookup;
mod program;
mod revision;
mod root;

pub use history::{head, is_shallow, recorded};
pub use revision::Revision;
pub use root::{MARKER, home, root_of};
