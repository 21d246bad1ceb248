//! What the carriers of a site do to the receivers of a station.

mod alone;
mod carriers;
pub mod desense;
mod misread;
mod neighbours;
mod plan;

use downlead_base::Loc;

pub(crate) use alone::alone;
pub(crate) use misread::misread;
pub(crate) use neighbours::neighbours;
pub(crate) use plan::plan;

/// The order up to which products are searched, if their number allows.
pub const HIGHEST_ORDER: u32 = 7;

/// Hits listed of a channel at most; all are counted.
pub const LISTED_HITS: u64 = 20;

/// A carrier of the site.
#[derive(Clone, Debug, PartialEq)]
pub struct Carrier {
    /// The other station it belongs to; none for one's own.
    pub station: Option<Box<str>>,
    /// Tag of its transmitter; where it has none, the name of its chain.
    pub name: Box<str>,
    /// Name of its chain.
    pub chain: Loc,
    /// Hz.
    pub hz: f64,
    /// Its width, Hz; a carrier without one counts as a line.
    pub width_hz: Option<f64>,
}

impl Carrier {
    /// `TX1`, `H1 of harbour`.
    #[must_use]
    pub fn words(&self) -> String {
        match &self.station {
            Some(s) => format!("{} of {s}", self.name),
            None => self.name.to_string(),
        }
    }
}

/// A receive channel of the station.
#[derive(Clone, Debug, PartialEq)]
pub struct Channel {
    /// Tag of its receiver; where it has none, the name of its chain.
    pub name: Box<str>,
    /// Name of its chain.
    pub chain: Loc,
    /// Hz.
    pub hz: f64,
    /// Its width, Hz; a channel without one counts as a line.
    pub width_hz: Option<f64>,
    /// How many carriers, harmonics and products fall into it.
    pub found: u64,
}

/// Why something was not searched.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeftOut {
    /// A chain on a range of frequencies: it may be anywhere in it.
    Range,
    /// A chain whose frequency is not known.
    NoFrequency,
    /// A station that is not defined.
    NotDefined,
}

impl LeftOut {
    /// Word of the report.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            LeftOut::Range => "range",
            LeftOut::NoFrequency => "no-frequency",
            LeftOut::NotDefined => "not-defined",
        }
    }
}

/// What the station says of its neighbours.
#[derive(Clone, Debug, PartialEq)]
pub enum Neighbours {
    /// The stations it is beside.
    Beside(Box<[Box<str>]>),
    /// That there is none, and who has looked, when.
    Alone(Option<Box<str>>),
    /// Nothing: what else is on the site is not known.
    NotStated,
}

/// A carrier, a harmonic or a product that falls into a receive channel.
#[derive(Clone, Debug, PartialEq)]
pub struct Hit {
    /// Index of the channel.
    pub channel: usize,
    /// Index of each carrier with its coefficient; a single one with 1 is the carrier itself.
    pub terms: Box<[(usize, i32)]>,
    /// Hz.
    pub hz: f64,
    /// Its width, Hz.
    pub width_hz: f64,
}

impl Hit {
    /// Sum of the coefficients without their signs.
    #[must_use]
    pub fn order(&self) -> u32 {
        self.terms.iter().map(|t| t.1.unsigned_abs()).sum()
    }
}

/// What the carriers of a site do to the receive channels of a station.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteResult {
    /// What the station says of its neighbours.
    pub neighbours: Neighbours,
    /// The carriers that were searched.
    pub carriers: Box<[Carrier]>,
    /// The receive channels.
    pub channels: Box<[Channel]>,
    /// What was not searched: chains and stations by name.
    pub left_out: Box<[(Box<str>, LeftOut)]>,
    /// The highest order searched: [`HIGHEST_ORDER`], or less where there are too many products.
    pub order: u32,
    /// How many products were searched.
    pub products: u64,
    /// Isolation between antennas as stated.
    pub isolations: Vec<desense::IsolationResult>,
    /// Desense of each receive channel.
    pub desense: Vec<desense::DesenseResult>,
    /// What falls into a channel, at most [`LISTED_HITS`] of each, the lowest orders first.
    pub hits: Box<[Hit]>,
}

impl SiteResult {
    /// A hit in words: `2 TX1 - H1 of harbour`.
    #[must_use]
    pub fn formula(&self, hit: &Hit) -> String {
        let mut out = String::new();
        // what is added first
        let (plus, minus): (Vec<_>, Vec<_>) = hit.terms.iter().copied().partition(|t| t.1 > 0);
        for (index, n) in plus.into_iter().chain(minus) {
            out += match (out.is_empty(), n > 0) {
                (true, _) => "",
                (_, true) => " + ",
                (_, false) => " - ",
            };
            if n.abs() > 1 {
                out += &format!("{} ", n.abs());
            }
            out += &self.carriers[index].words();
        }
        out
    }
}
