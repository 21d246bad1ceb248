//! Links between stations: what arrives of what is sent, and whether it suffices.
//!
//! The uncertainty of a result is that of the equipment and of the stated distance; how far levels spread from
//! place to place is kept out of it and counts as a share of the places.

mod budget;
mod lengths;
mod models;
mod pattern;
mod profile;

use downlead_base::Loc;
use downlead_physics::path::{Cascade, Clearance, Edge, Outside, Surroundings};
use downlead_station::model::Model;

pub(crate) use budget::link;
pub use models::Refused;
pub use pattern::Taken;

/// What a link comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct LinkResult {
    /// Its hops, each at each frequency that both chains have.
    pub hops: Vec<HopResult>,
    /// Hops of which nothing can be computed.
    pub not_judged: Vec<HopNotJudged>,
    /// Whether lengths of the path contradict each other.
    pub lengths_differ: bool,
    /// What was taken because the text does not say it.
    pub assumed: Vec<LinkAssumed>,
    /// Points of the profile: distance from the first end and height of the ground, m.
    pub profile: Vec<(f64, f64)>,
    /// Effective radius of the earth over the real one.
    pub k: f64,
}

/// A hop of which nothing can be computed.
#[derive(Clone, Debug, PartialEq)]
pub struct HopNotJudged {
    /// The line.
    pub loc: Loc,
    /// `talk of car to talk-in of hill`, or what its line says where that could not be read.
    pub hop: Box<str>,
    /// Why.
    pub why: WhyHop,
}

/// Why nothing of a hop can be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyHop {
    /// Its line could not be read.
    LineHasError,
    /// A station or chain of it is not there.
    UnknownEnd,
    /// A chain of it runs the other way.
    Direction,
    /// A chain of it has no result.
    NoResult,
    /// Its chains have no frequency in common.
    Frequency,
}

impl WhyHop {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            WhyHop::LineHasError => "the line has an error",
            WhyHop::UnknownEnd => "a station or chain of it is not defined",
            WhyHop::Direction => "a chain of it runs the other way",
            WhyHop::NoResult => "a chain of it has no result",
            WhyHop::Frequency => "its chains have no frequency in common",
        }
    }
}

/// What is taken because the text does not say it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "each has its sentence below")]
pub enum LinkAssumed {
    K43,
    MainBeam,
    Pattern,
    PatternOrMainBeam,
    Polarisation,
    NoClutter,
    NoSiteNoise,
    HighestPoint,
    Datum,
}

impl LinkAssumed {
    /// The sentence.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            LinkAssumed::K43 => "a k factor of 4/3: none is stated",
            LinkAssumed::Pattern => {
                "the patterns of both antennas, on a straight line between their rows, toward the other end or the edge between"
            }
            LinkAssumed::PatternOrMainBeam => {
                "an antenna with a pattern counts by it toward the other end or the edge between; another is in the main beam"
            }
            LinkAssumed::MainBeam => "each antenna is in the main beam of the other",
            LinkAssumed::Polarisation => "both antennas have the same polarisation",
            LinkAssumed::NoClutter => {
                "nothing stands on the ground: the profile says nothing of it"
            }
            LinkAssumed::NoSiteNoise => "no noise from outside: no `site-noise` is stated",
            LinkAssumed::HighestPoint => {
                "an antenna without a `size` radiates from its stated height above ground"
            }
            LinkAssumed::Datum => "the ground at the ends is that of the profile",
        }
    }
}

/// What no link takes into account.
pub const LEFT_OUT: &[&str] = &[
    "buildings and trees",
    "reflection by the sea",
    "ducting and troposcatter",
    "the addition of a smooth earth",
    "seasons and weather (gas and rain: below 0.02 dB/km under 3 GHz)",
    "noise and carriers of transmitters on the site",
];

/// What a hop comes to, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LinkVerdict {
    /// Too little arrives, beyond the uncertainty.
    NotMet,
    /// Something that is needed is not stated or could not be computed.
    CannotJudge,
    /// The uncertainty is larger than what is left.
    CannotTell,
    /// What is left and its uncertainty are both below 0.02 dB.
    AtLimit,
    /// Nothing says what is needed.
    NoNeed,
    /// Enough arrives, beyond the uncertainty.
    Met,
}

