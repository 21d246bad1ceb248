//! Readings of a station over the years: `readings from "site.csv"` at a node of a chain.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::measure::swr as swr_reading;
use downlead_quantity::{db, decibel_signed, power, to_db};
use downlead_station::NameKind;
use downlead_station::attach::Row;
use downlead_station::model::{Instrument, Name};

use super::newest::Newest;
use super::reading::certified;
use super::rule::{SMALLEST_FAULT_DB, agreement};
use super::same_meter::beside_scale;
use super::trend::trend_of;
use super::watts_swr::in_row;
use crate::assume::Assumed;
use crate::cause::Cause;
use crate::certificate;
use crate::chain::{NodeState, Run};
use crate::instrument::{lapsed, meter_of, note_scatter};
use crate::log_place::on_band;
use crate::result::{LogResult, LogRow, Logged, Verdict};
use crate::table::{Said, lines_words};
use crate::unknown::unknown;

/// Judges the rows of a log that were read at a node, after the part of the tag `here`. Rows that are
/// older than the `newest` part before it are shown and not judged, and the trend begins after them.
pub(super) fn judge<'m>(
    run: &mut Run<'m, '_>,
    (here, newest): (Option<&str>, Option<Newest<'_>>),
    loc: Loc,
    file: &'m Name,
    instrument: Option<&'m Name>,
    state: &NodeState<'m>,
) -> Option<LogResult> {
    let env = run.cx.env;
    let table = env.attachments.at(file.loc)?.readings()?;
    let several = run.cx.chain.bands.len() > 1;
    let of_any_band = |r: &Row| several && r.band.is_none() && r.hz.is_none() && is_here(r, here);
    // other findings about the table are made once for all its statements, see `checks::logs`
    let mut said = Said::new(file, &mut run.diags);
    for row in table.rows.iter().filter(|r| of_any_band(r)) {
        let message = "The row names no band, and the chain has several; it is left out.";
        said.row(row.line, "band", message.to_owned(), None);
    }
    said.finish();
    let mut rows = Vec::new();
    let mut told = Told::default();
    for row in &table.rows {
        if !is_here(row, here) || !on_band(row, run.point, env) || of_any_band(row) {
            continue;
        }
        let name = row.instrument.as_deref().or(instrument.map(|n| &*n.text));
        let had = run.diags.len();
        let changed = row
            .date
            .as_deref()
            .is_some_and(|d| newest.is_some_and(|p| p.is_after(d)));
        let older_than = newest.filter(|_| changed).map(|p| &*p.tag.text);
        rows.extend(one(run, loc, row, (name, older_than), state));
        let found = run.diags.split_off(had);
        told.push(found, row.line);
    }
    run.diags.extend(told.finish());
    if rows.is_empty() {
        return None;
    }
    rows.sort_by(|a, b| a.date.cmp(&b.date).then(a.line.cmp(&b.line)));
    let mut trends = Vec::new();
    let now: Vec<LogRow> = rows
        .iter()
        .filter(|r| r.older_than.is_none())
        .cloned()
        .collect();
    for what in [Logged::Forward, Logged::Reflected, Logged::Swr] {
        trends.extend(trend_of(run, loc, what, &now));
    }
    Some(LogResult {
        loc,
        after: here.map(Into::into),
        rows: rows.into(),
        trends: trends.into(),
    })
}

/// Findings about the rows of one log: the first of each kind, with the lines where it recurs.
#[derive(Default)]
struct Told(Vec<(Diagnostic, Vec<u64>)>);

impl Told {
    fn push(&mut self, found: Vec<Diagnostic>, line: u64) {
        for d in found {
            let same = |x: &&mut (Diagnostic, Vec<u64>)| {
                x.0.code.id == d.code.id
                    && (d.code.id != codes::UNKNOWN_INSTRUMENT.id || x.0.message == d.message)
            };
            match self.0.iter_mut().find(same) {
                Some((_, again)) => again.push(line),
                None => self.0.push((d, Vec::new())),
            }
        }
    }

    fn finish(self) -> impl Iterator<Item = Diagnostic> {
        self.0.into_iter().map(|(d, mut again)| {
            again.dedup();
            if again.is_empty() {
                return d;
            }
            d.help(format!(
                "The same is to be said of {} more of its rows, in {}.",
                again.len(),
                lines_words(&again)
            ))
        })
    }
}

/// A row that does not say where it was read is of every node that takes the file.
fn is_here(row: &Row, here: Option<&str>) -> bool {
    match (&row.after, here) {
        (Some(a), Some(h)) => **a == *h,
        (Some(_), None) => false,
        (None, _) => row.kind.is_none() || row.piece.is_none(),
    }
}

