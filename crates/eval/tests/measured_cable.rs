//! Loss and impedance of a cable from a network file against the equations of a
//! uniform line (Pozar, Microwave Engineering 4e, tables 4.1 and 4.2, from memory).

use downlead_eval::{Scope, Snapshot};
use downlead_eval::{characteristic_impedance, loss_of_point, matched_loss};
use downlead_testkit::Files;
use downlead_touchstone::Network;
use num_complex::Complex64;

fn c(re: f64, im: f64) -> Complex64 {
    Complex64::new(re, im)
}

/// S-parameters in `reference` ohm of a line with impedance `zc`, `db` of matched loss and a
/// length of `radians`: chain matrix, then its conversion.
fn line(zc: f64, db: f64, radians: f64, reference: f64) -> [Complex64; 4] {
    let gamma = c(db * std::f64::consts::LN_10 / 20.0, radians);
    let (a, b, cc) = (gamma.cosh(), gamma.sinh() * zc, gamma.sinh() / zc);
    let (b, cc) = (b / reference, cc * reference);
    let sum = a + b + cc + a;
    let through = c(2.0, 0.0) / sum;
    let reflected = (b - cc) / sum;
    [reflected, through, through, reflected]
}

/// A piece of `metres` with `k1`, `k2` per metre (dB, MHz), velocity factor 0.66, at 60 points.
fn piece(zc: impl Fn(usize) -> f64, metres: f64, reference: f64) -> Network {
    let hz: Vec<f64> = (0..60).map(|k| 30e6 + 7.31e6 * f64::from(k)).collect();
    let s = hz.iter().enumerate().flat_map(|(k, f)| {
        let radians = std::f64::consts::TAU * f * metres / (0.66 * 299_792_458.0);
        line(zc(k), loss(*f) * metres, radians, reference)
    });
    Network::new(hz.clone(), s.collect(), vec![reference; 2]).expect("a network")
}

/// dB/m.
fn loss(hz: f64) -> f64 {
    0.007 * (hz * 1e-6).sqrt() + 0.000_05 * hz * 1e-6
}

#[test]
fn neither_the_impedance_nor_the_reference_counts_in_a_matched_loss() {
    for (zc, reference) in [(50.0, 50.0), (75.0, 50.0), (93.0, 50.0), (50.0, 75.0)] {
        let n = piece(|_| zc, 12.0, reference);
        let all = matched_loss(&n);
        assert_eq!(all.len(), 60);
        for (k, (hz, db)) in all.iter().enumerate() {
            let want = loss(*hz) * 12.0;
            assert!((db - want).abs() < 1e-6, "{zc} in {reference}: {db} {want}");
            assert_eq!(loss_of_point(&n, k), Some((*hz, *db)));
        }
    }
}

#[test]
fn a_piece_that_was_measured_in_part_has_no_loss() {
    let hz = vec![100e6];
    let s = line(50.0, 1.0, 2.0, 50.0);
    let of = |s: Vec<Complex64>, ports| {
        let n = Network::new(hz.clone(), s, vec![50.0; ports]).expect("a network");
        loss_of_point(&n, 0)
    };
    assert!((of(s.to_vec(), 2).expect("a loss").1 - 1.0).abs() < 1e-9);
    // one port, and one direction only
    assert_eq!(of(vec![s[0]], 1), None);
    assert_eq!(of(vec![s[0], c(0.0, 0.0), s[2], s[3]], 2), None);
    // ends that reflect a little more than a line of that loss: never more than |S21|²/(1 − |S11|²)
    let odd = [c(0.2, 0.0), s[1], s[2], c(-0.05, 0.1)];
    let most = 10.0 * ((1.0 - 0.04) / s[1].norm_sqr()).log10() + 0.02;
    let db = of(odd.to_vec(), 2).expect("a loss").1;
    assert!(db <= most + 1e-12, "{db} {most}");
}

