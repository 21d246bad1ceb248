//! What radiates: each transmit chain on each of its frequencies.

use downlead_base::Loc;
use downlead_physics::exposure::{
    cylinder_density, density_of_electric, density_of_magnetic, far_field_distance, power_density,
    reactive_distance,
};
use downlead_station::Env;
use downlead_station::model::{
    Confidence, Direction, ExposureClause, Field, Part, PowerKind, RuleSet, Spot, Station, Tier,
    Transmitter, Variable,
};

use super::geometry::{WITHOUT_SIZE_M, distance};
use super::{Refused, Source};
use crate::licence::{covers, ends, holds_on};
use crate::point::Point;
use crate::result::{BandResult, BudgetItem, ChainResult};
use crate::walk::Stop;

/// An antenna on the mast.
#[derive(Clone, Debug)]
pub(super) struct Mast {
    pub(super) loc: Loc,
    pub(super) tag: Box<str>,
    /// Lower and upper end of the height of its highest point above ground, m.
    pub(super) height_m: Option<(f64, f64)>,
    pub(super) size_m: Option<f64>,
    /// Whether it radiates less than half of what it accepts.
    pub(super) lossy: bool,
}

/// One transmit chain on one frequency.
pub(super) struct Radiator<'r> {
    /// Its station, where it is a neighbour.
    pub(super) station: Option<&'r str>,
    transmitter: Box<str>,
    pub(super) antennas: Vec<Mast>,
    point: Point,
    pub(super) hz: f64,
    /// Mean power into the antenna while keyed, W.
    mean_w: Option<f64>,
    gain_dbi: Option<f64>,
    /// Mean EIRP while keyed, W.
    eirp_w: Option<f64>,
    /// EIRP at the peak of the envelope, W.
    peak_w: Option<f64>,
    pub(super) uncertainty_db: f64,
    pub(super) budget: &'r [BudgetItem],
    /// Share keyed, and the window it holds in, s.
    keyed: Option<(f64, f64)>,
    /// Whether the stated power was taken as the mean.
    pub(super) mean_assumed: bool,
}

/// A limit for one transmitter on one frequency.
pub(super) struct Limit<'s> {
    /// As a power density, W/m².
    pub(super) density: f64,
    pub(super) clause: &'s ExposureClause,
    /// In its own unit.
    value: f64,
    /// The EIRP that counts over its averaging time, W.
    pub(super) eirp_w: Option<f64>,
}

/// The radiators of a station.
pub(super) fn radiators<'r>(
    name: Option<&'r str>,
    st: &'r Station,
    chains: &'r [ChainResult],
    env: &Env,
) -> Vec<Radiator<'r>> {
    let mut out = Vec::new();
    for (model, chain) in st.chains.iter().zip(chains) {
        if chain.direction != Direction::Transmit {
            continue;
        }
        let stops = crate::walk::walk(&model.steps, Some(st), &mut Vec::new());
        let antennas = crate::licence::antennas_at(&stops, st);
        if antennas.is_empty() {
            // it ends in a load, which radiates nothing
            continue;
        }
        // it may stand in the station or in the chain itself
        let source = stops.iter().find_map(|x| match x {
            Stop::Part { part, .. } => Some(*part),
            _ => None,
        });
        let antennas: Vec<Mast> = antennas
            .into_iter()
            .map(|(loc, tag, a)| Mast {
                loc,
                tag: tag.map_or_else(Box::default, |t| t.text.clone()),
                height_m: a.height_agl.as_ref().map(ends),
                size_m: a.size.map(|s| s.value),
                lossy: a.efficiency.is_some_and(|e| ends(&e).0 < 0.5),
            })
            .collect();
        for b in &chain.bands {
            // a point that only judges clauses between bands is no frequency of its own
            if matches!(b.point, Some("edge" | "gap")) {
                continue;
            }
            out.push(of(name, source, b, antennas.clone(), env));
        }
    }
    out
}

/// Mean power while keyed over the stated power, and whether the kind of power or the mode was not
/// stated: what radiates most is taken then.
fn mean_over_stated(t: &Transmitter) -> (f64, bool) {
    let mut kinds = t.power.iter().map(|p| p.1);
    let kind = kinds.next().flatten();
    let one = kinds.all(|k| k == kind);
    let of = |k: PowerKind| {
        let peak = t.mode.and_then(|m| crate::verdict::peak_over(k, m));
        match (t.duty, k) {
            (_, PowerKind::Mean) => Some(1.0),
            // the duty is that of the mean over the peak
            (Some(d), PowerKind::Pep) => Some(d),
            (Some(d), PowerKind::Carrier) => Some(d * peak.unwrap_or(1.0)),
            (None, k) => t.mode.and_then(|m| crate::verdict::mean_over(k, m)),
        }
    };
    match kind.filter(|_| one).and_then(of) {
        Some(factor) => (factor, false),
        None => {
            let most = [PowerKind::Carrier, PowerKind::Pep, PowerKind::Mean]
                .into_iter()
                .filter_map(of)
                .fold(1.0, f64::max);
            (most, true)
        }
    }
}

