//! Node powers, budgets, both directions, limits, readings: everything computed from a set of
//! files, with a derivation for every number. No input or output, no clock: texts come through a
//! [`Loader`](downlead_station::Loader).

mod assume;
pub mod bench;
mod cable;
pub mod catalogue;
mod cause;
mod certificate;
mod chain;
mod checks;
pub mod dates;
pub mod difference;
mod element;
mod explain;
pub mod exposure;
pub mod facts;
pub mod form;
pub mod history;
pub mod instrument;
pub mod licence;
pub mod link;
mod log_place;
mod network;
pub mod origin;
mod places;
mod point;
mod rating;
pub mod result;
mod shared;
pub mod site;
mod snapshot;
mod stage;
mod table;
mod unknown;
pub mod variant;
pub mod vary;
mod verdict;
pub mod verify;
mod walk;
mod wiring;

pub use assume::Assumed;
pub use cable::{
    CableAt, TableFit, at as cable_at, at_in as cable_at_in, characteristic_impedance,
    loss_of_point, matched_loss, table_fit,
};
pub use explain::Derivation;
pub use places::Places;
pub use snapshot::recall::NoRecall;
pub use snapshot::{Accepted, Evaluated, FileEntry, Found, Scope, Snapshot, Tried};
pub use stage::Stage;
