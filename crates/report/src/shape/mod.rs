//! The shapes that are printed as JSON. Field names and words stay within one `schema`.

pub mod bench;
pub mod card;
pub mod chain;
pub mod compare;
pub mod desense;
pub mod diff;
pub mod exposure;
pub mod fit;
pub mod link;
pub mod loss_law;
pub mod overview;
pub mod paper;
pub mod recall;
pub mod rules;
pub mod run;
pub mod site;
pub mod variants;
pub mod verify;
pub mod word;
