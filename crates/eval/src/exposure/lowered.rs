//! Losses that make an exposure look smaller than it may be: guesses, and maxima of data sheets. A
//! verdict of a spot and a distance to keep count them as nothing, and say so.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_quantity::{db, from_db, number};
use downlead_station::model::{Basis, Spot};

use super::sources::Radiator;
use super::{ExposureVerdict, Source};
use crate::assume::Assumed;
use crate::result::BandResult;

/// Why a loss may be lower than it is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Weak {
    Guess,
    Maximum,
}

/// Losses of a chain on a band that may be lower.
#[derive(Clone, Debug, Default)]
pub(super) struct Lowered {
    /// Where each is, and why.
    pub(super) at: Vec<(Loc, Weak)>,
    /// What is radiated more if nothing is lost there, dB.
    pub(super) db: f64,
}

/// Those of a band; of several branches the one with the largest counts.
pub(super) fn of(b: &BandResult) -> Lowered {
    let mut out = Lowered::default();
    let mut branches: Vec<f64> = Vec::new();
    for n in b.nodes.iter().filter(|n| n.loss_known && n.loss_db > 0.0) {
        let maximum = (Assumed::MaximumTaken, n.tag().unwrap_or(n.def));
        let why = match n.basis {
            Basis::Guess => Weak::Guess,
            _ if b.assumed().contains(&maximum) => Weak::Maximum,
            _ => continue,
        };
        out.at.push((n.tag().unwrap_or(n.chain), why));
        let at = usize::from(n.branch);
        branches.resize(branches.len().max(at + 1), 0.0);
        branches[at] += n.loss_db;
    }
    let trunk = branches.first().copied().unwrap_or(0.0);
    let most = branches.iter().skip(1).copied().fold(0.0, f64::max);
    out.db = trunk + most;
    out
}

/// The sum of the shares if nothing is lost in any of those, over the sum as computed.
pub(super) fn factor(sources: &[(Source, &Radiator<'_>)], sum: f64) -> f64 {
    let counted = sources.iter().filter(|s| s.0.counts);
    let more: f64 = counted
        .map(|(s, r)| s.fraction.unwrap_or(0.0) * from_db(r.lowered.db))
        .sum();
    if sum > 0.0 {
        (more / sum).max(1.0)
    } else {
        1.0
    }
}

/// Points them out at a spot. `turned` says whether the verdict rests on them.
pub(super) fn finding(
    spot: &Spot,
    sources: &[(Source, &Radiator<'_>)],
    (sum, factor): (f64, f64),
    verdict: ExposureVerdict,
    out: &mut Vec<Diagnostic>,
) {
    let mut at: Vec<(Loc, Weak)> = Vec::new();
    for (_, r) in sources.iter().filter(|s| s.0.counts) {
        for x in &r.lowered.at {
            if !at.contains(x) {
                at.push(*x);
            }
        }
    }
    if at.is_empty() || factor <= 1.0 + 1e-9 {
        return;
    }
    let has = |w: Weak| at.iter().any(|x| x.1 == w);
    let what = match (at.len(), has(Weak::Guess), has(Weak::Maximum)) {
        (1, true, _) => "A loss that is a guess takes".to_owned(),
        (1, ..) => "A loss that is a maximum takes".to_owned(),
        (n, true, false) => format!("{n} losses that are guesses take"),
        (n, false, _) => format!("{n} losses that are maxima take"),
        (n, ..) => format!("{n} losses that are guesses or maxima take"),
    };
    let percent = |x: f64| format!("{} %", number(100.0 * x, 2));
    let mut d = Diagnostic::new(
        &codes::LOW_EDGE_USED,
        spot.name.loc,
        format!(
            "{what} part in the exposure at `{}`; if nothing is lost there, it is {} of the limits instead of {} ({} more).",
            spot.name.text,
            percent(sum * factor),
            percent(sum),
            db(downlead_quantity::to_db(factor))
        ),
    )
    .at("the true loss may be lower")
    .help("For the exposure of people the lowest credible loss counts: write a typical loss with its ±, or measure it. The verdict counts these losses as nothing.");
    if verdict == ExposureVerdict::CannotTell {
        d.severity = Severity::Warning;
    }
    for (loc, why) in at.iter().take(4) {
        let label = match why {
            Weak::Guess => "a guess",
            Weak::Maximum => "a maximum",
        };
        d = d.also(*loc, label);
    }
    out.push(d);
}
