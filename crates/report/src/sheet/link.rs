//! Links: one row a hop and frequency.

use crate::shape::link::{HopNotJudged, HopReport, JudgedReport, LinkReport, Links};
use crate::write::csv::{Field, csv};

/// A hop at a frequency; or one of which nothing can be computed.
#[derive(Clone, Copy)]
struct Row<'a> {
    link: &'a LinkReport,
    hop: Result<&'a HopReport, &'a HopNotJudged>,
}

impl<'a> Row<'a> {
    fn of<T>(&self, f: impl Fn(&'a HopReport) -> Option<T>) -> Option<T> {
        self.hop.ok().and_then(f)
    }

    fn judged<T>(&self, f: impl Fn(&'a JudgedReport) -> T) -> Option<T> {
        self.of(|h| h.judged.as_ref()).map(f)
    }

    /// What is missing for a verdict.
    fn missing(&self) -> String {
        match self.hop {
            Ok(h) => h.missing.join("; "),
            Err(h) => h.why.to_owned(),
        }
    }
}

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn link(all: &Links) -> Result<String, csv::Error> {
    let mut rows: Vec<Row<'_>> = Vec::new();
    for link in &all.links {
        rows.extend(link.hops.iter().map(|h| Row { link, hop: Ok(h) }));
        rows.extend(link.not_judged.iter().map(|h| Row { link, hop: Err(h) }));
    }
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("link", |r| (&r.link.name).into()),
        ("from", |r| match r.hop {
            Ok(h) => (&h.from).into(),
            Err(h) => (&h.hop).into(),
        }),
        ("to", |r| r.of(|h| Some(h.to.as_str())).into()),
        ("frequency_hz", |r| r.of(|h| Some(h.frequency_hz)).into()),
        ("eirp_dbm", |r| r.of(|h| h.eirp_dbm).into()),
        ("eirp_uncertainty_db", |r| {
            r.of(|h| h.eirp_uncertainty_db).into()
        }),
        ("distance_m", |r| r.of(|h| h.distance_m).into()),
        ("slant_m", |r| r.of(|h| h.slant_m).into()),
        ("horizon_m", |r| r.of(|h| h.horizon_m).into()),
        ("free_space_db", |r| r.of(|h| h.free_space_db).into()),
        ("model", |r| r.of(|h| Some(h.model.as_str())).into()),
        ("path_loss_db", |r| r.of(|h| h.path_loss_db).into()),
        ("pattern_sent_db", |r| r.of(|h| h.patterns_db[0]).into()),
        ("pattern_heard_db", |r| r.of(|h| h.patterns_db[1]).into()),
        ("gain_dbi", |r| r.of(|h| h.gain_dbi).into()),
        ("receive_loss_db", |r| r.of(|h| h.receive_loss_db).into()),
        ("level_dbm", |r| r.of(|h| h.level_dbm).into()),
        ("degradation_db", |r| r.of(|h| h.degradation_db).into()),
        ("needed_dbm", |r| r.judged(|j| j.needed_dbm).into()),
        ("margin_db", |r| r.judged(|j| j.margin_db).into()),
        ("places_db", |r| r.judged(|j| j.places_db).into()),
        ("left_db", |r| r.judged(|j| j.left_db).into()),
        ("uncertainty_db", |r| r.judged(|j| j.uncertainty_db).into()),
        ("verdict", |r| {
            r.hop.map_or("cannot-judge", |h| h.verdict.word()).into()
        }),
        ("missing", |r| (&r.missing()).into()),
        ("assumed", |r| (&r.link.assumed.join("; ")).into()),
        ("left_out", |r| (&r.link.left_out.join("; ")).into()),
    ]
}
