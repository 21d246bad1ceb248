//! Licences and rules from the outside: the report, its JSON, `explain` and the exit code of `check`.

use serde_json::Value;

use crate::{examples, folder, run};

const FILE: &str = "licence/hill.downlead";

#[test]
fn the_report_says_what_each_clause_says() {
    let r = run(&examples(), &["report", FILE]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    // the conclusion comes first
    let first: Vec<&str> = r.out.lines().take(8).collect();
    assert!(
        first
            .iter()
            .any(|l| l.contains("met") && l.contains("clause 4")),
        "{}",
        r.out
    );
    for words in [
        "Licences and rules, clause by clause",
        "height of A1: ✓ met",
        "identify every 15 min",
        "notify the office before first use",
        "the current text of the rule decides",
    ] {
        assert!(r.out.contains(words), "{words}\n{}", r.out);
    }
    let html = run(&examples(), &["report", FILE, "--format", "html"]);
    assert!(html.out.contains("the current text of the rule decides"));
}

#[test]
fn the_json_holds_clauses_and_site() {
    let r = run(&examples(), &["report", FILE, "--format", "json"]);
    let v: Value = serde_json::from_str(&r.out).expect("JSON");
    let station = &v["stations"][0];
    let rules = station["chains"][0]["bands"][0]["rules"]
        .as_array()
        .expect("rules");
    assert!(rules.iter().all(|r| r["verdict"] == "met"), "{rules:#?}");
    assert!(
        rules
            .iter()
            .any(|r| r["cite"] == "clause 4" && r["limit_w"] == 30.0)
    );
    assert_eq!(station["rules"]["duties"][0]["reached"], true);
    assert_eq!(station["rules"]["fixed"][0]["verdict"], "met");
    // a station under no rules has no such key
    let r = run(
        &examples(),
        &["report", "pellgarrow/rev4.downlead", "--format", "json"],
    );
    assert!(!r.out.contains("\"rules\""));
}

#[test]
fn a_verdict_is_explained_at_its_clause() {
    let text = std::fs::read_to_string(examples().join("licence/papers.downlead")).expect("it");
    let line = text
        .lines()
        .position(|l| l.contains("\"clause 4\""))
        .expect("it")
        + 1;
    let hill = std::fs::read_to_string(examples().join(FILE)).expect("it");
    let under = hill
        .lines()
        .position(|l| l.contains("under tso"))
        .expect("it")
        + 1;
    let r = run(&examples(), &["explain", &format!("{FILE}:{under}")]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    for words in [
        "verdict by tso-14-0093 clause 4",
        "clause 5",
        "met where the limit",
    ] {
        assert!(r.out.contains(words), "{words}\n{}", r.out);
    }
    assert!(line > 1);
}

#[test]
fn a_clause_not_met_ends_with_1() {
    let text = "licence l { limit 10 W erp carrier, \"clause 4\" }\nstation s {\n    under l\n    chain c on 146.9 MHz {\n        transmitter 20 W carrier, fm\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n";
    let dir = folder(&[("a.downlead", text)]);
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.out.contains("limit-not-met") || r.err.contains("limit-not-met"));
}

/// The first line of `check` counts clauses as it counts limits; a chain that no clause bears on is
/// not among those that are met.
#[test]
fn the_conclusion_of_check_counts_clauses() {
    let text = |at: &str| {
        format!(
            "licence l {{ limit 10 W erp carrier on 144 MHz to 146.95 MHz, \"clause 4\" }}\nstation s {{\n    under l\n    chain c on {at} {{\n        transmitter 20 W carrier, fm\n        pad 0 dB\n        antenna 2.15 dBi\n    }}\n}}\n"
        )
    };
    for (at, words) in [
        ("146.9 MHz", "a.downlead: 1 limit not met; "),
        ("433 MHz", "a.downlead: 1 chain under no rule; "),
    ] {
        let dir = folder(&[("a.downlead", &text(at))]);
        let r = run(dir.path(), &["check", "a.downlead"]);
        assert!(r.out.starts_with(words), "{at}: {}", r.out);
    }
}

const UNDER: &str = "licence l { limit 30 W erp carrier, \"clause 4\" }\nstation s {\n    under l\n    transmitter TX1 20 W ± 5 % carrier, fm\n    antenna A1 2.15 dBi ± 0.5 dB\n\n    chain c on 146.9 MHz transmit {\n        TX1\n        pad 0.5 dB\n        A1\n        limit 60 W erp, \"sheet\"\n    }\n}\n";

/// The nearest of limit and clause decides how far a figure may go.
#[test]
fn solve_goes_by_the_clauses_too() {
    let dir = folder(&[("a.downlead", UNDER)]);
    let r = run(dir.path(), &["solve", "a.downlead", "--vary", "TX1.power"]);
    assert!(
        r.out.contains("binding                 l clause 4"),
        "{}",
        r.out
    );
    // 30 W ERP over a half-wave dipole of 2.15 dBi after 0.5 dB
    assert!(
        r.out.contains("just reached            at most 33.60 W"),
        "{}",
        r.out
    );
    let alone = UNDER.replace("        limit 60 W erp, \"sheet\"\n", "");
    let dir = folder(&[("a.downlead", &alone)]);
    let r = run(dir.path(), &["solve", "a.downlead", "--vary", "TX1.power"]);
    assert!(r.out.contains("at most 33.60 W"), "{} {}", r.out, r.err);
}

/// A clause that is no longer met is something that got worse, as a limit is.
#[test]
fn diff_goes_by_the_clauses_too() {
    let more = UNDER.replace("TX1 20 W", "TX1 40 W");
    let gone = more.replace("    under l\n", "");
    let dir = folder(&[
        ("a.downlead", UNDER),
        ("b.downlead", &more),
        ("c.downlead", &gone),
    ]);
    let r = run(dir.path(), &["diff", "a.downlead", "b.downlead"]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.out.contains("l clause 4: met → not met"), "{}", r.out);
    let r = run(dir.path(), &["diff", "b.downlead", "c.downlead"]);
    assert!(r.out.contains("l clause 4"), "{}", r.out);
}

/// An overview says how a station stands under its licence.
#[test]
fn an_overview_goes_by_the_clauses_too() {
    let more = UNDER.replace("TX1 20 W", "TX1 50 W");
    let other = UNDER.replace("erp carrier,", "erp carrier on 430 MHz to 440 MHz,");
    let dir = folder(&[("b.downlead", &more), ("c.downlead", &other)]);
    let r = run(dir.path(), &["overview", "--format", "csv", "b.downlead"]);
    assert!(r.out.contains("not-met"), "{}", r.out);
    assert!(r.out.contains("l clause 4"), "{}", r.out);
    let r = run(dir.path(), &["overview", "--format", "csv", "c.downlead"]);
    assert!(r.out.contains("no-rule"), "{}", r.out);
}

/// A clause that spans several allocations is met only where the service is allocated, in every output.
#[test]
fn met_if_allocated_is_no_met_in_any_output() {
    let text = "station s {\n    under us-amateur, class general\n    chain c on 120 MHz {\n        transmitter 100 W pep\n        pad 0 dB\n        antenna 2.15 dBi\n    }\n}\n";
    let dir = folder(&[("a.downlead", text)]);
    let of = |args: &[&str]| run(dir.path(), args).out;
    assert!(of(&["check", "a.downlead"]).starts_with("a.downlead: 1 limit met if allocated; "));
    for format in ["text", "markdown", "html"] {
        let out = of(&["report", "a.downlead", "--format", format]);
        assert!(out.contains("met, if allocated"), "{format}\n{out}");
        assert!(!out.contains("✓ met"), "{format}\n{out}");
    }
    let v: Value =
        serde_json::from_str(&of(&["report", "a.downlead", "--format", "json"])).expect("JSON");
    let rule = &v["stations"][0]["chains"][0]["bands"][0]["rules"][0];
    assert_eq!(rule["verdict"], "met-if-allocated");
    assert!(of(&["overview", "a.downlead"]).contains("met, if allocated"));
    assert!(of(&["explain", "a.downlead:2"]).contains("met, if allocated"));
}
