//! Lines: cable by the metre, a stated loss, or a file.

use downlead_physics::line::conductor_temperature_ratio;
use downlead_physics::net::input::{Input, Shape, Spread};
use downlead_physics::net::part::{self as net, Length, Loss, Part as Net, Rate};
use downlead_quantity::Measure;
use downlead_station::model::{Basis, Cable, CableLoss, Line, LineLength, Name, Part, PartKind};

use super::{Build, Element, LineAt};
use crate::assume::Assumed;
use crate::cable::{self, CableAt};
use crate::cause::Cause;
use crate::network;
use crate::point::pick;
use crate::wiring::Wiring;

/// What a run outdoors may be on a winter night, °C (our choice).
pub(crate) const COLD_C: f64 = -20.0;

impl<'m> Build<'m, '_> {
    pub(super) fn line(&mut self, e: &mut Element<'m>, part: &'m Part, l: &'m Line) {
        self.stated_line(e, part, l);
        // a length or an added loss that is a guess makes the loss of the line one
        let added = pick(&l.added, self.point, self.env);
        let guess = |basis| basis == Basis::Guess;
        if guess(part.meta.basis) || added.is_some_and(|p| guess(p.figure.meta.basis)) {
            e.basis = Basis::Guess;
        }
    }

    fn stated_line(&mut self, e: &mut Element<'m>, part: &'m Part, l: &'m Line) {
        let Some((t, place, stated)) = self.temperature(l.temperature.as_deref(), l.place.as_ref())
        else {
            e.complete = false;
            return;
        };
        e.celsius = self.noise_temperature(&t, place, part);
        let mut added_db = 0.0;
        let added = pick(&l.added, self.point, self.env).map(|p| {
            added_db = p.value.value;
            self.wiring
                .positive("added loss, dB", &p.value, Cause::Added(p.figure.loc))
        });
        if let Some(p) = pick(&l.wet, self.point, self.env) {
            e.wet_db = p.value.value;
            self.assumed.add(Assumed::DryCable, e.who);
        }
        if let Some(file) = network::picked(&l.network, self.point, self.env) {
            self.measured(e, part.kind, file);
            self.and_added(e, added, added_db);
            return;
        }
        let Some(length) = l.length else {
            if l.loss.is_empty() && l.cable.is_none() && !l.network.is_empty() {
                self.no_figure(e, "file");
                return;
            }
            self.lump(e, l, added, added_db);
            return;
        };
        let Some((name, cable, at)) = self.cable_of(e, l, t.value) else {
            e.complete = false;
            return;
        };
        if !stated {
            self.assumed.add(Assumed::Temperature20, e.who);
        }
        self.cable_notes(e, cable, &at, name);
        if at.velocity_assumed && !matches!(length, LineLength::Metres(_)) {
            self.assumed.add(Assumed::Velocity, e.who);
        }
        let cause = place.map_or(Cause::OwnTemperature(part.loc), Cause::Temperature);
        let celsius = self.wiring.figure("temperature, °C", &t, cause);
        let line = self.wired(e, cable, &at, (length, l), celsius, added);
        let net = Net::Line(Box::new(line));
        let cx = self.context();
        e.loss_db = net.matched_loss(&cx, &nominal());
        let length_m = match length {
            LineLength::Metres(m) => m.value,
            LineLength::Wavelengths { length, at_hz } => {
                let hz = at_hz.unwrap_or(self.point.hz);
                length.value * downlead_physics::line::wavelength(hz, at.velocity)
            }
        };
        // jumpers and tails are short, and often indoors
        if !stated && part.kind == PartKind::Run {
            let less = 1.0 - conductor_temperature_ratio(t.value, COLD_C);
            e.cold_db = at.alpha_c * length_m * less;
        }
        e.basis = if cable.built_in {
            Basis::Library
        } else {
            cable.meta.basis
        };
        e.meta = Some(&cable.meta);
        e.net = net;
        e.line = Some(LineAt {
            cable,
            at,
            cut: !matches!(length, LineLength::Metres(_)),
            temperature: t,
        });
    }

    /// The cable of a line and its figures at a temperature in °C; None where it has no usable
    /// loss, which is reported if a file is the reason.
    fn cable_of(
        &mut self,
        e: &Element<'m>,
        l: &'m Line,
        celsius: f64,
    ) -> Option<(&'m Name, &'m Cable, CableAt)> {
        let name = l.cable.as_ref()?;
        let cable = self.env.cable(&name.text)?;
        let at = cable::at_in(cable, self.point.hz, celsius, &self.env.attachments);
        if at.is_none()
            && let Some(CableLoss::Network { file, .. }) = &cable.loss
            && !cable.broken
        {
            let asked = network::Asked {
                file,
                chain: e.chain,
                point: self.point,
            };
            network::why_no_rate(&asked, self.env, &mut self.diags);
        }
        Some((name, cable, at?))
    }

    /// The inputs of a line of cable.
    fn wired(
        &mut self,
        e: &Element<'m>,
        cable: &'m Cable,
        at: &CableAt,
        (length, l): (LineLength, &'m Line),
        celsius: Input,
        added: Option<Input>,
    ) -> net::Line {
        let ends = self.line_swr(l);
        let name: &'m str = &cable.name.text;
        let shared: &'m str = cable.shared.as_ref().map_or(name, |s| &s.text);
        let w = &mut self.wiring;
        let scale = w
            .input(
                "factor on the loss",
                1.0,
                at.u_relative,
                Cause::Cable(shared),
                if at.normal {
                    Shape::Normal
                } else {
                    Shape::Rectangular
                },
            )
            .within(0.0, f64::INFINITY);
        let z0 = Some(w.positive(
            "impedance, ohm",
            &Measure {
                value: at.z0,
                ..cable.impedance.unwrap_or_default()
            },
            Cause::Impedance(name),
        ));
        let velocity = Some(w.figure(
            "velocity factor",
            &Measure {
                value: at.velocity,
                ..cable.velocity.unwrap_or_default()
            },
            Cause::Velocity(name),
        ));
        // what the construction gives is no input of its own
        let built = matches!(
            cable.loss,
            Some(CableLoss::Construction(_) | CableLoss::Wires(_))
        );
        let z0 = z0.filter(|_| !built || cable.impedance.is_some());
        let velocity = velocity.filter(|_| !built || cable.velocity.is_some());
        let rate = rate(w, cable, at);
        let length = match length {
            LineLength::Metres(m) => {
                Length::Metres(w.positive("length, m", &m, Cause::Length(l.length_loc)))
            }
            LineLength::Wavelengths { length, at_hz } => Length::Waves {
                count: w.positive("length, wavelengths", &length, Cause::Length(l.length_loc)),
                at_hz: at_hz.unwrap_or(self.point.hz),
            },
        };
        let cut = matches!(length, Length::Waves { .. });
        let spread = if at.velocity_assumed && !cut {
            Spread::Free
        } else {
            Spread::Known
        };
        net::Line {
            rate,
            scale,
            z0,
            velocity,
            celsius,
            reference_c: cable.reference_c,
            length,
            added,
            spread,
            phase: w.line_phase(spread, e.who),
            swr: ends.map(|s| (s, w.phase(3, e.who))),
        }
    }

    /// What the ends of a line reflect beyond its impedance, where that is stated.
    fn line_swr(&mut self, l: &'m Line) -> Option<Input> {
        let p = pick(&l.swr, self.point, self.env)?;
        (p.value.value != 1.0 || p.value.u != 0.0)
            .then(|| self.wiring.swr(&p.value, Cause::Reflection(p.figure.loc)))
    }

    /// A part after which a loss by age or water was added.
    fn and_added(&mut self, e: &mut Element<'m>, added: Option<Input>, db: f64) {
        let Some(added) = added else { return };
        e.loss_db += db;
        let phase = self.wiring.phase(1, e.who);
        let own = std::mem::replace(&mut e.net, Net::Several(Vec::new()));
        e.net = Net::Several(vec![
            own,
            Net::Device {
                loss: Loss::Stated(added),
                swr: None,
                phase,
            },
        ]);
    }

    /// A line of which only the loss is given.
    fn lump(&mut self, e: &mut Element<'m>, l: &'m Line, added: Option<Input>, added_db: f64) {
        match pick(&l.loss, self.point, self.env) {
            Some(p) => {
                e.loss_db = p.value.value;
                self.picked(e, &p);
                let loss = self
                    .wiring
                    .positive("loss, dB", &p.value, Cause::Device(p.figure.loc));
                let swr = self.line_swr(l);
                self.two_port(e, loss, swr);
                self.and_added(e, added, added_db);
            }
            None => self.no_figure(e, "loss"),
        }
    }
}

