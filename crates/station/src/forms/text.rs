//! What is made of the table in words: signatures, and what was meant by a word.

use super::bundle::{ABOUT, SHEET};
use super::reader::{Reader, Refusal};
use super::types::{Begins, Block, Form, Many, Need, Slot, Stands, Subject, Takes};
use crate::cx::nearest;

fn one_operand(t: &Takes) -> String {
    match t {
        Takes::Value(q) => q.hole.to_owned(),
        Takes::Values(q) => format!("{} …", q.hole),
        Takes::Range(_) => "LOW to HIGH".to_owned(),
        Takes::Name(k) => k.hole().to_owned(),
        Takes::Names(k) => format!("{0} [{0}]", k.hole()),
        Takes::NamePair(k) => format!("{0} to {0}", k.hole()),
        Takes::Counted(k) => format!("[COUNT of] {}", k.hole()),
        Takes::Band | Takes::Bands | Takes::BandNames => "BAND".to_owned(),
        Takes::OneOf(words) => words.iter().map(|w| w.word).collect::<Vec<_>>().join(" | "),
        Takes::Text => "\"TEXT\"".to_owned(),
        Takes::Date => "DATE".to_owned(),
        Takes::File(_) => "\"FILE\"".to_owned(),
        Takes::Filler(w) => w[0].to_owned(),
        Takes::May(t) => format!("[{}]", one_operand(t)),
        Takes::Then(w, t) => format!("[{w} {}]", one_operand(t)),
        Takes::Rest => "TEXT".to_owned(),
        Takes::Antennas => "ANTENNA of STATION to ANTENNA".to_owned(),
        Takes::Hop => "CHAIN of STATION to CHAIN of STATION".to_owned(),
        Takes::Equals => "=".to_owned(),
    }
}

/// How a slot is written: `added LOSS`.
#[must_use]
pub(super) fn of_slot(s: &Slot) -> String {
    let mut out = match s.begins {
        Begins::Word(w) => w.to_owned(),
        Begins::Phrase(a, b) => format!("{a} {b}"),
        Begins::OneOf(set) => {
            let words = set.words.iter().filter(|w| w.alike.is_none());
            words.map(|w| w.word).collect::<Vec<_>>().join(" | ")
        }
        Begins::Value(q) => q.hole.to_owned(),
        Begins::ValueAs(q, w) => format!("{} {w}", q.hole),
        Begins::Place => "PLACE".to_owned(),
        Begins::Bare(t) => one_operand(t),
        Begins::Text => "\"TEXT\"".to_owned(),
        Begins::Date => "DATE".to_owned(),
    };
    for t in s.takes {
        out.push(' ');
        out.push_str(&one_operand(t));
    }
    out
}

/// So many slots say what can be said about every figure, at least.
const ALL_FIGURES: usize = 12;

/// How a statement is written, in one line, with what is its own: the qualifiers that every figure
/// takes are left out. Second: the slots in the order of the line, each with its bytes in it.
#[must_use]
pub fn signature(f: &Form) -> (String, Vec<(u8, std::ops::Range<usize>)>) {
    let mut out = f.word.to_owned();
    let mut places = Vec::new();
    let mut put = |out: &mut String, open: &str, s: &Slot, close: &str| {
        out.push_str(open);
        let from = out.len();
        out.push_str(&of_slot(s));
        places.push((s.id, from..out.len()));
        out.push_str(close);
    };
    match f.subject {
        Subject::Tag | Subject::TagBefore => out.push_str(" [TAG]"),
        Subject::New(k) | Subject::Use(k) => {
            out.push(' ');
            out.push_str(k.hole());
        }
        Subject::MayNew(k) => out.push_str(&format!(" [{}]", k.hole())),
        Subject::Nothing | Subject::Itself(_) => {}
    }
    // what every figure takes is left out, what only this statement takes is not
    let about = f.all_slots().filter(|s| s.id >= ABOUT).count();
    let shown = |s: &&'static Slot| {
        s.alike.is_none() && (s.id < ABOUT || about < ALL_FIGURES && s.id != SHEET)
    };
    let own = || f.all_slots().filter(shown);
    let alone = |n: &&Need| n.when == 0 && n.one_of.count_ones() == 1;
    let needed = f.needs.iter().filter(alone).fold(0, |m, n| m | n.one_of);
    for (n, s) in own().filter(|s| s.stands == Stands::First).enumerate() {
        put(&mut out, if n == 0 { " " } else { " | " }, s, "");
    }
    let mut comma = "";
    for s in own().filter(|s| s.stands != Stands::First) {
        let after = matches!(s.stands, Stands::After(..) | Stands::Head);
        let need = needed & s.bit() != 0;
        let sep = if after { "" } else { comma };
        let (open, close) = if need { (" ", "") } else { (" [", "]") };
        put(&mut out, &format!("{sep}{open}"), s, close);
        if s.many != Many::Once {
            out.push('…');
        }
        comma = ",";
    }
    match f.block {
        Block::Lines(..) | Block::Rows(_) => out.push_str(" { … }"),
        Block::None => {}
    }
    (out.trim().to_owned(), places)
}

/// What was meant by a word: a word of the trade for one, else an accepted word nearly spelt so, else
/// the only one that begins so.
#[must_use]
pub fn mean<'w>(
    typed: &str,
    words: impl Iterator<Item = (&'w str, &'static [&'static str])> + Clone,
) -> Option<&'w str> {
    let lower = typed.to_lowercase();
    words
        .clone()
        .find(|(_, also)| also.contains(&lower.as_str()))
        .map(|(w, _)| w)
        .or_else(|| nearest(typed, words.clone().map(|(w, _)| w)))
        .or_else(|| match begun(typed, words)[..] {
            [one] => Some(one),
            _ => None,
        })
}

/// A shorter beginning is that of too many words.
const BEGINNING: usize = 3;

/// The words of which this is the beginning; if there is none, those whose word of the trade begins so.
#[must_use]
pub fn begun<'w>(
    typed: &str,
    words: impl Iterator<Item = (&'w str, &'static [&'static str])> + Clone,
) -> Vec<&'w str> {
    let lower = typed.to_lowercase();
    if lower.chars().count() < BEGINNING {
        return Vec::new();
    }
    let mut of_words: Vec<&str> = words
        .clone()
        .map(|(w, _)| w)
        .filter(|w| w.starts_with(&*lower))
        .collect();
    if of_words.is_empty() {
        let begins = |also: &[&str]| also.iter().any(|a| a.starts_with(&*lower));
        of_words = words
            .filter(|(_, also)| begins(also))
            .map(|(w, _)| w)
            .collect();
    }
    of_words.sort_unstable();
    of_words.dedup();
    of_words
}

/// The statement of a block that was meant by a word.
#[must_use]
pub fn meant_statement(typed: &str, block: Block) -> Option<&'static str> {
    mean(typed, block.lines().iter().map(|f| (f.word, f.also)))
}

/// The word of a statement that was meant, among those that can still come.
#[must_use]
pub fn meant_word(typed: &str, r: &Reader<'_, '_>) -> Option<&'static str> {
    let words: Vec<(&'static str, &'static [&'static str])> = r
        .form
        .all_slots()
        .filter(|s| {
            matches!(
                r.refuses(s, r.have_for(s)),
                None | Some(Refusal::TooEarly(_))
            )
        })
        .flat_map(|s| s.words().map(|w| (w, s.also)))
        .collect();
    mean(typed, words.into_iter())
}
