//! The combined uncertainty against simulated sessions: errors are drawn from the distributions
//! declared, readings are made with them, losses found from those, and their scatter and coverage
//! compared with the budget (propagation of distributions, JCGM 101:2008).

use downlead_physics::measure::*;

/// SplitMix64 (Steele, Lea and Flood 2014): the same numbers everywhere.
struct Random(u64);

impl Random {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Between 0 and 1.
    fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn within(&mut self, half_width: f64) -> f64 {
        half_width * (2.0 * self.unit() - 1.0)
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * (1.0 - self.unit()).ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }
}

/// A meter's data sheet.
#[derive(Clone, Copy, Default)]
struct Sheet {
    of_reading: f64,
    offset_w: f64,
    linearity: f64,
    repeatability: f64,
    step_w: f64,
}

impl Sheet {
    fn meter(&self) -> Meter {
        Meter::PERFECT
            .of_reading(self.of_reading)
            .of_full_scale(self.offset_w / 100.0, 100.0)
            .linearity(self.linearity)
            .repeatability(self.repeatability)
            .resolution(self.step_w)
    }

    /// One specimen of it.
    fn specimen(&self, r: &mut Random) -> Specimen {
        Specimen {
            scale: 1.0 + r.within(self.of_reading),
            offset_w: r.within(self.offset_w),
            linear: [0; 3].map(|_| 1.0 + r.within(self.linearity)),
        }
    }

    /// Reads `true_w`; `power` is 0 at about the power of the baselines, 1 and 2 after the pieces.
    fn read(&self, specimen: Specimen, power: usize, true_w: f64, r: &mut Random) -> f64 {
        let own = specimen.linear[power] * (1.0 + self.repeatability * r.normal());
        true_w * specimen.scale * own + specimen.offset_w + r.within(0.5 * self.step_w)
    }
}

/// The errors that one meter keeps: its linearity is one error at one power, whenever it is read.
#[derive(Clone, Copy)]
struct Specimen {
    scale: f64,
    offset_w: f64,
    linear: [f64; 3],
}

/// At which power each of [`LEVELS`] stands.
const POWERS: [usize; 4] = [0, 1, 2, 0];

const LEVELS: [(f64, f64); 4] = [(60.0, 0.0), (40.0, 3.0), (25.0, 6.0), (57.0, 10.0)];

fn rules() -> Rules {
    Rules {
        step_share: 0.0,
        unknown_per_minute: 0.0,
    }
}

/// Baseline, two pieces, baseline; `meters` are the numbers each is read with.
struct Outcome {
    losses: [Loss; 2],
    budgets: [Budget; 2],
}

fn evaluate(watts: [f64; 4], on: [usize; 4], meters: &[Meter]) -> Outcome {
    let level = |i: usize| Level::one(i, on[i], watts[i], LEVELS[i].1);
    let baselines = Baselines::new(&[level(0), level(3)], meters).unwrap();
    let mut budgets = [Budget::new(), Budget::new()];
    let around = Around::default();
    let losses = [1, 2].map(|i| {
        let budget = &mut budgets[i - 1];
        substitution(&baselines, &level(i), meters, &rules(), &around, budget).unwrap()
    });
    Outcome { losses, budgets }
}

fn moments(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let squares: f64 = values.iter().map(|v| (v - mean) * (v - mean)).sum();
    (mean, (squares / (n - 1.0)).sqrt())
}

/// Scatter of 40,000 sessions against the budget of the errorless one: of either loss, and of
/// their difference, in which much cancels.
fn scatter(sheets: &[Sheet], on: [usize; 4], tolerance: f64) {
    let meters: Vec<Meter> = sheets.iter().map(Sheet::meter).collect();
    let truth = evaluate(LEVELS.map(|l| l.0), on, &meters);
    let mut r = Random(42);
    let (mut first, mut second, mut difference) = (Vec::new(), Vec::new(), Vec::new());
    for _ in 0..40_000 {
        let specimens: Vec<Specimen> = sheets.iter().map(|s| s.specimen(&mut r)).collect();
        let watts = [0, 1, 2, 3]
            .map(|i| sheets[on[i]].read(specimens[on[i]], POWERS[i], LEVELS[i].0, &mut r));
        let o = evaluate(watts, on, &meters);
        first.push(o.losses[0].db);
        second.push(o.losses[1].db);
        difference.push(o.losses[1].db - o.losses[0].db);
    }
    let [a, b] = &truth.budgets;
    let u_difference = (a.u_db().powi(2) + b.u_db().powi(2) - 2.0 * a.covariance(b)).sqrt();
    for (draws, u, db) in [
        (first, a.u_db(), truth.losses[0].db),
        (second, b.u_db(), truth.losses[1].db),
        (
            difference,
            u_difference,
            truth.losses[1].db - truth.losses[0].db,
        ),
    ] {
        let (mean, s) = moments(&draws);
        // the standard deviation of a standard deviation of 40,000 draws is 0.35 %
        assert!((s / u - 1.0).abs() < tolerance, "{s} is not {u}");
        assert!((mean - db).abs() < 0.05 * u, "{mean} is not {db}");
    }
}

