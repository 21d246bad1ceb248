//! A folder from a stranger: nothing in it is executed when its history is asked for.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::check::READ;
use crate::{downlead, folder};

/// A repository, the tools of the test beside it, and the file that shows that something was run.
struct Trap {
    dir: tempfile::TempDir,
    /// The program `git` of this system.
    git: PathBuf,
}

impl Trap {
    fn new() -> Trap {
        let dir = folder(&[("opened/bench.downlead", READ)]);
        let found = Command::new("sh").args(["-c", "command -v git"]).output();
        let found = String::from_utf8(found.expect("sh").stdout).expect("text");
        let trap = Trap {
            dir,
            git: PathBuf::from(found.trim()),
        };
        assert!(trap.git.is_absolute(), "this test needs git");
        trap.script("tools/evil", "echo \"$0 $*\" >\"$MARKER\"; exit 1");
        for args in [
            &["init", "-q"][..],
            &["add", "."],
            &["commit", "-q", "-m", "as read"],
        ] {
            trap.ask(&trap.git, args, true);
        }
        trap
    }

    fn at(&self, path: &str) -> PathBuf {
        self.dir.path().join(path)
    }

    fn opened(&self) -> PathBuf {
        self.at("opened")
    }

    fn script(&self, path: &str, body: &str) -> PathBuf {
        let path = self.at(path);
        fs::create_dir_all(path.parent().expect("a parent")).expect("folders");
        fs::write(&path, format!("#!/bin/sh\n{body}\n")).expect("a file");
        fs::set_permissions(&path, fs::Permissions::from_mode(0o755)).expect("a mode");
        path
    }

    /// Runs a `git` in the opened folder, as a user without settings.
    fn ask(&self, git: &Path, args: &[&str], sound: bool) {
        let done = Command::new(git)
            .args(["-c", "user.name=QY2TEC", "-c", "user.email=x@example.org"])
            .args(["-c", "commit.gpgSign=false"])
            .args(args)
            .current_dir(self.opened())
            .envs(self.surroundings())
            // long enough ago to be no draft
            .env("GIT_AUTHOR_DATE", "2026-07-04T20:00:00+0000")
            .env("GIT_NO_LAZY_FETCH", "1")
            .output()
            .expect("git starts");
        assert_eq!(done.status.success(), sound, "{args:?}: {done:?}");
    }

