//! What a station says of the site it shares with others.

use downlead_base::Loc;

use super::Name;

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
}
