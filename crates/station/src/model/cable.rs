//! Cables and how their loss is known.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;
use super::figure::{Meta, NetworkFile, Rating};

/// How a cable's matched loss is known.
#[derive(Clone, Debug, PartialEq)]
pub enum CableLoss {
    /// Two coefficients at the reference temperature: dB/m per √MHz and dB/m per MHz.
    TwoTerm {
        /// Conductor term.
        k1: Measure,
        /// Dielectric term.
        k2: Measure,
    },
    /// Points (Hz, dB/m), rising in frequency, with their places.
    Table(Box<[(f64, Measure, Loc)]>),
    /// Dimensions of a coaxial cable.
    Construction(Construction),
    /// Dimensions of a parallel-wire line.
    Wires(Wires),
    /// A network file of a piece.
    Network {
        /// The two-port.
        file: Box<NetworkFile>,
        /// Length of the piece, m.
        length: Measure,
    },
}

/// A coaxial cable by its dimensions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Construction {
    /// Diameter over the inner conductor, m.
    pub inner: Measure,
    /// Inner diameter of the outer conductor, m.
    pub outer: Measure,
    /// Relative permittivity.
    pub permittivity: Measure,
    /// Loss tangent.
    pub loss_tangent: Measure,
    /// Factor of the inner conductor's stranding on its resistance.
    pub strand: Measure,
    /// Effective diameter of a stranded inner conductor over the one over its strands, for the
    /// impedance; 1 for a solid one.
    pub strand_diameter: Measure,
    /// Factor of the outer conductor's braid on its resistance.
    pub braid: Measure,
    /// Resistivity of the inner conductor, ohm m.
    pub inner_resistivity: Measure,
    /// Resistivity of the outer conductor, ohm m.
    pub outer_resistivity: Measure,
}

/// A parallel-wire line by its dimensions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wires {
    /// Diameter of each wire, m.
    pub diameter: Measure,
    /// Distance of the centres, m.
    pub spacing: Measure,
    /// Effective relative permittivity.
    pub permittivity: Measure,
    /// Resistivity, ohm m.
    pub resistivity: Measure,
}

/// A step of a cable's accuracy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AccuracyStep {
    /// Holds up to this frequency, Hz (infinite for the last).
    pub up_to_hz: f64,
    /// Relative standard uncertainty of the loss in dB.
    pub u_relative: f64,
    /// Whether it is normally distributed (stated with `k`) or rectangular.
    pub normal: bool,
}

/// A cable.
#[derive(Clone, Debug, PartialEq)]
pub struct Cable {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Nominal characteristic impedance, ohm; none when not stated (50 ohm is assumed, or it
    /// follows from the construction).
    pub impedance: Option<Measure>,
    /// Velocity factor.
    pub velocity: Option<Measure>,
    /// Loss.
    pub loss: Option<CableLoss>,
    /// Where the loss stands.
    pub loss_loc: Loc,
    /// Reference temperature of the loss, °C.
    pub reference_c: f64,
    /// Whether the reference temperature was stated.
    pub reference_stated: bool,
    /// About the loss.
    pub meta: Meta,
    /// Valid frequencies, Hz.
    pub valid: Option<(f64, f64)>,
    /// Accuracy steps, rising in frequency; empty if not stated.
    pub accuracy: Box<[AccuracyStep]>,
    /// Name of the cause that its accuracy shares with other cables.
    pub shared: Option<Name>,
    /// Mean power ratings.
    pub ratings: Box<[Rating]>,
    /// Highest working voltage, V rms.
    pub voltage: Option<f64>,
    /// Diameter over the jacket, m.
    pub size: Option<f64>,
    /// Whether the centre conductor is copper-clad steel.
    pub clad: bool,
    /// By which share its loss was found to be larger than the sheet says; its figures are.
    pub recalled: Option<super::Recalled>,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
    /// Whether a figure that enters results is there but could not be read.
    pub broken: bool,
}
