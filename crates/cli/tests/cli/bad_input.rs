//! Whatever is put in: a clear message, the right exit code, no panic, no waiting for ever.

use std::fs;
use std::time::{Duration, Instant};

use crate::{BAD, GOOD, folder, run};

/// Not the program's own fault, and not a crash.
fn decent(code: Option<i32>) -> bool {
    matches!(code, Some(0..=2))
}

#[test]
fn missing_files_and_empty_folders() {
    let dir = folder(&[("empty/note.txt", "")]);
    for command in ["check", "report", "fmt"] {
        let r = run(dir.path(), &[command, "none.downlead"]);
        assert_eq!((r.code, r.out.as_str()), (Some(2), ""), "{command}");
        assert!(
            r.err
                .contains("none.downlead: there is no such file or folder"),
            "{}",
            r.err
        );
        let r = run(dir.path(), &[command, "empty"]);
        assert_eq!(r.code, Some(2));
        assert!(
            r.err.contains("no file here ends in .downlead"),
            "{}",
            r.err
        );
    }
}

#[test]
fn one_missing_file_does_not_hide_the_others() {
    let dir = folder(&[("bad.downlead", BAD)]);
    let r = run(dir.path(), &["check", "none.downlead", "bad.downlead"]);
    assert_eq!(r.code, Some(2));
    assert!(r.out.contains("unknown-cable"), "{}", r.out);
}

#[test]
fn bytes_that_are_no_text() {
    let dir = folder(&[]);
    fs::write(dir.path().join("a.downlead"), b"let caf\xe9 = 1 m\n").unwrap();
    for command in ["check", "report", "fmt"] {
        let r = run(dir.path(), &[command, "a.downlead"]);
        assert_eq!(r.code, Some(2));
        assert!(
            r.err.contains("a.downlead: it is not UTF-8 text: byte 7"),
            "{}",
            r.err
        );
    }
    assert_eq!(
        fs::read(dir.path().join("a.downlead")).unwrap(),
        b"let caf\xe9 = 1 m\n"
    );
}

#[test]
fn every_single_byte_and_some_noise() {
    // a file of every byte that is text alone, and of pseudo-random printable mixtures (xorshift, fixed seed)
    let mut texts: Vec<String> = (0u8..128)
        .map(|b| format!("station a {{\n{}\n}}\n", b as char))
        .collect();
    let mut state = 0x2545_f491_4f6c_dd1d_u64;
    let pool: Vec<char> = "{}();,\"±-+*/.0123456789abcdMHzdBW \n\tµΩ°′″\u{85}\u{feff}\u{202e}\0"
        .chars()
        .collect();
    for _ in 0..60 {
        let mut text = String::new();
        for _ in 0..300 {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            text.push(pool[(state % pool.len() as u64) as usize]);
        }
        texts.push(text);
    }
    let files: Vec<(String, String)> = texts
        .into_iter()
        .enumerate()
        .map(|(i, t)| (format!("{i:03}.downlead"), t))
        .collect();
    let refs: Vec<(&str, &str)> = files
        .iter()
        .map(|(n, t)| (n.as_str(), t.as_str()))
        .collect();
    let dir = folder(&refs);
    for args in [
        &["check", "--notes"][..],
        &["check", "--format", "sarif"],
        &["report", "."],
        &["fmt", "."],
        &["fmt", "--check", "."],
    ] {
        let r = run(dir.path(), args);
        assert!(decent(r.code), "{args:?}: {:?} {}", r.code, r.err);
        assert!(!r.err.contains("mistake of"), "{args:?}: {}", r.err);
        if args[1] == "--check" {
            assert_eq!(r.out, "", "formatting twice is formatting once");
        }
        // no control character of a file reaches the terminal; JSON is not for terminals
        assert!(
            args.contains(&"sarif")
                || !r
                    .out
                    .chars()
                    .any(|c| c.is_control() && c != '\n' && c != '\t'),
            "{args:?}"
        );
    }
}

#[test]
fn numbers_that_are_none() {
    for number in [
        "NaN",
        "inf",
        "-inf",
        "1e999",
        "1e-999",
        "0x10",
        "1.2.3",
        "1,5",
        "9".repeat(400).as_str(),
        "1e400 m",
    ] {
        let text = GOOD
            .replace("28 m", &format!("{number} m"))
            .replace("50 W", &format!("{number} W"));
        let dir = folder(&[("a.downlead", &text)]);
        let r = run(dir.path(), &["check"]);
        assert_eq!(r.code, Some(1), "{number}: {}", r.out);
        let json = run(dir.path(), &["report", "--format", "json", "a.downlead"]);
        assert!(decent(json.code), "{number}: {}", json.err);
        let _: serde_json::Value = serde_json::from_str(&json.out).unwrap();
        assert!(!json.out.contains("NaN") || number == "NaN", "{number}");
    }
}

#[test]
fn a_missing_include_is_a_finding() {
    let dir = folder(&[("a.downlead", &format!("use \"none.downlead\"\n{GOOD}"))]);
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(1));
    assert!(
        r.out.contains("[use-not-found]") && r.out.contains("a.downlead:1:"),
        "{}",
        r.out
    );
}

#[test]
fn an_include_that_is_a_folder_or_no_text_is_a_finding() {
    let dir = folder(&[
        ("a.downlead", "use \"sub\"\nuse \"latin.downlead\"\n"),
        ("sub/x", ""),
    ]);
    fs::write(dir.path().join("latin.downlead"), b"\xff").unwrap();
    let r = run(dir.path(), &["check", "a.downlead"]);
    assert_eq!(r.code, Some(1));
    assert_eq!(r.out.matches("[use-not-found]").count(), 2, "{}", r.out);
}

