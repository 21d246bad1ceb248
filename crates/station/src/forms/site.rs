//! What a station says of the site it shares with others.

use super::types::{Form, NameKind, Slot, Subject, need, slots};

/// That another station stands on the same site.
pub(super) static BESIDE: Form = Form {
    word: "beside",
    also: &["neighbour", "neighbor", "tenant"],
    noun: "`beside`",
    doc: "Another station of the same site: its transmitters count in what is judged of the site.",
    examples: &["beside harbour"],
    subject: Subject::Use(NameKind::Station),
    ..Form::EMPTY
};

slots! { enum AloneSlot { By } }
/// That no other station stands on the site.
pub(super) static ALONE: Form = Form {
    word: "alone",
    noun: "`alone`",
    doc: "No other station stands on the site, and who has looked, when.",
    examples: &["alone, \"QY4TRA 2026-07-04\""],
    slots: &[&[Slot::text(AloneSlot::By.id()).says(
        "who has looked, and when, in quotes",
        "\"QY4TRA 2026-07-04\"",
    )]],
    needs: &[need(1, "who has looked, and when, follows in quotes")],
    ..Form::EMPTY
};
