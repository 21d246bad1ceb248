//! An SWR beside the watts it should follow from: both were read at one point on one day.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::{gamma_from_swr, swr_from_gamma};
use downlead_quantity::{Measure, from_db, number, power};
use downlead_station::attach::{Cell, Row};
use downlead_station::model::{Meta, Node, Read, ReadPower};

use super::reflection::METER_GAMMA;
use crate::chain::{NodeState, Run, holds};

/// What two readings of power say of the reflection, and the words for it if the SWR read beside
/// them is another by more than a meter's directivity and the doubts stated.
fn differ(forward: &Measure, reflected: &Measure, swr: &Measure) -> Option<String> {
    let g = libm::sqrt(reflected.value / forward.value);
    // no more comes back than goes there: that is told of the reading itself
    if !g.is_finite() || g >= 1.0 {
        return None;
    }
    let read = gamma_from_swr(swr.value);
    let of_swr = gamma_from_swr(swr.value + libm::sqrt(3.0) * swr.u) - read;
    // a power off by u dB is a reflection coefficient off by half of it
    let of_watts = g * (from_db(0.5 * libm::sqrt(3.0) * (forward.u + reflected.u)) - 1.0);
    ((g - read).abs() > METER_GAMMA + of_swr + of_watts).then(|| {
        format!(
            "SWR {} stands beside {} forward and {} reflected, which are SWR {}.",
            number(swr.value, 2),
            power(forward.value),
            power(reflected.value),
            number(swr_from_gamma(g), 2)
        )
    })
}

fn finding(at: Loc, words: String) -> Diagnostic {
    Diagnostic::new(&codes::SWR_BESIDE_WATTS, at, words)
        .at("not what the watts say")
        .help("One of them was misread or mistyped; look at the meter's range and scale.")
}

/// Compares the SWR readings of a chain with the watts read at the same point on the same day.
pub(super) fn at_nodes(run: &mut Run<'_, '_>, states: &[(Loc, &Node, NodeState<'_>)]) {
    type At<'n> = (Loc, usize, &'n Read, &'n Meta);
    let read: Vec<At<'_>> = states
        .iter()
        .filter_map(|(loc, n, s)| match n {
            Node::Read { read, meta, on, .. } if holds(on, run.point, run.cx.env) => {
                Some((*loc, s.nodes, read, meta))
            }
            _ => None,
        })
        .collect();
    let mut found = Vec::new();
    for (loc, node, r, meta) in &read {
        let (Read::Swr(swr), Some(date)) = (r, &meta.date) else {
            continue;
        };
        let beside = |want: ReadPower| {
            let mut same = read.iter().filter_map(|(l, n, r, m)| match r {
                Read::Power(which, p)
                    if *which == want && n == node && m.date.as_ref() == Some(date) =>
                {
                    Some((*l, *p))
                }
                _ => None,
            });
            // several of a kind: nobody knows which belongs to the SWR
            same.next().filter(|_| same.next().is_none())
        };
        let Some((at, back)) = beside(ReadPower::Reflected) else {
            continue;
        };
        let forward = beside(ReadPower::Forward).map(|f| f.1).or_else(|| {
            let net = beside(ReadPower::Net)?.1;
            Some(Measure {
                value: net.value + back.value,
                u: net.u,
            })
        });
        if let Some(words) = forward.and_then(|f| differ(&f, &back, swr)) {
            found.push(finding(*loc, words).also(at, "the watts"));
        }
    }
    run.diags.append(&mut found);
}

/// The same of one row of a log.
pub(super) fn in_row(loc: Loc, row: &Row) -> Option<Diagnostic> {
    let exact = |c: Cell| c.map(|(value, _)| Measure { value, u: 0.0 });
    let words = differ(
        &exact(row.forward_w)?,
        &exact(row.reflected_w)?,
        &exact(row.swr)?,
    )?;
    Some(finding(loc, format!("In line {}: {words}", row.line)))
}
