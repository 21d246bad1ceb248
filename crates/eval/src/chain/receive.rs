//! Loss and noise from the antenna to the receiver.

use downlead_base::{Diagnostic, Loc, Severity, codes};
use downlead_physics::mismatch::swr_from_gamma;
use downlead_physics::net::evaluate::{Evaluation, Quantity, noise_figure};
use downlead_physics::net::input::Input;
use downlead_physics::net::noise::{Receiving, Stage};
use downlead_physics::net::part::{Load, Part as Net};
use downlead_physics::net::{Fields, Network};
use downlead_physics::noise::passive_noise_figure;
use downlead_quantity::{Measure, dbm_to_w};
use downlead_station::model::{Antenna, Basis, Part, PartData, PartKind, Receiver};

use super::Run;
use super::antenna::antenna_wave;
use super::known::Known;
use super::stretch::{Ending, Stretch};
use super::transmit::Reached;
use crate::element::{Build, Element};
use crate::result::{BandResult, NodeKind, NodeNoise, NodeResult};
use crate::verdict;
use crate::walk::Stop;

/// Part, antenna and place in the chain of the antenna a receiving chain begins with.
type Aerial<'m> = (&'m Part, &'m Antenna, Loc);

/// A receiving chain solved, before its rows are written.
struct Received<'e> {
    e: &'e Evaluation,
    known: Known,
    /// Whether every part, the antenna included, could be computed.
    complete: bool,
    /// Level needed at the antenna and its standard uncertainty, dBm and dB.
    sensitivity: Option<(f64, f64)>,
}

impl Received<'_> {
    /// Loss from the antenna to a node, dB.
    fn lost(&self, at: usize) -> f64 {
        lost(self.e, at)
    }

    /// Expanded uncertainty of that loss (k = 2), dB.
    fn u(&self, at: usize) -> f64 {
        2.0 * self.e.output(Quantity::Net(at)).map_or(0.0, |o| o.u)
    }

    fn swr(&self, at: usize) -> Option<f64> {
        let back = self.e.output(Quantity::Back(at)).map_or(0.0, |o| o.mean);
        // the antenna is a part of the network before the first
        self.known
            .swr(at - 1)
            .then(|| swr_from_gamma(libm::sqrt(back.clamp(0.0, 1.0))))
    }

    /// Level at a node when the least needed level is at the antenna, W; NaN if that is not known.
    fn level(&self, at: usize) -> f64 {
        self.sensitivity
            .map_or(f64::NAN, |l| dbm_to_w(l.0 - self.lost(at)))
    }
}

/// Loss from the antenna to a node, dB.
fn lost(e: &Evaluation, at: usize) -> f64 {
    -e.output(Quantity::Net(at)).map_or(f64::NAN, |o| o.mean)
}

