//! Devices: filters, couplers, dividers, amplifiers and the like.

use downlead_base::{Diagnostic, codes};
use downlead_physics::devices::{coupler_main_loss, divider_loss};
use downlead_physics::mismatch::gamma_from_swr;
use downlead_station::model::{Basis, Device, DeviceClass, Figure, Name, Part, PartKind, Port};
use downlead_station::nearest;

use super::{Build, Element};
use crate::assume::Assumed;
use crate::cascade::{Piece, Way};
use crate::cause::Cause;
use crate::network;
use crate::point::pick;

impl<'m> Build<'m, '_> {
    pub(super) fn device(
        &mut self,
        e: &mut Element<'m>,
        part: &'m Part,
        d: &'m Device,
        port: Option<&'m Name>,
        index: usize,
    ) {
        let class = match &d.class {
            Some(name) => {
                let Some(c) = self.class(name, part.kind) else {
                    e.complete = false;
                    return;
                };
                e.meta = Some(&c.meta);
                e.basis = c.meta.basis;
                Some(c)
            }
            None => None,
        };
        let base = class.map(|c| &c.device);
        let (t, _, _) = self.temperature(d.temperature.as_deref(), d.place.as_ref());
        e.celsius = t.value;
        let ports: &'m [Port] = if d.ports.is_empty() {
            base.map_or(&[][..], |b| &b.ports)
        } else {
            &d.ports
        };
        let named = port.map(|n| &*n.text);
        if let Some(file) = network::file_of(part, named, self.point, self.env) {
            e.noise_figure = d
                .noise_figure
                .or(base.and_then(|b| b.noise_figure))
                .map(|nf| nf.value);
            self.measured(e, part.kind, file, index);
            return;
        }
        let swr = pick(&d.swr, self.point, self.env)
            .or_else(|| base.and_then(|b| pick(&b.swr, self.point, self.env)));
        let gamma = swr.map_or(0.0, |s| gamma_from_swr(s.value.value));
        if part.kind == PartKind::Amplifier || part.kind == PartKind::Preamplifier {
            e.noise_figure = d
                .noise_figure
                .or(base.and_then(|b| b.noise_figure))
                .map(|nf| nf.value);
            match pick(&d.gain, self.point, self.env)
                .or_else(|| base.and_then(|b| pick(&b.gain, self.point, self.env)))
            {
                Some(p) => {
                    e.loss_db = -p.value.value;
                    e.causes.push((Cause::Device(p.figure.loc), p.value.u));
                    self.picked(e, &p);
                    self.pieces
                        .push(Piece::unknown(e.loss_db, gamma, gamma, Way::Forward, index));
                }
                None => self.no_figure(e, "gain"),
            }
            return;
        }
        let chosen = match port {
            Some(n) => ports.iter().find(|p| p.name.text == n.text),
            None => ports
                .iter()
                .find(|p| p.name.text.is_empty())
                .or(if ports.len() == 1 {
                    ports.first()
                } else {
                    None
                }),
        };
        if port.is_some() && chosen.is_none()
            || port.is_none() && chosen.is_none() && !ports.is_empty()
        {
            // reported once for the chain, see `checks`
            e.complete = false;
            return;
        }
        let figures: &'m [Figure] = chosen.map_or(&[], |p| &p.loss);
        let way = match part.kind {
            PartKind::Isolator | PartKind::Circulator => Way::Forward,
            PartKind::Tuner => Way::Tuner,
            _ => Way::Both,
        };
        let mut loss = pick(figures, self.point, self.env).map(|p| {
            e.causes.push((Cause::Device(p.figure.loc), p.value.u));
            self.picked(e, &p);
            p.value.value
        });
        if loss.is_none()
            && let Some(c) = d.coupling.or(base.and_then(|b| b.coupling))
        {
            loss = Some(coupler_main_loss(c.value));
            e.basis = Basis::Computed;
        }
        if part.kind == PartKind::Divider {
            let ways = d.ways.or(base.and_then(|b| b.ways)).unwrap_or(2);
            let excess = d.excess.as_ref().or(base.and_then(|b| b.excess.as_ref()));
            let mut l = divider_loss(ways);
            if let Some(x) = excess {
                l += x.value.value;
                e.causes.push((Cause::Device(x.loc), x.value.u));
            }
            loss = Some(loss.unwrap_or(l));
            e.basis = Basis::Computed;
        }
        let Some(loss) = loss else {
            if figures.is_empty() && ports.is_empty() {
                // nothing stated at all: no loss, said so
                self.diags.push(
                    Diagnostic::new(
                        &codes::LOSSLESS_PART,
                        e.who,
                        format!("{} has no loss stated and is taken as lossless; every real {} loses something.", e.subject(), e.kind),
                    )
                    .at("no loss")
                    .help(format!("Written for example `{} {} 0.3 dB ± 0.1 dB`.", e.kind, part.tag.as_ref().map_or("X1", |t| &t.text))),
                );
                self.pieces.push(Piece::point_loss(0.0, index));
            } else {
                self.no_figure(e, "loss");
            }
            return;
        };
        e.loss_db = loss;
        if swr.is_none() && loss > 0.0 {
            self.assumed.add(Assumed::DeviceMatched, e.who);
        }
        if way == Way::Forward {
            self.assumed.add(Assumed::IsolationComplete, e.who);
        }
        // a part that neither loses nor reflects anything is no part at all
        self.pieces
            .push(if loss == 0.0 && gamma == 0.0 && way == Way::Both {
                Piece::point_loss(0.0, index)
            } else {
                Piece::unknown(loss, gamma, gamma, way, index)
            });
    }

    /// The definition a device names; none if it is not defined or that of another kind.
    fn class(&mut self, name: &'m Name, kind: PartKind) -> Option<&'m DeviceClass> {
        match self.env.device(&name.text) {
            Some(c) if c.kind != kind => {
                let (is, want) = (c.kind.with_article(), kind.with_article());
                self.diags.push(
                    Diagnostic::new(
                        &codes::UNKNOWN_DEVICE,
                        name.loc,
                        format!(
                            "`{}` is the definition of {is}, and this is {want}.",
                            name.text
                        ),
                    )
                    .at(is.clone())
                    .help(format!(
                        "Write `{}` in front, or name the definition of {want}.",
                        c.kind.word()
                    )),
                );
                None
            }
            Some(c) => Some(c),
            None => {
                if !self.env.is_broken(&name.text) {
                    self.unknown_device(name);
                }
                None
            }
        }
    }

    fn unknown_device(&mut self, name: &'m Name) {
        let own = self.env.devices.keys().map(AsRef::as_ref);
        let near = nearest(
            &name.text,
            own.chain(downlead_station::library().device_names()),
        );
        let mut diag = Diagnostic::new(
            &codes::UNKNOWN_DEVICE,
            name.loc,
            format!("Device `{}` is not defined.", name.text),
        )
        .at("not in the library or the files");
        diag = match near {
            Some(n) => {
                diag.help(format!("Did you mean `{n}`?"))
                    .fix(format!("write `{n}`"), name.loc, n)
            }
            None => diag.help("`downlead catalogue --kind device` lists the library."),
        };
        self.diags.push(diag);
    }
}
