//! Runs of words.

/// A line of a file.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Place {
    /// Path as it is to be shown.
    pub file: String,
    /// From 1.
    pub line: u32,
}

impl Place {
    /// Of a file and line.
    #[must_use]
    pub fn new(file: &str, line: u32) -> Place {
        Place {
            file: file.to_owned(),
            line,
        }
    }
}

impl std::fmt::Display for Place {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}:{}", self.file, self.line)
    }
}

/// The sign of a verdict. It reads without colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sign {
    /// Met, or agrees.
    Good,
    /// Cannot tell.
    Open,
    /// Not met, or differs.
    Bad,
}

impl Sign {
    /// The sign.
    #[must_use]
    pub fn sign(self) -> char {
        match self {
            Sign::Good => '✓',
            Sign::Open => '?',
            Sign::Bad => '✗',
        }
    }
}

/// A piece of a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Run {
    /// Words.
    Plain(String),
    /// A verdict with its sign.
    Verdict(Sign, &'static str),
    /// Words that lead to a place.
    Link(String, Place),
    /// Words of the language.
    Code(String),
}

/// Words in a row.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Text(pub Vec<Run>);

impl From<&str> for Text {
    fn from(s: &str) -> Text {
        s.to_owned().into()
    }
}

impl From<String> for Text {
    fn from(s: String) -> Text {
        match s.is_empty() {
            true => Text::default(),
            false => Text(vec![Run::Plain(s)]),
        }
    }
}

impl From<&String> for Text {
    fn from(s: &String) -> Text {
        s.clone().into()
    }
}

impl Text {
    /// With a run more.
    #[must_use]
    pub fn and(mut self, run: Run) -> Text {
        self.0.push(run);
        self
    }

    /// With words more.
    #[must_use]
    pub fn plus(self, words: &str) -> Text {
        match words {
            "" => self,
            words => self.and(Run::Plain(words.to_owned())),
        }
    }

    /// With another text behind it.
    #[must_use]
    pub fn with(mut self, other: Text) -> Text {
        self.0.extend(other.0);
        self
    }

    /// Words that lead to a place.
    #[must_use]
    pub fn link(words: impl Into<String>, place: Place) -> Text {
        Text(vec![Run::Link(words.into(), place)])
    }

    /// Whether it says nothing.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The words alone; verdicts with their signs.
    #[must_use]
    pub fn plain(&self) -> String {
        self.0
            .iter()
            .map(|r| match r {
                Run::Plain(s) | Run::Link(s, _) | Run::Code(s) => s.clone(),
                Run::Verdict(sign, word) => format!("{} {word}", sign.sign()),
            })
            .collect()
    }
}
