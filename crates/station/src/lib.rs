//! From the tree to the typed station: names, units and kinds checked, figures with their
//! uncertainty and source. Nothing is computed here that physics has a say in.

pub mod attach;
mod cx;
pub mod evidence;
pub mod figures;
pub mod forms;
pub mod keywords;
pub mod lengths;
mod lower;
pub mod model;
mod quals;
mod scope;
pub mod session;
pub mod variant;
pub mod words;

pub use attach::{
    Attachment, Attachments, Content, ProfileFile, ProfileProblem, ProfileTrouble, ReadingsFile,
    is_network,
};
pub use cx::{Lets, Val, capital, nearest};
pub use forms::NameKind;
pub use lower::{Lowered, Mention, lower, lower_let};
pub use scope::{
    Env, Library, LoadError, Loader, LowerCache, RestsOn, keyword_of, library, normalise,
};
