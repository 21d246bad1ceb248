//! Exposure of people at the spots of a station: every transmitter that can be keyed, of the station
//! and of those it is `beside`, against the limits of the rules it is `under`.
//!
//! Nothing is credited that is not stated: main beam, all transmitters keyed at once, mean power only
//! by mode, duty and a keyed share within the averaging time. What the formulas do not hold for is
//! refused, and a spot with a refused source gets no sum.

mod findings;
mod geometry;
mod lowered;
mod sources;

use downlead_base::{Diagnostic, Loc};
use downlead_physics::exposure::distance_for_density;
use downlead_quantity::from_db;
use downlead_station::Env;
use downlead_station::model::{Confidence, Field, RuleSet, Spot, Station, Tier, Under};

use crate::result::ChainResult;
use crate::stage::Stage;
use sources::{Limit, Radiator, radiators};

/// What is said of a spot, the worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ExposureVerdict {
    /// The sum exceeds the limits beyond the uncertainty.
    NotMet,
    /// A formula does not hold there: no figure is printed.
    Refused,
    /// Something is not stated.
    CannotJudge,
    /// The uncertainty decides.
    CannotTell,
    /// Kept by the transmitters of this station; nothing says whether others stand on the site.
    MetAlone,
    /// Kept beyond the uncertainty.
    Met,
}

impl ExposureVerdict {
    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            ExposureVerdict::NotMet => "not-met",
            ExposureVerdict::Refused => "refused",
            ExposureVerdict::CannotJudge => "cannot-judge",
            ExposureVerdict::CannotTell => "cannot-tell",
            ExposureVerdict::MetAlone => "met-alone",
            ExposureVerdict::Met => "met",
        }
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            ExposureVerdict::NotMet => "NOT MET",
            ExposureVerdict::Refused => "refused",
            ExposureVerdict::CannotJudge => "cannot judge",
            ExposureVerdict::CannotTell => "cannot tell",
            ExposureVerdict::MetAlone => "met by this station alone",
            ExposureVerdict::Met => "met",
        }
    }
}

/// Why a source cannot be computed at a spot.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// Nearer than the antenna is long (m).
    WithinSize(f64),
    /// Nearer than λ/(2π) (m).
    Reactive(f64),
    /// The antenna's size is not stated, and it is needed there.
    NoSize,
    /// The antenna's height is not stated.
    NoHeight,
    /// The spot does not say how far it is from the antenna.
    NoDistance,
    /// The antenna radiates less than half of its power: the formulas understate.
    LowEfficiency,
    /// No EIRP could be computed.
    NoEirp,
    /// No clause of the set bears on the frequency for this tier.
    NoClause,
}

impl Refused {
    /// In words.
    #[must_use]
    pub fn words(&self) -> &'static str {
        match self {
            Refused::WithinSize(_) => "closer than the antenna's own length",
            Refused::Reactive(_) => "closer than λ/2π",
            Refused::NoSize => "the antenna's length is not stated",
            Refused::NoHeight => "the antenna's height is not stated",
            Refused::NoDistance => "the spot does not say how far it is",
            Refused::LowEfficiency => "the antenna radiates less than half of its power",
            Refused::NoEirp => "its EIRP is not known",
            Refused::NoClause => "no clause of the rules bears on it",
        }
    }

    /// Whether the formula does not hold there, as opposed to something that is not stated.
    #[must_use]
    pub fn is_range(&self) -> bool {
        matches!(
            self,
            Refused::WithinSize(_) | Refused::Reactive(_) | Refused::LowEfficiency
        )
    }
}

/// How a power that counts came from the one that a chain radiates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Counted {
    /// Name of the chain.
    pub(crate) chain: Loc,
    /// EIRP on the stated power, W.
    pub(crate) stated_w: f64,
    /// Mean (or peak, for a clause without averaging time) over the stated power.
    pub(crate) factor: f64,
    /// Share of the averaging time that is keyed.
    pub(crate) share: f64,
    /// Whether the peak of the envelope counts.
    pub(crate) peak: bool,
    /// Lower and upper end of the height of the antenna's highest point above ground, m.
    pub(crate) height_m: Option<(f64, f64)>,
    /// The antenna's length, m.
    pub(crate) size_m: Option<f64>,
    /// Where in the band the limit is strictest, Hz.
    pub(crate) limit_hz: f64,
    /// The clause.
    pub(crate) clause: Option<Loc>,
}

