//! A diagnostic as a value: what is wrong, where, what was understood, what to write instead.

use crate::{Code, Loc};

/// Severity of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Faint hint.
    Hint,
    /// Worth knowing.
    Info,
    /// The result is available but probably wrong, or without a sound basis.
    Warning,
    /// The result is not available.
    Error,
}

impl Severity {
    /// Lower-case name, as in JSON.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Severity::Hint => "hint",
            Severity::Info => "information",
            Severity::Warning => "warning",
            Severity::Error => "error",
        }
    }
}

/// A place with a few words about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Label {
    /// Where.
    pub loc: Loc,
    /// The words.
    pub message: String,
}

/// Replacement of a range by a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Edit {
    /// The range replaced (empty: insertion).
    pub loc: Loc,
    /// The new text.
    pub text: String,
}

/// An edit that fixes the finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fix {
    /// Title shown to the user: `write 1.5 dB`.
    pub title: String,
    /// The edits, non-overlapping.
    pub edits: Vec<Edit>,
    /// True if it can be applied without asking (the only sensible fix).
    pub preferred: bool,
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Diagnostic {
    /// Entry of the diagnostics table.
    pub code: &'static Code,
    /// Usually the table's; kept here because a few findings are milder in some places.
    pub severity: Severity,
    /// One sentence: what is wrong, with the numbers it changes.
    pub message: String,
    /// Where, with what was understood there.
    pub primary: Label,
    /// Related places.
    pub related: Vec<Label>,
    /// Advice, one sentence each: the text to write instead, and more.
    pub help: Vec<String>,
    /// Offered changes.
    pub fixes: Vec<Fix>,
}

/// Puts the first one into a place of just its size: there is seldom a second.
fn add<T>(list: &mut Vec<T>, one: T) {
    if list.is_empty() {
        list.reserve_exact(1);
    }
    list.push(one);
}

/// A quoted name is shown to this length, in characters.
const LONGEST_NAME: usize = 120;

/// The message with very long names cut: one is quoted whole at its place.
fn shortened(message: String) -> String {
    if message.len() <= 4 * LONGEST_NAME {
        return message;
    }
    let cut = |part: &str| {
        let mut short: String = part.chars().take(LONGEST_NAME).collect();
        short.push('…');
        short
    };
    let parts = message.split('`').enumerate().map(|(i, part)| match i % 2 {
        1 if part.chars().nth(LONGEST_NAME + 1).is_some() => cut(part),
        _ => part.to_owned(),
    });
    parts.collect::<Vec<_>>().join("`")
}

impl Diagnostic {
    /// A finding of `code` at `loc`.
    #[must_use]
    pub fn new(code: &'static Code, loc: Loc, message: impl Into<String>) -> Self {
        Diagnostic {
            code,
            severity: code.severity,
            message: shortened(message.into()),
            primary: Label {
                loc,
                message: String::new(),
            },
            related: Vec::new(),
            help: Vec::new(),
            fixes: Vec::new(),
        }
    }

    /// Sets the words at the primary place.
    #[must_use]
    pub fn at(mut self, words: impl Into<String>) -> Self {
        self.primary.message = words.into();
        self
    }

    /// Another place; nothing if it is the primary one.
    #[must_use]
    pub fn also(mut self, loc: Loc, words: impl Into<String>) -> Self {
        if loc == self.primary.loc {
            return self;
        }
        let label = Label {
            loc,
            message: words.into(),
        };
        add(&mut self.related, label);
        self
    }

    /// Advice.
    #[must_use]
    pub fn help(mut self, words: impl Into<String>) -> Self {
        add(&mut self.help, words.into());
        self
    }

    /// A change of one range.
    #[must_use]
    pub fn fix(mut self, title: impl Into<String>, loc: Loc, text: impl Into<String>) -> Self {
        let edits = vec![Edit {
            loc,
            text: text.into(),
        }];
        let fix = Fix {
            title: title.into(),
            edits,
            preferred: false,
        };
        add(&mut self.fixes, fix);
        self
    }

    /// Marks the last fix as the one clear answer.
    #[must_use]
    pub fn preferred(mut self) -> Self {
        if let Some(f) = self.fixes.last_mut() {
            f.preferred = true;
        }
        self
    }
}
