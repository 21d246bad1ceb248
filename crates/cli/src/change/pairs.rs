//! Files of two states, paired and compared.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use downlead_report::build::compare::compare;
use downlead_report::build::diff::FileChange;

use crate::files::{gather, root_of_file};
use crate::loader::{DiskLoader, in_words};
use crate::model::{LoadError, Loader, Snapshot};
use crate::parallel::each;

/// A file in one state.
#[derive(Clone)]
pub(crate) struct Side<'l> {
    /// Where its text and those of the files it uses come from.
    pub(crate) loader: &'l (dyn Loader + Sync),
    /// Its path there.
    pub(crate) path: String,
}

/// A file in both states; on one side it may be missing.
pub(crate) struct Pair<'l> {
    /// As it is shown.
    pub(crate) shown: String,
    pub(crate) old: Option<Side<'l>>,
    pub(crate) new: Option<Side<'l>>,
}

/// Nothing: the other state of a file that came or went.
struct Nothing;

impl Loader for Nothing {
    fn read(&self, _: &str) -> Result<Arc<str>, LoadError> {
        Ok("".into())
    }
}

/// A file whose text stands elsewhere; what it uses is read from the disk.
pub(crate) struct Overlay {
    pub(crate) path: String,
    pub(crate) text: Result<Arc<str>, LoadError>,
    pub(crate) below: DiskLoader,
}

impl Loader for Overlay {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        if path == self.path {
            return self.text.clone();
        }
        self.below.read(path)
    }
}

/// Compares all pairs on all processors, in their order. What cannot be read is complained of.
pub(crate) fn compared(pairs: &[Pair<'_>]) -> Result<Vec<FileChange>, Vec<String>> {
    let all = each(pairs, one);
    let mut trouble = Vec::new();
    let mut out = Vec::with_capacity(all.len());
    for result in all {
        match result {
            Ok(change) => out.push(change),
            Err(why) => trouble.push(why),
        }
    }
    if trouble.is_empty() {
        Ok(out)
    } else {
        Err(trouble)
    }
}

fn one(pair: &Pair<'_>) -> Result<FileChange, String> {
    let load = |side: &Option<Side<'_>>| {
        let (snapshot, path) = match side {
            Some(s) => (
                Snapshot::load(std::slice::from_ref(&s.path), s.loader),
                &s.path,
            ),
            None => (
                Snapshot::load(std::slice::from_ref(&pair.shown), &Nothing),
                &pair.shown,
            ),
        };
        match snapshot.files().first().and_then(|f| f.error.as_ref()) {
            Some(e) => Err(format!("{path}: {}", in_words(e))),
            None => Ok(snapshot),
        }
    };
    let (old, new) = (load(&pair.old)?, load(&pair.new)?);
    Ok(FileChange {
        path: pair.shown.clone(),
        comparison: compare((&old, 0), (&new, 0)),
    })
}

/// A file or folder named on the command line, as files by their path below it.
pub(crate) struct Named {
    files: BTreeMap<String, (usize, String)>,
    roots: Vec<DiskLoader>,
    /// Path of each file as it is shown.
    shown: BTreeMap<String, String>,
    is_folder: bool,
}

impl Named {
    /// # Errors
    /// What cannot be taken, each in one sentence.
    pub(crate) fn of(path: &Path, root: Option<&Path>) -> Result<Named, Vec<String>> {
        let gathered = gather(&[path.to_owned()], root);
        if !gathered.trouble.is_empty() {
            return Err(gathered.trouble);
        }
        let is_folder = path.is_dir();
        let real = std::fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
        let mut named = Named {
            files: BTreeMap::new(),
            roots: Vec::new(),
            shown: BTreeMap::new(),
            is_folder,
        };
        for group in gathered.groups {
            for f in &group.files {
                let whole = group.root.join(f);
                let key = match whole.strip_prefix(&real) {
                    Ok(below) if is_folder => below.to_string_lossy().replace('\\', "/"),
                    _ => String::new(),
                };
                named.shown.insert(key.clone(), group.shown(f));
                named.files.insert(key, (named.roots.len(), f.clone()));
            }
            named.roots.push(group.loader());
        }
        Ok(named)
    }

