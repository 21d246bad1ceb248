//! Goals beyond a chain: the exposure at spots, and what is left in a link.

use downlead_eval::{Evaluated, Scope};
use downlead_quantity::to_db;
use downlead_station::model::Meaning;

use super::Goal;
use crate::model::Snapshot;

fn items(s: &Snapshot) -> impl Iterator<Item = &Evaluated> {
    s.scopes().iter().flat_map(Scope::items)
}

/// The spots of a goal with the name of their station: name, sum, sum with its uncertainty.
fn spots(s: &Snapshot, wanted: Option<&str>) -> Vec<(String, Option<(f64, f64)>)> {
    let mut out = Vec::new();
    for item in items(s) {
        let (Meaning::Station(st), Some(e)) = (&item.1.meaning, &item.2.exposure) else {
            continue;
        };
        let here = e
            .spots
            .iter()
            .filter(|x| wanted.is_none_or(|w| *x.name == *w));
        out.extend(here.map(|x| {
            let name = format!("{} at {} of {}", x.set, x.name, st.name.text);
            (name, x.sum.zip(x.upper).filter(|(sum, _)| *sum > 0.0))
        }));
    }
    out
}

/// The hops of a link: name, and what is left with its uncertainty, dB.
fn hops(s: &Snapshot, link: &str) -> Vec<(String, Option<(f64, f64)>)> {
    let mut out = Vec::new();
    for item in items(s) {
        let (Meaning::Link(l), Some(found)) = (&item.1.meaning, &item.2.link) else {
            continue;
        };
        if *l.name.text != *link {
            continue;
        }
        out.extend(found.hops.iter().map(|h| {
            let name = format!("{link}: {} to {}", h.from, h.to);
            (name, h.judged.as_ref().map(|j| (j.left_db, j.u_db)))
        }));
        let not = found.not_judged.iter();
        out.extend(not.map(|h| (format!("{link}: {}", h.hop), None)));
    }
    out
}

/// What is judged: name, margin and its uncertainty, dB.
pub(super) fn judged(goal: &Goal, s: &Snapshot) -> Vec<(String, f64, f64)> {
    match goal {
        // a share of 1 is the limit: the margin to it is that of a power
        Goal::Exposure(spot) => spots(s, spot.as_deref())
            .into_iter()
            .filter_map(|(name, x)| x.map(|(sum, upper)| (name, -to_db(sum), to_db(upper / sum))))
            .collect(),
        Goal::Hops(link, least) => hops(s, link)
            .into_iter()
            .filter_map(|(name, x)| x.map(|(left, u)| (name, left - least, u)))
            .collect(),
        Goal::Limits | Goal::Radiated(..) => Vec::new(),
    }
}

/// What the answer says nothing about, because it could not be computed.
pub(super) fn unjudged(goal: &Goal, s: &Snapshot) -> Vec<String> {
    let all = match goal {
        Goal::Exposure(spot) => spots(s, spot.as_deref()),
        Goal::Hops(link, _) => hops(s, link),
        Goal::Limits | Goal::Radiated(..) => Vec::new(),
    };
    all.into_iter()
        .filter(|x| x.1.is_none())
        .map(|x| x.0)
        .collect()
}
