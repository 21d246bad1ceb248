//! Variants beside their stations, from the outside.

use serde_json::Value;

use crate::{examples, folder, run};

const FILE: &str = "variants/proposals.downlead";

const HILL: &str = "\
band 2m 146.9137 MHz
station hill {
    transmitter TX1 25 W ± 5 % carrier, fm
    isolator IS1 0.55 dB ± 0.15 dB
    antenna A1 5.2 dBi ± 0.5 dB
    chain out on 2m { TX1; IS1; A1; limit 30 W erp, \"clause 4\" }
}
";

#[test]
fn every_state_is_judged_by_band_and_clause() {
    let r = run(&examples(), &["compare", FILE]);
    // the new antenna exceeds the licence
    assert_eq!(r.code, Some(1), "{}", r.err);
    assert!(
        r.out
            .contains("over a limit beyond the uncertainty: new-antenna."),
        "{}",
        r.out
    );
    let line = |name: &str| {
        let at = r.out.find("talk-out-2m on 2m").expect("the chain");
        let mut lines = r.out[at..].lines();
        lines
            .find(|l| l.trim_start().starts_with(name))
            .expect("a row")
            .to_owned()
    };
    for (name, words) in [
        ("as it is", ["4.18 dB", "24.7 W", "✓ met", "+0.85 dB"]),
        ("half-inch", ["4.82 dB", "21.3 W", "✓ met", "-0.64 dB"]),
        (
            "new-antenna",
            ["48.7 W", "✗ not met", "-2.10 dB", "+2.95 dB"],
        ),
        (
            "no-isolator",
            ["3.61 dB", "28.1 W", "? cannot tell", "+0.57 dB"],
        ),
    ] {
        for w in words {
            assert!(line(name).contains(w), "{name}: {w}\n{}", r.out);
        }
    }
}

#[test]
fn shared_causes_cancel_in_the_difference() {
    let r = run(&examples(), &["compare", FILE, "--format", "json"]);
    let v: Value = serde_json::from_str(&r.out).expect("JSON");
    assert_eq!(v["schema"], "downlead-compare/1");
    let chain = &v["variants"][0]["chains"][0];
    let u = |x: &Value| x["uncertainty_db"].as_f64().expect("a figure");
    // both cables are of one sheet, whose error is one; the radio, the antenna and the rest stayed
    assert!(u(&chain["radiated"]) < 0.1, "{chain:#}");
    assert!(u(&chain["base"]) > 0.7 && u(&chain["variant"]) > 0.7);
    // a new antenna has an error of its own: 0.5 dB by 0.5 dB, rectangular, k = 2
    let chain = &v["variants"][1]["chains"][0];
    let own = 2.0 * (2.0_f64 * 0.25 / 3.0).sqrt();
    assert!((u(&chain["radiated"]) - own).abs() < 0.02, "{chain:#}");
    assert_eq!(v["not_met"], true);
}

#[test]
fn exit_codes_follow_limits_or_the_station() {
    let over = format!("{}variant more of hill {{ TX1 50 W ± 5 % }}\n", HILL);
    let dir = folder(&[("over.downlead", &over)]);
    assert_eq!(run(dir.path(), &["compare", "over.downlead"]).code, Some(1));
    // the station itself is over: only what is worse than it fails
    let both = over.replace("limit 30 W", "limit 10 W");
    let dir = folder(&[("both.downlead", &both)]);
    assert_eq!(run(dir.path(), &["compare", "both.downlead"]).code, Some(1));
    assert_eq!(
        run(
            dir.path(),
            &["compare", "both.downlead", "--against", "base"]
        )
        .code,
        Some(0)
    );
    // less power meets it
    let less = format!("{HILL}variant less of hill {{ TX1 10 W ± 5 % }}\n");
    let dir = folder(&[("less.downlead", &less)]);
    assert_eq!(run(dir.path(), &["compare", "less.downlead"]).code, Some(0));
}

#[test]
fn a_variant_with_errors_is_not_computed() {
    let wrong = format!("{HILL}variant wrong of hill {{ TX1 10 W ± 5 %; take IS9 }}\n");
    let dir = folder(&[("wrong.downlead", &wrong)]);
    let r = run(dir.path(), &["compare", "wrong.downlead"]);
    assert_eq!(r.code, Some(1));
    assert!(
        r.out.contains("wrong is not computed: it has errors"),
        "{}",
        r.out
    );
    assert!(!r.out.contains("as it is"), "{}", r.out);
    assert!(
        r.out
            .contains("0 variants computed, 1 not; no limit is compared."),
        "{}",
        r.out
    );
    // nor is one left out that cannot be read
    let unread = format!(
        "{HILL}variant load of hill {{ take IS1 }}\nvariant fine of hill {{ TX1 9 W ± 5 % }}\n"
    );
    let dir = folder(&[("unread.downlead", &unread)]);
    let r = run(dir.path(), &["compare", "unread.downlead"]);
    assert_eq!(r.code, Some(1));
    assert!(r.out.contains("load is not computed"), "{}", r.out);
}

#[test]
fn a_limit_that_the_paper_cannot_judge_is_not_left_out() {
    let text = HILL.replace(", \"clause 4\" }", ", \"clause 4\" }\n    under paper")
        + "licence paper { dated 2026-01-01; limit 30 W erp pep above 7 m haat on 2m, \"clause 9\" }\nvariant less of hill { TX1 10 W ± 5 % }\n";
    let dir = folder(&[("hill.downlead", &text)]);
    let r = run(dir.path(), &["compare", "hill.downlead"]);
    assert!(r.out.contains("cannot judge"), "{}{}", r.out, r.err);
}

#[test]
fn a_file_without_variants_and_an_unknown_name_are_trouble() {
    let dir = folder(&[("hill.downlead", HILL)]);
    let r = run(dir.path(), &["compare", "hill.downlead"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("it has no variants"), "{}", r.err);
    let r = run(&examples(), &["compare", FILE, "--variant", "half"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("half-inch, new-antenna"), "{}", r.err);
}

/// A variant that exceeds a limit of exposure is over a limit, as its edited copy is.
#[test]
fn the_exposure_of_a_variant_is_judged() {
    let text = |watts: &str| {
        let station = HILL.replace(
            "    chain out",
            "    under fields\n    alone, \"QY4TRA 2026-07-04\"\n    spot gate 12 m from A1, public\n    chain out",
        );
        let station = station.replace("30 W erp", "3000 W erp");
        format!(
            "rules fields {{\n    reflection 1\n    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7\", confidence high\n}}\n{station}variant loud of hill {{ TX1 {watts} ± 5 % carrier }}\n"
        )
    };
    let of = |watts: &str| {
        let dir = folder(&[("a.downlead", &text(watts))]);
        run(dir.path(), &["compare", "a.downlead", "--format", "json"])
    };
    let quiet = of("30 W");
    assert_eq!(quiet.code, Some(0), "{}{}", quiet.out, quiet.err);
    let loud = of("2500 W");
    assert_eq!(loud.code, Some(1), "{}{}", loud.out, loud.err);
    let v: Value = serde_json::from_str(&loud.out).expect("JSON");
    let spot = &v["variants"][0]["spots"][0];
    assert_eq!(spot["verdict"], serde_json::json!(["met", "not-met"]));
    let [a, b] = [0, 1].map(|i| spot["sum"][i].as_f64().expect("a sum"));
    assert!((b / a - 100.0).abs() < 1e-6, "{spot}");
}

#[test]
fn quiet_prints_the_conclusion_only() {
    let r = run(
        &examples(),
        &["compare", "-q", "variants/proposals.downlead"],
    );
    let lines: Vec<&str> = r.out.lines().filter(|l| !l.is_empty()).collect();
    let all = run(
        &examples(),
        &["compare", "variants/proposals.downlead", "--format", "json"],
    );
    let all: serde_json::Value = serde_json::from_str(&all.out).unwrap();
    let variants = all["variants"].as_array().unwrap().len();
    // how many there are and what exceeds, then a line for each
    assert_eq!(lines.len(), 1 + variants, "{}", r.out);
    assert!(lines[0].contains("variants"), "{}", r.out);
    assert!(!r.out.contains("against the station"), "{}", r.out);
    assert!(lines[1..].iter().all(|l| l.contains(" dB")), "{}", r.out);
}
