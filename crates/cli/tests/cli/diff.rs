//! `diff` and `log`: what changed on the air, over files, folders and real repositories.

use std::path::Path;
use std::process::Command;

use serde_json::Value;

use crate::{examples, folder, run};

const CABLES: &str = "cable foam {\n    impedance 50 ohm\n    velocity 0.88\n    loss 0.12 dB/100 m/sqrt(MHz) + 0.0012 dB/100 m/MHz\n    accuracy 4 % k 2\n    source \"club sheet\"\n}\n";
const HILL: &str = "\
use \"cables.downlead\"
band 2m 146 MHz
station hill \"Pellgarrow hill\" {
    position 49.3333° S 123.1667° W, wgs84
    transmitter TX1 32 W ± 5 % carrier, fm, keyed 100 %
    isolator IS1 0.55 dB ± 0.15 dB, sheet \"IS-2 p. 3\"
    run M1 46 m of foam, at 10 °C
    antenna A1 {
        gain 5.2 dBi ± 0.5 dB, sheet \"AN-7 p. 2\"
        height 26 m agl
    }
    chain out on 2m transmit {
        TX1
        IS1
        M1
        A1
        limit 60 W erp, \"clause 4\"
    }
}
";

fn two(old: &str, new: &str) -> tempfile::TempDir {
    folder(&[
        ("old/hill.downlead", old),
        ("old/cables.downlead", CABLES),
        ("new/hill.downlead", new),
        ("new/cables.downlead", CABLES),
    ])
}

fn between(old: &str, new: &str, more: &[&str]) -> crate::Run {
    let dir = two(old, new);
    let mut args = vec!["diff", "old/hill.downlead", "new/hill.downlead"];
    args.extend(more);
    run(dir.path(), &args)
}

#[test]
fn layout_units_order_and_comments_say_nothing() {
    let news = [
        HILL.to_owned(),
        format!("// a comment\n\n{HILL}"),
        HILL.replace("46 m", "4600 cm"),
        HILL.replace("46 m", "150.91863517060367 ft"),
        HILL.replace("0.55 dB ± 0.15 dB", "0.550 dB ± 0.150 dB"),
        HILL.replace("        height 26 m agl\n", "")
            .replace("        gain", "        height 2600 cm agl\n        gain"),
        HILL.replace(
            "    isolator IS1 0.55 dB ± 0.15 dB, sheet \"IS-2 p. 3\"\n",
            "",
        )
        .replace(
            "    antenna",
            "    isolator IS1 0.55 dB ± 0.15 dB,   sheet \"IS-2 p. 3\" // here\n    antenna",
        ),
        HILL.replace("TX1\n        IS1\n        M1", "TX1; IS1; M1"),
        HILL.replace("\"Pellgarrow hill\"", "\"Pellgarrow, the hill\""),
        HILL.replace("32 W", "0.032 kW"),
    ];
    for new in news {
        for format in ["text", "markdown", "github"] {
            for (a, b) in [(HILL, new.as_str()), (new.as_str(), HILL)] {
                let r = between(a, b, &["--format", format]);
                let said = (r.code, r.out.as_str(), r.err.as_str());
                assert_eq!(said, (Some(0), "", ""), "{format}: {b}");
            }
        }
        // all that may be listed is a title or a comment
        let r = between(HILL, &new, &["--format", "json"]);
        let d: Value = serde_json::from_str(&r.out).unwrap();
        assert_eq!(d["stations"].as_array().unwrap().len(), 0, "{}", r.out);
        assert_eq!(d["definitions"].as_array().unwrap().len(), 0, "{}", r.out);
    }
}

#[test]
fn a_change_within_the_uncertainty_is_one_line_and_no_comment() {
    // 0.2 dB of gain, where each of the two gains is uncertain by ± 0.5 dB
    let new = HILL.replace("gain 5.2", "gain 5.4");
    let r = between(HILL, &new, &[]);
    assert_eq!(r.code, Some(0), "{}", r.out);
    assert_eq!(r.out.lines().count(), 1, "{}", r.out);
    assert!(r.out.contains("hill (A1)"), "{}", r.out);
    assert_eq!(between(HILL, &new, &["--format", "markdown"]).out, "");
    let r = between(HILL, &new, &["--all"]);
    assert!(r.out.contains("within it"), "{}", r.out);
    // the same antenna, and power that moved by more than its own uncertainty
    let r = between(
        HILL,
        &HILL.replace("32 W", "20 W"),
        &["--format", "markdown"],
    );
    assert!(r.out.contains("-2.04 dB ± 0.35 dB"), "{}", r.out);
}

