//! What a chain begins and ends with: transmitters, receivers, antennas.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;
use super::figure::{Figure, NetworkFile, Rating};
use super::list::List;
use super::site::AtOffset;

/// What a power figure counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PowerKind {
    /// Without modulation.
    Carrier,
    /// Peak envelope power.
    Pep,
    /// Mean.
    Mean,
}

impl PowerKind {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            PowerKind::Carrier => "carrier",
            PowerKind::Pep => "pep",
            PowerKind::Mean => "mean",
        }
    }
}

/// A modulation mode.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mode {
    /// Frequency modulation.
    Fm,
    /// Constant-envelope data.
    Data,
    /// Morse.
    Cw,
    /// Single sideband speech.
    Ssb,
    /// Single sideband speech, processed.
    SsbProcessed,
    /// Amplitude modulation.
    Am,
}

impl Mode {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Mode::Fm => "fm",
            Mode::Data => "data",
            Mode::Cw => "cw",
            Mode::Ssb => "ssb",
            Mode::SsbProcessed => "ssb-processed",
            Mode::Am => "am",
        }
    }
}

/// Transmitter.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Transmitter {
    /// Power, W, with the kind.
    pub power: Box<[(Figure, Option<PowerKind>)]>,
    /// Mode.
    pub mode: Option<Mode>,
    /// Mean over PEP while keyed, overriding the mode's.
    pub duty: Option<f64>,
    /// Share of the time keyed.
    pub keyed: Option<f64>,
    /// Time within which that share holds, s.
    pub keyed_in_s: Option<f64>,
    /// SWR at which it turns itself down.
    pub foldback_swr: Option<f64>,
    /// Whether its mode, duty or keyed share is there but could not be read.
    pub broken_duty: bool,
    /// Width of what it sends, Hz.
    pub bandwidth_hz: Option<f64>,
    /// Noise beside the carrier in 1 Hz, dBc/Hz.
    pub noise: List<AtOffset>,
    /// Whether such a noise is there but could not be read.
    pub broken_noise: bool,
}

/// A level that a receiver needs for a criterion.
#[derive(Clone, Debug, PartialEq)]
pub struct Sensitivity {
    /// Level, dBm.
    pub level: Measure,
    /// Criterion in words, `12 dB sinad`.
    pub criterion: Option<Box<str>>,
}

/// Receiver.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Receiver {
    /// Sensitivities, each for a criterion of its own; the first is the one that chains are judged by.
    pub sensitivities: Vec<Sensitivity>,
    /// Noise figure, dB.
    pub noise_figure: Option<Measure>,
    /// Width of its channel, Hz.
    pub bandwidth_hz: Option<f64>,
    /// Levels of a carrier that it just withstands, dBm.
    pub blocking: List<AtOffset>,
}

impl Receiver {
    /// The sensitivity that its chain is judged by, dBm.
    #[must_use]
    pub fn sensitivity(&self) -> Option<Measure> {
        self.sensitivities.first().map(|s| s.level)
    }

    /// The criterion of that.
    #[must_use]
    pub fn criterion(&self) -> Option<&str> {
        self.sensitivities.first()?.criterion.as_deref()
    }
}

/// A gain of an antenna.
#[derive(Clone, Debug, PartialEq)]
pub struct Gain {
    /// dBi.
    pub figure: Figure,
    /// Written in dBd.
    pub dipole: bool,
    /// Includes the mismatch.
    pub realized: bool,
    /// Is a directivity: efficiency still to be taken off.
    pub directivity: bool,
}

/// A complex impedance.
#[derive(Clone, Debug, PartialEq)]
pub struct Impedance {
    /// When it holds, place, source; value is the resistance in ohm.
    pub resistance: Figure,
    /// Reactance, ohm.
    pub reactance: Measure,
}

/// How far the gain of an antenna is below its peak, by the angle above the horizon.
#[derive(Clone, Debug, PartialEq)]
pub struct Pattern {
    /// Bands it is of; all where none is named.
    pub on: Box<[Name]>,
    /// Angle, degrees, and attenuation, dB, in rising order of the angle.
    pub rows: Box<[(f64, f64)]>,
    /// Its line.
    pub loc: Loc,
}

impl Antenna {
    /// The pattern on a band, if one is stated.
    #[must_use]
    pub fn pattern_on(&self, band: &str) -> Option<&Pattern> {
        let of = |p: &&Pattern| p.on.iter().any(|b| *b.text == *band);
        let mut all = self.pattern.iter();
        all.find(of)
            .or_else(|| self.pattern.iter().find(|p| p.on.is_empty()))
    }
}

/// Antenna or dummy load.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Antenna {
    /// Gains.
    pub gain: Box<[Gain]>,
    /// SWR figures.
    pub swr: Box<[Figure]>,
    /// Impedances.
    pub impedance: Box<[Impedance]>,
    /// One-ports with its impedance.
    pub network: Box<[NetworkFile]>,
    /// Efficiency, 0 to 1.
    pub efficiency: Option<Measure>,
    /// How its gain falls off from the peak.
    pub pattern: Box<[Pattern]>,
    /// Height above ground, m.
    pub height_agl: Option<Measure>,
    /// Length from its highest point down, m.
    pub size: Option<Measure>,
    /// Height above average terrain, m.
    pub height_haat: Option<Measure>,
    /// Mean power rating.
    pub rating: Option<Rating>,
    /// Whether what it reflects is stated but could not be read.
    pub broken_match: bool,
    /// Whether a gain or an efficiency is there but could not be read.
    pub broken_gain: bool,
}
