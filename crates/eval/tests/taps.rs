//! Power that comes out at other ports: a receiver's port after the receive leg's rejection, the
//! other radio of a combiner, a coupler's side arm. Expected values by hand.

mod common;

use common::load;
use downlead_report::Reports as _;

fn taps(text: &str) -> Vec<(String, String, f64, f64)> {
    let report = load(text).report();
    report.stations[0].chains[0].bands[0]
        .taps
        .iter()
        .map(|t| {
            (
                t.part.clone(),
                t.port.clone(),
                t.power_dbm,
                t.uncertainty_db,
            )
        })
        .collect()
}

#[test]
fn a_carrier_at_the_receivers_port() {
    let t = taps(
        "station s {\n    transmitter TX1 50 W carrier\n    duplexer DU1 {\n        high 1.5 dB ± 0.2 dB\n        low 1.5 dB ± 0.2 dB, rejects 80 dB ± 2 dB at 146.9 MHz\n    }\n    antenna A1 2.15 dBi, swr 1\n\n    chain out on 146.9 MHz transmit {\n        TX1\n        DU1.high\n        A1\n    }\n}\n",
    );
    // 50 W are 46.990 dBm; less 1.5 dB at the common port, less 80 dB in the receive leg;
    // U = 2 √((0.2² + 2²)/3)
    assert_eq!(t.len(), 1, "{t:?}");
    assert_eq!((&*t[0].0, &*t[0].1), ("DU1", "low"));
    assert!((t[0].2 - (46.9897 - 81.5)).abs() < 1e-3, "{}", t[0].2);
    let u = 2.0 * ((0.2f64.powi(2) + 4.0) / 3.0).sqrt();
    assert!((t[0].3 - u).abs() < 1e-3, "{} {u}", t[0].3);
}

#[test]
fn a_couplers_side_arm_and_a_reflecting_antenna() {
    let t = taps(
        "station s {\n    transmitter TX1 100 W carrier\n    coupler CP1 30 dB coupled\n    antenna A1 2.15 dBi, swr 3\n\n    chain out on 146.9 MHz transmit {\n        TX1\n        CP1\n        A1\n    }\n}\n",
    );
    // the forward wave alone: 50 dBm less 30 dB, whatever the antenna reflects
    assert_eq!(t.len(), 1, "{t:?}");
    assert_eq!((&*t[0].0, &*t[0].1), ("CP1", "coupled"));
    assert!((t[0].2 - 20.0).abs() < 0.005, "{}", t[0].2);
}

#[test]
fn a_reflection_makes_what_a_leg_gets_uncertain() {
    let text = |swr: &str| {
        format!(
            "station s {{\n    transmitter TX1 50 W carrier\n    diplexer X1 {{\n        port a 0 dB\n        port b 0 dB, rejects 40 dB\n    }}\n    antenna A1 2.15 dBi, swr {swr}\n\n    chain out on 146.9 MHz transmit {{\n        TX1\n        X1.a\n        A1\n    }}\n}}\n"
        )
    };
    let (matched, off) = (taps(&text("1")), taps(&text("2")));
    // |Γ| = 1/3: mean power of the two waves 1 + 1/9, spread 6.14 dB/3
    assert!((matched[0].2 - 6.9897).abs() < 1e-3);
    assert!((off[0].2 - 6.9897 - 10.0 * (1.0f64 + 1.0 / 9.0).log10()).abs() < 1e-3);
    assert!((off[0].3 - 2.0 * 6.1419 / 3.0).abs() < 1e-2, "{}", off[0].3);
}
