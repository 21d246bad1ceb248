//! A parsed file: its items, and edits that re-parse only what they touch.

use std::sync::{Arc, OnceLock};

use downlead_base::{Diagnostic, Span};

use crate::parse::parse_items;
use crate::tree::Item;

/// A file as a list of items that cover every byte of its text.
///
/// Cloning is cheap in memory: items are shared.
#[derive(Clone, Debug)]
pub struct File {
    items: Vec<Placed>,
    len: u32,
    /// The whole text; after an edit joined from the items when it is first asked for.
    text: OnceLock<Arc<str>>,
}

/// An item at its place in the file.
#[derive(Clone, Debug)]
pub struct Placed {
    /// Byte offset of the item in the file.
    pub start: u32,
    /// The item; untouched by an edit it is the same allocation afterwards.
    pub item: Arc<Item>,
}

impl Placed {
    /// Byte range of the item in the file.
    #[must_use]
    pub fn span(&self) -> Span {
        Span {
            start: self.start,
            end: self.start + self.item.len,
        }
    }
}

/// Length of U+FEFF.
const BYTE_ORDER_MARK: u32 = 3;

impl File {
    /// Parses a text. There is always a tree; what is wrong is in [`File::diagnostics`].
    ///
    /// Offsets are 32 bits: of a text beyond 4 GiB only that much is taken.
    #[must_use]
    pub fn parse(text: impl Into<Arc<str>>) -> File {
        let mut text: Arc<str> = text.into();
        if u32::try_from(text.len()).is_err() {
            text = text[..floor(&text, u32::MAX as usize)].into();
        }
        let mut items = Vec::new();
        parse_items(&text, Some(&text), 0, &mut items);
        File {
            items,
            len: text.len() as u32,
            text: OnceLock::from(text),
        }
    }

    /// The whole text.
    #[must_use]
    pub fn text(&self) -> &str {
        self.whole()
    }

    /// The whole text, shared.
    #[must_use]
    pub fn shared_text(&self) -> Arc<str> {
        Arc::clone(self.whole())
    }

    fn whole(&self) -> &Arc<str> {
        self.text.get_or_init(|| {
            let mut text = String::with_capacity(self.len as usize);
            for placed in &self.items {
                text.push_str(placed.item.text());
            }
            text.into()
        })
    }

    /// Length of the text in bytes.
    #[must_use]
    pub fn len(&self) -> u32 {
        self.len
    }

    /// True if the text is empty.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.len == 0
    }

    /// The items in the order of the text.
    #[must_use]
    pub fn items(&self) -> &[Placed] {
        &self.items
    }

    /// Index of the item that holds `offset` (the last one at the end of the text).
    #[must_use]
    pub fn item_at(&self, offset: u32) -> Option<usize> {
        self.items
            .partition_point(|p| p.start <= offset)
            .checked_sub(1)
    }

    /// The file with `range` of its text replaced. Only items that the range touches are parsed again.
    ///
    /// A range beyond the text or inside a character is narrowed to the nearest whole characters
    /// before it. The result equals `File::parse` of the new text, but for the identities of items.
    #[must_use]
    pub fn edit(&self, range: Span, replacement: &str) -> File {
        let start = self.boundary(range.start.min(self.len));
        let end = self.boundary(range.end.min(self.len)).max(start);
        // whether an item starts somewhere depends on the byte before and the byte there, so items
        // that end or start at the range's edges are touched too
        let first = self.items.partition_point(|p| p.span().end < start);
        // and a byte order mark at the start of the file decides about the item after it
        let mark = if start <= BYTE_ORDER_MARK {
            BYTE_ORDER_MARK
        } else {
            0
        };
        let last = self.items.partition_point(|p| p.start <= end.max(mark));
        let touched = &self.items[first.min(last)..last];
        let from = touched.first().map_or(0, |p| p.start);
        let mut text = String::new();
        for placed in touched {
            text.push_str(placed.item.text());
        }
        let (cut, cut_end) = ((start - from) as usize, (end - from) as usize);
        if text.len() - (cut_end - cut) + replacement.len() + (self.len as usize - text.len())
            > u32::MAX as usize
        {
            return self.clone();
        }
        text.replace_range(cut..cut_end, replacement);
        let before = self.items[..first.min(last)].iter();
        let mut items = Vec::with_capacity(self.items.len() + 2);
        items.extend(before.cloned());
        parse_items(&text, None, from as usize, &mut items);
        let removed = end - start;
        let added = replacement.len() as u32;
        items.extend(self.items[last..].iter().map(|p| Placed {
            start: p.start - removed + added,
            item: Arc::clone(&p.item),
        }));
        File {
            items,
            len: self.len - removed + added,
            text: OnceLock::new(),
        }
    }

    /// The nearest character boundary at or before `offset`.
    fn boundary(&self, offset: u32) -> u32 {
        match self.item_at(offset) {
            Some(index) => {
                let placed = &self.items[index];
                placed.start + floor(placed.item.text(), (offset - placed.start) as usize) as u32
            }
            None => 0,
        }
    }

    /// Syntax errors in the order of the text.
    pub fn diagnostics(&self) -> impl Iterator<Item = Diagnostic> + '_ {
        self.items
            .iter()
            .flat_map(|p| p.item.diagnostics().iter().cloned())
    }
}

fn floor(text: &str, mut at: usize) -> usize {
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    at
}
