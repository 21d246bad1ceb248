//! Hints of a block in one column, for those who want to read powers downwards.

use crate::inlay::{InlayHint, LabelPart};
use crate::view::{indent, line_start};

/// Lines that are longer than this do not move the others.
const FARTHEST: usize = 60;
/// A blank that an editor neither drops nor wraps at.
const BLANK: &str = "\u{a0}";

/// Begins the hints of neighbouring lines of one depth in one column.
pub(super) fn align(text: &str, hints: &mut [InlayHint]) {
    let width = |h: &InlayHint| {
        let start = line_start(text, h.offset) as usize;
        let line = text.get(start..h.offset as usize).unwrap_or("");
        line.chars().count()
    };
    let mut from = 0;
    while from < hints.len() {
        let mut to = from + 1;
        while to < hints.len() && together(text, &hints[to - 1], &hints[to]) {
            to += 1;
        }
        let widths: Vec<usize> = hints[from..to].iter().map(width).collect();
        let fits = widths.iter().filter(|w| **w <= FARTHEST);
        let column = fits.max().copied().unwrap_or(0);
        for (h, w) in hints[from..to].iter_mut().zip(widths) {
            if w < column {
                h.parts.insert(0, LabelPart::word(BLANK.repeat(column - w)));
            }
        }
        from = to;
    }
}

/// Whether two hints stand in one block: no line between them is less or more indented.
fn together(text: &str, a: &InlayHint, b: &InlayHint) -> bool {
    let depth = |at: u32| indent(text, at).len();
    let between = text.get(a.offset as usize..b.offset as usize).unwrap_or("");
    let lines = between.split('\n').skip(1).filter(|l| !l.trim().is_empty());
    let same = depth(a.offset);
    lines
        .into_iter()
        .all(|l| l.len() - l.trim_start().len() == same)
}
