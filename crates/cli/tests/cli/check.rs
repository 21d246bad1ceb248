//! `check`: exit codes, formats, folders.

use serde_json::Value;

use crate::{BAD, GOOD, folder, run};

#[test]
fn a_clean_file_says_what_was_compared() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert_eq!((r.code, r.err.as_str()), (Some(0), ""));
    assert_eq!(
        r.out,
        "a.downlead: 1 chain, no limit and no reading; nothing to correct\n"
    );
    let r = run(dir.path(), &["check", "-q", "a.downlead"]);
    assert_eq!((r.code, r.out.as_str(), r.err.as_str()), (Some(0), "", ""));
    let empty = folder(&[("a.downlead", "let mast = 30 m\n")]);
    let r = run(empty.path(), &["check"]);
    assert_eq!(
        r.out,
        "a.downlead: no chain, 1 definition; nothing to correct\n"
    );
}

#[test]
fn limits_and_readings_are_counted_and_the_worst_file_comes_first() {
    let limited = GOOD.replace("dBi\n", "dBi\n    limit 500 W erp, \"L\"\n");
    let dir = folder(&[
        ("a.downlead", &limited),
        ("b.downlead", BAD),
        ("c.downlead", READ),
    ]);
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(1));
    let lines: Vec<&str> = r.out.lines().take(2).collect();
    assert!(lines[0].starts_with("b.downlead: 1 chain, "), "{}", r.out);
    assert!(lines[0].contains("; 1 error"), "{}", r.out);
    assert!(
        lines[1].starts_with("3 files: 1 limit met, 1 reading agrees; 1 error"),
        "{}",
        r.out
    );
    // the conclusion alone
    let quiet = run(dir.path(), &["check", "--quiet"]);
    assert_eq!(quiet.code, Some(1));
    assert_eq!(quiet.out.lines().collect::<Vec<_>>(), lines);
}

/// Sixty equal mistakes and another one.
fn many() -> String {
    "band 2m { transmit 145 parsec }\n".repeat(60) + "let x = 3 W + 3 dBm\n"
}

#[test]
fn of_one_kind_twenty_are_shown_unless_all_are_asked_for() {
    let dir = folder(&[("a.downlead", &many())]);
    let short = |more: &[&str]| {
        let r = run(
            dir.path(),
            &[&["check", "--format", "short"][..], more].concat(),
        );
        assert_eq!(r.code, Some(1));
        r.out
    };
    let first = short(&[]);
    let of = |out: &str, code: &str| {
        let part = format!(" error {code}: ");
        out.lines().filter(|l| l.contains(&part)).count()
    };
    assert_eq!(of(&first, "unknown-unit"), 20, "{first}");
    assert!(
        first.contains("… and 40 more of unknown-unit (--all)\n"),
        "{first}"
    );
    assert!(
        first.starts_with("a.downlead:1:24 error unknown-unit: "),
        "{first}"
    );
    assert_eq!(of(&short(&["--all"]), "unknown-unit"), 60);
    let text = run(dir.path(), &["check"]);
    assert_eq!(text.out.matches("[unknown-unit]").count(), 20);
    assert!(
        text.out.contains("by code: 60 unknown-unit, "),
        "{}",
        text.out
    );
}

#[test]
fn every_command_that_takes_a_file_reads_standard_input() {
    let dir = folder(&[("lib.downlead", "let mast = 30 m\n")]);
    let session = "session s { }\n";
    let with = |args: &[&str], text: &str| {
        let output = crate::downlead(dir.path())
            .args(args)
            .write_stdin(text)
            .output()
            .expect("the program starts");
        (
            output.status.code(),
            String::from_utf8(output.stdout).expect("UTF-8")
                + &String::from_utf8(output.stderr).expect("UTF-8"),
        )
    };
    let (code, out) = with(&["check", "-"], BAD);
    assert_eq!(code, Some(1));
    assert!(out.contains("─[ -:3:17 ]"), "{out}");
    let (code, out) = with(&["report", "-"], GOOD);
    assert_eq!(code, Some(0), "{out}");
    assert!(out.contains("what-if"), "{out}");
    assert_eq!(with(&["card", "-"], GOOD).0, Some(0));
    assert!(with(&["bench", "-"], session).1.contains("reading"));
    let (code, out) = with(&["explain", "-:3"], GOOD);
    assert_eq!(code, Some(0), "{out}");
    assert!(out.contains("28 m"), "{out}");
    let (_, out) = with(&["fit", "-", "--cable", "none"], GOOD);
    assert!(out.contains("there is no cable `none`"), "{out}");
    // it counts as a file of the current folder
    let using = format!("use \"lib.downlead\"\n\n{GOOD}");
    assert_eq!(with(&["check", "--strict", "-"], &using).0, Some(0));
    assert_eq!(with(&["check", "-", "-"], GOOD).0, Some(0));
}

