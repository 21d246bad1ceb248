//! What a chain comes to on a band.

use downlead_physics::mismatch::swr_from_gamma;
use downlead_physics::net::Network;
use downlead_physics::net::evaluate::{Evaluation, Quantity};
use downlead_physics::net::part::End;

use super::Run;
use super::transmit::Reached;
use crate::cause::Cause;
use crate::result::{BandResult, BudgetItem, CauseKind, CauseName, Method};
use crate::stage::Stage;

impl<'m> Run<'m, '_> {
    pub(super) fn result(
        &mut self,
        net: &Network,
        e: &Evaluation,
        judged: Quantity,
        complete: bool,
        reached: &Reached<'m>,
        total: Option<f64>,
    ) -> BandResult {
        let known = total.is_some();
        let mut budget: Vec<BudgetItem> = reached
            .budget
            .terms
            .iter()
            .filter(|_| known)
            .map(|(c, v)| budget_item(c, v.abs()))
            .collect();
        budget.sort_by(|a, b| b.standard_db.total_cmp(&a.standard_db));
        let output = e.output(judged);
        let (mean, u, low, high, weight) = output.map_or((0.0, 0.0, 0.0, 0.0, 0.0), |o| {
            (o.mean, o.u, o.low, o.high, o.weight)
        });
        // beyond what any passive part can deliver there is nothing
        let whole = self.cx.stage == Stage::Whole;
        let most = match whole {
            true => self.most_db(net, e, judged),
            false => f64::INFINITY,
        };
        let interval = output.map(|_| [low - mean, (high - mean).min((most - mean).max(0.0))]);
        let delivered = e.output(Quantity::Delivered).map_or(0.0, |o| o.mean);
        let worst = total
            .filter(|_| whole)
            .and_then(|t| Some((t, net.reach(e)?)))
            .map(|(t, (least, most))| (t, [t + (delivered - most), t + (delivered - least)]))
            // the mean over uncertain figures may lie beside the values at the stated ones
            .map(|(t, [low, high])| [low.min(t), high.max(t)])
            .filter(|w| w[1] - w[0] > 5e-4);
        let back = e.output(Quantity::Back(0)).map_or(0.0, |o| o.mean);
        let gamma = libm::sqrt(back.clamp(0.0, 1.0));
        let w = swr_from_gamma(self.largest.take().unwrap_or(gamma).max(gamma));
        let n = swr_from_gamma(gamma);
        BandResult {
            band: self.point.band.clone(),
            point: self.point.part,
            hz: self.point.hz,
            complete,
            tuner: self
                .nodes
                .iter()
                .any(|n| n.kind.is(downlead_station::model::PartKind::Tuner)),
            nodes: std::mem::take(&mut self.nodes).into(),
            branches: std::mem::take(&mut self.branches).into(),
            total_db: total,
            antenna_w: None,
            eirp_w: None,
            gain_dbi: None,
            uncertainty_db: known.then_some(2.0 * u),
            interval_db: interval.filter(|_| known && u > 0.0),
            method: known.then_some(match weight {
                0.0 => Method::Derivatives,
                1.0 => Method::Sample,
                _ => Method::Both,
            }),
            floor_db: (known && whole).then(|| net.floor()),
            worst_db: worst,
            wet_db: (known && reached.wet > 0.0).then_some(reached.wet),
            swr: Some(n),
            swr_worst: (w > n * 1.001).then_some(w),
            sensitivity_dbm: None,
            noise_figure_db: None,
            noise: Box::default(),
            sensitivity_u_db: None,
            noise_figure_u_db: None,
            mean_w: None,
            limits: Box::default(),
            rules: Box::default(),
            readings: Box::default(),
            logs: Box::default(),
            budget: budget.into(),
            loads: Box::default(),
            taps: std::mem::take(&mut self.taps).into(),
            assumptions: Box::default(),
        }
    }

    /// The most the output can be with the figures at their favourable ends: power and gain with
    /// their own uncertainty, less the floor of the loss.
    fn most_db(&self, net: &Network, e: &Evaluation, judged: Quantity) -> f64 {
        let Some(o) = e.output(judged) else {
            return f64::INFINITY;
        };
        // several antennas add their fields, and an amplifier has a gain: no such bound holds
        let branches = matches!(net.feed.end, End::Branches { .. });
        if branches || self.nodes.iter().any(|n| n.matched_db < 0.0) {
            return f64::INFINITY;
        }
        let delivered = e.output(Quantity::Delivered).map_or(o.mean, |d| d.mean);
        let mut gain = o.mean - delivered;
        // how the power divides among several antennas, and how their fields meet, is uncertain too
        if judged == Quantity::Eirp && matches!(net.feed.end, End::Branches { .. }) {
            gain = net.most_gain().map_or(gain, |most| most.max(gain));
        }
        let outside: f64 = reached_by(&self.wiring.budget(e, judged));
        net.level.nominal() + gain + 2.0 * outside - net.favourable_floor()
    }
}