impl<'m> Run<'m, '_> {
    pub(super) fn receive(
        &mut self,
        s: &mut Stretch<'m>,
        stops: &[Stop<'m>],
    ) -> (BandResult, Network, Evaluation) {
        let antenna = aerial(stops);
        let wave = self.wave(antenna);
        // what comes back from the antenna is part of every loss after it
        let all_known = s.complete && wave.is_some();
        let known = Known::of(s, wave.is_some());
        let stages = self.stages(s);
        let net = self.receiving_network(s, wave);
        let e = self.solved(&net, &[]);
        let total = -e.output(Quantity::Delivered).map_or(f64::NAN, |o| o.mean);
        let receiver = match &s.end {
            Ending::Receiver(p, loc) => p.data.receiver().map(|r| (*p, r, *loc)),
            _ => None,
        };
        let noisy = self.system_noise(s, receiver.map(|r| (r.0, r.1)), stages, &e);
        let needed = receiver.and_then(|(_, r, _)| r.sensitivity());
        let active = s.elements.iter().any(|e| e.loss_db < 0.0);
        // with a preamplifier the sensitivity follows the noise figure; without, the loss
        let sensitivity = match (needed, noisy) {
            (Some(n), Some(noise)) if active => {
                Some((n.value + noise[1].0, libm::hypot(n.u, noise[1].1)))
            }
            (Some(n), _) if !active => {
                let u = e.output(Quantity::Delivered).map_or(0.0, |o| o.u);
                Some((n.value + total, libm::hypot(n.u, u)))
            }
            _ => None,
        }
        .filter(|_| all_known);
        let heard = Received {
            e: &e,
            known,
            complete: all_known,
            sensitivity,
        };
        let wet = self.receiving_rows(s, &heard, antenna, receiver.map(|(p, _, loc)| (p, loc)));
        let complete = all_known && antenna.is_some() && receiver.is_some();
        let reached = Reached {
            budget: self.wiring.budget(&e, Quantity::Delivered),
            wet,
            cold: Vec::new(),
            complete,
            gains: true,
            dipole: false,
        };
        let whole = all_known.then_some(total).filter(|t| t.is_finite());
        let mut result = self.result(&net, &e, Quantity::Delivered, complete, &reached, whole);
        result.sensitivity_dbm = sensitivity.map(|l| l.0);
        result.sensitivity_u_db = sensitivity.map(|l| 2.0 * l.1);
        let system = noisy.map(|n| n[0]).filter(|_| all_known);
        result.noise_figure_db = system.map(|n| n.0);
        result.noise_figure_u_db = system.map(|n| 2.0 * n.1);
        if all_known {
            let own = receiver.map(|(_, r, _)| r.noise_figure);
            result.noise = noise(s, antenna.is_some(), own).into();
        }
        // there is no transmitter
        (result.swr, result.swr_worst) = (None, None);
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        (result, net, e)
    }

    /// The antenna as a source of its own reflection; None if its match could not be computed.
    fn wave(&mut self, antenna: Option<Aerial<'m>>) -> Option<Load> {
        let Some((part, antenna, loc)) = antenna else {
            return Some(Load::Matched);
        };
        let mut b = Build {
            station: self.cx.station,
            env: self.cx.env,
            point: self.point,
            wiring: std::mem::take(&mut self.wiring),
            backwards: false,
            reversed: false,
            receiving: true,
            foreign: false,
            alike: None,
            assumed: std::mem::take(&mut self.assumed),
            diags: Vec::new(),
        };
        let wave = antenna_wave(&mut b, part, antenna, loc);
        self.wiring = std::mem::take(&mut b.wiring);
        self.assumed = std::mem::take(&mut b.assumed);
        self.diags.append(&mut b.diags);
        wave
    }

    /// The antenna and all parts to the receiver; what the antenna could deliver to a load that
    /// takes most from it is 1 W.
    fn receiving_network(&self, s: &mut Stretch<'m>, wave: Option<Load>) -> Network {
        let mut feed = s.wired();
        feed.parts
            .insert(0, Net::Source(wave.unwrap_or(Load::Matched)));
        Network {
            hz: self.point.hz,
            level: Input::exact("power, dBW", 0.0),
            inputs: self.wiring.inputs.clone(),
            feed,
            phased: false,
            fields: Fields::InPhase,
        }
    }

    /// Noise figure at the antenna and what it is above the receiver's own, each with its
    /// standard uncertainty, dB; None where the receiver or an amplifier states no noise figure.
    fn system_noise(
        &mut self,
        s: &Stretch<'m>,
        receiver: Option<(&'m Part, &'m Receiver)>,
        mut stages: Vec<Stage>,
        e: &Evaluation,
    ) -> Option<[(f64, f64); 2]> {
        let silent = self.without_noise(s, receiver.map(|r| r.1));
        let (part, receiver) = receiver?;
        let own = receiver.noise_figure.filter(|_| !silent)?;
        // what reflections cost lies where they are
        for (i, (stage, element)) in stages.iter_mut().zip(&s.elements).enumerate() {
            stage.reflected_db = lost(e, i + 2) - lost(e, i + 1) - element.loss_db;
        }
        let chain = Receiving {
            reflected_db: lost(e, 1),
            stages,
            receiver: self.wiring.noise(&own, part.loc),
        };
        let found = noise_figure(&chain, self.point.hz, &self.wiring.inputs);
        self.noise = Some(chain);
        Some(found)
    }

    /// Writes a row for the antenna, for each part and for the receiver, and judges what the chain
    /// states between them. Returns the loss that water adds, dB.
    fn receiving_rows(
        &mut self,
        s: &Stretch<'m>,
        heard: &Received<'_>,
        antenna: Option<Aerial<'m>>,
        receiver: Option<(&'m Part, Loc)>,
    ) -> f64 {
        if let Some((p, _, chain)) = antenna {
            self.receiving_row(heard, (Some(p), None), chain, 1, heard.lost(1));
        }
        let mut wet = 0.0;
        let mut statements = s.statements.iter().peekable();
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                verdict::receive_statement(self, *loc, n, heard.lost(i + 1), heard.complete);
            }
            wet += e.wet_db;
            // what a part takes of the net power depends on all that follows
            let loss = match heard.complete {
                true => heard.lost(i + 2) - heard.lost(i + 1),
                false => e.loss_db,
            };
            self.receiving_row(heard, (e.part, Some(e)), e.chain, i + 2, loss);
        }
        let last = s.elements.len() + 1;
        for (_, n, loc) in statements {
            verdict::receive_statement(self, *loc, n, heard.lost(last), heard.complete);
        }
        if let Some((p, chain)) = receiver {
            self.receiving_row(heard, (Some(p), None), chain, last, 0.0);
        }
        wet
    }

    /// One row: the part and the element that stands for it, its place in the chain, the number of
    /// its node and its own loss in dB.
    fn receiving_row(
        &mut self,
        heard: &Received<'_>,
        (part, e): (Option<&'m Part>, Option<&Element<'m>>),
        chain: Loc,
        at: usize,
        loss_db: f64,
    ) {
        let def = e.map(|e| e.def).or(part.map(|p| p.loc));
        self.nodes.push(NodeResult {
            def: def.unwrap_or(chain),
            chain,
            tag: NodeResult::range_of(part.and_then(|p| p.tag.as_ref())),
            port: NodeResult::range_of(e.and_then(|e| e.port)),
            kind: e.map_or_else(
                || part.map_or(NodeKind::Join, |p| NodeKind::Part(p.kind)),
                |e| e.kind,
            ),
            branch: 0,
            basis: e.map_or(Basis::Stated, |e| e.basis),
            // what the antenna itself loses is the mismatch with all that follows
            loss_known: e.map_or(at > 1 || heard.complete, |e| e.complete),
            power_known: heard.complete,
            forward_known: heard.complete,
            loss_db,
            matched_db: e.map_or(0.0, |e| e.loss_db),
            cumulative_db: heard.lost(at),
            power_w: heard.level(at),
            forward_w: heard.level(at),
            uncertainty_db: heard.u(at),
            forward_uncertainty_db: heard.u(at),
            swr: heard.swr(at),
            heat_w: 0.0,
        });
    }

    /// Whether an amplifier states no noise figure: that of the system is not known then. Reported
    /// where the receiver asks for it.
    fn without_noise(&mut self, s: &Stretch<'m>, receiver: Option<&Receiver>) -> bool {
        let silent = |e: &&Element<'m>| e.complete && e.loss_db < 0.0 && e.noise_figure.is_none();
        let Some(e) = s.elements.iter().find(silent) else {
            return false;
        };
        if receiver.is_some_and(|r| r.noise_figure.is_some() || r.sensitivity().is_some()) {
            let mut d = Diagnostic::new(
                &codes::MISSING_VALUE,
                e.who,
                format!(
                    "{} has no noise figure, so that of the system and the sensitivity at the antenna are not known.",
                    e.subject()
                ),
            )
            .at("no noise figure")
            .also(e.chain, "the chain that needs it")
            .help("Written for example `preamplifier PR1 20 dB gain, noise figure 1 dB`.");
            d.severity = Severity::Warning;
            self.diags.push(d);
        }
        true
    }

    /// The stages of a receiving chain, what each loses and the noise it adds.
    fn stages(&mut self, s: &Stretch<'m>) -> Vec<Stage> {
        s.elements
            .iter()
            .map(|e| Stage {
                part: e.net.clone(),
                figure: e.noise_figure.map(|nf| self.wiring.noise(&nf, e.who)),
                celsius: e.celsius,
                reflected_db: 0.0,
            })
            .collect()
    }
}

