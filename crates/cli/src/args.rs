//! The command line as types.

use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};

/// Check, report and explain a radio station's feed chain.
#[derive(Debug, Parser)]
#[command(
    name = "downlead",
    version,
    about,
    arg_required_else_help = true,
    after_help = "Exit codes: 0 clean; 1 errors, a limit not met, a reading that contradicts (with --strict also \
                  warnings and `cannot tell`); 2 usage or file trouble."
)]
pub(crate) struct Args {
    /// Colour the output.
    #[arg(long, global = true, value_enum, default_value_t = ColourChoice::Auto, value_name = "WHEN", visible_alias = "colour")]
    pub(crate) color: ColourChoice,
    /// Print the conclusion only; of `check` and `fmt`, nothing where there is nothing to correct.
    #[arg(long, short, global = true)]
    pub(crate) quiet: bool,
    /// Run again whenever a file changes (check, report, bench, card).
    #[arg(long, global = true)]
    pub(crate) watch: bool,
    #[command(subcommand)]
    pub(crate) command: Command,
}

/// When to use colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum ColourChoice {
    /// On a terminal, unless NO_COLOR is set.
    Auto,
    Always,
    Never,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// All findings, limits and readings of files or folders.
    Check(CheckArgs),
    /// Chain tables with power, uncertainty, limits, readings and assumptions.
    Report(ReportArgs),
    /// Expected readings by test point, with the span they may fall in and blanks to fill.
    Card(CardArgs),
    /// Bench sessions: loss, expected loss, uncertainty and verdict per piece and band; ranking and fits.
    #[command(after_help = "With --strict a piece that differs, or cannot be told, fails too.")]
    Bench(BenchArgs),
    /// A cable as it is: its two coefficients from readings, a network file or a data sheet.
    #[command(after_help = "downlead fit bench.downlead --piece A\n\
                            downlead fit reel.s2p --length \"25.00 m\" --temperature \"12 °C\" --accuracy \"0.05 dB\"\n\
                            downlead fit sheets.downlead --cable my-foam --write cables.downlead")]
    Fit(FitArgs),
    /// What a code means, or how the numbers on a line come about.
    #[command(after_help = "Without an argument all codes are listed.")]
    Explain(ExplainArgs),
    /// What changed on the air between two files, folders or revisions.
    #[command(
        after_help = "A change is pointed out where it exceeds the uncertainty of the difference; what both states share cancels in that.\n\
                            Exit codes: 0 nothing got worse; 1 a verdict fell, a reading began to contradict, or something can no longer be computed (with --strict any change of what is radiated); 2 usage, file or revision not there.\n\n\
                            downlead diff old.downlead new.downlead\n\
                            downlead diff --git HEAD~1\n\
                            downlead diff --git main...HEAD --format markdown sites/"
    )]
    Diff(crate::change::args::DiffArgs),
    /// The variants of a file beside their stations: loss, ERP, verdicts and the difference.
    #[command(
        after_help = "What a variant does not change cancels in the difference.\n\
                            Exit codes: 0 all variants meet their limits; 1 one does not, or has errors (with --against base only where it is worse than the station); 2 usage or file trouble.\n\n\
                            downlead compare proposals.downlead\n\
                            downlead compare proposals.downlead --variant no-isolator --against base"
    )]
    Compare(crate::change::compare::CompareArgs),
    /// Each commit with what it did on the air.
    Log(crate::change::args::LogArgs),
    /// Any number of files: one row a station and band, the worst first.
    Overview(crate::change::args::OverviewArgs),
    /// The number of a figure with which a goal is reached: beyond the uncertainty, and just.
    #[command(
        after_help = "downlead solve hill.downlead --vary TX1.power --step \"1 W\"\n\
                            downlead solve hill.downlead --vary M1.length --for \"erp >= 20 W on 2m\"\n\n\
                            Exit codes: 1 if it cannot be reached."
    )]
    Solve(crate::change::vary::SolveArgs),
    /// What rests on an instrument or the sheet of a cable that was found to be off: every reading and verdict, what flips, what only moves.
    #[command(after_help = "downlead recall W1 +6 % since 2026-01 sites/\n\
                            downlead recall foam-10 +6 %\n\n\
                            Exit codes: 1 if a verdict flips.")]
    Recall(crate::command::recall::RecallArgs),
    /// Results over a figure, as CSV.
    Sweep(crate::change::vary::SweepArgs),
    /// Brings files into the usual layout.
    Fmt(FmtArgs),
    /// The built-in cables, connectors and devices.
    Catalogue(CatalogueArgs),
    /// Writes a first file to start from.
    New(NewArgs),
    /// The language server, for editors: speaks on standard input and output.
    Lsp {
        /// Accepted since many editors add it; it is the only way there is.
        #[arg(long, hide = true)]
        stdio: bool,
    },
    /// Writes man pages, and completions for all shells, into a folder.
    Manual(ManualArgs),
    /// Prints the completions for a shell.
    Completions {
        /// Which shell.
        shell: clap_complete::Shell,
    },
}

