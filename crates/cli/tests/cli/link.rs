//! Links from the outside: the report in its formats, and the exit code of `check`.

use serde_json::Value;

use crate::{examples, run};

const FILE: &str = "link/quay.downlead";

fn report(format: &str) -> String {
    let r = run(&examples(), &["report", FILE, "--link", "--format", format]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    r.out
}

#[test]
fn the_report_says_where_the_level_goes() {
    let text = report("text");
    insta::assert_snapshot!("link-text", text);
    for format in ["markdown", "html"] {
        let out = report(format);
        for words in ["by one edge at 26 km", "ducting", "main beam", "met, 11.2"] {
            assert!(out.contains(words), "{format}: {words}\n{out}");
        }
    }
    // the picture has the ground, the first Fresnel zone and the line between the antennas; one a hop
    let html = report("html");
    assert_eq!(html.matches("<polygon").count(), 4);
    assert_eq!(html.matches("stroke-dasharray").count(), 2);
    assert!(!html.contains("NaN") && !html.contains("<script"));
}

#[test]
fn programs_get_the_numbers() {
    let value: Value = serde_json::from_str(&report("json")).expect("JSON");
    assert_eq!(value["schema"], "downlead-links/1");
    let hop = &value["links"][0]["hops"][0];
    assert_eq!(hop["verdict"], "met");
    assert!(
        value["links"][0]["left_out"]
            .as_array()
            .is_some_and(|l| l.len() > 3)
    );
    let left = hop["judged"]["left_db"].as_f64().expect("a number");
    let csv = report("csv");
    let mut rows = csv::Reader::from_reader(csv.as_bytes());
    let column = rows
        .headers()
        .expect("heads")
        .iter()
        .position(|h| h == "left_db")
        .expect("there");
    let first = rows.records().next().expect("a row").expect("read");
    assert_eq!(first[column].parse::<f64>().ok(), Some(left));
}

#[test]
fn no_link_is_said() {
    let r = run(&examples(), &["report", "quick.downlead", "--link"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(r.out.contains("No link in these files"), "{}", r.out);
}

/// A hop that cannot tell has no finding; with `--strict` it fails all the same.
#[test]
fn a_hop_that_is_left_open_fails_a_strict_check() {
    let text = "station hill {
    position 51.5° N 1.2° W, wgs84
    ground 120 m amsl
    transmitter TX1 25 W ± 10 % carrier, fm
    antenna A1 4.5 dBi ± 0.5 dB, swr 1.2, height 21 m agl
    chain talk on 145.3 MHz transmit { TX1; A1 }
}
station car {
    receiver RX1 -117 dBm ± 2 dB for 12 dB sinad, noise figure 8 dB
    antenna CA 2.15 dBi ± 1 dB, swr 1.2, height 1.5 m agl
    chain hear on 145.3 MHz receive { CA; RX1 }
}
link hill-to-car {
    hop talk of hill to hear of car
    distance 10 km
    site-noise rural
    need 12 dB sinad, 90 % of places, spread 8 dB
}
";
    let dir = crate::folder(&[("a.downlead", text)]);
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert_eq!(r.code, Some(0), "{}", r.out);
    assert!(r.out.contains("1 hop cannot tell"), "{}", r.out);
    for format in ["text", "json"] {
        let r = run(
            dir.path(),
            &["check", "--strict", "--format", format, "a.downlead"],
        );
        assert_eq!(r.code, Some(1), "{format}: {}", r.out);
    }
}
