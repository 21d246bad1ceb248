//! What changed on the air between two states of texts: the stable shape that `diff --format json`
//! prints.
//!
//! Pairs are `[then, now]`, null where there was or is none. Numbers are in SI units or dB.

use schemars::JsonSchema;
use serde::Serialize;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-diff/1";

/// Two states of texts compared.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Diff {
    /// Always `downlead-diff/1`.
    pub schema: &'static str,
    /// Name of the state before.
    pub old: String,
    /// Name of the state after.
    pub new: String,
    /// True if anything moved by more than its uncertainty, a verdict moved, or something that a
    /// licence fixes was changed.
    pub speaks: bool,
    /// True if a verdict fell, a reading began to contradict, or something can no longer be computed.
    pub worse: bool,
    /// Stations in which anything differs; chains outside a station belong to one named "".
    pub stations: Vec<StationDiff>,
    /// Definitions that differ.
    pub definitions: Vec<DefinitionDiff>,
    /// Errors and warnings that came and that went.
    pub findings: Vec<FindingDiff>,
    /// What speaks, one by one, with fingerprints that stay the same over commits.
    pub remarks: Vec<Remark>,
}

/// Kind of a change, the weightiest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Class {
    /// More is radiated somewhere.
    FootprintLarger,
    /// Less is radiated, and nowhere more.
    FootprintSmaller,
    /// Frequency, place, height or time keyed.
    FootprintOther,
    /// Parts changed, nothing radiated did.
    Inside,
    /// A limit or its document changed.
    Paper,
    /// Uncertainties, sources, readings.
    Evidence,
    /// Names, titles, layout.
    Clerical,
}

impl Class {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Class::FootprintLarger => "footprint, larger",
            Class::FootprintSmaller => "footprint, smaller",
            Class::FootprintOther => "footprint, other",
            Class::Inside => "inside the station",
            Class::Paper => "limits and documents",
            Class::Evidence => "evidence",
            Class::Clerical => "clerical",
        }
    }

    /// True if what the station puts on the air is another.
    #[must_use]
    pub fn is_footprint(self) -> bool {
        self <= Class::FootprintOther
    }
}

/// A station in which something differs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StationDiff {
    /// File it is in; where it is gone, file it was in.
    pub file: String,
    /// Its tag.
    pub name: String,
    /// `changed`, `new` or `gone`.
    pub state: State,
    /// The weightiest kind of change.
    pub class: Class,
    /// True if it is to be pointed out.
    pub speaks: bool,
    /// True if something got worse.
    pub worse: bool,
    /// What of place and use was changed: `position`, `height of A1`, `time keyed of TX1`.
    pub placed: Vec<String>,
    /// Spots whose exposure moved, came or went.
    pub spots: Vec<super::exposure::SpotStep>,
    /// Parts that differ, each once.
    pub parts: Vec<PartDiff>,
    /// Parts with another name that are otherwise the same: then, now.
    pub renamed: Vec<[String; 2]>,
    /// Chains on their bands in which anything differs.
    pub chains: Vec<ChainDiff>,
    /// What has to be done again: `exposure`, `coordination`, `readings`.
    pub redo: Vec<Redo>,
}

/// Whether something was and is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// In both.
    Changed,
    /// Only now.
    New,
    /// Only then.
    Gone,
}

impl State {
    /// By presence then and now.
    #[must_use]
    pub fn of(was: bool, is: bool) -> State {
        match (was, is) {
            (true, false) => State::Gone,
            (false, true) => State::New,
            _ => State::Changed,
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            State::Changed => "changed",
            State::New => "new",
            State::Gone => "gone",
        }
    }
}

/// A document or record that no longer fits the station.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Redo {
    /// The exposure record: power, gain, height or time keyed changed.
    Exposure,
    /// The coordination: more is radiated, or frequency, place or height changed.
    Coordination,
    /// Readings that stay in the text and were taken on other parts.
    Readings,
}

/// How two states of a text part differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum How {
    /// A value differs.
    Value,
    /// An uncertainty, a source, a date, an instrument or a person differs.
    Evidence,
    /// The text says the same, the loss follows from what changed elsewhere.
    Follows,
}

/// A part that differs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PartDiff {
    /// Tag with port, or kind.
    pub name: String,
    /// What differs.
    pub how: How,
    /// What it said and says, where that differs; what both say is left out.
    pub text: [Option<String>; 2],
    /// Loss on the first band on which it differs, dB.
    pub loss_db: [Option<f64>; 2],
    /// Line now (then, where it is gone), from 1.
    pub line: u32,
}

