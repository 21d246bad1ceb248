//! Fields of an office's form, in a licence or rules.

use super::quantity as q;
use super::types::Takes::{BandNames, OneOf, Value};
use super::types::{Form, Set, Slot, Word, need, slots, word};
use crate::model::FieldWhat;

const WORDS: [Word; FieldWhat::ALL.len()] = {
    let mut out = [const { word("", "") }; FieldWhat::ALL.len()];
    let mut i = 0;
    while i < FieldWhat::ALL.len() {
        out[i] = word(FieldWhat::ALL[i].word(), FieldWhat::ALL[i].doc());
        i += 1;
    }
    out
};

/// What a field asks for.
const WHAT: Set = Set {
    words: &WORDS,
    rule: "A field asks for one thing.",
    instead: "Two fields are two lines.",
};

/// Units that a form may want.
const UNITS: &[Word] = &[
    word("MHz", "megahertz"),
    word("Hz", "hertz"),
    word("kHz", "kilohertz"),
    word("GHz", "gigahertz"),
    word("W", "watts"),
    word("mW", "milliwatts"),
    word("kW", "kilowatts"),
    word("dBm", "decibels over a milliwatt"),
    word("dBW", "decibels over a watt"),
    word("dB", "decibels"),
    word("dBi", "gain over an isotropic radiator"),
    word("dBd", "gain over a half-wave dipole"),
    word("m", "metres"),
    word("km", "kilometres"),
    word("ft", "feet"),
    word("degrees", "degrees with decimals"),
    word("dms", "degrees, minutes and seconds"),
];

/// To which side is rounded.
const SIDE: Set = Set {
    words: &[
        word("up", "to the next step above"),
        word("down", "to the next step below"),
    ],
    rule: "A field is rounded up or down; without either to the nearest.",
    instead: "Write one of them.",
};

slots! { enum FieldSlot { Label, What, On, In, To, Side } }

/// A field of a form.
pub(super) static FIELD: Form = Form {
    word: "field",
    also: &["form", "entry"],
    noun: "a field of a form",
    doc: "A field of a form that an office wants filled in, in the form's own unit and rounding; `report --coordination` fills it in.",
    examples: &[
        "field \"ERP\" erp in W, to 1 W",
        "field \"Gain\" gain on 2m in dBd, to 0.1 dB",
        "field \"Signature\" blank",
    ],
    slots: &[&[
        Slot::text(FieldSlot::Label.id())
            .first()
            .says("how the form calls it, in quotes", "\"ERP\""),
        Slot::one_of(FieldSlot::What.id(), &WHAT).says("what it asks for", "erp"),
        Slot::word(FieldSlot::On.id(), "on", &[BandNames])
            .says("the bands it is for; else each", "on 2m"),
        Slot::word(FieldSlot::In.id(), "in", &[OneOf(UNITS)])
            .says("the unit that the form wants", "in dBd"),
        Slot::word(FieldSlot::To.id(), "to", &[Value(&q::STEP)])
            .says("the step that the form rounds to", "to 0.1 dB"),
        Slot::one_of(FieldSlot::Side.id(), &SIDE)
            .after(FieldSlot::To.id(), "is said after the step")
            .says("to which side; else to the nearest", "up"),
    ]],
    needs: &[
        need(
            FieldSlot::Label.bit(),
            "how the form calls the field follows in quotes",
        ),
        need(
            FieldSlot::What.bit(),
            "what the field asks for follows, for example `erp`",
        ),
    ],
    ..Form::EMPTY
};
