//! Where an input of a derivation stands in the text, and what the text says of its source.

use downlead_base::Loc;
use downlead_physics::net::record::{DIGITS, Rec, digits, record};
use downlead_physics::table::{LossTable, through_of};
use downlead_station::model::{
    Antenna, Cable, CableLoss, Device, Figure, LineLength, Meta, Part, PartData,
};

use super::Derivation;
use super::cx::Cx;
use super::recorded::tree;
use crate::cause::Cause;
use crate::element::{Element, LineAt};

/// Where an input comes from.
#[derive(Default)]
pub(super) struct Origin {
    /// In words.
    pub(super) words: Option<String>,
    pub(super) place: Option<Loc>,
    /// A formula and the same in numbers, where the input is not stated as such.
    pub(super) by: Option<(String, String)>,
    pub(super) steps: Vec<Derivation>,
}

impl Origin {
    fn said(words: Option<String>, place: Loc) -> Self {
        Origin {
            words,
            place: Some(place),
            ..Origin::default()
        }
    }

    fn assumed(why: &str) -> Self {
        Origin {
            words: Some(format!("an assumption: {why}")),
            ..Origin::default()
        }
    }
}

const NONE_STATED: &str = "none is stated";

impl Cx<'_> {
    /// What an input of an element's part is a figure of.
    pub(super) fn origin(
        &self,
        key: u32,
        name: &'static str,
        element: Option<&Element<'_>>,
    ) -> Origin {
        let Some(cause) = self.kept().c.wiring.source(key) else {
            return Origin::default();
        };
        let line = element.and_then(|e| e.line.as_ref());
        let connector = element.and_then(|e| e.connector).map(|c| c.0);
        match cause {
            Cause::Cable(_) => line.map_or_else(Origin::default, |l| self.cable(l, name)),
            Cause::Construction(..) => line.map_or_else(Origin::default, |l| {
                let text = self.places.text(l.cable.loss_loc).trim();
                let words = match l.cable.loss {
                    // stated per 100 m or 100 ft, computed per m
                    Some(CableLoss::TwoTerm { .. }) if !text.is_empty() => {
                        cable_words(l.cable).map(|w| format!("`{text}` of {w}"))
                    }
                    _ => cable_words(l.cable),
                };
                Origin::said(words, l.cable.loss_loc)
            }),
            Cause::Velocity(_) => line.map_or_else(Origin::default, |l| {
                if l.at.velocity_assumed {
                    Origin::assumed(NONE_STATED)
                } else {
                    Origin::said(cable_words(l.cable), l.cable.name.loc)
                }
            }),
            Cause::Impedance(_) => line.map_or_else(Origin::default, |l| {
                if l.at.z0_assumed {
                    Origin::assumed(NONE_STATED)
                } else {
                    Origin::said(cable_words(l.cable), l.cable.name.loc)
                }
            }),
            Cause::Connector(_) | Cause::Bump(..) => connector.map_or_else(Origin::default, |c| {
                Origin::said(c.meta.words(), c.name.loc)
            }),
            Cause::Temperature(place) => {
                let at = self
                    .station
                    .and_then(|s| s.places.iter().find(|p| *p.name.text == **place));
                Origin {
                    words: Some(format!("place {place}")),
                    place: at.map(|p| p.name.loc),
                    ..Origin::default()
                }
            }
            Cause::OwnTemperature(loc) => {
                let own = match self.parts.get(loc).map(|p| &p.data) {
                    Some(PartData::Line(l)) => l.temperature.is_some(),
                    Some(PartData::Device(d)) => d.temperature.is_some(),
                    _ => false,
                };
                if own {
                    Origin::said(None, *loc)
                } else {
                    Origin::assumed(NONE_STATED)
                }
            }
            Cause::Length(loc) => self.length(*loc, name, element),
            Cause::Sits(_) => Origin::assumed("anywhere from in series with the line to across it"),
            Cause::Instrument(name) => Origin {
                words: Some(format!("scale of {name}")),
                place: self.env.instrument(name).map(|i| i.name.loc),
                ..Origin::default()
            },
            Cause::Power(loc)
            | Cause::Device(loc)
            | Cause::Coupling(loc)
            | Cause::Amplification(loc)
            | Cause::Isolation(loc)
            | Cause::Share(loc, _)
            | Cause::Reflection(loc)
            | Cause::Reactance(loc)
            | Cause::Gain(loc)
            | Cause::Efficiency(loc)
            | Cause::Added(loc) => Origin::said(self.said_of(*loc, element), *loc),
            Cause::Noise(_) | Cause::Phase(_) | Cause::Phases | Cause::Multiple => {
                Origin::default()
            }
        }
    }

    /// What the text says of the figure at a place: its own words, else those of its part or
    /// definition.
    fn said_of(&self, loc: Loc, element: Option<&Element<'_>>) -> Option<String> {
        let holds = |p: &&Part| p.loc == loc || figure_in(p, loc).is_some();
        let part = self.parts.values().copied().find(holds);
        let own = part.and_then(|p| figure_in(p, loc));
        own.and_then(Meta::words)
            .or_else(|| part.and_then(|p| p.meta.words()))
            .or_else(|| element.and_then(|e| e.meta).and_then(Meta::words))
    }

    /// A length: the text of one that was stated by its phase.
    fn length(&self, loc: Loc, name: &'static str, element: Option<&Element<'_>>) -> Origin {
        let text = self.places.text(loc).trim();
        let mut o = Origin::said(None, loc);
        if !name.contains("wavelengths") {
            return o;
        }
        let Some(value) = element
            .and_then(|e| e.part)
            .and_then(|p| match &p.data {
                PartData::Line(l) => l.length,
                _ => None,
            })
            .map(|l| match l {
                LineLength::Metres(m) => m.value,
                LineLength::Wavelengths { length, .. } => length.value,
            })
        else {
            return o;
        };
        if text.contains('°') || text.contains("deg") {
            o.by = Some((
                "degrees / 360".to_owned(),
                format!("{} / 360", digits(value * 360.0, DIGITS)),
            ));
        }
        o
    }

    /// A cable's figure that stands in no line as such: its accuracy, or what a table or file
    /// gives at the frequency.
    fn cable(&self, l: &LineAt<'_>, name: &'static str) -> Origin {
        let c = l.cable;
        if name == "factor on the loss" {
            let words = if l.at.u_relative == 0.0 {
                "no accuracy is stated: taken as exact".to_owned()
            } else {
                format!("accuracy of {}", c.name.text)
            };
            return Origin::said(Some(words), c.name.loc);
        }
        let mut o = Origin::said(cable_words(c), c.loss_loc);
        match &c.loss {
            Some(CableLoss::Table(points)) => {
                let plain: Vec<(f64, f64)> = points.iter().map(|p| (p.0, p.1.value)).collect();
                let conductor = name.contains("conductor");
                match by_table(&plain, self.band.hz, conductor) {
                    Some((by, steps)) => {
                        o.by = Some(by);
                        o.steps = steps;
                    }
                    None => {
                        o.words = Some(with(
                            o.words,
                            "the law k1 √f + k2 f through the points of the table",
                        ));
                    }
                }
            }
            Some(CableLoss::Network { .. }) => {
                o.words = Some(with(
                    o.words,
                    "matched loss of the piece in the file (cosh² θ = A D of its chain matrix) over its length, divided by the law k1 √f + k2 f",
                ));
            }
            _ => {}
        }
        o
    }
}

