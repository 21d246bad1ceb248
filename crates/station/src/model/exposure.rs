//! Exposure of people to radio fields: limits of rules, and the places where people can be.

use downlead_base::Loc;
use downlead_quantity::Dim;

use super::Name;
use super::rules::{Confidence, Frequencies, Law};

/// For whom a limit is, and who can be at a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tier {
    /// Anyone.
    Public,
    /// Who works there and knows of it.
    Occupational,
}

impl Tier {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Tier::Public => "public",
            Tier::Occupational => "occupational",
        }
    }

    /// The tier of a word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Tier> {
        [Tier::Public, Tier::Occupational]
            .into_iter()
            .find(|t| t.word() == word)
    }
}

/// Which quantity an exposure limit is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// Power density, W/m².
    Density,
    /// Electric field strength, V/m.
    Electric,
    /// Magnetic field strength, A/m.
    Magnetic,
}

impl Field {
    /// The field of a kind of value.
    #[must_use]
    pub fn of(dim: Dim) -> Option<Field> {
        match dim {
            Dim::PowerDensity => Some(Field::Density),
            Dim::ElectricField => Some(Field::Electric),
            Dim::MagneticField => Some(Field::Magnetic),
            _ => None,
        }
    }

    /// Its unit.
    #[must_use]
    pub fn unit(self) -> &'static str {
        match self {
            Field::Density => "W/m2",
            Field::Electric => "V/m",
            Field::Magnetic => "A/m",
        }
    }
}

/// A limit of exposure.
#[derive(Clone, Debug, PartialEq)]
pub struct ExposureClause {
    /// Its line.
    pub loc: Loc,
    /// What it limits.
    pub field: Field,
    /// How much, in the unit of `field`, maybe by a law of the frequency.
    pub law: Law,
    /// Where it holds.
    pub on: Frequencies,
    /// For whom.
    pub tier: Tier,
    /// Averaging time, s; none where the clause states none.
    pub averaging_s: Option<f64>,
    /// From when it holds.
    pub since: Option<Box<str>>,
    /// Until when it holds.
    pub until: Option<Box<str>>,
    /// Its citation.
    pub cite: Option<Name>,
    /// How sure its text is.
    pub confidence: Option<Confidence>,
}

/// Where a place is.
#[derive(Clone, Debug, PartialEq)]
pub enum SpotAt {
    /// Horizontal distance from the mast and height of the head above ground, m.
    Beside(f64, f64),
    /// Straight distances to the nearest part of antennas, m: the antenna, and its station where it
    /// is another one.
    From(Box<[(f64, Name, Option<Name>)]>),
}

/// A line `spot` that could not be read: nothing is judged there, and every output says so.
#[derive(Clone, Debug, PartialEq)]
pub struct UnreadSpot {
    /// Its name; empty where that could not be read either.
    pub name: Box<str>,
    /// Its line.
    pub loc: Loc,
}

/// A place where people can be.
#[derive(Clone, Debug, PartialEq)]
pub struct Spot {
    /// Name.
    pub name: Name,
    /// Who can be there.
    pub tier: Tier,
    /// Where it is.
    pub at: SpotAt,
    /// Its line.
    pub loc: Loc,
}
