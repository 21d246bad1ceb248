//! The error gallery: every code's page shows a text that triggers it and a text that does not;
//! both are run here, and what the program prints becomes `docs/errors.md`.
//!
//! `UPDATE=1 cargo test -p downlead --test gallery` writes the file; otherwise it is compared.
//!
//! In a page, a fence ```` ```downlead ```` holds the file `CODE.downlead` that triggers the code, and
//! ```` ```downlead-fixed ```` its mended form. A fence ```` ```downlead NAME.downlead ```` holds a further
//! file that both need.

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use downlead_base::{CODES, Code};
use serde_json::Value;

struct Page {
    broken: Option<String>,
    fixed: Option<String>,
    more: Vec<(String, String)>,
}

fn read(code: &Code) -> Page {
    let mut page = Page {
        broken: None,
        fixed: None,
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
                    Some(name) if name.starts_with(' ') => {
                        page.more.push((name.trim().to_owned(), text))
                    }
                    Some(_) => panic!("{}: fence ```{info} stands twice or is not known", code.id),
                    None => {}
                }
            }
        }
    }
    page
}

/// Checks `text` as the code's file; the codes found, and what is drawn.
fn check(code: &Code, text: &str, more: &[(String, String)]) -> (Vec<String>, String) {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let name = format!("{}.downlead", code.id);
    for (name, text) in more.iter().chain([&(name.clone(), text.to_owned())]) {
        let path = dir.path().join(name);
        fs::create_dir_all(path.parent().expect("a parent")).expect("folders");
        fs::write(path, text).expect("a file");
    }
    let run = |format: &str| {
        let output = assert_cmd::cargo::cargo_bin_cmd!("downlead")
            .current_dir(dir.path())
            .args([
                "check", "--notes", "--color", "never", "--format", format, &name,
            ])
            .output()
            .expect("the program starts");
        assert!(
            output.status.code().is_some_and(|c| c < 2),
            "{}: {output:?}",
            code.id
        );
        String::from_utf8(output.stdout).expect("UTF-8")
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
                "{}: the page lacks an example or its mended form",
                code.id
            ));
            continue;
        };
        let (found, drawn) = check(code, broken, &page.more);
        if !found.iter().any(|c| c == code.id) {
            wrong.push(format!("{}: the example gives {found:?}", code.id));
        }
        let (found, mended) = check(code, fixed, &page.more);
        if found.iter().any(|c| c == code.id) || mended.contains("] error: ") {
            wrong.push(format!(
                "{}: the mended form still gives {found:?}",
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
        for (name, text) in &page.more {
            let _ = write!(out, "\n`{name}`:\n\n```\n{text}```\n");
        }
        let _ = write!(
            out,
            "\n```\n{broken}```\n\nprints\n\n```\n{}\n```\n\nMended:\n\n```\n{fixed}```\n",
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
        "docs/errors.md is not what the program prints now; UPDATE=1 writes it anew"
    );
}
