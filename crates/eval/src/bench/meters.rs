//! The instruments of a session, each once, with their errors.

use downlead_base::Diagnostic;
use downlead_physics::measure::Meter;
use downlead_quantity::DB_PER_RELATIVE;
use downlead_station::model::{Instrument, Name};
use downlead_station::session::Session;
use downlead_station::{Env, NameKind};

use super::gather::Taken;
use crate::assume::{Assumed, Assumptions};
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
        self.instruments.push(instrument);
        self.meters.push(match instrument {
            Some(i) => meter(i, assumed),
            None => unnamed(),
        });
        Some(self.names.len() - 1)
    }
}
