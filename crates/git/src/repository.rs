//! A repository with the texts of its revisions, read in few calls of `git` however many files
//! there are.

use std::collections::{BTreeMap, HashMap};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use downlead_station::{LoadError, Loader};

use crate::program::{git, git_with};

/// No more commits than this are listed.
const MOST_COMMITS: usize = 10_000;

/// The text of an object, or why it cannot be had.
type Text = Result<Arc<str>, LoadError>;

/// A path with the object names before and after a commit; none where the file was or is not there.
pub type Change = (String, Option<Arc<str>>, Option<Arc<str>>);

/// A repository.
pub struct Repository {
    top: PathBuf,
    /// Texts by object name.
    blobs: Mutex<HashMap<Arc<str>, Text>>,
}

/// The files of a revision.
#[derive(Clone, Debug, Default)]
pub struct Tree {
    /// The commit's hash.
    pub hash: String,
    /// Object name of each file by its path below the repository's top.
    pub files: BTreeMap<String, Arc<str>>,
}

impl Tree {
    /// The hash, short enough to be read.
    #[must_use]
    pub fn short(&self) -> &str {
        self.hash.get(..10).unwrap_or(&self.hash)
    }
}

/// A commit with the files it changed.
#[derive(Clone, Debug)]
pub struct Commit {
    /// Its hash.
    pub hash: String,
    /// Date of the author, `2026-07-04`.
    pub date: String,
    /// Author.
    pub author: String,
    /// First line of its message.
    pub subject: String,
    /// What it changed.
    pub changes: Vec<Change>,
}

impl Repository {
    /// The repository of a folder.
    ///
    /// # Errors
    /// Why there is none, in words for people.
    pub fn find(folder: &Path) -> Result<Repository, String> {
        let Some(out) = git(folder, &["rev-parse", "--show-toplevel"])? else {
            return Err(format!(
                "{} is in no git repository, so there is no earlier state to compare with.",
                folder.display()
            ));
        };
        let top = String::from_utf8_lossy(&out)
            .trim_end_matches(['\n', '\r'])
            .to_owned();
        Ok(Repository {
            top: PathBuf::from(top),
            blobs: Mutex::default(),
        })
    }

    /// Its top folder.
    #[must_use]
    pub fn top(&self) -> &Path {
        &self.top
    }

    /// The full hash of the commit of that name.
    ///
    /// # Errors
    /// If there is none, in words for people.
    pub fn commit(&self, name: &str) -> Result<String, String> {
        let name = name.trim();
        if name.is_empty() || name.starts_with('-') || name.contains([':', '\0', '\n']) {
            return Err(format!(
                "`{name}` names no revision. Write a commit, a branch or a tag, such as `HEAD~1`."
            ));
        }
        let commit = format!("{name}^{{commit}}");
        let args = [
            "rev-parse",
            "--verify",
            "--quiet",
            "--end-of-options",
            &commit,
        ];
        let out = git(&self.top, &args)?;
        let hash = out.map(|out| String::from_utf8_lossy(&out).trim().to_owned());
        // an old `git` prints the option too
        let hash = hash.and_then(|h| h.lines().last().map(str::to_owned));
        hash.filter(|h| !h.is_empty()).ok_or_else(|| {
            format!(
                "There is no revision `{name}` in the repository {}.",
                self.top.display()
            )
        })
    }

    /// The newest commit that two revisions have in common.
    ///
    /// # Errors
    /// If there is none, in words for people.
    pub fn merge_base(&self, a: &str, b: &str) -> Result<String, String> {
        let (x, y) = (self.commit(a)?, self.commit(b)?);
        let out = git(&self.top, &["merge-base", &x, &y])?;
        let hash = out.map(|out| String::from_utf8_lossy(&out).trim().to_owned());
        hash.filter(|h| !h.is_empty())
            .ok_or_else(|| format!("`{a}` and `{b}` have no commit in common; write `{a}..{b}`."))
    }

