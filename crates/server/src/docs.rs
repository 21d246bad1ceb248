//! Open documents: their texts as the client has them.

use std::cell::RefCell;

use ls_types::{SemanticToken, TextDocumentContentChangeEvent, Uri};
use rustc_hash::FxHashMap;

use downlead_base::Span;

use crate::handlers::hints::KeptHints;
use crate::positions::{Encoding, Lines};
use crate::space::Key;
use crate::unopened::Shown;

/// Where a document belongs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Home {
    /// A file, or a text with no file, of a space.
    Space { key: Key, path: String },
    /// A file of the built-in library, by index.
    Library(usize),
    /// A text the server made.
    Made,
}

/// An open document.
pub(crate) struct Document {
    pub(crate) uri: Uri,
    pub(crate) version: i32,
    pub(crate) text: String,
    pub(crate) lines: Lines,
    pub(crate) home: Home,
    /// Counts changes of the text in this process, whatever the client's versions do.
    pub(crate) change: u64,
    /// Version and digest of the diagnostics sent last.
    pub(crate) published: Option<(i32, u64)>,
    /// Semantic tokens sent last, by the name they were given.
    pub(crate) tokens: Option<(String, Vec<SemanticToken>)>,
    /// Hints as they were sent, item by item.
    pub(crate) hints: RefCell<KeptHints>,
}

impl Document {
    pub(crate) fn new(uri: Uri, version: i32, text: String, home: Home, change: u64) -> Document {
        let lines = Lines::new(&text);
        Document {
            uri,
            version,
            text,
            lines,
            home,
            change,
            published: None,
            tokens: None,
            hints: RefCell::default(),
        }
    }

    /// A file that no client has opened.
    pub(crate) fn closed(uri: Uri, text: &str) -> Document {
        Document::new(uri, 0, text.to_owned(), Home::Made, 0)
    }

    /// Applies the changes of one notification, each to the text the one before left.
    pub(crate) fn apply(
        &mut self,
        changes: Vec<TextDocumentContentChangeEvent>,
        encoding: Encoding,
    ) {
        for change in changes {
            match change.range {
                None => {
                    self.text = change.text;
                    self.lines = Lines::new(&self.text);
                }
                Some(range) => {
                    let span = self.lines.span(&self.text, range, encoding);
                    self.text.replace_range(span.range(), &change.text);
                    self.lines
                        .replaced(&self.text, span, change.text.len() as u32);
                }
            }
        }
    }
}

/// All open documents, by address.
#[derive(Default)]
pub(crate) struct Documents {
    map: FxHashMap<String, Document>,
    changes: u64,
    /// What the client shows for files that are not open.
    pub(crate) shown: Shown,
}

impl Documents {
    pub(crate) fn get(&self, uri: &Uri) -> Option<&Document> {
        self.map.get(uri.as_str())
    }

    pub(crate) fn get_mut(&mut self, uri: &Uri) -> Option<&mut Document> {
        self.map.get_mut(uri.as_str())
    }

    pub(crate) fn tick(&mut self) -> u64 {
        self.changes += 1;
        self.changes
    }

    pub(crate) fn insert(&mut self, document: Document) -> Option<Document> {
        self.map.insert(document.uri.as_str().to_owned(), document)
    }

    pub(crate) fn remove(&mut self, uri: &Uri) -> Option<Document> {
        self.map.remove(uri.as_str())
    }

    pub(crate) fn iter(&self) -> impl Iterator<Item = &Document> {
        self.map.values()
    }

    /// The open document of that path in that space.
    pub(crate) fn at<'a>(&'a self, key: &Key, path: &str) -> Option<&'a Document> {
        self.map
            .values()
            .find(|d| matches!(&d.home, Home::Space { key: k, path: p } if k == key && p == path))
    }

    /// The open documents of a space with their paths, in the order of the paths.
    pub(crate) fn of<'a>(&'a self, key: &Key) -> Vec<(&'a str, &'a Document)> {
        let mut all: Vec<(&str, &Document)> = self
            .map
            .values()
            .filter_map(|d| match &d.home {
                Home::Space { key: k, path } if k == key => Some((path.as_str(), d)),
                _ => None,
            })
            .collect();
        all.sort_by(|a, b| {
            a.0.cmp(b.0)
                .then_with(|| a.1.uri.as_str().cmp(b.1.uri.as_str()))
        });
        all
    }
}

/// The one replacement that makes `new` of `old`.
pub(crate) fn difference<'a>(old: &str, new: &'a str) -> Option<(Span, &'a str)> {
    if old == new {
        return None;
    }
    let (a, b) = (old.as_bytes(), new.as_bytes());
    let shorter = a.len().min(b.len());
    let mut front = common(a, b, shorter);
    while !old.is_char_boundary(front) || !new.is_char_boundary(front) {
        front -= 1;
    }
    let most = shorter - front;
    let mut back = a
        .iter()
        .rev()
        .zip(b.iter().rev())
        .take(most)
        .take_while(|(x, y)| x == y)
        .count();
    while !old.is_char_boundary(a.len() - back) || !new.is_char_boundary(b.len() - back) {
        back -= 1;
    }
    Some((
        Span::new(front as u32, (a.len() - back) as u32),
        &new[front..b.len() - back],
    ))
}

/// Length of the common beginning; blocks first, since texts are long and edits short.
fn common(a: &[u8], b: &[u8], most: usize) -> usize {
    const BLOCK: usize = 256;
    let mut n = 0;
    while n + BLOCK <= most && a[n..n + BLOCK] == b[n..n + BLOCK] {
        n += BLOCK;
    }
    n + a[n..most]
        .iter()
        .zip(&b[n..most])
        .take_while(|(x, y)| x == y)
        .count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_difference_makes_the_new_text() {
        let texts = [
            "",
            "a",
            "aa",
            "aba",
            "°",
            "±",
            "x°y",
            "x±y",
            "line\nline\n",
            "line\nline\nline\n",
            "𝄞",
            "𝄢",
        ];
        for old in texts {
            for new in texts {
                let mut made = old.to_owned();
                match difference(old, new) {
                    Some((span, text)) => made.replace_range(span.range(), text),
                    None => assert_eq!(old, new),
                }
                assert_eq!(made, new, "{old:?}");
            }
        }
    }
}
