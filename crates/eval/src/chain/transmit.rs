//! Power from the transmitter to the antennas: every node and statement on the way.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_physics::mismatch::{mismatch_loss, swr_from_gamma};
use downlead_quantity::{from_db, to_db};
use downlead_station::model::{Antenna, Node, Part, PartKind, Phasing};

use super::Run;
use super::antenna::gain_at;
use super::feed::{feed, feed_cause};
use super::sensitivity::sensitivities;
use super::stretch::{Ending, Stretch};
use crate::assume::Assumed;
use crate::cascade::{Solved, Way, solve};
use crate::cause::{Budget, Cause};
use crate::result::{BandResult, NodeKind, NodeResult};
use crate::verdict;
use crate::walk::Stop;

/// State of one stretch once solved, for the statements at its nodes.
pub(crate) struct NodeState<'m> {
    /// Net and forward power, W.
    pub(crate) net_w: f64,
    pub(crate) forward_w: f64,
    /// Loss so far, dB.
    pub(crate) loss_db: f64,
    /// SWR looking on.
    pub(crate) swr: f64,
    /// By how much the reflection may be larger over phases not known.
    pub(crate) gamma_spread: f64,
    /// Matched loss between here and the end of the line, dB, one way.
    pub(crate) ahead_db: f64,
    /// Nodes before this one.
    pub(crate) nodes: usize,
    /// Budget of the power there.
    pub(crate) budget: Budget<'m>,
}

/// What reached the antennas of a stretch.
pub(crate) struct Reached<'m> {
    pub(crate) antenna_w: Option<f64>,
    pub(crate) eirp_w: Option<f64>,
    pub(crate) budget: Budget<'m>,
    pub(crate) worst: [f64; 2],
    pub(crate) wet: f64,
    /// Runs that would lose less in the cold: their part, and by how much more that would radiate, dB.
    pub(crate) cold: Vec<(&'m Part, f64)>,
    pub(crate) complete: bool,
    /// Whether a gain was written in dBd.
    pub(crate) dipole: bool,
}

