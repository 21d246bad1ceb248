//! Devices: filters, couplers, dividers, amplifiers and the like.

use downlead_base::{Diagnostic, codes};
use downlead_physics::net::input::{Input, Shape};
use downlead_physics::net::part::{Junction, Loss, Part as Net};
use downlead_quantity::Measure;
use downlead_station::model::{
    Basis, Device, DeviceClass, Figure, Name, Part, PartKind, Port, Sits,
};

use super::{Build, Element};
use crate::assume::Assumed;
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
        if base.is_some_and(|b| b.broken) {
            e.complete = false;
            return;
        }
        match self.temperature(d.temperature.as_deref(), d.place.as_ref()) {
            Some((t, place, _)) => e.celsius = self.noise_temperature(&t, place, part),
            // matters to the noise only
            None if self.receiving => {
                e.complete = false;
                return;
            }
            None => {}
        }
        let ports: &'m [Port] = if d.ports.is_empty() {
            base.map_or(&[][..], |b| &b.ports)
        } else {
            &d.ports
        };
        let named = port.map(|n| &*n.text);
        if let Some(file) = network::file_of(part, named, self.point, self.env) {
            e.noise_figure = d.noise_figure.or(base.and_then(|b| b.noise_figure));
            self.measured(e, part.kind, file);
            return;
        }
        let swr = pick(&d.swr, self.point, self.env)
            .or_else(|| base.and_then(|b| pick(&b.swr, self.point, self.env)));
        let stated_swr = swr.is_some();
        // an SWR of exactly 1 reflects nothing
        let swr = swr
            .filter(|s| s.value.value != 1.0 || s.value.u != 0.0)
            .map(|s| self.wiring.swr(&s.value, Cause::Reflection(s.figure.loc)));
        if network::amplifies(part.kind) {
            return self.amplifier(e, d, base, swr);
        }
        let Ok(chosen) = chosen(ports, named) else {
            // reported once for the chain, see `checks`
            e.complete = false;
            return;
        };
        let figures: &'m [Figure] = chosen.map_or(&[], |p| &p.loss);
        let Some(picked) = self.loss_of(part.kind, chosen) else {
            e.complete = false;
            return;
        };
        let stated = picked.map(|p| {
            self.picked(e, &p);
            self.wiring
                .positive("loss, dB", &p.value, Cause::Device(p.figure.loc))
        });
        if part.kind == PartKind::Divider {
            self.divider(e, d, base, stated, swr);
            if !stated_swr {
                let tee = d.tee || base.is_some_and(|b| b.tee);
                self.assumed.add(
                    match tee {
                        true => Assumed::JunctionIdeal,
                        false => Assumed::DividerIdeal,
                    },
                    e.who,
                );
            }
            return;
        }
        let loss = if let Some(l) = stated {
            Loss::Stated(l)
        } else if let Some(c) = d.coupling.or(base.and_then(|b| b.coupling)) {
            e.basis = Basis::Computed;
            Loss::Coupling(
                self.wiring
                    .positive("coupling, dB", &c, Cause::Coupling(e.who)),
            )
        } else if figures.is_empty() && ports.is_empty() {
            self.lossless(e, part);
            if part.kind == PartKind::Tuner {
                e.net = Net::Tuner {
                    loss: Input::exact("loss, dB", 0.0),
                };
            }
            return;
        } else {
            self.no_figure(e, "loss");
            return;
        };
        self.reversed = d.reversed || base.is_some_and(|b| b.reversed);
        self.passive(e, part.kind, d, base, (loss, swr));
        // a tuner makes its match
        if !stated_swr && e.loss_db > 0.0 && part.kind != PartKind::Tuner {
            self.assumed.add(Assumed::DeviceMatched, e.who);
        }
    }

    /// A device with a gain.
    fn amplifier(
        &mut self,
        e: &mut Element<'m>,
        d: &'m Device,
        base: Option<&'m Device>,
        swr: Option<Input>,
    ) {
        e.noise_figure = d.noise_figure.or(base.and_then(|b| b.noise_figure));
        self.reversed = d.reversed || base.is_some_and(|b| b.reversed);
        let gain = pick(&d.gain, self.point, self.env)
            .or_else(|| base.and_then(|b| pick(&b.gain, self.point, self.env)));
        let Some(p) = gain else {
            return self.no_figure(e, "gain");
        };
        self.picked(e, &p);
        let gain = Measure {
            value: -p.value.value,
            ..p.value
        };
        let forward = self.wiring.figure(
            "loss forward, dB",
            &gain,
            Cause::Amplification(p.figure.loc),
        );
        self.one_way(e, forward, None, swr);
    }

    /// A device of which nothing is stated. A device class of the same name as its tag was meant
    /// to be its figures: the tag is the reader's own word, the class follows `of`.
    fn lossless(&mut self, e: &Element<'m>, part: &'m Part) {
        let mut d = Diagnostic::new(
            &codes::LOSSLESS_PART,
            e.who,
            format!(
                "{} has no loss stated and is taken as lossless; every real {} loses something.",
                e.subject(),
                e.kind
            ),
        )
        .at("no loss");
        let class = part
            .tag
            .as_ref()
            .filter(|t| self.env.device(&t.text).is_some());
        let in_station = self
            .station
            .is_some_and(|s| s.parts.iter().any(|p| p.loc == part.loc));
        d = match class {
            Some(t) => {
                let of = if in_station {
                    format!("X1 of {}", t.text)
                } else {
                    format!("of {}", t.text)
                };
                d.help(format!(
                    "`{}` is taken as its tag. The device of that name gives its figures with `of`: `{} {of}`.",
                    t.text, e.kind
                ))
                .fix(format!("write `{of}`"), t.loc, of)
            }
            None => d.help(format!(
                "Written for example `{} {} 0.3 dB ± 0.1 dB`.",
                e.kind,
                part.tag.as_ref().map_or("X1", |t| &t.text)
            )),
        };
        self.diags.push(d);
    }

    /// A part without a supply whose loss is known.
    fn passive(
        &mut self,
        e: &mut Element<'m>,
        kind: PartKind,
        d: &'m Device,
        base: Option<&'m Device>,
        (loss, swr): (Loss, Option<Input>),
    ) {
        let matched = swr.is_none();
        let ratio = d.ratio.or(base.and_then(|b| b.ratio));
        match (kind, loss) {
            (PartKind::Isolator | PartKind::Circulator, Loss::Stated(forward)) => {
                let isolation = d.isolation.or(base.and_then(|b| b.isolation));
                let at = e.who;
                let backward = isolation.map(|i| {
                    self.wiring
                        .positive("isolation, dB", &i, Cause::Isolation(at))
                });
                if backward.is_none() {
                    self.assumed.add(Assumed::IsolationComplete, e.who);
                }
                self.one_way(e, forward, backward, swr);
            }
            (PartKind::Tuner, Loss::Stated(loss)) => e.net = Net::Tuner { loss },
            (PartKind::Balun, Loss::Stated(loss)) if matched || ratio.is_some() => {
                let across = "share of the loss across the line";
                let sits = match d.sits.or(base.and_then(|b| b.sits)) {
                    // what is measured with its reflections says nothing of its place
                    _ if !matched => Input::exact(across, 0.5),
                    Some(Sits::Series) => Input::exact(across, 0.0),
                    Some(Sits::Shunt) => Input::exact(across, 1.0),
                    // anywhere between
                    None => {
                        self.assumed.add(Assumed::BalunLossPlace, e.who);
                        self.wiring
                            .input(
                                across,
                                0.5,
                                0.5 / libm::sqrt(3.0),
                                Cause::Sits(e.who),
                                Shape::Rectangular,
                            )
                            .within(0.0, 1.0)
                    }
                };
                let ratio = match ratio {
                    Some(r) => {
                        self.wiring
                            .positive("ratio of impedances", &r, Cause::Reflection(e.who))
                    }
                    None => Input::exact("ratio of impedances", 1.0),
                };
                let phase = self.wiring.phase(1, e.who);
                let of_loss = |loss| Net::Balun {
                    loss,
                    ratio,
                    sits,
                    turned: self.receiving,
                    phase,
                };
                if matched {
                    e.net = of_loss(loss);
                } else {
                    let ideal = of_loss(Input::exact("loss, dB", 0.0));
                    self.two_port(e, loss, swr);
                    let own = std::mem::replace(&mut e.net, Net::Several(Vec::new()));
                    e.net = Net::Several(if self.receiving {
                        vec![ideal, own]
                    } else {
                        vec![own, ideal]
                    });
                }
            }
            (_, Loss::Stated(loss)) => self.two_port(e, loss, swr),
            (_, loss) => {
                let phase = self.wiring.phase(if matched { 1 } else { 3 }, e.who);
                e.net = Net::Device { loss, swr, phase };
            }
        }
        e.loss_db = e.net.matched_loss(&self.context(), &super::line::nominal());
    }

    /// A part that is another one passed the other way.
    fn one_way(
        &mut self,
        e: &mut Element<'m>,
        forward: Input,
        backward: Option<Input>,
        swr: Option<Input>,
    ) {
        // a part that is reversed and passed backwards is passed the right way
        let turned = self.backwards != self.reversed;
        if turned && backward.is_none() {
            // what passes the wrong way is not known
            e.complete = false;
        }
        let phase = self.wiring.phase(2, e.who);
        e.net = Net::OneWay {
            forward,
            backward,
            swr,
            turned,
            phase,
        };
        e.loss_db = if e.complete {
            e.net.matched_loss(&self.context(), &super::line::nominal())
        } else {
            0.0
        };
    }

    /// A divider: a junction where branches follow, else one of its arms.
    fn divider(
        &mut self,
        e: &mut Element<'m>,
        d: &'m Device,
        base: Option<&'m Device>,
        total: Option<Input>,
        swr: Option<Input>,
    ) {
        let ways = d.ways.or(base.and_then(|b| b.ways)).unwrap_or(2);
        let stated = match base {
            Some(b) if d.excess.is_empty() => &b.excess,
            _ => &d.excess,
        };
        let excess = match pick(stated, self.point, self.env) {
            Some(p) => {
                self.wiring
                    .positive("excess loss, dB", &p.value, Cause::Device(p.figure.loc))
            }
            None if !stated.is_empty() => return self.no_figure(e, "excess loss"),
            None => Input::exact("excess loss, dB", 0.0),
        };
        e.basis = Basis::Computed;
        let split = match base {
            Some(b) if d.split.is_empty() => &b.split,
            _ => &d.split,
        };
        let junction = if d.tee || base.is_some_and(|b| b.tee) {
            e.lossless = excess.nominal() == 0.0 && !excess.is_uncertain();
            Junction::Tee { excess }
        } else {
            let shares = split
                .iter()
                .enumerate()
                .map(|(i, s)| {
                    let branch = u32::try_from(i).unwrap_or(u32::MAX);
                    self.wiring
                        .positive("share of the power", s, Cause::Share(e.who, branch))
                        .within(0.0, 1.0)
                })
                .collect();
            Junction::Divider {
                shares,
                excess,
                total,
            }
        };
        let nominal = super::line::nominal();
        e.loss_db = junction.matched_loss(ways as usize, 0, &nominal);
        // used without branches it is one arm, the others ending matched
        let arm = Net::Device {
            loss: Loss::Arm(Box::new(junction.clone()), ways),
            swr,
            phase: self.wiring.phase(if swr.is_some() { 3 } else { 1 }, e.who),
        };
        e.net = arm;
        let swr = swr.map(|s| (s, self.wiring.phase(3, e.who)));
        e.junction = Some((junction, swr));
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
            None => None,
        }
    }
}

/// The port a chain passes: the named one, else the one without a name or the only one. None of a
/// device without ports; an error where none of its ports is meant.
fn chosen<'m>(ports: &'m [Port], named: Option<&str>) -> Result<Option<&'m Port>, ()> {
    let found = match named {
        Some(n) => ports.iter().find(|p| &*p.name.text == n),
        None => ports
            .iter()
            .find(|p| p.name.text.is_empty())
            .or(match ports {
                [only] => Some(only),
                _ => None,
            }),
    };
    if found.is_none() && (named.is_some() || !ports.is_empty()) {
        return Err(());
    }
    Ok(found)
}
