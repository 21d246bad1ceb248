//! Power from the transmitter to the antennas: every node and statement on the way.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_physics::mismatch::swr_from_gamma;
use downlead_physics::net::evaluate::{Evaluation, Quantity};
use downlead_physics::net::input::{Input, Shape};
use downlead_physics::net::{Fields, Network};
use downlead_quantity::{from_db, to_db};
use downlead_station::model::{Antenna, Node, Part, PartKind, Phasing};

use super::Run;
use super::antenna::gain_at;
use super::feed::{Feed, feed, feed_cause};
use super::known::Known;
use super::stretch::{Ending, Stretch, nodes_of};
use crate::assume::Assumed;
use crate::cause::Budget;
use crate::result::{BandResult, NodeKind, NodeResult};
use crate::verdict;
use crate::walk::Stop;

/// State at a node, for the statements there.
pub(crate) struct NodeState<'m> {
    /// Net and forward power, W; none where something could not be computed, as below.
    pub(crate) net_w: Option<f64>,
    pub(crate) forward_w: Option<f64>,
    /// Loss so far, dB.
    pub(crate) loss_db: Option<f64>,
    /// SWR looking on.
    pub(crate) swr: Option<f64>,
    /// By how much the reflection may be larger (k = 2).
    pub(crate) gamma_spread: f64,
    /// Matched loss between here and the end of the line, dB, one way.
    pub(crate) ahead_db: f64,
    /// Nodes before this one.
    pub(crate) nodes: usize,
    /// Node of the network.
    pub(crate) at: usize,
    /// Budget of the forward power there.
    pub(crate) forward: Budget<'m>,
    /// Budget of the net power there.
    pub(crate) net: Budget<'m>,
}

/// What reached the antennas.
pub(crate) struct Reached<'m> {
    pub(crate) budget: Budget<'m>,
    pub(crate) wet: f64,
    /// Runs that would lose less in the cold: their part, and by how much more that would radiate, dB.
    pub(crate) cold: Vec<(&'m Part, f64)>,
    /// Whether all losses and reflections could be computed.
    pub(crate) complete: bool,
    /// Whether the gains of all antennas could.
    pub(crate) gains: bool,
    /// Whether a gain was written in dBd.
    pub(crate) dipole: bool,
}

/// What is followed along the stretches.
struct Along<'m, 'e> {
    e: &'e Evaluation,
    /// Power of the source into a matched load, dB over 1 W.
    source_db: f64,
    /// The stated power over its mean: heat is that of the stated power.
    stated_share: f64,
    /// Next node of the network.
    at: usize,
    /// Share of the field of the ends still to come.
    shares: std::collections::VecDeque<f64>,
    known: Known,
    reached: Reached<'m>,
}

impl Along<'_, '_> {
    fn mean(&self, q: Quantity) -> f64 {
        self.e.output(q).map_or(f64::NAN, |o| o.mean)
    }

    fn net_db(&self, at: usize) -> f64 {
        self.mean(Quantity::Net(at))
    }

    /// Mean net power at a node over that of the source, times the stated one, W; and how much of
    /// the sample is in it.
    fn mean_net(&self, at: usize) -> (f64, f64) {
        let o = self.e.output(Quantity::Net(at));
        let (mean, weight) = o.map_or((f64::NAN, 0.0), |o| (o.mean_w, o.weight));
        (mean * self.stated_share, weight)
    }

    /// Heat between two powers: the difference of the levels' powers, where derivatives suffice,
    /// and of the mean powers where the sample takes their place.
    fn heat(&self, levels: f64, means: f64, weight: f64) -> f64 {
        ((1.0 - weight) * levels + weight * means).max(0.0)
    }

    /// Size of the reflection (rms over what is not known of it).
    fn gamma(&self, at: usize) -> f64 {
        libm::sqrt(self.mean(Quantity::Back(at)).clamp(0.0, 1.0))
    }