/// Standard uncertainty by what is not the line: power, instrument, gain.
fn reached_by(b: &crate::cause::Budget<'_>) -> f64 {
    let of = |c: &Cause<'_>| {
        matches!(
            c,
            Cause::Power(_) | Cause::Instrument(_) | Cause::Gain(_) | Cause::Efficiency(_)
        )
    };
    libm::sqrt(
        b.terms
            .iter()
            .filter(|t| of(&t.0))
            .map(|t| t.1 * t.1)
            .sum::<f64>(),
    )
}

/// What an input is, without its unit.
fn short(what: &str) -> &str {
    what.split(',').next().unwrap_or(what)
}

pub(crate) fn budget_item(c: &Cause<'_>, v: f64) -> BudgetItem {
    let named = |n: &str| CauseName::Named(n.into());
    let (cause, name) = match c {
        Cause::Power(l) => (CauseKind::Power, CauseName::At(*l)),
        Cause::Instrument(n) => (CauseKind::Instrument, named(n)),
        Cause::Cable(n) => (CauseKind::Cable, named(n)),
        Cause::Velocity(n) => (CauseKind::Velocity, named(n)),
        Cause::Impedance(n) => (CauseKind::Impedance, named(n)),
        // distinguishes figures of one name
        Cause::Construction(n, what) if what.starts_with(['k']) => {
            (CauseKind::Cable, named(&format!("{n}, {}", short(what))))
        }
        Cause::Construction(n, what) => (
            CauseKind::Construction,
            named(&format!("{n}, {}", short(what))),
        ),
        Cause::Length(l) => (CauseKind::Length, CauseName::At(*l)),
        Cause::Connector(n) => (CauseKind::Connectors, named(n)),
        Cause::Bump(n, "SWR") => (CauseKind::Reflection, named(n)),
        Cause::Bump(n, what) => (CauseKind::Bump, named(&format!("{n}, {what}"))),
        Cause::Device(l) => (CauseKind::Loss, CauseName::At(*l)),
        Cause::Coupling(l) => (CauseKind::Coupling, CauseName::At(*l)),
        Cause::Share(l, _) => (CauseKind::Share, CauseName::At(*l)),
        Cause::Noise(l) => (CauseKind::Noise, CauseName::At(*l)),
        Cause::Amplification(l) => (CauseKind::Gain, CauseName::At(*l)),
        Cause::Isolation(l) => (CauseKind::Isolation, CauseName::At(*l)),
        Cause::Reflection(l) => (CauseKind::Reflection, CauseName::At(*l)),
        Cause::Reactance(l) => (CauseKind::Reactance, CauseName::At(*l)),
        Cause::Gain(l) => (CauseKind::Gain, CauseName::At(*l)),
        Cause::Efficiency(l) => (CauseKind::Efficiency, CauseName::At(*l)),
        Cause::Sits(l) => (CauseKind::Sits, CauseName::At(*l)),
        Cause::Phase(l) => (CauseKind::Phases, CauseName::At(*l)),
        Cause::Phases => (CauseKind::AllPhases, CauseName::None),
        Cause::Multiple => (CauseKind::Multiple, CauseName::None),
        Cause::Temperature(n) => (CauseKind::Temperature, named(n)),
        Cause::OwnTemperature(l) => (CauseKind::Temperature, CauseName::At(*l)),
        Cause::Added(l) => (CauseKind::AddedLoss, CauseName::At(*l)),
    };
    BudgetItem {
        cause,
        name,
        standard_db: v,
    }
}
