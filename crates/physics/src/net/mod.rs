//! A feed chain as a network: each part described once, generic over the scalar.
//!
//! A [`part::Part`] turns its stated inputs into elementary networks ([`element::El`]) in 50 ohm,
//! over any [`scalar::Real`]: a plain number (value), a dual number (value and all derivatives),
//! lanes (eight samples side by side) or a recorder (derivation). [`solve::Tail`] solves chains
//! and trees of them, [`evaluate`] turns a [`Network`] into means, uncertainties, coverage
//! intervals and probabilities, [`bounds`] gives what no phase can exceed.
//!
//! An [`input::Input`] hides its number: the only way to it is an [`input::Reader`], and every
//! reader counts the uncertainty that belongs to it. A part cannot forget a ±.

pub mod bounds;
pub mod complex;
pub mod difference;
pub mod element;
pub mod evaluate;
pub mod input;
pub mod noise;
pub mod part;
pub mod record;
pub mod sample;
pub mod scalar;
pub mod solve;
pub mod stated;
pub mod verify;

use input::{Input, Inputs};
use part::Stretch;

/// Reference impedance of all scattering parameters, ohm.
pub const R0: f64 = 50.0;

/// A chain at one frequency, with all its inputs and their causes.
#[derive(Clone, Debug)]
pub struct Network {
    /// Frequency, Hz.
    pub hz: f64,
    /// Power of the source into a matched load, dB over 1 W.
    pub level: Input,
    /// Causes of uncertainty and open phases.
    pub inputs: Inputs,
    /// Parts and ends, from the source on.
    pub feed: Stretch,
    /// True if the phases of the waves at the antennas are needed (fields of several antennas add).
    pub phased: bool,
    /// Which fields add.
    pub fields: Fields,
}

/// Rule by which the fields of several antennas add.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fields {
    /// In the main beam, each with the phase its feed gives it.
    ByLength,
    /// In phase in the main beam.
    InPhase,
    /// Each antenna radiates for itself: the strongest at the stated values counts.
    Apart,
}
