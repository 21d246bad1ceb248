//! Limits, readings and expectations: three-way verdicts.

mod expectation;
mod instrument;
mod limit;
mod power_kind;
mod reading;
mod reflection;
mod rule;

use downlead_station::model::Node;

use crate::cause::{Budget, Cause};
use crate::chain::{Feed, Reached, Run, holds};
use crate::result::BandResult;
use expectation::expectation;
use limit::limit;
use reading::reading;

pub(crate) use expectation::receive_statement;
pub(crate) use instrument::{beside_scale, instrument_db, lapsed, unknown_instrument};
pub(crate) use power_kind::{mean_factor, pep_factor};
pub(crate) use rule::{SMALLEST_FAULT_DB, agreement};

/// Judges the statements at the nodes.
pub(crate) fn judge<'m>(
    run: &mut Run<'m, '_>,
    result: &mut BandResult,
    feed: Option<&Feed<'m>>,
    reached: &Reached<'m>,
) {
    let states = std::mem::take(&mut run.states);
    let mut limits = Vec::new();
    let mut readings = Vec::new();
    let mut logs = Vec::new();
    for (loc, node, state) in &states {
        let on = match node {
            Node::Read { on, .. }
            | Node::Expect { on, .. }
            | Node::Limit { on, .. }
            | Node::Log { on, .. } => on,
        };
        if !holds(on, run.point, run.cx.env) {
            continue;
        }
        match node {
            Node::Limit {
                quantity,
                watts,
                kind,
                ..
            } => {
                limits.extend(limit(
                    run, result, feed, reached, state, *loc, *quantity, *watts, *kind,
                ));
            }
            Node::Read {
                read,
                own_tolerance,
                meta,
                ..
            } if feed.is_some() => {
                readings.extend(reading(
                    run,
                    result,
                    *loc,
                    read,
                    *own_tolerance,
                    meta,
                    state,
                ));
            }
            Node::Log {
                file, instrument, ..
            } if feed.is_some() => {
                logs.extend(crate::log::judge(
                    run,
                    result,
                    *loc,
                    file,
                    instrument.as_ref(),
                    state,
                ));
            }
            Node::Expect { expect, .. } if feed.is_some() => {
                expectation(run, result, *loc, expect, state)
            }
            _ => {}
        }
    }
    result.limits = limits.into();
    result.readings = readings.into();
    result.logs = logs.into();
}

/// What to improve first.
fn largest(b: &Budget<'_>) -> String {
    let total: f64 = b.terms.iter().map(|t| t.1 * t.1).sum();
    let Some(best) = b
        .terms
        .iter()
        .max_by(|x, y| x.1.abs().total_cmp(&y.1.abs()))
    else {
        return "No doubt is stated; the margin is exactly nothing.".to_owned();
    };
    let share = 100.0 * best.1 * best.1 / total;
    let what = match &best.0 {
        Cause::Power(_) => "the transmitter's power".to_owned(),
        Cause::Instrument(n) => format!("instrument {n}"),
        Cause::Cable(n) => format!("the loss table {n}"),
        Cause::Length(_) => "a length".to_owned(),
        Cause::Connector(n) => format!("the connectors of family {n}"),
        Cause::Device(_) => "a device's loss".to_owned(),
        Cause::Gain(_) => "the antenna's gain".to_owned(),
        Cause::Phases(_) => "reflections of unknown phase".to_owned(),
        Cause::Temperature(n) => format!("the temperature of {n}"),
        Cause::Added(_) => "the added loss".to_owned(),
    };
    format!("The largest share of the doubt ({share:.0} %) is {what}.")
}
