//! What the transmitters of a site do to each receive channel, and whether that is kept within its limit.

use downlead_base::Loc;
use downlead_physics::noise::noise_rise;
use downlead_physics::site::interference_for_rise;
use downlead_quantity::w_to_dbm;
use downlead_station::Env;
use downlead_station::model::{Node, Part, PartData, Receiver, Station, Transmitter};

use super::floor::floor;
use super::gather::Line;
use super::isolation::{IsolationAt, between};
use super::offset::at_offset;
use super::path::{Meets, Way, Ways, meet};
use super::sum::{against, rise, surely, together, verdict};
use super::{
    CarrierAt, DesenseAssumed, DesenseLimit, DesenseResult, DesenseVerdict, Floor, Missing,
    NoiseAt, Source,
};
use crate::cause::{Budget, Cause};
use crate::chain::holds;
use crate::point::{Point, pick_by};
use crate::result::ChainResult;
use crate::walk::Stop;

/// One receive channel.
pub(super) struct Heard<'a, 'm> {
    line: &'a Line<'m>,
    part: &'m Part,
    receiver: &'m Receiver,
    point: &'a Point,
    pub(super) limit: Option<DesenseLimit>,
    pub(super) floor: Option<Floor>,
    /// What its floor owes to each cause, dB: alone, and with the noise of the site.
    pub(super) budgets: [Budget<'m>; 2],
}

/// All of the site.
struct Site<'a, 'm> {
    own: &'m Station,
    others: &'a [&'m Station],
    lines: &'a [Line<'m>],
    env: &'m Env,
}

/// Budgets of one source beside its result.
pub(super) struct Computed<'m> {
    pub(super) source: Source,
    /// Noise at the receiver, dBm/Hz, with what it owes to each cause.
    pub(super) noise: Option<(f64, Budget<'m>)>,
    /// The transmitter and its frequency: through several chains it sends one at a time.
    pub(super) transmitter: Option<(Loc, u64)>,
}

/// Desense of each receive channel of a station.
pub(crate) fn desense(st: &Station, chains: &[ChainResult], env: &Env) -> Vec<DesenseResult> {
    let others = env.on_site_of(st);
    let mut lines = Line::of(st, false, env);
    if !lines.iter().any(|l| l.receiver().is_some()) {
        return Vec::new();
    }
    for o in &others {
        lines.extend(Line::of(o, true, env));
    }
    let site = Site {
        own: st,
        others: &others,
        lines: &lines,
        env,
    };
    let mut ways = Ways::new(env);
    let mut out = Vec::new();
    for (at, line) in lines.iter().enumerate().filter(|l| !l.1.other) {
        let Some((part, receiver)) = line.receiver() else {
            continue;
        };
        for point in &line.points {
            let result = chains
                .get(at)
                .and_then(|c| c.bands.iter().find(|b| b.hz == point.hz));
            let (floor, budgets, assumed) = floor(st, receiver, result);
            let heard = Heard {
                line,
                part,
                receiver,
                point,
                limit: limit_of(line, Some(point), env),
                floor,
                budgets,
            };
            out.push(site.channel(&heard, assumed, &mut ways));
        }
        // a limit on a range is not judged, and not forgotten
        if let (true, Some(limit)) = (line.points.is_empty(), limit_of(line, None, env)) {
            out.push(unjudged(line, limit));
        }
    }
    out
}

fn unjudged(line: &Line<'_>, limit: DesenseLimit) -> DesenseResult {
    let missing = match line.ranged {
        true => Missing::Range(line.words()),
        false => Missing::NoFrequency(line.words()),
    };
    DesenseResult {
        receiver: line.end_name(),
        chain: line.loc(),
        chain_name: line.words(),
        hz: 0.0,
        floor: None,
        sources: Vec::new(),
        together: None,
        most: None,
        limit: Some(limit),
        verdict: DesenseVerdict::CannotJudge,
        missing: vec![missing],
        assumed: Vec::new(),
    }
}

