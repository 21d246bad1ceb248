//! The results beside random draws of the same chains.

mod common;

use common::{load, report};
use downlead_eval::result::Method;
use downlead_report::build::verify::verification;
use downlead_report::shape::verify::{ChainVerification, Comparison, Estimate};
use downlead_report::shape::word::{Unit, Verified};

fn all(text: &str, draws: usize) -> Vec<ChainVerification> {
    verification(&load(text), draws).chains
}

fn one(text: &str) -> Comparison {
    let mut chains = all(text, 100_000);
    assert_eq!(chains.len(), 1);
    chains.remove(0).compared.expect("a comparison")
}

fn near(a: f64, b: f64, within: f64, what: &str) {
    assert!((a - b).abs() <= within, "{what}: {a}, {b}");
}

/// Level in dB of what an estimate holds in W.
fn levels(e: &Estimate) -> [f64; 3] {
    [e.mean, e.low, e.high].map(|w| 10.0 * w.log10())
}

#[test]
fn a_chain_that_can_be_computed_by_hand() {
    // 100 W ± 5 % (0.2171 dB half-width), 3 dB ± 0.4 dB, 2 dBi: U = 2 √(0.2171² + 0.4²)/√3
    let text = "chain c on 145 MHz {\n    transmitter 100 W ± 5 % carrier\n    pad 3 dB ± 0.4 dB\n    antenna 2 dBi\n}\n";
    let x = one(text);
    assert_eq!(
        (x.quantity, x.unit, *x.method),
        (Verified::Eirp, Unit::Watt, Method::Derivatives)
    );
    let (a, b) = (0.2171_f64, 0.4_f64);
    let u = 2.0 * (a * a + b * b).sqrt() / 3f64.sqrt();
    for e in [&x.derivatives, &x.reported, &x.drawn] {
        near(levels(e)[0], 19.0, 0.005, "mean");
        near(e.uncertainty_db, u, 0.01, "U");
    }
    // by derivatives the interval is two standard deviations either way
    let [mean, low, high] = levels(&x.derivatives);
    near(low, mean - u, 0.01, "lower end");
    near(high, mean + u, 0.01, "upper end");
    // two rectangles make a trapezium, whose share beyond q is (a + b - q)²/(8 a b)
    let [_, low, high] = levels(&x.drawn);
    let q = a + b - (8.0 * a * b * 0.022_750_13).sqrt();
    near(high - low, 2.0 * q, 0.006, "a trapezium's 95 %");
    let b = report(text).stations[0].chains[0].bands[0].clone();
    near(
        x.reported.mean,
        b.eirp_w.unwrap(),
        1e-9,
        "the report's EIRP",
    );
    near(
        x.reported.uncertainty_db,
        b.uncertainty_db.unwrap(),
        1e-12,
        "its U",
    );
}

#[test]
fn strong_waves_are_told_from_derivatives() {
    // the line of evaluator tests: numpy, 100,000 chain matrices, mean 4.48 dB, U 1.54 dB,
    // 3.18 to 5.71 dB
    let text = "cable window {\n    impedance 400 ohm\n    velocity 0.905\n    loss 0.1761 dB/100 m/sqrt(MHz)\n    source \"x\"\n}\nchain c on 14.2 MHz {\n    transmitter 100 W carrier\n    run 18 m ± 0.5 m of window, at 20 °C\n    antenna { gain 0 dBi; impedance 120 ohm with reactance -60 ohm }\n}\n";
    let x = one(text);
    assert_eq!(*x.method, Method::Sample);
    for e in [&x.reported, &x.drawn] {
        let [mean, low, high] = levels(e);
        near(20.0 - mean, 4.483, 0.02, "mean");
        near(e.uncertainty_db, 1.543, 0.03, "U");
        near(20.0 - high, 3.18, 0.03, "least");
        near(20.0 - low, 5.71, 0.03, "most");
    }
    // which is why they are sampled
    let off = (levels(&x.derivatives)[1] - levels(&x.drawn)[1]).abs();
    assert!(off > 0.05, "{off}");
}

#[test]
fn a_loss_is_compared_on_receive_and_a_power_without_a_gain() {
    let receive = "chain c on 145 MHz receive {\n    antenna 2 dBi, swr 1.5\n    pad 3 dB ± 0.4 dB\n    receiver -119 dBm\n}\n";
    let x = one(receive);
    assert_eq!((x.quantity, x.unit), (Verified::Loss, Unit::Decibel));
    let b = report(receive).stations[0].chains[0].bands[0].clone();
    near(x.reported.mean, b.total_loss_db.unwrap(), 1e-9, "the loss");
    near(x.drawn.mean, x.reported.mean, 0.01, "drawn");
    assert!(x.drawn.low < x.drawn.mean && x.drawn.mean < x.drawn.high);
    let [from, to] = b.interval_db.unwrap();
    near(
        x.reported.low,
        x.reported.mean - to,
        1e-9,
        "what is delivered more is lost less",
    );
    near(
        x.reported.high,
        x.reported.mean - from,
        1e-9,
        "and the other way round",
    );
    let load = "chain c on 145 MHz {\n    transmitter 100 W carrier\n    pad 3 dB ± 0.4 dB\n    load, swr 1\n}\n";
    let x = one(load);
    assert_eq!((x.quantity, x.unit), (Verified::Delivered, Unit::Watt));
    near(x.drawn.mean, 50.1, 0.1, "100 W less 3 dB");
}

#[test]
fn what_is_not_known_is_not_compared() {
    let text = "chain c on 145 MHz {\n    transmitter 100 W carrier\n    run 3 m of nope\n    antenna 2 dBi\n}\nchain d on 145 MHz {\n    transmitter 100 W carrier\n    pad 1 dB\n    antenna {\n        gain 2 W\n    }\n}\n";
    let chains = all(text, 1_000);
    assert_eq!(chains.len(), 2);
    assert!(chains[0].compared.is_none());
    // without a gain the power that arrives is known all the same
    assert_eq!(
        chains[1].compared.as_ref().map(|x| x.quantity),
        Some(Verified::Delivered)
    );
}

#[test]
fn the_draws_are_the_same_every_time() {
    let text = "station s {\n    transmitter TX 100 W ± 5 % carrier\n    antenna A1 2 dBi ± 1 dB\n    chain c on 145 MHz, 435 MHz {\n        TX\n        A1\n    }\n}\n";
    let drawn = |draws| {
        let v = verification(&load(text), draws);
        let of = |c: &ChainVerification| {
            (
                c.station.clone(),
                c.band.clone(),
                c.compared.as_ref().unwrap().drawn,
            )
        };
        (v.draws, v.chains.iter().map(of).collect::<Vec<_>>())
    };
    let (n, a) = drawn(5_000);
    assert_eq!((n, a.len()), (5_000, 2));
    assert_eq!((a[0].0.as_str(), a[1].1.as_str()), ("s", "435 MHz"));
    assert_eq!(a, drawn(5_000).1);
    assert!(a != drawn(6_000).1);
    // whole blocks, and not too few
    assert_eq!(drawn(1_001).0, 1_008);
    assert_eq!(drawn(1).0, 1_000);
}
