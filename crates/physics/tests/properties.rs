//! Laws that hold for any line and any chain.

use downlead_physics::mismatch as mm;
use downlead_physics::pairs::{Block, chain_loss, seen_by_source};
use downlead_physics::sweep::{self, Element};
use downlead_physics::table::{LossTable, Method, fit_two_term};
use downlead_physics::{Complex64, LineParams, SMatrix, TwoTerm, cx};
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

fn any_load() -> impl Strategy<Value = Complex64> {
    (0.1..3000.0_f64, -2000.0..2000.0_f64).prop_map(|(re, im)| cx::c(re, im))
}

fn any_element() -> impl Strategy<Value = Element> {
    prop_oneof![
        (0.01..60.0_f64, 20.0..400.0_f64, 0.6..1.0_f64, any_loss()).prop_map(
            |(length_m, r0_ohm, velocity_factor, loss)| Element::Line {
                length_m,
                r0_ohm,
                velocity_factor,
                loss
            }
        ),
        (0.0..10.0_f64).prop_map(|loss_db| Element::Attenuator { loss_db }),
        (0.0..0.3_f64).prop_map(|k_db| Element::SqrtLoss { k_db }),
        (0.0..20.0_f64, 0.0..1e-7_f64).prop_map(|(ohm, henry)| Element::Series { ohm, henry }),
        (0.0..0.01_f64, 0.0..2e-11_f64)
            .prop_map(|(siemens, farad)| Element::Shunt { siemens, farad }),
        (0.0..0.9_f64).prop_map(|gamma| Element::Fixed(SMatrix::reflective(gamma))),
    ]
}

