//! Rules of measuring one by one: choice of baseline, cancelling errors, no conclusion.

use downlead_physics::measure::*;
use downlead_physics::{Complex64, cx};

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

fn one(id: usize, watts: f64, minutes: f64) -> Level {
    Level::one(id, 0, watts, minutes)
}

const PLAIN: [Meter; 1] = [Meter::PERFECT];

#[test]
fn between_the_surrounding_baselines() {
    // given out of order: sorted by time
    let levels = [one(2, 90.0, 20.0), one(0, 100.0, 0.0), one(1, 98.0, 10.0)];
    let b = Baselines::new(&levels, &PLAIN).unwrap();
    let rules = Rules::default();
    let at = b.at(5.0, &rules);
    near(at.watts, 99.0, 1e-12);
    near(at.percent_per_minute, -0.2, 1e-12);
    near(b.at(15.0, &rules).watts, 94.0, 1e-12);
    assert_eq!(
        b.at(10.0, &rules).how,
        BaselineUse::Between {
            before: 1,
            after: 2,
            fraction: 0.0
        }
    );
    // exactly at the last one is not beyond it
    let last = b.at(20.0, &rules);
    assert!(matches!(last.how, BaselineUse::Between { .. }) && last.watts == 90.0);
    // three points 100, 98, 90: slope −0.5 W/min, residuals −1, 2, −1 (by hand)
    let drift = b.drift();
    near(drift.percent_per_minute, -0.5, 1e-12);
    near(
        drift.scatter_percent.unwrap(),
        100.0 * 6_f64.sqrt() / 96.0,
        1e-9,
    );
}

#[test]
fn outside_of_the_baselines_the_nearest_and_said_so() {
    let b = Baselines::new(&[one(0, 100.0, 2.0), one(1, 96.0, 10.0)], &PLAIN).unwrap();
    let rules = Rules {
        step_share: 0.1,
        ..Rules::default()
    };
    for (minutes, watts, which, away) in [(0.0, 100.0, 0, 2.0), (15.0, 96.0, 1, 5.0)] {
        let at = b.at(minutes, &rules);
        assert_eq!((at.watts, at.how), (watts, BaselineUse::Nearest(which)));
        // −0.5 % a minute goes uncorrected
        near(at.u_leftover, 0.005 * away / 3_f64.sqrt(), 1e-12);
    }
    // halfway a tenth of 4 W in 100 W may be missed, rectangular; near a baseline less
    let halfway = 0.1 * 4.0 / 100.0 / 3_f64.sqrt();
    near(b.at(6.0, &rules).u_leftover, halfway, 1e-12);
    near(
        b.at(4.0, &rules).u_leftover,
        0.75_f64.sqrt() * halfway,
        1e-12,
    );
}

#[test]
fn a_single_baseline_is_as_uncertain_as_it_is_far() {
    let b = Baselines::new(&[one(0, 100.0, 12.0)], &PLAIN).unwrap();
    let rules = Rules {
        unknown_per_minute: 0.003,
        ..Rules::default()
    };
    for (minutes, away) in [(12.0, 0.0), (4.0, 8.0), (22.0, 10.0)] {
        let at = b.at(minutes, &rules);
        near(at.u_leftover, 0.003 * away / 3_f64.sqrt(), 1e-12);
        assert_eq!((at.watts, at.how), (100.0, BaselineUse::Only(0)));
    }
}

#[test]
fn a_single_baseline_corrects_nothing() {
    let b = Baselines::new(&[one(0, 100.0, 0.0)], &PLAIN).unwrap();
    let rules = Rules {
        unknown_per_minute: 0.0035,
        ..Rules::default()
    };
    let at = b.at(8.0, &rules);
    assert_eq!((at.watts, at.how), (100.0, BaselineUse::Only(0)));
    assert!(at.percent_per_minute.is_nan() && b.drift().percent_per_minute.is_nan());
    near(at.u_leftover, 0.028 / 3_f64.sqrt(), 1e-12);
    assert_eq!(b.at(8.0, &Rules::default()).u_leftover, 0.0);
}

#[test]
fn unusable_readings_are_refused() {
    let meters = [Meter::PERFECT; 2];
    let new = |levels: &[Level]| Baselines::new(levels, &meters).unwrap_err();
    assert_eq!(new(&[]), BaselineError::Empty);
    for watts in [0.0, -3.0, f64::NAN, f64::INFINITY] {
        let levels = [one(0, 50.0, 0.0), one(1, watts, 1.0)];
        assert_eq!(new(&levels), BaselineError::NotPositive(1));
    }
    assert_eq!(
        new(&[Level::one(0, 5, 50.0, 0.0)]),
        BaselineError::UnknownMeter(0)
    );
    let mixed = [one(0, 50.0, 0.0), Level::one(1, 1, 50.0, 5.0)];
    assert_eq!(new(&mixed), BaselineError::MixedMeters(1));
    let b = Baselines::new(&[one(0, 50.0, 0.0)], &meters).unwrap();
    let (rules, around, mut budget) = (Rules::default(), Around::default(), Budget::new());
    let mut loss = |l: Level| substitution(&b, &l, &meters, &rules, &around, &mut budget);
    assert_eq!(loss(one(7, 0.0, 1.0)), Err(MeasureError::NotPositive(7)));
    assert_eq!(
        loss(Level::one(7, 9, 1.0, 1.0)),
        Err(MeasureError::UnknownMeter(7))
    );
    assert_eq!(Level::mean(0, 0, &[]), None);
    assert_eq!(Level::mean(0, 0, &[(1.0, 0.0), (0.0, 1.0)]), None);
}

