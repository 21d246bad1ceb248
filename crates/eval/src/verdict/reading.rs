//! Readings of power and SWR against what the text lets expect.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::mismatch::gamma_from_swr;
use downlead_quantity::{Measure, db, decibel_signed, from_db, number, power, to_db};
use downlead_station::Env;
use downlead_station::model::{Accuracy, Instrument, Meta, Read, ReadPower};

use super::largest::largest;
use super::newest::newest_before;
use super::reflection::{reflected_reading, reflection};
use super::rule::{SMALLEST_FAULT_DB, agreement};
use super::same_meter::beside_scale;
use crate::assume::Assumed;
use crate::cause::{Budget, Cause};
use crate::certificate;
use crate::chain::{NodeState, Run};
use crate::instrument::{instrument_db, lapsed};
use crate::result::{BandResult, ReadingResult, Verdict};

/// Says that a reading is older than a part before it.
fn stale(run: &mut Run<'_, '_>, result: &BandResult, loc: Loc, date: &str, state: &NodeState<'_>) {
    let Some(p) = newest_before(run, result, state).filter(|p| p.is_after(date)) else {
        return;
    };
    run.diags.push(
        Diagnostic::new(
            &codes::EVIDENCE_STALE,
            loc,
            format!(
                "This reading is of {date}; `{}` has been there since {}.",
                p.tag.text, p.since
            ),
        )
        .at("older than a part before it")
        .also(p.tag.loc, "the part")
        .help("Read again; what was read before the change says how the station was."),
    );
}

/// The factor that corrects a reading of power, and the uncertainty of its instrument there, dB.
pub(crate) fn corrected(
    m: &Measure,
    meta: &Meta,
    instrument: Option<&Instrument>,
    env: &Env,
    hz: f64,
) -> (f64, f64) {
    instrument.map_or((1.0, 0.0), |i| {
        certificate::read(i, env, meta.date.as_deref(), (hz, m.value))
    })
}

/// Contributions to the difference between a reading of power and what the text says; of the
/// instrument with its uncertainty there, dB.
pub(crate) fn power_budget<'m>(
    (which, m): (ReadPower, &Measure),
    own_tolerance: bool,
    meta: &'m Meta,
    loc: Loc,
    instrument: Option<(&'m Instrument, f64)>,
    state: &NodeState<'m>,
) -> Budget<'m> {
    let mut b = match which {
        ReadPower::Net => state.net.clone(),
        _ => state.forward.clone(),
    };
    let (own, cause) = match (own_tolerance, instrument) {
        (true, _) => (
            m.u,
            meta.instrument
                .as_ref()
                .map_or(Cause::Power(loc), |n| Cause::Instrument(&n.text)),
        ),
        (false, Some((i, u_db))) => (u_db, Cause::Instrument(&i.name.text)),
        (false, None) => (0.0, Cause::Power(loc)),
    };
    // a meter that reads high does so at the transmitter and here: what it errs by cancels
    b.add(cause, -own);
    b
}

/// The size of the reflection that a reading says, with the half-width of its ±. None of a power
/// that says nothing of it.
pub(crate) fn read_reflection(read: &Read, state: &NodeState<'_>) -> Option<(f64, f64)> {
    match read {
        Read::Swr(m) => {
            let g = gamma_from_swr(m.value);
            // half-width of a rectangular ±, in the reflection
            Some((g, gamma_from_swr(m.value + libm::sqrt(3.0) * m.u) - g))
        }
        Read::Power(ReadPower::Reflected, m) => {
            let g = libm::sqrt(m.value / state.forward_w?);
            // a power off by u dB is a reflection coefficient off by half of it
            Some((g, g * (from_db(0.5 * libm::sqrt(3.0) * m.u) - 1.0)))
        }
        Read::Power(..) => None,
    }
}

