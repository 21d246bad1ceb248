//! Each hop: what is radiated, the path, what arrives, what is needed.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::path::{self, Surroundings, Terrain};
use downlead_quantity::{frequency, w_to_dbm};
use downlead_station::model::{
    Around, Direction, End, Hop, Link, LinkNoise, Model, Part, PartData, Receiver, Station,
};
use downlead_station::{Env, nearest};

use super::models::Path;
use super::{
    Ends, HopNotJudged, HopResult, Judged, LinkAssumed, LinkResult, LinkVerdict, Missing, Modelled,
    NoiseUsed, TerrainResult, WhyHop, lengths, pattern, profile,
};
use crate::chain::{Cx, evaluate, gain_at};
use crate::point::{Point, points};
use crate::result::BandResult;
use crate::stage::Stage;
use crate::walk::{Stop, direction, walk};

/// Frequencies closer than this are one channel, Hz: half of the narrowest channel of FM speech (common practice).
const SAME_HZ: f64 = 6_250.0;
/// A station's ground may be off the profile by so much, m.
const GROUND_OFF_M: f64 = 5.0;
/// Models that differ by more are pointed out, dB.
const MODELS_APART_DB: f64 = 3.0;

/// One end of a hop, found.
struct Found<'m> {
    station: &'m Station,
    /// Name of the chain.
    name: Loc,
    direction: Direction,
    stops: Vec<Stop<'m>>,
    bands: Vec<(Point, BandResult)>,
}

/// Computes a link.
pub(crate) fn link(l: &Link, env: &Env, out: &mut Vec<Diagnostic>) -> LinkResult {
    let mut r = LinkResult {
        hops: Vec::new(),
        not_judged: Vec::new(),
        lengths_differ: false,
        assumed: vec![LinkAssumed::Polarisation],
        profile: Vec::new(),
        k: l.k.unwrap_or(4.0 / 3.0),
    };
    if l.k.is_none() {
        r.assumed.push(LinkAssumed::K43);
    }
    let table = profile::usable(l, env, out);
    let unread = l.unread_hops.iter().map(|h| HopNotJudged {
        loc: h.loc,
        hop: h.text.clone(),
        why: WhyHop::LineHasError,
    });
    r.not_judged.extend(unread);
    let Some(first) = l.hops.first() else {
        return r;
    };
    if let Some(p) = table {
        // what stands on the ground counts except at the ends (ITU-R P.1812-6, section 4.3)
        let last = p.points.len() - 1;
        let on_it = |i: usize| match i {
            0 => 0.0,
            i if i == last => 0.0,
            i => p.clutter.get(i).copied().unwrap_or(0.0),
        };
        let points = p.points.iter().enumerate();
        r.profile = points.map(|(i, &(d, h))| (d, h + on_it(i))).collect();
        if p.clutter.is_empty() {
            r.assumed.push(LinkAssumed::NoClutter);
        }
        r.assumed.push(LinkAssumed::Datum);
        let ends = [
            (&first.from.station, r.profile[0].1),
            (&first.to.station, r.profile[last].1),
        ];
        for (name, there) in ends {
            let said = env.station(&name.text).and_then(|s| s.ground_amsl);
            if let Some(said) = said.filter(|g| (g - there).abs() > GROUND_OFF_M)
                && let Some(file) = &l.profile
            {
                out.push(profile::differs(file, &name.text, (said, there)));
                r.profile.clear();
                break;
            }
        }
    }
    let length = r.profile.last().map(|p| p.0);
    r.lengths_differ = lengths::differ(l, first, length, env, out);
    for hop in &l.hops {
        let ends = (found(&hop.from, env, out), found(&hop.to, env, out));
        let why = match &ends {
            (Some(from), Some(to)) => {
                let one = One {
                    l,
                    env,
                    hop,
                    from,
                    to,
                };
                one.frequencies(&mut r, out).err()
            }
            _ => Some(WhyHop::UnknownEnd),
        };
        r.not_judged.extend(why.map(|why| HopNotJudged {
            loc: hop.loc,
            hop: format!("{} to {}", called(&hop.from), called(&hop.to)).into(),
            why,
        }));
    }
    r.assumed.sort();
    r.assumed.dedup();
    r
}

