//! Published and independently computed figures, put as chains of the language.
//!
//! `tests/reference/network.json` holds terminated lines and cascades from scikit-rf, a general
//! network library (script `network.py` beside it); the other rows name their publication.

mod common;

use common::{bands, report};
use downlead_report::Reports as _;
use downlead_testkit::project;
use serde_json::Value;

fn network() -> Value {
    let text = std::fs::read_to_string(project("tests/reference/network.json"))
        .expect("the reference values");
    serde_json::from_str(&text).expect("JSON")
}

fn f(v: &Value, key: &str) -> f64 {
    v[key].as_f64().unwrap_or_else(|| panic!("{key} in {v}"))
}

/// A cable definition with exactly the coefficients of a reference line.
fn cable(name: &str, line: &Value) -> String {
    format!(
        "cable {name} {{\n    impedance {} ohm\n    velocity {}\n    loss {} dB/100 m/sqrt(MHz) + {} dB/100 m/MHz at 20 °C\n    accuracy 0.001 % k 1\n    source \"reference\"\n}}\n",
        f(line, "r0"),
        f(line, "vf"),
        100.0 * f(line, "k1"),
        100.0 * f(line, "k2")
    )
}

/// Net power into the line to net power in its load: with a tuner in front the net power is the
/// rated one, so the chain's loss is that of the terminated line.
#[test]
fn lines_of_the_network_library() {
    let network = network();
    let lines = network["lines"].as_array().expect("lines");
    assert!(lines.len() >= 40);
    for (i, line) in lines.iter().enumerate() {
        let (r, x) = (
            line["load"][0].as_f64().expect("ohm"),
            line["load"][1].as_f64().expect("ohm"),
        );
        let text = format!(
            "{}chain c on {} Hz {{\n    transmitter 100 W ± 1 % carrier\n    tuner 0 dB\n    run {} m of reference-line, at 20 °C\n    antenna {{ gain 2 dBi; impedance {r} ohm with reactance {x} ohm }}\n}}\n",
            cable("reference-line", line),
            f(line, "f_hz"),
            f(line, "length_m"),
        );
        let rep = report(&text);
        let b = bands(&rep)[0].1;
        let want = f(line, "loss_db");
        assert!(
            (b.total_loss_db.unwrap() - want).abs() < 1e-6,
            "line {i}: {} for {want}\n{text}",
            b.total_loss_db.unwrap()
        );
        // the same line as two pieces of one cable
        let halves = text.replace(
            &format!("    run {} m of reference-line", f(line, "length_m")),
            &format!(
                "    run {0} m of reference-line, at 20 °C\n    run {0} m of reference-line",
                f(line, "length_m") / 2.0
            ),
        );
        let rep = report(&halves);
        let b = bands(&rep)[0].1;
        assert!(
            (b.total_loss_db.unwrap() - want).abs() < 1e-6,
            "line {i} halved: {} for {want}",
            b.total_loss_db.unwrap()
        );
    }
}

