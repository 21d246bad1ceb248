//! Rows of an overview beside those of bands: spots and hops, and what the filters go by.

use downlead_eval::exposure::ExposureVerdict;
use downlead_eval::link::LinkVerdict;
use downlead_eval::{Evaluated, Places};
use downlead_quantity::to_db;
use downlead_station::Env;
use downlead_station::model::Meaning;

use super::overview::empty;
use crate::shape::overview::{OverviewRow, RowKind, Standing};

/// What the rows of a station are filtered by.
pub(super) fn of_station(env: &Env, item: &Evaluated, rows: &mut [OverviewRow]) {
    let Meaning::Station(st) = &item.1.meaning else {
        return;
    };
    let mut classes: Vec<String> = Vec::new();
    for c in st.under.iter().flat_map(|u| u.classes.iter()) {
        if !classes.iter().any(|x| **x == *c.text) {
            classes.push(c.text.to_string());
        }
    }
    let on_site = env.on_site_of(st);
    for row in rows {
        row.under = st.under.iter().map(|u| u.name.text.to_string()).collect();
        row.classes.clone_from(&classes);
        row.beside = on_site.iter().map(|s| s.name.text.to_string()).collect();
    }
}

/// The exposure at each spot of a station, a row each set of rules.
pub(super) fn of_spots(
    places: &Places<'_>,
    file: &str,
    item: &Evaluated,
    out: &mut Vec<OverviewRow>,
) {
    let (Meaning::Station(st), Some(exposure)) = (&item.1.meaning, &item.2.exposure) else {
        return;
    };
    out.extend(exposure.spots.iter().map(|s| {
        OverviewRow {
            station: st.name.text.to_string(),
            what: Some(s.name.to_string()),
            cite: Some(s.set.to_string()),
            share: s.sum,
            // a share of 1 is the limit: what is left to it as for a power
            margin_db: s.sum.filter(|x| *x > 0.0).map(|x| -to_db(x)),
            uncertainty_db: s
                .sum
                .zip(s.upper)
                .filter(|(sum, _)| *sum > 0.0)
                .map(|(sum, upper)| to_db(upper / sum)),
            verdict: match s.verdict {
                ExposureVerdict::NotMet => Standing::NotMet,
                ExposureVerdict::CannotTell => Standing::CannotTell,
                ExposureVerdict::CannotJudge | ExposureVerdict::Refused => Standing::NotJudged,
                ExposureVerdict::MetAlone => Standing::MetAlone,
                ExposureVerdict::Met => Standing::Met,
            },
            ..empty(file, places.line(s.loc), RowKind::Spot)
        }
    }));
}

/// Each hop of a link.
pub(super) fn of_link(places: &Places<'_>, file: &str, item: &Evaluated) -> Vec<OverviewRow> {
    let (Meaning::Link(l), Some(link)) = (&item.1.meaning, &item.2.link) else {
        return Vec::new();
    };
    let base = |loc, hop: String| OverviewRow {
        station: l.name.text.to_string(),
        what: Some(hop),
        ..empty(file, places.line(loc), RowKind::Hop)
    };
    let judged = link.hops.iter().map(|h| OverviewRow {
        frequency_hz: Some(h.hz),
        cite: h.judged.as_ref().map(|j| j.criterion.to_string()),
        margin_db: h.judged.as_ref().map(|j| j.left_db),
        uncertainty_db: h.judged.as_ref().map(|j| j.u_db),
        verdict: match h.verdict {
            LinkVerdict::NotMet => Standing::NotMet,
            LinkVerdict::CannotJudge => Standing::NotJudged,
            LinkVerdict::CannotTell | LinkVerdict::AtLimit => Standing::CannotTell,
            LinkVerdict::NoNeed => Standing::NoLimit,
            LinkVerdict::Met => Standing::Met,
        },
        ..base(h.loc, format!("{} to {}", h.from, h.to))
    });
    let not = link.not_judged.iter().map(|h| OverviewRow {
        verdict: Standing::NotJudged,
        message: Some(h.why.words().to_owned()),
        ..base(h.loc, h.hop.to_string())
    });
    judged.chain(not).collect()
}
