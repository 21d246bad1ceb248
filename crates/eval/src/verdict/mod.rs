//! Limits, readings and expectations: three-way verdicts.

mod cold;
mod expectation;
mod largest;
mod limit;
mod log;
mod power_kind;
mod reading;
mod reflection;
mod rule;
mod same_meter;
mod trend;
mod watts_swr;

use downlead_station::model::Node;

use crate::chain::{Feed, Reached, Run, holds};
use crate::result::BandResult;
use expectation::expectation;
use limit::limit;
use reading::reading;

pub(crate) use expectation::receive_statement;
pub(crate) use power_kind::{mean_factor, pep_factor};

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
                logs.extend(log::judge(
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
    watts_swr::at_nodes(run, &states);
    result.limits = limits.into();
    result.readings = readings.into();
    result.logs = logs.into();
}
