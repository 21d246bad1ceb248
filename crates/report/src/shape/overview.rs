//! Many stations in one table: the stable shape of `overview`.

use schemars::JsonSchema;
use serde::Serialize;

/// Name and version of the shape of a row.
pub const SCHEMA: &str = "downlead-overview/1";

/// How a station stands on a band, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// The file cannot be read or its stations cannot be computed.
    Error,
    /// A limit is exceeded.
    NotMet,
    /// The uncertainty is larger than the margin.
    CannotTell,
    /// A clause of the licence cannot be judged, because something is not stated.
    NotJudged,
    /// No clause of the licence bears on the frequency.
    NoRule,
    /// No limit is stated.
    NoLimit,
    /// All limits are met, some of them only where the service is allocated, which nothing says.
    IfAllocated,
    /// The exposure at a spot is within the limits by this station alone: nothing says whether others stand on the site.
    MetAlone,
    /// All limits are met.
    Met,
}

/// What a row is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum RowKind {
    /// A station on a band.
    Band,
    /// A place where people can be, under a set of rules.
    Spot,
    /// A hop of a link.
    Hop,
    /// A file that cannot be read or computed.
    File,
}

impl RowKind {
    /// All of them.
    pub const ALL: [RowKind; 4] = [RowKind::Band, RowKind::Spot, RowKind::Hop, RowKind::File];

    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            RowKind::Band => "band",
            RowKind::Spot => "spot",
            RowKind::Hop => "hop",
            RowKind::File => "file",
        }
    }
}

impl Standing {
    /// All of them, the worst first.
    pub const ALL: [Standing; 9] = [
        Standing::Error,
        Standing::NotMet,
        Standing::CannotTell,
        Standing::NotJudged,
        Standing::NoRule,
        Standing::NoLimit,
        Standing::IfAllocated,
        Standing::MetAlone,
        Standing::Met,
    ];

    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Standing::Error => "error",
            Standing::NotMet => "not-met",
            Standing::CannotTell => "cannot-tell",
            Standing::NotJudged => "not-judged",
            Standing::NoRule => "no-rule",
            Standing::NoLimit => "no-limit",
            Standing::IfAllocated => "met-if-allocated",
            Standing::MetAlone => "met-alone",
            Standing::Met => "met",
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Standing::Error => "error",
            Standing::NotMet => "not met",
            Standing::CannotTell => "cannot tell",
            Standing::NotJudged => "not judged",
            Standing::NoRule => "no rule",
            Standing::NoLimit => "no limit",
            Standing::IfAllocated => "met, if allocated",
            Standing::MetAlone => "met by this station alone",
            Standing::Met => "met",
        }
    }
}

/// A station on a band; of a file that is broken, the file.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct OverviewRow {
    /// File.
    pub file: String,
    /// Line of the chain's head, from 1; of the first error where the file is broken.
    pub line: u32,
    /// Station; empty for a chain outside a station.
    pub station: String,
    /// Chain.
    pub chain: String,
    /// Band.
    pub band: String,
    /// Frequency, Hz.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frequency_hz: Option<f64>,
    /// ERP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_w: Option<f64>,
    /// The limit with the least margin, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit_w: Option<f64>,
    /// `erp`, `eirp` or `output`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quantity: Option<&'static str>,
    /// Document and clause of that limit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cite: Option<String>,
    /// How it stands.
    pub verdict: Standing,
    /// Margin, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of the margin (of the result where there is no limit), dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Newest reading of the chain, as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub newest_reading: Option<String>,
    /// Age of that reading, days.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub age_days: Option<i64>,
    /// Errors of the file.
    pub errors: usize,
    /// Warnings of the file.
    pub warnings: usize,
    /// Codes of the file's errors and warnings.
    pub codes: Vec<&'static str>,
    /// What is wrong with a broken file.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub message: Option<String>,
    /// What the row is about.
    pub kind: RowKind,
    /// Name of the spot, or both ends of the hop.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub what: Option<String>,
    /// Of a spot: the sum of the shares of the limits.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub share: Option<f64>,
    /// Licences and rules that the station is under.
    pub under: Vec<String>,
    /// Its classes in them.
    pub classes: Vec<String>,
    /// Other stations on its site.
    pub beside: Vec<String>,
}

/// All rows.
#[derive(Clone, Debug)]
pub struct Overview {
    /// The day ages are counted to; none where no date is known.
    pub as_of: Option<String>,
    /// Whether that day was given, and not found as the newest of the files.
    pub given: bool,
    /// Rows in the order they are shown.
    pub rows: Vec<OverviewRow>,
    /// Rows that were left out by the filters.
    pub left_out: usize,
}
