//! Tables for CSV: all figures of a shape, one table at a time. Names of columns stay; new ones are
//! added at the end.

mod bench;
mod card;
mod chain;
mod desense;
mod exposure;
mod link;
mod overview;
mod paper;
mod recall;
mod variants;
mod verify;

pub use bench::{BenchTable, bench};
pub use card::card;
pub use chain::{ChainTable, chain};
pub use desense::desense;
pub use exposure::exposure;
pub use link::link;
pub use overview::overview;
pub use paper::{form, materials, site_sheet};
pub use recall::recall;
pub use variants::variants;
pub use verify::verify;
