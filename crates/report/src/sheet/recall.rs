//! What rests on a recalled instrument or sheet, as a table.

use crate::shape::recall::{Effect, RecallReport, RecallRow};
use crate::write::csv::{Field, csv};

/// One row a result.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn recall(r: &RecallReport) -> Result<String, csv::Error> {
    let fields: &[Field<RecallRow>] = &[
        ("effect", |r| {
            match r.effect {
                Effect::Flips => "flips",
                Effect::Moves => "moves",
                Effect::Cancels => "cancels",
            }
            .into()
        }),
        ("file", |r| (&r.file).into()),
        ("line", |r| {
            usize::try_from(r.line).unwrap_or(usize::MAX).into()
        }),
        ("of", |r| (&r.of).into()),
        ("chain", |r| (&r.chain).into()),
        ("band", |r| (&r.band).into()),
        ("what", |r| (&r.what).into()),
        ("about", |r| (&r.about).into()),
        ("verdict", |r| r.verdict.as_ref().into()),
        ("verdict_recalled", |r| r.verdict_recalled.as_ref().into()),
        ("figure", |r| r.figure.as_ref().into()),
        ("value", |r| r.value.into()),
        ("value_recalled", |r| r.value_recalled.into()),
    ];
    csv(fields, &r.rows)
}
