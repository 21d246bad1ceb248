//! Loss by substitution (baseline, then the piece in its place) and between two meters.

use std::collections::HashMap;

use super::baseline::{Baseline, BaselineUse, Baselines, Rules};
use super::budget::{Budget, Source, Term, coverage};
use super::compare::Value;
use super::meter::{Level, Meter};
use super::stats::chi_square_survival;
use crate::uncertainty::{Inserted, mismatch_substitution};
use downlead_quantity::{DB_PER_RELATIVE, from_db, to_db};

/// Above this standard uncertainty in dB, limits are formed from power ratios.
const LINEAR_UP_TO_DB: f64 = 0.5;

/// Why a loss cannot be found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MeasureError {
    /// A power that is not positive and finite, or a time that is no number; the reading's id.
    NotPositive(usize),
    /// No such meter; the reading's id.
    UnknownMeter(usize),
}

impl core::fmt::Display for MeasureError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::NotPositive(i) => write!(f, "reading {i} has no positive power"),
            Self::UnknownMeter(i) => write!(f, "the meter of reading {i} is not known"),
        }
    }
}

impl core::error::Error for MeasureError {}

/// Reflections that make mismatch, as sizes (phases are not known).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ends {
    /// |Γ| of the source, towards the piece.
    pub source: f64,
    /// |Γ| of the load with its meter.
    pub load: f64,
    /// The parts in circuit when the baseline was read.
    pub through: Inserted,
    /// The piece.
    pub piece: Inserted,
    /// Only upper bounds are known: half of the uncertainty.
    pub bounded: bool,
}

impl Ends {
    /// Ends of |Γ| `source` and `load`, a perfect through connection, and a piece of `loss_db`
    /// that reflects `s11` and `s22`.
    #[must_use]
    pub fn new(source: f64, load: f64, s11: f64, s22: f64, loss_db: f64) -> Self {
        Self {
            source,
            load,
            through: Inserted {
                s11: 0.0,
                s22: 0.0,
                s21: 1.0,
            },
            piece: Inserted {
                s11,
                s22,
                s21: from_db(-0.5 * loss_db),
            },
            bounded: false,
        }
    }

    /// Standard uncertainty of an insertion loss by mismatch, dB.
    #[must_use]
    pub fn u_db(&self) -> f64 {
        let u = mismatch_substitution(self.source, self.load, self.through, self.piece);
        if self.bounded { 0.5 * u } else { u }
    }
}

/// An adapter that was in one of the two states only.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Adapter {
    /// Identity: the same adapter in two measurements is one cause.
    pub id: usize,
    /// Its loss, dB.
    pub db: f64,
    /// Standard uncertainty of that, dB.
    pub u_db: f64,
    /// It came with the piece (its loss is taken off); otherwise it was in the baseline and left
    /// (its loss is put on).
    pub came: bool,
}

/// Causes of uncertainty other than meters.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Around<'a> {
    /// Reflections; None leaves mismatch out.
    pub ends: Option<Ends>,
    /// Adapters in one of the states only.
    pub adapters: &'a [Adapter],
    /// Anything else.
    pub extra: &'a [Term],
}

/// A measured loss.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loss {
    /// Loss, dB.
    pub db: f64,
    /// The result without the correction: the first baseline as it was, or two meters
    /// not equalised, dB.
    pub naive_db: f64,
    /// Power that comes through, percent.
    pub through_percent: f64,
    /// Power lost, percent.
    pub lost_percent: f64,
    /// Standard uncertainty, dB.
    pub u_db: f64,
    /// Effective degrees of freedom.
    pub dof: f64,
    /// Coverage factor for 95.45 %.
    pub k: f64,
    /// `k·u`, dB.
    pub expanded_db: f64,
    /// Lower limit of the loss, dB.
    pub low_db: f64,
    /// Upper limit of the loss, dB; infinite when the output may be nothing.
    pub high_db: f64,
    /// The limits come from power ratios, because `u` exceeds 0.5 dB: they are not symmetrical.
    pub by_ratio: bool,
    /// The baseline it was held against.
    pub baseline: Option<Baseline>,
}

