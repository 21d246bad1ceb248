//! Pairs of connectors, joins.

use downlead_base::{Diagnostic, codes};
use downlead_physics::net::part::{Part as Net, phases_of_pairs};
use downlead_station::model::{ConnectorLoss, Name};
use downlead_station::nearest;

use super::{Build, Element};
use crate::assume::Assumed;
use crate::cause::Cause;

impl<'m> Build<'m, '_> {
    pub(super) fn connector(&mut self, e: &mut Element<'m>, count: u32, name: &'m Name) {
        let Some(c) = self.env.connector(&name.text) else {
            if self.env.is_broken(&name.text) {
                e.complete = false;
                return;
            }
            self.unknown_connector(name);
            e.complete = false;
            return;
        };
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

    fn unknown_connector(&mut self, name: &'m Name) {
        let own = self.env.connectors.keys().map(AsRef::as_ref);
        let near = nearest(
            &name.text,
            own.chain(downlead_station::library().connector_names()),
        );
        let mut d = Diagnostic::new(
            &codes::UNKNOWN_CONNECTOR,
            name.loc,
            format!("Connector `{}` is not defined.", name.text),
        )
        .at("not in the library or the files");
        d = match near {
            Some(n) => {
                d.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), name.loc, n)
            }
            None => d.help("`downlead catalogue --kind connector` lists the library."),
        };
        self.diags.push(d);
    }
}