// The structs that several commands flatten have no doc comment: it would become the command's.

// Files of a command that prints one value in several formats.
#[derive(Debug, clap::Args)]
pub(crate) struct Inputs {
    /// Files, or folders searched for `*.downlead`; `-` is standard input.
    #[arg(value_name = "FILE", required_unless_present = "schema")]
    pub(crate) paths: Vec<PathBuf>,
    #[command(flatten)]
    pub(crate) within: Within,
}

// Where files may lie.
#[derive(Debug, clap::Args)]
pub(crate) struct Within {
    /// Folder above which nothing is read; without it the git repository of each file, or the nearest
    /// folder with a file named `.downlead-root`, else the file's own folder and those of its `use` lines.
    #[arg(long, value_name = "DIR")]
    pub(crate) root: Option<PathBuf>,
}

// What is asked about the shape of the JSON.
#[derive(Debug, clap::Args)]
pub(crate) struct Shape {
    /// Print the JSON Schema of `--format json` and end.
    #[arg(long)]
    pub(crate) schema: bool,
}

#[derive(Debug, clap::Args)]
pub(crate) struct CheckArgs {
    /// Files, or folders searched for `*.downlead`; `-` is standard input.
    #[arg(default_value = ".", value_name = "PATH")]
    pub(crate) paths: Vec<PathBuf>,
    /// Warnings and `cannot tell` fail too.
    #[arg(long)]
    pub(crate) strict: bool,
    /// Say whether this paper of `report` was printed from the files as they are now, and end.
    #[arg(long, value_name = "PAPER", conflicts_with_all = ["fix", "history"])]
    pub(crate) sheet: Option<PathBuf>,
    /// Also show what is merely worth knowing (always part of the other formats).
    #[arg(long)]
    pub(crate) notes: bool,
    /// Also point out readings that were changed after they had been committed, and lengths that look
    /// mistyped beside the state before (asks `git`).
    #[arg(long)]
    pub(crate) history: bool,
    /// Make the offered changes that need no choice and make nothing worse, show them, and check what is left.
    #[arg(long)]
    pub(crate) fix: bool,
    /// With --fix: show the changes and make none; exit with 1 if there are any.
    #[arg(long, requires = "fix")]
    pub(crate) dry_run: bool,
    /// Day as of which an acceptance has ended; without it the newest date in its file.
    #[arg(long, value_name = "DATE", value_parser = day)]
    pub(crate) as_of: Option<String>,
    /// How to print the findings.
    #[arg(long, value_enum, default_value_t = CheckFormat::Text)]
    pub(crate) format: CheckFormat,
    /// Show all findings of a kind, not only the first 20 (the other programs' formats hold all).
    #[arg(long)]
    pub(crate) all: bool,
    #[command(flatten)]
    pub(crate) within: Within,
}

