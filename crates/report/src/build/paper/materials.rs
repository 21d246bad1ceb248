//! From a station to its bill of materials.

use downlead_base::Loc;
use downlead_eval::{Evaluated, Places, Scope, Snapshot, origin};
use downlead_physics::line::wavelength;
use downlead_station::Env;
use downlead_station::model::{
    Line, LineLength, Meaning, Part, PartData, PartKind, Role, Station, Step,
};
use rustc_hash::FxHashMap;

use super::joins::{joined, listed};
use super::{AID, From};
use crate::shape::paper::materials::{
    CableItem, ConnectorItem, DeviceItem, JoinItem, Materials, MaterialsFile, PieceItem, SCHEMA,
};

/// Bills of all stations of the named files, with `spare` percent added to each length of cable.
#[must_use]
pub fn materials(s: &Snapshot, spare: Option<f64>, from: From<'_>) -> MaterialsFile {
    let places = Places::new(s);
    let mut stations = Vec::new();
    for scope in s.scopes() {
        for item in scope.items() {
            let station = match &item.1.meaning {
                Meaning::Station(st) => Some(&**st),
                Meaning::Chain(_) => None,
                _ => continue,
            };
            let bill = Bill {
                places: &places,
                scope,
                item,
                station,
                spare,
            };
            let one = bill.made(super::origin(s, scope, station, from));
            stations.push(one);
        }
    }
    MaterialsFile {
        schema: SCHEMA,
        caution: AID,
        stations,
    }
}

/// What a bill is made from.
struct Bill<'s> {
    places: &'s Places<'s>,
    scope: &'s Scope,
    item: &'s Evaluated,
    station: Option<&'s Station>,
    spare: Option<f64>,
}

impl<'s> Bill<'s> {
    fn made(&self, origin: crate::shape::paper::OriginReport) -> Materials {
        let mut notes = Vec::new();
        let chain = match &self.item.1.meaning {
            Meaning::Chain(c) => Some(&**c),
            _ => None,
        };
        let parts = self.parts();
        let by_loc = origin::parts_of(&self.item.1.meaning);
        let cables = self.cables(&parts, &mut notes);
        let connectors = self.connectors(&by_loc, &mut notes);
        let devices = self.devices(&parts);
        self.unread(&mut notes);
        Materials {
            station: self
                .station
                .map_or_else(String::new, |s| s.name.text.to_string()),
            title: match (self.station, chain) {
                (Some(s), _) => s.title.as_ref().map(ToString::to_string),
                (None, c) => c.map(|c| format!("chain {}", c.name.text)),
            },
            origin,
            spare_percent: self.spare,
            cables,
            connectors,
            devices,
            notes,
        }
    }