/// A baseline off the line through its neighbours shows how far a line between them may miss.
#[test]
fn restless_baselines() {
    let levels = [
        one(0, 100.0, 0.0),
        one(1, 97.0, 5.0),
        one(2, 99.0, 10.0),
        one(3, 99.0, 15.0),
    ];
    let quiet = Baselines::new(&levels, &PLAIN).unwrap();
    let u = |b: &Baselines, minutes: f64| b.at(minutes, &Rules::default()).u_leftover;
    // 2.5 W off the line through its neighbours, halfway: a step of 5 W, but the largest seen is 3 W
    near(u(&quiet, 2.5), 0.35 * 3.0 / 97.0, 1e-12);
    near(u(&quiet, 7.5), 0.35 * 3.0 / 97.0, 1e-12);
    // 1 W off the line from 97 W to 99 W: a step of 2 W
    near(u(&quiet, 12.5), 0.35 * 2.0 / 99.0, 1e-12);
    // along a straight line nothing is left, and nothing at a baseline itself
    let straight = [one(0, 100.0, 0.0), one(1, 98.0, 5.0), one(2, 94.0, 15.0)];
    let straight = Baselines::new(&straight, &PLAIN).unwrap();
    near(u(&straight, 9.0), 0.0, 1e-9);
    near(u(&quiet, 5.0), 0.0, 1e-12);
    // with a meter that repeats no better than that, nothing is left
    let meters = [Meter::PERFECT.repeatability(0.03)];
    let loud = Baselines::new(&levels, &meters).unwrap();
    near(u(&loud, 7.0), 0.0, 1e-12);
}

/// One more baseline never makes a result worse than the two beside it: a straight drift of 4 % with
/// and without a third baseline on the line.
#[test]
fn a_third_baseline_does_not_harm() {
    let meters = [Meter::PERFECT.linearity(0.01).repeatability(0.006)];
    let u = |levels: &[Level], minutes: f64| {
        let b = Baselines::new(levels, &meters).unwrap();
        let piece = one(9, 70.0, minutes);
        let mut budget = Budget::new();
        let (rules, around) = (Rules::default(), Around::default());
        let l = substitution(&b, &piece, &meters, &rules, &around, &mut budget).unwrap();
        (l.u_db, l.k)
    };
    let (first, middle, last) = (one(0, 100.0, 0.0), one(1, 98.0, 6.0), one(2, 96.0, 12.0));
    for minutes in [2.0, 5.0, 8.0] {
        let (two, k2) = u(&[first, last], minutes);
        let (three, k3) = u(&[first, middle, last], minutes);
        assert!(three <= two, "{minutes} min: {three} against {two}");
        assert_eq!((k2, k3), (2.0, 2.0));
    }
}

/// Losses are averaged, not powers: two readings of a piece against their own baselines.
#[test]
fn a_piece_read_twice_while_the_transmitter_drifts() {
    let meters = [Meter::PERFECT.linearity(0.01).repeatability(0.006)];
    let b = Baselines::new(&[one(0, 44.0, 0.0), one(1, 42.3, 10.0)], &meters).unwrap();
    let single = |id: usize, watts: f64, minutes: f64| {
        let mut budget = Budget::new();
        let piece = one(id, watts, minutes);
        let (rules, around) = (Rules::default(), Around::default());
        let loss = substitution(&b, &piece, &meters, &rules, &around, &mut budget).unwrap();
        Single {
            loss,
            budget,
            own: [Some((id, 0)), None],
            swapped: false,
        }
    };
    let (early, late) = (single(2, 28.5, 1.0), single(3, 27.6, 9.0));
    let mut budget = Budget::new();
    let both = mean_loss(&[early.clone(), late.clone()], &mut budget).unwrap();
    near(both.db, 0.5 * (early.loss.db + late.loss.db), 1e-12);
    let naive = 0.5 * (early.loss.naive_db + late.loss.naive_db);
    near(both.naive_db, naive, 1e-12);
    assert!(both.u_db < early.loss.u_db, "{both:?}");
    assert_eq!(both.k, 2.0);
    // one alone is itself
    let alone = mean_loss(std::slice::from_ref(&early), &mut budget).unwrap();
    assert_eq!(alone, early.loss);
    assert_eq!(mean_loss(&[], &mut budget), None);
    // losses that scatter more than the meter repeats count by their scatter: s/√2 of 0.5 dB apart
    let far = single(3, 27.6 * 10_f64.powf(-0.05), 9.0);
    let apart = mean_loss(&[early.clone(), far.clone()], &mut budget).unwrap();
    let scatter = budget
        .terms()
        .iter()
        .find(|t| t.source == Source::Repeatability(2))
        .unwrap();
    near(
        scatter.u_db,
        (far.loss.db - early.loss.db).abs() / 2.0,
        1e-12,
    );
    assert_eq!(scatter.dof, 1.0);
    assert!(apart.k > 2.0);
}

