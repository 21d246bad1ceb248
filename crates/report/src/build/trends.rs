//! Pieces that were measured on several days.

use downlead_physics::measure::{Direction, Trend, TrendPoint, trend};

use crate::shape::bench::{DatedReport, SessionReport, TrendReport};
use crate::shape::word::BenchSlope;

/// Sessions closer together than this say nothing of a rate by the year, days (common practice).
const LEAST_DAYS: f64 = 60.0;

/// A figure at a date.
#[derive(Clone, Debug, PartialEq)]
pub struct Dated {
    /// Date as written.
    pub date: String,
    /// Days from any fixed date.
    pub days: f64,
    /// The figure.
    pub value: f64,
    /// Its expanded uncertainty.
    pub u: f64,
}

/// The ratio of a piece's loss to the expected one, day by day.
pub struct Series {
    pub piece: String,
    pub cable: String,
    /// In order of date, at least two days.
    pub points: Vec<Dated>,
    pub trend: Option<Trend>,
}

/// One for every piece and cable that sessions of different days have in common. Sheet and length
/// are the same in all of them and turn no trend, so they do not count.
pub fn series(sessions: &[SessionReport]) -> Vec<Series> {
    let mut seen: Vec<(&str, &str)> = Vec::new();
    let mut out = Vec::new();
    for p in sessions.iter().flat_map(|s| &s.pieces) {
        let key = (p.piece.as_str(), p.cable.as_str());
        if seen.contains(&key) {
            continue;
        }
        seen.push(key);
        let mut points: Vec<Dated> = sessions.iter().filter_map(|s| dated(s, key)).collect();
        points.sort_by(|a, b| a.days.total_cmp(&b.days));
        if points.first().map(|d| d.days) == points.last().map(|d| d.days) {
            continue;
        }
        let plain: Vec<TrendPoint> = points
            .iter()
            .map(|d| TrendPoint {
                days: d.days,
                value: d.value,
                u: 0.5 * d.u,
            })
            .collect();
        let span = plain.last().map_or(0.0, |l| l.days - plain[0].days);
        out.push(Series {
            piece: p.piece.clone(),
            cable: p.cable.clone(),
            points,
            trend: (span >= LEAST_DAYS).then(|| trend(&plain)).flatten(),
        });
    }
    out
}

/// As it is printed.
pub fn report(s: &Series) -> TrendReport {
    let t = s.trend.as_ref();
    TrendReport {
        piece: s.piece.clone(),
        cable: s.cable.clone(),
        points: s
            .points
            .iter()
            .map(|d| DatedReport {
                date: d.date.clone(),
                ratio: d.value,
                ratio_uncertainty: d.u,
            })
            .collect(),
        ratio_per_year: t.map(|t| t.per_year),
        ratio_per_year_uncertainty: t.map(|t| t.k * t.u_per_year),
        direction: t.map(|t| match t.direction {
            Direction::Rising => BenchSlope::Rising,
            Direction::Falling => BenchSlope::Falling,
            Direction::NotBeyondDoubt => BenchSlope::CannotTell,
        }),
    }
}

fn dated(s: &SessionReport, (piece, cable): (&str, &str)) -> Option<Dated> {
    let date = s.date.as_ref()?;
    let p = s
        .pieces
        .iter()
        .find(|p| p.piece == piece && p.cable == cable)?;
    let w = p.whole.as_ref()?;
    Some(Dated {
        date: date.clone(),
        days: days(date)?,
        value: w.ratio,
        u: 2.0 * w.ratio_standard_by_readings,
    })
}

/// Days from 1970-01-01 of a date written `2026-07-19`, in the Gregorian calendar.
fn days(date: &str) -> Option<f64> {
    let mut parts = date.splitn(3, '-');
    let mut next = || parts.next()?.parse::<i64>().ok();
    let (year, month, day) = (next()?, next()?, next()?);
    if !((1..=12).contains(&month) && (1..=31).contains(&day) && (1800..=9999).contains(&year)) {
        return None;
    }
    // years that begin in March have their odd day at the end
    let (y, m) = if month > 2 {
        (year, month - 3)
    } else {
        (year - 1, month + 9)
    };
    let of_year = (153 * m + 2) / 5 + day - 1;
    let all = 365 * y + y / 4 - y / 100 + y / 400 + of_year - 719_468;
    Some(all as f64)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_count_as_the_calendar_does() {
        // 1970-01-01 is day 0 and 2000-03-01 day 11017 of POSIX time
        assert_eq!(days("1970-01-01"), Some(0.0));
        assert_eq!(days("2000-03-01"), Some(11017.0));
        assert_eq!(days("2000-02-29"), Some(11016.0));
        assert_eq!(days("1969-12-31"), Some(-1.0));
        for bad in ["", "2026", "2026-07", "2026-13-01", "2026-07-xx", "x-1-1"] {
            assert_eq!(days(bad), None, "{bad}");
        }
    }
}
