//! Laws of bench measurement for any readings.

use downlead_physics::FOOT_M;
use downlead_physics::measure::*;
use proptest::prelude::*;

fn any_meter() -> impl Strategy<Value = Meter> {
    (0.0..0.1_f64, 0.0..0.02_f64, 0.0..0.02_f64, 0.0..0.3_f64).prop_map(
        |(scale, linear, s, step)| {
            Meter::PERFECT
                .of_reading(scale)
                .linearity(linear)
                .repeatability(s)
                .resolution(step)
        },
    )
}

/// Baselines before and after, the piece between.
fn any_session() -> impl Strategy<Value = ([f64; 3], f64)> {
    ([5.0..100.0_f64, 0.5..100.0, 5.0..100.0], 0.0..10.0_f64)
}

fn run(meters: &[Meter], watts: [f64; 3], minutes: f64, piece_meter: usize) -> (Loss, Budget) {
    let baselines = [
        Level::one(0, 0, watts[0], 0.0),
        Level::one(2, 0, watts[2], 10.0),
    ];
    let baselines = Baselines::new(&baselines, meters).unwrap();
    let piece = Level::one(1, piece_meter, watts[1], minutes);
    let mut budget = Budget::new();
    let rules = Rules {
        step_share: 0.1,
        ..Rules::default()
    };
    let around = Around::default();
    let loss = substitution(&baselines, &piece, meters, &rules, &around, &mut budget).unwrap();
    (loss, budget)
}