/// Two meters exchanged: what each reads too much cancels in the mean of both ways.
#[test]
fn exchanged_meters_cancel() {
    // the first reads 3 % too much, the second 2 % too little; the piece loses 2 dB
    let (a, b, lost) = (1.03, 0.98, 10_f64.powf(-0.2));
    let meters = [
        Meter::PERFECT.of_reading(0.05),
        Meter::PERFECT.of_reading(0.05),
    ];
    let read = |id: usize, near: (usize, f64), far: (usize, f64)| {
        let input = Level::one(id, near.0, 50.0 * near.1, 0.0);
        let output = Level::one(id + 1, far.0, 50.0 * lost * far.1, 0.0);
        let mut budget = Budget::new();
        let around = Around::default();
        let loss = two_meters(&input, &output, None, &meters, &around, &mut budget).unwrap();
        Single {
            loss,
            budget,
            own: [Some((id + 1, far.0)), Some((id, near.0))],
            swapped: near.0 > far.0,
        }
    };
    let one_way = read(0, (0, a), (1, b));
    assert!((one_way.loss.db - 2.0).abs() > 0.2 && one_way.loss.u_db > 0.1);
    let mut budget = Budget::new();
    // read twice one way and once the other: each way counts half
    let again = read(4, (0, a), (1, b));
    let other = read(2, (1, b), (0, a));
    let both = mean_loss(&[one_way, other, again], &mut budget).unwrap();
    near(both.db, 2.0, 1e-12);
    near(both.u_db, 0.0, 1e-12);
}

/// Known repeatability over √n, unless the readings contradict it (GUM 4.2.3, 4.2.4).
#[test]
fn repeated_readings() {
    let readings = [(50.0, 0.0), (50.2, 1.0), (49.8, 2.0), (50.1, 3.0)];
    let level = Level::mean(0, 0, &readings).unwrap();
    near(level.watts, 50.025, 1e-12);
    near(level.minutes, 1.5, 1e-12);
    near(level.spread_w, 0.170_782_5, 1e-6); // statistics by hand
    let (u, dof) = level.u_scatter(&Meter::PERFECT);
    near(u, 0.170_782_5 / 50.025 / 2.0, 1e-8);
    assert_eq!(dof, 3.0);
    let (u, dof) = level.u_scatter(&Meter::PERFECT.repeatability(0.006));
    near(u, 0.003, 1e-15);
    assert_eq!(dof, f64::INFINITY);
    // χ² = 3·(0.0034/0.0028)² = 4.5, which 22 % exceed: the known one stays plausible
    assert_eq!(
        level.u_scatter(&Meter::PERFECT.repeatability(0.0028)).0,
        0.0014
    );
    // χ² = 3·(0.0034/0.001)² = 35: this scatter is not the meter's
    assert_eq!(level.u_scatter(&Meter::PERFECT.repeatability(0.001)).1, 3.0);
    assert_eq!(
        one(0, 50.0, 0.0)
            .u_scatter(&Meter::PERFECT.repeatability(0.006))
            .0,
        0.006
    );
}

/// GUM G.4.1: 0.25, 0.57 and 0.82 % from 10, 5 and 15 readings make 1.03 % with 19 degrees of
/// freedom; GUM
/// 5.2.2: ten resistors of 0.1 ohm uncertainty against one standard make 1 ohm, 0.32 independent. Both
/// from memory.
#[test]
fn examples_of_the_gum() {
    let mut b = Budget::new();
    for (i, (u_db, dof)) in [(0.25, 9.0), (0.57, 4.0), (0.82, 14.0)]
        .into_iter()
        .enumerate()
    {
        b.push(Term {
            source: Source::Other(i),
            u_db,
            dof,
        });
    }
    near(b.u_db(), 1.03, 0.005);
    near(b.dof(), 19.0, 0.05);
    assert!(b.k() > 2.1);
    let (mut one, mut ten) = (Budget::new(), Budget::new());
    for i in 0..10 {
        one.add(Source::Scale(0), 0.1);
        ten.add(Source::Other(i), 0.1);
    }
    near(one.u_db(), 1.0, 1e-12);
    near(ten.u_db(), 0.32, 0.005);
    assert_eq!((one.by_source().count(), one.k()), (1, 2.0));
    // one source seen with different knowledge has the poorer
    let mut same = Budget::new();
    for dof in [f64::INFINITY, 3.0] {
        same.push(Term {
            source: Source::Scale(0),
            u_db: 0.1,
            dof,
        });
    }
    near(same.dof(), 3.0, 1e-12);
    // many sources, some with few degrees of freedom: more than the short list holds
    let mut many = Budget::new();
    for i in 0..40 {
        let dof = if i % 2 == 0 { 4.0 } else { f64::INFINITY };
        many.push(Term {
            source: Source::Other(i),
            u_db: 0.01,
            dof,
        });
    }
    // (40 u²)² / (20 u⁴/4)
    near(many.dof(), 320.0, 1e-9);
}