/// One transmitter on one band at one spot.
#[derive(Clone, Debug, PartialEq)]
pub struct Source {
    /// Its station, where it is another one.
    pub station: Option<Box<str>>,
    /// Tag of the transmitter; empty where it has none.
    pub transmitter: Box<str>,
    /// Tag of the antenna; empty where it has none.
    pub antenna: Box<str>,
    /// Band as written.
    pub band: Box<str>,
    /// Hz.
    pub hz: f64,
    /// Mean power into the antenna over the averaging time, W.
    pub mean_w: f64,
    /// Gain in the main beam, dBi.
    pub gain_dbi: f64,
    /// Mean EIRP over the averaging time, W.
    pub eirp_w: f64,
    /// Its expanded uncertainty, dB.
    pub uncertainty_db: f64,
    /// Distance to the nearest part of the antenna, m; none where it is not known.
    pub distance_m: Option<f64>,
    /// Whether it is nearer than 2 D²/λ: the main-beam figure is an upper estimate there.
    pub near: bool,
    /// How far the gain toward the spot is below the peak, dB, by the antenna's pattern.
    pub down_db: f64,
    /// Power density averaged over a cylinder around the antenna, W/m², where it is near and the power
    /// has not spread beyond the cylinder.
    pub cylinder_w_m2: Option<f64>,
    /// Power density with reflection, W/m².
    pub density_w_m2: Option<f64>,
    /// Electric field strength with reflection, V/m.
    pub electric_v_m: Option<f64>,
    /// The limit as a power density, W/m².
    pub limit_w_m2: Option<f64>,
    /// The limit in its own unit.
    pub limit: Option<(f64, Field)>,
    /// Citation of the limit, and how sure its text is.
    pub cite: Option<(Box<str>, Confidence)>,
    /// Share of the limit.
    pub fraction: Option<f64>,
    /// Whether it counts in the sum: of one transmitter, the band with the largest share does.
    pub counts: bool,
    /// Why there is none.
    pub refused: Option<Refused>,
    /// What its numbers come from.
    pub(crate) counted: Counted,
}

impl Source {
    /// `TX1 on 2m`, with its station where it is another one.
    #[must_use]
    pub fn who(&self) -> String {
        let tag = match &*self.transmitter {
            "" => "a transmitter",
            tag => tag,
        };
        match &self.station {
            Some(st) => format!("{tag} of {st} on {}", self.band),
            None => format!("{tag} on {}", self.band),
        }
    }
}

/// A spot under one set of rules.
#[derive(Clone, Debug, PartialEq)]
pub struct SpotResult {
    /// Its line.
    pub loc: Loc,
    /// Its name.
    pub name: Box<str>,
    /// Who can be there.
    pub tier: Tier,
    /// Name of the rules.
    pub set: Box<str>,
    /// Date of the rules.
    pub dated: Option<Box<str>>,
    /// Factor on the field by reflection.
    pub reflection: f64,
    /// Its sources, the largest share first.
    pub sources: Box<[Source]>,
    /// Sum of the shares; none where one is refused.
    pub sum: Option<f64>,
    /// The sum with its expanded uncertainty.
    pub upper: Option<f64>,
    /// What is said of it.
    pub verdict: ExposureVerdict,
    /// What was assumed.
    pub assumed: Box<[ExposureAssumed]>,
}

impl SpotResult {
    /// What is said by the clauses alone whose text is not of low confidence: the others only warn.
    #[must_use]
    pub fn sure_verdict(&self) -> ExposureVerdict {
        use ExposureVerdict::{CannotTell, Met, NotMet};
        let (Some(sum), Some(upper)) = (self.sum, self.upper) else {
            return self.verdict;
        };
        let sure = |s: &&Source| s.cite.as_ref().is_some_and(|c| c.1 > Confidence::Low);
        let counted = self.sources.iter().filter(|s| s.counts);
        let by_sure: f64 = counted.filter(sure).filter_map(|s| s.fraction).sum();
        let factor = upper / sum;
        match self.verdict {
            NotMet | CannotTell if by_sure * factor <= 1.0 => Met,
            NotMet if by_sure / factor <= 1.0 => CannotTell,
            v => v,
        }
    }
}

