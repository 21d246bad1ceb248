//! Cards as a value: the stable shape that `card --format json` prints.

use schemars::JsonSchema;
use serde::Serialize;

use super::word::{Point, ReadingVerdict, Wave};

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-card/1";

/// All cards.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CardFile {
    /// Always `downlead-card/1`.
    pub schema: &'static str,
    /// One a transmit chain and band.
    pub cards: Vec<Card>,
    /// What stands on every card.
    pub safety: Vec<&'static str>,
}

/// The test points of a transmit chain on a band.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Card {
    /// Tag of the station; empty outside one.
    pub station: String,
    /// Its title.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// The chain.
    pub chain: String,
    /// Band name, or the frequency in words.
    pub band: String,
    /// `low`, `middle` or `high` where the band is a range; inside it `edge` where a clause has one, `gap` between clauses.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub point: Option<Point>,
    /// Hz.
    pub frequency_hz: f64,
    /// File of the chain.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Instrument whose own error is in the spans; absent where none is known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// Whether the transmitter's power was read with it too: its scale then cancels, and what
    /// remains is its linearity and repeatability.
    pub instrument_set_power: bool,
    /// Points in order from the transmitter.
    pub points: Vec<TestPoint>,
    /// What the powers rest on because the text does not say it.
    pub assumptions: Vec<String>,
}

/// A place where a meter can go.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TestPoint {
    /// Where: `after J1`, `before A1`.
    pub at: String,
    /// Branch, where it lies in one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub branch: Option<String>,
    /// Forward power to be read, W; absent after a loss that is not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub forward_w: Option<f64>,
    /// The same in dBm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub forward_dbm: Option<f64>,
    /// Least that may be read (k = 2), W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub low_w: Option<f64>,
    /// Most that may be read (k = 2), W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub high_w: Option<f64>,
    /// Expanded uncertainty (k = 2) of the reading, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncertainty_db: Option<f64>,
    /// SWR to be read; absent where something after the point could not be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub swr: Option<f64>,
    /// Readings the text has here.
    pub read: Vec<Earlier>,
}

/// A reading of the text.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Earlier {
    /// `forward`, `reflected`, `net` or `swr`.
    pub quantity: Wave,
    /// W; absent for an SWR.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_w: Option<f64>,
    /// SWR.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_swr: Option<f64>,
    /// Date as written.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// Instrument.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub instrument: Option<String>,
    /// `agrees`, `differs` or `cannot-tell`.
    pub verdict: ReadingVerdict,
}
