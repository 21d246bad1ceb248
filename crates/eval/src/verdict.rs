//! Limits, readings and expectations: three-way verdicts.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_physics::mismatch::{gamma_from_swr, return_loss, swr_from_gamma};
use downlead_physics::power::{PowerKind as P, convert, from_pep};
use downlead_quantity::{DB_PER_RELATIVE, db, decibel_signed, from_db, number, power, to_db};
use downlead_station::model::{
    Accuracy, Basis, Expect, Instrument, LimitQuantity, Meta, Name, Node, PowerKind, Read,
    ReadPower,
};
use downlead_station::{Env, nearest};

use crate::assume::Assumed;
use crate::cause::{Budget, Cause};
use crate::chain::{Feed, NodeState, Reached, Run, holds, physics_mode};
use crate::result::{BandResult, LimitResult, ReadingResult, Verdict};

/// Two conventions of the dipole's gain in law differ by this much (2.14, 2.1484, 2.15 dB); no
/// limit is called exceeded inside it.
const CONVENTION_DB: f64 = 0.02;

/// The smallest fault in dB a reading should be able to show (common practice).
pub(crate) const SMALLEST_FAULT_DB: f64 = 1.0;

/// The verdict on an upper limit: the margin must exceed the doubt.
pub(crate) fn upper_limit(margin_db: f64, u_db: f64) -> Verdict {
    if margin_db >= u_db && margin_db >= 0.0 {
        Verdict::Yes
    } else if margin_db < -u_db.max(CONVENTION_DB) {
        Verdict::No
    } else {
        Verdict::CannotTell
    }
}

/// The verdict on a reading: `differs` beyond the doubt; `cannot-tell` where the doubt is more
/// than half of what the reading is to show.
pub(crate) fn agreement(difference_db: f64, u_db: f64, to_show_db: f64) -> Verdict {
    if difference_db.abs() > u_db {
        Verdict::No
    } else if u_db > 0.5 * to_show_db {
        Verdict::CannotTell
    } else {
        Verdict::Yes
    }
}

/// Standard uncertainty of an instrument at a reading, dB.
pub(crate) fn instrument_db(i: &Instrument, watts: f64) -> f64 {
    let a = match i.accuracy {
        Some(Accuracy::OfReading(u)) => DB_PER_RELATIVE * u,
        Some(Accuracy::OfFullScale(u)) => DB_PER_RELATIVE * u * i.scale_w.unwrap_or(watts) / watts,
        Some(Accuracy::Decibel(u)) => u,
        None => 0.0,
    };
    // half a step, rectangular
    let r = i
        .resolution_w
        .map_or(0.0, |r| DB_PER_RELATIVE * 0.5 * r / watts / libm::sqrt(3.0));
    libm::hypot(a, r)
}

/// Says that a reading is older than a part in front of it.
fn stale(run: &mut Run<'_, '_>, result: &BandResult, loc: Loc, date: &str, state: &NodeState<'_>) {
    let before: Vec<Loc> = result
        .nodes
        .iter()
        .take(state.nodes)
        .filter_map(|n| n.tag)
        .collect();
    let parts = run.cx.station.map_or(&[][..], |s| &s.parts);
    let newer = parts.iter().find(|p| {
        let since = p.meta.since.as_deref();
        p.tag.as_ref().is_some_and(|t| before.contains(&t.loc))
            && since.is_some_and(|s| {
                let n = s.len().min(date.len());
                date.get(..n) < s.get(..n)
            })
    });
    if let Some((p, t)) = newer.and_then(|p| Some((p, p.tag.as_ref()?))) {
        run.diags.push(
            Diagnostic::new(
                &codes::EVIDENCE_STALE,
                loc,
                format!(
                    "This reading is of {date}; `{}` has been there since {}.",
                    t.text,
                    p.meta.since.as_deref().unwrap_or("later")
                ),
            )
            .at("older than a part before it")
            .also(t.loc, "the part")
            .help("Read again; what was read before the change says how the station was."),
        );
    }
}

