//! Pairs of connectors, joins.

use downlead_base::{Diagnostic, codes};
use downlead_physics::connector::Bump;
use downlead_station::model::Name;
use downlead_station::nearest;

use super::{Build, Element};
use crate::assume::Assumed;
use crate::cascade::{Piece, R0, Way};
use crate::cause::Cause;

impl<'m> Build<'m, '_> {
    pub(super) fn connector(
        &mut self,
        e: &mut Element<'m>,
        count: u32,
        name: &'m Name,
        index: usize,
    ) {
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
        let of_one = c.loss.map(|l| l.at(self.point.hz)).unwrap_or_default();
        let one = of_one.value;
        let family: &str = c.families.as_ref().map_or(&c.name.text, |f| &f.0);
        e.causes
            .push((Cause::Connector(family), f64::from(count) * of_one.u));
        e.loss_db = f64::from(count) * one;
        if e.loss_db > 0.0 && of_one.u == 0.0 {
            self.assumed.add(Assumed::LossExact, e.who);
        }
        match c.bump {
            // several pairs lie at unknown distances from each other
            Some((z, length)) => {
                let s = Bump {
                    z_ohm: z.value,
                    electrical_m: length.value,
                }
                .network(self.point.hz, R0);
                let reflective = -s.gain();
                e.loss_db += f64::from(count) * reflective;
                for i in 0..count {
                    if i == 0 {
                        self.pieces.push(Piece::known(s, index));
                    } else {
                        self.pieces.push(Piece::unknown(
                            reflective,
                            downlead_physics::cx::abs(s.s11),
                            downlead_physics::cx::abs(s.s22),
                            Way::Both,
                            index,
                        ));
                    }
                    if one > 0.0 {
                        self.pieces.push(Piece::point_loss(one, index));
                    }
                }
            }
            None => self.pieces.push(Piece::point_loss(e.loss_db, index)),
        }
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
