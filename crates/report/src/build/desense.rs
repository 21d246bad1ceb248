//! Isolation and desense as shapes.

use downlead_eval::Places;
use downlead_eval::site::SiteResult;
use downlead_eval::site::desense::{
    DesenseResult, DesenseVerdict, IsolationResult, LegResult, Missing, Rise, Source, missing_of,
};
use downlead_quantity::{frequency, number};
use downlead_station::model::Around;

use crate::shape::desense::{
    CarrierReport, DesenseReport, IsolationReport, NoiseReport, RiseReport, SourceReport,
};
use crate::shape::word::Word;
use crate::words::desense as words;
use crate::words::verdict::Judged;

/// The isolations of a station.
pub(super) fn isolations(places: &Places<'_>, s: &SiteResult) -> Vec<IsolationReport> {
    let one = |i: &downlead_eval::site::desense::IsolationResult| {
        let (file, _, line) = places.at(i.loc);
        IsolationReport {
            from: i.from.to_string(),
            to: i.to.to_string(),
            line,
            file,
            by: i.by.to_owned(),
            hz: i.hz,
            db: i.db,
            uncertainty_db: i.u_db,
            wavelengths: i.wavelengths,
        }
    };
    s.isolations.iter().map(one).collect()
}

/// The desense of its receive channels.
pub(super) fn desense(places: &Places<'_>, s: &SiteResult) -> Vec<DesenseReport> {
    s.desense.iter().map(|r| channel(places, r)).collect()
}

/// A desense with its uncertainty.
fn rise(r: Rise) -> RiseReport {
    RiseReport {
        db: r.db,
        low_db: r.low_db,
        high_db: r.high_db,
    }
}

/// The word of the text.
fn surroundings(a: Around) -> &'static str {
    let word = Around::ALL.into_iter().find(|x| x.1 == a);
    word.map_or("", |w| w.0)
}

fn channel(places: &Places<'_>, r: &DesenseResult) -> DesenseReport {
    let (file, _, line) = places.at(r.limit.as_ref().map_or(r.chain, |l| l.loc));
    let site = r.floor.as_ref().and_then(|f| f.site.as_ref());
    DesenseReport {
        receiver: r.receiver.to_string(),
        chain: r.chain_name.to_string(),
        file,
        line,
        hz: r.hz,
        floor_dbm_hz: r.floor.as_ref().map(|f| f.alone_dbm_hz),
        surroundings: site
            .and_then(|s| s.around)
            .map(|a| surroundings(a).to_owned()),
        external_noise_db: site.and_then(|s| s.external_db),
        floor_on_site_dbm_hz: site.map(|s| s.dbm_hz),
        limit_db: r.limit.as_ref().map(|l| l.db),
        limit_source: r
            .limit
            .as_ref()
            .and_then(|l| l.source.as_ref())
            .map(ToString::to_string),
        together: r.together.map(rise),
        verdict: Word(r.verdict),
        missing: missing_of(r),
        assumed: r.assumed.iter().map(|a| a.words().to_owned()).collect(),
        sources: r.sources.iter().map(source).collect(),
    }
}

fn leg(l: Option<&LegResult>) -> (Option<String>, Option<f64>) {
    (l.map(|l| l.name.to_string()), l.map(|l| l.rejects_db))
}

/// One transmitter beside one receiver.
fn source(s: &Source) -> SourceReport {
    let words = |all: &[Missing]| all.iter().map(Missing::words).collect();
    SourceReport {
        transmitter: s.words(),
        hz: s.hz,
        offset_hz: s.offset_hz,
        isolation_db: s.isolation_db.map(|i| i.0),
        isolation_by_distance_db: s.isolation_db.and_then(|i| i.1),
        noise: s.noise.as_ref().map(|n| {
            let (leg, rejects_db) = leg(s.noise_leg.as_ref());
            NoiseReport {
                dbm_hz: n.dbm_hz,
                at_most: n.at_most,
                over_floor_db: n.over_db,
                uncertainty_db: n.u_db,
                way_db: n.way_db,
                leg,
                rejects_db,
                desense: rise(n.alone),
                desense_on_site: n.on_site.map(rise),
                desense_by_distance_db: s.by_distance,
                spare_db: n.spare_db,
                needs_db: n.needs_db,
            }
        }),
        noise_missing: words(&s.noise_missing),
        carrier: s.carrier.as_ref().map(|c| {
            let (leg, rejects_db) = leg(s.carrier_leg.as_ref());
            CarrierReport {
                dbm: c.dbm,
                at_most: c.at_most,
                blocking_dbm: c.blocking_dbm,
                under_db: c.under_db,
                uncertainty_db: c.u_db,
                way_db: c.way_db,
                leg,
                rejects_db,
                verdict: Word(c.verdict),
            }
        }),
        carrier_missing: words(&s.carrier_missing),
    }
}

/// What an isolation comes to, for one line: `56.1 dB ± 6.9 dB at 146.3137 MHz, 5.1 wavelengths`.
#[must_use]
pub fn isolated_in_short(i: &IsolationResult) -> String {
    let distance = i
        .wavelengths
        .map_or_else(String::new, |w| format!(", {} wavelengths", number(w, 1)));
    match i.db {
        Some(x) => format!(
            "{} dB ± {} dB at {}{distance}",
            words::tenth(x),
            words::tenth(i.u_db),
            frequency(i.hz)
        ),
        None => format!("too near for the rule at {}{distance}", frequency(i.hz)),
    }
}

/// A desense for one line, both numbers: `not met: noise 9.3 dB, carrier 14.6 dB under blocking`.
#[must_use]
pub fn in_short(r: &DesenseResult) -> String {
    let mut out = Judged::words(r.verdict).to_owned();
    let noise = r.together.as_ref().or(r.most.as_ref());
    let noise = noise.map(|t| format!("noise {} dB", words::some(t.db)));
    let known = r.sources.iter().filter_map(|s| s.carrier.as_ref());
    let known = known.filter(|c| c.verdict != DesenseVerdict::CannotJudge);
    let carrier = known
        .map(|c| c.under_db)
        .min_by(f64::total_cmp)
        .map(|x| format!("carrier {} blocking", words::over(-x)));
    let both: Vec<String> = noise.into_iter().chain(carrier).collect();
    if !both.is_empty() {
        out += &format!(": {}", both.join(", "));
    }
    out
}

/// What they do together, a line for each transmitter beside a receiver, then what is missing.
#[must_use]
pub fn sources_in_short(r: &DesenseResult) -> Vec<String> {
    let one = |s: &downlead_eval::site::desense::Source| {
        let s = source(s);
        let part = |what: &str, value: String, to: String| match to.is_empty() {
            true => format!("{what} {value}"),
            false => format!("{what} {value}, {to}"),
        };
        format!(
            "{}: {}; {}",
            s.transmitter,
            part("noise", words::noise(&s), words::to_floor(&s)),
            part("carrier", words::carrier(&s), words::to_blocking(&s))
        )
    };
    let missing = missing_of(r).into_iter().map(|m| format!("missing: {m}"));
    let together = r
        .together
        .map(|t| format!("together {}", words::rise(&rise(t))));
    let sources = r.sources.iter().map(one);
    together.into_iter().chain(sources).chain(missing).collect()
}