/// Says that an instrument's calibration was due before the day it was used. Dates are written
/// year first, so they compare as text; of two that differ in detail, the common part counts.
pub(crate) fn lapsed(i: &Instrument, date: &str, loc: Loc, out: &mut Vec<Diagnostic>) {
    let Some(due) = &i.due else { return };
    let n = due.len().min(date.len());
    if date.get(..n) <= due.get(..n) {
        return;
    }
    out.push(
        Diagnostic::new(
            &codes::CALIBRATION_LAPSED,
            loc,
            format!(
                "The calibration of `{}` was due on {due}; it was used on {date}.",
                i.name.text
            ),
        )
        .at("after the calibration was due")
        .also(i.name.loc, "the instrument")
        .help("Have it calibrated, or widen its accuracy to what it may have drifted since."),
    );
}

pub(crate) fn unknown_instrument(n: &Name, env: &Env) -> Diagnostic {
    let d = Diagnostic::new(
        &codes::UNKNOWN_INSTRUMENT,
        n.loc,
        format!("Instrument `{}` is not defined.", n.text),
    )
    .at("not defined");
    match nearest(&n.text, env.instruments.keys().map(AsRef::as_ref)) {
        Some(near) => {
            d.help(format!("Did you mean `{near}`?"))
                .fix(format!("write `{near}`"), n.loc, near)
        }
        None => d.help(format!(
            "Define it at the left margin: `instrument {} {{ accuracy 5 % of reading }}`.",
            n.text
        )),
    }
}

/// Mean power while keyed over the stated power.
pub(crate) fn mean_factor(f: &Feed<'_>) -> Option<f64> {
    if f.kind == Some(PowerKind::Mean) {
        return Some(1.0);
    }
    if let Some(d) = f.data.duty {
        return Some(d);
    }
    let mode = physics_mode(f.data.mode?);
    convert(1.0, mode, kind(f.kind.unwrap_or(PowerKind::Pep)), P::Mean)
}

/// Peak envelope power over the stated power.
pub(crate) fn pep_factor(f: &Feed<'_>) -> Option<f64> {
    match (f.kind, f.data.mode) {
        (Some(PowerKind::Pep) | None, _) => Some(1.0),
        (Some(k), Some(m)) => convert(1.0, physics_mode(m), kind(k), P::Pep),
        (Some(_), None) => None,
    }
}

fn kind(k: PowerKind) -> P {
    match k {
        PowerKind::Carrier => P::Carrier,
        PowerKind::Pep => P::Pep,
        PowerKind::Mean => P::Mean,
    }
}

/// Judges the statements at the nodes.
pub(crate) fn judge<'m>(
    run: &mut Run<'m, '_>,
    result: &mut BandResult,
    feed: Option<&Feed<'m>>,
    reached: &Reached<'m>,
) {
    let states = std::mem::take(&mut run.states);
    let mut limits = Vec::new();
    let mut readings = Vec::new();
    let mut logs = Vec::new();
    for (loc, node, state) in &states {
        let on = match node {
            Node::Read { on, .. }
            | Node::Expect { on, .. }
            | Node::Limit { on, .. }
            | Node::Log { on, .. } => on,
        };
        if !holds(on, run.point, run.cx.env) {
            continue;
        }
        match node {
            Node::Limit {
                quantity,
                watts,
                kind,
                ..
            } => {
                limits.extend(limit(
                    run, result, feed, reached, state, *loc, *quantity, *watts, *kind,
                ));
            }
            Node::Read {
                read,
                own_tolerance,
                meta,
                ..
            } if feed.is_some() => {
                readings.extend(reading(
                    run,
                    result,
                    *loc,
                    read,
                    *own_tolerance,
                    meta,
                    state,
                ));
            }
            Node::Log {
                file, instrument, ..
            } if feed.is_some() => {
                logs.extend(crate::log::judge(
                    run,
                    result,
                    *loc,
                    file,
                    instrument.as_ref(),
                    state,
                ));
            }
            Node::Expect { expect, .. } if feed.is_some() => {
                expectation(run, result, *loc, expect, state)
            }
            _ => {}
        }
    }
    result.limits = limits.into();
    result.readings = readings.into();
    result.logs = logs.into();
}

