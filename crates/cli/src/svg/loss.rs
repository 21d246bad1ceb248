//! Loss against frequency, both scales logarithmic: sheet, own fit with its uncertainty, readings.

use downlead_report::write::plain::shorten;

use super::{Anchor, Axis, Mark, Picture, Scale, Stroke, text_width};

/// A figure with its expanded uncertainty at a frequency.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Reading {
    /// Band or frequency in words.
    pub(crate) band: String,
    /// Hz.
    pub(crate) hz: f64,
    /// dB/100 m.
    pub(crate) value: f64,
    /// Expanded uncertainty, dB/100 m.
    pub(crate) u: f64,
    /// Whether it is large enough to be scaled to 100 m.
    pub(crate) trusted: bool,
}

/// What is drawn. Lines are points of (Hz, dB/100 m) in order of frequency.
#[derive(Clone, Debug, Default)]
pub(crate) struct Loss {
    /// What it shows.
    pub(crate) title: String,
    /// Words for the sheet's line.
    pub(crate) sheet_words: String,
    /// What the sheet says.
    pub(crate) sheet: Vec<(f64, f64)>,
    /// The fit with its expanded uncertainty.
    pub(crate) fit: Vec<(f64, f64, f64)>,
    /// Readings, joins taken off.
    pub(crate) readings: Vec<Reading>,
}

const WIDTH: f64 = 720.0;
const HEIGHT: f64 = 500.0;
const LEFT: f64 = 66.0;
const RIGHT: f64 = 700.0;
const TOP: f64 = 66.0;
const BOTTOM: f64 = 448.0;

/// The picture; empty lines are left out.
pub(crate) fn picture(loss: &Loss) -> String {
    let mut p = Picture::new(WIDTH, HEIGHT, &loss.title, &description(loss));
    let (x, y) = axes(loss);
    p.head((LEFT, 22.0), &loss.title);
    x.along_bottom(&mut p, TOP, BOTTOM, "MHz");
    y.along_left(&mut p, LEFT, RIGHT, false);
    p.upwards((18.0, 0.5 * (TOP + BOTTOM)), "loss, dB per 100 m");
    frame(&mut p);
    band_names(&mut p, loss, &x);
    let at = |hz: f64, v: f64| (x.at(hz / 1e6), y.at(v));
    let upper = loss.fit.iter().map(|f| at(f.0, f.1 + f.2));
    let lower = loss.fit.iter().map(|f| at(f.0, (f.1 - f.2).max(y.low)));
    let (upper, lower): (Vec<_>, Vec<_>) = (upper.collect(), lower.collect());
    let area: Vec<_> = upper
        .iter()
        .copied()
        .chain(lower.iter().rev().copied())
        .collect();
    p.hatched(&area);
    p.path(&upper, Stroke::Dotted);
    p.path(&lower, Stroke::Dotted);
    let sheet: Vec<_> = loss.sheet.iter().map(|s| at(s.0, s.1)).collect();
    p.path(&sheet, Stroke::Full);
    let fit: Vec<_> = loss.fit.iter().map(|f| at(f.0, f.1)).collect();
    p.path(&fit, Stroke::Dashed);
    for r in &loss.readings {
        let low = r.value - r.u;
        let beyond = !y.holds(low);
        p.bar(at(r.hz, low.max(y.low)), at(r.hz, r.value + r.u), beyond);
        if y.holds(r.value) {
            p.mark(
                at(r.hz, r.value),
                if r.trusted { Mark::Full } else { Mark::Open },
            );
        }
    }
    let free = |corner: &Corner| {
        loss.readings.iter().filter(|r| y.holds(r.value)).all(|r| {
            let (px, top) = at(r.hz, r.value + r.u);
            let bottom = at(r.hz, (r.value - r.u).max(y.low)).1;
            let (left, right) = (corner.x - 14.0, corner.x + corner.width);
            !(left..=right).contains(&px) || bottom < corner.y - 14.0 || top > corner.bottom()
        })
    };
    let corners = corners(loss);
    let corner = corners.iter().find(|c| free(c)).unwrap_or(&corners[0]);
    legend(&mut p, loss, corner);
    p.finish()
}

fn frame(p: &mut Picture) {
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
}

