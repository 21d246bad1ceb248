//! Slots that many statements share: where a figure comes from, when and on which band it holds,
//! network files, how well a part is matched.

use super::quantity as q;
use super::types::Takes::{BandNames, Date, File, May, Name, Names, OneOf, Text, Value};
use super::types::{Exclusive, FileKind, NameKind, Slot};
use super::words as w;

pub(crate) const FROM: u8 = 34;
pub(crate) const REVERSED: u8 = 35;
pub(crate) const FILE_ACCURACY: u8 = 36;
pub(crate) const SWR: u8 = 37;
pub(crate) const RETURN_LOSS: u8 = 38;
pub(crate) const RATING: u8 = 39;
/// Numbers from here on say where a figure comes from and when it holds.
pub(crate) const ABOUT: u8 = 40;
pub(crate) const ON: u8 = 40;
pub(crate) const READ: u8 = 41;
pub(crate) const SHEET: u8 = 42;
pub(crate) const RATED: u8 = 43;
pub(crate) const DISPLAYED: u8 = 44;
pub(crate) const GUESS: u8 = 45;
pub(crate) const PROMISE: u8 = 46;
pub(crate) const WITH: u8 = 47;
pub(crate) const BY: u8 = 48;
pub(crate) const SINCE: u8 = 49;
pub(crate) const AT: u8 = 50;
pub(crate) const SOURCE: u8 = 51;
pub(crate) const CITE: u8 = 52;
pub(crate) const DATE: u8 = 53;
pub(crate) const CORRECTED: u8 = 54;

/// Where a figure comes from.
const ORIGIN: [Slot; 5] = [
    Slot::word(READ, "read", &[May(&Date)])
        .says(
            "read on an instrument, with date, instrument and person",
            "read 2026-07-04",
        )
        .also(&["measured"]),
    Slot::word(SHEET, "sheet", &[Text])
        .says(
            "from a data sheet, with document and page",
            "sheet \"AN-7 p. 2\"",
        )
        .also(&["datasheet"]),
    Slot::word(RATED, "rated", &[])
        .says("the figure on the plate", "rated")
        .also(&["nameplate"]),
    Slot::word(DISPLAYED, "displayed", &[]).says("the radio's own display", "displayed"),
    Slot::word(GUESS, "guess", &[])
        .says("a guess, said to be one", "guess")
        .also(&["estimate", "estimated", "assumed"]),
];

const ON_BANDS: Slot = Slot::word(ON, "on", &[BandNames])
    .each()
    .says("holds on these bands only", "on 2m");
const SINCE_DATE: Slot =
    Slot::word(SINCE, "since", &[Date]).says("in service since", "since 2026-06");
const WITH_INSTRUMENT: Slot = Slot::word(WITH, "with", &[Name(NameKind::Instrument)])
    .says("the instrument it was read on", "with W1");
const BY_PERSON: Slot =
    Slot::word(BY, "by", &[Name(NameKind::Person)]).says("who read it", "by QY2TEC");
const CORRECTED_TEXT: Slot = Slot::word(CORRECTED, "corrected", &[Text]).says(
    "why a reading is not as it was first recorded, in quotes",
    "corrected \"was 28.9 W: digits swapped\"",
);
const SOURCE_TEXT: Slot = Slot::word(SOURCE, "source", &[Text])
    .alike("sheet")
    .says("the document, in quotes", "source \"AN-7 p. 2\"");
const CITE_TEXT: Slot =
    Slot::text(CITE).says("document and clause, in quotes", "\"licence clause 4\"");
const READ_DATE: Slot = Slot::date(DATE).says("the day of the reading", "2026-07-04");
const PROMISED: Slot =
    Slot::one_of(PROMISE, &w::PROMISE).says("what a sheet's figure promises", "typical");

const AT_FREQUENCY: Slot = Slot::word(AT, "at", &[Value(&q::FREQUENCY)])
    .once_per_kind()
    .says("at a frequency", "at 145 MHz");
const AT_WARM: Slot = Slot::word(AT, "at", &[Value(&q::WARM_AT)])
    .once_per_kind()
    .says("at a temperature or frequency", "at 15 °C");

