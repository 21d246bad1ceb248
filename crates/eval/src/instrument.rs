//! Instruments: their errors at a reading and between readings, their calibration, their names.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::measure::Meter;
use downlead_physics::uncertainty::rectangular;
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::model::{Accuracy, Instrument};

use crate::assume::{Assumed, Assumptions};

/// What of a power meter's error does not cancel between two of its own readings, where it does
/// not say: half-width, relative (common practice).
const LINEARITY: f64 = 0.01;
/// Spread of one reading of a power meter, where it does not say: relative, 1 sigma (common
/// practice).
const REPEATABILITY: f64 = 0.006;

/// Standard uncertainty of an instrument at a reading, dB.
pub(crate) fn instrument_db(i: &Instrument, watts: f64) -> f64 {
    let a = match i.accuracy {
        Some(Accuracy::OfReading(u)) => DB_PER_RELATIVE * u,
        Some(Accuracy::OfFullScale(u)) => DB_PER_RELATIVE * u * i.scale_w.unwrap_or(watts) / watts,
        Some(Accuracy::Decibel(u)) => u,
        None => 0.0,
    };
    libm::hypot(a, resolution_db(i, watts))
}

/// Half a step of the display, rectangular: standard uncertainty at a reading, dB.
pub(crate) fn resolution_db(i: &Instrument, watts: f64) -> f64 {
    i.resolution_w
        .map_or(0.0, |r| DB_PER_RELATIVE * 0.5 * r / watts / libm::sqrt(3.0))
}

