//! The sheets of exposure and links from the outside: what cannot be judged stays on them.

use serde_json::Value;

use crate::{folder, run};

/// A station with one spot, under a limit of a confidence.
fn hill(watts: &str, confidence: &str, spot: &str) -> String {
    format!(
        "\
rules order \"the office's order\" {{
    dated 2026-01-15
    reflection 1.6
    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7.1\", confidence {confidence}
}}
station hill {{
    under order
    alone, \"walked down by QY4TRA 2026-07-04\"
    spot gate 5 m from A1, public
    {spot}
    transmitter TX1 {watts} ± 5 % carrier, fm
    antenna A1 5.2 dBi ± 0.5 dB, height 26 m agl, size 2.7 m
    chain out on 146.9137 MHz {{
        TX1
        A1
    }}
}}
"
    )
}

const BAD: &str = "spot porch 5 out, 2 m agl, public";

#[test]
fn a_spot_with_an_error_is_on_every_sheet() {
    let dir = folder(&[("a.downlead", &hill("32 W", "high", BAD))]);
    for (format, words) in [
        ("text", "not judged: the line has an error"),
        ("markdown", "not judged: the line has an error"),
        ("html", "not judged: the line has an error"),
        ("csv", "porch"),
    ] {
        let r = run(
            dir.path(),
            &["report", "a.downlead", "--exposure", "--format", format],
        );
        assert!(
            r.out.contains(words) && r.out.contains("porch"),
            "{format}: {}",
            r.out
        );
    }
    let r = run(dir.path(), &["report", "a.downlead", "--format", "json"]);
    let json: Value = serde_json::from_str(&r.out).expect("JSON");
    let open = &json["stations"][0]["exposure"]["not_judged"][0];
    assert_eq!(
        (&open["name"], &open["why"]),
        (&"porch".into(), &"the line has an error".into())
    );
    // the first page of the plain report says it too, and so does the count of `check`
    let r = run(dir.path(), &["report", "a.downlead"]);
    assert!(r.out.contains("spot porch"), "{}", r.out);
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert!(r.out.contains("exposure at 1 spot not judged"), "{}", r.out);
}

#[test]
fn a_hop_with_an_error_is_on_every_sheet() {
    let text = "station hill {\n    chain talk on 145.3 MHz transmit {\n        transmitter 25 W carrier, fm\n        antenna 4.5 dBi ± 0.5 dB\n    }\n}\nlink l {\n    hop talk of hill to hear car\n}\n";
    let dir = folder(&[("a.downlead", text)]);
    for format in ["text", "markdown", "html", "csv", "json"] {
        let r = run(
            dir.path(),
            &["report", "a.downlead", "--link", "--format", format],
        );
        let both = ["talk of hill to hear car", "the line has an error"];
        assert!(
            both.iter().all(|w| r.out.contains(w)),
            "{format}: {}",
            r.out
        );
    }
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert!(r.out.contains("1 hop not judged"), "{}", r.out);
}

#[test]
fn one_sheet_is_printed_at_a_time() {
    let dir = folder(&[("a.downlead", &hill("32 W", "high", ""))]);
    for two in [
        ["--exposure", "--link"],
        ["--site", "--link"],
        ["--exposure", "--site"],
    ] {
        let r = run(dir.path(), &["report", "a.downlead", two[0], two[1]]);
        assert_eq!(r.code, Some(2), "{two:?}");
        assert!(r.err.contains("cannot be used with"), "{two:?}: {}", r.err);
    }
}

#[test]
fn a_limit_of_low_confidence_fails_no_difference() {
    // 5.2 dBi in 5 m with 2.56: 2 W/m2 is reached by 74 W
    for (confidence, code) in [("high", 1), ("medium", 1), ("low", 0)] {
        let dir = folder(&[
            ("old.downlead", &hill("32 W", confidence, "")),
            ("new.downlead", &hill("200 W", confidence, "")),
        ]);
        let r = run(dir.path(), &["diff", "old.downlead", "new.downlead"]);
        assert!(r.out.contains("NOT MET"), "{confidence}: {}", r.out);
        assert_eq!(r.code, Some(code), "{confidence}: {}{}", r.out, r.err);
    }
}

#[test]
fn a_spot_that_can_no_longer_be_read_is_worse() {
    let was = hill("32 W", "high", "spot porch 5 m from A1, public");
    let dir = folder(&[
        ("old.downlead", &was),
        (
            "new.downlead",
            &was.replace("porch 5 m from", "porch 5 from"),
        ),
    ]);
    let r = run(dir.path(), &["diff", "old.downlead", "new.downlead"]);
    assert!(r.out.contains("cannot judge"), "{}", r.out);
    assert!(!r.out.contains("not there"), "{}", r.out);
    assert_eq!(r.code, Some(1), "{}", r.err);
}