#[test]
fn large_uncertainty_goes_through_power_ratios() {
    let mut b = Budget::new();
    b.add(Source::Other(0), 0.6);
    let loss = Loss::from_budget(3.0, &b);
    assert!(loss.by_ratio);
    // a power ratio of 0.501 ± 2·0.6/4.343 of itself
    let part: f64 = 1.2 / 4.342_945;
    near(loss.low_db, 3.0 - 10.0 * (1.0 + part).log10(), 1e-6);
    near(loss.high_db, 3.0 - 10.0 * (1.0 - part).log10(), 1e-6);
    // 1.4 dB too much exceeds the uncertainty downwards (1.06 dB), too little not that upwards (1.40 dB)
    let expected = |db| Value {
        db,
        expanded_db: 0.0,
    };
    let judge = |db| compare(loss.towards(db), expected(db));
    assert_eq!(judge(1.9).verdict, Verdict::Differs);
    assert_eq!(judge(4.3).verdict, Verdict::Agrees);
    let mut b = Budget::new();
    b.add(Source::Other(0), 2.5);
    let open = Loss::from_budget(3.0, &b);
    assert_eq!(open.high_db, f64::INFINITY);
    let c = compare(open.towards(9.0), expected(9.0));
    assert_eq!((c.verdict, c.meter_factor), (Verdict::CannotTell, None));
    let mut b = Budget::new();
    b.add(Source::Other(0), 0.4);
    let loss = Loss::from_budget(3.0, &b);
    assert!(!loss.by_ratio && loss.low_db == 2.2 && loss.high_db == 3.8);
}

#[test]
fn adapters_that_come_and_go() {
    let b = Baselines::new(&[one(0, 100.0, 0.0)], &PLAIN).unwrap();
    let adapters = [
        Adapter {
            id: 3,
            db: 0.08,
            u_db: 0.02,
            came: true,
        },
        Adapter {
            id: 4,
            db: 0.05,
            u_db: 0.01,
            came: false,
        },
    ];
    let around = Around {
        adapters: &adapters,
        ..Around::default()
    };
    let mut budget = Budget::new();
    let loss = substitution(
        &b,
        &one(1, 50.0, 0.0),
        &PLAIN,
        &Rules::default(),
        &around,
        &mut budget,
    );
    let loss = loss.unwrap();
    near(loss.db, 10.0 * 2_f64.log10() - 0.08 + 0.05, 1e-12);
    near(loss.u_db, 0.02_f64.hypot(0.01), 1e-12);
    // all of it is common to two pieces with the same adapters
    near(budget.covariance(&budget), loss.u_db * loss.u_db, 1e-15);
}

#[test]
fn loose_expectations_hide_nothing() {
    let v = |db, expanded_db| Value { db, expanded_db };
    let c = compare(v(2.2, 0.1), v(2.0, 0.4));
    assert_eq!((c.verdict, c.beyond_measurement), (Verdict::Agrees, true));
    near(c.en_measurement, 2.0, 1e-12);
    // what both share (a connector, say) does not count
    let c = compare_with(v(2.2, 0.3), v(2.0, 0.3), 0.15);
    assert_eq!(c.verdict, Verdict::Differs);
    near(c.en, 0.2 / 0.15, 1e-12);
    let c = compare(v(0.2, 0.1), v(0.2, 0.15));
    assert_eq!((c.verdict, c.meter_factor), (Verdict::CannotTell, None));
    let stuck = Grows {
        cable_db: 1.0,
        fixed_db: 0.0,
        cable_expanded_db: 0.6,
        fixed_expanded_db: 0.0,
    };
    assert_eq!(length_factor(0.1, &stuck), None);
    let simple = Grows {
        cable_expanded_db: 0.0,
        ..stuck
    };
    // U 1.5 against half of x·1 dB
    near(length_factor(1.5, &simple).unwrap(), 3.0, 1e-12);
    assert_eq!(length_factor(0.2, &simple), Some(1.0));
}