pub(super) fn reading<'m>(
    run: &mut Run<'m, '_>,
    result: &BandResult,
    loc: Loc,
    read: &'m Read,
    own_tolerance: bool,
    meta: &'m Meta,
    state: &NodeState<'m>,
) -> Option<ReadingResult> {
    let env = run.cx.env;
    let instrument = meta.instrument.as_ref();
    let instrument = instrument.and_then(|n| env.instrument(&n.text));
    incomplete(run, loc, meta);
    if let Some(date) = &meta.date {
        if let Some(i) = instrument {
            lapsed(i, date, loc, &mut run.diags);
        }
        stale(run, result, loc, date, state);
    }
    if instrument.is_some_and(|i| outside_band(run, loc, i)) {
        return None;
    }
    if meta.instrument.is_some() && instrument.is_none_or(|i| i.broken) && !own_tolerance {
        // its uncertainty is not known, so it can neither agree nor differ
        return None;
    }
    match read {
        Read::Power(ReadPower::Reflected, m) => reflected_reading(run, loc, (read, m), state),
        Read::Power(which, m) => power_reading(
            run,
            loc,
            (*which, m),
            own_tolerance,
            meta,
            instrument,
            state,
        ),
        Read::Swr(m) => {
            let swr = state.swr?;
            let (g, u) = read_reflection(read, state)?;
            if m.u == 0.0 {
                run.assumed.add(Assumed::ReadingExact, loc);
            }
            let words = format!(
                "SWR {} read, SWR {} expected",
                number(m.value, 2),
                number(swr, 2)
            );
            reflection(run, loc, None, (m.value, swr), (g, u), &words, state)
        }
    }
}

/// What is to be said of the certificate of a reading's instrument.
pub(super) fn certified(
    run: &mut Run<'_, '_>,
    loc: Loc,
    watts: Option<f64>,
    date: Option<&str>,
    i: &Instrument,
) {
    let (env, hz) = (run.cx.env, run.point.hz);
    certificate::findings(i, date, loc, env, &mut run.diags);
    if let Some(b) = certificate::bearing(i, date, &env.attachments)
        && let Some(w) = watts
        && b.certificate.at(hz, w).is_none()
    {
        run.diags
            .extend(certificate::outside(i, &b, (hz, w), 1, loc));
    }
}