/// Chains of lines, pads and connectors' bumps ended in an impedance: with a tuner the operating
/// loss, without one the transducer loss from 50 ohm.
#[test]
fn chains_of_the_network_library() {
    let network = network();
    let (mut seen, mut inside) = (0, 0);
    for (i, case) in network["chains"]
        .as_array()
        .expect("chains")
        .iter()
        .enumerate()
    {
        let (mut cables, mut parts) = (String::new(), String::new());
        for (n, e) in case["elements"]
            .as_array()
            .expect("elements")
            .iter()
            .enumerate()
        {
            match e["kind"].as_str() {
                Some("line") => {
                    cables += &cable(&format!("line-{n}"), e);
                    parts += &format!("    run {} m of line-{n}, at 20 °C\n", f(e, "length_m"));
                }
                Some("bump") => {
                    let (z, m) = (f(e, "z"), f(e, "m"));
                    cables += &format!(
                        "connector bump-{n} {{\n    family n\n    bump {z} ohm {m} m\n    source \"reference\"\n}}\n"
                    );
                    parts += &format!("    connector 1 of bump-{n}\n");
                }
                _ => parts += &format!("    pad {} dB\n", f(e, "db")),
            }
        }
        let pads = parts.contains("pad");
        let on: Vec<String> = case["f_hz"]
            .as_array()
            .expect("Hz")
            .iter()
            .map(|h| format!("{} Hz", h.as_f64().expect("Hz")))
            .collect();
        let (r, x) = (
            case["load"][0].as_f64().expect("ohm"),
            case["load"][1].as_f64().expect("ohm"),
        );
        for (tuner, key) in [("    tuner 0 dB\n", "operating_db"), ("", "transducer_db")] {
            let text = format!(
                "{cables}chain c on {} {{\n    transmitter 1 W ± 1 % carrier\n{tuner}{parts}    antenna {{ gain 2 dBi; impedance {r} ohm with reactance {x} ohm }}\n}}\n",
                on.join(", ")
            );
            // a bump is refused as a connector at the highest frequency; the figures stand
            let rep = common::load(&text).report();
            let all = bands(&rep);
            assert_eq!(all.len(), on.len(), "{:?}", rep.diagnostics);
            for ((_, b), want) in all.iter().zip(case[key].as_array().expect("dB")) {
                let want = -want.as_f64().expect("dB");
                // the electrical length of a device is unknown, that of the library's pad is zero:
                // one of the possible phases
                if let (true, Some([low, high])) = (pads, b.loss_worst_db) {
                    inside += 1;
                    assert!(
                        (low - 1e-5..=high + 1e-5).contains(&want),
                        "chain {i} at {}, {key}: {want} outside {low} to {high}\n{text}",
                        b.frequency_hz
                    );
                    continue;
                }
                assert!(
                    // the mean over the pads' unknown phases is good to second order
                    (b.total_loss_db.unwrap() - want).abs() < if pads { 1e-3 } else { 1e-6 },
                    "chain {i} at {}, {key}: {} for {want}\n{text}",
                    b.frequency_hz,
                    b.total_loss_db.unwrap()
                );
                seen += 1;
            }
        }
    }
    assert!(
        seen >= 50 && inside >= 30,
        "{seen} points exactly, {inside} within their range"
    );
}

/// Published examination questions (NCVEC question pool, Extra class 2024 to 2028; E9A07 is also
/// DEF20 of the project's table of checks, E9A02 and E9A06 from memory of the pool).
#[test]
fn published_station_questions() {
    let rows = [
        // E9A02: 150 W, 2 dB feed line, 2.2 dB duplexer, 7 dBd: 286 W ERP
        (
            "150 W",
            &["run 2 dB", "filter 2.2 dB"][..],
            "7 dBd",
            "erp",
            286.0,
        ),
        // E9A06: 200 W, 4 dB feed line, 3.2 dB duplexer, 0.8 dB circulator, 10 dBd: 317 W ERP
        (
            "200 W",
            &["run 4 dB", "filter 3.2 dB", "circulator 0.8 dB"][..],
            "10 dBd",
            "erp",
            317.0,
        ),
        // E9A07: 200 W, 2 dB feed line, 2.8 dB duplexer, 1.2 dB circulator, 7 dBi: 252 W EIRP
        (
            "200 W",
            &["run 2 dB", "filter 2.8 dB", "circulator 1.2 dB"][..],
            "7 dBi",
            "eirp",
            252.0,
        ),
    ];
    for (power, parts, gain, quantity, want) in rows {
        let text = format!(
            "chain c on 146 MHz {{\n    transmitter {power}\n    {}\n    antenna {gain}\n}}\n",
            parts.join("\n    ")
        );
        let rep = report(&text);
        let b = bands(&rep)[0].1;
        let have = if quantity == "erp" { b.erp_w } else { b.eirp_w }.expect("a radiated power");
        assert!((have - want).abs() < 0.5, "{want} W {quantity}: {have}");
    }
}
