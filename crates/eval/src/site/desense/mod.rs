//! Desense: what the transmitters of a site do to a receiver, as two numbers. Their noise on its frequency raises
//! its floor; their carriers must stay under the level that blocks it. A filter that stops the one does nothing
//! for the other, so the two are never added up.

mod findings;
mod floor;
mod gather;
mod isolation;
mod judge;
mod offset;
mod path;
mod sum;
mod words;

use downlead_base::Loc;
use downlead_station::model::Around;

pub use findings::missing_of;
pub(crate) use findings::{findings, guesses, offsets};
pub use isolation::IsolationResult;
pub(crate) use isolation::check as check_isolations;
pub(crate) use judge::desense;

/// What a transmitter raises the noise by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rise {
    /// dB.
    pub db: f64,
    /// With the uncertainty (k = 2) to the good side.
    pub low_db: f64,
    /// And to the bad side.
    pub high_db: f64,
}

/// Noise of a transmitter at a receiver.
#[derive(Clone, Debug, PartialEq)]
pub struct NoiseAt {
    /// In 1 Hz at the receiver, dBm/Hz.
    pub dbm_hz: f64,
    /// Whether that is the most that can be, because something on the way is not stated.
    pub at_most: bool,
    /// Expanded uncertainty over the receiver's floor (k = 2), dB.
    pub u_db: f64,
    /// What all parts of the way lose, dB.
    pub way_db: f64,
    /// Over the receiver's own floor, dB; negative under it.
    pub over_db: f64,
    /// Desense of the receiver alone.
    pub alone: Rise,
    /// The same over the noise of the site.
    pub on_site: Option<Rise>,
    /// Where the limit is stated, by how much less would do if this were the only one, dB; negative where it is too little.
    pub spare_db: Option<f64>,
    /// By how much more it must be kept off for the limit to hold with all others as they are, dB; none where the others
    /// alone exceed it.
    pub needs_db: Option<f64>,
}

/// Carrier of a transmitter at a receiver.
#[derive(Clone, Debug, PartialEq)]
pub struct CarrierAt {
    /// Level at the receiver, dBm.
    pub dbm: f64,
    /// Whether that is the most that can be, because something on the way is not stated.
    pub at_most: bool,
    /// What all parts of the way lose, dB.
    pub way_db: f64,
    /// What the receiver withstands at that offset, dBm.
    pub blocking_dbm: f64,
    /// By how much it is under that, dB.
    pub under_db: f64,
    /// Expanded uncertainty of that (k = 2), dB.
    pub u_db: f64,
    /// The verdict.
    pub verdict: DesenseVerdict,
}

/// A leg that keeps a noise or a carrier off.
#[derive(Clone, Debug, PartialEq)]
pub struct LegResult {
    /// `DU1.high`.
    pub name: Box<str>,
    /// What it is said to reject, dB.
    pub rejects_db: f64,
}

/// One transmitter beside one receiver.
#[derive(Clone, Debug, PartialEq)]
pub struct Source {
    /// The other station it belongs to; none for one's own.
    pub station: Option<Box<str>>,
    /// Tag of its transmitter; where it has none, the name of its chain.
    pub name: Box<str>,
    /// Frequency of its carrier, Hz.
    pub hz: f64,
    /// Name of its chain.
    pub chain: Loc,
    /// Distance from the receive frequency, Hz.
    pub offset_hz: f64,
    /// Its noise on the receive frequency.
    pub noise: Option<NoiseAt>,
    /// The leg that rejects that.
    pub noise_leg: Option<LegResult>,
    /// Its carrier.
    pub carrier: Option<CarrierAt>,
    /// The leg that rejects that.
    pub carrier_leg: Option<LegResult>,
    /// The isolation between the two antennas, where they are two: what counts, dB, and what the distance gives, where both
    /// are stated.
    pub isolation_db: Option<(f64, Option<f64>)>,
    /// Desense of the receiver alone with the isolation that the distance gives.
    pub by_distance: Option<f64>,
    /// What is not stated of its noise.
    pub noise_missing: Vec<Missing>,
    /// What is not stated of its carrier.
    pub carrier_missing: Vec<Missing>,
}

