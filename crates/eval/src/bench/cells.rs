//! From the readings on one band to the loss of each piece.

use downlead_base::{Diagnostic, Loc};
use downlead_physics::measure::{
    Around, BaselineUse, Baselines, Budget, HALF_STEP, Level, Loss, Meter, Rules, Single, Source,
    SwrReading, Term, in_line, mean_loss, substitution, swr, two_meters,
};
use downlead_quantity::from_db;
use downlead_station::Env;
use downlead_station::model::Name;
use downlead_station::session::{ReadingKind, Session};

use super::findings::{self, Place};
use super::gather::{Group, Taken, TakenValue};
use super::meters::Meters;
use super::result::{BenchCell, BenchRow, BenchSwr, Expected, Method};
use super::slips::Kept;
use crate::assume::{Assumed, Assumptions};
use crate::point::Point;

/// How fast a transmitter may drift of which there is one baseline only: half-width, relative,
/// per minute (common practice).
const DRIFT_UNKNOWN: f64 = 0.003;

/// Scatter of a reading at least, relative, where a meter states none: figures are rounded (our
/// choice).
const LEAST_OF_READING: f64 = 0.002;

/// A pause of a session is looked at from so many minutes on, where it is also twenty times as long as all
/// else (our choice).
const LONG_PAUSE_MIN: f64 = 240.0;

/// Two readings of one piece may differ by so much, dB, or by their own uncertainty: more is a slip or a
/// plug that was not tight (common practice).
const FAR_APART_DB: f64 = 1.0;

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
    /// Readings of two meters in line, of the whole session.
    pub(super) equalised: &'o [InLine<'m>],
    /// Bands whose readings in line are used on another, and that one.
    pub(super) elsewhere: &'o mut Vec<(usize, usize)>,
    /// Standing-wave ratios found so far.
    pub(super) swrs: &'o mut Vec<BenchSwr>,
}

/// Two meters read in line, nose to tail.
pub(super) struct InLine<'m> {
    /// Index of the band.
    pub(super) band: usize,
    /// The two readings.
    pub(super) meters: (Level, Level),
    /// What was in line with them.
    pub(super) adapters: &'m [(u32, Name)],
    /// Its line.
    pub(super) loc: Loc,
}

/// Two readings in line, near end first, with the adapters between them.
struct Pair<'m> {
    near: Level,
    far: Level,
    adapters: &'m [(u32, Name)],
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
    /// Number of the meter it was read with.
    pub(super) meter: Option<usize>,
    /// Of several readings, the loss of each, dB, and whether the meters were exchanged.
    pub(super) losses: Vec<(f64, bool)>,
    pub(super) half_difference_db: Option<f64>,
}

/// Why a reading of a piece cannot be averaged with the first; none where it can. Adapters are
/// taken off, and two meters may be exchanged.
fn other_way(first: &Row<'_, '_>, r: &Row<'_, '_>) -> Option<findings::OtherWay> {
    let ends = |r: &Row<'_, '_>| r.taken.input.is_some();
    let (a, b) = (ends(first), ends(r));
    // which meters are at the two ends is looked at where the near one is known
    let meter = !a && !b && r.level.meter != first.level.meter;
    (meter || a != b).then_some(findings::OtherWay {
        meter,
        first_at_both_ends: (a != b).then_some(a),
    })
}

/// Whether two readings were made with other meters at the two ends.
fn other_pair(a: &Single, b: &Single) -> bool {
    let meters = |s: &Single| {
        let mut m = s.own.map(|o| o.map(|o| o.1));
        m.sort();
        m
    };
    meters(a) != meters(b)
}

/// Whether two lists of adapters are the same, in any order.
fn same_adapters(a: &[(u32, Name)], b: &[(u32, Name)]) -> bool {
    let count = |list: &[(u32, Name)], name: &str| -> u32 {
        let of = list.iter().filter(|x| *x.1.text == *name);
        of.map(|x| x.0).sum()
    };
    a.iter()
        .chain(b)
        .all(|(_, n)| count(a, &n.text) == count(b, &n.text))
}

