//! From the readings on one band to the loss of each piece.

use downlead_base::{Diagnostic, Loc};
use downlead_physics::measure::{
    Adapter, Around, BaselineUse, Baselines, Budget, Grows, Level, Loss, Meter, Rules, Source,
    SwrReading, Term, Value, Verdict, compare, length_factor, length_factor_with, per_length,
    substitution, swr, two_meters,
};
use downlead_quantity::from_db;
use downlead_station::Env;
use downlead_station::model::Name;
use downlead_station::session::{ReadingKind, Session};

use super::expected::join_loss;
use super::findings::{self, Place};
use super::gather::{Group, Taken, TakenValue};
use super::meters::Meters;
use super::result::{BenchCell, BenchRow, BenchSwr, Expected, Method};
use crate::assume::{Assumed, Assumptions};
use crate::point::Point;

/// How fast a transmitter may drift of which there is one baseline only: half-width, relative,
/// per minute (common practice).
const DRIFT_UNKNOWN: f64 = 0.003;

/// What is needed beside the readings.
pub(super) struct Bench<'m, 'o> {
    pub(super) session: &'m Session,
    pub(super) env: &'m Env,
    pub(super) point: &'o Point,
    pub(super) band: usize,
    pub(super) meters: &'o mut Meters<'m>,
    pub(super) assumed: &'o mut Assumptions,
    pub(super) out: &'o mut Vec<Diagnostic>,
    /// Number of the next reading.
    pub(super) next: &'o mut usize,
    /// Readings of two meters one behind the other, of the whole session.
    pub(super) equalised: &'o [(Level, Level)],
    /// Standing-wave ratios found so far.
    pub(super) swrs: &'o mut Vec<BenchSwr>,
}

/// A reading with its meter and number.
struct Row<'g, 'm> {
    taken: &'g Taken<'m>,
    level: Level,
    minutes: f64,
}

/// What a piece lost, and how it was found.
pub(super) struct Found {
    pub(super) method: Method,
    pub(super) loss: Loss,
    pub(super) budget: Vec<Term>,
    pub(super) rows: Vec<Loc>,
    pub(super) count: usize,
    pub(super) reading: Option<(f64, f64)>,
    pub(super) half_difference_db: Option<f64>,
}

