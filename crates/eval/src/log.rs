//! Readings of a station over the years: `readings from "site.csv"` at a node of a chain.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::measure::{Direction, Trend, TrendPoint, swr as swr_reading, trend};
use downlead_quantity::{db, decibel_signed, number, power, to_db};
use downlead_station::attach::Row;
use downlead_station::model::Name;

use crate::assume::Assumed;
use crate::bench::{meter_of, table_problems};
use crate::cause::{Budget, Cause};
use crate::chain::{NodeState, Run};
use crate::result::{BandResult, LogResult, LogRow, LogTrend, Logged, Verdict};
use crate::verdict::{
    SMALLEST_FAULT_DB, agreement, beside_scale, instrument_db, lapsed, unknown_instrument,
};

/// Uncertainty of an SWR that is logged as such: half-width (common practice).
const SWR_HALF_WIDTH: f64 = 0.1;

/// Scatter of one reading against another, relative, where nothing is known of the meter (common
/// practice).
const SCATTER: f64 = 0.012;

/// Days since 0000-03-01 of a date written `2026-07-04`, `2026-07` or `2026` (the middle of the
/// month or year). Civil calendar, proleptic Gregorian.
pub(crate) fn days(date: &str) -> Option<f64> {
    let mut parts = date.split('-');
    let year: i64 = parts.next()?.trim().parse().ok()?;
    let month: Option<i64> = parts.next().map(str::parse).transpose().ok()?;
    let day: Option<i64> = parts.next().map(str::parse).transpose().ok()?;
    if parts.next().is_some() || !(1..=9999).contains(&year) {
        return None;
    }
    let (m, d, half) = match (month, day) {
        (Some(m), Some(d)) => (m, d, 0.0),
        (Some(m), None) => (m, 15, 0.0),
        _ => (7, 2, 0.0),
    };
    if !(1..=12).contains(&m) || !(1..=31).contains(&d) {
        return None;
    }
    let (y, m) = if m > 2 {
        (year, m - 3)
    } else {
        (year - 1, m + 9)
    };
    let n =
        365 * y + y.div_euclid(4) - y.div_euclid(100) + y.div_euclid(400) + (153 * m + 2) / 5 + d
            - 1;
    // days of four-digit years are exact in a float
    Some(n as f64 + half)
}

/// Judges the rows of a log that were read at a node.
pub(crate) fn judge<'m>(
    run: &mut Run<'m, '_>,
    result: &BandResult,
    loc: Loc,
    file: &'m Name,
    instrument: Option<&'m Name>,
    state: &NodeState<'m>,
) -> Option<LogResult> {
    let env = run.cx.env;
    let table = env.attachments.at(file.loc)?.readings()?;
    let tags: Vec<&str> = run
        .cx
        .station
        .map_or(&[][..], |s| &s.parts)
        .iter()
        .filter_map(|p| p.tag.as_ref().map(|t| &*t.text))
        .collect();
    let here = tag_here(run, result, state);
    let several = run.cx.chain.bands.len() > 1;
    let of_any_band =
        |r: &Row| several && r.band.is_none() && r.hz.is_none() && is_here(r, here.as_deref());
    table_problems(file, table, &tags, &of_any_band, &mut run.diags);
    let mut rows = Vec::new();
    for row in &table.rows {
        if !is_here(row, here.as_deref()) || !on_band(run, row) || of_any_band(row) {
            continue;
        }
        let name = row.instrument.as_deref().or(instrument.map(|n| &*n.text));
        rows.extend(one(run, loc, row, name, state));
    }
    if rows.is_empty() {
        return None;
    }
    rows.sort_by(|a, b| a.date.cmp(&b.date).then(a.line.cmp(&b.line)));
    let mut trends = Vec::new();
    for what in [Logged::Forward, Logged::Reflected, Logged::Swr] {
        trends.extend(trend_of(run, loc, what, &rows));
    }
    Some(LogResult {
        loc,
        after: here,
        rows: rows.into(),
        trends: trends.into(),
    })
}

