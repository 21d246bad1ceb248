//! Variants of stations beside the stations: the stable shape that `compare --format json` prints.
//!
//! Numbers are in SI units or dB.

use downlead_eval::licence::RuleVerdict;
use schemars::JsonSchema;
use serde::Serialize;

use super::diff::StepDiff;
use super::word::Word;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-compare/1";

/// What a comparison leaves out and what it rests on.
pub const ASSUMED: &str = "Readings and expectations of the station do not count for its variants. What is not changed is taken to be the same unit with the same error, and cancels in a difference; a figure that a variant replaces has an error of its own. What a paper fixes is not compared: apply the variant to the text and run `check`.";

/// Variants compared with their stations.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Variants {
    /// Always `downlead-compare/1`.
    pub schema: &'static str,
    /// File.
    pub file: String,
    /// What the comparison leaves out and what it rests on.
    pub assumed: &'static str,
    /// True if a variant does not meet a limit, or cannot be computed.
    pub not_met: bool,
    /// True if a verdict of a variant is worse than the station's.
    pub worse: bool,
    /// The variants, in the order of the text.
    pub variants: Vec<VariantReport>,
}

/// A variant.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct VariantReport {
    /// Its name.
    pub name: String,
    /// Its title, if it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// The station it changes.
    pub of: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Why it is not computed: it has errors, or its station is not there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
    /// Chains on their bands.
    pub chains: Vec<VariantChain>,
    /// Exposure at each spot: the station as it is, and the variant.
    pub spots: Vec<super::exposure::SpotStep>,
}

/// A chain on a band, with the station as it is and with the variant.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct VariantChain {
    /// Its name.
    pub name: String,
    /// The band, with `low`, `middle` or `high` of a range.
    pub band: String,
    /// The station as it is; null where it has no such chain or band.
    pub base: Option<StateReport>,
    /// The variant; null where it has no such chain or band.
    pub variant: Option<StateReport>,
    /// Change of the radiated power, variant less station. Shared causes cancel in it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub radiated: Option<StepDiff>,
    /// Change of the loss of the chain.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss: Option<StepDiff>,
    /// True if a verdict is worse than the station's.
    pub worse: bool,
}

/// How a chain on a band stands.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct StateReport {
    /// False where a part could not be computed.
    pub complete: bool,
    /// Loss of the chain, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_db: Option<f64>,
    /// ERP, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub erp_w: Option<f64>,
    /// Sensitivity at the antenna, dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sensitivity_dbm: Option<f64>,
    /// Expanded uncertainty (k = 2) of the result, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// Limits of the chain and clauses of licences and rules, in their order.
    pub limits: Vec<ClauseState>,
}

/// How a limit or clause stands.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ClauseState {
    /// Document and clause, or the quantity of a limit without one.
    pub cite: String,
    /// The limit, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit_w: Option<f64>,
    /// `erp`, `eirp` or `output`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub quantity: Option<&'static str>,
    /// Margin, dB; negative where the limit is exceeded.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin_db: Option<f64>,
    /// Expanded uncertainty (k = 2) of the margin, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// `met`, `met-if-allocated`, `at-the-limit`, `cannot-tell`, `cannot-judge`, `not-met`, `no-rule`.
    pub verdict: Word<RuleVerdict>,
    /// What is missing where it cannot be judged.
    pub missing: Vec<String>,
}