#[test]
fn one_meter_of_reading() {
    let sheet = Sheet {
        of_reading: 0.05,
        linearity: 0.01,
        repeatability: 0.006,
        step_w: 0.1,
        ..Sheet::default()
    };
    scatter(&[sheet], [0; 4], 0.015);
}

#[test]
fn one_meter_of_full_scale() {
    let sheet = Sheet {
        offset_w: 1.0,
        repeatability: 0.004,
        step_w: 0.5,
        ..Sheet::default()
    };
    scatter(&[sheet], [0; 4], 0.015);
}

/// The pieces on a second meter: both scales count in each loss and none in their difference.
#[test]
fn two_meters_in_one_session() {
    let sheet = Sheet {
        of_reading: 0.05,
        linearity: 0.01,
        repeatability: 0.006,
        ..Sheet::default()
    };
    scatter(&[sheet, sheet], [0, 1, 1, 0], 0.015);
}

/// Share of 10,000 sessions of which `low..high` holds the truth.
fn coverage(sheets: &[Sheet], on: [usize; 4], repeats: usize) -> f64 {
    let known: Vec<Meter> = sheets.iter().map(Sheet::meter).collect();
    let meters: Vec<Meter> = if repeats > 1 {
        // scatter is not known beforehand: it has to be found from the readings
        known.iter().map(|m| m.repeatability(0.0)).collect()
    } else {
        known
    };
    let truth = 10.0 * ((60.0 + (57.0 - 60.0) * 0.3) / LEVELS[1].0).log10();
    let mut r = Random(7);
    let mut held = 0;
    for _ in 0..10_000 {
        let specimens: Vec<Specimen> = sheets.iter().map(|s| s.specimen(&mut r)).collect();
        let mut level = |i: usize| {
            let (true_w, minutes) = LEVELS[i];
            let readings: Vec<(f64, f64)> = (0..repeats)
                .map(|_| {
                    (
                        sheets[on[i]].read(specimens[on[i]], POWERS[i], true_w, &mut r),
                        minutes,
                    )
                })
                .collect();
            Level::mean(i, on[i], &readings).unwrap()
        };
        let baselines = [level(0), level(3)];
        let piece = level(1);
        let baselines = Baselines::new(&baselines, &meters).unwrap();
        let around = Around::default();
        let mut budget = Budget::new();
        let loss =
            substitution(&baselines, &piece, &meters, &rules(), &around, &mut budget).unwrap();
        held += usize::from(loss.low_db <= truth && truth <= loss.high_db);
    }
    held as f64 / 10_000.0
}

/// Many causes of like size: normal, 95.45 %. The scatter of a share of 10,000 is 0.2 %.
#[test]
fn intervals_hold_the_truth() {
    let sheet = Sheet {
        of_reading: 0.05,
        linearity: 0.01,
        repeatability: 0.006,
        step_w: 0.1,
        ..Sheet::default()
    };
    let share = coverage(&[sheet], [0; 4], 1);
    assert!((share - 0.9545).abs() < 0.01, "{share}");
}

/// Scatter found from three readings at each level: k is Student's with the effective degrees of
/// freedom (GUM G.4), and covers its stated share within a percent.
#[test]
fn intervals_from_few_readings_hold_the_truth() {
    let sheet = Sheet {
        of_reading: 0.05,
        repeatability: 0.01,
        ..Sheet::default()
    };
    let share = coverage(&[sheet], [0; 4], 3);
    assert!((share - 0.9545).abs() < 0.012, "{share}");
}

/// Two equal rectangular errors and nothing else make a triangle, of which 2u holds more than of
/// a normal distribution: `1 − (1 − 2/√6)²` = 96.6 %. The interval errs on the safe side there.
#[test]
fn two_rectangular_errors_are_covered_by_a_little_more() {
    let sheet = Sheet {
        of_reading: 0.05,
        ..Sheet::default()
    };
    let share = coverage(&[sheet, sheet], [0, 1, 1, 0], 1);
    let triangle = 1.0 - (1.0 - 2.0 / 6_f64.sqrt()).powi(2);
    assert!((share - triangle).abs() < 0.01, "{share} is not {triangle}");
}

