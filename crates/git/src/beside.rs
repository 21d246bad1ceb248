//! Names of the files in a folder, for a path that is nearly right.

use std::fs;
use std::path::{Component, Path};

/// Names looked at in one folder: a suggestion is worth no more.
const MOST: usize = 2_000;

/// Names of the files in the folder of `path`, which is relative to `root`, sorted. Empty if the
/// folder cannot be read or lies outside of the root.
#[must_use]
pub fn names_beside(root: &Path, path: &str) -> Vec<String> {
    let folder = Path::new(path).parent().unwrap_or(Path::new(""));
    let plain = |c: Component<'_>| matches!(c, Component::Normal(_) | Component::CurDir);
    if !folder.components().all(plain) {
        return Vec::new();
    }
    let (Ok(root), Ok(real)) = (fs::canonicalize(root), fs::canonicalize(root.join(folder))) else {
        return Vec::new();
    };
    let list = real.starts_with(&root).then(|| fs::read_dir(&real).ok());
    let mut names: Vec<String> = list
        .flatten()
        .into_iter()
        .flatten()
        .take(MOST)
        .filter_map(|e| e.ok()?.file_name().into_string().ok())
        .collect();
    names.sort();
    names
}