/// The certificate of an instrument that bears on a reading of that day, with the name of its file
/// and whether it held then.
#[must_use]
pub fn certificate<'e>(
    i: &'e Instrument,
    date: Option<&str>,
    env: &'e downlead_station::Env,
) -> Option<(&'e str, &'e downlead_station::attach::Certificate, bool)> {
    let b = crate::certificate::bearing(i, date, &env.attachments)?;
    let holds = b.holds == crate::certificate::Holds::Yes;
    Some((&b.name.text, b.certificate, holds))
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

/// An instrument's errors as a meter of power. Where it states an accuracy and no linearity, 1 %
/// (half-width) is taken, and where no repeatability, 0.6 % (one sigma; common practice).
#[must_use]
pub fn meter_of(i: &Instrument) -> Meter {
    meter(i, &mut Assumptions { list: Vec::new() })
}

/// What does not cancel between two readings with one instrument, dB (standard): linearity and
/// repeatability of both, and the step of the display at the smaller one, `watts`.
#[must_use]
pub fn between_readings_db(i: &Instrument, watts: f64) -> f64 {
    let m = meter_of(i);
    let linear = libm::hypot(m.u_linearity, m.u_linearity_w / watts);
    let both = DB_PER_RELATIVE * core::f64::consts::SQRT_2 * libm::hypot(linear, m.u_repeatability);
    libm::hypot(both, resolution_db(i, watts))
}

/// One meter of which nothing is known: its scale cancels between its readings, and the usual
/// linearity and repeatability remain.
pub(crate) fn unnamed() -> Meter {
    Meter {
        u_linearity: rectangular(LINEARITY),
        u_repeatability: REPEATABILITY,
        ..Meter::PERFECT
    }
}

/// Notes what is assumed between two readings of an instrument that states an accuracy.
pub(crate) fn note_scatter(i: &Instrument, assumed: &mut Assumptions) {
    if i.accuracy.is_none() {
        return;
    }
    let full_scale = matches!(i.accuracy, Some(Accuracy::OfFullScale(_))) && i.scale_w.is_some();
    let note = match (i.linearity, i.repeatability) {
        (None, None) if !full_scale => Assumed::MeterScatter,
        (None, _) if full_scale => Assumed::FullScaleLocal,
        (None, _) => Assumed::MeterLinearity,
        (_, None) => Assumed::MeterRepeatability,
        _ => return,
    };
    assumed.add(note, i.name.loc);
    if full_scale && i.linearity.is_none() && i.repeatability.is_none() {
        assumed.add(Assumed::MeterRepeatability, i.name.loc);
    }
}

/// An instrument's errors.
pub(crate) fn meter(i: &Instrument, assumed: &mut Assumptions) -> Meter {
    let mut m = Meter::PERFECT;
    match i.accuracy {
        Some(Accuracy::OfReading(u)) => m.u_of_reading = u,
        Some(Accuracy::OfFullScale(u)) => match i.scale_w {
            Some(w) => m.u_full_scale_w = u * w,
            // without its scale it is at least that much of the reading
            None => m.u_of_reading = u,
        },
        Some(Accuracy::Decibel(u)) => m.u_of_reading = u / DB_PER_RELATIVE,
        None => assumed.add(Assumed::ReadingExact, i.name.loc),
    }
    if let Some(step) = i.resolution_w {
        m = m.resolution(step);
    }
    note_scatter(i, assumed);
    match i.linearity {
        // each reading has its own, as large everywhere on the scale
        Some(l) if i.linearity_of_scale && i.scale_w.is_some() => {
            m.u_linearity_w = l * i.scale_w.unwrap_or(0.0);
        }
        // without its scale it is at least that much of the reading
        Some(l) => m.u_linearity = l,
        // how an error of full scale is spread along the scale is not known: the careful case is
        // that each reading has its own
        None if m.u_full_scale_w > 0.0 => {
            m.u_linearity_w = m.u_full_scale_w;
            m.u_full_scale_w = 0.0;
        }
        None if i.accuracy.is_some() => {
            m.u_linearity = rectangular(LINEARITY);
        }
        None => {}
    }
    match i.repeatability {
        Some(r) => m.u_repeatability = r,
        None if i.accuracy.is_some() => {
            m.u_repeatability = REPEATABILITY;
        }
        None => {}
    }
    m
}

#[cfg(test)]
mod tests {
    use super::*;
    use downlead_station::model::Meaning;
    use downlead_station::{Lets, lower};

    fn instrument(lines: &str) -> Instrument {
        let indented = lines.replace('\n', "\n    ");
        let text = format!("instrument W1 {{\n    {indented}\n}}\n");
        let file = downlead_syntax::File::parse(text);
        match lower(&file.items()[0].item, &Lets::default(), false).meaning {
            Meaning::Instrument(i) => *i,
            other => panic!("{other:?}"),
        }
    }

    fn close(a: f64, b: f64) {
        assert!((a - b).abs() < 1e-6, "{a}, wanted {b}");
    }

    /// A small relative error in dB: 10/ln 10 of it.
    const DB: f64 = 4.342_944_819;
    /// Of a rectangle with half-width 1 (GUM 4.3.7).
    const RECTANGLE: f64 = 0.577_350_269;

    #[test]
    fn an_instrument_is_as_good_at_a_reading_as_it_says() {
        let of_reading = instrument("accuracy 5 % of reading");
        close(instrument_db(&of_reading, 20.0), 0.05 * RECTANGLE * DB);
        // of full scale: at a fifth of the scale five times as much
        let of_scale = instrument("accuracy 5 % of full scale\nscale 100 W");
        close(instrument_db(&of_scale, 100.0), 0.05 * RECTANGLE * DB);
        close(instrument_db(&of_scale, 20.0), 0.25 * RECTANGLE * DB);
        let in_db = instrument("accuracy 0.3 dB k 2");
        close(instrument_db(&in_db, 20.0), 0.15);
        // a display in steps of 1 W: half a step of 20 W, and both as the root of squares
        let steps = instrument("accuracy 0.3 dB k 2\nresolution 1 W");
        let step = 0.025 * RECTANGLE * DB;
        close(
            instrument_db(&steps, 20.0),
            (0.15_f64.powi(2) + step * step).sqrt(),
        );
        close(resolution_db(&steps, 40.0), step / 2.0);
        close(instrument_db(&instrument("scale 100 W"), 20.0), 0.0);
    }

    #[test]
    fn between_two_readings_the_scale_cancels() {
        // linearity and repeatability of both readings, and the step of the display once
        let stated = "accuracy 5 % of reading\nlinearity 2 %\nrepeatability 0.5 % k 1";
        let (linear, repeat): (f64, f64) = (0.02 * RECTANGLE, 0.005);
        let both = DB * (2.0 * (linear * linear + repeat * repeat)).sqrt();
        close(between_readings_db(&instrument(stated), 20.0), both);
        let stepped = instrument(&format!("{stated}\nresolution 0.5 W"));
        let step = 0.25 / 20.0 * RECTANGLE * DB;
        close(between_readings_db(&stepped, 20.0), both.hypot(step));
        // of full scale it grows as the reading gets smaller
        let scale = instrument(
            "accuracy 5 % of reading\nscale 100 W\nlinearity 2 % of full scale\nrepeatability 0.5 % k 1",
        );
        let linear = 5.0 * 0.02 * RECTANGLE;
        close(
            between_readings_db(&scale, 20.0),
            DB * (2.0 * (linear * linear + repeat * repeat)).sqrt(),
        );
    }

    #[test]
    fn a_meter_has_what_is_stated_and_what_is_common_practice() {
        let m = meter_of(&instrument("accuracy 5 % of reading"));
        close(m.u_of_reading, 0.05 * RECTANGLE);
        close(m.u_linearity, 0.01 * RECTANGLE);
        close(m.u_repeatability, 0.006);
        assert!(m.u_full_scale_w == 0.0 && m.u_linearity_w == 0.0 && m.u_resolution_w == 0.0);
        let m = meter_of(&instrument(
            "accuracy 0.3 dB k 2\nresolution 1 W\nlinearity 2 %",
        ));
        close(m.u_of_reading, 0.15 / DB);
        close(m.u_resolution_w, 0.5 * RECTANGLE);
        close(m.u_linearity, 0.02 * RECTANGLE);
        // a class of full scale: each reading by itself, an offset beside a stated linearity
        let class = "accuracy 5 % of full scale\nscale 100 W";
        let m = meter_of(&instrument(class));
        close(m.u_linearity_w, 5.0 * RECTANGLE);
        assert!(m.u_full_scale_w == 0.0 && m.u_linearity == 0.0 && m.u_of_reading == 0.0);
        let m = meter_of(&instrument(&format!(
            "{class}\nlinearity 1 %\nrepeatability 0.2 % k 1"
        )));
        close(m.u_full_scale_w, 5.0 * RECTANGLE);
        close(m.u_linearity, 0.01 * RECTANGLE);
        close(m.u_repeatability, 0.002);
        assert!(m.u_linearity_w == 0.0);
        // nothing is stated: an exact meter, and listed as that
        assert_eq!(meter_of(&instrument("scale 100 W")), Meter::PERFECT);
        let m = unnamed();
        close(m.u_linearity, 0.01 * RECTANGLE);
        close(m.u_repeatability, 0.006);
        assert!(m.u_of_reading == 0.0);
    }

    #[test]
    fn what_is_taken_by_common_practice_is_listed() {
        let noted = |lines: &str| {
            let mut a = Assumptions { list: Vec::new() };
            meter(&instrument(lines), &mut a);
            a.list.into_iter().map(|x| x.0).collect::<Vec<_>>()
        };
        let (full, linear, repeat) = (
            "accuracy 5 % of full scale\nscale 100 W\n",
            "linearity 1 %\n",
            "repeatability 0.6 % k 1\n",
        );
        assert_eq!(noted("accuracy 5 % of reading"), [Assumed::MeterScatter]);
        assert_eq!(
            noted(&format!("accuracy 5 % of reading\n{repeat}")),
            [Assumed::MeterLinearity]
        );
        assert_eq!(
            noted(&format!("accuracy 5 % of reading\n{linear}")),
            [Assumed::MeterRepeatability]
        );
        assert_eq!(
            noted(&format!("accuracy 5 % of reading\n{linear}{repeat}")),
            []
        );
        assert_eq!(
            noted(full),
            [Assumed::FullScaleLocal, Assumed::MeterRepeatability]
        );
        assert_eq!(noted(&format!("{full}{repeat}")), [Assumed::FullScaleLocal]);
        assert_eq!(
            noted(&format!("{full}{linear}")),
            [Assumed::MeterRepeatability]
        );
        assert_eq!(noted("scale 100 W"), [Assumed::ReadingExact]);
    }
}
