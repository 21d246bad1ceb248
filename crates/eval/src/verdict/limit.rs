//! Limits on radiated power and on the output.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::net::evaluate::Quantity;
use downlead_quantity::{db, from_db, power, to_db};
use downlead_station::model::{Basis, LimitQuantity, PartKind, PowerKind};

use super::cold::cold;
use super::largest::largest;
use super::power_kind::kind_factor;
use super::rule::upper_limit;
use crate::assume::Assumed;
use crate::chain::{Feed, NodeState, Reached, Run};
use crate::result::{BandResult, LimitResult, NodeKind, Verdict};

#[allow(clippy::too_many_arguments, reason = "one limit")]
pub(super) fn limit<'m>(
    run: &mut Run<'m, '_>,
    result: &BandResult,
    feed: Option<&Feed<'m>>,
    reached: &Reached<'m>,
    state: &NodeState<'m>,
    loc: Loc,
    quantity: LimitQuantity,
    limit_w: f64,
    want: Option<PowerKind>,
) -> Option<LimitResult> {
    let feed = feed?;
    let factor = kind_factor(run, feed, want, loc)?;
    let Some(found) = compare(
        run,
        result,
        feed,
        (state.at, state.forward_w),
        quantity,
        limit_w,
        factor,
    ) else {
        let radiated = quantity != LimitQuantity::Output;
        if radiated && result.complete && result.eirp_w.is_none() {
            no_gain(run, result, quantity, loc);
        }
        return None;
    };
    let what = match quantity {
        LimitQuantity::Output => "The power here".to_owned(),
        _ => quantity.word().to_uppercase(),
    };
    judged_words(run, feed, reached, loc, &what, limit_w, &found);
    if feed.figure.meta.basis == Basis::Displayed {
        run.diags.push(
            Diagnostic::new(
                &codes::DISPLAYED_POWER,
                feed.figure.loc,
                "This power is the radio's own display; give a meter reading for a limit check.",
            )
            .at("displayed")
            .also(loc, "the limit"),
        );
    }
    converted(run, feed, reached, quantity, want, factor, found.value, loc);
    if quantity != LimitQuantity::Output {
        low_edge(
            run,
            result,
            &what,
            found.value,
            found.margin,
            found.verdict,
            loc,
        );
    }
    // what follows the point of an output limit does not matter to it
    let until = match quantity {
        LimitQuantity::Output => state.nodes,
        _ => usize::MAX,
    };
    guessed(run, result, until, loc);
    let judged = LimitResult {
        loc,
        quantity,
        limit_w,
        value_w: found.value,
        margin_db: found.margin,
        uncertainty_db: found.u,
        exceeded: found.exceeded,
        verdict: found.verdict,
        safe_w: found.safe.is_finite().then_some(found.safe),
    };
    if quantity != LimitQuantity::Output {
        cold(run, reached, &judged, &what);
    }
    Some(judged)
}

/// The finding about a limit that is not met, or of which this cannot be told.
fn judged_words(
    run: &mut Run<'_, '_>,
    feed: &Feed<'_>,
    reached: &Reached<'_>,
    loc: Loc,
    what: &str,
    limit_w: f64,
    found: &Compared,
) {
    let Compared {
        value,
        margin,
        u,
        aside,
        safe,
        ..
    } = *found;
    let band = &run.point.band;
    let d = match (found.verdict, aside) {
        (Verdict::Yes, _) => return,
        (Verdict::No, _) => Diagnostic::new(
            &codes::LIMIT_NOT_MET,
            loc,
            format!(
                "{what} on {band} is {}, {} over the limit of {}; the uncertainty is {}.",
                power(value),
                db(-margin),
                power(limit_w),
                db(u)
            ),
        )
        .at("exceeded, beyond the uncertainty")
        .also(feed.loc, format!("{} here", power(feed.watts)))
        .help(format!(
            "At {} the limit is met with its uncertainty allowed for; at {} it is just reached.",
            power(safe),
            power(feed.watts * from_db(margin))
        )),
        (Verdict::CannotTell, Some(aside)) => Diagnostic::new(
            &codes::LIMIT_CANNOT_TELL,
            loc,
            format!(
                "{what} on {band} is {} where the fields of the branches add by the lengths of their feeds, under the limit of {}; in another direction up to {} is radiated: cannot tell.",
                power(value),
                power(limit_w),
                power(aside)
            ),
        )
        .at("met in one direction only")
        .help("Write `branches in phase` or `branches apart` in the chain, whichever the array is built for."),
        (Verdict::CannotTell, None) => Diagnostic::new(
            &codes::LIMIT_CANNOT_TELL,
            loc,
            format!(
                "{what} on {band} is {}, {} {} the limit of {}, but the uncertainty is {}: cannot tell.",
                power(value),
                db(margin.abs()),
                if margin >= 0.0 { "under" } else { "over" },
                power(limit_w),
                db(u)
            ),
        )
        .at("nearer than the uncertainty")
        .also(feed.loc, format!("{} here", power(feed.watts)))
        .help(largest(&reached.budget))
        .help(format!(
            "At {} it would be met with its uncertainty allowed for.",
            power(safe)
        )),
    };
    run.diags.push(d);
}