/// Reader of nominal values.
pub(super) fn nominal() -> downlead_physics::net::input::Nominal<'static> {
    downlead_physics::net::input::Nominal { angles: &[] }
}

fn coax<'m>(
    w: &mut Wiring<'m>,
    k: &downlead_station::model::Construction,
    name: &'m str,
) -> net::Coax {
    let mut of =
        |what: &'static str, m: &Measure| w.positive(what, m, Cause::Construction(name, what));
    let inner_resistivity = of(
        "resistivity of the inner conductor, ohm m",
        &k.inner_resistivity,
    );
    // one figure stated for both conductors is one cause
    let outer_resistivity = if k.outer_resistivity == k.inner_resistivity {
        inner_resistivity
    } else {
        of(
            "resistivity of the outer conductor, ohm m",
            &k.outer_resistivity,
        )
    };
    net::Coax {
        inner: of("inner conductor, m", &k.inner),
        outer: of("outer conductor, m", &k.outer),
        permittivity: of("permittivity", &k.permittivity),
        loss_tangent: of("loss tangent", &k.loss_tangent),
        strand_diameter: of("diameter factor of the strands", &k.strand_diameter),
        strand: of("factor of the strands", &k.strand),
        braid: of("factor of the braid", &k.braid),
        inner_resistivity,
        outer_resistivity,
    }
}

