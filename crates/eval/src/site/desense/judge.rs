//! What the transmitters of a site do to each receive channel, and whether that is kept within its limit.

use downlead_physics::noise::{T0_K, noise_rise, thermal_noise};
use downlead_physics::path::{Surroundings, external_noise};
use downlead_physics::site::{interference_for_rise, noise_floor};
use downlead_quantity::{Measure, from_db, to_db, w_to_dbm};
use downlead_station::Env;
use downlead_station::model::{
    Around, AtOffset, LinkNoise, Node, Part, PartData, Receiver, Station, Transmitter,
};

use super::gather::Line;
use super::isolation::{IsolationAt, between};
use super::path::{Meets, Way, Ways, meet};
use super::{
    CarrierAt, DesenseAssumed, DesenseLimit, DesenseResult, DesenseVerdict, Floor, Missing,
    NoiseAt, Rise, SiteFloor, Source,
};
use crate::cause::{Budget, Cause};
use crate::chain::holds;
use crate::point::{Point, pick_by};
use crate::result::{BandResult, ChainResult};
use crate::walk::Stop;

/// An offset fits a stated one within this share of it (our choice: noise at this distance from a carrier falls by less
/// than half a decibel over it).
const OFFSET_FITS: f64 = 0.05;

/// Margin and uncertainty below this are at the limit, dB.
const AT_LIMIT_DB: f64 = 0.02;

/// The figure that holds at an offset: the stated one, a straight line in dB over the logarithm between two, or the last
/// one that says that it holds beyond.
fn at_offset(list: &[AtOffset], hz: f64) -> Option<(Measure, downlead_base::Loc)> {
    let near = |a: &&AtOffset| (hz / a.offset_hz - 1.0).abs() <= OFFSET_FITS;
    let closest = |a: &&AtOffset, b: &&AtOffset| {
        let d = |x: &AtOffset| (hz / x.offset_hz - 1.0).abs();
        d(a).total_cmp(&d(b))
    };
    if let Some(a) = list.iter().filter(near).min_by(closest) {
        return Some((a.figure.value, a.figure.loc));
    }
    let below = list.iter().filter(|a| a.offset_hz < hz);
    let below = below.max_by(|a, b| a.offset_hz.total_cmp(&b.offset_hz))?;
    if below.beyond {
        return Some((below.figure.value, below.figure.loc));
    }
    let above = list.iter().filter(|a| a.offset_hz > hz);
    let above = above.min_by(|a, b| a.offset_hz.total_cmp(&b.offset_hz))?;
    let t = libm::log(hz / below.offset_hz) / libm::log(above.offset_hz / below.offset_hz);
    let (a, b) = (&below.figure.value, &above.figure.value);
    let m = Measure {
        value: a.value + t * (b.value - a.value),
        u: a.u.max(b.u),
        ..*a
    };
    Some((m, below.figure.loc))
}

/// Whether a stated offset is used for a distance of frequencies.
pub(super) fn used_at(list: &[AtOffset], one: &AtOffset, hz: f64) -> bool {
    if (hz / one.offset_hz - 1.0).abs() <= OFFSET_FITS || one.beyond && hz > one.offset_hz {
        return true;
    }
    // at one end of a line between two
    let inside = |a: &AtOffset| {
        let (low, high) = (
            a.offset_hz.min(one.offset_hz),
            a.offset_hz.max(one.offset_hz),
        );
        (low..=high).contains(&hz)
    };
    list.iter()
        .any(|a| a.offset_hz != one.offset_hz && inside(a))
}

/// One receive channel.
struct Heard<'a, 'm> {
    line: &'a Line<'m>,
    part: &'m Part,
    receiver: &'m Receiver,
    point: &'a Point,
    limit: Option<DesenseLimit>,
    floor: Option<Floor>,
    /// What its floor owes to each cause, dB: alone, and with the noise of the site.
    budgets: [Budget<'m>; 2],
}

/// All of the site.
struct Site<'a, 'm> {
    own: &'m Station,
    others: &'a [&'m Station],
    lines: &'a [Line<'m>],
    env: &'m Env,
}

