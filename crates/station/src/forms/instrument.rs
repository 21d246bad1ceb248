//! Connectors and instruments.

use super::bundle::{ABOUT_AT, ORIGINS};
use super::cable::SOURCE;
use super::quantity as q;
use super::top::TITLE;
use super::types::Takes::{Date, Name, NamePair, OneOf, Then, Value};
use super::types::{Block, Context, Form, NameKind, Slot, Subject, need};
use super::words as w;

/// A connector at the left margin.
pub(crate) static CONNECTOR_DEFINITION: Form = Form {
    word: "connector",
    noun: "a connector's head",
    doc: "Defines a mated pair, or an adapter.",
    examples: &["connector n-pair \"N\" { family n; loss 0.05 dB ± 50 % at 1 GHz }"],
    subject: Subject::New(NameKind::Connector),
    slots: &[&[TITLE]],
    block: Block::Lines(
        Context::Connector,
        &[
            &FAMILIES,
            &CONNECTOR_LIMIT,
            &CONNECTOR_LOSS,
            &super::parts::ONE_RATING_LINE,
            &CONNECTOR_VOLTAGE,
            &SOURCE,
            &FAMILY,
            &BUMP,
            &CONNECTOR_RETURN_LOSS,
            &CONNECTOR_SWR,
        ],
    ),
    ..Form::EMPTY
};

static FAMILIES: Form = Form {
    word: "joins",
    noun: "a connector",
    doc: "The two families an adapter joins.",
    examples: &["joins n to uhf"],
    slots: &[&[Slot::bare(0, &NamePair(NameKind::Family))
        .first()
        .says("two connector families", "n to uhf")]],
    needs: &[need(1, "an adapter joins two families")],
    once: true,
    ..Form::EMPTY
};

static FAMILY: Form = Form {
    word: "family",
    noun: "a connector",
    doc: "Connector family.",
    examples: &["family n"],
    slots: &[&[Slot::bare(0, &Name(NameKind::Family))
        .first()
        .says("a connector family", "n")]],
    needs: &[need(1, "the connector family follows")],
    once: true,
    ..Form::EMPTY
};

static BUMP: Form = Form {
    word: "bump",
    noun: "a connector",
    doc: "The pair as a short line of another impedance, by its electrical length.",
    examples: &["bump 33.3 ohm 49.0 mm"],
    slots: &[&[Slot::value(0, &q::IMPEDANCE)
        .first()
        .then(&[Value(&q::METRES)])
        .says("an impedance and an electrical length", "33.3 ohm 49.0 mm")]],
    needs: &[need(1, "a bump is an impedance and an electrical length")],
    once: true,
    ..Form::EMPTY
};

static CONNECTOR_LOSS: Form = Form {
    word: "loss",
    noun: "a connector's loss",
    doc: "Loss of the pair; stated at a frequency it grows with its root.",
    examples: &["loss 0.05 dB ± 50 % at 1 GHz"],
    slots: &[
        &[Slot::value(0, &q::LOSS)
            .first()
            .says("a loss", "0.05 dB ± 50 %")],
        ABOUT_AT,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "a loss follows")],
    once: true,
    ..Form::EMPTY
};

macro_rules! plain_line {
    ($($n:ident $w:literal $q:ident $noun:literal $needs:literal $doc:literal $ex:literal;)+) => {
        $(static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[Slot::value(0, &q::$q).first().says($doc, $ex)]],
            needs: &[need(1, $needs)],
            once: true,
            ..Form::EMPTY
        };)+
    };
}
plain_line! {
    CONNECTOR_LIMIT "limit" FREQUENCY "a connector" "the highest frequency follows" "The highest frequency of a connector." "300 MHz";
    CONNECTOR_VOLTAGE "voltage" VOLTAGE "a connector" "a working voltage follows" "Working voltage, rms." "500 V";
    CONNECTOR_RETURN_LOSS "return-loss" RETURN_LOSS "a connector" "what one pair reflects follows" "Return loss of one pair." "32 dB";
    CONNECTOR_SWR "swr" SWR "a connector" "what one pair reflects follows" "SWR of one pair." "1.05";
    SCALE "scale" POWER "an instrument" "a power follows" "Full scale." "100 W";
    RESOLUTION "resolution" POWER "an instrument" "a power follows" "Smallest step that can be read." "0.1 W";
    INSTRUMENT_BAND "band" FREQUENCY "an instrument" "a range follows" "Where the instrument may be used." "1.8 MHz to 500 MHz";
    DIRECTIVITY "directivity" RATIO_DB "an instrument" "a ratio follows" "Of a reflection meter, how well it parts the two waves." "40 dB";
}

