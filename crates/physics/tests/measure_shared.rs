//! Causes that several results share: χ² of means and fits, rankings, meters read in line.
//!
//! Values of χ² by `tests/reference/bench.py` (numpy, the full covariance inverted).

use downlead_physics::measure::*;

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{got} is not {want}");
}

#[test]
fn chi_squared_of_bands_knows_what_they_share() {
    let figures = [
        (0.9, 1.0, 0.09),
        (1.62, 1.5, 0.10),
        (2.75, 2.5, 0.11),
        (4.9, 4.6, 0.14),
    ];
    let points = figures.map(|(measured_db, expected_db, u_measured_db)| Point {
        measured_db,
        expected_db,
        u_measured_db,
        u_expected_db: 0.0,
    });
    let alike = vec![0.08; 4];
    let turning = vec![0.03, -0.02, 0.04, 0.01];
    let chi2 = |common: &[Vec<f64>]| whole_cable(&points, common, 0.0).map_or(f64::NAN, |w| w.chi2);
    near(chi2(&[]), 4.082_235_475, 1e-6);
    near(chi2(std::slice::from_ref(&alike)), 10.742_417_878, 1e-6);
    near(chi2(&[alike, turning]), 13.149_420_988, 1e-6);
}

#[test]
fn chi_squared_of_a_fit_knows_what_its_points_share() {
    let figures = [
        (14.2, 0.0165, 0.0012),
        (50.3, 0.0302, 0.0013),
        (145.3, 0.0541, 0.0015),
        (434.5, 0.1007, 0.0031),
    ];
    let points = figures.map(|(mhz, db_per_m, u_db_per_m)| FitPoint {
        f_hz: mhz * 1e6,
        db_per_m,
        u_db_per_m,
    });
    let plain = fit(&points, &FitRules::default()).expect("four points");
    near(plain.chi2, 0.445_649_956, 1e-6);
    let mut shared = plain.clone();
    shared.correlate(&points, &[vec![0.0009; 4]]);
    near(shared.chi2, 0.832_659_629, 1e-6);
    // no cause shared: nothing changes
    let mut none = plain.clone();
    none.correlate(&points, &[]);
    near(none.chi2, plain.chi2, 1e-9);
}

/// The meter's linearity is one error at the power of the baselines, however many there are:
/// ten baselines leave √2 · 1 %/√3 of a loss, and only their repeatability averages.
#[test]
fn linearity_does_not_average_over_baselines() {
    let meters = [Meter::PERFECT.linearity(0.01).repeatability(0.006)];
    let levels: Vec<Level> = (0_u32..10)
        .map(|i| Level::one(i as usize, 0, 40.0, f64::from(i)))
        .collect();
    let b = Baselines::new(&levels, &meters).expect("baselines");
    let mut budget = Budget::new();
    let around = Around::default();
    let piece = Level::one(20, 0, 30.0, 4.5);
    let l = substitution(&b, &piece, &meters, &Rules::default(), &around, &mut budget);
    let per_db = 10.0 / 10_f64.ln();
    let linear = 2.0 * (0.01_f64.powi(2) / 3.0);
    let scatter = 1.5 * 0.006_f64.powi(2);
    near(
        l.expect("a loss").u_db,
        per_db * (linear + scatter).sqrt(),
        1e-9,
    );
}

/// Two values off by one cause alike are told apart by what is left of their uncertainty.
#[test]
fn a_ranking_counts_what_is_shared_once() {
    let items = [(2.0, 0.5), (2.2, 0.5)];
    assert!(!ranking(&items)[0].clear_of_next);
    // of each 0.5, 0.48 are shared: √(2 (0.5² − 0.48²)) = 0.198 is left of the difference
    let apart = |_: usize, _: usize| (2.0 * (0.25_f64 - 0.48 * 0.48)).sqrt();
    assert!(ranking_with(&items, apart)[0].clear_of_next);
    assert!(!ranking_with(&items, |_, _| 0.21)[0].clear_of_next);
}

/// A better meter helps with its own part only: of U = 0.5 dB, 0.4 dB by drift leave 0.3 dB, and
/// with half of 0.9 dB to be confirmed √(0.45² − 0.4²) = 0.206 dB is room.
#[test]
fn a_better_meter_does_not_stop_a_drift() {
    let factor = meter_factor(0.3, 0.4, 0.9).expect("it helps");
    near(factor, 0.3 / (0.45_f64 * 0.45 - 0.16).sqrt(), 1e-12);
    assert_eq!(meter_factor(0.3, 0.46, 0.9), None);
}
