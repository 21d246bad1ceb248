//! A reel measured at five frequencies, worked through by hand (invented data; expected figures
//! recomputed independently and printed to the digits checked here), and single figures of
//! published formulas (`data/feedline.csv`, rows E) through the measuring functions.

use downlead_physics::line;
use downlead_physics::measure::*;
use downlead_physics::uncertainty::rectangular;
use downlead_quantity::{DB_PER_RELATIVE, from_db};

/// MHz, baseline dB, insertion loss dB, standard deviation of five readings, |Γ| of source and
/// load, |S11| and |S22| of the cable.
const READ: [(f64, f64, f64, f64, f64, f64); 5] = [
    (14.2, -0.12, 0.604, 0.0114, 0.03, 0.02),
    (50.2, -0.15, 1.192, 0.0130, 0.03, 0.02),
    (145.0, -0.21, 2.182, 0.0164, 0.04, 0.03),
    (222.0, -0.25, 2.798, 0.0192, 0.05, 0.04),
    (435.0, -0.33, 4.316, 0.0270, 0.07, 0.05),
];

/// u by scatter, u by mismatch, combined u; dB/100 m and its U; expected and its U; En; En by the
/// measurement alone.
const PRINTED: [[f64; 9]; 5] = [
    [
        0.0051, 0.0090, 0.0260, 2.368, 0.210, 2.241, 0.207, 0.43, 0.60,
    ],
    [
        0.0058, 0.0087, 0.0261, 4.678, 0.215, 4.441, 0.410, 0.51, 1.10,
    ],
    [
        0.0073, 0.0155, 0.0294, 8.576, 0.252, 8.125, 0.751, 0.57, 1.79,
    ],
    [
        0.0086, 0.0245, 0.0353, 11.004, 0.304, 10.465, 0.967, 0.53, 1.77,
    ],
    [
        0.0121, 0.0442, 0.0517, 17.000, 0.442, 15.849, 1.464, 0.75, 2.60,
    ],
];

fn near(got: f64, want: f64, tolerance: f64, what: &str) {
    assert!(
        (got - want).abs() <= tolerance,
        "{what}: {got} is not {want}"
    );
}

/// Five readings with this mean (dB) and standard deviation (dB).
fn five(id: usize, db: f64, s_db: f64) -> Level {
    let watts = 10.0 * from_db(db);
    Level {
        count: 5,
        spread_w: watts * s_db / DB_PER_RELATIVE,
        ..Level::one(id, 0, watts, 0.0)
    }
}

