//! Results beside random draws: one row a chain, band and way of computing.

use crate::shape::verify::{ChainVerification, Comparison, Estimate, Verification};
use crate::write::csv::{Field, csv};

/// One way of computing.
struct Row<'a> {
    chain: &'a ChainVerification,
    of: &'a Comparison,
    by: &'static str,
    method: &'static str,
    draws: Option<usize>,
    estimate: &'a Estimate,
}

/// All rows.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn verify(all: &Verification) -> Result<String, csv::Error> {
    let mut rows = Vec::new();
    for chain in &all.chains {
        let Some(of) = &chain.compared else { continue };
        let row = |by, method, draws, estimate| Row {
            chain,
            of,
            by,
            method,
            draws,
            estimate,
        };
        rows.push(row("derivatives", "derivatives", None, &of.derivatives));
        rows.push(row("report", of.method.word(), None, &of.reported));
        rows.push(row("draws", "draws", Some(all.draws), &of.drawn));
    }
    csv(&fields(), &rows)
}

fn fields<'a>() -> Vec<Field<Row<'a>>> {
    vec![
        ("station", |r| (&r.chain.station).into()),
        ("chain", |r| (&r.chain.chain).into()),
        ("direction", |r| r.chain.direction.word().into()),
        ("band", |r| (&r.chain.band).into()),
        ("point", |r| r.chain.point.map(|p| p.word()).into()),
        ("frequency_hz", |r| r.chain.frequency_hz.into()),
        ("quantity", |r| r.of.quantity.word().into()),
        ("unit", |r| r.of.unit.word().into()),
        ("by", |r| r.by.into()),
        ("method", |r| r.method.into()),
        ("draws", |r| r.draws.into()),
        ("mean", |r| r.estimate.mean.into()),
        ("uncertainty_db", |r| r.estimate.uncertainty_db.into()),
        ("low", |r| r.estimate.low.into()),
        ("high", |r| r.estimate.high.into()),
        ("loss_worst_low_db", |r| {
            r.of.loss_worst_db.map(|w| w[0]).into()
        }),
        ("loss_worst_high_db", |r| {
            r.of.loss_worst_db.map(|w| w[1]).into()
        }),
        ("loss_floor_db", |r| r.of.loss_floor_db.into()),
        ("file", |r| (&r.chain.file).into()),
        ("line", |r| r.chain.line.into()),
    ]
}
