//! Links between stations.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;

/// A chain of a station, at one end of a hop.
#[derive(Clone, Debug, PartialEq)]
pub struct End {
    /// The chain.
    pub chain: Name,
    /// Its station.
    pub station: Name,
}

/// One direction of a link.
#[derive(Clone, Debug, PartialEq)]
pub struct Hop {
    /// What sends.
    pub from: End,
    /// What hears.
    pub to: End,
    /// The line.
    pub loc: Loc,
}

/// A line `hop` that could not be read: it is not judged, and every output says so.
#[derive(Clone, Debug, PartialEq)]
pub struct UnreadHop {
    /// What follows its word, as written.
    pub text: Box<str>,
    /// The line.
    pub loc: Loc,
}

/// Noise at the receiving antennas.
#[derive(Clone, Debug, PartialEq)]
pub enum Noise {
    /// By the surroundings: the word of the text.
    Around(Around),
    /// Degradation of the receiver as read, dB.
    Read(Measure),
}

/// What surrounds an antenna.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "named after the words")]
pub enum Around {
    City,
    Residential,
    Rural,
    QuietRural,
}

impl Around {
    /// All, by word.
    pub const ALL: [(&'static str, Around); 4] = [
        ("city", Around::City),
        ("residential", Around::Residential),
        ("rural", Around::Rural),
        ("quiet-rural", Around::QuietRural),
    ];
}

/// Noise of a site.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteNoise {
    /// How much.
    pub noise: Noise,
    /// The station; both where none is named.
    pub at: Option<Name>,
    /// The line.
    pub loc: Loc,
}

/// What must arrive.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// Criterion, dB.
    pub ratio_db: f64,
    /// Its word: `sinad`.
    pub word: Box<str>,
    /// Share of the places, 0 to 1; a half where none is stated.
    pub share: Option<f64>,
    /// One standard deviation from place to place, dB.
    pub spread_db: Option<f64>,
    /// The line.
    pub loc: Loc,
}

/// A model of the loss between stations.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "named after the words")]
pub enum Model {
    FreeSpace,
    Bullington,
    OneEdge,
    Cascade,
    TwoRay,
    HataOpen,
    HataSuburban,
    HataUrban,
}

impl Model {
    /// All.
    pub const ALL: [Model; 8] = [
        Model::FreeSpace,
        Model::Bullington,
        Model::OneEdge,
        Model::Cascade,
        Model::TwoRay,
        Model::HataOpen,
        Model::HataSuburban,
        Model::HataUrban,
    ];

    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Model::FreeSpace => "free-space",
            Model::Bullington => "bullington",
            Model::OneEdge => "one-edge",
            Model::Cascade => "cascade",
            Model::TwoRay => "two-ray",
            Model::HataOpen => "hata-open",
            Model::HataSuburban => "hata-suburban",
            Model::HataUrban => "hata-urban",
        }
    }
}

/// A link.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// Name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Head line.
    pub loc: Loc,
    /// Hops, in the order of the text.
    pub hops: Box<[Hop]>,
    /// Lines of hops that could not be read.
    pub unread_hops: Box<[UnreadHop]>,
    /// The table with the profile.
    pub profile: Option<Name>,
    /// Distance, m.
    pub distance: Option<(Measure, Loc)>,
    /// Effective radius of the earth over the real one.
    pub k: Option<f64>,
    /// Noise at the receiving antennas.
    pub noise: Box<[SiteNoise]>,
    /// What must arrive.
    pub need: Option<Need>,
    /// Model, and where it stands.
    pub model: Option<(Model, Loc)>,
    /// Distances to list, m.
    pub coverage: Box<[f64]>,
    /// Whether a line that enters results is there but could not be read.
    pub broken: bool,
}
