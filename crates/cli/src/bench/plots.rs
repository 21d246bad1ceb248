//! The pictures of bench sessions, each with the name of its file.

use downlead_eval::bench::result::SessionResult;
use downlead_eval::cable_at_in;
use downlead_quantity::number;
use downlead_station::Env;
use downlead_station::session::Session;

use crate::svg::loss::{Loss, Reading, picture};
use crate::svg::rows::{Difference, Entry, Panel, differences, ranking};
use crate::svg::trend;
use downlead_report::build::trends::Series;
use downlead_report::shape::bench::{BandReport, PieceReport, SessionReport};
use downlead_report::shape::loss_law::PER;
use downlead_report::words::bench as words;
use downlead_report::words::piece::orders;
use downlead_report::write::digital::digital;

/// Columns and groups beyond which a picture is not readable.
const MOST_COLUMNS: usize = 40;
const MOST_GROUPS: usize = 24;

/// Points of a curve.
const STEPS: u32 = 96;

/// A picture, or another text, and the name of its file without what it ends in.
pub(crate) struct Plot {
    pub(crate) name: String,
    pub(crate) text: String,
}

/// A session as a digital calibration certificate.
pub(crate) fn certificate(s: &SessionReport) -> Plot {
    Plot {
        name: file_name(&s.name),
        text: digital(s),
    }
}

/// All pictures of one session.
pub(crate) fn of_session(
    s: &Session,
    r: &SessionResult,
    env: &Env,
    report: &SessionReport,
) -> Vec<Plot> {
    let mut out = Vec::new();
    for (i, p) in report.pieces.iter().enumerate() {
        let loss = loss(i, r, env, report, p);
        if !loss.readings.is_empty() {
            out.push(Plot {
                name: format!("{}-loss-{}", file_name(&s.name.text), file_name(&p.piece)),
                text: picture(&loss),
            });
        }
    }
    let (bands, left) = some(report.bands.iter().collect(), MOST_COLUMNS);
    let panels: Vec<Panel> = report
        .pieces
        .iter()
        .map(|p| panel(report, p, &bands))
        .filter(|p| !p.differences.is_empty())
        .collect();
    if !panels.is_empty() {
        let title = titled(report, &format!("measured less expected{left}"));
        out.push(Plot {
            name: format!("{}-difference", file_name(&s.name.text)),
            text: differences(&title, &panels),
        });
    }
    // a group where the order changes
    let orders: Vec<&BandReport> = orders(&report.bands).into_iter().map(|o| o.0).collect();
    let (bands, left) = some(orders, MOST_GROUPS);
    let bands: Vec<(String, Vec<Entry>)> = bands
        .into_iter()
        .map(|b| {
            let of = b.ranking.iter().map(|r| Entry {
                name: r.piece.clone(),
                value: PER * r.loss_db_per_m,
                u: PER * r.uncertainty_db_per_m,
                trusted: r.trusted,
                rank: r.rank,
            });
            (b.band.clone(), of.collect())
        })
        .collect();
    if !bands.is_empty() {
        let title = titled(report, &format!("loss per 100 m, least first{left}"));
        out.push(Plot {
            name: format!("{}-ranking", file_name(&s.name.text)),
            text: ranking(&title, &bands),
        });
    }
    out
}

fn titled(s: &SessionReport, what: &str) -> String {
    match &s.date {
        Some(d) => format!("{}, {d}: {what}", s.name),
        None => format!("{}: {what}", s.name),
    }
}

