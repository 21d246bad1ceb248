//! Exposure of people: places where they can be, and what rules say of fields.

use super::quantity as q;
use super::types::Takes::{Name, Then};
use super::types::{Form, NameKind, Set, Slot, Subject, need, slots, word};

/// Who can be at a place.
pub(crate) const TIER: Set = Set {
    words: &[
        word("public", "anyone can be there"),
        word(
            "occupational",
            "only who works there and knows of the fields",
        ),
    ],
    rule: "A place is open to the public, or to those who work there only.",
    instead: "Two groups are two lines.",
};

slots! { enum SpotSlot { Out, Agl, From, Tier } }
/// A place where people can be.
pub(crate) static SPOT: Form = Form {
    word: "spot",
    noun: "`spot`",
    doc: "A place where people can be: the fields of all transmitters there are added up and held against the exposure limits that the station is `under`.",
    examples: &[
        "spot gate 5 m out, 2 m agl, public",
        "spot platform 1.2 m from A1, 7.1 m from A9 of harbour, occupational",
    ],
    subject: Subject::New(NameKind::Spot),
    slots: &[&[
        Slot::value_as(SpotSlot::Out.id(), &q::METRES, "out")
            .says("horizontal distance from the mast", "5 m out"),
        Slot::value_as(SpotSlot::Agl.id(), &q::METRES, "agl")
            .says("height of the head above ground", "2 m agl"),
        Slot::value_as(SpotSlot::From.id(), &q::METRES, "from")
            .then(&[Name(NameKind::Tag), Then("of", &Name(NameKind::Station))])
            .each()
            .says(
                "straight distance to the nearest part of an antenna",
                "1.2 m from A1",
            ),
        Slot::one_of(SpotSlot::Tier.id(), &TIER).says("who can be there", "public"),
    ]],
    needs: &[need(
        SpotSlot::Out.bit() | SpotSlot::From.bit(),
        "where it is follows: `5 m out, 2 m agl`, or `1.2 m from A1`",
    )],
    ..Form::EMPTY
};

/// Factor of reflection on the field.
pub(super) static REFLECTION: Form = Form {
    word: "reflection",
    noun: "`reflection`",
    doc: "Factor on the field by reflection from the ground: 1 in free space, 1.6 over realistic ground, 2 for total reflection.",
    examples: &["reflection 1.6"],
    slots: &[&[Slot::value(0, &q::NUMBER)
        .first()
        .says("the factor, 1 to 2", "1.6")]],
    needs: &[need(1, "the factor follows")],
    once: true,
    ..Form::EMPTY
};
