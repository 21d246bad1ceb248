//! The instruments of a session, each once, with their errors.

use downlead_base::{Diagnostic, Loc};
use downlead_physics::measure::{Level, Meter};
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::model::{Instrument, Name};
use downlead_station::session::Session;
use downlead_station::{Env, NameKind};

use super::gather::Taken;
use crate::assume::{Assumed, Assumptions};
use crate::certificate::{self, Bearing, Holds};
use crate::instrument::{meter, unnamed};
use crate::unknown::unknown;

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
    /// Certificate of each, where it has one, and the number of its first point.
    certificates: Vec<Option<(Bearing<'m>, usize)>>,
    /// Assumptions about a meter that its certificate makes needless where it covers a reading.
    spared: Vec<(usize, Assumed, Loc)>,
    /// Number of points of all of them.
    points: usize,
    /// Readings outside them: meter, frequency and power of the first, how many, where.
    uncovered: Vec<(usize, (f64, f64), usize, Loc)>,
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

    /// Number of a kind of adapter that some reading has; none if none has it.
    pub(super) fn adapter_of(&self, name: &str) -> Option<usize> {
        self.adapters.iter().position(|n| **n == *name)
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

    /// A reading of power, corrected by what is known of its meter.
    pub(super) fn level(
        &mut self,
        (id, number): (usize, usize),
        (hz, watts): (f64, f64),
        minutes: f64,
        date: Option<&str>,
        loc: Loc,
    ) -> Level {
        let plain = Level::one(id, number, watts, minutes);
        let Some(i) = self.instruments[number] else {
            return plain;
        };
        let own = self.certificates[number].as_ref();
        let first = own.map_or(0, |c| c.1);
        let taken = certificate::taken(i, own.map(|c| &c.0), date, (hz, watts), first);
        if own.is_some() && taken.calibration.is_none() {
            match self.uncovered.iter_mut().find(|u| u.0 == number) {
                Some(u) => u.2 += 1,
                None => self.uncovered.push((number, (hz, watts), 1, loc)),
            }
        }
        Level {
            watts: watts * taken.factor,
            calibration: taken.calibration,
            ..plain
        }
    }

    /// What is to be said of the certificates.
    pub(super) fn certificates(
        &self,
        s: &Session,
        env: &Env,
        assumed: &mut Assumptions,
        out: &mut Vec<Diagnostic>,
    ) {
        for (number, what, who) in &self.spared {
            if self.uncovered.iter().any(|u| u.0 == *number) {
                assumed.add(*what, *who);
            }
        }
        let loc = s.meta_loc.unwrap_or(s.loc);
        for i in self.instruments.iter().flatten() {
            certificate::findings(i, s.meta.date.as_deref(), loc, env, out);
        }
        for (number, reading, count, loc) in &self.uncovered {
            if let (Some(i), Some((b, _))) = (
                self.instruments[*number],
                self.certificates[*number].as_ref(),
            ) {
                out.extend(certificate::outside(i, b, *reading, *count, *loc));
            }
        }
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
            assumed.add(Assumed::MeterNotNamed, s.name.loc);
            None
        } else {
            match env.instrument(name) {
                Some(i) => Some(i),
                None => {
                    // a name of the text is pointed out where it stands, one of a table here
                    let of_text = t.from.is_none()
                        || t.instrument.is_none()
                        || s.imports
                            .iter()
                            .any(|i| i.instrument.as_ref().is_some_and(|n| *n.text == *name));
                    if !of_text && !self.unknown.iter().any(|n| **n == *name) {
                        self.unknown.push(name.into());
                        let n = Name {
                            text: name.into(),
                            loc: t.value_loc,
                        };
                        out.extend(unknown(NameKind::Instrument, &n, env));
                    }
                    return None;
                }
            }
        };
        self.names.push(name.into());
        let bearing = instrument
            .and_then(|i| certificate::bearing(i, s.meta.date.as_deref(), &env.attachments));
        self.certificates.push(bearing.map(|b| {
            self.points += b.certificate.points.len();
            (b, self.points - b.certificate.points.len())
        }));
        self.instruments.push(instrument);
        let number = self.instruments.len() - 1;
        let mut own = Assumptions::default();
        self.meters.push(match instrument {
            Some(i) => meter(i, &mut own),
            None => unnamed(),
        });
        let holds = bearing.is_some_and(|b| b.holds == Holds::Yes);
        for (what, who) in own.list {
            match what {
                Assumed::MeterScatter if holds => {
                    assumed.add(Assumed::MeterRepeatability, who);
                    self.spared.push((number, Assumed::MeterLinearity, who));
                }
                Assumed::MeterLinearity | Assumed::FullScaleLocal if holds => {
                    self.spared.push((number, what, who));
                }
                _ => assumed.add(what, who),
            }
        }
        Some(number)
    }
}