    /// SWR looking on, if it is known.
    fn swr(&self, at: usize) -> Option<f64> {
        self.known.swr(at).then(|| swr_from_gamma(self.gamma(at)))
    }

    /// Standard uncertainty of the net power; of the forward power where only that is known.
    fn u(&self, at: usize) -> f64 {
        let q = match self.known.net(at) {
            true => Quantity::Net(at),
            false => Quantity::Forward(at),
        };
        self.e.output(q).map_or(0.0, |o| o.u)
    }

    /// Standard uncertainty of the forward power.
    fn u_forward(&self, at: usize) -> f64 {
        let forward = self.e.output(Quantity::Forward(at));
        forward.map_or(0.0, |o| o.u)
    }
}

/// Where a stretch begins.
#[derive(Clone, Copy)]
struct From {
    branch: u16,
    /// Share of the field that its antennas contribute.
    weight: f64,
}

impl<'m> Run<'m, '_> {
    pub(super) fn transmit(
        &mut self,
        s: &mut Stretch<'m>,
        stops: &[Stop<'m>],
        out: &mut Vec<Diagnostic>,
    ) -> (BandResult, Network, Evaluation) {
        let feed = feed(stops, self.point, self.cx.env, out);
        let level = self.power_level(feed.as_ref());
        let fields = self.fields(s);
        let known = Known::of(s, feed.is_some());
        let mut net = Network {
            hz: self.point.hz,
            level,
            inputs: std::mem::take(&mut self.wiring.inputs),
            feed: s.wired(),
            phased: fields == Fields::ByLength,
            fields,
        };
        let judged = judged_nodes(s);
        let e = self.solved(&net, &judged);
        let source_db = net.level.nominal();
        if let Some(f) = &feed {
            self.source(f, &net, &e, has_tuner(s), known.swr(0));
        }
        let mut along = Along {
            e: &e,
            source_db,
            stated_share: 1.0 / net.level.mean_of_power(),
            at: 0,
            shares: net.end_shares().into(),
            known,
            reached: Reached {
                budget: Budget::default(),
                wet: 0.0,
                cold: Vec::new(),
                complete: s.whole(),
                gains: true,
                dipole: false,
            },
        };
        let start = From {
            branch: 0,
            weight: 1.0,
        };
        self.stretch(s, &mut along, start);
        let Along {
            mut reached, known, ..
        } = along;
        let radiated = e.output(Quantity::Eirp).filter(|_| reached.gains);
        let judged = if radiated.is_some() {
            Quantity::Eirp
        } else {
            Quantity::Delivered
        };
        reached.budget = self.wiring.budget(&e, judged);
        let loads = self.ratings(s, feed.as_ref());
        let delivered = ends(s)
            .then(|| e.output(Quantity::Delivered))
            .flatten()
            .map(|o| from_db(o.mean));
        let total = match delivered {
            Some(w) if w > 0.0 => source_db - to_db(w),
            _ => self.nodes.last().map_or(0.0, |n| n.cumulative_db),
        };
        let total = reached.complete.then_some(total).filter(|t| t.is_finite());
        let powers_known = total.is_some() && feed.is_some();
        let antenna_w = delivered.filter(|_| powers_known);
        let mean_w = feed.as_ref().and_then(|f| self.mean(f, antenna_w));
        let complete = powers_known && reached.gains;
        let mut result = self.result(&net, &e, judged, complete, &reached, total);
        if !known.swr(0) {
            (result.swr, result.swr_worst) = (None, None);
        }
        result.antenna_w = antenna_w;
        result.eirp_w = radiated.filter(|_| powers_known).map(|o| from_db(o.mean));
        result.gain_dbi = result
            .eirp_w
            .zip(result.antenna_w)
            .map(|(e, a)| to_db(e / a))
            .filter(|g| g.is_finite());
        result.mean_w = mean_w;
        result.loads = loads.into();
        // in another direction than the one where the lengths are compared the fields add fully
        if fields == Fields::ByLength {
            net.fields = Fields::InPhase;
            self.in_phase = Some(self.solved(&net, &[]));
            net.fields = fields;
        }
        self.evaluated = Some(e);
        verdict::judge(self, &mut result, feed.as_ref(), &reached);
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        // judged by it above
        let e = self
            .evaluated
            .take()
            .unwrap_or_else(|| self.solved(&net, &[]));
        (result, net, e)
    }

    /// The transmitter's power in dBW as an input of the network; 0 dBW where nothing states it.
    fn power_level(&mut self, feed: Option<&Feed<'m>>) -> Input {
        let Some(f) = feed else {
            return Input::exact("power of the transmitter, dBW", 0.0);
        };
        let (cause, u, normal) = feed_cause(f, &mut self.assumed);
        let shape = if normal {
            Shape::Normal
        } else {
            Shape::Rectangular
        };
        self.wiring.input(
            "power of the transmitter, dBW",
            to_db(f.watts),
            u,
            cause,
            shape,
        )
    }

    /// How the fields of several antennas add.
    fn fields(&mut self, s: &Stretch<'m>) -> Fields {
        if s.branches.is_empty() {
            return Fields::InPhase;
        }
        match self.cx.chain.phasing {
            Some(Phasing::InPhase) => Fields::InPhase,
            Some(Phasing::Apart) => Fields::Apart,
            None => {
                if let Some(e) = s.elements.last() {
                    self.assumed.add(Assumed::BranchesInPhase, e.who);
                }
                Fields::ByLength
            }
        }
    }

    /// The transmitter's own row: the mismatch it sees.
    fn source(&mut self, f: &Feed<'m>, net: &Network, e: &Evaluation, tuner: bool, known: bool) {
        let back = e.output(Quantity::Back(0)).map_or(0.0, |o| o.mean);
        let gamma = libm::sqrt(back.clamp(0.0, 1.0));
        let worst = net.largest_reflection(e).unwrap_or(gamma);
        if known && !tuner && worst.max(gamma) > 0.01 {
            self.assumed.add(
                Assumed::SourceMatched,
                f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
            );
        }
        self.largest = Some(worst);
        if known {
            self.foldback(f, gamma);
        }
        let net_db = e.output(Quantity::Net(0)).map_or(f64::NAN, |o| o.mean);
        let q = match known {
            true => Quantity::Net(0),
            false => Quantity::Forward(0),
        };
        let u = e.output(q).map_or(0.0, |o| o.u);
        let ml = to_db(f.watts) - net_db;
        self.nodes.push(NodeResult {
            def: f.part.loc,
            chain: f.loc,
            tag: NodeResult::range_of(f.part.tag.as_ref()),
            port: Span::default(),
            kind: NodeKind::Part(f.part.kind),
            branch: 0,
            basis: f.figure.meta.basis,
            loss_known: known,
            power_known: known,
            forward_known: true,
            loss_db: ml,
            matched_db: 0.0,
            cumulative_db: ml,
            power_w: from_db(net_db),
            forward_w: f.watts,
            uncertainty_db: 2.0 * u,
            forward_uncertainty_db: 2.0 * e.output(Quantity::Forward(0)).map_or(0.0, |o| o.u),
            swr: known.then(|| swr_from_gamma(gamma)),
            heat_w: 0.0,
        });
    }

    /// Follows the power through a stretch that begins at node `along.at`.
    fn stretch(&mut self, s: &Stretch<'m>, along: &mut Along<'m, '_>, from: From) {
        let mut statements = s.statements.iter().peekable();
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                self.state(*loc, n, along, (ahead(s, i), s.gaps.contains(&i)));
            }
            let before = along.net_db(along.at);
            along.at += 1;
            let at = along.at;
            let net = along.net_db(at);
            along.reached.wet += e.wet_db * from.weight;
            if let Some(p) = e.part.filter(|_| e.cold_db * from.weight > 0.0) {
                along.reached.cold.push((p, e.cold_db * from.weight));
            }
            self.velocity_matters(e, along, at);
            if along.known.net(at - 1) && along.known.net(at) {
                self.taps(e, along.e, at - 1, at);
            }
            let divides = matches!(s.end, Ending::Divider) && i + 1 == s.elements.len();
            if divides {
                self.divide(s, e, along, from, before);
                continue;
            }
            let loss = match along.known.swr(at - 1) {
                true => before - net,
                false => e.loss_db,
            };
            let active = e.loss_db < 0.0;
            self.nodes.push(NodeResult {
                def: e.def,
                chain: e.chain,
                tag: NodeResult::range_of(e.part.and_then(|p| p.tag.as_ref())),
                port: NodeResult::range_of(e.port),
                kind: e.kind,
                branch: from.branch,
                basis: e.basis,
                loss_known: e.complete,
                power_known: along.known.net(at),
                forward_known: along.known.forward(at),
                loss_db: loss,
                matched_db: e.loss_db,
                cumulative_db: along.source_db - net,
                power_w: from_db(net),
                forward_w: from_db(along.mean(Quantity::Forward(at))),
                uncertainty_db: 2.0 * along.u(at),
                forward_uncertainty_db: 2.0 * along.u_forward(at),
                swr: along.swr(at),
                heat_w: if active {
                    0.0
                } else {
                    let ((a, wa), (b, wb)) = (along.mean_net(at - 1), along.mean_net(at));
                    along.heat(from_db(before) - from_db(net), a - b, wa.max(wb))
                },
            });
        }
        // what is said before the antenna or after it is about the power into it, which does not
        // depend on its gain
        for (_, n, loc) in statements {
            self.state(*loc, n, along, (0.0, s.gaps.contains(&s.elements.len())));
        }
        if !matches!(s.end, Ending::Divider) {
            along.shares.pop_front();
        }
        if let Ending::Antenna(part, a, loc) = &s.end {
            let reached = !s.gaps.contains(&s.elements.len());
            self.antenna((part, a, *loc), along, from.branch, (reached, s.load_known));
        }
    }

    /// A line's velocity and impedance count where waves stand on it; where they are stated
    /// without a ±, that is listed.
    fn velocity_matters(
        &mut self,
        e: &crate::element::Element<'m>,
        along: &Along<'m, '_>,
        at: usize,
    ) {
        let Some(l) = &e.line else { return };
        // what the two reflections at its ends can do to the loss
        let own = ((l.at.z0 - 50.0) / (l.at.z0 + 50.0)).abs();
        let product = along.gamma(at).max(own) * along.gamma(at - 1).max(own);
        if product < 0.01 {
            return;
        }
        if !l.at.velocity_assumed && l.at.u_velocity == 0.0 && !l.cut {
            self.assumed.add(Assumed::VelocityExact, e.who);
        }
        if l.at.u_z0 == 0.0 && !l.at.z0_assumed {
            self.assumed.add(Assumed::ImpedanceExact, e.who);
        }
    }

    fn state(
        &mut self,
        loc: Loc,
        n: &'m Node,
        along: &Along<'m, '_>,
        // a gap there may stand before or after the statement
        (ahead_db, gap): (f64, bool),
    ) {
        let at = along.at;
        let known = &along.known;
        let gamma = along.gamma(at);
        let spread = along.e.output(Quantity::Back(at)).map_or(0.0, |o| {
            libm::sqrt((o.mean + 2.0 * o.u).clamp(0.0, 1.0)) - gamma
        });
        let net = along.net_db(at);
        let state = NodeState {
            net_w: known.net(at).then(|| from_db(net)),
            forward_w: known
                .forward(at)
                .then_some(())
                .filter(|()| !gap)
                .map(|()| from_db(along.mean(Quantity::Forward(at)))),
            loss_db: known.net(at).then_some(along.source_db - net),
            swr: along.swr(at),
            gamma_spread: spread.max(0.0),
            ahead_db,
            nodes: self.nodes.len(),
            at,
            forward: self.wiring.budget(along.e, Quantity::Forward(at)),
            net: self.wiring.budget(along.e, Quantity::Net(at)),
        };
        self.states.push((loc, n, state));
    }

    fn antenna(
        &mut self,
        (part, a, loc): (&'m Part, &'m Antenna, Loc),
        along: &mut Along<'m, '_>,
        branch: u16,
        // whether all before it is known, and what it reflects
        (reached, matched): (bool, bool),
    ) {
        let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        let at = along.at;
        let net = along.net_db(at);
        let mut basis = part.meta.basis;
        let forward_known = reached && along.known.forward(at);
        if part.kind == PartKind::Antenna && a.broken_gain {
            along.reached.gains = false;
        } else if part.kind == PartKind::Antenna {
            match gain_at(a, self.point, self.cx.env) {
                Some(g) => {
                    basis = g.basis;
                    along.reached.dipole |= g.dipole;
                    if g.u == 0.0 {
                        self.assumed.add(Assumed::GainExact, who);
                    }
                    if a.gain.iter().any(|x| x.directivity) && a.efficiency.is_none() {
                        self.assumed.add(Assumed::EfficiencyIncluded, who);
                    }
                }
                None if !a.gain.is_empty() => {
                    along.reached.gains = false;
                    self.diags.push(
                        Diagnostic::new(
                            &codes::NO_FIGURE_FOR_BAND,
                            who,
                            format!(
                                "The antenna has no gain for {} ({}).",
                                self.point.band,
                                downlead_quantity::frequency(self.point.hz)
                            ),
                        )
                        .at("no gain for this band")
                        .also(loc, "the chain that needs it"),
                    );
                }
                None => {}
            }
        }
        self.nodes.push(NodeResult {
            def: part.loc,
            chain: loc,
            tag: NodeResult::range_of(part.tag.as_ref()),
            port: Span::default(),
            kind: NodeKind::Part(part.kind),
            branch,
            basis,
            loss_known: true,
            power_known: forward_known && along.known.net(at),
            forward_known,
            loss_db: 0.0,
            matched_db: 0.0,
            cumulative_db: along.source_db - net,
            power_w: from_db(net),
            forward_w: from_db(along.mean(Quantity::Forward(at))),
            uncertainty_db: 2.0 * along.u(at),
            forward_uncertainty_db: 2.0 * along.u_forward(at),
            swr: matched.then(|| swr_from_gamma(along.gamma(at))),
            heat_w: if part.kind == PartKind::Load {
                let (mean, weight) = along.mean_net(at);
                along.heat(from_db(net), mean, weight)
            } else {
                0.0
            },
        });
    }

    /// The rows of a divider and its branches. Where all branches get the same, the divider's row
    /// says what each gets; else it says what all get together, and each branch begins with a row
    /// of its own.
    fn divide(
        &mut self,
        s: &Stretch<'m>,
        e: &crate::element::Element<'m>,
        along: &mut Along<'m, '_>,
        from: From,
        before: f64,
    ) {
        let input = along.at;
        let starts: Vec<usize> = {
            let mut at = input + 1;
            s.branches
                .iter()
                .map(|(_, b)| {
                    let start = at;
                    at += nodes_of(b);
                    start
                })
                .collect()
        };
        let into: Vec<f64> = starts.iter().map(|at| from_db(along.net_db(*at))).collect();
        let all: f64 = into.iter().sum();
        // each row is a mean in dB, and such means do not add to the watt: a junction without loss
        // has none all the same
        let before = if e.lossless { to_db(all) } else { before };
        let first = into.first().copied().unwrap_or(0.0);
        let known = starts.iter().all(|at| along.known.net(*at));
        let alike = known && into.iter().all(|w| (w / first - 1.0).abs() < 1e-6);
        let shown = if alike { first } else { all };
        let (mean_in, mut weight) = along.mean_net(input - 1);
        let mut mean_out = 0.0;
        for at in &starts {
            let (mean, w) = along.mean_net(*at);
            mean_out += mean;
            weight = weight.max(w);
        }
        let heat = match e.lossless {
            true => 0.0,
            false => along.heat(from_db(before) - all, mean_in - mean_out, weight),
        };
        let at = starts.first().copied().unwrap_or(input);
        let mut row = NodeResult {
            def: e.def,
            chain: e.chain,
            tag: NodeResult::range_of(e.part.and_then(|p| p.tag.as_ref())),
            port: NodeResult::range_of(e.port),
            kind: e.kind,
            branch: from.branch,
            basis: e.basis,
            loss_known: e.complete,
            power_known: known,
            forward_known: known,
            loss_db: match known {
                true => before - to_db(shown),
                false => e.loss_db,
            },
            matched_db: e.loss_db,
            cumulative_db: along.source_db - to_db(shown),
            power_w: shown,
            forward_w: if alike {
                from_db(along.mean(Quantity::Forward(at)))
            } else {
                all
            },
            uncertainty_db: 2.0 * along.u(if alike { at } else { input }),
            forward_uncertainty_db: 2.0 * along.u_forward(if alike { at } else { input }),
            swr: along.swr(if alike { at } else { input }),
            heat_w: heat,
        };
        self.nodes.push(row.clone());
        for ((name, b), start) in s.branches.iter().zip(&starts) {
            self.branches.push(name.clone());
            let branch = u16::try_from(self.branches.len()).unwrap_or(u16::MAX);
            if !alike {
                let net = along.net_db(*start);
                row = NodeResult {
                    branch,
                    loss_known: known,
                    power_known: along.known.net(*start),
                    forward_known: along.known.forward(*start),
                    loss_db: to_db(all) - net,
                    cumulative_db: along.source_db - net,
                    power_w: from_db(net),
                    forward_w: from_db(along.mean(Quantity::Forward(*start))),
                    uncertainty_db: 2.0 * along.u(*start),
                    forward_uncertainty_db: 2.0 * along.u_forward(*start),
                    swr: along.swr(*start),
                    heat_w: 0.0,
                    ..row
                };
                self.nodes.push(row.clone());
            }
            along.at = *start;
            let weight = along.shares.iter().take(ends_of(b)).sum();
            self.stretch(b, along, From { branch, weight });
        }
    }
}

