//! Bands, connectors, instruments, and the devices of a library.

use downlead_quantity::Measure;

use super::Name;
use super::figure::{Meta, Rating};
use super::kind::PartKind;
use super::part::Device;

/// Frequencies a chain may be evaluated at.
#[derive(Clone, Debug, PartialEq)]
pub enum BandKind {
    /// One frequency, Hz.
    Single(f64),
    /// A transmit and a receive frequency, Hz; either may be missing.
    Pair {
        /// Transmit.
        transmit: Option<f64>,
        /// Receive.
        receive: Option<f64>,
    },
    /// A range, Hz, evaluated at both edges and the middle.
    Range(f64, f64),
}

/// A band.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Its name.
    pub name: Name,
    /// Its frequencies.
    pub kind: BandKind,
}

/// Loss law of a connector.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ConnectorLoss {
    /// `k √(f/GHz)` dB; what is uncertain is `k`.
    Root(Measure),
    /// Constant dB.
    Constant(Measure),
}

impl ConnectorLoss {
    /// Loss of one pair at `hz`, dB.
    #[must_use]
    pub fn at(self, hz: f64) -> Measure {
        match self {
            ConnectorLoss::Root(k) => k.scaled(libm::sqrt(hz * 1e-9)),
            ConnectorLoss::Constant(l) => l,
        }
    }
}

/// A connector pair or adapter.
#[derive(Clone, Debug, PartialEq)]
pub struct Connector {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Families of its two sides; equal for a mated pair.
    pub families: Option<(Box<str>, Box<str>)>,
    /// Loss per pair.
    pub loss: Option<ConnectorLoss>,
    /// Impedance bump: ohm and electrical length in vacuum, m.
    pub bump: Option<(Measure, Measure)>,
    /// SWR of one pair between matched lines, where it has no bump.
    pub swr: Option<Measure>,
    /// Highest frequency, Hz.
    pub limit_hz: Option<f64>,
    /// Mean power rating; falls with the root of frequency.
    pub rating: Option<Rating>,
    /// Working voltage, V rms.
    pub voltage: Option<f64>,
    /// Source.
    pub meta: Meta,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
    /// Whether its loss or bump is there but could not be read.
    pub broken: bool,
}

/// How an instrument's accuracy is stated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Accuracy {
    /// Share of the reading: standard uncertainty, relative.
    OfReading(f64),
    /// Share of full scale: standard uncertainty, relative to the scale.
    OfFullScale(f64),
    /// dB: standard uncertainty.
    Decibel(f64),
}

/// A measuring instrument.
#[derive(Clone, Debug, PartialEq)]
pub struct Instrument {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Accuracy.
    pub accuracy: Option<Accuracy>,
    /// Whether that is normally distributed (stated with `k`) or rectangular.
    pub accuracy_normal: bool,
    /// Full scale, W.
    pub scale_w: Option<f64>,
    /// Frequency range, Hz.
    pub band: Option<(f64, f64)>,
    /// Resolution, W.
    pub resolution_w: Option<f64>,
    /// Calibration date as written.
    pub calibrated: Option<Box<str>>,
    /// Date the next calibration is due, as written.
    pub due: Option<Box<str>>,
    /// Calibration certificates, each a file: the correction of its readings and how well it is known.
    pub certificates: Box<[Name]>,
    /// By how much its readings were found to be off.
    pub recalled: Option<Recalled>,
    /// What of its error does not cancel between two readings: standard uncertainty, relative.
    pub linearity: Option<f64>,
    /// Whether that is a share of full scale, not of the reading.
    pub linearity_of_scale: bool,
    /// Spread of one reading: standard uncertainty, relative.
    pub repeatability: Option<f64>,
    /// Directivity of a reflection meter, dB.
    pub directivity_db: Option<f64>,
    /// Whether its accuracy, or what says how far it is off, is there but could not be read.
    pub broken: bool,
}

/// What was found out later about an instrument or the sheet of a cable.
#[derive(Clone, Debug, PartialEq)]
pub struct Recalled {
    /// By which share it is too high (an instrument's readings) or higher than was thought (a cable's
    /// loss): 0.06 for 6 %.
    pub share: f64,
    /// From which day on, as written; from the beginning without.
    pub since: Option<Box<str>>,
}

/// A reusable device definition of a library.
#[derive(Clone, Debug, PartialEq)]
pub struct DeviceClass {
    /// Name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Kind of part.
    pub kind: PartKind,
    /// Its figures.
    pub device: Device,
    /// Source.
    pub meta: Meta,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
}
