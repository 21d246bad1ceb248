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
