//! What radiates: each transmit chain on each of its bands.

use downlead_base::Loc;
use downlead_physics::exposure::{
    cylinder_density, density_of_electric, density_of_magnetic, far_field_distance, power_density,
    reactive_distance,
};
use downlead_physics::pattern::least_db;
use downlead_physics::radiated::field_strength_exact;
use downlead_quantity::from_db;
use downlead_station::Env;
use downlead_station::model::{
    Confidence, Direction, ExposureClause, Field, Part, Pattern, PowerKind, RuleSet, Spot, SpotAt,
    Station, Tier, Transmitter, Variable,
};

use super::geometry::{WITHOUT_SIZE_M, distance};
use super::{Counted, Refused, Source};
use crate::licence::{ends, holds_until, spans};
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
    /// Its patterns.
    patterns: Box<[Pattern]>,
}

impl Mast {
    /// How far its gain is below the peak toward a spot, dB: by the pattern on a band, at the angle from any of its
    /// parts with the most gain. Nothing where no angle is known.
    fn down_db(&self, spot: &Spot, band: &str) -> f64 {
        let SpotAt::Beside(out, agl) = spot.at else {
            return 0.0;
        };
        let (Some((low, high)), Some(size)) = (self.height_m, self.size_m) else {
            return 0.0;
        };
        let of = |p: &&Pattern| p.on.iter().any(|b| *b.text == *band);
        let bare = |p: &&Pattern| p.on.is_empty();
        let found = self.patterns.iter().find(of);
        let Some(p) = found.or_else(|| self.patterns.iter().find(bare)) else {
            return 0.0;
        };
        let angle = |height: f64| libm::atan2(agl - height, out).to_degrees();
        least_db(&p.rows, angle(high), angle(low - size))
    }
}

/// One transmit chain on one band.
pub(super) struct Radiator<'r> {
    /// Its station, where it is a neighbour.
    pub(super) station: Option<&'r str>,
    /// The transmitter, which is on one frequency at a time.
    pub(super) source: Option<Loc>,
    transmitter: Box<str>,
    /// Name of the chain.
    chain: Loc,
    pub(super) antennas: Vec<Mast>,
    band: Box<str>,
    /// Lowest and highest frequency of the band, Hz.
    pub(super) range: (f64, f64),
    /// Where in the band it radiates most, Hz.
    hz: f64,
    /// Mean power into the antenna while keyed, W.
    mean_w: Option<f64>,
    gain_dbi: Option<f64>,
    /// Mean EIRP while keyed, W.
    eirp_w: Option<f64>,
    /// EIRP on the stated power, W.
    stated_w: Option<f64>,
    /// EIRP at the peak of the envelope, W.
    peak_w: Option<f64>,
    pub(super) uncertainty_db: f64,
    pub(super) budget: &'r [BudgetItem],
    /// Share keyed, and the window it holds in, s.
    keyed: Option<(f64, f64)>,
    /// Whether the stated power was taken as the mean.
    pub(super) mean_assumed: bool,
    /// Losses that may be lower than they are taken.
    pub(super) lowered: super::lowered::Lowered,
}

/// Relative width of the edge of a range.
const EDGE: f64 = 1e-12;

/// Whether ranges cover another one without a gap, Hz.
fn covered(mut ranges: Vec<(f64, f64)>, whole: (f64, f64)) -> bool {
    ranges.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut reached = whole.0 * (1.0 - EDGE);
    for (from, to) in ranges {
        if from > reached * (1.0 + 2.0 * EDGE) {
            return false;
        }
        reached = reached.max(to);
    }
    reached >= whole.1 * (1.0 - EDGE)
}

/// A limit for one transmitter on one band.
pub(super) struct Limit<'s> {
    /// As a power density, W/m².
    pub(super) density: f64,
    pub(super) clause: &'s ExposureClause,
    /// In its own unit.
    value: f64,
    /// The EIRP that counts over its averaging time, W.
    pub(super) eirp_w: Option<f64>,
    /// Where it was read, Hz.
    hz: f64,
}

