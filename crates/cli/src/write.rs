//! Files written whole or not at all.

use std::fs;
use std::io::{self, Write};
use std::path::Path;

/// Writes a file that is not there yet; folders are made.
///
/// # Errors
/// `AlreadyExists` if there is one, also when it appears meanwhile; else the system's.
pub(crate) fn new(path: &Path, text: &str) -> io::Result<()> {
    // an exclusive link refuses an existing name
    beside(path, text)?
        .persist_noclobber(path)
        .map_err(|e| e.error)?;
    Ok(())
}

/// Writes a file, in place of one that is there; folders are made.
///
/// # Errors
/// The system's.
pub(crate) fn replace(path: &Path, text: &str) -> io::Result<()> {
    // a link stays a link to what is now written
    let real = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let file = beside(&real, text)?;
    if let Ok(facts) = fs::metadata(&real) {
        file.as_file().set_permissions(facts.permissions())?;
    }
    file.persist(&real).map_err(|e| e.error)?;
    Ok(())
}

/// A temporary file with the text in the folder of `path`.
fn beside(path: &Path, text: &str) -> io::Result<tempfile::NamedTempFile> {
    let folder = match path.parent() {
        Some(f) if !f.as_os_str().is_empty() => f,
        _ => Path::new("."),
    };
    fs::create_dir_all(folder)?;
    let mut builder = tempfile::Builder::new();
    builder.prefix(".downlead-");
    // a temporary file's usual mode is for one user only; the user's mask still applies to this one
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(text.as_bytes())?;
    file.as_file().sync_all()?;
    Ok(file)
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
        assert_eq!(fs::read_dir(dir.path().join("sub")).unwrap().count(), 1);
    }
}
