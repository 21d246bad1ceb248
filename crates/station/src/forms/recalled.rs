//! `recalled`: what was found out later about an instrument or a sheet.

use super::quantity as q;
use super::types::{Form, Slot, Takes::Date, need};

/// Of an instrument.
pub(crate) static RECALLED_INSTRUMENT: Form = Form {
    word: "recalled",
    noun: "a recall",
    doc: "By which share its readings were found to be too high, and since when: they are corrected.",
    examples: &["recalled +6 % since 2026-01", "recalled -2 %"],
    slots: &[&[
        Slot::value(0, &q::OFF_SHARE)
            .first()
            .says("a share with its sign", "+6 %"),
        Slot::word(1, "since", &[Date]).says("the first day", "since 2026-01"),
    ]],
    needs: &[need(1, "a share with its sign follows")],
    once: true,
    ..Form::EMPTY
};

/// Of a cable.
pub(crate) static RECALLED_CABLE: Form = Form {
    word: "recalled",
    noun: "a recall",
    doc: "By which share the cable was found to lose more than its sheet says: its loss is larger by that.",
    examples: &["recalled +6 %"],
    slots: &[&[Slot::value(0, &q::OFF_SHARE)
        .first()
        .says("a share with its sign", "+6 %")]],
    needs: &[need(1, "a share with its sign follows")],
    once: true,
    ..Form::EMPTY
};
