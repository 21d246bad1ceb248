//! Figures computed independently (numpy, scipy, scikit-rf) or by hand from the definition
//! named at each, beyond the rows of `data/`.

use downlead_physics::connector::{self, Bump};
use downlead_physics::construction::{self, CladWire};
use downlead_physics::mismatch as mm;
use downlead_physics::network::SMatrix;
use downlead_physics::noise;
use downlead_physics::pairs::{self, Block};
use downlead_physics::power::{self, Mode, PowerKind};
use downlead_physics::table::{self, LossTable, Method, TableError};
use downlead_physics::uncertainty::{self as un, Contribution};
use downlead_physics::{INCH_M, LineParams, RHO_COPPER, cx, devices, radiated};

#[track_caller]
fn near(got: f64, want: f64, tolerance: f64) {
    assert!(
        (got - want).abs() <= tolerance,
        "{got} is not {want} ± {tolerance}"
    );
}

/// Mated UHF-series pairs as impedance bumps: MHz, return loss, SWR, reflective loss (chain
/// matrices in numpy; dimensions from a public technical page of 2013).
#[test]
fn uhf_series_bump() {
    let (plain, ptfe) = (
        Bump {
            z_ohm: 33.3,
            electrical_m: 49.0e-3,
        },
        Bump {
            z_ohm: 36.2,
            electrical_m: 37.8e-3,
        },
    );
    let rows = [
        (plain, 30e6, 37.8, 1.03, 0.001),
        (plain, 50e6, 33.4, 1.04, 0.002),
        (plain, 144e6, 24.2, 1.13, 0.016),
        (plain, 222e6, 20.5, 1.21, 0.039),
        (plain, 432e6, 15.1, 1.43, 0.138),
        (ptfe, 30e6, 42.1, 1.02, 0.000),
        (ptfe, 144e6, 28.5, 1.08, 0.006),
        (ptfe, 222e6, 24.8, 1.12, 0.014),
        (ptfe, 432e6, 19.2, 1.25, 0.053),
    ];
    for (bump, f, return_loss, swr, loss) in rows {
        let gamma = bump.gamma(f, 50.0);
        near(mm::return_loss(gamma), return_loss, 0.06);
        near(mm::swr_from_gamma(gamma), swr, 0.006);
        near(bump.loss(f, 50.0), loss, 6e-4);
        // the estimate for a short bump is within a tenth below 222 MHz
        assert!(f > 222e6 || (bump.gamma_small(f, 50.0) / gamma - 1.0).abs() < 0.1);
    }
    near(connector::sqrt_loss(0.05, 144e6), 0.019, 5e-4);
    near(connector::sqrt_loss(0.05, 1296e6), 0.057, 5e-4);
}

/// A gas-tube protector of 2 pF across 50 ohm: return loss and loss.
#[test]
fn protector_capacitance() {
    for (f, return_loss, loss) in [(145e6, 26.8, 0.009), (435e6, 17.4, 0.080)] {
        let omega = 2.0 * std::f64::consts::PI * f;
        let s = SMatrix::shunt(cx::c(0.0, omega * 2e-12), 50.0);
        near(mm::return_loss(cx::abs(s.s11)), return_loss, 0.06);
        near(-s.gain(), loss, 6e-4);
    }
}

#[test]
fn cut_off_of_known_sizes() {
    // exact roots (scipy), GHz; dimensions in inches
    for (d, outer, er, want) in [
        (0.0362, 0.1175, 2.0703, 34.9),
        (0.341, 0.785, 1.004, 6.81),
        (0.664, 1.527, 1.004, 3.50),
        (1.315, 3.027, 1.004, 1.77),
    ] {
        let f = construction::te11_cutoff(d * INCH_M, outer * INCH_M, er) * 1e-9;
        near(f, want, 0.006 * want);
    }
    assert!(construction::te11_cutoff(2.0, 1.0, 1.0).is_nan());
}

#[test]
fn wires_below_the_skin_effect_law() {
    // 0.9 mm copper at 3.5 MHz: 1.040 exact, 1.039 to first order
    near(
        construction::solid_wire_factor(0.9e-3, RHO_COPPER, 3.5e6),
        1.040,
        5e-4,
    );
    // a clad wire whose copper is thick against the skin is a copper wire of 97 %
    let thick = CladWire::usual(2e-3, 0.4e-3);
    let high = thick.factor(100e6) / construction::solid_wire_factor(2e-3, RHO_COPPER, 100e6);
    near(high, 1.0 / libm::sqrt(0.97), 1e-3);
    // RG-59B centre: 1.37 at 1 MHz, 1.11 at 1.8, 1.00 at 3.5
    let rg59 = CladWire::usual(0.584e-3, 57e-6);
    near(rg59.factor(1.8e6), 1.11, 0.01);
    near(rg59.factor(3.5e6), 1.00, 0.01);
    for (class, want) in [(40.0, 0.098), (30.0, 0.064), (21.0, 0.035)] {
        near(construction::clad_thickness(class), want, 0.004);
    }
}

