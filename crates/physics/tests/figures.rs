//! Figures computed independently (numpy, scipy, scikit-rf) or by hand from the definition
//! named at each, beyond the rows of `data/`.

use downlead_physics::connector::Bump;
use downlead_physics::construction;
use downlead_physics::mismatch as mm;
use downlead_physics::network::SMatrix;
use downlead_physics::noise;
use downlead_physics::power::{self, Mode, PowerKind};
use downlead_physics::table::{self, LossTable, Method, TableError};
use downlead_physics::uncertainty as un;
use downlead_physics::{LineParams, cx, radiated};

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
    }
}

#[test]
fn dimensions_of_rigid_line() {
    // EIA rigid sizes come out at 50 ohm in air
    for (d, outer) in [(0.341, 0.785), (0.664, 1.527), (1.315, 3.027)] {
        near(construction::coax_z0(d, outer, 1.0), 50.0, 0.1);
    }
}

#[test]
fn stress_and_ratings() {
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
    // GUM H.1.6: end gauge, effective degrees of freedom 16 (from memory)
    let parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)];
    near(un::welch_satterthwaite(&parts), 16.7, 0.5);
    near(un::coverage_factor(f64::INFINITY), 2.0, 0.0);
    assert!(un::coverage_factor(0.5).is_nan());
}

#[test]
fn meters() {
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
    // complex functions: identities
    let z = cx::c(0.7, -2.3);
    let root = cx::sqrt(cx::c(-4.0, -1e-9));
    assert!(cx::abs(root * root - cx::c(-4.0, -1e-9)) < 1e-15 && root.re >= 0.0);
    assert!(cx::abs(cx::exp(cx::ln(z)) - z) < 1e-14);
}

/// Root mean square of |S11| of a 75-ohm line of 20 m in a system of 50 ohm, by a simulation of a million
/// lengths (tests/reference/line_between_meters.py).
#[test]
fn reflection_of_a_line_with_both_its_faces() {
    use downlead_physics::mismatch::reflection_of_line;
    for (mhz, loss_db, exact, spread) in [
        (3.6, 0.3430, 0.2889, 0.2859),
        (7.1, 0.4825, 0.3594, 0.3316),
        (14.2, 0.6840, 0.1525, 0.2415),
        (50.1, 1.2941, 0.1476, 0.2455),
        (145.3, 2.2278, 0.2916, 0.2308),
        (434.5, 3.9258, 0.1731, 0.2147),
    ] {
        let phase = 2.0 * std::f64::consts::TAU * mhz * 1e6 * 20.0 / (299_792_458.0 * 0.66);
        let of = |u: f64| reflection_of_line(0.2, loss_db, phase, u);
        assert!((of(0.0) - exact).abs() < 2e-4, "{mhz} MHz: {}", of(0.0));
        let u = of(0.1 * phase);
        assert!((u - spread).abs() < 0.005, "{mhz} MHz: {u}");
    }
    // any phase: both faces add as squares
    let any = reflection_of_line(0.2, 0.0, 1.0, f64::INFINITY);
    assert!(
        (any - 0.2 * (2.0_f64 / 1.0016).sqrt()).abs() < 1e-4,
        "{any}"
    );
    // so lossy that the far face is not seen
    assert!((reflection_of_line(0.2, 60.0, 1.0, 0.0) - 0.2).abs() < 1e-4);
}

/// Gain over a half-wave dipole, which is taken as 2.15 dBi (ITU-R BS.561, from memory).
#[test]
fn gain_over_a_dipole() {
    near(radiated::dbi_from_dbd(0.0), 2.15, 1e-12);
    near(radiated::dbi_from_dbd(6.0), 8.15, 1e-12);
    near(radiated::dbd_from_dbi(2.15), 0.0, 1e-12);
    near(radiated::dbd_from_dbi(8.15), 6.0, 1e-12);
    near(radiated::dbd_from_dbi(-1.0), -3.15, 1e-12);
}
