//! Isolation and desense as shapes.

use downlead_eval::Places;
use downlead_eval::site::SiteResult;
use downlead_eval::site::desense::{DesenseResult, LegResult, Missing, Rise, Source, missing_of};
use downlead_station::model::Around;

use crate::shape::desense::{
    CarrierReport, DesenseReport, IsolationReport, NoiseReport, RiseReport, SourceReport,
};
use crate::shape::word::Word;

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

fn rise(r: Rise) -> RiseReport {
    RiseReport {
        db: r.db,
        low_db: r.low_db,
        high_db: r.high_db,
    }
}

/// The word of the text.
pub(crate) fn surroundings(a: Around) -> &'static str {
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
