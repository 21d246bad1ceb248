//! The table as data: for the grammars, and as tables of the language reference.

use std::fmt::Write as _;

use super::bundle::ABOUT;
use super::each;
use super::text::{of_slot, signature};
use super::types::{Begins, Block, Form, Many, Slot, Stands, Takes};

/// The words inside statements, sorted.
#[must_use]
pub fn inner() -> Vec<&'static str> {
    let mut words: Vec<&'static str> = vec!["k", "per", "to"];
    each(&mut |_, form| words.extend(form.all_slots().flat_map(inner_words)));
    words.retain(|w| !w.is_empty() && !matches!(*w, "N" | "S" | "E" | "W"));
    words.sort_unstable();
    words.dedup();
    words
}

/// The reference's list of words, in Markdown: statement words with the places they stand in, and
/// the words inside statements.
#[must_use]
pub fn word_list() -> String {
    let mut out = String::from("| word | in | says |\n|---|---|---|\n");
    let mut all: Vec<&crate::keywords::Keyword> = crate::keywords::KEYWORDS.iter().collect();
    all.sort_by_key(|k| k.word);
    for k in all {
        let (mut places, mut docs): (Vec<&str>, Vec<&str>) = (Vec::new(), Vec::new());
        for (c, f) in k.contexts.iter().zip(&k.forms) {
            let words = c.words();
            places.push(
                ["in a ", "in an ", "among "]
                    .iter()
                    .fold(words, |w, p| w.strip_prefix(p).unwrap_or(w)),
            );
            if !docs.contains(&f.doc) {
                docs.push(f.doc);
            }
        }
        let _ = writeln!(
            out,
            "| `{}` | {} | {} |",
            k.word,
            places.join(", "),
            docs.join(" ")
        );
    }
    let words: Vec<String> = crate::keywords::WORDS
        .iter()
        .map(|w| format!("`{w}`"))
        .collect();
    let _ = writeln!(out, "\nWords inside statements: {}.", words.join(" "));
    out
}

/// The statement words and the words inside statements as JSON, for the grammars.
#[must_use]
pub fn json() -> String {
    let mut out = String::from("{\n  \"keywords\": [\n");
    let all = &*crate::keywords::KEYWORDS;
    for (i, k) in all.iter().enumerate() {
        let contexts: Vec<String> = k.contexts.iter().map(|c| format!("\"{c:?}\"")).collect();
        let comma = if i + 1 < all.len() { "," } else { "" };
        let _ = writeln!(
            out,
            "    {{\"word\": \"{}\", \"contexts\": [{}]}}{comma}",
            k.word,
            contexts.join(", ")
        );
    }
    let words: Vec<String> = crate::keywords::WORDS
        .iter()
        .map(|w| format!("\"{w}\""))
        .collect();
    let _ = writeln!(out, "  ],\n  \"words\": [{}]\n}}", words.join(", "));
    out
}

/// The words of a slot and of its operands, each alone.
fn inner_words(s: &'static Slot) -> Vec<&'static str> {
    fn of(t: &'static Takes, out: &mut Vec<&'static str>) {
        match t {
            Takes::OneOf(words) => out.extend(words.iter().flat_map(|w| w.word.split(' '))),
            Takes::Filler(words) => out.extend(words.iter()),
            Takes::May(t) => of(t, out),
            Takes::Then(w, t) => {
                out.push(w);
                of(t, out);
            }
            Takes::Counted(_) => out.push("of"),
            _ => {}
        }
    }
    let mut out: Vec<&'static str> = match s.begins {
        // kinds of part are statement words
        Begins::OneOf(set) if std::ptr::eq(set.words, super::words::KINDS.words) => Vec::new(),
        Begins::Phrase(a, b) => vec![a, b],
        _ => s.words().flat_map(|w| w.split(' ')).collect(),
    };
    if let Begins::Bare(t) = &s.begins {
        of(t, &mut out);
    }
    s.takes.iter().for_each(|t| of(t, &mut out));
    out
}

/// The reference's table of a statement, in Markdown: how it is written, then what it takes.
#[must_use]
pub fn reference(f: &Form) -> String {
    let code = |t: &str| format!("`{}`", t.replace('|', "\\|"));
    let mut out = format!("| {} | {} |\n|---|---|\n", code(&signature(f).0), f.doc);
    for s in f.all_slots().filter(|s| s.id < ABOUT && s.alike.is_none()) {
        let many = match s.many {
            Many::Once => "",
            Many::Each | Many::OncePerKind => "; may be repeated",
        };
        let after = match s.stands {
            Stands::After(id, _) => match f.slot(id) {
                Some(of) => format!("; after {}", code(&of_slot(of))),
                None => String::new(),
            },
            _ => String::new(),
        };
        let _ = writeln!(
            out,
            "| {} | {}{many}{after}: {} |",
            code(&of_slot(s)),
            s.doc,
            code(s.example)
        );
    }
    for x in f
        .exclusive
        .iter()
        .filter(|x| x.slots.trailing_zeros() < u32::from(ABOUT))
    {
        let words: Vec<String> = f
            .all_slots()
            .filter(|s| x.slots & s.bit() != 0)
            .map(|s| code(&of_slot(s)))
            .collect();
        let _ = writeln!(out, "| one of {} | {} |", words.join(", "), x.rule);
    }
    if let Block::Lines(_, lines) = f.block {
        let words: Vec<String> = lines.iter().map(|l| code(l.word)).collect();
        let _ = writeln!(out, "| in its block | {} |", words.join(", "));
    }
    out
}
