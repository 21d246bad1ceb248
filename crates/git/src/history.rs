//! All earlier states of one file.

use std::path::Path;

use downlead_eval::history::{Recorded, Recording};

use crate::program::{git, git_with};

/// No more revisions than this are read, the newest ones.
const REVISIONS: &str = "1000";

/// The readings of a file as they were first recorded, by the commits of its repository,
/// under the names it had. None where it was never committed.
///
/// # Errors
/// The reason why `git` has no answer, for the user.
pub fn recorded(path: &Path) -> Result<Option<Recorded>, String> {
    let (Some(folder), Some(name)) = (path.parent(), path.file_name().and_then(|n| n.to_str()))
    else {
        return Ok(None);
    };
    let folder = if folder.as_os_str().is_empty() {
        Path::new(".")
    } else {
        folder
    };
    let log = git(
        folder,
        &[
            "--literal-pathspecs",
            "log",
            "--follow",
            "--name-status",
            "-z",
            "-n",
            REVISIONS,
            "--format=%x01%H%x02%at%x02%as%x02%an%x02",
            "--",
            name,
        ],
    )?;
    let Some(log) = log else {
        return match git(folder, &["rev-parse", "--git-dir"])? {
            Some(_) => Ok(None),
            None => Err(format!(
                "{} is in no git repository, so nothing is known of its earlier states.",
                folder.display()
            )),
        };
    };
    let mut all = entries(&String::from_utf8_lossy(&log));
    if all.is_empty() {
        return Ok(None);
    }
    // the oldest first
    all.reverse();
    let asked: String = all
        .iter()
        .map(|e| format!("{}:{}\n", e.hash, e.path))
        .collect();
    let Some(blobs) = git_with(folder, &["cat-file", "--batch"], Some(asked))? else {
        return Ok(None);
    };
    let texts = texts(&blobs, all.len());
    let states = all
        .into_iter()
        .zip(&texts)
        .filter_map(|(e, t)| Some((e.recording, t.as_deref()?)));
    let now = std::time::SystemTime::now()
        .duration_since(std::time::UNIX_EPOCH)
        .map_or(0, |d| i64::try_from(d.as_secs()).unwrap_or(0));
    Ok(Some(Recorded::of(name, states).seen_at(now)))
}

/// True if the repository of a folder holds only the newest commits, so that its history has
/// none of the older ones.
#[must_use]
pub fn is_shallow(folder: &Path) -> bool {
    let said = git(folder, &["rev-parse", "--is-shallow-repository"]);
    matches!(said, Ok(Some(out)) if out.starts_with(b"true"))
}

/// The commit a folder's repository is at.
#[must_use]
pub fn head(folder: &Path) -> Option<String> {
    let said = git(folder, &["rev-parse", "--verify", "--quiet", "HEAD"]).ok()??;
    Some(String::from_utf8_lossy(&said).trim().to_owned())
}

struct Entry {
    recording: Recording,
    hash: String,
    path: String,
}

/// The entries of the log, the newest first: a commit, the kind of its change of the file, the file's name.
/// The history begins where the file was copied from another one: the readings of that file are
/// other readings.
fn entries(log: &str) -> Vec<Entry> {
    let mut out = Vec::new();
    for text in log.split('\u{1}') {
        let Some((entry, copied)) = entry(text) else {
            continue;
        };
        out.push(entry);
        if copied {
            break;
        }
    }
    out
}

fn entry(text: &str) -> Option<(Entry, bool)> {
    let mut parts = text.splitn(4, '\u{2}');
    let hash = parts.next().filter(|r| !r.is_empty())?;
    let seconds = parts.next()?.parse().ok()?;
    let date = parts.next()?;
    // an author may be called anything
    let (author, names) = parts.next()?.rsplit_once('\u{2}')?;
    let mut names = names.trim_matches(['\0', '\n']).split('\0');
    let status = names.next()?;
    let path = names.next_back()?;
    // a name with a line end cannot be asked for by line
    if path.is_empty() || path.contains('\n') {
        return None;
    }
    let author: String = author.chars().filter(|c| !c.is_control()).collect();
    let entry = Entry {
        recording: Recording {
            revision: hash.get(..7).unwrap_or(hash).into(),
            date: date.into(),
            seconds,
            author: author.into(),
        },
        hash: hash.to_owned(),
        path: path.to_owned(),
    };
    Some((entry, status.starts_with('C')))
}

/// The answers of `cat-file --batch`, in order; none where there is no such file or no text.
fn texts(mut bytes: &[u8], count: usize) -> Vec<Option<String>> {
    let mut out = Vec::with_capacity(count);
    for _ in 0..count {
        let Some(end) = bytes.iter().position(|b| *b == b'\n') else {
            break;
        };
        let head = String::from_utf8_lossy(&bytes[..end]).into_owned();
        bytes = &bytes[end + 1..];
        let mut words = head.rsplit(' ');
        let size: Option<usize> = words.next().and_then(|s| s.parse().ok());
        let blob = words.next() == Some("blob");
        match size {
            Some(n) if bytes.len() > n => {
                let text = std::str::from_utf8(&bytes[..n]).ok().filter(|_| blob);
                out.push(text.map(str::to_owned));
                bytes = &bytes[n + 1..];
            }
            // `… missing`
            _ => out.push(None),
        }
    }
    out.resize_with(count, || None);
    out
}

#[cfg(test)]
mod tests {
    use super::{entries, texts};

    #[test]
    fn the_log_is_taken_apart() {
        let log = "\u{1}abc123456\u{2}1784000000\u{2}2026-07-14\u{2}A \u{2}N\u{1b} Other\u{2}\0\nM\0bench/a b.csv\0\u{1}abc1235\u{2}x\u{2}\u{2}\u{2}\0\u{1}b\u{2}1\u{2}2026-07-13\u{2}x\u{2}\0\nC071\0old.csv\0bench/a b.csv\0\u{1}c\u{2}1\u{2}2026-07-12\u{2}x\u{2}\0\nA\0old.csv\0";
        let all = entries(log);
        assert_eq!(all.len(), 2, "what it was copied from is another file");
        assert_eq!(all[0].path, "bench/a b.csv");
        assert_eq!(&*all[0].recording.author, "A N Other");
        assert_eq!(&*all[0].recording.revision, "abc1234");
        assert_eq!(all[0].recording.seconds, 1_784_000_000);
        assert_eq!(all[1].path, "bench/a b.csv");
    }

    #[test]
    fn answers_keep_their_order_whatever_is_missing() {
        let bytes = b"1111 blob 4\na\nb\n\nx:y missing\n2222 tree 2\nzz\n3333 blob 0\n\n";
        let got = texts(bytes, 5);
        assert_eq!(
            got,
            [
                Some("a\nb\n".to_owned()),
                None,
                None,
                Some(String::new()),
                None
            ]
        );
    }
}