#[test]
fn an_error_is_drawn_where_it_is() {
    let dir = folder(&[("sub/a.downlead", BAD), ("b.downlead", GOOD)]);
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(1));
    assert!(r.out.contains("[unknown-cable] error:"), "{}", r.out);
    assert!(r.out.contains("sub/a.downlead:3:"), "{}", r.out);
    assert!(r.out.contains("no-such-cable"), "{}", r.out);
    assert!(!r.out.contains('\u{1b}'));
}

#[test]
fn colour_only_when_asked_for() {
    let dir = folder(&[("a.downlead", BAD)]);
    assert!(
        run(dir.path(), &["check", "--color", "always"])
            .out
            .contains("\u{1b}[")
    );
    assert!(
        !run(dir.path(), &["check", "--color", "never"])
            .out
            .contains('\u{1b}')
    );
    assert!(!run(dir.path(), &["check"]).out.contains('\u{1b}'));
}

#[test]
fn strict_lets_warnings_fail() {
    // a device without a loss: a warning
    let text = GOOD.replace("    antenna", "    protector\n    antenna");
    let dir = folder(&[("a.downlead", &text)]);
    let mild = run(dir.path(), &["check"]);
    assert!(mild.out.contains("warning:"), "{}", mild.out);
    assert_eq!(mild.code, Some(0), "{}", mild.out);
    assert_eq!(run(dir.path(), &["check", "--strict"]).code, Some(1));
}

#[test]
fn formats_agree_about_the_place() {
    let dir = folder(&[("a b/µ.downlead", BAD)]);
    let json: Value =
        serde_json::from_str(&run(dir.path(), &["check", "--format", "json"]).out).unwrap();
    let found = json["diagnostics"].as_array().unwrap();
    let one = found.iter().find(|d| d["code"] == "unknown-cable").unwrap();
    assert_eq!((&one["line"], &one["column"]), (&3.into(), &17.into()));
    let bytes =
        one["start_byte"].as_u64().unwrap() as usize..one["end_byte"].as_u64().unwrap() as usize;
    assert_eq!(&BAD[bytes], "no-such-cable");

    let sarif: Value =
        serde_json::from_str(&run(dir.path(), &["check", "--format", "sarif"]).out).unwrap();
    let results = sarif["runs"][0]["results"].as_array().unwrap();
    let one = results
        .iter()
        .find(|d| d["ruleId"] == "unknown-cable")
        .unwrap();
    let place = &one["locations"][0]["physicalLocation"];
    assert_eq!(place["artifactLocation"]["uri"], "a%20b/%C2%B5.downlead");
    assert_eq!(
        (
            &place["region"]["startLine"],
            &place["region"]["startColumn"]
        ),
        (&3.into(), &17.into())
    );

    let github = run(dir.path(), &["check", "--format", "github"]);
    assert_eq!(github.code, Some(1));
    assert!(
        github
            .out
            .contains("::error file=a b/µ.downlead,line=3,endLine=3,col=17,"),
        "{}",
        github.out
    );
}

