//! Where the texts of a test come from.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use downlead_station::{LoadError, Loader};

/// Texts in memory by path.
#[derive(Clone, Debug, Default)]
pub struct Files(BTreeMap<String, Arc<str>>);

impl Files {
    /// From one text with sections that begin with a line `// file: PATH`. Text before the first
    /// such line belongs to `main.downlead`.
    #[must_use]
    pub fn new(sections: &str) -> Files {
        let mut files = Files::default();
        let mut path = "main.downlead".to_owned();
        let mut text = String::new();
        for line in sections.split_inclusive('\n') {
            if let Some(next) = line.strip_prefix("// file: ") {
                files.close(&path, &mut text);
                path = next.trim().to_owned();
            } else {
                text.push_str(line);
            }
        }
        files.close(&path, &mut text);
        files
    }

    fn close(&mut self, path: &str, text: &mut String) {
        let text = std::mem::take(text);
        if !text.trim().is_empty() || path != "main.downlead" {
            self.0.insert(path.to_owned(), text.into());
        }
    }

    /// With one more text, or another text for a path.
    #[must_use]
    pub fn with(mut self, path: &str, text: impl AsRef<str>) -> Files {
        self.put(path, text);
        self
    }

    /// Sets the text of a path.
    pub fn put(&mut self, path: &str, text: impl AsRef<str>) {
        self.0.insert(path.to_owned(), text.as_ref().into());
    }

    /// The paths, sorted.
    pub fn paths(&self) -> impl Iterator<Item = &str> {
        self.0.keys().map(String::as_str)
    }

    /// The text of a path.
    #[must_use]
    pub fn text(&self, path: &str) -> Option<&Arc<str>> {
        self.0.get(path)
    }
}

impl Loader for Files {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        self.0.get(path).cloned().ok_or(LoadError::NotFound)
    }

    fn beside(&self, path: &str) -> Vec<String> {
        let folder = path.rfind('/').map_or("", |i| &path[..=i]);
        let of_it = |p: &str| {
            p.strip_prefix(folder)
                .filter(|n| !n.contains('/'))
                .map(str::to_owned)
        };
        self.paths().filter_map(of_it).collect()
    }
}

/// The files of a folder.
#[derive(Clone, Debug)]
pub struct Folder(pub PathBuf);

impl Loader for Folder {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        match std::fs::read(self.0.join(path)) {
            Ok(bytes) => match String::from_utf8(bytes) {
                Ok(text) => Ok(text.into()),
                Err(e) => Err(LoadError::not_utf8(e.as_bytes()).unwrap_or(LoadError::NotFound)),
            },
            Err(e) if e.kind() == std::io::ErrorKind::NotFound => Err(LoadError::NotFound),
            Err(e) => Err(LoadError::Unreadable(e.to_string())),
        }
    }
}

/// A path of the project.
#[must_use]
pub fn project(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .join(path)
}

/// The examples folder.
#[must_use]
pub fn examples() -> Folder {
    Folder(project("examples"))
}

/// Every file of the examples folder, by path relative to it, sorted.
///
/// # Panics
/// When the folder cannot be read.
#[must_use]
pub fn example_files() -> Vec<String> {
    fn list(root: &Path, at: &Path, out: &mut Vec<String>) {
        for entry in std::fs::read_dir(at).expect("the examples folder") {
            let path = entry.expect("a folder entry").path();
            if path.is_dir() {
                list(root, &path, out);
            } else if path.extension().is_some_and(|e| e == "downlead") {
                let relative = path.strip_prefix(root).expect("below the root");
                let parts: Vec<_> = relative.iter().map(|p| p.to_string_lossy()).collect();
                out.push(parts.join("/"));
            }
        }
    }
    let root = examples().0;
    let mut out = Vec::new();
    list(&root, &root, &mut out);
    out.sort();
    out
}
