//! `fmt`: what it changes, and above all what it leaves alone when something fails.

use std::fs;
use std::path::Path;

use crate::{GOOD, downlead, folder, run};

/// GOOD with untidy blanks.
fn untidy() -> String {
    GOOD.replace("    run 28 m", "  run   28 m ")
        .replace("antenna 4.5 dBi", "antenna 4.5 dBi   ")
}

/// No temporary file is left beside the one formatted.
fn alone(folder: &Path) -> bool {
    fs::read_dir(folder).unwrap().count() == 1
}

#[test]
fn files_are_tidied_and_named() {
    let dir = folder(&[("a.downlead", &untidy())]);
    let file = dir.path().join("a.downlead");
    let check = run(dir.path(), &["fmt", "--check", "."]);
    assert_eq!((check.code, check.out.as_str()), (Some(1), "a.downlead\n"));
    assert_eq!(fs::read_to_string(&file).unwrap(), untidy());
    let r = run(dir.path(), &["fmt", "a.downlead"]);
    assert_eq!(
        (r.code, r.out.as_str(), r.err.as_str()),
        (Some(0), "a.downlead\n", "")
    );
    assert_eq!(fs::read_to_string(&file).unwrap(), GOOD);
    let again = run(dir.path(), &["fmt", "--check", "."]);
    assert_eq!((again.code, again.out.as_str()), (Some(0), ""));
    assert!(alone(dir.path()));
}

#[test]
fn standard_input_goes_to_standard_output() {
    let dir = folder(&[]);
    let out = downlead(dir.path())
        .args(["fmt", "-"])
        .write_stdin(untidy())
        .output()
        .unwrap();
    assert_eq!(String::from_utf8(out.stdout).unwrap(), GOOD);
    let check = downlead(dir.path())
        .args(["fmt", "--check", "-"])
        .write_stdin(untidy())
        .output()
        .unwrap();
    assert_eq!((check.status.code(), check.stdout.len()), (Some(1), 0));
    let latin = downlead(dir.path())
        .args(["fmt", "-"])
        .write_stdin(&b"// caf\xe9"[..])
        .output()
        .unwrap();
    assert_eq!((latin.status.code(), latin.stdout.len()), (Some(2), 0));
    assert!(String::from_utf8(latin.stderr).unwrap().contains("byte 6"));
    assert_eq!(run(dir.path(), &["fmt", "-", "x"]).code, Some(2));
}

#[test]
fn carriage_returns_stay() {
    let text = untidy().replace('\n', "\r\n");
    let dir = folder(&[("a.downlead", &text)]);
    assert_eq!(run(dir.path(), &["fmt", "."]).code, Some(0));
    assert_eq!(
        fs::read_to_string(dir.path().join("a.downlead")).unwrap(),
        GOOD.replace('\n', "\r\n")
    );
}

#[test]
fn a_broken_file_keeps_every_mark() {
    let text = "chain x on 1 MHz {\n  run   28 m of {{ \"open\n }\n}}}\n  ± λ \u{7} ;;\n";
    let dir = folder(&[("a.downlead", text)]);
    let r = run(dir.path(), &["fmt", "."]);
    let marks = |s: &str| s.chars().filter(|c| !c.is_whitespace()).collect::<String>();
    assert_eq!(r.code, Some(0), "{}", r.err);
    assert_eq!(
        marks(&fs::read_to_string(dir.path().join("a.downlead")).unwrap()),
        marks(text)
    );
}

#[cfg(unix)]
mod unix {
    use super::*;
    use std::os::unix::fs::{MetadataExt, PermissionsExt, symlink};
    use std::process::Command;

    #[test]
    fn permissions_and_owner_stay() {
        let dir = folder(&[("a.downlead", &untidy())]);
        let file = dir.path().join("a.downlead");
        fs::set_permissions(&file, fs::Permissions::from_mode(0o640)).unwrap();
        let before = fs::metadata(&file).unwrap();
        assert_eq!(run(dir.path(), &["fmt", "."]).code, Some(0));
        let after = fs::metadata(&file).unwrap();
        assert_eq!(
            (after.mode(), after.uid(), after.gid()),
            (before.mode(), before.uid(), before.gid())
        );
        assert_ne!(
            after.ino(),
            before.ino(),
            "replaced in one step, not written over"
        );
    }

    #[test]
    fn a_link_stays_a_link() {
        let dir = folder(&[("real/a.downlead", &untidy())]);
        symlink("real/a.downlead", dir.path().join("link.downlead")).unwrap();
        let r = run(dir.path(), &["fmt", "link.downlead"]);
        assert_eq!((r.code, r.out.as_str()), (Some(0), "real/a.downlead\n"));
        assert!(
            fs::symlink_metadata(dir.path().join("link.downlead"))
                .unwrap()
                .is_symlink()
        );
        assert_eq!(
            fs::read_to_string(dir.path().join("real/a.downlead")).unwrap(),
            GOOD
        );
    }

    #[test]
    fn a_read_only_file_is_left() {
        let dir = folder(&[("a.downlead", &untidy())]);
        let file = dir.path().join("a.downlead");
        fs::set_permissions(&file, fs::Permissions::from_mode(0o444)).unwrap();
        let r = run(dir.path(), &["fmt", "."]);
        assert_eq!(r.code, Some(2));
        assert!(r.err.contains("read-only"), "{}", r.err);
        assert_eq!(fs::read_to_string(&file).unwrap(), untidy());
    }