impl Loss {
    /// A loss of `db` with contributions.
    #[must_use]
    pub fn from_budget(db: f64, budget: &Budget) -> Self {
        let u_db = budget.u_db();
        let dof = budget.dof();
        let k = coverage(dof);
        let by_ratio = u_db > LINEAR_UP_TO_DB;
        let (low_db, high_db) = if by_ratio {
            let part = k * u_db / DB_PER_RELATIVE;
            let high = if part < 1.0 {
                db - to_db(1.0 - part)
            } else {
                f64::INFINITY
            };
            (db - to_db(1.0 + part), high)
        } else {
            (db - k * u_db, db + k * u_db)
        };
        let through_percent = 100.0 * from_db(-db);
        Self {
            db,
            naive_db: db,
            through_percent,
            lost_percent: 100.0 - through_percent,
            u_db,
            dof,
            k,
            expanded_db: k * u_db,
            low_db,
            high_db,
            by_ratio,
            baseline: None,
        }
    }

    /// The loss with the expanded uncertainty of its side towards `expected_db`: the two sides differ
    /// where limits come from power ratios.
    #[must_use]
    pub fn towards(&self, expected_db: f64) -> Value {
        let expanded_db = if expected_db < self.db {
            self.db - self.low_db
        } else {
            self.high_db - self.db
        };
        Value {
            db: self.db,
            expanded_db,
        }
    }
}

/// Loss of what was read as `piece`, against the baseline at that time. Its contributions are
/// left in `budget` (cleared first).
///
/// On one meter the scale error cancels, the offset does not (its dB differ), linearity,
/// repeatability and resolution count at both readings. All baselines stand at about one power, so
/// that the meter's linearity there is one error, which no number of baselines averages out. A piece
/// read on another meter than the baselines has both scale errors.
///
/// # Errors
/// A reading without a positive power, or a meter that is not there.
pub fn substitution(
    baselines: &Baselines,
    piece: &Level,
    meters: &[Meter],
    rules: &Rules,
    around: &Around<'_>,
    budget: &mut Budget,
) -> Result<Loss, MeasureError> {
    budget.clear();
    let from = meter_of(baselines.first(), meters)?;
    let to = meter_of(piece, meters)?;
    let base = baselines.at(piece.minutes, rules);
    let used = weights(&base.how, baselines.levels());
    let certified = used.iter().all(|(i, _)| certified(&baselines.levels()[*i]));
    if !certified {
        add_shared(budget, baselines.first().meter, from, base.watts, 1.0);
    }
    add_meter(budget, piece, to, -1.0);
    for (i, weight) in used {
        add_certificate(budget, &baselines.levels()[i], weight);
        add_scatter(budget, &baselines.levels()[i], from, weight);
    }
    if !certified {
        add_linearity(budget, baselines.first().id, from, base.watts, 1.0);
    }
    add_own(budget, piece, to, -1.0);
    budget.add(
        Source::Drift(baselines.levels()[used[0].0].id),
        DB_PER_RELATIVE * base.u_leftover,
    );
    let correction = add_around(budget, piece.id, around);
    let mut loss = Loss::from_budget(to_db(base.watts / piece.watts) + correction, budget);
    loss.naive_db = to_db(baselines.first().watts / piece.watts) + correction;
    loss.baseline = Some(base);
    Ok(loss)
}

/// Loss between a meter at the input and one at the output, read together. `equalised` are the
/// readings of the same two meters in line, nose to tail: with them both scale errors cancel.
/// Without, the meters' errors are independent. Contributions are left in `budget` (cleared
/// first).
///
/// # Errors
/// A reading without a positive power, or a meter that is not there.
pub fn two_meters(
    input: &Level,
    output: &Level,
    equalised: Option<(&Level, &Level)>,
    meters: &[Meter],
    around: &Around<'_>,
    budget: &mut Budget,
) -> Result<Loss, MeasureError> {
    budget.clear();
    let mut db = 0.0;
    for (level, sign) in [(input, 1.0), (output, -1.0)] {
        let meter = meter_of(level, meters)?;
        add_meter(budget, level, meter, sign);
        add_own(budget, level, meter, sign);
        db += sign * to_db(level.watts);
    }
    if let Some((near, far)) = equalised {
        db += in_line(near, far, meters, budget)?;
    }
    let correction = add_around(budget, output.id, around);
    let mut loss = Loss::from_budget(db + correction, budget);
    loss.naive_db = to_db(input.watts / output.watts) + correction;
    Ok(loss)
}

/// What two meters read in line, nose to tail, say of their difference: the correction of a loss
/// between `near` and `far`, dB, with its contributions added to `budget`. Their scale errors, which
/// are in the loss with the opposite signs, cancel.
///
/// # Errors
/// A reading without a positive power, or a meter that is not there.
pub fn in_line(
    near: &Level,
    far: &Level,
    meters: &[Meter],
    budget: &mut Budget,
) -> Result<f64, MeasureError> {
    for (level, sign) in [(near, -1.0), (far, 1.0)] {
        let meter = meter_of(level, meters)?;
        add_meter(budget, level, meter, sign);
        add_own(budget, level, meter, sign);
    }
    Ok(to_db(far.watts / near.watts))
}

