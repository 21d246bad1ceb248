//! The built-in library as documents: under the server's own scheme, or as read-only files for
//! clients that can open nothing else.

use std::cell::RefCell;
use std::fs;
use std::hash::{Hash, Hasher};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use std::time::{Duration, SystemTime};

use ls_types::Uri;
use rustc_hash::FxHasher;

use crate::uris;

/// Names and files of the library, and of other texts the server makes.
#[derive(Default)]
pub(crate) struct Library {
    own_scheme: bool,
    /// Known once something was written.
    folder: RefCell<Option<Folder>>,
}

/// Where files are written.
struct Folder {
    path: PathBuf,
    /// Made for this process only and removed with it.
    passing: bool,
}

/// A file not written for this long is removed.
const STALE: Duration = Duration::from_secs(60 * 24 * 3600);

const PREFIX: &str = "library/";

impl Library {
    /// True if the client opens addresses of the server's own scheme.
    pub(crate) fn files_for_all(&mut self, own_scheme: bool) {
        self.own_scheme = own_scheme;
    }

    /// Index of `library/NAME`.
    pub(crate) fn index_of(&self, path: &str) -> Option<usize> {
        let name = path.strip_prefix(PREFIX)?;
        downlead_station::library()
            .files
            .iter()
            .position(|(n, _)| *n == name)
    }

    /// Index of a file that was made for a client, by this process or by one before it: editors
    /// open again what was open.
    pub(crate) fn index_of_file(&self, path: &Path) -> Option<usize> {
        let folder = self.folder.borrow();
        let written = folder.as_ref().map(|f| f.path.as_path());
        let name = [written, lasting()]
            .into_iter()
            .flatten()
            .find_map(|f| uris::below(f, path))?;
        self.index_of(&name)
    }

    /// Address of `library/NAME`.
    pub(crate) fn address(&self, path: &str) -> Option<Uri> {
        if self.own_scheme {
            return uris::own(path, None);
        }
        let text = downlead_station::library().files[self.index_of(path)?]
            .1
            .text();
        self.file(path, text)
    }

    /// A read-only file with that text below the server's own folder.
    pub(crate) fn file(&self, path: &str, text: &str) -> Option<Uri> {
        let mut folder = self.folder.borrow_mut();
        if folder.is_none() {
            *folder = Some(Folder::open()?);
        }
        let file = folder.as_ref()?.path.join(path);
        if fs::read(&file)
            .ok()
            .is_none_or(|old| old != text.as_bytes())
        {
            write(&file, text).ok()?;
        }
        uris::from_path(&file)
    }

    /// The same for a text made from a document: one file a document, whichever process writes it.
    pub(crate) fn made_file(&self, source: &Uri, title: &str, text: &str) -> Option<Uri> {
        let digest = digest(|h| source.as_str().hash(h));
        self.file(&format!("made/{digest:016x}/{title}"), text)
    }
}

/// Puts a read-only file in place at once: another process may read or write it meanwhile.
fn write(file: &Path, text: &str) -> std::io::Result<()> {
    let folder = file.parent().unwrap_or(file);
    fs::create_dir_all(folder)?;
    let new = folder.join(format!(".new-{}", std::process::id()));
    fs::write(&new, text)?;
    let mut rights = fs::metadata(&new)?.permissions();
    rights.set_readonly(true);
    fs::set_permissions(&new, rights)?;
    fs::rename(&new, file).or_else(|_| {
        // some systems put nothing in the place of a read-only file
        fs::remove_file(file)?;
        fs::rename(&new, file)
    })
}

fn digest(what: impl FnOnce(&mut FxHasher)) -> u64 {
    let mut hasher = FxHasher::default();
    what(&mut hasher);
    hasher.finish()
}

/// The folder that all processes of this version share, in the user's cache: nothing piles up,
/// however a process ends.
fn lasting() -> Option<&'static Path> {
    static PLACE: OnceLock<Option<PathBuf>> = OnceLock::new();
    let find = || {
        let named = |name: &str| {
            let path = PathBuf::from(std::env::var_os(name)?);
            path.is_absolute().then_some(path)
        };
        let cache = named("XDG_CACHE_HOME")
            .or_else(|| named("LOCALAPPDATA"))
            .or_else(|| {
                let home = named("HOME")?;
                let mac = home.join("Library/Caches");
                Some(match cfg!(target_os = "macos") && mac.is_dir() {
                    true => mac,
                    false => home.join(".cache"),
                })
            })?;
        let library = downlead_station::library();
        let texts = digest(|h| library.files.iter().for_each(|f| f.1.text().hash(h)));
        let version = env!("CARGO_PKG_VERSION");
        // as the editor's paths will read, if a part of the way is a link
        let cache = fs::canonicalize(&cache).unwrap_or(cache);
        Some(cache.join(format!("downlead/{version}-{texts:016x}")))
    };
    PLACE.get_or_init(find).as_deref()
}

impl Folder {
    fn open() -> Option<Folder> {
        if let Some(path) = lasting() {
            let probe = path.join(format!(".probe-{}", std::process::id()));
            if fs::create_dir_all(path).is_ok() && fs::write(&probe, "").is_ok() {
                _ = fs::remove_file(&probe);
                sweep(path.parent()?, path);
                sweep(&path.join("made"), Path::new(""));
                return Some(Folder {
                    path: path.to_owned(),
                    passing: false,
                });
            }
        }
        let path = passing_folder()?;
        Some(Folder {
            path,
            passing: true,
        })
    }
}

/// Removes the folders in `within` that have gone stale, but for one.
fn sweep(within: &Path, but: &Path) {
    let stale = |path: &Path| {
        let age = fs::metadata(path)
            .and_then(|m| m.modified())
            .ok()
            .and_then(|t| SystemTime::now().duration_since(t).ok());
        age.is_some_and(|a| a > STALE)
    };
    for entry in fs::read_dir(within).into_iter().flatten().flatten() {
        let path = entry.path();
        if path != but && entry.file_type().is_ok_and(|t| t.is_dir()) && stale(&path) {
            _ = fs::remove_dir_all(path);
        }
    }
}

/// A new folder for this process only: created, never reused.
fn passing_folder() -> Option<PathBuf> {
    let base = fs::canonicalize(std::env::temp_dir()).ok()?;
    (0..100).find_map(|n| {
        let path = base.join(format!("downlead-{}-{n}", std::process::id()));
        fs::create_dir(&path).ok().map(|()| path)
    })
}

impl Drop for Library {
    fn drop(&mut self) {
        if let Some(folder) = self.folder.borrow_mut().take()
            && folder.passing
        {
            _ = fs::remove_dir_all(folder.path);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_stale_goes_and_what_is_in_use_stays() {
        let top = tempfile::tempdir().unwrap();
        let at = |name: &str| top.path().join(name);
        for name in ["old", "own", "new"] {
            write(&at(name).join("library/a.downlead"), "// a\n").unwrap();
        }
        let then = SystemTime::now() - STALE - Duration::from_secs(60);
        for name in ["old", "own"] {
            fs::File::open(at(name))
                .unwrap()
                .set_modified(then)
                .unwrap();
        }
        sweep(top.path(), &at("own"));
        assert!(!at("old").exists() && at("own").exists() && at("new").exists());
        // a read-only file is replaced, and no temporary file remains
        let file = at("new").join("library/a.downlead");
        write(&file, "// b\n").unwrap();
        assert_eq!(fs::read_to_string(&file).unwrap(), "// b\n");
        assert!(fs::metadata(&file).unwrap().permissions().readonly());
        assert_eq!(fs::read_dir(file.parent().unwrap()).unwrap().count(), 1);
    }
}
