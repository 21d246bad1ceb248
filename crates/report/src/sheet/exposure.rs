//! Exposure of people: one row a spot, set of rules and transmitter on a frequency.

use crate::shape::chain::{Report, StationReport};
use crate::shape::exposure::{SourceReport, SpotReport};
use crate::write::csv::{Field, csv};

type Row<'a> = (&'a StationReport, &'a SpotReport, &'a SourceReport);

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn exposure(all: &Report) -> Result<String, csv::Error> {
    let mut rows: Vec<Row<'_>> = Vec::new();
    for s in &all.stations {
        for spot in s.exposure.iter().flat_map(|e| &e.spots) {
            rows.extend(spot.sources.iter().map(|x| (s, spot, x)));
        }
    }
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("file", |r| (&r.1.file).into()),
        ("line", |r| r.1.line.into()),
        ("station", |r| (&r.0.name).into()),
        ("spot", |r| (&r.1.name).into()),
        ("tier", |r| r.1.tier.into()),
        ("rules", |r| (&r.1.set).into()),
        ("of_station", |r| r.2.station.as_deref().into()),
        ("transmitter", |r| (&r.2.transmitter).into()),
        ("antenna", |r| (&r.2.antenna).into()),
        ("band", |r| (&r.2.band).into()),
        ("frequency_hz", |r| r.2.frequency_hz.into()),
        ("mean_w", |r| r.2.mean_w.into()),
        ("eirp_w", |r| r.2.eirp_w.into()),
        ("uncertainty_db", |r| r.2.uncertainty_db.into()),
        ("distance_m", |r| r.2.distance_m.into()),
        ("zone", |r| r.2.zone.into()),
        ("density_w_m2", |r| r.2.density_w_m2.into()),
        ("electric_v_m", |r| r.2.electric_v_m.into()),
        ("limit_w_m2", |r| r.2.limit_w_m2.into()),
        ("cite", |r| r.2.cite.as_deref().into()),
        ("share", |r| r.2.share.into()),
        ("counts", |r| r.2.counts.into()),
        ("refused", |r| r.2.refused.into()),
        ("sum", |r| r.1.sum.into()),
        ("sum_with_uncertainty", |r| r.1.sum_with_uncertainty.into()),
        ("verdict", |r| r.1.verdict.word().into()),
    ]
}