/// A chain on a band in which anything differs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ChainDiff {
    /// Its name.
    pub name: String,
    /// The band.
    pub band: String,
    /// `changed`, `new` or `gone`.
    pub state: State,
    /// True if it is to be pointed out.
    pub speaks: bool,
    /// True if something got worse.
    pub worse: bool,
    /// Frequency, Hz.
    pub frequency_hz: [Option<f64>; 2],
    /// Loss of the chain, dB.
    pub loss_db: [Option<f64>; 2],
    /// ERP, W.
    pub erp_w: [Option<f64>; 2],
    /// EIRP, W.
    pub eirp_w: [Option<f64>; 2],
    /// Power into the antenna or load, W.
    pub antenna_w: [Option<f64>; 2],
    /// Receive: sensitivity at the antenna, dBm.
    pub sensitivity_dbm: [Option<f64>; 2],
    /// Expanded uncertainty (k = 2) of the result, dB.
    pub uncertainty_db: [Option<f64>; 2],
    /// Change of ERP and EIRP.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub radiated: Option<StepDiff>,
    /// Change of the chain's loss.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss: Option<StepDiff>,
    /// Limits of both states.
    pub limits: Vec<LimitDiff>,
    /// Readings that came, went, or have another verdict.
    pub readings: Vec<ReadingDiff>,
}

/// A change with its uncertainty; what both states share cancels in it.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct StepDiff {
    /// Now less then, dB.
    pub change_db: f64,
    /// Expanded uncertainty (k = 2) of that, dB.
    pub uncertainty_db: f64,
    /// Interval of 95 % of it, dB.
    pub interval_db: [f64; 2],
    /// True if it is larger than its uncertainty.
    pub speaks: bool,
}

/// A limit in both states.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LimitDiff {
    /// `erp`, `eirp` or `output`.
    pub quantity: &'static str,
    /// Document and clause.
    pub source: [Option<String>; 2],
    /// The limit, W.
    pub limit_w: [Option<f64>; 2],
    /// Margin, dB.
    pub margin_db: [Option<f64>; 2],
    /// Expanded uncertainty of the margin, dB.
    pub uncertainty_db: [Option<f64>; 2],
    /// `met`, `not-met`, `cannot-tell`; of clauses also `met-if-allocated`, `at-the-limit`, `cannot-judge`, `no-rule`.
    pub verdict: [Option<&'static str>; 2],
    /// True if the verdict fell.
    pub worse: bool,
    /// True if it only warns: the text of the clause is not sure (confidence low).
    pub warns: bool,
}

/// A reading that came, went, or has another verdict.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReadingDiff {
    /// `forward`, `reflected`, `net` or `swr`.
    pub what: &'static str,
    /// Read: W or SWR.
    pub read: f64,
    /// `agrees`, `differs`, `cannot-tell`.
    pub verdict: [Option<&'static str>; 2],
    /// True if it began to contradict.
    pub worse: bool,
}

/// A definition that differs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DefinitionDiff {
    /// File that sees it.
    pub file: String,
    /// `cable club-foam`, of a station `hill: place mast`.
    pub name: String,
    /// `changed`, `new` or `gone`.
    pub state: State,
    /// What differs.
    pub how: How,
}

/// A finding that came or went.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FindingDiff {
    /// File.
    pub file: String,
    /// Line in the state it belongs to, from 1.
    pub line: u32,
    /// Code of the diagnostics table.
    pub code: &'static str,
    /// `new` or `gone`.
    pub state: State,
    /// Its message.
    pub message: String,
}

/// Weight of a remark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Weight {
    /// To be known.
    Note,
    /// Better, or to be looked at.
    Warning,
    /// Worse.
    Error,
}

/// One thing to be pointed out.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Remark {
    /// Kind: `verdict-fell`, `verdict-rose`, `radiated-power-moved`, ….
    pub rule: &'static str,
    /// Weight.
    pub weight: Weight,
    /// In words.
    pub message: String,
    /// File.
    pub file: String,
    /// Line, from 1.
    pub line: u32,
    /// The same for the same change at the same station, chain and band, whatever the commit and
    /// line; 16 hexadecimal digits.
    pub fingerprint: String,
}