impl LinkVerdict {
    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            LinkVerdict::NotMet => "not-met",
            LinkVerdict::CannotJudge => "cannot-judge",
            LinkVerdict::CannotTell => "cannot-tell",
            LinkVerdict::AtLimit => "at-the-limit",
            LinkVerdict::NoNeed => "no-need",
            LinkVerdict::Met => "met",
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> String {
        self.word().replace('-', " ")
    }
}

/// What is missing for a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "each has its sentence below")]
pub enum Missing {
    Line,
    Lengths,
    Eirp,
    Gain,
    Sensitivity,
    Criterion,
    NoiseFigure,
    NoiseRange,
    Distance,
    Heights,
    Profile,
    Sight,
    Model,
    Terrain,
    OneTerrain,
}

impl Missing {
    /// The sentence.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Missing::Line => "a line of the link could not be read",
            Missing::Lengths => "two lengths of the path contradict each other",
            Missing::Eirp => "what the sending chain radiates is not known",
            Missing::Gain => "the gain of the receiving antenna is not known",
            Missing::Sensitivity => "the sensitivity of the receiver at its antenna is not known",
            Missing::Criterion => "the receiver states no sensitivity for this criterion",
            Missing::NoiseFigure => {
                "the receiver has no noise figure, so the effect of noise from outside is not known"
            }
            Missing::NoiseRange => "noise of such a place is not given at this frequency",
            Missing::Distance => {
                "the distance: state `distance`, a `profile`, or the `position` and datum of both stations"
            }
            Missing::Heights => {
                "the height of both antennas above ground, or the ground below them"
            }
            Missing::Profile => "the profile could not be used",
            Missing::Sight => {
                "the stations are not in sight over a smooth earth, where free space says nothing: give a `profile`"
            }
            Missing::Model => "the model does not hold here",
            Missing::Terrain => {
                "the ground between is not known, and free space is the least loss that there can be: give a `profile`"
            }
            Missing::OneTerrain => {
                "another model of the same terrain turns the verdict: measure, or take a profile with more points"
            }
        }
    }
}

/// What a model makes of the path.
#[derive(Clone, Debug, PartialEq)]
pub struct Modelled {
    /// The model.
    pub model: Model,
    /// Loss between isotropic antennas, dB, or why it is not computed.
    pub loss_db: Result<f64, Refused>,
}

/// What the terrain does, by Bullington's construction.
#[derive(Clone, Debug, PartialEq)]
pub struct TerrainResult {
    /// The one edge.
    pub edge: Edge,
    /// Whether the antennas see each other over the terrain.
    pub in_sight: bool,
    /// Loss by it, dB.
    pub loss_db: f64,
    /// Clearance of each point of the profile, from the sending end.
    pub clearances: Vec<Clearance>,
    /// The same loss with other k factors.
    pub other_k: [(f64, f64); 2],
    /// Heights of the sending and the receiving antenna above sea level, m.
    pub ends_m: (f64, f64),
    /// Whether the profile runs from the receiving end in the table.
    pub turned: bool,
    /// The cascade of edges, where there is one.
    pub(crate) cascade: Option<Cascade>,
}

/// Heights of the antennas at the two ends.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Ends {
    /// Above ground, m: of the sending and of the receiving antenna.
    pub(crate) agl_m: Option<(f64, f64)>,
    /// Above sea level, m.
    pub(crate) amsl_m: Option<(f64, f64)>,
    /// Of the higher antenna above the land at the other end, m.
    pub(crate) base_m: Option<f64>,
}

/// Noise from outside at the receiving antenna.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoiseUsed {
    /// Median noise figure of a lossless antenna there, dB above kT0b, where it follows from the surroundings.
    pub external_db: Option<f64>,
    /// What it follows from: the surroundings and the noise figure of the receiver at its antenna, dB.
    pub(crate) by: Option<(Surroundings, f64)>,
    /// Its line.
    pub(crate) loc: Loc,
    /// By how much it raises what the receiver needs, dB.
    pub degradation_db: f64,
    /// Standard uncertainty of that, dB.
    pub u_db: f64,
}

