//! `check --fix` and `--watch`.

use std::fs;
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};

use crate::{GOOD, downlead, folder, run};

/// Two mistakes with one sensible fix each, and one without.
fn mistaken() -> String {
    GOOD.replace("half-inch-foam", "half-inch-foan")
        .replace("transmitter 50 W", "transmitter 50 Wat")
        .replace("4.5 dBi", "4.5 dB")
}

#[test]
fn offered_changes_are_made_shown_and_only_once() {
    let dir = folder(&[
        ("a.downlead", "use \"lib\\b.downlead\"\n"),
        ("lib/b.downlead", "let mast = 30 m\n"),
    ]);
    let path = dir.path().join("a.downlead");
    let before = fs::read_to_string(&path).unwrap();
    let dry = run(dir.path(), &["check", "--fix", "--dry-run", "a.downlead"]);
    assert_eq!(dry.code, Some(1), "{}{}", dry.out, dry.err);
    assert_eq!(
        dry.out,
        "a.downlead:1: write `lib/b.downlead`\n  - use \"lib\\b.downlead\"\n  + use \"lib/b.downlead\"\n1 change would be made\n"
    );
    assert_eq!(fs::read_to_string(&path).unwrap(), before);
    let r = run(dir.path(), &["check", "--fix", "a.downlead"]);
    assert_eq!(r.code, Some(0), "{}{}", r.out, r.err);
    assert!(
        r.out
            .contains("1 change made\na.downlead: no statement; nothing to correct"),
        "{}",
        r.out
    );
    assert_eq!(
        fs::read_to_string(&path).unwrap(),
        "use \"lib/b.downlead\"\n"
    );
    let again = run(dir.path(), &["check", "--fix", "a.downlead"]);
    assert!(
        again
            .out
            .starts_with("no change that can be made without a choice\n"),
        "{}",
        again.out
    );
}

#[test]
fn what_needs_a_choice_is_left_and_nothing_becomes_worse() {
    let dir = folder(&[("a.downlead", &mistaken())]);
    let errors = |out: &str| out.matches("] error: ").count();
    let before = errors(&run(dir.path(), &["check"]).out);
    let r = run(dir.path(), &["check", "--fix"]);
    assert!(errors(&r.out) < before, "{}", r.out);
    let text = fs::read_to_string(dir.path().join("a.downlead")).unwrap();
    // a gain over what is for the author to say
    assert!(text.contains("antenna 4.5 dB\n"), "{text}");
}

#[test]
fn a_text_from_standard_input_goes_to_standard_output() {
    let dir = folder(&[("lib/b.downlead", "let mast = 30 m\n")]);
    let output = downlead(dir.path())
        .args(["check", "--fix", "-"])
        .write_stdin("use \"lib\\b.downlead\"\n")
        .output()
        .unwrap();
    assert_eq!(
        String::from_utf8_lossy(&output.stdout),
        "use \"lib/b.downlead\"\n"
    );
}

#[test]
fn a_watched_file_is_checked_again_when_it_changes() {
    let dir = folder(&[("a.downlead", GOOD)]);
    let mut child = Command::new(env!("CARGO_BIN_EXE_downlead"))
        .args(["check", "--watch", "a.downlead"])
        .current_dir(dir.path())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let first = lines.next().unwrap().unwrap();
    assert!(first.contains("nothing to correct"), "{first}");
    fs::write(dir.path().join("a.downlead"), crate::BAD).unwrap();
    let second = lines.next().unwrap().unwrap();
    assert!(second.contains("1 error"), "{second}");
    child.kill().unwrap();
    child.wait().unwrap();
    let r = run(dir.path(), &["explain", "--watch", "a.downlead:3"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("--watch goes with"), "{}", r.err);
}