/// `talk-out-2m of pellgarrow`.
fn called(e: &End) -> String {
    format!("{} of {}", e.chain.text, e.station.text)
}

/// The chain of an end; an unknown station is said where all names are checked.
fn found<'m>(end: &End, env: &'m Env, out: &mut Vec<Diagnostic>) -> Option<Found<'m>> {
    let station = env.station(&end.station.text)?;
    let named = station
        .chains
        .iter()
        .find(|c| c.name.text == end.chain.text);
    let Some(chain) = named else {
        let names: Vec<&str> = station.chains.iter().map(|c| &*c.name.text).collect();
        let mut d = Diagnostic::new(
            &codes::UNKNOWN_CHAIN,
            end.chain.loc,
            format!(
                "Station `{}` has no chain `{}`.",
                station.name.text, end.chain.text
            ),
        )
        .at("not defined");
        d = match nearest(&end.chain.text, names.iter().copied()) {
            Some(n) => {
                d.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), end.chain.loc, n)
            }
            None if names.is_empty() => d.help("It has no chain at all."),
            None => d.help(format!("Its chains: `{}`.", names.join("`, `"))),
        };
        out.push(d);
        return None;
    };
    let mut sink = Vec::new();
    let stops = walk(&chain.steps, Some(station), &mut sink);
    let direction = direction(chain, &stops);
    let cx = Cx {
        station: Some(station),
        chain,
        env,
        direction,
        stage: Stage::Whole,
    };
    let bands = points(chain, direction, env, &mut sink)
        .into_iter()
        .map(|p| {
            let band = evaluate(&cx, &stops, &p, &mut sink);
            (p, band)
        })
        .collect();
    Some(Found {
        station,
        name: chain.name.loc,
        direction,
        stops,
        bands,
    })
}

impl<'m> Found<'m> {
    fn parts(&self) -> impl Iterator<Item = &'m Part> + '_ {
        self.stops.iter().filter_map(|s| match s {
            Stop::Part { part, .. } => Some(*part),
            _ => None,
        })
    }

    fn antenna(&self) -> Option<(&'m Part, &'m downlead_station::model::Antenna)> {
        self.parts().find_map(|p| match &p.data {
            PartData::Antenna(a) => Some((p, &**a)),
            _ => None,
        })
    }

    fn receiver(&self) -> Option<(&'m Part, &'m Receiver)> {
        self.parts().find_map(|p| Some((p, p.data.receiver()?)))
    }

    /// Height above ground that the antenna radiates from, m: its middle, where its length is stated.
    fn agl(&self) -> Option<f64> {
        let (_, a) = self.antenna()?;
        Some(a.height_agl?.value - a.size.map_or(0.0, |s| 0.5 * s.value))
    }

    /// Whether its height is taken for what it radiates from.
    fn at_its_tip(&self) -> bool {
        let of = |a: &downlead_station::model::Antenna| a.height_agl.is_some() && a.size.is_none();
        self.antenna().is_some_and(|a| of(a.1))
    }
}

/// One hop with its ends.
struct One<'a, 'm> {
    l: &'a Link,
    env: &'m Env,
    hop: &'a Hop,
    from: &'a Found<'m>,
    to: &'a Found<'m>,
}

