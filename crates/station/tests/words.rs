//! Words inside statements are words of the language, and no group of words stands in another.

use downlead_station::keywords::{KEYWORDS, WORDS};
use downlead_station::words::{ALIKE, DATUMS, MODES, OF_FIGURES, ONE_OF, excludes, own};

/// Highlighters and rename know the words of the keyword table only.
#[test]
fn every_word_is_in_the_table() {
    let known = |w: &str| WORDS.contains(&w) || KEYWORDS.iter().any(|k| k.word == w);
    let of_statements = KEYWORDS
        .iter()
        .flat_map(|k| k.contexts.iter().flat_map(|c| own(*c, k.word)));
    let groups = ONE_OF
        .iter()
        .flat_map(|o| o.words.iter().copied().flatten());
    let all = of_statements
        .chain(groups)
        .chain([ALIKE, DATUMS, MODES, OF_FIGURES].into_iter().flatten());
    for w in all {
        assert!(known(w), "{w}");
    }
}

#[test]
fn what_excludes_is_excluded() {
    let words: Vec<&str> = ONE_OF.iter().flat_map(|o| o.words.concat()).collect();
    for (i, a) in words.iter().enumerate() {
        assert!(!words[..i].contains(a), "{a} is in two groups");
        assert!(excludes(a, a).is_none());
        for b in &words {
            assert_eq!(
                excludes(a, b).is_some(),
                excludes(b, a).is_some(),
                "{a} {b}"
            );
        }
    }
    assert!(excludes("erp", "eirp").is_some());
    assert!(excludes("typical", "nominal").is_none());
    assert!(excludes("erp", "pep").is_none());
}

/// The manual lists every keyword with its sentence, and every word inside statements.
#[test]
fn the_manual_lists_every_word() {
    let manual = include_str!("../../../docs/language.md");
    let list = manual
        .split("\n## Keywords\n")
        .nth(1)
        .and_then(|t| t.split("\n## ").next())
        .expect("a list of keywords");
    for k in downlead_station::keywords::KEYWORDS {
        let row = list
            .lines()
            .find(|l| l.starts_with(&format!("| `{}` |", k.word)))
            .unwrap_or_else(|| panic!("`{}` is not listed", k.word));
        assert!(row.contains(k.doc), "`{}`: {row}", k.word);
    }
    let inner = list.rsplit("Words inside statements:").next().unwrap_or("");
    for w in downlead_station::keywords::WORDS {
        assert!(inner.contains(&format!("`{w}`")), "`{w}` is not listed");
    }
}