/// Ratios of 0.60, 1.08, 1.07 and 1.20 at four frequencies: the percentages of lost power differ
/// by −1.2 points on average and look fine. One factor does not explain them.
#[test]
fn opposite_errors_do_not_cancel() {
    let expected = [0.6, 2.1, 4.0, 8.0];
    let points: Vec<Point> = expected
        .iter()
        .zip([0.60, 1.08, 1.07, 1.20])
        .map(|(e, ratio)| Point {
            measured_db: e * ratio,
            expected_db: *e,
            u_measured_db: 0.03 * e,
            u_expected_db: 0.02 * e,
        })
        .collect();
    let whole = whole_cable(&points, &[], 0.02).unwrap();
    assert_eq!((whole.used, whole.dof, whole.worst), (4, 3, 0));
    assert!(whole.p < 1e-6, "{whole:?}");
    assert_eq!(whole.p, chi_square_survival(whole.chi2, 3.0));
    // equal weights: the mean of the logarithms
    let mean = (0.6 * 1.08 * 1.07 * 1.20_f64).ln() / 4.0;
    near(whole.ln_ratio, mean, 1e-12);
    near(whole.u_random, 0.015, 1e-12);
    near(whole.u_ln, 0.015_f64.hypot(0.02), 1e-12);
    assert!(whole.p < NO_ONE_FACTOR && whole.worst_en.abs() > 1.0);
    // beyond two, within two, and an uncertainty of more than half
    let verdict = |ratio: f64, shared| {
        let points = [2.0, 4.0].map(|e| Point {
            measured_db: e * ratio,
            expected_db: e,
            u_measured_db: 0.01 * e,
            u_expected_db: 0.0,
        });
        whole_cable(&points, &[], shared).unwrap().verdict
    };
    // u of the mean: 0.01/√2 = 0.0071 with nothing shared
    assert_eq!(verdict(1.02, 0.0), Verdict::Differs);
    assert_eq!(verdict(1.012, 0.0), Verdict::Agrees);
    assert_eq!(verdict(1.02, 0.24), Verdict::Agrees);
    assert_eq!(verdict(1.02, 0.26), Verdict::CannotTell);
    // a loss between u and U is left out
    let mut weak = points.clone();
    weak[3].u_measured_db = 0.6 * weak[3].expected_db;
    assert_eq!(whole_cable(&weak, &[], 0.02).unwrap().used, 3);
    // no loss above its uncertainty: no conclusion
    let hopeless = Point {
        measured_db: 0.1,
        expected_db: 0.1,
        u_measured_db: 0.1,
        u_expected_db: 0.0,
    };
    assert!(whole_cable(&[hopeless], &[], 0.0).is_none() && whole_cable(&[], &[], 0.0).is_none());
}

#[test]
fn a_tape_finds_a_wrong_velocity_factor() {
    let tape = Length {
        metres: 25.0,
        u_metres: 0.03,
    };
    // solid PE (0.659) cable taken for foam (0.80 ± 2 %)
    let delay = 25.0 / (299_792_458.0 * 0.659);
    let wrong = against_tape(
        length_from_delay(delay, 1e-10, 0.80, 0.02),
        tape,
        0.80,
        0.02,
    );
    assert_eq!(wrong.verdict, Verdict::Differs);
    near(wrong.velocity_factor, 0.659, 1e-9);
    // 0.1 ns of 126.5 ns and 3 cm of 25 m; the ± 2 % are what is being found
    let relative = (0.1 / 126.54_f64).hypot(0.03 / 25.0);
    near(wrong.u_velocity_factor, 0.659 * relative, 1e-6);
    let right = against_tape(
        length_from_delay(delay, 1e-10, 0.66, 0.01),
        tape,
        0.66,
        0.01,
    );
    assert_eq!(right.verdict, Verdict::Agrees);
    let rough = against_tape(length_from_delay(delay, 1e-10, 0.66, 0.4), tape, 0.66, 0.4);
    assert_eq!(rough.verdict, Verdict::CannotTell);
    assert_eq!(phase_slope(&[(1e6, 10.0)]), None);
    assert_eq!(phase_slope(&[(1e6, 10.0), (1e6, 20.0)]), None);
}

/// A 52 ohm line of 1.835 dB in 50 ohm, any phase (transformation of a reflection through a step,
/// Pozar 4e sec. 2.3, from memory): either half return loss is off by up to 0.08 dB, their mean
/// by a few thousandths.
#[test]
fn the_mean_of_open_and_short() {
    let step = cx::c((52.0 - 50.0) / (52.0 + 50.0), 0.0);
    let (mut worst_half, mut worst_mean) = (0.0_f64, 0.0_f64);
    for degrees in 0..360 {
        let size = 10_f64.powf(-2.0 * 1.835 / 20.0);
        let far = cx::polar(size, f64::from(degrees).to_radians());
        let rl = |end: Complex64| {
            let near_end = (step + end) / (cx::c(1.0, 0.0) + step * end);
            -20.0 * cx::abs(near_end).log10()
        };
        let o = one_port(rl(far), rl(-far));
        worst_half = worst_half.max((o.open_db - 1.835).abs());
        worst_mean = worst_mean.max((o.loss_db - 1.835).abs());
    }
    assert!((0.06..0.09).contains(&worst_half), "{worst_half}");
    assert!((0.001..0.006).contains(&worst_mean), "{worst_mean}");
    near(
        cx::abs(impedance(step, 50.0) - cx::c(52.0, 0.0)),
        0.0,
        1e-12,
    );
}