    /// A new file would take this name only, and the other would keep the old text.
    #[test]
    fn a_file_with_two_names_is_left() {
        let dir = folder(&[("a.downlead", &untidy()), ("b/c.downlead", GOOD)]);
        let (file, other) = (dir.path().join("a.downlead"), dir.path().join("b/a.txt"));
        fs::hard_link(&file, &other).unwrap();
        let r = run(dir.path(), &["fmt", "a.downlead"]);
        assert_eq!((r.code, r.out.as_str()), (Some(2), ""));
        assert!(r.err.contains("2 names (hard links)"), "{}", r.err);
        assert_eq!(fs::read_to_string(&file).unwrap(), untidy());
        assert_eq!(fs::metadata(&other).unwrap().nlink(), 2);
        // what needs no change is no trouble
        fs::write(&file, GOOD).unwrap();
        assert_eq!(run(dir.path(), &["fmt", "a.downlead"]).code, Some(0));
        assert_eq!(fs::metadata(&other).unwrap().nlink(), 2);
        fs::write(&file, untidy()).unwrap();
        fs::remove_file(&other).unwrap();
        assert_eq!(run(dir.path(), &["fmt", "a.downlead"]).code, Some(0));
        assert_eq!(fs::read_to_string(&file).unwrap(), GOOD);
    }

    /// The program under a limit on the size of files it may write: writing fails as on a full disk.
    fn limited(folder: &Path, blocks: u32, args: &str) -> std::process::Output {
        let program = assert_cmd::cargo::cargo_bin!("downlead");
        // with the signal ignored the write fails with an error instead of ending the program
        let script = format!("trap '' XFSZ; ulimit -f {blocks}; exec \"$0\" {args}");
        Command::new("sh")
            .args(["-c", &script])
            .arg(program)
            .current_dir(folder)
            .output()
            .unwrap()
    }

    #[test]
    fn no_room_leaves_the_old_text() {
        let long = untidy() + &"// a comment to fill the file \n".repeat(2000);
        let dir = folder(&[("a.downlead", &long)]);
        let out = limited(dir.path(), 8, "fmt a.downlead");
        let err = String::from_utf8(out.stderr).unwrap();
        assert_eq!(out.status.code(), Some(2), "{err}");
        assert!(err.contains("the file is as it was"), "{err}");
        assert_eq!(
            fs::read_to_string(dir.path().join("a.downlead")).unwrap(),
            long
        );
        assert!(alone(dir.path()), "no half-written file is left");
        // with room it works, so the test tests what it says
        assert_eq!(
            limited(dir.path(), 10_000, "fmt a.downlead").status.code(),
            Some(0)
        );
    }

    #[test]
    fn a_really_full_disk_leaves_the_old_text() {
        let dir = tempfile::tempdir().unwrap();
        let mounted = Command::new("mount")
            .args(["-t", "tmpfs", "-o", "size=64k", "none"])
            .arg(dir.path())
            .stderr(std::process::Stdio::null())
            .status()
            .is_ok_and(|s| s.success());
        if !mounted {
            // only the system's administrator may mount; the test above shows the same elsewhere
            return;
        }
        let long = untidy() + &"// a comment to fill the file \n".repeat(1300);
        let file = dir.path().join("a.downlead");
        fs::write(&file, &long).unwrap();
        let r = run(dir.path(), &["fmt", "a.downlead"]);
        let after = fs::read_to_string(&file).unwrap();
        let alone = alone(dir.path());
        assert!(
            Command::new("umount")
                .arg(dir.path())
                .status()
                .unwrap()
                .success()
        );
        assert_eq!(r.code, Some(2), "{r:?}");
        assert!(r.err.contains("no space left"), "{}", r.err);
        assert_eq!(after, long);
        assert!(alone);
    }

    #[test]
    fn a_read_only_folder_is_left() {
        let dir = folder(&[("in/a.downlead", &untidy())]);
        let inner = dir.path().join("in");
        fs::set_permissions(dir.path(), fs::Permissions::from_mode(0o755)).unwrap();
        fs::set_permissions(&inner, fs::Permissions::from_mode(0o555)).unwrap();
        let program = assert_cmd::cargo::cargo_bin!("downlead");
        let by_mode = fs::write(inner.join("probe"), "").is_err();
        let run = if by_mode {
            Command::new(program)
                .args(["fmt", "in/a.downlead"])
                .current_dir(dir.path())
                .output()
                .ok()
        } else {
            // mode bits do not bind the administrator: become another user where possible
            let _ = fs::remove_file(inner.join("probe"));
            Command::new("setpriv")
                .args(["--reuid", "65534", "--regid", "65534", "--clear-groups"])
                .arg(program)
                .args(["fmt", "in/a.downlead"])
                .current_dir(dir.path())
                .output()
                .ok()
                .filter(|o| o.status.code() != Some(127) && o.status.code() != Some(126))
        };
        fs::set_permissions(&inner, fs::Permissions::from_mode(0o755)).unwrap();
        let Some(run) = run else { return };
        let err = String::from_utf8(run.stderr).unwrap();
        assert_eq!(run.status.code(), Some(2), "{err}");
        assert!(err.contains("cannot write: permission denied"), "{err}");
        assert_eq!(
            fs::read_to_string(inner.join("a.downlead")).unwrap(),
            untidy()
        );
    }
}