/// Factor from the stated power to the kind a limit counts; none with a diagnostic if unknown.
fn kind_factor<'m>(
    run: &mut Run<'m, '_>,
    f: &Feed<'m>,
    want: Option<PowerKind>,
    loc: Loc,
) -> Option<f64> {
    let Some(want) = want else {
        // a limit that says no kind counts what licences usually do: the peak envelope
        let factor = pep_factor(f);
        let who = f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc);
        if f.kind.is_none() {
            run.assumed.add(Assumed::PowerKind, who);
        }
        if factor != Some(1.0) {
            run.assumed.add(Assumed::LimitPep, loc);
        }
        return factor.or(Some(1.0));
    };
    if f.kind == Some(want) {
        return Some(1.0);
    }
    if want == PowerKind::Mean
        && let Some(m) = mean_factor(f)
    {
        return Some(m);
    }
    let mode = f.data.mode.map(physics_mode);
    if let (Some(have), Some(m)) = (f.kind, mode)
        && let Some(x) = convert(1.0, m, kind(have), kind(want))
    {
        return Some(x);
    }
    if f.kind.is_none()
        && let Some(m) = mode
    {
        // one envelope: all kinds are equal
        if from_pep(m, P::Carrier) == Some(1.0) && from_pep(m, P::Mean) == Some(1.0) {
            run.assumed.add(
                Assumed::PowerKind,
                f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
            );
            return Some(1.0);
        }
    }
    let end = Loc::new(
        f.figure.loc.item,
        Span::new(f.figure.loc.span.end, f.figure.loc.span.end),
    );
    if let Some(have) = f.kind {
        run.diags.push(
            Diagnostic::new(
                &codes::POWER_KIND_MISSING,
                f.figure.loc,
                format!("The limit counts {} power; {} {} cannot be turned into it without the mode.", want.word(), power(f.watts), have.word()),
            )
            .at("which mode?")
            .also(loc, "the limit")
            .help("Add the mode, `fm`, `data`, `cw`, `ssb`, `ssb-processed` or `am`, or the share as `duty 35 %`."),
        );
        return None;
    }
    run.diags.push(
        Diagnostic::new(
            &codes::POWER_KIND_MISSING,
            f.figure.loc,
            format!("The limit counts {} power; {} does not say what it is.", want.word(), power(f.watts)),
        )
        .at("carrier, pep or mean?")
        .also(loc, "the limit")
        .help("For speech on single sideband the mean is about a fifth of the peak; add the mode too.")
        .fix("write `carrier`", end, " carrier")
        .fix("write `pep`", end, " pep")
        .fix("write `mean`", end, " mean"),
    );
    None
}

#[allow(clippy::too_many_arguments, reason = "one limit")]
fn limit<'m>(
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
    let radiated = match quantity {
        LimitQuantity::Erp => result.erp_w(),
        LimitQuantity::Eirp => result.eirp_w,
        LimitQuantity::Output => None,
    };
    let (value, u) = match (quantity, radiated) {
        // what a wattmeter there would read
        (LimitQuantity::Output, _) => (state.forward_w, state.budget.expanded()),
        _ if !result.complete => return None,
        (_, Some(w)) => (w, reached.budget.expanded()),
        (_, None) => {
            no_gain(run, result, quantity, loc);
            return None;
        }
    };
    if !value.is_finite() {
        return None;
    }
    let value = value * factor;
    let margin = to_db(limit_w / value);
    let verdict = upper_limit(margin, u);
    let safe = feed.watts * from_db(margin - u);
    let what = quantity.word().to_uppercase();
    let what = if quantity == LimitQuantity::Output {
        "The power here".to_owned()
    } else {
        what
    };
    let band = &run.point.band;
    match verdict {
        Verdict::Yes => {}
        Verdict::No => run.diags.push(
            Diagnostic::new(
                &codes::LIMIT_NOT_MET,
                loc,
                format!(
                    "{what} on {band} is {}, {} over the limit of {}; the doubt is {}.",
                    power(value),
                    db(-margin),
                    power(limit_w),
                    db(u)
                ),
            )
            .at("exceeded, beyond doubt")
            .also(feed.loc, format!("{} here", power(feed.watts)))
            .help(format!("At {} the limit is met with the doubt allowed for; at {} it is just reached.", power(safe), power(feed.watts * from_db(margin)))),
        ),
        Verdict::CannotTell => run.diags.push(
            Diagnostic::new(
                &codes::LIMIT_CANNOT_TELL,
                loc,
                format!(
                    "{what} on {band} is {}, {} {} the limit of {}, but the doubt is {}: cannot tell.",
                    power(value),
                    db(margin.abs()),
                    if margin >= 0.0 { "under" } else { "over" },
                    power(limit_w),
                    db(u)
                ),
            )
            .at("nearer than the doubt")
            .also(feed.loc, format!("{} here", power(feed.watts)))
            .help(largest(&reached.budget, run))
            .help(format!("At {} it would be met beyond doubt.", power(safe))),
        ),
    }
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
    converted(run, feed, reached, quantity, want, factor, value, loc);
    if quantity != LimitQuantity::Output {
        low_edge(run, result, &what, value, margin, verdict, loc);
    }
    // behind the point of an output limit nothing matters to it
    let until = if quantity == LimitQuantity::Output {
        state.nodes
    } else {
        usize::MAX
    };
    let guessed: Vec<Loc> = result
        .nodes
        .iter()
        .take(until)
        .filter(|n| n.basis == Basis::Guess)
        .map(|n| n.tag.unwrap_or(n.chain))
        .collect();
    if let Some(first) = guessed.first() {
        let mut d = Diagnostic::new(
            &codes::GUESS_IN_LIMIT,
            loc,
            format!(
                "{} guessed figure{} in this limit check.",
                if guessed.len() == 1 {
                    "One".to_owned()
                } else {
                    guessed.len().to_string()
                },
                if guessed.len() == 1 {
                    " takes part"
                } else {
                    "s take part"
                }
            ),
        )
        .at("rests on a guess");
        for g in guessed.iter().take(4) {
            d = d.also(*g, "guessed");
        }
        let _ = first;
        run.diags.push(d);
    }
    Some(LimitResult {
        loc,
        quantity,
        limit_w,
        value_w: value,
        margin_db: margin,
        uncertainty_db: u,
        verdict,
        safe_w: safe.is_finite().then_some(safe),
    })
}