fn at(mhz: f64, db_per_100m: f64) -> FitPoint {
    FitPoint {
        f_hz: mhz * 1e6,
        db_per_m: db_per_100m / 100.0,
        u_db_per_m: 0.0003 * db_per_100m,
    }
}

#[test]
fn weak_sets_are_refused_or_advised() {
    let law = |mhz: f64| at(mhz, 0.6 * mhz.sqrt() + 0.01 * mhz);
    let rules = FitRules::default();
    let err = |points: &[FitPoint]| fit(points, &rules).unwrap_err();
    assert!(matches!(err(&[]), FitError::TooFew { frequencies: 0, .. }));
    let FitError::TooFew {
        frequencies: 1,
        add_hz,
    } = err(&[law(145.0), law(145.0)])
    else {
        panic!("one frequency twice is one");
    };
    near(add_hz, 14.5e6, 1.0);
    assert!(matches!(
        err(&[law(144.0), law(146.0), law(148.0)]),
        FitError::Singular { condition, .. } if condition > 1e4
    ));
    assert_eq!(err(&[law(10.0), at(50.0, -1.0)]), FitError::NotPositive(1));
    assert_eq!(err(&[law(f64::NAN), law(1.0)]), FitError::NotPositive(0));
    // two bands: fitted, with the advice to go a decade down; a decade of two: the middle
    let two = fit(&[law(145.0), law(435.0)], &rules).unwrap();
    let advice = two.advice.unwrap();
    near(advice.ratio, 3.0, 1e-12);
    near(advice.add_hz, 43.5e6, 1.0);
    let wide = fit(&[law(4.0), law(400.0)], &rules).unwrap();
    near(wide.advice.unwrap().add_hz, 40e6, 1.0);
    let good = fit(&[law(4.0), law(40.0), law(400.0)], &rules).unwrap();
    assert!(good.advice.is_none());
    // below 10 MHz there is no decade to go down
    let low = fit(&[law(1.9), law(3.7)], &rules).unwrap();
    near(low.advice.unwrap().add_hz, 19e6, 1.0);
}

#[test]
fn what_all_points_share_is_added_after() {
    let law = |mhz: f64| at(mhz, 0.6 * mhz.sqrt() + 0.01 * mhz);
    let points = [law(4.0), law(40.0), law(400.0)];
    let alone = fit(&points, &FitRules::default()).unwrap();
    let rules = FitRules {
        shared: 0.01,
        ..FitRules::default()
    };
    let shared = fit(&points, &rules).unwrap();
    assert_eq!(alone.coefficients, shared.coefficients);
    let (a, s) = (alone.predict(100e6), shared.predict(100e6));
    near(s.u_db_per_m, a.u_db_per_m.hypot(0.01 * a.db_per_m), 1e-15);
    assert_eq!(s.u_random, a.u_db_per_m);
    for (mhz, beyond, refused) in [
        (100.0, 1.0, false),
        (1.0, 4.0, false),
        (800.0, 2.0, false),
        (801.0, 2.0025, true),
    ] {
        let p = alone.predict(mhz * 1e6);
        near(p.beyond, beyond, 1e-12);
        assert_eq!(p.refused, refused);
    }
}

#[test]
fn trends_need_dates() {
    let p = |days, value| TrendPoint {
        days,
        value,
        u: 0.05,
    };
    assert!(trend(&[p(0.0, 1.0)]).is_none());
    assert!(trend(&[p(5.0, 1.0), p(5.0, 2.0)]).is_none());
    assert!(
        trend(&[
            p(0.0, 1.0),
            TrendPoint {
                u: 0.0,
                ..p(9.0, 1.0)
            }
        ])
        .is_none()
    );
    // 0.1 dB in a year from two readings of 0.05 dB: u 0.0707, within the uncertainty; 0.2 dB is
    let year = 365.25;
    let t = trend(&[p(0.0, 1.0), p(year, 1.1)]).unwrap();
    near(t.u_per_year, 0.05 * 2_f64.sqrt(), 1e-12);
    assert_eq!((t.direction, t.dof), (Direction::NotBeyondDoubt, 0));
    assert_eq!(
        trend(&[p(0.0, 1.0), p(year, 1.2)]).unwrap().direction,
        Direction::Rising
    );
    assert_eq!(
        trend(&[p(0.0, 1.2), p(year, 1.0)]).unwrap().direction,
        Direction::Falling
    );
    let level = trend(&[p(0.0, 1.0), p(year, 1.0)]).unwrap();
    assert_eq!(level.reaches(2.0), None);
}

