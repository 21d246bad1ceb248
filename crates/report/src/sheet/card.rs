//! Test points, with empty columns to fill in.

use crate::shape::card::{Card, CardFile, TestPoint};
use crate::write::csv::{Field, Value, csv};

/// All test points.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn card(file: &CardFile) -> Result<String, csv::Error> {
    let cards = file.cards.iter();
    let rows: Vec<_> = cards
        .flat_map(|c| c.points.iter().map(move |p| (c, p)))
        .collect();
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<(&'a Card, &'a TestPoint)>> {
    vec![
        ("station", |r| (&r.0.station).into()),
        ("chain", |r| (&r.0.chain).into()),
        ("band", |r| (&r.0.band).into()),
        ("point", |r| r.0.point.map(|p| p.word()).into()),
        ("frequency_hz", |r| r.0.frequency_hz.into()),
        ("at", |r| (&r.1.at).into()),
        ("branch", |r| r.1.branch.as_ref().into()),
        ("forward_w", |r| r.1.forward_w.into()),
        ("low_w", |r| r.1.low_w.into()),
        ("high_w", |r| r.1.high_w.into()),
        ("forward_dbm", |r| r.1.forward_dbm.into()),
        ("uncertainty_db", |r| r.1.uncertainty_db.into()),
        ("swr", |r| r.1.swr.into()),
        ("instrument", |r| r.0.instrument.as_ref().into()),
        ("today_w", |_| Value::None),
        ("today_swr", |_| Value::None),
        ("today_date", |_| Value::None),
        ("today_person", |_| Value::None),
        ("today_instrument", |_| Value::None),
        ("file", |r| (&r.0.file).into()),
    ]
}