/// A limit or expectation on radiated power where nothing is known to radiate.
fn no_gain(run: &mut Run<'_, '_>, result: &BandResult, quantity: LimitQuantity, loc: Loc) {
    let Some(end) = result
        .nodes
        .last()
        .filter(|n| matches!(n.kind, "antenna" | "load"))
    else {
        return;
    };
    let name = quantity.word().to_uppercase();
    let d = if end.kind == "load" {
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
                .contains(&(Assumed::MaximumTaken, n.tag.unwrap_or(n.def)))
        })
        .map(|n| (n.tag.unwrap_or(n.chain), n.loss_db))
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

/// A statement at a node of a receive chain: there is no transmitter, so only the loss is known.
pub(crate) fn receive_statement(
    run: &mut Run<'_, '_>,
    loc: Loc,
    node: &Node,
    loss_db: f64,
    complete: bool,
) {
    let what = match node {
        Node::Expect {
            expect: Expect::Loss(l, half),
            on,
        } => {
            if complete && holds(on, run.point, run.cx.env) && (loss_db - l).abs() > half + 1e-9 {
                run.diags.push(missed(
                    &run.point.band,
                    loc,
                    &db(loss_db),
                    &format!("{} ± {}", db(*l), db(*half)),
                ));
            }
            return;
        }
        Node::Expect { .. } => "This expectation",
        Node::Log { .. } => "a log of readings",
        Node::Read { .. } => "A reading",
        Node::Limit { .. } => "A limit",
    };
    run.diags.push(
        Diagnostic::new(
            &codes::MISPLACED_STATEMENT,
            loc,
            format!("{what} needs a transmitter, and this is a receive chain."),
        )
        .at("not compared")
        .help("In a receive chain only `expect loss` can be compared."),
    );
}

fn missed(band: &str, loc: Loc, got: &str, want: &str) -> Diagnostic {
    Diagnostic::new(
        &codes::EXPECTATION_MISSED,
        loc,
        format!("On {band}: {want} is expected here and {got} computed."),
    )
    .at(format!("computed: {got}"))
}

/// What to improve first.
fn largest(b: &Budget<'_>, _run: &Run<'_, '_>) -> String {
    let total: f64 = b.terms.iter().map(|t| t.1 * t.1).sum();
    let Some(best) = b
        .terms
        .iter()
        .max_by(|x, y| x.1.abs().total_cmp(&y.1.abs()))
    else {
        return "No doubt is stated; the margin is exactly nothing.".to_owned();
    };
    let share = 100.0 * best.1 * best.1 / total;
    let what = match &best.0 {
        Cause::Power(_) => "the transmitter's power".to_owned(),
        Cause::Instrument(n) => format!("instrument {n}"),
        Cause::Cable(n) => format!("the loss table {n}"),
        Cause::Length(_) => "a length".to_owned(),
        Cause::Connector(n) => format!("the connectors of family {n}"),
        Cause::Device(_) => "a device's loss".to_owned(),
        Cause::Gain(_) => "the antenna's gain".to_owned(),
        Cause::Phases(_) => "reflections of unknown phase".to_owned(),
        Cause::Temperature(n) => format!("the temperature of {n}"),
        Cause::Added(_) => "the added loss".to_owned(),
    };
    format!("The largest share of the doubt ({share:.0} %) is {what}.")
}

