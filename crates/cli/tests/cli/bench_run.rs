//! `bench --length --at`: which piece is the best for a run, against a simulation
//! (`tests/reference/run_of_pieces.py`), and what is refused.

use serde_json::Value;

use crate::{examples, folder, run};

const SESSION: &str = "\
cable a { loss 2.5 dB/100 m/sqrt(MHz); velocity 0.66; source \"invented\" }
cable b { loss 1.5 dB/100 m/sqrt(MHz); velocity 0.66; source \"invented\" }
instrument W1 { accuracy 5 % of reading; linearity 1 %; repeatability 0.6 % k 1 }
session two {
    read 2026-07-19 with W1 by QY5BEN
    temperature 20 °C
    piece A 20 m of a
    piece B 25 m of b
";

fn session() -> String {
    let watts = [
        (3.7, 36.2, 36.9),
        (14.2, 33.1, 34.0),
        (50.3, 28.0, 29.2),
        (145.3, 21.4, 23.3),
        (434.5, 13.2, 15.6),
    ];
    let mut out = SESSION.to_owned();
    for (mhz, a, b) in watts {
        out += &format!(
            "    readings on {mhz} MHz {{\n        baseline 40.0 W at 0 min\n        through A {a} W at 5 min\n        \
             through B {b} W at 5 min\n        baseline 40.0 W at 10 min\n    }}\n"
        );
    }
    out + "}\n"
}

fn json(args: &[&str]) -> Value {
    let dir = folder(&[("two.downlead", &session())]);
    let r = run(
        dir.path(),
        &[&["bench", "two.downlead", "--format", "json"], args].concat(),
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    serde_json::from_str(&r.out).unwrap()
}

#[test]
fn a_run_is_what_a_simulation_of_the_session_says() {
    let all = json(&["--length", "30 m", "--at", "145.3,300", "--power", "50 W"]);
    let at = &all["sessions"][0]["runs"]["frequencies"];
    // printed by run_of_pieces.py: loss and U of B and of A, A less B; dB, then W
    let due = [
        (
            [2.802358, 0.0766, 4.059281, 0.0953, 1.256923, 0.0936],
            [26.22613, 0.4624, 19.63550, 0.4308, 6.59063, 0.4803],
        ),
        (
            [4.059381, 0.0780, 5.934903, 0.0968, 1.875522, 0.0954],
            [19.63505, 0.3525, 12.74911, 0.2843, 6.88594, 0.3476],
        ),
    ];
    for (i, (db, w)) in due.iter().enumerate() {
        let (best, next) = (&at[i]["ranking"][0], &at[i]["ranking"][1]);
        assert_eq!((&best["piece"], &best["rank"]), (&"B".into(), &1.into()));
        assert_eq!((&next["piece"], &next["rank"]), (&"A".into(), &2.into()));
        let of = |v: &Value, name: &str| v[name].as_f64().unwrap_or_else(|| panic!("{name}"));
        for (ours, due, within) in [
            (of(best, "loss_db"), db[0], 1e-5),
            (of(next, "loss_db"), db[2], 1e-5),
            (of(next, "more_db"), db[4], 1e-5),
            (of(best, "power_w"), w[0], 1e-5),
            (of(next, "power_w"), w[2], 1e-5),
            (of(next, "less_w"), w[4], 1e-5),
            // the simulation knows its own spread to 0.2 %; linear propagation to 1 %
            (of(best, "uncertainty_db"), db[1], 0.02),
            (of(next, "uncertainty_db"), db[3], 0.02),
            (of(next, "more_uncertainty_db"), db[5], 0.02),
            (of(best, "power_uncertainty_w"), w[1], 0.02),
            (of(next, "power_uncertainty_w"), w[3], 0.02),
            (of(next, "less_uncertainty_w"), w[5], 0.02),
        ] {
            assert!((ours / due - 1.0).abs() < within, "{i}: {ours} for {due}");
        }
    }
}

#[test]
fn the_law_is_carried_on_by_a_factor_of_two_and_no_further() {
    let all = json(&[
        "--length",
        "30 m ± 0.5 m",
        "--at",
        "800 MHz,1300 MHz,2,1,145.3 MHz",
    ]);
    let at = &all["sessions"][0]["runs"]["frequencies"];
    assert_eq!(at[0]["ranking"][0]["inside"], false);
    for refused in [1, 3] {
        assert_eq!(at[refused]["ranking"].as_array().unwrap().len(), 0);
        let why = at[refused]["refused"][0]["why"].as_str().unwrap();
        assert!(why.contains("3.7 MHz to 434.5 MHz"), "{why}");
    }
    assert_eq!(at[2]["ranking"][0]["inside"], false);
    assert_eq!(at[4]["ranking"][0]["inside"], true);
    // the length of the run is the same for both pieces: their difference grows with it
    let more = &at[4]["ranking"][1];
    let length = 2.0 * 0.5 / 3_f64.sqrt() * more["more_db"].as_f64().unwrap() / 30.0;
    let due = (0.0936_f64.powi(2) + length.powi(2)).sqrt();
    assert!((more["more_uncertainty_db"].as_f64().unwrap() / due - 1.0).abs() < 0.02);
}

#[test]
fn the_answer_stands_on_top_and_options_are_explained() {
    let file = "bench/four-cables.downlead";
    let r = run(
        &examples(),
        &["bench", file, "--length", "30 m", "--at", "2m,433.5"],
    );
    let top: Vec<&str> = r.out.lines().take(9).collect();
    let top = top
        .join(" ")
        .split_whitespace()
        .collect::<Vec<_>>()
        .join(" ");
    assert!(
        top.contains("30 m at 145.3 MHz: D is the best, 0.891 ± "),
        "{top}"
    );
    assert!(top.contains("30 m at 433.5 MHz: D is the best, "), "{top}");
    assert!(
        top.contains("of 100 W arrive between matched ends; next C, "),
        "{top}"
    );
    for (args, words) in [
        (&["--length", "30 m"][..], "--at"),
        (&["--at", "145.3"], "--length"),
        (&["--length", "30", "--at", "145.3"], "--length \"30\""),
        (
            &["--length", "30 m", "--at", "4m"],
            "a band of session four-cables (160m, ",
        ),
        (
            &["--length", "30 m", "--at", "145", "--power", "50"],
            "--power \"50\"",
        ),
    ] {
        let r = run(&examples(), &[&["bench", file], args].concat());
        assert_eq!(r.code, Some(2), "{args:?}");
        assert!(r.err.contains(words), "{args:?}: {}", r.err);
    }
    let csv = [
        "bench", file, "--length", "30 m", "--at", "145.3", "--format", "csv", "--table", "runs",
    ];
    let r = run(&examples(), &csv);
    assert_eq!(r.out.lines().count(), 5, "{}", r.out);
}

#[test]
fn a_piece_without_a_fit_is_not_scaled_up() {
    let one_band = session()
        .split("    readings on 14.2")
        .next()
        .unwrap()
        .to_owned()
        + "}\n";
    let dir = folder(&[("two.downlead", &one_band)]);
    let r = run(
        dir.path(),
        &["bench", "two.downlead", "--length", "30 m", "--at", "3.7"],
    );
    assert!(
        r.out.contains("cannot tell, no piece has a fit"),
        "{}",
        r.out
    );
    assert!(r.out.contains("one reading is not scaled up"), "{}", r.out);
}

/// A session as XML is the session: its figures, read by a reader that is not ours.
#[test]
fn a_session_is_written_as_a_certificate() {
    let dir = folder(&[("two.downlead", &session())]);
    let args = [
        "bench",
        "two.downlead",
        "--certificate",
        "out",
        "--format",
        "json",
    ];
    let r = run(dir.path(), &args);
    let all: Value = serde_json::from_str(&r.out).unwrap();
    let text = std::fs::read_to_string(dir.path().join("out/two.xml")).unwrap();
    let doc = roxmltree::Document::parse(&text).unwrap();
    let named = |n: &roxmltree::Node<'_, '_>, name: &str| n.tag_name().name() == name;
    let within = |n: roxmltree::Node<'_, '_>, name: &str| -> String {
        let found = n.descendants().find(|c| named(c, name));
        found.and_then(|c| c.text()).unwrap_or_default().to_owned()
    };
    assert_eq!(within(doc.root(), "endPerformanceDate"), "2026-07-19");
    let results: Vec<_> = doc
        .descendants()
        .filter(|n| named(n, "measurementResult"))
        .collect();
    assert_eq!(results.len(), 2);
    for (result, piece) in results.into_iter().zip(["A", "B"]) {
        let ours = all["sessions"][0]["results"].as_array().unwrap();
        let ours: Vec<&Value> = ours.iter().filter(|r| r["piece"] == piece).collect();
        let column =
            |name: &str| -> Vec<f64> { ours.iter().map(|r| r[name].as_f64().unwrap()).collect() };
        let numbers = |text: &str| -> Vec<f64> {
            text.split_whitespace()
                .map(|t| t.parse().unwrap())
                .collect()
        };
        let list = |kind: &str| {
            let of = |n: &roxmltree::Node<'_, '_>| n.attribute("refType") == Some(kind);
            result.descendants().find(|n| of(n)).unwrap()
        };
        let (hz, loss) = (list("basic_frequency"), list("basic_measuredValue"));
        alike(numbers(&within(hz, "valueXMLList")), column("frequency_hz"));
        assert_eq!(within(hz, "unitXMLList"), "\\hertz");
        alike(numbers(&within(loss, "valueXMLList")), column("loss_db"));
        assert_eq!(within(loss, "unitXMLList"), "\\decibel");
        let u = numbers(&within(loss, "valueExpandedMUXMLList"));
        alike(u, column("loss_uncertainty_db"));
        alike(
            numbers(&within(loss, "coverageFactorXMLList")),
            column("loss_coverage"),
        );
        let sheet = list("basic_referenceValue");
        alike(
            numbers(&within(sheet, "valueXMLList")),
            column("expected_db"),
        );
    }
}

/// JSON is read to the last digit but one.
fn alike(a: Vec<f64>, b: Vec<f64>) {
    assert_eq!(a.len(), b.len());
    for (x, y) in a.into_iter().zip(b) {
        assert!((x - y).abs() <= 1e-12 * y.abs(), "{x} {y}");
    }
}
