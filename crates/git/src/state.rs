//! A file beside the commit that changed it last.

use std::path::Path;

use crate::program::git;

/// The commit that changed a file last, and whether the file is another one now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct State {
    /// Hash of the commit.
    pub hash: String,
    /// Date of its author, `2026-07-04`.
    pub date: String,
    /// Whether the text differs from the one that the newest commit has; line ends do not count.
    pub changed: bool,
}

impl State {
    /// The hash, short enough to be read.
    #[must_use]
    pub fn short(&self) -> &str {
        self.hash.get(..10).unwrap_or(&self.hash)
    }
}

/// The state of a file with this text; none if it is in no repository or was never committed, and
/// where `git` cannot be asked.
#[must_use]
pub fn state(file: &Path, text: &str) -> Option<State> {
    let folder = file.parent()?;
    let name = format!("./{}", file.file_name()?.to_str()?);
    let args = [
        "log",
        "-1",
        "--no-ext-diff",
        "--format=%H %as",
        "HEAD",
        "--",
        &name,
    ];
    let said = git(folder, &args).ok()??;
    let said = String::from_utf8_lossy(&said);
    let (hash, date) = said.trim().split_once(' ')?;
    let kept = git(folder, &["cat-file", "blob", &format!("HEAD:{name}")]).ok()?;
    let kept = kept.map(|b| String::from_utf8_lossy(&b).replace("\r\n", "\n"));
    Some(State {
        hash: hash.to_owned(),
        date: date.to_owned(),
        changed: kept.is_none_or(|k| k != text.replace("\r\n", "\n")),
    })
}
