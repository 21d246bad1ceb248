//! Instruments: their error at a reading, their calibration, their names.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::model::{Accuracy, Instrument, Name};
use downlead_station::{Env, nearest};

use crate::assume::Assumed;
use crate::bench::between_readings_db;
use crate::cause::Cause;
use crate::chain::{NodeState, Run};

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

/// The meter that set the transmitter is off by the same at a reading further on, and that much
/// cancels. What does not is how it departs from a straight scale, and its scatter, at both
/// readings: standard, dB; 0 for another meter, whose accuracy holds for a lone reading as it is.
pub(crate) fn beside_scale<'m>(
    run: &mut Run<'m, '_>,
    instrument: Option<&'m Instrument>,
    state: &NodeState<'m>,
) -> f64 {
    let Some(i) = instrument else { return 0.0 };
    let set_it = Cause::Instrument(&i.name.text);
    if !state.budget.terms.iter().any(|t| t.0 == set_it) {
        return 0.0;
    }
    if i.accuracy.is_some() && i.linearity.is_none() && i.repeatability.is_none() {
        run.assumed.add(Assumed::MeterScatter, i.name.loc);
    }
    between_readings_db(i)
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
