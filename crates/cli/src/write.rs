//! Files written whole or not at all.

use std::fs;
use std::io::{self, Write};
use std::path::Path;
use std::time::Duration;

use crate::loader::{plain_io, read_regular};

/// Another writer is waited for no longer than this.
pub(crate) const PATIENCE: Duration = Duration::from_secs(10);

/// Why a file was not replaced.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Refusal {
    /// It is no longer what was read.
    Changed,
    /// The reason in words for people, to follow the file's name and a colon.
    Because(String),
}

/// Writes a file that is not there yet; folders are made.
///
/// # Errors
/// `AlreadyExists` if there is one, also when it appears meanwhile; else the system's.
pub(crate) fn new(path: &Path, text: &str) -> io::Result<()> {
    // an exclusive link refuses an existing name
    beside(path, text, None)?
        .persist_noclobber(path)
        .map_err(|e| e.error)?;
    synchronise(path);
    Ok(())
}

/// Writes a file, in place of one that is there; folders are made.
///
/// # Errors
/// The system's.
pub(crate) fn replace(path: &Path, text: &str) -> io::Result<()> {
    // a link stays a link to what is now written
    let real = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let file = beside(&real, text, fs::metadata(&real).ok().as_ref())?;
    file.persist(&real).map_err(|e| e.error)?;
    synchronise(&real);
    Ok(())
}

/// Puts `text` in the place of the file at `path` in one step, as long as that file still holds
/// `before`: a new file in the same folder, on the disk before it takes the name. A failure at any
/// point leaves the old file. Of several runs of this program only one at a time gets as far as to
/// compare and replace; other programs are noticed if they wrote before the comparison.
///
/// # Errors
/// Also for a file that is marked read-only, or that has further names, which would keep the old text.
pub(crate) fn over(path: &Path, before: &str, text: &str) -> Result<(), Refusal> {
    // a link stays a link to what is now written
    let real = fs::canonicalize(path).map_err(|e| unreadable(&e))?;
    let facts = fs::metadata(&real).map_err(|e| unreadable(&e))?;
    if facts.permissions().readonly() {
        return Err(Refusal::Because("it is marked read-only".to_owned()));
    }
    let names = names(&facts);
    if names > 1 {
        return Err(Refusal::Because(format!(
            "it has {names} names (hard links), and only this one would get the new text; make it a file of its own first"
        )));
    }
    let file = beside(&real, text, Some(&facts)).map_err(|e| unwritable(&e))?;
    let _lock = lock(&real)?;
    if read_regular(&real).ok().as_deref() != Some(before.as_bytes()) {
        return Err(Refusal::Changed);
    }
    file.persist(&real).map_err(|e| unwritable(&e.error))?;
    synchronise(&real);
    Ok(())
}

/// A temporary file with the text in the folder of `path`, on the disk; with owner and permissions
/// of the file it is to replace.
fn beside(
    path: &Path,
    text: &str,
    old: Option<&fs::Metadata>,
) -> io::Result<tempfile::NamedTempFile> {
    let folder = folder(path);
    fs::create_dir_all(folder)?;
    let mut builder = tempfile::Builder::new();
    builder.prefix(".downlead-");
    // a temporary file's usual mode is for one user only; the user's mask still applies to this one
    #[cfg(unix)]
    if old.is_none() {
        builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    }
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(text.as_bytes())?;
    if let Some(old) = old {
        keep_owner(file.as_file(), old);
        file.as_file().set_permissions(old.permissions())?;
    }
    file.as_file().sync_all()?;
    Ok(file)
}

fn folder(path: &Path) -> &Path {
    match path.parent() {
        Some(f) if !f.as_os_str().is_empty() => f,
        _ => Path::new("."),
    }
}

/// Keeps other runs of this program from replacing the file until the lock is dropped. None where
/// the system or its disk has no locks: what it holds is compared all the same.
#[cfg(unix)]
fn lock(path: &Path) -> Result<Option<fs::File>, Refusal> {
    use rustix::fs::{FlockOperation, flock};
    use rustix::io::Errno;
    use std::os::unix::fs::MetadataExt;
    let begun = std::time::Instant::now();
    loop {
        let file = fs::File::open(path).map_err(|e| unreadable(&e))?;
        match flock(&file, FlockOperation::NonBlockingLockExclusive) {
            Ok(()) => {
                // between opening and locking another run may have put a new file in its place
                let (held, now) = (file.metadata(), fs::metadata(path));
                let place = |m: fs::Metadata| (m.dev(), m.ino());
                if held.ok().map(place) == now.ok().map(place) {
                    return Ok(Some(file));
                }
            }
            Err(Errno::WOULDBLOCK | Errno::INTR) => {
                std::thread::sleep(Duration::from_millis(2));
            }
            Err(_) => return Ok(None),
        }
        if begun.elapsed() > PATIENCE {
            return Err(Refusal::Because(format!(
                "another program has kept it locked for {} s",
                PATIENCE.as_secs()
            )));
        }
    }
}

