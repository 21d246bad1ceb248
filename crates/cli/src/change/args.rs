//! The arguments of `diff` and `log`.

use std::path::PathBuf;

use clap::ValueEnum;
use clap::builder::PossibleValuesParser;
use downlead_report::shape::overview::{RowKind, Standing};

use crate::args::{Shape, Within};

#[derive(Debug, clap::Args)]
pub(crate) struct DiffArgs {
    /// OLD and NEW: two files or two folders. With --git the files or folders to compare; all of the
    /// current folder without.
    #[arg(value_name = "PATH")]
    pub(crate) paths: Vec<PathBuf>,
    /// Compare revisions: `REV` with the files as they are, `REV..REV` two revisions, `REV...REV`
    /// what the second changed since it left the first.
    #[arg(long, value_name = "REV[..REV]")]
    pub(crate) git: Option<String>,
    /// Also show what moves by less than the uncertainty of the difference.
    #[arg(long)]
    pub(crate) all: bool,
    /// Any change of what is radiated, of frequency, place or height fails too.
    #[arg(long)]
    pub(crate) strict: bool,
    /// How to print the differences.
    #[arg(long, value_enum, default_value_t = DiffFormat::Text)]
    pub(crate) format: DiffFormat,
    /// For `git`: the seven arguments of an external diff command follow.
    #[arg(long, conflicts_with_all = ["git", "strict"])]
    pub(crate) driver: bool,
    #[command(flatten)]
    pub(crate) shape: Shape,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum DiffFormat {
    Text,
    /// For the comment of a pull request; empty where there is nothing to say.
    Markdown,
    Json,
    /// Annotations of a hosted build.
    Github,
    /// SARIF 2.1.0, with fingerprints that stay the same over commits.
    Sarif,
}

#[derive(Debug, clap::Args)]
pub(crate) struct LogArgs {
    /// File or folder whose history is asked for.
    #[arg(default_value = ".", value_name = "PATH")]
    pub(crate) path: PathBuf,
    /// Begin at this revision.
    #[arg(long, value_name = "REV", default_value = "HEAD")]
    pub(crate) from: String,
    /// No more than so many commits that changed the files.
    #[arg(long, short = 'n', value_name = "N", default_value_t = 100)]
    pub(crate) most: usize,
    /// Also list commits that changed nothing on the air.
    #[arg(long)]
    pub(crate) all: bool,
    /// How to print the commits.
    #[arg(long, value_enum, default_value_t = LogFormat::Text)]
    pub(crate) format: LogFormat,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum LogFormat {
    Text,
    /// One JSON value a line and commit.
    Jsonl,
}

#[derive(Debug, clap::Args)]
pub(crate) struct OverviewArgs {
    /// Files, or folders searched for `*.downlead`.
    #[arg(default_value = ".", value_name = "PATH")]
    pub(crate) paths: Vec<PathBuf>,
    /// The day to which ages are counted; without it the newest date in the files.
    #[arg(long, value_name = "DATE")]
    pub(crate) as_of: Option<String>,
    /// What comes first.
    #[arg(long, value_enum, default_value_t = Sort::Verdict)]
    pub(crate) sort: Sort,
    /// Only rows with this verdict; may be given several times.
    #[arg(long, value_name = "VERDICT", value_parser = PossibleValuesParser::new(Standing::ALL.map(Standing::word)))]
    pub(crate) verdict: Vec<String>,
    /// Only rows of this band; may be given several times.
    #[arg(long, value_name = "BAND")]
    pub(crate) band: Vec<String>,
    /// Only rows with a margin below this, such as `1dB`.
    #[arg(long, value_name = "DB", allow_hyphen_values = true)]
    pub(crate) margin_below: Option<String>,
    /// Only rows whose newest reading is older than this: `24mo`, `2y`, `90d`.
    #[arg(long, value_name = "TIME")]
    pub(crate) older_than: Option<String>,
    /// Only stations under this licence or these rules; may be given several times.
    #[arg(long, value_name = "NAME")]
    pub(crate) under: Vec<String>,
    /// Only stations of this class in their rules; may be given several times.
    #[arg(long, value_name = "CLASS")]
    pub(crate) class: Vec<String>,
    /// Only stations on the site of this one; may be given several times.
    #[arg(long, value_name = "STATION")]
    pub(crate) beside: Vec<String>,
    /// Only rows about this; may be given several times.
    #[arg(long, value_name = "KIND", value_parser = PossibleValuesParser::new(RowKind::ALL.map(RowKind::word)))]
    pub(crate) kind: Vec<String>,
    /// Only rows of files with a finding of this code.
    #[arg(long, value_name = "CODE")]
    pub(crate) has_code: Option<String>,
    /// How to print the rows.
    #[arg(long, value_enum, default_value_t = OverviewFormat::Text)]
    pub(crate) format: OverviewFormat,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum OverviewFormat {
    Text,
    Markdown,
    Csv,
    /// One JSON value a line and row.
    Jsonl,
    /// One page to read, print or keep; it loads nothing.
    Html,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Sort {
    /// The worst first.
    Verdict,
    /// The smallest margin first.
    Margin,
    /// The oldest reading first.
    Age,
    /// By name.
    Station,
    /// The strongest first.
    Erp,
}
