//! What a chain comes to on a band.

use downlead_physics::mismatch::swr_from_gamma;
use downlead_quantity::to_db;

use super::Run;
use super::transmit::Reached;
use crate::cascade::Solved;
use crate::cause::Cause;
use crate::result::{BandResult, BudgetItem, CauseName, Doubted};

impl<'m> Run<'m, '_> {
    pub(super) fn result(
        &mut self,
        solved: &Solved,
        tuner: bool,
        complete: bool,
        reached: &Reached<'m>,
        total: f64,
    ) -> BandResult {
        let mut budget: Vec<BudgetItem> = reached
            .budget
            .terms
            .iter()
            .map(|(c, v)| item(c, v.abs()))
            .collect();
        budget.sort_by(|a, b| b.standard_db.total_cmp(&a.standard_db));
        let worst = (reached.worst[1] - reached.worst[0] > 5e-4)
            .then(|| [total + reached.worst[0], total + reached.worst[1]]);
        let (swr, swr_worst) = if tuner && solved.gamma_in == 0.0 {
            (1.0, None)
        } else {
            let w = swr_from_gamma(solved.gamma_in_worst);
            let n = swr_from_gamma(solved.gamma_in);
            (n, (w > n * 1.001).then_some(w))
        };
        BandResult {
            band: self.point.band.clone(),
            point: self.point.part,
            hz: self.point.hz,
            complete,
            tuner,
            nodes: std::mem::take(&mut self.nodes).into(),
            branches: std::mem::take(&mut self.branches).into(),
            total_db: total,
            antenna_w: reached.antenna_w.filter(|w| w.is_finite()),
            eirp_w: reached.eirp_w.filter(|w| w.is_finite()),
            gain_dbi: reached
                .eirp_w
                .zip(reached.antenna_w)
                .map(|(e, a)| to_db(e / a))
                .filter(|g| g.is_finite()),
            uncertainty_db: reached.budget.expanded(),
            worst_db: worst,
            wet_db: (reached.wet > 0.0).then_some(reached.wet),
            swr,
            swr_worst,
            sensitivity_dbm: None,
            noise_figure_db: None,
            mean_w: None,
            limits: Box::default(),
            readings: Box::default(),
            logs: Box::default(),
            budget: budget.into(),
            assumptions: Box::default(),
        }
    }
}

fn item(c: &Cause<'_>, v: f64) -> BudgetItem {
    let (cause, name) = match c {
        Cause::Power(l) => (Doubted::Power, CauseName::At(*l)),
        Cause::Instrument(n) => (Doubted::Instrument, CauseName::Named((*n).into())),
        Cause::Cable(n) => (Doubted::Cable, CauseName::Named((*n).into())),
        Cause::Length(l) => (Doubted::Length, CauseName::At(*l)),
        Cause::Connector(n) => (Doubted::Connectors, CauseName::Named((*n).into())),
        Cause::Device(l) => (Doubted::Loss, CauseName::At(*l)),
        Cause::Gain(l) => (Doubted::Gain, CauseName::At(*l)),
        Cause::Phases(_) => (Doubted::Phases, CauseName::None),
        Cause::Temperature(n) => (Doubted::Temperature, CauseName::Named((*n).into())),
        Cause::Added(l) => (Doubted::AddedLoss, CauseName::At(*l)),
    };
    BudgetItem {
        cause,
        name,
        standard_db: v,
    }
}
