//! Shapes of what licences and rules say.

use downlead_eval::licence::RuleVerdict;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::Word;

/// A clause of a licence or of rules, compared.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RuleReport {
    /// Name of the licence or rules.
    pub set: String,
    /// Citation of the clause; absent where no clause bears on the frequency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cite: Option<String>,
    /// `erp`, `eirp`, `output` or `dc-input`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quantity: Option<String>,
    /// `carrier`, `pep` or `mean`, where the clause says it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kind: Option<String>,
    /// How sure the text of the clause is: `high`, `medium` or `low`; absent where no clause bears on the frequency.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub confidence: Option<String>,
    /// `met`, `met-if-allocated`, `not-met`, `cannot-tell`, `at-the-limit`, `cannot-judge` or `no-rule`. `no-rule` is not
    /// `met`, and `met-if-allocated` is met only where the service is allocated, which nothing says.
    pub verdict: Word<RuleVerdict>,
    /// What is missing, or why it cannot be told.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(default)]
    pub missing: Vec<String>,
    /// The limit for this station, W; of steps and laws the one with the smallest margin.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit_w: Option<f64>,
    /// The value compared, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub value_w: Option<f64>,
    /// Limit over value, dB; negative when over.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of the value, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Probability that the limit is exceeded; nearer than 1e-9 to 0 or 1 it is 0 or 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub probability_exceeded: Option<f64>,
    /// Transmitter setting that meets it with the uncertainty allowed for, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub safe_setting_w: Option<f64>,
    /// File of the line `under`.
    pub file: String,
    /// Line of `under`, from 1.
    pub line: u32,
    /// File of the clause; of the built-in library `library/NAME`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub clause_file: Option<String>,
    /// Line of the clause, from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub clause_line: Option<u32>,
}

/// What the licences and rules of a station say of it as a whole.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StationRulesReport {
    /// What these verdicts are worth.
    pub caution: &'static str,
    /// The licences and rules.
    pub sets: Vec<SetReport>,
    /// What is fixed.
    pub fixed: Vec<FixedReport>,
    /// Thresholds that are reached, or may be.
    pub duties: Vec<DutyReport>,
    /// Questions without an answer.
    pub questions: Vec<SaidReport>,
    /// Conditions, which are not judged.
    pub conditions: Vec<SaidReport>,
    /// Clauses that bear on nothing here.
    pub unused: Vec<SaidReport>,
}

/// A licence or rules that a station is under.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SetReport {
    /// Name.
    pub name: String,
    /// Title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Edition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub edition: Option<String>,
    /// Date.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dated: Option<String>,
}

/// Something that a paper fixes.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FixedReport {
    /// Name of the licence or rules.
    pub set: String,
    /// Citation.
    pub cite: String,
    /// What is fixed.
    pub what: String,
    /// Verdict.
    pub verdict: Word<RuleVerdict>,
    /// By how much it is off at most, m or Hz.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub off: Option<f64>,
    /// How much it may be off, m or Hz.
    pub within: f64,
    /// `m` or `Hz`.
    pub unit: &'static str,
}

/// A threshold and its duty.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DutyReport {
    /// Name of the licence or rules.
    pub set: String,
    /// Citation.
    pub cite: String,
    /// What to do.
    pub duty: String,
    /// The threshold, W.
    pub threshold_w: f64,
    /// What the station has of it, W.
    pub value_w: f64,
    /// `erp`, `eirp` or `output`.
    pub quantity: String,
    /// Whether the value reaches it; else only its uncertainty does.
    pub reached: bool,
}

/// A text of a licence or of rules.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SaidReport {
    /// Name of the licence or rules.
    pub set: String,
    /// Citation, or the name of a question.
    pub cite: String,
    /// Its text.
    pub text: String,
}