fn with(words: Option<String>, more: &str) -> String {
    words.map_or_else(|| more.to_owned(), |w| format!("{w}: {more}"))
}

/// The source of a cable's figures.
fn cable_words(c: &Cable) -> Option<String> {
    let words = c
        .meta
        .words()
        .unwrap_or_else(|| "no source is stated".to_owned());
    Some(format!("{}: {words}", c.name.text))
}

type Formula = (String, String);

/// How a table gives the conductor or dielectric part at a frequency, from the points beside it.
/// None outside the table.
fn by_table(points: &[(f64, f64)], hz: f64, conductor: bool) -> Option<(Formula, Vec<Derivation>)> {
    let table = LossTable::new(points).ok()?;
    let [p, q] = table.neighbours(hz)?;
    let mhz = hz * 1e-6;
    let ((k1, k2), steps) = record(|| {
        through_of(
            (
                Rec::given("f1, MHz", p.0 * 1e-6),
                Rec::given("a1, dB/m", p.1),
            ),
            (
                Rec::given("f2, MHz", q.0 * 1e-6),
                Rec::given("a2, dB/m", q.1),
            ),
        )
    });
    let (k1, k2) = (k1.value(), k2.value());
    let row = |what: &str, x: (f64, f64)| {
        Derivation::of(
            format!("{what} of the table"),
            format!("{} dB/m", digits(x.1, 10)),
        )
        .from(format!("at {}", downlead_quantity::frequency(x.0)))
    };
    let rows = [row("row a1", p), row("row a2", q)];
    if k1 >= 0.0 && k2 >= 0.0 {
        let by = if conductor {
            (
                "k1 √f".to_owned(),
                format!("{} × √({})", digits(k1, DIGITS), digits(mhz, 10)),
            )
        } else {
            (
                "k2 f".to_owned(),
                format!("{} × {}", digits(k2, DIGITS), digits(mhz, 10)),
            )
        };
        let upto = if conductor { 2 } else { 1 };
        let law = tree(&steps[..upto], &|_, _| Origin::default());
        return Some((by, law.into_iter().chain(rows).collect()));
    }
    // flatter than √f: all conductor; steeper than f: all dielectric
    let all_conductor = k2 < 0.0;
    if all_conductor != conductor {
        return Some((
            (
                "the rows rise less than √f or more than f: all of it is the other part".to_owned(),
                String::new(),
            ),
            Vec::new(),
        ));
    }
    let n = |x: f64| digits(x, 10);
    let by = (
        "a1 (f/f1)^(ln(a2/a1)/ln(f2/f1)), a straight line in log-log".to_owned(),
        format!(
            "{} × ({} / {})^(ln({} / {}) / ln({} / {}))",
            n(p.1),
            n(mhz),
            n(p.0 * 1e-6),
            n(q.1),
            n(p.1),
            n(q.0 * 1e-6),
            n(p.0 * 1e-6)
        ),
    );
    Some((by, rows.into()))
}

