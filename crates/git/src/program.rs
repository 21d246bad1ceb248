//! The program `git`, started and waited for.

use std::io::{Read, Write};
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::mpsc::channel;
use std::time::Duration;

/// `git` is waited for no longer than this.
const PATIENCE: Duration = Duration::from_secs(10);
/// No more than this is read of what it prints.
const MOST: usize = 256 << 20;

/// The output of `git`, at most 256 MiB; none if it fails.
///
/// # Errors
/// Why it could not be asked, in words for people.
pub(crate) fn git(folder: &Path, args: &[&str]) -> Result<Option<Vec<u8>>, String> {
    git_with(folder, args, None)
}

/// Settings that hold whatever the user's and the folder's own files say: nothing is fetched, no
/// program checks a signature, and what is printed has one form.
const SETTINGS: [&str; 5] = [
    "protocol.allow=never",
    "log.showSignature=false",
    "log.showRoot=true",
    "diff.relative=false",
    "core.quotePath=false",
];

/// The same with something to read.
pub(crate) fn git_with(
    folder: &Path,
    args: &[&str],
    input: Option<String>,
) -> Result<Option<Vec<u8>>, String> {
    let Some(found) = crate::lookup::git() else {
        return Err("The program `git` was not found; it is needed to read earlier states. Install it, or put its folder on the PATH, written from the root on.".to_owned());
    };
    let mut command = Command::new(&found.program);
    if let Some(path) = &found.path {
        command.env("PATH", path);
    }
    let child = command
        .arg("--no-pager")
        .args(SETTINGS.iter().flat_map(|s| ["-c", s]))
        .args(args)
        .current_dir(folder)
        // a hook's own repository is not that of the file asked about
        .env_remove("GIT_DIR")
        .env_remove("GIT_WORK_TREE")
        .env_remove("GIT_INDEX_FILE")
        .env_remove("GIT_PREFIX")
        // nothing is asked of the user, locked, or fetched over the network
        .env("GIT_TERMINAL_PROMPT", "0")
        .env("GIT_OPTIONAL_LOCKS", "0")
        .env("GIT_NO_LAZY_FETCH", "1")
        // an older git does not know the line above, and a folder's own `protocol.NAME.allow`
        // overrides `protocol.allow`. This list overrides both, and no transport has this name.
        .env("GIT_ALLOW_PROTOCOL", "none")
        .stdin(if input.is_some() {
            Stdio::piped()
        } else {
            Stdio::null()
        })
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn();
    let mut child = match child {
        Ok(child) => child,
        Err(_) if !folder.is_dir() => {
            return Err(format!("There is no folder {}.", folder.display()));
        }
        Err(e) => return Err(format!("The program `git` cannot be started: {e}.")),
    };
    if let (Some(text), Some(mut pipe)) = (input, child.stdin.take()) {
        // on its own thread while this one reads: both pipes may be full
        std::thread::spawn(move || pipe.write_all(text.as_bytes()));
    }
    let Some(output) = child.stdout.take() else {
        return Err("The program `git` gives no output.".to_owned());
    };
    let (done, wait) = channel();
    std::thread::spawn(move || {
        let mut bytes = Vec::new();
        let read = output.take(MOST as u64).read_to_end(&mut bytes);
        _ = done.send(read.map(|_| bytes));
    });
    let Ok(read) = wait.recv_timeout(PATIENCE) else {
        _ = child.kill();
        _ = child.wait();
        return Err(format!(
            "The program `git` did not answer within {} s.",
            PATIENCE.as_secs()
        ));
    };
    let cut = read.as_ref().is_ok_and(|b| b.len() >= MOST);
    if cut {
        // it would block on its full pipe
        _ = child.kill();
    }
    let sound = child.wait().is_ok_and(|s| s.success());
    Ok(read.ok().filter(|_| sound || cut))
}
