//! Statements at the left margin, and what stands in bands, stations and places.

use super::bundle::ABOUT_ALWAYS;
use super::chain::CHAIN;
use super::quantity as q;
use super::rules;
use super::types::Takes::{Equals, File, Name, OneOf, Value};
use super::types::{
    BLOCK, Block, Context, FileKind, Form, NameKind, Slot, Stands, Subject, need, slots,
};
use super::words as w;
use super::{CABLE, CONNECTOR_DEFINITION, DEVICE_DEFINITION, INSTRUMENT, SESSION, STATION_LINES};

/// Statements at the left margin.
pub(crate) static TOP: &[&Form] = &[
    &USE,
    &BAND,
    &LET,
    &CABLE,
    &CONNECTOR_DEFINITION,
    &DEVICE_DEFINITION,
    &INSTRUMENT,
    &SESSION,
    &STATION,
    &CHAIN,
    &rules::LICENCE,
    &rules::RULES,
    &super::link::LINK,
    &super::variant::VARIANT,
    &super::accept::ACCEPT,
];

/// A text in quotes after a definition's name.
pub(crate) const TITLE: Slot = Slot::text(0)
    .stands(Stands::Head)
    .says("what it is, in quotes", "\"10 mm foam\"");

static USE: Form = Form {
    word: "use",
    also: &["import", "include"],
    noun: "`use`",
    doc: "Brings in the definitions of another file, which must lie below the root.",
    examples: &["use \"cables.downlead\""],
    slots: &[&[Slot::bare(0, &File(FileKind::Text)).first().says(
        "relative to this file, below the root",
        "\"cables.downlead\"",
    )]],
    needs: &[need(1, "the path follows in quotes")],
    ..Form::EMPTY
};

slots! { enum Band { Frequency } }
static BAND: Form = Form {
    word: "band",
    noun: "a band",
    doc: "Names a frequency, a range, or a transmit and receive pair.",
    examples: &[
        "band 2m 145.3 MHz",
        "band hf80 3.5 MHz to 3.8 MHz",
        "band 2m { transmit 146.9 MHz; receive 146.3 MHz }",
    ],
    subject: Subject::New(NameKind::Band),
    slots: &[&[Slot::value(Band::Frequency.id(), &q::FREQUENCY)
        .first()
        .says("one frequency, or its two edges", "145.3 MHz")]],
    needs: &[need(
        Band::Frequency.bit() | BLOCK,
        "a band needs a frequency",
    )],
    block: Block::Lines(Context::Band, &[&TRANSMIT, &RECEIVE]),
    ..Form::EMPTY
};

macro_rules! frequency_line {
    ($n:ident $w:literal $also:expr, $doc:literal $ex:literal) => {
        static $n: Form = Form {
            word: $w,
            also: $also,
            noun: "a band",
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[Slot::value(0, &q::FREQUENCY).first().says($doc, $ex)]],
            needs: &[need(1, "a frequency follows")],
            once: true,
            ..Form::EMPTY
        };
    };
}
frequency_line! { TRANSMIT "transmit" &["tx", "output"], "The transmit frequency." "146.9 MHz" }
frequency_line! { RECEIVE "receive" &["rx", "input"], "The receive frequency." "146.3 MHz" }

static LET: Form = Form {
    word: "let",
    noun: "a named value",
    doc: "Names a value; arithmetic keeps its kind.",
    examples: &["let mast = 30 m"],
    subject: Subject::New(NameKind::Let),
    slots: &[&[Slot::bare(0, &Equals)
        .first()
        .then(&[Value(&q::ANY)])
        .says("a number with its unit, or arithmetic", "= 30 m")]],
    needs: &[need(1, "a named value needs `=` and its value")],
    ..Form::EMPTY
};

static STATION: Form = Form {
    word: "station",
    also: &["site"],
    noun: "a station",
    doc: "A station: places, parts and chains.",
    examples: &["station hill \"the hill\" { place mast }"],
    subject: Subject::New(NameKind::Station),
    slots: &[&[TITLE]],
    needs: &[need(BLOCK, "a station has a block")],
    block: Block::Lines(Context::Station, STATION_LINES),
    ..Form::EMPTY
};

slots! { enum Position { Place, Datum } }
pub(crate) static POSITION: Form = Form {
    word: "position",
    also: &["location", "coordinates"],
    noun: "a position",
    doc: "Where the station is.",
    examples: &["position 49.3333° S 123.1667° W, wgs84"],
    slots: &[&[
        Slot::value(Position::Place.id(), &q::ANGLE)
            .first()
            .then(&[OneOf(w::LATITUDE), Value(&q::ANGLE), OneOf(w::LONGITUDE)])
            .says(
                "latitude and longitude, each with its letter",
                "49.3333° S 123.1667° W",
            ),
        Slot::one_of(Position::Datum.id(), &w::DATUMS).says("the datum", "wgs84"),
    ]],
    needs: &[need(
        Position::Place.bit(),
        "a position is a latitude and a longitude",
    )],
    once: true,
    ..Form::EMPTY
};

pub(crate) static GROUND: Form = Form {
    word: "ground",
    also: &["elevation"],
    noun: "the height of the ground",
    doc: "Height of the ground above mean sea level.",
    examples: &["ground 612 m amsl"],
    slots: &[
        &[Slot::value(0, &q::HEIGHT)
            .first()
            .then(&[OneOf(w::ABOVE_SEA)])
            .says("a height above mean sea level", "612 m amsl")],
        ABOUT_ALWAYS,
    ],
    needs: &[need(1, "the height of the ground follows")],
    once: true,
    ..Form::EMPTY
};

pub(crate) static PLACE: Form = Form {
    word: "place",
    also: &["room"],
    noun: "the head of `place`",
    doc: "A place with its temperature.",
    examples: &["place mast { temperature 10 °C }"],
    subject: Subject::New(NameKind::Place),
    block: Block::Lines(Context::Place, &[&TEMPERATURE]),
    ..Form::EMPTY
};

pub(crate) static TEMPERATURE: Form = Form {
    word: "temperature",
    noun: "a temperature",
    doc: "The temperature there.",
    examples: &["temperature 15 °C", "temperature -10 °C to 35 °C"],
    slots: &[
        &[Slot::value(0, &q::TEMPERATURE)
            .first()
            .says("an interval counts as uncertainty", "15 °C")],
        ABOUT_ALWAYS,
    ],
    needs: &[need(1, "a temperature follows")],
    once: true,
    ..Form::EMPTY
};

pub(crate) static JOINS: Form = Form {
    word: "joins",
    noun: "`joins`",
    doc: "The join between two neighbours with no connector between.",
    examples: &["joins n-pair"],
    slots: &[&[Slot::bare(0, &Name(NameKind::Connector))
        .first()
        .says("a connector of the files or the library", "n-pair")]],
    needs: &[need(1, "the connector of the joins follows")],
    once: true,
    ..Form::EMPTY
};