#[test]
fn dimensions_of_rigid_line() {
    // EIA rigid sizes come out at 50 ohm in air
    for (d, outer) in [(0.341, 0.785), (0.664, 1.527), (1.315, 3.027)] {
        near(construction::coax_z0(d, outer, 1.0), 50.0, 0.1);
    }
    near(construction::inductance(50.0, 0.659) * 1e9, 253.1, 0.1);
    assert_eq!(construction::strand_diameter_factor(5), None);
}

#[test]
fn stress_and_ratings() {
    near(mm::max_voltage_crest(1500.0, 50.0, 3.0), 670.8, 0.1);
    near(power::voltage_limit(500.0, 50.0, 3.0), 1666.7, 0.1);
    // by forward power the same limit: net = forward (1 − |Γ|²)
    let forward = power::voltage_limit_forward(500.0, 50.0, 0.5);
    near(forward * 0.75, power::voltage_limit(500.0, 50.0, 3.0), 1e-9);
    near(power::swr_factor(2.0, 0.0), 0.80, 1e-12);
    near(power::swr_factor(2.0, 1.0), 0.50, 1e-12);
    near(power::swr_factor(1.0, 1.0), 1.0, 1e-12);
    near(power::rating_by_sqrt(22.4e3, 1e6, 432e6), 1078.0, 1.0);
    near(power::ambient_factor(200.0, 40.0, 60.0), 0.875, 1e-12);
    near(power::ambient_factor(80.0, 40.0, 90.0), 0.0, 0.0);
}

#[test]
fn kinds_of_power() {
    let am = |from, to| power::convert(100.0, Mode::Am, from, to).unwrap();
    near(am(PowerKind::Carrier, PowerKind::Pep), 400.0, 1e-9);
    near(am(PowerKind::Carrier, PowerKind::Mean), 150.0, 1e-9);
    let ssb = |from, to| power::convert(100.0, Mode::Ssb, from, to);
    assert_eq!(ssb(PowerKind::Pep, PowerKind::Carrier), None);
    near(ssb(PowerKind::Pep, PowerKind::Mean).unwrap(), 20.0, 1e-9);
    for duty in power::DUTY {
        assert_eq!(power::duty(duty.mode), duty);
    }
}

#[test]
fn cascades_of_reflections() {
    let (best, worst) = pairs::two_discontinuities(1.5, 1.3);
    near(best, 1.154, 1e-3);
    near(worst, 1.95, 1e-12);
    // the four-block chain of rows K04 to K06: rms 1.35, worst 1.73
    let block = |loss_db, r| Block {
        loss_db,
        s11: r,
        s22: r,
    };
    let blocks = [
        block(0.3, 0.03),
        block(1.5, 0.13),
        block(2.4, 0.05),
        block(0.3, 0.03),
    ];
    let seen = pairs::seen_by_source(&blocks, 0.2);
    near(seen.rms_swr(), 1.35, 0.005);
    near(seen.worst_swr(), 1.73, 0.005);
    // nothing reflects: no spread, and no minus zero
    let quiet = pairs::chain_loss(0.0, &[block(1.0, 0.0)], 0.0);
    for zero in [quiet.sigma_db, quiet.worst_low_db, quiet.extreme_low_db] {
        assert!(zero == 0.0 && zero.is_sign_positive());
    }
    // reflections that could cancel everything
    let wild = pairs::chain_loss(1.0, &[block(0.0, 1.0)], 1.0);
    assert!(wild.worst_low_db.is_infinite() && wild.extreme_low_db.is_infinite());
}

#[test]
fn couplers_and_dividers() {
    near(devices::coupler_main_loss(10.0), 0.458, 5e-4);
    near(devices::coupler_main_loss(30.0), 0.0043, 5e-5);
    near(devices::divider_loss(3), 4.771, 5e-4);
    near(devices::hybrid_combiner_loss(1), 3.0103, 1e-4);
    near(
        devices::coherent_combining(20_f64.to_radians(), 0.0),
        -0.133,
        5e-4,
    );
    near(devices::coherent_combining(0.0, 1.0), -0.0144, 5e-4);
    let r = mm::gamma_from_return_loss(14.0);
    let (low, high) = devices::directivity_range(r, 25.0);
    near(mm::return_loss(low), 16.9, 0.05);
    near(mm::return_loss(high), 11.8, 0.05);
    near(devices::directivity_forward_error(r, 25.0).0, 0.1, 0.005);
    near(devices::return_loss_through_pad(10.0, 3.0), 16.0, 1e-12);
}

