//! Links: one row a hop and frequency.

use crate::shape::link::{HopReport, LinkReport, Links};
use crate::write::csv::{Field, csv};

type Row<'a> = (&'a LinkReport, &'a HopReport);

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn link(all: &Links) -> Result<String, csv::Error> {
    let links = all.links.iter();
    let rows: Vec<Row<'_>> = links
        .flat_map(|l| l.hops.iter().map(move |h| (l, h)))
        .collect();
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("link", |r| (&r.0.name).into()),
        ("from", |r| (&r.1.from).into()),
        ("to", |r| (&r.1.to).into()),
        ("frequency_hz", |r| r.1.frequency_hz.into()),
        ("eirp_dbm", |r| r.1.eirp_dbm.into()),
        ("eirp_uncertainty_db", |r| r.1.eirp_uncertainty_db.into()),
        ("distance_m", |r| r.1.distance_m.into()),
        ("slant_m", |r| r.1.slant_m.into()),
        ("horizon_m", |r| r.1.horizon_m.into()),
        ("free_space_db", |r| r.1.free_space_db.into()),
        ("model", |r| (&r.1.model).into()),
        ("path_loss_db", |r| r.1.path_loss_db.into()),
        ("gain_dbi", |r| r.1.gain_dbi.into()),
        ("receive_loss_db", |r| r.1.receive_loss_db.into()),
        ("level_dbm", |r| r.1.level_dbm.into()),
        ("degradation_db", |r| r.1.degradation_db.into()),
        ("needed_dbm", |r| {
            r.1.judged.as_ref().map(|j| j.needed_dbm).into()
        }),
        ("margin_db", |r| {
            r.1.judged.as_ref().map(|j| j.margin_db).into()
        }),
        ("places_db", |r| {
            r.1.judged.as_ref().map(|j| j.places_db).into()
        }),
        ("left_db", |r| r.1.judged.as_ref().map(|j| j.left_db).into()),
        ("uncertainty_db", |r| {
            r.1.judged.as_ref().map(|j| j.uncertainty_db).into()
        }),
        ("verdict", |r| r.1.verdict.word().into()),
        ("missing", |r| (&r.1.missing.join("; ")).into()),
        ("assumed", |r| (&r.0.assumed.join("; ")).into()),
        ("left_out", |r| (&r.0.left_out.join("; ")).into()),
    ]
}