/// One measured loss of a piece that was read several times.
#[derive(Debug, Clone, PartialEq)]
pub struct Single {
    /// The loss, each against its own baseline or its own reading at the near end.
    pub loss: Loss,
    /// Its contributions.
    pub budget: Budget,
    /// The readings of the piece itself that are in it, far end first: [`Level::id`] and
    /// [`Level::meter`].
    pub own: [Option<(usize, usize)>; 2],
    /// Which way it was measured: 1 where the meters of the two ends were exchanged.
    pub swapped: bool,
}

/// Mean of several measured losses of one piece, with its contributions in `budget` (cleared first).
///
/// Losses are compared, not powers: a transmitter that drifts between two readings is not scatter of
/// the piece. Both ways of two meters count alike however often each was read, so that the meters'
/// scales cancel. What a meter's readings share (scale, offset, linearity at about the same power)
/// stays; repeatability goes down with the number of readings, unless the losses scatter more than
/// it explains (χ² test, 5 %): then their own scatter counts, `s/√n` with n − 1 degrees of freedom
/// (GUM 4.2.3, 4.2.4). None without losses.
#[must_use]
pub fn mean_loss(found: &[Single], budget: &mut Budget) -> Option<Loss> {
    budget.clear();
    let first = found.first()?;
    if let [only] = found {
        budget.clone_from(&only.budget);
        return Some(only.loss);
    }
    let of = |way: bool| found.iter().filter(move |x| x.swapped == way);
    let ways = [false, true].map(|w| of(w).count());
    let both = if ways[0] > 0 && ways[1] > 0 { 0.5 } else { 1.0 };
    let mut shared = Shared::default();
    let (mut db, mut naive) = (0.0, 0.0);
    for (way, n) in [false, true].into_iter().zip(ways) {
        if n == 0 {
            continue;
        }
        let weight = both / n as f64;
        let mut scatter = Scatter::default();
        for x in of(way) {
            db += weight * x.loss.db;
            naive += weight * x.loss.naive_db;
            scatter.losses.push(x.loss.db);
            for t in x.budget.terms() {
                shared.add(t, x, weight, &mut scatter);
            }
        }
        let id = of(way).next().and_then(|x| x.own[0]).map_or(0, |o| o.0);
        let (u_db, dof) = scatter.u_db();
        budget.push(Term {
            source: Source::Repeatability(id),
            u_db: both * u_db,
            dof,
        });
    }
    for t in shared.terms {
        budget.push(t);
    }
    Some(Loss {
        naive_db: naive,
        baseline: first.loss.baseline,
        ..Loss::from_budget(db, budget)
    })
}

/// Contributions of several losses by source.
#[derive(Default)]
struct Shared {
    terms: Vec<Term>,
    at: HashMap<Source, usize>,
    /// The reading whose linearity stands for all of its meter at that end.
    linear: HashMap<(usize, usize), usize>,
}

impl Shared {
    fn add(&mut self, t: &Term, x: &Single, weight: f64, scatter: &mut Scatter) {
        let end = |id: usize| x.own.iter().position(|o| o.is_some_and(|o| o.0 == id));
        let source = match t.source {
            Source::Repeatability(id) | Source::Resolution(id) if end(id).is_some() => {
                scatter.own += t.u_db * t.u_db;
                return;
            }
            Source::Linearity(id) => match end(id) {
                Some(end) => {
                    let meter = x.own[end].map_or(0, |o| o.1);
                    Source::Linearity(*self.linear.entry((end, meter)).or_insert(id))
                }
                None => t.source,
            },
            other => other,
        };
        if matches!(source, Source::Drift(_)) {
            scatter.drift += t.u_db * t.u_db;
        }
        let i = *self.at.entry(source).or_insert_with(|| {
            self.terms.push(Term {
                source,
                u_db: 0.0,
                dof: t.dof,
            });
            self.terms.len() - 1
        });
        self.terms[i].u_db += weight * t.u_db;
        self.terms[i].dof = self.terms[i].dof.min(t.dof);
    }
}

/// How losses measured the same way differ among themselves.
#[derive(Default)]
struct Scatter {
    losses: Vec<f64>,
    /// Sum of the variances by repeatability and resolution of the readings, dB².
    own: f64,
    /// Sum of the variances by drift.
    drift: f64,
}

