//! Features as pictures: a text with a cursor `$0`, and what the feature gives, as a snapshot.
//!
//! Numbers in the pictures are the evaluation's; they are proved in crates `physics` and `eval`.
//! Here it is proved that the right ones stand in the right places, and that edits do what they say.

mod accept;
mod actions;
mod bench;
mod case;
mod compare;
mod completion;
mod desense;
mod documents;
mod fixes;
mod format;
mod hints;
mod hover;
mod inline;
mod names;
mod radiated;
mod robust;
mod sessions;
mod slips;
mod structure;
mod swatches;
mod types;
mod typing;
mod unfinished;
mod write;
