//! An SWR beside the watts it should follow from: both were read at one point on one day.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::{gamma_from_swr, swr_from_gamma};
use downlead_quantity::{Measure, from_db, number, power};
use downlead_station::attach::{Cell, Row};
use downlead_station::model::{Instrument, Meta, Node, Read, ReadPower};

use super::reflection::METER_GAMMA;
use super::trend::SWR_HALF_WIDTH;
use crate::chain::{NodeState, Run, holds};
use crate::instrument::meter_of;

/// Of a meter that shows nothing reflected and does not say how fine it reads: what may still come
/// back, as a share of what goes there (common practice: a scale of a hundred divisions).
const UNSEEN: f64 = 0.01;

/// A power as read and how far it may be off, W.
#[derive(Clone, Copy)]
struct Watts {
    value: f64,
    half: f64,
}

impl Watts {
    /// With the stated uncertainty, or else that of the instrument: its accuracy, of a scale or of
    /// the reading, and its resolution (k = 2).
    fn read(m: Measure, instrument: Option<&Instrument>) -> Self {
        let half = if m.u > 0.0 {
            // one written as `0 W ± 0.1 W` has no uncertainty in dB
            m.value * (from_db(libm::sqrt(3.0) * m.u) - 1.0)
        } else {
            instrument.map(meter_of).map_or(0.0, |i| {
                let of_reading = i.u_of_reading * m.value;
                2.0 * libm::hypot(
                    libm::hypot(of_reading, i.u_linearity_w),
                    libm::hypot(i.u_full_scale_w, i.u_resolution_w),
                )
            })
        };
        Watts {
            value: m.value,
            half,
        }
    }
}

/// Compares the reflection that two power readings give with the SWR read at the same place. A
/// message if they differ by more than a meter's directivity and all uncertainties.
fn differ(forward: Watts, reflected: Watts, swr: &Measure) -> Option<String> {
    let g = libm::sqrt(reflected.value / forward.value);
    // more reflected than forward power has a finding of its own
    if !g.is_finite() || g >= 1.0 {
        return None;
    }
    let back = if reflected.value == 0.0 && reflected.half == 0.0 {
        UNSEEN * forward.value
    } else {
        reflected.half
    };
    let least = libm::sqrt((reflected.value - back).max(0.0) / (forward.value + forward.half));
    let most = libm::sqrt((reflected.value + back) / (forward.value - forward.half).max(0.0));
    let half = if swr.u > 0.0 {
        libm::sqrt(3.0) * swr.u
    } else {
        SWR_HALF_WIDTH
    };
    let low = gamma_from_swr((swr.value - half).max(1.0));
    let high = gamma_from_swr(swr.value + half);
    (low > most + METER_GAMMA || high < least - METER_GAMMA).then(|| {
        format!(
            "SWR {} was read with {} forward and {} reflected, which are SWR {}.",
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
                    let with = m.instrument.as_ref();
                    let with = with.and_then(|n| run.cx.env.instrument(&n.text));
                    Some((*l, Watts::read(*p, with)))
                }
                _ => None,
            });
            // several of a kind: which belongs to the SWR is unknown
            same.next().filter(|_| same.next().is_none())
        };
        let Some((at, back)) = beside(ReadPower::Reflected) else {
            continue;
        };
        let forward = beside(ReadPower::Forward).map(|f| f.1).or_else(|| {
            let net = beside(ReadPower::Net)?.1;
            Some(Watts {
                value: net.value + back.value,
                half: net.half + back.half,
            })
        });
        if let Some(words) = forward.and_then(|f| differ(f, back, swr)) {
            found.push(finding(*loc, words).also(at, "the watts"));
        }
    }
    run.diags.append(&mut found);
}

/// The same of one row of a log, read with an instrument if it is known.
pub(super) fn in_row(loc: Loc, row: &Row, with: Option<&Instrument>) -> Option<Diagnostic> {
    let as_read = |c: Cell| c.map(|(value, _)| Measure::exact(value));
    let words = differ(
        Watts::read(as_read(row.forward_w)?, with),
        Watts::read(as_read(row.reflected_w)?, with),
        &as_read(row.swr)?,
    )?;
    Some(finding(loc, format!("In line {}: {words}", row.line)))
}
