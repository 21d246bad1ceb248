//! Figures and ratings: values, when they hold, and what is said about them.

use downlead_base::Loc;
use downlead_quantity::Measure;

use super::Name;

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Basis {
    /// Written without saying.
    #[default]
    Stated,
    /// Read on an instrument.
    Read,
    /// From a data sheet.
    Sheet,
    /// The rating on the plate.
    Rated,
    /// Off the radio's own display.
    Displayed,
    /// A guess, said to be one.
    Guess,
    /// From the library.
    Library,
    /// Computed from the others.
    Computed,
}

impl Basis {
    /// Lower-case word.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Basis::Stated => "stated",
            Basis::Read => "read",
            Basis::Sheet => "sheet",
            Basis::Rated => "rated",
            Basis::Displayed => "displayed",
            Basis::Guess => "guess",
            Basis::Library => "library",
            Basis::Computed => "computed",
        }
    }
}

/// Whether a data-sheet figure is typical or a maximum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// Typical or nominal.
    Typical,
    /// Guaranteed not to be exceeded.
    Maximum,
}

/// What is said about a figure beside its value.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Meta {
    /// Basis.
    pub basis: Basis,
    /// Typical or maximum.
    pub bound: Option<(Bound, Option<Loc>)>,
    /// Document and page.
    pub source: Option<Box<str>>,
    /// Date of a reading or installation, as written.
    pub date: Option<Box<str>>,
    /// In service since, as written.
    pub since: Option<Box<str>>,
    /// Instrument of a reading.
    pub instrument: Option<Box<Name>>,
    /// Person who read it.
    pub person: Option<Box<str>>,
}

impl Meta {
    /// The source in words, from basis, document, date, instrument and person.
    #[must_use]
    pub fn words(&self) -> Option<String> {
        let mut out = String::new();
        match self.basis {
            Basis::Read => {
                out.push_str("read");
                if let Some(d) = &self.date {
                    out.push(' ');
                    out.push_str(d);
                }
                if let Some(i) = &self.instrument {
                    out.push_str(" with ");
                    out.push_str(&i.text);
                }
                if let Some(p) = &self.person {
                    out.push_str(" by ");
                    out.push_str(p);
                }
            }
            Basis::Sheet => out.push_str("sheet"),
            Basis::Rated => out.push_str("rated"),
            Basis::Displayed => out.push_str("the radio's display"),
            Basis::Guess => out.push_str("guess"),
            Basis::Stated | Basis::Library | Basis::Computed => {}
        }
        if let Some(s) = &self.source {
            if !out.is_empty() {
                out.push_str(", ");
            }
            out.push_str(s);
        }
        if out.is_empty() { None } else { Some(out) }
    }
}

/// A [`Meta`] that mostly says nothing and then takes no room.
#[derive(Clone, Default, PartialEq)]
pub struct About(Option<Box<Meta>>);

static NOTHING: Meta = Meta {
    basis: Basis::Stated,
    bound: None,
    source: None,
    date: None,
    since: None,
    instrument: None,
    person: None,
};

impl std::ops::Deref for About {
    type Target = Meta;

    fn deref(&self) -> &Meta {
        self.0.as_deref().unwrap_or(&NOTHING)
    }
}

impl From<Meta> for About {
    fn from(m: Meta) -> Self {
        About((m != NOTHING).then(|| Box::new(m)))
    }
}

impl std::fmt::Debug for About {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        (**self).fmt(f)
    }
}

/// When a figure holds.
#[derive(Clone, Debug, PartialEq)]
pub enum When {
    /// Always.
    Always,
    /// On these bands.
    Bands(Box<[Name]>),
    /// At this frequency, Hz; between such points it is interpolated.
    At(f64),
}

/// One figure of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// When it holds.
    pub when: When,
    /// Value and standard uncertainty in the base unit of its kind; powers carry the
    /// uncertainty in dB.
    pub value: Measure,
    /// What is said about it.
    pub meta: About,
    /// Where the value stands.
    pub loc: Loc,
    /// Whether it was written in percent.
    pub percent: bool,
}

impl Figure {
    /// One that always holds and of which nothing is said.
    pub(crate) fn always(value: Measure, loc: Loc) -> Figure {
        Figure {
            when: When::Always,
            value,
            meta: About::default(),
            loc,
            percent: false,
        }
    }
}

/// Figures of a part that stand in a network file.
#[derive(Clone, Debug, PartialEq)]
pub struct NetworkFile {
    /// When it holds and what is said about it. Its value is not used; the uncertainty is that of
    /// the file's losses, dB.
    pub figure: Figure,
    /// Path as written, without its quotes, and where.
    pub path: Name,
    /// Whether its port 2 is where its port 1 would be.
    pub reversed: bool,
}

/// Mean power rating.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rating {
    /// Mean power, W.
    pub watts: f64,
    /// At this frequency, Hz, if one is given.
    pub at_hz: Option<f64>,
    /// Ambient temperature of the rating, °C.
    pub ambient_c: f64,
    /// Highest conductor temperature, °C.
    pub conductor_c: f64,
    /// Whether the two temperatures were stated.
    pub temperatures_stated: bool,
    /// Where.
    pub loc: Loc,
}