/// Power at the peak of the envelope over the stated power; none where the mode is not stated.
fn peak_over_stated(t: &Transmitter) -> Option<f64> {
    let mut kinds = t.power.iter().map(|p| p.1);
    let kind = kinds.next()?;
    match kind {
        // powers of several kinds: the largest of them is not known here
        _ if kinds.any(|k| k != kind) => None,
        None | Some(PowerKind::Pep) => Some(1.0),
        Some(k) => crate::verdict::peak_over(k, t.mode?),
    }
}

fn of<'r>(
    name: Option<&'r str>,
    part: Option<&Part>,
    b: &'r BandResult,
    antennas: Vec<Mast>,
    env: &Env,
) -> Radiator<'r> {
    let transmitter = part
        .and_then(|p| p.tag.as_ref())
        .map_or_else(Box::default, |t| t.text.clone());
    let data = part.and_then(|p| p.data.transmitter());
    let broken = data.is_some_and(|t| t.broken_duty);
    let (factor, mean_assumed) = data.map_or((1.0, true), mean_over_stated);
    let mean_w = b.antenna_w.map(|w| w * factor).filter(|_| !broken);
    let eirp_w = b.eirp_w.map(|e| e * factor).filter(|_| !broken);
    let named = env.band(&b.band).is_some();
    Radiator {
        station: name,
        transmitter,
        antennas,
        point: Point {
            band: b.band.clone(),
            part: b.point,
            hz: b.hz,
            named,
        },
        hz: b.hz,
        mean_w,
        gain_dbi: b.gain_dbi,
        eirp_w: eirp_w.filter(|e| e.is_finite() && *e > 0.0),
        peak_w: b
            .eirp_w
            .zip(data.and_then(peak_over_stated))
            .map(|(eirp, peak)| eirp * peak)
            .filter(|e| e.is_finite() && *e > 0.0),
        uncertainty_db: b.uncertainty_db.unwrap_or(0.0),
        budget: &b.budget,
        keyed: data.and_then(|t| t.keyed.zip(t.keyed_in_s)),
        mean_assumed: mean_assumed && b.antenna_w.is_some(),
    }
}

