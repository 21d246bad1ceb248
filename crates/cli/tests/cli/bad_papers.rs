//! Wrong lines of licences, rules, variants and forms: each is named with its code and place, and the
//! rest of the file is computed as before, in every table and paper.

use std::process::Command;

use serde_json::Value;

use crate::{folder, run};

/// A station whose 2 m chain is to be computed whatever follows it.
const STATION: &str = r#"band 2m 146.9137 MHz
station hill {
    under own
    transmitter TX1 18 W ± 5 % carrier, fm
    run M1 46 m of half-inch-foam
    antenna A1 5.2 dBi ± 0.5 dB
    chain out on 2m transmit { TX1; M1; A1 }
}
licence own {
    dated 2026-01-01
    limit 30 W erp carrier on 2m, "clause 4"
}
"#;

/// A wrong text after the station, its code, and what is said of it.
const ROWS: &[(&str, &str, &str)] = &[
    (
        "rules x { limit 30 W on 2m, \"1\", confidence high }",
        "rule-without-quantity",
        "which power",
    ),
    (
        "rules x { limit 30 W erp on 2m, \"1\" }",
        "rule-without-confidence",
        "How sure",
    ),
    (
        "rules x { limit 30 W erp on 2m, instead of \"9.9\", \"3.9\", confidence high }",
        "unknown-citation",
        "cited \"9.9\"",
    ),
    (
        "rules x { limit erp on 2m, \"1\", confidence high { haat to 300 m 60 W; haat above 400 m 30 W } }",
        "rule-steps",
        "nothing is said between",
    ),
    (
        "rules x { limit 50 W * (7 m / frequency)^2 erp on 2m, \"1\", confidence high }",
        "rule-law",
        "",
    ),
    (
        "rules x { limit 30 W erp on 2m, class novice, \"1\", confidence high }",
        "unknown-in-rules",
        "no class",
    ),
    (
        "rules x { limit 30 W erp on 2m, \"1\", confidence high { passes 40 W at 146.9 MHz } }",
        "rule-example",
        "",
    ),
    (
        "station far { under other; transmitter TX1 5 W carrier, fm }",
        "unknown-rules",
        "other",
    ),
    (
        "rules f { field \"ERP\" erp in dBd }",
        "form-unit",
        "no unit of that",
    ),
    (
        "variant v of hil { TX1 9 W ± 5 % }",
        "variant-of-nothing",
        "hil",
    ),
    (
        "variant v of hill { TX1 9 W ± 5 %; TX1 8 W ± 5 % }",
        "variant-twice",
        "",
    ),
    (
        "variant v of hill { limit 40 W erp }",
        "variant-not-a-figure",
        "",
    ),
    (
        "variant v of hill { TX1 18 W ± 5 % }",
        "variant-changes-nothing",
        "",
    ),
    (
        "variant v of hill { TX1 9 W }",
        "variant-drops-uncertainty",
        "no uncertainty",
    ),
    ("station hill { }", "duplicate-name", "hill"),
];

#[test]
fn each_wrong_row_is_named_and_the_rest_is_computed() {
    for (wrong, code, said) in ROWS {
        let dir = folder(&[("a.downlead", &format!("{STATION}{wrong}\n"))]);
        let check = run(dir.path(), &["check", "--format", "json", "a.downlead"]);
        let all: Value =
            serde_json::from_str(&check.out).unwrap_or_else(|e| panic!("{wrong}: {e}"));
        let found = all["diagnostics"]
            .as_array()
            .unwrap()
            .iter()
            .find(|d| d["code"] == *code);
        let found = found.unwrap_or_else(|| panic!("{wrong}: {}", check.out));
        let words = format!("{} {}", found["message"], found["help"]).replace("\\\"", "\"");
        assert!(words.contains(said), "{wrong}: {words}");
        // on the wrong line, which is the last; of a name given twice it may be either
        let lines = STATION.lines().count() as u64 + 1;
        assert!(
            found["line"] == lines || *code == "duplicate-name",
            "{wrong}: {found}"
        );
        let rows = run(dir.path(), &["overview", "--format", "csv", "a.downlead"]).out;
        assert!(rows.contains(",hill,out,2m,146913700,"), "{wrong}: {rows}");
        for paper in ["--sheet", "--materials"] {
            let r = run(
                dir.path(),
                &["report", paper, "--format", "markdown", "a.downlead"],
            );
            assert!(
                r.out.contains("half-inch-foam") || r.out.contains("146.9137 MHz"),
                "{wrong} {paper}: {}",
                r.out
            );
            assert!(
                r.code == Some(0) || r.code == Some(1),
                "{wrong} {paper}: {}",
                r.err
            );
        }
    }
}

