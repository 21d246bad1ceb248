//! The built-in library as documents: under the server's own scheme, or as read-only files for
//! clients that can open nothing else.

use std::cell::RefCell;
use std::fs;
use std::path::{Path, PathBuf};

use ls_types::Uri;

use crate::uris;

/// Names and files of the library, and of other texts the server makes.
#[derive(Default)]
pub(crate) struct Library {
    own_scheme: bool,
    /// Made when first needed, removed at the end.
    folder: RefCell<Option<PathBuf>>,
}

const PREFIX: &str = "library/";

impl Library {
    /// Whether the client opens the server's own scheme.
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

    /// Index of a file that was made for a client.
    pub(crate) fn index_of_file(&self, path: &Path) -> Option<usize> {
        let folder = self.folder.borrow();
        let name = uris::below(folder.as_ref()?, path)?;
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
            *folder = Some(make_folder()?);
        }
        let file = folder.as_ref()?.join(path);
        if fs::read(&file)
            .ok()
            .is_none_or(|old| old != text.as_bytes())
        {
            fs::create_dir_all(file.parent()?).ok()?;
            _ = fs::remove_file(&file);
            fs::write(&file, text).ok()?;
            let mut rights = fs::metadata(&file).ok()?.permissions();
            rights.set_readonly(true);
            _ = fs::set_permissions(&file, rights);
        }
        uris::from_path(&file)
    }
}

/// A folder nobody else has: made anew, never found.
fn make_folder() -> Option<PathBuf> {
    let base = fs::canonicalize(std::env::temp_dir()).ok()?;
    (0..100).find_map(|n| {
        let path = base.join(format!("downlead-{}-{n}", std::process::id()));
        fs::create_dir(&path).ok().map(|()| path)
    })
}

impl Drop for Library {
    fn drop(&mut self) {
        if let Some(folder) = self.folder.borrow_mut().take() {
            _ = fs::remove_dir_all(folder);
        }
    }
}
