//! Limits and readings: what is compared, and the rule of the verdict.

use downlead_physics::mismatch::gamma_from_swr;
use downlead_physics::net::evaluate::{Quantity, TAIL};
use downlead_quantity::{db, from_db, number, percent, power, to_db};
use downlead_station::model::{LimitQuantity, Node, Read, ReadPower};

use super::Derivation;
use super::cx::Cx;
use super::node::{NOT_KNOWN, watts_value};
use super::numbers::{
    NOTHING_DB, decibels, op, ratio_of_loss, share, share_value, sum, value, watts,
};
use super::totals::items;
use crate::chain::NodeState;
use crate::result::{BudgetItem, CauseKind, CauseName, LimitResult, ReadingResult, Verdict};
use crate::verdict::{
    METER_GAMMA, SMALLEST_FAULT_DB, corrected, power_budget, read_reflection, scatter_db,
};

impl Cx<'_> {
    pub(super) fn state(&self, loc: downlead_base::Loc) -> Option<(&Node, &NodeState<'_>)> {
        let states = &self.kept().c.states;
        states
            .iter()
            .find(|s| s.0 == loc)
            .map(|(_, node, state)| (*node, state))
    }

    /// Margin, probability and verdict of a limit.
    pub(super) fn limit(&self, l: &LimitResult) -> Derivation {
        let state = self.state(l.loc).map(|s| s.1);
        let d = Derivation::of(
            self.title(&format!("margin to the {} limit", l.quantity.word())),
            format!(
                "{} ({})",
                db(l.margin_db),
                l.verdict.limit_word().replace('-', " ")
            ),
        )
        .at(l.loc)
        .by(
            "10 log10(limit/value)",
            format!("10 log10({} / {})", watts(l.limit_w), watts(l.value_w)),
        );
        let counted = match l.quantity {
            LimitQuantity::Output => state.and_then(|s| Some((self.forward(s), s.forward_w?))),
            LimitQuantity::Erp => self.radiated_value(true).zip(self.band.erp_w()),
            LimitQuantity::Eirp => self.radiated_value(false).zip(self.band.eirp_w),
        };
        let d = d.with_all(counted.map(|(step, w)| as_counted(step, w, l.value_w)));
        let budget: Vec<BudgetItem> = match (l.quantity, state) {
            (LimitQuantity::Output, Some(s)) => items(&s.forward),
            (LimitQuantity::Output, None) => Vec::new(),
            _ => self.band.budget.to_vec(),
        };
        let what = match l.quantity {
            LimitQuantity::Output => "uncertainty of the forward power",
            LimitQuantity::Erp | LimitQuantity::Eirp => "uncertainty of ERP and EIRP",
        };
        d.with_all(self.uncertainty(what, l.uncertainty_db, &budget))
            .with_all(self.probability(l, state))
            .with_all(self.elsewhere(l))
            .with(
                Derivation::of("verdict", l.verdict.limit_word().replace('-', " ")).by(format!(
                    "met where the limit is exceeded with {} at most; not met where it is exceeded with {} at least and by more than 0.02 dB; else cannot tell",
                    percent(TAIL),
                    percent(1.0 - TAIL)
                ), ""),
            )
    }

    /// What is radiated in a direction where the fields of all antennas add fully, where a limit
    /// is met in the one where the lengths of their feeds are compared.
    fn elsewhere(&self, l: &LimitResult) -> Option<Derivation> {
        let c = &self.kept().c;
        let in_phase = c.in_phase.as_ref()?.output(Quantity::Eirp)?;
        if l.quantity == LimitQuantity::Output
            || l.verdict != Verdict::CannotTell
            || l.exceeded > TAIL
        {
            return None;
        }
        let eirp = from_db(in_phase.mean);
        Some(self.erp_in_phase(eirp))
    }

    /// The probability that a limit is exceeded; none where nothing is uncertain.
    fn probability(&self, l: &LimitResult, state: Option<&NodeState<'_>>) -> Option<Derivation> {
        if l.uncertainty_db < NOTHING_DB {
            return None;
        }
        let quantity = match (l.quantity, state) {
            (LimitQuantity::Output, Some(s)) => Quantity::Forward(s.at),
            (LimitQuantity::Output, None) => return None,
            _ => Quantity::Eirp,
        };
        let output = self.kept().c.evaluation.output(quantity)?;
        let d = Derivation::of(
            "probability that the limit is exceeded",
            percent(l.exceeded),
        );
        let u = 0.5 * l.uncertainty_db;
        let z = Derivation::of("z", value(l.margin_db / u, "")).by(
            "margin/(U/2)",
            format!("{} / ({} / 2)", margin(l.margin_db), op(l.uncertainty_db)),
        );
        Some(if output.weight <= 0.0 {
            d.from("share of a normal distribution that lies beyond z standard deviations")
                .with(z)
        } else if output.weight >= 1.0 {
            d.from("share of the 1024 points of the sample that lie above the limit")
        } else {
            d.from(format!(
                "{} of it by the sample of 1024 points, the rest by a normal distribution",
                percent(output.weight)
            ))
            .with(z)
        })
    }

    /// The forward power at a statement.
    pub(super) fn forward(&self, s: &NodeState<'_>) -> Derivation {
        let kept = self.kept();
        let after = self.after(s);
        let title = format!("forward power{after}");
        let Some(forward) = s.forward_w else {
            return Derivation::of(title, NOT_KNOWN);
        };
        let d = Derivation::of(title, watts_value(forward));
        let Some(net_w) = s.net_w else {
            return d.from("the parts before; what comes back is not known");
        };
        let back = kept.stated.nodes.get(s.at).map_or(0.0, |n| n.back());
        let net = Derivation::of(format!("net power{after}"), watts_value(net_w));
        let over = to_db(forward * (1.0 - back) / net_w);
        let mut formula = "net power/(1 - reflected share)".to_owned();
        let mut numbers = format!("{} / (1 - {})", watts(net_w), share(back));
        let mut steps = vec![net, Derivation::of("reflected share", share_value(back))];
        if over.abs() >= NOTHING_DB {
            formula.push_str(" × 10^(M/10), M: mean over the uncertainty less this");
            numbers = format!("{numbers} × {}", ratio_of_loss(-over));
            steps.push(Derivation::of("M", decibels(over)));
        }
        d.by(formula, numbers).with_all(steps)
    }

    /// Where a statement stands, in words.
    fn after(&self, s: &NodeState<'_>) -> String {
        s.nodes
            .checked_sub(1)
            .map_or_else(String::new, |i| format!(" after {}", self.name_of(i)))
    }

    /// A reading against what the text lets expect.
    pub(super) fn reading(&self, r: &ReadingResult) -> Derivation {
        let d = Derivation::of(
            self.title("reading"),
            format!(
                "{} ({})",
                db(r.difference_db),
                r.verdict.reading_word().replace('-', " ")
            ),
        )
        .at(r.loc);
        let Some((
            Node::Read {
                read,
                own_tolerance,
                meta,
                ..
            },
            state,
        )) = self.state(r.loc)
        else {
            return d;
        };
        let which = match read {
            Read::Power(which @ (ReadPower::Forward | ReadPower::Net), m) => Some((*which, m)),
            _ => None,
        };
        let Some((which, m)) = which else {
            return self.reflection(d, r, read, state);
        };
        let instrument = meta
            .instrument
            .as_ref()
            .and_then(|n| self.env.instrument(&n.text));
        let (factor, u_db) = corrected(m, meta, instrument, self.env, self.band.hz);
        let d = against(d, (r.read, factor), r.expected);
        let expected = match which {
            ReadPower::Net => Derivation::of(
                format!("net power{}", self.after(state)),
                watts_value(r.expected),
            ),
            _ => self.forward(state),
        };
        let with = instrument.map(|i| (i, u_db));
        let budget = power_budget((which, m), *own_tolerance, meta, r.loc, with, state);
        let mut rows = items(&budget);
        let scatter = scatter_db(instrument, state);
        if let (true, Some(i)) = (scatter > 0.0, instrument) {
            rows.push(BudgetItem {
                cause: CauseKind::Instrument,
                name: CauseName::Named(format!("{}, straightness and scatter", i.name.text).into()),
                standard_db: scatter,
            });
        }
        let to_show = state.loss_db.unwrap_or(0.0).max(SMALLEST_FAULT_DB);
        d.with(expected)
            .with_all(self.uncertainty("uncertainty of the difference", r.uncertainty_db, &rows))
            .with(
                Derivation::of("verdict", r.verdict.reading_word().replace('-', " ")).by(format!(
                    "differs beyond the uncertainty; cannot tell where that is more than {}, half of what the reading is to show",
                    db(0.5 * to_show)
                ), ""),
            )
    }

    /// A reading of what comes back, compared as a reflection coefficient.
    fn reflection(
        &self,
        d: Derivation,
        r: &ReadingResult,
        read: &Read,
        state: &NodeState<'_>,
    ) -> Derivation {
        let (Some((g, own)), Some(swr)) = (read_reflection(read, state), state.swr) else {
            return d;
        };
        let there = gamma_from_swr(swr);
        if r.uncertainty_db <= 0.0 {
            return d.by(
                "the text knows no reflection here, or less than can be read",
                "",
            );
        }
        let shown = g.max(1e-3);
        let of_swr = |title: &str, swr: f64, g: f64| {
            Derivation::of(title, op(g)).by(
                "|Γ| = (SWR - 1)/(SWR + 1)",
                format!("({0} - 1) / ({0} + 1)", number(swr, 10)),
            )
        };
        let read_step = match read {
            Read::Swr(m) => of_swr("|Γ| read", m.value, g),
            Read::Power(_, m) => Derivation::of("|Γ| read", op(g)).by(
                "√(reflected/forward)",
                format!(
                    "√({} / {})",
                    watts(m.value),
                    watts(state.forward_w.unwrap_or(f64::NAN))
                ),
            ),
        };
        let width = METER_GAMMA + own + state.gamma_spread;
        let most = (there + width).min(1.0);
        let width_step = Derivation::of("half-width of |Γ|", value(width, "")).by(
            "directivity of a meter (25 dB) + ± of the reading + spread of what is expected (k = 2)",
            sum(&[METER_GAMMA, own, state.gamma_spread]),
        );
        d.by(
            "20 log10(|Γ| expected/|Γ| read), the difference of the return losses",
            format!("20 log10({} / {})", op(there), op(shown)),
        )
        .with(read_step)
        .with(of_swr("|Γ| expected", swr, there))
        .with(
            Derivation::of("uncertainty of the difference", decibels(r.uncertainty_db))
                .by(
                    "20 log10((|Γ| expected + half-width)/|Γ| expected), the sum 1 at most",
                    format!("20 log10({} / {})", op(most), op(there)),
                )
                .with(width_step),
        )
        .with(
            Derivation::of("verdict", r.verdict.reading_word().replace('-', " ")).by(
                format!(
                    "differs where the two |Γ| differ by more than {}",
                    number(width, 4)
                ),
                "",
            ),
        )
    }
}

/// A margin as an operand.
fn margin(x: f64) -> String {
    op(x)
}

/// The power that a limit counts, where that is another kind than the stated one.
fn as_counted(step: Derivation, stated_w: f64, counted_w: f64) -> Derivation {
    let factor = counted_w / stated_w;
    if (factor - 1.0).abs() < 1e-9 {
        return step;
    }
    Derivation::of(
        "power that the limit counts",
        format!("{} ({})", watts_value(counted_w), power(counted_w)),
    )
    .by(
        "power × factor of the mode and the kind of power",
        format!("{} × {}", watts(stated_w), op(factor)),
    )
    .with(step)
}

/// A power that was read beside the expected one, with the correction of its instrument.
pub(super) fn against(d: Derivation, (read, factor): (f64, f64), expected: f64) -> Derivation {
    match factor == 1.0 {
        true => d.by(
            "10 log10(read/expected)",
            format!("10 log10({} / {})", watts(read), watts(expected)),
        ),
        false => d.by(
            "10 log10(read × correction/expected)",
            format!(
                "10 log10({} × {} / {})",
                watts(read),
                downlead_quantity::sig(factor, 6),
                watts(expected)
            ),
        ),
    }
}