    fn surroundings(&self) -> [(&'static str, std::ffi::OsString); 3] {
        [
            ("GIT_CONFIG_GLOBAL", "/dev/null".into()),
            ("GIT_CONFIG_NOSYSTEM", "1".into()),
            ("MARKER", self.at("marker").into()),
        ]
    }

    fn configure(&self, settings: &[(&str, &str)]) {
        for (key, value) in settings {
            self.ask(&self.git, &["config", key, value], true);
        }
    }

    /// Whether something of the opened folder was run; forgotten afterwards.
    fn sprung(&self) -> bool {
        fs::remove_file(self.at("marker")).is_ok()
    }

    /// Takes the text away from the repository, as a partial clone leaves it out.
    fn lose_the_text(&self) {
        let name = Command::new(&self.git)
            .args(["rev-parse", "HEAD:bench.downlead"])
            .current_dir(self.opened())
            .output()
            .expect("git starts");
        let name = String::from_utf8(name.stdout).expect("text");
        let (folder, rest) = name.trim().split_at(2);
        let object = format!("opened/.git/objects/{folder}/{rest}");
        fs::remove_file(self.at(&object)).expect("the text as an object of its own");
    }

    /// Asks for the history from elsewhere with this PATH; gives all that is printed.
    fn history(&self, path: &str) -> String {
        let outside = self.at("elsewhere");
        fs::create_dir_all(&outside).expect("a folder");
        let done = downlead(&outside)
            .args(["check", "--history"])
            .arg(self.at("opened/bench.downlead"))
            .envs(self.surroundings())
            .env("PATH", path)
            .output()
            .expect("the program starts");
        String::from_utf8([done.stdout, done.stderr].concat()).expect("text")
    }

    /// The PATH of the test, which names this system's `git`.
    fn path() -> String {
        std::env::var("PATH").expect("a PATH")
    }
}

/// An older `git` fetches what a partial clone left out whatever `GIT_NO_LAZY_FETCH` says, by a
/// program that the folder's settings name.
#[test]
fn an_older_git_executes_no_transport_of_the_opened_folder() {
    for (url, settings) in [
        ("ext::EVIL %S", &[("protocol.ext.allow", "always")][..]),
        (
            "ssh://example.org/x",
            &[
                ("protocol.ssh.allow", "always"),
                ("core.sshCommand", "EVIL"),
                ("ssh.variant", "simple"),
            ],
        ),
    ] {
        let trap = Trap::new();
        let evil = trap.at("tools/evil").display().to_string();
        let url = url.replace("EVIL", &evil);
        trap.configure(&[
            ("core.repositoryFormatVersion", "1"),
            ("extensions.partialClone", "origin"),
            ("remote.origin.promisor", "true"),
            ("remote.origin.url", &url),
        ]);
        for (key, value) in settings {
            trap.configure(&[(key, &value.replace("EVIL", &evil))]);
        }
        trap.lose_the_text();
        let git = trap.git.display();
        let older = trap.script(
            "older/git",
            &format!(
                "unset GIT_NO_LAZY_FETCH\necho \"$*\" >>\"$MARKER.asked\"\nexec '{git}' \"$@\""
            ),
        );
        // the trap is live, also where all transports are refused by a setting
        let show = ["cat-file", "blob", "HEAD:bench.downlead"];
        trap.ask(&older, &show, false);
        assert!(trap.sprung(), "{url}");
        trap.ask(
            &older,
            &[&["-c", "protocol.allow=never"], &show[..]].concat(),
            false,
        );
        assert!(trap.sprung(), "{url}");
        fs::remove_file(trap.at("marker.asked")).expect("it was asked");

        let older = older.parent().expect("a folder").display().to_string();
        let path = format!("{older}:{}", Trap::path());
        let said = trap.history(&path);
        assert!(!trap.sprung(), "{url}: {said}");
        let asked = fs::read_to_string(trap.at("marker.asked")).expect("it was asked");
        assert!(asked.contains("cat-file --batch"), "{asked}");
    }
}

/// `git` is started in the opened folder, so a relative entry of the PATH would mean that folder.
#[test]
fn a_git_that_lies_in_the_opened_folder_is_not_executed() {
    let trap = Trap::new();
    fs::write(
        trap.at("opened/bench.downlead"),
        READ.replace("26.0 W", "25.6 W"),
    )
    .expect("written");
    let run = format!(
        "echo \"$0 $*\" >\"$MARKER\"; exec '{}' \"$@\"",
        trap.git.display()
    );
    trap.script("opened/git", &run);
    trap.script("opened/node_modules/.bin/git", &run);
    // notes down the PATH that `git` has for its own helpers
    let noting = format!(
        "echo \"$PATH\" >\"$MARKER.path\"; exec '{}' \"$@\"",
        trap.git.display()
    );
    trap.script("noting/git", &noting);
    let rest = format!("{}:{}", trap.at("noting").display(), Trap::path());
    for path in [
        format!(".:{rest}"),
        format!(":{rest}"),
        format!("/nowhere::{rest}"),
        format!("./node_modules/.bin:{rest}"),
        format!("node_modules/.bin:{rest}:."),
    ] {
        // the trap is live: a plain look-up in that folder takes it
        let plain = Command::new("/bin/sh")
            .args(["-c", "git --version"])
            .current_dir(trap.opened())
            .envs(trap.surroundings())
            .env("PATH", &path)
            .output()
            .expect("sh");
        assert!(trap.sprung(), "{path}: {plain:?}");

        let said = trap.history(&path);
        assert!(!trap.sprung(), "{path}: {said}");
        assert!(said.contains("[reading-edited]"), "{path}: {said}");
        let noted = fs::read_to_string(trap.at("marker.path")).expect("it was asked");
        let all_absolute = std::env::split_paths(noted.trim_end()).all(|f| f.is_absolute());
        assert!(all_absolute, "{path}: {noted}");
    }
    // nothing but that folder: as if there were none
    let said = trap.history("node_modules/.bin:.");
    assert!(!trap.sprung(), "{said}");
    assert!(said.contains("`git` was not found"), "{said}");
}
