//! Shapes of what is said of a site.

use downlead_eval::site::LeftOut;
use schemars::JsonSchema;
use serde::Serialize;

use super::desense::{DesenseReport, IsolationReport};
use super::word::Word;

/// What the carriers of a site do to the receive channels of a station.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SiteReport {
    /// Stations that it is beside.
    pub beside: Vec<String>,
    /// Whether it says that no other station stands on the site.
    pub alone: bool,
    /// Who has looked, and when.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub alone_by: Option<String>,
    /// Carriers that were searched.
    pub carriers: Vec<ChannelReport>,
    /// Receive channels of the station.
    pub receivers: Vec<ReceiverReport>,
    /// What was not searched: a hit of it would not be found.
    pub not_searched: Vec<NotSearchedReport>,
    /// The highest order of the products that were searched.
    pub order: u32,
    /// Whether that is less than 7, because there would be too many products.
    pub order_lowered: bool,
    /// How many products were searched.
    pub products: u64,
    /// Carriers, harmonics and products that fall into a receive channel, the lowest orders first; of each channel 20 at
    /// most. Their level is not judged.
    pub intermodulation: Vec<HitReport>,
    /// Isolation between antennas, as stated.
    pub isolations: Vec<IsolationReport>,
    /// Desense of each receive channel.
    pub desense: Vec<DesenseReport>,
}

/// A carrier of a site.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ChannelReport {
    /// Its transmitter, of another station with `of` and its name.
    pub name: String,
    /// Frequency, Hz.
    pub hz: f64,
    /// Width, Hz; absent where it is not stated, and counted as a line.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub width_hz: Option<f64>,
}

/// A receive channel.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReceiverReport {
    /// Its receiver.
    pub name: String,
    /// Frequency, Hz.
    pub hz: f64,
    /// Width, Hz; absent where it is not stated, and counted as a line.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub width_hz: Option<f64>,
    /// How many carriers, harmonics and products fall into it.
    pub found: u64,
}

/// Something that was not searched.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NotSearchedReport {
    /// A chain, of another station with `of` and its name; or a station.
    pub name: String,
    /// `range`, `no-frequency` or `not-defined`.
    pub why: Word<LeftOut>,
}

/// A carrier, a harmonic or a product in a receive channel.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct HitReport {
    /// The receiver.
    pub receiver: String,
    /// Its frequency, Hz.
    pub receiver_hz: f64,
    /// `2 TX1 - H1 of harbour`.
    pub product: String,
    /// Sum of the coefficients without their signs; 1 is the carrier itself.
    pub order: u32,
    /// Frequency, Hz.
    pub hz: f64,
    /// Distance from the middle of the receive channel, Hz.
    pub off_hz: f64,
    /// Width, Hz.
    pub width_hz: f64,
}