impl<'m> Run<'m, '_> {
    pub(super) fn transmit(
        &mut self,
        s: &Stretch<'m>,
        stops: &[Stop<'m>],
        out: &mut Vec<Diagnostic>,
    ) -> BandResult {
        let feed = feed(stops, self.point, self.cx.env, out);
        let mut budget = Budget::default();
        let watts = match &feed {
            Some(f) => {
                let (cause, u) = feed_cause(f, &mut self.assumed);
                budget.add(cause, -u);
                f.watts
            }
            None => f64::NAN,
        };
        let solved = solve(&s.pieces, s.end_wave);
        let tuner = s.pieces.iter().any(|p| p.way == Way::Tuner);
        if let Some(f) = &feed {
            if !tuner && solved.gamma_in_worst > 0.01 {
                self.assumed.add(
                    Assumed::SourceMatched,
                    f.part.tag.as_ref().map_or(f.part.loc, |t| t.loc),
                );
            }
            self.foldback(f, &solved);
            let ml = mismatch_loss(solved.gamma_in);
            let net = watts * from_db(-ml);
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
                power_w: net,
                forward_w: watts,
                uncertainty_db: budget.expanded(),
                swr: swr_from_gamma(solved.gamma_in),
                heat_w: 0.0,
            });
        }
        let reached = self.stretch(s, &solved, watts, 0.0, budget, 0, true);
        let total = match reached.antenna_w {
            Some(w) if w > 0.0 => to_db(watts / w),
            _ => self.nodes.last().map_or(0.0, |n| n.cumulative_db),
        };
        self.ratings(s, feed.as_ref());
        let mean_w = feed.as_ref().and_then(|f| self.mean(f, reached.antenna_w));
        let mut result = self.result(
            &solved,
            tuner,
            reached.complete && feed.is_some(),
            &reached,
            total,
        );
        result.mean_w = mean_w;
        verdict::judge(self, &mut result, feed.as_ref(), &reached);
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        if feed.is_none() {
            result.antenna_w = None;
            result.eirp_w = None;
        }
        result
    }

    /// Follows the power through a stretch; `forward` W come in, `so_far` dB were lost before, and
    /// whether all of that is `known`.
    #[allow(clippy::too_many_arguments, reason = "the state at its beginning")]
    fn stretch(
        &mut self,
        s: &Stretch<'m>,
        solved: &Solved,
        forward: f64,
        so_far: f64,
        mut budget: Budget<'m>,
        branch: u16,
        mut known: bool,
    ) -> Reached<'m> {
        let source = forward * from_db(so_far);
        let mut net = forward * from_db(-mismatch_loss(solved.gamma_in));
        let mut cumulative = to_db(source / net);
        let mut statements = s.statements.iter().peekable();
        let mut piece = 0;
        let mut gamma = solved.gamma_in;
        let mut wet = 0.0;
        let mut cold = Vec::new();
        let sensitivity = sensitivities(s, solved, self.point.hz);
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                self.state(
                    *loc,
                    n,
                    net,
                    gamma,
                    cumulative,
                    &budget,
                    solved,
                    ahead(s, i),
                );
            }
            let mut loss = 0.0;
            while piece < s.pieces.len() && s.pieces[piece].element == i {
                loss += solved.net_loss[piece];
                gamma = solved.gamma_after[piece];
                piece += 1;
            }
            let before = net;
            net *= from_db(-loss);
            cumulative += loss;
            wet += e.wet_db;
            if let Some(p) = e.part.filter(|_| e.cold_db > 0.0) {
                cold.push((p, e.cold_db));
            }
            for (c, u) in &e.causes {
                budget.add(c.clone(), u * sensitivity.as_ref().map_or(1.0, |x| x[i]));
            }
            let active = e.loss_db < 0.0;
            known &= e.complete && s.gap.is_none_or(|g| g > i);
            self.nodes.push(NodeResult {
                def: e.def,
                chain: e.chain,
                tag: NodeResult::range_of(e.part.and_then(|p| p.tag.as_ref())),
                port: NodeResult::range_of(e.port),
                kind: e.kind,
                branch,
                basis: e.basis,
                loss_known: e.complete,
                power_known: known,
                loss_db: loss,
                matched_db: e.loss_db,
                cumulative_db: cumulative,
                power_w: net,
                forward_w: forward_of(net, gamma),
                uncertainty_db: 2.0 * libm::hypot(budget.standard(), solved.sigma_db),
                swr: swr_from_gamma(gamma),
                heat_w: if active { 0.0 } else { (before - net).max(0.0) },
            });
        }
        if solved.sigma_db > 0.0 {
            budget.add(Cause::Phases(self.phases), solved.sigma_db);
            self.phases += 1;
        }
        let mut reached = Reached {
            antenna_w: None,
            eirp_w: None,
            budget,
            worst: [-solved.worst_low_db, solved.worst_high_db],
            wet,
            cold,
            complete: s.complete,
            dipole: false,
        };
        // what is said in front of the antenna or behind it is about the power into it, which does
        // not depend on its gain
        let here = reached.budget.clone();
        for (_, n, loc) in statements {
            self.state(*loc, n, net, gamma, cumulative, &here, solved, 0.0);
        }
        match &s.end {
            Ending::Antenna(part, a, loc) => self.antenna(
                part,
                a,
                *loc,
                net,
                gamma,
                cumulative,
                branch,
                known && s.gap.is_none(),
                &mut reached,
            ),
            Ending::Divider => {
                self.divide(s, net, cumulative, known && s.gap.is_none(), &mut reached);
            }
            Ending::Receiver(..) | Ending::Nothing => {}
        }
        reached
    }

    #[allow(clippy::too_many_arguments, reason = "the state of one node")]
    fn state(
        &mut self,
        loc: Loc,
        n: &'m Node,
        net: f64,
        gamma: f64,
        cumulative: f64,
        budget: &Budget<'m>,
        solved: &Solved,
        ahead_db: f64,
    ) {
        let mut budget = budget.clone();
        if solved.sigma_db > 0.0
            && cumulative > 0.0
            && !budget.terms.iter().any(|t| matches!(t.0, Cause::Phases(_)))
        {
            budget.add(Cause::Phases(u32::MAX), solved.sigma_db);
        }
        let state = NodeState {
            net_w: net,
            forward_w: forward_of(net, gamma),
            loss_db: cumulative,
            swr: swr_from_gamma(gamma),
            gamma_spread: (solved.gamma_in_worst - solved.gamma_in).max(0.0),
            ahead_db,
            nodes: self.nodes.len(),
            budget,
        };
        self.states.push((loc, n, state));
    }

    #[allow(clippy::too_many_arguments, reason = "the state of the last node")]
    fn antenna(
        &mut self,
        part: &'m Part,
        a: &'m Antenna,
        loc: Loc,
        net: f64,
        gamma: f64,
        cumulative: f64,
        branch: u16,
        power_known: bool,
        reached: &mut Reached<'m>,
    ) {
        let who = part.tag.as_ref().map_or(part.loc, |t| t.loc);
        reached.antenna_w = Some(net);
        let mut basis = part.meta.basis;
        if part.kind == PartKind::Antenna {
            match gain_at(a, self.point, self.cx.env) {
                Some(g) => {
                    basis = g.basis;
                    reached.dipole = g.dipole;
                    if g.u == 0.0 {
                        self.assumed.add(Assumed::GainExact, who);
                    }
                    if a.gain.iter().any(|x| x.directivity) && a.efficiency.is_none() {
                        self.assumed.add(Assumed::EfficiencyIncluded, who);
                    }
                    reached.budget.add(Cause::Gain(g.loc), -g.u);
                    // a realized gain counts the mismatch already: it starts from the forward power
                    let from = if g.realized {
                        forward_of(net, gamma)
                    } else {
                        net
                    };
                    reached.eirp_w = Some(from * from_db(g.dbi));
                }
                None if !a.gain.is_empty() => {
                    reached.complete = false;
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
            cumulative_db: cumulative,
            power_w: net,
            forward_w: forward_of(net, gamma),
            uncertainty_db: reached.budget.expanded(),
            swr: swr_from_gamma(gamma),
            heat_w: if part.kind == PartKind::Load {
                net
            } else {
                0.0
            },
        });
    }

    fn divide(
        &mut self,
        s: &Stretch<'m>,
        net: f64,
        cumulative: f64,
        known: bool,
        reached: &mut Reached<'m>,
    ) {
        let phasing = self.cx.chain.phasing.unwrap_or_else(|| {
            if let Some(e) = s.elements.last() {
                self.assumed.add(Assumed::BranchesInPhase, e.who);
            }
            Phasing::InPhase
        });
        let base = reached.budget.clone();
        let mut arms = Vec::new();
        for (name, b) in &s.branches {
            self.branches.push(name.clone());
            let at = u16::try_from(self.branches.len()).unwrap_or(u16::MAX);
            let solved = solve(&b.pieces, b.end_wave);
            let arm = self.stretch(b, &solved, net, cumulative, base.clone(), at, known);
            reached.complete &= arm.complete;
            reached.dipole |= arm.dipole;
            reached.wet = reached.wet.max(arm.wet);
            reached.worst = [
                reached.worst[0] + solved.worst_low_db.min(0.0),
                reached.worst[1].max(arm.worst[1]),
            ];
            arms.push(arm);
        }
        let antennas: Vec<f64> = arms.iter().filter_map(|a| a.antenna_w).collect();
        if antennas.is_empty() {
            return;
        }
        reached.antenna_w = Some(antennas.iter().sum());
        let fields: Vec<f64> = arms
            .iter()
            .map(|a| a.eirp_w.map_or(0.0, libm::sqrt))
            .collect();
        let total: f64 = fields.iter().sum();
        if total > 0.0 {
            let mut budget = Budget::default();
            match phasing {
                Phasing::InPhase => {
                    // fields add: the relative weight of an arm is its share of the field
                    reached.eirp_w = Some(total * total);
                    for (arm, f) in arms.iter().zip(&fields) {
                        budget.add_scaled(&arm.budget, f / total);
                        let cold = arm.cold.iter().map(|(p, less)| (*p, less * f / total));
                        reached.cold.extend(cold.filter(|c| c.1 > 0.0));
                    }
                }
                Phasing::Apart => {
                    let best = fields
                        .iter()
                        .enumerate()
                        .max_by(|a, b| a.1.total_cmp(b.1))
                        .map_or(0, |x| x.0);
                    reached.eirp_w = Some(fields[best] * fields[best]);
                    budget = arms[best].budget.clone();
                    // the other arms are not what is judged
                    reached.cold.extend_from_slice(&arms[best].cold);
                }
            }
            reached.budget = budget;
        }
    }
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

/// Forward power of a net power where a reflection `gamma` is seen.
fn forward_of(net: f64, gamma: f64) -> f64 {
    net / (1.0 - gamma * gamma)
}