/// Limits add up; repeatability counts with two standard deviations.
#[test]
fn limits_of_a_lone_reading() {
    let meter = Meter::PERFECT
        .of_reading(0.05)
        .of_full_scale(0.01, 100.0)
        .linearity(0.01)
        .repeatability(0.006)
        .resolution(0.5);
    near(meter.limits_w(50.0), 2.5 + 1.0 + 0.5 + 0.6 + 0.25, 1e-12);
    let squares: f64 = (2.5 * 2.5 + 1.0 + 0.25 + 0.0625) / 3.0 + 0.09;
    near(meter.u_watts(50.0), squares.sqrt(), 1e-12);
    near(meter.u_relative(50.0), squares.sqrt() / 50.0, 1e-15);
}

#[test]
fn swr_that_cannot_be_known() {
    let meter = Meter::PERFECT.of_full_scale(0.05, 100.0);
    let s = swr(4.0, &meter, 1.0, &meter).unwrap();
    assert_eq!((s.high, s.decimals), (f64::INFINITY, None));
    assert_eq!(swr(0.0, &meter, 0.0, &meter), None);
    assert_eq!(swr(10.0, &meter, -1.0, &meter), None);
    assert_eq!(swr(f64::NAN, &meter, 1.0, &meter), None);
    // nothing reflected: at best 1, at worst what the offset and the resolution hide
    let none = swr(100.0, &meter, 0.0, &meter).unwrap();
    assert!(none.swr == 1.0 && none.low == 1.0 && none.high > 1.5);
    assert_eq!(none.return_loss_db, f64::INFINITY);
    // the uncertainty of q = 0.04 is √2·0.05/√3 of itself; k = 2
    let meter = Meter::PERFECT.of_reading(0.05);
    let s = swr(100.0, &meter, 4.0, &meter).unwrap();
    let rho = |sign: f64| (0.04 * (1.0 + sign * 2.0 * (2.0_f64 / 3.0).sqrt() * 0.05)).sqrt();
    near(s.u_low, (1.0 + rho(-1.0)) / (1.0 - rho(-1.0)), 1e-9);
    near(s.u_high, (1.0 + rho(1.0)) / (1.0 - rho(1.0)), 1e-9);
    for (fraction, decimals) in [(0.01, 2), (0.05, 1)] {
        // 1.494..1.506 and 1.470..1.533 (by hand)
        let meter = Meter::PERFECT.of_reading(fraction);
        assert_eq!(
            swr(100.0, &meter, 4.0, &meter).unwrap().decimals,
            Some(decimals)
        );
    }
}

#[test]
fn rankings_group_what_overlaps() {
    let items = [
        (5.0, 0.1),
        (1.0, 0.3),
        (f64::NAN, 0.1),
        (1.2, 0.3),
        (1.6, 0.3),
    ];
    let got: Vec<(usize, usize, bool)> = ranking(&items)
        .iter()
        .map(|r| (r.item, r.group, r.clear_of_next))
        .collect();
    let want = [
        (1, 0, false),
        (3, 0, false),
        (4, 0, true),
        (0, 1, true),
        (2, 2, true),
    ];
    assert_eq!(got, want);
    // the ends of the group do differ
    assert!(!cannot_be_told_apart(items[1], items[4]));
    assert!(per_length(1.0, 0.1, 0.0, 0.0, 0.0, 0.0).is_none());
}

/// An error common to all points does not average out (GUM, JCGM 100:2008, 5.2.2). With n points
/// of one expected loss e, an error s on each and own errors u, the mean of the logarithms has the
/// variance s²/e² + u²/(n e²).
#[test]
fn a_cause_of_several_bands_does_not_average_out() {
    let (s, own, e, n) = (0.12_f64, 0.05_f64, 1.6, 5);
    let point = Point {
        measured_db: 1.7,
        expected_db: e,
        u_measured_db: s.hypot(own),
        u_expected_db: 0.0,
    };
    let points = vec![point; n];
    let alone = whole_cable(&points, &[], 0.0).unwrap();
    near(alone.u_ln, s.hypot(own) / e / 5.0_f64.sqrt(), 1e-12);
    let all = whole_cable(&points, &[vec![s; n]], 0.0).unwrap();
    near(all.u_ln, (s * s + own * own / 5.0).sqrt() / e, 1e-12);
    near(all.ratio, alone.ratio, 1e-12);
    // one that reads high on one half of the bands and low on the other cancels
    let turns = vec![s, -s, s, -s];
    let four = whole_cable(&points[..4], &[turns], 0.0).unwrap();
    near(four.u_ln, own / e / 2.0, 1e-12);
    // a point that cannot count brings no cause in
    let mut with = points.clone();
    with.push(Point {
        expected_db: 0.1,
        ..point
    });
    let six = whole_cable(&with, &[vec![s; n + 1]], 0.0).unwrap();
    near(six.u_ln, all.u_ln, 1e-12);
}

