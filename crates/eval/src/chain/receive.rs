//! Loss and noise from the antenna to the receiver.

use downlead_base::Loc;
use downlead_physics::mismatch::mismatch_loss;
use downlead_physics::network::SMatrix;
use downlead_physics::noise::{Stage, cascade_noise_figure};
use downlead_quantity::dbm_to_w;
use downlead_station::model::{Basis, Part, PartData, PartKind};

use super::Run;
use super::antenna::antenna_wave;
use super::stretch::{Ending, Stretch};
use super::transmit::Reached;
use crate::cascade::{End, Piece, solve};
use crate::cause::{Budget, Cause};
use crate::element::{Build, Element};
use crate::result::{BandResult, NodeKind, NodeResult};
use crate::verdict;
use crate::walk::Stop;

impl<'m> Run<'m, '_> {
    pub(super) fn receive(&mut self, s: &Stretch<'m>, stops: &[Stop<'m>]) -> BandResult {
        let antenna = stops.iter().find_map(|x| match x {
            Stop::Part { part, loc, .. } if part.kind == PartKind::Antenna => match &part.data {
                PartData::Antenna(a) => Some((*part, &**a, *loc)),
                _ => None,
            },
            _ => None,
        });
        let mut b = Build {
            station: self.cx.station,
            env: self.cx.env,
            point: self.point,
            pieces: Vec::new(),
            assumed: std::mem::take(&mut self.assumed),
            diags: Vec::new(),
        };
        let wave = match antenna {
            Some((p, a, loc)) => antenna_wave(&mut b, p, a, loc),
            None => Some(End::Magnitude(0.0)),
        };
        self.assumed = std::mem::take(&mut b.assumed);
        self.diags.append(&mut b.diags);
        // what comes back from the antenna is part of every loss behind it
        let all_known = s.complete && wave.is_some();
        // the loss from antenna to receiver is found looking from the receiver; only what passes
        // on the way to it counts
        let reversed: Vec<Piece> = s
            .pieces
            .iter()
            .rev()
            .map(|p| Piece {
                s: SMatrix {
                    s11: p.s.s22,
                    s22: p.s.s11,
                    ..p.s
                },
                s11: p.s22,
                s22: p.s11,
                ..*p
            })
            .collect();
        let solved = solve(&reversed, wave.unwrap_or(End::Magnitude(0.0)));
        let matched: f64 = s.elements.iter().map(|e| e.loss_db).sum();
        let total = solved.net_loss.iter().sum::<f64>() + mismatch_loss(solved.gamma_in);
        let mut budget = Budget::default();
        let receiver = match &s.end {
            Ending::Receiver(p, loc) => match &p.data {
                PartData::Receiver(r) => Some((*p, &**r, *loc)),
                _ => None,
            },
            _ => None,
        };
        let needed = receiver
            .and_then(|(_, r, _)| r.sensitivity)
            .map(|m| m.value);
        let stages: Vec<Stage> = s
            .elements
            .iter()
            .map(|e| match e.noise_figure {
                Some(nf) => Stage {
                    gain_db: -e.loss_db,
                    noise_figure_db: nf,
                },
                None => Stage::passive(e.loss_db, e.celsius + 273.15),
            })
            .collect();
        let nf = receiver.and_then(|(_, r, _)| r.noise_figure).map(|nf| {
            let nf = nf.value;
            let mut all = vec![Stage::passive((total - matched).max(0.0), 290.0)];
            all.extend(stages);
            all.push(Stage {
                gain_db: 0.0,
                noise_figure_db: nf,
            });
            (cascade_noise_figure(&all), nf)
        });
        let active = s.elements.iter().any(|e| e.loss_db < 0.0);
        // with a preamplifier the sensitivity follows the noise figure; without, the loss
        let sensitivity = match (needed, nf) {
            (Some(n), Some((system, own))) if active => Some(n + system - own),
            (Some(n), _) if !active => Some(n + total),
            _ => None,
        };
        let mut cumulative = total - matched;
        let level = |lost: f64| sensitivity.map_or(f64::NAN, |l| dbm_to_w(l - lost));
        let push = |this: &mut Self,
                    part: Option<&'m Part>,
                    e: Option<&Element<'m>>,
                    chain: Loc,
                    loss: f64,
                    cum: f64,
                    u: f64,
                    unknown: bool| {
            let def = e.map(|e| e.def).or(part.map(|p| p.loc)).unwrap_or(chain);
            this.nodes.push(NodeResult {
                def,
                chain,
                tag: NodeResult::range_of(part.and_then(|p| p.tag.as_ref())),
                port: NodeResult::range_of(e.and_then(|e| e.port)),
                kind: e.map_or_else(
                    || part.map_or(NodeKind::Join, |p| NodeKind::Part(p.kind)),
                    |e| e.kind,
                ),
                branch: 0,
                basis: e.map_or(Basis::Stated, |e| e.basis),
                loss_known: e.is_none_or(|e| e.complete),
                power_known: !unknown,
                loss_db: loss,
                matched_db: e.map_or(0.0, |e| e.loss_db),
                cumulative_db: cum,
                power_w: level(cum),
                forward_w: level(cum),
                uncertainty_db: u,
                swr: 1.0,
                heat_w: 0.0,
            });
        };
        if let Some((p, _, loc)) = antenna {
            push(
                self,
                Some(p),
                None,
                loc,
                cumulative,
                cumulative,
                0.0,
                !all_known,
            );
        }
        let mut wet = 0.0;
        let mut statements = s.statements.iter().peekable();
        for (i, e) in s.elements.iter().enumerate() {
            while let Some((_, n, loc)) = statements.next_if(|x| x.0 <= i) {
                verdict::receive_statement(self, *loc, n, cumulative, all_known);
            }
            cumulative += e.loss_db;
            wet += e.wet_db;
            for (c, u) in &e.causes {
                budget.add(c.clone(), *u);
            }
            let u = 2.0 * libm::hypot(budget.standard(), solved.sigma_db);
            // the level is the one at the antenna less what was lost: all losses enter it
            let unknown = if sensitivity.is_some() {
                !all_known
            } else {
                wave.is_none() || s.unknown_to(i)
            };
            push(
                self,
                e.part,
                Some(e),
                e.chain,
                e.loss_db,
                cumulative,
                u,
                unknown,
            );
        }
        for (_, n, loc) in statements {
            verdict::receive_statement(self, *loc, n, cumulative, all_known);
        }
        if solved.sigma_db > 0.0 {
            budget.add(Cause::Phases(0), solved.sigma_db);
        }
        if let Some((p, _, loc)) = receiver {
            push(
                self,
                Some(p),
                None,
                loc,
                0.0,
                cumulative,
                budget.expanded(),
                !all_known,
            );
        }
        let complete = all_known && antenna.is_some() && receiver.is_some();
        let reached = Reached {
            antenna_w: None,
            eirp_w: None,
            budget,
            worst: [-solved.worst_low_db, solved.worst_high_db],
            wet,
            cold: Vec::new(),
            complete,
            dipole: false,
        };
        let mut result = self.result(&solved, false, complete, &reached, total);
        result.sensitivity_dbm = sensitivity;
        result.noise_figure_db = nf.map(|n| n.0);
        result.swr = 1.0;
        result.swr_worst = None;
        result.assumptions = std::mem::take(&mut self.assumed.list).into();
        result
    }
}
