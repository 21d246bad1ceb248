//! The instruments of a session, each once, with their errors.

use downlead_base::Diagnostic;
use downlead_physics::measure::Meter;
use downlead_physics::uncertainty::rectangular;
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::Env;
use downlead_station::model::{Accuracy, Instrument, Name};
use downlead_station::session::Session;

use super::gather::Taken;
use crate::assume::{Assumed, Assumptions};
use crate::verdict::unknown_instrument;

/// What of a power meter's error does not cancel between two of its own readings, where it does
/// not say: half-width, relative (common practice).
const LINEARITY: f64 = 0.01;
/// Spread of one reading of a power meter, where it does not say: relative, 1 sigma (common
/// practice).
const REPEATABILITY: f64 = 0.006;

/// A meter as one reading uses it.
pub(super) struct Used<'m> {
    pub(super) number: usize,
    pub(super) instrument: Option<&'m Instrument>,
    /// Standard uncertainty of its scale, dB.
    pub(super) u_db: f64,
}

/// Instruments by number.
#[derive(Default)]
pub(super) struct Meters<'m> {
    names: Vec<Box<str>>,
    instruments: Vec<Option<&'m Instrument>>,
    meters: Vec<Meter>,
    adapters: Vec<Box<str>>,
    unknown: Vec<Box<str>>,
}

impl<'m> Meters<'m> {
    pub(super) fn all(&self) -> &[Meter] {
        &self.meters
    }

    pub(super) fn names(self) -> Vec<Box<str>> {
        self.names
    }

    pub(super) fn instruments(&self) -> impl Iterator<Item = &'m Instrument> {
        self.instruments.iter().filter_map(|i| *i)
    }

    /// Number of a kind of adapter: the same kind errs alike.
    pub(super) fn adapter(&mut self, name: &str) -> usize {
        match self.adapters.iter().position(|n| **n == *name) {
            Some(i) => i,
            None => {
                self.adapters.push(name.into());
                self.adapters.len() - 1
            }
        }
    }

    /// The meter of a reading: its own, else the session's. None if it is not defined.
    pub(super) fn of(
        &mut self,
        t: &Taken<'m>,
        s: &'m Session,
        env: &'m Env,
        assumed: &mut Assumptions,
        out: &mut Vec<Diagnostic>,
    ) -> Option<Used<'m>> {
        let of_session = s.meta.instrument.as_ref().map(|n| &*n.text);
        let name = t.instrument.or(of_session).unwrap_or("");
        let number = match self.names.iter().position(|n| **n == *name) {
            Some(i) => i,
            None => self.add(name, t, s, env, assumed, out)?,
        };
        Some(Used {
            number,
            instrument: self.instruments[number],
            u_db: DB_PER_RELATIVE * self.meters[number].u_of_reading,
        })
    }

    fn add(
        &mut self,
        name: &str,
        t: &Taken<'m>,
        s: &'m Session,
        env: &'m Env,
        assumed: &mut Assumptions,
        out: &mut Vec<Diagnostic>,
    ) -> Option<usize> {
        let instrument = if name.is_empty() {
            assumed.add(Assumed::ReadingExact, s.name.loc);
            None
        } else {
            match env.instrument(name) {
                Some(i) => Some(i),
                None => {
                    if !env.is_broken(name) && !self.unknown.iter().any(|n| **n == *name) {
                        self.unknown.push(name.into());
                        let loc = match (&s.meta.instrument, t.instrument) {
                            (Some(n), None) => n.loc,
                            _ => t.value_loc,
                        };
                        let n = Name {
                            text: name.into(),
                            loc,
                        };
                        out.push(unknown_instrument(&n, env));
                    }
                    return None;
                }
            }
        };
        self.names.push(name.into());
        self.instruments.push(instrument);
        self.meters.push(match instrument {
            Some(i) => meter(i, assumed),
            None => Meter::PERFECT,
        });
        Some(self.names.len() - 1)
    }
}

/// An instrument's errors as a meter of power. Where it states an accuracy and neither linearity
/// nor repeatability, 1 % (half-width) and 0.6 % (one sigma) are taken (common practice).
#[must_use]
pub fn meter_of(i: &Instrument) -> Meter {
    meter(i, &mut Assumptions { list: Vec::new() })
}

/// What does not cancel between two readings with one instrument, dB (standard): linearity and
/// repeatability of both.
#[must_use]
pub fn between_readings_db(i: &Instrument) -> f64 {
    let m = meter_of(i);
    DB_PER_RELATIVE * core::f64::consts::SQRT_2 * libm::hypot(m.u_linearity, m.u_repeatability)
}

/// An instrument's errors.
fn meter(i: &Instrument, assumed: &mut Assumptions) -> Meter {
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
    match (i.linearity, i.repeatability) {
        (None, None) if i.accuracy.is_some() => {
            m.u_linearity = rectangular(LINEARITY);
            m.u_repeatability = REPEATABILITY;
            assumed.add(Assumed::MeterScatter, i.name.loc);
        }
        (l, r) => {
            m.u_linearity = l.unwrap_or(0.0);
            m.u_repeatability = r.unwrap_or(0.0);
        }
    }
    m
}