/// An error in the shape of one coefficient goes into that one and not into the other: the
/// estimate is linear in the readings and exact on the law itself (GUM, JCGM 100:2008, 5.2.2).
#[test]
fn a_cause_of_several_points_goes_where_its_shape_says() {
    let c = 2e-4;
    let frequencies = [14.2, 50.3, 145.3, 434.5];
    let own: Vec<f64> = frequencies
        .iter()
        .map(|f| 1e-4 * (1.0 + f / 100.0))
        .collect();
    let as_conductor: Vec<f64> = frequencies.iter().map(|f: &f64| c * f.sqrt()).collect();
    let points: Vec<FitPoint> = (0..4)
        .map(|i| FitPoint {
            f_hz: 1e6 * frequencies[i],
            db_per_m: 0.004 * frequencies[i].sqrt() + 4e-5 * frequencies[i],
            u_db_per_m: own[i].hypot(as_conductor[i]),
        })
        .collect();
    let plain = fit(&points, &FitRules::default()).unwrap();
    let mut none = plain.clone();
    none.correlate(&points, &[]);
    near(none.u_k1, plain.u_k1, 1e-12 * plain.u_k1);
    near(none.u_k2, plain.u_k2, 1e-12 * plain.u_k2);
    near(none.correlation, plain.correlation, 1e-9);
    // nothing but that cause: all of it in k1, nothing in k2
    let only: Vec<FitPoint> = points
        .iter()
        .zip(&as_conductor)
        .map(|(p, s)| FitPoint {
            u_db_per_m: *s,
            ..*p
        })
        .collect();
    let mut whole = fit(&only, &FitRules::default()).unwrap();
    whole.correlate(&only, std::slice::from_ref(&as_conductor));
    near(whole.u_k1, c, 1e-9 * c);
    near(whole.u_k2, 0.0, 1e-12);
    // with errors of the points' own added, k1 is less sure than the points alone make it
    let mut both = plain.clone();
    both.correlate(&points, &[as_conductor]);
    assert!(both.u_k1 > c && both.u_k2 < plain.u_k2, "{both:?}");
}

/// With an error of full scale a longer piece helps less and less: 5 W of 100 W at a baseline of
/// 29.4 W are ± 0.853 dB (k = 2: half-width 5 W, rectangular), and after x times 5.34 dB that times
/// 10^(0.534 x) − 1. No length lets it fall below half of x times 3.82 dB.
#[test]
fn a_longer_piece_does_not_help_a_meter_of_full_scale() {
    let grows = Grows {
        cable_db: 3.82,
        fixed_db: 0.0,
        cable_expanded_db: 0.15,
        fixed_expanded_db: 0.0,
    };
    let at_base = 2.0 * 4.342_944_8 * (5.0 / 3.0_f64.sqrt()) / 29.4;
    near(at_base, 0.853, 1e-3);
    let of = |x: f64| at_base * (10.0_f64.powf(0.534 * x) - 1.0);
    assert!(of(1.0) > 0.5 * 3.82);
    assert_eq!(length_factor_with(of, &grows), None);
    // one that stays as it is comes to the same as the closed form, within a step
    let (a, b) = (
        length_factor(2.5, &grows).unwrap(),
        length_factor_with(|_| 2.5, &grows).unwrap(),
    );
    near(b, a, 0.011 * a);
}

/// Points that scatter more than they should make the uncertainty larger: by √(χ²/dof), as the trend's
/// (the Birge ratio, common practice in adjustments of constants).
#[test]
fn a_fit_that_does_not_fit_is_less_sure() {
    let points: Vec<FitPoint> = [(10.0, 1.0), (30.0, -1.0), (100.0, 1.0), (300.0, -1.0)]
        .iter()
        .map(|(f, side): &(f64, f64)| {
            let db_per_m = 0.004 * f.sqrt();
            FitPoint {
                f_hz: 1e6 * f,
                db_per_m: db_per_m * (1.0 + 0.05 * side),
                u_db_per_m: 0.01 * db_per_m,
            }
        })
        .collect();
    let f = fit(&points, &FitRules::default()).unwrap();
    assert!(f.p < 0.001, "{f:?}");
    near(f.widened, (f.chi2 / f.dof as f64).sqrt(), 1e-12);
    let calm: Vec<FitPoint> = points
        .iter()
        .map(|p| FitPoint {
            u_db_per_m: f.widened * p.u_db_per_m,
            ..*p
        })
        .collect();
    let g = fit(&calm, &FitRules::default()).unwrap();
    near(g.widened, 1.0, 1e-12);
    near(f.u_k1, g.u_k1, 1e-12);
    near(f.u_k2, g.u_k2, 1e-12);
    let mut again = f.clone();
    again.correlate(&points, &[]);
    near(again.u_k1, f.u_k1, 1e-12);
    near(again.correlation, f.correlation, 1e-9);
}