/// Budgets of one source beside its result.
struct Computed<'m> {
    source: Source,
    /// Noise at the receiver, dBm/Hz, with what it owes to each cause.
    noise: Option<(f64, Budget<'m>)>,
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

/// Noise of a receiver in 1 Hz, alone and with that of its site.
fn floor<'m>(
    st: &Station,
    receiver: &Receiver,
    result: Option<&BandResult>,
) -> (Option<Floor>, [Budget<'m>; 2], Vec<DesenseAssumed>) {
    let none = || [Budget::default(), Budget::default()];
    let mut budget = Budget::default();
    let mut assumed = Vec::new();
    let Some(own) = receiver.noise_figure else {
        return (None, none(), assumed);
    };
    let chain = result.and_then(|b| Some((b, b.noise_figure_db?, b.total_db?)));
    let amplified = result.is_some_and(|b| b.nodes.iter().any(|n| n.matched_db < 0.0));
    let kt0 = thermal_noise(1.0, T0_K);
    let alone = match (amplified, chain) {
        (false, _) => noise_floor(own.value),
        // what amplifiers before the receiver add is in the system's figure at the antenna
        (true, Some((_, system, lost))) => kt0 + system - lost,
        (true, None) => return (None, none(), assumed),
    };
    let u = match (amplified, chain) {
        (true, Some((b, ..))) => b.noise_figure_u_db.unwrap_or(0.0) / 2.0,
        _ => own.u,
    };
    if let Some(b) = result.and_then(|b| b.nodes.last()) {
        budget.add(Cause::Noise(b.def), u);
    }
    let mut on_site = budget.clone();
    let around = match &st.site.noise {
        None => {
            assumed.push(DesenseAssumed::NoSiteNoise);
            None
        }
        Some((LinkNoise::Read(m), loc)) => {
            on_site.add(Cause::Device(*loc), m.u);
            Some(SiteFloor {
                around: None,
                external_db: None,
                dbm_hz: alone + m.value,
            })
        }
        Some((LinkNoise::Around(a), _)) => {
            let median = result.and_then(|b| external_noise(surroundings(*a), b.hz).ok());
            match (median, chain) {
                (Some(e), Some((_, system, lost))) => Some(SiteFloor {
                    around: Some(*a),
                    external_db: Some(e.median_db),
                    dbm_hz: kt0 + to_db(from_db(e.median_db) - 1.0 + from_db(system)) - lost,
                }),
                _ => {
                    assumed.push(DesenseAssumed::NoiseRange);
                    None
                }
            }
        }
    };
    // noise from outside never makes a receiver quieter than it is alone
    let site = around.map(|s| SiteFloor {
        dbm_hz: s.dbm_hz.max(alone),
        ..s
    });
    let floor = Floor {
        alone_dbm_hz: alone,
        site,
    };
    (Some(floor), [budget, on_site], assumed)
}

/// The surroundings of the recommendation.
pub(crate) fn surroundings(a: Around) -> Surroundings {
    match a {
        Around::City => Surroundings::City,
        Around::Residential => Surroundings::Residential,
        Around::Rural => Surroundings::Rural,
        Around::QuietRural => Surroundings::QuietRural,
    }
}

/// Desense by a noise over a floor, both in dBm/Hz, where the two together are uncertain by `u_db` (k = 2).
fn rise(noise: f64, floor: f64, u_db: f64) -> Rise {
    let over = noise - floor;
    Rise {
        db: noise_rise(over),
        low_db: noise_rise(over - u_db),
        high_db: noise_rise(over + u_db),
    }
}

/// Standard uncertainty of a budget less another one, dB.
fn against(a: &Budget<'_>, b: &Budget<'_>) -> f64 {
    let mut all = a.clone();
    b.terms.iter().for_each(|(cause, db)| all.add(*cause, -db));
    all.standard()
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
                let again = |c: &Computed<'_>| {
                    c.source.hz == point.hz
                        && *c.source.name == *tx.end_name()
                        && c.source.station.is_some() == tx.other
                };
                let met = meet(tx, heard.line);
                let silent = tx.into_load() && matches!(met, Meets::Apart);
                if !simplex && !silent && !all.iter().any(again) {
                    all.push(self.source(heard, (tx, transmitter, point), &met, ways));
                }
            }
        }
        for b in &self.own.site.beside {
            if self.env.station(&b.station.text).is_none() {
                missing.push(Missing::NotDefined(b.station.text.clone()));
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

/// A verdict from the margins with the uncertainty to the bad and to the good side.
fn surely(worst: f64, best: f64, margin: f64, u_db: f64) -> DesenseVerdict {
    if margin.abs() < AT_LIMIT_DB && u_db < AT_LIMIT_DB {
        DesenseVerdict::AtLimit
    } else if worst >= 0.0 {
        DesenseVerdict::Met
    } else if best < 0.0 {
        DesenseVerdict::NotMet
    } else {
        DesenseVerdict::CannotTell
    }
}

/// The noise of some transmitters together, dBm/Hz, with what it owes to each cause; none of none.
fn sum<'m>(all: &[Computed<'m>], wanted: impl Fn(&NoiseAt) -> bool) -> Option<(f64, Budget<'m>)> {
    let noises = || {
        all.iter()
            .filter(|c| c.source.noise.as_ref().is_some_and(&wanted))
            .filter_map(|c| c.noise.as_ref())
    };
    let sum: f64 = noises().map(|n| from_db(n.0)).sum();
    let mut budget = Budget::default();
    for (noise, own) in noises() {
        let share = from_db(*noise) / sum;
        own.terms
            .iter()
            .for_each(|(cause, db)| budget.add(*cause, share * db));
    }
    (sum > 0.0).then(|| (to_db(sum), budget))
}

