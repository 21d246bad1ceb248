//! The noise of all transmitters together, and the verdict.

use downlead_physics::noise::noise_rise;
use downlead_physics::site::interference_for_rise;
use downlead_quantity::{from_db, to_db};

use super::judge::{Computed, Heard};
use super::{DesenseAssumed, DesenseResult, DesenseVerdict, NoiseAt, Rise, Source};
use crate::cause::Budget;

/// Margin and uncertainty below this are at the limit, dB.
const AT_LIMIT_DB: f64 = 0.02;

/// Desense by a noise over a floor, both in dBm/Hz, where the two together are uncertain by `u_db` (k = 2).
pub(super) fn rise(noise: f64, floor: f64, u_db: f64) -> Rise {
    let over = noise - floor;
    Rise {
        db: noise_rise(over),
        low_db: noise_rise(over - u_db),
        high_db: noise_rise(over + u_db),
    }
}

/// Standard uncertainty of a budget less another one, dB.
pub(super) fn against(a: &Budget<'_>, b: &Budget<'_>) -> f64 {
    let mut all = a.clone();
    b.terms.iter().for_each(|(cause, db)| all.add(*cause, -db));
    all.standard()
}

/// A verdict from the margins with the uncertainty to the bad and to the good side.
pub(super) fn surely(worst: f64, best: f64, margin: f64, u_db: f64) -> DesenseVerdict {
    if margin.abs() < AT_LIMIT_DB && u_db < AT_LIMIT_DB {
        DesenseVerdict::AtLimit
    } else if worst >= 0.0 {
        DesenseVerdict::Met
    } else if best < 0.0 {
        DesenseVerdict::NotMet
    } else {
        DesenseVerdict::CannotTell
    }
}

/// Whether another chain of the same transmitter on the same frequency is louder: it sends through
/// one at a time, and the loudest counts.
fn louder(all: &[Computed<'_>], i: usize, wanted: &dyn Fn(&Computed<'_>) -> bool) -> bool {
    let Some((own, _)) = &all[i].noise else {
        return false;
    };
    all.iter().enumerate().any(|(k, c)| {
        c.transmitter == all[i].transmitter
            && wanted(c)
            && c.noise
                .as_ref()
                .is_some_and(|(n, _)| n > own || n == own && k < i)
    })
}

/// The noise of some transmitters together, dBm/Hz, with what it owes to each cause; none of none.
fn sum<'m>(all: &[Computed<'m>], wanted: impl Fn(&NoiseAt) -> bool) -> Option<(f64, Budget<'m>)> {
    let wanted = |c: &Computed<'_>| c.source.noise.as_ref().is_some_and(&wanted);
    let noises = || {
        let counted = |(i, c): (usize, &'_ Computed<'m>)| wanted(c) && !louder(all, i, &wanted);
        let indexed = all.iter().enumerate();
        indexed
            .filter(move |x| counted(*x))
            .filter_map(|(_, c)| c.noise.as_ref())
    };
    let sum: f64 = noises().map(|n| from_db(n.0)).sum();
    let mut budget = Budget::default();
    for (noise, own) in noises() {
        let share = from_db(*noise) / sum;
        own.terms
            .iter()
            .for_each(|(cause, db)| budget.add(*cause, share * db));
    }
    (sum > 0.0).then(|| (to_db(sum), budget))
}

/// Adds up the noise of all transmitters, with what they have in common, over the floor that counts.
pub(super) fn together<'m>(r: &mut DesenseResult, heard: &Heard<'_, 'm>, all: &mut [Computed<'m>]) {
    let Some(floor) = &heard.floor else { return };
    let floor_dbm = floor.site.as_ref().map_or(floor.alone_dbm_hz, |s| s.dbm_hz);
    let rise = |(noise, budget): (f64, Budget<'m>)| {
        let own = &heard.budgets[usize::from(floor.site.is_some())];
        rise(noise, floor_dbm, 2.0 * against(&budget, own))
    };
    r.most = sum(all, |_| true).map(rise);
    let known = sum(all, |n| !n.at_most);
    let known_mw = known.as_ref().map_or(0.0, |k| from_db(k.0));
    r.together = known.map(rise);
    let Some(limit) = &heard.limit else { return };
    let allowed = from_db(floor_dbm + interference_for_rise(limit.db));
    let known = |c: &Computed<'_>| c.source.noise.as_ref().is_some_and(|n| !n.at_most);
    let counted: Vec<bool> = (0..all.len()).map(|i| !louder(all, i, &known)).collect();
    for (c, _) in all.iter_mut().zip(counted).filter(|x| x.1) {
        let Some((noise, _)) = &c.noise else { continue };
        let Some(n) = c.source.noise.as_mut().filter(|n| !n.at_most) else {
            continue;
        };
        let left = allowed - (known_mw - from_db(*noise));
        n.needs_db = (left > 0.0).then(|| noise - to_db(left));
    }
}

pub(super) fn verdict(r: &DesenseResult) -> DesenseVerdict {
    use DesenseVerdict as V;
    let carriers = r.sources.iter().filter_map(|s| s.carrier.as_ref());
    let blocked = carriers.map(|c| c.verdict).min();
    let Some(limit) = &r.limit else {
        // a carrier over what the receiver withstands is wrong under any limit
        return match blocked {
            Some(V::NotMet) => V::NotMet,
            _ => V::NoLimit,
        };
    };
    let judged = |t: &Rise| {
        let u = t.high_db - t.low_db;
        surely(
            limit.db - t.high_db,
            limit.db - t.low_db,
            limit.db - t.db,
            u,
        )
    };
    let noise = match (&r.together, &r.most) {
        (Some(t), _) if judged(t) == V::NotMet => V::NotMet,
        (Some(t), Some(m)) if m == t => judged(t),
        // what only may be as much is nothing that surely is
        (_, Some(m)) if judged(m) == V::Met => V::Met,
        (_, Some(_)) => V::CannotJudge,
        (_, None) => V::Met,
    };
    // a figure that can only be less than one that is kept needs nothing further
    let kept = |s: &Source| {
        let noise = s.noise.is_some();
        let carrier = s
            .carrier
            .as_ref()
            .is_some_and(|c| c.verdict != V::CannotJudge);
        noise && carrier
    };
    let open = !r.missing.is_empty() || !r.sources.iter().all(kept);
    match [Some(noise), blocked].into_iter().flatten().min() {
        Some(V::NotMet) => V::NotMet,
        _ if open => V::CannotJudge,
        Some(V::Met) if r.assumed.contains(&DesenseAssumed::NoOther) => V::MetAlone,
        Some(v) => v,
        None => V::CannotJudge,
    }
}