impl One<'_, '_> {
    /// Each frequency that both ends have.
    ///
    /// # Errors
    /// Why there is none.
    fn frequencies(&self, r: &mut LinkResult, out: &mut Vec<Diagnostic>) -> Result<(), WhyHop> {
        let wrong = [
            (
                &self.hop.from,
                self.from,
                Direction::Transmit,
                "sends",
                "first",
            ),
            (&self.hop.to, self.to, Direction::Receive, "hears", "second"),
        ];
        for (end, found, want, word, place) in wrong {
            if found.direction != want {
                let d = Diagnostic::new(
                    &codes::HOP_MISMATCH,
                    end.chain.loc,
                    format!(
                        "`{}` is a {} chain; the {place} chain of a hop {word}.",
                        end.chain.text,
                        found.direction.word()
                    ),
                )
                .at(format!("a {} chain belongs here", want.word()))
                .help("Written for example `hop talk-out of hill to hear of car`.");
                out.push(d);
                return Err(WhyHop::Direction);
            }
        }
        let mut any = false;
        for (_, sent) in &self.from.bands {
            let near = |b: &&(Point, BandResult)| (b.1.hz - sent.hz).abs() <= SAME_HZ;
            if let Some((point, heard)) = self.to.bands.iter().find(near) {
                any = true;
                let hop = self.compute((sent, heard, point), r, out);
                r.hops.push(hop);
            }
        }
        if any {
            return Ok(());
        }
        let firsts = self.from.bands.first().zip(self.to.bands.first());
        let Some(((_, sent), (_, heard))) = firsts else {
            return Err(WhyHop::NoResult);
        };
        out.push(
            Diagnostic::new(
                &codes::HOP_MISMATCH,
                self.hop.loc,
                format!(
                    "`{}` sends on {} and `{}` hears on {}.",
                    self.hop.from.chain.text,
                    frequency(sent.hz),
                    self.hop.to.chain.text,
                    frequency(heard.hz)
                ),
            )
            .at("no frequency in common")
            .help("Take the chain that hears what is sent, or mend its band: what one end transmits the other receives."),
        );
        Err(WhyHop::Frequency)
    }

    /// Distance, m, and its standard uncertainty.
    fn distance(&self, r: &LinkResult) -> Option<(f64, f64)> {
        if let Some(last) = r.profile.last() {
            let stated = self.l.distance.as_ref();
            return Some((last.0, stated.map_or(0.0, |d| d.0.u)));
        }
        if let Some((d, _)) = &self.l.distance {
            return Some((d.value, d.u));
        }
        Some((lengths::by_positions(self.hop, self.env)?, 0.0))
    }

    /// The profile from the sending end on.
    fn turned(&self, r: &LinkResult) -> (Vec<(f64, f64)>, bool) {
        let turned = self.l.hops.first().is_some_and(|f| {
            f.from.station.text != self.hop.from.station.text
                && f.from.station.text == self.hop.to.station.text
        });
        if !turned {
            return (r.profile.clone(), false);
        }
        let length = r.profile.last().map_or(0.0, |p| p.0);
        let back = r.profile.iter().rev().map(|&(d, h)| (length - d, h));
        (back.collect(), true)
    }