#[test]
fn no_include_climbs_out() {
    let dir = folder(&[
        ("secret.downlead", "let secret = 1 m\n"),
        ("root/a.downlead", "use \"../secret.downlead\"\n"),
        ("root/b.downlead", "use \"/etc/hostname\"\n"),
    ]);
    let root = dir.path().join("root");
    for file in ["a.downlead", "b.downlead"] {
        let r = run(&root, &["check", file]);
        assert_eq!(r.code, Some(1), "{}", r.out);
        assert!(r.out.contains("[use-outside-root]"), "{}", r.out);
    }
    // with the root one up it may be read
    let r = run(&root, &["check", "--root", "..", "a.downlead"]);
    assert_eq!(r.code, Some(0), "{}{}", r.out, r.err);
}

#[test]
fn circles_end() {
    let dir = folder(&[
        ("a.downlead", "use \"b.downlead\"\n"),
        ("b.downlead", "use \"a.downlead\"\n"),
        ("c.downlead", "use \"c.downlead\"\n"),
    ]);
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(1));
    assert!(r.out.contains("[use-cycle]"), "{}", r.out);
}

#[cfg(unix)]
#[test]
fn pipes_devices_and_links() {
    use std::os::unix::fs::symlink;
    let dir = folder(&[
        ("out/secret.downlead", "let secret = 1 m\n"),
        ("root/a.downlead", "use \"link.downlead\"\n"),
    ]);
    let root = dir.path().join("root");
    symlink("../out/secret.downlead", root.join("link.downlead")).unwrap();
    let r = run(&root, &["check", "a.downlead"]);
    assert!(r.out.contains("[use-outside-root]"), "{}", r.out);

    symlink("nowhere", root.join("dangling.downlead")).unwrap();
    let r = run(&root, &["check", "dangling.downlead"]);
    assert_eq!(r.code, Some(2));
    assert!(r.err.contains("a link that leads nowhere"), "{}", r.err);

    symlink("loop.downlead", root.join("loop.downlead")).unwrap();
    assert_eq!(run(&root, &["check", "loop.downlead"]).code, Some(2));

    let made = std::process::Command::new("mkfifo")
        .arg(root.join("pipe.downlead"))
        .status();
    if made.is_ok_and(|s| s.success()) {
        let start = Instant::now();
        for command in ["check", "report", "fmt"] {
            let r = run(&root, &[command, "pipe.downlead"]);
            assert_eq!(r.code, Some(2));
            assert!(r.err.contains("pipe, socket or device"), "{}", r.err);
        }
        assert!(start.elapsed() < Duration::from_secs(20));
    }
    assert_eq!(run(&root, &["check", "/dev/null"]).code, Some(2));
}

#[test]
fn larger_than_the_limit() {
    let dir = folder(&[]);
    // sparse: takes no room
    fs::File::create(dir.path().join("a.downlead"))
        .unwrap()
        .set_len((64 << 20) + 1)
        .unwrap();
    for command in ["check", "fmt"] {
        let r = run(dir.path(), &[command, "a.downlead"]);
        assert_eq!(r.code, Some(2));
        assert!(r.err.contains("larger than 64 MiB"), "{}", r.err);
    }
}

#[test]
fn a_hundred_thousand_braces() {
    let texts = [
        "{".repeat(100_000),
        format!("station s {}", "{".repeat(100_000)),
        format!("station s {}", "{\n".repeat(100_000)),
        format!("let a = {}1 m", "(".repeat(100_000)),
        "}".repeat(100_000),
    ];
    for text in &texts {
        let dir = folder(&[("a.downlead", text)]);
        let start = Instant::now();
        for args in [
            &["check"][..],
            &["report", "a.downlead"],
            &["fmt", "a.downlead"],
        ] {
            let r = run(dir.path(), args);
            assert!(decent(r.code), "{args:?} {:?}: {}", r.code, r.err);
            assert!(r.out.len() < 1 << 20, "{args:?}: {} bytes", r.out.len());
            if args[0] == "check" {
                assert_eq!(r.code, Some(1));
            }
        }
        assert!(
            start.elapsed() < Duration::from_secs(60),
            "{:?} for {}…",
            start.elapsed(),
            &text[..12]
        );
    }
}

#[test]
fn a_million_lines() {
    let good = "let a = 1 m\n// a comment\n".to_owned() + &"\n// a comment\n".repeat(499_999);
    let dir = folder(&[("a.downlead", &good)]);
    let start = Instant::now();
    let r = run(dir.path(), &["check", "-q"]);
    assert_eq!((r.code, r.out.as_str()), (Some(0), ""), "{}", r.err);
    assert!(
        start.elapsed() < Duration::from_secs(60),
        "{:?}",
        start.elapsed()
    );
}

#[test]
fn a_hundred_thousand_findings() {
    let dir = folder(&[("a.downlead", &"nonsense here\n".repeat(100_000))]);
    let start = Instant::now();
    let r = run(dir.path(), &["check"]);
    assert_eq!(r.code, Some(1));
    assert_eq!(r.out.matches("] error: ").count(), 20);
    assert!(
        r.out
            .contains("and 99980 more of unknown-statement (--all)")
    );
    assert!(
        start.elapsed() < Duration::from_secs(60),
        "{:?}",
        start.elapsed()
    );
}

#[test]
fn braces_too_many_are_said_wherever_they_are() {
    for text in [
        "}",
        "}\n",
        "}}\n",
        "}\nlet a = 1 m\n",
        "let a = 1 m\n}\n",
        "station s {\n}\n}\n",
    ] {
        let dir = folder(&[("a.downlead", text)]);
        let r = run(dir.path(), &["check"]);
        assert_eq!(r.code, Some(1), "{text:?}");
        assert!(r.out.contains("[unmatched-brace]"), "{text:?}: {}", r.out);
    }
}
