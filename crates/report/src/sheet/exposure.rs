//! Exposure of people: one row a spot, set of rules and transmitter on a frequency.

use crate::shape::chain::{Report, StationReport};
use crate::shape::exposure::{SourceReport, SpotNotJudged, SpotReport};
use crate::write::csv::{Field, csv};

/// A spot, with a transmitter at it; or one of which nothing can be said.
#[derive(Clone, Copy)]
struct Row<'a> {
    station: &'a StationReport,
    spot: Result<&'a SpotReport, &'a SpotNotJudged>,
    source: Option<&'a SourceReport>,
}

impl<'a> Row<'a> {
    fn spot(&self) -> Option<&'a SpotReport> {
        self.spot.ok()
    }

    /// File, line and name.
    fn place(&self) -> (&'a str, u32, &'a str) {
        match self.spot {
            Ok(s) => (&s.file, s.line, &s.name),
            Err(n) => (&n.file, n.line, &n.name),
        }
    }
}

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn exposure(all: &Report) -> Result<String, csv::Error> {
    let mut rows: Vec<Row<'_>> = Vec::new();
    for station in &all.stations {
        let Some(e) = &station.exposure else { continue };
        for spot in &e.spots {
            let row = |source| Row {
                station,
                spot: Ok(spot),
                source,
            };
            match spot.sources.is_empty() {
                true => rows.push(row(None)),
                false => rows.extend(spot.sources.iter().map(|x| row(Some(x)))),
            }
        }
        rows.extend(e.not_judged.iter().map(|n| Row {
            station,
            spot: Err(n),
            source: None,
        }));
    }
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("file", |r| r.place().0.into()),
        ("line", |r| r.place().1.into()),
        ("station", |r| (&r.station.name).into()),
        ("spot", |r| r.place().2.into()),
        ("tier", |r| r.spot().map(|s| s.tier).into()),
        ("rules", |r| r.spot().map(|s| s.set.as_str()).into()),
        ("of_station", |r| {
            r.source.and_then(|x| x.station.as_deref()).into()
        }),
        ("transmitter", |r| {
            r.source.map(|x| x.transmitter.as_str()).into()
        }),
        ("antenna", |r| r.source.map(|x| x.antenna.as_str()).into()),
        ("band", |r| r.source.map(|x| x.band.as_str()).into()),
        ("frequency_hz", |r| r.source.map(|x| x.frequency_hz).into()),
        ("mean_w", |r| r.source.and_then(|x| x.mean_w).into()),
        ("eirp_w", |r| r.source.and_then(|x| x.eirp_w).into()),
        ("uncertainty_db", |r| {
            r.source.map(|x| x.uncertainty_db).into()
        }),
        ("distance_m", |r| r.source.and_then(|x| x.distance_m).into()),
        ("zone", |r| r.source.and_then(|x| x.zone).into()),
        ("down_db", |r| r.source.and_then(|x| x.down_db).into()),
        ("density_w_m2", |r| {
            r.source.and_then(|x| x.density_w_m2).into()
        }),
        ("electric_v_m", |r| {
            r.source.and_then(|x| x.electric_v_m).into()
        }),
        ("limit_w_m2", |r| r.source.and_then(|x| x.limit_w_m2).into()),
        ("cite", |r| r.source.and_then(|x| x.cite.as_deref()).into()),
        ("share", |r| r.source.and_then(|x| x.share).into()),
        ("counts", |r| r.source.map(|x| x.counts).into()),
        ("refused", |r| match r.spot {
            Ok(_) => r.source.and_then(|x| x.refused).into(),
            Err(n) => n.why.into(),
        }),
        ("sum", |r| r.spot().and_then(|s| s.sum).into()),
        ("sum_with_uncertainty", |r| {
            r.spot().and_then(|s| s.sum_with_uncertainty).into()
        }),
        ("verdict", |r| {
            r.spot().map_or("cannot-judge", |s| s.verdict.word()).into()
        }),
    ]
}