    fn compute(
        &self,
        (sent, heard, point): (&BandResult, &BandResult, &Point),
        r: &mut LinkResult,
        out: &mut Vec<Diagnostic>,
    ) -> HopResult {
        let hz = sent.hz;
        let (ground, turned) = self.turned(r);
        let gain = self
            .to
            .antenna()
            .and_then(|a| gain_at(a.1, point, self.env));
        let mut h = HopResult {
            loc: self.hop.loc,
            from: called(&self.hop.from).into(),
            to: called(&self.hop.to).into(),
            hz,
            eirp: sent.eirp_w.map(|w| (w, sent.uncertainty_db.unwrap_or(0.0))),
            distance: self.distance(r),
            slant_m: None,
            horizon_m: None,
            free_space_db: None,
            model: self.l.model.map_or(
                if self.l.profile.is_some() {
                    Model::Bullington
                } else {
                    Model::FreeSpace
                },
                |m| m.0,
            ),
            models: Vec::new(),
            terrain: None,
            ends: Ends::default(),
            places: (
                self.from.name,
                self.to.name,
                self.to.antenna().map(|a| a.0.loc),
            ),
            patterns: (None, None),
            gain_dbi: gain.as_ref().map(|g| g.dbi),
            receive_loss_db: heard.total_db,
            level_dbm: None,
            noise: None,
            judged: None,
            coverage: Vec::new(),
            verdict: LinkVerdict::NoNeed,
            missing: Vec::new(),
        };
        if self.l.broken {
            h.missing.push(Missing::Line);
        }
        if r.lengths_differ {
            h.missing.push(Missing::Lengths);
        }
        if self.l.profile.is_some() && ground.is_empty() {
            h.missing.push(Missing::Profile);
        }
        let slope = self.path(&mut h, (&ground, turned, r.k), out);
        h.patterns = pattern::of_hop(
            &h,
            r.k,
            (
                self.from.antenna().map(|a| a.1),
                self.to.antenna().map(|a| a.1),
            ),
            (&sent.band, &heard.band),
        );
        r.assumed.push(match h.patterns {
            (Some(_), Some(_)) => LinkAssumed::Pattern,
            (None, None) => LinkAssumed::MainBeam,
            _ => LinkAssumed::PatternOrMainBeam,
        });
        if self.from.at_its_tip() || self.to.at_its_tip() {
            r.assumed.push(LinkAssumed::HighestPoint);
        }
        self.arrives(&mut h, heard, gain.map_or(0.0, |g| g.u), (sent, slope), out);
        if h.noise.is_none() && !self.l.noise.iter().any(|n| self.is_for(n)) {
            r.assumed.push(LinkAssumed::NoSiteNoise);
        }
        h
    }

    /// The way, by all models; gives by how much the loss rises with the distance, dB per m.
    fn path(
        &self,
        h: &mut HopResult,
        (ground, turned, k): (&[(f64, f64)], bool, f64),
        out: &mut Vec<Diagnostic>,
    ) -> f64 {
        let Some((along, _)) = h.distance.filter(|d| d.0 > 0.0) else {
            h.missing.push(Missing::Distance);
            return 0.0;
        };
        let agl = self.from.agl().zip(self.to.agl());
        let base = match (ground.first(), ground.last()) {
            (Some(a), Some(b)) => Some((a.1, b.1)),
            _ => self
                .from
                .station
                .ground_amsl
                .zip(self.to.station.ground_amsl),
        };
        let ends = base.zip(agl).map(|(g, a)| (g.0 + a.0, g.1 + a.1));
        if !ground.is_empty() && ends.is_none() {
            h.missing.push(Missing::Heights);
        }
        let slant = ends.map_or(along, |e| path::slant_m(along, e.0 - e.1));
        let terrain = ends.filter(|_| !ground.is_empty()).map(|ends_m| Terrain {
            points: ground,
            ends_m,
            k,
        });
        let p = Path {
            hz: h.hz,
            along_m: along,
            slant_m: slant,
            horizon_m: ends.map(|e| path::radio_horizon_m(e.0, e.1, k)),
            agl_m: agl,
            base_m: ends.zip(base).map(|(e, g)| (e.0 - g.1).max(e.1 - g.0)),
            terrain,
        };
        h.ends = Ends {
            agl_m: agl,
            amsl_m: ends,
            base_m: p.base_m,
        };
        h.slant_m = Some(slant);
        h.horizon_m = p.horizon_m;
        h.free_space_db = Some(p.free_space());
        if let Some(t) = &terrain
            && let Some(b) = t.bullington(h.hz)
        {
            let other = |k: f64| {
                let t = Terrain { k, ..*t };
                (k, t.bullington(h.hz).map_or(f64::NAN, |b| b.loss_db))
            };
            h.terrain = Some(TerrainResult {
                edge: b.edge,
                in_sight: b.in_sight,
                loss_db: b.loss_db,
                clearances: t.clearances(h.hz),
                other_k: [other(1.0), other(2.0 / 3.0)],
                ends_m: t.ends_m,
                turned,
                cascade: t.cascade(h.hz),
            });
        }
        let mut models = vec![h.model];
        if terrain.is_some() {
            models.extend([
                Model::FreeSpace,
                Model::Bullington,
                Model::OneEdge,
                Model::Cascade,
            ]);
        }
        let mut seen = Vec::new();
        models.retain(|m| {
            !seen.contains(m) && {
                seen.push(*m);
                true
            }
        });
        h.models = models
            .into_iter()
            .map(|model| Modelled {
                model,
                loss_db: p.loss(model),
            })
            .collect();
        self.unsure_models(h, &p, out);
        // what the distance is off changes free space; the terrain is taken as it is
        20.0 / std::f64::consts::LN_10 / along
    }

