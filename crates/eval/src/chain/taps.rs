//! What of the transmitter's power comes out elsewhere than at the antenna: at a coupler's side
//! arm, and at the other legs of a duplexer, diplexer, combiner or switch, which reject it.

use downlead_base::Loc;
use downlead_physics::net::evaluate::{Evaluation, Quantity};
use downlead_quantity::{Measure, from_db};
use downlead_station::model::{Device, PartData, PartKind, Port};

use super::Run;
use crate::element::{Element, NEAR};
use crate::point::pick;
use crate::result::{TapMade, TapResult};

/// Standard deviation of 20 log10 |1 + Γ e^(jφ)| over a free angle is this times |Γ|, for small Γ:
/// 20/ln 10/√2.
const DB_PER_REFLECTION: f64 = 6.141_851_463_713_754;

impl<'m> Run<'m, '_> {
    /// Notes the taps of a part that lies between two nodes of the network.
    pub(super) fn taps(&mut self, e: &Element<'m>, v: &Evaluation, before: usize, after: usize) {
        let Some(part) = e.part else { return };
        let PartData::Device(d) = &part.data else {
            return;
        };
        let class: Option<&'m Device> = d
            .class
            .as_ref()
            .and_then(|n| self.cx.env.device(&n.text))
            .map(|c| &c.device);
        let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        if part.kind == PartKind::Coupler
            && let Some(c) = d.coupling.or(class.and_then(|b| b.coupling))
        {
            let reversed = d.reversed || class.is_some_and(|b| b.reversed);
            self.side_arm(
                (who, e.chain),
                v,
                if reversed { after } else { before },
                &c,
                reversed,
            );
        }
        let ports: &'m [Port] = match class {
            Some(b) if d.ports.is_empty() => &b.ports,
            _ => &d.ports,
        };
        let Some(taken) = e.port else { return };
        for other in ports.iter().filter(|p| p.name.text != taken.text) {
            let rejects = pick(&other.rejects, self.point, self.cx.env);
            if let Some(p) = rejects.filter(|p| p.outside <= NEAR) {
                let back = v.output(Quantity::Back(after)).map_or(0.0, |o| o.mean);
                self.tap(who, e.chain, &other.name.text, v, after, &p.value, back);
            }
        }
    }

    /// A coupler's side arm: the forward wave less the coupling, or of a reversed one the wave that
    /// comes back.
    fn side_arm(
        &mut self,
        (part, chain): (Loc, Loc),
        v: &Evaluation,
        at: usize,
        less: &Measure,
        reversed: bool,
    ) {
        if !reversed {
            self.tap(part, chain, "coupled", v, at, less, 0.0);
            return;
        }
        let (Some(f), Some(b)) = (
            v.output(Quantity::Forward(at)),
            v.output(Quantity::Back(at)),
        ) else {
            return;
        };
        if b.mean <= 1e-12 {
            return;
        }
        let made = TapMade {
            forward: (from_db(f.mean), f.u),
            less: (less.value, less.u),
            back: b.mean,
            reversed: true,
            waves_db: b.u / b.mean * 10.0 / core::f64::consts::LN_10,
        };
        self.note_tap(part, chain, "coupled", made);
    }

    /// One tap: so much less than the wave at a node, where `back` of it comes back at an unknown
    /// angle.
    #[allow(clippy::too_many_arguments, reason = "one tap")]
    fn tap(
        &mut self,
        part: Loc,
        chain: Loc,
        port: &str,
        v: &Evaluation,
        at: usize,
        less: &Measure,
        back: f64,
    ) {
        let Some(o) = v.output(Quantity::Forward(at)) else {
            return;
        };
        let made = TapMade {
            forward: (from_db(o.mean), o.u),
            less: (less.value, less.u),
            back,
            reversed: false,
            waves_db: DB_PER_REFLECTION * libm::sqrt(back.clamp(0.0, 1.0)),
        };
        self.note_tap(part, chain, port, made);
    }

    fn note_tap(&mut self, part: Loc, chain: Loc, port: &str, made: TapMade) {
        let share = if made.reversed {
            made.back
        } else {
            1.0 + made.back
        };
        let u = libm::hypot(libm::hypot(made.forward.1, made.less.1), made.waves_db);
        self.taps.push(TapResult {
            part,
            chain,
            port: port.into(),
            power_w: made.forward.0 * from_db(-made.less.0) * share,
            uncertainty_db: 2.0 * u,
            made,
        });
    }
}