impl Radiator<'_> {
    /// The limit for a tier of which it takes the largest share.
    pub(super) fn limit<'s>(
        &self,
        st: &Station,
        set: &'s RuleSet,
        tier: Tier,
        env: &Env,
    ) -> Option<Limit<'s>> {
        set.exposure
            .iter()
            .filter(|c| c.tier == tier)
            .filter(|c| covers(&c.on, &self.point, env))
            // the set itself may have ended
            .filter(|_| holds_on(st.newest.as_deref(), set, None, set.until.as_deref()))
            .filter(|c| {
                holds_on(
                    st.newest.as_deref(),
                    set,
                    // one that begins later counts already: the stricter holds
                    None,
                    c.until.as_deref(),
                )
            })
            .filter_map(|c| {
                let hz = |v: Variable| (v == Variable::Frequency).then_some((self.hz, self.hz));
                let value = c.law.between(&hz).ok()?.0;
                let density = match c.field {
                    Field::Density => value,
                    Field::Electric => density_of_electric(value),
                    Field::Magnetic => density_of_magnetic(value),
                };
                Some(Limit {
                    density,
                    clause: c,
                    value,
                    eirp_w: self.eirp_over(c.averaging_s),
                })
            })
            .min_by(|a, b| {
                // one whose power is not known decides
                let room = |l: &Limit<'_>| l.eirp_w.map_or(0.0, |e| l.density / e);
                room(a).total_cmp(&room(b))
            })
    }

    /// The EIRP that counts over an averaging time, W: the mean while keyed, less a share keyed
    /// whose window fits; without an averaging time the peak of the envelope.
    fn eirp_over(&self, averaging_s: Option<f64>) -> Option<f64> {
        match averaging_s {
            Some(_) => Some(self.eirp_w? * self.share(averaging_s)),
            None => self.peak_w,
        }
    }

    /// Share of the time that counts: that keyed where its window fits the averaging time.
    fn share(&self, averaging_s: Option<f64>) -> f64 {
        match (self.keyed, averaging_s) {
            (Some((share, window)), Some(averaging)) if window <= averaging * (1.0 + 1e-9) => {
                // the worst time begins with a keyed part: whole windows, and one that is cut
                let whole = libm::floor(averaging / window + 1e-9);
                let rest = (averaging - whole * window).max(0.0);
                let keyed = whole * share * window + rest.min(share * window);
                (keyed / averaging).min(1.0)
            }
            _ => 1.0,
        }
    }

    /// What it does at a spot.
    pub(super) fn at(
        &self,
        spot: &Spot,
        st: &Station,
        set: &RuleSet,
        reflection: f64,
        env: &Env,
    ) -> Source {
        let limit = self.limit(st, set, spot.tier, env);
        let eirp_w = match &limit {
            Some(l) => l.eirp_w,
            None => self.eirp_w,
        };
        let eirp_w = eirp_w.unwrap_or(f64::NAN);
        // power into the antenna that gives it
        let mean_w = self.mean_w.unwrap_or(f64::NAN) * eirp_w / self.eirp_w.unwrap_or(f64::NAN);
        let nearest = self
            .antennas
            .iter()
            .map(|a| (a, distance(spot, a, self.station)))
            .min_by(|a, b| {
                // one that is not known decides
                let d = |x: &Result<f64, Refused>| x.as_ref().map_or(f64::NEG_INFINITY, |d| *d);
                d(&a.1).total_cmp(&d(&b.1))
            });
        let mut s = Source {
            station: self.station.map(Into::into),
            transmitter: self.transmitter.clone(),
            antenna: nearest
                .as_ref()
                .map_or_else(Box::default, |n| n.0.tag.clone()),
            band: self.point.band.clone(),
            hz: self.hz,
            mean_w,
            gain_dbi: self.gain_dbi.unwrap_or(f64::NAN),
            eirp_w,
            uncertainty_db: self.uncertainty_db,
            distance_m: nearest.as_ref().and_then(|n| n.1.clone().ok()),
            near: false,
            cylinder_w_m2: None,
            density_w_m2: None,
            limit_w_m2: limit.as_ref().map(|l| l.density),
            limit: limit.as_ref().map(|l| (l.value, l.clause.field)),
            cite: limit.as_ref().map(|l| {
                let cite = l.clause.cite.as_ref().map_or("", |c| &*c.text);
                // a paper of one's own is read by its holder
                let sure = l.clause.confidence.unwrap_or(Confidence::High);
                (cite.into(), sure)
            }),
            fraction: None,
            refused: None,
        };
        match self.refused(&s, nearest.map(|n| (n.0.clone(), n.1)), limit.is_some()) {
            Err(why) => s.refused = Some(why),
            Ok((d, antenna)) => {
                let density = power_density(s.eirp_w, d, reflection);
                s.density_w_m2 = Some(density);
                s.fraction = s.limit_w_m2.map(|l| density / l).filter(|f| f.is_finite());
                if s.fraction.is_none() {
                    s.refused = Some(Refused::NoClause);
                    return s;
                }
                if let Some(size) = antenna.size_m {
                    s.near = d < far_field_distance(size, self.hz);
                    s.cylinder_w_m2 = s
                        .near
                        .then(|| cylinder_density(s.mean_w, d, size) * reflection * reflection);
                }
            }
        }
        s
    }

    /// Distance and antenna, or why nothing is computed.
    fn refused(
        &self,
        s: &Source,
        nearest: Option<(Mast, Result<f64, Refused>)>,
        ruled: bool,
    ) -> Result<(f64, Mast), Refused> {
        let (antenna, d) = nearest.ok_or(Refused::NoHeight)?;
        let d = d?;
        if !s.eirp_w.is_finite() {
            return Err(Refused::NoEirp);
        }
        // half the gain of a short dipole, the least directive antenna
        if antenna.lossy || s.gain_dbi < -1.25 {
            return Err(Refused::LowEfficiency);
        }
        match antenna.size_m {
            Some(size) if d < size => return Err(Refused::WithinSize(size)),
            // a half-wave antenna is as long as half a wavelength
            None if d < WITHOUT_SIZE_M.max(reactive_distance(self.hz) * core::f64::consts::PI) => {
                return Err(Refused::NoSize);
            }
            _ => {}
        }
        let reactive = reactive_distance(self.hz);
        if d < reactive {
            return Err(Refused::Reactive(reactive));
        }
        if !ruled {
            return Err(Refused::NoClause);
        }
        Ok((d, antenna))
    }
}
