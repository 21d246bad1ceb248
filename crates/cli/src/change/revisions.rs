//! Files of two revisions of a repository, or of a revision and the disk.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use downlead_git::{At, Commit, Repository, Tree};

use super::pairs::{Pair, Side, first_station, moved};
use crate::files::{EXTENSION, files_of};
use crate::loader::DiskLoader;
use crate::model::Loader;

/// What two states of a repository are called.
pub(crate) struct Range {
    pub(crate) old: String,
    /// None: the files as they are.
    pub(crate) new: Option<String>,
}

impl Range {
    /// `REV`, `REV..REV`, `REV...REV`.
    ///
    /// # Errors
    /// If there is no such revision.
    pub(crate) fn of(text: &str, repository: &Repository) -> Result<Range, String> {
        let name = |s: &str| {
            if s.is_empty() {
                "HEAD".to_owned()
            } else {
                s.to_owned()
            }
        };
        if let Some((a, b)) = text.split_once("...") {
            let (a, b) = (name(a), name(b));
            return Ok(Range {
                old: repository.merge_base(&a, &b)?,
                new: Some(b),
            });
        }
        Ok(match text.split_once("..") {
            Some((a, b)) => Range {
                old: name(a),
                new: Some(name(b)),
            },
            None => Range {
                old: name(text),
                new: None,
            },
        })
    }
}

/// The folder whose repository is asked: that of the first path.
pub(crate) fn folder_of(paths: &[PathBuf]) -> PathBuf {
    let first = paths.first().map_or(Path::new("."), PathBuf::as_path);
    let mut at = first;
    // a file that is gone, and perhaps its folder
    while !at.is_dir() {
        at = match at.parent() {
            Some(p) if !p.as_os_str().is_empty() => p,
            _ => Path::new("."),
        };
    }
    at.to_owned()
}

/// Paths below the top of a repository; empty for all of it.
///
/// # Errors
/// If one lies outside.
pub(crate) fn below(top: &Path, paths: &[PathBuf]) -> Result<Vec<String>, String> {
    let top = std::fs::canonicalize(top).unwrap_or_else(|_| top.to_owned());
    let here = std::env::current_dir().and_then(std::fs::canonicalize);
    let here = here.map_err(|e| format!("the current folder: {}", crate::loader::plain_io(&e)))?;
    let one = |p: &PathBuf| {
        let whole = here.join(p);
        let real = std::fs::canonicalize(&whole).unwrap_or(whole);
        let inside = real.strip_prefix(&top).map_err(|_| {
            format!(
                "{}: it lies outside the repository {}",
                p.display(),
                top.display()
            )
        })?;
        Ok(inside.to_string_lossy().replace('\\', "/"))
    };
    let all: Result<Vec<String>, String> = paths.iter().map(one).collect();
    let all = all?;
    Ok(if all.iter().any(String::is_empty) {
        Vec::new()
    } else {
        all
    })
}

/// Whether a path is one of these, or in one of these folders.
pub(crate) fn wanted(path: &str, within: &[String]) -> bool {
    let in_one = |w: &String| {
        path.strip_prefix(w.as_str())
            .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
    };
    within.is_empty() || within.iter().any(in_one)
}

fn is_text(path: &str) -> bool {
    let hidden = path.split('/').any(|p| p.starts_with('.'));
    !hidden && path.rsplit_once('.').is_some_and(|(_, e)| e == EXTENSION)
}

/// A state of a repository.
pub(crate) enum State {
    Revision(Tree),
    /// Files on the disk with their texts.
    Disk(DiskLoader, BTreeMap<String, Option<Arc<str>>>),
}

/// The files as they are.
pub(crate) fn disk(top: &Path) -> State {
    let mut trouble = Vec::new();
    let loader = DiskLoader::new(std::fs::canonicalize(top).unwrap_or_else(|_| top.to_owned()));
    let real = std::fs::canonicalize(top).unwrap_or_else(|_| top.to_owned());
    let files = files_of(top, &mut trouble).into_iter().filter_map(|f| {
        let path = f
            .strip_prefix(&real)
            .ok()?
            .to_string_lossy()
            .replace('\\', "/");
        let text = loader.read(&path).ok();
        Some((path, text))
    });
    let files = files.collect();
    State::Disk(loader, files)
}

/// Loads texts of a state.
pub(crate) enum Source<'r> {
    Revision(At<'r>),
    Disk(&'r DiskLoader),
}

impl Loader for Source<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, crate::model::LoadError> {
        match self {
            Source::Revision(at) => at.read(path),
            Source::Disk(d) => d.read(path),
        }
    }
}

impl State {
    pub(crate) fn source<'r>(&'r self, repository: &'r Repository) -> Source<'r> {
        match self {
            State::Revision(tree) => Source::Revision(At { repository, tree }),
            State::Disk(loader, _) => Source::Disk(loader),
        }
    }

    fn texts(&self) -> Vec<&str> {
        let all: Vec<&str> = match self {
            State::Revision(t) => t.files.keys().map(String::as_str).collect(),
            State::Disk(_, files) => files.keys().map(String::as_str).collect(),
        };
        all.into_iter().filter(|p| is_text(p)).collect()
    }

