//! Texts that try to be something else: formulas, control characters, other encodings, slips that
//! a fix must not make worse.

use crate::{GOOD, folder, run};

/// A chain with this line in it.
fn with(line: &str) -> String {
    GOOD.replace("    antenna", &format!("    {line}\n    antenna"))
}

fn short(text: &str) -> String {
    let dir = folder(&[("a.downlead", text)]);
    run(dir.path(), &["check", "--format", "short"]).out
}

#[test]
fn a_source_is_no_formula_in_a_table() {
    let text = GOOD.replace("50 W carrier", "50 W carrier, sheet \"=cmd|calc!A0\"");
    let dir = folder(&[("a.downlead", &text)]);
    let r = run(dir.path(), &["report", "--format", "csv", "a.downlead"]);
    assert!(r.out.contains("cmd|calc!A0"), "{}", r.out);
    assert!(!r.out.contains(",=cmd"), "{}", r.out);
    assert!(!r.out.contains(",\"=cmd"), "{}", r.out);
}

#[test]
fn no_format_passes_on_what_steers_a_terminal() {
    let text = with("pad 1 dB, sheet \"a\u{1b}[2Jb\u{9b}c\u{202e}d\"");
    let dir = folder(&[("a\u{1b}[2J.downlead", &text)]);
    for args in [
        &["check", "--format", "github"][..],
        &["check", "--format", "short"],
        &["check"],
        &["report", "--format", "csv", "."],
    ] {
        let r = run(dir.path(), args);
        let steering = |c: char| matches!(c, '\u{1b}' | '\u{9b}' | '\u{202e}');
        assert!(!r.out.contains(steering), "{args:?}: {:?}", r.out);
        assert!(!r.err.contains(steering), "{args:?}: {:?}", r.err);
    }
}

#[test]
fn what_turns_the_direction_of_a_text_is_pointed_out() {
    let comment = short("// a \u{202e} b\nband x 145 MHz\n");
    assert!(
        comment.contains("a.downlead:1:6 error invalid-character: U+202E changes"),
        "{comment}"
    );
    let text = short("band x 145 MHz // \u{2066}\n");
    assert!(text.contains("U+2066"), "{text}");
    let bell = short("band x 145 MHz // \u{7}\n");
    assert!(bell.contains("U+0007 is a control character"), "{bell}");
}

#[test]
fn other_encodings_are_named_with_the_line() {
    let dir = folder(&[]);
    let path = dir.path().join("a.downlead");
    std::fs::write(&path, b"band x 145 MHz\n// caf\xe9\n").unwrap();
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("line 2, byte 21 of the file"), "{}", r.err);
    assert!(r.err.contains("`é` in Latin-1"), "{}", r.err);
    std::fs::write(&path, b"\xff\xfeb\0a\0").unwrap();
    let r = run(dir.path(), &["check"]);
    assert!(r.err.contains("looks like UTF-16"), "{}", r.err);
}

#[test]
fn thousands_are_never_mended_by_a_guess() {
    let dir = folder(&[("a.downlead", &with("run 1,000 m of rg-213"))]);
    let r = run(dir.path(), &["check"]);
    assert!(r.out.contains("write: run 1000 m of rg-213"), "{}", r.out);
    assert!(
        r.out.contains("or write: run 1.000 m of rg-213"),
        "{}",
        r.out
    );
    let fixed = run(dir.path(), &["check", "--fix", "--dry-run"]);
    assert_eq!(fixed.code, Some(0), "{}", fixed.out);
}

#[test]
fn findings_stay_short_whatever_the_text() {
    let name = "a".repeat(1_000_000);
    let text = format!("station {name} {{ }}\nstation {name} {{ }}\n");
    assert!(short(&text).len() < 2_000);
    let digits = with(&format!("run 0.{} m of rg-213", "1".repeat(100_000)));
    let said = short(&digits);
    assert!(said.contains("This number has 100002 characters"), "{said}");
    let huge = GOOD.replace("50 W", "1e300 W");
    let dir = folder(&[("a.downlead", &huge)]);
    let r = run(dir.path(), &["report", "a.downlead"]);
    assert!(r.out.lines().all(|l| l.chars().count() < 300), "{}", r.out);
}

#[test]
fn names_without_a_value_are_said_to_be_that() {
    let said = short("let a = a\nlet b = c\nlet c = b\n");
    assert!(
        said.contains("a.downlead:1:9 error unknown-name: `a` cannot be its own value"),
        "{said}"
    );
    assert!(
        said.contains("a.downlead:2:9 error unknown-name: `c` is not a named value here"),
        "{said}"
    );
    assert!(!said.contains("needs `=`"), "{said}");
}

#[test]
fn a_network_file_outside_the_named_root_is_not_read() {
    let dir = folder(&[
        ("root/x", ""),
        ("a.s2p", "# MHz S DB R 50\n1 0 0 0 0 0 0 0 0\n"),
    ]);
    let r = run(
        &dir.path().join("root"),
        &["fit", "../a.s2p", "--length", "1 m", "--root", "."],
    );
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("outside the root"), "{}", r.err);
}
