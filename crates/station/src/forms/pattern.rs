//! The pattern of an antenna.

use super::quantity as q;
use super::types::Takes::{BandNames, Value};
use super::types::{BLOCK, Block, Form, Set, Slot, need, slots, word};

/// Planes of a pattern.
const PLANES: Set = Set {
    words: &[word("elevation", "by the angle above the horizon")],
    rule: "A pattern is of one plane.",
    instead: "Only that by elevation is used.",
};

static ROW: Form = Form {
    noun: "a pattern",
    doc: "An angle above the horizon, and how far the gain is below the peak there.",
    examples: &["-30° 9 dB"],
    slots: &[&[Slot::value(0, &q::ANGLE)
        .first()
        .then(&[Value(&q::RATIO_DB)])
        .says(
            "an angle above the horizon, and how far the gain is below the peak there",
            "-30° 9 dB",
        )]],
    needs: &[need(1, "a row is an angle and an attenuation")],
    ..Form::EMPTY
};

slots! { enum PatternSlot { Plane, On } }
/// How the gain falls off from its peak.
pub(crate) static PATTERN: Form = Form {
    word: "pattern",
    noun: "a pattern",
    doc: "How far the gain is below its peak, by the angle above the horizon: for spots beyond the near field, and for hops.",
    examples: &["pattern elevation on 2m { 0° 0 dB; -30° 9 dB; -60° 14 dB; -90° 18 dB }"],
    slots: &[&[
        Slot::one_of(PatternSlot::Plane.id(), &PLANES)
            .first()
            .says("the plane", "elevation"),
        Slot::word(PatternSlot::On.id(), "on", &[BandNames]).says("the bands it is of", "on 2m"),
    ]],
    needs: &[
        need(PatternSlot::Plane.bit(), "the plane follows: `elevation`"),
        need(BLOCK, "its rows follow in a block"),
    ],
    block: Block::Rows(&ROW),
    ..Form::EMPTY
};
