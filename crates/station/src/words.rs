//! Words inside statements, as a view of the table of statements ([`crate::forms`]): what a
//! statement takes, and which words exclude each other.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use crate::forms::{self, ABOUT, ABOUT_FIGURE, Begins, ONE_ORIGIN, Set, Slot, Takes};
use crate::keywords::Context;

fn of_set(set: &'static Set) -> Vec<&'static str> {
    set.words.iter().map(|w| w.word).collect()
}

/// Modes of a transmitter.
pub static MODES: LazyLock<Vec<&'static str>> = LazyLock::new(|| of_set(&forms::MODES));

/// Datums of a position.
pub static DATUMS: LazyLock<Vec<&'static str>> = LazyLock::new(|| of_set(&forms::DATUMS));

/// What can be said about every figure.
pub static OF_FIGURES: LazyLock<Vec<&'static str>> =
    LazyLock::new(|| ABOUT_FIGURE.iter().flat_map(Slot::words).collect());

/// Words that say the same as another one: they are read, and the other one is offered.
pub static ALIKE: &[&str] = &["source", "nominal"];

/// Words of a statement: its own, and those said about its figures.
struct Words {
    own: Vec<&'static str>,
    about: Vec<&'static str>,
}

static WORDS: LazyLock<FxHashMap<&'static str, Vec<(Context, Words)>>> = LazyLock::new(|| {
    let mut all: FxHashMap<&'static str, Vec<(Context, Words)>> = FxHashMap::default();
    forms::each(&mut |block, form| {
        let Some(cx) = block.context().filter(|_| !form.word.is_empty()) else {
            return;
        };
        let list = all.entry(form.word).or_default();
        if list.iter().all(|x| x.0 != cx) {
            list.push((cx, of_form(form)));
        }
    });
    all
});

fn of_form(form: &'static forms::Form) -> Words {
    let (mut own, mut about) = (Vec::new(), Vec::new());
    for s in form.all_slots() {
        let list = if s.id < ABOUT { &mut own } else { &mut about };
        list.extend(s.words());
        if let Begins::Phrase(_, w) = s.begins {
            list.push(w);
        }
        for t in s.takes {
            if let Takes::Then(w, _) = t {
                list.push(w);
            }
        }
    }
    Words { own, about }
}

fn words_of(cx: Context, word: &str) -> Option<&'static Words> {
    let list = WORDS.get(word)?;
    // a part means the same in a station and in a chain
    let part = |c: Context| matches!(c, Context::Station | Context::Session | Context::Chain);
    list.iter()
        .find(|x| x.0 == cx)
        .or_else(|| list.iter().find(|x| part(x.0)))
        .map(|x| &x.1)
}

/// Those of [`OF_FIGURES`] that a statement takes. A text in quotes counts as `source`, a date
/// as `read`.
#[must_use]
pub fn of_figures(cx: Context, word: &str) -> &'static [&'static str] {
    words_of(cx, word).map_or(&OF_FIGURES, |w| &w.about)
}

/// Words that only some statements take, besides what can be said about figures.
#[must_use]
pub fn own(cx: Context, word: &str) -> &'static [&'static str] {
    words_of(cx, word).map_or(&[], |w| &w.own)
}

/// Why two words exclude each other.
#[derive(Clone, Copy, Debug)]
pub struct Excludes {
    /// What has one of them, as a sentence.
    pub rule: &'static str,
    /// What to write where two are meant.
    pub instead: &'static str,
}

/// Words of which one thing has one, each with its group and the word it stands for.
static ONE_OF: LazyLock<FxHashMap<&'static str, (usize, &'static str)>> = LazyLock::new(|| {
    let mut all = FxHashMap::default();
    for (n, set) in forms::SETS.iter().enumerate() {
        for w in set.words {
            all.insert(w.word, (n, w.alike.unwrap_or(w.word)));
        }
    }
    for s in ABOUT_FIGURE {
        if s.bit() & ONE_ORIGIN.slots != 0 {
            all.extend(s.words().map(|w| (w, (forms::SETS.len(), w))));
        }
    }
    all
});

/// Whether other words exclude this one.
#[must_use]
pub fn is_one_of(word: &str) -> bool {
    ONE_OF.contains_key(word)
}

/// The rule by which two words exclude each other.
#[must_use]
pub fn excludes(a: &str, b: &str) -> Option<Excludes> {
    let (x, y) = (ONE_OF.get(a)?, ONE_OF.get(b)?);
    if x.0 != y.0 || x.1 == y.1 {
        return None;
    }
    Some(match forms::SETS.get(x.0) {
        Some(set) => Excludes {
            rule: set.rule,
            instead: set.instead,
        },
        None => Excludes {
            rule: ONE_ORIGIN.rule,
            instead: ONE_ORIGIN.instead,
        },
    })
}

/// All words that exclude some other one.
pub fn one_of() -> impl Iterator<Item = &'static str> {
    ONE_OF.keys().copied()
}
