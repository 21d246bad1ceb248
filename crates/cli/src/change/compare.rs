//! The arguments of `compare`.

use std::path::PathBuf;

use clap::ValueEnum;

use crate::args::{Shape, Within};

#[derive(Debug, clap::Args)]
pub(crate) struct CompareArgs {
    /// The file with the variants.
    #[arg(value_name = "FILE", required_unless_present = "schema")]
    pub(crate) file: Option<PathBuf>,
    /// Only this variant; may be given several times.
    #[arg(long, value_name = "NAME")]
    pub(crate) variant: Vec<String>,
    /// What makes the run fail: a limit that a variant does not meet, or only a verdict that is
    /// worse than the station's.
    #[arg(long, value_enum, default_value_t = Against::Limits)]
    pub(crate) against: Against,
    /// How to print the comparison.
    #[arg(long, value_enum, default_value_t = CompareFormat::Text)]
    pub(crate) format: CompareFormat,
    #[command(flatten)]
    pub(crate) shape: Shape,
    #[command(flatten)]
    pub(crate) within: Within,
}

/// What a variant is held against.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Against {
    /// Limits and clauses.
    Limits,
    /// The station as it is.
    Base,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum CompareFormat {
    Text,
    Markdown,
    Csv,
    Json,
    /// One page to read, print or keep; it loads nothing.
    Html,
}