/// The radiators of a station, and the chains that may radiate and have no result.
pub(super) fn radiators<'r>(
    name: Option<&'r str>,
    st: &'r Station,
    chains: &'r [ChainResult],
) -> (Vec<Radiator<'r>>, Vec<&'r str>) {
    let (mut out, mut open) = (Vec::new(), Vec::new());
    for (model, chain) in st.chains.iter().zip(chains) {
        let stops = crate::walk::walk(&model.steps, Some(st), &mut Vec::new());
        let antennas = crate::licence::antennas_at(&stops, st);
        // it may stand in the station or in the chain itself
        let first = stops.iter().find_map(|x| match x {
            Stop::Part { part, .. } => Some(*part),
            _ => None,
        });
        let sends = first.is_some_and(|p| p.kind.sends());
        let transmit = chain.direction == Direction::Transmit;
        if antennas.is_empty() || !(sends || transmit) {
            // a load radiates nothing, and neither does what is received
            continue;
        }
        if !(sends && transmit) || chain.bands.is_empty() {
            open.push(&*model.name.text);
            continue;
        }
        let antennas: Vec<Mast> = antennas
            .into_iter()
            .map(|(loc, tag, a)| Mast {
                loc,
                tag: tag.map_or_else(Box::default, |t| t.text.clone()),
                height_m: a.height_agl.as_ref().map(ends),
                size_m: a.size.map(|s| s.value),
                lossy: a.efficiency.is_some_and(|e| ends(&e).0 < 0.5),
                patterns: a.pattern.clone(),
            })
            .collect();
        // the points of a band follow each other
        for points in chain
            .bands
            .chunk_by(|a, b| a.band == b.band && a.point.is_some() && b.point.is_some())
        {
            out.extend(of(name, chain.name, first, points, antennas.clone()));
        }
    }
    (out, open)
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

/// A chain on one band, from its points; that with the largest EIRP counts, and one without decides.
fn of<'r>(
    name: Option<&'r str>,
    chain: Loc,
    part: Option<&Part>,
    points: &'r [BandResult],
    antennas: Vec<Mast>,
) -> Option<Radiator<'r>> {
    let most = |b: &&BandResult| b.eirp_w.unwrap_or(f64::INFINITY);
    let b = points.iter().max_by(|x, y| most(x).total_cmp(&most(y)))?;
    let (low, high) = (points.first()?.hz, points.last()?.hz);
    let transmitter = part
        .and_then(|p| p.tag.as_ref())
        .map_or_else(Box::default, |t| t.text.clone());
    let data = part.and_then(|p| p.data.transmitter());
    let broken = data.is_some_and(|t| t.broken_duty);
    let (factor, mean_assumed) = data.map_or((1.0, true), mean_over_stated);
    let positive = |e: &f64| e.is_finite() && *e > 0.0;
    let peak = data.and_then(peak_over_stated);
    Some(Radiator {
        station: name,
        source: part.map(|p| p.loc),
        transmitter,
        chain,
        antennas,
        band: b.band.clone(),
        range: (low.min(high), low.max(high)),
        hz: b.hz,
        mean_w: b.antenna_w.map(|w| w * factor).filter(|_| !broken),
        gain_dbi: b.gain_dbi,
        eirp_w: b
            .eirp_w
            .map(|e| e * factor)
            .filter(|e| !broken && positive(e)),
        stated_w: b.eirp_w,
        peak_w: b.eirp_w.zip(peak).map(|(e, p)| e * p).filter(positive),
        uncertainty_db: b.uncertainty_db.unwrap_or(0.0),
        budget: &b.budget,
        keyed: data.and_then(|t| t.keyed.zip(t.keyed_in_s)),
        mean_assumed: mean_assumed && b.antenna_w.is_some(),
        lowered: super::lowered::of(b),
    })
}