/// What is missing for a figure.
#[derive(Clone, Debug, PartialEq)]
pub enum Missing {
    /// Noise of the transmitter at this offset.
    Noise {
        /// Tag.
        of: Box<str>,
        /// Hz.
        offset_hz: f64,
    },
    /// Blocking of the receiver at this offset.
    Blocking {
        /// Tag.
        of: Box<str>,
        /// Hz.
        offset_hz: f64,
    },
    /// The receiver's noise figure.
    NoiseFigure(Box<str>),
    /// The power of the transmitter.
    Power(Box<str>),
    /// A part says nothing of this frequency.
    Part {
        /// `DU1.low`.
        name: Box<str>,
        /// Hz.
        hz: f64,
    },
    /// A line of a chain that could not be read.
    Line(Box<str>),
    /// A part whose own loss could not be computed, which is reported there.
    Broken(Box<str>),
    /// An amplifier whose own noise is not stated.
    Amplifier(Box<str>),
    /// The isolation between two antennas at this frequency.
    Isolation {
        /// `A9 of harbour`.
        from: Box<str>,
        /// `A1`.
        to: Box<str>,
        /// Hz.
        hz: f64,
    },
    /// The antenna of a chain: there are several, or it has no tag.
    Antenna(Box<str>),
    /// Two chains meet in a part, and nothing in it distinguishes them.
    Together(Box<str>),
    /// The carrier lies in the receive channel itself.
    InChannel,
    /// The chain is on a range of frequencies.
    Range(Box<str>),
    /// A chain whose frequency is not known.
    NoFrequency(Box<str>),
    /// A station that is not defined.
    NotDefined(Box<str>),
}

/// What is taken because the text does not say it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DesenseAssumed {
    /// No noise from outside.
    NoSiteNoise,
    /// Noise of the surroundings is not given at this frequency.
    NoiseRange,
    /// No other transmitter stands on the site.
    NoOther,
}

/// What a receive channel comes to, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum DesenseVerdict {
    /// Too much, beyond the uncertainty.
    NotMet,
    /// Something that is needed is not stated.
    CannotJudge,
    /// The uncertainty is larger than the margin.
    CannotTell,
    /// The margin and its uncertainty are both below 0.02 dB.
    AtLimit,
    /// No limit is stated.
    NoLimit,
    /// Kept by what is stated; nothing says whether others stand on the site.
    MetAlone,
    /// Kept, beyond the uncertainty.
    Met,
}

impl DesenseVerdict {
    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            DesenseVerdict::NotMet => "not-met",
            DesenseVerdict::CannotJudge => "cannot-judge",
            DesenseVerdict::CannotTell => "cannot-tell",
            DesenseVerdict::AtLimit => "at-the-limit",
            DesenseVerdict::NoLimit => "no-limit",
            DesenseVerdict::MetAlone => "met-alone",
            DesenseVerdict::Met => "met",
        }
    }
}

/// The limit of a desense.
#[derive(Clone, Debug, PartialEq)]
pub struct DesenseLimit {
    /// dB.
    pub db: f64,
    /// Document and clause.
    pub source: Option<Box<str>>,
    /// Its line.
    pub loc: Loc,
}

/// Noise of a receiver.
#[derive(Clone, Debug, PartialEq)]
pub struct Floor {
    /// Its own in 1 Hz, dBm/Hz.
    pub alone_dbm_hz: f64,
    /// With that of the site.
    pub site: Option<SiteFloor>,
}

/// Noise of a receiver on its site.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteFloor {
    /// The surroundings; none where the degradation was read.
    pub around: Option<Around>,
    /// Their noise at the antenna over kT₀b, dB.
    pub external_db: Option<f64>,
    /// In 1 Hz at the receiver, dBm/Hz.
    pub dbm_hz: f64,
}

/// Desense of one receive channel.
#[derive(Clone, Debug, PartialEq)]
pub struct DesenseResult {
    /// Tag of its receiver; where it has none, the name of its chain.
    pub receiver: Box<str>,
    /// Name of its chain.
    pub chain: Loc,
    /// Name of the chain in words.
    pub chain_name: Box<str>,
    /// Hz.
    pub hz: f64,
    /// Its noise.
    pub floor: Option<Floor>,
    /// The transmitters.
    pub sources: Vec<Source>,
    /// What those whose noise is known do together over the floor that counts.
    pub together: Option<Rise>,
    /// The same with those of which only the most that can be is known.
    pub most: Option<Rise>,
    /// The limit.
    pub limit: Option<DesenseLimit>,
    /// The verdict.
    pub verdict: DesenseVerdict,
    /// What is missing besides what is missing of single transmitters.
    pub missing: Vec<Missing>,
    /// What was assumed.
    pub assumed: Vec<DesenseAssumed>,
}

impl Source {
    /// `TX1`, `H1 of harbour`.
    #[must_use]
    pub fn words(&self) -> String {
        match &self.station {
            Some(s) => format!("{} of {s}", self.name),
            None => self.name.to_string(),
        }
    }
}
