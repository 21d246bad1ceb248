//! Expectations: what is computed, and how far it is from what the text expects.

use downlead_base::Loc;
use downlead_quantity::{decibel_signed, number, to_db};
use downlead_station::model::{Expect, LimitQuantity, Node};

use super::Derivation;
use super::cx::Cx;
use super::node::watts_value;
use super::numbers::{decibels, op, value, watts};
use crate::chain::NodeState;

impl Cx<'_> {
    /// The expectations of the chain on some lines.
    pub(super) fn expectations(&self, on_line: impl Fn(Loc) -> bool) -> Vec<Derivation> {
        let states = &self.kept().c.states;
        let here = states.iter().filter(|s| on_line(s.0));
        here.filter_map(|(loc, node, state)| match node {
            Node::Expect { expect, .. } => Some(self.expectation(expect, state)?.at(*loc)),
            _ => None,
        })
        .collect()
    }

    /// None where what is expected could not be computed.
    fn expectation(&self, e: &Expect, state: &NodeState<'_>) -> Option<Derivation> {
        let said = |off: f64, half: f64, shown: String, half_shown: String| {
            let verdict = if off.abs() <= half + 1e-9 {
                "as expected"
            } else {
                "not as expected"
            };
            format!("{shown}, {half_shown} allowed: {verdict}")
        };
        let power = |what: &str, step: Derivation, got: f64, want: f64, half: f64| {
            let off = to_db(got / want);
            Derivation::of(
                self.title(&format!("{what} against what is expected")),
                said(off, half, decibel_signed(off), decibels(half)),
            )
            .by(
                "10 log10(computed/expected)",
                format!("10 log10({} / {})", watts(got), watts(want)),
            )
            .with(step)
        };
        Some(match *e {
            Expect::Power(w, half) => {
                let net = state.net_w?;
                let step = Derivation::of("net power", watts_value(net));
                power("net power", step, net, w, half)
            }
            Expect::Radiated(q, w, half, _) => {
                let (dipole, got) = match q {
                    LimitQuantity::Eirp => (false, self.band.eirp_w?),
                    _ => (true, self.band.erp_w()?),
                };
                let step = self.radiated_value(dipole)?;
                power(&q.word().to_uppercase(), step, got, w, half)
            }
            Expect::Loss(l, half) => {
                let loss = state.loss_db?;
                Derivation::of(
                    self.title("loss against what is expected"),
                    said(loss - l, half, decibel_signed(loss - l), decibels(half)),
                )
                .by(
                    "computed − expected",
                    format!("{} − {}", decibels(loss), decibels(l)),
                )
                .with(Derivation::of("loss so far", decibels(loss)))
            }
            Expect::Swr(s, half) => {
                let swr = state.swr?;
                Derivation::of(
                    self.title("SWR against what is expected"),
                    said(swr - s, half, number(swr - s, 4), number(half, 4)),
                )
                .by("computed − expected", format!("{} − {}", op(swr), op(s)))
                .with(Derivation::of("SWR looking on", value(swr, "")))
            }
        })
    }
}
