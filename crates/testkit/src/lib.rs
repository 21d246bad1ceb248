//! Helpers of the other crates' tests, benches and examples: texts in memory, the examples
//! folder, the fences of a Markdown page, cursor markers, random stations, broken texts.
//!
//! A development dependency only: nothing here is part of the program. Everything random comes
//! from a seed given by the caller.

mod fence;
mod large;
mod loader;
mod marker;
mod mutate;
mod plan;
mod rng;

pub use fence::{Fence, fences};
pub use large::{CABLE_LINE, RUN_LINE, large_file};
pub use loader::{Files, Folder, example_files, examples, project};
pub use marker::{Marked, marked};
pub use mutate::{Change, change, mutate};
pub use plan::{AntennaPlan, BandPlan, CablePlan, ChainPlan, Length, PartPlan, Plan, plan};
pub use rng::Rng;
