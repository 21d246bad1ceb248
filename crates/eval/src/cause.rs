//! Causes of uncertainty: what is one cause stays one, however often it enters (GUM, JCGM
//! 100:2008, 5.2: fully correlated terms add with their signs, independent ones as squares).

use downlead_base::Loc;

/// Identity of a cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Cause<'m> {
    /// A transmitter's power, by the place of its figure.
    Power(Loc),
    /// An instrument's scale.
    Instrument(&'m str),
    /// A cable's loss, by cable name or shared cause.
    Cable(&'m str),
    /// A cable's velocity factor, by its name.
    Velocity(&'m str),
    /// A cable's impedance, by its name.
    Impedance(&'m str),
    /// A dimension or property of a cable's construction, by its name and what it is.
    Construction(&'m str, &'static str),
    /// A length.
    Length(Loc),
    /// A connector family.
    Connector(&'m str),
    /// An impedance bump of connectors, by their name and what of it.
    Bump(&'m str, &'static str),
    /// A device's figure.
    Device(Loc),
    /// Coupling of a coupler.
    Coupling(Loc),
    /// Share of a divider's branch.
    Share(Loc, u32),
    /// Gain of an amplifier or preamplifier.
    Amplification(Loc),
    /// What an isolator or circulator loses backwards.
    Isolation(Loc),
    /// Noise figure of a stage of a receive chain.
    Noise(Loc),
    /// What comes back from a part: SWR, return loss, resistance.
    Reflection(Loc),
    /// Reactance of an antenna.
    Reactance(Loc),
    /// An antenna's gain.
    Gain(Loc),
    /// An antenna's efficiency.
    Efficiency(Loc),
    /// Where the loss of a part lies.
    Sits(Loc),
    /// A part's electrical length, beyond what its ± says.
    Phase(Loc),
    /// Electrical lengths of which each matters little.
    Phases,
    /// Products of several reflections, and curvature.
    Multiple,
    /// A place's temperature.
    Temperature(&'m str),
    /// A part's own temperature.
    OwnTemperature(Loc),
    /// Loss added by age or water.
    Added(Loc),
}

/// Contributions in dB (standard, signed: positive raises the power).
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

    /// Combined standard uncertainty, dB.
    pub(crate) fn standard(&self) -> f64 {
        libm::sqrt(self.terms.iter().map(|t| t.1 * t.1).sum())
    }
}
