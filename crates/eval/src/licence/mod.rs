//! Licences and rules: which clauses bear on a transmitter, what they say of it, and what they say of
//! the station as a whole.
//!
//! A verdict comes from the same comparison as that of a `limit` in a chain. No clause is never "met".

mod band;
mod edges;
mod examples;
mod matching;
mod missing;
mod site;

use downlead_base::Loc;
use downlead_station::model::{Confidence, Counted, PowerKind};

use crate::result::LimitResult;

pub(crate) use band::judge;
pub(crate) use edges::with_edges;
pub(crate) use examples::examples;
pub(crate) use matching::{antennas_at, ends, holds_until, spans};
pub(crate) use site::station;

/// What a clause says of a transmitter, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum RuleVerdict {
    /// Exceeded beyond the uncertainty.
    NotMet,
    /// Something that the clause goes by is not stated.
    CannotJudge,
    /// The uncertainty is larger than the margin.
    CannotTell,
    /// Margin and uncertainty are both below 0.02 dB, where laws round the dipole's gain differently.
    AtLimit,
    /// No clause of the set bears on it.
    NoRule,
    /// Kept beyond the uncertainty, where the service is allocated; nothing says that it is here.
    MetIfAllocated,
    /// Kept beyond the uncertainty.
    Met,
}

impl RuleVerdict {
    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            RuleVerdict::NotMet => "not-met",
            RuleVerdict::CannotJudge => "cannot-judge",
            RuleVerdict::CannotTell => "cannot-tell",
            RuleVerdict::AtLimit => "at-the-limit",
            RuleVerdict::NoRule => "no-rule",
            RuleVerdict::MetIfAllocated => "met-if-allocated",
            RuleVerdict::Met => "met",
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> String {
        match self {
            RuleVerdict::MetIfAllocated => "met, if allocated".to_owned(),
            v => v.word().replace('-', " "),
        }
    }
}

/// One clause and what it says of a chain at a frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct RuleResult {
    /// The station's line `under`.
    pub under: Loc,
    /// Name of the licence or rules.
    pub set: Box<str>,
    /// The clause; none where no clause bears on the frequency.
    pub clause: Option<Loc>,
    /// Its citation; empty where there is none.
    pub cite: Box<str>,
    /// Which power it counts.
    pub counted: Option<Counted>,
    /// Which kind of it.
    pub kind: Option<PowerKind>,
    /// How sure its text is; a licence counts as high. None where there is no clause.
    pub confidence: Option<Confidence>,
    /// The numbers; none where it cannot be judged. The place is that of the line `under`.
    pub judged: Option<LimitResult>,
    /// What it says.
    pub verdict: RuleVerdict,
    /// What is missing, or why it cannot be told.
    pub why: Box<[Box<str>]>,
}

impl RuleResult {
    /// `SET CITATION`, as the document that a limit cites.
    #[must_use]
    pub fn source(&self) -> String {
        match &*self.cite {
            "" => self.set.to_string(),
            cite => format!("{} {cite}", self.set),
        }
    }
}

/// A threshold that is reached, or may be.
#[derive(Clone, Debug, PartialEq)]
pub struct Duty {
    /// The station's line `under`.
    pub under: Loc,
    /// Name of the licence or rules, and the citation.
    pub set: Box<str>,
    /// Citation.
    pub cite: Box<str>,
    /// What to do.
    pub text: Box<str>,
    /// Threshold, W.
    pub threshold_w: f64,
    /// What the station has of it, W.
    pub value_w: f64,
    /// Which power.
    pub counted: Counted,
    /// Whether it is reached by the value itself, not only within its uncertainty.
    pub reached: bool,
}

/// Something that a paper fixes.
#[derive(Clone, Debug, PartialEq)]
pub struct FixedResult {
    /// The station's line `under`.
    pub under: Loc,
    /// Name of the licence or rules.
    pub set: Box<str>,
    /// Citation.
    pub cite: Box<str>,
    /// What is fixed, in words.
    pub what: Box<str>,
    /// By how much it is off, m or Hz; none where the station does not say it.
    pub off: Option<f64>,
    /// How much it may be off, m or Hz.
    pub within: f64,
    /// Whether it is a length, in m.
    pub metres: bool,
    /// What is said of it.
    pub verdict: RuleVerdict,
}

/// A condition that is not judged, or a question without an answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    /// Name of the licence or rules.
    pub set: Box<str>,
    /// Citation, or the name of the question.
    pub cite: Box<str>,
    /// Text.
    pub text: Box<str>,
}

/// What the licences and rules of a station say of it as a whole.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct StationRules {
    /// Thresholds that are reached.
    pub duties: Box<[Duty]>,
    /// What is fixed.
    pub fixed: Box<[FixedResult]>,
    /// Conditions that are not judged.
    pub conditions: Box<[Said]>,
    /// Questions without an answer.
    pub questions: Box<[Said]>,
    /// Clauses that bear on nothing here.
    pub unused: Box<[Said]>,
    /// The licences and rules by name, with edition and date.
    pub sets: Box<[SetResult]>,
}

/// A licence or rules that a station is under.
#[derive(Clone, Debug, PartialEq)]
pub struct SetResult {
    /// Name.
    pub name: Box<str>,
    /// Title.
    pub title: Option<Box<str>>,
    /// Edition.
    pub edition: Option<Box<str>>,
    /// Date.
    pub dated: Option<Box<str>>,
    /// Whether it is of the built-in library.
    pub built_in: bool,
}

/// What every output that shows a clause's verdict says.
pub const CAUTION: &str = "An aid, not a legal opinion: the current text of the rule decides.";
