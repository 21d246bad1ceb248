//! The power after a part, and the loss of net power in it.

use downlead_physics::net::part::{Context, Part as Net};
use downlead_physics::net::record::{Recording, Step, record};
use downlead_physics::net::scalar::Real;
use downlead_quantity::{db, frequency, power, to_db};
use downlead_station::model::PartKind;

use super::Derivation;
use super::cx::Cx;
use super::numbers::{
    NOTHING_DB, SHOWN_DB, decibels, difference, op, ratio_of_loss, share, share_value, shown, sum,
    watts,
};
use super::rows::{Row, What};
use crate::chain::dbm_words;
use crate::element::Element;
use crate::result::NodeResult;

pub(super) const NOT_KNOWN: &str = "not known";

/// Decibels as what a line is about, or that they are not known.
pub(super) fn maybe_db(value: Option<f64>) -> String {
    value.map_or_else(|| NOT_KNOWN.to_owned(), db)
}

impl Cx<'_> {
    /// What is at row `i`: the power after it, or what it radiates, or the level it needs.
    pub(super) fn node(&self, i: usize) -> Derivation {
        let n = &self.band.nodes[i];
        let name = self.name(n);
        if n.kind.sends() && !self.receives() {
            return self.transmitter(i);
        }
        if n.kind.is(PartKind::Antenna) && !self.receives() {
            return self.radiated(i);
        }
        if !n.loss_known {
            return Derivation::of(
                self.title(&format!("loss of {name}")),
                format!("{NOT_KNOWN}, and so no power after it"),
            )
            .at(n.def);
        }
        if self.receives() {
            return self.level(i);
        }
        let rows = self.rows();
        let before = rows
            .get(i)
            .and_then(|r| self.band.nodes.get(r.prev?))
            .filter(|b| b.power_known && b.power_w.is_finite());
        let Some(before) = before.filter(|_| n.power_known && n.power_w.is_finite()) else {
            return self.loss_alone(i);
        };
        self.power_after(&rows, i, n, before)
    }

    fn power_after(
        &self,
        rows: &[Row<'_>],
        i: usize,
        n: &NodeResult,
        before: &NodeResult,
    ) -> Derivation {
        let name = self.name(n);
        let d = Derivation::of(
            self.title(&match rows[i].what {
                What::Divider { alike: true, .. } => {
                    format!("power into each branch after {name}")
                }
                What::Divider { .. } => format!("power into all branches after {name}"),
                What::Arm { .. } => format!("power into branch {}", self.branch_name(i)),
                What::End { .. } => format!("power into {name}"),
                _ => format!("power after {name}"),
            }),
            format!(
                "{} ({}) ± {}",
                power(n.power_w),
                dbm_words(n.power_w),
                db(n.uncertainty_db)
            ),
        )
        .at(n.chain);
        let d = match &rows[i].what {
            What::Divider {
                starts,
                alike: false,
                ..
            } => self.all_branches(d, rows, i, starts),
            What::Arm { .. } => self.branch_input(d, rows, i),
            _ if n.loss_db.abs() < NOTHING_DB => d
                .by("P = P before, nothing is lost", watts(before.power_w))
                .with(self.power_before(&name, before)),
            _ => {
                let (lost, loss) = self.loss(rows, i, format!("loss of {name}"));
                d.by(
                    "P = P before × 10^(-loss/10)",
                    format!("{} × {}", watts(before.power_w), ratio_of_loss(lost)),
                )
                .with(self.power_before(&name, before))
                .with(loss)
            }
        };
        let budget = self.budget_of_net(rows[i].at);
        d.with_all(self.uncertainty("uncertainty of this power", n.uncertainty_db, &budget))
    }

    pub(super) fn power_before(&self, name: &str, before: &NodeResult) -> Derivation {
        let title = format!("power before {name}, after {}", self.name(before));
        Derivation::of(title, watts_value(before.power_w)).at(before.chain)
    }

    /// The transmitter: its power, and the mismatch it sees.
    fn transmitter(&self, i: usize) -> Derivation {
        let n = &self.band.nodes[i];
        let name = self.name(n);
        let part = self.parts.get(&n.def).copied();
        let said = crate::origin::source(self.places, self.env, part, n, self.band);
        let d = Derivation::leaf(
            self.title(&format!("power of {name}")),
            format!("{} ({})", power(n.forward_w), dbm_words(n.forward_w)),
            said,
            Some(n.def),
        );
        if !n.power_known || n.loss_db.abs() < SHOWN_DB || !n.power_w.is_finite() {
            return d;
        }
        let rows = self.rows();
        let (lost, loss) = self.loss(&rows, i, "mismatch at the transmitter".to_owned());
        d.with(
            Derivation::of("net power into the line", watts_value(n.power_w))
                .by(
                    "P × 10^(-mismatch/10)",
                    format!("{} × {}", watts(n.forward_w), ratio_of_loss(lost)),
                )
                .with(loss),
        )
    }

    /// The loss of row `i` as what the line is about.
    pub(super) fn loss_alone(&self, i: usize) -> Derivation {
        let n = &self.band.nodes[i];
        let title = self.title(&format!("loss of {}", self.name(n)));
        if !n.loss_known {
            return Derivation::of(title, NOT_KNOWN).at(n.def);
        }
        let (_, mut d) = self.loss(&self.rows(), i, title);
        d.value = db(n.loss_db);
        d.at(n.chain)
    }

    /// The loss of row `i`, dB, to the digits that are shown.
    pub(super) fn shown_loss(&self, rows: &[Row<'_>], i: usize) -> f64 {
        self.loss(rows, i, String::new()).0
    }

    /// The loss of net power in row `i`, dB: matched loss, what reflections add, and by how much
    /// the mean over all that is uncertain differs from that. What shows in no digit of a power is
    /// left out.
    pub(super) fn loss(&self, rows: &[Row<'_>], i: usize, title: String) -> (f64, Derivation) {
        let n = &self.band.nodes[i];
        let Some(row) = rows.get(i) else {
            return (n.loss_db, Derivation::of(title, decibels(n.loss_db)));
        };
        if !n.power_known {
            // what reflections add is not known either
            let matched = self.matched(row);
            let (v, d) =
                matched.unwrap_or_else(|| (n.loss_db, Derivation::of("", decibels(n.loss_db))));
            return (v, Derivation { title, ..d });
        }
        if let What::Arm { .. } | What::Divider { alike: false, .. } = row.what {
            return (n.loss_db, self.loss_of_branches(rows, i, title));
        }
        let nodes = &self.kept().stated.nodes;
        let net = |at: usize| nodes.get(at).map_or(f64::NAN, |n| to_db(n.net()));
        let stated = match row.what {
            What::Aerial(_) => -net(row.at),
            What::Source => -net(0),
            _ => net(row.before) - net(row.at),
        };
        let mut terms = Vec::new();
        let mut names = Vec::new();
        let mut steps = Vec::new();
        let mut matched_db = 0.0;
        if let Some((v, d)) = self.matched(row) {
            matched_db = v;
            terms.push(v);
            names.push("matched loss");
            steps.push(d);
        }
        let extra = stated - matched_db;
        if extra.abs() >= NOTHING_DB {
            terms.push(extra);
            names.push("what reflections add");
            steps.push(match row.what {
                What::Source => self.at_source(extra),
                _ => self.reflections(rows, i, matched_db, extra),
            });
        }
        let over = n.loss_db - stated;
        if over.abs() >= NOTHING_DB {
            terms.push(over);
            names.push("mean over the uncertainty less this");
            steps.push(self.mean_less_stated(
                "mean over the uncertainty less the loss at the stated figures",
                n.loss_db,
                stated,
            ));
        }
        // a single operand is the loss itself
        if steps.len() == 1
            && let Some(mut only) = steps.pop()
        {
            only.title = title;
            return (terms[0], only);
        }
        let total: f64 = terms.iter().sum();
        let d = Derivation::of(title, decibels(total));
        if terms.is_empty() {
            return (total, d);
        }
        let d = d
            .by(format!("loss = {}", names.join(" + ")), sum(&terms))
            .with_all(steps);
        (total, d)
    }

    /// What comes back to the transmitter.
    fn at_source(&self, extra: f64) -> Derivation {
        let back = self.kept().stated.nodes.first().map_or(0.0, |n| n.back());
        Derivation::of("what reflections add", decibels(extra))
            .by(
                "-10 log10(1 - reflected share), reflected share = |Γ|² = ((SWR - 1)/(SWR + 1))²",
                shown(extra, format!("-10 log10(1 - {})", share(back))),
            )
            .with(Derivation::of("reflected share", share_value(back)).from(
                self.band.nodes.get(1).map_or_else(String::new, |n| {
                    format!("what comes back from {}", self.name(n))
                }),
            ))
    }

    /// By how much a mean over all that is uncertain differs from the value at the stated figures.
    pub(super) fn mean_less_stated(&self, title: &str, mean: f64, stated: f64) -> Derivation {
        use crate::result::Method;
        let how = match self.band.method {
            None | Some(Method::Derivatives) => {
                "mean over the unknown phases and the ± of the figures (JCGM 100:2008)"
            }
            Some(Method::Sample | Method::Both) => {
                "mean over the unknown phases and the ± of the figures, by a sample of 1024 points (JCGM 101:2008)"
            }
        };
        let over = mean - stated;
        let d = Derivation::of(title, decibels(over)).from(how);
        if over.abs() < SHOWN_DB {
            return d;
        }
        d.by("mean - stated", difference(&[mean, -stated]))
    }

    /// The matched loss of a row with the way it was computed; none of what has none.
    fn matched(&self, row: &Row<'_>) -> Option<(f64, Derivation)> {
        let cx = self.context();
        match &row.what {
            What::Part(part, e) => self.matched_part(part, e, &cx),
            What::Divider {
                junction,
                element,
                starts,
                ..
            } => {
                let (v, steps) = record(|| {
                    junction
                        .matched_loss(starts.len(), 0, &Recording)
                        .step("loss to one branch, dB")
                });
                self.recorded(v.value(), &steps, element)
            }
            _ => None,
        }
    }

    fn recorded(&self, v: f64, steps: &[Step], e: &Element<'_>) -> Option<(f64, Derivation)> {
        let d = self.taped(steps, Some(e)).or_else(|| {
            // nothing but constants: a part that loses nothing has no step
            (v != 0.0).then(|| Derivation::of("matched loss", decibels(v)))
        })?;
        Some((v, d))
    }

    fn matched_part(&self, part: &Net, e: &Element<'_>, cx: &Context) -> Option<(f64, Derivation)> {
        if let Net::Measured { s, .. } = part {
            let through = libm::hypot(s[2].re, s[2].im);
            let db = -20.0 * libm::log10(through);
            let d = Derivation::leaf(
                "matched loss",
                decibels(db),
                e.meta.and_then(downlead_station::model::Meta::words),
                e.file.map(|f| f.path.loc),
            )
            .by(
                "-20 log10 |S21| between ends of 50 ohm, of the file's port on the way in to that on the way out",
                format!("-20 log10({})", op(through)),
            )
            .with(Derivation::of("|S21|", op(through)).from(format!(
                "the two-port of the file at {}",
                frequency(self.band.hz)
            )));
            return Some((db, d));
        }
        if let Net::Several(parts) = part {
            return self.matched_several(parts, e, cx);
        }
        let (v, steps) = record(|| part.matched_loss(cx, &Recording).step("matched loss, dB"));
        let (v, mut d) = self.recorded(v.value(), &steps, e)?;
        if d.formula.is_empty() && d.source.is_none() {
            d.source = Some(e.basis.word().to_owned());
        }
        Some((v, d))
    }

    fn matched_several(
        &self,
        parts: &[Net],
        e: &Element<'_>,
        cx: &Context,
    ) -> Option<(f64, Derivation)> {
        let each: Vec<(f64, Derivation)> = parts
            .iter()
            .filter_map(|p| self.matched_part(p, e, cx))
            .collect();
        let terms: Vec<f64> = each.iter().map(|x| x.0).collect();
        if each.len() < 2 {
            return each.into_iter().next();
        }
        let total: f64 = terms.iter().sum();
        let d = Derivation::of("matched loss", decibels(total))
            .by("own loss + added loss", sum(&terms))
            .with_all(each.into_iter().map(|x| x.1));
        Some((total, d))
    }
}

/// Watts that are an operand elsewhere.
pub(super) fn watts_value(w: f64) -> String {
    super::numbers::value(w, "W")
}
