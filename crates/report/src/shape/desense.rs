//! Shapes of isolation between antennas and of desense.

use downlead_eval::site::desense::DesenseVerdict;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::Word;

/// Isolation between two antennas as stated.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct IsolationReport {
    /// One antenna, of another station with `of` and its name.
    pub from: String,
    /// The other one; the isolation holds both ways.
    pub to: String,
    /// Line in the file, from 1.
    pub line: u32,
    /// File.
    pub file: String,
    /// `measured`, or by the distance: `vertical`, `horizontal`.
    pub by: String,
    /// Frequency that it is stated or computed for, Hz.
    pub hz: f64,
    /// From connector to connector, dB; null where the antennas are too near for the rule.
    pub db: Option<f64>,
    /// Expanded uncertainty, k = 2, dB.
    pub uncertainty_db: f64,
    /// Distance in wavelengths, where it is computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wavelengths: Option<f64>,
}

/// Desense of one receive channel by the transmitters of the site.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DesenseReport {
    /// The receiver.
    pub receiver: String,
    /// Its chain.
    pub chain: String,
    /// File.
    pub file: String,
    /// Line of the limit, else of the chain, from 1.
    pub line: u32,
    /// Its frequency, Hz; 0 where the chain is on a range.
    pub hz: f64,
    /// Its own noise in 1 Hz, dBm/Hz; null where it does not follow.
    pub floor_dbm_hz: Option<f64>,
    /// What surrounds the site: `rural`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub surroundings: Option<String>,
    /// Noise from outside at the antenna over kT0b, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub external_noise_db: Option<f64>,
    /// Noise in 1 Hz at the receiver with that of the site, dBm/Hz; null where none is stated.
    pub floor_on_site_dbm_hz: Option<f64>,
    /// The limit, dB.
    pub limit_db: Option<f64>,
    /// Its document and clause.
    pub limit_source: Option<String>,
    /// What the transmitters whose noise is known do together, over the noise of the site where that is stated; null where none
    /// is known.
    pub together: Option<RiseReport>,
    /// `met`, `met-alone` (nothing says whether others stand on the site), `not-met`, `cannot-tell`, `at-the-limit`,
    /// `cannot-judge`, `no-limit`.
    pub verdict: Word<DesenseVerdict>,
    /// What is missing for a verdict.
    pub missing: Vec<String>,
    /// What was assumed.
    pub assumed: Vec<String>,
    /// Each transmitter with its two figures: noise and carrier.
    pub sources: Vec<SourceReport>,
}

/// By how much a noise raises another one.
#[derive(Clone, Copy, Debug, Serialize, JsonSchema)]
pub struct RiseReport {
    /// dB.
    pub db: f64,
    /// With the uncertainty, k = 2, to the good side, dB.
    pub low_db: f64,
    /// With the uncertainty, k = 2, to the bad side, dB.
    pub high_db: f64,
}

/// What one transmitter does to one receiver.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SourceReport {
    /// The transmitter, of another station with `of` and its name.
    pub transmitter: String,
    /// Its frequency, Hz.
    pub hz: f64,
    /// Its distance from the receive frequency, Hz.
    pub offset_hz: f64,
    /// Isolation between the antennas, where they are two, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub isolation_db: Option<f64>,
    /// What the distance of the antennas gives, where the isolation was measured too, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub isolation_by_distance_db: Option<f64>,
    /// Its noise on the receive frequency; null where it is not known.
    pub noise: Option<NoiseReport>,
    /// What is missing of the noise.
    pub noise_missing: Vec<String>,
    /// Its carrier at the receiver; null where it is not known, or not what the receiver withstands.
    pub carrier: Option<CarrierReport>,
    /// What is missing of the carrier.
    pub carrier_missing: Vec<String>,
}

/// Noise of a transmitter at a receiver.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NoiseReport {
    /// In 1 Hz at the receiver, dBm/Hz.
    pub dbm_hz: f64,
    /// Whether something on the way is not stated, so that this is the most that can be.
    pub at_most: bool,
    /// Over the receiver's own noise, dB; negative under it.
    pub over_floor_db: f64,
    /// Expanded uncertainty of that, k = 2, dB.
    pub uncertainty_db: f64,
    /// What the whole way loses, dB.
    pub way_db: f64,
    /// Leg that rejects it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub leg: Option<String>,
    /// What that is said to reject, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rejects_db: Option<f64>,
    /// Desense of the receiver alone.
    pub desense: RiseReport,
    /// The same over the noise of the site.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub desense_on_site: Option<RiseReport>,
    /// Desense of the receiver alone with the isolation that the distance gives, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub desense_by_distance_db: Option<f64>,
    /// By how much less rejection would do if this were the only transmitter and there were no noise of the site, dB;
    /// negative where more is needed. Null without a limit.
    pub spare_db: Option<f64>,
    /// How much more it must be kept off for the limit to hold with all others as they are, dB; negative where there is room.
    /// Null without a limit, and where the others alone exceed it.
    pub needs_db: Option<f64>,
}

/// Carrier of a transmitter at a receiver.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CarrierReport {
    /// Level at the receiver, dBm.
    pub dbm: f64,
    /// Whether something on the way is not stated, so that this is the most that can be.
    pub at_most: bool,
    /// What the receiver withstands at that offset, dBm.
    pub blocking_dbm: f64,
    /// By how much it is under that, dB.
    pub under_db: f64,
    /// Expanded uncertainty of that, k = 2, dB.
    pub uncertainty_db: f64,
    /// What the whole way loses, dB.
    pub way_db: f64,
    /// Leg that rejects it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub leg: Option<String>,
    /// What that is said to reject, dB.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rejects_db: Option<f64>,
    /// Whether it is under: `met`, `not-met`, `cannot-tell`, `at-the-limit`, `cannot-judge`.
    pub verdict: Word<DesenseVerdict>,
}
