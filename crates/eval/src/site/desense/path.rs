//! The way from a transmitter to a receiver: the parts that both chains have and where they divide, or two
//! chains with the isolation of their antennas between them.

use downlead_physics::net::evaluate::Quantity;
use downlead_physics::net::input::Input;
use downlead_physics::net::part::{End, Load, Part as Net, Stretch as Wired};
use downlead_physics::net::{Fields, Network};
use downlead_station::Env;
use downlead_station::model::{Direction, PartData, PartKind};
use rustc_hash::FxHashMap;

use super::gather::Line;
use super::{LegResult, Missing};
use crate::assume::Assumptions;
use crate::cause::Budget;
use crate::chain::{Cx, Stretch, antenna_wave, stretch};
use crate::element::{Build, Leg, leg};
use crate::point::Point;
use crate::stage::Stage;
use crate::walk::Stop;
use crate::wiring::Wiring;

/// What a piece of the way comes to.
#[derive(Clone, Debug, Default)]
pub(super) struct Way<'m> {
    /// Loss, dB; the least that there can be where something is missing.
    pub(super) loss_db: f64,
    /// What it owes to each cause, dB: positive lets more through.
    pub(super) budget: Budget<'m>,
    /// What is not stated.
    pub(super) missing: Vec<Missing>,
    /// Whether what is missing can only lose something.
    pub(super) bounded: bool,
    /// What rejects.
    pub(super) leg: Option<LegResult>,
    /// Amplifiers on it, which add noise of their own.
    pub(super) amplifiers: Vec<Box<str>>,
}

impl<'m> Way<'m> {
    fn then(mut self, next: &Way<'m>) -> Way<'m> {
        self.loss_db += next.loss_db;
        for (cause, db) in &next.budget.terms {
            self.budget.add(*cause, *db);
        }
        self.missing.extend(next.missing.iter().cloned());
        self.bounded &= next.bounded;
        self.leg = self.leg.or_else(|| next.leg.clone());
        self.amplifiers.extend(next.amplifiers.iter().cloned());
        self
    }
}

/// Where two chains part.
pub(super) enum Meets {
    /// In a part of several ports: its place in each chain.
    Part(usize, usize),
    /// In a part that distinguishes nothing.
    Nothing(Box<str>),
    /// Nowhere: each has its own antenna.
    Apart,
}

/// Finds the part next to the transmitter that the receive chain passes too.
pub(super) fn meet(tx: &Line<'_>, rx: &Line<'_>) -> Meets {
    let named = |s: &Stop<'_>, what: &Stop<'_>| match (s, what) {
        (Stop::Part { part: a, .. }, Stop::Part { part: b, .. }) => std::ptr::eq(*a, *b),
        _ => false,
    };
    for (i, t) in tx.stops.iter().enumerate() {
        let Some(k) = rx.stops.iter().position(|r| named(r, t)) else {
            continue;
        };
        let (Stop::Part { part, port: a, .. }, Stop::Part { port: b, .. }) = (t, &rx.stops[k])
        else {
            continue;
        };
        let differ = matches!((a, b), (Some(a), Some(b)) if a.text != b.text);
        if differ && part.kind.has_legs() {
            return Meets::Part(i, k);
        }
        let tag = part.tag.as_ref().map_or(part.kind.word(), |t| &t.text);
        return Meets::Nothing(tag.into());
    }
    Meets::Apart
}

/// Which piece of a chain: its chain by address, where it is cut, the frequency, whether that is another one.
type Key = (usize, usize, u64, bool);

/// Computes pieces, each once.
pub(super) struct Ways<'m> {
    env: &'m Env,
    known: FxHashMap<Key, Way<'m>>,
}

impl<'m> Ways<'m> {
    pub(super) fn new(env: &'m Env) -> Self {
        Ways {
            env,
            known: FxHashMap::default(),
        }
    }