/// What is said of the figure at a place of a part.
fn figure_in(p: &Part, loc: Loc) -> Option<&Meta> {
    let here = |f: &&Figure| f.loc == loc;
    match &p.data {
        PartData::Transmitter(t) => t.power.iter().map(|p| &p.0).find(here),
        PartData::Transceiver(both) => both.0.power.iter().map(|p| &p.0).find(here),
        PartData::Line(l) => l
            .loss
            .iter()
            .chain(l.swr.iter())
            .chain(l.added.iter())
            .find(here),
        PartData::Device(d) => in_device(d, loc),
        PartData::Antenna(a) => in_antenna(a, loc),
        _ => None,
    }
    .map(|f| &*f.meta)
}

fn in_device(d: &Device, loc: Loc) -> Option<&Figure> {
    d.ports
        .iter()
        .flat_map(|p| p.loss.iter().chain(p.rejects.iter()))
        .chain(d.swr.iter())
        .chain(d.gain.iter())
        .chain(d.excess.iter())
        .find(|f| f.loc == loc)
}

fn in_antenna(a: &Antenna, loc: Loc) -> Option<&Figure> {
    a.gain
        .iter()
        .map(|g| &g.figure)
        .chain(a.swr.iter())
        .chain(a.impedance.iter().map(|z| &z.resistance))
        .chain(a.network.iter().map(|n| &n.figure))
        .find(|f| f.loc == loc)
}
