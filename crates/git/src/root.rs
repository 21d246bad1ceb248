//! The root folder of a file: above it nothing is read. One rule for the command line and editors.

use std::collections::BTreeSet;
use std::fs;
use std::io::Read;
use std::path::{Component, Path, PathBuf};

use downlead_station::keyword_of;
use downlead_station::model::Meaning;
use downlead_syntax::File;

/// The name of a file that makes its folder a root, whatever it contains.
pub const MARKER: &str = ".downlead-root";

/// Chains of `use` lines are followed through no more files than this.
const MOST_FILES: usize = 256;
/// Larger files are not searched for `use` lines.
const LARGEST: u64 = 64 << 20;

/// The root folder of `file`: the nearest folder above it that is a git repository or contains a
/// file named [`MARKER`]. Without either, the smallest folder that contains the file, `opened`
/// where that contains the file (a folder that is named or opened as a whole), and, below `home`,
/// the files that its `use` lines lead to.
///
/// The current folder plays no part, so the same text means the same from everywhere. `text` is the
/// file's text where it is known better than from the disk.
#[must_use]
pub fn root_of(
    file: &Path,
    text: Option<&str>,
    opened: Option<&Path>,
    home: Option<&Path>,
) -> PathBuf {
    let own = file.parent().unwrap_or(file);
    let marked = |folder: &&Path| folder.join(".git").exists() || folder.join(MARKER).is_file();
    if let Some(found) = own.ancestors().find(marked) {
        return found.to_owned();
    }
    let root = match opened {
        Some(folder) if file.starts_with(folder) => folder,
        _ => own,
    };
    match home {
        Some(home) if is_below(root, home) => with_used(file, text, root, home),
        _ => root.to_owned(),
    }
}

/// The home folder of the user.
#[must_use]
pub fn home() -> Option<PathBuf> {
    let home = std::env::home_dir().filter(|h| h.is_absolute())?;
    Some(fs::canonicalize(&home).unwrap_or(home))
}

fn is_below(folder: &Path, home: &Path) -> bool {
    folder != home && folder.starts_with(home)
}

/// `root` widened by the folders of the files that `file` uses, directly or through others.
fn with_used(file: &Path, text: Option<&str>, root: &Path, home: &Path) -> PathBuf {
    let mut root = root.to_owned();
    let mut seen = BTreeSet::from([file.to_owned()]);
    let mut waiting = vec![(file.to_owned(), text.map(str::to_owned))];
    while let Some((path, text)) = waiting.pop() {
        let Some(text) = text.or_else(|| read(&path)) else {
            continue;
        };
        for used in used_by(&text) {
            let Some(target) = target(&path, &used) else {
                continue;
            };
            // a widened root lets the tables beside a used file be read, so nothing that is no
            // file of the language may widen it
            if target.extension().is_none_or(|e| e != "downlead") {
                continue;
            }
            let wider = target.parent().map(|folder| common(&root, folder));
            let Some(wider) = wider.filter(|w| is_below(w, home)) else {
                continue;
            };
            root = wider;
            if seen.len() < MOST_FILES && seen.insert(target.clone()) {
                waiting.push((target, None));
            }
        }
    }
    root
}

/// What the `use` lines of a text name.
fn used_by(text: &str) -> Vec<String> {
    let file = File::parse(text);
    let uses = file
        .items()
        .iter()
        .filter(|placed| keyword_of(&placed.item) == Some("use"));
    uses.filter_map(|placed| {
        let lowered =
            downlead_station::lower(&placed.item, &downlead_station::Lets::default(), false);
        match lowered.meaning {
            Meaning::Use(name) => Some(name.text.to_string()),
            _ => None,
        }
    })
    .collect()
}

/// The file that `relative` names in the file `base`, by the names alone.
fn target(base: &Path, relative: &str) -> Option<PathBuf> {
    if relative.starts_with('/') || relative.contains(['\\', ':', '\0']) {
        return None;
    }
    let mut path = base.parent()?.to_owned();
    for part in Path::new(relative).components() {
        match part {
            Component::CurDir => {}
            Component::ParentDir => {
                if !path.pop() {
                    return None;
                }
            }
            Component::Normal(name) => path.push(name),
            Component::RootDir | Component::Prefix(_) => return None,
        }
    }
    Some(path)
}