fn reading<'m>(
    run: &mut Run<'m, '_>,
    result: &BandResult,
    loc: Loc,
    read: &'m Read,
    own_tolerance: bool,
    meta: &'m Meta,
    state: &NodeState<'m>,
) -> Option<ReadingResult> {
    let env = run.cx.env;
    let instrument = match &meta.instrument {
        Some(n) => match env.instrument(&n.text) {
            Some(i) => Some(i),
            None if env.is_broken(&n.text) => None,
            None => {
                run.diags.push(unknown_instrument(n, env));
                None
            }
        },
        None => None,
    };
    if meta.instrument.is_none() || meta.date.is_none() || meta.person.is_none() {
        let mut lacks = Vec::new();
        if meta.date.is_none() {
            lacks.push("date");
        }
        if meta.instrument.is_none() {
            lacks.push("instrument");
        }
        if meta.person.is_none() {
            lacks.push("person");
        }
        run.diags.push(
            Diagnostic::new(
                &codes::READING_INCOMPLETE,
                loc,
                format!("This reading has no {}.", lacks.join(", no ")),
            )
            .at("who read it, when and with what?")
            .help("Written for example `read 16.2 W forward, 2026-07-04 with W1 by QY2TEC`."),
        );
    }
    if let Some(date) = &meta.date {
        if let Some(i) = instrument {
            lapsed(i, date, loc, &mut run.diags);
        }
        stale(run, result, loc, date, state);
    }
    if let (Some(i), Some((lo, hi))) = (instrument, instrument.and_then(|i| i.band))
        && (run.point.hz < lo || run.point.hz > hi)
    {
        run.diags.push(
            Diagnostic::new(
                &codes::INSTRUMENT_OUTSIDE_BAND,
                loc,
                format!(
                    "`{}` is good from {} to {}; {} lies outside.",
                    i.name.text,
                    downlead_quantity::frequency(lo),
                    downlead_quantity::frequency(hi),
                    downlead_quantity::frequency(run.point.hz)
                ),
            )
            .at("outside the instrument's band")
            .also(i.name.loc, "the instrument"),
        );
        return None;
    }
    if meta.instrument.is_some() && instrument.is_none() && !own_tolerance {
        // its doubt is not known, so it can neither agree nor differ
        return None;
    }
    match read {
        Read::Power(which, m) => {
            let (expected, reflected) = match which {
                ReadPower::Forward => (state.forward_w, false),
                ReadPower::Net => (state.net_w, false),
                ReadPower::Reflected => (state.forward_w - state.net_w, true),
            };
            if reflected {
                return Some(reflected_reading(run, loc, m, expected, state));
            }
            if let Some(scale) = instrument.and_then(|i| i.scale_w) {
                if m.value > scale {
                    run.diags.push(
                        Diagnostic::new(
                            &codes::READING_IMPOSSIBLE,
                            loc,
                            format!(
                                "{} is more than the instrument's full scale of {}.",
                                power(m.value),
                                power(scale)
                            ),
                        )
                        .at("off the scale"),
                    );
                } else if m.value < 0.25 * scale
                    && matches!(
                        instrument.and_then(|i| i.accuracy),
                        Some(Accuracy::OfFullScale(_))
                    )
                {
                    let u = instrument.map_or(0.0, |i| 2.0 * instrument_db(i, m.value));
                    run.diags.push(
                        Diagnostic::new(
                            &codes::READING_LOW_ON_SCALE,
                            loc,
                            format!(
                                "{} on the {} range: the meter's error there is {} (k = 2).",
                                power(m.value),
                                power(scale),
                                db(u)
                            ),
                        )
                        .at("lowest quarter of the scale")
                        .help("Use a lower range."),
                    );
                }
            }
            let mut b = Budget::default();
            b.add_scaled(&state.budget, 1.0);
            let (own, cause) = match (own_tolerance, instrument) {
                (true, _) => (
                    m.u,
                    meta.instrument
                        .as_ref()
                        .map_or(Cause::Power(loc), |n| Cause::Instrument(&n.text)),
                ),
                (false, Some(i)) => (instrument_db(i, m.value), Cause::Instrument(&i.name.text)),
                (false, None) => {
                    run.assumed.add(Assumed::ReadingExact, loc);
                    (0.0, Cause::Power(loc))
                }
            };
            // loss lowers the power, so terms are signed: a meter that reads high does so at the
            // transmitter and here
            b.add(cause, own);
            let u = b.expanded();
            let d = to_db(m.value / expected);
            let verdict = agreement(d, u, state.loss_db.max(SMALLEST_FAULT_DB));
            let words = format!(
                "{} read, {} expected: {} with a doubt of {}",
                power(m.value),
                power(expected),
                decibel_signed(d),
                db(u)
            );
            match verdict {
                Verdict::No => run.diags.push(
                    Diagnostic::new(&codes::READING_CONTRADICTS, loc, format!("On {}: {words}.", run.point.band))
                        .at("differs beyond doubt")
                        .help(if (d.abs() - 30.0).abs() < 1.5 {
                            "The two differ by a factor of 1000: is it mW, W or kW?"
                        } else if d < 0.0 {
                            "Something before this point loses more than the text says, or the transmitter gives less."
                        } else {
                            "Something before this point loses less than the text says, or the transmitter gives more."
                        }),
                ),
                Verdict::CannotTell => run.diags.push(
                    Diagnostic::new(&codes::READING_CANNOT_TELL, loc, format!("On {}: {words}; the meter could not have told.", run.point.band))
                        .at("cannot tell")
                        .help(format!("The doubt would have to be below {}.", db(0.5 * state.loss_db.max(SMALLEST_FAULT_DB))))
                        .help(largest(&b, run)),
                ),
                Verdict::Yes => {}
            }
            Some(ReadingResult {
                loc,
                power: Some(*which),
                read: m.value,
                expected,
                difference_db: d,
                uncertainty_db: u,
                verdict,
            })
        }
        Read::Swr(m) => {
            let g = gamma_from_swr(m.value);
            // half-width of a rectangular ±, in the reflection
            let u = gamma_from_swr(m.value + libm::sqrt(3.0) * m.u) - g;
            if m.u == 0.0 {
                run.assumed.add(Assumed::ReadingExact, loc);
            }
            let words = format!(
                "SWR {} read, SWR {} expected",
                number(m.value, 2),
                number(state.swr, 2)
            );
            Some(reflection(
                run,
                loc,
                None,
                (m.value, state.swr),
                (g, u),
                &words,
                state,
            ))
        }
    }
}