/// The strictest limit of a desense in a chain at a frequency; on any of them, where none is given.
fn limit_of(line: &Line<'_>, point: Option<&Point>, env: &Env) -> Option<DesenseLimit> {
    let limits = line.stops.iter().filter_map(|s| match s {
        Stop::Node(Node::Desense { db, source, on }, loc) => point
            .is_none_or(|p| holds(on, p, env))
            .then(|| DesenseLimit {
                db: *db,
                source: source.clone(),
                loc: *loc,
            }),
        _ => None,
    });
    limits.min_by(|a, b| a.db.total_cmp(&b.db))
}

impl<'m> Site<'_, 'm> {
    fn channel(
        &self,
        heard: &Heard<'_, 'm>,
        mut assumed: Vec<DesenseAssumed>,
        ways: &mut Ways<'m>,
    ) -> DesenseResult {
        let mut missing = Vec::new();
        let mut all: Vec<Computed<'m>> = Vec::new();
        for tx in self.lines {
            let Some((part, transmitter)) = tx.transmitter() else {
                continue;
            };
            // a radio does not hear while it sends
            if std::ptr::eq(part, heard.part) {
                continue;
            }
            if tx.ranged {
                missing.push(Missing::Range(tx.words()));
            }
            if tx.unknown {
                missing.push(Missing::NoFrequency(tx.words()));
            }
            for point in &tx.points {
                let simplex = !tx.other && (point.hz - heard.point.hz).abs() < 1.0;
                let met = meet(tx, heard.line);
                let silent = tx.ends_in_load() && matches!(met, Meets::Apart);
                if !simplex && !silent {
                    let mut c = self.source(heard, (tx, transmitter, point), &met, ways);
                    c.transmitter = Some((part.loc, point.hz.to_bits()));
                    all.push(c);
                }
            }
        }
        for b in &self.own.site.beside {
            if self.env.station(&b.station.text).is_none() {
                missing.push(Missing::NotDefined(b.station.text.clone()));
            }
        }
        for st in std::iter::once(self.own).chain(self.others.iter().copied()) {
            // what a station sends may be missing from what its text means
            if crate::site::misread(st, self.env) {
                missing.push(Missing::Line(st.name.text.clone()));
            }
        }
        if heard.receiver.noise_figure.is_none() {
            missing.push(Missing::NoiseFigure(heard.line.end_name()));
        } else if heard.floor.is_none() {
            missing.push(Missing::Line(heard.line.words()));
        }
        let known_site =
            !self.others.is_empty() || self.own.site.alone.as_ref().is_some_and(|a| a.by.is_some());
        if !known_site && self.own.site.beside.is_empty() {
            assumed.push(DesenseAssumed::NoOther);
        }
        let mut r = DesenseResult {
            receiver: heard.line.end_name(),
            chain: heard.line.loc(),
            chain_name: heard.line.words(),
            hz: heard.point.hz,
            floor: heard.floor.clone(),
            sources: Vec::new(),
            together: None,
            most: None,
            limit: heard.limit.clone(),
            verdict: DesenseVerdict::NoLimit,
            missing,
            assumed,
        };
        together(&mut r, heard, &mut all);
        r.sources = all.into_iter().map(|c| c.source).collect();
        r.verdict = verdict(&r);
        r
    }

    fn source(
        &self,
        heard: &Heard<'_, 'm>,
        (tx, transmitter, point): (&Line<'m>, &'m Transmitter, &Point),
        met: &Meets,
        ways: &mut Ways<'m>,
    ) -> Computed<'m> {
        let offset_hz = (point.hz - heard.point.hz).abs();
        let mut c = Computed {
            source: Source {
                station: tx.other.then(|| tx.station.name.text.clone()),
                name: tx.end_name(),
                hz: point.hz,
                chain: tx.loc(),
                offset_hz,
                noise: None,
                noise_leg: None,
                carrier: None,
                carrier_leg: None,
                isolation_db: None,
                by_distance: None,
                noise_missing: Vec::new(),
                carrier_missing: Vec::new(),
            },
            noise: None,
            transmitter: None,
        };
        let widths =
            transmitter.bandwidth_hz.unwrap_or(0.0) + heard.receiver.bandwidth_hz.unwrap_or(0.0);
        if offset_hz <= 0.5 * widths.max(2.0) {
            c.source.noise_missing.push(Missing::InChannel);
            c.source.carrier_missing.push(Missing::InChannel);
            return c;
        }
        if let Meets::Nothing(part) = met {
            c.source.noise_missing.push(Missing::Together(part.clone()));
            c.source
                .carrier_missing
                .push(Missing::Together(part.clone()));
            return c;
        }
        let power = pick_by(&transmitter.power, |p| &p.0, point, self.env);
        let power = power.map(|p| (w_to_dbm(p.value.value), p.value.u, p.figure.loc));
        if power.is_none() {
            c.source.noise_missing.push(Missing::Power(tx.end_name()));
            c.source.carrier_missing.push(Missing::Power(tx.end_name()));
        }
        self.noise(&mut c, heard, (tx, transmitter, power), met, ways);
        self.carrier(&mut c, heard, (tx, point, power), met, ways);
        c
    }

    /// The whole way, isolation of antennas included; what is missing of it goes to `missing`.
    fn way(
        &self,
        (tx, heard): (&Line<'m>, &Heard<'_, 'm>),
        met: &Meets,
        point: &Point,
        other: (bool, bool),
        ways: &mut Ways<'m>,
        missing: &mut Vec<Missing>,
    ) -> Option<(Way<'m>, Option<IsolationAt>)> {
        let rx = heard.line;
        let isolation = match met {
            Meets::Apart => {
                let mut tags = Vec::new();
                for l in [tx, rx] {
                    match l.antenna().and_then(|a| a.0.tag.as_ref()) {
                        Some(t) => tags.push(l.of_station(&t.text)),
                        None => missing.push(Missing::Antenna(l.words())),
                    }
                }
                let [from, to] = <[Box<str>; 2]>::try_from(tags).ok()?;
                let found = between((tx, rx), point.hz, (self.own, self.others), self.env);
                if found.is_none() {
                    missing.push(Missing::Isolation {
                        from,
                        to,
                        hz: point.hz,
                    });
                    return None;
                }
                found
            }
            _ => None,
        };
        let mut way = ways.way((tx, rx), met, point, other);
        if let Some(i) = &isolation {
            way.loss_db += i.db;
            way.budget.add(Cause::Isolation(i.loc), -i.u);
        }
        missing.extend(way.missing.iter().cloned());
        way.bounded.then_some((way, isolation))
    }

    fn noise(
        &self,
        c: &mut Computed<'m>,
        heard: &Heard<'_, 'm>,
        (tx, transmitter, power): (
            &Line<'m>,
            &'m Transmitter,
            Option<(f64, f64, downlead_base::Loc)>,
        ),
        met: &Meets,
        ways: &mut Ways<'m>,
    ) {
        let s = &mut c.source;
        let stated =
            at_offset(&transmitter.noise, s.offset_hz).filter(|_| !transmitter.broken_noise);
        let Some((over_carrier, loc)) = stated else {
            s.noise_missing.push(Missing::Noise {
                of: tx.of_station(&tx.end_name()),
                offset_hz: s.offset_hz,
            });
            return;
        };
        let mut missing = Vec::new();
        let way = self.way(
            (tx, heard),
            met,
            heard.point,
            (true, false),
            ways,
            &mut missing,
        );
        let incomplete = !missing.is_empty();
        s.noise_missing.append(&mut missing);
        let (Some((way, isolation)), Some((dbm, u, power_loc))) = (way, power) else {
            return;
        };
        // an amplifier of the receive chain is in its noise figure
        let amplified = way
            .amplifiers
            .iter()
            .find(|a| tx.parts().any(|(p, _)| named(p, tx, a)));
        if let Some(a) = amplified {
            s.noise_missing.push(Missing::Amplifier(a.clone()));
            return;
        }
        s.noise_leg.clone_from(&way.leg);
        s.isolation_db = isolation.map(|i| (i.db, i.by_distance));
        let mut budget = way.budget;
        budget.add(Cause::Power(power_loc), u);
        budget.add(Cause::Device(loc), over_carrier.u);
        let noise = dbm + over_carrier.value - way.loss_db;
        c.noise = Some((noise, budget));
        let Some(floor) = &heard.floor else { return };
        let (_, budget) = c.noise.as_ref().expect("just set");
        let u_db = 2.0 * against(budget, &heard.budgets[0]);
        let on_site_db = 2.0 * against(budget, &heard.budgets[1]);
        s.by_distance = isolation.and_then(|i| {
            let other = noise + i.db - i.by_distance?;
            Some(noise_rise(other - floor.alone_dbm_hz))
        });
        s.noise = Some(NoiseAt {
            dbm_hz: noise,
            at_most: incomplete,
            u_db,
            way_db: way.loss_db,
            over_db: noise - floor.alone_dbm_hz,
            alone: rise(noise, floor.alone_dbm_hz, u_db),
            on_site: floor
                .site
                .as_ref()
                .map(|x| rise(noise, x.dbm_hz, on_site_db)),
            spare_db: heard
                .limit
                .as_ref()
                .map(|l| floor.alone_dbm_hz + interference_for_rise(l.db) - noise),
            needs_db: None,
        });
    }

    fn carrier(
        &self,
        c: &mut Computed<'m>,
        heard: &Heard<'_, 'm>,
        (tx, point, power): (&Line<'m>, &Point, Option<(f64, f64, downlead_base::Loc)>),
        met: &Meets,
        ways: &mut Ways<'m>,
    ) {
        let s = &mut c.source;
        let Some((blocking, loc)) = at_offset(&heard.receiver.blocking, s.offset_hz) else {
            s.carrier_missing.push(Missing::Blocking {
                of: heard.line.end_name(),
                offset_hz: s.offset_hz,
            });
            return;
        };
        let mut missing = Vec::new();
        let way = self.way((tx, heard), met, point, (false, true), ways, &mut missing);
        let incomplete = !missing.is_empty();
        s.carrier_missing.append(&mut missing);
        let (Some((way, isolation)), Some((power_dbm, u, power_loc))) = (way, power) else {
            return;
        };
        s.carrier_leg.clone_from(&way.leg);
        s.isolation_db = s.isolation_db.or(isolation.map(|i| (i.db, i.by_distance)));
        let mut budget = way.budget;
        budget.add(Cause::Power(power_loc), u);
        budget.add(Cause::Device(loc), -blocking.u);
        let dbm = power_dbm - way.loss_db;
        let under_db = blocking.value - dbm;
        let u_db = 2.0 * budget.standard();
        s.carrier = Some(CarrierAt {
            dbm,
            at_most: incomplete,
            way_db: way.loss_db,
            blocking_dbm: blocking.value,
            under_db,
            u_db,
            verdict: match surely(under_db - u_db, under_db + u_db, under_db, u_db) {
                // it may be less
                v if v != DesenseVerdict::Met && incomplete => DesenseVerdict::CannotJudge,
                v => v,
            },
        });
    }
}

/// Whether a part of a chain has this name, as amplifiers are called.
fn named(p: &Part, line: &Line<'_>, name: &str) -> bool {
    let tag = p.tag.as_ref().map_or(p.kind.word(), |t| &t.text);
    matches!(&p.data, PartData::Device(_)) && *line.of_station(tag) == *name
}