/// Points out the guessed figures a limit check rests on, among the first `until` nodes.
fn guessed(run: &mut Run<'_, '_>, result: &BandResult, until: usize, loc: Loc) {
    let guessed: Vec<Loc> = result
        .nodes
        .iter()
        .take(until)
        .filter(|n| n.basis == Basis::Guess)
        .map(|n| n.tag().unwrap_or(n.chain))
        .collect();
    let message = match guessed.len() {
        0 => return,
        1 => "One guessed figure takes part in this limit check.".to_owned(),
        n => format!("{n} guessed figures take part in this limit check."),
    };
    let d = Diagnostic::new(&codes::GUESS_IN_LIMIT, loc, message).at("rests on a guess");
    run.diags
        .push(guessed.iter().take(4).fold(d, |d, g| d.also(*g, "guessed")));
}

/// A value compared with a limit.
pub(crate) struct Compared {
    /// The value of the kind the limit counts, W.
    pub(crate) value: f64,
    /// Margin and expanded uncertainty, dB.
    pub(crate) margin: f64,
    pub(crate) u: f64,
    /// Probability that the limit is exceeded.
    pub(crate) exceeded: f64,
    pub(crate) verdict: Verdict,
    /// What is radiated in another direction, W, where the limit is met in one only.
    pub(crate) aside: Option<f64>,
    /// Transmitter setting that meets it with the uncertainty allowed for, W.
    pub(crate) safe: f64,
}

/// Compares a power with a limit: at a node (its number and forward power), or radiated. `factor`
/// makes the stated power one of the kind that the limit counts. None where the power is not known.
pub(crate) fn compare(
    run: &Run<'_, '_>,
    result: &BandResult,
    feed: &Feed<'_>,
    (at, forward_w): (usize, Option<f64>),
    quantity: LimitQuantity,
    limit_w: f64,
    factor: f64,
) -> Option<Compared> {
    let quantity_at = match quantity {
        LimitQuantity::Output => Quantity::Forward(at),
        LimitQuantity::Erp | LimitQuantity::Eirp => Quantity::Eirp,
    };
    let value = match quantity {
        LimitQuantity::Erp => result.erp_w(),
        LimitQuantity::Eirp => result.eirp_w,
        // what a wattmeter there would read
        LimitQuantity::Output => forward_w,
    }?;
    if !value.is_finite() {
        return None;
    }
    let value = value * factor;
    let margin = to_db(limit_w / value);
    let output = run.evaluated.as_ref().and_then(|e| e.output(quantity_at));
    let u = output.map_or(0.0, |o| 2.0 * o.u);
    // the limit as a level of that output
    let level = output.map_or(0.0, |o| o.mean) + margin;
    let above = |db: f64| output.map_or(1.0, |o| o.above(db));
    let exceeded = above(level);
    let mut verdict = upper_limit(margin, above, level);
    let elsewhere = run
        .in_phase
        .as_ref()
        .filter(|_| quantity != LimitQuantity::Output)
        .and_then(|e| e.output(Quantity::Eirp));
    // met in the direction where the lengths of the feeds are compared, and perhaps not in another
    let mut aside = None;
    if let (Verdict::Yes, Some(o)) = (verdict, elsewhere) {
        let more = output.map_or(0.0, |e| o.mean - e.mean);
        if upper_limit(margin - more, |db| o.above(db), level) != Verdict::Yes {
            verdict = Verdict::CannotTell;
            aside = Some(value * from_db(more));
        }
    }
    // what the output can come to beyond its mean
    let reach = output.map_or(u, |o| o.high - o.mean);
    let safe = feed.watts * from_db(margin - reach);
    Some(Compared {
        value,
        margin,
        u,
        exceeded,
        verdict,
        aside,
        safe,
    })
}