#[test]
fn formats_without_findings_are_whole_documents() {
    let dir = folder(&[("a.downlead", "let mast = 30 m\n")]);
    for format in ["json", "sarif"] {
        let r = run(dir.path(), &["check", "--format", format]);
        assert_eq!(r.code, Some(0), "{}", r.out);
        let _: Value = serde_json::from_str(&r.out).unwrap();
    }
    assert_eq!(run(dir.path(), &["check", "--format", "github"]).out, "");
}

#[test]
fn a_file_named_twice_is_checked_once() {
    let dir = folder(&[("a.downlead", BAD)]);
    let once = run(dir.path(), &["check", "a.downlead"]);
    let often = run(dir.path(), &["check", "a.downlead", ".", "./a.downlead"]);
    assert_eq!(once.out, often.out);
}

#[test]
fn a_file_elsewhere_is_named_so_that_it_can_be_opened() {
    let here = folder(&[("b.downlead", GOOD)]);
    let there = folder(&[("a.downlead", BAD)]);
    let path = there.path().canonicalize().unwrap().join("a.downlead");
    let r = run(here.path(), &["check", path.to_str().unwrap()]);
    assert!(
        r.out.contains(&format!("{}:3:", path.display())),
        "{}",
        r.out
    );
}

#[test]
fn the_examples_are_clean() {
    let r = run(&crate::examples(), &["check"]);
    // one revision of the story is over its limit by more than the uncertainty, and the tenant's noise
    // falls on the repeater's input, which is their point
    let story: Vec<&str> = r.out.lines().filter(|l| l.contains("error:")).collect();
    assert!(
        story
            .iter()
            .all(|l| l.contains("limit-not-met") || l.contains("desense-not-met")),
        "{}",
        r.out
    );
}

/// With a reading in it, so that its history is asked for.
pub(crate) const READ: &str = "instrument W3 \"meter\" {\n    accuracy 5 % of reading\n}\n\nchain out on 145.3 MHz {\n    transmitter 30 W ± 5 % carrier, fm\n    run 28 m of half-inch-foam, at 15 °C\n    read 26.0 W forward, 2026-07-04 with W3 by QY2TEC\n    antenna 4.5 dBi ± 0.5 dB, swr 1.2\n}\n";

fn git(dir: &std::path::Path, args: &[&str]) {
    let done = std::process::Command::new("git")
        .args(["-c", "user.name=QY2TEC", "-c", "user.email=x@example.org"])
        .args(["-c", "commit.gpgSign=false"])
        .args(args)
        .current_dir(dir)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        // long enough ago to be no draft
        .env("GIT_AUTHOR_DATE", "2026-07-04T20:00:00+0000")
        .output()
        .expect("this test needs git");
    assert!(done.status.success(), "{done:?}");
}

#[test]
fn history_points_out_a_changed_reading_and_only_when_asked() {
    let dir = folder(&[("hill/a.downlead", READ)]);
    git(dir.path(), &["init", "-q"]);
    git(dir.path(), &["add", "."]);
    git(dir.path(), &["commit", "-q", "-m", "as read"]);
    let clean = run(dir.path(), &["check", "-q", "--history"]);
    assert_eq!((clean.code, clean.out.as_str()), (Some(0), ""));

    std::fs::write(
        dir.path().join("hill/a.downlead"),
        READ.replace("26.0 W", "25.6 W"),
    )
    .expect("written");
    assert_eq!(run(dir.path(), &["check", "-q"]).out, "");
    let r = run(dir.path(), &["check", "--history", "--format", "json"]);
    let v: Value = serde_json::from_str(&r.out).expect("JSON");
    let all = v["diagnostics"].as_array().expect("a list");
    assert_eq!(all.len(), 1, "{}", r.out);
    assert_eq!(all[0]["code"], "reading-edited");
    assert_eq!(all[0]["file"], "hill/a.downlead");
    assert_eq!(all[0]["line"], 8);
    assert!(
        all[0]["message"]
            .as_str()
            .is_some_and(|m| m.starts_with("This reading was 26.0 W when QY2TEC recorded it on "))
    );
    // a warning: it fails the strict
    assert_eq!(r.code, Some(0));
    let strict = run(dir.path(), &["check", "--history", "--strict"]);
    assert_eq!(strict.code, Some(1));
    // from within the folder too
    let inside = run(
        &dir.path().join("hill"),
        &["check", "--history", "a.downlead"],
    );
    assert!(inside.out.contains("[reading-edited]"), "{}", inside.out);
}

