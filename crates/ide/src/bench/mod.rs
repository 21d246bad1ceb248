//! What an editor shows of bench sessions and of logs of readings.

mod fitted;
mod hints;
mod hover;
mod report;
pub(crate) mod words;

pub use fitted::{MeasuredCable, brought, cable_definition, fitted_cable, measured_cable};
pub(crate) use hints::{Shown, of_log, of_session};
pub(crate) use hover::{file_at, file_words, in_session, session_words};
pub(crate) use report::lenses;