#[test]
fn receiver_noise() {
    // kTB by hand: −228.599 dB + 10 log10(290) + 30 = −173.975 dBm/Hz
    near(noise::thermal_noise(1.0, 290.0), -173.975, 1e-3);
    let rejection = noise::needed_noise_rejection(44.0, -95.0, 10e3, 7.0, -6.0);
    near(rejection, 44.0 - 95.0 + 133.975 - 7.0 + 6.0, 1e-3);
    near(noise::noise_rise(-10.0), 0.414, 5e-4);
    // a chain of losses at 290 K has the noise figure of their sum
    let losses = [0.3, 2.5, 1.5].map(|l| noise::Stage::passive(l, 290.0));
    near(noise::cascade_noise_figure(&losses), 4.3, 1e-9);
    near(noise::cascade_noise_figure(&[]), 0.0, 0.0);
    near(
        noise::pd_from_dbm(noise::dbm_from_pd(1e-6, 50.0), 50.0),
        1e-6,
        1e-18,
    );
    near(noise::dbm_from_dbuv_emf(6.0206, 50.0), -106.9897, 1e-3);
}

#[test]
fn antennas() {
    for (n, spacing, want) in [
        (2, 0.65, 4.62),
        (2, 0.75, 5.04),
        (2, 0.9, 5.38),
        (4, 0.65, 7.38),
        (4, 0.75, 7.90),
        (4, 0.9, 8.52),
        (8, 0.65, 10.28),
        (8, 0.75, 10.85),
        (8, 0.9, 11.56),
    ] {
        near(radiated::collinear_dbi(n, spacing).unwrap(), want, 0.006);
    }
    assert_eq!(radiated::collinear_dbi(0, 0.9), None);
    assert_eq!(radiated::collinear_dbi(2, f64::NAN), None);
    near(radiated::quarter_wave_monopole_dbi(), 5.161, 5e-4);
    near(radiated::stacking_distance(40_f64.to_radians()), 1.46, 5e-3);
    near(radiated::gain(8.0, 0.9), 7.542, 1e-3);
    near(
        radiated::realized_gain(6.0, mm::gamma_from_swr(2.0)),
        5.488,
        1e-3,
    );
    // the rounded 30 of ITU-R P.525 costs 0.0031 dB
    let (a, b) = (
        radiated::field_strength(1.0, 1.0),
        radiated::field_strength_exact(1.0, 1.0),
    );
    near(20.0 * libm::log10(a / b), 0.00302, 1e-4);
}

#[test]
fn combining_uncertainty() {
    near(un::rectangular(3.0), 3.0 / 3_f64.sqrt(), 1e-12);
    near(un::triangular(6.0), 6.0 / 6_f64.sqrt(), 1e-12);
    near(un::from_expanded(0.5, 2.0), 0.25, 0.0);
    // five readings of an insertion: s = 0.0164, mean's uncertainty 0.0073
    near(
        un::type_a(&[-2.40, -2.38, -2.41, -2.37, -2.40]),
        0.0073,
        5e-5,
    );
    assert!(un::type_a(&[1.0]).is_nan());
    let part = |cause, value| Contribution { cause, value };
    // one cause twice adds up, opposite signs cancel, another cause adds as squares
    near(
        un::correlated(&[part(7, 3.0), part(1, 12.0), part(7, 2.0)]),
        13.0,
        1e-12,
    );
    near(un::correlated(&[part(7, 3.0), part(7, -3.0)]), 0.0, 1e-12);
    // GUM H.1.6: end gauge, effective degrees of freedom 16 (from memory)
    let parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)];
    near(un::welch_satterthwaite(&parts), 16.7, 0.5);
    near(un::coverage_factor(f64::INFINITY), 2.0, 0.0);
    assert!(un::coverage_factor(0.5).is_nan());
}

#[test]
fn meters() {
    for (reading, up, down) in [
        (100.0, 0.21, 0.22),
        (50.0, 0.41, 0.46),
        (25.0, 0.79, 0.97),
        (10.0, 1.76, 3.01),
    ] {
        let (a, b) = un::meter_of_full_scale(0.05, 100.0, reading);
        near(a, up, 0.005);
        near(b, down, 0.005);
    }
    assert!(un::meter_of_full_scale(0.05, 100.0, 4.0).1.is_infinite());
    // 100 W forward, 4 W reflected, both ± 5 W: SWR 1.0 to 1.89
    let (low, high) = un::swr_range(100.0, 4.0, 5.0);
    near(low, 1.0, 0.0);
    near(high, 1.89, 0.005);
    // the measured reel at 145 MHz
    near(un::en(8.576, 8.125, 0.252, 0.751), 0.57, 0.005);
}

