//! What is said of a line's cable.

use downlead_base::{Diagnostic, codes};
use downlead_physics::mismatch::gamma_from_swr;
use downlead_quantity::frequency;
use downlead_station::model::{Bound, Cable, CableLoss, Name};

use super::{Build, Element};
use crate::assume::Assumed;
use crate::cable::CableAt;
use downlead_physics::net::R0;

/// Above this characteristic impedance a line is no coaxial cable.
const PARALLEL_LINE_OHM: f64 = 150.0;

impl<'m> Build<'m, '_> {
    pub(super) fn cable_notes(
        &mut self,
        e: &Element<'m>,
        cable: &'m Cable,
        at: &CableAt,
        name: &'m Name,
    ) {
        if at.z0_assumed {
            self.assumed.add(Assumed::Impedance50, e.who);
        }
        if at.u_relative == 0.0 {
            self.assumed.add(Assumed::CableExact, e.who);
        }
        if !cable.reference_stated
            && matches!(
                cable.loss,
                Some(CableLoss::Table(_) | CableLoss::Network { .. })
            )
        {
            self.assumed.add(Assumed::SheetAt20, e.who);
        }
        if matches!(cable.meta.bound, Some((Bound::Maximum, _))) {
            self.assumed.add(Assumed::MaximumTaken, e.who);
        }
        if at.outside > 1.000_001 {
            let range = cable.valid.or_else(|| match &cable.loss {
                Some(CableLoss::Table(t)) => Some((t.first()?.0, t.last()?.0)),
                _ => None,
            });
            let range = range.map_or(String::new(), |(a, b)| {
                format!(" ({} to {})", frequency(a), frequency(b))
            });
            self.diags.push(
                Diagnostic::new(
                    &codes::BEYOND_RANGE,
                    name.loc,
                    format!(
                        "{} lies outside what is known of `{}`{range}: the loss is extrapolated to {} dB/100 m and its uncertainty doubled.",
                        frequency(self.point.hz),
                        name.text,
                        downlead_quantity::number(at.loss() * 100.0, 2),
                    ),
                )
                .at("outside its range")
                .also(cable.name.loc, "the cable"),
            );
        }
        // a parallel-wire line in a chain is deliberate
        if (at.z0 - R0).abs() > 2.5 && at.z0 < PARALLEL_LINE_OHM {
            let swr = at.z0.max(R0) / at.z0.min(R0);
            self.diags.push(
                Diagnostic::new(
                    &codes::IMPEDANCE_JUMP,
                    name.loc,
                    format!(
                        "`{}` is a cable of {} ohm in a chain of 50 ohm: between matched ends it makes an SWR of up to {} and costs up to {}, depending on its length.",
                        name.text,
                        downlead_quantity::number(at.z0, 1),
                        downlead_quantity::number(swr * swr, 2),
                        downlead_quantity::db(downlead_physics::mismatch::mismatch_loss(gamma_from_swr(swr * swr))),
                    ),
                )
                .at(format!("{} ohm", downlead_quantity::number(at.z0, 1)))
                .help("The mismatch is computed with its length and the ends it has here, see the SWR and the losses of the report; nothing need be changed if the cable is meant."),
            );
        }
    }
}