/// The tag of the part before the node.
fn tag_here<'m>(run: &Run<'m, '_>, result: &BandResult, state: &NodeState<'m>) -> Option<Box<str>> {
    let tag = result
        .nodes
        .iter()
        .take(state.nodes)
        .rev()
        .find_map(|n| n.tag);
    let parts = run.cx.station.map_or(&[][..], |s| &s.parts);
    match tag {
        Some(loc) => parts
            .iter()
            .filter_map(|p| p.tag.as_ref())
            .find(|t| t.loc == loc)
            .map(|t| t.text.clone()),
        // nothing but the transmitter before it
        None => parts
            .iter()
            .filter(|p| p.kind == downlead_station::model::PartKind::Transmitter)
            .find_map(|p| p.tag.as_ref().map(|t| t.text.clone())),
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

fn on_band(run: &Run<'_, '_>, row: &Row) -> bool {
    match (&row.band, row.hz) {
        (Some(b), _) => crate::point::band_matches(b, run.point, run.cx.env),
        (None, Some((hz, _))) => (hz / run.point.hz - 1.0).abs() < 1e-4,
        (None, None) => true,
    }
}

fn one<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    row: &'m Row,
    name: Option<&'m str>,
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
            run.diags.push(unknown_instrument(&n, env));
            return Vec::new();
        }
        (None, _) => run.assumed.add(Assumed::LogWithoutMeter, loc),
        (_, Some(i))
            if i.accuracy.is_some() && i.linearity.is_none() && i.repeatability.is_none() =>
        {
            run.assumed.add(Assumed::MeterScatter, i.name.loc);
        }
        _ => {}
    }
    if row.swr.is_some() {
        run.assumed.add(Assumed::LoggedSwr, loc);
    }
    if let (Some(i), Some(d)) = (instrument, &row.date) {
        lapsed(i, d, loc, &mut run.diags);
    }
    let date: Box<str> = row.date.clone().unwrap_or_default();
    let mut out = Vec::new();
    if let Some((w, _)) = row.forward_w {
        let mut b = Budget::default();
        b.add_scaled(&state.budget, 1.0);
        if let Some(i) = instrument {
            b.add(Cause::Instrument(&i.name.text), instrument_db(i, w));
        }
        let d = to_db(w / state.forward_w);
        let u = 2.0 * libm::hypot(b.standard(), beside_scale(run, instrument, state));
        let verdict = agreement(d, u, state.loss_db.max(SMALLEST_FAULT_DB));
        if verdict == Verdict::No {
            run.diags.push(
                Diagnostic::new(
                    &codes::READING_CONTRADICTS,
                    loc,
                    format!(
                        "In line {}{}, on {}: {} read, {} expected: {} with a doubt of {}.",
                        row.line,
                        if date.is_empty() {
                            String::new()
                        } else {
                            format!(" ({date})")
                        },
                        run.point.band,
                        power(w),
                        power(state.forward_w),
                        decibel_signed(d),
                        db(u)
                    ),
                )
                .at("differs beyond doubt"),
            );
        }
        out.push(LogRow {
            line: row.line,
            date: date.clone(),
            what: Logged::Forward,
            instrument: name.map(Into::into),
            read: w,
            expected: state.forward_w,
            difference_db: Some(d),
            uncertainty_db: Some(u),
            verdict: Some(verdict),
        });
    }
    if let Some((w, _)) = row.reflected_w {
        out.push(LogRow {
            line: row.line,
            date: date.clone(),
            what: Logged::Reflected,
            instrument: name.map(Into::into),
            read: w,
            expected: (state.forward_w - state.net_w).max(0.0),
            difference_db: None,
            uncertainty_db: None,
            verdict: None,
        });
    }
    let read = match (row.swr, row.forward_w, row.reflected_w) {
        (Some((s, _)), ..) => Some(s),
        (None, Some((f, _)), Some((r, _))) => {
            let m = instrument
                .map(meter_of)
                .unwrap_or(downlead_physics::measure::Meter::PERFECT);
            swr_reading(f, &m, r, &m).map(|s| s.swr)
        }
        _ => None,
    };
    if let Some(s) = read.filter(|s| s.is_finite()) {
        out.push(LogRow {
            line: row.line,
            date,
            what: Logged::Swr,
            instrument: name.map(Into::into),
            read: s,
            expected: state.swr,
            difference_db: None,
            uncertainty_db: None,
            verdict: None,
        });
    }
    out
}

