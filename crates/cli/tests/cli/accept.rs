//! `accept`: counted by `check`, listed in its JSON, suppressed in SARIF.

use serde_json::Value;

use crate::{folder, run};

const HILL: &str = "band 2m 145.3 MHz
station hill {
    protector SP1 0.10 dB ± 0.05 dB
    accept part-unused \"spare, kept in the hut\" until 2027-06-30
    chain out on 2m {
        transmitter 25 W carrier
        antenna 4.5 dBi
    }
}
";

#[test]
fn accepted_findings_are_counted_and_listed() {
    let dir = folder(&[("a.downlead", HILL)]);
    let r = run(dir.path(), &["check", "--strict", "a.downlead"]);
    assert_eq!(
        (r.code, r.out.as_str()),
        (
            Some(0),
            "a.downlead: 1 chain, no limit and no reading; nothing to correct, 1 accepted\n"
        )
    );
    let r = run(dir.path(), &["check", "--notes", "a.downlead"]);
    assert!(
        r.out.contains("a.downlead:3:15 accepted until 2027-06-30, \"spare, kept in the hut\": part-unused: `SP1` is on no chain"),
        "{}",
        r.out
    );
    let r = run(dir.path(), &["check", "--format", "json", "a.downlead"]);
    let v: Value = serde_json::from_str(&r.out).expect("JSON");
    assert_eq!(v["warnings"], 0);
    let a = &v["accepted"][0];
    assert_eq!((&a["code"], &a["line"]), (&"part-unused".into(), &3.into()));
    let by = &a["acceptance"];
    assert_eq!(
        (&by["reason"], &by["until"], &by["line"]),
        (
            &"spare, kept in the hut".into(),
            &"2027-06-30".into(),
            &4.into()
        )
    );
    let r = run(dir.path(), &["check", "--format", "sarif", "a.downlead"]);
    let v: Value = serde_json::from_str(&r.out).expect("JSON");
    let result = &v["runs"][0]["results"][0];
    assert_eq!(result["ruleId"], "part-unused");
    assert_eq!(result["suppressions"][0]["kind"], "inSource");
}

#[test]
fn a_given_day_ends_an_acceptance() {
    let dir = folder(&[("a.downlead", HILL)]);
    let r = run(
        dir.path(),
        &["check", "--strict", "--as-of", "2027-07-01", "a.downlead"],
    );
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.out.contains("[accept-ended]"), "{}", r.out);
    let r = run(dir.path(), &["check", "--as-of", "soon", "a.downlead"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("2026-07-04"), "{}", r.err);
}

#[test]
fn what_a_person_accepted_is_never_removed_or_renamed_by_fix() {
    let used = HILL.replace("carrier\n", "carrier\n        SP1\n");
    let dir = folder(&[("a.downlead", &used)]);
    let r = run(dir.path(), &["check", "--fix", "a.downlead"]);
    assert!(r.out.contains("[accept-not-needed]"), "{}", r.out);
    let text = std::fs::read_to_string(dir.path().join("a.downlead")).expect("the file");
    assert_eq!(text, used);
    // a code that is not known is named, and no other is written in its place
    let unknown = HILL.replace("accept part-unused", "accept limit-exceeded");
    assert_ne!(unknown, HILL);
    let dir = folder(&[("a.downlead", &unknown)]);
    let r = run(dir.path(), &["check", "--fix", "a.downlead"]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    let text = std::fs::read_to_string(dir.path().join("a.downlead")).expect("the file");
    assert_eq!(text, unknown);
}
