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
use super::stretch::{Ending, Stretch};
use crate::assume::Assumed;
use crate::cause::Budget;
use crate::result::{BandResult, NodeKind, NodeResult};
use crate::verdict;
use crate::walk::Stop;

/// State at a node, for the statements there.
pub(crate) struct NodeState<'m> {
    /// Net and forward power, W.
    pub(crate) net_w: f64,
    pub(crate) forward_w: f64,
    /// Loss so far, dB.
    pub(crate) loss_db: f64,
    /// SWR looking on.
    pub(crate) swr: f64,
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
    pub(crate) complete: bool,
    /// Whether a gain was written in dBd.
    pub(crate) dipole: bool,
}

/// What is followed along the stretches.
struct Along<'m, 'e> {
    e: &'e Evaluation,
    /// Power of the source into a matched load, dB over 1 W.
    source_db: f64,
    /// Next node of the network.
    at: usize,
    /// Share of the field of the ends still to come.
    shares: std::collections::VecDeque<f64>,
    reached: Reached<'m>,
}

impl Along<'_, '_> {
    fn mean(&self, q: Quantity) -> f64 {
        self.e.output(q).map_or(f64::NAN, |o| o.mean)
    }

    fn net_db(&self, at: usize) -> f64 {
        self.mean(Quantity::Net(at))
    }

    /// Size of the reflection (rms over what is not known of it).
    fn gamma(&self, at: usize) -> f64 {
        libm::sqrt(self.mean(Quantity::Back(at)).clamp(0.0, 1.0))
    }

    fn u(&self, at: usize) -> f64 {
        self.e.output(Quantity::Net(at)).map_or(0.0, |o| o.u)
    }
}

/// Where a stretch begins.
#[derive(Clone, Copy)]
struct From {
    branch: u16,
    /// Whether all losses before it are known.
    known: bool,
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
        let level = match &feed {
            Some(f) => {
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
            None => Input::exact("power of the transmitter, dBW", 0.0),
        };
        let fields = self.fields(s);
        let mut net = Network {
            hz: self.point.hz,
            level,
            inputs: std::mem::take(&mut self.wiring.inputs),
            feed: s.wired(),
            phased: fields == Fields::ByLength,
            fields,
        };
        let judged = judged_nodes(s);
        let e = net.evaluate(&judged);
        let source_db = net.level.nominal();
        let tuner = has_tuner(s);
        if let Some(f) = &feed {
            self.source(f, &net, &e, tuner);
        }
        let mut along = Along {
            e: &e,
            source_db,
            at: 0,
            shares: net.end_shares().into(),
            reached: Reached {
                budget: Budget::default(),
                wet: 0.0,
                cold: Vec::new(),
                complete: s.complete,
                dipole: false,
            },
        };
        let start = From {
            branch: 0,
            known: feed.is_some(),
            weight: 1.0,
        };
        self.stretch(s, &mut along, start);
        let Along { mut reached, .. } = along;
        let radiated = e.output(Quantity::Eirp);
        let judged = if radiated.is_some() {
            Quantity::Eirp
        } else {
            Quantity::Delivered
        };
        reached.budget = self.wiring.budget(&e, judged);
        let loads = self.ratings(s, feed.as_ref());
        let ends_somewhere = ends(s);
        let antenna_w = ends_somewhere
            .then(|| e.output(Quantity::Delivered))
            .flatten()
            .map(|o| from_db(o.mean));
        let total = match antenna_w {
            Some(w) if w > 0.0 => source_db - to_db(w),
            _ => self.nodes.last().map_or(0.0, |n| n.cumulative_db),
        };
        let mean_w = feed.as_ref().and_then(|f| self.mean(f, antenna_w));
        let complete = reached.complete && feed.is_some() && total.is_finite();
        let mut result = self.result(&net, &e, judged, complete, &reached, total);
        result.antenna_w = antenna_w.filter(|_| feed.is_some());
        result.eirp_w = radiated.filter(|_| feed.is_some()).map(|o| from_db(o.mean));
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
            self.in_phase = Some(net.evaluate(&[]));
            net.fields = fields;
        }
        self.evaluated = Some(e);
        verdict::judge(self, &mut result, feed.as_ref(), &reached);
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        // judged by it above
        let e = self.evaluated.take().unwrap_or_else(|| net.evaluate(&[]));
        (result, net, e)
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
    fn source(&mut self, f: &Feed<'m>, net: &Network, e: &Evaluation, tuner: bool) {
        let back = e.output(Quantity::Back(0)).map_or(0.0, |o| o.mean);
        let gamma = libm::sqrt(back.clamp(0.0, 1.0));
        let worst = net.largest_reflection(e).unwrap_or(gamma);
        if !tuner && worst.max(gamma) > 0.01 {
            self.assumed.add(
                Assumed::SourceMatched,
                f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
            );
        }
        self.largest = Some(worst);
        self.foldback(f, gamma);
        let (net_db, u) = e
            .output(Quantity::Net(0))
            .map_or((f64::NAN, 0.0), |o| (o.mean, o.u));
        let ml = to_db(f.watts) - net_db;
        self.nodes.push(NodeResult {
            def: f.part.loc,
            chain: f.loc,
            tag: NodeResult::range_of(f.part.tag.as_ref()),
            port: Span::default(),
            kind: NodeKind::Part(f.part.kind),
            branch: 0,
            basis: f.figure.meta.basis,
            loss_known: true,
            power_known: true,
            loss_db: ml,
            matched_db: 0.0,
            cumulative_db: ml,
            power_w: from_db(net_db),
            forward_w: f.watts,
            uncertainty_db: 2.0 * u,
            swr: swr_from_gamma(gamma),
            heat_w: 0.0,
        });
    }

