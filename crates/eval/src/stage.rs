//! The two stages of evaluation.
//!
//! What a person waits for is computed at once: values, derivatives and uncertainties. The sample
//! that replaces uncertainty, interval and probability where reflections make derivatives too
//! coarse, and the bounds over all phases, take many times as long; they follow when there is time,
//! or at once where they are asked for.

use downlead_physics::net::evaluate::{Evaluation, Quantity};
use downlead_station::model::{LimitQuantity, Node};

use crate::chain::Computed;

/// How much is computed of a chain on a band.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// By derivatives; no bounds over phases. No verdict that the sample could turn.
    First,
    /// All.
    Whole,
}

/// A limit nearer than so many times its uncertainty (k = 2) is judged by the sample only. The
/// uncertainty of the first stage already counts what derivatives do not show (by 32 points), so
/// that a sample moves the edge of an interval by a fraction of it.
const SURE: f64 = 2.0;

impl Computed<'_> {
    /// Whether the verdicts of the first stage are those of the whole: no statement is judged by an
    /// output that needs the sample, or its limit is far from it.
    pub(crate) fn verdicts_hold(&self) -> bool {
        let e = &self.evaluation;
        let aside = self.in_phase.as_ref();
        if !e.needs_sample() && !aside.is_some_and(Evaluation::needs_sample) {
            return true;
        }
        let rough = |q: Quantity| e.output(q).is_some_and(|o| o.weight > 0.0);
        let settled = self.states.iter().all(|(_, node, state)| match node {
            // further conditions than a distance decide
            Node::Limit { .. } if aside.is_some() => false,
            Node::Limit { quantity, .. } => match quantity {
                LimitQuantity::Output => !rough(Quantity::Forward(state.at)),
                LimitQuantity::Erp | LimitQuantity::Eirp => true,
            },
            Node::Read { .. } | Node::Log { .. } => ![
                Quantity::Forward(state.at),
                Quantity::Net(state.at),
                Quantity::Back(state.at),
            ]
            .into_iter()
            .any(rough),
            Node::Expect { .. } => false,
            // which is judged of the site
            Node::Desense { .. } => true,
        });
        settled
            && self
                .result
                .limits
                .iter()
                .all(|l| l.margin_db.abs() > SURE * l.uncertainty_db)
    }
}
