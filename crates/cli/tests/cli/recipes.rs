//! The recipes of `docs/changes.md` do what they say, in real repositories.
#![cfg(unix)]

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use crate::diff::repository;

fn recipe(name: &str) -> String {
    let page = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/changes.md");
    let page = std::fs::read_to_string(page).unwrap();
    let fence = ["sh", "yaml"].map(|word| format!("```{word} {name}\n"));
    let (_, rest) = fence
        .iter()
        .find_map(|f| page.split_once(f))
        .expect("the recipe");
    rest.split_once("```").expect("its end").0.to_owned()
}

/// A command in a folder, with the program on the PATH.
fn shell(dir: &Path, command: &str, env: &[(&str, &str)]) -> Output {
    let program = PathBuf::from(assert_cmd::cargo::cargo_bin!("downlead"));
    let folder = program.parent().unwrap().display().to_string();
    let path = format!("{folder}:{}", std::env::var("PATH").unwrap());
    Command::new("sh")
        .args(["-ec", command])
        .current_dir(dir)
        .env("PATH", path)
        .env("GIT_CONFIG_GLOBAL", "/dev/null")
        .env("GIT_AUTHOR_NAME", "x")
        .env("GIT_AUTHOR_EMAIL", "x@example.org")
        .env("GIT_COMMITTER_NAME", "x")
        .env("GIT_COMMITTER_EMAIL", "x@example.org")
        .env_remove("NO_COLOR")
        .envs(env.iter().copied())
        .output()
        .unwrap()
}

fn out(o: &Output) -> String {
    format!(
        "{}{}",
        String::from_utf8_lossy(&o.stdout),
        String::from_utf8_lossy(&o.stderr)
    )
}

fn edit(dir: &Path, from: &str, to: &str) {
    let path = dir.join("isle/hill.downlead");
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains(from));
    std::fs::write(&path, text.replace(from, to)).unwrap();
}

#[test]
fn the_diff_driver_says_what_changes() {
    let dir = repository();
    let done = shell(dir.path(), &recipe("driver"), &[]);
    assert!(done.status.success(), "{}", out(&done));
    edit(dir.path(), "32 W", "20 W");
    let said = out(&shell(dir.path(), "git diff", &[]));
    assert!(
        said.contains("hill: footprint, smaller") && said.contains("ERP"),
        "{said}"
    );
    assert!(!said.contains("external diff died"), "{said}");
    // committed states, where the files are temporary ones of git
    let said = out(&shell(
        dir.path(),
        "git diff HEAD~2 HEAD~1 -- isle/hill.downlead",
        &[],
    ));
    assert!(said.contains("46 m") && said.contains("86 m"), "{said}");
    // a file that comes, and a comment alone
    let said = out(&shell(
        dir.path(),
        "git log -p --ext-diff --root -- isle",
        &[],
    ));
    assert!(said.contains("hill: footprint, larger, new"), "{said}");
    let said = out(&shell(dir.path(), "git diff HEAD~1 HEAD", &[]));
    assert!(!said.contains("What changes"), "{said}");
}

#[test]
fn the_hook_refuses_what_gets_worse() {
    use std::os::unix::fs::PermissionsExt;
    let dir = repository();
    let hook = dir.path().join(".git/hooks/pre-commit");
    std::fs::create_dir_all(hook.parent().unwrap()).unwrap();
    std::fs::write(&hook, recipe("pre-commit")).unwrap();
    std::fs::set_permissions(&hook, std::fs::Permissions::from_mode(0o755)).unwrap();
    let commit = || shell(dir.path(), "git add -A; git commit -q -m x", &[]);
    let done = commit();
    assert!(done.status.success(), "{}", out(&done));
    edit(dir.path(), "32 W", "90 W");
    let done = commit();
    assert!(
        !done.status.success() && out(&done).contains("not met"),
        "{}",
        out(&done)
    );
}

#[test]
fn the_build_annotates_and_writes_a_comment() {
    let dir = repository();
    shell(
        dir.path(),
        "git checkout -q -f .; git checkout -q -b change",
        &[],
    );
    let build = |env: &[(&str, &str)]| shell(dir.path(), &recipe("build"), env);
    let comment = || std::fs::read_to_string(dir.path().join("on-the-air.md")).unwrap();
    let done = build(&[("BASE", "main")]);
    assert!(
        done.status.success() && done.stdout.is_empty(),
        "{}",
        out(&done)
    );
    assert_eq!(comment(), "");
    edit(dir.path(), "32 W", "90 W");
    shell(dir.path(), "git commit -q -a -m x", &[]);
    let done = build(&[("BASE", "main")]);
    assert_eq!(done.status.code(), Some(1), "{}", out(&done));
    assert!(
        out(&done).starts_with("::error file=isle/hill.downlead,line="),
        "{}",
        out(&done)
    );
    assert!(
        comment().starts_with("# What changes on the air"),
        "{}",
        comment()
    );
    // the commands of the workflow file are those
    let workflow = recipe("workflow");
    let runs: String = workflow
        .lines()
        .map(|l| l.trim().trim_start_matches("- run: "))
        .filter(|l| l.starts_with("downlead") || l.starts_with("cat"))
        .map(|l| format!("{l}\n"))
        .collect();
    shell(
        dir.path(),
        "git update-ref refs/remotes/origin/main main",
        &[],
    );
    let summary = dir.path().join("summary.md");
    let env = [
        ("GITHUB_BASE_REF", "main"),
        ("GITHUB_STEP_SUMMARY", summary.to_str().unwrap()),
    ];
    let done = shell(dir.path(), &runs, &env);
    assert_eq!(done.status.code(), Some(1), "{}", out(&done));
    assert!(
        std::fs::read_to_string(&summary)
            .unwrap()
            .contains("hill: footprint, larger")
    );
}