impl Scatter {
    /// Standard uncertainty of their mean by scatter, dB, and its degrees of freedom.
    fn u_db(&self) -> (f64, f64) {
        let n = self.losses.len() as f64;
        let known = libm::sqrt(self.own) / n;
        if self.losses.len() < 2 {
            return (known, f64::INFINITY);
        }
        let mean = self.losses.iter().sum::<f64>() / n;
        let squares: f64 = self.losses.iter().map(|l| (l - mean) * (l - mean)).sum();
        let explained = (self.own + self.drift) / n;
        if squares <= 0.0 || chi_square_survival(squares / explained, n - 1.0) > 0.05 {
            return (known, f64::INFINITY);
        }
        (libm::sqrt(squares / (n - 1.0) / n), n - 1.0)
    }
}

fn meter_of<'a>(level: &Level, meters: &'a [Meter]) -> Result<&'a Meter, MeasureError> {
    if !level.good() {
        return Err(MeasureError::NotPositive(level.id));
    }
    meters
        .get(level.meter)
        .ok_or(MeasureError::UnknownMeter(level.id))
}

/// Whether a certificate that holds says how far a reading is off.
fn certified(level: &Level) -> bool {
    level.calibration.is_some_and(|c| c.holds)
}

/// What the certificate of a meter leaves open at a reading.
fn add_certificate(budget: &mut Budget, level: &Level, weight: f64) {
    for (point, u) in level.calibration.iter().flat_map(|c| c.terms) {
        budget.add(Source::Certificate(point), weight * DB_PER_RELATIVE * u);
    }
}

/// Errors that readings of a meter share, by its certificate or by its class.
fn add_meter(budget: &mut Budget, level: &Level, meter: &Meter, sign: f64) {
    add_certificate(budget, level, sign);
    if !certified(level) {
        add_shared(budget, level.meter, meter, level.watts, sign);
    }
}

/// Errors that all readings of a meter share.
fn add_shared(budget: &mut Budget, number: usize, meter: &Meter, watts: f64, sign: f64) {
    let c = sign * DB_PER_RELATIVE;
    budget.add(Source::Scale(number), c * meter.u_of_reading);
    budget.add(Source::Offset(number), c * meter.u_full_scale_w / watts);
}

/// Errors of one reading alone.
fn add_own(budget: &mut Budget, level: &Level, meter: &Meter, weight: f64) {
    if !certified(level) {
        add_linearity(budget, level.id, meter, level.watts, weight);
    }
    add_scatter(budget, level, meter, weight);
}

/// Error of a meter's scale at one power; the readings at about that power share it.
fn add_linearity(budget: &mut Budget, id: usize, meter: &Meter, watts: f64, weight: f64) {
    let linear = libm::hypot(meter.u_linearity, meter.u_linearity_w / watts);
    budget.add(Source::Linearity(id), weight * DB_PER_RELATIVE * linear);
}

/// What a reading would differ by if it were repeated.
fn add_scatter(budget: &mut Budget, level: &Level, meter: &Meter, weight: f64) {
    let c = weight * DB_PER_RELATIVE;
    let (u, dof) = level.u_scatter(meter);
    budget.push(Term {
        source: Source::Repeatability(level.id),
        u_db: c * u,
        dof,
    });
    budget.add(
        Source::Resolution(level.id),
        c * meter.u_resolution_w / level.watts,
    );
}

/// Mismatch, adapters and the rest; returns what is added to the loss, dB.
fn add_around(budget: &mut Budget, piece: usize, around: &Around<'_>) -> f64 {
    if let Some(ends) = &around.ends {
        budget.add(Source::Mismatch(piece), ends.u_db());
    }
    let mut correction = 0.0;
    for a in around.adapters {
        let sign = if a.came { -1.0 } else { 1.0 };
        correction += sign * a.db;
        budget.add(Source::Adapter(a.id), sign * a.u_db);
    }
    for t in around.extra {
        budget.push(*t);
    }
    correction
}

/// Sensitivity of the interpolated baseline to the relative error of each of its readings.
fn weights(how: &BaselineUse, levels: &[Level]) -> [(usize, f64); 2] {
    let (before, after, w) = match *how {
        BaselineUse::Nearest(i) | BaselineUse::Only(i) => return [(i, 1.0), (i, 0.0)],
        BaselineUse::Between {
            before,
            after,
            fraction,
        } => (before, after, fraction),
    };
    let (a, b) = ((1.0 - w) * levels[before].watts, w * levels[after].watts);
    let whole = a + b;
    [(before, a / whole), (after, b / whole)]
}
