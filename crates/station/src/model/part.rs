//! Parts of a station or chain, by kind.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;
use super::ends::{Antenna, Receiver, Transmitter};
use super::figure::{About, Figure, NetworkFile, Rating};
use super::kind::PartKind;
use super::list::List;

/// Length of a line as stated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LineLength {
    /// Metres, with standard uncertainty.
    Metres(Measure),
    /// Electrical length.
    Wavelengths {
        /// Wavelengths in the line, with standard uncertainty.
        length: Measure,
        /// The frequency they hold at, Hz; where none is stated, the chain's.
        at_hz: Option<f64>,
    },
}

/// Run, jumper or tail.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Length; none when a fixed loss is given.
    pub length: Option<LineLength>,
    /// Where the length stands, and whether it was written in feet or inches.
    pub length_loc: Loc,
    /// Whether the length is in feet, inches or yards.
    pub imperial: bool,
    /// Cable.
    pub cable: Option<Name>,
    /// Fixed loss instead of a cable, dB.
    pub loss: List<Figure>,
    /// Two-ports of the whole line instead.
    pub network: List<NetworkFile>,
    /// Place.
    pub place: Option<Name>,
    /// Temperature at the part itself, °C.
    pub temperature: Option<Box<Measure>>,
    /// What each of its ends reflects, as SWR.
    pub swr: List<Figure>,
    /// Loss added by age or water, dB.
    pub added: List<Figure>,
    /// Further loss when wet, dB.
    pub wet: List<Figure>,
    /// Whether a figure that enters results is there but could not be read.
    pub broken: bool,
}

/// A port of a device.
#[derive(Clone, Debug, PartialEq)]
pub struct Port {
    /// Name; empty for a device with a single path.
    pub name: Name,
    /// Loss between this port and the common one (or through), dB.
    pub loss: Box<[Figure]>,
    /// Pass bands, Hz.
    pub passes: List<(f64, f64)>,
    /// Two-ports between this port and the common one (or through), which count before a loss.
    pub network: List<NetworkFile>,
    /// What it keeps off, dB: loss between this port and the common one at other frequencies, at
    /// one of them, on a band, or wherever nothing else is stated.
    pub rejects: List<Figure>,
}

/// Any two-port or branching device other than a line or connector.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Device {
    /// Definition it is an example of.
    pub class: Option<Name>,
    /// Ports.
    pub ports: Box<[Port]>,
    /// Isolation between ports, dB.
    pub isolation: Option<Measure>,
    /// Reflection of each port as SWR.
    pub swr: List<Figure>,
    /// Mean power rating.
    pub rating: Option<Box<Rating>>,
    /// Highest peak voltage, V rms.
    pub voltage: Option<f64>,
    /// Gain, dB (amplifiers).
    pub gain: List<Figure>,
    /// Noise figure, dB.
    pub noise_figure: Option<Measure>,
    /// Coupling of a coupler, dB.
    pub coupling: Option<Measure>,
    /// Number of branches of a divider.
    pub ways: Option<u32>,
    /// Excess loss of a divider, dB.
    pub excess: List<Figure>,
    /// Of a divider that divides unequally: the share of the power each branch gets, 0 to 1, in
    /// the order of the branches; together at most 1.
    pub split: List<Measure>,
    /// Of a divider: whether its branches are just joined in parallel, with nothing that isolates
    /// them.
    pub tee: bool,
    /// Of a balun: impedance of the side away from the transmitter over that of the transmitter's
    /// side.
    pub ratio: Option<Measure>,
    /// Of a balun: where its loss sits.
    pub sits: Option<Sits>,
    /// Whether it lies the other way round than the power flows on transmit (of a receive
    /// amplifier: than the signal flows). A part that stands in a file of its own has it there.
    pub reversed: bool,
    /// Place.
    pub place: Option<Name>,
    /// Temperature, °C.
    pub temperature: Option<Box<Measure>>,
    /// Whether a figure that enters results is there but could not be read.
    pub broken: bool,
}

/// Where the loss of a balun sits: at other impedances than that of the statement the two lose
/// different amounts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sits {
    /// In series with the line: it grows with the current.
    Series,
    /// Across the line: it grows with the voltage.
    Shunt,
}

impl Sits {
    /// Both.
    pub const ALL: [Sits; 2] = [Sits::Series, Sits::Shunt];

    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Sits::Series => "series",
            Sits::Shunt => "shunt",
        }
    }
}

/// Figures of a part by kind.
#[derive(Clone, Debug, PartialEq)]
#[allow(missing_docs, reason = "named after the kinds")]
pub enum PartData {
    Transmitter(Box<Transmitter>),
    Receiver(Box<Receiver>),
    Transceiver(Box<(Transmitter, Receiver)>),
    Line(Box<Line>),
    /// Count and connector or adapter name.
    Connector(u32, Box<Name>),
    Device(Box<Device>),
    Antenna(Box<Antenna>),
    /// The statement could not be understood; the chain is incomplete there.
    Broken,
}

impl PartData {
    /// What it sends, for a transmitter or transceiver.
    #[must_use]
    pub fn transmitter(&self) -> Option<&Transmitter> {
        match self {
            PartData::Transmitter(t) => Some(t),
            PartData::Transceiver(both) => Some(&both.0),
            _ => None,
        }
    }

    /// What it hears, for a receiver or transceiver.
    #[must_use]
    pub fn receiver(&self) -> Option<&Receiver> {
        match self {
            PartData::Receiver(r) => Some(r),
            PartData::Transceiver(both) => Some(&both.1),
            _ => None,
        }
    }
}

/// A part.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Kind.
    pub kind: PartKind,
    /// Tag, if it has one.
    pub tag: Option<Name>,
    /// The whole statement without its block.
    pub loc: Loc,
    /// Families of its ends, if stated.
    pub ends: Option<Box<(Box<str>, Box<str>)>>,
    /// Qualifiers of the statement.
    pub meta: About,
    /// Figures.
    pub data: PartData,
}
