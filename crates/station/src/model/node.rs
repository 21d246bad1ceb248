//! Statements at a node: readings, logs, expectations, limits.

use downlead_base::Loc;
use downlead_quantity::{Measure, UnitId};

use super::Name;
use super::ends::PowerKind;
use super::figure::Meta;

/// What a limit limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LimitQuantity {
    /// ERP over a half-wave dipole.
    Erp,
    /// EIRP.
    Eirp,
    /// Transmitter output.
    Output,
}

impl LimitQuantity {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            LimitQuantity::Erp => "erp",
            LimitQuantity::Eirp => "eirp",
            LimitQuantity::Output => "output",
        }
    }
}

/// A reading's quantity.
#[derive(Clone, Debug, PartialEq)]
pub enum Read {
    /// Power, W with u in dB.
    Power(ReadPower, Measure),
    /// SWR.
    Swr(Measure),
}

/// Which power a wattmeter shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadPower {
    /// Forward wave.
    Forward,
    /// Reflected wave.
    Reflected,
    /// Forward minus reflected.
    Net,
}

impl ReadPower {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            ReadPower::Forward => "forward",
            ReadPower::Reflected => "reflected",
            ReadPower::Net => "net",
        }
    }
}

/// An expected value.
#[derive(Clone, Debug, PartialEq)]
pub enum Expect {
    /// Net power at the node, W; tolerance half-width in dB.
    Power(f64, f64),
    /// Loss so far, dB; half-width in dB.
    Loss(f64, f64),
    /// SWR looking on; half-width.
    Swr(f64, f64),
    /// ERP or EIRP, W; half-width in dB; where the word stands.
    Radiated(LimitQuantity, f64, f64, Loc),
}

/// A statement at a node.
#[derive(Clone, Debug, PartialEq)]
pub enum Node {
    /// `read`.
    Read {
        /// What was read.
        read: Read,
        /// Whether its own tolerance was stated.
        own_tolerance: bool,
        /// The unit of a power and where it stands, if nothing else of the figure hangs on it.
        unit: Option<(UnitId, Loc)>,
        /// When, with what, by whom.
        meta: Meta,
        /// Bands it holds on (empty: all).
        on: Box<[Name]>,
    },
    /// `readings from`: a log of readings here.
    Log {
        /// The file.
        file: Name,
        /// Instrument, where a row names none.
        instrument: Option<Name>,
        /// Bands it holds on (empty: all).
        on: Box<[Name]>,
    },
    /// `expect`.
    Expect {
        /// What.
        expect: Expect,
        /// Bands.
        on: Box<[Name]>,
    },
    /// `limit 1 dB desense`.
    Desense {
        /// Limit, dB.
        db: f64,
        /// Document and clause.
        source: Option<Box<str>>,
        /// Bands.
        on: Box<[Name]>,
    },
    /// `limit`.
    Limit {
        /// What is limited.
        quantity: LimitQuantity,
        /// Limit, W.
        watts: f64,
        /// Kind of power it counts.
        kind: Option<PowerKind>,
        /// Document and clause.
        source: Option<Box<str>>,
        /// Bands.
        on: Box<[Name]>,
    },
}