/// Adds up the noise of all transmitters, with what they have in common, over the floor that counts.
fn together<'m>(r: &mut DesenseResult, heard: &Heard<'_, 'm>, all: &mut [Computed<'m>]) {
    let Some(floor) = &heard.floor else { return };
    let floor_dbm = floor.site.as_ref().map_or(floor.alone_dbm_hz, |s| s.dbm_hz);
    let rise = |(noise, budget): (f64, Budget<'m>)| {
        let own = &heard.budgets[usize::from(floor.site.is_some())];
        rise(noise, floor_dbm, 2.0 * against(&budget, own))
    };
    r.most = sum(all, |_| true).map(rise);
    let known = sum(all, |n| !n.at_most);
    let known_mw = known.as_ref().map_or(0.0, |k| from_db(k.0));
    r.together = known.map(rise);
    let Some(limit) = &heard.limit else { return };
    let allowed = from_db(floor_dbm + interference_for_rise(limit.db));
    for c in all {
        let Some((noise, _)) = &c.noise else { continue };
        let Some(n) = c.source.noise.as_mut().filter(|n| !n.at_most) else {
            continue;
        };
        let left = allowed - (known_mw - from_db(*noise));
        n.needs_db = (left > 0.0).then(|| noise - to_db(left));
    }
}

fn verdict(r: &DesenseResult) -> DesenseVerdict {
    use DesenseVerdict as V;
    let carriers = r.sources.iter().filter_map(|s| s.carrier.as_ref());
    let blocked = carriers.map(|c| c.verdict).min();
    let Some(limit) = &r.limit else {
        // a carrier over what the receiver withstands is wrong under any limit
        return match blocked {
            Some(V::NotMet) => V::NotMet,
            _ => V::NoLimit,
        };
    };
    let judged = |t: &Rise| {
        let u = t.high_db - t.low_db;
        surely(
            limit.db - t.high_db,
            limit.db - t.low_db,
            limit.db - t.db,
            u,
        )
    };
    let noise = match (&r.together, &r.most) {
        (Some(t), _) if judged(t) == V::NotMet => V::NotMet,
        (Some(t), Some(m)) if m == t => judged(t),
        // what only may be as much is nothing that surely is
        (_, Some(m)) if judged(m) == V::Met => V::Met,
        (_, Some(_)) => V::CannotJudge,
        (_, None) => V::Met,
    };
    // a figure that can only be less than one that is kept needs nothing further
    let kept = |s: &Source| {
        let noise = s.noise.is_some();
        let carrier = s
            .carrier
            .as_ref()
            .is_some_and(|c| c.verdict != V::CannotJudge);
        noise && carrier
    };
    let open = !r.missing.is_empty() || !r.sources.iter().all(kept);
    match [Some(noise), blocked].into_iter().flatten().min() {
        Some(V::NotMet) => V::NotMet,
        _ if open => V::CannotJudge,
        Some(V::Met) if r.assumed.contains(&DesenseAssumed::NoOther) => V::MetAlone,
        Some(v) => v,
        None => V::CannotJudge,
    }
}