/// The two licence-manual points of RG-58 solve to the coefficients published for it (per 100 ft).
#[test]
fn fits_of_published_points() {
    let points = [(30e6, 2.47), (150e6, 5.63)];
    let law = table::through(points[0], points[1]);
    near(law.k1, 0.4439, 5e-4);
    near(law.k2, 0.00129, 5e-5);
    let same = table::fit_two_term(&points).unwrap();
    near(same.coefficients.k1, law.k1, 1e-9);
    assert!(same.rms < 1e-12);
}

#[test]
fn tables_outside_and_bad() {
    let table = LossTable::new(&[(450e6, 0.08), (50e6, 0.025), (150e6, 0.044)]).unwrap();
    assert_eq!(table.range(), (50e6, 450e6));
    let below = table.at(25e6);
    assert_eq!((below.method, below.outside), (Method::Extrapolated, 2.0));
    // half the frequency is between half and 1/√2 of the loss
    assert!(below.db_per_m() > 0.0125 && below.db_per_m() < 0.0177);
    let single = LossTable::new(&[(100e6, 0.04)]).unwrap().at(400e6);
    assert_eq!(single.method, Method::SquareRoot);
    near(single.db_per_m(), 0.08, 1e-12);
    near(single.outside, 4.0, 1e-12);
    // flatter than the skin effect: straight in logarithms, all of it conductor
    let flat = LossTable::new(&[(100e6, 0.04), (400e6, 0.06)])
        .unwrap()
        .at(200e6);
    assert_eq!(flat.method, Method::LogLog);
    near(flat.db_per_m(), 0.04 * 1.5_f64.sqrt(), 1e-12);
    assert!(flat.alpha_d_db_per_m == 0.0);
    let line = flat.with_conductor_factor(1.1).line(50.0, 0.8);
    near(line.matched_loss(10.0), 11.0 * flat.db_per_m(), 1e-12);
    assert_eq!(LossTable::new(&[]), Err(TableError::Empty));
    assert_eq!(
        LossTable::new(&[(1e6, -1.0)]),
        Err(TableError::NotPositive(0))
    );
    assert_eq!(
        LossTable::new(&[(2e6, 1.0), (1e6, f64::NAN)]),
        Err(TableError::NotPositive(1))
    );
    let twice = [(1e6, 1.0), (1e6, 2.0)];
    assert_eq!(LossTable::new(&twice), Err(TableError::Duplicate(1)));
    assert_eq!(table::fit_two_term(&twice), Err(TableError::Singular));
}

#[test]
fn very_lossy_lines_stay_finite() {
    let line = LineParams {
        r0_ohm: 50.0,
        velocity_factor: 0.66,
        alpha_c_db_per_m: 80.0,
        alpha_d_db_per_m: 1.0,
    };
    let loss = mm::total_loss(&line, 1e8, 1000.0, cx::c(10.0, 300.0));
    assert!(loss.is_finite() && loss > 81_000.0);
    let z = mm::input_impedance(&line, 1e8, 1000.0, cx::c(10.0, 300.0));
    assert!(cx::abs(z - line.zc(1e8)) < 1e-9);
    let s = SMatrix::line(&line, 1e8, 1000.0, 50.0);
    assert!(cx::abs(s.s11).is_finite() && s.s21.norm_sqr() == 0.0);
}

#[test]
fn edge_cases_of_reflection() {
    assert!(mm::swr_from_gamma(1.0).is_infinite());
    near(mm::gamma_from_swr(f64::INFINITY), 1.0, 0.0);
    assert!(mm::return_loss(0.0).is_infinite());
    // an open line is a total reflection
    near(
        mm::reflection(cx::real(f64::INFINITY), cx::real(50.0)).re,
        1.0,
        0.0,
    );
    let open = mm::rereference(cx::real(1.0), 50.0, 75.0);
    near(open.re, 1.0, 1e-15);
    // two reflections of unknown phase hold the known-phase result between them
    let (low, high) = mm::delivered_bounds(0.2, 1.0 / 3.0);
    let known = mm::delivered(cx::real(-0.2), cx::real(1.0 / 3.0));
    near(low, known, 1e-12);
    assert!(high > low);
    // complex functions: identities
    let z = cx::c(0.7, -2.3);
    let one = cx::cosh(z) * cx::cosh(z) - cx::sinh(z) * cx::sinh(z);
    assert!(cx::abs(one - 1.0) < 1e-14);
    let t = cx::sinh(z) / cx::cosh(z);
    assert!(cx::abs(cx::tanh(z) - t) < 1e-14 && cx::abs(cx::tanh(-z) + t) < 1e-14);
    let root = cx::sqrt(cx::c(-4.0, -1e-9));
    assert!(cx::abs(root * root - cx::c(-4.0, -1e-9)) < 1e-15 && root.re >= 0.0);
    assert!(cx::abs(cx::exp(cx::ln(z)) - z) < 1e-14);
}