#[test]
fn the_worked_reel() {
    let meters = [Meter::PERFECT.of_reading(0.05)]; // cancels
    let mut points = Vec::new();
    for (read, printed) in READ.iter().zip(&PRINTED) {
        let &(mhz, baseline_db, il_db, s_db, gamma, reflects) = read;
        // the scatter of the baselines is not printed; 0.01 dB makes the combined u come out
        let baseline = Baselines::new(&[five(0, baseline_db, 0.01)], &meters).unwrap();
        let piece = five(1, baseline_db - il_db, s_db);
        let extra = [
            Term::type_b(Source::Other(0), rectangular(0.02)), // linearity of the pair
            Term::type_b(Source::Other(1), rectangular(0.005) * 2_f64.sqrt()), // resolution
            Term::type_b(Source::Other(2), 0.02),              // connectors repeat
        ];
        let around = Around {
            ends: Some(Ends::new(gamma, gamma, reflects, reflects, il_db)),
            extra: &extra,
            ..Around::default()
        };
        let mut budget = Budget::new();
        let rules = Rules::default();
        let loss = substitution(&baseline, &piece, &meters, &rules, &around, &mut budget).unwrap();
        near(loss.db, il_db, 1e-9, "insertion loss");
        let part = |source| {
            let found = budget.by_source().find(|t| t.source == source);
            found.expect("a contribution").u_db.abs()
        };
        near(
            part(Source::Repeatability(1)),
            printed[0],
            0.000_051,
            "u by scatter",
        );
        near(
            part(Source::Mismatch(1)),
            printed[1],
            0.000_051,
            "u by mismatch",
        );
        near(loss.u_db, printed[2], 0.000_15, "combined u");
        assert_eq!(loss.k, 2.0, "four degrees of freedom of a small part");

        let pairs = 2.0 * 0.05 * (mhz / 1000.0).sqrt();
        let u_pairs = rectangular(0.5 * pairs);
        let length = rectangular(0.05);
        let per = per_length(loss.db, loss.u_db, pairs, u_pairs, 25.0, length).unwrap();
        // from insertion losses printed to a thousandth
        near(100.0 * per.db_per_m, printed[3], 0.0025, "dB/100 m");
        near(200.0 * per.u_db_per_m, printed[4], 0.0012, "U of dB/100 m");
        assert_eq!(per.trusted, per.in_expanded >= 5.0);

        let celsius = line::conductor_temperature_factor(12.0);
        let expected = 0.5674 * celsius * mhz.sqrt() + 0.009_66 * mhz;
        near(expected, printed[5], 0.002, "expected");
        let measured = Value {
            db: 100.0 * per.db_per_m,
            expanded_db: 200.0 * per.u_db_per_m,
        };
        let library = Value {
            db: expected,
            expanded_db: 2.0 * rectangular(0.08 * expected),
        };
        near(library.expanded_db, printed[6], 0.001, "U of expected");
        let c = compare(measured, library);
        near(c.en, printed[7], 0.0051, "En");
        near(
            c.en_measurement,
            printed[8],
            0.0121,
            "En by the measurement alone",
        );
        assert_eq!(c.verdict, Verdict::Agrees);
        assert_eq!(c.beyond_measurement, mhz > 50.0);
        points.push(FitPoint {
            f_hz: mhz * 1e6,
            db_per_m: printed[3] / 100.0,
            u_db_per_m: printed[4] / 200.0,
        });
    }

    let rules = FitRules {
        celsius: 12.0,
        shared: 0.0,
    };
    let fit = fit(&points, &rules).unwrap();
    near(100.0 * fit.coefficients.k1, 0.5780, 0.000_06, "k1");
    near(100.0 * fit.u_k1, 0.0168, 0.000_06, "u(k1)");
    near(100.0 * fit.coefficients.k2, 0.011_17, 0.000_006, "k2");
    near(100.0 * fit.u_k2, 0.001_12, 0.000_006, "u(k2)");
    near(fit.correlation, -0.946, 0.0006, "correlation");
    near(fit.chi2, 0.62, 0.006, "χ²");
    assert_eq!(fit.dof, 3);
    near(fit.p, 0.89, 0.006, "p");
    near(100.0 * fit.at_20.k1, 0.5873, 0.000_06, "k1 at 20 °C");
    for (mhz, db, expanded) in [
        (7.1, 1.620, 0.075),
        (100.0, 6.897, 0.145),
        (440.0, 17.040, 0.390),
        (1296.0, 35.29, 1.79),
    ] {
        let at = fit.predict(mhz * 1e6);
        near(100.0 * at.db_per_m, db, 0.000_5 * db, "prediction");
        near(
            200.0 * at.u_db_per_m,
            expanded,
            0.003 * expanded + 0.0005,
            "its U",
        );
        assert_eq!(at.refused, mhz > 900.0);
    }
    assert!(fit.outlier.is_none() && fit.clamped.is_none() && fit.advice.is_none());
}

/// Row E04: Harris and Warner 1981 (form from memory; simulation gives the same).
#[test]
fn mismatch_of_a_substitution() {
    let ends = Ends::new(0.05, 0.05, 0.05, 0.05, 3.0);
    near(ends.u_db(), 0.027_686, 0.0002, "E04");
    let bounded = Ends {
        bounded: true,
        ..ends
    };
    near(bounded.u_db(), 0.013_843, 0.0001, "half of it");
}

/// Row E10: 10 log10(1 ± 5/25).
#[test]
fn full_scale_at_a_quarter() {
    let meter = Meter::PERFECT.of_full_scale(0.05, 100.0);
    near(meter.limits_w(25.0), 5.0, 1e-12, "W");
    near(
        10.0 * (1.0 + meter.limits_w(25.0) / 25.0).log10(),
        0.792,
        0.001,
        "E10",
    );
    near(
        -10.0 * (1.0 - meter.limits_w(25.0) / 25.0).log10(),
        0.969,
        0.001,
        "E10",
    );
}

