//! `card`: expected readings to take to the site.

use serde_json::Value;
use unicode_width::UnicodeWidthStr;

use crate::report::fits;
use crate::{GOOD, examples, folder, run};

const FILE: &str = "pellgarrow/rev4.downlead";

fn json(out: &str) -> Value {
    serde_json::from_str(out).unwrap_or_else(|e| panic!("{e}: {out}"))
}

#[test]
fn every_format_of_the_hill() {
    for format in ["text", "markdown", "csv"] {
        let r = run(&examples(), &["card", FILE, "--format", format]);
        assert_eq!(r.code, Some(0), "{}", r.err);
        insta::assert_snapshot!(format!("card-{format}"), r.out);
    }
    let r = run(&examples(), &["card", "stacked.downlead"]);
    insta::assert_snapshot!("card-branches", r.out);
}

#[test]
fn cards_fit_a_sheet_of_paper() {
    for file in [
        FILE,
        "stacked.downlead",
        "shack/shack.downlead",
        "hf-multiband.downlead",
    ] {
        let r = run(&examples(), &["card", file]);
        for line in r.out.lines() {
            assert!(
                line.width() <= 80,
                "{file}, {} columns: {line}",
                line.width()
            );
        }
        assert!(r.out.contains("transmitters off"), "{file}");
    }
}

#[test]
fn json_fits_its_schema_and_agrees_with_the_report() {
    let schema = json(&run(&examples(), &["card", "--schema"]).out);
    let all = json(&run(&examples(), &["card", ".", "--format", "json"]).out);
    fits(&all, &schema, &schema, "card");
    let cards = json(&run(&examples(), &["card", FILE, "--format", "json"]).out);
    let report = json(&run(&examples(), &["report", FILE, "--format", "json"]).out);
    let card = &cards["cards"][0];
    let band = &report["stations"][0]["chains"][0]["bands"][0];
    let points = card["points"].as_array().unwrap();
    let at = |name: &str| points.iter().find(|p| p["at"] == name).unwrap();
    // where the text has a reading, the card expects what the report expects, as far off
    let (read, due) = (at("after SP1"), &band["readings"][0]);
    assert_eq!(read["forward_w"], due["expected_w"]);
    assert_eq!(read["uncertainty_db"], due["uncertainty_db"]);
    assert_eq!(read["read"][0]["read_w"], due["read_w"]);
    // the span is the uncertainty in dB, both ways
    for p in points {
        let n = |f: &str| p[f].as_f64().unwrap();
        let high = 10.0 * (n("high_w") / n("forward_w")).log10();
        let low = 10.0 * (n("forward_w") / n("low_w")).log10();
        assert!(
            (high - n("uncertainty_db")).abs() < 1e-9 && (low - high).abs() < 1e-9,
            "{p}"
        );
        let dbm = 30.0 + 10.0 * n("forward_w").log10();
        assert!((n("forward_dbm") - dbm).abs() < 1e-9, "{p}");
    }
    assert_eq!(card["instrument"], "W1");
    assert_eq!(card["instrument_set_power"], true);
}

#[test]
fn another_meter_widens_the_span() {
    let at = |args: &[&str]| {
        let r = run(
            &examples(),
            &[&["card", FILE, "--format", "json"][..], args].concat(),
        );
        json(&r.out)["cards"][0]["points"][1]["uncertainty_db"]
            .as_f64()
            .unwrap()
    };
    // W0 is another meter of 5 %: its error comes on top of the one that set the transmitter,
    // √2 × 0.251 dB (k = 2 of 5 % rectangular) and a little for the jumper and its resolution
    let (own, other) = (at(&[]), at(&["--with", "W0"]));
    assert!(own < other, "{own} {other}");
    assert!((0.354..0.38).contains(&other), "{other}");
    let r = run(&examples(), &["card", FILE, "--with", "W9"]);
    assert_eq!(r.code, Some(2));
    assert!(
        r.err.contains("--with W9: there is no such instrument"),
        "{}",
        r.err
    );
}

#[test]
fn a_chain_without_meter_or_transmitter() {
    let dir = folder(&[("a.downlead", GOOD), ("b.downlead", "let mast = 30 m\n")]);
    let r = run(dir.path(), &["card", "a.downlead"]);
    assert_eq!(r.code, Some(0));
    assert!(r.out.contains("No meter is known"), "{}", r.out);
    let r = run(dir.path(), &["card", "b.downlead"]);
    assert!(r.out.starts_with("No transmit chain"), "{}", r.out);
}

#[test]
fn readings_of_a_chain_on_one_line_find_their_places() {
    let text = "instrument W1 { accuracy 5 % of reading }\n\
        chain c on 145 MHz transmit { transmitter T1 50 W carrier; read 50 W forward, 2026-07-01 with W1 by QY2TEC; \
        protector P1 3 dB ± 0.1 dB; read 25 W forward, 2026-07-01 with W1 by QY2TEC; load L1 }\n";
    let dir = folder(&[("a.downlead", text)]);
    let r = run(dir.path(), &["card", "a.downlead", "--format", "json"]);
    let points = json(&r.out)["cards"][0]["points"].clone();
    let reads: Vec<(&str, f64)> = points
        .as_array()
        .unwrap()
        .iter()
        .filter_map(|p| Some((p["at"].as_str()?, p["read"][0]["read_w"].as_f64()?)))
        .collect();
    assert_eq!(
        reads,
        [("after T1", 50.0), ("before L1", 25.0)],
        "{}",
        r.err
    );
}

/// A point without a reading expects the forward power as far off as a reading there would: with a
/// strong standing wave the net power is known far less well.
#[test]
fn a_point_expects_the_forward_power_with_its_own_uncertainty() {
    let chain = |read: &str| {
        format!(
            "instrument W1 {{ accuracy 5 % of reading }}\nchain c on 145 MHz {{\n    transmitter 25 W ± 5 % carrier\n    run 10 m of rg-213, at 15 °C\n{read}    antenna {{ gain 2 dBi; swr 3 ± 1 }}\n}}\n"
        )
    };
    let card = |text: &str| {
        let dir = folder(&[("c.downlead", text)]);
        let out = run(
            dir.path(),
            &["card", "c.downlead", "--with", "W1", "--format", "json"],
        )
        .out;
        json(&out)["cards"][0]["points"].as_array().unwrap().clone()
    };
    let at = |points: &[Value]| {
        let p = points.iter().find(|p| p["at"] == "before antenna");
        p.unwrap()["uncertainty_db"].as_f64().unwrap()
    };
    let due = at(&card(&chain(
        "    read 22 W forward, 2026-07-04 with W1 by QY2TEC\n",
    )));
    let free = at(&card(&chain("")));
    assert!((due - free).abs() < 0.02, "{due} {free}");
    // 5 % and 5 % as rectangular half-widths make 0.35 dB (k = 2), and the forward power after a
    // line of 50 ohm has nothing of the antenna
    assert!(free < 0.5, "{free}");
}