#[test]
fn history_without_a_repository_is_trouble_and_the_rest_is_told() {
    let plain = "station s {\n    place mast\n}\n";
    let dir = folder(&[
        ("a.downlead", READ),
        ("b.downlead", BAD),
        ("c.downlead", plain),
    ]);
    let r = run(dir.path(), &["check", "--history"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("is in no git repository"), "{}", r.err);
    assert_eq!(r.err.matches("is in no git repository").count(), 1);
    assert!(r.out.contains("[unknown-cable]"), "{}", r.out);
    // a file without figures has no history to ask for
    let r = run(dir.path(), &["check", "--history", "c.downlead"]);
    assert_eq!(r.err, "");
}

#[test]
fn history_that_was_not_cloned_is_missed_aloud() {
    let dir = folder(&[("a.downlead", READ)]);
    git(dir.path(), &["init", "-q"]);
    for text in [READ.to_owned(), READ.replace("28 m", "29 m")] {
        std::fs::write(dir.path().join("a.downlead"), text).expect("written");
        git(dir.path(), &["add", "."]);
        git(dir.path(), &["commit", "-q", "-m", "x"]);
    }
    let url = format!("file://{}", dir.path().display());
    let copy = tempfile::tempdir().expect("a folder");
    git(copy.path(), &["clone", "-q", "--depth", "1", &url, "c"]);
    let r = run(&copy.path().join("c"), &["check", "--history"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("without its history"), "{}", r.err);
}

/// 600 files are checked set by set: what is found is what each file by itself has, and a fault of the
/// file that all use is reported once.
#[test]
fn many_files_are_checked_set_by_set_with_the_same_findings() {
    let cable = "cable reel { impedance 50 ohm; velocity 0.88; loss 0.1216 dB/100 m/sqrt(MHz) + 0.0004 dB/100 m/MHz; bogus 3 }\n";
    let station = |n: usize| {
        let run = if n % 100 == 7 { "no-such" } else { "reel" };
        format!(
            "use \"club.downlead\"\nchain c{n} on 145.3 MHz {{\n    transmitter 50 W carrier\n    run {} m of {run}\n    antenna 4.5 dBi\n    limit 60 W erp, \"clause {n}\"\n}}\n",
            20 + n % 50
        )
    };
    let names: Vec<(String, String)> = (0..600)
        .map(|n| (format!("s{n}.downlead"), station(n)))
        .collect();
    let mut files: Vec<(&str, &str)> = names
        .iter()
        .map(|(a, b)| (a.as_str(), b.as_str()))
        .collect();
    files.push(("club.downlead", cable));
    let dir = folder(&files);
    let short = |args: &[&str]| {
        let mut all = vec!["check", "--format", "short", "--all"];
        all.extend(args);
        let r = run(dir.path(), &all);
        let mut lines: Vec<String> = r.out.lines().map(str::to_owned).collect();
        lines.sort_unstable();
        (r.code, lines)
    };
    let (code, all) = short(&["."]);
    assert_eq!(code, Some(1));
    assert_eq!(
        all.iter().filter(|l| l.contains("unknown-cable")).count(),
        6,
        "{all:?}"
    );
    assert_eq!(
        all.iter()
            .filter(|l| l.starts_with("club.downlead:"))
            .count(),
        1,
        "{all:?}"
    );
    // the same files in two runs that are below the number from which sets are made
    let mut apart: Vec<String> = Vec::new();
    for half in names.chunks(300) {
        let args: Vec<&str> = half.iter().map(|n| n.0.as_str()).collect();
        apart.extend(short(&args).1);
    }
    apart.sort_unstable();
    apart.dedup();
    assert_eq!(all, apart);
    let text = run(dir.path(), &["check", "."]).out;
    assert!(
        text.contains("601 files"),
        "{}",
        text.lines().next().unwrap_or("")
    );
}
