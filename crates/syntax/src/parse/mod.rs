//! From text to items: split at column 0, lex, then parse line by line.

mod arena;
mod build;
mod grammar;
mod message;
mod prepare;

pub use message::{date_fault, dates_meant};

use std::sync::Arc;

use downlead_base::{ItemId, Span};

use crate::Placed;
use crate::lex::Tok;
use crate::tree::Item;
use arena::Arena;
use build::Builder;

/// Bytes of text whose tokens are held at once: the tokens of one batch stay in the cache, and the
/// parser is built once a batch.
const BATCH: usize = 64 * 1024;

/// Parses a text that begins at `offset` of its file and at an item's start.
pub(crate) fn parse_items(
    text: &str,
    whole: Option<&Arc<str>>,
    offset: usize,
    out: &mut Vec<Placed>,
) {
    let mut toks: Vec<Tok> = Vec::new();
    let mut arena = Arena::default();
    let mut starts = Starts::new(text, offset == 0).peekable();
    let mut batch: Vec<Lexed<'_>> = Vec::new();
    while starts.peek().is_some() {
        toks.clear();
        batch.clear();
        let mut size = 0;
        while size < BATCH
            && let Some(start) = starts.next()
        {
            let end = starts.peek().copied().unwrap_or(text.len());
            let piece = &text[start..end];
            let from = toks.len();
            let faults = prepare::lex(piece, &mut toks);
            batch.push(Lexed {
                start: offset + start,
                text: piece,
                toks: from..toks.len(),
                faults,
            });
            size += piece.len();
        }
        let line = grammar::line();
        for lexed in batch.drain(..) {
            let id = ItemId::fresh();
            let builder = Builder::new(
                id,
                lexed.text,
                &toks[lexed.toks],
                &line,
                &mut arena,
                lexed.faults,
            );
            let (of, from) = match whole {
                Some(t) => (Arc::clone(t), lexed.start as u32),
                None => (lexed.text.into(), 0),
            };
            out.push(Placed {
                start: lexed.start as u32,
                item: Arc::new(builder.run(of, from)),
            });
        }
    }
}

/// An item as it would be read if some ranges of its text were blanks. Identity and all places stay
/// the same. None if a range does not lie between characters of the text.
#[must_use]
pub fn without(item: &Item, ranges: &[Span]) -> Option<Item> {
    let mut text = item.text().as_bytes().to_vec();
    for r in ranges {
        for byte in text.get_mut(r.range())? {
            if !matches!(byte, b'\n' | b'\r') {
                *byte = b' ';
            }
        }
    }
    let text = String::from_utf8(text).ok()?;
    let mut items = Vec::new();
    parse_items(&text, None, 0, &mut items);
    let [one] = <[Placed; 1]>::try_from(items).ok()?;
    let mut read = Arc::into_inner(one.item)?;
    read.id = item.id;
    Some(read)
}

/// An item between lexing and parsing.
struct Lexed<'t> {
    start: usize,
    text: &'t str,
    toks: std::ops::Range<usize>,
    faults: prepare::Faults,
}

/// Where items start: at the start of the text, and at each letter in column 0.
struct Starts<'t> {
    text: &'t str,
    at: usize,
    first: Option<usize>,
}

impl<'t> Starts<'t> {
    /// `whole`: the text is the start of a file, so it may begin with a byte order mark.
    fn new(text: &'t str, whole: bool) -> Self {
        let first = (!text.is_empty()).then_some(0);
        let mark = '\u{FEFF}'.len_utf8();
        // column 0 of the first line comes after the mark
        let at = if whole && text.starts_with('\u{FEFF}') && starts_item(text.as_bytes(), mark) {
            mark
        } else {
            0
        };
        Starts { text, at, first }
    }
}

impl Iterator for Starts<'_> {
    type Item = usize;

    fn next(&mut self) -> Option<usize> {
        if let Some(first) = self.first.take() {
            return Some(first);
        }
        let bytes = self.text.as_bytes();
        if self.at > 0
            && self.at == '\u{FEFF}'.len_utf8()
            && self.text.starts_with('\u{FEFF}')
            && bytes.get(self.at - 1) != Some(&b'\n')
        {
            let start = self.at;
            self.at = start + 1;
            return Some(start);
        }
        while let Some(found) = memchr::memchr(b'\n', &bytes[self.at.min(bytes.len())..]) {
            self.at += found + 1;
            if starts_item(bytes, self.at) {
                return Some(self.at);
            }
        }
        None
    }
}

fn starts_item(bytes: &[u8], at: usize) -> bool {
    bytes
        .get(at)
        .is_some_and(|b| b.is_ascii_alphabetic() || *b == b'_')
}
