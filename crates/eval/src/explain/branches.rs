//! Dividers: what comes back from all branches together, and what each of them gets.

use downlead_physics::net::complex::C;
use downlead_physics::net::part::Junction;
use downlead_physics::net::record::{Rec, Recording, record};
use downlead_physics::net::scalar::Real;
use downlead_physics::net::stated::StatedNode;
use downlead_quantity::{from_db, to_db};

use super::Derivation;
use super::cx::Cx;
use super::node::watts_value;
use super::numbers::{NOTHING_DB, decibels, op, ratio_of_loss, share, share_value, watts};
use super::rows::{Row, What};
use super::through::{complex, complex_value, reflected};

impl Cx<'_> {
    /// What all branches get together.
    pub(super) fn all_branches(
        &self,
        d: Derivation,
        rows: &[Row<'_>],
        i: usize,
        starts: &[usize],
    ) -> Derivation {
        let mut d = d;
        let mut terms = Vec::new();
        for k in self.arm_rows(rows, i, starts.len()) {
            let n = &self.band.nodes[k];
            terms.push(watts(n.power_w));
            let arm = Derivation::of(
                format!("power into branch {}", self.branch_name(k)),
                watts_value(n.power_w),
            )
            .at(n.chain);
            let arm = self.branch_input(arm, rows, k);
            d.steps.push(arm);
        }
        let steps = std::mem::take(&mut d.steps);
        d.by("sum of what the branches get", terms.join(" + "))
            .with_all(steps)
    }

    /// The rows at which the branches of the divider in row `i` begin.
    fn arm_rows(&self, rows: &[Row<'_>], i: usize, count: usize) -> Vec<usize> {
        let arm = |r: &Row<'_>| matches!(r.what, What::Arm { .. }) && r.prev == Some(i);
        let found = rows.iter().enumerate().filter(|(_, r)| arm(r));
        found.map(|x| x.0).take(count).collect()
    }

    pub(super) fn branch_name(&self, k: usize) -> String {
        let n = &self.band.nodes[k];
        let name = usize::from(n.branch)
            .checked_sub(1)
            .and_then(|b| self.band.branches.get(b));
        name.map_or_else(|| self.name(n), ToString::to_string)
    }

    /// What one branch gets: its share of the forward power, less what comes back from it.
    pub(super) fn branch_input(&self, d: Derivation, rows: &[Row<'_>], k: usize) -> Derivation {
        let kept = self.kept();
        let n = &self.band.nodes[k];
        let row = &rows[k];
        let (Some(before), Some(at)) = (
            kept.stated.nodes.get(row.before),
            kept.stated.nodes.get(row.at),
        ) else {
            return d;
        };
        let forward = before.forward * from_db(kept.source_db);
        let part = at.forward / before.forward;
        let stated_w = forward * part * (1.0 - at.back());
        let over = to_db(stated_w / n.power_w);
        let mut formula =
            "forward power into the divider × share of the branch × (1 - reflected share of the branch)"
                .to_owned();
        let mut numbers = format!(
            "{} × {} × (1 - {})",
            watts(forward),
            op(part),
            share(at.back())
        );
        let mut steps = vec![
            Derivation::of("forward power into the divider", watts_value(forward))
                .from("the stated figures"),
        ];
        if let What::Arm { junction, arm } = row.what {
            steps.push(self.share_of(junction, rows, k, arm, part));
        }
        let next = self.next_name(rows, k);
        let back = Derivation::of("reflected share of the branch", share_value(at.back()));
        steps.push(match next {
            Some(x) => back.from(format!("what comes back from {x}")),
            None => back,
        });
        if over.abs() >= NOTHING_DB {
            formula.push_str(" × 10^(-(mean over the uncertainty less this)/10)");
            numbers = format!("{numbers} × {}", ratio_of_loss(over));
            steps.push(self.mean_less_stated(
                "mean over the uncertainty less the loss at the stated figures",
                kept.source_db - to_db(n.power_w),
                kept.source_db - to_db(stated_w),
            ));
        }
        d.by(formula, numbers).with_all(steps)
    }

    /// The share of forward power that a branch gets.
    fn share_of(
        &self,
        junction: &Junction,
        rows: &[Row<'_>],
        k: usize,
        arm: usize,
        part: f64,
    ) -> Derivation {
        let arms = rows
            .iter()
            .filter(|r| matches!(r.what, What::Arm { .. }) && r.prev == rows[k].prev)
            .count();
        let (found, steps) = record(|| {
            let s = junction.ports(arms, &Recording);
            s.first()
                .and_then(|r| r.get(arm + 1))
                .map_or(Rec::of(0.0), |x| x.norm())
        });
        let title = "share of the branch";
        // the arms of a divider do not see each other
        let own = (found.value() / part - 1.0).abs() < 1e-9;
        match self.taped(&steps, None).filter(|_| own) {
            Some(mut d) => {
                title.clone_into(&mut d.title);
                d
            }
            None => Derivation::of(title, op(part)),
        }
    }

    /// The loss of a row of a divider whose branches get different powers.
    pub(super) fn loss_of_branches(&self, rows: &[Row<'_>], i: usize, title: String) -> Derivation {
        let n = &self.band.nodes[i];
        let before = rows[i].prev.and_then(|p| self.band.nodes.get(p));
        let Some(before) = before.filter(|b| b.power_w.is_finite() && n.power_w.is_finite()) else {
            return Derivation::of(title, decibels(n.loss_db));
        };
        let d = Derivation::of("", watts_value(n.power_w)).at(n.chain);
        let mut into = match &rows[i].what {
            What::Divider { starts, .. } => self.all_branches(d, rows, i, starts),
            _ => self.branch_input(d, rows, i),
        };
        into.title = match rows[i].what {
            What::Arm { .. } => format!("power into branch {}", self.branch_name(i)),
            _ => "power into all branches".to_owned(),
        };
        Derivation::of(title, decibels(n.loss_db))
            .by(
                "10 log10(power before/power after)",
                format!("10 log10({} / {})", watts(before.power_w), watts(n.power_w)),
            )
            .with(self.power_before(&self.name(n), before))
            .with(into)
    }

    /// What comes back from all branches together, step by step.
    pub(super) fn joined(
        &self,
        junction: &Junction,
        starts: &[usize],
        back: f64,
        name: &str,
    ) -> Option<Derivation> {
        let title = format!("reflected share before {name}");
        let nodes = &self.kept().stated.nodes;
        let (found, steps) = record(|| {
            let s = junction.ports(starts.len(), &Recording);
            let row = s.first();
            let share = |k: usize| {
                row.and_then(|r| r.get(k + 1))
                    .map_or(0.0, |x| x.norm().value())
            };
            (0..starts.len()).map(share).collect::<Vec<f64>>()
        });
        let each: Vec<(f64, &StatedNode)> = found
            .iter()
            .zip(starts)
            .filter_map(|(share, at)| Some((*share, nodes.get(*at)?)))
            .collect();
        let mut g = C::zero();
        let mut v = 0.0;
        for (share, n) in &each {
            g = g + n.gamma.scale(*share);
            v += share * share * n.stray;
        }
        let total = g.norm() + v;
        // where the branches see each other, or the divider reflects by itself, it is more than
        // the sum
        if (total - back).abs() > 1e-9 {
            return Some(Derivation::of(title, share_value(back)).from(
                "what its branches reflect, seen through its scattering parameters and its own reflection",
            ));
        }
        let terms = |one: &dyn Fn(f64, &StatedNode) -> Option<String>| {
            let list: Vec<String> = each.iter().filter_map(|(s, n)| one(*s, n)).collect();
            list.join(" + ")
        };
        let of_g = terms(&|s, n| {
            (n.gamma.norm() > 0.0).then(|| format!("{} × {}", op(s), complex(n.gamma)))
        });
        let of_v =
            terms(&|s, n| (n.stray > 0.0).then(|| format!("{}^2 × {}", op(s), share(n.stray))));
        let mut d = reflected(title, g, v);
        if g.norm() > 0.0 {
            d.steps.push(
                Derivation::of("Γ of all together", complex_value(g))
                    .by("Σ share of power × Γ of the branch", of_g),
            );
        }
        if v > 0.0 {
            d.steps.push(
                Derivation::of("v of all together", share_value(v))
                    .by("Σ (share of power)² × v of the branch", of_v),
            );
        }
        d.steps.extend(self.taped(&steps, None));
        Some(d)
    }
}
