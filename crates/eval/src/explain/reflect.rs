//! The reflective part of a loss: one step, with what it is made of below it.

use downlead_physics::net::stated::StatedNode;

use super::Derivation;
use super::cx::Cx;
use super::numbers::{SHOWN_DB, decibels, op, ratio_of_loss, share, share_value};
use super::rows::{Row, What};

/// Below it the operands of a reflective part are not followed further, dB.
const FOLLOWED_DB: f64 = 5e-4;

impl Cx<'_> {
    /// What reflections add to the loss of net power in a row, at the stated figures: `extra_db`,
    /// beside a matched loss of `matched_db`.
    pub(super) fn reflections(
        &self,
        rows: &[Row<'_>],
        i: usize,
        matched_db: f64,
        extra_db: f64,
    ) -> Derivation {
        let nodes = &self.kept().stated.nodes;
        let row = &rows[i];
        let (Some(before), Some(after)) = (nodes.get(row.before), nodes.get(row.at)) else {
            return Derivation::of("what reflections add", decibels(extra_db));
        };
        let name = self.name_of(i);
        let passed = after.forward / before.forward;
        // over what the part passes between matched ends
        let over_matched = passed * downlead_quantity::from_db(matched_db);
        let plain = (over_matched - 1.0).abs() < 1e-12;
        let source = matches!(row.what, What::Aerial(_));
        // the antenna of a receive chain could deliver 1 W: nothing comes back to it
        let before_back = if source { 0.0 } else { before.back() };
        let left = if source {
            "1".to_owned()
        } else {
            format!("(1 - {})", share(before_back))
        };
        let what = if source {
            "1"
        } else {
            "(1 - reflected share before)"
        };
        let d = Derivation::of("what reflections add", decibels(extra_db));
        if extra_db.abs() < SHOWN_DB {
            return d;
        }
        let (formula, numbers) = if plain {
            (
                format!("10 log10({what}/(1 - reflected share after))"),
                format!("10 log10({left} / (1 - {}))", share(after.back())),
            )
        } else {
            (
                format!(
                    "10 log10({what}/(q × (1 - reflected share after))), q: forward power passed on over that of a matched part"
                ),
                format!(
                    "10 log10({left} / ({} × (1 - {})))",
                    share(over_matched),
                    share(after.back()),
                ),
            )
        };
        let d = d.by(formula, numbers);
        if extra_db.abs() < FOLLOWED_DB {
            return d;
        }
        let part = match row.what {
            What::Part(p, e) => Some((p, Some(e))),
            What::Aerial(p) => Some((p, None)),
            _ => None,
        };
        let mut d = d;
        if let Some((p, element)) = part {
            let way = self.through(p, element, after);
            if !source {
                d.steps.push(way.seen(&name));
            }
            if !plain {
                let on = way.passed(source);
                d.steps
                    .push(of_matched(over_matched, passed, matched_db).with(on));
            }
        } else if let What::Divider {
            junction, starts, ..
        } = &row.what
        {
            d.steps
                .extend(self.joined(junction, starts, before_back, &name));
            if !plain {
                let on = Derivation::of("forward power passed on to a branch", op(passed));
                d.steps
                    .push(of_matched(over_matched, passed, matched_db).with(on));
            }
        }
        let next = self.next_name(rows, i);
        d.with(self.reflected_after(after, next.as_deref()))
    }

    /// The share that comes back after a row.
    fn reflected_after(&self, after: &StatedNode, next: Option<&str>) -> Derivation {
        let d = Derivation::of("reflected share after", share_value(after.back()));
        match next {
            Some(n) => d.from(format!("what comes back from {n}")),
            None => d,
        }
    }
}

/// Forward power passed on over that of a matched part.
fn of_matched(q: f64, passed: f64, matched_db: f64) -> Derivation {
    Derivation::of("q", share_value(q)).by(
        "forward power passed on / 10^(-matched loss/10)",
        format!("{} / {}", op(passed), ratio_of_loss(matched_db)),
    )
}
