//! Variants of a station.

use downlead_base::Loc;

use super::Name;

/// A station with changes.
#[derive(Clone, Debug, PartialEq)]
pub struct Variant {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// The station it changes.
    pub of: Name,
    /// Its changes in the order of the text.
    pub changes: Box<[Change]>,
}

/// A part by its tag, maybe with a port.
#[derive(Clone, Debug, PartialEq)]
pub struct Passed {
    /// Tag.
    pub tag: Box<str>,
    /// Port.
    pub port: Option<Box<str>>,
    /// Both together.
    pub loc: Loc,
}

impl Passed {
    /// `DU1.low` as written at a place.
    #[must_use]
    pub fn of(text: &str, loc: Loc) -> Passed {
        let (tag, port) = match text.split_once('.') {
            Some((t, p)) => (t, Some(p.into())),
            None => (text, None),
        };
        Passed {
            tag: tag.into(),
            port,
            loc,
        }
    }
}

/// One line of a variant. `loc` is the head of the line, by which its statement is found.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Figures of a part.
    Figures {
        /// The part.
        part: Passed,
        /// The line.
        loc: Loc,
    },
    /// A part goes.
    Take {
        /// Its tag.
        tag: Name,
        /// The line.
        loc: Loc,
    },
    /// A part is put into chains.
    Put {
        /// The part.
        part: Passed,
        /// The part it follows.
        after: Passed,
        /// The chains.
        chains: Box<[Name]>,
        /// The line.
        loc: Loc,
    },
    /// A new part.
    New {
        /// Its tag.
        tag: Name,
        /// The line.
        loc: Loc,
    },
}

impl Change {
    /// The head of the line.
    #[must_use]
    pub fn loc(&self) -> Loc {
        match self {
            Change::Figures { loc, .. }
            | Change::Take { loc, .. }
            | Change::Put { loc, .. }
            | Change::New { loc, .. } => *loc,
        }
    }
}
