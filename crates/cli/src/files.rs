//! From the paths on the command line to files below a root.

use std::collections::HashSet;
use std::fs;
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;

use crate::loader::{DiskLoader, plain_io};
use crate::stdin;

/// How the language's files end.
pub(crate) const EXTENSION: &str = "downlead";

/// Files that share a root.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Group {
    /// Canonical folder above which nothing is read.
    pub(crate) root: PathBuf,
    /// Files below it, `/`-separated, in the order named; each once.
    pub(crate) files: Vec<String>,
    /// The current folder, canonical; paths are printed as seen from it.
    here: Option<PathBuf>,
    /// Standard input, under the name it has among the files.
    input: Option<(String, Arc<str>)>,
}

impl Group {
    /// A path below the root as a person in the current folder can open it.
    pub(crate) fn shown(&self, path: &str) -> String {
        seen_from(self.here.as_deref(), &self.root, path)
    }

    /// What reads the files.
    pub(crate) fn loader(&self) -> DiskLoader {
        DiskLoader::new(self.root.clone()).over(self.input.clone())
    }
}

/// The files named, and what could not be taken, each in one sentence.
#[derive(Debug, Default)]
pub(crate) struct Gathered {
    pub(crate) groups: Vec<Group>,
    pub(crate) trouble: Vec<String>,
    seen: HashSet<PathBuf>,
}

/// Finds the files that `paths` name. Folders are searched for `*.downlead`, not through links
/// and not in hidden folders; `-` is standard input, which counts as a file of the current folder.
/// The root of a file is `root`, or what [`downlead_git::root_of`] says.
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
    let mut finder = Finder {
        home: downlead_git::home(),
        here,
        fixed,
        all,
    };
    for path in paths {
        if path.as_os_str() == stdin::DASH {
            finder.input();
            continue;
        }
        let folder = fs::canonicalize(path).ok().filter(|p| p.is_dir());
        for real in files_of(path, &mut finder.all.trouble) {
            finder.file(path, &real, None, folder.as_deref());
        }
    }
    finder.all
}

/// What is needed to place a file.
struct Finder {
    home: Option<PathBuf>,
    here: Option<PathBuf>,
    /// The root that was named.
    fixed: Option<PathBuf>,
    all: Gathered,
}

impl Finder {
    /// Takes the file `real`, which the command line names by `path`; `folder` is the folder in
    /// which it was searched.
    fn file(&mut self, path: &Path, real: &Path, text: Option<&Arc<str>>, folder: Option<&Path>) {
        let root = match &self.fixed {
            Some(root) if real.starts_with(root) => root.clone(),
            Some(root) => {
                self.all.trouble.push(format!(
                    "{}: it lies outside the root {}",
                    path.display(),
                    root.display()
                ));
                return;
            }
            None => downlead_git::root_of(real, text.map(|t| &**t), folder, self.home.as_deref()),
        };
        self.add(root, real, text);
    }

    fn input(&mut self) {
        let Some(here) = self.here.clone() else {
            self.all
                .trouble
                .push("the current folder cannot be read".to_owned());
            return;
        };
        match stdin::text() {
            Ok(text) => self.file(
                Path::new(stdin::DASH),
                &here.join(stdin::DASH),
                Some(&text.into()),
                None,
            ),
            Err(why) => self.all.trouble.push(format!("standard input: {why}")),
        }
    }

    fn add(&mut self, root: PathBuf, real: &Path, text: Option<&Arc<str>>) {
        let Some(name) = real.strip_prefix(&root).ok().and_then(slashed) else {
            self.all
                .trouble
                .push(format!("{}: its name is not UTF-8", real.display()));
            return;
        };
        let at = match self.all.groups.iter().position(|g| g.root == root) {
            Some(at) => at,
            None => {
                self.all.groups.push(Group {
                    root,
                    files: Vec::new(),
                    here: self.here.clone(),
                    input: None,
                });
                self.all.groups.len() - 1
            }
        };
        if self.all.seen.insert(real.to_owned()) {
            let group = &mut self.all.groups[at];
            if let Some(text) = text {
                group.input = Some((name.clone(), Arc::clone(text)));
            }
            group.files.push(name);
        }
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

/// `path` below `root` as seen from `here`: relative where they have more in common than the top of
/// the disk, else absolute.
fn seen_from(here: Option<&Path>, root: &Path, path: &str) -> String {
    let whole = root.join(path);
    let near = here.and_then(|here| {
        let common = here
            .components()
            .zip(whole.components())
            .take_while(|(a, b)| a == b)
            .count();
        // a file elsewhere on the disk is found more easily by its whole path
        let inside = root.starts_with(here) || here.starts_with(root);
        let up = here.components().count() - common;
        let down: PathBuf = whole.components().skip(common).collect();
        inside.then(|| {
            format!(
                "{}{}",
                "../".repeat(up),
                slashed(&down).unwrap_or_else(|| down.display().to_string())
            )
        })
    });
    near.unwrap_or_else(|| whole.display().to_string())
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
    fn files_share_the_root_of_their_repository() {
        let dir = tempfile::tempdir().unwrap();
        let at = |p: &str| dir.path().join(p);
        fs::create_dir_all(at("repo/.git")).unwrap();
        fs::create_dir_all(at("repo/deep")).unwrap();
        fs::create_dir_all(at("plain")).unwrap();
        for f in [
            "repo/deep/a.downlead",
            "repo/c.downlead",
            "plain/b.downlead",
        ] {
            fs::write(at(f), "").unwrap();
        }
        let named = ["repo/deep/a.downlead", "plain/b.downlead", "repo"].map(at);
        let got = gather(&named, None);
        let roots: Vec<_> = got
            .groups
            .iter()
            .map(|g| g.root.file_name().unwrap().to_owned())
            .collect();
        assert_eq!(roots, ["repo", "plain"]);
        assert_eq!(got.groups[0].files, ["deep/a.downlead", "c.downlead"]);
    }

    #[test]
    fn paths_are_shown_from_the_current_folder() {
        let root = Path::new("/w/repo");
        for (here, path, shown) in [
            ("/w/repo", "a/b.downlead", "a/b.downlead"),
            ("/w", "a/b.downlead", "repo/a/b.downlead"),
            ("/w/repo/a", "a/b.downlead", "b.downlead"),
            ("/w/repo/a/c", "a/b.downlead", "../b.downlead"),
            ("/w/other", "b.downlead", "/w/repo/b.downlead"),
        ] {
            assert_eq!(
                seen_from(Some(Path::new(here)), root, path),
                shown,
                "{here}"
            );
        }
        assert_eq!(seen_from(None, root, "b.downlead"), "/w/repo/b.downlead");
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