/// How far to stay away from an antenna with all that feeds it on.
#[derive(Clone, Debug, PartialEq)]
pub struct KeepClear {
    /// Where the antenna stands.
    pub antenna: Loc,
    /// Its tag; empty where it has none.
    pub tag: Box<str>,
    /// For whom.
    pub tier: Tier,
    /// Name of the rules.
    pub set: Box<str>,
    /// The distance, or why there is none.
    pub distance: Result<KeepDistance, Refused>,
}

/// A distance to keep.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KeepDistance {
    /// As computed, m.
    pub computed_m: f64,
    /// With the uncertainty of the EIRP, m.
    pub upper_m: f64,
    /// To be kept, m: rounded up, never within the antenna's own length.
    pub keep_m: f64,
}

/// Something that was assumed at a spot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ExposureAssumed {
    /// The spot is in the main beam of every antenna.
    MainBeam,
    /// Patterns of antennas count, and no antenna is without one.
    Pattern,
    /// Patterns of antennas count; of the others the main beam does.
    PatternOrMainBeam,
    /// All transmitters are keyed at once and all the time.
    AllKeyed,
    /// Total reflection, as none is stated.
    TotalReflection,
    /// No other transmitter stands on the site.
    Alone,
    /// The kind of power or the mode is not stated: what radiates most is taken.
    MostRadiated,
    /// Antennas of neighbours are on the same vertical.
    SameVertical,
    /// The distances of the spot are exact.
    DistancesExact,
    /// Losses that are guesses or maxima are taken as they are.
    LossTaken,
}

impl ExposureAssumed {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            ExposureAssumed::MainBeam => "the spot is in the main beam of every antenna",
            ExposureAssumed::Pattern => {
                "the patterns of the antennas as stated: beyond 2 D²/λ, at most 20 dB, at the angle from any part of an antenna that has the most gain"
            }
            ExposureAssumed::PatternOrMainBeam => {
                "the patterns of antennas as stated (beyond 2 D²/λ, at most 20 dB, at the angle from any part with the most gain); of the others, and nearer, the spot is in the main beam"
            }
            ExposureAssumed::AllKeyed => {
                "all transmitters are keyed at once; a keyed share counts only with a window within the averaging time"
            }
            ExposureAssumed::TotalReflection => {
                "total reflection (field x 2, power x 4): the rules and `under` state no `reflection`"
            }
            ExposureAssumed::Alone => {
                "no other transmitter stands on the site: neither `beside` nor `alone` is stated"
            }
            ExposureAssumed::MostRadiated => {
                "the largest mean that a power can have whose kind or mode is not stated"
            }
            ExposureAssumed::SameVertical => {
                "antennas of neighbours stand on the same vertical as those of this station"
            }
            ExposureAssumed::LossTaken => {
                "losses that are guesses or maxima are in the sum as stated; the verdict and the distances to keep count them as nothing"
            }
            ExposureAssumed::DistancesExact => "distances and heights of spots are exact",
        }
    }
}

/// Exposure at a station.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Exposure {
    /// Each spot under each set of rules with limits of exposure.
    pub spots: Box<[SpotResult]>,
    /// Distances to keep from each antenna of the station.
    pub keep_clear: Box<[KeepClear]>,
    /// Spots of which nothing can be said.
    pub not_judged: Box<[NotJudged]>,
}

/// A spot of which nothing can be said.
#[derive(Clone, Debug, PartialEq)]
pub struct NotJudged {
    /// Its line, or its name where that could be read.
    pub loc: Loc,
    /// Its name; empty where that could not be read.
    pub name: Box<str>,
    /// Why.
    pub why: WhyNotJudged,
}

/// Why nothing is said of a spot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNotJudged {
    /// Its line could not be read.
    LineHasError,
    /// The station is under no rules of exposure.
    NoRules,
}

impl WhyNotJudged {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            WhyNotJudged::LineHasError => "the line has an error",
            WhyNotJudged::NoRules => "the station is under no rules with limits of exposure",
        }
    }
}

