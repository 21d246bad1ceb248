//! Bench sessions: measured against promised.
//!
//! Readings of the text and of other files are gathered by band (`gather`), each piece's loss is
//! found from them with its uncertainty by cause (`cells`), compared with what its cable promises
//! at the temperature of the bench (`expected`), and the bands together say what the piece is
//! (`summary`). Formulas are those of [`downlead_physics::measure`].

mod cells;
mod compared;
mod expected;
mod explain;
mod findings;
mod gather;
mod meters;
mod one_port;
mod rank;
pub mod result;
pub mod run;
mod slips;
mod summary;

pub use explain::verdict_word;

use downlead_base::{Diagnostic, codes};
use downlead_station::Env;
use downlead_station::session::{ReadingKind, Session};

use crate::assume::{Assumed, Assumptions};
use crate::point::Point;
use cells::InLine;
use gather::{Gathered, TakenValue};
use meters::Meters;
use result::{BenchBand, SessionResult};
pub use summary::common_causes;

/// Computes a session.
pub(crate) fn evaluate(s: &Session, env: &Env, out: &mut Vec<Diagnostic>) -> SessionResult {
    let g = gather::gather(s, env, out);
    let mut assumed = Assumptions { list: Vec::new() };
    let mut meters = Meters::default();
    let mut next = 0;
    let equalised = equalised(s, &g, env, &mut meters, &mut assumed, &mut next, out);
    let (mut cells, mut rows, mut bands) = (Vec::new(), Vec::new(), Vec::new());
    let mut kept = Vec::new();
    let (mut swrs, mut elsewhere) = (Vec::new(), Vec::new());
    // what is said of a cable on every band is said once
    let mut cable_notes = Vec::new();
    for (band, group) in g.groups.iter().enumerate() {
        let point = Point {
            band: group.band.clone(),
            part: None,
            hz: group.hz,
            named: group.named,
        };
        let promised: Vec<_> = s
            .pieces
            .iter()
            .map(|p| expected::expected(p, &point, env, &mut assumed, &mut cable_notes))
            .collect();
        let from = cells.len();
        let (drift, baselines) = cells::Bench {
            session: s,
            env,
            point: &point,
            band,
            meters: &mut meters,
            assumed: &mut assumed,
            out,
            next: &mut next,
            equalised: &equalised,
            elsewhere: &mut elsewhere,
            swrs: &mut swrs,
        }
        .band(group, &promised, &mut cells, &mut rows, &mut kept);
        bands.push(BenchBand {
            band: group.band.clone(),
            named: group.named,
            hz: group.hz,
            baselines,
            drift,
            ranking: rank::ranked(s, &cells, from),
        });
    }
    findings::equalised_elsewhere(&equalised, &elsewhere, &bands, out);
    if !elsewhere.is_empty() {
        assumed.add(Assumed::EqualisedElsewhere, s.name.loc);
    }
    cable_notes.retain(|d: &Diagnostic| {
        // a piece of 75 ohm is computed as such, and is on the bench deliberately
        d.code.id != codes::IMPEDANCE_JUMP.id
    });
    out.append(&mut cable_notes);
    let slipped = slips::slips(s, &kept, &cells, &bands, out);
    slips::set_apart(&slipped, &mut cells, &mut bands);
    let pieces = summary::pieces(s, env, &cells, &bands, out);
    summary::session(s, &g, &meters, out);
    meters.certificates(s, env, &mut assumed, out);
    summary::verdicts(&pieces, &cells, &bands, out);
    SessionResult {
        name: s.name.loc,
        loc: s.loc,
        readings: g.groups.iter().map(|x| x.taken.len()).sum(),
        lost: g.lost,
        bands: bands.into(),
        pieces: pieces.into(),
        cells: cells.into(),
        rows: rows.into(),
        swrs: swrs.into(),
        meters: meters.names().into(),
        assumptions: assumed.list.into(),
    }
}

/// Two meters read in line, anywhere in the session.
fn equalised<'m>(
    s: &'m Session,
    g: &Gathered<'m>,
    env: &'m Env,
    meters: &mut Meters<'m>,
    assumed: &mut Assumptions,
    next: &mut usize,
    out: &mut Vec<Diagnostic>,
) -> Vec<InLine<'m>> {
    let mut pairs = Vec::new();
    let of_bands = g.groups.iter().enumerate();
    for (band, t) in of_bands.flat_map(|(i, x)| x.taken.iter().map(move |t| (i, t))) {
        let (ReadingKind::Equalise, TakenValue::Watts(w), Some((other, with))) =
            (t.kind, &t.shown, t.input)
        else {
            continue;
        };
        let near = gather::Taken {
            instrument: with,
            ..t.clone()
        };
        let (Some(a), Some(b)) = (
            meters.of(t, s, env, assumed, out),
            meters.of(&near, s, env, assumed, out),
        ) else {
            continue;
        };
        let minutes = t.minutes.unwrap_or(0.0);
        let (hz, date) = (g.groups[band].hz, s.meta.date.as_deref());
        let mut level = |id: usize, meter: usize, watts: f64| {
            meters.level((id, meter), (hz, watts), minutes, date, t.value_loc)
        };
        pairs.push(InLine {
            band,
            meters: (
                level(*next, a.number, *w),
                level(*next + 1, b.number, other),
            ),
            adapters: t.adapters,
            loc: t.loc,
        });
        *next += 2;
    }
    pairs
}
