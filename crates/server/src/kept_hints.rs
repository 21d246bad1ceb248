//! The hints of a long document as JSON, kept item by item.

use downlead_base::ItemId;
use downlead_eval::Evaluated;
use downlead_ide as ide;
use ls_types::{Position, Range};
use rustc_hash::FxHashMap;

use crate::positions::Encoding;

/// The plain hints of a document as they were sent, item by item: after an edit only the items it
/// touched, and those that depend on them, are written again; the rest is copied.
#[derive(Default)]
pub(crate) struct KeptHints {
    pub(crate) made_for: Option<(ide::Config, Encoding)>,
    pub(crate) items: FxHashMap<ItemId, Kept>,
}

pub(crate) struct Kept {
    /// The results they were written from.
    pub(crate) made_of: Evaluated,
    pub(crate) hints: Written,
}

/// Hints in one text, one after the other: `12},"label":"…","paddingLeft":true`, from the column on.
#[derive(Default)]
pub(crate) struct Written {
    pub(crate) text: String,
    /// Line from the item's first one, column, end in the text.
    pub(crate) ends: Vec<(u32, u32, u32)>,
}

impl Written {
    /// Lines and texts of those in a range.
    pub(crate) fn within(&self, first: u32, range: Range) -> impl Iterator<Item = (u32, &str)> {
        let mut from = 0;
        self.ends.iter().filter_map(move |(line, character, end)| {
            let text = &self.text[from as usize..*end as usize];
            from = *end;
            let at = Position::new(line + first, *character);
            (range.start <= at && at <= range.end).then_some((at.line, text))
        })
    }
}
