//! Parts that the power of several transmitters passes at once: ratings judge the sum of their
//! means, working voltages the sum of their peaks.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{number, power};
use downlead_station::model::Station;
use rustc_hash::FxHashMap;

use crate::result::ChainResult;

/// What one transmitter does to a rated part in one chain on one band.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Load {
    /// The part.
    pub(crate) def: Loc,
    /// The chain's line that names it.
    pub(crate) chain: Loc,
    /// The transmitter.
    pub(crate) source: Loc,
    /// Ports of switches on the way: only one of a switch's is connected.
    pub(crate) switched: Box<[(Loc, Box<str>)]>,
    /// Mean power into it and what it is good for at this frequency, W; where the rating stands.
    pub(crate) mean: Option<(f64, f64, Loc)>,
    /// Voltage at the peak of the envelope and what it is good for, V rms; where that stands.
    pub(crate) peak: Option<(f64, f64, Loc)>,
}

impl Load {
    /// Whether a switch keeps the two apart.
    fn excludes(&self, other: &Load) -> bool {
        self.switched
            .iter()
            .any(|(def, port)| other.switched.iter().any(|(d, p)| d == def && p != port))
    }
}

/// Judges what several transmitters share; the loads are given up.
pub(crate) fn check(station: &Station, chains: &mut [ChainResult], out: &mut Vec<Diagnostic>) {
    let mut parts: FxHashMap<Loc, Vec<Load>> = FxHashMap::default();
    let mut order = Vec::new();
    for b in chains.iter_mut().flat_map(|c| c.bands.iter_mut()) {
        for l in std::mem::take(&mut b.loads) {
            let list = parts.entry(l.def).or_default();
            if list.is_empty() {
                order.push(l.def);
            }
            list.push(l);
        }
    }
    for def in order {
        let loads = &parts[&def];
        mean(station, loads, out);
        peak(station, loads, out);
    }
}

/// Of each transmitter the load that uses most of `share`, where several can be on at once.
fn together(loads: &[Load], share: impl Fn(&Load) -> Option<f64>) -> Vec<&Load> {
    let mut all: Vec<(&Load, f64)> = loads.iter().filter_map(|l| Some((l, share(l)?))).collect();
    all.sort_by(|a, b| b.1.total_cmp(&a.1));
    let mut out: Vec<&Load> = Vec::new();
    for (l, _) in all {
        let apart = |k: &&Load| k.source == l.source || k.excludes(l);
        if !out.iter().any(apart) {
            out.push(l);
        }
    }
    out
}

fn named(station: &Station, loc: Loc) -> String {
    let part = station.parts.iter().find(|p| p.loc == loc);
    part.and_then(|p| p.tag.as_ref())
        .map_or_else(|| "a transmitter".to_owned(), |t| t.text.to_string())
}

fn sources(station: &Station, loads: &[&Load]) -> String {
    let names: Vec<String> = loads.iter().map(|l| named(station, l.source)).collect();
    names.join(" and ")
}

fn mean(station: &Station, loads: &[Load], out: &mut Vec<Diagnostic>) {
    let share = |l: &Load| l.mean.map(|(w, limit, _)| w / limit);
    let all = together(loads, share);
    let sum: f64 = all.iter().filter_map(|l| share(l)).sum();
    // what one alone exceeds has its own finding
    let (Some(first), true) = (all.first(), all.len() > 1) else {
        return;
    };
    if sum <= 1.0 + 1e-9 || all.iter().any(|l| share(l).is_some_and(|s| s > 1.0 + 1e-9)) {
        return;
    }
    let watts: f64 = all.iter().filter_map(|l| l.mean).map(|m| m.0).sum();
    let Some((_, limit, rating)) = first.mean else {
        return;
    };
    out.push(
        Diagnostic::new(
            &codes::RATING_EXCEEDED,
            first.chain,
            format!(
                "{} together bring {} mean power into {}, {} % of what it is good for ({} at the frequency of the largest).",
                sources(station, &all),
                power(watts),
                named(station, first.def),
                number(100.0 * sum, 0),
                power(limit)
            ),
        )
        .at("shared by several transmitters")
        .also(rating, "the rating")
        .help("Parts that several transmitters share carry the sum of their mean powers when all are keyed."),
    );
}

fn peak(station: &Station, loads: &[Load], out: &mut Vec<Diagnostic>) {
    let share = |l: &Load| l.peak.map(|(v, limit, _)| v / limit);
    let all = together(loads, share);
    let sum: f64 = all.iter().filter_map(|l| share(l)).sum();
    let (Some(first), true) = (all.first(), all.len() > 1) else {
        return;
    };
    if sum <= 1.0 + 1e-9 || all.iter().any(|l| share(l).is_some_and(|s| s > 1.0 + 1e-9)) {
        return;
    }
    let volts: f64 = all.iter().filter_map(|l| l.peak).map(|p| p.0).sum();
    let Some((_, limit, rating)) = first.peak else {
        return;
    };
    out.push(
        Diagnostic::new(
            &codes::VOLTAGE_EXCEEDED,
            first.chain,
            format!(
                "{} together can put {} V rms on {} where their peaks meet, and it is good for {} V.",
                sources(station, &all),
                number(volts, 0),
                named(station, first.def),
                number(limit, 0)
            ),
        )
        .at("shared by several transmitters")
        .also(rating, "the rating")
        .help("Carriers of different frequencies add in voltage from time to time."),
    );
}
