//! Links between stations, as `report --link` prints them.

use downlead_eval::link::LinkVerdict;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::Word;

/// Name and version of the JSON shape.
pub const SCHEMA: &str = "downlead-links/1";

/// All links of the files.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct Links {
    /// Always `downlead-links/1`.
    pub schema: &'static str,
    /// In the order of the files.
    pub links: Vec<LinkReport>,
}

/// One link.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct LinkReport {
    /// Its name.
    pub name: String,
    /// Its title, if it has one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// File it stands in.
    pub file: String,
    /// Line of its head, from 1.
    pub line: u32,
    /// Effective radius of the earth over the real one.
    pub k_factor: f64,
    /// Points of the profile: distance from the first station and height with what stands there, m.
    pub profile_m: Vec<[f64; 2]>,
    /// Its hops, each at each frequency that both chains have.
    pub hops: Vec<HopReport>,
    /// Hops of which nothing can be computed.
    pub not_judged: Vec<HopNotJudged>,
    /// What was taken because the text does not say it.
    pub assumed: Vec<String>,
    /// What is not taken into account.
    pub left_out: Vec<String>,
}

/// A hop of which nothing can be computed.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct HopNotJudged {
    /// The two ends, or what the line says where it could not be read.
    pub hop: String,
    /// Why.
    pub why: &'static str,
    /// Line, from 1.
    pub line: u32,
}

/// One hop at one frequency.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct HopReport {
    /// Chain and station that send.
    pub from: String,
    /// Chain and station that hear.
    pub to: String,
    /// Line, from 1.
    pub line: u32,
    /// Frequency, Hz.
    pub frequency_hz: f64,
    /// Radiated power over isotropic, dBm.
    pub eirp_dbm: Option<f64>,
    /// Its expanded uncertainty (k = 2), dB.
    pub eirp_uncertainty_db: Option<f64>,
    /// Distance along the ground, m.
    pub distance_m: Option<f64>,
    /// Distance between the antennas, m.
    pub slant_m: Option<f64>,
    /// Radio horizon of both antennas over a smooth earth, m; null where a height is missing.
    pub horizon_m: Option<f64>,
    /// Loss of free space, dB.
    pub free_space_db: Option<f64>,
    /// Model that counts.
    pub model: String,
    /// Loss between isotropic antennas by the model that counts, dB.
    pub path_loss_db: Option<f64>,
    /// The models that were asked for or can be computed.
    pub models: Vec<ModelReport>,
    /// What the terrain does; null without a profile.
    pub terrain: Option<TerrainReport>,
    /// What the patterns of the sending and of the receiving antenna take, dB; null where none counts.
    pub patterns_db: [Option<f64>; 2],
    /// Gain of the receiving antenna, dBi.
    pub gain_dbi: Option<f64>,
    /// Loss of the receiving chain, dB.
    pub receive_loss_db: Option<f64>,
    /// Level at the receiver, dBm.
    pub level_dbm: Option<f64>,
    /// Noise from outside, dB above kT0b; null where it does not follow from the surroundings.
    pub external_noise_db: Option<f64>,
    /// By how much noise from outside raises what is needed, dB.
    pub degradation_db: Option<f64>,
    /// What is needed, and what is left; null where it cannot be judged.
    pub judged: Option<JudgedReport>,
    /// Margin in free space at further distances, before the share of the places.
    pub coverage: Vec<CoverageReport>,
    /// `met`, `not-met`, `cannot-tell`, `at-the-limit`, `cannot-judge` or `no-need`.
    pub verdict: Word<LinkVerdict>,
    /// What is missing for a verdict.
    pub missing: Vec<String>,
}

/// What a model makes of the path.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ModelReport {
    /// Its word.
    pub model: String,
    /// Loss between isotropic antennas, dB; null where it does not hold.
    pub loss_db: Option<f64>,
    /// Why it does not hold.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
}

/// What the terrain does, by Bullington's construction.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TerrainReport {
    /// Loss by it, dB.
    pub loss_db: f64,
    /// Whether the antennas see each other over the terrain.
    pub in_sight: bool,
    /// Distance of the one edge from the sending antenna, m.
    pub edge_m: f64,
    /// Its height above the line between the antennas, m.
    pub above_m: f64,
    /// Its parameter.
    pub nu: f64,
    /// Heights of the sending and the receiving antenna above sea level, m.
    pub ends_m: [f64; 2],
    /// Each point of the profile from the sending antenna: distance, clearance below the line, radius of the first
    /// Fresnel zone, m.
    pub clearances_m: Vec<[f64; 3]>,
    /// The same loss with other k factors: k and dB.
    pub other_k: Vec<[f64; 2]>,
    /// Whether this hop runs against the table of the profile.
    pub turned: bool,
}

/// What is needed, and what is left of the margin.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct JudgedReport {
    /// `20 dB sinad`.
    pub criterion: String,
    /// What the receiver needs without noise from outside, dBm.
    pub receiver_dbm: f64,
    /// What it needs with it, dBm.
    pub needed_dbm: f64,
    /// Margin at half of the places, dB.
    pub margin_db: f64,
    /// Share of the places, 0 to 1.
    pub share: f64,
    /// One standard deviation from place to place, dB.
    pub spread_db: Option<f64>,
    /// What that share takes, dB.
    pub places_db: f64,
    /// What is left, dB.
    pub left_db: f64,
    /// Its expanded uncertainty (k = 2), by equipment and distance, dB.
    pub uncertainty_db: f64,
}

/// Margin in free space at a distance.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct CoverageReport {
    /// Distance, m.
    pub distance_m: f64,
    /// Margin at most, dB.
    pub margin_db: f64,
}
