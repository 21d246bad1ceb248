//! Where the readings of a log are going over the years.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::measure::{Direction, Trend, TrendPoint, trend};
use downlead_quantity::{db, number, to_db};

use crate::chain::Run;
use crate::instrument::{instrument_db, meter_of};
use crate::result::{LogRow, LogTrend, Logged};

/// Uncertainty of an SWR that is logged as such: half-width (common practice).
pub(super) const SWR_HALF_WIDTH: f64 = 0.1;

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

/// The straight line through the dated readings of one kind, in dB against the first for powers.
pub(super) fn trend_of(
    run: &mut Run<'_, '_>,
    loc: Loc,
    what: Logged,
    rows: &[LogRow],
) -> Option<LogTrend> {
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
            _ if r.corrected > 0.0 && first.corrected > 0.0 => (
                to_db(r.corrected / first.corrected),
                scatter_db(run, r, one_meter),
            ),
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
                libm::hypot(
                    libm::hypot(m.u_linearity, m.u_linearity_w / r.read),
                    m.u_repeatability,
                ),
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
                "On {}, forward power here falls by {} a year, {span}, with an uncertainty of {} a year.",
                run.point.band,
                db(-t.per_year),
                db(u)
            ),
        )
        .at("falling beyond the uncertainty")
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
