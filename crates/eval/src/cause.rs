//! Causes of doubt: what is one cause stays one, however often it enters (GUM, JCGM 100:2008,
//! 5.2: fully correlated terms add with their signs, independent ones as squares).

use downlead_base::Loc;

/// Identity of a cause.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Cause<'m> {
    /// A transmitter's power, by the place of its figure.
    Power(Loc),
    /// An instrument's scale.
    Instrument(&'m str),
    /// A cable table, by cable name or shared cause.
    Cable(&'m str),
    /// A length.
    Length(Loc),
    /// A connector family.
    Connector(&'m str),
    /// A device's figure.
    Device(Loc),
    /// An antenna's gain.
    Gain(Loc),
    /// Unknown phases of reflections.
    Phases(u32),
    /// A place's temperature.
    Temperature(&'m str),
    /// Loss added by age or water.
    Added(Loc),
}

/// Contributions in dB (standard, signed: positive lowers the power).
#[derive(Clone, Debug, Default)]
pub(crate) struct Budget<'m> {
    pub(crate) terms: Vec<(Cause<'m>, f64)>,
}

impl<'m> Budget<'m> {
    /// Adds a contribution to its cause.
    pub(crate) fn add(&mut self, cause: Cause<'m>, db: f64) {
        if db == 0.0 || !db.is_finite() {
            return;
        }
        match self.terms.iter_mut().find(|t| t.0 == cause) {
            Some(t) => t.1 += db,
            None => self.terms.push((cause, db)),
        }
    }

    /// Adds another budget, weighted.
    pub(crate) fn add_scaled(&mut self, other: &Budget<'m>, weight: f64) {
        for (c, v) in &other.terms {
            self.add(c.clone(), v * weight);
        }
    }

    /// Combined standard uncertainty, dB.
    pub(crate) fn standard(&self) -> f64 {
        libm::sqrt(self.terms.iter().map(|t| t.1 * t.1).sum())
    }

    /// Expanded uncertainty, k = 2, dB.
    pub(crate) fn expanded(&self) -> f64 {
        2.0 * self.standard()
    }
}