    fn unsure_models(&self, h: &mut HopResult, p: &Path<'_>, out: &mut Vec<Diagnostic>) {
        let beyond = p.horizon_m.is_some_and(|far| p.along_m > far);
        if h.model == Model::FreeSpace && beyond && p.terrain.is_none() {
            h.missing.push(Missing::Sight);
        }
        let Some(Err(why)) = h.models.first().map(|m| &m.loss_db) else {
            let of = |m: Model| {
                let found = h.models.iter().find(|x| x.model == m);
                found.and_then(|x| x.loss_db.as_ref().ok().copied())
            };
            let pair = of(Model::Bullington).zip(of(Model::Cascade));
            if let Some((a, b)) = pair.filter(|(a, b)| (a - b).abs() > MODELS_APART_DB) {
                out.push(
                    Diagnostic::new(
                        &codes::MODELS_APART,
                        self.hop.loc,
                        format!(
                            "Two models of the terrain are {} dB apart: {} dB by `bullington`, {} dB by `cascade`.",
                            downlead_quantity::number((a - b).abs(), 2),
                            downlead_quantity::number(a, 4),
                            downlead_quantity::number(b, 4)
                        ),
                    )
                    .at("on this hop")
                    .help("The terrain is not simple enough for either: take the verdict as no better than their difference, or measure."),
                );
            }
            return;
        };
        h.missing.push(Missing::Model);
        // a profile that could not be used is said already
        if let Some((model, loc)) = self.l.model {
            out.push(
                Diagnostic::new(
                    &codes::MODEL_REFUSED,
                    loc,
                    format!("`{}` does not hold here: {}.", model.word(), why.words()),
                )
                .at("not computed")
                .help("Take another model, or remove the line: `bullington` is the default with a profile, `free-space` without one."),
            );
        }
    }

    fn is_for(&self, n: &downlead_station::model::SiteNoise) -> bool {
        n.at.as_ref()
            .is_none_or(|s| s.text == self.hop.to.station.text)
    }

    /// Noise from outside at the receiving end.
    fn noise(&self, h: &mut HopResult, heard: &BandResult, out: &mut Vec<Diagnostic>) {
        let own = |n: &&downlead_station::model::SiteNoise| n.at.is_some() && self.is_for(n);
        let all = || self.l.noise.iter();
        let Some(n) = all().find(own).or_else(|| all().find(|n| self.is_for(n))) else {
            return;
        };
        let around = match &n.noise {
            LinkNoise::Read(m) => {
                h.noise = Some(NoiseUsed {
                    by: None,
                    loc: n.loc,
                    external_db: None,
                    degradation_db: m.value,
                    u_db: m.u,
                });
                return;
            }
            LinkNoise::Around(a) => match a {
                Around::City => Surroundings::City,
                Around::Residential => Surroundings::Residential,
                Around::Rural => Surroundings::Rural,
                Around::QuietRural => Surroundings::QuietRural,
            },
        };
        match path::external_noise(around, h.hz) {
            Ok(e) => match heard.noise_figure_db {
                Some(nf) => {
                    h.noise = Some(NoiseUsed {
                        by: Some((around, nf)),
                        loc: n.loc,
                        external_db: Some(e.median_db),
                        degradation_db: path::degradation(e.median_db, 0.0, nf),
                        u_db: 0.0,
                    });
                }
                None => h.missing.push(Missing::NoiseFigure),
            },
            Err(range) => {
                h.missing.push(Missing::NoiseRange);
                out.push(
                    Diagnostic::new(
                        &codes::NOISE_BEYOND_RANGE,
                        n.loc,
                        format!(
                            "Noise of such a place is given from {} to {} (ITU-R P.372), and this hop is on {}.",
                            frequency(range.low_hz),
                            frequency(range.high_hz),
                            frequency(h.hz)
                        ),
                    )
                    .at("outside that range")
                    .help("State what was read there instead: `site-noise 3 dB, read 2026-05-02`, the rise of what the receiver needs."),
                );
            }
        }
    }

