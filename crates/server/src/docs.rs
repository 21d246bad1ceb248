//! Open documents: their texts as the client has them.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::path::PathBuf;

use ls_types::{SemanticToken, TextDocumentContentChangeEvent, Uri};
use rustc_hash::{FxHashMap, FxHashSet};

use downlead_base::Span;

use crate::kept_hints::KeptHints;
use crate::positions::{Encoding, Lines};
use crate::typing::Typing;

/// A space: the documents below one root folder, or a document that has none.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) enum Key {
    /// The files below a folder.
    Root(PathBuf),
    /// One document that has no folder, by its address.
    Alone(String),
}

/// Diagnostics that the client shows for files that are not open: by address, the space and a
/// digest.
pub(crate) type Shown = BTreeMap<String, (Key, u64)>;

/// The space or library that a document belongs to.
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
    /// Where and when it was typed in last.
    pub(crate) typing: Option<Typing>,
    /// Digests of the findings that the client shows.
    pub(crate) told: FxHashSet<u64>,
    /// Semantic tokens sent last, by the name they were given.
    pub(crate) tokens: Option<(String, Vec<SemanticToken>)>,
    /// Hints as they were sent, item by item.
    pub(crate) hints: RefCell<KeptHints>,
    /// True if the hints were prepared in idle time.
    pub(crate) prepared: bool,
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
            typing: None,
            told: FxHashSet::default(),
            tokens: None,
            hints: RefCell::default(),
            prepared: false,
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
        self.typing = None;
        for change in changes {
            match change.range {
                None => {
                    let changed = difference(&self.text, &change.text);
                    self.typing = changed.and_then(|(span, text)| Typing::of(span, text));
                    self.text = change.text;
                    self.lines = Lines::new(&self.text);
                }
                Some(range) => {
                    let span = self.lines.span(&self.text, range, encoding);
                    self.typing = Typing::of(span, &change.text);
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
    /// Diagnostics that the client shows for files that are not open.
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

/// The one replacement that turns `old` into `new`.
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

/// Shorter replacements are not split.
const SHORT: usize = 1 << 10;
/// Longest run of lines that differ before two texts agree again.
const APART: usize = 8;
/// More replacements than this are merged into one.
const HUNKS: usize = 64;

/// The replacements that turn `old` into `new`, the last one first: each leaves the places of the
/// others as they are. One for a small change; several, line by line, for a change of distant places
/// (several cursors, several changes not yet evaluated, a formatter).
pub(crate) fn differences<'a>(old: &str, new: &'a str) -> Vec<(Span, &'a str)> {
    let Some((span, text)) = difference(old, new) else {
        return Vec::new();
    };
    if span.len() as usize <= SHORT && text.len() <= SHORT {
        return vec![(span, text)];
    }
    by_lines(old, new, span, text).unwrap_or_else(|| vec![(span, text)])
}

fn by_lines<'a>(old: &str, new: &'a str, span: Span, text: &str) -> Option<Vec<(Span, &'a str)>> {
    // whole lines
    let first = old[..span.start as usize].rfind('\n').map_or(0, |i| i + 1);
    let whole = |t: &str, end: usize| t[end..].find('\n').map_or(t.len(), |i| end + i + 1);
    let old_end = whole(old, span.end as usize);
    let new_end = whole(new, span.start as usize + text.len());
    let a: Vec<&str> = old[first..old_end].split_inclusive('\n').collect();
    let b: Vec<&str> = new[first..new_end].split_inclusive('\n').collect();
    let (mut i, mut j) = (0, 0);
    let (mut at, mut now) = (first, first);
    let mut out = Vec::new();
    while i < a.len() || j < b.len() {
        if i < a.len() && j < b.len() && a[i] == b[j] {
            at += a[i].len();
            now += b[j].len();
            (i, j) = (i + 1, j + 1);
            continue;
        }
        let (gone, come) = meeting(&a[i..], &b[j..])?;
        let length = |lines: &[&str]| lines.iter().map(|l| l.len()).sum::<usize>();
        let (old_len, new_len) = (length(&a[i..i + gone]), length(&b[j..j + come]));
        out.push((
            Span::new(at as u32, (at + old_len) as u32),
            &new[now..now + new_len],
        ));
        if out.len() > HUNKS {
            return None;
        }
        at += old_len;
        now += new_len;
        (i, j) = (i + gone, j + come);
    }
    out.reverse();
    Some(out)
}

/// The number of lines to skip in each text until two lines agree again, or both texts end.
fn meeting(a: &[&str], b: &[&str]) -> Option<(usize, usize)> {
    for sum in 1..=2 * APART {
        // as many of the one as of the other first: a line that was changed
        let mut ways: Vec<(usize, usize)> = (0..=sum).map(|n| (n, sum - n)).collect();
        ways.sort_by_key(|(n, m)| n.abs_diff(*m));
        for (n, m) in ways {
            if n > a.len() || m > b.len() {
                continue;
            }
            let ends = n == a.len() && m == b.len();
            let agree = |k: usize| match (a.get(n + k), b.get(m + k)) {
                (Some(x), Some(y)) => x == y,
                (None, None) => true,
                _ => false,
            };
            // one empty line or a lone brace is too weak a match: two lines must agree
            if ends || (n < a.len() && m < b.len() && agree(0) && agree(1)) {
                return Some((n, m));
            }
        }
    }
    None
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

    fn lines(n: usize) -> Vec<String> {
        (0..n).map(|i| format!("line {i} of this text\n")).collect()
    }

    #[test]
    fn distant_changes_are_apart() {
        let old = lines(200).concat();
        let mut changed = lines(200);
        changed[3] = "another\n".to_owned();
        changed[90] = String::new();
        changed[150].push_str("one more\nand one\n");
        changed[199] = "no end".to_owned();
        let new = changed.concat();
        let all = differences(&old, &new);
        let mut made = old.clone();
        for (span, text) in &all {
            made.replace_range(span.range(), text);
        }
        assert_eq!(made, new);
        assert_eq!(all.len(), 4, "{all:?}");
        assert!(all.iter().all(|(s, t)| s.len() < 80 && t.len() < 80));
        assert!(all.windows(2).all(|w| w[0].0.start >= w[1].0.end));
    }

    #[test]
    fn differences_make_the_new_text_whatever_it_is() {
        let texts: Vec<String> = (0..12)
            .map(|k| {
                let mut l = lines(120);
                for i in (k..120).step_by(k * 7 + 5) {
                    match k % 4 {
                        0 => l[i] = "°\r\n".to_owned(),
                        1 => l[i].clear(),
                        2 => l[i] = "}\n".repeat(k),
                        _ => l.swap(i, 119 - i),
                    }
                }
                l.concat()
            })
            .collect();
        for old in &texts {
            for new in &texts {
                let mut made = old.clone();
                for (span, text) in differences(old, new) {
                    made.replace_range(span.range(), text);
                }
                assert!(made == *new);
            }
        }
    }
}
