//! Reads files below one folder and nothing above it.

use std::fs;
use std::io::Read;
use std::path::{Component, Path, PathBuf};
use std::sync::{Arc, Mutex};

use crate::model::{LoadError, Loader};

/// Larger files are refused: offsets are 32 bits wide and no station is a hundredth of this.
pub(crate) const LARGEST: u64 = 64 << 20;

/// The files that were asked for, also those that are not there; none while it is not noted.
static READ: Mutex<Option<Vec<PathBuf>>> = Mutex::new(None);

/// From now on files that are read are noted, those of before forgotten.
pub(crate) fn note_what_is_read() {
    if let Ok(mut read) = READ.lock() {
        *read = Some(Vec::new());
    }
}

/// The files noted.
pub(crate) fn read_so_far() -> Vec<PathBuf> {
    READ.lock().ok().and_then(|r| r.clone()).unwrap_or_default()
}

/// Loads `/`-separated paths relative to `root`.
pub(crate) struct DiskLoader {
    root: PathBuf,
    /// A text that is not on the disk, under its path.
    over: Option<(String, Arc<str>)>,
}

impl DiskLoader {
    /// A loader below `root`, which must be canonical.
    pub(crate) fn new(root: PathBuf) -> DiskLoader {
        DiskLoader { root, over: None }
    }

    /// The same with a text in the place of a file.
    pub(crate) fn over(mut self, text: Option<(String, Arc<str>)>) -> DiskLoader {
        self.over = text;
        self
    }

    fn locate(&self, path: &str) -> Result<PathBuf, LoadError> {
        let relative = Path::new(path);
        // the caller normalises; a path that still climbs is an escape whatever it leads to
        if !relative
            .components()
            .all(|c| matches!(c, Component::Normal(_) | Component::CurDir))
        {
            return Err(LoadError::OutsideRoot);
        }
        let real = fs::canonicalize(self.root.join(relative)).map_err(|e| io_error(&e))?;
        if real.starts_with(&self.root) {
            Ok(real)
        } else {
            Err(LoadError::OutsideRoot)
        }
    }
}

impl DiskLoader {
    /// The bytes at a path below the root, as they are.
    pub(crate) fn bytes(&self, path: &str) -> Result<Vec<u8>, LoadError> {
        if let Some((name, text)) = &self.over
            && name == path
        {
            return Ok(text.as_bytes().to_vec());
        }
        read_regular(&self.locate(path)?)
    }
}

impl Loader for DiskLoader {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        if let Some((name, text)) = &self.over
            && name == path
        {
            return Ok(Arc::clone(text));
        }
        if let Ok(mut read) = READ.lock()
            && let Some(read) = read.as_mut()
        {
            read.push(self.root.join(path));
        }
        let bytes = read_regular(&self.locate(path)?)?;
        downlead_station::attach::text_of(path, bytes)
    }

    fn beside(&self, path: &str) -> Vec<String> {
        downlead_git::names_beside(&self.root, path)
    }

    fn root(&self) -> Option<String> {
        Some(self.root.display().to_string())
    }
}

/// The bytes of a regular file of bounded size. Pipes, sockets and devices are refused
/// unopened: opening a pipe without a writer would block.
pub(crate) fn read_regular(path: &Path) -> Result<Vec<u8>, LoadError> {
    let facts = fs::metadata(path).map_err(|e| io_error(&e))?;
    if facts.is_dir() {
        return Err(LoadError::IsDirectory);
    }
    if !facts.is_file() {
        return Err(LoadError::Unreadable(
            "it is a pipe, socket or device, not a file".to_owned(),
        ));
    }
    if facts.len() > LARGEST {
        return Err(LoadError::TooLarge);
    }
    let file = fs::File::open(path).map_err(|e| io_error(&e))?;
    let mut bytes = Vec::with_capacity(facts.len() as usize + 1);
    // a file may grow, or say 0 as those made by the system do
    file.take(LARGEST + 1)
        .read_to_end(&mut bytes)
        .map_err(|e| io_error(&e))?;
    if bytes.len() as u64 > LARGEST {
        Err(LoadError::TooLarge)
    } else {
        Ok(bytes)
    }
}

fn io_error(e: &std::io::Error) -> LoadError {
    match e.kind() {
        std::io::ErrorKind::NotFound => LoadError::NotFound,
        _ => LoadError::Unreadable(plain_io(e)),
    }
}

