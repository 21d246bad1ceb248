//! The pages that teach (`docs/tutorial.md`, `docs/how-to/`, `docs/examples.md`): each command in
//! them is run, and prints what the page says.
//!
//! A fence ```` ```downlead NAME ```` or ```` ```csv NAME ```` writes that file into the page's folder, which
//! is empty at the start but for a copy of `examples/`. In a fence ```` ```console ```` a line that begins
//! with `$ ` is run by the shell; what follows is what it prints. `UPDATE=1 cargo test -p downlead
//! --test docs` writes what the commands print now.
#![cfg(unix)]

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::{fs, io};

fn project(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .join(path)
}

fn pages() -> Vec<PathBuf> {
    let mut out = vec![project("docs/tutorial.md"), project("docs/examples.md")];
    let how_to = fs::read_dir(project("docs/how-to")).expect("docs/how-to is there");
    out.extend(how_to.map(|e| e.expect("an entry").path()));
    out.retain(|p| p.extension().is_some_and(|e| e == "md"));
    out.sort();
    out
}

fn copy_all(from: &Path, to: &Path) -> io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let (path, target) = (entry.path(), to.join(entry.file_name()));
        if path.is_dir() {
            copy_all(&path, &target)?;
        } else {
            fs::copy(&path, &target)?;
        }
    }
    Ok(())
}

/// What a command prints, and its exit code.
fn run(command: &str, dir: &Path) -> (String, i32) {
    let program = assert_cmd::cargo::cargo_bin!("downlead");
    let path = format!(
        "{}:{}",
        program.parent().expect("a folder").display(),
        std::env::var("PATH").expect("a PATH")
    );
    let out = Command::new("sh")
        .args(["-c", &format!("{{ {command}\n}} 2>&1")])
        .current_dir(dir)
        .env("PATH", path)
        .env("HOME", dir)
        .env("LC_ALL", "C.UTF-8")
        .env("COLUMNS", "110")
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .env("GIT_CONFIG_NOSYSTEM", "1")
        .env("GIT_AUTHOR_NAME", "QY5BEN")
        .env("GIT_AUTHOR_EMAIL", "qy5ben@example.org")
        .env("GIT_AUTHOR_DATE", "2026-07-19T20:00:00+0000")
        .env("GIT_COMMITTER_NAME", "QY5BEN")
        .env("GIT_COMMITTER_EMAIL", "qy5ben@example.org")
        .env("GIT_COMMITTER_DATE", "2026-07-19T20:00:00+0000")
        .output()
        .expect("a shell is there");
    let text = String::from_utf8(out.stdout).expect("text");
    (text, out.status.code().unwrap_or(-1))
}

/// The page as it should be: each command followed by what it prints now. Counts the commands.
fn rendered(page: &str, dir: &Path, at: &str, commands: &mut usize) -> String {
    let mut out = String::new();
    let mut file: Option<PathBuf> = None;
    let mut text = String::new();
    let mut console = false;
    for line in page.lines() {
        let fence = line.strip_prefix("```");
        match fence {
            Some("") if file.is_some() || console => {
                if let Some(path) = file.take() {
                    fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
                    fs::write(&path, std::mem::take(&mut text)).expect("the file is written");
                }
                console = false;
            }
            Some("console") => console = true,
            Some(info) => {
                let name = info
                    .split_once(' ')
                    .filter(|(kind, _)| ["downlead", "csv", "yaml", "sh", "text"].contains(kind));
                file = name.map(|(_, name)| dir.join(name));
            }
            None if file.is_some() => {
                text.push_str(line);
                text.push('\n');
            }
            None => {}
        }
        if console && fence.is_none() {
            let Some(command) = line.strip_prefix("$ ") else {
                continue;
            };
            let (printed, code) = run(command, dir);
            assert!(code < 2, "{at}: `{command}` ends with {code}:\n{printed}");
            *commands += 1;
            writeln!(out, "{line}").expect("text");
            for l in printed.trim_end().lines() {
                writeln!(out, "{}", l.trim_end()).expect("text");
            }
            continue;
        }
        writeln!(out, "{line}").expect("text");
    }
    out
}

#[test]
fn what_the_pages_show_is_what_the_program_prints() {
    let mut commands = 0;
    let mut wrong = Vec::new();
    for path in pages() {
        let page = fs::read_to_string(&path).expect("a page");
        let dir = tempfile::tempdir().expect("a folder");
        copy_all(&project("examples"), &dir.path().join("examples")).expect("the examples");
        let at = path.file_name().expect("a name").to_string_lossy();
        let want = rendered(&page, dir.path(), &at, &mut commands);
        if want == page {
            continue;
        }
        if std::env::var_os("UPDATE").is_some() {
            fs::write(&path, want).expect("the page is written");
        } else {
            let first = want.lines().zip(page.lines()).position(|(a, b)| a != b);
            let n = first.unwrap_or_else(|| want.lines().count().min(page.lines().count()));
            wrong.push(format!(
                "{at}:{}: the page has `{}`, the program prints `{}`",
                n + 1,
                page.lines().nth(n).unwrap_or(""),
                want.lines().nth(n).unwrap_or("")
            ));
        }
    }
    assert!(
        wrong.is_empty(),
        "{}\nUPDATE=1 writes them",
        wrong.join("\n")
    );
    // so that the test cannot pass by finding nothing
    assert!(commands > 25 || pages().len() < 5, "{commands} commands");
}

/// Headings as anchors: lower case, blanks as hyphens, no punctuation.
fn anchors(page: &str) -> Vec<String> {
    page.lines()
        .filter(|l| l.starts_with('#'))
        .map(|l| {
            l.trim_start_matches('#')
                .trim()
                .to_lowercase()
                .chars()
                .filter(|c| c.is_alphanumeric() || matches!(c, ' ' | '-' | '_'))
                .map(|c| if c == ' ' { '-' } else { c })
                .collect()
        })
        .collect()
}

/// Every link of the pages leads to a page of the site, at a heading that is there; every page of
/// the site is in its table of contents.
#[test]
fn the_links_of_the_pages_lead_somewhere() {
    let mut all = pages();
    for more in ["README.md", "SUMMARY.md", "glossary.md", "how-sure.md"] {
        all.push(project("docs").join(more));
    }
    let summary = fs::read_to_string(project("docs/SUMMARY.md")).expect("the contents");
    let (mut wrong, mut links) = (Vec::new(), 0);
    for path in &all {
        let page = fs::read_to_string(path).expect("a page");
        let name = path.file_name().expect("a name").to_string_lossy();
        if name != "SUMMARY.md" && !summary.contains(&format!("{name})")) {
            wrong.push(format!("{name} is not in SUMMARY.md"));
        }
        for link in page.split("](").skip(1).filter_map(|l| l.split(')').next()) {
            if link.starts_with("http") {
                continue;
            }
            links += 1;
            let (file, anchor) = link.split_once('#').unwrap_or((link, ""));
            let target = path.parent().expect("a folder").join(file);
            let Ok(text) = fs::read_to_string(&target) else {
                wrong.push(format!("{name}: no file {link}"));
                continue;
            };
            if !anchor.is_empty() && !anchors(&text).iter().any(|a| a == anchor) {
                wrong.push(format!("{name}: no heading {link}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(links > 30, "{links} links");
}
