//! What an editor shows of exposure and links beside their hints: lenses, and the report of a link.

use downlead_eval::exposure::ExposureVerdict;
use downlead_eval::link::LinkVerdict;
use downlead_eval::result::ItemResult;
use downlead_eval::{Places, Scope};
use downlead_report::build;
use downlead_report::shape::link::LinkReport;
use downlead_report::words::figure::counted;
use downlead_station::model::Meaning;

use crate::view::{Place, View};

/// The links of a text, or that of a name.
pub(crate) fn links(places: &Places<'_>, scope: &Scope, name: Option<&str>) -> Vec<LinkReport> {
    let all = scope.items().iter().filter_map(|(_, low, r)| {
        let (Meaning::Link(l), Some(found)) = (&low.meaning, &r.link) else {
            return None;
        };
        let wanted = name.is_none_or(|n| *n == *l.name.text);
        wanted.then(|| build::link::link(places, l, found))
    });
    all.collect()
}

/// Above a station what was found at its spots, above a link what was found of its hops: where, in words, and the
/// name of its report.
pub(crate) fn summary<'m>(
    view: &View<'_>,
    meaning: &'m Meaning,
    result: &ItemResult,
) -> Option<(Place, String, &'m str)> {
    let (name, title) = match (meaning, &result.exposure, &result.link) {
        (Meaning::Station(st), Some(e), _) => {
            let spots = e.spots.iter().map(|s| match s.verdict {
                ExposureVerdict::NotMet => 0,
                ExposureVerdict::CannotTell => 1,
                ExposureVerdict::Refused | ExposureVerdict::CannotJudge => 2,
                ExposureVerdict::MetAlone | ExposureVerdict::Met => 3,
            });
            (&st.name, summed("spot", spots, e.not_judged.len()))
        }
        (Meaning::Link(l), _, Some(r)) => {
            let hops = r.hops.iter().filter_map(|h| match h.verdict {
                LinkVerdict::NotMet => Some(0),
                LinkVerdict::CannotTell | LinkVerdict::AtLimit => Some(1),
                LinkVerdict::CannotJudge => Some(2),
                LinkVerdict::Met => Some(3),
                LinkVerdict::NoNeed => None,
            });
            (&l.name, summed("hop", hops, r.not_judged.len()))
        }
        _ => return None,
    };
    Some((view.place(name.loc)?, title?, &name.text))
}

/// `exposure: 2 spots met, 1 not judged`, the worst first; none where there is nothing.
fn summed(noun: &str, found: impl Iterator<Item = usize>, open: usize) -> Option<String> {
    let mut count = [0_usize; 4];
    found.for_each(|i| count[i] += 1);
    count[2] += open;
    let words = ["not met", "cannot tell", "not judged", "met"];
    let parts: Vec<String> = count
        .into_iter()
        .zip(words)
        .filter(|c| c.0 > 0)
        .map(|(n, w)| format!("{} {w}", counted(n, noun)))
        .collect();
    let what = if noun == "spot" { "exposure" } else { "link" };
    (!parts.is_empty()).then(|| format!("{what}: {}", parts.join(", ")))
}
