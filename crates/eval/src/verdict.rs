//! Limits, readings and expectations: three-way verdicts.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_physics::mismatch::{gamma_from_swr, return_loss, swr_from_gamma};
use downlead_physics::power::{PowerKind as P, convert, from_pep};
use downlead_quantity::{DB_PER_RELATIVE, db, decibel_signed, from_db, number, power, to_db};
use downlead_station::model::{
    Accuracy, Basis, Expect, Instrument, LimitQuantity, Meta, Name, Node, PowerKind, Read, ReadPower,
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
const SMALLEST_FAULT_DB: f64 = 1.0;

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
    let r = i.resolution_w.map_or(0.0, |r| DB_PER_RELATIVE * 0.5 * r / watts / libm::sqrt(3.0));
    libm::hypot(a, r)
}

pub(crate) fn unknown_instrument(n: &Name, env: &Env) -> Diagnostic {
    let d = Diagnostic::new(&codes::UNKNOWN_INSTRUMENT, n.loc, format!("Instrument `{}` is not defined.", n.text)).at("not defined");
    match nearest(&n.text, env.instruments.keys().map(AsRef::as_ref)) {
        Some(near) => d.help(format!("Did you mean `{near}`?")).fix(format!("write `{near}`"), n.loc, near),
        None => d.help(format!("Define it at the left margin: `instrument {} {{ accuracy 5 % of reading }}`.", n.text)),
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
pub(crate) fn judge<'m>(run: &mut Run<'m, '_>, result: &mut BandResult, feed: Option<&Feed<'m>>, reached: &Reached<'m>) {
    let states = std::mem::take(&mut run.states);
    let mut limits = Vec::new();
    let mut readings = Vec::new();
    for (loc, node, state) in &states {
        let on = match node {
            Node::Read { on, .. } | Node::Expect { on, .. } | Node::Limit { on, .. } => on,
        };
        if !holds(on, run.point, run.cx.env) {
            continue;
        }
        match node {
            Node::Limit { quantity, watts, kind, .. } => {
                limits.extend(limit(run, result, feed, reached, *loc, *quantity, *watts, *kind));
            }
            Node::Read { read, own_tolerance, meta, .. } if feed.is_some() => {
                readings.extend(reading(run, *loc, read, *own_tolerance, meta, state));
            }
            Node::Expect { expect, .. } if feed.is_some() => expectation(run, result, *loc, expect, state),
            _ => {}
        }
    }
    result.limits = limits.into();
    result.readings = readings.into();
}

/// Factor from the stated power to the kind a limit counts; none with a diagnostic if unknown.
fn kind_factor<'m>(run: &mut Run<'m, '_>, f: &Feed<'m>, want: Option<PowerKind>, loc: Loc) -> Option<f64> {
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
    if want == PowerKind::Mean {
        if let Some(m) = mean_factor(f) {
            return Some(m);
        }
    }
    let mode = f.data.mode.map(physics_mode);
    if let (Some(have), Some(m)) = (f.kind, mode) {
        if let Some(x) = convert(1.0, m, kind(have), kind(want)) {
            return Some(x);
        }
    }
    if f.kind.is_none() {
        if let Some(m) = mode {
            // one envelope: all kinds are equal
            if from_pep(m, P::Carrier) == Some(1.0) && from_pep(m, P::Mean) == Some(1.0) {
                run.assumed.add(Assumed::PowerKind, f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc));
                return Some(1.0);
            }
        }
    }
    let end = Loc::new(f.figure.loc.item, Span::new(f.figure.loc.span.end, f.figure.loc.span.end));
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
    loc: Loc,
    quantity: LimitQuantity,
    limit_w: f64,
    want: Option<PowerKind>,
) -> Option<LimitResult> {
    let feed = feed?;
    let factor = kind_factor(run, feed, want, loc)?;
    let (value, u) = match quantity {
        LimitQuantity::Erp => (result.erp_w()?, reached.budget.expanded()),
        LimitQuantity::Eirp => (result.eirp_w?, reached.budget.expanded()),
        LimitQuantity::Output => {
            let first = result.nodes.first()?;
            (feed.watts, first.uncertainty_db)
        }
    };
    if !result.complete && quantity != LimitQuantity::Output {
        return None;
    }
    let value = value * factor;
    let margin = to_db(limit_w / value);
    let verdict = upper_limit(margin, u);
    let safe = feed.watts * from_db(margin - u);
    let what = quantity.word().to_uppercase();
    let what = if quantity == LimitQuantity::Output { "The transmitter's output".to_owned() } else { what };
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
    let guessed: Vec<Loc> = result.nodes.iter().filter(|n| n.basis == Basis::Guess).map(|n| n.tag.unwrap_or(n.chain)).collect();
    if let Some(first) = guessed.first() {
        let mut d = Diagnostic::new(
            &codes::GUESS_IN_LIMIT,
            loc,
            format!("{} guessed figure{} in this limit check.", if guessed.len() == 1 { "One".to_owned() } else { guessed.len().to_string() }, if guessed.len() == 1 { " takes part" } else { "s take part" }),
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

/// What to improve first.
fn largest(b: &Budget<'_>, _run: &Run<'_, '_>) -> String {
    let total: f64 = b.terms.iter().map(|t| t.1 * t.1).sum();
    let Some(best) = b.terms.iter().max_by(|x, y| x.1.abs().total_cmp(&y.1.abs())) else {
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
            Diagnostic::new(&codes::READING_INCOMPLETE, loc, format!("This reading has no {}.", lacks.join(", no ")))
                .at("who read it, when and with what?")
                .help("Written for example `read 16.2 W forward, 2026-07-04 with W1 by QY2TEC`."),
        );
    }
    if let (Some(i), Some((lo, hi))) = (instrument, instrument.and_then(|i| i.band)) {
        if run.point.hz < lo || run.point.hz > hi {
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
    }
    match read {
        Read::Power(which, m) => {
            let (expected, reflected) = match which {
                ReadPower::Forward => (state.forward_w, false),
                ReadPower::Net => (state.net_w, false),
                ReadPower::Reflected => (state.forward_w - state.net_w, true),
            };
            if reflected {
                return impossible_reflection(run, loc, m.value, state);
            }
            if let Some(scale) = instrument.and_then(|i| i.scale_w) {
                if m.value > scale {
                    run.diags.push(
                        Diagnostic::new(&codes::READING_IMPOSSIBLE, loc, format!("{} is more than the instrument's full scale of {}.", power(m.value), power(scale)))
                            .at("off the scale"),
                    );
                } else if m.value < 0.25 * scale && matches!(instrument.and_then(|i| i.accuracy), Some(Accuracy::OfFullScale(_))) {
                    let u = instrument.map_or(0.0, |i| 2.0 * instrument_db(i, m.value));
                    run.diags.push(
                        Diagnostic::new(
                            &codes::READING_LOW_ON_SCALE,
                            loc,
                            format!("{} on the {} range: the meter's error there is {} (k = 2).", power(m.value), power(scale), db(u)),
                        )
                        .at("lowest quarter of the scale")
                        .help("Use a lower range."),
                    );
                }
            }
            let mut b = Budget::default();
            b.add_scaled(&state.budget, 1.0);
            let (own, cause) = match (own_tolerance, instrument) {
                (true, _) => (m.u, meta.instrument.as_ref().map_or(Cause::Power(loc), |n| Cause::Instrument(&n.text))),
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
            let words = format!("{} read, {} expected: {} with a doubt of {}", power(m.value), power(expected), decibel_signed(d), db(u));
            match verdict {
                Verdict::No => run.diags.push(
                    Diagnostic::new(&codes::READING_CONTRADICTS, loc, format!("On {}: {words}.", run.point.band))
                        .at("differs beyond doubt")
                        .help(if d < 0.0 {
                            "Something before this point loses more than the text says, or the transmitter gives less."
                        } else {
                            "Something before this point loses less than the text says, or the transmitter gives more."
                        }),
                ),
                Verdict::CannotTell => run.diags.push(
                    Diagnostic::new(&codes::READING_CANNOT_TELL, loc, format!("On {}: {words}; the meter could not have told.", run.point.band))
                        .at("cannot tell"),
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
            let d = return_loss(gamma_from_swr(m.value)) - return_loss(gamma_from_swr(state.swr));
            swr_reading(run, loc, m.value, m.u, state, d)
        }
    }
}

fn impossible_reflection<'m>(run: &mut Run<'m, '_>, loc: Loc, read: f64, state: &NodeState<'m>) -> Option<ReadingResult> {
    if read > state.forward_w {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!("{} reflected cannot be: only {} goes forward here.", power(read), power(state.forward_w)),
            )
            .at("more than is there"),
        );
    }
    let expected = state.forward_w - state.net_w;
    let gamma = libm::sqrt((read / state.forward_w).clamp(0.0, 0.999_999));
    let d = return_loss(gamma) - return_loss(gamma_from_swr(state.swr));
    if expected > 0.0 {
        // the SWR of the text is nominal: a reflected power only tells it apart roughly
        return Some(ReadingResult {
            loc,
            power: Some(ReadPower::Reflected),
            read,
            expected,
            difference_db: d,
            uncertainty_db: f64::INFINITY.min(2.0 * DB_PER_RELATIVE),
            verdict: agreement(d, 2.0 * DB_PER_RELATIVE, f64::INFINITY),
        });
    }
    None
}

fn swr_reading<'m>(run: &mut Run<'m, '_>, loc: Loc, read: f64, u: f64, state: &NodeState<'m>, d: f64) -> Option<ReadingResult> {
    // loss still ahead hides the antenna's SWR: what is read here is better than what is there
    let ahead = run.nodes.last().map_or(0.0, |n| n.cumulative_db) - state.loss_db;
    let g = gamma_from_swr(read) * from_db(ahead);
    if ahead > 1.0 {
        if g < 1.0 {
            let there = swr_from_gamma(g);
            if there > 1.5 * read && there > 2.0 {
                run.diags.push(
                    Diagnostic::new(
                        &codes::SWR_AT_SHACK,
                        loc,
                        format!("SWR {} read here through {} means about {} at the antenna.", number(read, 2), db(ahead), number(there, 1)),
                    )
                    .at("read at the radio's end"),
                );
            }
        } else {
            run.diags.push(
                Diagnostic::new(
                    &codes::READING_IMPOSSIBLE,
                    loc,
                    format!("SWR {} cannot be read through {}: even an open end would give less.", number(read, 2), db(ahead)),
                )
                .at("cannot be"),
            );
        }
    }
    // doubt of the reading's own tolerance; the text's SWR is nominal
    let u_db = if u > 0.0 {
        let step = return_loss(gamma_from_swr((read - u).max(1.000_1))) - return_loss(gamma_from_swr(read + u));
        step.abs()
    } else {
        run.assumed.add(Assumed::ReadingExact, loc);
        0.0
    };
    let expected = state.swr;
    if expected <= 1.000_1 || read <= 1.000_1 {
        return Some(ReadingResult {
            loc,
            power: None,
            read,
            expected,
            difference_db: 0.0,
            uncertainty_db: u_db,
            verdict: Verdict::CannotTell,
        });
    }
    Some(ReadingResult { loc, power: None, read, expected, difference_db: d, uncertainty_db: u_db, verdict: Verdict::CannotTell })
}

fn expectation(run: &mut Run<'_, '_>, result: &BandResult, loc: Loc, e: &Expect, state: &NodeState<'_>) {
    let (ok, got, want) = match *e {
        Expect::Power(w, half) => {
            let d = to_db(state.net_w / w);
            (d.abs() <= half + 1e-9, power(state.net_w), format!("{} ± {}", power(w), db(half)))
        }
        Expect::Loss(l, half) => ((state.loss_db - l).abs() <= half + 1e-9, db(state.loss_db), format!("{} ± {}", db(l), db(half))),
        Expect::Swr(s, half) => (
            (state.swr - s).abs() <= half + 1e-9,
            format!("SWR {}", number(state.swr, 2)),
            format!("SWR {} ± {}", number(s, 2), number(half, 2)),
        ),
        Expect::Radiated(q, w, half) => {
            let v = if q == LimitQuantity::Eirp { result.eirp_w } else { result.erp_w() };
            let Some(v) = v else { return };
            let name = q.word().to_uppercase();
            (to_db(v / w).abs() <= half + 1e-9, format!("{name} {}", power(v)), format!("{name} {} ± {}", power(w), db(half)))
        }
    };
    if !ok && result.complete {
        run.diags.push(
            Diagnostic::new(&codes::EXPECTATION_MISSED, loc, format!("On {}: {want} is expected here and {got} computed.", run.point.band))
                .at(format!("computed: {got}")),
        );
    }
}