#[cfg(not(unix))]
fn lock(_: &Path) -> Result<Option<fs::File>, Refusal> {
    Ok(None)
}

/// How many names (hard links) a file has, as far as the system says.
#[cfg(unix)]
fn names(facts: &fs::Metadata) -> u64 {
    std::os::unix::fs::MetadataExt::nlink(facts)
}

#[cfg(not(unix))]
fn names(_: &fs::Metadata) -> u64 {
    1
}

/// Owner and group as before, as far as the system lets us.
#[cfg(unix)]
fn keep_owner(new: &fs::File, before: &fs::Metadata) {
    use std::os::unix::fs::{MetadataExt, fchown};
    let _ = fchown(new, Some(before.uid()), Some(before.gid()))
        .or_else(|_| fchown(new, None, Some(before.gid())));
}

#[cfg(not(unix))]
fn keep_owner(_: &fs::File, _: &fs::Metadata) {}

/// The new name is in the folder; a folder that cannot be synchronised loses nothing but time.
fn synchronise(path: &Path) {
    #[cfg(unix)]
    if let Ok(folder) = fs::File::open(folder(path)) {
        let _ = folder.sync_all();
    }
    #[cfg(not(unix))]
    let _ = path;
}

/// What was read a moment ago and cannot be found now has changed.
fn unreadable(e: &io::Error) -> Refusal {
    match e.kind() {
        io::ErrorKind::NotFound => Refusal::Changed,
        _ => Refusal::Because(format!("it cannot be read: {}", plain_io(e))),
    }
}

fn unwritable(e: &io::Error) -> Refusal {
    Refusal::Because(match e.kind() {
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => {
            "there is no space left to write the new text".to_owned()
        }
        io::ErrorKind::FileTooLarge => {
            "the system allows no file as large as the new text".to_owned()
        }
        _ => format!("cannot write: {}", plain_io(e)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_made_refused_and_replaced() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("sub/a.txt");
        new(&path, "one").unwrap();
        assert_eq!(
            new(&path, "two").unwrap_err().kind(),
            io::ErrorKind::AlreadyExists
        );
        assert_eq!(fs::read_to_string(&path).unwrap(), "one");
        replace(&path, "three").unwrap();
        assert_eq!(fs::read_to_string(&path).unwrap(), "three");
        over(&path, "three", "four").unwrap();
        assert_eq!(fs::read_to_string(&path).unwrap(), "four");
        assert_eq!(fs::read_dir(dir.path().join("sub")).unwrap().count(), 1);
    }

    #[test]
    fn what_changed_since_it_was_read_is_left() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("a.txt");
        assert_eq!(over(&path, "", "new"), Err(Refusal::Changed));
        assert!(!path.exists());
        fs::write(&path, "as it is").unwrap();
        // as long, and within one tick of the file system's clock
        assert_eq!(over(&path, "as it was", "new"), Err(Refusal::Changed));
        assert_eq!(over(&path, "as it IS", "new"), Err(Refusal::Changed));
        assert_eq!(fs::read_to_string(&path).unwrap(), "as it is");
        assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 1);
    }

    /// The comparison waits for the one who is about to replace the file, and sees what it wrote.
    #[cfg(unix)]
    #[test]
    fn one_at_a_time_compares_and_replaces() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("a.txt");
        fs::write(&path, "one").unwrap();
        let held = lock(&path).unwrap();
        assert!(held.is_some(), "this test needs a disk that knows locks");
        let other = {
            let path = path.clone();
            std::thread::spawn(move || over(&path, "one", "two"))
        };
        std::thread::sleep(Duration::from_millis(300));
        assert_eq!(fs::read_to_string(&path).unwrap(), "one");
        fs::write(&path, "three").unwrap();
        drop(held);
        assert_eq!(other.join().unwrap(), Err(Refusal::Changed));
        assert_eq!(fs::read_to_string(&path).unwrap(), "three");
    }
}
