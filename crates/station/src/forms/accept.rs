//! That a finding is accepted.

use super::types::Takes::Date;
use super::types::{Form, NameKind, Slot, Subject, need, slots};

slots! { enum AcceptSlot { Reason, Until } }
/// Stands in every block, below the line whose finding it accepts.
pub(super) static ACCEPT: Form = Form {
    word: "accept",
    also: &["waive", "waiver", "ignore", "suppress", "allow"],
    noun: "an acceptance",
    doc: "Accepts a finding of the line above it until a day, with the reason.",
    examples: &["accept limit-cannot-tell \"the sweep of A1 is booked\" until 2027-03-01"],
    subject: Subject::Use(NameKind::Finding),
    slots: &[&[
        Slot::text(AcceptSlot::Reason.id()).says("why, in quotes", "\"the sweep of A1 is booked\""),
        Slot::word(AcceptSlot::Until.id(), "until", &[Date])
            .says("its last day", "until 2027-03-01"),
    ]],
    needs: &[
        need(AcceptSlot::Reason.bit(), "the reason follows in quotes"),
        need(AcceptSlot::Until.bit(), "`until` and its last day follow"),
    ],
    ..Form::EMPTY
};