fn axes(loss: &Loss) -> (Axis, Axis) {
    let xs: Vec<f64> = loss
        .readings
        .iter()
        .map(|r| r.hz)
        .chain(loss.sheet.iter().map(|s| s.0))
        .chain(loss.fit.iter().map(|f| f.0))
        .filter(|f| *f > 0.0 && f.is_finite())
        .collect();
    let ys: Vec<f64> = loss
        .readings
        .iter()
        .flat_map(|r| [r.value, r.value + r.u])
        .chain(loss.sheet.iter().map(|s| s.1))
        .chain(loss.fit.iter().flat_map(|f| [f.1, f.1 + f.2]))
        .filter(|v| *v > 0.0 && v.is_finite())
        .collect();
    let least = |v: &[f64]| v.iter().copied().fold(f64::INFINITY, f64::min);
    let most = |v: &[f64]| v.iter().copied().fold(0.0, f64::max);
    let (low, high) = (least(&xs) / 1e6 / 1.15, most(&xs) / 1e6 * 1.15);
    // readings on one band stand in a decade around it
    let wider = libm::sqrt((10.0 * low / high).max(1.0));
    (
        Axis::new(Scale::Log, low / wider, high * wider, LEFT, RIGHT),
        Axis::new(Scale::Log, least(&ys) / 2.2, most(&ys) * 1.25, BOTTOM, TOP),
    )
}

/// Names of the bands above the frame, those left out that would meet the one before.
fn band_names(p: &mut Picture, loss: &Loss, x: &Axis) {
    let mut of: Vec<&Reading> = loss.readings.iter().collect();
    of.sort_by(|a, b| a.hz.total_cmp(&b.hz));
    let mut end = f64::NEG_INFINITY;
    for r in of {
        let at = x.at(r.hz / 1e6);
        let half = 0.5 * text_width(&r.band);
        // a band without a name stands on the axis below
        if !r.band.ends_with("Hz") && at - half > end + 2.0 {
            p.small((at, TOP - 8.0), Anchor::Middle, &r.band);
            p.line((at, TOP - 4.0), (at, TOP), Stroke::Thin);
            end = at + half;
        }
    }
}

/// Words of the legend's rows.
const FIT: &str = "fit to its readings, hatched: its uncertainty (k = 2)";
const READING: &str = "reading less its joins, bar: uncertainty (k = 2)";
const SMALL: &str = "loss under five times its uncertainty";

/// Where a legend may stand: its first row and its size.
struct Corner {
    x: f64,
    y: f64,
    width: f64,
    rows: usize,
}

impl Corner {
    fn bottom(&self) -> f64 {
        self.y + ROW * self.rows as f64
    }
}

/// Height of a row of the legend.
const ROW: f64 = 18.0;

/// Top left, where a loss that rises with frequency leaves room, and bottom right.
fn corners(loss: &Loss) -> [Corner; 2] {
    let sheet = shorten(&loss.sheet_words, 70);
    let words = [
        (!loss.sheet.is_empty()).then_some(&*sheet),
        (!loss.fit.is_empty()).then_some(FIT),
        loss.readings.iter().any(|r| r.trusted).then_some(READING),
        loss.readings.iter().any(|r| !r.trusted).then_some(SMALL),
    ];
    let rows = words.iter().flatten().count();
    let widest = words.iter().flatten().map(|w| text_width(w));
    let width = 46.0 + widest.fold(0.0, f64::max);
    let corner = |x, y| Corner { x, y, width, rows };
    [
        corner(LEFT + 14.0, TOP + 20.0),
        corner(
            RIGHT - 14.0 - width,
            BOTTOM - 10.0 - ROW * (rows.max(1) - 1) as f64,
        ),
    ]
}

fn legend(p: &mut Picture, loss: &Loss, corner: &Corner) {
    let (x, mut y) = (corner.x, corner.y);
    let mut row = |p: &mut Picture, words: &str, draw: &dyn Fn(&mut Picture, f64)| {
        draw(p, y - 4.0);
        p.small((x + 46.0, y), Anchor::Start, words);
        y += ROW;
    };
    if !loss.sheet.is_empty() {
        row(p, &shorten(&loss.sheet_words, 70), &|p, y| {
            p.line((x, y), (x + 38.0, y), Stroke::Full)
        });
    }
    if !loss.fit.is_empty() {
        row(p, FIT, &|p, y| {
            p.hatched(&[
                (x, y - 6.0),
                (x + 38.0, y - 6.0),
                (x + 38.0, y + 6.0),
                (x, y + 6.0),
            ]);
            p.line((x, y), (x + 38.0, y), Stroke::Dashed);
        });
    }
    if loss.readings.iter().any(|r| r.trusted) {
        row(p, READING, &|p, y| {
            p.bar((x + 4.0, y), (x + 34.0, y), false);
            p.mark((x + 19.0, y), Mark::Full);
        });
    }
    if loss.readings.iter().any(|r| !r.trusted) {
        row(p, SMALL, &|p, y| {
            p.bar((x + 4.0, y), (x + 34.0, y), false);
            p.mark((x + 19.0, y), Mark::Open);
        });
    }
}

fn description(loss: &Loss) -> String {
    let readings: Vec<String> = loss
        .readings
        .iter()
        .map(|r| format!("{}: {:.2} ± {:.2}", r.band, r.value, r.u))
        .collect();
    format!(
        "Loss in dB per 100 m against frequency, both scales logarithmic. Readings with their uncertainty: {}.",
        readings.join("; ")
    )
}