/// By how much a through-line meter may misread a reflection coefficient: a directivity of 25 dB
/// (common practice for such meters).
const METER_GAMMA: f64 = 0.056_234_132_519_034_91;

fn reflected_reading<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    m: &downlead_quantity::Measure,
    expected: f64,
    state: &NodeState<'m>,
) -> ReadingResult {
    let most = state.forward_w * from_db(-2.0 * state.ahead_db.max(0.0));
    if m.value > most * 1.001 {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!(
                    "{} reflected cannot be: {} goes forward here and at most {} of it can come back through {} each way.",
                    power(m.value),
                    power(state.forward_w),
                    power(most),
                    db(state.ahead_db.max(0.0))
                ),
            )
            .at("more than is there"),
        );
        return undecided(loc, Some(ReadPower::Reflected), m.value, expected);
    }
    let g = libm::sqrt(m.value / state.forward_w);
    // a power off by u dB is a reflection coefficient off by half of it
    let u = g * (from_db(0.5 * libm::sqrt(3.0) * m.u) - 1.0);
    let words = format!(
        "{} reflected read, {} expected",
        power(m.value),
        power(expected)
    );
    reflection(
        run,
        loc,
        Some(ReadPower::Reflected),
        (m.value, expected),
        (g, u),
        &words,
        state,
    )
}

fn undecided(loc: Loc, power: Option<ReadPower>, read: f64, expected: f64) -> ReadingResult {
    ReadingResult {
        loc,
        power,
        read,
        expected,
        difference_db: 0.0,
        uncertainty_db: 0.0,
        verdict: Verdict::CannotTell,
    }
}