    fn arrives(
        &self,
        h: &mut HopResult,
        heard: &BandResult,
        gain_u: f64,
        (sent, slope): (&BandResult, f64),
        out: &mut Vec<Diagnostic>,
    ) {
        self.noise(h, heard, out);
        if h.eirp.is_none() {
            h.missing.push(Missing::Eirp);
        }
        if h.gain_dbi.is_none() {
            h.missing.push(Missing::Gain);
        }
        // at the antenna's terminals, dBm
        let at_antenna =
            (|| Some(w_to_dbm(h.eirp?.0) - h.loss_db()? - h.pattern_db() + h.gain_dbi?))();
        h.level_dbm = at_antenna.zip(heard.total_db).map(|(l, lost)| l - lost);
        let Some(need) = &self.l.need else { return };
        h.verdict = LinkVerdict::CannotJudge;
        let text = format!(
            "{} dB {}",
            downlead_quantity::number(need.ratio_db, 3),
            need.word
        );
        let stated = self.to.receiver().and_then(|(_, r)| {
            let first = r.sensitivities.first()?;
            let own = r
                .sensitivities
                .iter()
                .find(|s| s.criterion.as_deref() == Some(&text));
            Some((first, own, self.to.receiver()?.0.loc))
        });
        let (first, own, receiver) = match stated {
            Some((first, Some(own), receiver)) => (first, own, receiver),
            _ => {
                h.missing.push(Missing::Criterion);
                self.no_criterion(&text, out);
                return;
            }
        };
        let (Some(least), Some(u)) = (heard.sensitivity_dbm, heard.sensitivity_u_db) else {
            h.missing.push(Missing::Sensitivity);
            return;
        };
        let degradation = h.noise.map_or(0.0, |n| n.degradation_db);
        // from the receiver to the antenna the chain adds the same to every sensitivity
        let needed = least - first.level.value + own.level.value + degradation;
        let (Some(level), true) = (at_antenna, h.missing.is_empty()) else {
            return;
        };
        let margin = level - needed;
        let share = need.share.unwrap_or(0.5);
        let places = need
            .spread_db
            .map_or(0.0, |s| path::margin_of_places(share, s));
        let left = margin - places;
        let line = (u / 2.0).powi(2) - first.level.u.powi(2);
        let noise = h.noise.map_or(0.0, |n| n.u_db);
        let distance = h.distance.map_or(0.0, |d| d.1 * slope);
        let square = (h.eirp.map_or(0.0, |e| e.1) / 2.0).powi(2)
            + line.max(0.0)
            + own.level.u.powi(2)
            + gain_u.powi(2)
            + noise.powi(2)
            + [h.patterns.0, h.patterns.1]
                .iter()
                .flatten()
                .map(|t| t.u_db.powi(2))
                .sum::<f64>()
            + distance.powi(2)
            + 2.0 * common(sent, heard);
        let u_db = 2.0 * square.sqrt();
        h.verdict = surely(h, left, u_db);
        h.judged = Some(Judged {
            criterion: text.into(),
            receiver_dbm: own.level.value,
            needed_dbm: own.level.value + degradation,
            at_antenna_dbm: level,
            chain_db: least - first.level.value,
            from: (receiver, need.loc),
            margin_db: margin,
            share,
            spread_db: need.spread_db,
            places_db: places,
            left_db: left,
            u_db,
        });
        // elsewhere the main beam may point there
        let (free, most) = (h.loss_db().unwrap_or(f64::NAN), h.pattern_db());
        h.coverage = self
            .l
            .coverage
            .iter()
            .map(|&d| (d, margin + most + free - path::free_space(h.hz, d)))
            .collect();
        if h.verdict == LinkVerdict::NotMet {
            out.push(
                Diagnostic::new(
                    &codes::LINK_NOT_MET,
                    self.hop.loc,
                    format!(
                        "From `{}` to `{}` {} dB are missing for {}, ± {} dB.",
                        h.from,
                        h.to,
                        downlead_quantity::number(-left, 3),
                        h.judged.as_ref().map_or("", |j| &j.criterion),
                        downlead_quantity::number(u_db, 2)
                    ),
                )
                .at("not met")
                .help("`downlead report FILE --link` shows where the level goes."),
            );
        }
    }