/// The first antenna on the way.
fn aerial<'m>(stops: &[Stop<'m>]) -> Option<Aerial<'m>> {
    stops.iter().find_map(|x| match x {
        Stop::Part { part, loc, .. } if part.kind == PartKind::Antenna => match &part.data {
            PartData::Antenna(a) => Some((*part, &**a, *loc)),
            _ => None,
        },
        _ => None,
    })
}

/// What each row adds to the noise; `own` is the noise figure of the receiver, if there is one.
fn noise(s: &Stretch<'_>, antenna: bool, own: Option<Option<Measure>>) -> Vec<NodeNoise> {
    let stated = |m: Option<Measure>| NodeNoise {
        figure_db: m.map(|m| m.value),
        celsius: None,
    };
    let parts = s.elements.iter().map(|e| {
        if e.loss_db < 0.0 || e.noise_figure.is_some() {
            return stated(e.noise_figure);
        }
        NodeNoise {
            figure_db: Some(passive_noise_figure(
                e.loss_db,
                e.celsius.nominal() + 273.15,
            )),
            celsius: Some(e.celsius.nominal()),
        }
    });
    let antenna = antenna.then(|| stated(None));
    antenna
        .into_iter()
        .chain(parts)
        .chain(own.map(stated))
        .collect()
}