    /// Follows the power through a stretch that begins at node `along.at`.
    fn stretch(&mut self, s: &Stretch<'m>, along: &mut Along<'m, '_>, from: From) {
        let mut known = from.known;
        let mut statements = s.statements.iter().peekable();
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                self.state(*loc, n, along, ahead(s, i));
            }
            let before = along.net_db(along.at);
            along.at += 1;
            let at = along.at;
            let net = along.net_db(at);
            let gamma = along.gamma(at);
            along.reached.wet += e.wet_db * from.weight;
            if let Some(p) = e.part.filter(|_| e.cold_db * from.weight > 0.0) {
                along.reached.cold.push((p, e.cold_db * from.weight));
            }
            self.velocity_matters(e, along, at);
            if e.complete && known {
                self.taps(e, along.e, at - 1, at);
            }
            known &= e.complete && s.gap.is_none_or(|g| g > i);
            let divides = matches!(s.end, Ending::Divider) && i + 1 == s.elements.len();
            if divides {
                self.divide(s, e, along, From { known, ..from }, before);
                continue;
            }
            let loss = before - net;
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
                power_known: known,
                loss_db: loss,
                matched_db: e.loss_db,
                cumulative_db: along.source_db - net,
                power_w: from_db(net),
                forward_w: from_db(along.mean(Quantity::Forward(at))),
                uncertainty_db: 2.0 * along.u(at),
                swr: swr_from_gamma(gamma),
                heat_w: if active {
                    0.0
                } else {
                    (from_db(before) - from_db(net)).max(0.0)
                },
            });
        }
        // what is said before the antenna or after it is about the power into it, which does not
        // depend on its gain
        for (_, n, loc) in statements {
            self.state(*loc, n, along, 0.0);
        }
        if !matches!(s.end, Ending::Divider) {
            along.shares.pop_front();
        }
        if let Ending::Antenna(part, a, loc) = &s.end {
            self.antenna(
                (part, a, *loc),
                along,
                from.branch,
                known && s.gap.is_none(),
            );
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

    fn state(&mut self, loc: Loc, n: &'m Node, along: &Along<'m, '_>, ahead_db: f64) {
        let at = along.at;
        let gamma = along.gamma(at);
        let spread = along.e.output(Quantity::Back(at)).map_or(0.0, |o| {
            libm::sqrt((o.mean + 2.0 * o.u).clamp(0.0, 1.0)) - gamma
        });
        let net = along.net_db(at);
        let state = NodeState {
            net_w: from_db(net),
            forward_w: from_db(along.mean(Quantity::Forward(at))),
            loss_db: along.source_db - net,
            swr: swr_from_gamma(gamma),
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
        power_known: bool,
    ) {
        let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        let at = along.at;
        let net = along.net_db(at);
        let mut basis = part.meta.basis;
        if part.kind == PartKind::Antenna {
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
                    along.reached.complete = false;
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
            power_known,
            loss_db: 0.0,
            matched_db: 0.0,
            cumulative_db: along.source_db - net,
            power_w: from_db(net),
            forward_w: from_db(along.mean(Quantity::Forward(at))),
            uncertainty_db: 2.0 * along.u(at),
            swr: swr_from_gamma(along.gamma(at)),
            heat_w: if part.kind == PartKind::Load {
                from_db(net)
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
        let alike = into.iter().all(|w| (w / first - 1.0).abs() < 1e-6);
        let shown = if alike { first } else { all };
        let heat = (from_db(before) - all).max(0.0);
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
            power_known: from.known,
            loss_db: before - to_db(shown),
            matched_db: e.loss_db,
            cumulative_db: along.source_db - to_db(shown),
            power_w: shown,
            forward_w: if alike {
                from_db(along.mean(Quantity::Forward(at)))
            } else {
                all
            },
            uncertainty_db: 2.0 * along.u(if alike { at } else { input }),
            swr: swr_from_gamma(along.gamma(if alike { at } else { input })),
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
                    loss_db: to_db(all) - net,
                    cumulative_db: along.source_db - net,
                    power_w: from_db(net),
                    forward_w: from_db(along.mean(Quantity::Forward(*start))),
                    uncertainty_db: 2.0 * along.u(*start),
                    swr: swr_from_gamma(along.gamma(*start)),
                    heat_w: 0.0,
                    ..row
                };
                self.nodes.push(row.clone());
            }
            along.at = *start;
            along.reached.complete &= b.complete;
            let weight = along.shares.iter().take(ends_of(b)).sum();
            self.stretch(
                b,
                along,
                From {
                    branch,
                    known: from.known && s.gap.is_none(),
                    weight,
                },
            );
        }
    }
}

/// Nodes of a branch: its beginning, and one after each element.
fn nodes_of(s: &Stretch<'_>) -> usize {
    1 + s.elements.len() + s.branches.iter().map(|b| nodes_of(&b.1)).sum::<usize>()
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