/// An instrument.
pub(crate) static INSTRUMENT: Form = Form {
    word: "instrument",
    also: &["wattmeter", "analyser"],
    noun: "an instrument",
    doc: "Defines a measuring instrument.",
    examples: &["instrument W1 \"directional wattmeter\" { accuracy 5 % of reading; scale 100 W }"],
    subject: Subject::New(NameKind::Instrument),
    slots: &[&[TITLE]],
    block: Block::Lines(
        Context::Instrument,
        &[
            &INSTRUMENT_BAND,
            &INSTRUMENT_ACCURACY,
            &SOURCE,
            &CALIBRATED,
            &SCALE,
            &RESOLUTION,
            &DUE,
            &LINEARITY,
            &REPEATABILITY,
            &DIRECTIVITY,
            &CERTIFICATE,
            &super::recalled::RECALLED_INSTRUMENT,
        ],
    ),
    ..Form::EMPTY
};

static INSTRUMENT_ACCURACY: Form = Form {
    word: "accuracy",
    noun: "an instrument",
    doc: "How far a reading may be off: a share of the reading or of full scale, or in dB.",
    examples: &[
        "accuracy 5 % of reading",
        "accuracy 5 % of full scale",
        "accuracy 0.05 dB",
    ],
    slots: &[&[Slot::value(0, &q::ACCURACY)
        .first()
        .then(&[Then("of", &OneOf(w::SHARE_OF))])
        .says("a share says of what it is", "5 % of reading")]],
    needs: &[need(1, "the accuracy follows")],
    once: true,
    ..Form::EMPTY
};

static CERTIFICATE: Form = Form {
    word: "certificate",
    noun: "an instrument",
    doc: "A file with the correction of its readings and U(k) by frequency and level: a table, or a digital calibration certificate (XML).",
    examples: &["certificate from \"w1-2026.csv\""],
    slots: &[&[Slot::word(
        0,
        "from",
        &[super::types::Takes::File(
            super::types::FileKind::Certificate,
        )],
    )
    .first()
    .says("the file", "from \"w1-2026.csv\"")]],
    needs: &[need(1, "`from` and the file follow")],
    ..Form::EMPTY
};

macro_rules! spread_line {
    ($n:ident $w:literal $of:ident $last:literal $doc:literal $ex:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: concat!("the ", $w),
            doc: $doc,
            examples: &[concat!($w, " ", $ex), concat!($w, " 1 % of ", $last)],
            slots: &[&[Slot::value(0, &q::ACCURACY)
                .first()
                .then(&[Then("of", &OneOf(w::$of))])
                .says($doc, $ex)]],
            needs: &[need(1, "a share of the reading follows")],
            once: true,
            ..Form::EMPTY
        };
    };
}
spread_line! { LINEARITY "linearity" SHARE_OF "full scale" "Part of its error that does not cancel between two of its own readings." "1 %" }
spread_line! { REPEATABILITY "repeatability" OF_READING "reading" "Spread of one reading." "0.6 % k 1" }

macro_rules! date_line {
    ($n:ident $w:literal $doc:literal $ex:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "an instrument",
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[Slot::bare(0, &Date).first().says($doc, $ex)]],
            needs: &[need(1, "a date follows")],
            once: true,
            ..Form::EMPTY
        };
    };
}
date_line! { CALIBRATED "calibrated" "Date of the last calibration." "2026-01-10" }
date_line! { DUE "due" "Date its next calibration is due." "2028-01-10" }
