//! Elements: what a part is at one frequency, ready for the cascade.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::connector::{Bump, sqrt_loss};
use downlead_physics::devices::{coupler_main_loss, divider_loss};
use downlead_physics::line::LineParams;
use downlead_physics::mismatch::gamma_from_swr;
use downlead_physics::network::SMatrix;
use downlead_quantity::{Measure, frequency};
use downlead_station::model::{
    Basis, Bound, Cable, CableLoss, Connector, ConnectorLoss, Device, Figure, Line, LineLength,
    Meta, Name, NetworkFile, Part, PartData, PartKind, Port, Station,
};
use downlead_station::{Env, nearest};

use crate::assume::{Assumed, Assumptions};
use crate::cable::{self, CableAt};
use crate::cascade::{Piece, R0, Way};
use crate::cause::Cause;
use crate::network;
use crate::point::{Picked, Point, pick};

/// Above this uncertainty of its electrical length (two ways) a line's phase counts as unknown.
const PHASE_KNOWN_DEG: f64 = 20.0;

/// Above this characteristic impedance a line is no coaxial cable.
const PARALLEL_LINE_OHM: f64 = 150.0;

/// A line as evaluated.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LineAt<'m> {
    pub(crate) cable: &'m Cable,
    pub(crate) at: CableAt,
    pub(crate) length_m: f64,
    pub(crate) temperature: Measure,
}

/// A part at one frequency.
#[derive(Clone, Debug)]
pub(crate) struct Element<'m> {
    /// The part; none for a default join.
    pub(crate) part: Option<&'m Part>,
    /// Keyword of the kind, or `join`.
    pub(crate) kind: &'static str,
    /// Where it is defined.
    pub(crate) def: Loc,
    /// Where its name stands, for lists.
    pub(crate) who: Loc,
    /// The line of the chain.
    pub(crate) chain: Loc,
    /// Port taken.
    pub(crate) port: Option<&'m Name>,
    /// Matched loss, dB (negative: gain).
    pub(crate) loss_db: f64,
    /// Basis of the loss.
    pub(crate) basis: Basis,
    /// What is said about the loss.
    pub(crate) meta: Option<&'m Meta>,
    /// Contributions to the doubt, dB (standard, signed).
    pub(crate) causes: Vec<(Cause<'m>, f64)>,
    /// Line data.
    pub(crate) line: Option<LineAt<'m>>,
    /// Connector data with its count.
    pub(crate) connector: Option<(&'m Connector, u32)>,
    /// Network file its figures are from; they lie as on transmit, see [`network::turned`].
    pub(crate) file: Option<&'m NetworkFile>,
    /// Physical temperature, °C.
    pub(crate) celsius: f64,
    /// Noise figure of an active part, dB.
    pub(crate) noise_figure: Option<f64>,
    /// Largest extra loss when wet, dB.
    pub(crate) wet_db: f64,
    /// Whether its figures could all be had.
    pub(crate) complete: bool,
}

impl Element<'_> {
    /// What a sentence about it begins with: its tag, or `This pad`.
    pub(crate) fn subject(&self) -> String {
        match self.part.and_then(|p| p.tag.as_ref()) {
            Some(t) => t.text.to_string(),
            None => format!("This {}", self.kind),
        }
    }
}

/// What building elements needs.
pub(crate) struct Build<'m, 'o> {
    pub(crate) station: Option<&'m Station>,
    pub(crate) env: &'m Env,
    pub(crate) point: &'o Point,
    pub(crate) pieces: Vec<Piece>,
    pub(crate) assumed: Assumptions,
    pub(crate) diags: Vec<Diagnostic>,
}

