//! `check`: exit codes, formats, folders.

use serde_json::Value;

use crate::{BAD, GOOD, folder, run};

#[test]
fn clean_is_silent() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let r = run(dir.path(), &["check"]);
    assert_eq!((r.code, r.out.as_str(), r.err.as_str()), (Some(0), "", ""));
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
    // one revision of the story is over its limit beyond doubt, which is its point
    let story: Vec<&str> = r.out.lines().filter(|l| l.contains("error:")).collect();
    assert!(
        story.iter().all(|l| l.contains("limit-not-met")),
        "{}",
        r.out
    );
}
