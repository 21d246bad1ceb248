//! Words of the exposure of people.

use downlead_quantity::number;

use super::verdict::Judged;
use crate::document::Sign;
use crate::shape::exposure::{SourceReport, SpotNotJudged, SpotReport, SpotStep};
use downlead_eval::exposure::{ExposureVerdict, KeepClear, Source, SpotResult};

/// Said on every output. Sources: FCC OET Bulletin 65 (1997) and its supplement B; common practice.
pub const CAUTIONS: &[&str] = &[
    "An estimate from the data given, in the main beam where no pattern counts; not a measurement and not a legal finding. The current text of the rules decides, and the licensee is responsible.",
    "No one may touch or come near an antenna or an open feeder in transmission: radio-frequency burns occur far below these limits.",
    "Before anyone climbs: switch every transmitter on the mast off and lock it out. Averaging does not license standing in the beam.",
    "Others on the same mast add to the sum: it holds for the stations listed only. Wearers of implants need advice of their own.",
    "Compute it again on any change of power, antenna, height or mode. Towers near power lines, lightning and high voltage are outside these figures.",
];

/// `TX1 on 2m`, with its station where it is another one.
#[must_use]
pub fn who(s: &SourceReport) -> String {
    let tag = match s.transmitter.as_str() {
        "" => "transmitter",
        t => t,
    };
    match &s.station {
        Some(st) => format!("{tag} of {st} on {}", s.band),
        None => format!("{tag} on {}", s.band),
    }
}

/// A share in percent, two digits below 10 %.
#[must_use]
pub fn share(x: f64) -> String {
    let percent = 100.0 * x;
    let decimals = if percent < 10.0 { 2 } else { 1 };
    format!("{} %", number(percent, decimals))
}

/// A spot then and now: `gate (tso-exposure): 3.85 % met, now 12.1 % cannot tell`.
#[must_use]
pub fn step(s: &SpotStep) -> String {
    let side = |i: usize| match (s.sum[i], s.verdict[i]) {
        (_, None) => "not there".to_owned(),
        (Some(sum), Some(v)) => format!("{} {}", share(sum), ExposureVerdict::words(v.0)),
        (None, Some(v)) => format!("no sum, {}", ExposureVerdict::words(v.0)),
    };
    format!("{} ({}): {}, now {}", s.name, s.set, side(0), side(1))
}

/// A spot in a few words: `3.85 %, 4.72 % with U: met; most H1 of harbour 2.62 %`.
#[must_use]
pub fn short(s: &SpotResult) -> String {
    let verdict = ExposureVerdict::words(s.verdict);
    let (Some(sum), Some(upper)) = (s.sum, s.upper) else {
        let why = s.sources.iter().find_map(|x| x.refused.as_ref());
        return match why {
            Some(why) => format!("no sum: {verdict}, {}", why.words()),
            None => format!("no sum: {verdict}"),
        };
    };
    let most = s
        .sources
        .iter()
        .filter(|x| x.counts)
        .filter_map(|x| Some((x, x.fraction?)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|_| s.sources.len() > 1)
        .map_or(String::new(), |(x, f)| {
            let tag = match &*x.transmitter {
                "" => "a transmitter",
                tag => tag,
            };
            let of = x.station.as_ref();
            let of = of.map_or(String::new(), |s| format!(" of {s}"));
            format!("; most {tag}{of} {}", share(f))
        });
    format!("{}, {} with U: {verdict}{most}", share(sum), share(upper))
}

/// What the transmitters of a neighbour add at the spot where they add most: `adds 2.62 % at gate`.
#[must_use]
pub fn beside(name: &str, spots: &[SpotResult]) -> Option<String> {
    let of = |s: &SpotResult| {
        let theirs = |x: &&Source| x.counts && x.station.as_deref() == Some(name);
        let shares = s.sources.iter().filter(theirs).map(|x| x.fraction);
        let shares: Option<Vec<f64>> = shares.collect();
        shares
            .filter(|x| !x.is_empty())
            .map(|x| x.iter().sum::<f64>())
    };
    let all = spots.iter().filter_map(|s| Some((s, of(s)?)));
    let (spot, most) = all.max_by(|a, b| a.1.total_cmp(&b.1))?;
    Some(format!("adds {} at {}", share(most), spot.name))
}

/// The distance to keep from an antenna: `keep clear 2.7 m`.
#[must_use]
pub fn keep_clear(k: &KeepClear) -> String {
    match &k.distance {
        Ok(d) => format!("keep clear {} m", number(d.keep_m, 1)),
        Err(why) => format!("keep clear not known: {}", why.words()),
    }
}

/// Said of a spot of which nothing can be said.
#[must_use]
pub fn not_judged(s: &SpotNotJudged) -> String {
    format!("not judged: {}", s.why)
}

/// Its name, or what it is where that could not be read.
#[must_use]
pub fn called(s: &SpotNotJudged) -> String {
    match s.name.as_str() {
        "" => "a spot".to_owned(),
        name => format!("spot {name}"),
    }
}

/// The sum and what is said of it.
#[must_use]
pub fn conclusion(s: &SpotReport) -> String {
    match (s.sum, s.sum_with_uncertainty) {
        (Some(sum), Some(upper)) => format!(
            "{} of the limits, {} with the uncertainty: {}",
            share(sum),
            share(upper),
            ExposureVerdict::words(s.verdict.0)
        ),
        _ => format!("no sum: {}", ExposureVerdict::words(s.verdict.0)),
    }
}

impl Judged for ExposureVerdict {
    fn sign(self) -> Sign {
        match self {
            ExposureVerdict::NotMet => Sign::Bad,
            ExposureVerdict::Met => Sign::Good,
            _ => Sign::Open,
        }
    }

    fn words(self) -> &'static str {
        ExposureVerdict::words(self)
    }
}
