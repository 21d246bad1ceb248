//! Instruments: their error at a reading, their calibration, their names.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::model::{Accuracy, Instrument, Name};
use downlead_station::{Env, nearest};

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