/// Compares a reflection read (`g` with its half-width) with that of the text.
fn reflection<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    power: Option<ReadPower>,
    (read, expected): (f64, f64),
    (g, u): (f64, f64),
    words: &str,
    state: &NodeState<'m>,
) -> ReadingResult {
    let there = gamma_from_swr(state.swr);
    let ahead = state.ahead_db.max(0.0);
    // even a full reflection comes back weakened by the loss both ways
    let most = from_db(-ahead);
    if g > most + METER_GAMMA {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!(
                    "SWR {} cannot be read through {}: even an open end would give no more than {}.",
                    number(swr_from_gamma(g), 2),
                    db(ahead),
                    number(swr_from_gamma(most), 2)
                ),
            )
            .at("cannot be"),
        );
        return undecided(loc, power, read, expected);
    }
    // the text knows no reflection here: nothing to compare with
    let unknown = there < 1e-4;
    let doubt = METER_GAMMA + u + state.gamma_spread;
    let verdict = match (unknown, (g - there).abs() > doubt) {
        (true, _) => Verdict::CannotTell,
        (_, true) => Verdict::No,
        _ => Verdict::Yes,
    };
    // loss still ahead hides the antenna's SWR: what is read here is better than what is there
    let antenna = swr_from_gamma((g / most).min(0.99));
    if verdict != Verdict::Yes && ahead > 1.0 && antenna > 1.5 * swr_from_gamma(g) && antenna > 2.0
    {
        run.diags.push(
            Diagnostic::new(
                &codes::SWR_AT_SHACK,
                loc,
                format!(
                    "SWR {} read here through {} means about {} at the antenna.",
                    number(swr_from_gamma(g), 2),
                    db(ahead),
                    number(antenna, 1)
                ),
            )
            .at("what comes back goes through the loss twice"),
        );
    } else if verdict == Verdict::No {
        let mut d = Diagnostic::new(
            &codes::READING_CONTRADICTS,
            loc,
            format!("On {}: {words}.", run.point.band),
        )
        .at("differs by more than a meter's directivity")
        .help(if g < there {
            "More loss than the text says, or a better antenna, makes a reflection look smaller."
        } else {
            "The antenna or something before it reflects more than the text says."
        });
        d.severity = downlead_base::Severity::Warning;
        run.diags.push(d);
    }
    if unknown {
        return undecided(loc, power, read, expected);
    }
    ReadingResult {
        loc,
        power,
        read,
        expected,
        difference_db: return_loss(g.max(1e-3)) - return_loss(there),
        uncertainty_db: return_loss(there) - return_loss((there + doubt).min(1.0)),
        verdict,
    }
}

fn expectation(
    run: &mut Run<'_, '_>,
    result: &BandResult,
    loc: Loc,
    e: &Expect,
    state: &NodeState<'_>,
) {
    let mut other = None;
    let (ok, got, want) = match *e {
        Expect::Power(w, half) => {
            let d = to_db(state.net_w / w);
            (
                d.abs() <= half + 1e-9,
                power(state.net_w),
                format!("{} ± {}", power(w), db(half)),
            )
        }
        Expect::Loss(l, half) => (
            (state.loss_db - l).abs() <= half + 1e-9,
            db(state.loss_db),
            format!("{} ± {}", db(l), db(half)),
        ),
        Expect::Swr(s, half) => (
            (state.swr - s).abs() <= half + 1e-9,
            format!("SWR {}", number(state.swr, 2)),
            format!("SWR {} ± {}", number(s, 2), number(half, 2)),
        ),
        Expect::Radiated(q, w, half) => {
            let v = if q == LimitQuantity::Eirp {
                result.eirp_w
            } else {
                result.erp_w()
            };
            let Some(v) = v else {
                if result.complete {
                    no_gain(run, result, q, loc);
                }
                return;
            };
            let name = q.word().to_uppercase();
            // 2.15 dB off: the other of the two was meant
            let (wrong, right) = if q == LimitQuantity::Eirp {
                (result.erp_w(), "ERP")
            } else {
                (result.eirp_w, "EIRP")
            };
            if wrong.is_some_and(|x| to_db(x / w).abs() < 0.05) {
                other = Some(format!(
                    "{} is the {right}; {name} is {}.",
                    power(w),
                    power(v)
                ));
            }
            (
                to_db(v / w).abs() <= half + 1e-9,
                format!("{name} {}", power(v)),
                format!("{name} {} ± {}", power(w), db(half)),
            )
        }
    };
    if !ok && result.complete {
        let mut d = missed(&run.point.band, loc, &got, &want);
        if let Some(o) = other {
            d = d.help(o);
        }
        run.diags.push(d);
    }
}