/// Ends of a stretch and its branches.
fn ends_of(s: &Stretch<'_>) -> usize {
    if s.branches.is_empty() {
        1
    } else {
        s.branches.iter().map(|b| ends_of(&b.1)).sum()
    }
}

/// Whether power arrives anywhere.
fn ends(s: &Stretch<'_>) -> bool {
    matches!(s.end, Ending::Antenna(..)) || s.branches.iter().any(|b| ends(&b.1))
}

/// Whether the transmitter sees a tuner first of all that reflects.
fn has_tuner(s: &Stretch<'_>) -> bool {
    s.elements.iter().any(|e| e.kind.is(PartKind::Tuner))
}

/// Nodes at which an output is limited.
fn judged_nodes(s: &Stretch<'_>) -> Vec<usize> {
    fn walk(s: &Stretch<'_>, start: usize, out: &mut Vec<usize>) {
        out.extend(s.statements.iter().map(|x| start + x.0));
        let mut at = start + s.elements.len() + 1;
        for (_, b) in &s.branches {
            walk(b, at, out);
            at += nodes_of(b);
        }
    }
    let mut out = Vec::new();
    walk(s, 0, &mut out);
    out
}

/// By how much more is radiated in the cold, dB.
pub(crate) fn colder(r: &Reached<'_>) -> f64 {
    r.cold.iter().map(|c| c.1).sum()
}

/// Matched loss from an element to the end of its stretch. A divider gives back what its branches
/// reflect alike, so its division is no loss to a reflection.
fn ahead(s: &Stretch<'_>, from: usize) -> f64 {
    s.elements[from..]
        .iter()
        .filter(|e| e.part.is_none_or(|p| p.kind != PartKind::Divider))
        .map(|e| e.loss_db)
        .sum()
}