impl<'m> Build<'m, '_> {
    fn element(
        &self,
        part: Option<&'m Part>,
        kind: &'static str,
        def: Loc,
        chain: Loc,
    ) -> Element<'m> {
        let who = part.and_then(|p| p.tag.as_ref()).map_or(def, |t| t.loc);
        Element {
            part,
            kind,
            def,
            who,
            chain,
            port: None,
            loss_db: 0.0,
            basis: Basis::Stated,
            meta: part.map(|p| &*p.meta),
            causes: Vec::new(),
            line: None,
            connector: None,
            file: None,
            celsius: 20.0,
            noise_figure: None,
            wet_db: 0.0,
            complete: true,
        }
    }

    /// A default join between two neighbours.
    pub(crate) fn join(&mut self, name: &'m Name, chain: Loc, index: usize) -> Element<'m> {
        let mut e = self.element(None, "join", name.loc, chain);
        self.connector(&mut e, 1, name, index);
        e
    }

    /// Several pairs of one kind.
    pub(crate) fn joins(&mut self, count: u32, name: &'m Name, chain: Loc) -> Element<'m> {
        let mut e = self.element(None, "connector", name.loc, chain);
        self.connector(&mut e, count, name, 0);
        e
    }

    /// A part that is neither the beginning nor the end of the chain.
    pub(crate) fn part(
        &mut self,
        part: &'m Part,
        port: Option<&'m Name>,
        chain: Loc,
        index: usize,
    ) -> Element<'m> {
        let mut e = self.element(Some(part), part.kind.word(), part.loc, chain);
        e.port = port;
        match &part.data {
            PartData::Line(l) => self.line(&mut e, part, l, index),
            PartData::Connector(n, name) => self.connector(&mut e, *n, name, index),
            PartData::Device(d) => self.device(&mut e, part, d, port, index),
            _ => e.complete = false,
        }
        e
    }

    fn no_figure(&mut self, e: &mut Element<'m>, what: &str) {
        e.complete = false;
        let who = e.subject();
        self.diags.push(
            Diagnostic::new(
                &codes::NO_FIGURE_FOR_BAND,
                e.who,
                format!(
                    "{who} has no {what} for {} ({}).",
                    self.point.band,
                    frequency(self.point.hz)
                ),
            )
            .at("no figure for this band")
            .also(e.chain, "the chain that needs it")
            .help(format!(
                "Add a figure `on {}`, or one without `on` that holds everywhere.",
                self.point.band
            )),
        );
    }

    fn picked(&mut self, e: &mut Element<'m>, p: &Picked<'m>) {
        e.basis = p.figure.meta.basis;
        if *p.figure.meta != Meta::default() {
            e.meta = Some(&p.figure.meta);
        }
        if p.outside > 1.000_001 {
            let who = e.subject();
            self.diags.push(
                Diagnostic::new(
                    &codes::BEYOND_RANGE,
                    p.figure.loc,
                    format!(
                        "{} lies outside the table of {who}; the nearest row is taken.",
                        frequency(self.point.hz)
                    ),
                )
                .at("nearest row"),
            );
        }
        if matches!(p.figure.meta.bound, Some((Bound::Maximum, _))) {
            self.assumed.add(Assumed::MaximumTaken, e.who);
        }
        if p.value.u == 0.0 && p.value.value != 0.0 {
            self.assumed.add(Assumed::LossExact, e.who);
        }
    }

    /// Temperature of a part: its own, its place's, else 20 °C.
    fn temperature(
        &mut self,
        own: Option<Measure>,
        place: Option<&'m Name>,
    ) -> (Measure, Option<&'m str>, bool) {
        if let Some(t) = own {
            return (t, None, true);
        }
        if let (Some(st), Some(p)) = (self.station, place)
            && let Some(t) = st
                .places
                .iter()
                .find(|q| q.name.text == p.text)
                .and_then(|q| q.temperature)
        {
            return (t, Some(&p.text), true);
        }
        (Measure::exact(20.0), None, false)
    }

    fn line(&mut self, e: &mut Element<'m>, part: &'m Part, l: &'m Line, index: usize) {
        let (t, place, stated) = self.temperature(l.temperature, l.place.as_ref());
        e.celsius = t.value;
        let mut added = 0.0;
        if let Some(p) = pick(&l.added, self.point, self.env) {
            added = p.value.value;
            e.causes.push((Cause::Added(p.figure.loc), p.value.u));
        }
        if let Some(p) = pick(&l.wet, self.point, self.env) {
            e.wet_db = p.value.value;
            self.assumed.add(Assumed::DryCable, e.who);
        }
        if let Some(file) = network::picked(&l.network, self.point, self.env) {
            self.measured(e, part.kind, file, index);
            if added > 0.0 {
                e.loss_db += added;
                self.pieces.push(Piece::point_loss(added, index));
            }
            return;
        }
        let Some(length) = l.length else {
            if l.loss.is_empty() && l.cable.is_none() && !l.network.is_empty() {
                self.no_figure(e, "file");
                return;
            }
            match pick(&l.loss, self.point, self.env) {
                Some(p) => {
                    e.loss_db = p.value.value + added;
                    e.causes.push((Cause::Device(p.figure.loc), p.value.u));
                    self.picked(e, &p);
                    self.pieces.push(if e.loss_db == 0.0 {
                        Piece::point_loss(0.0, index)
                    } else {
                        Piece::unknown(e.loss_db, 0.0, 0.0, Way::Both, index)
                    });
                }
                None => self.no_figure(e, "loss"),
            }
            return;
        };
        let Some(name) = &l.cable else {
            e.complete = false;
            return;
        };
        let Some(cable) = self.env.cable(&name.text) else {
            self.unknown_cable(name);
            e.complete = false;
            return;
        };
        let Some(at) = cable::at_in(cable, self.point.hz, t.value, &self.env.attachments) else {
            if let Some(CableLoss::Network { file, .. }) = &cable.loss {
                let asked = network::Asked {
                    file,
                    chain: e.chain,
                    point: self.point,
                };
                network::why_no_rate(&asked, self.env, &mut self.diags);
            }
            e.complete = false;
            return;
        };
        if !stated {
            self.assumed.add(Assumed::Temperature20, e.who);
        }
        self.cable_notes(e, cable, &at, name);
        let wavelength = downlead_physics::line::wavelength(self.point.hz, at.velocity);
        let length = match length {
            LineLength::Metres(m) => m,
            LineLength::Wavelengths(w) => {
                if at.velocity_assumed {
                    self.assumed.add(Assumed::Velocity, e.who);
                }
                Measure {
                    value: w.value * wavelength,
                    u: w.u * wavelength,
                }
            }
        };
        let matched = at.loss() * length.value;
        e.loss_db = matched + added;
        e.basis = if cable.built_in {
            Basis::Library
        } else {
            cable.meta.basis
        };
        e.meta = Some(&cable.meta);
        let cause: &str = cable.shared.as_ref().map_or(&cable.name.text, |s| &s.text);
        e.causes
            .push((Cause::Cable(cause), at.u_relative * matched));
        e.causes
            .push((Cause::Length(l.length_loc), at.loss() * length.u));
        if t.u > 0.0 {
            // d(loss)/dT of the conductor part: half the resistance coefficient over the factor
            let slope = 0.5 * downlead_physics::COPPER_TEMPCO
                / (1.0 + downlead_physics::COPPER_TEMPCO * (t.value - 20.0));
            let cause = place.map_or(Cause::Length(part.loc), Cause::Temperature);
            e.causes
                .push((cause, at.alpha_c * length.value * slope * t.u));
        }
        let params = LineParams {
            r0_ohm: at.z0,
            velocity_factor: at.velocity,
            alpha_c_db_per_m: at.alpha_c,
            alpha_d_db_per_m: at.alpha_d,
        };
        // an electrical length given as such is known, whatever the velocity factor
        let u_velocity = if matches!(l.length, Some(LineLength::Wavelengths(_))) {
            0.0
        } else {
            at.u_velocity
        };
        let u_length = libm::hypot(length.u, length.value * u_velocity / at.velocity);
        let u_phase_deg = 2.0 * 360.0 * u_length / wavelength;
        if u_phase_deg <= PHASE_KNOWN_DEG && !at.velocity_assumed {
            self.pieces.push(Piece::known(
                SMatrix::line(&params, self.point.hz, length.value, R0),
                index,
            ));
        } else {
            // the electrical length is not known: the steps of impedance at both ends are, the
            // phase between them is not
            let zc = params.zc(self.point.hz);
            let z0 = num_complex::Complex64::new(at.z0, 0.0);
            let own = downlead_physics::cx::abs(downlead_physics::mismatch::reflection(zc, z0));
            let step = (at.z0 - R0).abs() > 1e-9;
            if step {
                self.pieces
                    .push(Piece::known(SMatrix::step(R0, at.z0), index));
            }
            self.pieces
                .push(Piece::unknown(matched, own, own, Way::Both, index));
            if step {
                self.pieces
                    .push(Piece::known(SMatrix::step(at.z0, R0), index));
            }
        }
        if added > 0.0 {
            self.pieces.push(Piece::point_loss(added, index));
        }
        e.line = Some(LineAt {
            cable,
            at,
            length_m: length.value,
            temperature: t,
        });
    }

    /// A part whose two-port stands in a file.
    fn measured(
        &mut self,
        e: &mut Element<'m>,
        kind: PartKind,
        file: &'m NetworkFile,
        index: usize,
    ) {
        e.file = Some(file);
        e.basis = file.figure.meta.basis;
        e.meta = Some(&file.figure.meta);
        let asked = network::Asked {
            file,
            chain: e.chain,
            point: self.point,
        };
        let Some(piece) = network::two_port(&asked, kind, self.env, index, &mut self.diags) else {
            e.complete = false;
            return;
        };
        e.loss_db = piece.loss_db;
        e.causes
            .push((Cause::Device(file.figure.loc), file.figure.value.u));
        if file.figure.value.u == 0.0 {
            self.assumed.add(Assumed::FileExact, e.who);
        }
        self.pieces.push(piece);
    }

    fn unknown_cable(&mut self, name: &'m Name) {
        if self.env.is_broken(&name.text) {
            return;
        }
        let mut d = Diagnostic::new(
            &codes::UNKNOWN_CABLE,
            name.loc,
            format!("Cable `{}` is not defined.", name.text),
        )
        .at("not in the library or the files");
        let own = self.env.cables.keys().map(AsRef::as_ref);
        let near = nearest(
            &name.text,
            own.chain(downlead_station::library().cable_names()),
        );
        d = match near {
            Some(n) => d.help(format!("Did you mean `{n}`?")).fix(format!("write `{n}`"), name.loc, n),
            None => d.help("`downlead catalogue --kind cable` lists the library; or define your own: `cable NAME { … }`."),
        };
        self.diags.push(d);
    }

    fn cable_notes(&mut self, e: &Element<'m>, cable: &'m Cable, at: &CableAt, name: &'m Name) {
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
                        "{} lies outside what is known of `{}`{range}: the loss is extrapolated to {} dB/100 m and its doubt doubled.",
                        frequency(self.point.hz),
                        name.text,
                        downlead_quantity::number(at.loss() * 100.0, 2),
                    ),
                )
                .at("outside its range")
                .also(cable.name.loc, "the cable"),
            );
        }
        // nobody puts a parallel-wire line into a chain by accident
        if (at.z0 - R0).abs() > 2.5 && at.z0 < PARALLEL_LINE_OHM {
            let swr = at.z0.max(R0) / at.z0.min(R0);
            self.diags.push(
                Diagnostic::new(
                    &codes::IMPEDANCE_JUMP,
                    name.loc,
                    format!(
                        "`{}` is a cable of {} ohm in a chain of 50 ohm: SWR up to {} and up to {} more loss, depending on its length.",
                        name.text,
                        downlead_quantity::number(at.z0, 1),
                        downlead_quantity::number(swr * swr, 2),
                        downlead_quantity::db(downlead_physics::mismatch::mismatch_loss(gamma_from_swr(swr * swr))),
                    ),
                )
                .at(format!("{} ohm", downlead_quantity::number(at.z0, 1)))
                .help("The mismatch is computed; nothing need be changed if the cable is meant."),
            );
        }
    }

    fn connector(&mut self, e: &mut Element<'m>, count: u32, name: &'m Name, index: usize) {
        let Some(c) = self.env.connector(&name.text) else {
            if self.env.is_broken(&name.text) {
                e.complete = false;
                return;
            }
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
            e.complete = false;
            return;
        };
        e.connector = Some((c, count));
        e.meta = Some(&c.meta);
        e.basis = c.meta.basis;
        let one = match c.loss {
            Some(ConnectorLoss::Root(k)) => sqrt_loss(k, self.point.hz),
            Some(ConnectorLoss::Constant(l)) => l,
            None => 0.0,
        };
        let family: &str = c.families.as_ref().map_or(&c.name.text, |f| &f.0);
        e.causes.push((
            Cause::Connector(family),
            f64::from(count) * (one * c.u.0 + c.u.1),
        ));
        e.loss_db = f64::from(count) * one;
        if e.loss_db > 0.0 && c.u == (0.0, 0.0) {
            self.assumed.add(Assumed::LossExact, e.who);
        }
        match c.bump {
            // several pairs lie at unknown distances from each other
            Some((z_ohm, electrical_m)) => {
                let s = Bump {
                    z_ohm,
                    electrical_m,
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

    fn device(
        &mut self,
        e: &mut Element<'m>,
        part: &'m Part,
        d: &'m Device,
        port: Option<&'m Name>,
        index: usize,
    ) {
        let class = match &d.class {
            Some(name) => match self.env.device(&name.text) {
                Some(c) if c.kind != part.kind => {
                    let (is, want) = (c.kind.with_article(), part.kind.with_article());
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
                    e.complete = false;
                    return;
                }
                Some(c) => {
                    e.meta = Some(&c.meta);
                    e.basis = c.meta.basis;
                    Some(c)
                }
                None if self.env.is_broken(&name.text) => {
                    e.complete = false;
                    return;
                }
                None => {
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
                        Some(n) => diag.help(format!("Did you mean `{n}`?")).fix(
                            format!("write `{n}`"),
                            name.loc,
                            n,
                        ),
                        None => diag.help("`downlead catalogue --kind device` lists the library."),
                    };
                    self.diags.push(diag);
                    e.complete = false;
                    return;
                }
            },
            None => None,
        };
        let base = class.map(|c| &c.device);
        let (t, _, _) = self.temperature(d.temperature, d.place.as_ref());
        e.celsius = t.value;
        let ports: &'m [Port] = if d.ports.is_empty() {
            base.map_or(&[][..], |b| &b.ports)
        } else {
            &d.ports
        };
        let named = port.map(|n| &*n.text);
        if let Some(file) = network::file_of(part, named, self.point, self.env) {
            e.noise_figure = d.noise_figure.or(base.and_then(|b| b.noise_figure));
            self.measured(e, part.kind, file, index);
            return;
        }
        let swr = pick(&d.swr, self.point, self.env)
            .or_else(|| base.and_then(|b| pick(&b.swr, self.point, self.env)));
        let gamma = swr.map_or(0.0, |s| gamma_from_swr(s.value.value));
        if part.kind == PartKind::Amplifier || part.kind == PartKind::Preamplifier {
            e.noise_figure = d.noise_figure.or(base.and_then(|b| b.noise_figure));
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
            loss = Some(coupler_main_loss(c));
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
}
