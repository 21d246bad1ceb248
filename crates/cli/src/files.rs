//! From the paths on the command line to files below a root.

use std::collections::HashSet;
use std::fs;
use std::path::{Component, Path, PathBuf};

use crate::loader::plain_io;

/// How the language's files end.
pub(crate) const EXTENSION: &str = "downlead";

/// Files that share a root.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Group {
    /// Canonical folder above which nothing is read.
    pub(crate) root: PathBuf,
    /// Files below it, `/`-separated, in the order named; each once.
    pub(crate) files: Vec<String>,
    /// What leads from the current folder to the root when printing paths: empty where they are one.
    pub(crate) prefix: String,
}

/// The files named, and what could not be taken, each in one sentence.
#[derive(Debug, Default)]
pub(crate) struct Gathered {
    pub(crate) groups: Vec<Group>,
    pub(crate) trouble: Vec<String>,
    seen: HashSet<PathBuf>,
}

/// Finds the files that `paths` name. Folders are searched for `*.downlead`, not through links
/// and not in hidden folders. The root is `root`, or the current folder for files below it, or the
/// nearest folder above the file that holds `.git`, or the file's own folder.
pub(crate) fn gather(paths: &[PathBuf], root: Option<&Path>) -> Gathered {
    let mut all = Gathered::default();
    let here = std::env::current_dir().and_then(fs::canonicalize).ok();
    let fixed = match root.map(|r| (r, fs::canonicalize(r))) {
        None => None,
        Some((_, Ok(real))) if real.is_dir() => Some(real),
        Some((named, Ok(_))) => {
            all.trouble
                .push(format!("--root {}: it is not a folder", named.display()));
            return all;
        }
        Some((named, Err(e))) => {
            all.trouble
                .push(format!("--root {}: {}", named.display(), plain_io(&e)));
            return all;
        }
    };
    for path in paths {
        for real in files_of(path, &mut all.trouble) {
            let root = match &fixed {
                Some(root) if real.starts_with(root) => root.clone(),
                Some(root) => {
                    all.trouble.push(format!(
                        "{}: it lies outside the root {}",
                        path.display(),
                        root.display()
                    ));
                    continue;
                }
                None => root_of(&real, here.as_deref()),
            };
            add(&mut all, &root, &real, here.as_deref());
        }
    }
    all
}

fn add(all: &mut Gathered, root: &Path, real: &Path, here: Option<&Path>) {
    let Some(name) = real.strip_prefix(root).ok().and_then(slashed) else {
        all.trouble
            .push(format!("{}: its name is not UTF-8", real.display()));
        return;
    };
    let at = match all.groups.iter().position(|g| g.root == root) {
        Some(at) => at,
        None => {
            let prefix = prefix_to(root, here);
            all.groups.push(Group {
                root: root.to_owned(),
                files: Vec::new(),
                prefix,
            });
            all.groups.len() - 1
        }
    };
    if all.seen.insert(real.to_owned()) {
        all.groups[at].files.push(name);
    }
}

/// `a/b/c` of a relative path.
fn slashed(path: &Path) -> Option<String> {
    let parts: Option<Vec<&str>> = path
        .components()
        .map(|c| match c {
            Component::Normal(part) => part.to_str(),
            _ => None,
        })
        .collect();
    Some(parts?.join("/"))
}

/// How a path below `root` is begun so that a person in `here` can open it.
fn prefix_to(root: &Path, here: Option<&Path>) -> String {
    let Some(here) = here else {
        return format!("{}/", root.display());
    };
    if root == here {
        return String::new();
    }
    match root.strip_prefix(here) {
        Ok(below) => format!(
            "{}/",
            slashed(below).unwrap_or_else(|| below.display().to_string())
        ),
        Err(_) => format!("{}/", root.display().to_string().trim_end_matches('/')),
    }
}

/// The root for one file, canonical like it.
fn root_of(real: &Path, here: Option<&Path>) -> PathBuf {
    if let Some(here) = here
        && real.starts_with(here)
    {
        return here.to_owned();
    }
    let folder = real.parent().unwrap_or(real);
    folder
        .ancestors()
        .find(|a| a.join(".git").exists())
        .unwrap_or(folder)
        .to_owned()
}

/// The root for a file that need not be there.
pub(crate) fn root_of_file(file: &Path, here: &Path) -> PathBuf {
    root_of(file, Some(here))
}