/// Fits of 4,000 simulated cables: scatter of the coefficients and of the prediction against the
/// covariance, χ² against its distribution.
#[test]
fn fits_of_simulated_cables() {
    let mhz = [3.7, 14.2, 50.3, 145.3, 434.5];
    let law = |f: f64| 0.0058 * f.sqrt() + 0.000_11 * f;
    let mut r = Random(11);
    let (mut k1, mut k2, mut at, mut beyond, mut outliers) = (vec![], vec![], vec![], 0, 0);
    let mut said = (0.0, 0.0, 0.0);
    for _ in 0..4000 {
        let points = mhz.map(|f| {
            let u = 0.03 * law(f);
            FitPoint {
                f_hz: f * 1e6,
                db_per_m: law(f) + u * r.normal(),
                u_db_per_m: u,
            }
        });
        let f = fit(&points, &FitRules::default()).unwrap();
        let p = f.predict(250e6);
        said = (f.u_k1, f.u_k2, p.u_db_per_m);
        k1.push(f.coefficients.k1);
        k2.push(f.coefficients.k2);
        at.push(p.db_per_m);
        beyond += usize::from(f.p < 0.1);
        outliers += usize::from(f.outlier.is_some());
    }
    for (draws, u, truth) in [
        (k1, said.0, 0.0058),
        (k2, said.1, 0.000_11),
        (at, said.2, law(250.0)),
    ] {
        let (mean, s) = moments(&draws);
        assert!((s / u - 1.0).abs() < 0.04, "{s} is not {u}");
        assert!((mean - truth).abs() < 0.06 * u, "{mean} is not {truth}");
    }
    let share = beyond as f64 / 4000.0;
    assert!((share - 0.1).abs() < 0.02, "p < 0.1 in {share}");
    // Bonferroni: at most one good set in twenty is accused
    let share = outliers as f64 / 4000.0;
    assert!((0.02..0.06).contains(&share), "{share}");
}

/// How the power of a transmitter may change over 12 minutes; `step` is its whole change, relative.
#[derive(Clone, Copy, Debug, PartialEq)]
enum World {
    Straight,
    /// A bow of 1.5 % on top of the straight line.
    Bow,
    /// All of it at once, at any time.
    Jump,
    /// Warming up: exponential, a third of the time as its constant.
    Settling,
}

impl World {
    fn change(self, t: f64, step: f64, at: f64, bow: f64) -> f64 {
        let x = t / 12.0;
        match self {
            World::Straight => step * x,
            World::Bow => step * x + 4.0 * bow * x * (1.0 - x),
            World::Jump if t > at => step,
            World::Jump => 0.0,
            World::Settling => step * (1.0 - (-3.0 * x).exp()) / (1.0 - (-3.0_f64).exp()),
        }
    }
}

/// Share of results within U of the truth: four pieces among `count` baselines, drift of 3 %
/// (standard deviation), 5,000 sessions.
fn coverage_of_drift(world: World, count: u32) -> f64 {
    let sheet = Sheet {
        linearity: 0.01,
        repeatability: 0.006,
        ..Sheet::default()
    };
    let meters = [sheet.meter()];
    let mut r = Random(7 + u64::from(count));
    let (mut within, mut all) = (0.0, 0.0);
    for _ in 0..5_000 {
        let step = 0.03 * r.normal();
        let at = 6.0 + r.within(6.0);
        let bow = 0.015 * r.within(1.0).signum();
        let specimen = sheet.specimen(&mut r);
        let mut read = |t: f64, loss: f64| {
            let change = world.change(t, step, at, bow);
            let power = usize::from(loss < 1.0);
            sheet.read(specimen, power, 50.0 * loss * (1.0 + change), &mut r)
        };
        let levels: Vec<Level> = (0..count)
            .map(|i| {
                let t = 12.0 * f64::from(i) / f64::from(count - 1);
                Level::one(i as usize, 0, read(t, 1.0), t)
            })
            .collect();
        let baselines = Baselines::new(&levels, &meters).unwrap();
        for piece in 1..5 {
            let t = 2.4 * f64::from(piece) + 0.01;
            let level = Level::one(20, 0, read(t, 0.7), t);
            let mut budget = Budget::new();
            let (rules, around) = (Rules::default(), Around::default());
            let l =
                substitution(&baselines, &level, &meters, &rules, &around, &mut budget).unwrap();
            let error = l.db + 10.0 * 0.7_f64.log10();
            within += f64::from(u8::from(error.abs() <= l.expanded_db));
            all += 1.0;
        }
    }
    100.0 * within / all
}

/// U holds 95 % however the transmitter drifts, as far as baselines can tell: with two of them a bow
/// that leaves both ends alone cannot be seen.
#[test]
fn uncertainty_covers_drift() {
    for (count, world, low) in [
        (3, World::Straight, 93.5),
        (3, World::Bow, 93.5),
        (3, World::Jump, 93.0),
        (3, World::Settling, 93.5),
        (5, World::Straight, 93.5),
        (5, World::Bow, 93.5),
        (5, World::Jump, 93.5),
        (5, World::Settling, 93.5),
        (2, World::Straight, 93.5),
        (2, World::Settling, 93.5),
        (2, World::Jump, 87.0),
    ] {
        let got = coverage_of_drift(world, count);
        assert!((low..98.0).contains(&got), "{count} {world:?}: {got:.1} %");
    }
}
