//! One figure over the years, with the line through it.

use downlead_physics::measure::{Direction, Trend};

pub(crate) use downlead_report::build::trends::Dated;

use super::{Anchor, Axis, Mark, Picture, Scale, Stroke};

const WIDTH: f64 = 720.0;
const HEIGHT: f64 = 380.0;
const LEFT: f64 = 76.0;
const RIGHT: f64 = 690.0;
const TOP: f64 = 58.0;
const BOTTOM: f64 = 318.0;

/// The figures in order of date; the line and its uncertainty where there is a trend. `words` names the
/// figure with its unit, `unit` is that of its slope a year, `key` says what the bars are.
pub(crate) fn picture(
    title: &str,
    words: &str,
    unit: &str,
    key: &str,
    points: &[Dated],
    trend: Option<&Trend>,
) -> String {
    let mut p = Picture::new(WIDTH, HEIGHT, title, &described(words, unit, points, trend));
    p.head((LEFT, 22.0), title);
    let fold = |f: &dyn Fn(&Dated) -> f64, low: bool| {
        let all = points.iter().map(f).filter(|v| v.is_finite());
        if low {
            all.fold(f64::INFINITY, f64::min)
        } else {
            all.fold(f64::NEG_INFINITY, f64::max)
        }
    };
    let (first, last) = (fold(&|d| d.days, true), fold(&|d| d.days, false));
    let room = 0.06 * (last - first).max(1.0);
    let x = Axis::new(Scale::Linear, first - room, last + room, LEFT, RIGHT);
    let (low, high) = (
        fold(&|d| d.value - d.u, true),
        fold(&|d| d.value + d.u, false),
    );
    let room = 0.08 * (high - low).max(1e-6);
    let y = Axis::new(Scale::Linear, low - room, high + room, BOTTOM, TOP);
    y.along_left(&mut p, LEFT, RIGHT, false);
    p.upwards((18.0, 0.5 * (TOP + BOTTOM)), words);
    p.path(
        &[
            (LEFT, TOP),
            (RIGHT, TOP),
            (RIGHT, BOTTOM),
            (LEFT, BOTTOM),
            (LEFT, TOP),
        ],
        Stroke::Thin,
    );
    if let Some(t) = trend {
        line(&mut p, t, &x, &y);
        p.text((LEFT, 42.0), Anchor::Start, &slope(t, unit));
    }
    let mut end = f64::NEG_INFINITY;
    for d in points {
        let at = x.at(d.days);
        p.bar((at, y.at(d.value - d.u)), (at, y.at(d.value + d.u)), false);
        p.mark((at, y.at(d.value)), Mark::Full);
        p.line((at, BOTTOM), (at, BOTTOM + 5.0), Stroke::Thin);
        let half = 0.5 * super::text_width(&d.date);
        if at - half > end + 4.0 {
            p.small(
                (at.min(RIGHT - half + 24.0), BOTTOM + 18.0),
                Anchor::Middle,
                &d.date,
            );
            end = at + half;
        }
    }
    p.small((LEFT, HEIGHT - 12.0), Anchor::Start, key);
    p.finish()
}

fn line(p: &mut Picture, t: &Trend, x: &Axis, y: &Axis) {
    const STEPS: usize = 48;
    let days = |i: usize| x.low + (x.high - x.low) * i as f64 / STEPS as f64;
    let curve = |k: f64| -> Vec<(f64, f64)> {
        (0..=STEPS)
            .map(|i| {
                let (v, u) = t.at(days(i));
                (x.at(days(i)), y.at(v + k * u))
            })
            .collect()
    };
    let (upper, lower) = (curve(t.k), curve(-t.k));
    let area: Vec<_> = upper
        .iter()
        .copied()
        .chain(lower.iter().rev().copied())
        .collect();
    p.hatched(&area);
    p.path(&upper, Stroke::Dotted);
    p.path(&lower, Stroke::Dotted);
    p.path(&curve(0.0), Stroke::Dashed);
}

/// The slope in words.
pub(crate) fn slope(t: &Trend, unit: &str) -> String {
    let (v, u) =
        downlead_report::words::figure::with_uncertainty(t.per_year, t.k * t.u_per_year, 4);
    let sign = if v.starts_with('-') { "" } else { "+" };
    let means = match t.direction {
        Direction::Rising => "rising",
        Direction::Falling => "falling",
        Direction::NotBeyondDoubt => "steady within the uncertainty",
    };
    let widened = if t.widened {
        "; scatters more than its uncertainty explains"
    } else {
        ""
    };
    let unit = if unit.is_empty() {
        String::new()
    } else {
        format!(" {unit}")
    };
    format!("{sign}{v} ± {u}{unit} a year: {means}{widened}")
}

fn described(words: &str, unit: &str, points: &[Dated], trend: Option<&Trend>) -> String {
    let all: Vec<String> = points
        .iter()
        .map(|d| {
            let (v, u) = downlead_report::words::figure::with_uncertainty(d.value, d.u, 4);
            format!("{}: {v} ± {u}", d.date)
        })
        .collect();
    let trend = trend.map_or(String::new(), |t| format!(" {}.", slope(t, unit)));
    format!("{words} by date. {}.{trend}", all.join("; "))
}
