//! Formatting as minimal edits: of a document, of a range, while typing.

use downlead_base::Span;
use downlead_eval::Snapshot;

use crate::view::{Doc, TextEdit, clamp, doc_text, line_end, line_start, to32, tree};

/// Edits that put a whole document's blanks in order.
#[must_use]
pub fn format(s: &Snapshot, doc: Doc) -> Vec<TextEdit> {
    if matches!(doc, Doc::Library(_)) {
        return Vec::new();
    }
    let text = doc_text(s, doc);
    minimal_edits(doc, text, &downlead_syntax::format(text))
}

/// Edits of the lines that a range touches.
#[must_use]
pub fn format_range(s: &Snapshot, doc: Doc, range: Span) -> Vec<TextEdit> {
    let text = doc_text(s, doc);
    let start = line_start(text, range.start);
    // a selection that ends at the start of a line does not mean that line
    let last = if range.end > range.start && line_start(text, range.end) == clamp(text, range.end) {
        range.end - 1
    } else {
        range.end
    };
    let end = line_end(text, last);
    // items are formatted each for itself; the one behind says which blank lines stay
    let Some(tree) = tree(s, doc).filter(|_| matches!(doc, Doc::File(_))) else {
        return Vec::new();
    };
    let items = tree.items();
    let (Some(first), Some(last)) = (tree.item_at(start), tree.item_at(end)) else {
        return Vec::new();
    };
    let from = items[first.saturating_sub(1)].start;
    let to = items[(last + 1).min(items.len() - 1)].span().end;
    let old = text.get(from as usize..to as usize).unwrap_or("");
    minimal_edits(doc, old, &downlead_syntax::format(old))
        .into_iter()
        .map(|e| TextEdit {
            span: e.span.shift(from),
            ..e
        })
        .filter(|e| start <= e.span.start && e.span.end <= end)
        .collect()
}

/// Edits after a character was typed at `offset` (the offset is behind it): after a line end the
/// line before and the new one's indentation, after `}` or `;` the line itself.
#[must_use]
pub fn format_on_type(s: &Snapshot, doc: Doc, offset: u32, ch: char) -> Vec<TextEdit> {
    let text = doc_text(s, doc);
    let offset = clamp(text, offset);
    match ch {
        '\n' => {
            let before = line_start(text, offset).saturating_sub(1);
            let mut edits = format_range(s, doc, Span::new(line_start(text, before), before));
            // what is typed next stands on this line: it keeps the depth the braces give it
            let (start, end) = (line_start(text, offset), line_end(text, offset));
            let line = text.get(start as usize..end as usize).unwrap_or("");
            let blanks = to32(line.len() - line.trim_start_matches([' ', '\t']).len());
            let depth = depth_at(text, start)
                .saturating_sub(usize::from(line.trim_start().starts_with('}')));
            let want = " ".repeat(4 * depth);
            let span = Span::new(start, start + blanks);
            if text.get(span.range()) != Some(&want) {
                edits.retain(|e| e.span.end <= start);
                edits.push(TextEdit {
                    doc,
                    span,
                    text: want,
                });
            }
            edits
        }
        '}' | ';' => {
            let mut edits = format_range(s, doc, Span::new(offset, offset));
            // what is typed next stands after the cursor: a line end there would be one too many
            edits.retain(|e| e.span.start < offset || !e.text.contains('\n'));
            edits
        }
        _ => Vec::new(),
    }
}

/// Blocks open at an offset, counted from the start of its item.
fn depth_at(text: &str, offset: u32) -> usize {
    let before = &text[..offset as usize];
    // an item begins at a line whose first character is a letter
    let mut from = 0;
    let mut at = before.len();
    while let Some(i) = before[..at].rfind('\n') {
        if before[i + 1..].starts_with(char::is_alphabetic) {
            from = i + 1;
            break;
        }
        at = i;
    }
    let mut depth = 0usize;
    for (kind, _) in downlead_syntax::tokens(&before[from..]) {
        match kind {
            downlead_syntax::SyntaxKind::LBrace => depth += 1,
            downlead_syntax::SyntaxKind::RBrace => depth = depth.saturating_sub(1),
            _ => {}
        }
    }
    depth
}

/// The smallest edits, line by line and within a line, that turn `old` into `new`.
#[must_use]
pub fn minimal_edits(doc: Doc, old: &str, new: &str) -> Vec<TextEdit> {
    let (a, b): (Vec<&str>, Vec<&str>) = (
        old.split_inclusive('\n').collect(),
        new.split_inclusive('\n').collect(),
    );
    let mut out = Vec::new();
    let (mut i, mut j, mut at) = (0, 0, 0usize);
    while i < a.len() || j < b.len() {
        // the formatter changes blanks only: lines match by what is left without them, and only
        // empty lines come and go
        match (a.get(i), b.get(j)) {
            (Some(x), Some(y)) if bare(x) == bare(y) => {
                within(doc, at, x, y, &mut out);
                at += x.len();
                i += 1;
                j += 1;
            }
            (Some(x), y) if x.trim().is_empty() || y.is_none() => {
                out.push(edit(doc, at, at + x.len(), ""));
                at += x.len();
                i += 1;
            }
            (_, Some(y)) if y.trim().is_empty() || i >= a.len() => {
                out.push(edit(doc, at, at, y));
                j += 1;
            }
            _ => {
                // texts that differ in more than blanks: one edit for the rest
                let rest: String = b[j..].concat();
                within(doc, at, &old[at..], &rest, &mut out);
                break;
            }
        }
    }
    out
}

fn bare(line: &str) -> String {
    line.chars()
        .filter(|c| !matches!(c, ' ' | '\t' | '\r' | '\n'))
        .collect()
}

fn edit(doc: Doc, start: usize, end: usize, text: &str) -> TextEdit {
    TextEdit {
        doc,
        span: Span::new(to32(start), to32(end)),
        text: text.to_owned(),
    }
}

/// Edits of the runs of blanks in which two lines differ.
fn within(doc: Doc, at: usize, x: &str, y: &str, out: &mut Vec<TextEdit>) {
    if x == y {
        return;
    }
    if bare(x) != bare(y) {
        let pre = x
            .char_indices()
            .zip(y.chars())
            .take_while(|((_, a), b)| a == b)
            .last()
            .map_or(0, |((i, c), _)| i + c.len_utf8());
        let post = x[pre..]
            .char_indices()
            .rev()
            .zip(y[pre..].chars().rev())
            .take_while(|((_, a), b)| a == b)
            .last()
            .map_or(0, |((i, _), _)| x.len() - pre - i);
        out.push(edit(
            doc,
            at + pre,
            at + x.len() - post,
            &y[pre..y.len() - post],
        ));
        return;
    }
    let blank = |c: char| matches!(c, ' ' | '\t' | '\r' | '\n');
    let (mut i, mut j) = (0, 0);
    loop {
        let run = |s: &str| s.len() - s.trim_start_matches(blank).len();
        let (rx, ry) = (run(&x[i..]), run(&y[j..]));
        if x[i..i + rx] != y[j..j + ry] {
            out.push(edit(doc, at + i, at + i + rx, &y[j..j + ry]));
        }
        i += rx;
        j += ry;
        let Some(c) = x[i..].chars().next() else {
            break;
        };
        i += c.len_utf8();
        j += c.len_utf8();
        if j > y.len() {
            break;
        }
    }
}
