//! Usage, `new`, completions, pipes.

use std::fs;

use crate::{GOOD, downlead, folder, run};

#[test]
fn wrong_usage_is_two() {
    let dir = folder(&[("a.downlead", GOOD)]);
    for args in [
        &["frobnicate"][..],
        &[],
        &["check", "--format", "xml"],
        &["report"],
        &["report", "--table", "limits", "a.downlead"],
        &["fmt"],
        &["catalogue", "--at", "145 MHz"],
        &["completions", "no-such-shell"],
    ] {
        let r = run(dir.path(), args);
        assert_eq!(r.code, Some(2), "{args:?}");
        assert!(!r.err.is_empty(), "{args:?}");
    }
    for args in [&["--help"][..], &["check", "--help"], &["--version"]] {
        assert_eq!(run(dir.path(), args).code, Some(0), "{args:?}");
    }
}

#[test]
fn every_shell_gets_its_completions() {
    let dir = folder(&[]);
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        let r = run(dir.path(), &["completions", shell]);
        assert_eq!(r.code, Some(0));
        for command in ["catalogue", "bench", "fit", "card"] {
            assert!(r.out.contains(command), "{shell}: {command}");
        }
    }
}

#[test]
fn the_starters_check_clean_even_strictly() {
    for kind in ["station", "quick"] {
        let dir = folder(&[]);
        let r = run(dir.path(), &["new", "deep/er", "--kind", kind]);
        assert_eq!(r.code, Some(0), "{}", r.err);
        assert_eq!(r.out, format!("deep/er/{kind}.downlead\n"));
        let check = run(dir.path(), &["check", "-q", "--strict"]);
        assert_eq!((check.code, check.out.as_str()), (Some(0), ""), "{kind}");
        let tidy = run(dir.path(), &["fmt", "--check", "."]);
        assert_eq!(tidy.code, Some(0), "{kind}");
    }
}

#[test]
fn new_never_writes_over() {
    let dir = folder(&[("station.downlead", "// mine\n")]);
    let r = run(dir.path(), &["new"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("stays as it is"), "{}", r.err);
    assert_eq!(
        fs::read_to_string(dir.path().join("station.downlead")).unwrap(),
        "// mine\n"
    );
    assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 1);
    // a file where the folder should be
    assert_eq!(run(dir.path(), &["new", "station.downlead"]).code, Some(2));
}

#[cfg(unix)]
#[test]
fn a_reader_that_goes_away_is_no_trouble() {
    use std::process::{Command, Stdio};
    let dir = folder(&[("a.downlead", GOOD)]);
    let program = assert_cmd::cargo::cargo_bin!("downlead");
    for args in [
        "explain",
        "catalogue",
        "completions bash",
        "report --schema",
        "report a.downlead",
    ] {
        let out = Command::new("sh")
            .args([
                "-c",
                &format!("{{ \"$0\" {args}; echo \"code $?\" >&2; }} | true"),
            ])
            .arg(program)
            .current_dir(dir.path())
            .stdout(Stdio::null())
            .output()
            .unwrap();
        assert_eq!(String::from_utf8(out.stderr).unwrap(), "code 0\n", "{args}");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn output_that_cannot_be_written_is_said() {
    let dir = folder(&[]);
    let full = fs::File::options().write(true).open("/dev/full").unwrap();
    let out = std::process::Command::new(assert_cmd::cargo::cargo_bin!("downlead"))
        .arg("explain")
        .current_dir(dir.path())
        .stdout(full)
        .output()
        .unwrap();
    assert_eq!(out.status.code(), Some(2));
    assert!(
        String::from_utf8(out.stderr)
            .unwrap()
            .contains("cannot write the output: no space left")
    );
}

#[test]
fn no_colour_variable_is_honoured() {
    let dir = folder(&[("a.downlead", crate::BAD)]);
    let out = downlead(dir.path())
        .arg("check")
        .env("NO_COLOR", "1")
        .output()
        .unwrap();
    assert!(!out.stdout.contains(&0x1b));
}
