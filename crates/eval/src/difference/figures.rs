//! Which stated figures of two states of a chain are the same figure.

use downlead_base::Loc;
use downlead_physics::net::difference::Shared;
use downlead_station::model::{Meaning, Step};
use rustc_hash::FxHashMap;

use super::At;
use crate::cause::Cause;
use crate::chain::{Computed, budget_item};
use crate::result::CauseKind;

/// Numbers closer than this (relative) are one number in two units.
const SAME: f64 = 1e-9;

/// An input: name, value, standard uncertainty.
type Said = (&'static str, f64, f64);

/// A cause of uncertainty with what identifies it.
struct Figure {
    kind: CauseKind,
    /// Part, definition or name it belongs to.
    owner: String,
    /// Its figures; of an instrument none, which is one thing by its name.
    said: Vec<Said>,
}

/// A phase of a part.
struct Phase {
    owner: String,
    /// Its number among those of the part.
    nth: usize,
}

/// The figures of one state of a chain.
pub(super) struct Figures {
    hz: f64,
    causes: Vec<Figure>,
    phases: Vec<Phase>,
    /// All that is said of each part, exact figures included, and its loss between matched ends.
    parts: FxHashMap<String, Vec<Said>>,
    /// Since when each part is in service, where that is stated.
    since: FxHashMap<String, String>,
}

/// Joins have no tag.
const JOINS: &str = "joins";

impl Figures {
    pub(super) fn of(at: &At<'_>, c: &Computed<'_>) -> Figures {
        let owners = Owners::of(at);
        let wiring = &c.wiring;
        let mut said: FxHashMap<&Cause<'_>, Vec<Said>> = FxHashMap::default();
        let mut parts: FxHashMap<String, Vec<Said>> = FxHashMap::default();
        for (cause, figure) in wiring.said() {
            let list = said.entry(cause).or_default();
            if !list.iter().any(|x| close(x, figure)) {
                list.push(*figure);
            }
            if let Some(loc) = place_of(cause) {
                parts.entry(owners.of_place(loc)).or_default().push(*figure);
            }
        }
        let hz = at.band().map_or(0.0, |b| b.hz);
        for n in at.band().into_iter().flat_map(|b| &b.nodes) {
            let list = parts.entry(owners.of_place(n.def)).or_default();
            list.push(("loss between matched ends, dB", n.matched_db, 0.0));
        }
        let causes = wiring
            .causes()
            .iter()
            .map(|cause| {
                let mut said = said.get(cause).cloned().unwrap_or_default();
                match cause {
                    Cause::Instrument(_) => said.clear(),
                    Cause::Cable(name) => said.extend(cable(at, name, hz)),
                    _ => {}
                }
                Figure {
                    kind: budget_item(cause, 0.0).cause,
                    owner: match place_of(cause) {
                        Some(loc) => owners.of_place(loc),
                        None => named(cause),
                    },
                    said,
                }
            })
            .collect();
        let mut counts: FxHashMap<String, usize> = FxHashMap::default();
        let phases = wiring
            .phases()
            .iter()
            .map(|loc| {
                let owner = owners.of_place(*loc);
                let nth = counts.entry(owner.clone()).or_default();
                *nth += 1;
                Phase { owner, nth: *nth }
            })
            .collect();
        Figures {
            hz,
            causes,
            phases,
            parts,
            since: owners.since,
        }
    }
}

/// Loss of a cable at the frequency and 20 °C: where it is another, the sheet's figures are. Of a
/// `shared` name none: it is one cause whatever the cables lose.
fn cable(at: &At<'_>, name: &str, hz: f64) -> Option<Said> {
    let env = at.scope.env();
    let c = env.cable(name).filter(|c| c.shared.is_none())?;
    let loss = crate::cable::at_in(c, hz, 20.0, &env.attachments)?.loss();
    Some(("loss of the cable, dB/m", loss, 0.0))
}

/// Which causes and phases of the new state are those of the old one.
pub(super) fn shared(old: &Figures, new: &Figures, renamed: &[(String, String)]) -> Shared {
    let then = |owner: &str| -> String {
        let tag = renamed.iter().find(|r| r.1 == owner);
        tag.map_or_else(|| owner.to_owned(), |r| r.0.clone())
    };
    let replaced = |owner: &str| {
        let dates = old.since.get(&then(owner)).zip(new.since.get(owner));
        dates.is_some_and(|(a, b)| a != b)
    };
    let mut used = vec![false; old.causes.len()];
    let causes = new
        .causes
        .iter()
        .map(|b| {
            if replaced(&b.owner) {
                return None;
            }
            let owner = then(&b.owner);
            let at = old.causes.iter().enumerate().position(|(i, a)| {
                !used[i]
                    && a.kind == b.kind
                    && a.owner == owner
                    && same(&a.said, &b.said, old.hz == new.hz)
            })?;
            used[at] = true;
            u32::try_from(at).ok()
        })
        .collect();
    let unchanged = |owner: &str| {
        let parts = old.parts.get(&then(owner)).zip(new.parts.get(owner));
        owner == JOINS || parts.is_some_and(|(a, b)| same(a, b, true))
    };
    let phases = new
        .phases
        .iter()
        .map(|b| {
            if old.hz != new.hz || replaced(&b.owner) || !unchanged(&b.owner) {
                return None;
            }
            let owner = then(&b.owner);
            let at = old
                .phases
                .iter()
                .position(|a| a.owner == owner && a.nth == b.nth)?;
            u32::try_from(at).ok()
        })
        .collect();
    Shared { causes, phases }
}

/// Whether the same is said. At another frequency the loss of one cable is another number.
fn same(a: &[Said], b: &[Said], one_frequency: bool) -> bool {
    if !one_frequency && a.iter().chain(b).any(|x| x.0.ends_with("dB/m")) {
        return a.len() == b.len();
    }
    a.len() == b.len() && a.iter().all(|x| b.iter().any(|y| close(x, y)))
}

fn close(a: &Said, b: &Said) -> bool {
    let near = |x: f64, y: f64| x == y || (x - y).abs() <= SAME * x.abs().max(y.abs());
    a.0 == b.0 && near(a.1, b.1) && near(a.2, b.2)
}

/// Where the figure of a cause stands, of those that have a place.
fn place_of(c: &Cause<'_>) -> Option<Loc> {
    match c {
        Cause::Power(l)
        | Cause::Length(l)
        | Cause::Device(l)
        | Cause::Coupling(l)
        | Cause::Share(l, _)
        | Cause::Amplification(l)
        | Cause::Isolation(l)
        | Cause::Noise(l)
        | Cause::Reflection(l)
        | Cause::Reactance(l)
        | Cause::Gain(l)
        | Cause::Efficiency(l)
        | Cause::Sits(l)
        | Cause::Phase(l)
        | Cause::OwnTemperature(l)
        | Cause::Added(l) => Some(*l),
        Cause::Instrument(_)
        | Cause::Cable(_)
        | Cause::Velocity(_)
        | Cause::Impedance(_)
        | Cause::Construction(..)
        | Cause::Connector(_)
        | Cause::Bump(..)
        | Cause::Phases
        | Cause::Multiple
        | Cause::Temperature(_) => None,
    }
}

/// The name of a cause that has no place.
fn named(c: &Cause<'_>) -> String {
    match c {
        Cause::Construction(n, what) | Cause::Bump(n, what) => format!("{n}, {what}"),
        Cause::Instrument(n)
        | Cause::Cable(n)
        | Cause::Velocity(n)
        | Cause::Impedance(n)
        | Cause::Connector(n)
        | Cause::Temperature(n) => (*n).to_owned(),
        _ => String::new(),
    }
}

/// Whose each place is.
struct Owners<'s> {
    at: At<'s>,
    /// Where each part begins in the item of the chain, and its name.
    parts: Vec<(u32, String)>,
    since: FxHashMap<String, String>,
}