/// Two stations of one tag in two files are two; in one file the second has an error, and both have rows.
#[test]
fn two_stations_of_one_tag() {
    let other = STATION.replace("18 W", "9 W");
    let dir = folder(&[("a.downlead", STATION), ("b.downlead", &other)]);
    let sheet = run(
        dir.path(),
        &[
            "report",
            "--sheet",
            "--format",
            "html",
            "a.downlead",
            "b.downlead",
        ],
    );
    assert_eq!(sheet.code, Some(0), "{}", sheet.err);
    assert_eq!(sheet.out.matches("<h1").count(), 2);
    assert!(sheet.out.contains("b.downlead:2"), "{}", sheet.out);
    let second = STATION
        .split_once("licence")
        .unwrap()
        .0
        .replace("band 2m 146.9137 MHz\n", "");
    let dir = folder(&[("a.downlead", &format!("{STATION}{second}"))]);
    let r = run(dir.path(), &["overview", "--format", "jsonl", "a.downlead"]);
    assert_eq!(r.code, Some(1), "{}", r.err);
    assert!(
        r.out.lines().all(|l| l.contains("duplicate-name")),
        "{}",
        r.out
    );
    let materials = run(dir.path(), &["report", "--materials", "a.downlead"]);
    assert_eq!(materials.code, Some(1));
    assert!(
        materials.err.contains("duplicate-name"),
        "{}",
        materials.err
    );
}

/// A file with the marks of a merge that is not decided: a row that says so, papers that say it has
/// errors, and the revision of what was committed.
#[test]
fn a_half_merged_index() {
    let dir = folder(&[("a.downlead", STATION)]);
    let git = |args: &[&str]| {
        let out = Command::new("git")
            .args(["-c", "commit.gpgSign=false", "-c", "core.autocrlf=false"])
            .args([
                "-c",
                "user.name=QY2TEC",
                "-c",
                "user.email=qy2tec@example.org",
            ])
            .args(args)
            .current_dir(dir.path())
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .output()
            .expect("git is there");
        out.status.success()
    };
    let put = |watts: &str| {
        std::fs::write(
            dir.path().join("a.downlead"),
            STATION.replace("18 W", watts),
        )
        .unwrap();
        git(&["commit", "-q", "-a", "-m", watts])
    };
    assert!(
        git(&["init", "-q", "-b", "main"])
            && git(&["add", "-A"])
            && git(&["commit", "-q", "-m", "x"])
    );
    assert!(git(&["checkout", "-q", "-b", "other"]) && put("20 W"));
    assert!(git(&["checkout", "-q", "main"]) && put("22 W"));
    assert!(!git(&["merge", "-q", "other"]), "a conflict was due");
    let rows = run(dir.path(), &["overview", "--format", "csv", "a.downlead"]);
    assert_eq!(rows.code, Some(1));
    assert!(rows.out.contains("a.downlead,"), "{}", rows.out);
    let diff = run(dir.path(), &["diff", "--git", "HEAD"]);
    assert_eq!(diff.code, Some(2));
    assert!(
        diff.err.contains("in the middle of a merge"),
        "{}",
        diff.err
    );
    let sheet = run(dir.path(), &["report", "--sheet", "a.downlead"]);
    assert_eq!(sheet.code, Some(1));
    assert!(
        sheet.out.contains("The text has") && sheet.out.contains("changed since revision"),
        "{}",
        sheet.out
    );
}

#[test]
fn papers_of_nothing_and_of_what_is_not_there() {
    let dir = folder(&[("let.downlead", "let a = 3 m\n"), ("empty/x.txt", "")]);
    for paper in [&["--sheet"][..], &["--materials"], &["--coordination", "f"]] {
        let of = |path: &str| {
            let mut all = vec!["report"];
            all.extend(paper);
            all.push(path);
            run(dir.path(), &all)
        };
        let missing = of("none.downlead");
        assert_eq!(missing.code, Some(2), "{}", missing.out);
        assert!(missing.err.contains("there is no such file") && missing.out.is_empty());
        assert_eq!(of("empty").code, Some(2));
        let r = of("let.downlead");
        let words = format!("{}{}", r.out, r.err);
        assert!(
            words.contains("No station") || words.contains("see no form"),
            "{words}"
        );
    }
    let both = run(
        dir.path(),
        &["report", "--sheet", "--materials", "let.downlead"],
    );
    assert_eq!(both.code, Some(2));
}
