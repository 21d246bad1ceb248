//! From the exposure at spots to its shape.

use downlead_eval::exposure::{
    Exposure, ExposureVerdict, KeepClear, NotJudged, Refused, Source, SpotResult,
};
use downlead_eval::{Places, Scope};
use downlead_quantity::number;
use downlead_station::model::{Meaning, SpotAt, Station};

use crate::shape::exposure::{
    ExposureReport, KeepClearReport, SourceReport, SpotNotJudged, SpotReport, SpotStep,
};
use crate::shape::word::Word;
use crate::words::exposure::{CAUTIONS, who};

/// The exposure of a station.
pub(super) fn exposure(places: &Places<'_>, st: &Station, e: &Exposure) -> ExposureReport {
    ExposureReport {
        cautions: CAUTIONS,
        spots: e.spots.iter().map(|s| spot(places, st, s)).collect(),
        keep_clear: e.keep_clear.iter().map(keep_clear).collect(),
        not_judged: e.not_judged.iter().map(|n| not_judged(places, n)).collect(),
    }
}

fn not_judged(places: &Places<'_>, n: &NotJudged) -> SpotNotJudged {
    let (file, _, line) = places.at(n.loc);
    SpotNotJudged {
        name: n.name.to_string(),
        why: n.why.words(),
        file,
        line,
    }
}

fn keep_clear(k: &KeepClear) -> KeepClearReport {
    let d = k.distance.as_ref().ok();
    KeepClearReport {
        antenna: k.tag.to_string(),
        tier: k.tier.word(),
        set: k.set.to_string(),
        computed_m: d.map(|d| d.computed_m),
        with_uncertainty_m: d.map(|d| d.upper_m),
        keep_m: d.map(|d| d.keep_m),
        missing: k.distance.as_ref().err().map(Refused::words),
    }
}

fn spot(places: &Places<'_>, st: &Station, s: &SpotResult) -> SpotReport {
    let (file, _, line) = places.at(s.loc);
    let sources: Vec<SourceReport> = s.sources.iter().map(source).collect();
    SpotReport {
        name: s.name.to_string(),
        tier: s.tier.word(),
        at: at(st, s),
        set: s.set.to_string(),
        dated: s.dated.as_ref().map(ToString::to_string),
        reflection: s.reflection,
        verdict: Word(s.verdict),
        sum: s.sum,
        sum_with_uncertainty: s.upper,
        above_five_percent: sources
            .iter()
            .filter(|s| s.counts && s.share.is_some_and(|f| f > 0.05))
            .map(who)
            .collect(),
        sources,
        assumptions: s.assumed.iter().map(|a| a.words()).collect(),
        file,
        line,
    }
}

fn at(st: &Station, s: &SpotResult) -> String {
    let m = |x: f64| format!("{} m", number(x, 2));
    match st.spots.iter().find(|x| x.loc == s.loc).map(|x| &x.at) {
        Some(SpotAt::Beside(out, agl)) => format!("{} out, {} above ground", m(*out), m(*agl)),
        Some(SpotAt::From(all)) => all
            .iter()
            .map(|(d, a, of)| {
                let of = of
                    .as_ref()
                    .map_or_else(String::new, |o| format!(" of {}", o.text));
                format!("{} from {}{of}", m(*d), a.text)
            })
            .collect::<Vec<_>>()
            .join(", "),
        None => String::new(),
    }
}

fn source(s: &Source) -> SourceReport {
    let finite = |x: f64| Some(x).filter(|x| x.is_finite());
    SourceReport {
        transmitter: s.transmitter.to_string(),
        antenna: s.antenna.to_string(),
        station: s.station.as_ref().map(ToString::to_string),
        band: s.band.to_string(),
        frequency_hz: s.hz,
        mean_w: finite(s.mean_w),
        gain_dbi: finite(s.gain_dbi),
        eirp_w: finite(s.eirp_w),
        uncertainty_db: s.uncertainty_db,
        distance_m: s.distance_m,
        zone: s.fraction.map(|_| if s.near { "near" } else { "far" }),
        down_db: Some(s.down_db).filter(|d| *d > 0.0),
        density_w_m2: s.density_w_m2,
        electric_v_m: s.electric_v_m,
        cylinder_w_m2: s.cylinder_w_m2,
        limit_w_m2: s.limit_w_m2,
        limit: s
            .limit
            .map(|(v, f)| format!("{} {}", number(v, 4), f.unit())),
        cite: s.cite.as_ref().map(|c| c.0.to_string()),
        confidence: s.cite.as_ref().map(|c| c.1.word()),
        share: s.fraction,
        counts: s.counts,
        refused: s.refused.as_ref().map(Refused::words),
    }
}

/// The exposure of a station of a scope, by its name.
pub(super) fn of_station<'s>(scope: &'s Scope, name: &str) -> Option<&'s Exposure> {
    let found = scope.items().iter().find(|i| match &i.1.meaning {
        Meaning::Station(st) => *st.name.text == *name,
        _ => false,
    });
    found?.2.exposure.as_deref()
}

/// All spots of two states of a station.
pub(super) fn steps(old: Option<&Exposure>, new: Option<&Exposure>) -> Vec<SpotStep> {
    let list = |e: Option<&'_ Exposure>| e.map_or_else(Vec::new, |e| e.spots.to_vec());
    let (was, is) = (list(old), list(new));
    // a spot that is there and of which nothing can be said any more is not gone
    let open = |e: Option<&Exposure>, name: &str| {
        e.is_some_and(|e| e.not_judged.iter().any(|n| *n.name == *name))
    };
    let same = |a: &SpotResult, b: &SpotResult| a.name == b.name && a.set == b.set;
    let step = |a: Option<&SpotResult>, b: Option<&SpotResult>| {
        let one = a.or(b)?;
        let of = |s: Option<&SpotResult>, e: Option<&Exposure>| match s {
            Some(s) => Some((s.verdict, s.sure_verdict())),
            None if open(e, &one.name) => {
                Some((ExposureVerdict::CannotJudge, ExposureVerdict::CannotJudge))
            }
            None => None,
        };
        let verdict = [of(a, old), of(b, new)];
        Some(SpotStep {
            name: one.name.to_string(),
            set: one.set.to_string(),
            sum: [a.and_then(|s| s.sum), b.and_then(|s| s.sum)],
            // the worst comes first; one that is gone or new is no worse than one of which nothing was known
            worse: match verdict.map(|v| v.map(|v| v.1)) {
                [Some(a), Some(b)] => b < a,
                [None, Some(b)] => b == ExposureVerdict::NotMet,
                _ => false,
            },
            over: verdict[1].is_some_and(|v| v.1 == ExposureVerdict::NotMet),
            verdict: verdict.map(|v| v.map(|v| Word(v.0))),
        })
    };
    let kept = is
        .iter()
        .map(|b| step(was.iter().find(|a| same(a, b)), Some(b)));
    let gone = was.iter().filter(|a| is.iter().all(|b| !same(a, b)));
    kept.chain(gone.map(|a| step(Some(a), None)))
        .flatten()
        .collect()
}