/// A limit or expectation on radiated power where nothing is known to radiate.
pub(super) fn no_gain(
    run: &mut Run<'_, '_>,
    result: &BandResult,
    quantity: LimitQuantity,
    loc: Loc,
) {
    let Some(end) = result
        .nodes
        .last()
        .filter(|n| matches!(n.kind, NodeKind::Part(PartKind::Antenna | PartKind::Load)))
    else {
        return;
    };
    let name = quantity.word().to_uppercase();
    let d = if end.kind.is(PartKind::Load) {
        Diagnostic::new(
            &codes::MISSING_VALUE,
            loc,
            format!(
                "The chain ends in a load, which radiates nothing; there is no {name} to compare."
            ),
        )
        .help("Limit the `output` instead, or end the chain in the antenna.")
    } else {
        Diagnostic::new(
            &codes::MISSING_VALUE,
            loc,
            format!("The antenna has no gain, so there is no {name} to compare."),
        )
        .help("Give it one: `antenna A1 5.2 dBi`.")
    };
    run.diags.push(
        d.at("not compared")
            .also(end.chain, format!("the {}", end.kind)),
    );
}

/// Says what was converted: EIRP from a gain over a dipole, one kind of power from another.
#[allow(clippy::too_many_arguments, reason = "one limit")]
fn converted<'m>(
    run: &mut Run<'m, '_>,
    feed: &Feed<'m>,
    reached: &Reached<'m>,
    quantity: LimitQuantity,
    want: Option<PowerKind>,
    factor: f64,
    value: f64,
    loc: Loc,
) {
    if quantity == LimitQuantity::Eirp && reached.dipole {
        run.diags.push(
            Diagnostic::new(
                &codes::LIMIT_CONVERTED,
                loc,
                format!(
                    "The limit is on EIRP and the gain is in dBd: ERP {} is EIRP {}, 2.15 dB more.",
                    power(value * from_db(-downlead_quantity::DIPOLE_DBI)),
                    power(value)
                ),
            )
            .at("compared as EIRP"),
        );
    }
    if (factor - 1.0).abs() > 1e-9 {
        let counts = want.unwrap_or(PowerKind::Pep).word();
        let has = feed.kind.map_or("", PowerKind::word);
        run.diags.push(
            Diagnostic::new(
                &codes::LIMIT_CONVERTED,
                loc,
                format!(
                    "The limit counts {counts} power: {} {has} is {} {counts}.",
                    power(feed.watts),
                    power(feed.watts * factor)
                ),
            )
            .at(format!("compared as {counts} power"))
            .also(feed.figure.loc, "the power"),
        );
    }
}

/// Losses that are maxima make a radiated power look smaller than it may be.
fn low_edge(
    run: &mut Run<'_, '_>,
    result: &BandResult,
    what: &str,
    value: f64,
    margin: f64,
    verdict: Verdict,
    loc: Loc,
) {
    let maxima: Vec<(Loc, f64)> = result
        .nodes
        .iter()
        .filter(|n| {
            run.assumed
                .list
                .contains(&(Assumed::MaximumTaken, n.tag().unwrap_or(n.def)))
        })
        .map(|n| (n.tag().unwrap_or(n.chain), n.loss_db))
        .collect();
    let sum: f64 = maxima.iter().map(|m| m.1).sum();
    if sum <= 0.0 || !sum.is_finite() {
        return;
    }
    let mut d = Diagnostic::new(
        &codes::LOW_EDGE_USED,
        loc,
        format!(
            "{} {} in this limit check; if nothing were lost there, {what} on {} would be {} instead of {}.",
            if maxima.len() == 1 { "A loss that is a maximum".to_owned() } else { format!("{} losses that are maxima", maxima.len()) },
            if maxima.len() == 1 { format!("({}) takes part", db(sum)) } else { format!("({} together) take part", db(sum)) },
            run.point.band,
            power(value * from_db(sum)),
            power(value)
        ),
    )
    .at("the true loss may be lower")
    .help("For an upper limit the lowest credible loss counts: write a typical loss with its ±, or measure it.");
    if verdict == Verdict::Yes && sum > margin {
        d.severity = downlead_base::Severity::Warning;
    }
    for (l, _) in maxima.iter().take(4) {
        d = d.also(*l, "a maximum");
    }
    run.diags.push(d);
}
