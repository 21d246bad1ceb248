//! A folder from a stranger: nothing in it is executed when its history is asked for.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::{downlead, folder};

/// With a reading in it, so that its history is asked for.
const READ: &str = "instrument W3 \"meter\" {\n    accuracy 5 % of reading\n}\n\nchain out on 145.3 MHz {\n    transmitter 30 W ± 5 % carrier, fm\n    run 28 m of half-inch-foam, at 15 °C\n    read 26.0 W forward, 2026-07-04 with W3 by QY2TEC\n    antenna 4.5 dBi ± 0.5 dB, swr 1.2\n}\n";

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

    /// Runs a `git` in the opened folder, as somebody without settings of their own.
    fn ask(&self, git: &Path, args: &[&str], sound: bool) {
        let done = Command::new(git)
            .args(["-c", "user.name=QY2TEC", "-c", "user.email=x@example.org"])
            .args(["-c", "commit.gpgSign=false"])
            .args(args)
            .current_dir(self.opened())
            .envs(self.surroundings())
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

    /// Asks for the history from elsewhere with this PATH; gives what is complained about.
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
        String::from_utf8(done.stderr).expect("text")
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
        let path = format!("{older}:{}", std::env::var("PATH").expect("a PATH"));
        let said = trap.history(&path);
        assert!(!trap.sprung(), "{url}: {said}");
        let asked = fs::read_to_string(trap.at("marker.asked")).expect("it was asked");
        assert!(asked.contains("cat-file --batch"), "{asked}");
    }
}
