//! Expected readings by test point, to take to the site and fill in.

mod text;

pub(crate) use downlead_report::build::card::{Meters, cards};
pub(crate) use text::{csv, markdown, text};

/// Stands on every card.
pub(crate) const SAFETY: [&str; 3] = [
    "Before anyone climbs or opens a line: transmitters off and locked off, mains off where it is opened.",
    "RF burns, and fields near an antenna can be above limits. Your local rules come first.",
    "Key a steady carrier and read when it has settled.",
];
