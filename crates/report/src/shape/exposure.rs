//! Shapes of the exposure of people at spots.

use downlead_eval::exposure::ExposureVerdict;
use schemars::JsonSchema;
use serde::Serialize;

use super::word::Word;

/// Exposure at a station.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ExposureReport {
    /// What these figures are worth, and what to do before anyone goes near an antenna.
    pub cautions: &'static [&'static str],
    /// Each spot under each set of rules with limits of exposure.
    pub spots: Vec<SpotReport>,
    /// Distances to keep from each antenna, all that feeds it on; what other antennas of the site add is not in them.
    pub keep_clear: Vec<KeepClearReport>,
    /// Spots of which nothing can be said.
    pub not_judged: Vec<SpotNotJudged>,
}

/// A spot of which nothing can be said.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SpotNotJudged {
    /// Its name; empty where that could not be read.
    pub name: String,
    /// Why.
    pub why: &'static str,
    /// File of its line.
    pub file: String,
    /// Its line, from 1.
    pub line: u32,
}

/// A spot under one set of rules.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SpotReport {
    /// Its name.
    pub name: String,
    /// `public` or `occupational`.
    pub tier: &'static str,
    /// Where it is, in words.
    pub at: String,
    /// Name of the rules.
    pub set: String,
    /// Date of the rules.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dated: Option<String>,
    /// Factor on the field by reflection; on the power density it is its square.
    pub reflection: f64,
    /// `met`, `met-alone` (by this station; nothing says whether others stand on the site), `not-met`, `cannot-tell`,
    /// `cannot-judge` or `refused` (a formula does not hold there).
    pub verdict: Word<ExposureVerdict>,
    /// Sum of the shares of the limits; absent where one source cannot be computed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sum: Option<f64>,
    /// The sum with its expanded uncertainty (k = 2).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sum_with_uncertainty: Option<f64>,
    /// Transmitters above 5 % of their limit.
    pub above_five_percent: Vec<String>,
    /// Each transmitter on each frequency.
    pub sources: Vec<SourceReport>,
    /// What was assumed.
    pub assumptions: Vec<&'static str>,
    /// File of its line.
    pub file: String,
    /// Its line, from 1.
    pub line: u32,
}

/// One transmitter on one band at a spot.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SourceReport {
    /// Tag of the transmitter.
    pub transmitter: String,
    /// Tag of the antenna.
    pub antenna: String,
    /// Its station, where it is another one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub station: Option<String>,
    /// Band as written.
    pub band: String,
    /// Frequency, Hz.
    pub frequency_hz: f64,
    /// Mean power into the antenna over the averaging time, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mean_w: Option<f64>,
    /// Gain in the main beam, dBi.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub gain_dbi: Option<f64>,
    /// Mean EIRP over the averaging time, W.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub eirp_w: Option<f64>,
    /// Its expanded uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// Distance to the nearest part of the antenna, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub distance_m: Option<f64>,
    /// `far`, or `near`: nearer than 2 D²/λ, where the figure is an upper estimate.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub zone: Option<&'static str>,
    /// How far the gain toward the spot is below the peak by the antenna's pattern, dB; absent where none counts.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub down_db: Option<f64>,
    /// Power density with reflection, W/m².
    #[serde(skip_serializing_if = "Option::is_none")]
    pub density_w_m2: Option<f64>,
    /// Electric field strength with reflection, V/m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub electric_v_m: Option<f64>,
    /// Power density averaged over a cylinder around the antenna, with reflection, W/m²; in the near zone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cylinder_w_m2: Option<f64>,
    /// The limit as a power density, W/m².
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit_w_m2: Option<f64>,
    /// The limit in its own unit, in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit: Option<String>,
    /// Citation of the limit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cite: Option<String>,
    /// How sure its text is: `high`, `medium` or `low`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub confidence: Option<&'static str>,
    /// Share of the limit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub share: Option<f64>,
    /// Whether it counts in the sum: a transmitter is on one band at a time, and that with its largest share counts.
    pub counts: bool,
    /// Why there is none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<&'static str>,
}

/// How far to stay away from an antenna.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct KeepClearReport {
    /// Tag of the antenna.
    pub antenna: String,
    /// `public` or `occupational`.
    pub tier: &'static str,
    /// Name of the rules.
    pub set: String,
    /// Distance at which the limits are reached, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub computed_m: Option<f64>,
    /// The same with the uncertainty of the EIRP, m.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub with_uncertainty_m: Option<f64>,
    /// Distance to keep, m: rounded up, never within the antenna's own length.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub keep_m: Option<f64>,
    /// Why there is none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub missing: Option<&'static str>,
}

/// A spot in two states: pairs are then and now, null where there was or is none.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SpotStep {
    /// Its name.
    pub name: String,
    /// Name of the rules.
    pub set: String,
    /// Sum of the shares of the limits.
    pub sum: [Option<f64>; 2],
    /// What is said of it.
    pub verdict: [Option<Word<ExposureVerdict>>; 2],
    /// True if the verdict is worse now, by clauses whose text is not of low confidence.
    pub worse: bool,
    /// True if the limits are exceeded now, by clauses whose text is not of low confidence.
    pub over: bool,
}

impl SpotStep {
    /// Whether it is to be pointed out: another verdict, or the sum moved by more than the last printed digit.
    #[must_use]
    pub fn speaks(&self) -> bool {
        let moved =
            |[a, b]: [f64; 2]| (downlead_quantity::to_db(b / a)).abs() >= super::compare::SAME_DB;
        match self.sum {
            [Some(a), Some(b)] if a > 0.0 => self.verdict[0] != self.verdict[1] || moved([a, b]),
            [a, b] => self.verdict[0] != self.verdict[1] || a != b,
        }
    }
}
