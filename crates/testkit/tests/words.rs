//! Comments, messages and documents are plain technical English: words that have a plainer
//! equivalent are not used.

use std::path::{Path, PathBuf};

/// Words and phrases, each with its replacement. A hyphen or an underscore joins words, so that
/// keys (`not-beyond-doubt`) and identifiers are not concerned.
const BANNED: &[(&str, &str)] = &[
    ("anew", "again"),
    ("anybody", "name the role"),
    ("are told", "are reported, follow from"),
    ("beyond doubt", "by more than the uncertainty"),
    ("by whomever", "name the role"),
    ("doubt", "uncertainty"),
    ("doubtful", "uncertain"),
    ("doubts", "uncertainties"),
    ("go before", "take precedence over"),
    ("goes before", "takes precedence over"),
    ("in vain", "without success"),
    ("is told", "is reported, follows from"),
    ("laid", "compared, placed"),
    ("mended", "corrected"),
    ("nobody", "name the role, or use the passive"),
    ("parted", "separated"),
    ("riddle", "say what it is"),
    ("somebody", "name the role"),
    ("stand beside", "are next to"),
    ("stands beside", "is next to"),
    ("stands twice", "occurs twice"),
    ("through-line", "directional"),
    ("told apart", "distinguished"),
    ("told once", "reported once"),
    ("whoever", "name the role"),
    ("work out", "compute, evaluate"),
    ("worked out", "computed, evaluated"),
    ("working out", "computing, evaluating"),
    ("works out", "computes, evaluates"),
];

/// Documents outside the crates.
const DOCUMENTS: &[&str] = &[
    "README.md",
    "DEVELOPERS.md",
    "CHANGELOG.md",
    "docs",
    "editors",
    "examples",
];

/// Endings of files that are read.
const READ: &[&str] = &["rs", "md", "downlead"];

fn files_below(dir: &Path, out: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(dir).expect("a folder") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        if path.is_dir() {
            // what is built or installed is not part of the project
            if !["target", "node_modules"].contains(&&*name) && !name.starts_with('.') {
                files_below(&path, out);
            }
        } else if path
            .extension()
            .is_some_and(|e| READ.iter().any(|r| e == *r))
        {
            out.push(path);
        }
    }
}

/// Banned phrases of a text with their lines, counted from 1. A phrase may continue in the next
/// line. The key of a published format stays within its version: `rename = "…"` is not read.
fn found(text: &str) -> Vec<(usize, &'static str)> {
    let words: Vec<(usize, String)> = text
        .lines()
        .enumerate()
        .filter(|(_, line)| !line.contains("#[serde(rename = "))
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
fn the_project_uses_plain_words() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let mut files = Vec::new();
    files_below(&root.join("crates"), &mut files);
    for document in DOCUMENTS {
        let path = root.join(document);
        match path.is_dir() {
            true => files_below(&path, &mut files),
            false => files.push(path),
        }
    }
    // this file quotes the words
    files.retain(|f| !f.ends_with("testkit/tests/words.rs"));
    assert!(files.len() > 500, "{}", files.len());
    let mut wrong = Vec::new();
    for file in files {
        let text = std::fs::read_to_string(&file).expect("a text");
        for (line, phrase) in found(&text) {
            wrong.push(format!("{}:{line}: {phrase}", file.display()));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn a_phrase_is_found_also_across_lines() {
    let text = "/// Values that are Worked\n/// out: `not-beyond-doubt`, `no_doubt`.\n\
                #[serde(rename = \"doubt\")]\n// Doubt\n";
    assert_eq!(found(text), [(4, "doubt"), (1, "worked out")]);
}
