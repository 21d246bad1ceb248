//! The inputs of a chain at one frequency: which figure of the text moves by which cause.

use downlead_base::Loc;
use downlead_physics::DB_PER_NEPER;
use downlead_physics::mismatch::gamma_from_swr;
use downlead_physics::net::evaluate::{Evaluation, Output, Quantity};
use downlead_physics::net::input::{Input, Inputs, Shape, Spread};
use downlead_quantity::Measure;
use rustc_hash::FxHashMap;

use crate::cause::{Budget, Cause};

/// Hands out inputs; remembers causes and whose each phase is.
#[derive(Debug, Default)]
pub(crate) struct Wiring<'m> {
    pub(crate) inputs: Inputs,
    causes: Vec<Cause<'m>>,
    known: FxHashMap<Cause<'m>, u32>,
    phases: Vec<Loc>,
    /// What each input is a figure of, by the key of its source.
    sources: Vec<Cause<'m>>,
    /// What each input says: name, value, standard uncertainty.
    said: Vec<(&'static str, f64, f64)>,
}

/// Distribution of a stated figure.
pub(crate) fn shape(m: &Measure) -> Shape {
    if m.normal {
        Shape::Normal
    } else {
        Shape::Rectangular
    }
}

impl<'m> Wiring<'m> {
    /// An input of standard uncertainty `u` by a cause.
    pub(crate) fn input(
        &mut self,
        name: &'static str,
        value: f64,
        u: f64,
        cause: Cause<'m>,
        shape: Shape,
    ) -> Input {
        let source = u32::try_from(self.sources.len()).unwrap_or(u32::MAX);
        self.sources.push(cause);
        self.said.push((name, value, u));
        if u == 0.0 || !u.is_finite() {
            return Input::exact(name, value).from_source(source);
        }
        let id = match self.known.get(&cause) {
            Some(id) => *id,
            None => {
                let id = self.inputs.cause(shape);
                self.causes.push(cause);
                self.known.insert(cause, id);
                id
            }
        };
        self.inputs.input(name, value, u, id).from_source(source)
    }

    /// What an input is a figure of, by the key of its source.
    pub(crate) fn source(&self, key: u32) -> Option<&Cause<'m>> {
        self.sources.get(key as usize)
    }

    /// All inputs, each with what it is a figure of and what it says: name, value, standard
    /// uncertainty.
    pub(crate) fn said(&self) -> impl Iterator<Item = (&Cause<'m>, &(&'static str, f64, f64))> {
        self.sources.iter().zip(&self.said)
    }

    /// The causes, by number.
    pub(crate) fn causes(&self) -> &[Cause<'m>] {
        &self.causes
    }

    /// Whose each phase is, by number.
    pub(crate) fn phases(&self) -> &[Loc] {
        &self.phases
    }

    /// An input of a stated figure.
    pub(crate) fn figure(&mut self, name: &'static str, m: &Measure, cause: Cause<'m>) -> Input {
        self.input(name, m.value, m.u, cause, shape(m))
    }

    /// A loss or another figure that is not negative.
    pub(crate) fn positive(&mut self, name: &'static str, m: &Measure, cause: Cause<'m>) -> Input {
        self.figure(name, m, cause).within(0.0, f64::INFINITY)
    }

    /// An SWR. Of one that was stated as a return loss the decibels are spread.
    pub(crate) fn swr(&mut self, m: &Measure, cause: Cause<'m>) -> Input {
        if m.return_loss && m.u > 0.0 {
            let gamma = gamma_from_swr(m.value);
            // d(SWR)/d(dB)
            let slope = 2.0 * gamma / ((1.0 - gamma) * (1.0 - gamma)) / DB_PER_NEPER;
            let db = -DB_PER_NEPER * libm::log(gamma);
            return self
                .input("return loss, dB", db, m.u / slope, cause, shape(m))
                .within(0.0, f64::INFINITY)
                .of_return_loss();
        }
        self.figure("SWR", m, cause).within(1.0, f64::INFINITY)
    }

    /// The noise figure of a part.
    pub(crate) fn noise(&mut self, m: &Measure, who: Loc) -> Input {
        self.positive("noise figure, dB", m, Cause::Noise(who))
    }

    /// `n` phases of a part.
    pub(crate) fn phase(&mut self, n: u32, who: Loc) -> u32 {
        self.phases.extend(std::iter::repeat_n(who, n as usize));
        self.inputs.phase(n)
    }

    /// The phase of a line.
    pub(crate) fn line_phase(&mut self, spread: Spread, who: Loc) -> u32 {
        self.phases.push(who);
        self.inputs.line_phase(spread)
    }

    /// What an output owes to each cause, dB; adds up to its standard uncertainty.
    pub(crate) fn budget(&self, e: &Evaluation, q: Quantity) -> Budget<'m> {
        let mut b = Budget::default();
        let Some(o) = e.output(q) else { return b };
        for (cause, d) in self.causes.iter().zip(e.by_cause(q)) {
            b.add(*cause, *d);
        }
        let mut phases: Vec<(Loc, f64)> = Vec::new();
        for (who, u) in self.phases.iter().zip(e.by_phase(q)) {
            match phases.iter_mut().find(|p| p.0 == *who) {
                Some(p) => p.1 += u * u,
                None => phases.push((*who, u * u)),
            }
        }
        let mut small = 0.0;
        for (who, u2) in phases {
            if libm::sqrt(u2) < SMALL_PHASE_DB {
                small += u2;
            } else {
                b.add(Cause::Phase(who), libm::sqrt(u2));
            }
        }
        if libm::sqrt(small) > NOTICED * o.u {
            b.add(Cause::Phases, libm::sqrt(small));
        }
        complete(&mut b, o);
        b.terms
            .retain(|t| t.1.abs() > NOTICED * o.u || t.1.abs() > NOTICED_DB);
        b
    }
}

/// Phases that matter less share a row, dB (standard).
const SMALL_PHASE_DB: f64 = 0.002;

/// A row below this share of the uncertainty may be left out: squared it is nothing.
const NOTICED: f64 = 0.01;

/// And one that is smaller than any digit shows, dB.
const NOTICED_DB: f64 = 5e-4;

/// Lets the rows of a budget add up to what the sample found: what derivatives do not show is a
/// row of its own; where they show too much, all shrink alike.
fn complete(b: &mut Budget<'_>, o: &Output) {
    let shown = b.standard();
    let missing = o.u * o.u - shown * shown;
    if missing > 0.0 {
        if libm::sqrt(missing) > NOTICED * o.u {
            b.add(Cause::Multiple, libm::sqrt(missing));
        }
    } else if shown > 0.0 {
        let f = o.u / shown;
        b.terms.iter_mut().for_each(|t| t.1 *= f);
    }
}
