//! Comments and messages are plain technical English: words that have a plainer equivalent are not
//! used. A crate joins the list when its texts are finished.

use std::path::{Path, PathBuf};

/// Folders of Rust files that are read, below `crates/`.
const FINISHED: &[&str] = &[
    "base",
    "catalogue",
    "git",
    "physics",
    "quantity",
    "server",
    "syntax",
    "testkit",
    "touchstone",
];

/// Words and phrases, each with its replacement. A hyphen or an underscore joins words, so that
/// keys (`finer-than-doubt`) and identifiers are not concerned.
const BANNED: &[(&str, &str)] = &[
    ("anew", "again"),
    ("are told", "are reported, follow from"),
    ("beyond doubt", "by more than the uncertainty"),
    ("by whomever", "name the role"),
    ("doubt", "uncertainty"),
    ("doubtful", "uncertain"),
    ("doubts", "uncertainties"),
    ("in vain", "without success"),
    ("is told", "is reported, follows from"),
    ("laid beside", "compared with"),
    ("nobody", "name the role, or use the passive"),
    ("parted by", "separated by"),
    ("somebody", "name the role"),
    ("stand beside", "are next to"),
    ("stands beside", "is next to"),
    ("stands twice", "occurs twice"),
    ("through-line", "directional"),
    ("told apart", "distinguished"),
    ("whoever", "name the role"),
    ("work out", "compute, evaluate"),
    ("worked out", "computed, evaluated"),
    ("working out", "computing, evaluating"),
    ("works out", "computes, evaluates"),
];

fn rust_files(dir: &Path, out: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(dir).expect("a source folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            rust_files(&path, out);
        } else if path.extension().is_some_and(|e| e == "rs") {
            out.push(path);
        }
    }
}

/// Banned phrases of a text with their lines, counted from 1. A phrase may continue in the next line.
fn found(text: &str) -> Vec<(usize, &'static str)> {
    let words: Vec<(usize, String)> = text
        .lines()
        .enumerate()
        .flat_map(|(i, line)| {
            line.split(|c: char| !(c.is_alphanumeric() || c == '-' || c == '_'))
                .filter(|w| w.contains(char::is_alphanumeric))
                .map(move |w| (i + 1, w.to_lowercase()))
        })
        .collect();
    let mut out = Vec::new();
    for (phrase, _) in BANNED {
        let parts: Vec<&str> = phrase.split(' ').collect();
        let hits = words.windows(parts.len()).filter(|window| {
            let mut pairs = window.iter().zip(&parts);
            pairs.all(|((_, word), part)| word == part)
        });
        out.extend(hits.map(|window| (window[0].0, *phrase)));
    }
    out
}

#[test]
fn finished_crates_use_plain_words() {
    let crates = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut wrong = Vec::new();
    for name in FINISHED {
        let mut files = Vec::new();
        for folder in ["src", "tests", "benches", "examples"] {
            let folder = crates.join(name).join(folder);
            if folder.is_dir() {
                rust_files(&folder, &mut files);
            }
        }
        assert!(!files.is_empty(), "{name}");
        // this file quotes the words
        files.retain(|f| !f.ends_with("testkit/tests/words.rs"));
        for file in files {
            let text = std::fs::read_to_string(&file).expect("a source file");
            for (line, phrase) in found(&text) {
                wrong.push(format!("{}:{line}: {phrase}", file.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_phrase_is_found_also_across_lines() {
    let text = "/// Values that are Worked\n/// out: `finer-than-doubt`, `no_doubt`.\n// Doubt\n";
    assert_eq!(found(text), [(3, "doubt"), (1, "worked out")]);
}