    fn no_criterion(&self, text: &str, out: &mut Vec<Diagnostic>) {
        let Some(need) = &self.l.need else { return };
        let Some((part, receiver)) = self.to.receiver() else {
            return;
        };
        let tag = part.tag.as_ref().map_or(part.kind.word(), |t| &*t.text);
        let has: Vec<&str> = receiver
            .sensitivities
            .iter()
            .filter_map(|s| s.criterion.as_deref())
            .collect();
        let has = match has[..] {
            [] => "no sensitivity with a criterion".to_owned(),
            _ => format!("a sensitivity for {} only", has.join(", ")),
        };
        out.push(
            Diagnostic::new(
                &codes::NO_CRITERION,
                need.loc,
                format!("The link needs {text}, and `{tag}` of `{}` states {has}.", self.hop.to.station.text),
            )
            .at("cannot be judged")
            .also(part.loc, "the receiver")
            .help(format!("Add a line from its data sheet or from the bench, `sensitivity -111 dBm for {text}`; one criterion does not follow from another.")),
        );
    }
}

/// The verdict on what is left of a margin, dB, where what is not known of the path cannot turn it.
fn surely(h: &mut HopResult, left_db: f64, u_db: f64) -> LinkVerdict {
    let of = |left: f64| match left {
        l if l.abs() < 0.02 && u_db < 0.02 => LinkVerdict::AtLimit,
        l if l > u_db => LinkVerdict::Met,
        l if l < -u_db => LinkVerdict::NotMet,
        _ => LinkVerdict::CannotTell,
    };
    let verdict = of(left_db);
    let Some(own) = h.loss_db() else {
        return verdict;
    };
    // free space is the least loss that there can be
    if verdict == LinkVerdict::Met && h.model == Model::FreeSpace && h.terrain.is_none() {
        h.missing.push(Missing::Terrain);
        return LinkVerdict::CannotTell;
    }
    let terrain = [Model::Bullington, Model::Cascade];
    let turned = h
        .models
        .iter()
        .filter(|m| terrain.contains(&m.model))
        .filter_map(|m| m.loss_db.as_ref().ok())
        .any(|loss| of(left_db - (loss - own)) != verdict);
    if turned && matches!(verdict, LinkVerdict::Met | LinkVerdict::NotMet) {
        h.missing.push(Missing::OneTerrain);
        return LinkVerdict::CannotTell;
    }
    verdict
}

/// Covariance of what is radiated and what the receiving chain loses, in dB²: a cause that both have, such as the
/// sheet of a cable used at both ends, lowers what arrives twice.
fn common(sent: &BandResult, heard: &BandResult) -> f64 {
    let pairs = sent.budget.iter().filter_map(|a| {
        let same = heard
            .budget
            .iter()
            .find(|b| b.cause == a.cause && b.name == a.name)?;
        Some(a.standard_db * same.standard_db)
    });
    pairs.sum()
}
