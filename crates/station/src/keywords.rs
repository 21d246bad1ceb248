//! The words of the language as a view of the table of statements ([`crate::forms`]).

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

pub use crate::forms::Context;
use crate::forms::{self, Form};

/// One statement word.
#[derive(Debug)]
pub struct Keyword {
    /// The word.
    pub word: &'static str,
    /// Where it begins a statement.
    pub contexts: Vec<Context>,
    /// What it means in each of them, in the order of `contexts`.
    pub forms: Vec<&'static Form>,
}

impl Keyword {
    /// How it is written, for example.
    #[must_use]
    pub fn example(&self) -> &'static str {
        self.forms
            .first()
            .and_then(|f| f.examples.first())
            .unwrap_or(&self.word)
    }
}

/// All statement words, in the order of the table.
pub static KEYWORDS: LazyLock<Vec<Keyword>> = LazyLock::new(|| {
    let mut all: Vec<Keyword> = Vec::new();
    forms::each(&mut |block, form| {
        let Some(cx) = block.context().filter(|_| !form.word.is_empty()) else {
            return;
        };
        match all.iter_mut().find(|k| k.word == form.word) {
            Some(k) if k.contexts.contains(&cx) => {}
            Some(k) => {
                k.contexts.push(cx);
                k.forms.push(form);
            }
            None => all.push(Keyword {
                word: form.word,
                contexts: vec![cx],
                forms: vec![form],
            }),
        }
    });
    all
});

/// Words that stand inside statements, sorted.
pub static WORDS: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
    let mut all = forms::inner();
    // the usual criterion of a sensitivity, and a word of the first edition, which is no name since
    // then
    all.extend(["sinad", "reference"]);
    all.sort_unstable();
    all
});

/// Statement words that may begin a line there.
pub fn keywords_in(cx: Context) -> impl Iterator<Item = &'static Keyword> {
    KEYWORDS.iter().filter(move |k| k.contexts.contains(&cx))
}

/// The statement that was meant by a word at the beginning of a line there: a word of the trade for
/// it, else one that is nearly spelt so.
#[must_use]
pub fn meant_in(cx: Context, typed: &str) -> Option<&'static str> {
    forms::mean(typed, with_trade_words(cx))
}

/// The statements of which a word at the beginning of a line there is the beginning.
#[must_use]
pub fn begun_in(cx: Context, typed: &str) -> Vec<&'static str> {
    forms::begun(typed, with_trade_words(cx))
}

/// Words of statements, each with its words of the trade.
type Words = Vec<(&'static str, &'static [&'static str])>;

/// The statements there, each with its words of the trade.
fn with_trade_words(
    cx: Context,
) -> impl Iterator<Item = (&'static str, &'static [&'static str])> + Clone {
    // asked for every line that cannot be read
    static BY_CONTEXT: LazyLock<FxHashMap<Context, Words>> = LazyLock::new(|| {
        let mut all: FxHashMap<Context, Words> = FxHashMap::default();
        for k in KEYWORDS.iter() {
            for (c, f) in k.contexts.iter().zip(&k.forms) {
                all.entry(*c).or_default().push((f.word, f.also));
            }
        }
        all
    });
    BY_CONTEXT
        .get(&cx)
        .map_or(&[][..], Vec::as_slice)
        .iter()
        .copied()
}

/// The table's entry of a word.
#[must_use]
pub fn keyword(word: &str) -> Option<&'static Keyword> {
    // asked for every line of a text
    static BY_WORD: LazyLock<FxHashMap<&str, &Keyword>> =
        LazyLock::new(|| KEYWORDS.iter().map(|k| (k.word, k)).collect());
    BY_WORD.get(word).copied()
}

/// Whether a word stands inside statements.
#[must_use]
pub fn is_word(word: &str) -> bool {
    WORDS.binary_search(&word).is_ok()
}

/// What a word means at the beginning of a line there.
#[must_use]
pub fn form_in(cx: Context, word: &str) -> Option<&'static Form> {
    let k = keyword(word)?;
    let at = k.contexts.iter().position(|c| *c == cx)?;
    k.forms.get(at).copied()
}
