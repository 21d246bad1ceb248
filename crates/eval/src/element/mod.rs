//! Elements: what a part is at one frequency, and the inputs of its network.

mod cable;
mod connector;
mod device;
mod foreign;
mod line;

pub(crate) use foreign::{Leg, NEAR, leg};
pub(crate) use line::COLD_C;

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::net::input::Input;
use downlead_physics::net::part::{Context, Junction, Loss, Part as Net};
use downlead_quantity::{Measure, frequency};
use downlead_station::Env;
use downlead_station::model::{
    Basis, Bound, Cable, Connector, Meta, Name, NetworkFile, Part, PartData, PartKind, Station,
};

use crate::assume::{Assumed, Assumptions};
use crate::cable::CableAt;
use crate::cause::Cause;
use crate::network;
use crate::point::{Picked, Point};
use crate::result::NodeKind;
use crate::wiring::Wiring;

/// A line as evaluated.
#[derive(Clone, Copy, Debug)]
pub(crate) struct LineAt<'m> {
    pub(crate) cable: &'m Cable,
    pub(crate) at: CableAt,
    /// Whether it was cut by its electrical length.
    pub(crate) cut: bool,
    pub(crate) temperature: Measure,
}

/// A part at one frequency.
#[derive(Clone, Debug)]
pub(crate) struct Element<'m> {
    /// The part; none for a default join.
    pub(crate) part: Option<&'m Part>,
    /// What it is.
    pub(crate) kind: NodeKind,
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
    /// What it is as a network.
    pub(crate) net: Net,
    /// Whether it is a junction without loss.
    pub(crate) lossless: bool,
    /// What branches hang on, and the SWR of its input with three phases.
    pub(crate) junction: Option<(Junction, Option<(Input, u32)>)>,
    /// Line data.
    pub(crate) line: Option<LineAt<'m>>,
    /// Connector data with its count.
    pub(crate) connector: Option<(&'m Connector, u32)>,
    /// Network file its figures are from.
    pub(crate) file: Option<&'m NetworkFile>,
    /// Physical temperature, °C.
    pub(crate) celsius: Input,
    /// Noise figure of an active part, dB.
    pub(crate) noise_figure: Option<Measure>,
    /// Largest extra loss when wet, dB.
    pub(crate) wet_db: f64,
    /// By how much a run of which no temperature is stated loses less in the cold, dB.
    pub(crate) cold_db: f64,
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
    pub(crate) wiring: Wiring<'m>,
    /// Whether the part in hand lies the other way round than it is passed.
    pub(crate) backwards: bool,
    /// Whether the text says that it lies the other way round.
    pub(crate) reversed: bool,
    /// Whether the chain is walked from the antenna.
    pub(crate) receiving: bool,
    /// Whether the frequency is one that the chain is not made for: what passes there must be said.
    pub(crate) foreign: bool,
    /// Phases of antennas after one divider: those of one SWR reflect alike. None outside of
    /// branches.
    pub(crate) alike: Option<Vec<(Measure, u32)>>,
    pub(crate) assumed: Assumptions,
    pub(crate) diags: Vec<Diagnostic>,
}