impl Radiator<'_> {
    /// The limit for a tier of which it takes the largest share anywhere in its band; none where a
    /// part of the band has none.
    pub(super) fn limit<'s>(
        &self,
        st: &Station,
        set: &'s RuleSet,
        tier: Tier,
        env: &Env,
    ) -> Option<Limit<'s>> {
        let newest = st.newest.as_deref();
        if !holds_until(newest, set, set.until.as_deref()) {
            return None;
        }
        let mut all: Vec<(f64, f64, Limit<'s>)> = Vec::new();
        // a clause that begins later counts already: the stricter holds
        let mine =
            |c: &&ExposureClause| c.tier == tier && holds_until(newest, set, c.until.as_deref());
        for clause in set.exposure.iter().filter(mine) {
            for (from, to) in spans(&clause.on, env) {
                // a carrier at the edge of a range is in it
                let from = from.max(self.range.0 * (1.0 - EDGE));
                let to = to.min(self.range.1 * (1.0 + EDGE));
                if from <= to {
                    all.push((from, to, self.limit_between(clause, from, to)?));
                }
            }
        }
        if !covered(all.iter().map(|x| (x.0, x.1)).collect(), self.range) {
            return None;
        }
        all.into_iter().map(|x| x.2).min_by(|a, b| {
            // one whose power is not known decides
            let room = |l: &Limit<'_>| l.eirp_w.map_or(0.0, |e| l.density / e);
            room(a).total_cmp(&room(b))
        })
    }

    /// A clause between two frequencies, Hz: a law of the frequency has its least at one of them.
    fn limit_between<'s>(
        &self,
        clause: &'s ExposureClause,
        from: f64,
        to: f64,
    ) -> Option<Limit<'s>> {
        let least = |from: f64, to: f64| {
            let hz = |v: Variable| (v == Variable::Frequency).then_some((from, to));
            clause.law.between(&hz).ok().map(|x| x.0)
        };
        let value = least(from, to)?;
        Some(Limit {
            hz: match least(from, from) {
                Some(first) if first <= value => from,
                _ => to,
            },
            density: match clause.field {
                Field::Density => value,
                Field::Electric => density_of_electric(value),
                Field::Magnetic => density_of_magnetic(value),
            },
            clause,
            value,
            eirp_w: self.eirp_over(clause.averaging_s),
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

    /// What the numbers at a spot come from.
    fn counted(&self, limit: Option<&Limit<'_>>, antenna: Option<&Mast>) -> Counted {
        let averaging = limit.and_then(|l| l.clause.averaging_s);
        let peak = limit.is_some() && averaging.is_none();
        let stated_w = self.stated_w.unwrap_or(f64::NAN);
        let radiated = if peak { self.peak_w } else { self.eirp_w };
        Counted {
            chain: self.chain,
            stated_w,
            factor: radiated.unwrap_or(f64::NAN) / stated_w,
            share: if peak { 1.0 } else { self.share(averaging) },
            peak,
            height_m: antenna.and_then(|a| a.height_m),
            size_m: antenna.and_then(|a| a.size_m),
            limit_hz: limit.map_or(self.hz, |l| l.hz),
            clause: limit.map(|l| l.clause.loc),
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
            band: self.band.clone(),
            hz: self.hz,
            mean_w,
            gain_dbi: self.gain_dbi.unwrap_or(f64::NAN),
            eirp_w,
            uncertainty_db: self.uncertainty_db,
            distance_m: nearest.as_ref().and_then(|n| n.1.clone().ok()),
            near: false,
            down_db: 0.0,
            cylinder_w_m2: None,
            density_w_m2: None,
            electric_v_m: None,
            limit_w_m2: limit.as_ref().map(|l| l.density),
            limit: limit.as_ref().map(|l| (l.value, l.clause.field)),
            cite: limit.as_ref().map(|l| {
                let cite = l.clause.cite.as_ref().map_or("", |c| &*c.text);
                // a paper of one's own is read by its holder
                let sure = l.clause.confidence.unwrap_or(Confidence::High);
                (cite.into(), sure)
            }),
            fraction: None,
            counts: false,
            refused: None,
            counted: self.counted(limit.as_ref(), nearest.as_ref().map(|n| n.0)),
        };
        match self.refused(&s, nearest.map(|n| (n.0.clone(), n.1)), limit.is_some()) {
            Err(why) => s.refused = Some(why),
            Ok((d, antenna)) => {
                // a pattern has formed beyond 2 D²/λ only
                let far = |size: f64| d >= far_field_distance(size, self.range.1);
                if antenna.size_m.is_some_and(far) {
                    s.down_db = antenna.down_db(spot, &self.band);
                }
                let toward = s.eirp_w * from_db(-s.down_db);
                let density = power_density(toward, d, reflection);
                s.density_w_m2 = Some(density);
                s.electric_v_m = Some(reflection * field_strength_exact(toward, d));
                s.fraction = s.limit_w_m2.map(|l| density / l).filter(|f| f.is_finite());
                if s.fraction.is_none() {
                    s.refused = Some(Refused::NoClause);
                    return s;
                }
                if let Some(size) = antenna.size_m {
                    s.near = d < far_field_distance(size, self.range.1);
                    // further out than where the two meet the power has spread beyond the cylinder
                    let cylinder = cylinder_density(s.mean_w, d, size) * reflection * reflection;
                    s.cylinder_w_m2 = Some(cylinder).filter(|c| s.near && *c < density);
                }
            }
        }
        s
    }

    /// λ/(2π) at the lowest frequency of its band, m.
    pub(super) fn reactive_m(&self) -> f64 {
        reactive_distance(self.range.0)
    }

    /// Whether the formulas understate its fields: an antenna that radiates less than half of its
    /// power, as it says or by less than half the gain of a short dipole, the least directive one.
    pub(super) fn understated(&self) -> bool {
        const LEAST_DBI: f64 = -1.25;
        self.antennas.iter().any(|a| a.lossy) || self.gain_dbi.is_some_and(|g| g < LEAST_DBI)
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
        if self.understated() {
            return Err(Refused::LowEfficiency);
        }
        match antenna.size_m {
            Some(size) if d < size => return Err(Refused::WithinSize(size)),
            // a half-wave antenna is as long as half a wavelength
            None if d < WITHOUT_SIZE_M.max(self.reactive_m() * core::f64::consts::PI) => {
                return Err(Refused::NoSize);
            }
            _ => {}
        }
        let reactive = self.reactive_m();
        if d < reactive {
            return Err(Refused::Reactive(reactive));
        }
        if !ruled {
            return Err(Refused::NoClause);
        }
        Ok((d, antenna))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn keyed(share: f64, window: f64) -> Radiator<'static> {
        Radiator {
            station: None,
            source: None,
            chain: Loc::new(
                downlead_base::ItemId::fresh(),
                downlead_base::Span::new(0, 0),
            ),
            stated_w: Some(16.0),
            lowered: super::super::lowered::Lowered::default(),
            transmitter: Box::default(),
            antennas: Vec::new(),
            band: "x".into(),
            range: (145e6, 146e6),
            hz: 145e6,
            mean_w: Some(10.0),
            gain_dbi: Some(2.15),
            eirp_w: Some(16.0),
            peak_w: Some(40.0),
            uncertainty_db: 0.0,
            budget: &[],
            keyed: Some((share, window)),
            mean_assumed: false,
        }
    }

    /// Largest share of an averaging time that is keyed, of one that is keyed for `share` at the
    /// beginning of each window, by trying where the averaging time begins.
    fn tried(share: f64, window: f64, averaging: f64) -> f64 {
        let until = |t: f64| {
            let whole = (t / window).floor();
            whole * share * window + (t - whole * window).min(share * window)
        };
        (0..2000)
            .map(|k| f64::from(k) / 2000.0 * window)
            .map(|t| (until(t + averaging) - until(t)) / averaging)
            .fold(0.0, f64::max)
    }

    #[test]
    fn the_share_keyed_is_that_of_the_worst_averaging_time() {
        for (share, window, averaging) in [
            (0.2, 240.0, 360.0),
            (0.5, 360.0, 360.0),
            (0.3, 100.0, 360.0),
            (0.9, 100.0, 360.0),
            (0.1, 59.0, 360.0),
            (0.25, 120.0, 360.0),
            (0.4, 700.0, 1800.0),
        ] {
            let got = keyed(share, window).share(Some(averaging));
            let want = tried(share, window, averaging);
            assert!(
                (got - want).abs() < 1e-3,
                "{share} of {window} s in {averaging} s: {got} {want}"
            );
        }
        // a window that does not fit may be keyed throughout the averaging time
        let r = keyed(0.1, 361.0);
        assert!(r.share(Some(360.0)) == 1.0 && r.share(None) == 1.0);
        let always = Radiator { keyed: None, ..r };
        assert!(always.share(Some(360.0)) == 1.0);
    }

    #[test]
    fn what_counts_is_the_mean_or_the_peak() {
        let r = keyed(0.5, 360.0);
        assert_eq!(r.eirp_over(Some(360.0)), Some(8.0));
        // a limit without an averaging time counts the peak of the envelope
        assert_eq!(r.eirp_over(None), Some(40.0));
        // λ/(2π) at 145 MHz: 2.0675 m / 6.2832
        assert!((r.reactive_m() - 0.329_058).abs() < 1e-5);
    }

    #[test]
    fn ranges_cover_another_without_a_gap() {
        let whole = (144e6, 146e6);
        assert!(covered(vec![(145e6, 147e6), (143e6, 145e6)], whole));
        assert!(covered(vec![(144e6, 146e6)], whole));
        assert!(covered(
            vec![(144e6, 145e6), (144.5e6, 144.6e6), (145e6, 146e6)],
            whole
        ));
        assert!(!covered(vec![(144e6, 145e6), (145.001e6, 146e6)], whole));
        assert!(!covered(vec![(144.001e6, 146e6)], whole));
        assert!(!covered(vec![(144e6, 145.999e6)], whole));
        assert!(!covered(Vec::new(), whole));
    }
}
