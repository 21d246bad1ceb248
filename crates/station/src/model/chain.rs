//! Chains and stations.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;
use super::list::List;
use super::node::Node;
use super::part::Part;

/// Place of a part: where its temperature comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Its name.
    pub name: Name,
    /// Temperature, °C.
    pub temperature: Option<Measure>,
    /// Whether the temperature is there but could not be read.
    pub broken: bool,
}

/// A band in a chain's head.
#[derive(Clone, Debug, PartialEq)]
pub enum BandRef {
    /// By name.
    Named(Name),
    /// A frequency, Hz, as written.
    Frequency(f64, Name),
}

impl BandRef {
    /// As it is written.
    #[must_use]
    pub fn name(&self) -> &Name {
        match self {
            BandRef::Named(n) | BandRef::Frequency(_, n) => n,
        }
    }
}

/// Direction of a chain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Direction {
    /// From the transmitter to the antenna.
    Transmit,
    /// From the antenna to the receiver.
    Receive,
}

impl Direction {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Direction::Transmit => "transmit",
            Direction::Receive => "receive",
        }
    }
}

/// A branch of a divider in a chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Branch {
    /// Name, or its number from 1.
    pub name: Box<str>,
    /// Where.
    pub loc: Loc,
    /// Its steps.
    pub steps: Box<[Step]>,
}

/// One line of a chain.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// A part of the station by tag.
    Use {
        /// Tag.
        tag: Name,
        /// Port.
        port: Option<Box<Name>>,
        /// The whole line.
        loc: Loc,
        /// Branches, for a divider.
        branches: List<Branch>,
    },
    /// A part written in the chain.
    Part {
        /// The part.
        part: Box<Part>,
        /// Branches, for a divider.
        branches: List<Branch>,
    },
    /// A statement at the node.
    Node(Box<Node>, Loc),
    /// A line that was not understood: results after it are incomplete.
    Broken(Loc),
}

/// How the fields of a divider's branches add.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phasing {
    /// In phase in the main beam.
    InPhase,
    /// Not at all: each branch radiates for itself.
    Apart,
}

/// A chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Chain {
    /// Name.
    pub name: Name,
    /// Head line.
    pub loc: Loc,
    /// Bands.
    pub bands: Box<[BandRef]>,
    /// Direction, if stated.
    pub direction: Option<Direction>,
    /// Steps.
    pub steps: Box<[Step]>,
    /// Branch phasing, if stated.
    pub phasing: Option<Phasing>,
}

/// A station.
#[derive(Clone, Debug, PartialEq)]
pub struct Station {
    /// Tag.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Places.
    pub places: Box<[Place]>,
    /// Default join.
    pub joins: Option<Name>,
    /// Parts.
    pub parts: Box<[Part]>,
    /// Chains.
    pub chains: Box<[Chain]>,
    /// Position, degrees north and east.
    pub position: Option<(f64, f64)>,
    /// Datum as written.
    pub datum: Option<Box<str>>,
    /// Ground above mean sea level, m.
    pub ground_amsl: Option<f64>,
    /// Licences and rules it is under.
    pub under: Box<[super::rules::Under]>,
    /// The site it shares with other stations.
    pub site: super::Site,
    /// Places where people can be.
    pub spots: Box<[super::Spot]>,
    /// Lines of such places that could not be read.
    pub unread_spots: Box<[super::UnreadSpot]>,
    /// The newest date in its text: there is no clock.
    pub newest: Option<Box<str>>,
}
