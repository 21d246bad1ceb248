//! Forms filled in: the stable shape of `report --coordination`.

use schemars::JsonSchema;
use serde::Serialize;

use super::OriginReport;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-form/1";

/// A form filled in for all stations.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FormFile {
    /// Always `downlead-form/1`.
    pub schema: &'static str,
    /// What the figures are worth.
    pub caution: &'static str,
    /// Name of the licence or rules whose form it is.
    pub form: String,
    /// Its title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Its edition.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub edition: Option<String>,
    /// Its date.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dated: Option<String>,
    /// One a station.
    pub stations: Vec<FormStation>,
}

/// The form filled in for a station.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FormStation {
    /// Tag.
    pub station: String,
    /// Title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Where it comes from.
    pub origin: OriginReport,
    /// One a transmit chain and band.
    pub blocks: Vec<FormBlock>,
    /// Fields without an entry, each once, with what is missing.
    pub missing: Vec<String>,
}

/// The form filled in for a transmit chain on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FormBlock {
    /// Chain.
    pub chain: String,
    /// Band.
    pub band: String,
    /// Hz.
    pub frequency_hz: f64,
    /// File of the chain.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Fields in the order of the form.
    pub fields: Vec<FieldReport>,
}

/// A field.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FieldReport {
    /// How the form calls it.
    pub label: String,
    /// What it asks for, as the language calls it.
    pub what: &'static str,
    /// What to write into the form; absent where something is missing, and in fields to be filled in by hand.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub entry: Option<String>,
    /// Unit of the form.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<&'static str>,
    /// The value in that unit before it is rounded.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub exact: Option<f64>,
    /// The value in that unit, rounded as the form wants it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rounded: Option<f64>,
    /// How it is rounded, in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rounding: Option<String>,
    /// Expanded uncertainty (k = 2) of the value, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// A limit that the rounded value exceeds and the value itself does not, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub over_w: Option<f64>,
    /// Whether it is to be filled in by hand.
    pub by_hand: bool,
    /// What the text lacks.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub missing: Option<&'static str>,
}