impl<'m> Build<'m, '_> {
    fn element(&self, part: Option<&'m Part>, kind: NodeKind, def: Loc, chain: Loc) -> Element<'m> {
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
            net: Net::Several(Vec::new()),
            lossless: false,
            junction: None,
            line: None,
            connector: None,
            file: None,
            celsius: Input::exact("temperature, °C", 20.0),
            noise_figure: None,
            wet_db: 0.0,
            cold_db: 0.0,
            complete: true,
        }
    }

    /// A default join between two neighbours.
    pub(crate) fn join(&mut self, name: &'m Name, chain: Loc) -> Element<'m> {
        let mut e = self.element(None, NodeKind::Join, name.loc, chain);
        self.connector(&mut e, 1, name);
        e
    }

    /// Several pairs of one kind.
    pub(crate) fn joins(&mut self, count: u32, name: &'m Name, chain: Loc) -> Element<'m> {
        let mut e = self.element(None, NodeKind::Part(PartKind::Connector), name.loc, chain);
        self.connector(&mut e, count, name);
        e
    }

    /// A part that is neither the beginning nor the end of the chain.
    pub(crate) fn part(
        &mut self,
        part: &'m Part,
        port: Option<&'m Name>,
        chain: Loc,
    ) -> Element<'m> {
        let mut e = self.element(Some(part), NodeKind::Part(part.kind), part.loc, chain);
        e.port = port;
        match &part.data {
            PartData::Line(l) if !l.broken => self.line(&mut e, part, l),
            PartData::Connector(n, name) => self.connector(&mut e, *n, name),
            PartData::Device(d) if !d.broken => self.device(&mut e, part, d, port),
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

    /// Temperature of a part: its own, its place's, else 20 °C; whether it is stated. None where
    /// that of its place could not be read.
    fn temperature(
        &mut self,
        own: Option<&Measure>,
        place: Option<&'m Name>,
    ) -> Option<(Measure, Option<&'m str>, bool)> {
        if let Some(t) = own {
            return Some((*t, None, true));
        }
        let named = |p: &&'m Name| {
            let mut places = self.station?.places.iter();
            places.find(|q| q.name.text == p.text)
        };
        Some(match place.and_then(|p| Some((p, named(&p)?))) {
            Some((_, q)) if q.broken => return None,
            Some((p, q)) => match q.temperature {
                Some(t) => (t, Some(&p.text), true),
                None => (Measure::exact(20.0), None, false),
            },
            None => (Measure::exact(20.0), None, false),
        })
    }

    /// The temperature of a part whose loss makes noise: where there is no receiver it moves nothing.
    fn noise_temperature(&mut self, t: &Measure, place: Option<&'m str>, part: &'m Part) -> Input {
        if !self.receiving {
            return Input::exact("temperature, °C", t.value);
        }
        let cause = place.map_or(Cause::OwnTemperature(part.loc), Cause::Temperature);
        self.wiring.figure("temperature, °C", t, cause)
    }

    /// The phase of what an antenna of an SWR reflects.
    pub(crate) fn load_phase(&mut self, swr: &Measure, who: Loc) -> u32 {
        let known = self
            .alike
            .as_ref()
            .and_then(|a| a.iter().find(|a| a.0 == *swr));
        if let Some((_, phase)) = known {
            self.assumed.add(Assumed::BranchesAlike, who);
            return *phase;
        }
        let phase = self.wiring.phase(1, who);
        if let Some(a) = &mut self.alike {
            a.push((*swr, phase));
        }
        phase
    }

    /// What parts are built for here.
    pub(crate) fn context(&self) -> Context {
        Context {
            hz: self.point.hz,
            phased: false,
        }
    }

    /// A reciprocal part of a stated loss; one that neither loses nor reflects anything is no part
    /// at all.
    fn two_port(&mut self, e: &mut Element<'m>, loss: Input, swr: Option<Input>) {
        let nothing = loss.nominal() == 0.0 && !loss.is_uncertain() && swr.is_none();
        if nothing {
            return;
        }
        let phase = self.wiring.phase(if swr.is_some() { 3 } else { 1 }, e.who);
        e.net = Net::Device {
            loss: Loss::Stated(loss),
            swr,
            phase,
        };
    }

    /// A part whose two-port stands in a file.
    fn measured(&mut self, e: &mut Element<'m>, kind: PartKind, file: &'m NetworkFile) {
        e.file = Some(file);
        e.basis = file.figure.meta.basis;
        e.meta = Some(&file.figure.meta);
        let asked = network::Asked {
            file,
            chain: e.chain,
            point: self.point,
        };
        let Some(m) = network::two_port(&asked, kind, self.env, &mut self.diags) else {
            e.complete = false;
            return;
        };
        // an amplifier's port 1 is its input wherever it stands
        let turned = self.receiving && !network::amplifies(kind);
        if let Some(d) = network::blocked(&asked, &m.s).filter(|_| turned) {
            self.diags.push(d);
            e.complete = false;
            return;
        }
        let s = if turned { m.s.reversed() } else { m.s };
        e.loss_db = -s.gain();
        let error = self.wiring.input(
            "error of the file, dB",
            0.0,
            file.figure.value.u,
            Cause::Device(file.figure.loc),
            crate::wiring::shape(&file.figure.value),
        );
        if file.figure.value.u == 0.0 {
            self.assumed.add(Assumed::FileExact, e.who);
        }
        let phase = if m.phase_known {
            0
        } else {
            self.wiring.phase(3, e.who)
        };
        e.net = Net::Measured {
            s: [s.s11, s.s12, s.s21, s.s22],
            phase_known: m.phase_known,
            error,
            phase,
        };
    }
}