/// Exposure at the spots of a station; none where it states neither spots nor rules of exposure.
pub(crate) fn station(
    st: &Station,
    chains: &[ChainResult],
    env: &Env,
    stage: Stage,
    out: &mut Vec<Diagnostic>,
) -> Option<Exposure> {
    let sets: Vec<(&Under, &RuleSet)> = st
        .under
        .iter()
        .filter_map(|u| Some((u, env.rule_set(&u.name.text)?)))
        .filter(|(_, set)| !set.exposure.is_empty())
        .collect();
    if st.spots.is_empty() && st.unread_spots.is_empty() && sets.is_empty() {
        return None;
    }
    let neighbours = crate::site::neighbours(st, env, stage);
    let (mut all, chains) = radiators(None, st, chains);
    // what may radiate and is not known leaves every sum open
    let mut open: Vec<Open> = chains.into_iter().map(|c| Open::Chain(c.into())).collect();
    let undefined = st.site.beside.iter().map(|b| &b.station.text);
    open.extend(
        undefined
            .filter(|n| env.station(n).is_none())
            .map(|n| Open::Station(n.clone())),
    );
    let texts = neighbours.iter().map(|n| n.station);
    open.extend(
        std::iter::once(st)
            .chain(texts)
            .filter(|s| crate::site::misread(s, env))
            .map(|s| Open::Text(s.name.text.clone())),
    );
    for n in &neighbours {
        let name = &n.station.name.text;
        let (theirs, chains) = radiators(Some(name), n.station, &n.chains);
        if theirs.is_empty() && chains.is_empty() {
            open.push(Open::Station(name.clone()));
        }
        let of = |c: &str| Open::Chain(format!("{c}` of `{name}").into());
        open.extend(chains.into_iter().map(of));
        all.extend(theirs);
    }
    if !sets.is_empty() {
        findings::open(&st.spots, &open, out);
    }
    for spot in &st.spots {
        geometry::impossible(spot, &all, out);
    }
    let (mut spots, mut keep_clear) = (Vec::new(), Vec::new());
    for (under, set) in &sets {
        for spot in &st.spots {
            let mut found = at(st, spot, (under, set), &all, env, out);
            // what is not known can only add to what is over the limits
            let unsure = !open.is_empty() && found.verdict != ExposureVerdict::NotMet;
            let impossible = geometry::impossible(spot, &all, &mut Vec::new());
            if unsure || impossible {
                found.sum = None;
                found.upper = None;
                found.verdict = found.verdict.min(ExposureVerdict::CannotJudge);
            }
            findings::of(&found, spot, set, out);
            findings::unknown_antennas(spot, &all, out);
            spots.push(found);
        }
        for tier in [Tier::Public, Tier::Occupational] {
            keep_clear.extend(clear(st, (under, set), tier, &all, env));
        }
    }
    let mut not_judged = Vec::new();
    if sets.is_empty() {
        for spot in &st.spots {
            findings::without_rules(spot, out);
            not_judged.push(NotJudged {
                loc: spot.loc,
                name: spot.name.text.clone(),
                why: WhyNotJudged::NoRules,
            });
        }
    }
    // their findings are those of the lines
    not_judged.extend(st.unread_spots.iter().map(|u| NotJudged {
        loc: u.loc,
        name: u.name.clone(),
        why: WhyNotJudged::LineHasError,
    }));
    Some(Exposure {
        spots: spots.into(),
        keep_clear: keep_clear.into(),
        not_judged: not_judged.into(),
    })
}

/// Something that may radiate on the site, of which nothing is known.
enum Open {
    /// A station that is not defined, or of which nothing sends.
    Station(Box<str>),
    /// A chain without a result.
    Chain(Box<str>),
    /// A station with a line that could not be read.
    Text(Box<str>),
}

/// The factor on the field by reflection, and whether it is stated.
fn reflection(under: &Under, set: &RuleSet) -> (f64, bool) {
    match under.reflection.or(set.reflection) {
        Some(x) => (x, true),
        None => (2.0, false),
    }
}