/// What is needed, and what is left of the margin.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// Criterion: `20 dB sinad`.
    pub criterion: Box<str>,
    /// Level that the receiver needs for it without noise from outside, dBm.
    pub receiver_dbm: f64,
    /// Level it needs with that noise, dBm.
    pub needed_dbm: f64,
    /// Level at the terminals of the receiving antenna, dBm.
    pub(crate) at_antenna_dbm: f64,
    /// What the receiving chain adds to what is needed there, dB.
    pub(crate) chain_db: f64,
    /// Lines of the receiver and of what is needed.
    pub(crate) from: (Loc, Loc),
    /// Margin at half of the places, dB.
    pub margin_db: f64,
    /// Share of the places, 0 to 1.
    pub share: f64,
    /// One standard deviation from place to place, dB.
    pub spread_db: Option<f64>,
    /// What that share takes of the margin, dB.
    pub places_db: f64,
    /// What is left, dB.
    pub left_db: f64,
    /// Expanded uncertainty (k = 2) of what is left, by equipment and distance, dB.
    pub u_db: f64,
}

/// One hop at one frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct HopResult {
    /// The line.
    pub loc: Loc,
    /// `talk-out-2m of pellgarrow`.
    pub from: Box<str>,
    /// `hear of car`.
    pub to: Box<str>,
    /// Frequency, Hz.
    pub hz: f64,
    /// What is radiated, W, and its expanded uncertainty, dB.
    pub eirp: Option<(f64, f64)>,
    /// Distance along the ground, m, and its standard uncertainty, m.
    pub distance: Option<(f64, f64)>,
    /// Distance between the antennas, m.
    pub slant_m: Option<f64>,
    /// Radio horizon of both antennas over a smooth earth, m; none where a height is missing.
    pub horizon_m: Option<f64>,
    /// Loss of free space, dB.
    pub free_space_db: Option<f64>,
    /// The model that counts.
    pub model: Model,
    /// All models that were asked for or can be computed with the profile.
    pub models: Vec<Modelled>,
    /// What the terrain does.
    pub terrain: Option<TerrainResult>,
    /// Heights of the antennas.
    pub(crate) ends: Ends,
    /// Names of the two chains, and the place of the receiving antenna.
    pub(crate) places: (Loc, Loc, Option<Loc>),
    /// What the patterns of the sending and of the receiving antenna take.
    pub patterns: (Option<Taken>, Option<Taken>),
    /// Gain of the receiving antenna, dBi.
    pub gain_dbi: Option<f64>,
    /// Loss of the receiving chain, dB.
    pub receive_loss_db: Option<f64>,
    /// Level at the receiver, dBm.
    pub level_dbm: Option<f64>,
    /// Noise from outside.
    pub noise: Option<NoiseUsed>,
    /// Numbers of the verdict.
    pub judged: Option<Judged>,
    /// Margin in free space at further distances, m and dB, before the share of the places.
    pub coverage: Vec<(f64, f64)>,
    /// The verdict.
    pub verdict: LinkVerdict,
    /// What is missing for one.
    pub missing: Vec<Missing>,
}

impl HopResult {
    /// What the patterns of both antennas take, dB.
    #[must_use]
    pub fn pattern_db(&self) -> f64 {
        let of = |t: &Option<Taken>| t.map_or(0.0, |t| t.down_db);
        of(&self.patterns.0) + of(&self.patterns.1)
    }

    /// Loss of the model that counts, dB.
    #[must_use]
    pub fn loss_db(&self) -> Option<f64> {
        let counts = self.models.iter().find(|m| m.model == self.model)?;
        counts.loss_db.as_ref().ok().copied()
    }
}

/// Why a figure keeps a model from being used, in words.
#[must_use]
pub fn outside_words(o: &Outside) -> String {
    use downlead_physics::path::HataLimit;
    use downlead_quantity::{frequency, number};
    let (what, show): (&str, &dyn Fn(f64) -> String) = match o.what {
        HataLimit::Frequency => ("the frequency", &frequency),
        HataLimit::Base => ("the height of the higher antenna", &|m| {
            format!("{} m", number(m, 3))
        }),
        HataLimit::Mobile => ("the height of the lower antenna", &|m| {
            format!("{} m", number(m, 3))
        }),
        HataLimit::Distance => ("the distance", &|m| format!("{} km", number(m / 1e3, 3))),
    };
    format!(
        "{what} is {}, and it holds from {} to {}",
        show(o.value),
        show(o.range.0),
        show(o.range.1)
    )
}