/// The straight line through the dated readings of one kind, in dB against the first for powers.
fn trend_of(run: &mut Run<'_, '_>, loc: Loc, what: Logged, rows: &[LogRow]) -> Option<LogTrend> {
    let mine: Vec<&LogRow> = rows.iter().filter(|r| r.what == what).collect();
    let one_meter = mine.windows(2).all(|w| w[0].instrument == w[1].instrument);
    let first = mine.first()?;
    let mut points = Vec::new();
    for r in &mine {
        let Some(d) = days(&r.date) else { continue };
        let (value, u) = match what {
            Logged::Swr => (
                r.read,
                downlead_physics::uncertainty::rectangular(SWR_HALF_WIDTH),
            ),
            _ if r.read > 0.0 && first.read > 0.0 => {
                (to_db(r.read / first.read), scatter_db(run, r, one_meter))
            }
            _ => continue,
        };
        points.push((r.date.clone(), TrendPoint { days: d, value, u }));
    }
    if points.len() < 3 {
        return None;
    }
    let plain: Vec<TrendPoint> = points.iter().map(|p| p.1).collect();
    let t = trend(&plain)?;
    let found = LogTrend {
        what,
        from: points.first()?.0.clone(),
        to: points.last()?.0.clone(),
        count: points.len(),
        points: points.into(),
        trend: t,
    };
    say(run, loc, &found, &t);
    Some(found)
}

/// By how much one reading scatters against another, dB: with one meter its scale error is the
/// same in both.
fn scatter_db(run: &Run<'_, '_>, r: &LogRow, one_meter: bool) -> f64 {
    let i = r.instrument.as_ref().and_then(|n| run.cx.env.instrument(n));
    let db = |relative: f64| downlead_quantity::DB_PER_RELATIVE * relative;
    match i {
        // its scale error is the same every year
        Some(i) if one_meter => {
            let m = meter_of(i);
            db(libm::hypot(
                libm::hypot(m.u_linearity, m.u_repeatability),
                m.u_resolution_w / r.read,
            ))
        }
        Some(i) => instrument_db(i, r.read),
        None => db(SCATTER),
    }
}

fn say(run: &mut Run<'_, '_>, loc: Loc, l: &LogTrend, t: &Trend) {
    let span = format!("from {} to {} ({} readings)", l.from, l.to, l.count);
    let u = t.k * t.u_per_year;
    let d = match (l.what, t.direction) {
        (Logged::Forward, Direction::Falling) => Diagnostic::new(
            &codes::LOSS_RISING,
            loc,
            format!(
                "On {}, forward power here falls by {} a year, {span}, with a doubt of {} a year.",
                run.point.band,
                db(-t.per_year),
                db(u)
            ),
        )
        .at("falling beyond doubt")
        .help("Something before this point loses more every year, or the transmitter gives less: read it at the transmitter too."),
        (Logged::Swr, Direction::Falling) => Diagnostic::new(
            &codes::SWR_FALLING,
            loc,
            format!(
                "On {}, the SWR here falls by {} a year, {span}, and no part was changed for it.",
                run.point.band,
                number(-t.per_year, 2)
            ),
        )
        .at("better every year?")
        .help("A line that loses more hides the antenna's reflection: a falling SWR is a sign of water or age, not of a better antenna. Measure the loss of the line."),
        _ => return,
    };
    run.diags.push(d);
}

#[cfg(test)]
mod tests {
    use super::days;

    #[test]
    fn dates_count_days() {
        // Julian day numbers of 2000-01-01 and 2026-07-19 are 2451545 and 2461241 (from noon)
        let d = |s| days(s).unwrap_or(f64::NAN);
        assert_eq!(d("2026-07-19") - d("2000-01-01"), 9696.0);
        assert_eq!(d("2024-03-01") - d("2024-02-28"), 2.0);
        assert_eq!(d("2023-03-01") - d("2023-02-28"), 1.0);
        assert_eq!(d("2100-03-01") - d("2100-02-28"), 1.0);
        assert_eq!(d("2026-07"), d("2026-07-15"));
        for bad in ["", "x", "2026-13-01", "2026-07-19-1", "26-13"] {
            assert_eq!(days(bad), None, "{bad}");
        }
    }
}
