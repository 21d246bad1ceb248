//! The total of a chain, and the uncertainty of a result from its causes.

use downlead_physics::net::evaluate::Quantity;
use downlead_quantity::to_db;

use super::Derivation;
use super::cx::Cx;
use super::node::{NOT_KNOWN, maybe_db, watts_value};
use super::numbers::{NOTHING_DB, decibels, op, sum, term, watts};
use super::rows::{Row, What};
use crate::cause::Budget;
use crate::chain::budget_item;
use crate::origin::cause_words;
use crate::result::BudgetItem;

/// What a sum of many losses may lack of the total, each rounded, dB.
const REST_DB: f64 = 1e-5;

impl Cx<'_> {
    /// The totals of the chain.
    pub(super) fn totals(&self) -> Derivation {
        let b = self.band;
        let d = Derivation::of(self.title("total loss"), maybe_db(b.total_db)).at(self.chain.loc);
        let Some(total) = b.total_db else {
            let unknown = b.nodes.iter().filter(|n| !n.loss_known && !n.kind.is_end());
            let one =
                |n| Derivation::of(format!("loss of {}", self.name(n)), NOT_KNOWN).at(n.chain);
            return d.with_all(unknown.map(one));
        };
        let rows = self.rows();
        let mut d = if b.branches.is_empty() {
            self.sum_of_rows(d, &rows, total)
        } else {
            self.total_of_branches(d, &rows, total)
        };
        if self.receives() {
            d.steps.extend(self.sensitivity());
        } else if b.eirp_w.is_some() && b.complete {
            d.steps.extend(self.radiated_value(true));
        }
        d.with_all(self.total_uncertainty())
    }

    fn sum_of_rows(&self, mut d: Derivation, rows: &[Row<'_>], total: f64) -> Derivation {
        let b = self.band;
        let mut terms = Vec::new();
        for (i, n) in b.nodes.iter().enumerate() {
            let name = self.name(n);
            if n.loss_db.abs() >= NOTHING_DB {
                let lost = self.shown_loss(rows, i);
                terms.push(lost);
                d.steps
                    .push(Derivation::of(format!("loss of {name}"), decibels(lost)).at(n.chain));
            }
        }
        let rest = total - terms.iter().sum::<f64>();
        if rest.abs() >= REST_DB {
            terms.push(rest);
            d.steps.push(Derivation::of(
                "mean over the uncertainty less this sum",
                decibels(rest),
            ));
        }
        if terms.is_empty() {
            return d;
        }
        let steps = std::mem::take(&mut d.steps);
        d.by("sum of the losses of net power", sum(&terms))
            .with_all(steps)
    }

    /// A chain that divides: the power sent over all that arrives.
    fn total_of_branches(&self, d: Derivation, rows: &[Row<'_>], total: f64) -> Derivation {
        let b = self.band;
        let mut powers = Vec::new();
        let mut steps = Vec::new();
        let source = b.nodes.first().filter(|n| {
            n.forward_w.is_finite() && matches!(rows.first().map(|r| &r.what), Some(What::Source))
        });
        let Some(source) = source else { return d };
        steps.push(
            Derivation::of(
                format!("power of {}", self.name(source)),
                watts_value(source.forward_w),
            )
            .at(source.def),
        );
        for (n, row) in b.nodes.iter().zip(rows) {
            if !matches!(row.what, What::End { .. }) || !n.power_w.is_finite() {
                continue;
            }
            powers.push(n.power_w);
            steps.push(
                Derivation::of(
                    format!("power at {}", self.end_name(n)),
                    watts_value(n.power_w),
                )
                .by(
                    "P = transmitter power × 10^(-loss so far/10)",
                    format!(
                        "{} × {}",
                        watts(source.forward_w),
                        super::numbers::ratio_of_loss(n.cumulative_db)
                    ),
                )
                .with(self.way(rows, n.branch, n.cumulative_db))
                .at(n.chain),
            );
        }
        let all: f64 = powers.iter().sum();
        if powers.is_empty() || all <= 0.0 {
            return d;
        }
        let each: Vec<String> = powers.iter().map(|w| watts(*w)).collect();
        let mut formula =
            "10 log10(power of the transmitter/sum of the powers that arrive)".to_owned();
        let mut numbers = format!(
            "10 log10({} / ({}))",
            watts(source.forward_w),
            each.join(" + ")
        );
        let rest = total - to_db(source.forward_w / all);
        if rest.abs() >= REST_DB {
            formula.push_str(" + mean over the uncertainty less this");
            numbers = format!("{numbers} {} {}", sign(rest), term(rest.abs()));
            steps.push(Derivation::of(
                "mean over the uncertainty less this",
                decibels(rest),
            ));
        }
        d.by(formula, numbers).with_all(steps)
    }

    /// The losses on the way to the end of a branch, which add up to the loss so far.
    fn way(&self, rows: &[Row<'_>], branch: u16, so_far: f64) -> Derivation {
        let nodes = &self.band.nodes;
        // the last row of the branch, and from it back to the transmitter
        let mut at = rows
            .iter()
            .zip(nodes)
            .rposition(|(r, n)| n.branch == branch && matches!(r.what, What::End { .. }));
        let mut way = Vec::new();
        while let Some(i) = at {
            way.push(i);
            at = rows[i].prev;
        }
        way.reverse();
        let lossy: Vec<usize> = way
            .into_iter()
            .filter(|i| nodes[*i].loss_db.abs() >= NOTHING_DB)
            .collect();
        let mut terms: Vec<f64> = lossy.iter().map(|i| self.shown_loss(rows, *i)).collect();
        let rest = so_far - terms.iter().sum::<f64>();
        if rest.abs() >= REST_DB {
            terms.push(rest);
        }
        let names: Vec<String> = lossy.iter().map(|i| self.name_of(*i)).collect();
        let d = Derivation::of("loss so far", decibels(so_far));
        if terms.is_empty() {
            return d;
        }
        d.by(
            format!("sum of the losses on the way: {}", names.join(", ")),
            sum(&terms),
        )
    }

    /// The uncertainty of the chain's result; none where nothing is uncertain.
    pub(super) fn total_uncertainty(&self) -> Option<Derivation> {
        let what = match (self.receives(), self.band.eirp_w.is_some()) {
            (true, _) => "uncertainty of the loss",
            (_, true) => "uncertainty of ERP and EIRP",
            _ => "uncertainty of the power delivered",
        };
        self.uncertainty(what, self.band.uncertainty_db?, &self.band.budget)
    }

    /// The causes of uncertainty of the net power at a node of the network, largest first.
    pub(super) fn budget_of_net(&self, at: usize) -> Vec<BudgetItem> {
        let c = &self.kept().c;
        items(&c.wiring.budget(&c.evaluation, Quantity::Net(at)))
    }

    /// An expanded uncertainty from its causes; none where nothing is uncertain.
    pub(super) fn uncertainty(
        &self,
        what: &str,
        expanded_db: f64,
        budget: &[BudgetItem],
    ) -> Option<Derivation> {
        if expanded_db.is_nan() || expanded_db < NOTHING_DB || budget.is_empty() {
            return None;
        }
        let mut rows: Vec<(String, f64)> = budget
            .iter()
            .map(|t| {
                let words = cause_words(self.places, self.parts, t.cause.words(), &t.name);
                (words, t.standard_db)
            })
            .collect();
        // a budget leaves out what is below one percent of the whole
        let shown: f64 = rows.iter().map(|r| r.1 * r.1).sum();
        let rest = 0.25 * expanded_db * expanded_db - shown;
        if rest > 2e-6 * shown {
            rows.push((
                "causes below 1 % of it together".to_owned(),
                libm::sqrt(rest),
            ));
        }
        let squares: Vec<String> = rows.iter().map(|r| format!("{}^2", op(r.1))).collect();
        let causes = rows
            .into_iter()
            .map(|(words, u)| Derivation::of(words, decibels(u)));
        Some(
            Derivation::of(format!("{what} (k = 2)"), decibels(expanded_db))
                .by(
                    "U = 2 √(Σ u²); what has one cause is added before it is squared",
                    format!("2 × √({})", squares.join(" + ")),
                )
                .from("GUM, JCGM 100:2008, 5.1.2 and 5.2.2")
                .with_all(causes),
        )
    }
}

/// The rows of a budget, largest first.
pub(super) fn items(b: &Budget<'_>) -> Vec<BudgetItem> {
    let mut out: Vec<BudgetItem> = b
        .terms
        .iter()
        .map(|(c, v)| budget_item(c, v.abs()))
        .collect();
    out.sort_by(|a, b| b.standard_db.total_cmp(&a.standard_db));
    out
}

fn sign(x: f64) -> &'static str {
    if x < 0.0 { "-" } else { "+" }
}
