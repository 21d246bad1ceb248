//! Differences and rankings: a row or a column an entry, the uncertainty as a bar.

use downlead_quantity::number;

use downlead_report::shape::word::ReadingVerdict;
use downlead_report::words::figure::with_uncertainty;
use downlead_report::write::plain::shorten;

use super::{Anchor, Axis, Mark, Picture, Scale, Stroke, text_width};

/// Measured less expected on one band.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Difference {
    /// Band.
    pub(crate) band: String,
    /// dB.
    pub(crate) db: f64,
    /// Expanded uncertainty, dB.
    pub(crate) u: f64,
    /// Verdict.
    pub(crate) verdict: ReadingVerdict,
}

/// A piece with its differences.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Panel {
    /// Words above it.
    pub(crate) title: String,
    /// On its bands, in order.
    pub(crate) differences: Vec<Difference>,
}

const WIDTH: f64 = 720.0;
const LEFT: f64 = 66.0;
const RIGHT: f64 = 700.0;
const PANEL: f64 = 120.0;
const BETWEEN: f64 = 34.0;

/// Measured less expected, a panel a piece, a column a band.
pub(crate) fn differences(title: &str, panels: &[Panel]) -> String {
    let bands = columns(panels);
    let top = 58.0;
    let height = top + panels.len() as f64 * (PANEL + BETWEEN) + 44.0;
    let mut p = Picture::new(WIDTH, height, title, &described(panels));
    p.head((LEFT, 22.0), title);
    let step = (RIGHT - LEFT) / bands.len().max(1) as f64;
    let column = |band: &str| {
        let i = bands.iter().position(|b| *b == band).unwrap_or(0);
        LEFT + (i as f64 + 0.5) * step
    };
    for (i, panel) in panels.iter().enumerate() {
        let y0 = top + i as f64 * (PANEL + BETWEEN);
        one_panel(&mut p, panel, y0, &column);
    }
    let under = height - 58.0;
    let every = bands
        .iter()
        .map(|b| text_width(b) + 6.0)
        .fold(0.0_f64, f64::max);
    let skip = libm::ceil(every / step).max(1.0) as usize;
    for b in bands.iter().step_by(skip) {
        p.small((column(b), under), Anchor::Middle, b);
    }
    p.upwards(
        (16.0, 0.5 * (top + height - 60.0)),
        if panels.len() > 1 {
            "measured less expected, dB (scales differ)"
        } else {
            "difference, dB"
        },
    );
    verdict_key(&mut p, height - 20.0);
    p.finish()
}

/// Bands in order of first appearance.
fn columns(panels: &[Panel]) -> Vec<&str> {
    let mut out: Vec<&str> = Vec::new();
    for d in panels.iter().flat_map(|p| &p.differences) {
        if !out.contains(&d.band.as_str()) {
            out.push(&d.band);
        }
    }
    out
}

fn one_panel(p: &mut Picture, panel: &Panel, top: f64, column: &dyn Fn(&str) -> f64) {
    let bottom = top + PANEL;
    let far = panel
        .differences
        .iter()
        .flat_map(|d| [(d.db - d.u).abs(), (d.db + d.u).abs()])
        .filter(|v| v.is_finite())
        .fold(0.05_f64, f64::max)
        * 1.12;
    // one side only as far as there is something
    let low = panel
        .differences
        .iter()
        .map(|d| d.db - d.u)
        .filter(|v| v.is_finite())
        .fold(-0.25 * far, f64::min)
        .max(-far)
        * 1.15;
    let y = Axis::new(Scale::Linear, low, far, bottom, top);
    y.along_left(p, LEFT, RIGHT, true);
    p.text((LEFT, top - 8.0), Anchor::Start, &shorten(&panel.title, 84));
    p.path(
        &[
            (LEFT, top),
            (RIGHT, top),
            (RIGHT, bottom),
            (LEFT, bottom),
            (LEFT, top),
        ],
        Stroke::Thin,
    );
    p.line((LEFT, y.at(0.0)), (RIGHT, y.at(0.0)), Stroke::Full);
    for d in &panel.differences {
        let x = column(&d.band);
        p.bar((x, y.at(d.db - d.u)), (x, y.at(d.db + d.u)), false);
        p.mark((x, y.at(d.db)), mark(d.verdict));
    }
}

fn mark(verdict: ReadingVerdict) -> Mark {
    match verdict {
        ReadingVerdict::Agrees => Mark::Full,
        ReadingVerdict::Differs => Mark::Cross,
        ReadingVerdict::CannotTell => Mark::Open,
    }
}

fn verdict_key(p: &mut Picture, y: f64) {
    let mut x = LEFT;
    for (word, verdict) in [
        ("agrees", ReadingVerdict::Agrees),
        ("differs", ReadingVerdict::Differs),
        ("cannot tell", ReadingVerdict::CannotTell),
    ] {
        p.mark((x + 5.0, y - 4.0), mark(verdict));
        p.small((x + 16.0, y), Anchor::Start, word);
        x += 16.0 + text_width(word) + 24.0;
    }
    p.small(
        (x, y),
        Anchor::Start,
        "bar: uncertainty of the difference (k = 2)",
    );
}

