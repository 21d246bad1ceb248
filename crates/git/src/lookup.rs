//! Finds the program `git`.
//!
//! It is started in the folder that is asked about, which may come from a stranger. A relative or
//! empty entry of the PATH would be looked up in that folder, so only absolute entries count.

use std::env;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// The program, and the PATH it is started with.
pub(crate) struct Found {
    pub(crate) program: PathBuf,
    /// The absolute entries of the PATH: `git` looks up its own helpers there. None where there is
    /// no PATH at all, and the system's own default holds.
    pub(crate) path: Option<OsString>,
}

/// The program `git`, looked up until it is found and then no more.
pub(crate) fn git() -> Option<&'static Found> {
    static FOUND: OnceLock<Found> = OnceLock::new();
    if let Some(found) = FOUND.get() {
        return Some(found);
    }
    let found = search(env::var_os("PATH"))?;
    Some(FOUND.get_or_init(|| found))
}

fn search(path: Option<OsString>) -> Option<Found> {
    let name = format!("git{}", env::consts::EXE_SUFFIX);
    // what the C library searches without a PATH
    let searched = path.clone().unwrap_or_else(|| "/bin:/usr/bin".into());
    let folders: Vec<PathBuf> = env::split_paths(&searched)
        .filter(|folder| folder.is_absolute())
        .collect();
    let program = folders
        .iter()
        .map(|folder| folder.join(&name))
        .find(|program| can_be_run(program))?;
    Some(Found {
        program,
        path: path.and_then(|_| env::join_paths(folders).ok()),
    })
}

#[cfg(unix)]
fn can_be_run(program: &Path) -> bool {
    use std::os::unix::fs::PermissionsExt;
    program
        .metadata()
        .is_ok_and(|facts| facts.is_file() && facts.permissions().mode() & 0o111 != 0)
}

#[cfg(not(unix))]
fn can_be_run(program: &Path) -> bool {
    program.is_file()
}
