//! Cards as a value: the stable shape that `card --format json` prints.

use schemars::JsonSchema;
use serde::Serialize;

/// Name and version of the JSON shape.
pub(crate) const SCHEMA: &str = "downlead-card/1";

/// All cards.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct CardFile {
    /// Always `downlead-card/1`.
    pub(crate) schema: &'static str,
    /// One a transmit chain and band.
    pub(crate) cards: Vec<Card>,
    /// What stands on every card.
    pub(crate) safety: Vec<&'static str>,
}

/// The test points of a transmit chain on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct Card {
    /// Tag of the station; empty outside one.
    pub(crate) station: String,
    /// Its title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) title: Option<String>,
    /// The chain.
    pub(crate) chain: String,
    /// Band name, or the frequency in words.
    pub(crate) band: String,
    /// `low`, `middle` or `high` where the band is a range.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) point: Option<&'static str>,
    /// Hz.
    pub(crate) frequency_hz: f64,
    /// File of the chain.
    pub(crate) file: String,
    /// Line of its head, from 1.
    pub(crate) line: u32,
    /// Instrument whose own error is in the spans; absent where none is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) instrument: Option<String>,
    /// Whether the transmitter's power was read with it too: its scale then cancels, and what
    /// remains is its linearity and repeatability.
    pub(crate) instrument_set_power: bool,
    /// Points in order from the transmitter.
    pub(crate) points: Vec<TestPoint>,
    /// What the powers rest on because the text does not say it.
    pub(crate) assumptions: Vec<String>,
}

/// A place where a meter can go.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct TestPoint {
    /// Where: `after J1`, `before A1`.
    pub(crate) at: String,
    /// Branch, where it lies in one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) branch: Option<String>,
    /// Forward power to be read, W; absent behind a loss that is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) forward_w: Option<f64>,
    /// The same in dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) forward_dbm: Option<f64>,
    /// Least that may be read (k = 2), W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) low_w: Option<f64>,
    /// Most that may be read (k = 2), W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) high_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of the reading, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) uncertainty_db: Option<f64>,
    /// SWR to be read; absent where something after the point could not be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) swr: Option<f64>,
    /// Readings the text has here.
    pub(crate) read: Vec<Earlier>,
}

/// A reading of the text.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub(crate) struct Earlier {
    /// `forward`, `reflected`, `net` or `swr`.
    pub(crate) quantity: &'static str,
    /// W; absent for an SWR.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) read_w: Option<f64>,
    /// SWR.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) read_swr: Option<f64>,
    /// Date as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) date: Option<String>,
    /// Instrument.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(crate) instrument: Option<String>,
    /// `agrees`, `differs` or `cannot-tell`.
    pub(crate) verdict: &'static str,
}