    fn side(&self, key: &str) -> Option<Side<'_>> {
        let (root, path) = self.files.get(key)?;
        Some(Side {
            loader: self.roots.get(*root)?,
            path: path.clone(),
        })
    }

    fn station(&self, key: &str) -> Option<String> {
        let side = self.side(key)?;
        first_station(&side.loader.read(&side.path).ok()?)
    }
}

/// The name of the first station of a text.
pub(crate) fn first_station(text: &str) -> Option<String> {
    let line = text.lines().find(|l| l.starts_with("station "))?;
    line.split_whitespace().nth(1).map(str::to_owned)
}

/// Pairs two files, or the files of two folders by their path; one that has another path now is
/// found by the name of its station.
///
/// # Errors
/// If one is a file and the other a folder.
pub(crate) fn paired<'n>(old: &'n Named, new: &'n Named) -> Result<Vec<Pair<'n>>, String> {
    if old.is_folder != new.is_folder {
        return Err(
            "One is a file and the other a folder; name two files or two folders.".to_owned(),
        );
    }
    let keys: BTreeSet<&String> = old.files.keys().chain(new.files.keys()).collect();
    let (mut gone, mut came, mut out) = (Vec::new(), Vec::new(), Vec::new());
    for key in keys {
        let shown = new.shown.get(key).or(old.shown.get(key));
        let pair = Pair {
            shown: shown.cloned().unwrap_or_default(),
            old: old.side(key),
            new: new.side(key),
        };
        match (&pair.old, &pair.new) {
            (Some(_), None) => gone.push((old.station(key), pair)),
            (None, Some(_)) => came.push((new.station(key), pair)),
            _ => out.push(pair),
        }
    }
    out.extend(moved(gone, came));
    Ok(out)
}

type Moving<'l> = (Option<String>, Pair<'l>);

/// Files that came and went, those of one station as one file with another path.
pub(crate) fn moved<'l>(mut gone: Vec<Moving<'l>>, came: Vec<Moving<'l>>) -> Vec<Pair<'l>> {
    let mut out = Vec::new();
    for (name, mut pair) in came {
        let like = gone.iter().position(|g| name.is_some() && g.0 == name);
        if let Some(i) = like {
            pair.old = gone.remove(i).1.old;
        }
        out.push(pair);
    }
    out.extend(gone.into_iter().map(|g| g.1));
    out
}

/// What `git` hands to an external diff command: path, old file, its object name and mode, new file,
/// its object name and mode.
///
/// # Errors
/// If there are not so many, or a file cannot be read.
pub(crate) fn from_driver(args: &[PathBuf]) -> Result<(String, [Option<Overlay>; 2]), String> {
    let [path, old, _, _, new, ..] = args else {
        return Err("--driver is for `git`, which hands over seven arguments: path, old file, its object name and mode, new file, its object name and mode.".to_owned());
    };
    let shown = path.to_string_lossy().replace('\\', "/");
    let here = std::env::current_dir().and_then(std::fs::canonicalize);
    let here = here.map_err(|e| format!("the current folder: {}", crate::loader::plain_io(&e)))?;
    let root = root_of_file(&here.join(path), "");
    let inside = here.join(path).strip_prefix(&root).map_or_else(
        |_| shown.clone(),
        |p| p.to_string_lossy().replace('\\', "/"),
    );
    let side = |file: &Path| {
        // there is no such file in one of the states
        if file == Path::new("/dev/null") || file == Path::new("nul") {
            return None;
        }
        let text = crate::loader::read_regular(file).and_then(|bytes| {
            String::from_utf8(bytes)
                .map(Arc::from)
                .map_err(|e| LoadError::not_utf8(e.as_bytes()).unwrap_or(LoadError::NotFound))
        });
        Some(Overlay {
            path: inside.clone(),
            text,
            below: DiskLoader::new(root.clone()),
        })
    };
    Ok((shown, [side(old), side(new)]))
}