/// 100 W in, 50 W out on one scale, ± 5 % (recomputed): U 0.56 dB of full scale and 0.35 dB of
/// reading when independent; on one meter the latter is nothing, the former half.
#[test]
fn of_reading_and_of_full_scale() {
    let of_scale = Meter::PERFECT.of_full_scale(0.05, 100.0);
    let of_reading = Meter::PERFECT.of_reading(0.05);
    let u = |meter: Meter, to: usize| {
        let meters = [meter, meter];
        let baseline = Baselines::new(&[Level::one(0, 0, 100.0, 0.0)], &meters).unwrap();
        let piece = Level::one(1, to, 50.0, 0.0);
        let (rules, around) = (Rules::default(), Around::default());
        substitution(
            &baseline,
            &piece,
            &meters,
            &rules,
            &around,
            &mut Budget::new(),
        )
        .unwrap()
        .expanded_db
    };
    near(u(of_scale, 1), 0.56, 0.005, "two meters of full scale");
    near(u(of_reading, 1), 0.35, 0.005, "two meters of reading");
    assert_eq!(u(of_reading, 0), 0.0);
    // one offset in W: (1/50 − 1/100)·5/√3 W
    near(
        u(of_scale, 0),
        2.0 * 4.342_94 * 0.05 / 3_f64.sqrt(),
        1e-5,
        "one meter",
    );
}

/// Rows E11 and E12: `l/(c·VF)` and `c·VF/(2l)`.
#[test]
fn lengths() {
    for l in [
        length_from_delay(126.542e-9, 0.0, 0.659, 0.01),
        length_from_spacing(3.951_26e6, 0.0, 0.659, 0.01),
        length_from_phase_slope(-91.1e-6, 0.0, 0.659, 0.01),
    ] {
        near(l.metres, 25.0, 0.003, "25 m");
        near(l.u_metres, 0.25, 0.0001, "1 % of velocity");
    }
}

/// ± 5 W on 100 W forward and 4 W reflected: 1.0 to 1.89 (recomputed); one decimal, for
/// without one it would read 2, which is outside.
#[test]
fn swr_interval() {
    let meter = Meter::PERFECT.of_full_scale(0.05, 100.0);
    let s = swr(100.0, &meter, 4.0, &meter).unwrap();
    near(s.swr, 1.5, 1e-12, "SWR");
    near(s.low, 1.0, 1e-12, "low");
    near(s.high, 1.89, 0.005, "high");
    assert_eq!(s.decimals, Some(1));
    near(s.return_loss_db, 13.979, 0.001, "return loss");
}

/// ± 5 % twice: U 0.35, 3 %: 0.21, 10 %: 0.71 (recomputed); worst cases 0.43, 0.26, 0.87.
#[test]
fn two_independent_readings() {
    for (fraction, expanded, worst) in [(0.03, 0.21, 0.26), (0.05, 0.35, 0.43), (0.1, 0.71, 0.87)] {
        let meters = [Meter::PERFECT.of_reading(fraction); 2];
        let (input, output) = (Level::one(0, 0, 50.0, 0.0), Level::one(1, 1, 40.0, 0.0));
        let mut budget = Budget::new();
        let around = Around::default();
        let loss = two_meters(&input, &output, None, &meters, &around, &mut budget).unwrap();
        near(loss.expanded_db, expanded, 0.005, "U");
        let w = |l: &Level| meters[l.meter].limits_w(l.watts) / l.watts;
        let limit = 10.0 * ((1.0 + w(&input)) / (1.0 - w(&output))).log10();
        near(limit, worst, 0.005, "worst case");
        // nose to tail first: both scale errors are known to cancel
        let equal = (Level::one(2, 0, 48.0, 0.0), Level::one(3, 1, 50.0, 0.0));
        let equal = Some((&equal.0, &equal.1));
        let loss = two_meters(&input, &output, equal, &meters, &around, &mut budget).unwrap();
        assert_eq!(loss.u_db, 0.0);
        near(
            loss.db,
            10.0 * (50.0 / 40.0 * 50.0 / 48.0_f64).log10(),
            1e-12,
            "ratio of ratios",
        );
        near(
            loss.naive_db,
            10.0 * 1.25_f64.log10(),
            1e-12,
            "not equalised",
        );
    }
}

/// A published case: 0.2 and 0.35 dB from the halves, mean 0.28. And directivity 40 dB at
/// 6 dB return loss: ± 0.0868 dB at most (recomputed).
#[test]
fn from_one_end() {
    let one = one_port(0.4, 0.7);
    near(one.loss_db, 0.275, 1e-12, "mean");
    near(one.half_difference_db, -0.075, 1e-12, "half difference");
    near(
        directivity_u(6.0, 40.0),
        0.0868 / 2_f64.sqrt(),
        0.0006,
        "U-shaped",
    );
}