/// The system's words without its error number.
pub(crate) fn plain_io(e: &std::io::Error) -> String {
    let words = e.to_string();
    match words.find(" (os error") {
        Some(at) => words[..at].to_lowercase(),
        None => words,
    }
}

/// A load failure in words for people, to follow the file's name and a colon.
pub(crate) fn in_words(e: &LoadError) -> String {
    match e {
        LoadError::NotFound => "there is no such file".to_owned(),
        LoadError::IsDirectory => "it is a folder, not a file".to_owned(),
        LoadError::NotUtf8 {
            offset,
            line,
            looks,
        } => {
            format!(
                "it is not UTF-8 text: line {line}, byte {offset} of the file (counted from 0), {looks}; save the file as UTF-8"
            )
        }
        LoadError::TooLarge => format!("it is larger than {} MiB", LARGEST >> 20),
        LoadError::OutsideRoot => {
            "it lies outside the root folder; --root DIR names another root".to_owned()
        }
        LoadError::Unreadable(why) => format!("it cannot be read: {why}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn root() -> (tempfile::TempDir, DiskLoader) {
        let outer = tempfile::tempdir().unwrap();
        let root = outer.path().join("root");
        fs::create_dir_all(root.join("sub")).unwrap();
        fs::write(root.join("sub/a.downlead"), "let a = 1 m\n").unwrap();
        fs::write(outer.path().join("secret"), "x").unwrap();
        let loader = DiskLoader::new(fs::canonicalize(root).unwrap());
        (outer, loader)
    }

    #[test]
    fn reads_below_and_refuses_above() {
        let (_outer, loader) = root();
        assert_eq!(&*loader.read("sub/a.downlead").unwrap(), "let a = 1 m\n");
        assert!(matches!(
            loader.read("../secret"),
            Err(LoadError::OutsideRoot)
        ));
        assert!(matches!(
            loader.read("sub/../../secret"),
            Err(LoadError::OutsideRoot)
        ));
        assert!(matches!(
            loader.read("/etc/hostname"),
            Err(LoadError::OutsideRoot)
        ));
        assert!(matches!(loader.read("sub"), Err(LoadError::IsDirectory)));
        assert!(matches!(loader.read("sub/none"), Err(LoadError::NotFound)));
        assert!(matches!(
            loader.read("sub/a.downlead/b"),
            Err(LoadError::Unreadable(_))
        ));
    }

    #[cfg(unix)]
    #[test]
    fn links_do_not_lead_out() {
        let (outer, loader) = root();
        let root = outer.path().join("root");
        std::os::unix::fs::symlink("../secret", root.join("out")).unwrap();
        std::os::unix::fs::symlink("..", root.join("up")).unwrap();
        std::os::unix::fs::symlink("sub/a.downlead", root.join("in")).unwrap();
        std::os::unix::fs::symlink("nowhere", root.join("dangling")).unwrap();
        std::os::unix::fs::symlink("circle", root.join("circle")).unwrap();
        assert!(matches!(loader.read("out"), Err(LoadError::OutsideRoot)));
        assert!(matches!(
            loader.read("up/secret"),
            Err(LoadError::OutsideRoot)
        ));
        assert!(matches!(loader.read("dangling"), Err(LoadError::NotFound)));
        assert!(matches!(
            loader.read("circle"),
            Err(LoadError::Unreadable(_))
        ));
        assert!(loader.read("in").is_ok());
    }

    #[test]
    fn bytes_that_are_no_text_are_located() {
        let (outer, loader) = root();
        fs::write(outer.path().join("root/latin"), b"let caf\xe9 = 1 m\n").unwrap();
        assert!(matches!(
            loader.read("latin"),
            Err(LoadError::NotUtf8 { offset: 7, line: 1, looks }) if looks.contains("`é` in Latin-1")
        ));
    }

    #[test]
    fn too_large_is_refused_without_reading() {
        let (outer, loader) = root();
        // sparse: no such space is used
        fs::File::create(outer.path().join("root/huge"))
            .unwrap()
            .set_len(LARGEST + 1)
            .unwrap();
        assert!(matches!(loader.read("huge"), Err(LoadError::TooLarge)));
    }
}
