//! Words of the shapes as types: in the JSON each is a string, in the program none is.

use std::ops::Deref;

use downlead_base::Severity;
use downlead_eval::exposure::ExposureVerdict;
use downlead_eval::licence::RuleVerdict;
use downlead_eval::link::LinkVerdict;
use downlead_eval::result::{CauseKind, Method, NodeKind, Verdict, measure};
use downlead_eval::site::LeftOut;
use downlead_eval::site::desense::DesenseVerdict;
use downlead_station::model::{Basis, Direction, LimitQuantity};
use downlead_station::session::ReadingKind;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Serialize, Serializer};

/// A value with one word of the JSON.
pub trait Worded {
    /// The word.
    fn word(&self) -> &'static str;
}

/// A type of the evaluator as a word of the JSON.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word<T>(pub T);

impl<T> Deref for Word<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

impl<T: PartialEq> PartialEq<T> for Word<T> {
    fn eq(&self, other: &T) -> bool {
        self.0 == *other
    }
}

impl<T: Worded> Serialize for Word<T> {
    fn serialize<S: Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
        s.serialize_str(self.0.word())
    }
}

/// The schema of a word is that of a string.
fn string() -> Schema {
    json_schema!({ "type": "string" })
}

impl<T> JsonSchema for Word<T> {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> std::borrow::Cow<'static, str> {
        "string".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        string()
    }
}

macro_rules! worded {
    ($($type:ty: |$v:ident| $word:expr;)*) => {$(
        impl Worded for $type {
            fn word(&self) -> &'static str {
                let $v = *self;
                $word
            }
        }
    )*};
}

worded! {
    Direction: |d| d.word();
    NodeKind: |k| k.word();
    Basis: |b| b.word();
    LeftOut: |l| l.word();
    LimitQuantity: |q| q.word();
    RuleVerdict: |v| v.word();
    ExposureVerdict: |v| v.word();
    LinkVerdict: |v| v.word();
    DesenseVerdict: |v| v.word();
    Method: |m| m.word();
    Severity: |s| s.name();
    ReadingKind: |k| k.word();
}

/// Enums whose variants are words of the JSON.
macro_rules! words {
    ($($(#[$meta:meta])* $name:ident { $($(#[$doc:meta])* $variant:ident $word:literal,)* })*) => {$(
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum $name {
            $($(#[$doc])* #[doc = concat!("`", $word, "`")] $variant,)*
        }

        impl $name {
            /// All of them in order.
            pub const ALL: &'static [$name] = &[$($name::$variant,)*];

            /// The word.
            #[must_use]
            pub fn word(self) -> &'static str {
                match self { $($name::$variant => $word,)* }
            }
        }

        impl Worded for $name {
            fn word(&self) -> &'static str {
                $name::word(*self)
            }
        }

        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
                s.serialize_str(self.word())
            }
        }

        impl JsonSchema for $name {
            fn inline_schema() -> bool {
                true
            }

            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($name).into()
            }

            fn json_schema(_: &mut SchemaGenerator) -> Schema {
                string()
            }
        }
    )*};
}

words! {
    /// A limit against its value.
    LimitVerdict {
        Met "met",
        NotMet "not-met",
        CannotTell "cannot-tell",
    }
    /// A reading against what is expected.
    ReadingVerdict {
        Agrees "agrees",
        Differs "differs",
        CannotTell "cannot-tell",
    }
    /// Where in a band that is a range.
    Point {
        Low "low",
        Middle "middle",
        High "high",
        /// Where a clause begins to hold or ceases to.
        Edge "edge",
        /// Between clauses.
        Gap "gap",
    }
    /// What the transmitter keeps constant.
    PowerMode {
        FixedForward "fixed-forward",
        Tuner "tuner",
    }
    /// What was read.
    Wave {
        Forward "forward",
        Reflected "reflected",
        Net "net",
        Swr "swr",
    }
    /// How the readings of a log move.
    Slope {
        Rising "rising",
        Falling "falling",
        NotSignificant "not-beyond-doubt",
    }
    /// How the ratio of a piece moves.
    BenchSlope {
        Rising "rising",
        Falling "falling",
        CannotTell "cannot-tell",
    }
    /// How an electrical length was found.
    LengthFrom {
        Resonance "resonance",
        Delay "delay",
        Phase "phase",
    }
    /// One of the two coefficients of a loss law.
    Coefficient {
        K1 "k1",
        K2 "k2",
    }
    /// The quantity of a verification.
    Verified {
        Eirp "eirp",
        Delivered "delivered",
        Loss "loss",
    }
    /// The unit of a verification.
    Unit {
        Watt "W",
        Decibel "dB",
    }
}

impl From<Verdict> for LimitVerdict {
    fn from(v: Verdict) -> Self {
        match v {
            Verdict::Yes => LimitVerdict::Met,
            Verdict::No => LimitVerdict::NotMet,
            Verdict::CannotTell => LimitVerdict::CannotTell,
        }
    }
}

impl From<Verdict> for ReadingVerdict {
    fn from(v: Verdict) -> Self {
        match v {
            Verdict::Yes => ReadingVerdict::Agrees,
            Verdict::No => ReadingVerdict::Differs,
            Verdict::CannotTell => ReadingVerdict::CannotTell,
        }
    }
}

impl From<measure::Verdict> for ReadingVerdict {
    fn from(v: measure::Verdict) -> Self {
        match v {
            measure::Verdict::Agrees => ReadingVerdict::Agrees,
            measure::Verdict::Differs => ReadingVerdict::Differs,
            measure::Verdict::CannotTell => ReadingVerdict::CannotTell,
        }
    }
}

impl Point {
    /// That of the evaluator.
    #[must_use]
    pub fn of(word: &str) -> Option<Point> {
        Point::ALL.iter().copied().find(|p| p.word() == word)
    }
}

/// A cause of uncertainty. In the JSON it is its words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cause {
    /// What is uncertain.
    pub kind: CauseKind,
    /// Name of the part, cable or instrument it belongs to; empty if there is none.
    pub name: String,
    /// Both in words.
    pub words: String,
}

impl Deref for Cause {
    type Target = str;

    fn deref(&self) -> &str {
        &self.words
    }
}

impl Serialize for Cause {
    fn serialize<S: Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
        s.serialize_str(&self.words)
    }
}

impl JsonSchema for Cause {
    fn inline_schema() -> bool {
        true
    }

    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Cause".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_is_a_string_of_the_json() {
        let words = serde_json::to_value((
            LimitVerdict::NotMet,
            Word(Direction::Receive),
            Slope::NotSignificant,
            Some(Point::High),
        ));
        let due = serde_json::json!(["not-met", "receive", "not-beyond-doubt", "high"]);
        assert_eq!(words.unwrap(), due);
        assert_eq!(Point::of("middle"), Some(Point::Middle));
    }
}
