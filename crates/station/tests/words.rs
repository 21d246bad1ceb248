//! Words inside statements are words of the language, and no word is in two groups of which one
//! thing has one.

use downlead_station::keywords::{KEYWORDS, WORDS, is_word};
use downlead_station::words::{
    ALIKE, DATUMS, MODES, OF_FIGURES, excludes, of_figures, one_of, own,
};

/// Highlighters and rename know the words of the keyword table only.
#[test]
fn every_word_is_in_the_table() {
    let known = |w: &str| is_word(w) || KEYWORDS.iter().any(|k| k.word == w);
    let of_statements = KEYWORDS.iter().flat_map(|k| {
        let of = move |c: &downlead_station::keywords::Context| {
            own(*c, k.word).iter().chain(of_figures(*c, k.word))
        };
        k.contexts.iter().flat_map(of)
    });
    let all = of_statements
        .copied()
        .chain(one_of())
        .chain(ALIKE.iter().copied())
        .chain(DATUMS.iter().copied())
        .chain(MODES.iter().copied())
        .chain(OF_FIGURES.iter().copied());
    for w in all {
        for w in w.split(' ').filter(|w| !["N", "S", "E", "W"].contains(w)) {
            assert!(known(w), "{w}");
        }
    }
    assert!(WORDS.is_sorted());
}

#[test]
fn what_excludes_is_excluded() {
    let words: Vec<&str> = one_of().collect();
    for a in &words {
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
    assert!(excludes("guess", "read").is_some());
    assert!(excludes("typical", "nominal").is_none());
    assert!(excludes("typical", "maximum").is_some());
    assert!(excludes("erp", "pep").is_none());
}