fn wires<'m>(w: &mut Wiring<'m>, k: &downlead_station::model::Wires, name: &'m str) -> net::Wires {
    let mut of =
        |what: &'static str, m: &Measure| w.positive(what, m, Cause::Construction(name, what));
    net::Wires {
        diameter: of("wire, m", &k.diameter),
        spacing: of("spacing, m", &k.spacing),
        permittivity: of("permittivity", &k.permittivity),
        resistivity: of("resistivity, ohm m", &k.resistivity),
    }
}

/// The inputs of a cable's loss per length.
fn rate<'m>(w: &mut Wiring<'m>, cable: &'m Cable, at: &CableAt) -> Rate {
    let name: &'m str = &cable.name.text;
    match &cable.loss {
        Some(CableLoss::TwoTerm { k1, k2 }) => Rate::TwoTerm {
            k1: w.positive("k1, dB/m/√MHz", k1, Cause::Construction(name, "k1")),
            k2: w.positive("k2, dB/m/MHz", k2, Cause::Construction(name, "k2")),
        },
        Some(CableLoss::Construction(k)) => Rate::Coax(Box::new(coax(w, k, name))),
        Some(CableLoss::Wires(k)) => Rate::Wires(Box::new(wires(w, k, name))),
        _ => {
            let mut of =
                |what, value| w.input(what, value, 0.0, Cause::Cable(name), Shape::Rectangular);
            Rate::Split {
                conductor: of(
                    "conductor loss at the reference temperature, dB/m",
                    at.alpha_c / at.temperature_factor,
                ),
                dielectric: of("dielectric loss of the cable, dB/m", at.alpha_d),
            }
        }
    }
}