/// Points out a reading without its date, instrument or reader.
fn incomplete(run: &mut Run<'_, '_>, loc: Loc, meta: &Meta) {
    let lacks: Vec<&str> = [
        (meta.date.is_none(), "date"),
        (meta.instrument.is_none(), "instrument"),
        (meta.person.is_none(), "person"),
    ]
    .into_iter()
    .filter_map(|(missing, what)| missing.then_some(what))
    .collect();
    if lacks.is_empty() {
        return;
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

/// Whether the frequency lies outside the instrument's band, which is pointed out.
fn outside_band(run: &mut Run<'_, '_>, loc: Loc, i: &Instrument) -> bool {
    let hz = run.point.hz;
    let Some((lo, hi)) = i.band.filter(|(lo, hi)| hz < *lo || hz > *hi) else {
        return false;
    };
    run.diags.push(
        Diagnostic::new(
            &codes::INSTRUMENT_OUTSIDE_BAND,
            loc,
            format!(
                "`{}` is good from {} to {}; {} lies outside.",
                i.name.text,
                downlead_quantity::frequency(lo),
                downlead_quantity::frequency(hi),
                downlead_quantity::frequency(hz)
            ),
        )
        .at("outside the instrument's band")
        .also(i.name.loc, "the instrument"),
    );
    true
}

/// Compares a forward or net power with what the chain should give at this node.
fn power_reading<'m>(
    run: &mut Run<'m, '_>,
    loc: Loc,
    (which, m): (ReadPower, &'m Measure),
    own_tolerance: bool,
    meta: &'m Meta,
    instrument: Option<&'m Instrument>,
    state: &NodeState<'m>,
) -> Option<ReadingResult> {
    let expected = match which {
        ReadPower::Net => state.net_w?,
        _ => state.forward_w?,
    };
    if let Some(i) = instrument {
        on_scale(run, loc, m.value, i);
    } else if !own_tolerance {
        run.assumed.add(Assumed::ReadingExact, loc);
    }
    let hz = run.point.hz;
    let (factor, u_db) = corrected(m, meta, instrument, run.cx.env, hz);
    if let Some(i) = instrument {
        certified(run, loc, Some(m.value), meta.date.as_deref(), i);
    }
    let with = instrument.map(|i| (i, u_db));
    let b = power_budget((which, m), own_tolerance, meta, loc, with, state);
    let u = 2.0 * libm::hypot(b.standard(), beside_scale(run, instrument, state));
    let d = to_db(factor * m.value / expected);
    let smallest = state.loss_db.unwrap_or(0.0).max(SMALLEST_FAULT_DB);
    let unnamed = instrument.is_none() && !own_tolerance;
    let verdict = match agreement(d, u, smallest) {
        // of a meter that is not known it is not known how far off it may be
        Verdict::No if unnamed => {
            return Some(unknown_meter(run, loc, (which, m.value), expected, (d, u)));
        }
        v => v,
    };
    let of = match factor == 1.0 {
        true => String::new(),
        false => format!(" and {} corrected", power(factor * m.value)),
    };
    let words = format!(
        "{} read{of}, {} expected: {} with an uncertainty of {}",
        power(m.value),
        power(expected),
        decibel_signed(d),
        db(u)
    );
    match verdict {
        Verdict::No => run.diags.push(
            Diagnostic::new(
                &codes::READING_CONTRADICTS,
                loc,
                format!("On {}: {words}.", run.point.band),
            )
            .at("differs beyond the uncertainty")
            .help(if super::is_thousand(d) {
                "The two differ by a factor of 1000: is it mW, W or kW?"
            } else if d < 0.0 {
                "Something before this point loses more than the text says, or the transmitter gives less."
            } else {
                "Something before this point loses less than the text says, or the transmitter gives more."
            }),
        ),
        Verdict::CannotTell => run.diags.push(
            Diagnostic::new(
                &codes::READING_CANNOT_TELL,
                loc,
                format!(
                    "On {}: {words}; the meter could not have told.",
                    run.point.band
                ),
            )
            .at("cannot tell")
            .help(format!(
                "The uncertainty would have to be below {}.",
                db(0.5 * smallest)
            ))
            .help(largest(&b)),
        ),
        Verdict::Yes => {}
    }
    Some(ReadingResult {
        loc,
        power: Some(which),
        read: m.value,
        expected,
        difference_db: d,
        uncertainty_db: u,
        verdict,
    })
}

/// A reading that differs, with neither an instrument nor a ±: it contradicts nothing.
fn unknown_meter(
    run: &mut Run<'_, '_>,
    loc: Loc,
    (which, read): (ReadPower, f64),
    expected: f64,
    (d, u): (f64, f64),
) -> ReadingResult {
    let mut found = Diagnostic::new(
        &codes::READING_CANNOT_TELL,
        loc,
        format!(
            "On {}: {} read, {} expected: {}; the reading has neither an instrument nor a ±.",
            run.point.band,
            power(read),
            power(expected),
            decibel_signed(d)
        ),
    )
    .at("cannot tell: how good is the meter?")
    .help("Name the instrument, `with W1`, or state the uncertainty: `38 W ± 5 %`.");
    if super::is_thousand(d) {
        found = found.help("The two differ by a factor of 1000: is it mW, W or kW?");
    }
    run.diags.push(found);
    ReadingResult {
        loc,
        power: Some(which),
        read,
        expected,
        difference_db: d,
        uncertainty_db: u,
        verdict: Verdict::CannotTell,
    }
}

/// Points out a power beyond the instrument's full scale, or so low on it that its error is large.
fn on_scale(run: &mut Run<'_, '_>, loc: Loc, watts: f64, i: &Instrument) {
    let Some(scale) = i.scale_w else { return };
    if watts > scale {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_IMPOSSIBLE,
                loc,
                format!(
                    "{} is more than the instrument's full scale of {}.",
                    power(watts),
                    power(scale)
                ),
            )
            .at("off the scale"),
        );
    } else if watts < 0.25 * scale && matches!(i.accuracy, Some(Accuracy::OfFullScale(_))) {
        run.diags.push(
            Diagnostic::new(
                &codes::READING_LOW_ON_SCALE,
                loc,
                format!(
                    "{} on the {} range: the meter's error there is {} (k = 2).",
                    power(watts),
                    power(scale),
                    db(2.0 * instrument_db(i, watts))
                ),
            )
            .at("lowest quarter of the scale")
            .help("Use a lower range."),
        );
    }
}