    /// From the transmitter to the receiver at the frequency of a point: `tx_other` and `rx_other` say whether that is
    /// another one than the chain is made for. The isolation of antennas is left to the caller.
    pub(super) fn way(
        &mut self,
        (tx, rx): (&Line<'m>, &Line<'m>),
        meets: &Meets,
        point: &Point,
        (tx_other, rx_other): (bool, bool),
    ) -> Way<'m> {
        let (to, from) = match meets {
            Meets::Part(i, k) => (Some(*i), Some(*k)),
            _ => (None, None),
        };
        let before = self.piece(tx, to, point, tx_other);
        let after = self.piece(rx, from, point, rx_other);
        before.then(&after)
    }

    /// Of a transmit chain all up to a stop (with it), or to its antenna; of a receive chain all from one on.
    fn piece(
        &mut self,
        line: &Line<'m>,
        cut: Option<usize>,
        point: &Point,
        other: bool,
    ) -> Way<'m> {
        let key = (
            std::ptr::from_ref(line.chain).addr(),
            cut.unwrap_or(usize::MAX),
            point.hz.to_bits(),
            other,
        );
        if let Some(way) = self.known.get(&key) {
            return way.clone();
        }
        let stops = match (cut, line.direction) {
            (None, _) => &line.stops[..],
            (Some(i), Direction::Transmit) => &line.stops[..=i],
            (Some(k), Direction::Receive) => &line.stops[k..],
        };
        let way = self.compute(line, stops, cut.is_none(), point, other);
        self.known.insert(key, way.clone());
        way
    }

    /// `aerial` says whether the piece reaches the antenna.
    fn compute(
        &self,
        line: &Line<'m>,
        stops: &[Stop<'m>],
        aerial: bool,
        point: &Point,
        other: bool,
    ) -> Way<'m> {
        let cx = Cx {
            station: Some(line.station),
            chain: line.chain,
            env: self.env,
            direction: line.direction,
            stage: Stage::Whole,
        };
        let mut b = Build {
            station: cx.station,
            env: self.env,
            point,
            wiring: Wiring::default(),
            backwards: false,
            reversed: false,
            receiving: line.direction == Direction::Receive,
            foreign: other,
            alike: None,
            assumed: Assumptions::default(),
            diags: Vec::new(),
        };
        let mut s = stretch(&cx, &mut b, stops, &mut Vec::new(), false);
        let mut way = Way {
            bounded: s.gaps.is_empty(),
            ..Way::default()
        };
        if !s.gaps.is_empty() {
            way.missing.push(Missing::Line(line.words()));
        }
        for e in &s.elements {
            let tag = e
                .part
                .and_then(|p| p.tag.as_ref())
                .map_or(e.kind.word(), |t| &t.text);
            let name = match e.port {
                Some(port) => line.of_station(&format!("{tag}.{}", port.text)),
                None => line.of_station(tag),
            };
            let active = e
                .part
                .is_some_and(|p| matches!(p.kind, PartKind::Amplifier | PartKind::Preamplifier));
            if active {
                way.amplifiers.push(name.clone());
            }
            if !e.complete {
                way.bounded &= !active;
                let legs = e
                    .part
                    .is_some_and(|p| matches!(&p.data, PartData::Device(d) if !d.broken));
                way.missing.push(match legs && other {
                    true => Missing::Part { name, hz: point.hz },
                    false => Missing::Broken(name),
                });
            } else if other && let Some(rejects_db) = rejected(e, point, self.env) {
                way.leg = Some(LegResult { name, rejects_db });
            }
        }
        self.solve(&mut way, line, &mut s, b, aerial);
        way
    }

    /// Loss of a piece and what it owes to each cause. An isolation is that between the connectors
    /// of the antennas, |S21|², so on the transmitter's side the forward wave at the connector
    /// counts, and on the receiver's side what a matched receiver gets of the wave that comes out of
    /// it: what a line makes of the antenna's reflection is in both.
    fn solve(
        &self,
        way: &mut Way<'m>,
        line: &Line<'m>,
        s: &mut Stretch<'m>,
        mut b: Build<'m, '_>,
        aerial: bool,
    ) {
        let antenna = line.antenna().filter(|_| aerial);
        let wave = antenna.and_then(|(p, a)| antenna_wave(&mut b, p, a, p.loc));
        let wave = wave.unwrap_or(Load::Matched);
        let network = |parts: Vec<Net>, load: Load| Network {
            hz: b.point.hz,
            level: Input::exact("power, dBW", 0.0),
            inputs: b.wiring.inputs.clone(),
            feed: Wired {
                parts,
                end: End::Load(load, None),
            },
            phased: false,
            fields: Fields::InPhase,
        };
        let mut parts = s.wired().parts;
        let mut add = |parts: Vec<Net>, load: Load, q: Quantity, sign: f64| {
            let e = network(parts, load).linear();
            way.loss_db -= sign * e.output(q).map_or(0.0, |o| o.mean);
            let owed = b.wiring.budget(&e, q);
            for (cause, db) in owed.terms {
                way.budget.add(cause, sign * db);
            }
        };
        match line.direction {
            Direction::Transmit => {
                let connector = Quantity::Forward(parts.len());
                add(parts, wave, connector, 1.0);
            }
            Direction::Receive => {
                // the source's own mismatch is in its available power, not in the wave
                let alone = vec![Net::Source(wave.clone())];
                parts.insert(0, Net::Source(wave));
                add(parts, Load::Matched, Quantity::Delivered, 1.0);
                add(alone, Load::Matched, Quantity::Delivered, -1.0);
            }
        }
    }
}

/// What an element rejects at the frequency, where that is what the text says of it.
fn rejected(e: &crate::element::Element<'_>, point: &Point, env: &Env) -> Option<f64> {
    let part = e.part?;
    let PartData::Device(d) = &part.data else {
        return None;
    };
    let class = d.class.as_ref().and_then(|n| env.device(&n.text));
    let ports = match class {
        Some(c) if d.ports.is_empty() => &c.device.ports,
        _ => &d.ports,
    };
    let taken = e.port?;
    let port = ports.iter().find(|p| p.name.text == taken.text)?;
    match leg(part.kind, port, point, env) {
        Leg::Rejects(p) => Some(p.value.value),
        _ => None,
    }
}