    /// The files of a revision.
    ///
    /// # Errors
    /// If there is no such revision, in words for people.
    pub fn tree(&self, name: &str) -> Result<Tree, String> {
        let hash = self.commit(name)?;
        let args = ["ls-tree", "-r", "-z", "--full-tree", &hash];
        let Some(out) = git(&self.top, &args)? else {
            return Err(format!("The files of revision `{name}` cannot be listed."));
        };
        let mut files = BTreeMap::new();
        for entry in out.split(|b| *b == 0) {
            // `100644 blob HASH\tPATH`; a name that is not UTF-8 cannot be used by any text
            let Ok(entry) = std::str::from_utf8(entry) else {
                continue;
            };
            if let Some((head, path)) = entry.split_once('\t')
                && let [_, "blob", id] = head.split(' ').collect::<Vec<_>>()[..]
            {
                files.insert(path.to_owned(), Arc::from(id));
            }
        }
        Ok(Tree { hash, files })
    }

    /// Files of which a merge has not decided yet which text they have.
    ///
    /// # Errors
    /// If `git` cannot be asked.
    pub fn unmerged(&self) -> Result<Vec<String>, String> {
        let out = git(&self.top, &["diff", "--name-only", "--diff-filter=U", "-z"])?;
        let out = out.unwrap_or_default();
        let names = String::from_utf8_lossy(&out);
        Ok(names
            .split('\0')
            .filter(|n| !n.is_empty())
            .map(str::to_owned)
            .collect())
    }

    /// Reads many texts at once.
    ///
    /// # Errors
    /// If `git` cannot be asked.
    pub fn read_all<'i>(&self, ids: impl Iterator<Item = &'i Arc<str>>) -> Result<(), String> {
        let mut wanted: Vec<Arc<str>> = Vec::new();
        if let Ok(have) = self.blobs.lock() {
            wanted.extend(ids.filter(|i| !have.contains_key(*i)).cloned());
        }
        wanted.sort_unstable();
        wanted.dedup();
        if wanted.is_empty() {
            return Ok(());
        }
        let asked: String = wanted.iter().flat_map(|i| [i, "\n"]).collect();
        let Some(out) = git_with(&self.top, &["cat-file", "--batch"], Some(asked))? else {
            return Err("The texts of a revision cannot be read.".to_owned());
        };
        let texts = blobs(&out, wanted.len());
        if let Ok(mut have) = self.blobs.lock() {
            have.extend(wanted.into_iter().zip(texts));
        }
        Ok(())
    }

    /// The text of an object.
    ///
    /// # Errors
    /// If it cannot be read or is not text.
    pub fn text(&self, id: &Arc<str>) -> Result<Arc<str>, LoadError> {
        let kept = |r: &Self| r.blobs.lock().ok().and_then(|b| b.get(id).cloned());
        if let Some(text) = kept(self) {
            return text;
        }
        match self.read_all(std::iter::once(id)) {
            Ok(()) => kept(self).unwrap_or(Err(LoadError::NotFound)),
            Err(why) => Err(LoadError::Unreadable(why)),
        }
    }

    /// The commits that led to a revision along its first parents, the newest first, each with what
    /// it changed.
    ///
    /// # Errors
    /// If there is no such revision, in words for people.
    pub fn commits(&self, name: &str, most: usize) -> Result<Vec<Commit>, String> {
        let hash = self.commit(name)?;
        let most = most.min(MOST_COMMITS).to_string();
        let args = [
            "log",
            "--first-parent",
            "-m",
            "--raw",
            "--no-renames",
            "--no-abbrev",
            "--no-ext-diff",
            "-z",
            "-n",
            &most,
            "--format=%x01%H%x02%as%x02%an%x02%s%x02",
            &hash,
        ];
        let out = git(&self.top, &args)?;
        let Some(out) = out else {
            return Err(format!("The history of `{name}` cannot be read."));
        };
        let log = String::from_utf8_lossy(&out);
        Ok(log.split('\u{1}').filter_map(entry).collect())
    }
}

