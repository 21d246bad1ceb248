//! The frequencies a chain is evaluated at, and the choice of a figure for one of them.

use downlead_base::{Diagnostic, codes};
use downlead_quantity::Measure;
use downlead_station::Env;
use downlead_station::model::{BandKind, BandRef, Chain, Direction, Figure, When};

/// One frequency a chain is evaluated at.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Point {
    /// Band name, or the frequency as written.
    pub(crate) band: Box<str>,
    /// `low`, `middle`, `high` of a range; `edge` where a clause has one inside it, `gap` between clauses.
    pub(crate) part: Option<&'static str>,
    /// Hz.
    pub(crate) hz: f64,
    /// Whether `band` is the name of a band.
    pub(crate) named: bool,
}

impl Point {
    /// The band in messages, with the frequency where the band has several.
    pub(crate) fn words(&self) -> String {
        place(&self.band, self.part, self.hz)
    }
}

/// A band with the point of its range: `2m low`; inside the range by the frequency.
pub(crate) fn place(band: &str, part: Option<&str>, hz: f64) -> String {
    match part {
        None => band.to_owned(),
        Some(p @ ("low" | "middle" | "high")) => format!("{band} {p}"),
        Some(_) => format!("{band} at {}", downlead_quantity::frequency(hz)),
    }
}

/// The points of a chain, with what is wrong with its bands.
pub(crate) fn points(
    chain: &Chain,
    direction: Direction,
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> Vec<Point> {
    let mut points = Vec::new();
    for b in &chain.bands {
        match b {
            BandRef::Frequency(hz, name) => {
                points.push(Point {
                    band: name.text.clone(),
                    part: None,
                    hz: *hz,
                    named: false,
                });
            }
            BandRef::Named(name) => {
                let Some(band) = env.band(&name.text) else {
                    // which is said where it is named
                    continue;
                };
                let at = |hz: f64, part| Point {
                    band: name.text.clone(),
                    part,
                    hz,
                    named: true,
                };
                match band.kind {
                    BandKind::Single(hz) => points.push(at(hz, None)),
                    BandKind::Range(lo, hi) => {
                        points.push(at(lo, Some("low")));
                        points.push(at(0.5 * (lo + hi), Some("middle")));
                        points.push(at(hi, Some("high")));
                    }
                    BandKind::Pair { transmit, receive } => {
                        let f = if direction == Direction::Transmit {
                            transmit
                        } else {
                            receive
                        };
                        match f {
                            Some(hz) => points.push(at(hz, None)),
                            None => out.push(
                                Diagnostic::new(
                                    &codes::BAND_NOT_PAIRED,
                                    name.loc,
                                    format!(
                                        "Band `{}` has no {} frequency.",
                                        name.text,
                                        direction.word()
                                    ),
                                )
                                .at(format!("the chain is a {} chain", direction.word()))
                                .also(band.name.loc, "the band")
                                .help(format!("Add `{} …` to the band.", direction.word())),
                            ),
                        }
                    }
                }
            }
        }
    }
    points
}

/// Whether a figure's band is the one of the point.
pub(crate) fn band_matches(name: &str, point: &Point, env: &Env) -> bool {
    if point.named && *name == *point.band {
        return true;
    }
    let near = |f: f64| (f / point.hz - 1.0).abs() < 1e-9;
    match env.band(name).map(|b| &b.kind) {
        Some(BandKind::Range(lo, hi)) => (*lo..=*hi).contains(&point.hz),
        Some(BandKind::Single(f)) => near(*f),
        Some(BandKind::Pair { transmit, receive }) => {
            transmit.is_some_and(near) || receive.is_some_and(near)
        }
        None => false,
    }
}

/// The band that a table means: as it is defined, or the only one that is written alike but for
/// capitals, spaces and marks (`2M`, `70 cm`).
pub(crate) fn band_named<'e>(name: &'e str, env: &'e Env) -> Option<&'e str> {
    if env.band(name).is_some() {
        return Some(name);
    }
    let plain = |t: &str| -> String {
        t.chars()
            .filter(|c| c.is_alphanumeric())
            .flat_map(char::to_lowercase)
            .collect()
    };
    let wanted = plain(name);
    let mut alike = env.bands.keys().filter(|k| plain(k) == wanted);
    let (only, more) = (alike.next()?, alike.next());
    more.is_none().then_some(&**only)
}

/// A figure chosen for a point.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Picked<'m> {
    /// Value and uncertainty.
    pub(crate) value: Measure,
    /// The figure (of a table, the nearest row).
    pub(crate) figure: &'m Figure,
    /// Ratio of the frequency to the nearest end of a table, 1 inside.
    pub(crate) outside: f64,
}

/// The figure that holds at a point: one for its band before a table before one for always.
pub(crate) fn pick<'m>(figures: &'m [Figure], point: &Point, env: &Env) -> Option<Picked<'m>> {
    pick_by(figures, |f| f, point, env)
}

/// The same among things that hold a figure.
pub(crate) fn pick_by<'m, T>(
    all: &'m [T],
    figure: impl Fn(&'m T) -> &'m Figure,
    point: &Point,
    env: &Env,
) -> Option<Picked<'m>> {
    let one = |f: &'m Figure| Picked {
        value: f.value,
        figure: f,
        outside: 1.0,
    };
    let figures = || all.iter().map(&figure);
    if let Some(f) = figures()
        .find(|f| matches!(&f.when, When::Bands(b) if b.iter().any(|n| band_matches(&n.text, point, env))))
    {
        return Some(one(f));
    }
    let mut below: Option<(f64, &Figure)> = None;
    let mut above: Option<(f64, &Figure)> = None;
    for f in figures() {
        if let When::At(hz) = f.when {
            if hz <= point.hz && below.is_none_or(|b| hz > b.0) {
                below = Some((hz, f));
            }
            if hz >= point.hz && above.is_none_or(|a| hz < a.0) {
                above = Some((hz, f));
            }
        }
    }
    match (below, above) {
        (Some((f1, a)), Some((f2, b))) => {
            if f1 == f2 {
                return Some(one(a));
            }
            // straight line in dB over the logarithm of frequency: device tables have few points
            // and no law of their own
            let t = libm::log(point.hz / f1) / libm::log(f2 / f1);
            let value = Measure {
                value: a.value.value + t * (b.value.value - a.value.value),
                u: a.value.u.max(b.value.u),
                normal: a.value.normal || b.value.normal,
                return_loss: a.value.return_loss && b.value.return_loss,
            };
            return Some(Picked {
                value,
                figure: if t < 0.5 { a } else { b },
                outside: 1.0,
            });
        }
        (Some((f, a)), None) => {
            return Some(Picked {
                outside: point.hz / f,
                ..one(a)
            });
        }
        (None, Some((f, a))) => {
            return Some(Picked {
                outside: f / point.hz,
                ..one(a)
            });
        }
        (None, None) => {}
    }
    figures().find(|f| f.when == When::Always).map(one)
}