    /// Whether there is such a file or folder.
    pub(crate) fn holds(&self, path: &str) -> bool {
        let within = [path.to_owned()];
        match self {
            State::Revision(t) => t.files.keys().any(|p| wanted(p, &within)),
            State::Disk(_, files) => files.keys().any(|p| wanted(p, &within)),
        }
    }

    fn has(&self, path: &str) -> bool {
        match self {
            State::Revision(t) => t.files.contains_key(path),
            State::Disk(_, files) => files.contains_key(path),
        }
    }
}

/// Reads all texts of the language of a revision at once.
///
/// # Errors
/// If `git` cannot be asked.
pub(crate) fn read_all(repository: &Repository, tree: &Tree) -> Result<(), String> {
    let texts = tree.files.iter().filter(|(p, _)| is_text(p));
    repository.read_all(texts.map(|(_, id)| id))
}

/// Whether a file differs between two states.
fn changed(path: &str, states: [(&State, &Source<'_>); 2]) -> bool {
    if let [(State::Revision(a), _), (State::Revision(b), _)] = states {
        return a.files.get(path) != b.files.get(path);
    }
    let [a, b] = states.map(|(_, s)| s.read(path).ok());
    a != b
}

/// The files that have to be compared: those that changed, and those that name one of them,
/// directly or through others.
pub(crate) fn pairs<'s>(
    states: [(&State, &'s Source<'s>); 2],
    others: &BTreeSet<String>,
    within: &[String],
) -> Vec<Pair<'s>> {
    let all: BTreeSet<&str> = states.iter().flat_map(|(s, _)| s.texts()).collect();
    let mut hit: BTreeSet<&str> = all.iter().copied().filter(|p| changed(p, states)).collect();
    let base = |p: &str| p.rsplit('/').next().unwrap_or(p).to_owned();
    let mut names: Vec<String> = hit.iter().map(|p| base(p)).collect();
    names.extend(others.iter().map(|p| base(p)));
    let mut left: Vec<(&str, Arc<str>)> = all
        .iter()
        .filter(|p| !hit.contains(*p) && !names.is_empty())
        .filter_map(|p| Some((*p, states[1].1.read(p).ok()?)))
        .collect();
    while !names.is_empty() {
        // a name anywhere in the text: more is compared than has to be, never less
        let (found, rest) = left
            .into_iter()
            .partition::<Vec<_>, _>(|(_, text)| names.iter().any(|n| text.contains(n.as_str())));
        names = found.iter().map(|(p, _)| base(p)).collect();
        hit.extend(found.iter().map(|x| x.0));
        left = rest;
    }
    let side = |i: usize, path: &str| {
        let (state, source) = states[i];
        state.has(path).then(|| Side {
            loader: source,
            path: path.to_owned(),
        })
    };
    let (mut gone, mut came, mut out) = (Vec::new(), Vec::new(), Vec::new());
    for path in hit.into_iter().filter(|p| wanted(p, within)) {
        let pair = Pair {
            shown: path.to_owned(),
            old: side(0, path),
            new: side(1, path),
        };
        let name = |i: usize| states[i].1.read(path).ok().and_then(|t| first_station(&t));
        match (&pair.old, &pair.new) {
            (Some(_), None) => gone.push((name(0), pair)),
            (None, Some(_)) => came.push((name(1), pair)),
            _ => out.push(pair),
        }
    }
    out.extend(moved(gone, came));
    out
}

/// Files of readings and networks that differ between two states.
pub(crate) fn other_files(states: [(&State, &Source<'_>); 2]) -> BTreeSet<String> {
    let mut out = BTreeSet::new();
    let (old, new) = (states[0].0, states[1].0);
    if let State::Revision(a) = old {
        for (path, id) in a.files.iter().filter(|(p, _)| is_attached(p)) {
            let same = match new {
                State::Revision(b) => b.files.get(path) == Some(id),
                State::Disk(..) => !changed(path, states),
            };
            if !same {
                out.insert(path.clone());
            }
        }
        if let State::Revision(b) = new {
            let new = b
                .files
                .keys()
                .filter(|p| is_attached(p) && !a.files.contains_key(*p));
            out.extend(new.cloned());
        }
    }
    out
}

/// Whether a path is that of a text of the language or of what such a text may take.
pub(crate) fn is_ours(path: &str) -> bool {
    is_text(path) || is_attached(path)
}

fn is_attached(path: &str) -> bool {
    let end = path.rsplit_once('.').map_or("", |e| e.1);
    end.eq_ignore_ascii_case("csv") || downlead_station::is_network(path)
}

/// The trees before and after a commit, from the tree after it.
pub(crate) fn before(after: &Tree, commit: &Commit) -> Tree {
    let mut files = after.files.clone();
    for (path, old, _) in &commit.changes {
        match old {
            Some(id) => files.insert(path.clone(), Arc::clone(id)),
            None => files.remove(path),
        };
    }
    Tree {
        hash: format!("{}^", commit.hash),
        files,
    }
}
