//! A measured loss beside what the piece should lose: difference, verdict, what would make it tell.

use downlead_physics::measure::{
    Adapter, Comparison, Grows, Source, Term, Value, Verdict, compare_with, length_factor,
    length_factor_with, meter_factor, per_length,
};
use downlead_quantity::from_db;
use downlead_station::model::Name;

use super::cells::{Bench, Found};
use super::expected::join_loss;
use super::result::{BenchCell, Expected};

impl<'m> Bench<'m, '_> {
    /// Adapters that came or went between the reading of a piece and those it is held against.
    pub(super) fn adapters(
        &mut self,
        with: &'m [(u32, Name)],
        without: &[&'m [(u32, Name)]],
    ) -> Vec<Adapter> {
        let mut out = Vec::new();
        let count = |list: &[(u32, Name)], n: &Name| -> u32 {
            list.iter()
                .filter(|x| x.1.text == n.text)
                .map(|x| x.0)
                .sum()
        };
        let mut seen: Vec<&str> = Vec::new();
        for (_, n) in with.iter().chain(without.iter().copied().flatten()) {
            if seen.contains(&&*n.text) {
                continue;
            }
            seen.push(&n.text);
            let (a, b) = (
                count(with, n),
                without.iter().map(|list| count(list, n)).sum::<u32>(),
            );
            if a == b {
                continue;
            }
            if let Some((db, u_db)) = join_loss(
                a.abs_diff(b),
                n,
                self.point,
                self.env,
                self.assumed,
                self.out,
            ) {
                out.push(Adapter {
                    id: self.meters.adapter(&n.text),
                    db,
                    u_db,
                    came: a > b,
                });
            }
        }
        out
    }

    pub(super) fn cell(&mut self, piece: usize, f: Found, promised: Option<Expected>) -> BenchCell {
        // what comes back of an open or shorted end, and a whole network, tell the loss between
        // matched ends
        let promised = promised.map(|e| {
            if f.method.matched() {
                e.between_matched_ends()
            } else {
                e
            }
        });
        let expected = promised.as_ref();
        let common = self.joins_in_both(piece, &f);
        let comparison = expected.map(|e| {
            let (measured, promised) = (f.loss.expanded_db, 2.0 * e.u_db);
            let less = 4.0 * f.loss.k * common;
            let apart = (measured * measured + promised * promised - less).max(0.0);
            let mut found = compare_with(
                Value {
                    db: f.loss.db,
                    expanded_db: measured,
                },
                Value {
                    db: e.db,
                    expanded_db: promised,
                },
                libm::sqrt(apart),
            );
            found.meter_factor = better_meter(&f, &found, e.db);
            // what a sheet calls a maximum is kept by a cable that loses less
            let less = found.verdict == Verdict::Differs && found.difference_db < 0.0;
            if e.maximum && less {
                found.verdict = Verdict::Agrees;
            }
            found
        });
        let cannot = comparison
            .as_ref()
            .is_some_and(|c| c.verdict == Verdict::CannotTell);
        let length = expected.filter(|_| cannot).and_then(|e| {
            let cable_u = libm::sqrt((e.u_db * e.u_db - e.u_joins_db * e.u_joins_db).max(0.0));
            let grows = Grows {
                cable_db: e.db - e.joins_db,
                fixed_db: e.joins_db,
                cable_expanded_db: 2.0 * cable_u,
                fixed_expanded_db: 2.0 * e.u_joins_db,
            };
            match self.full_scale(&f) {
                Some((own, offset)) => {
                    // it rises as the reading falls; the piece may lose more than is expected
                    let loss_db = f.loss.db.max(e.db);
                    let of = |x: f64| {
                        let ratio = from_db(x * loss_db);
                        libm::hypot(own * libm::hypot(1.0, ratio), offset * (ratio - 1.0))
                    };
                    let now = of(1.0);
                    let rest = libm::sqrt((f.loss.u_db * f.loss.u_db - now * now).max(0.0));
                    let k = f.loss.expanded_db / f.loss.u_db;
                    length_factor_with(|x| k * libm::hypot(rest, of(x)), &grows)
                }
                None => length_factor(f.loss.expanded_db, &grows),
            }
        });
        let metres = self.session.pieces[piece].metres();
        let per = metres.and_then(|m| {
            // the cable's own loss, without what reflections at its ends add
            let (j, u, mismatch, u_mismatch) = expected.map_or((0.0, 0.0, 0.0, 0.0), |e| {
                (e.joins_db, e.u_joins_db, e.mismatch_db(), e.u_mismatch_db())
            });
            let u_db = libm::hypot(0.5 * f.loss.expanded_db, u_mismatch);
            let u_db = libm::sqrt((u_db * u_db - f.loss.k * common).max(0.0));
            per_length(f.loss.db - mismatch, u_db, j, u, m.value, m.u)
        });
        BenchCell {
            piece,
            band: self.band,
            method: f.method,
            rows: f.rows.into(),
            count: f.count,
            reading: f.reading,
            measured: f.loss,
            budget: f.budget.into(),
            expected: promised,
            comparison,
            slip: false,
            length_factor: length,
            per_length: per,
            losses: f.losses.into(),
            half_difference_db: f.half_difference_db,
        }
    }

    /// Errors of full scale in a loss against a baseline: the one that each reading has by itself, and
    /// the one that is the same in all; their sizes at the baseline, dB.
    fn full_scale(&self, f: &Found) -> Option<(f64, f64)> {
        let base = f.loss.baseline.as_ref()?.watts;
        let certified = |t: &Term| matches!(t.source, Source::Certificate(_));
        if f.budget.iter().any(certified) {
            return None;
        }
        let m = self.meters.all().get(f.meter?)?;
        let at_base = |u: f64| downlead_quantity::DB_PER_RELATIVE * u / base;
        (m.u_linearity_w > 0.0 || m.u_full_scale_w > 0.0)
            .then(|| (at_base(m.u_linearity_w), at_base(m.u_full_scale_w)))
    }

    /// Covariance of a measured loss and the joins expected of the piece, dB²: an adapter of the
    /// baseline and a join that comes with the piece are of one kind, and what such a one loses
    /// beside what is known of it is counted once.
    fn joins_in_both(&mut self, piece: usize, f: &Found) -> f64 {
        let session = self.session;
        let mut sum = 0.0;
        for (n, name) in &session.pieces[piece].connectors {
            let Some(id) = self.meters.adapter_of(&name.text) else {
                continue;
            };
            let own = f.budget.iter().find(|t| t.source == Source::Adapter(id));
            let Some(own) = own.filter(|t| t.u_db != 0.0) else {
                continue;
            };
            // what is wrong with the connector has been said where the piece was computed
            let mut said = Vec::new();
            if let Some((_, u)) = join_loss(*n, name, self.point, self.env, self.assumed, &mut said)
            {
                sum += own.u_db * u;
            }
        }
        sum
    }
}

/// Whether a cause is an error of a meter: a better one makes it smaller.
fn of_meter(t: &Term) -> bool {
    !matches!(
        t.source,
        Source::Drift(_) | Source::Mismatch(_) | Source::Adapter(_) | Source::Other(0)
    )
}

/// How many times better a meter would tell; none if no meter would.
fn better_meter(f: &Found, x: &Comparison, expected_db: f64) -> Option<f64> {
    if x.verdict != Verdict::CannotTell {
        return Some(1.0);
    }
    let meter: f64 = f
        .budget
        .iter()
        .filter(|t| of_meter(t))
        .map(|t| t.u_db * t.u_db)
        .sum();
    let meter = f.loss.k * f.loss.k * meter;
    let rest = (x.expanded_db * x.expanded_db - meter).max(0.0);
    meter_factor(libm::sqrt(meter), libm::sqrt(rest), expected_db)
}
