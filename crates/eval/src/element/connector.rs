//! Pairs of connectors, joins.

use downlead_physics::net::part::{Part as Net, phases_of_pairs};
use downlead_station::model::{ConnectorLoss, Name};

use super::{Build, Element};
use crate::assume::Assumed;
use crate::cause::Cause;

impl<'m> Build<'m, '_> {
    pub(super) fn connector(&mut self, e: &mut Element<'m>, count: u32, name: &'m Name) {
        let Some(c) = self.env.connector(&name.text) else {
            // not defined, which is said where it is named
            e.complete = false;
            return;
        };
        if c.broken || c.loss.is_none() && c.bump.is_none() {
            e.complete = false;
            return;
        }
        e.connector = Some((c, count));
        e.meta = Some(&c.meta);
        e.basis = c.meta.basis;
        let (k, root) = match c.loss {
            Some(ConnectorLoss::Root(k)) => (k, true),
            Some(ConnectorLoss::Constant(l)) => (l, false),
            None => (downlead_quantity::Measure::exact(0.0), false),
        };
        let family: &str = c.families.as_ref().map_or(&c.name.text, |f| &f.0);
        let what = if root {
            "loss of a pair, dB/√GHz"
        } else {
            "loss of a pair, dB"
        };
        let loss = self.wiring.positive(what, &k, Cause::Connector(family));
        if k.value > 0.0 && k.u == 0.0 {
            self.assumed.add(Assumed::LossExact, e.who);
        }
        let bump = c.bump.map(|(z, l)| {
            (
                self.wiring.figure(
                    "impedance of the bump, ohm",
                    &z,
                    Cause::Bump(&c.name.text, "impedance"),
                ),
                self.wiring.positive(
                    "length of the bump, m",
                    &l,
                    Cause::Bump(&c.name.text, "length"),
                ),
            )
        });
        let swr = c
            .swr
            .filter(|s| s.value != 1.0 || s.u != 0.0)
            .map(|s| self.wiring.swr(&s, Cause::Bump(&c.name.text, "SWR")));
        let phase = self
            .wiring
            .phase(phases_of_pairs(count, bump.is_some(), swr.is_some()), e.who);
        e.net = Net::Pairs {
            count,
            loss,
            root,
            bump,
            swr,
            phase,
        };
        e.loss_db = e.net.matched_loss(&self.context(), &super::line::nominal());
    }
}
