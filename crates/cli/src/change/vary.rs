//! The arguments of `solve` and `sweep`.

use std::path::PathBuf;

use clap::ValueEnum;

use crate::args::Within;

#[derive(Debug, clap::Args)]
pub(crate) struct SolveArgs {
    /// The file.
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
    /// The figure that is varied: `TX1.power`, `A1.gain@2m`, `M1.length`, `IS1.loss`, `DU1.high`.
    #[arg(long, value_name = "TAG.WHAT[@BAND]")]
    pub(crate) vary: String,
    /// What is to be reached: `limits`, `exposure` (at all spots, or "exposure at gate"), "erp >= 20 W on 2m", "margin >= 0 dB in
    /// LINK".
    #[arg(long = "for", value_name = "GOAL", default_value = "limits")]
    pub(crate) goal: String,
    /// Put this variant in the place of its station.
    #[arg(long, value_name = "NAME")]
    pub(crate) variant: Option<String>,
    /// Round to these steps, to the side on which the goal is reached, such as "1 W".
    #[arg(long, value_name = "STEP")]
    pub(crate) step: Option<String>,
    /// How to print the answer.
    #[arg(long, value_enum, default_value_t = SolveFormat::Text)]
    pub(crate) format: SolveFormat,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum SolveFormat {
    Text,
    Json,
}

#[derive(Debug, clap::Args)]
pub(crate) struct SweepArgs {
    /// The file.
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
    /// The figure that is varied: `TX1.power`, `A1.gain@2m`, `M1.length`, `IS1.loss`, `DU1.high`.
    #[arg(long, value_name = "TAG.WHAT[@BAND]")]
    pub(crate) over: String,
    /// First value, in the unit the text has.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    pub(crate) from: String,
    /// Last value.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    pub(crate) to: String,
    /// Put this variant in the place of its station.
    #[arg(long, value_name = "NAME")]
    pub(crate) variant: Option<String>,
    /// How many values.
    #[arg(long, value_name = "N", default_value_t = 11, value_parser = clap::value_parser!(u32).range(2..=10_000))]
    pub(crate) steps: u32,
    #[command(flatten)]
    pub(crate) within: Within,
}
