//! Texts as they were at a revision.

use std::cell::RefCell;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use downlead_station::{LoadError, Loader};

use crate::program::git;

/// A revision of a file's repository.
pub struct Revision {
    folder: PathBuf,
    hash: String,
    /// The way from the repository's top to the root of the files.
    place: Place,
    /// Error of `git` itself while files were read.
    fault: RefCell<Option<String>>,
}

enum Place {
    /// The root is below the top: this is prepended to each path.
    Below(String),
    /// The top is below the root: this is removed from each path.
    Above(String),
}

impl Revision {
    /// The revision of that name in the repository of the file `path` below `root`.
    ///
    /// # Errors
    /// Why there is none, in words for people.
    pub fn find(root: &Path, path: &str, name: &str) -> Result<Revision, String> {
        let name = name.trim();
        if name.is_empty() || name.starts_with('-') || name.contains([':', '\0', '\n']) {
            return Err(format!(
                "`{name}` names no revision. Write a commit, a branch or a tag, such as `HEAD~1`."
            ));
        }
        let parent = path.rsplit_once('/').map_or("", |(folder, _)| folder);
        let folder = root.join(parent);
        let prefix = match git(&folder, &["rev-parse", "--show-prefix"])? {
            Some(out) => String::from_utf8_lossy(&out)
                .trim_end_matches('\n')
                .to_owned(),
            None => {
                return Err(format!(
                    "{} is in no git repository, so there is no earlier state to compare with.",
                    folder.display()
                ));
            }
        };
        let commit = format!("{name}^{{commit}}");
        let hash = git(
            &folder,
            &[
                "rev-parse",
                "--verify",
                "--quiet",
                "--end-of-options",
                &commit,
            ],
        )?;
        let hash = hash.map(|out| String::from_utf8_lossy(&out).trim().to_owned());
        // an old `git` prints the option too
        let hash = hash.and_then(|h| h.lines().last().map(str::to_owned));
        let Some(hash) = hash.filter(|h| !h.is_empty()) else {
            return Err(format!(
                "There is no revision `{name}` in the repository of {}.",
                folder.display()
            ));
        };
        Ok(Revision {
            folder,
            hash,
            place: place(prefix.trim_end_matches('/'), parent),
            fault: RefCell::default(),
        })
    }

    /// The hash, short enough to be read.
    #[must_use]
    pub fn short(&self) -> &str {
        self.hash.get(..10).unwrap_or(&self.hash)
    }

    /// Error of `git` itself.
    #[must_use]
    pub fn fault(&self) -> Option<String> {
        self.fault.borrow().clone()
    }

    fn inside(&self, path: &str) -> Option<String> {
        match &self.place {
            Place::Below(prefix) => Some(format!("{prefix}{path}")),
            Place::Above(folder) => path.strip_prefix(folder.as_str()).map(str::to_owned),
        }
    }
}

fn place(prefix: &str, parent: &str) -> Place {
    if let Some(rest) = prefix.strip_suffix(parent)
        && (rest.is_empty() || rest.ends_with('/') || parent.is_empty())
    {
        let slash = if rest.is_empty() || rest.ends_with('/') {
            ""
        } else {
            "/"
        };
        return Place::Below(format!("{rest}{slash}"));
    }
    let above = parent.strip_suffix(prefix).unwrap_or(parent);
    let slash = if above.ends_with('/') || above.is_empty() {
        ""
    } else {
        "/"
    };
    Place::Above(format!("{above}{slash}"))
}

impl Loader for Revision {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        let inside = self.inside(path).ok_or(LoadError::NotFound)?;
        let object = format!("{}:{inside}", self.hash);
        match git(&self.folder, &["cat-file", "blob", &object]) {
            Ok(Some(bytes)) => match String::from_utf8(bytes) {
                Ok(text) => Ok(text.into()),
                Err(e) => Err(LoadError::not_utf8(e.as_bytes()).unwrap_or(LoadError::NotFound)),
            },
            Ok(None) => Err(LoadError::NotFound),
            Err(why) => {
                *self.fault.borrow_mut() = Some(why.clone());
                Err(LoadError::Unreadable(why))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Place, place};

    /// `prefix` is the file's folder seen from the repository's top, `parent` from the root.
    #[test]
    fn the_root_and_the_repository_need_not_be_one() {
        for (prefix, parent, below) in [
            ("", "", ""),
            ("hill", "hill", ""),
            ("isle/hill", "hill", "isle/"),
            ("isle/hill", "", "isle/hill/"),
        ] {
            assert!(
                matches!(place(prefix, parent), Place::Below(p) if p == below),
                "{prefix} {parent}"
            );
        }
        for (prefix, parent, above) in [
            ("", "repo", "repo/"),
            ("hill", "work/repo/hill", "work/repo/"),
        ] {
            assert!(
                matches!(place(prefix, parent), Place::Above(p) if p == above),
                "{prefix} {parent}"
            );
        }
    }
}
