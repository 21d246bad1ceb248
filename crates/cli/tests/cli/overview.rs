//! `overview`: one row a station and band.

use serde_json::Value;

use crate::{BAD, GOOD, examples, folder, run};

fn rows(dir: &std::path::Path, args: &[&str]) -> Vec<Value> {
    let mut all = vec!["overview", "--format", "jsonl"];
    all.extend(args);
    let r = run(dir, &all);
    r.out
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .collect()
}

/// Figures of the example's independent script (`expected.json`).
#[test]
fn the_worst_come_first_with_their_ages() {
    let all = rows(&examples(), &["pellgarrow", "--as-of", "2026-07-04"]);
    assert_eq!(all.len(), 8);
    let first = &all[0];
    assert_eq!(first["verdict"], "not-met");
    assert_eq!(first["file"], "pellgarrow/rev3.downlead");
    assert_eq!(
        (&first["station"], &first["band"]),
        (&"pellgarrow".into(), &"70cm".into())
    );
    let near =
        |v: &Value, want: f64| assert!((v.as_f64().unwrap() - want).abs() < 0.02, "{v} {want}");
    near(&first["erp_w"], 34.23);
    near(&first["margin_db"], -2.33);
    near(&first["uncertainty_db"], 0.78);
    assert_eq!(first["cite"], "TSO 14-0093 clause 5");
    // 2025-03-08 to 2026-07-04: 365 + 118 days
    assert_eq!(
        (&first["newest_reading"], &first["age_days"]),
        (&"2025-03-08".into(), &483.into())
    );
    let words: Vec<&str> = all.iter().map(|r| r["verdict"].as_str().unwrap()).collect();
    let rank = |w: &&str| {
        ["error", "not-met", "cannot-tell", "no-limit", "met"]
            .iter()
            .position(|x| x == w)
    };
    assert!(words.is_sorted_by_key(rank), "{words:?}");
    let filtered = |args: &[&str]| {
        let mut all = vec!["pellgarrow", "--as-of", "2026-07-04"];
        all.extend(args);
        rows(&examples(), &all).len()
    };
    assert_eq!(filtered(&["--verdict", "not-met"]), 1);
    assert_eq!(filtered(&["--band", "2m"]), 4);
    assert_eq!(filtered(&["--margin-below", "0dB"]), 2);
    // strictly older
    assert_eq!(
        filtered(&["--older-than", "483d", "--verdict", "not-met"]),
        0
    );
    assert_eq!(
        filtered(&["--older-than", "482d", "--verdict", "not-met"]),
        1
    );
    assert_eq!(filtered(&["--has-code", "limit-not-met"]), 2);
}

#[test]
fn broken_files_are_rows() {
    let dir = folder(&[
        ("a.downlead", GOOD),
        ("b.downlead", BAD),
        ("c.downlead", "station x {\n"),
        ("d.downlead", "let a = 3 m\n"),
    ]);
    std::fs::write(dir.path().join("e.downlead"), b"let caf\xe9 = 1 m\n").unwrap();
    let r = run(dir.path(), &["overview", "--format", "csv"]);
    assert_eq!(r.code, Some(1), "{}", r.err);
    let lines: Vec<&str> = r.out.lines().collect();
    assert!(lines[0].starts_with("file,line,station,chain,band,frequency_hz,erp_w,limit_w,"));
    assert_eq!(lines.len(), 5, "{}", r.out);
    for name in ["b", "c", "e"] {
        let row = lines
            .iter()
            .find(|l| l.starts_with(&format!("{name}.downlead,")))
            .unwrap();
        assert!(row.contains(",error,"), "{row}");
    }
    assert!(
        lines
            .iter()
            .any(|l| l.starts_with("a.downlead,1,,what-if,") && l.contains(",no-limit,"))
    );
    let r = run(dir.path(), &["overview", "a.downlead"]);
    assert_eq!(r.code, Some(0));
    assert!(r.out.contains("No date stands in the files"), "{}", r.out);
    let page = run(dir.path(), &["overview", "--format", "html"]).out;
    assert!(
        page.contains("<table") && page.contains("b.downlead:1"),
        "{page}"
    );
}

#[test]
fn wrong_use_ends_with_2() {
    let dir = folder(&[("a.downlead", GOOD), ("empty/x.txt", "")]);
    for (args, said) in [
        (&["none.downlead"][..], "there is no such file"),
        (&["empty"], "no file here ends in"),
        (&["--as-of", "soon"], "it is no date"),
        (&["--older-than", "old"], "no span of time"),
        (&["--margin-below", "x"], "no figure in dB"),
    ] {
        let mut all = vec!["overview"];
        all.extend(args);
        let r = run(dir.path(), &all);
        assert_eq!(r.code, Some(2), "{args:?}");
        assert!(r.err.contains(said), "{args:?}: {}", r.err);
        assert_eq!(r.out, "", "{args:?}");
    }
}
