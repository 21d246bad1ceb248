//! Desense: one row a receive channel and transmitter.

use crate::shape::chain::{Report, StationReport};
use crate::shape::desense::{DesenseReport, SourceReport};
use crate::write::csv::{Field, csv};

type Row<'a> = (
    &'a StationReport,
    &'a DesenseReport,
    Option<&'a SourceReport>,
);

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn desense(all: &Report) -> Result<String, csv::Error> {
    let mut rows: Vec<Row<'_>> = Vec::new();
    for s in &all.stations {
        for d in s.site.iter().flat_map(|x| &x.desense) {
            rows.extend(d.sources.iter().map(|x| (s, d, Some(x))));
            if d.sources.is_empty() {
                rows.push((s, d, None));
            }
        }
    }
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("file", |r| (&r.1.file).into()),
        ("line", |r| r.1.line.into()),
        ("station", |r| (&r.0.name).into()),
        ("receiver", |r| (&r.1.receiver).into()),
        ("receiver_hz", |r| r.1.hz.into()),
        ("transmitter", |r| {
            r.2.map(|s| s.transmitter.as_str()).into()
        }),
        ("transmitter_hz", |r| r.2.map(|s| s.hz).into()),
        ("offset_hz", |r| r.2.map(|s| s.offset_hz).into()),
        ("isolation_db", |r| r.2.and_then(|s| s.isolation_db).into()),
        ("noise_dbm_hz", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.dbm_hz)).into()
        }),
        ("noise_at_most", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.at_most)).into()
        }),
        ("noise_over_floor_db", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.over_floor_db))
                .into()
        }),
        ("noise_uncertainty_db", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.uncertainty_db))
                .into()
        }),
        ("noise_way_db", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.way_db)).into()
        }),
        ("desense_db", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.desense.db)).into()
        }),
        ("desense_on_site_db", |r| {
            r.2.and_then(|s| Some(s.noise.as_ref()?.desense_on_site?.db))
                .into()
        }),
        ("needs_db", |r| {
            r.2.and_then(|s| s.noise.as_ref()?.needs_db).into()
        }),
        ("carrier_dbm", |r| {
            r.2.and_then(|s| Some(s.carrier.as_ref()?.dbm)).into()
        }),
        ("carrier_at_most", |r| {
            r.2.and_then(|s| Some(s.carrier.as_ref()?.at_most)).into()
        }),
        ("blocking_dbm", |r| {
            r.2.and_then(|s| Some(s.carrier.as_ref()?.blocking_dbm))
                .into()
        }),
        ("carrier_under_db", |r| {
            r.2.and_then(|s| Some(s.carrier.as_ref()?.under_db)).into()
        }),
        ("carrier_uncertainty_db", |r| {
            r.2.and_then(|s| Some(s.carrier.as_ref()?.uncertainty_db))
                .into()
        }),
        ("together_db", |r| r.1.together.map(|t| t.db).into()),
        ("together_low_db", |r| r.1.together.map(|t| t.low_db).into()),
        ("together_high_db", |r| {
            r.1.together.map(|t| t.high_db).into()
        }),
        ("limit_db", |r| r.1.limit_db.into()),
        ("limit_source", |r| r.1.limit_source.as_deref().into()),
        ("verdict", |r| r.1.verdict.word().into()),
        ("missing", |r| (&r.1.missing.join("; ")).into()),
        ("assumed", |r| (&r.1.assumed.join("; ")).into()),
    ]
}