#[test]
fn what_got_worse_ends_with_1() {
    let worse = HILL.replace("32 W", "50 W");
    let r = between(HILL, &worse, &[]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.out.contains("met → not met"), "{}", r.out);
    assert_eq!(between(&worse, HILL, &[]).code, Some(0));
    assert_eq!(between(&worse, HILL, &["--strict"]).code, Some(1));
    // a reading that contradicts
    let read = |w: &str| {
        HILL.replace(
            "        M1\n",
            &format!("        read {w} W ± 3 % forward, 2026-07-04\n        M1\n"),
        )
    };
    let r = between(&read("28.2"), &read("14.0"), &[]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    // what can no longer be computed
    let r = between(HILL, &HILL.replace("46 m of foam", "46 m of fome"), &[]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    // a lost ± only makes a verdict surer: evidence
    let r = between(
        HILL,
        &HILL.replace("32 W ± 5 %", "32 W"),
        &["--format", "json"],
    );
    let d: Value = serde_json::from_str(&r.out).unwrap();
    assert_eq!(d["stations"][0]["class"], "evidence", "{}", r.out);
}

#[test]
fn classes_and_what_is_to_be_done_again() {
    let class = |new: &str| {
        let r = between(HILL, new, &["--format", "json"]);
        let d: Value = serde_json::from_str(&r.out).unwrap();
        let s = &d["stations"][0];
        let words = |v: &Value| v.as_str().unwrap_or("").to_owned();
        let redo = s["redo"].as_array().map_or(0, Vec::len);
        (words(&s["class"]), redo)
    };
    let of = |a: &str, b: &str| class(&HILL.replace(a, b));
    assert_eq!(of("32 W", "40 W"), ("footprint-larger".to_owned(), 2));
    assert_eq!(of("32 W", "25 W"), ("footprint-smaller".to_owned(), 1));
    assert_eq!(
        of("26 m agl", "30 m agl"),
        ("footprint-other".to_owned(), 2)
    );
    assert_eq!(
        of("49.3333°", "49.4333°"),
        ("footprint-other".to_owned(), 2)
    );
    assert_eq!(
        of("keyed 100 %", "keyed 50 %"),
        ("footprint-other".to_owned(), 2)
    );
    assert_eq!(of("60 W erp", "58 W erp").0, "paper");
    assert_eq!(of("IS-2 p. 3", "IS-2 p. 4").0, "evidence");
    assert_eq!(of("IS1", "IS7").0, "clerical");
}

/// What the exposure of people rests on is never changed without a word.
#[test]
fn a_change_of_a_spot_or_of_the_site_speaks() {
    let with = HILL.replace(
        "    chain ",
        "    alone, \"QY4TRA 2026-07-04\"\n    spot gate 5 m out, 2 m agl, public\n    chain ",
    );
    let said = |new: &str| {
        let r = between(&with, new, &["--format", "json"]);
        let d: Value = serde_json::from_str(&r.out).unwrap();
        (
            d["stations"][0]["class"].clone(),
            d["stations"][0]["redo"].clone(),
        )
    };
    for (a, b) in [
        ("2 m agl, public", "2 m agl, occupational"),
        ("    spot gate 5 m out, 2 m agl, public\n", ""),
        ("    alone, \"QY4TRA 2026-07-04\"\n", ""),
    ] {
        let (class, redo) = said(&with.replacen(a, b, 1));
        assert_eq!(class, "footprint-other", "{a}");
        assert!(
            redo.as_array()
                .is_some_and(|r| r.contains(&"exposure".into())),
            "{redo}"
        );
    }
}

/// A limit of exposure that is raised, or a power that is, is said at each spot, then and now.
#[test]
fn the_exposure_at_a_spot_is_compared() {
    let with = HILL
        .replace(
            "    chain ",
            "    under fields\n    alone, \"QY4TRA 2026-07-04\"\n    spot gate 12 m from A1, public\n    chain ",
        )
        .replacen(
            "station ",
            "rules fields {\n    reflection 1\n    limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7\", confidence high\n}\n\nstation ",
            1,
        );
    let said = |a: &str, b: &str| {
        let r = between(&with, &with.replacen(a, b, 1), &["--format", "json"]);
        let d: Value = serde_json::from_str(&r.out).unwrap_or_default();
        (
            r.code,
            d["stations"][0]["spots"].clone(),
            d["stations"][0]["class"].clone(),
        )
    };
    let (code, spots, class) = said("limit 2 W/m2", "limit 20 W/m2");
    assert_eq!((code, &class), (Some(0), &"paper".into()));
    let [then, now] = [0, 1].map(|i| spots[0]["sum"][i].as_f64().expect("a sum"));
    assert!((then / now - 10.0).abs() < 1e-9, "{spots}");
    let (code, spots, _) = said("limit 2 W/m2", "limit 0.002 W/m2");
    assert_eq!(code, Some(1));
    assert_eq!(spots[0]["verdict"], serde_json::json!(["met", "not-met"]));
    // layout says nothing
    let (code, spots, _) = said("12 m from A1", "12.0 m from A1");
    assert_eq!((code, spots), (Some(0), Value::Null));
}

/// The published revisions of the example: `worked` figures of an independent script.
#[test]
fn the_demo_station_from_revision_3_to_4() {
    let r = run(
        &examples(),
        &[
            "diff",
            "pellgarrow/rev3.downlead",
            "pellgarrow/rev4.downlead",
            "--format",
            "json",
        ],
    );
    assert_eq!(r.code, Some(0), "{}", r.err);
    let d: Value = serde_json::from_str(&r.out).unwrap();
    let s = &d["stations"][0];
    assert_eq!(
        (&s["name"], &s["class"]),
        (&"pellgarrow".into(), &"footprint-smaller".into())
    );
    let near = |v: &Value, want: f64, by: f64| {
        let got = v.as_f64().unwrap();
        assert!((got - want).abs() < by, "{got} {want}");
    };
    let c = &s["chains"][0];
    near(&c["erp_w"][0], 30.838, 0.02);
    near(&c["erp_w"][1], 24.670, 0.02);
    near(&c["radiated"]["change_db"], 10.0 * 0.8_f64.log10(), 0.005);
    assert_eq!(
        c["limits"][0]["verdict"],
        serde_json::json!(["cannot-tell", "met"])
    );
    let c = &s["chains"][1];
    near(&c["erp_w"][0], 34.23, 0.02);
    near(
        &c["radiated"]["change_db"],
        10.0 * (16.0_f64 / 35.0).log10(),
        0.005,
    );
    assert_eq!(
        c["limits"][0]["verdict"],
        serde_json::json!(["not-met", "met"])
    );
    assert_eq!(s["redo"], serde_json::json!(["exposure"]));
    insta::assert_snapshot!(
        run(
            &examples(),
            &[
                "diff",
                "pellgarrow/rev3.downlead",
                "pellgarrow/rev4.downlead"
            ]
        )
        .out
    );
    insta::assert_snapshot!(
        run(
            &examples(),
            &[
                "diff",
                "pellgarrow/rev4.downlead",
                "pellgarrow/rev1.downlead",
                "--format",
                "markdown"
            ]
        )
        .out
    );
}

#[test]
fn annotations_and_fingerprints() {
    let worse = HILL.replace("32 W", "50 W");
    let r = between(HILL, &worse, &["--format", "github"]);
    let first = r.out.lines().next().unwrap();
    assert!(
        first.starts_with("::error file=new/hill.downlead,line="),
        "{}",
        r.out
    );
    assert!(
        first.contains("title=verdict-fell::hill/out on 2m: the limit of clause 4 was met"),
        "{}",
        r.out
    );
    let prints = |new: &str| -> Vec<String> {
        let r = between(HILL, new, &["--format", "sarif"]);
        let s: Value = serde_json::from_str(&r.out).unwrap();
        let all = s["runs"][0]["results"].as_array().unwrap().clone();
        all.iter()
            .map(|x| {
                x["partialFingerprints"]["downleadDiff/v1"]
                    .as_str()
                    .unwrap()
                    .to_owned()
            })
            .collect()
    };
    let one = prints(&worse);
    assert_eq!(one.len(), 2);
    // other lines and a comment: the same changes
    assert_eq!(one, prints(&format!("// moved down\n\n{worse}")));
    assert!(one != prints(&HILL.replace("32 W", "20 W")));
}

#[test]
fn folders_are_paired_by_path_and_station() {
    let dir = folder(&[
        ("old/cables.downlead", CABLES),
        ("old/hill.downlead", HILL),
        (
            "old/gone.downlead",
            "chain g on 145 MHz { transmitter 5 W; antenna 2 dBi }\n",
        ),
        ("new/cables.downlead", CABLES),
        (
            "new/sub/peak.downlead",
            &HILL
                .replace("cables.d", "../cables.d")
                .replace("32 W", "20 W"),
        ),
    ]);
    let r = run(dir.path(), &["diff", "old", "new", "--format", "json"]);
    let d: Value = serde_json::from_str(&r.out).unwrap();
    let s = d["stations"].as_array().unwrap();
    let hill = s.iter().find(|s| s["name"] == "hill").unwrap();
    assert_eq!(
        (&hill["state"], &hill["file"]),
        (&"changed".into(), &"new/sub/peak.downlead".into())
    );
    let gone = s.iter().find(|s| s["name"] == "").unwrap();
    assert_eq!(gone["chains"][0]["state"], "gone");
}

#[test]
fn wrong_use_ends_with_2() {
    let dir = two(HILL, HILL);
    for (args, said) in [
        (vec!["diff"], "OLD and NEW"),
        (vec!["diff", "old/hill.downlead"], "OLD and NEW"),
        (
            vec!["diff", "old/hill.downlead", "none.downlead"],
            "there is no such file",
        ),
        (
            vec!["diff", "old/hill.downlead", "new"],
            "One is a file and the other a folder",
        ),
        (vec!["diff", "--git", "HEAD"], "in no git repository"),
        (vec!["log"], "in no git repository"),
        (vec!["diff", "--driver", "x"], "seven arguments"),
    ] {
        let r = run(dir.path(), &args);
        assert!(r.err.contains(said), "{args:?}: {}", r.err);
        let code = if args.contains(&"--driver") { 0 } else { 2 };
        assert_eq!((r.code, r.out.as_str()), (Some(code), ""), "{args:?}");
    }
}

fn git(dir: &Path, args: &[&str]) {
    let done = Command::new("git")
        .args([
            "-c",
            "commit.gpgSign=false",
            "-c",
            "core.autocrlf=false",
            "-c",
            "init.defaultBranch=main",
        ])
        .args(args)
        .current_dir(dir)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .env("GIT_AUTHOR_NAME", "QY2TEC")
        .env("GIT_AUTHOR_EMAIL", "qy2tec@example.org")
        .env("GIT_AUTHOR_DATE", "2026-07-04T12:00:00+0000")
        .env("GIT_COMMITTER_NAME", "QY2TEC")
        .env("GIT_COMMITTER_EMAIL", "qy2tec@example.org")
        .env("GIT_COMMITTER_DATE", "2026-07-04T12:00:00+0000")
        .output()
        .expect("git is there");
    assert!(done.status.success(), "{args:?}: {done:?}");
}

/// A repository of three commits: the hill, a longer run, a comment; then a change on the disk.
pub(crate) fn repository() -> tempfile::TempDir {
    let dir = folder(&[
        ("isle/hill.downlead", HILL),
        ("isle/cables.downlead", CABLES),
    ]);
    let put = |name: &str, text: &str| std::fs::write(dir.path().join(name), text).unwrap();
    let commit = |message: &str| {
        git(dir.path(), &["add", "-A"]);
        git(dir.path(), &["commit", "-q", "-m", message]);
    };
    git(dir.path(), &["init", "-q"]);
    commit("Add the hill");
    let longer = HILL.replace("46 m", "86 m");
    put("isle/hill.downlead", &longer);
    commit("Replace the run");
    put("isle/hill.downlead", &format!("// the hill\n{longer}"));
    put("read.me", "x\n");
    commit("Add a comment");
    put(
        "isle/cables.downlead",
        &CABLES.replace("0.12 dB", "0.24 dB"),
    );
    dir
}

#[test]
fn revisions_are_compared() {
    let dir = repository();
    let at = |args: &[&str]| run(dir.path(), args);
    let r = at(&["diff", "--git", "HEAD~2..HEAD"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert!(r.out.contains("hill: footprint, smaller"), "{}", r.out);
    assert_eq!(at(&["diff", "--git", "HEAD~1..HEAD"]).out, "");
    // a file that only uses the changed one
    let r = at(&["diff", "--git", "HEAD"]);
    assert!(r.out.contains("hill: footprint, smaller"), "{}", r.out);
    assert!(
        r.out.contains("Definitions changed: cable foam"),
        "{}",
        r.out
    );
    // from a folder below, and of a path
    let below = run(
        &dir.path().join("isle"),
        &["diff", "--git", "HEAD", "hill.downlead"],
    );
    assert_eq!(below.out, r.out);
    // there and back
    let json = |range: &str| -> Value {
        serde_json::from_str(&at(&["diff", "--git", range, "--format", "json"]).out).unwrap()
    };
    let (there, back) = (json("HEAD~2..HEAD"), json("HEAD..HEAD~2"));
    let step = |d: &Value| {
        d["stations"][0]["chains"][0]["radiated"]["change_db"]
            .as_f64()
            .unwrap()
    };
    assert!((step(&there) + step(&back)).abs() < 1e-9);
    for (args, said) in [
        (
            &["diff", "--git", "none"][..],
            "There is no revision `none`",
        ),
        (
            &["diff", "--git", "HEAD..none"],
            "There is no revision `none`",
        ),
        (&["diff", "--git=--x"], "names no revision"),
        (&["diff", "--git", "HEAD~9"], "There is no revision"),
        (
            &["diff", "--git", "HEAD~2..HEAD", "none.downlead"],
            "in neither of the two states",
        ),
    ] {
        let r = at(args);
        assert_eq!((r.code, r.out.as_str()), (Some(2), ""), "{args:?}");
        assert!(r.err.contains(said), "{args:?}: {}", r.err);
    }
}

#[test]
fn an_unfinished_merge_asks_for_two_revisions() {
    let dir = repository();
    let put = |text: &str| std::fs::write(dir.path().join("isle/hill.downlead"), text).unwrap();
    git(dir.path(), &["checkout", "-q", "-f", "."]);
    git(dir.path(), &["checkout", "-q", "-b", "other"]);
    put(&HILL.replace("46 m", "50 m"));
    git(dir.path(), &["commit", "-q", "-a", "-m", "50 m"]);
    git(dir.path(), &["checkout", "-q", "-"]);
    git(dir.path(), &["checkout", "-q", "main"]);
    put(&HILL.replace("46 m", "60 m"));
    git(dir.path(), &["commit", "-q", "-a", "-m", "60 m"]);
    // what the branch itself changed
    let r = run(dir.path(), &["diff", "--git", "main...other"]);
    assert!(
        r.out.contains("86 m") && !r.out.contains("60 m"),
        "{}",
        r.out
    );
    let merge = Command::new("git")
        .args([
            "-c",
            "user.name=x",
            "-c",
            "user.email=x@example.org",
            "merge",
            "-q",
            "other",
        ])
        .current_dir(dir.path())
        .output()
        .unwrap();
    assert!(!merge.status.success(), "{merge:?}");
    let r = run(dir.path(), &["diff", "--git", "HEAD"]);
    assert_eq!(r.code, Some(2), "{}", r.out);
    assert!(
        r.err.contains("in the middle of a merge") && r.err.contains("name two revisions"),
        "{}",
        r.err
    );
    assert_eq!(
        run(dir.path(), &["diff", "--git", "HEAD..MERGE_HEAD"]).code,
        Some(0)
    );
}

#[test]
fn the_log_says_what_each_commit_did() {
    let dir = repository();
    let r = run(dir.path(), &["log"]);
    assert_eq!(r.code, Some(0), "{}", r.err);
    let heads: Vec<&str> = r.out.lines().filter(|l| !l.starts_with(' ')).collect();
    assert_eq!(heads.len(), 2, "{}", r.out);
    assert!(
        heads[0].ends_with("2026-07-04 QY2TEC: Replace the run"),
        "{}",
        r.out
    );
    assert!(r.out.contains("hill/out on 2m: ERP "), "{}", r.out);
    assert!(r.out.contains("The station hill is new."), "{}", r.out);
    let all = run(dir.path(), &["log", "--all"]).out;
    assert!(
        all.contains("Add a comment\n    nothing on the air"),
        "{all}"
    );
    let one = run(
        dir.path(),
        &["log", "--all", "-n", "1", "isle/hill.downlead"],
    )
    .out;
    assert_eq!(
        one.lines().filter(|l| !l.starts_with(' ')).count(),
        1,
        "{one}"
    );
    let lines = run(dir.path(), &["log", "--format", "jsonl"]).out;
    for l in lines.lines() {
        let v: Value = serde_json::from_str(l).unwrap();
        assert_eq!(v["schema"], "downlead-log/1");
    }
    assert_eq!(run(dir.path(), &["log", "--from", "none"]).code, Some(2));
}

/// A frequency in another unit is the same frequency: a verdict that fell there is found.
#[test]
fn a_frequency_in_another_unit_is_no_other_band() {
    let text = |on: &str, watts: &str| {
        format!(
            "chain c on {on} {{\n    transmitter {watts} W ± 5 % carrier, fm\n    antenna 2.15 dBi ± 0.5 dB\n    limit 70 W erp, \"clause 4\"\n}}\n"
        )
    };
    let dir = crate::folder(&[
        ("a.downlead", &text("145.3 MHz", "40")),
        ("same.downlead", &text("145300 kHz", "40")),
        ("more.downlead", &text("145300 kHz", "66")),
    ]);
    let r = crate::run(dir.path(), &["diff", "a.downlead", "same.downlead"]);
    assert_eq!((r.code, r.out.as_str()), (Some(0), ""));
    let r = crate::run(dir.path(), &["diff", "a.downlead", "more.downlead"]);
    assert_eq!(r.code, Some(1), "{}", r.out);
    assert!(r.out.contains("met → cannot tell"), "{}", r.out);
}

/// A station under one clause; `{sure}` is its confidence.
fn ruled(watts: u32, sure: &str, clause: &str) -> String {
    format!(
        "rules r {{\n    dated 2026-01-15\n    class a, b\n    limit 30 W output {clause}, \"3.1\", confidence {sure}\n}}\n\
         station s {{\n    under r, class a\n    transmitter TX1 {watts} W carrier, fm\n    antenna A1 2.15 dBi\n    \
         chain c on 146.9 MHz transmit {{\n        TX1\n        pad 0.5 dB\n        A1\n    }}\n}}\n"
    )
}

/// The text of a clause of low confidence is not sure: what it says only warns, here as in `check`.
#[test]
fn a_clause_of_low_confidence_only_warns_in_a_difference() {
    for (sure, code) in [("high", 1), ("medium", 1), ("low", 0)] {
        let r = between(
            &ruled(20, sure, ""),
            &ruled(50, sure, ""),
            &["--format", "json"],
        );
        assert_eq!(r.code, Some(code), "{sure}: {} {}", r.out, r.err);
        let v: Value = serde_json::from_str(&r.out).expect("JSON");
        let limit = &v["stations"][0]["chains"][0]["limits"][0];
        assert_eq!(limit["verdict"], serde_json::json!(["met", "not-met"]));
        assert_eq!(
            (&limit["worse"], limit["warns"] == (sure == "low")),
            (&Value::Bool(true), true)
        );
        // it is said all the same
        let remark = v["remarks"]
            .as_array()
            .expect("remarks")
            .iter()
            .find(|r| r["rule"] == "verdict-fell");
        assert!(remark.is_some(), "{sure}: {}", r.out);
    }
}

/// A clause that can no longer be judged, or bears no more, is a verdict that fell.
#[test]
fn a_clause_that_cannot_be_judged_any_more_fell() {
    let met = ruled(20, "high", "");
    for (new, word) in [
        // its height is not stated
        (ruled(20, "high", "above 7 m haat"), "cannot-judge"),
        (ruled(20, "high", "on 430 MHz to 440 MHz"), "no-rule"),
    ] {
        let r = between(&met, &new, &["--format", "json"]);
        assert_eq!(r.code, Some(1), "{word}: {} {}", r.out, r.err);
        let v: Value = serde_json::from_str(&r.out).expect("JSON");
        let limits = v["stations"][0]["chains"][0]["limits"]
            .as_array()
            .expect("limits");
        assert_eq!(limits.len(), 1, "{limits:#?}");
        assert_eq!(limits[0]["verdict"], serde_json::json!(["met", word]));
        assert_eq!(limits[0]["worse"], true);
        let text = between(&met, &new, &[]).out;
        assert!(
            text.contains(&format!("met → {}", word.replace('-', " "))),
            "{text}"
        );
    }
    // a fault that is hidden is still there
    let r = between(
        &ruled(50, "high", ""),
        &ruled(50, "high", "above 7 m haat"),
        &[],
    );
    assert_eq!(r.code, Some(1), "{}", r.out);
}
