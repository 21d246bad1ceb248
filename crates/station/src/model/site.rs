//! What a station says of the site it shares with others.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;
use super::figure::{About, Figure};
use super::link::Noise;

/// That another station stands on the same site.
#[derive(Clone, Debug, PartialEq)]
pub struct Beside {
    /// Which.
    pub station: Name,
    /// Its line.
    pub loc: Loc,
}

/// That no other station stands on the site.
#[derive(Clone, Debug, PartialEq)]
pub struct Alone {
    /// Who has looked, and when.
    pub by: Option<Box<str>>,
    /// Its line.
    pub loc: Loc,
}

/// The site of a station.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Site {
    /// Other stations, each once.
    pub beside: Box<[Beside]>,
    /// That there is none.
    pub alone: Option<Alone>,
    /// Isolation between antennas.
    pub isolations: Box<[Isolation]>,
    /// Noise from outside at its antennas, and the line.
    pub noise: Option<(Noise, Loc)>,
}

/// An antenna of the site.
#[derive(Clone, Debug, PartialEq)]
pub struct AntennaOf {
    /// Its tag.
    pub antenna: Name,
    /// Its station, where that is another one.
    pub station: Option<Name>,
}

/// What an isolation rests on.
#[derive(Clone, Debug, PartialEq)]
pub enum Isolated {
    /// Measured between the connectors, dB.
    Measured(Figure),
    /// Distance of the centres, exactly above each other, m.
    Vertical(Measure),
    /// Distance at one height, m.
    Horizontal(Measure),
}

/// How much less of what one antenna radiates another one gets, from connector to connector.
#[derive(Clone, Debug, PartialEq)]
pub struct Isolation {
    /// The two antennas; it holds both ways.
    pub ends: [AntennaOf; 2],
    /// What it rests on.
    pub by: Isolated,
    /// What is said about it.
    pub meta: About,
    /// Its line.
    pub loc: Loc,
}

/// A figure that holds at an offset from a frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct AtOffset {
    /// Value and what is said about it.
    pub figure: Figure,
    /// The offset, Hz.
    pub offset_hz: f64,
    /// Whether it holds further off too.
    pub beyond: bool,
}
