//! Verdicts in words, each with a sign that reads without colour.

use downlead_eval::result::{Verdict, measure};

use crate::document::{Run, Sign, Text};
use crate::shape::bench::VerdictCounts;
use crate::shape::word::{LimitVerdict, ReadingVerdict};

/// A verdict that has a sign and words.
pub trait Judged: Copy {
    /// Its sign.
    fn sign(self) -> Sign;
    /// Its words.
    fn words(self) -> &'static str;
    /// Both as a run.
    fn run(self) -> Run {
        Run::Verdict(self.sign(), self.words())
    }
}

impl Judged for LimitVerdict {
    fn sign(self) -> Sign {
        match self {
            LimitVerdict::Met => Sign::Good,
            LimitVerdict::NotMet => Sign::Bad,
            LimitVerdict::CannotTell => Sign::Open,
        }
    }

    fn words(self) -> &'static str {
        match self {
            LimitVerdict::Met => "met",
            LimitVerdict::NotMet => "not met",
            LimitVerdict::CannotTell => "cannot tell",
        }
    }
}

impl Judged for ReadingVerdict {
    fn sign(self) -> Sign {
        match self {
            ReadingVerdict::Agrees => Sign::Good,
            ReadingVerdict::Differs => Sign::Bad,
            ReadingVerdict::CannotTell => Sign::Open,
        }
    }

    fn words(self) -> &'static str {
        match self {
            ReadingVerdict::Agrees => "agrees",
            ReadingVerdict::Differs => "differs",
            ReadingVerdict::CannotTell => "cannot tell",
        }
    }
}

/// Words of a limit's verdict.
#[must_use]
pub fn limit(v: Verdict) -> &'static str {
    LimitVerdict::from(v).words()
}

/// Words of a reading's verdict.
#[must_use]
pub fn reading(v: measure::Verdict) -> &'static str {
    ReadingVerdict::from(v).words()
}

/// A verdict as a text.
#[must_use]
pub fn text(v: impl Judged) -> Text {
    Text(vec![v.run()])
}

impl VerdictCounts {
    /// Of some verdicts.
    #[must_use]
    pub fn of(all: impl Iterator<Item = ReadingVerdict>) -> VerdictCounts {
        let mut n = VerdictCounts::default();
        all.for_each(|v| n.add(v));
        n
    }

    /// Counts one more.
    pub fn add(&mut self, v: ReadingVerdict) {
        match v {
            ReadingVerdict::Agrees => self.agrees += 1,
            ReadingVerdict::Differs => self.differs += 1,
            ReadingVerdict::CannotTell => self.cannot_tell += 1,
        }
    }

    /// How many there are.
    #[must_use]
    pub fn all(self) -> usize {
        self.agrees + self.differs + self.cannot_tell
    }

    /// The worst of them; none if there is none.
    #[must_use]
    pub fn worst(self) -> Option<ReadingVerdict> {
        [
            (self.differs, ReadingVerdict::Differs),
            (self.cannot_tell, ReadingVerdict::CannotTell),
            (self.agrees, ReadingVerdict::Agrees),
        ]
        .into_iter()
        .find_map(|(n, v)| (n > 0).then_some(v))
    }

    /// `24 agree, 6 differ, 6 cannot tell`; empty where there is none.
    #[must_use]
    pub fn listed(self) -> String {
        let verb = |n: usize, one: &str, many: &str| match n {
            0 => None,
            1 => Some(format!("1 {one}")),
            n => Some(format!("{n} {many}")),
        };
        let parts: Vec<String> = [
            verb(self.agrees, "agrees", "agree"),
            verb(self.differs, "differs", "differ"),
            verb(self.cannot_tell, "cannot tell", "cannot tell"),
        ]
        .into_iter()
        .flatten()
        .collect();
        parts.join(", ")
    }

    /// The same, or that nothing was compared.
    #[must_use]
    pub fn words(self) -> String {
        match self.all() {
            0 => "nothing compared".to_owned(),
            _ => self.listed(),
        }
    }
}