impl<'m> Bench<'m, '_> {
    /// The cells of a band, with the context of its readings; `expected` by piece.
    pub(super) fn band<'g>(
        &mut self,
        g: &'g Group<'m>,
        expected: &[Option<Expected>],
        cells: &mut Vec<BenchCell>,
        rows: &mut Vec<BenchRow>,
        kept: &mut Vec<Kept<'g, 'm>>,
    ) -> (Option<downlead_physics::measure::Drift>, Box<[(f64, f64)]>) {
        let first_cell = cells.len();
        let powers = self.powers(g);
        let (powers, apart) = self.of_one_unit(powers);
        let base = self.alike(&powers);
        let baselines = self.baselines(g, &base);
        self.passed_over(g);
        for (piece, promised) in expected.iter().enumerate() {
            for found in [
                self.through(g, piece, &powers, baselines.as_ref(), promised.as_ref()),
                self.reflections(g, piece, promised.as_ref()),
                self.network(g, piece),
            ]
            .into_iter()
            .flatten()
            {
                // the first way that gives a result is the best one
                if cells[first_cell..].iter().any(|c| c.piece == piece) {
                    continue;
                }
                cells.push(self.cell(piece, found, *promised));
            }
        }
        self.keep(&powers, &base, kept);
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

    /// A reading of power, corrected by what is known of its meter.
    fn level(&mut self, meter: usize, watts: f64, minutes: f64, loc: Loc) -> Level {
        let id = self.number();
        let date = self.session.meta.date.as_deref();
        self.meters
            .level((id, meter), (self.point.hz, watts), minutes, date, loc)
    }

    /// Readings in W of one meter and one path, for the look at slips.
    fn keep<'g>(&self, powers: &[Row<'g, 'm>], base: &[Level], kept: &mut Vec<Kept<'g, 'm>>) {
        let Some(first) = base.first() else { return };
        let path = powers.iter().find(|r| r.level.id == first.id);
        let path = path.map_or(&[][..], |r| r.taken.adapters);
        for r in powers {
            // slips are looked for in what was written down
            let TakenValue::Watts(w) = r.taken.shown else {
                continue;
            };
            if r.taken.input.is_some()
                || r.level.meter != first.meter
                || !matches!(r.taken.kind, ReadingKind::Baseline | ReadingKind::Through)
                || !same_adapters(path, r.taken.adapters)
            {
                continue;
            }
            let Some(m) = self.meters.all().get(r.level.meter) else {
                continue;
            };
            kept.push(Kept {
                taken: r.taken,
                band: self.band,
                watts: w,
                minutes: r.minutes,
                u: Meter {
                    u_of_reading: 0.0,
                    ..*m
                }
                .u_relative(w)
                .max(LEAST_OF_READING),
            });
        }
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
            let level = match t.shown {
                TakenValue::Watts(_) => self.level(meter, watts, minutes, t.value_loc),
                // against its own reference an instrument is not corrected
                _ => Level::one(self.number(), meter, watts, minutes),
            };
            out.push(Row {
                taken: t,
                level,
                minutes,
            });
        }
        if timed {
            self.pauses(&out);
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

    /// Names one pause that is far longer than the rest of the band's readings took.
    fn pauses(&mut self, rows: &[Row<'_, 'm>]) {
        let gaps = || rows.windows(2).map(|w| w[1].minutes - w[0].minutes);
        let Some((longest, at)) = gaps().zip(1..).max_by(|a, b| a.0.total_cmp(&b.0)) else {
            return;
        };
        let others = gaps().sum::<f64>() - longest;
        // times that run backwards have their own finding
        let forward = gaps().all(|g| g >= 0.0);
        if forward && others > 0.0 && longest >= LONG_PAUSE_MIN && longest > 20.0 * others {
            let place = Place::new(rows[at].taken, self.point);
            findings::long_pause(&place, longest, others, self.out);
        }
    }

    /// The readings in the unit of the first baseline. The others are reported: a
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

    /// Readings of which something does not count: adapters where only what comes back is read, a
    /// second reading of one end, ends beside a reading of what passes.
    fn passed_over(&mut self, g: &Group<'m>) {
        let end = |k: ReadingKind| matches!(k, ReadingKind::Open | ReadingKind::Short);
        for (i, t) in g.taken.iter().enumerate() {
            let place = Place::new(t, self.point);
            if !t.adapters.is_empty() && end(t.kind) {
                findings::adapters_not_counted(&place, self.out);
            }
            if !end(t.kind) {
                continue;
            }
            let of_piece = |x: &&Taken<'m>| x.piece == t.piece && t.piece.is_some();
            if g.taken[..i]
                .iter()
                .filter(of_piece)
                .any(|x| x.kind == t.kind)
            {
                findings::end_not_used(&place, "an earlier reading of this end is used", self.out);
            } else if g
                .taken
                .iter()
                .filter(of_piece)
                .any(|x| x.kind == ReadingKind::Through)
            {
                findings::end_not_used(&place, "the reading of what passes it is used", self.out);
            }
        }
    }

    /// The baselines with the adapters of the first: a path with others is another one, and its
    /// adapters would count as drift.
    fn alike(&mut self, powers: &[Row<'_, 'm>]) -> Vec<Level> {
        let mut of = powers
            .iter()
            .filter(|r| r.taken.kind == ReadingKind::Baseline);
        let Some(first) = of.next() else {
            return Vec::new();
        };
        let mut out = vec![first.level];
        for r in of {
            if same_adapters(first.taken.adapters, r.taken.adapters) {
                out.push(r.level);
            } else {
                findings::other_adapters(&Place::new(r.taken, self.point), self.out);
            }
        }
        out
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

    /// Loss of a piece from the power after it: the mean of the losses of its readings.
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
        let base_adapters = g
            .taken
            .iter()
            .find(|t| t.kind == ReadingKind::Baseline)
            .map_or(&[][..], |t| t.adapters);
        let mut ends = None;
        let (mut taken, mut singles, mut method) = (Vec::new(), Vec::new(), None);
        for r in mine {
            if let Some(how) = other_way(first, r) {
                self.not_used(r, piece, &how);
                continue;
            }
            let found = match (r.taken.input, baselines) {
                (Some(input), _) => self.two(r, input, &mut ends),
                (None, Some(b)) => self.against(b, r, base_adapters, &mut ends),
                (None, None) => None,
            };
            let Some((how, single)) = found else { continue };
            if singles.first().is_some_and(|s| other_pair(s, &single)) {
                let how = findings::OtherWay {
                    meter: true,
                    first_at_both_ends: None,
                };
                self.not_used(r, piece, &how);
                continue;
            }
            if single
                .loss
                .baseline
                .is_some_and(|b| matches!(b.how, BaselineUse::Nearest(_)))
            {
                findings::not_between(&Place::new(r.taken, self.point), self.out);
            }
            method = method.or(Some(how));
            taken.push(r);
            singles.push(single);
        }
        self.far_apart(piece, &taken, &singles, expected);
        let mut budget = Budget::new();
        let mut loss = mean_loss(&singles, &mut budget)?;
        let mut method = method?;
        if let Method::TwoMeters { equalised } = &mut method {
            // exchanged, the meters' scales cancel as if they had been equalised
            let swapped = singles.iter().filter(|s| s.swapped).count();
            *equalised |= swapped > 0 && swapped < singles.len();
        }
        if let Method::TwoMeters { equalised: false } | Method::OtherMeter { equalised: false } =
            method
            && let Some(place) = &ends
        {
            findings::not_equalised(place, self.out);
        }
        let place = Place::new(first.taken, self.point);
        if let Some(ends) = self.ends(loss.db, expected) {
            budget.push(Term::type_b(Source::Mismatch(first.level.id), ends.u_db()));
            loss = Loss {
                naive_db: loss.naive_db,
                baseline: loss.baseline,
                ..Loss::from_budget(loss.db, &budget)
            };
        }
        self.drift_notes(g, &singles);
        if loss.db < -loss.expanded_db || (loss.db < 0.0 && expected.is_some_and(|e| e.db > 0.1)) {
            findings::above_baseline(&place, &loss, self.out);
        }
        let readings: Vec<(f64, f64)> = taken.iter().map(|r| (r.level.watts, r.minutes)).collect();
        let level = Level::mean(first.level.id, first.level.meter, &readings)?;
        let many = singles.len() > 1;
        Some(Found {
            method,
            loss,
            budget: sorted(&budget),
            rows: taken.iter().map(|r| r.taken.loc).collect(),
            count: taken.len(),
            reading: Some((level.watts, level.minutes)),
            meter: Some(level.meter),
            losses: singles
                .iter()
                .filter(|_| many)
                .map(|s| (s.loss.db, s.swapped))
                .collect(),
            half_difference_db: None,
        })
    }

    /// Names readings of one piece that are further apart than meters and joins explain.
    fn far_apart(
        &mut self,
        piece: usize,
        taken: &[&Row<'_, 'm>],
        singles: &[Single],
        expected: Option<&Expected>,
    ) {
        let losses = || taken.iter().zip(singles).map(|(r, s)| (*r, s.loss.db));
        let by_loss = |a: &(_, f64), b: &(_, f64)| a.1.total_cmp(&b.1);
        let (Some(least), Some(most)) = (losses().min_by(by_loss), losses().max_by(by_loss)) else {
            return;
        };
        let u = singles.iter().map(|s| s.loss.expanded_db);
        let u = u.fold(FAR_APART_DB, f64::max);
        if most.1 - least.1 <= u {
            return;
        }
        // the one that is further from what its cable promises, else the later one
        let odd = match expected {
            Some(e) if (least.1 - e.db).abs() > (most.1 - e.db).abs() => least.0,
            Some(_) => most.0,
            None if most.0.minutes >= least.0.minutes => most.0,
            None => least.0,
        };
        findings::far_apart(
            &Place::new(odd.taken, self.point),
            &self.session.pieces[piece].name.text,
            (least.1, most.1),
            self.out,
        );
    }

    /// A reading of a piece that the others of it do not allow to count.
    fn not_used(&mut self, r: &Row<'_, 'm>, piece: usize, how: &findings::OtherWay) {
        findings::not_used(
            &Place::new(r.taken, self.point),
            &self.session.pieces[piece].name.text,
            how,
            self.out,
        );
    }

    /// What is assumed or found about the drift of the transmitter, once for a piece.
    fn drift_notes(&mut self, g: &Group<'m>, singles: &[Single]) {
        let how = |f: &dyn Fn(&BaselineUse) -> bool| {
            singles
                .iter()
                .filter_map(|s| s.loss.baseline.as_ref())
                .any(|b| f(&b.how))
        };
        let (step, single) = (self.session.step_share, self.session.drift_per_minute);
        if single.is_none() && how(&|h| matches!(h, BaselineUse::Only(_))) {
            self.assumed
                .add(Assumed::DriftUnknown, self.session.name.loc);
            findings::one_baseline(g, self.point, self.out);
        }
        if step.is_none() && how(&|h| matches!(h, BaselineUse::Between { .. })) {
            self.assumed.add(Assumed::DriftLine, self.session.name.loc);
        }
    }

    /// Loss of one reading against the baseline at its time. Where it was read on another meter and
    /// the two were not read in line, `place` becomes that of the reading, the first time.
    fn against(
        &mut self,
        b: &Baselines,
        r: &Row<'_, 'm>,
        base_adapters: &'m [(u32, Name)],
        place: &mut Option<Place>,
    ) -> Option<(Method, Single)> {
        let other = b.first().meter != r.level.meter;
        let pair = other.then(|| self.equalised(b.first(), &r.level)).flatten();
        let method = match (other, &pair) {
            (false, _) => Method::Substitution,
            (true, pair) => Method::OtherMeter {
                equalised: pair.is_some(),
            },
        };
        if other && pair.is_none() {
            place.get_or_insert_with(|| Place::new(r.taken, self.point));
        }
        let rules = Rules {
            unknown_per_minute: self.session.drift_per_minute.unwrap_or(DRIFT_UNKNOWN),
            step_share: self.session.step_share.unwrap_or(HALF_STEP),
        };
        let of_pair = pair.as_ref().map_or(&[][..], |p| p.adapters);
        let adapters = self.adapters(r.taken.adapters, &[base_adapters, of_pair]);
        let around = Around {
            adapters: &adapters,
            ..Around::default()
        };
        let mut budget = Budget::new();
        let meters = self.meters.all();
        let mut loss = substitution(b, &r.level, meters, &rules, &around, &mut budget).ok()?;
        if let Some(p) = &pair {
            let correction = in_line(&p.near, &p.far, meters, &mut budget).ok()?;
            loss = Loss {
                naive_db: loss.naive_db,
                baseline: loss.baseline,
                ..Loss::from_budget(loss.db + correction, &budget)
            };
        }
        Some((
            method,
            Single {
                loss,
                budget,
                own: [Some((r.level.id, r.level.meter)), None],
                swapped: false,
            },
        ))
    }

    /// Loss of one reading between two meters. Where they were not read in line, `place` becomes
    /// that of the reading, the first time.
    fn two(
        &mut self,
        row: &Row<'_, 'm>,
        (watts, with): (f64, Option<&'m str>),
        not_equalised: &mut Option<Place>,
    ) -> Option<(Method, Single)> {
        let near = Taken {
            instrument: with.or(row.taken.instrument),
            shown: TakenValue::Watts(watts),
            ..row.taken.clone()
        };
        let place = Place::new(&near, self.point);
        let meter = self.meter(&near, watts, &place)?;
        let level = row.level;
        let input = self.level(meter, watts, row.minutes, near.value_loc);
        let pair = self.equalised(&input, &level);
        let equalised = pair.is_some();
        if !equalised && input.meter != level.meter {
            not_equalised.get_or_insert(place);
        }
        // adapters that were in line with the two meters already are in their difference
        let of_pair = pair.as_ref().map_or(&[][..], |p| p.adapters);
        let adapters = self.adapters(row.taken.adapters, &[of_pair]);
        let around = Around {
            adapters: &adapters,
            ..Around::default()
        };
        let mut budget = Budget::new();
        let loss = two_meters(
            &input,
            &level,
            pair.as_ref().map(|p| (&p.near, &p.far)),
            self.meters.all(),
            &around,
            &mut budget,
        )
        .ok()?;
        Some((
            Method::TwoMeters { equalised },
            Single {
                loss,
                budget,
                own: [Some((level.id, level.meter)), Some((input.id, input.meter))],
                swapped: input.meter > level.meter,
            },
        ))
    }

    /// The reading of the two meters in line that belongs to a pair, near end first: on the same
    /// band if there is one, nearest in time.
    fn equalised(&mut self, near: &Level, far: &Level) -> Option<Pair<'m>> {
        let of_these = self.equalised.iter().filter_map(|e| {
            let (a, b) = (e.meters.0, e.meters.1);
            let pair = if a.meter == near.meter && b.meter == far.meter {
                (a, b)
            } else if b.meter == near.meter && a.meter == far.meter {
                (b, a)
            } else {
                return None;
            };
            let away = (a.minutes - near.minutes).abs();
            Some((e.band != self.band, away, pair, e))
        });
        let (elsewhere, _, (near, far), e) =
            of_these.min_by(|x, y| x.0.cmp(&y.0).then(x.1.total_cmp(&y.1)))?;
        let used = (e.band, self.band);
        if elsewhere && !self.elsewhere.contains(&used) {
            self.elsewhere.push(used);
        }
        Some(Pair {
            near,
            far,
            adapters: e.adapters,
        })
    }

    /// The context of a power reading written in the text.
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
        let forward = match r.taken.shown {
            TakenValue::Watts(w) => w,
            _ => r.level.watts,
        };
        swr(forward, &meter, reflected, &meter)
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