    fn env(&self) -> &'s Env {
        self.scope.env()
    }

    /// Each part once: those of the station, and those that are written into chains.
    fn parts(&self) -> Vec<&'s Part> {
        let all = origin::parts_of(&self.item.1.meaning);
        let mut all: Vec<(Loc, &Part)> = all.into_iter().collect();
        all.sort_by_key(|(loc, _)| loc.span.start);
        all.into_iter().map(|(_, p)| p).collect()
    }

    fn name(&self, p: &Part) -> String {
        match &p.tag {
            Some(t) => t.text.to_string(),
            None => format!("{} of line {}", p.kind.word(), self.places.line(p.loc)),
        }
    }

    fn cables(&self, parts: &[&Part], notes: &mut Vec<String>) -> Vec<CableItem> {
        let mut out: Vec<CableItem> = Vec::new();
        for p in parts {
            if matches!(p.data, PartData::Broken) && p.kind.role() == Role::Line {
                let who = self.name(p);
                notes.push(format!("{who} could not be read: it is not counted."));
            }
            let PartData::Line(line) = &p.data else {
                continue;
            };
            let cable = line.cable.as_ref().map(|c| c.text.to_string());
            let (file, _, at) = self.places.at(p.loc);
            let piece = PieceItem {
                tag: self.name(p),
                kind: p.kind.word(),
                length_m: self.length(line),
                place: line.place.as_ref().map(|p| p.text.to_string()),
                file,
                line: at,
            };
            if piece.length_m.is_none() {
                let why = match (&line.length, &cable) {
                    (Some(_), _) => {
                        "is stated in wavelengths, and the frequency or the cable's velocity is not"
                    }
                    (None, Some(_)) => "is not stated",
                    (None, None) => "is not stated: a loss stands in its place, and no cable",
                };
                notes.push(format!("The length of {} {why}.", piece.tag));
            }
            let known = out.iter().position(|c| c.cable == cable);
            let at = known.unwrap_or_else(|| {
                let title = cable.as_deref().and_then(|c| self.env().cable(c));
                out.push(CableItem {
                    title: title
                        .and_then(|c| c.title.as_ref())
                        .map(ToString::to_string),
                    cable,
                    pieces: Vec::new(),
                    length_m: 0.0,
                    with_spare_m: None,
                    without_length: 0,
                });
                out.len() - 1
            });
            out[at].pieces.push(piece);
        }
        for c in &mut out {
            c.length_m = c.pieces.iter().filter_map(|p| p.length_m).sum();
            c.without_length = c.pieces.iter().filter(|p| p.length_m.is_none()).count();
            c.with_spare_m = self.spare.map(|s| c.length_m * (1.0 + s / 100.0));
        }
        out
    }

    /// Metres of a piece, where the text says them.
    fn length(&self, line: &Line) -> Option<f64> {
        match line.length.as_ref()? {
            LineLength::Metres(m) => Some(m.value),
            LineLength::Wavelengths { length, at_hz } => {
                let cable = self.env().cable(&line.cable.as_ref()?.text)?;
                let velocity = cable.velocity?.value;
                Some(length.value * wavelength((*at_hz)?, velocity))
            }
        }
    }

    fn connectors(
        &self,
        parts: &FxHashMap<Loc, &Part>,
        notes: &mut Vec<String>,
    ) -> Vec<ConnectorItem> {
        let mut out: Vec<ConnectorItem> = Vec::new();
        for j in joined(self.places, parts, &self.item.2.chains) {
            if !j.otherwise.is_empty() {
                notes.push(format!(
                    "Between {} and {} are {} in {}, but {}; the larger number is counted.",
                    j.sides[0],
                    j.sides[1],
                    listed(&j.pairs),
                    j.chain,
                    j.otherwise.join(", ")
                ));
            }
            for (name, count) in &j.pairs {
                let known = out.iter().position(|c| c.connector == *name);
                let at = known.unwrap_or_else(|| {
                    let title = self.env().connector(name).and_then(|c| c.title.as_ref());
                    out.push(ConnectorItem {
                        connector: name.clone(),
                        title: title.map(ToString::to_string),
                        count: 0,
                        places: Vec::new(),
                    });
                    out.len() - 1
                });
                out[at].count += count;
                out[at].places.push(JoinItem {
                    from: j.sides[0].clone(),
                    to: j.sides[1].clone(),
                    count: *count,
                });
            }
        }
        out
    }

    fn devices(&self, parts: &[&Part]) -> Vec<DeviceItem> {
        let order = |k: PartKind| PartKind::ALL.iter().position(|x| *x == k);
        let mut out: Vec<(PartKind, DeviceItem)> = Vec::new();
        for p in parts {
            if matches!(p.kind.role(), Role::Line | Role::Join) {
                continue;
            }
            let (class, source) = (class(p), source(p));
            let (file, _, line) = self.places.at(p.loc);
            let alike = |x: &&mut (PartKind, DeviceItem)| {
                x.0 == p.kind && x.1.class == class && x.1.source == source
            };
            match out.iter_mut().find(alike) {
                Some((_, item)) => {
                    item.count += 1;
                    item.tags.push(self.name(p));
                }
                None => out.push((
                    p.kind,
                    DeviceItem {
                        kind: p.kind.word(),
                        class,
                        source,
                        count: 1,
                        tags: vec![self.name(p)],
                        file,
                        line,
                    },
                )),
            }
        }
        out.sort_by_key(|x| order(x.0));
        out.into_iter().map(|x| x.1).collect()
    }

    /// Lines and chains that count for nothing, because they could not be read.
    fn unread(&self, notes: &mut Vec<String>) {
        let models = match &self.item.1.meaning {
            Meaning::Station(st) => &st.chains[..],
            Meaning::Chain(c) => std::slice::from_ref(&**c),
            _ => &[],
        };
        for (c, r) in models.iter().zip(&self.item.2.chains) {
            if r.bands.is_empty() {
                notes.push(format!(
                    "Chain {} is not computed: its connectors are not counted.",
                    c.name.text
                ));
            } else if c.steps.iter().any(|s| self.is_unread(s)) {
                notes.push(format!(
                    "A line of chain {} is not understood: what it says is not counted.",
                    c.name.text
                ));
            }
        }
    }

    fn is_unread(&self, step: &Step) -> bool {
        match step {
            Step::Broken(_) => true,
            Step::Node(..) => false,
            Step::Part { branches, .. } => branches
                .iter()
                .any(|b| b.steps.iter().any(|s| self.is_unread(s))),
            Step::Use { tag, branches, .. } => {
                let parts = self.station.into_iter().flat_map(|s| &s.parts);
                let known = parts
                    .filter_map(|p| p.tag.as_ref())
                    .any(|t| t.text == tag.text);
                !known
                    || branches
                        .iter()
                        .any(|b| b.steps.iter().any(|s| self.is_unread(s)))
            }
        }
    }
}

/// The definition that a part is an example of.
fn class(p: &Part) -> Option<String> {
    match &p.data {
        PartData::Device(d) => d.class.as_ref().map(|c| c.text.to_string()),
        _ => None,
    }
}

/// Where the figures of a part come from, each source once.
fn source(p: &Part) -> Option<String> {
    let mut all: Vec<String> = Vec::new();
    let mut add = |words: Option<String>| {
        if let Some(w) = words.filter(|w| !all.contains(w)) {
            all.push(w);
        }
    };
    add(p.meta.words());
    match &p.data {
        PartData::Device(d) => {
            let figures = d.ports.iter().flat_map(|x| x.loss.iter());
            figures.for_each(|f| add(f.meta.words()));
            d.gain.iter().for_each(|f| add(f.meta.words()));
        }
        PartData::Antenna(a) => a.gain.iter().for_each(|g| add(g.figure.meta.words())),
        _ => {}
    }
    (!all.is_empty()).then(|| all.join("; "))
}