proptest! {
    #[test]
    fn a_line_cut_in_two_is_the_same_line(
        (line, f) in any_line(), length in 0.1..80.0_f64, cut in 0.01..0.99_f64, load in any_load()
    ) {
        let whole = mm::total_loss(&line, f, length, load);
        let far = mm::total_loss(&line, f, length * (1.0 - cut), load);
        let z = mm::input_impedance(&line, f, length * (1.0 - cut), load);
        let near = mm::total_loss(&line, f, length * cut, z);
        prop_assert!((near + far - whole).abs() < 1e-6, "{near} + {far} = {whole}");

        let s = SMatrix::line(&line, f, length, 50.0);
        let first = SMatrix::line(&line, f, length * cut, 50.0);
        let second = SMatrix::line(&line, f, length * (1.0 - cut), 50.0);
        let both = first.then(&second);
        prop_assert!(cx::abs(both.s21 - s.s21) < 1e-9);
        prop_assert!(cx::abs(both.s11 - s.s11) < 1e-9);
    }

    #[test]
    fn matched_loss_adds_up((line, f) in any_line(), a in 0.0..100.0_f64, b in 0.0..100.0_f64) {
        let sum = line.matched_loss(a) + line.matched_loss(b);
        prop_assert!((line.matched_loss(a + b) - sum).abs() < 1e-9 * (1.0 + sum));
        // and is what a line ending in its own impedance loses
        let matched = mm::total_loss(&line, f, a, line.zc(f));
        prop_assert!((matched - line.matched_loss(a)).abs() < 1e-8 * (1.0 + matched));
    }

    #[test]
    fn swr_is_at_least_one_and_returns(r in 0.0..0.999_f64) {
        let s = mm::swr_from_gamma(r);
        prop_assert!(s >= 1.0);
        prop_assert!((mm::gamma_from_swr(s) - r).abs() < 1e-12);
        prop_assert!((mm::gamma_from_return_loss(mm::return_loss(r)) - r).abs() < 1e-12);
    }

    #[test]
    fn swr_improves_towards_the_transmitter(s in 1.0..50.0_f64, a in 0.0..60.0_f64) {
        let near = mm::swr_at_input(s, a);
        prop_assert!(near >= 1.0 && near <= s * (1.0 + 1e-12));
        let loss = mm::total_loss_classic(a, mm::gamma_from_swr(s));
        prop_assert!(loss >= a - 1e-9, "{loss} below the matched loss {a}");
        // fixed forward power loses what fixed net power does, and the reflection at the source
        let seen = mm::mismatch_loss(mm::gamma_from_swr(near));
        let forward = mm::total_loss_fixed_forward(a, mm::gamma_from_swr(s));
        prop_assert!((loss + seen - forward).abs() < 1e-8 * (1.0 + forward));
    }

    #[test]
    fn classic_is_exact_for_a_real_impedance(
        r0 in 20.0..600.0_f64, alpha in 0.0..0.3_f64, f in 1e6..1e9_f64,
        length in 0.1..100.0_f64, load in any_load()
    ) {
        let line = LineParams {
            r0_ohm: r0,
            velocity_factor: 0.7,
            alpha_c_db_per_m: alpha,
            alpha_d_db_per_m: alpha,
        };
        let gamma = cx::abs(mm::reflection(load, cx::real(r0)));
        let classic = mm::total_loss_classic(line.matched_loss(length), gamma);
        let exact = mm::total_loss(&line, f, length, load);
        prop_assert!((classic - exact).abs() < 1e-6 * (1.0 + exact), "{classic} {exact}");
    }

    #[test]
    fn loss_range_is_what_turning_the_load_finds(
        (line, f) in any_line(), length in 0.1..60.0_f64, r in 0.0..0.95_f64
    ) {
        let range = mm::loss_range(&line, f, length, r);
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for i in 0..720_u32 {
            let angle = f64::from(i) * std::f64::consts::PI / 360.0;
            let load = mm::impedance(cx::polar(r, angle), line.r0_ohm);
            let loss = mm::total_loss(&line, f, length, load);
            low = low.min(loss);
            high = high.max(loss);
        }
        prop_assert!(range.min_db <= low + 1e-9 && high <= range.max_db + 1e-9);
        // half a degree of angle is 4e-5 of the swing's height
        let near = 1e-8 + 1e-3 * (range.max_db - range.min_db);
        prop_assert!(low - range.min_db < near && range.max_db - high < near);
        prop_assert!(range.worst_error_db() >= -1e-9);
    }

    #[test]
    fn passive_cascades_give_no_gain(
        elements in prop::collection::vec(any_element(), 1..10), f in 1e5..3e9_f64,
        source in (0.0..0.95_f64, 0.0..6.3_f64), load in (0.0..0.95_f64, 0.0..6.3_f64)
    ) {
        let s = sweep::at(&elements, f, 50.0);
        prop_assert!(s.is_passive(1e-9), "{}", s.max_power_out());
        let (g_s, g_l) = (cx::polar(source.0, source.1), cx::polar(load.0, load.1));
        prop_assert!(s.transducer_gain(g_s, g_l) <= 1e-8);
        prop_assert!(s.operating_gain(g_l) <= 1e-8);
        prop_assert!(s.transducer_gain(g_s, g_l) <= s.operating_gain(g_l) + 1e-8);
        prop_assert!(s.transducer_gain(g_s, g_l) <= s.available_gain(g_s) + 1e-8);
        // reciprocal parts make a reciprocal chain, and turned round it works the other way
        prop_assert!(cx::abs(s.s12 - s.s21) < 1e-9);
        let back: Vec<Element> = elements.iter().rev().map(|e| match *e {
            Element::Fixed(s) => Element::Fixed(s.reversed()),
            other => other,
        }).collect();
        let turned = sweep::at(&back, f, 50.0);
        prop_assert!(cx::abs(turned.s11 - s.s22) < 1e-9);
        prop_assert!(cx::abs(turned.s21 - s.s12) < 1e-9);
    }

    #[test]
    fn a_sweep_is_its_single_points(
        elements in prop::collection::vec(any_element(), 0..12),
        f in prop::collection::vec(1e5..3e9_f64, 1..80)
    ) {
        let mut out = vec![SMatrix::IDENTITY; f.len() + 1];
        prop_assert_eq!(sweep::sweep(&elements, &f, 50.0, &mut out), f.len());
        prop_assert_eq!(out.pop(), Some(SMatrix::IDENTITY));
        for (f, s) in f.iter().zip(&out) {
            let one = sweep::at(&elements, *f, 50.0);
            // a few rounding errors of the phase, which reaches thousands of radians
            let size = cx::abs(one.s21);
            prop_assert!(cx::abs(s.s11 - one.s11) < 1e-10 && cx::abs(s.s22 - one.s22) < 1e-10);
            prop_assert!(cx::abs(s.s21 - one.s21) <= 1e-10 * size + 1e-290, "{} {}", s.s21, one.s21);
            prop_assert!(cx::abs(s.s12 - one.s12) <= 1e-10 * size + 1e-290);
        }
    }

    #[test]
    fn another_reference_and_back(
        elements in prop::collection::vec(any_element(), 1..6), f in 1e6..1e9_f64, r in 10.0..500.0_f64
    ) {
        let s = sweep::at(&elements, f, 50.0);
        let there = s.rereferenced(50.0, r);
        let back = there.rereferenced(r, 50.0);
        prop_assert!(cx::abs(back.s11 - s.s11) < 1e-9 && cx::abs(back.s21 - s.s21) < 1e-9);
        // the cascade of a line evaluated in the other reference is the same thing
        prop_assert!(there.is_passive(1e-9));
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

/// A small seeded generator (Steele, Lea, Flood 2014: SplitMix64), for phases.
struct Random(u64);

impl Random {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        let bits = u32::try_from((z ^ (z >> 31)) >> 32).expect("32 bits");
        f64::from(bits) / 4_294_967_296.0
    }

    fn turned(&mut self, magnitude: f64) -> Complex64 {
        cx::polar(magnitude, 2.0 * std::f64::consts::PI * self.unit())
    }
}

/// Random phases of every reflection and of every path: mean, spread and extremes of the exact
/// loss against the pair rule.
#[test]
fn random_phases_keep_to_the_pair_rule() {
    let mut random = Random(20_260_704);
    for trial in 0..30 {
        let count = 1 + trial % 6;
        let blocks: Vec<Block> = (0..count)
            .map(|_| Block {
                loss_db: 0.2 + 2.5 * random.unit(),
                s11: 0.15 * random.unit(),
                s22: 0.15 * random.unit(),
            })
            .collect();
        let (source, load) = (0.2 * random.unit(), 0.25 * random.unit());
        let rule = chain_loss(source, &blocks, load);
        let seen = seen_by_source(&blocks, load);
        let (mut sum, mut sum2, mut swept) = (0.0, 0.0, 0.0_f64);
        let draws = 20_000;
        for _ in 0..draws {
            let parts: Vec<SMatrix> = blocks
                .iter()
                .map(|b| {
                    let t = mm::gamma_from_return_loss(b.loss_db);
                    SMatrix::reciprocal(
                        random.turned(b.s11),
                        random.turned(t),
                        random.turned(b.s22),
                    )
                })
                .collect();
            let all = SMatrix::cascade(&parts);
            let (g_s, g_l) = (random.turned(source), random.turned(load));
            let off = -all.transducer_gain(g_s, g_l) - rule.sum_db;
            assert!(off <= rule.extreme_high_db + 1e-9, "{off} {rule:?}");
            assert!(-off <= rule.extreme_low_db + 1e-9, "{off} {rule:?}");
            let g = cx::abs(all.gamma_in(g_l));
            assert!(g <= seen.extreme_gamma + 1e-9, "{g} {seen:?}");
            sum += off;
            sum2 += off * off;
            swept += g * g;
        }
        let mean = sum / f64::from(draws);
        let sigma = (sum2 / f64::from(draws) - mean * mean).sqrt();
        // four standard errors of the mean; two per cent and second order for the spread
        let allowance = 4.0 * sigma / f64::from(draws).sqrt();
        assert!(mean.abs() < allowance + 1e-4, "mean {mean}");
        let relative = sigma / rule.sigma_db - 1.0;
        assert!(relative.abs() < 0.03, "sigma {sigma} {rule:?}");
        let rms = (swept / f64::from(draws)).sqrt();
        assert!((rms / seen.rms_gamma - 1.0).abs() < 0.05, "{rms} {seen:?}");
        // the first-order extremes are the exact ones but for products of two small numbers
        assert!((rule.worst_high_db - rule.extreme_high_db).abs() < 0.05);
        assert!((rule.worst_low_db - rule.extreme_low_db).abs() < 0.05);
    }
}

/// Phases that reach the extremes.
#[test]
fn the_extremes_are_reached() {
    let block = Block {
        loss_db: 0.5,
        s11: 0.15,
        s22: 0.1,
    };
    let rule = chain_loss(0.2, &[block, block], 0.25);
    let part = |sign: f64| {
        let t = mm::gamma_from_return_loss(block.loss_db);
        SMatrix::reciprocal(cx::real(sign * 0.15), cx::real(t), cx::real(0.1))
    };
    let loss = |sign: f64| {
        let all = part(sign).then(&part(sign));
        let (source, load) = (cx::real(0.2), cx::real(sign * 0.25));
        -all.transducer_gain(source, load) - rule.sum_db
    };
    // loops that add up raise the power in the load, loops that take away lower it
    assert!((-loss(1.0) - rule.extreme_low_db).abs() < 1e-9);
    assert!((loss(-1.0) - rule.extreme_high_db).abs() < 1e-9);
}
