//! Byte ranges, and places that survive edits elsewhere in the file.

use std::num::NonZeroU32;
use std::sync::atomic::{AtomicU32, Ordering};

/// A half-open byte range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Span {
    /// First byte.
    pub start: u32,
    /// One past the last byte.
    pub end: u32,
}

impl Span {
    /// A range from `start` to `end`.
    #[must_use]
    pub fn new(start: u32, end: u32) -> Self {
        debug_assert!(start <= end, "span {start}..{end}");
        Span { start, end }
    }

    /// The smallest range that holds both.
    #[must_use]
    pub fn join(self, other: Span) -> Span {
        Span {
            start: self.start.min(other.start),
            end: self.end.max(other.end),
        }
    }

    /// The range moved right by `by` bytes.
    #[must_use]
    pub fn shift(self, by: u32) -> Span {
        Span {
            start: self.start + by,
            end: self.end + by,
        }
    }

    /// As a `usize` range for slicing.
    #[must_use]
    pub fn range(self) -> std::ops::Range<usize> {
        self.start as usize..self.end as usize
    }

    /// Length in bytes.
    #[must_use]
    pub fn len(self) -> u32 {
        self.end - self.start
    }

    /// True if the range is empty.
    #[must_use]
    pub fn is_empty(self) -> bool {
        self.start == self.end
    }

    /// True if `offset` is in the range or at its end.
    #[must_use]
    pub fn touches(self, offset: u32) -> bool {
        self.start <= offset && offset <= self.end
    }
}

/// Identity of one parsed top-level item. An edit elsewhere leaves it, and everything
/// computed from it, as it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct ItemId(NonZeroU32);

impl ItemId {
    /// A new identity, unique in this process.
    #[must_use]
    pub fn fresh() -> ItemId {
        static NEXT: AtomicU32 = AtomicU32::new(1);
        // `NonZeroU32` gives `Option<Loc>` a niche, so that an optional place is no larger
        // than a place
        loop {
            if let Some(n) = NonZeroU32::new(NEXT.fetch_add(1, Ordering::Relaxed)) {
                return ItemId(n);
            }
        }
    }
}

/// A place in the text: an item and a byte range relative to the item's start.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Loc {
    /// The item.
    pub item: ItemId,
    /// Byte range relative to the item's first byte.
    pub span: Span,
}

impl Loc {
    /// A place in an item.
    #[must_use]
    pub fn new(item: ItemId, span: Span) -> Self {
        Loc { item, span }
    }
}
