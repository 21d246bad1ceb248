//! Laws that hold for any line and any chain.

use downlead_physics::mismatch as mm;
use downlead_physics::table::{LossTable, Method, fit_two_term};
use downlead_physics::{LineParams, TwoTerm};
use proptest::prelude::*;

fn any_loss() -> impl Strategy<Value = TwoTerm> {
    (1e-4..0.04_f64, 0.0..2e-4_f64).prop_map(|(k1, k2)| TwoTerm { k1, k2 })
}

/// A line and its frequency.
fn any_line() -> impl Strategy<Value = (LineParams, f64)> {
    (30.0..600.0_f64, 0.6..1.0_f64, any_loss(), -0.5..3.2_f64).prop_map(|(r0, vf, loss, decade)| {
        let f = 1e6 * 10_f64.powf(decade);
        (LineParams::two_term(r0, vf, loss, f), f)
    })
}

proptest! {
    #[test]
    fn matched_loss_adds_up((line, _) in any_line(), a in 0.0..100.0_f64, b in 0.0..100.0_f64) {
        let sum = line.matched_loss(a) + line.matched_loss(b);
        prop_assert!((line.matched_loss(a + b) - sum).abs() < 1e-9 * (1.0 + sum));
    }

    #[test]
    fn swr_is_at_least_one_and_returns(r in 0.0..0.999_f64) {
        let s = mm::swr_from_gamma(r);
        prop_assert!(s >= 1.0);
        prop_assert!((mm::gamma_from_swr(s) - r).abs() < 1e-12);
    }

    #[test]
    fn a_table_is_exact_at_its_points_and_between_them_within_them(
        loss in any_loss(), noise in prop::collection::vec(-0.08..0.08_f64, 6), at in 0.0..1.0_f64
    ) {
        let mhz = [10.0, 50.0, 150.0, 450.0, 900.0, 1500.0];
        let points: Vec<(f64, f64)> = mhz.iter().zip(&noise)
            .map(|(m, n)| (m * 1e6, loss.at(m * 1e6) * (1.0 + n))).collect();
        let table = LossTable::new(&points).unwrap();
        for p in &points {
            let got = table.at(p.0);
            prop_assert!((got.db_per_m() / p.1 - 1.0).abs() < 1e-9 && got.outside == 1.0);
        }
        let f = 10e6 * 150_f64.powf(at);
        let got = table.at(f);
        prop_assert!(got.alpha_c_db_per_m >= 0.0 && got.alpha_d_db_per_m >= 0.0);
        let i = points.partition_point(|p| p.0 < f).clamp(1, 5);
        let (a, b) = (points[i - 1].1, points[i].1);
        prop_assert!(got.db_per_m() >= a.min(b) * (1.0 - 1e-9));
        prop_assert!(got.db_per_m() <= a.max(b) * (1.0 + 1e-9));
        let above = table.at(3e9);
        prop_assert!(above.outside == 2.0 && above.method == Method::Extrapolated);
        prop_assert!(above.db_per_m() >= points[5].1);
    }

    #[test]
    fn a_fit_finds_the_law_it_was_given(loss in any_loss()) {
        let points: Vec<(f64, f64)> = [14e6, 50e6, 145e6, 435e6, 1296e6].iter()
            .map(|&f| (f, loss.at(f))).collect();
        let fit = fit_two_term(&points).unwrap();
        prop_assert!((fit.coefficients.k1 / loss.k1 - 1.0).abs() < 1e-7);
        prop_assert!((fit.coefficients.k2 - loss.k2).abs() < 1e-10);
        prop_assert!(fit.rms < 1e-9 && fit.worst.1.abs() < 1e-8);
    }
}
