//! The root folder: the same from every working directory.

use crate::{GOOD, folder, run, run_with};

/// A library beside the sites that use it.
fn sites() -> tempfile::TempDir {
    folder(&[
        ("work/lib/cables.downlead", "let mast = 30 m\n"),
        (
            "work/sites/a.downlead",
            &format!("use \"../lib/cables.downlead\"\n\n{GOOD}"),
        ),
    ])
}

#[test]
fn a_file_means_the_same_from_every_folder() {
    let dir = sites();
    std::fs::create_dir_all(dir.path().join("work/.git")).unwrap();
    let whole = dir.path().join("work/sites/a.downlead");
    let report = |from: &str, file: &str| {
        let r = run(
            &dir.path().join(from),
            &["report", "--format", "json", file],
        );
        assert_eq!(r.code, Some(0), "from {from}: {}{}", r.out, r.err);
        r.out
    };
    let top = report("work", "sites/a.downlead");
    assert!(top.contains("\"file\": \"sites/a.downlead\""), "{top}");
    for (from, file) in [
        ("work/sites", "a.downlead"),
        ("work/lib", "../sites/a.downlead"),
        ("", "work/sites/a.downlead"),
        ("", whole.to_str().unwrap()),
    ] {
        assert_eq!(report(from, file), top, "from {from}");
    }
}

#[test]
fn without_a_repository_the_use_lines_below_home_count() {
    let dir = sites();
    let sites = dir.path().join("work/sites");
    let home = dir.path().to_str().unwrap();
    let at_home = run_with(&sites, &["check", "a.downlead"], &[("HOME", home)]);
    assert_eq!(at_home.code, Some(0), "{}", at_home.out);
    let elsewhere = run_with(&sites, &["check", "a.downlead"], &[("HOME", "/nowhere")]);
    assert_eq!(elsewhere.code, Some(1), "{}", elsewhere.out);
    // the message names the root and says how it was found
    let root = sites.canonicalize().unwrap();
    let said = format!("outside the root folder {}", root.display());
    assert!(elsewhere.out.contains(&said), "{}", elsewhere.out);
    assert!(
        elsewhere.out.contains(".downlead-root"),
        "{}",
        elsewhere.out
    );
    // the folder that is named belongs to it
    let named = run_with(&sites, &["check", ".."], &[("HOME", "/nowhere")]);
    assert_eq!(named.code, Some(0), "{}", named.out);
    // so does a folder with the marker
    std::fs::write(dir.path().join("work/.downlead-root"), "").unwrap();
    let marked = run_with(&sites, &["check", "a.downlead"], &[("HOME", "/nowhere")]);
    assert_eq!(marked.code, Some(0), "{}", marked.out);
}

#[test]
fn paths_are_shown_from_the_current_folder() {
    let dir = folder(&[
        ("w/.downlead-root", ""),
        ("w/lib/c.downlead", "let mast = 30 m of\n"),
        ("w/sites/a.downlead", "use \"../lib/c.downlead\"\n"),
    ]);
    let r = run(&dir.path().join("w/sites"), &["check", "a.downlead"]);
    assert!(r.out.contains(" ../lib/c.downlead:1:"), "{}", r.out);
}

#[test]
fn backslashes_are_pointed_out_with_the_path_to_write() {
    let dir = folder(&[("a.downlead", "use \"lib\\x.downlead\"\n")]);
    let r = run(dir.path(), &["check"]);
    assert!(r.out.contains("write: use \"lib/x.downlead\""), "{}", r.out);
}