/// Where a figure is from and what it promises, with what else it may hold on or at.
macro_rules! about_figure {
    ($(#[$m:meta])* $name:ident $(, $where:expr)*) => {
        $(#[$m])*
        pub(crate) static $name: &[Slot] = &{
            let [read, sheet, rated, displayed, guess] = ORIGIN;
            [
                read, sheet, SOURCE_TEXT, rated, displayed, guess, PROMISED, $($where,)*
                SINCE_DATE, WITH_INSTRUMENT, BY_PERSON, CORRECTED_TEXT, CITE_TEXT, READ_DATE,
            ]
        };
    };
}

about_figure! {
    /// What can be said about every figure.
    ABOUT_FIGURE, ON_BANDS, AT_FREQUENCY
}
about_figure! {
    /// What can be said about a figure that holds always.
    ABOUT_ALWAYS
}
about_figure! {
    /// What can be said about a figure that holds at a frequency, and on no band.
    ABOUT_AT, AT_FREQUENCY
}
about_figure! {
    /// The same, of something whose temperature takes part.
    ABOUT_WARM, ON_BANDS, AT_WARM
}

/// What can be said about a limit.
pub(crate) static OF_LIMIT: &[Slot] = &[
    ON_BANDS,
    Slot::word(SHEET, "sheet", &[Text]).says("the document, in quotes", "sheet \"clause 4\""),
    SOURCE_TEXT,
    CITE_TEXT,
];
/// What can be said about an expectation.
pub(crate) static OF_EXPECTATION: &[Slot] = &[
    ON_BANDS,
    Slot::word(SOURCE, "source", &[Text]).says("the document, in quotes", "source \"note 3\""),
    CITE_TEXT,
];
/// What can be said about a reading in a chain.
pub(crate) static OF_NODE_READING: &[Slot] = &{
    let [read, ..] = ORIGIN;
    [
        read,
        ON_BANDS,
        WITH_INSTRUMENT,
        BY_PERSON,
        SOURCE_TEXT,
        CORRECTED_TEXT,
        CITE_TEXT,
        READ_DATE,
    ]
};
/// What can be said about readings of a file in a chain.
pub(crate) static OF_LOG: &[Slot] = &[WITH_INSTRUMENT, ON_BANDS];
/// What can be said about several readings on the bench.
pub(crate) static OF_IMPORT: &[Slot] = &[Slot::word(WITH, "with", &[Name(NameKind::Instrument)])
    .says("the instrument they were read on", "with W1")];
/// What can be said about readings on the bench.
pub(crate) static OF_READING: &[Slot] = &{
    let [read, ..] = ORIGIN;
    [
        read,
        WITH_INSTRUMENT,
        BY_PERSON,
        SOURCE_TEXT,
        CORRECTED_TEXT,
        CITE_TEXT,
        READ_DATE,
    ]
};

/// A figure has one origin.
pub(crate) const ONE_ORIGIN: Exclusive = Exclusive {
    slots: 1 << READ | 1 << SHEET | 1 << RATED | 1 << DISPLAYED | 1 << GUESS,
    rule: "A figure has one origin.",
    instead: "To name a document beside `guess`, write it without `sheet`: `guess, \"TX-2 p. 1\"`.",
};
/// What holds on bands does not hold at one frequency of them.
pub(crate) static ONE_WHEN: Exclusive = Exclusive {
    slots: 1 << ON | 1 << AT,
    rule: "A figure holds on bands or at a frequency.",
    instead: "",
};
/// The rule of figures whose slots are those of [`ABOUT_FIGURE`].
pub(crate) static ORIGINS: &[Exclusive] = &[ONE_ORIGIN];

const FROM_TWO: Slot = Slot::word(FROM, "from", &[File(FileKind::TwoPort)])
    .says(
        "its figures stand in a two-port network file",
        "from \"f1.s2p\"",
    )
    .also(&["file", "touchstone"]);
const FILE_REVERSED: Slot = Slot::word(REVERSED, "reversed", &[])
    .after(FROM, "is said of a network file, and none stands before it")
    .says("lies the other way round than it was measured", "reversed");
const FILE_ACC: Slot = Slot::word(FILE_ACCURACY, "accuracy", &[Value(&q::ACCURACY_DB)])
    .after(FROM, "is said of a network file, and none stands before it")
    .says("how far the loss of the file may be off", "accuracy 0.1 dB");

/// A two-port network file.
pub(crate) static NETWORK: &[Slot] = &[FROM_TWO, FILE_REVERSED, FILE_ACC];
/// The same, of a part that has a direction also without a file.
pub(crate) static DIRECTED: &[Slot] = &[
    FROM_TWO,
    Slot::word(REVERSED, "reversed", &[]).says(
        "lies the other way round than the power flows, or than it was measured",
        "reversed",
    ),
    FILE_ACC,
];
/// A one-port network file.
pub(crate) static MATCH_FILE: &[Slot] = &[Slot::word(FROM, "from", &[File(FileKind::OnePort)])
    .says(
        "its match stands in a one-port network file",
        "from \"a1.s1p\"",
    )
    .also(&["file", "touchstone"])];

const SWR_VALUE: Slot = Slot::word(SWR, "swr", &[Value(&q::SWR)])
    .says("standing wave ratio", "swr 1.3")
    .also(&["vswr"]);
const RETURN_LOSS_VALUE: Slot = Slot::word(RETURN_LOSS, "return-loss", &[Value(&q::RETURN_LOSS)])
    .says("return loss", "return-loss 20 dB");

/// How well a part is matched.
pub(crate) static MATCH: &[Slot] = &[SWR_VALUE, RETURN_LOSS_VALUE];
/// The same, each with its own bands.
pub(crate) static MATCHES: &[Slot] = &[SWR_VALUE.figure(), RETURN_LOSS_VALUE.figure()];
/// What a part may carry.
pub(crate) static RATINGS: &[Slot] = &[Slot::word(RATING, "rating", &[Value(&q::POWER)])
    .says("mean power it may carry", "rating 300 W")];

/// Connector families of the two ends, at a number of the statement's own.
pub(crate) const fn ends(id: u8) -> Slot {
    Slot::word(id, "ends", &[Names(NameKind::Family)])
        .says("connector families of a part's two ends", "ends n uhf")
}

/// `noise figure 6 dB`, at a number of the statement's own.
pub(crate) const fn noise(id: u8) -> Slot {
    Slot::word(id, "noise", &[OneOf(w::FIGURE), Value(&q::NOISE)]).says(
        "`noise figure` of a receiver or amplifier",
        "noise figure 6 dB",
    )
}