/// Canonical files of one path on the command line.
pub(crate) fn files_of(path: &Path, trouble: &mut Vec<String>) -> Vec<PathBuf> {
    let real = match fs::canonicalize(path) {
        Ok(real) => real,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => {
            let what = match fs::symlink_metadata(path) {
                Ok(_) => "it is a link that leads nowhere",
                Err(_) => "there is no such file or folder",
            };
            trouble.push(format!("{}: {what}", path.display()));
            return Vec::new();
        }
        Err(e) => {
            trouble.push(format!("{}: {}", path.display(), plain_io(&e)));
            return Vec::new();
        }
    };
    if !real.is_dir() {
        return vec![real];
    }
    let mut found = Vec::new();
    walk(&real, &mut found, trouble);
    if found.is_empty() {
        trouble.push(format!(
            "{}: no file here ends in .{EXTENSION}",
            path.display()
        ));
    }
    found
}

/// All files of the language below `folder`, in a fixed order. An own stack: depth is the disk's business.
fn walk(folder: &Path, found: &mut Vec<PathBuf>, trouble: &mut Vec<String>) {
    let mut stack = vec![folder.to_owned()];
    while let Some(path) = stack.pop() {
        let kind = match fs::symlink_metadata(&path) {
            Ok(facts) => facts.file_type(),
            Err(e) => {
                trouble.push(format!("{}: {}", path.display(), plain_io(&e)));
                continue;
            }
        };
        if !kind.is_dir() {
            if kind.is_file() {
                found.push(path);
            }
            continue;
        }
        let mut inside: Vec<PathBuf> = match fs::read_dir(&path) {
            Ok(entries) => entries
                .filter_map(|e| e.ok())
                .map(|e| e.path())
                .filter(|p| wanted(p))
                .collect(),
            Err(e) => {
                trouble.push(format!("{}: {}", path.display(), plain_io(&e)));
                continue;
            }
        };
        inside.sort();
        stack.extend(inside.into_iter().rev());
    }
}

/// Whether a search looks at this entry: unhidden, and a folder or of the right ending.
fn wanted(path: &Path) -> bool {
    let hidden = path
        .file_name()
        .is_none_or(|n| n.as_encoded_bytes().starts_with(b"."));
    !hidden && (path.extension().is_some_and(|e| e == EXTENSION) || path.is_dir())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn folders_are_searched_in_order_and_hidden_ones_left_out() {
        let dir = tempfile::tempdir().unwrap();
        let at = |p: &str| dir.path().join(p);
        fs::create_dir_all(at("b/.hidden")).unwrap();
        for f in [
            "z.downlead",
            "b/a.downlead",
            "b/note.txt",
            "b/.hidden/h.downlead",
            ".dot.downlead",
        ] {
            fs::write(at(f), "").unwrap();
        }
        let root = dir.path();
        let got = gather(&[root.to_owned(), at("z.downlead")], Some(root));
        assert!(got.trouble.is_empty());
        assert_eq!(got.groups.len(), 1);
        assert_eq!(got.groups[0].files, ["b/a.downlead", "z.downlead"]);
    }

    #[test]
    fn the_root_is_the_repository_or_the_folder() {
        let dir = tempfile::tempdir().unwrap();
        let at = |p: &str| dir.path().join(p);
        fs::create_dir_all(at("repo/.git")).unwrap();
        fs::create_dir_all(at("repo/deep")).unwrap();
        fs::create_dir_all(at("plain")).unwrap();
        for f in ["repo/deep/a.downlead", "plain/b.downlead"] {
            fs::write(at(f), "").unwrap();
        }
        let got = gather(&[at("repo/deep/a.downlead"), at("plain/b.downlead")], None);
        let roots: Vec<_> = got
            .groups
            .iter()
            .map(|g| g.root.file_name().unwrap().to_owned())
            .collect();
        assert_eq!(roots, ["repo", "plain"]);
        assert_eq!(got.groups[0].files, ["deep/a.downlead"]);
    }

    #[test]
    fn what_cannot_be_taken_is_said() {
        let dir = tempfile::tempdir().unwrap();
        let at = |p: &str| dir.path().join(p);
        fs::create_dir_all(at("empty")).unwrap();
        fs::create_dir_all(at("root")).unwrap();
        fs::write(at("f.downlead"), "").unwrap();
        let said = |p: &str, root: Option<&str>| {
            gather(&[at(p)], root.map(at).as_deref()).trouble.join("\n")
        };
        assert!(said("none", None).contains("there is no such file"));
        assert!(said("empty", None).contains("no file here ends in .downlead"));
        assert!(said("f.downlead", Some("root")).contains("outside the root"));
        assert!(said("f.downlead", Some("f.downlead")).contains("not a folder"));
    }
}
