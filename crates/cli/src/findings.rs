//! Diagnostics with their places resolved to files, lines and columns.

use std::collections::HashMap;
use std::ops::Range;
use std::sync::Arc;

use downlead_base::{Code, Diagnostic, ItemId, LineIndex, Loc, Severity, TextSize, WideEncoding};

use crate::files::Group;
use crate::model::Snapshot;

/// A file as read.
#[derive(Debug)]
pub(crate) struct SourceFile {
    /// Relative to its root.
    pub(crate) path: String,
    /// As a person in the current folder can open it.
    pub(crate) shown: String,
    pub(crate) text: Arc<str>,
}

/// A place: file, bytes, and both ends as line and column in characters, from 1.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Spot {
    pub(crate) file: usize,
    pub(crate) bytes: Range<usize>,
    pub(crate) start: (u32, u32),
    pub(crate) end: (u32, u32),
}

/// An offered change, resolved.
#[derive(Debug)]
pub(crate) struct Change {
    pub(crate) title: String,
    pub(crate) preferred: bool,
    pub(crate) edits: Vec<(Spot, String)>,
}

/// One finding.
#[derive(Debug)]
pub(crate) struct Finding {
    pub(crate) code: &'static Code,
    pub(crate) severity: Severity,
    pub(crate) message: String,
    /// None where the place is in no file.
    pub(crate) spot: Option<Spot>,
    /// Words beside the place.
    pub(crate) label: String,
    pub(crate) related: Vec<(Spot, String)>,
    pub(crate) help: Vec<String>,
    pub(crate) changes: Vec<Change>,
}

/// A finding that the text accepts.
#[derive(Debug)]
pub(crate) struct Accepted {
    pub(crate) finding: Finding,
    pub(crate) reason: String,
    pub(crate) until: String,
    /// Where the acceptance stands.
    pub(crate) by: Option<Spot>,
}

/// All findings of a run and the files they are in.
#[derive(Debug, Default)]
pub(crate) struct Findings {
    pub(crate) files: Vec<SourceFile>,
    pub(crate) list: Vec<Finding>,
    /// Those that the text accepts.
    pub(crate) accepted: Vec<Accepted>,
}

impl Findings {
    /// Adds what `snapshot` of `group` has found.
    pub(crate) fn add(&mut self, group: &Group, snapshot: &Snapshot) {
        let base = self.files.len();
        let mut items = HashMap::new();
        for (index, file) in snapshot.files().iter().enumerate() {
            items.extend(
                file.tree
                    .items()
                    .iter()
                    .map(|p| (p.item.id, (index, p.start))),
            );
            self.files.push(SourceFile {
                path: file.path.clone(),
                shown: group.shown(&file.path),
                text: file.tree.shared_text(),
            });
        }
        let mut places = Places {
            items,
            base,
            lines: Vec::new(),
            files: &self.files,
        };
        let found = snapshot.found();
        self.list.reserve_exact(found.diagnostics.len());
        for d in found.diagnostics {
            self.list.push(places.resolve(d));
        }
        for a in found.accepted {
            self.accepted.push(Accepted {
                finding: places.resolve(a.finding),
                reason: a.reason.into(),
                until: a.until.into(),
                by: places.spot(a.by),
            });
        }
    }

    /// How many findings are of this severity.
    pub(crate) fn count(&self, severity: Severity) -> usize {
        self.list.iter().filter(|f| f.severity == severity).count()
    }
}

struct Places<'a> {
    /// File and first byte of every item: asking the snapshot for each place would go through
    /// all items each time.
    items: HashMap<ItemId, (usize, u32)>,
    base: usize,
    /// Line indexes, made when first needed.
    lines: Vec<Option<LineIndex>>,
    files: &'a [SourceFile],
}

impl Places<'_> {
    fn resolve(&mut self, d: Diagnostic) -> Finding {
        Finding {
            code: d.code,
            severity: d.severity,
            message: d.message,
            spot: self.spot(d.primary.loc),
            label: d.primary.message,
            related: d
                .related
                .into_iter()
                .filter_map(|l| Some((self.spot(l.loc)?, l.message)))
                .collect(),
            help: d.help,
            changes: d
                .fixes
                .into_iter()
                .filter_map(|f| {
                    let edits: Option<Vec<_>> = f
                        .edits
                        .into_iter()
                        .map(|e| Some((self.spot(e.loc)?, e.text)))
                        .collect();
                    Some(Change {
                        title: f.title,
                        preferred: f.preferred,
                        edits: edits?,
                    })
                })
                .collect(),
        }
    }

    fn spot(&mut self, loc: Loc) -> Option<Spot> {
        let (index, start) = *self.items.get(&loc.item)?;
        let span = loc.span.shift(start);
        let file = self.base + index;
        let text = &self.files.get(file)?.text;
        if self.lines.len() <= index {
            self.lines.resize_with(index + 1, || None);
        }
        let lines = self.lines[index].get_or_insert_with(|| LineIndex::new(text));
        Some(spot(file, text, lines, span.range()))
    }
}

/// A spot from a byte range, which is clamped to the text and widened to character boundaries.
fn spot(file: usize, text: &str, lines: &LineIndex, bytes: Range<usize>) -> Spot {
    let mut start = bytes.start.min(text.len());
    let mut end = bytes.end.clamp(start, text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    while !text.is_char_boundary(end) {
        end += 1;
    }
    Spot {
        file,
        bytes: start..end,
        start: line_column(lines, start),
        end: line_column(lines, end),
    }
}

fn line_column(lines: &LineIndex, offset: usize) -> (u32, u32) {
    let at = u32::try_from(offset)
        .ok()
        .and_then(|o| lines.try_line_col(TextSize::new(o)));
    match at.and_then(|at| lines.to_wide(WideEncoding::Utf32, at)) {
        Some(wide) => (wide.line + 1, wide.col + 1),
        None => (1, 1),
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;

    /// Findings in one made-up file; `at` are byte ranges.
    pub(crate) fn made(text: &str, at: &[(&'static Code, Range<usize>, &str)]) -> Findings {
        let lines = LineIndex::new(text);
        let list = at
            .iter()
            .map(|(code, bytes, message)| Finding {
                code,
                severity: code.severity,
                message: (*message).to_owned(),
                spot: Some(spot(0, text, &lines, bytes.clone())),
                label: "here".to_owned(),
                related: Vec::new(),
                help: vec!["say which".to_owned()],
                changes: Vec::new(),
            })
            .collect();
        let file = SourceFile {
            path: "a.downlead".to_owned(),
            shown: "a.downlead".to_owned(),
            text: text.into(),
        };
        Findings {
            files: vec![file],
            list,
            accepted: Vec::new(),
        }
    }

    #[test]
    fn columns_count_characters_and_spans_are_widened() {
        let text = "// Ω µ\nrun 4 Ω";
        let omega = text.rfind('Ω').unwrap();
        // the span begins and ends inside the two bytes of Ω, or beyond the text
        let found = made(
            text,
            &[
                (&downlead_base::codes::WRONG_UNIT, omega + 1..omega + 1, "m"),
                (&downlead_base::codes::WRONG_UNIT, 400..500, "m"),
            ],
        );
        let first = found.list[0].spot.as_ref().unwrap();
        assert_eq!((first.start, first.end), ((2, 7), (2, 8)));
        let second = found.list[1].spot.as_ref().unwrap();
        assert_eq!((second.start, second.end), ((2, 8), (2, 8)));
    }
}