impl<'s> Owners<'s> {
    fn of(at: &At<'s>) -> Owners<'s> {
        let mut o = Owners {
            at: *at,
            parts: Vec::new(),
            since: FxHashMap::default(),
        };
        match &at.item.1.meaning {
            Meaning::Station(st) => {
                for p in &st.parts {
                    o.part(p, "");
                }
                for c in &st.chains {
                    o.steps(&c.steps, &c.name.text);
                }
            }
            Meaning::Chain(c) => o.steps(&c.steps, &c.name.text),
            _ => {}
        }
        o.parts.sort_unstable();
        o
    }

    fn steps(&mut self, steps: &[Step], chain: &str) {
        for s in steps {
            match s {
                Step::Part { part, branches } => {
                    self.part(part, chain);
                    branches.iter().for_each(|b| self.steps(&b.steps, chain));
                }
                Step::Use { branches, .. } => {
                    branches.iter().for_each(|b| self.steps(&b.steps, chain));
                }
                Step::Node(..) | Step::Broken(_) => {}
            }
        }
    }

    fn part(&mut self, p: &downlead_station::model::Part, chain: &str) {
        // untagged parts of a chain are told apart by what is said of them
        let name = match &p.tag {
            Some(t) => t.text.to_string(),
            None => format!("{} in {chain}", p.kind.word()),
        };
        if let Some(since) = &p.meta.since {
            self.since.insert(name.clone(), since.to_string());
        }
        self.parts.push((p.loc.span.start, name));
    }

    /// The part or definition a place is in.
    fn of_place(&self, loc: Loc) -> String {
        if loc.item == self.at.item.0.id {
            let after = self.parts.partition_point(|p| p.0 <= loc.span.start);
            let part = after.checked_sub(1).and_then(|i| self.parts.get(i));
            return part.map_or_else(|| JOINS.to_owned(), |p| p.1.clone());
        }
        let places = self.at.places;
        let name = places.definition(loc).unwrap_or_else(|| places.text(loc));
        format!("definition of {name}")
    }
}