fn loss(index: usize, r: &SessionResult, env: &Env, s: &SessionReport, p: &PieceReport) -> Loss {
    let readings: Vec<Reading> = s
        .results
        .iter()
        .filter(|x| x.piece == p.piece)
        .filter_map(|x| {
            Some(Reading {
                band: x.band.clone(),
                hz: x.frequency_hz,
                value: PER * x.loss_db_per_m?,
                u: PER * x.loss_uncertainty_db_per_m?,
                trusted: x.trusted?,
            })
        })
        .collect();
    let frequencies = curve(&readings);
    let cable = env.cable(&p.cable);
    let sheet = frequencies
        .iter()
        .filter_map(|hz| {
            Some((
                *hz,
                PER * cable_at_in(cable?, *hz, p.temperature_c, &env.attachments)?.loss(),
            ))
        })
        .collect();
    let own = r.pieces.get(index).and_then(|x| x.fit.as_ref());
    let fit = match own {
        Some(Ok(f)) => frequencies
            .iter()
            .map(|hz| (*hz, f.predict(*hz)))
            .filter(|(_, x)| !x.refused)
            .map(|(hz, x)| (hz, PER * x.db_per_m, 2.0 * PER * x.u_db_per_m))
            .collect(),
        _ => Vec::new(),
    };
    Loss {
        title: titled(s, &words::piece_head(p)),
        sheet_words: format!(
            "{} at {} °C, as its sheet says",
            p.cable,
            number(p.temperature_c, 1)
        ),
        sheet,
        fit,
        readings,
    }
}

/// Frequencies from a little below the lowest reading to a little above the highest.
fn curve(readings: &[Reading]) -> Vec<f64> {
    let low = readings.iter().map(|r| r.hz).fold(f64::INFINITY, f64::min);
    let high = readings.iter().map(|r| r.hz).fold(0.0, f64::max);
    if low > high {
        return Vec::new();
    }
    let (low, high) = (low / 1.25, high * 1.25);
    let step = libm::log(high / low) / f64::from(STEPS);
    (0..=STEPS)
        .map(|i| low * libm::exp(step * f64::from(i)))
        .collect()
}

/// Evenly chosen, not more than `most`, with words about it where some are left out.
fn some(bands: Vec<&BandReport>, most: usize) -> (Vec<&BandReport>, String) {
    let all = bands.len();
    let step = all.div_ceil(most).max(1);
    let chosen: Vec<&BandReport> = bands.into_iter().step_by(step).collect();
    let left = if step > 1 {
        format!(" ({} of {all} bands)", chosen.len())
    } else {
        String::new()
    };
    (chosen, left)
}

fn panel(s: &SessionReport, p: &PieceReport, bands: &[&BandReport]) -> Panel {
    Panel {
        title: words::piece_head(p),
        differences: s
            .results
            .iter()
            .filter(|x| x.piece == p.piece && bands.iter().any(|b| b.band == x.band))
            .filter_map(|x| {
                Some(Difference {
                    band: x.band.clone(),
                    db: x.difference_db?,
                    u: x.uncertainty_db?,
                    verdict: x.verdict?,
                })
            })
            .collect(),
    }
}

/// A picture of every piece that was measured on several days.
pub(crate) fn trends(all: &[Series]) -> Vec<Plot> {
    all.iter()
        .map(|s| Plot {
            name: format!("trend-{}", file_name(&s.piece)),
            text: trend::picture(
                &format!("{} ({}) over the years", s.piece, s.cable),
                "measured over expected loss",
                "",
                "bars and hatching: uncertainty (k = 2) by the readings; sheet and length are the same on all days",
                &s.points,
                s.trend.as_ref(),
            ),
        })
        .collect()
}

/// A name as part of a file's name on any system: letters, digits, `-` and `_` stay.
pub(crate) fn file_name(name: &str) -> String {
    let safe = |c: char| {
        if c.is_alphanumeric() || c == '-' || c == '_' {
            c
        } else {
            '-'
        }
    };
    let out: String = name.chars().map(safe).take(60).collect();
    if out.is_empty() {
        "unnamed".to_owned()
    } else {
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_files_lead_nowhere_else() {
        assert_eq!(file_name("../a b"), "---a-b");
        assert_eq!(file_name("M1_x"), "M1_x");
        assert_eq!(file_name(""), "unnamed");
    }
}