/// A commit of the log.
fn entry(text: &str) -> Option<Commit> {
    let mut parts = text.splitn(4, '\u{2}');
    let hash = parts.next().filter(|h| !h.is_empty())?.to_owned();
    let date = parts.next()?.to_owned();
    let author = parts.next()?;
    // a subject may hold anything
    let (subject, rest) = parts.next()?.rsplit_once('\u{2}')?;
    let plain = |s: &str| s.chars().filter(|c| !c.is_control()).collect();
    let mut changes = Vec::new();
    let mut fields = rest.split('\0');
    while let Some(head) = fields.next() {
        // `:100644 100644 OLD NEW M`, then the path
        let Some(head) = head.trim_start_matches('\n').strip_prefix(':') else {
            continue;
        };
        let words: Vec<&str> = head.split(' ').collect();
        let (Some(path), [_, _, old, new, _]) = (fields.next(), &words[..]) else {
            continue;
        };
        let id = |x: &str| (!x.bytes().all(|b| b == b'0')).then(|| Arc::from(x));
        changes.push((path.to_owned(), id(old), id(new)));
    }
    Some(Commit {
        hash,
        date,
        author: plain(author),
        subject: plain(subject),
        changes,
    })
}

/// The answers of `cat-file --batch`, in order.
fn blobs(mut bytes: &[u8], count: usize) -> Vec<Result<Arc<str>, LoadError>> {
    let mut out = Vec::with_capacity(count);
    while out.len() < count {
        let Some(end) = bytes.iter().position(|b| *b == b'\n') else {
            break;
        };
        let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
        bytes = &bytes[end + 1..];
        let mut words = head.rsplit(' ');
        let size: Option<usize> = words.next().and_then(|s| s.parse().ok());
        match size {
            Some(n) if bytes.len() > n => {
                out.push(match std::str::from_utf8(&bytes[..n]) {
                    Ok(text) => Ok(text.into()),
                    Err(_) => Err(LoadError::not_utf8(&bytes[..n]).unwrap_or(LoadError::NotFound)),
                });
                bytes = &bytes[n + 1..];
            }
            // `… missing`
            _ => out.push(Err(LoadError::NotFound)),
        }
    }
    out.resize_with(count, || Err(LoadError::NotFound));
    out
}

/// The texts of a revision, by their path below the repository's top.
pub struct At<'r> {
    /// The repository.
    pub repository: &'r Repository,
    /// The revision.
    pub tree: &'r Tree,
}

impl Loader for At<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        let id = self.tree.files.get(path).ok_or(LoadError::NotFound)?;
        self.repository.text(id)
    }
}

#[cfg(test)]
mod tests {
    use super::{blobs, entry};

    #[test]
    fn a_commit_of_the_log_is_read() {
        let text = "abc\u{2}2026-07-04\u{2}A\u{1b} B\u{2}turn \u{2}down\u{2}\0\n:100644 100644 0a1 0b2 M\0a b.downlead\0:000000 100644 000 0c3 A\0new\nline.csv\0";
        let c = entry(text).expect("a commit");
        assert_eq!(
            (c.author.as_str(), c.subject.as_str()),
            ("A B", "turn down")
        );
        assert_eq!(c.changes.len(), 2);
        assert_eq!(c.changes[0].0, "a b.downlead");
        assert_eq!(c.changes[1].1, None);
        assert_eq!(c.changes[1].2.as_deref(), Some("0c3"));
        assert!(entry("").is_none() && entry("abc\u{2}x").is_none());
    }

    #[test]
    fn answers_keep_their_order() {
        let got = blobs(b"1 blob 4\na\nb\n\nx missing\n3 blob 2\n\xff\xfe\n", 4);
        assert_eq!(got[0].as_deref(), Ok("a\nb\n"));
        assert!(got[1].is_err() && got[2].is_err() && got[3].is_err());
    }
}