/// One spot under one set.
fn at(
    st: &Station,
    spot: &Spot,
    (under, set): (&Under, &RuleSet),
    all: &[Radiator<'_>],
    env: &Env,
    out: &mut Vec<Diagnostic>,
) -> SpotResult {
    let (reflection, stated) = reflection(under, set);
    let mut sources: Vec<(Source, &Radiator<'_>)> = all
        .iter()
        .map(|r| (r.at(spot, st, set, reflection, env), r))
        .collect();
    sources.sort_by(|a, b| {
        let share = |s: &Source| s.fraction.unwrap_or(f64::INFINITY);
        share(&b.0).total_cmp(&share(&a.0))
    });
    // a transmitter is on one band at a time: the largest share of each counts
    let mut on: Vec<Option<Loc>> = Vec::new();
    for (s, r) in &mut sources {
        s.counts = r.source.is_none() || !on.contains(&r.source);
        on.push(r.source);
    }
    let sum: Option<f64> = sources
        .iter()
        .map(|(s, _)| s.fraction.map(|f| if s.counts { f } else { 0.0 }))
        .sum();
    // what is not known can only add to shares that are over the limits by themselves
    let counted = sources.iter().filter(|(s, _)| s.counts);
    let known: f64 = counted.filter_map(|(s, _)| s.fraction).sum();
    let over = known / from_db(uncertainty(&sources, known)) > 1.0;
    let sum = sum.or(over.then_some(known));
    let upper = sum.map(|sum| sum * from_db(uncertainty(&sources, sum)));
    let unlost = sum.map_or(1.0, |sum| lowered::factor(&sources, sum));
    let lower = sum.map(|sum| sum / from_db(uncertainty(&sources, sum)));
    let alone = st.site.alone.as_ref().is_some_and(|a| a.by.is_some());
    let known_site = alone || !st.site.beside.is_empty();
    let refused = |range: bool| {
        sources
            .iter()
            .filter_map(|(s, _)| s.refused.as_ref())
            .any(|r| r.is_range() == range)
    };
    let verdict = match (lower, upper) {
        _ if over => ExposureVerdict::NotMet,
        _ if refused(true) => ExposureVerdict::Refused,
        _ if refused(false) => ExposureVerdict::CannotJudge,
        // nothing radiates: nothing to judge
        _ if sources.is_empty() => ExposureVerdict::CannotJudge,
        (Some(lower), _) if lower > 1.0 => ExposureVerdict::NotMet,
        (_, Some(upper)) if upper * unlost > 1.0 => ExposureVerdict::CannotTell,
        (Some(_), Some(_)) if known_site => ExposureVerdict::Met,
        (Some(_), Some(_)) => ExposureVerdict::MetAlone,
        _ => ExposureVerdict::CannotJudge,
    };
    let by_pattern = |down: bool| {
        let known = sources.iter().filter(|(s, _)| s.fraction.is_some());
        known.filter(|(s, _)| (s.down_db > 0.0) == down).count() > 0
    };
    let mut assumed = vec![
        match (by_pattern(true), by_pattern(false)) {
            (true, true) => ExposureAssumed::PatternOrMainBeam,
            (true, false) => ExposureAssumed::Pattern,
            _ => ExposureAssumed::MainBeam,
        },
        ExposureAssumed::AllKeyed,
        ExposureAssumed::DistancesExact,
    ];
    if !stated {
        assumed.push(ExposureAssumed::TotalReflection);
    }
    if !known_site {
        assumed.push(ExposureAssumed::Alone);
    }
    if all.iter().any(|r| r.mean_assumed) {
        assumed.push(ExposureAssumed::MostRadiated);
    }
    if all.iter().any(|r| r.station.is_some()) {
        assumed.push(ExposureAssumed::SameVertical);
    }
    if unlost > 1.0 + 1e-9 {
        assumed.push(ExposureAssumed::LossTaken);
    }
    if let Some(sum) = sum {
        lowered::finding(spot, &sources, (sum, unlost), verdict, out);
    }
    SpotResult {
        loc: spot.loc,
        name: spot.name.text.clone(),
        tier: spot.tier,
        set: set.name.text.clone(),
        dated: set.dated.clone(),
        reflection,
        sources: sources.into_iter().map(|(s, _)| s).collect(),
        sum,
        upper,
        verdict,
        assumed: assumed.into(),
    }
}

/// Expanded uncertainty (k = 2) of a sum of shares, dB: a cause that several sources share adds up
/// linearly, different causes by their squares (JCGM 100, 5.2).
fn uncertainty(sources: &[(Source, &Radiator<'_>)], sum: f64) -> f64 {
    if sum <= 0.0 {
        return 0.0;
    }
    let mut causes: Vec<(&crate::result::BudgetItem, f64)> = Vec::new();
    let mut rest = 0.0;
    for (s, r) in sources.iter().filter(|(s, _)| s.counts) {
        let weight = s.fraction.unwrap_or(0.0) / sum;
        let mut of_budget = 0.0;
        for item in r.budget {
            of_budget += item.standard_db * item.standard_db;
            let term = weight * item.standard_db;
            match causes
                .iter_mut()
                .find(|c| c.0.cause == item.cause && c.0.name == item.name)
            {
                Some(c) => c.1 += term,
                None => causes.push((item, term)),
            }
        }
        // where the sample says more than the budget: that of this source alone
        let more = (0.25 * r.uncertainty_db * r.uncertainty_db - of_budget).max(0.0);
        rest += weight * weight * more;
    }
    let squares: f64 = causes.iter().map(|c| c.1 * c.1).sum();
    2.0 * libm::sqrt(squares + rest)
}

/// Distances from the antennas of the station itself, all that feeds each of them on.
fn clear(
    st: &Station,
    (under, set): (&Under, &RuleSet),
    tier: Tier,
    all: &[Radiator<'_>],
    env: &Env,
) -> Vec<KeepClear> {
    if set.exposure.iter().all(|c| c.tier != tier) {
        return Vec::new();
    }
    let (reflection, _) = reflection(under, set);
    let own = || all.iter().filter(|r| r.station.is_none());
    let mut out: Vec<KeepClear> = Vec::new();
    for a in own().flat_map(|r| &r.antennas) {
        if out.iter().any(|k| k.antenna == a.loc) {
            continue;
        }
        let fed: Vec<Fed<'_, '_>> = own()
            .filter(|o| o.antennas.iter().any(|x| x.loc == a.loc))
            .map(|o| (o, o.limit(st, set, tier, env)))
            .collect();
        out.push(KeepClear {
            antenna: a.loc,
            tag: a.tag.clone(),
            tier,
            set: set.name.text.clone(),
            // without the antenna's length the safe side is not known
            distance: a
                .size_m
                .ok_or(Refused::NoSize)
                .and_then(|size| keep(&fed, size, reflection)),
        });
    }
    out
}

/// What feeds an antenna, with its limit.
type Fed<'r, 's> = (&'r Radiator<'r>, Option<Limit<'s>>);

/// The distance to keep from an antenna of a length, m.
fn keep(fed: &[Fed<'_, '_>], size_m: f64, reflection: f64) -> Result<KeepDistance, Refused> {
    // squares add up as shares do; of one transmitter the band with the largest counts
    let mut squares: Vec<(Option<Loc>, f64, f64)> = Vec::new();
    let mut least = size_m;
    for (r, limit) in fed {
        if r.understated() {
            return Err(Refused::LowEfficiency);
        }
        let limit = limit.as_ref().ok_or(Refused::NoClause)?;
        let eirp = limit.eirp_w.ok_or(Refused::NoEirp)?;
        let d = distance_for_density(eirp, limit.density, reflection);
        let (plain, upper) = (d * d, d * d * from_db(r.uncertainty_db + r.lowered.db));
        least = least.max(r.reactive_m());
        match squares
            .iter_mut()
            .find(|s| s.0.is_some() && s.0 == r.source)
        {
            Some(s) => (s.1, s.2) = (s.1.max(plain), s.2.max(upper)),
            None => squares.push((r.source, plain, upper)),
        }
    }
    let computed_m = libm::sqrt(squares.iter().map(|s| s.1).sum());
    let upper_m = libm::sqrt(squares.iter().map(|s| s.2).sum());
    if !upper_m.is_finite() {
        return Err(Refused::NoClause);
    }
    Ok(KeepDistance {
        computed_m,
        upper_m,
        keep_m: libm::ceil(upper_m.max(least) * 10.0 - 1e-9) / 10.0,
    })
}