proptest! {
    /// The same scale error on all readings changes neither the loss nor, by its size, its uncertainty.
    #[test]
    fn a_common_scale_error_is_nothing((watts, minutes) in any_session(), error in 0.8..1.25_f64, scale in 0.0..0.2_f64) {
        let meter = |of_reading: f64| [Meter::PERFECT.of_reading(of_reading).linearity(0.01)];
        let (a, _) = run(&meter(0.05), watts, minutes, 0);
        let (b, _) = run(&meter(scale), watts.map(|w| w * error), minutes, 0);
        prop_assert!((a.db - b.db).abs() < 1e-11 && (a.u_db - b.u_db).abs() < 1e-12);
        prop_assert!((a.naive_db - b.naive_db).abs() < 1e-11);
    }

    /// A second meter never makes it better, and a perfect one has no uncertainty but that of drift.
    #[test]
    fn another_meter_adds_uncertainty(meter in any_meter(), (watts, minutes) in any_session()) {
        let (same, _) = run(&[meter, meter], watts, minutes, 0);
        let (other, _) = run(&[meter, meter], watts, minutes, 1);
        prop_assert!(other.u_db >= same.u_db - 1e-12);
        prop_assert!((other.db - same.db).abs() < 1e-12);
        let (perfect, budget) = run(&[Meter::PERFECT], watts, minutes, 0);
        prop_assert!(budget.terms().iter().all(|t| matches!(t.source, Source::Drift(_))));
        prop_assert!(perfect.u_db <= same.u_db + 1e-12);
    }

    /// Reading the piece exactly at a baseline's time uses that baseline as it is.
    #[test]
    fn drift_is_nothing_at_a_baseline(meter in any_meter(), (watts, _) in any_session()) {
        for (minutes, base) in [(0.0, watts[0]), (10.0, watts[2])] {
            let (loss, budget) = run(&[meter], watts, minutes, 0);
            prop_assert!((loss.db - 10.0 * (base / watts[1]).log10()).abs() < 1e-11);
            prop_assert!(budget.terms().iter().all(|t| !matches!(t.source, Source::Drift(_))));
        }
    }

    /// Limits hold the loss, are ordered, and agree with the percentages.
    #[test]
    fn limits_are_in_order(meter in any_meter(), (watts, minutes) in any_session()) {
        let (loss, _) = run(&[meter, meter], watts, minutes, 1);
        prop_assert!(loss.low_db <= loss.db && loss.db <= loss.high_db);
        prop_assert!((loss.through_percent + loss.lost_percent - 100.0).abs() < 1e-9);
    }

    /// Feet are metres: the same piece in another unit has the same figure and the same trust.
    #[test]
    fn feet_are_metres(db in 0.01..20.0_f64, u in 0.001..0.5_f64, pairs in 0.0..0.2_f64, feet in 1.0..500.0_f64, u_feet in 0.0..1.0_f64) {
        let a = per_length(db, u, pairs, 0.2 * pairs, feet, u_feet).unwrap();
        let b = per_length(db, u, pairs, 0.2 * pairs, feet * FOOT_M, u_feet * FOOT_M).unwrap();
        prop_assert!((a.db_per_m - b.db_per_m * FOOT_M).abs() < 1e-12 * (1.0 + a.db_per_m.abs()));
        prop_assert!((a.u_db_per_m - b.u_db_per_m * FOOT_M).abs() < 1e-12 * (1.0 + a.u_db_per_m));
        prop_assert_eq!(a.trusted, b.trusted);
    }

    /// `Differs` is a large En; there is advice, and swapping both sides turns the sign.
    #[test]
    fn verdicts_follow_from_their_numbers(m in -1.0..10.0_f64, um in 0.001..3.0_f64, e in 0.01..10.0_f64, ue in 0.0..3.0_f64) {
        let c = compare(Value { db: m, expanded_db: um }, Value { db: e, expanded_db: ue });
        prop_assert_eq!(c.verdict == Verdict::Differs, c.en.abs() > 1.0);
        prop_assert!(c.en.abs() <= c.en_measurement.abs() + 1e-12);
        if c.verdict == Verdict::CannotTell {
            prop_assert!(c.expanded_db > 0.5 * e && c.meter_factor.is_none_or(|f| f > 1.0));
            prop_assert_eq!(c.meter_factor.is_none(), ue >= 0.5 * e);
        }
        let back = compare(Value { db: e, expanded_db: ue }, Value { db: m, expanded_db: um });
        prop_assert!((back.en + c.en).abs() < 1e-12);
    }

    /// A fit does not care about the order of points, a common scale, or units of attenuation.
    #[test]
    fn fits_scale(k1 in 0.001..0.03_f64, k2 in 0.0..1e-4_f64, scale in 0.1..10.0_f64, noise in prop::collection::vec(-2.0..2.0_f64, 5)) {
        let mhz: [f64; 5] = [1.9, 14.2, 50.3, 145.3, 434.5];
        let points = |scale: f64| -> Vec<FitPoint> {
            mhz.iter().zip(&noise).map(|(f, n)| {
                let a = k1 * f.sqrt() + k2 * f;
                FitPoint { f_hz: f * 1e6, db_per_m: scale * a * (1.0 + 0.02 * n), u_db_per_m: scale * 0.02 * a }
            }).collect()
        };
        let rules = FitRules::default();
        let a = fit(&points(1.0), &rules).unwrap();
        let b = fit(&points(scale), &rules).unwrap();
        let mut turned = points(1.0);
        turned.reverse();
        let c = fit(&turned, &rules).unwrap();
        let near = |x: f64, y: f64| (x - y).abs() <= 1e-9 * (1e-9 + x.abs().max(y.abs()));
        prop_assert!(a.coefficients.k1 >= 0.0 && a.coefficients.k2 >= 0.0);
        for f in [3e6, 100e6, 800e6] {
            prop_assert!(near(scale * a.predict(f).db_per_m, b.predict(f).db_per_m));
            prop_assert!(near(a.predict(f).db_per_m, c.predict(f).db_per_m));
            prop_assert!(near(scale * a.predict(f).u_db_per_m, b.predict(f).u_db_per_m));
        }
        // fitted at another temperature and carried back, nothing changes
        let warm = fit(&points(1.0), &FitRules { celsius: 35.0, shared: 0.0 }).unwrap();
        prop_assert!(near(warm.predict_at(100e6, 35.0).db_per_m, a.predict(100e6).db_per_m));
        prop_assert!(near(warm.predict_at(100e6, 20.0).db_per_m, warm.at_20.at(100e6)));
    }

    /// Ranking is a permutation in order; groups never break between neighbours within their uncertainty.
    #[test]
    fn ranking_is_in_order(items in prop::collection::vec((0.0..10.0_f64, 0.0..1.0_f64), 0..12)) {
        let ranked = ranking(&items);
        let mut seen: Vec<usize> = ranked.iter().map(|r| r.item).collect();
        prop_assert!(ranked.windows(2).all(|w| items[w[0].item].0 <= items[w[1].item].0));
        for w in ranked.windows(2) {
            let together = cannot_be_told_apart(items[w[0].item], items[w[1].item]);
            prop_assert_eq!(w[0].group == w[1].group, together);
            prop_assert_eq!(w[0].clear_of_next, !together);
        }
        seen.sort_unstable();
        prop_assert!(seen.iter().copied().eq(0..items.len()));
    }

    /// An interval of the standing-wave ratio holds the ratio, and grows with the meter's error.
    #[test]
    fn swr_intervals(forward in 1.0..200.0_f64, part in 0.0..0.9_f64, error in 0.0..0.1_f64) {
        let reading = |e: f64| {
            let meter = Meter::PERFECT.of_reading(e);
            swr(forward, &meter, part * forward, &meter).unwrap()
        };
        let (a, b) = (reading(error), reading(error + 0.02));
        let slack = 1e-9 * a.swr;
        prop_assert!(1.0 <= a.low && a.low <= a.swr + slack && a.swr <= a.high + slack);
        prop_assert!(a.u_low <= a.swr + slack && a.swr <= a.u_high + slack);
        prop_assert!(b.low <= a.low + slack && a.high <= b.high + slack);
        if let (Some(a), Some(b)) = (a.decimals, b.decimals) {
            prop_assert!(b <= a);
        }
    }
}
