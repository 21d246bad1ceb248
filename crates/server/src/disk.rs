//! Files below one folder and nothing above it.

use std::fs;
use std::io::Read;
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use std::time::SystemTime;

use downlead_station::LoadError;

/// Larger files are refused: offsets are 32 bits wide and no station is a hundredth of this.
const LARGEST: u64 = 64 << 20;
/// A workspace with more files than this is not searched whole.
pub(crate) const MOST_FILES: usize = 2000;

/// Time and size of a file: a change of the file changes one of them.
pub(crate) type Stamp = Option<(SystemTime, u64)>;

/// The stamp of a file; none if there is none.
pub(crate) fn stamp(path: &Path) -> Stamp {
    let facts = fs::metadata(path).ok().filter(fs::Metadata::is_file)?;
    Some((
        facts.modified().unwrap_or(SystemTime::UNIX_EPOCH),
        facts.len(),
    ))
}

/// The text of `path`, relative to `root`. Links out of the root are not followed.
///
/// # Errors
/// Why it cannot be had.
pub(crate) fn read(root: &Path, path: &str) -> Result<Arc<str>, LoadError> {
    let relative = Path::new(path);
    if !relative
        .components()
        .all(|c| matches!(c, Component::Normal(_) | Component::CurDir))
    {
        return Err(LoadError::OutsideRoot);
    }
    let root = fs::canonicalize(root).map_err(|e| failed(&e))?;
    let real = fs::canonicalize(root.join(relative)).map_err(|e| failed(&e))?;
    if !real.starts_with(&root) {
        return Err(LoadError::OutsideRoot);
    }
    let facts = fs::metadata(&real).map_err(|e| failed(&e))?;
    if facts.is_dir() {
        return Err(LoadError::IsDirectory);
    }
    // opening a pipe without a writer would block forever
    if !facts.is_file() {
        return Err(LoadError::Unreadable("it is no regular file".to_owned()));
    }
    let mut bytes = Vec::new();
    fs::File::open(&real)
        .and_then(|f| f.take(LARGEST + 1).read_to_end(&mut bytes))
        .map_err(|e| failed(&e))?;
    if bytes.len() as u64 > LARGEST {
        return Err(LoadError::TooLarge);
    }
    downlead_station::attach::text_of(path, bytes)
}

fn failed(e: &std::io::Error) -> LoadError {
    match e.kind() {
        std::io::ErrorKind::NotFound => LoadError::NotFound,
        _ => {
            let words = e.to_string();
            let plain = words
                .find(" (os error")
                .map_or(words.as_str(), |at| &words[..at]);
            LoadError::Unreadable(plain.to_lowercase())
        }
    }
}

/// All files of the language below a folder with their stamps, in a fixed order; not through
/// links, not in hidden folders.
pub(crate) fn find(root: &Path, stop: &dyn Fn() -> bool) -> Vec<(String, Stamp)> {
    find_of(
        root,
        &|p| p.extension().is_some_and(|e| e == "downlead"),
        stop,
    )
}

/// The files below a folder that a text may name: texts, tables of readings, networks.
pub(crate) fn find_usable(root: &Path, stop: &dyn Fn() -> bool) -> Vec<String> {
    let usable = |p: &Path| {
        let extension = p.extension().and_then(|e| e.to_str()).unwrap_or("");
        ["downlead", "csv", "tsv", "txt", "xlsx", "ods", "xml"]
            .iter()
            .any(|e| extension.eq_ignore_ascii_case(e))
            || p.to_str().is_some_and(downlead_station::is_network)
    };
    let found = find_of(root, &usable, stop);
    found.into_iter().map(|(path, _)| path).collect()
}

fn find_of(
    root: &Path,
    wanted: &dyn Fn(&Path) -> bool,
    stop: &dyn Fn() -> bool,
) -> Vec<(String, Stamp)> {
    let mut found = Vec::new();
    let mut stack = vec![root.to_owned()];
    let mut seen = 0;
    while let Some(folder) = stack.pop() {
        let Ok(entries) = fs::read_dir(&folder) else {
            continue;
        };
        let mut inside: Vec<PathBuf> = entries.filter_map(Result::ok).map(|e| e.path()).collect();
        inside.sort();
        for path in inside.into_iter().rev() {
            seen += 1;
            if stop() || seen > 50 * MOST_FILES || found.len() >= MOST_FILES {
                break;
            }
            if path
                .file_name()
                .is_none_or(|n| n.as_encoded_bytes().starts_with(b"."))
            {
                continue;
            }
            let Ok(facts) = fs::symlink_metadata(&path) else {
                continue;
            };
            if facts.is_dir() {
                if path
                    .file_name()
                    .is_none_or(|n| n != "node_modules" && n != "target")
                {
                    stack.push(path);
                }
            } else if facts.is_file()
                && wanted(&path)
                && let Some(name) = crate::uris::below(root, &path)
            {
                let changed = facts.modified().unwrap_or(SystemTime::UNIX_EPOCH);
                found.push((name, Some((changed, facts.len()))));
            }
        }
    }
    found.sort();
    found
}
