//! Operations on a network: figures, interpolation, passivity.

use downlead_touchstone::{Complex64, Network, NetworkError, Parameter, measures};

fn c(re: f64, im: f64) -> Complex64 {
    Complex64::new(re, im)
}

fn line_of_points() -> Network {
    let s = vec![c(0.0, 0.0), c(0.2, -0.4), c(0.6, 0.0)];
    Network::new(vec![1e6, 2e6, 4e6], s, vec![50.0]).unwrap()
}

/// SWR 2 is |Γ| 1/3, a return loss of 9.542 dB (any handbook's table).
#[test]
fn figures_of_a_reflection() {
    let g = c(1.0 / 3.0, 0.0);
    assert!((measures::swr(g) - 2.0).abs() < 1e-15);
    assert!((measures::return_loss_db(g) - 9.542_425_094).abs() < 1e-9);
    assert!((measures::impedance(g, 50.0) - c(100.0, 0.0)).norm_sqr() < 1e-24);
    assert_eq!(measures::swr(c(0.0, 1.0)), f64::INFINITY);
    assert_eq!(measures::swr(c(2.0, 0.0)), f64::INFINITY);
    assert_eq!(measures::swr(c(0.0, 0.0)), 1.0);
    assert_eq!(measures::return_loss_db(c(0.0, 0.0)), f64::INFINITY);
    assert_eq!(measures::gain_db(c(0.0, 10.0)), 20.0);
    assert_eq!(measures::angle_deg(c(0.0, 1.0)), 90.0);
    assert_eq!(
        measures::reflection_in(c(1.0, 0.0), 50.0, 75.0),
        c(1.0, 0.0)
    );
}

#[test]
fn quarter_turns_are_exact() {
    for (degrees, want) in [
        (0.0, c(1.0, 0.0)),
        (90.0, c(0.0, 1.0)),
        (-90.0, c(0.0, -1.0)),
        (180.0, c(-1.0, 0.0)),
        (-180.0, c(-1.0, 0.0)),
        (270.0, c(0.0, -1.0)),
        (-450.0, c(0.0, -1.0)),
        (3600.0, c(1.0, 0.0)),
        (3.6e12, c(1.0, 0.0)),
    ] {
        assert_eq!(measures::polar_deg(1.0, degrees), want, "{degrees}");
    }
    let z = measures::polar_deg(2.0, 60.0);
    assert!((z - c(1.0, 3f64.sqrt())).norm_sqr() < 1e-30);
}

#[test]
fn between_points_and_outside() {
    let n = line_of_points();
    assert_eq!(n.range_hz(), Some((1e6, 4e6)));
    assert_eq!(n.at_hz(2e6, 0, 0), Ok(c(0.2, -0.4)));
    assert_eq!(n.at_hz(4e6, 0, 0), Ok(c(0.6, 0.0)));
    let half = n.at_hz(1.5e6, 0, 0).unwrap();
    assert!((half - c(0.1, -0.2)).norm_sqr() < 1e-30);
    assert_eq!(n.matrix_at(3e6).unwrap(), [n.at_hz(3e6, 0, 0).unwrap()]);
    for hz in [0.999e6, 4.001e6, f64::NAN, f64::INFINITY, -1.0] {
        assert!(n.at_hz(hz, 0, 0).is_err(), "{hz}");
    }
    let outside = n.interpolated(&[2e6, 5e6]).unwrap_err();
    assert_eq!(
        outside.to_string(),
        "5 MHz is outside the data, which go from 1 to 4 MHz"
    );
    let grid = n.interpolated(&[1e6, 1.5e6, 4e6]).unwrap();
    assert_eq!(grid.points(), 3);
    assert_eq!(grid.at(1, 0, 0), half);
}

/// A lossless line and an attenuator are passive and reciprocal, an isolator is not reciprocal,
/// an amplifier not passive; |S11|² + |S21|² ≤ 1 alone would not show what two ports return
/// together.
#[test]
fn passive_and_reciprocal() {
    let two = |s: [Complex64; 4]| Network::new(vec![1e6], s.to_vec(), vec![50.0; 2]).unwrap();
    let o = c(0.0, 0.0);
    let line = two([o, c(0.0, -1.0), c(0.0, -1.0), o]);
    assert!(line.is_passive(1e-12) && line.is_reciprocal(0.0));
    let isolator = two([o, o, c(1.0, 0.0), o]);
    assert!(isolator.is_passive(1e-12) && !isolator.is_reciprocal(0.5));
    assert_eq!(isolator.asymmetry(0), 1.0);
    let amplifier = two([o, o, c(10.0, 0.0), o]);
    assert!(!amplifier.is_passive(0.02));
    assert_eq!(amplifier.active_points(0.02), [0]);
    assert!((amplifier.insertion_gain_db(0, 1, 0) - 20.0).abs() < 1e-12);
    // each column has length 0.98; driven together it gives out 1.39² of 2
    let both = two([c(0.7, 0.0), c(0.7, 0.0), c(0.7, 0.0), c(0.7, 0.0)]);
    assert!((both.largest_gain(0) - 1.4).abs() < 1e-14);
    assert!(!both.is_passive(0.02));
}

