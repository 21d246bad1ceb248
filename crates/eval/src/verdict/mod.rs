//! Limits, readings and expectations: three-way verdicts.

mod cold;
mod expectation;
mod largest;
mod limit;
mod log;
mod newest;
mod power_kind;
mod reading;
mod reflection;
mod rule;
mod same_meter;
mod trend;
mod watts_swr;

pub(crate) use trend::days;

use downlead_base::{Diagnostic, Edit, Fix, Loc, codes};
use downlead_quantity::UnitId;
use downlead_station::model::Node;
use rustc_hash::FxHashMap;

use crate::chain::{Feed, Reached, Run, holds};
use crate::log_place::log_places;
use crate::result::{BandResult, ReadingResult};
use expectation::expectation;
use limit::limit;

pub(crate) use limit::compare;
pub(crate) use power_kind::kind_factor;
use reading::reading;

pub(crate) use expectation::receive_statement;
pub(crate) use power_kind::{mean_factor, mean_over, peak_over, pep_factor};
pub(crate) use reading::{corrected, power_budget, read_reflection};
pub(crate) use reflection::METER_GAMMA;
pub(crate) use rule::SMALLEST_FAULT_DB;
pub(crate) use same_meter::scatter_db;

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
    let places = log_places(&run.cx.chain.steps, run.cx.station);
    let places: FxHashMap<Loc, Option<&str>> = places.iter().map(|p| (p.loc, p.after)).collect();
    for (loc, node, state) in &states {
        let on = match node {
            Node::Desense { .. } => {
                run.diags.push(needs_receiver(*loc));
                continue;
            }
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
                unit,
                ..
            } if feed.is_some() => {
                let had = run.diags.len();
                let judged = reading(run, result, *loc, read, *own_tolerance, meta, state);
                if let (Some(r), Some(unit)) = (&judged, unit) {
                    slip_of_unit(&mut run.diags[had..], r, *unit);
                }
                readings.extend(judged);
            }
            Node::Log {
                file, instrument, ..
            } if feed.is_some() => {
                let newest = newest::newest_before(run, result, state);
                logs.extend(log::judge(
                    run,
                    (places.get(loc).copied().flatten(), newest),
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
    run.states = states;
    result.limits = limits.into();
    result.readings = readings.into();
    result.logs = logs.into();
    if let Some(f) = feed {
        result.rules = crate::licence::judge(run, result, f).into();
    }
}

/// A limit of a desense in a chain that receives nothing.
fn needs_receiver(loc: Loc) -> Diagnostic {
    Diagnostic::new(
        &codes::MISPLACED_STATEMENT,
        loc,
        "A desense is one of a receiver, and this is a transmit chain.",
    )
    .at("not compared")
    .help("Move the line to the receive chain whose receiver must not be desensitised.")
}

/// A thousand times too much or too little in dB, and how near a reading must come to it.
const THOUSAND_DB: (f64, f64) = (30.0, 1.5);

/// Whether a difference is that of a unit a thousand times too large or small.
fn is_thousand(difference_db: f64) -> bool {
    (difference_db.abs() - THOUSAND_DB.0).abs() < THOUSAND_DB.1
}

/// Offers the unit that makes a reading what is expected, where it is off by a thousand.
fn slip_of_unit(found: &mut [Diagnostic], r: &ReadingResult, (id, loc): (UnitId, Loc)) {
    const POWERS: [&str; 4] = ["uW", "mW", "W", "kW"];
    let Some(at) = POWERS.iter().position(|s| UnitId::parse(s) == Some(id)) else {
        return;
    };
    let meant = if r.difference_db < 0.0 {
        POWERS.get(at + 1)
    } else {
        at.checked_sub(1).and_then(|i| POWERS.get(i))
    };
    let told = found
        .iter_mut()
        .find(|d| d.code.id == codes::READING_CONTRADICTS.id);
    if let (true, Some(unit), Some(d)) = (is_thousand(r.difference_db), meant, told) {
        d.fixes.push(Fix {
            title: format!("write it in `{unit}`"),
            edits: vec![Edit {
                loc,
                text: (*unit).to_owned(),
            }],
            preferred: false,
        });
    }
}