/// The deepest folder that contains both.
fn common(a: &Path, b: &Path) -> PathBuf {
    let same = a.components().zip(b.components());
    same.take_while(|(x, y)| x == y).map(|(x, _)| x).collect()
}

fn read(path: &Path) -> Option<String> {
    let facts = fs::metadata(path).ok()?;
    // opening a pipe without a writer would block forever
    if !facts.is_file() || facts.len() > LARGEST {
        return None;
    }
    let mut bytes = Vec::new();
    let file = fs::File::open(path).ok()?;
    file.take(LARGEST).read_to_end(&mut bytes).ok()?;
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A folder with these files; names that end in `/` are folders.
    fn made(files: &[(&str, &str)]) -> (tempfile::TempDir, PathBuf) {
        let dir = tempfile::tempdir().unwrap();
        for (name, text) in files {
            let path = dir.path().join(name);
            if name.ends_with('/') {
                fs::create_dir_all(path).unwrap();
            } else {
                fs::create_dir_all(path.parent().unwrap()).unwrap();
                fs::write(path, text).unwrap();
            }
        }
        let path = fs::canonicalize(dir.path()).unwrap();
        (dir, path)
    }

    const SITE: &str = "use \"../lib/cables.downlead\"\n";

    #[test]
    fn a_repository_or_a_marker_makes_the_root() {
        let (_dir, top) = made(&[
            ("repo/.git/", ""),
            ("repo/sites/a.downlead", SITE),
            ("repo/own/.downlead-root", ""),
            ("repo/own/deep/b.downlead", SITE),
        ]);
        let of = |p: &str| root_of(&top.join(p), None, Some(&top), Some(&top));
        assert_eq!(of("repo/sites/a.downlead"), top.join("repo"));
        assert_eq!(of("repo/own/deep/b.downlead"), top.join("repo/own"));
    }

    #[test]
    fn without_either_the_use_lines_widen_it_below_home() {
        let (_dir, top) = made(&[
            ("home/radio/sites/a.downlead", SITE),
            (
                "home/radio/lib/cables.downlead",
                "use \"../../more/deep/m.downlead\"\n",
            ),
            ("home/alone/b.downlead", "band 2m 145 MHz\n"),
            ("home/alone/c.downlead", "use \"../x.downlead\"\n"),
            (
                "home/radio/side/d.downlead",
                "use \"../../../e.downlead\"\nuse \"../secret.txt\"\n",
            ),
        ]);
        let home = top.join("home");
        let of = |p: &str, home: Option<&Path>| root_of(&top.join(p), None, None, home);
        // the library's own `use` line leads to the home folder itself, which is no root
        let a = "home/radio/sites/a.downlead";
        assert_eq!(of(a, Some(&home)), home.join("radio"));
        assert_eq!(of(a, Some(&top)), home);
        assert_eq!(of(a, None), home.join("radio/sites"));
        assert_eq!(of("home/alone/b.downlead", Some(&home)), home.join("alone"));
        assert_eq!(of("home/alone/c.downlead", Some(&home)), home.join("alone"));
        let d = "home/radio/side/d.downlead";
        assert_eq!(of(d, Some(&home)), home.join("radio/side"));
        // the text of an editor takes precedence over that on the disk
        let b = top.join("home/alone/b.downlead");
        fs::create_dir_all(home.join("alone/sub")).unwrap();
        let text = Some("use \"../radio/x.downlead\"\n");
        assert_eq!(root_of(&b, text, None, Some(&top)), home);
    }

    #[test]
    fn an_opened_folder_is_part_of_the_root() {
        let (_dir, top) = made(&[("radio/sites/a.downlead", SITE), ("other/", "")]);
        let a = top.join("radio/sites/a.downlead");
        assert_eq!(
            root_of(&a, None, Some(&top.join("radio")), None),
            top.join("radio")
        );
        assert_eq!(
            root_of(&a, None, Some(&top.join("other")), None),
            top.join("radio/sites")
        );
    }

    #[test]
    fn files_that_use_each_other_end() {
        let (_dir, top) = made(&[
            ("w/a/a.downlead", "use \"../b/b.downlead\"\n"),
            ("w/b/b.downlead", "use \"../a/a.downlead\"\n"),
        ]);
        assert_eq!(
            root_of(&top.join("w/a/a.downlead"), None, None, Some(&top)),
            top.join("w")
        );
    }
}