/// A day as the language writes it.
fn day(text: &str) -> Result<String, String> {
    match text.len() == 10 && downlead_eval::dates::days_of(text).is_some() {
        true => Ok(text.to_owned()),
        false => Err("a day is written like 2026-07-04".to_owned()),
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum CheckFormat {
    /// Drawn for people.
    Text,
    /// One line a finding.
    Short,
    Json,
    /// SARIF 2.1.0.
    Sarif,
    /// Annotations of a hosted build.
    Github,
}

#[derive(Debug, clap::Args)]
pub(crate) struct ReportArgs {
    /// How to print the report.
    #[arg(long, value_enum, default_value_t = ReportFormat::Text)]
    pub(crate) format: ReportFormat,
    /// Which table to print as CSV.
    #[arg(long, value_enum, default_value_t = Table::Nodes)]
    pub(crate) table: Table,
    #[command(flatten)]
    pub(crate) shape: Shape,
    /// Write the trends of logged readings as SVG into this folder; made when missing.
    #[arg(long, value_name = "DIR")]
    pub(crate) plot: Option<PathBuf>,
    /// Print the links between stations: what arrives of what is sent, and whether it suffices.
    #[arg(long, conflicts_with_all = ["plot", "table", "verify", "site", "exposure"])]
    pub(crate) link: bool,
    /// Print the sites only: receive channels, the carriers, harmonics and products that fall into
    /// them, and what was searched. JSON has them always.
    #[arg(long, conflicts_with_all = ["plot", "table", "verify", "exposure"])]
    pub(crate) site: bool,
    /// Print each result beside that of the derivatives alone and of random draws of all figures
    /// and open phases, and where they differ by more than the last printed digit.
    #[arg(long, conflicts_with_all = ["plot", "table"])]
    pub(crate) verify: bool,
    /// Print the exposure of people at the spots alone: a worksheet with every transmitter, the sum and
    /// the distances to keep.
    #[arg(long, conflicts_with_all = ["plot", "table", "verify"])]
    pub(crate) exposure: bool,
    #[command(flatten)]
    pub(crate) papers: crate::report::args::PaperArgs,
    /// Random draws of each chain on each band.
    #[arg(long, requires = "verify", value_name = "N", default_value_t = 1_000_000, value_parser = clap::value_parser!(u32).range(1_000..=100_000_000))]
    pub(crate) draws: u32,
    #[command(flatten)]
    pub(crate) inputs: Inputs,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum ReportFormat {
    Text,
    Json,
    Csv,
    Markdown,
    /// One page to read, print or keep; it loads nothing.
    Html,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Table {
    /// One row a part.
    Nodes,
    /// One row a limit.
    Limits,
    /// One row a reading.
    Readings,
    /// One row a contribution to the uncertainty.
    Budget,
    /// One row a chain and band.
    Chains,
}

#[derive(Debug, clap::Args)]
pub(crate) struct CardArgs {
    /// Meter that goes to the site; its error is then in the spans.
    #[arg(long, value_name = "METER")]
    pub(crate) with: Option<String>,
    /// How to print the cards.
    #[arg(long, value_enum, default_value_t = ReportFormat::Text)]
    pub(crate) format: ReportFormat,
    #[command(flatten)]
    pub(crate) shape: Shape,
    #[command(flatten)]
    pub(crate) inputs: Inputs,
}

#[derive(Debug, clap::Args)]
pub(crate) struct BenchArgs {
    /// Warnings, and pieces that differ or cannot be told, fail too.
    #[arg(long)]
    pub(crate) strict: bool,
    /// How to print the sessions.
    #[arg(long, value_enum, default_value_t = ReportFormat::Text)]
    pub(crate) format: ReportFormat,
    /// Which table to print as CSV.
    #[arg(long, value_enum, default_value_t = BenchTable::Results)]
    pub(crate) table: BenchTable,
    #[command(flatten)]
    pub(crate) shape: Shape,
    /// Write plots as SVG into this folder; made when missing.
    #[arg(long, value_name = "DIR")]
    pub(crate) plot: Option<PathBuf>,
    /// Write each session as a digital calibration certificate (XML) into this folder; made when missing.
    #[arg(long, value_name = "DIR")]
    pub(crate) certificate: Option<PathBuf>,
    /// Which piece is the best for a run of this length, such as "30 m", by each piece's own fit.
    #[arg(long, value_name = "LENGTH", requires = "at")]
    pub(crate) length: Option<String>,
    /// At these frequencies, such as "145.3,433.5"; a bare number is MHz, the name of a band works too.
    #[arg(long, value_name = "FREQ", value_delimiter = ',', requires = "length")]
    pub(crate) at: Vec<String>,
    /// Power at the near end of the run; 100 W without.
    #[arg(long, value_name = "POWER", requires = "length")]
    pub(crate) power: Option<String>,
    #[command(flatten)]
    pub(crate) inputs: Inputs,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum BenchTable {
    /// One row a piece and band.
    Results,
    /// One row a piece.
    Pieces,
    /// One row a band.
    Bands,
    /// One row a piece and band, by loss per length.
    Ranking,
    /// One row a contribution to the uncertainty.
    Budget,
    /// One row a reading of forward and reflected power.
    Swr,
    /// One row a piece and day, of pieces measured on several days.
    Trends,
    /// One row a piece and frequency of --at.
    Runs,
}

#[derive(Debug, clap::Args)]
pub(crate) struct FitArgs {
    /// A .downlead file with a bench session, or with the cable of --cable (`-`: standard input); or a two-port network file (.s2p, .ts).
    #[arg(value_name = "FILE", required_unless_present = "schema")]
    pub(crate) file: Option<PathBuf>,
    /// The session, where there are several.
    #[arg(long, value_name = "NAME")]
    pub(crate) session: Option<String>,
    /// The piece; without it, each of the session.
    #[arg(long, value_name = "NAME")]
    pub(crate) piece: Option<String>,
    /// Leave out the readings on this band.
    #[arg(long, value_name = "BAND")]
    pub(crate) without: Vec<String>,
    /// Fit the table of this cable instead.
    #[arg(long, value_name = "NAME")]
    pub(crate) cable: Option<String>,
    /// Network file: length of the cable, such as "25.00 m ± 0.02 m".
    #[arg(long, value_name = "LENGTH")]
    pub(crate) length: Option<String>,
    /// Network file: temperature of the cable, such as "12 °C"; 20 °C is assumed.
    #[arg(long, value_name = "TEMP", allow_hyphen_values = true)]
    pub(crate) temperature: Option<String>,
    /// Network file: error of a loss, such as "0.05 dB"; else it is found from the scatter.
    #[arg(long, value_name = "ERROR")]
    pub(crate) accuracy: Option<String>,
    /// Name of the definition.
    #[arg(long, value_name = "NAME")]
    pub(crate) name: Option<String>,
    /// Add the definition to this .downlead file; one of the same name is not overwritten.
    #[arg(long, value_name = "PATH")]
    pub(crate) write: Option<PathBuf>,
    /// How to print the fit.
    #[arg(long, value_enum, default_value_t = FitFormat::Text)]
    pub(crate) format: FitFormat,
    #[command(flatten)]
    pub(crate) shape: Shape,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum FitFormat {
    /// Residuals, coefficients, predictions and the definition.
    Text,
    Json,
    /// The definition alone.
    Definition,
}

#[derive(Debug, clap::Args)]
pub(crate) struct ExplainArgs {
    /// A diagnostic's code, or FILE:LINE (`-:LINE`: of standard input).
    #[arg(value_name = "CODE|FILE:LINE", allow_hyphen_values = true)]
    pub(crate) what: Option<String>,
    /// Put this variant in the place of its station.
    #[arg(long, value_name = "NAME", requires = "what")]
    pub(crate) variant: Option<String>,
    #[command(flatten)]
    pub(crate) within: Within,
}

#[derive(Debug, clap::Args)]
pub(crate) struct FmtArgs {
    /// Files, or folders searched for `*.downlead`; `-` formats standard input to standard output.
    #[arg(required = true, value_name = "PATH")]
    pub(crate) paths: Vec<PathBuf>,
    /// Change nothing; name the files that would change and exit with 1 if there are any.
    #[arg(long)]
    pub(crate) check: bool,
}

#[derive(Debug, clap::Args)]
pub(crate) struct CatalogueArgs {
    /// Entry to show; of several cables the losses are compared; without it the entries are listed.
    #[arg(value_name = "NAME")]
    pub(crate) names: Vec<String>,
    /// Compare the cables at this length, such as `40 m`.
    #[arg(long, value_name = "LENGTH", conflicts_with_all = ["plot", "network"])]
    pub(crate) length: Option<String>,
    /// With --length: the power into the cable, such as `50 W`; 100 W without.
    #[arg(long, value_name = "POWER", requires = "length")]
    pub(crate) power: Option<String>,
    /// List only this kind.
    #[arg(long, value_enum)]
    pub(crate) kind: Option<Kind>,
    /// Frequencies for the loss table, such as `145 MHz`; a bare number is MHz.
    #[arg(long, num_args = 1.., value_name = "FREQ")]
    pub(crate) at: Vec<String>,
    /// Draw loss against frequency, both scales logarithmic.
    #[arg(long, requires = "names")]
    pub(crate) plot: bool,
    /// Print this length of the cable as a network file (.s2p) instead, such as `25 m`; at the
    /// frequencies of --at, else 201 over its range.
    #[arg(
        long,
        requires = "names",
        value_name = "LENGTH",
        conflicts_with = "plot"
    )]
    pub(crate) network: Option<String>,
    /// Temperature for --network, such as `12 °C`; 20 °C without.
    #[arg(long, requires = "network", value_name = "TEMPERATURE")]
    pub(crate) temperature: Option<String>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Kind {
    Cable,
    Connector,
    Device,
    /// Sets of rules.
    Rules,
}

#[derive(Debug, clap::Args)]
pub(crate) struct ManualArgs {
    /// Folder to write into; made when missing.
    #[arg(value_name = "DIR")]
    pub(crate) dir: PathBuf,
}

#[derive(Debug, clap::Args)]
pub(crate) struct NewArgs {
    /// Folder to write into; made when missing.
    #[arg(default_value = ".")]
    pub(crate) dir: PathBuf,
    /// What to start with.
    #[arg(long, value_enum, default_value_t = Starter::Station)]
    pub(crate) kind: Starter,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Starter {
    /// A station with two chains, a reading and a limit.
    Station,
    /// One chain for a quick question.
    Quick,
    /// A folder for several sites: a library, a site, and what a hosted build and a commit run.
    Repository,
}

impl From<Table> for downlead_report::sheet::ChainTable {
    fn from(t: Table) -> Self {
        match t {
            Table::Nodes => Self::Nodes,
            Table::Limits => Self::Limits,
            Table::Readings => Self::Readings,
            Table::Budget => Self::Budget,
            Table::Chains => Self::Chains,
        }
    }
}

impl From<BenchTable> for downlead_report::sheet::BenchTable {
    fn from(t: BenchTable) -> Self {
        match t {
            BenchTable::Results => Self::Results,
            BenchTable::Pieces => Self::Pieces,
            BenchTable::Bands => Self::Bands,
            BenchTable::Ranking => Self::Ranking,
            BenchTable::Budget => Self::Budget,
            BenchTable::Swr => Self::Swr,
            BenchTable::Runs => Self::Runs,
            BenchTable::Trends => Self::Trends,
        }
    }
}
