//! The error gallery: every code's page shows a text that triggers it and a text that does not;
//! both are run here, and what the program prints becomes `docs/errors.md`.
//!
//! `UPDATE=1 cargo test -p downlead --test gallery` writes the file; otherwise it is compared.
//!
//! In a page, a fence ```` ```downlead ```` holds the file `CODE.downlead` that triggers the code, and
//! ```` ```downlead-fixed ```` its corrected form. A fence ```` ```downlead NAME.downlead ````
//! holds a further file that both need, ```` ```downlead-recorded ```` the state of the file that
//! was committed first.

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use downlead_base::{CODES, Code};
use serde_json::Value;

struct Page {
    broken: Option<String>,
    fixed: Option<String>,
    recorded: Option<String>,
    more: Vec<(String, String)>,
}

fn read(code: &Code) -> Page {
    let mut page = Page {
        broken: None,
        fixed: None,
        recorded: None,
        more: Vec::new(),
    };
    let mut open: Option<(String, String)> = None;
    for line in code.page.lines() {
        match (&mut open, line.strip_prefix("```")) {
            (None, Some(info)) => open = Some((info.trim().to_owned(), String::new())),
            (None, None) => {}
            (Some((_, text)), None) => {
                text.push_str(line);
                text.push('\n');
            }
            (Some(_), Some(_)) => {
                let (info, text) = open.take().expect("a fence is open");
                match info.strip_prefix("downlead") {
                    Some("") if page.broken.is_none() => page.broken = Some(text),
                    Some("-fixed") if page.fixed.is_none() => page.fixed = Some(text),
                    Some("-recorded") if page.recorded.is_none() => page.recorded = Some(text),
                    Some(name) if name.starts_with(' ') => {
                        page.more.push((name.trim().to_owned(), text))
                    }
                    Some(_) => panic!("{}: fence ```{info} occurs twice or is not known", code.id),
                    None => {}
                }
            }
        }
    }
    page
}

/// Commits what is there; the same day and person each time, so that the revision's name is the same.
fn commit(dir: &Path) {
    let day = "2026-07-19T20:00:00+0000";
    for args in [
        &["init", "-q"][..],
        &["add", "."],
        &["commit", "-q", "-m", "as read"],
    ] {
        let done = std::process::Command::new("git")
            .args(["-c", "core.autocrlf=false", "-c", "commit.gpgSign=false"])
            .args(args)
            .current_dir(dir)
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .env("GIT_CONFIG_NOSYSTEM", "1")
            .env("GIT_AUTHOR_NAME", "QY5BEN")
            .env("GIT_AUTHOR_EMAIL", "qy5ben@example.org")
            .env("GIT_AUTHOR_DATE", day)
            .env("GIT_COMMITTER_NAME", "QY5BEN")
            .env("GIT_COMMITTER_EMAIL", "qy5ben@example.org")
            .env("GIT_COMMITTER_DATE", day)
            .output()
            .expect("git is there");
        assert!(done.status.success(), "{done:?}");
    }
}

/// Checks `text` as the code's file; the codes found, and what is drawn.
fn check(code: &Code, text: &str, page: &Page) -> (Vec<String>, String) {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let name = format!("{}.downlead", code.id);
    if let Some(recorded) = &page.recorded {
        fs::write(dir.path().join(&name), recorded).expect("a file");
        commit(dir.path());
    }
    for (name, text) in page.more.iter().chain([&(name.clone(), text.to_owned())]) {
        let path = dir.path().join(name);
        fs::create_dir_all(path.parent().expect("a parent")).expect("folders");
        fs::write(path, text).expect("a file");
    }
    let run = |format: &str| {
        let output = assert_cmd::cargo::cargo_bin_cmd!("downlead")
            .current_dir(dir.path())
            .args(["check", "--notes", "--color", "never", "--format", format])
            .args(page.recorded.is_some().then_some("--history"))
            .arg(&name)
            .output()
            .expect("the program starts");
        assert!(
            output.status.code().is_some_and(|c| c < 2),
            "{}: {output:?}",
            code.id
        );
        // messages name the root folder; this one differs at each run
        let real = fs::canonicalize(dir.path()).expect("the folder is there");
        String::from_utf8(output.stdout)
            .expect("UTF-8")
            .replace(&*real.to_string_lossy(), "/home/op/stations")
    };
    let found: Value = serde_json::from_str(&run("json")).expect("JSON");
    let codes = found["diagnostics"].as_array().expect("a list");
    (
        codes
            .iter()
            .filter_map(|d| Some(d["code"].as_str()?.to_owned()))
            .collect(),
        run("text"),
    )
}

fn file() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/errors.md")
}

#[test]
fn every_page_shows_what_it_is_about() {
    let mut out = String::from(
        "# Findings, each with a text that shows it\n\nWritten by the tests from the pages of the codes and from what the \
         program prints (`UPDATE=1 cargo test -p downlead --test gallery`).\n`downlead explain CODE` prints a page.\n",
    );
    let mut wrong = Vec::new();
    for code in CODES {
        let page = read(code);
        let (Some(broken), Some(fixed)) = (&page.broken, &page.fixed) else {
            wrong.push(format!(
                "{}: the page lacks an example or its corrected form",
                code.id
            ));
            continue;
        };
        let (found, drawn) = check(code, broken, &page);
        if !found.iter().any(|c| c == code.id) {
            wrong.push(format!("{}: the example gives {found:?}", code.id));
        }
        let (found, corrected) = check(code, fixed, &page);
        if found.iter().any(|c| c == code.id) || corrected.contains("] error: ") {
            wrong.push(format!(
                "{}: the corrected form still gives {found:?}",
                code.id
            ));
        }
        let _ = write!(
            out,
            "\n## `{}`\n\n{} ({}).\n",
            code.id,
            code.title,
            code.severity.name()
        );
        if let Some(text) = &page.recorded {
            let _ = write!(out, "\nCommitted first:\n\n```\n{text}```\n");
        }
        for (name, text) in &page.more {
            let _ = write!(out, "\n`{name}`:\n\n```\n{text}```\n");
        }
        let _ = write!(
            out,
            "\n```\n{broken}```\n\nprints\n\n```\n{}\n```\n\nCorrected:\n\n```\n{fixed}```\n",
            drawn.trim_end()
        );
    }
    if std::env::var_os("UPDATE").is_some_and(|v| v == "1") {
        fs::write(file(), &out).expect("docs/errors.md can be written");
    }
    assert!(
        wrong.is_empty(),
        "{} of {} pages:\n{}",
        wrong.len(),
        CODES.len(),
        wrong.join("\n")
    );
    let there = fs::read_to_string(file())
        .unwrap_or_default()
        .replace("\r\n", "\n");
    assert!(
        there == out,
        "docs/errors.md is not what the program prints now; UPDATE=1 rewrites it"
    );
}