fn one<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    row: &'m Row,
    (name, older_than): (Option<&'m str>, Option<&str>),
    state: &NodeState<'m>,
) -> Vec<LogRow> {
    let env = run.cx.env;
    let instrument = name.and_then(|n| env.instrument(n));
    match (name, instrument) {
        (Some(n), None) if !env.is_broken(n) => {
            let n = Name {
                text: n.into(),
                loc,
            };
            run.diags.extend(unknown(NameKind::Instrument, &n, env));
            return Vec::new();
        }
        (None, _) => run.assumed.add(Assumed::LogWithoutMeter, loc),
        (_, Some(i)) => note_scatter(i, &mut run.assumed),
        _ => {}
    }
    if row.swr.is_some() {
        run.assumed.add(Assumed::LoggedSwr, loc);
    }
    if let (Some(i), Some(d)) = (instrument, &row.date) {
        lapsed(i, d, loc, &mut run.diags);
    }
    if let Some(i) = instrument {
        let w = row.forward_w.map(|w| w.0);
        certified(run, loc, w, row.date.as_deref(), i);
    }
    run.diags.extend(in_row(loc, row, instrument));
    let blank = |what, read, expected: Option<f64>| LogRow {
        line: row.line,
        date: row.date.clone().unwrap_or_default(),
        what,
        instrument: name.map(Into::into),
        read,
        corrected: read,
        // what the station lets expect now says nothing of how it was
        expected: expected.filter(|_| older_than.is_none()),
        older_than: older_than.map(Into::into),
        difference_db: None,
        uncertainty_db: None,
        verdict: None,
    };
    let mut out = Vec::new();
    if let Some((w, _)) = row.forward_w {
        let mut judged = blank(Logged::Forward, w, state.forward_w);
        if older_than.is_none() {
            forward(run, (loc, row), w, instrument, state, &mut judged);
        }
        out.push(judged);
    }
    if let Some((w, _)) = row.reflected_w {
        let expected = state
            .forward_w
            .zip(state.net_w)
            .map(|(f, n)| (f - n).max(0.0));
        out.push(blank(Logged::Reflected, w, expected));
    }
    if let Some(s) = logged_swr(row, instrument) {
        out.push(blank(Logged::Swr, s, state.swr));
    }
    out
}

/// Judges a forward power, W, of a row.
fn forward<'m>(
    run: &mut Run<'m, '_>,
    (loc, row): (Loc, &Row),
    w: f64,
    instrument: Option<&'m Instrument>,
    state: &NodeState<'m>,
    judged: &mut LogRow,
) {
    let mut b = state.forward.clone();
    let date = row.date.as_deref();
    let (factor, u_db) = instrument.map_or((1.0, 0.0), |i| {
        certificate::read(i, run.cx.env, date, (run.point.hz, w))
    });
    if let Some(i) = instrument {
        b.add(Cause::Instrument(&i.name.text), -u_db);
    }
    judged.corrected = factor * w;
    let usable = instrument.is_none_or(|i| !i.broken);
    let Some(expected) = state.forward_w.filter(|_| usable) else {
        return;
    };
    let d = to_db(factor * w / expected);
    let u = 2.0 * libm::hypot(b.standard(), beside_scale(run, instrument, state));
    let smallest = state.loss_db.unwrap_or(0.0).max(SMALLEST_FAULT_DB);
    let verdict = match agreement(d, u, smallest) {
        // a meter that is not named contradicts nothing
        Verdict::No if instrument.is_none() => Verdict::CannotTell,
        v => v,
    };
    judged.difference_db = Some(d);
    judged.uncertainty_db = Some(u);
    judged.verdict = Some(verdict);
    if verdict == Verdict::No {
        let date = row.date.as_ref().map(|d| format!(" ({d})"));
        run.diags.push(
            Diagnostic::new(
                &codes::READING_CONTRADICTS,
                loc,
                format!(
                    "In line {}{}, on {}: {} read, {} expected: {} with an uncertainty of {}.",
                    row.line,
                    date.unwrap_or_default(),
                    run.point.band,
                    power(w),
                    power(expected),
                    decibel_signed(d),
                    db(u)
                ),
            )
            .at("differs beyond the uncertainty"),
        );
    }
}

/// The SWR of a row: as written, or from its forward and reflected power.
fn logged_swr(row: &Row, instrument: Option<&Instrument>) -> Option<f64> {
    let swr = match (row.swr, row.forward_w, row.reflected_w) {
        (Some((s, _)), ..) => Some(s),
        (None, Some((f, _)), Some((r, _))) => {
            let m = instrument
                .map(meter_of)
                .unwrap_or(downlead_physics::measure::Meter::PERFECT);
            swr_reading(f, &m, r, &m).map(|s| s.swr)
        }
        _ => None,
    };
    swr.filter(|s| s.is_finite())
}
