//! Variants as a table.

use crate::shape::variants::{ClauseState, StateReport, VariantChain, Variants};
use crate::write::csv::{Field, Value, csv};

/// A row: the station (named "") or a variant, by chain, band and clause.
struct Row<'v> {
    station: &'v str,
    variant: &'v str,
    chain: &'v VariantChain,
    state: &'v StateReport,
    clause: Option<&'v ClauseState>,
}

/// One row a state, chain, band and clause; the station as it is has no name in `variant`.
///
/// # Errors
/// None for writing into memory; the writer's own error type is passed on.
pub fn variants(v: &Variants) -> Result<String, csv::Error> {
    let mut rows = Vec::new();
    let mut based: Vec<(&str, &str, &str)> = Vec::new();
    for x in &v.variants {
        for chain in &x.chains {
            let key = (x.of.as_str(), chain.name.as_str(), chain.band.as_str());
            let base = chain.base.as_ref().filter(|_| !based.contains(&key));
            based.push(key);
            let states = [("", base), (x.name.as_str(), chain.variant.as_ref())];
            for (variant, state) in states {
                let Some(state) = state else { continue };
                let row = |clause| Row {
                    station: &x.of,
                    variant,
                    chain,
                    state,
                    clause,
                };
                match state.limits.is_empty() {
                    true => rows.push(row(None)),
                    false => rows.extend(state.limits.iter().map(|l| row(Some(l)))),
                }
            }
        }
    }
    let fields: &[Field<Row<'_>>] = &[
        ("station", |r| Value::Words(r.station.to_owned())),
        ("variant", |r| Value::Words(r.variant.to_owned())),
        ("chain", |r| (&r.chain.name).into()),
        ("band", |r| (&r.chain.band).into()),
        ("loss_db", |r| r.state.loss_db.into()),
        ("erp_w", |r| r.state.erp_w.into()),
        ("uncertainty_db", |r| r.state.uncertainty_db.into()),
        ("cite", |r| r.clause.map(|c| &c.cite).into()),
        ("limit_w", |r| r.clause.and_then(|c| c.limit_w).into()),
        ("quantity", |r| r.clause.and_then(|c| c.quantity).into()),
        ("verdict", |r| r.clause.map(|c| c.verdict.0.word()).into()),
        ("margin_db", |r| r.clause.and_then(|c| c.margin_db).into()),
        ("margin_uncertainty_db", |r| {
            r.clause.and_then(|c| c.uncertainty_db).into()
        }),
        ("change_db", |r| change(r).map(|s| s.change_db).into()),
        ("change_uncertainty_db", |r| {
            change(r).map(|s| s.uncertainty_db).into()
        }),
    ];
    csv(fields, &rows)
}

/// Change of the radiated power, or of the loss where nothing radiates; none of the station itself.
fn change(r: &Row<'_>) -> Option<crate::shape::diff::StepDiff> {
    r.chain
        .radiated
        .or(r.chain.loss)
        .filter(|_| !r.variant.is_empty())
}