impl<'m> Bench<'m, '_> {
    /// The cells of a band, with what stands beside its readings; `expected` by piece.
    pub(super) fn band(
        &mut self,
        g: &Group<'m>,
        expected: &[Option<Expected>],
        cells: &mut Vec<BenchCell>,
        rows: &mut Vec<BenchRow>,
    ) -> (Option<downlead_physics::measure::Drift>, Box<[(f64, f64)]>) {
        let first_cell = cells.len();
        let powers = self.powers(g);
        let (powers, apart) = self.of_one_unit(powers);
        let base: Vec<Level> = powers
            .iter()
            .filter(|r| r.taken.kind == ReadingKind::Baseline)
            .map(|r| r.level)
            .collect();
        let baselines = self.baselines(g, &base);
        for (piece, promised) in expected.iter().enumerate() {
            for found in [
                self.through(g, piece, &powers, baselines.as_ref(), promised.as_ref()),
                self.reflections(g, piece),
                self.network(g, piece),
            ]
            .into_iter()
            .flatten()
            {
                // the first way that gives a result is the best one
                if cells[first_cell..].iter().any(|c| c.piece == piece) {
                    continue;
                }
                cells.push(self.cell(piece, found, promised.as_ref()));
            }
        }
        for r in &powers {
            if let Some(swr) = self.swr(r) {
                self.swrs.push(BenchSwr {
                    kind: r.taken.kind,
                    piece: r.taken.piece,
                    band: self.band,
                    swr,
                    loc: r.taken.loc,
                    from: r.taken.from.map(|(path, line)| (path.into(), line)),
                });
            }
            rows.extend(self.row(r, base.first(), cells, first_cell));
        }
        for r in &apart {
            rows.extend(self.row(r, None, cells, first_cell));
        }
        for t in g.taken.iter().filter(|t| {
            t.from.is_none() && !matches!(t.shown, TakenValue::Watts(_) | TakenValue::Loss(_))
        }) {
            rows.push(BenchRow {
                loc: t.loc,
                kind: t.kind,
                band: self.band,
                cell: cell_of(cells, first_cell, t.piece),
                against_first_db: None,
                swr: None,
            });
        }
        let base = baselines.as_ref().map_or_else(Box::default, |b| {
            b.levels().iter().map(|l| (l.watts, l.minutes)).collect()
        });
        (baselines.map(|b| b.drift()), base)
    }

    /// The readings of power in the order of time, with what is wrong with single ones.
    fn powers<'g>(&mut self, g: &'g Group<'m>) -> Vec<Row<'g, 'm>> {
        let timed = g.taken.iter().any(|t| t.minutes.is_some());
        let mut last: Option<f64> = None;
        let mut out = Vec::with_capacity(g.taken.len());
        for (i, t) in g.taken.iter().enumerate() {
            let watts = match t.shown {
                TakenValue::Watts(w) => w,
                TakenValue::Loss(db) => from_db(-db),
                _ => continue,
            };
            if t.kind == ReadingKind::Equalise || t.kind.of_piece() && t.piece.is_none() {
                continue;
            }
            let place = Place::new(t, self.point);
            let Some(meter) = self.meter(t, watts, &place) else {
                continue;
            };
            // with no times at all the order is all there is; equal steps are assumed
            let minutes = match t.minutes {
                Some(m) => m,
                None if !timed => f64::from(u32::try_from(i).unwrap_or(u32::MAX)),
                None => last.unwrap_or(0.0),
            };
            if let (Some(m), Some(before)) = (t.minutes, last)
                && m < before
            {
                findings::time_backwards(&place, m, before, self.out);
            }
            last = Some(minutes);
            if let Some(back) = t.reflected_w.filter(|r| *r >= watts) {
                findings::more_back(&place, watts, back, self.out);
            }
            out.push(Row {
                taken: t,
                level: Level::one(self.number(), meter, watts, minutes),
                minutes,
            });
        }
        if !timed
            && out
                .iter()
                .filter(|r| r.taken.kind == ReadingKind::Baseline)
                .count()
                > 1
        {
            self.assumed.add(Assumed::EqualSteps, self.session.name.loc);
        }
        out
    }

    /// The readings that stand in the unit of the first baseline, and the others, which are told: a
    /// loss in dB is one against the instrument's own reference, a power in W against one in W.
    fn of_one_unit<'g>(
        &mut self,
        powers: Vec<Row<'g, 'm>>,
    ) -> (Vec<Row<'g, 'm>>, Vec<Row<'g, 'm>>) {
        let in_db = |r: &Row<'_, 'm>| matches!(r.taken.shown, TakenValue::Loss(_));
        let base = powers
            .iter()
            .find(|r| r.taken.kind == ReadingKind::Baseline)
            .map(in_db);
        let (fit, apart): (Vec<_>, Vec<_>) = powers.into_iter().partition(|r| {
            match (r.taken.kind, r.taken.input) {
                // the power at the near end is in W, and no baseline is needed
                (ReadingKind::Through, Some(_)) => !in_db(r),
                _ => base.is_none_or(|b| b == in_db(r)),
            }
        });
        for r in &apart {
            findings::other_unit(&Place::new(r.taken, self.point), r.taken, self.out);
        }
        (fit, apart)
    }

    fn number(&mut self) -> usize {
        *self.next += 1;
        *self.next - 1
    }

    /// Number of the meter of a reading; none where the reading cannot count.
    fn meter(&mut self, t: &Taken<'m>, watts: f64, place: &Place) -> Option<usize> {
        let m = self
            .meters
            .of(t, self.session, self.env, self.assumed, self.out)?;
        if let Some(i) = m.instrument {
            if findings::outside_band(i, place, self.point, self.out) {
                return None;
            }
            if matches!(t.shown, TakenValue::Watts(_))
                && findings::outside_scale(i, watts, place, self.out)
                || matches!(t.shown, TakenValue::Loss(_))
                    && findings::decibel_on_a_scale(i, place, self.out)
            {
                return None;
            }
        }
        Some(m.number)
    }

    fn baselines(&mut self, g: &Group<'m>, base: &[Level]) -> Option<Baselines> {
        if base.is_empty() {
            // readings that could not count have had their finding
            if !g.taken.iter().any(|t| t.kind == ReadingKind::Baseline) {
                findings::no_baseline(g, self.point, self.out);
            }
            return None;
        }
        // baselines with two meters would not be one line
        let meter = base[0].meter;
        let same: Vec<Level> = base.iter().copied().filter(|l| l.meter == meter).collect();
        let b = Baselines::new(&same, self.meters.all()).ok()?;
        let drift = b.drift();
        findings::drift(g, self.point, &drift, self.out);
        Some(b)
    }

    /// Loss of a piece from the power behind it.
    fn through(
        &mut self,
        g: &Group<'m>,
        piece: usize,
        powers: &[Row<'_, 'm>],
        baselines: Option<&Baselines>,
        expected: Option<&Expected>,
    ) -> Option<Found> {
        let mine: Vec<&Row<'_, 'm>> = powers
            .iter()
            .filter(|r| r.taken.kind == ReadingKind::Through && r.taken.piece == Some(piece))
            .collect();
        let first = *mine.first()?;
        // repeated readings with one meter are one, with their scatter
        let alike: Vec<&Row<'_, 'm>> = mine
            .iter()
            .copied()
            .filter(|r| {
                r.level.meter == first.level.meter
                    && r.taken.adapters == first.taken.adapters
                    && r.taken.input.is_some() == first.taken.input.is_some()
            })
            .collect();
        for r in mine
            .iter()
            .filter(|r| !alike.iter().any(|a| a.level.id == r.level.id))
        {
            let place = Place::new(r.taken, self.point);
            let at_both_ends = first.taken.input.is_some();
            let how = findings::OtherWay {
                meter: r.level.meter != first.level.meter,
                adapters: r.taken.adapters != first.taken.adapters,
                first_at_both_ends: (r.taken.input.is_some() != at_both_ends)
                    .then_some(at_both_ends),
            };
            findings::not_used(
                &place,
                &self.session.pieces[piece].name.text,
                &how,
                self.out,
            );
        }
        let readings: Vec<(f64, f64)> = alike.iter().map(|r| (r.level.watts, r.minutes)).collect();
        let level = Level::mean(first.level.id, first.level.meter, &readings)?;
        let base_adapters = g
            .taken
            .iter()
            .find(|t| t.kind == ReadingKind::Baseline)
            .map_or(&[][..], |t| t.adapters);
        let adapters = self.adapters(first.taken.adapters, base_adapters);
        let rules = Rules {
            unknown_per_minute: DRIFT_UNKNOWN,
            ..Rules::default()
        };
        let mut budget = Budget::new();
        let place = Place::new(first.taken, self.point);
        let (method, mut loss) = match (first.taken.input, baselines) {
            (Some(input), _) => {
                let (method, l) = self.two(first, input, &level, &adapters, &mut budget)?;
                (method, l)
            }
            (None, Some(b)) => {
                let method = if b.first().meter == level.meter {
                    Method::Substitution
                } else {
                    Method::OtherMeter
                };
                let around = Around {
                    adapters: &adapters,
                    ..Around::default()
                };
                let l = substitution(b, &level, self.meters.all(), &rules, &around, &mut budget)
                    .ok()?;
                (method, l)
            }
            (None, None) => return None,
        };
        if let Some(ends) = self.ends(loss.db, expected) {
            budget.push(Term::type_b(Source::Mismatch(level.id), ends.u_db()));
            loss = Loss {
                naive_db: loss.naive_db,
                baseline: loss.baseline,
                ..Loss::from_budget(loss.db, &budget)
            };
        }
        match loss.baseline.as_ref().map(|b| b.how) {
            Some(BaselineUse::Only(_)) => {
                self.assumed
                    .add(Assumed::DriftUnknown, self.session.name.loc);
                findings::one_baseline(g, self.point, self.out);
            }
            Some(BaselineUse::Nearest(_)) => {
                findings::not_between(&place, self.out);
            }
            Some(BaselineUse::Between { .. }) => {
                self.assumed.add(Assumed::DriftLine, self.session.name.loc);
            }
            None => {}
        }
        if loss.db < -loss.expanded_db || (loss.db < 0.0 && expected.is_some_and(|e| e.db > 0.1)) {
            findings::above_baseline(&place, &loss, self.out);
        }
        Some(Found {
            method,
            loss,
            budget: sorted(&budget),
            rows: alike.iter().map(|r| r.taken.loc).collect(),
            count: alike.len(),
            reading: Some((level.watts, level.minutes)),
            half_difference_db: None,
        })
    }

    fn two(
        &mut self,
        row: &Row<'_, 'm>,
        (watts, with): (f64, Option<&'m str>),
        level: &Level,
        adapters: &[Adapter],
        budget: &mut Budget,
    ) -> Option<(Method, Loss)> {
        let near = Taken {
            instrument: with.or(row.taken.instrument),
            shown: TakenValue::Watts(watts),
            ..row.taken.clone()
        };
        let place = Place::new(&near, self.point);
        let meter = self.meter(&near, watts, &place)?;
        let input = Level::one(self.number(), meter, watts, row.minutes);
        let pair = self.equalised.iter().find_map(|(a, b)| {
            if a.meter == input.meter && b.meter == level.meter {
                Some((*a, *b))
            } else if b.meter == input.meter && a.meter == level.meter {
                Some((*b, *a))
            } else {
                None
            }
        });
        let equalised = pair.is_some();
        if !equalised && input.meter != level.meter {
            findings::not_equalised(&place, self.out);
        }
        let around = Around {
            adapters,
            ..Around::default()
        };
        let l = two_meters(
            &input,
            level,
            pair.as_ref().map(|(a, b)| (a, b)),
            self.meters.all(),
            &around,
            budget,
        )
        .ok()?;
        Some((Method::TwoMeters { equalised }, l))
    }

    /// Adapters that came or went between baseline and piece.
    fn adapters(&mut self, with: &'m [(u32, Name)], without: &'m [(u32, Name)]) -> Vec<Adapter> {
        let mut out = Vec::new();
        let count = |list: &[(u32, Name)], n: &Name| -> u32 {
            list.iter()
                .filter(|x| x.1.text == n.text)
                .map(|x| x.0)
                .sum()
        };
        let mut seen: Vec<&str> = Vec::new();
        for (_, n) in with.iter().chain(without) {
            if seen.contains(&&*n.text) {
                continue;
            }
            seen.push(&n.text);
            let (a, b) = (count(with, n), count(without, n));
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

    fn cell(&mut self, piece: usize, f: Found, expected: Option<&Expected>) -> BenchCell {
        let comparison = expected.map(|e| {
            let mut found = compare(
                Value {
                    db: f.loss.db,
                    expanded_db: f.loss.expanded_db,
                },
                Value {
                    db: e.db,
                    expanded_db: 2.0 * e.u_db,
                },
            );
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
                Some((meter, at_base)) => {
                    // it rises as the reading falls; the piece may lose more than is expected
                    let loss_db = f.loss.db.max(e.db);
                    let of = |x: f64| at_base * (from_db(x * loss_db) - 1.0);
                    let now = f
                        .budget
                        .iter()
                        .filter(|t| t.source == Source::Offset(meter));
                    let now: f64 = now.map(|t| t.u_db).sum();
                    let rest = libm::sqrt((f.loss.u_db * f.loss.u_db - now * now).max(0.0));
                    let k = f.loss.expanded_db / f.loss.u_db;
                    length_factor_with(|x| k * libm::hypot(rest, of(x)), &grows)
                }
                None => length_factor(f.loss.expanded_db, &grows),
            }
        });
        let metres = self.session.pieces[piece].metres();
        let per = metres.and_then(|m| {
            let (j, u) = expected.map_or((0.0, 0.0), |e| (e.joins_db, e.u_joins_db));
            per_length(f.loss.db, f.loss.u_db, j, u, m.value, m.u)
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
            expected: expected.copied(),
            comparison,
            length_factor: length,
            per_length: per,
            half_difference_db: f.half_difference_db,
        }
    }

    /// The meter whose error of full scale is in a loss against a baseline, and that error at the
    /// baseline, dB.
    fn full_scale(&self, f: &Found) -> Option<(usize, f64)> {
        let base = f.loss.baseline.as_ref()?.watts;
        f.budget.iter().find_map(|t| match t.source {
            Source::Offset(i) => {
                let u = self.meters.all().get(i)?.u_full_scale_w;
                Some((i, downlead_quantity::DB_PER_RELATIVE * u / base))
            }
            _ => None,
        })
    }

    /// What stands beside a reading of power written in the text.
    fn row(
        &self,
        r: &Row<'_, 'm>,
        first: Option<&Level>,
        cells: &[BenchCell],
        from: usize,
    ) -> Option<BenchRow> {
        if r.taken.from.is_some() {
            return None;
        }
        Some(BenchRow {
            loc: r.taken.loc,
            kind: r.taken.kind,
            band: self.band,
            cell: cell_of(cells, from, r.taken.piece),
            against_first_db: match (r.taken.kind, first) {
                (ReadingKind::Baseline, Some(f)) => {
                    Some(downlead_quantity::to_db(r.level.watts / f.watts))
                }
                _ => None,
            },
            swr: self.swr(r),
        })
    }

    fn swr(&self, r: &Row<'_, 'm>) -> Option<SwrReading> {
        let reflected = r.taken.reflected_w?;
        let meter = self
            .meters
            .all()
            .get(r.level.meter)
            .copied()
            .unwrap_or(Meter::PERFECT);
        swr(r.level.watts, &meter, reflected, &meter)
    }
}

fn cell_of(cells: &[BenchCell], from: usize, piece: Option<usize>) -> Option<usize> {
    let p = piece?;
    cells[from..]
        .iter()
        .position(|c| c.piece == p)
        .map(|i| from + i)
}

/// Contributions by cause, largest first.
pub(super) fn sorted(b: &Budget) -> Vec<Term> {
    let mut out: Vec<Term> = b.by_source().filter(|t| t.u_db != 0.0).collect();
    out.sort_by(|a, b| b.u_db.abs().total_cmp(&a.u_db.abs()));
    out
}