fn described(panels: &[Panel]) -> String {
    let all: Vec<String> = panels
        .iter()
        .map(|p| {
            let differ: Vec<&str> = p
                .differences
                .iter()
                .filter(|d| d.verdict == ReadingVerdict::Differs)
                .map(|d| d.band.as_str())
                .collect();
            if differ.is_empty() {
                format!("{}: no band differs", p.title)
            } else {
                format!("{}: differs on {}", p.title, differ.join(", "))
            }
        })
        .collect();
    format!(
        "Measured less expected loss in dB by band. {}.",
        all.join(". ")
    )
}

/// An entry of a ranking.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Entry {
    /// Name.
    pub(crate) name: String,
    /// dB/100 m.
    pub(crate) value: f64,
    /// Expanded uncertainty, dB/100 m.
    pub(crate) u: f64,
    /// Whether it may be scaled to 100 m.
    pub(crate) trusted: bool,
    /// Rank; neighbours that cannot be distinguished share it.
    pub(crate) rank: usize,
}

const ROW: f64 = 17.0;
const NAMES: f64 = 176.0;

/// Loss per length by band, least first.
pub(crate) fn ranking(title: &str, bands: &[(String, Vec<Entry>)]) -> String {
    let entries = bands.iter().flat_map(|b| &b.1);
    let ends: Vec<f64> = entries
        .clone()
        .flat_map(|e| [e.value, e.value + e.u])
        .filter(|v| *v > 0.0 && v.is_finite())
        .collect();
    let low = ends.iter().copied().fold(f64::INFINITY, f64::min);
    let high = ends.iter().copied().fold(0.0, f64::max);
    let count = entries.count();
    let top = 40.0;
    let bottom = top + count as f64 * ROW + bands.len() as f64 * 10.0 + 4.0;
    let mut p = Picture::new(WIDTH, bottom + 66.0, title, &ranked(bands));
    p.head((14.0, 22.0), title);
    let x = Axis::new(Scale::Log, low / 2.0, high * 1.2, NAMES, RIGHT);
    x.along_bottom(
        &mut p,
        top,
        bottom,
        "dB per 100 m, joins taken off; bar: uncertainty (k = 2)",
    );
    let mut y = top + 4.0;
    for (band, entries) in bands {
        p.line((14.0, y - 4.0), (RIGHT, y - 4.0), Stroke::Grid);
        p.text((14.0, y + 14.0), Anchor::Start, &shorten(band, 10));
        for e in entries {
            row(&mut p, e, &x, y + 0.5 * ROW + 2.0);
            y += ROW;
        }
        ties(&mut p, entries, y);
        y += 10.0;
    }
    p.path(
        &[
            (NAMES, top),
            (RIGHT, top),
            (RIGHT, bottom),
            (NAMES, bottom),
            (NAMES, top),
        ],
        Stroke::Thin,
    );
    let under = bottom + 56.0;
    p.mark((19.0, under - 4.0), Mark::Open);
    p.small(
        (30.0, under),
        Anchor::Start,
        "loss under five times its uncertainty: not to be scaled up",
    );
    p.line((372.0, under - 11.0), (372.0, under + 3.0), Stroke::Heavy);
    p.small(
        (382.0, under),
        Anchor::Start,
        "cannot be distinguished from the next",
    );
    p.finish()
}

fn row(p: &mut Picture, e: &Entry, x: &Axis, y: f64) {
    p.small((NAMES - 16.0, y + 4.0), Anchor::End, &shorten(&e.name, 10));
    let low = e.value - e.u;
    p.bar((x.at(low), y), (x.at(e.value + e.u), y), !x.holds(low));
    let (value, u) = with_uncertainty(e.value, e.u, 2);
    let words = format!("{value} ± {u}");
    let right = x.at(e.value + e.u) + 6.0;
    // beside the bar, on the side on which there is room
    if right + text_width(&words) < RIGHT {
        p.small((right, y + 4.0), Anchor::Start, &words);
    } else {
        p.small((x.at(low) - 6.0, y + 4.0), Anchor::End, &words);
    }
    if x.holds(e.value) {
        p.mark(
            (x.at(e.value), y),
            if e.trusted { Mark::Full } else { Mark::Open },
        );
    }
}

/// A stroke beside the names of those that share a rank; `end` is below the last row.
fn ties(p: &mut Picture, entries: &[Entry], end: f64) {
    let start = end - entries.len() as f64 * ROW;
    let mut i = 0;
    while i < entries.len() {
        let n = entries[i..]
            .iter()
            .take_while(|e| e.rank == entries[i].rank)
            .count();
        if n > 1 {
            let (a, b) = (start + i as f64 * ROW, start + (i + n) as f64 * ROW);
            p.line((NAMES - 9.0, a + 4.0), (NAMES - 9.0, b), Stroke::Heavy);
        }
        i += n;
    }
}

fn ranked(bands: &[(String, Vec<Entry>)]) -> String {
    let all: Vec<String> = bands
        .iter()
        .map(|(band, entries)| {
            let of: Vec<String> = entries
                .iter()
                .map(|e| format!("{} {} ± {}", e.name, number(e.value, 2), number(e.u, 2)))
                .collect();
            format!("{band}: {}", of.join(", "))
        })
        .collect();
    format!("Loss in dB per 100 m, least first. {}.", all.join(". "))
}
