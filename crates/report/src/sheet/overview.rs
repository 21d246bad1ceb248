//! The overview as a table.

use crate::shape::overview::{Overview, OverviewRow};
use crate::write::csv::{Field, Value, csv};

/// One row a station and band.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn overview(o: &Overview) -> Result<String, csv::Error> {
    let fields: &[Field<OverviewRow>] = &[
        ("file", |r| (&r.file).into()),
        ("line", |r| r.line.into()),
        ("station", |r| (&r.station).into()),
        ("chain", |r| (&r.chain).into()),
        ("band", |r| (&r.band).into()),
        ("frequency_hz", |r| r.frequency_hz.into()),
        ("erp_w", |r| r.erp_w.into()),
        ("limit_w", |r| r.limit_w.into()),
        ("quantity", |r| r.quantity.into()),
        ("cite", |r| r.cite.as_ref().into()),
        ("verdict", |r| r.verdict.word().into()),
        ("margin_db", |r| r.margin_db.into()),
        ("uncertainty_db", |r| r.uncertainty_db.into()),
        ("newest_reading", |r| r.newest_reading.as_ref().into()),
        ("age_days", |r| {
            Value::Words(r.age_days.map_or_else(String::new, |d| d.to_string()))
        }),
        ("errors", |r| r.errors.into()),
        ("warnings", |r| r.warnings.into()),
        ("codes", |r| Value::Words(r.codes.join(" "))),
        ("message", |r| r.message.as_ref().into()),
        ("kind", |r| r.kind.word().into()),
        ("what", |r| r.what.as_ref().into()),
        ("share", |r| r.share.into()),
        ("under", |r| Value::Words(r.under.join(" "))),
        ("classes", |r| Value::Words(r.classes.join(" "))),
        ("beside", |r| Value::Words(r.beside.join(" "))),
    ];
    csv(fields, &o.rows)
}