#[test]
fn the_impedance_of_a_piece_is_the_median_of_its_points() {
    for (zc, reference) in [(75.0, 50.0), (50.0, 75.0), (50.0, 50.0)] {
        let (z, u) = characteristic_impedance(&piece(|_| zc, 12.0, reference)).expect("tells");
        assert!((z - zc).abs() < 1e-6 && u < 1e-6, "{z} ± {u}, not {zc}");
    }
    // alternately 74 and 76 and sometimes far off: the median of the deviations is 1 ohm,
    // 1.4826 of it the standard deviation (robust estimate of a normal spread)
    let scattered = |k: usize| match k % 6 {
        0 => 20.0,
        1 => 200.0,
        2 | 3 => 74.0,
        _ => 76.0,
    };
    let (z, u) = characteristic_impedance(&piece(scattered, 12.0, 50.0)).expect("tells");
    assert!((z - 74.0).abs() < 1e-6 || (z - 76.0).abs() < 1e-6, "{z}");
    assert!((u - 1.4826 * 2.0).abs() < 1e-6, "{u}");
    // two references, or nothing away from multiples of half a wave, tell none
    let n = piece(|_| 75.0, 12.0, 50.0);
    let unlike = Network::new(
        n.frequencies_hz().to_vec(),
        n.s().to_vec(),
        vec![50.0, 75.0],
    );
    assert_eq!(characteristic_impedance(&unlike.expect("a network")), None);
    let hz: Vec<f64> = (1..9).map(|k| 1e6 * f64::from(k)).collect();
    let at = |radians: f64| {
        let s = hz.iter().flat_map(|_| line(75.0, 0.1, radians, 50.0));
        let n = Network::new(hz.clone(), s.collect(), vec![50.0; 2]).expect("a network");
        characteristic_impedance(&n)
    };
    // |sinh θ|² is about sin²: 0.25 at 30°
    let degree = std::f64::consts::PI / 180.0;
    assert_eq!(at(180.0 * degree), None);
    assert_eq!(at(29.0 * degree), None);
    assert_eq!(at(209.0 * degree), None);
    assert!((at(31.0 * degree).expect("tells").0 - 75.0).abs() < 1e-6);
    assert!((at(150.0 * degree - degree).expect("tells").0 - 75.0).abs() < 1e-6);
}

/// Loss of a run of 24 m of a cable by the file of 12 m, on a frequency in MHz; none outside the file.
fn run_of_24_m(mhz: &str) -> Option<f64> {
    let hz: Vec<f64> = vec![100e6, 120e6, 140e6, 160e6];
    let mut file = "# Hz S RI R 50\n".to_owned();
    for f in &hz {
        let radians = std::f64::consts::TAU * f * 12.0 / (0.66 * 299_792_458.0);
        let [s11, s21, s12, s22] = line(50.0, loss(*f) * 12.0, radians, 50.0);
        let numbers = [s11, s21, s12, s22].map(|z| format!("{:e} {:e}", z.re, z.im));
        file += &format!("{f} {}\n", numbers.join(" "));
    }
    let text = format!(
        "cable reel {{ impedance 50 ohm; velocity 0.66; loss from \"reel.s2p\" of 12 m at 20 °C }}\nchain c on {mhz} MHz {{\n    transmitter 100 W carrier\n    run 24 m of reel, at 20 °C\n    load, swr 1\n}}\n"
    );
    let files = Files::default()
        .with("main.downlead", text.as_str())
        .with("reel.s2p", file.as_str());
    let s = Snapshot::load(&["main.downlead".to_owned()], &files);
    let items = s.scopes().iter().flat_map(Scope::items);
    let mut bands = items.flat_map(|i| &i.2.chains).flat_map(|c| &c.bands);
    bands.next().expect("a band").total_db
}

#[test]
fn a_cable_is_known_from_the_first_point_of_its_file_to_the_last() {
    for (mhz, hz) in [
        ("100", 100e6),
        ("120", 120e6),
        ("140", 140e6),
        ("160", 160e6),
    ] {
        let db = run_of_24_m(mhz).unwrap_or_else(|| panic!("{mhz} MHz is in the file"));
        assert!((db - 24.0 * loss(hz)).abs() < 1e-4, "{mhz}: {db}");
    }
    // between points a straight line in log-log
    let (a, b) = (loss(120e6), loss(140e6));
    let t = (130.0_f64 / 120.0).ln() / (140.0_f64 / 120.0).ln();
    let want = 24.0 * a * (b / a).powf(t);
    let db = run_of_24_m("130").expect("in the file");
    assert!((db - want).abs() < 1e-4, "{db} {want}");
    assert_eq!(run_of_24_m("99"), None);
    assert_eq!(run_of_24_m("161"), None);
}