#[test]
fn what_cannot_be_a_network() {
    let new = |f: &[f64], count: usize, z0: &[f64]| {
        let s = vec![c(0.0, 0.0); count];
        Network::new(f.to_vec(), s, z0.to_vec()).unwrap_err()
    };
    assert_eq!(new(&[], 0, &[]), NetworkError::Ports(0));
    assert_eq!(new(&[1.0], 3, &[50.0; 2]), NetworkError::Length(3, 4));
    assert_eq!(new(&[1.0], 1, &[0.0]), NetworkError::Reference(0, 0.0));
    assert_eq!(
        new(&[1.0, 1.0], 2, &[50.0]),
        NetworkError::Frequency(1, 1.0)
    );
    assert_eq!(new(&[-1.0], 1, &[50.0]), NetworkError::Frequency(0, -1.0));
    let nan = Network::new(vec![1.0], vec![c(f64::NAN, 0.0)], vec![50.0]);
    assert_eq!(nan.unwrap_err(), NetworkError::NotFinite(0));
    let n = line_of_points();
    assert_eq!(
        n.re_referenced(&[50.0, 75.0]).unwrap_err(),
        NetworkError::References(2, 1)
    );
    assert_eq!(
        n.parameters(Parameter::H).unwrap_err(),
        NetworkError::Hybrid(Parameter::H, 1)
    );
    assert_eq!(
        n.re_referenced(&[-75.0]).unwrap_err().to_string(),
        "reference of port 1: -75 ohm is not above zero"
    );
}

/// A matched line of 3 dB whose phase turns evenly: between two points it is the line itself, which
/// a chord would make lossier (by 1/cos 10° in the middle of 20°).
#[test]
fn what_passes_is_interpolated_by_magnitude_and_phase() {
    let line = |hz: f64| {
        let through = measures::polar_deg(0.5f64.sqrt(), -20.0 * hz / 1e6);
        let zero = Complex64::new(0.0, 0.0);
        [zero, through, through, zero]
    };
    let hz: Vec<f64> = (0..50).map(|k| 1e6 * f64::from(k + 1)).collect();
    let s: Vec<Complex64> = hz.iter().flat_map(|f| line(*f)).collect();
    let n = Network::new(hz, s, vec![50.0; 2]).expect("a network");
    for asked in [1e6, 3.25e6, 17.5e6, 36.999e6, 50e6] {
        let found = n.between_hz(asked).expect("inside");
        for (have, want) in found.matrix.iter().zip(line(asked)) {
            assert!((have - want).norm() < 1e-12, "{asked}: {have} for {want}");
        }
        let at_a_point = asked % 1e6 == 0.0;
        let turn = if at_a_point { 0.0 } else { 20.0 };
        assert!((found.turn_deg - turn).abs() < 1e-9, "{}", found.turn_deg);
    }
    let chord = n.at_hz(17.5e6, 1, 0).expect("inside").norm() / 0.5f64.sqrt();
    assert!((chord - 10f64.to_radians().cos()).abs() < 1e-12);
    assert!(n.between_hz(0.5e6).is_err() && n.between_hz(51e6).is_err());
}

/// Reflections pass near zero, where they have no phase to speak of.
#[test]
fn what_comes_back_is_interpolated_by_its_parts() {
    let c = Complex64::new;
    let n = Network::new(vec![1e6, 2e6], vec![c(0.1, 0.0), c(-0.1, 0.04)], vec![50.0])
        .expect("a network");
    let found = n.between_hz(1.5e6).expect("inside");
    assert!((found.matrix[0] - c(0.0, 0.02)).norm() < 1e-15);
    let turn = 180.0 - (0.4f64).atan().to_degrees();
    assert!((found.turn_deg - turn).abs() < 1e-9, "{}", found.turn_deg);
    assert!((found.step - 0.2f64.hypot(0.04)).abs() < 1e-15);
}
