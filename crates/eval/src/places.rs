//! Files, lines and texts of places.

use std::cell::OnceCell;

use downlead_base::{ItemId, LineIndex, Loc, Span};
use rustc_hash::FxHashMap;

use crate::snapshot::Snapshot;

/// Lines and texts of places, for those who put results into words.
pub struct Places<'s> {
    snapshot: &'s Snapshot,
    index: FxHashMap<ItemId, (usize, u32)>,
    library: FxHashMap<ItemId, (usize, u32)>,
    /// Of each file, made when a place in it is first asked for.
    lines: Vec<OnceCell<LineIndex>>,
    library_lines: Vec<OnceCell<LineIndex>>,
}

impl<'s> Places<'s> {
    /// Of a snapshot.
    #[must_use]
    pub fn new(snapshot: &'s Snapshot) -> Self {
        let lib = downlead_station::library();
        let mut library = FxHashMap::default();
        for (i, (_, f)) in lib.files.iter().enumerate() {
            for p in f.items() {
                library.insert(p.item.id, (i, p.start));
            }
        }
        Places {
            snapshot,
            index: snapshot.index(),
            library,
            lines: vec![OnceCell::new(); snapshot.files().len()],
            library_lines: vec![OnceCell::new(); lib.files.len()],
        }
    }

    /// File (path; of the library `library/NAME`), byte range and line from 1.
    #[must_use]
    pub fn at(&self, loc: Loc) -> (String, Span, u32) {
        if let Some((f, start)) = self.index.get(&loc.item) {
            let span = loc.span.shift(*start);
            return (
                self.snapshot.files()[*f].path.clone(),
                span,
                self.line_in(*f, span.start),
            );
        }
        if let Some((f, start)) = self.library.get(&loc.item) {
            let span = loc.span.shift(*start);
            let name = downlead_station::library().files[*f].0;
            return (
                format!("library/{name}"),
                span,
                self.line_in_library(*f, span.start),
            );
        }
        (String::new(), loc.span, 0)
    }

    /// Line from 1.
    #[must_use]
    pub fn line(&self, loc: Loc) -> u32 {
        match self.index.get(&loc.item) {
            Some((f, start)) => self.line_in(*f, loc.span.start + start),
            None => self.at(loc).2,
        }
    }

    /// The source text there.
    #[must_use]
    pub fn text(&self, loc: Loc) -> &str {
        if let Some((f, start)) = self.index.get(&loc.item) {
            return self.snapshot.files()[*f]
                .text()
                .get(loc.span.shift(*start).range())
                .unwrap_or("");
        }
        if let Some((f, start)) = self.library.get(&loc.item) {
            return downlead_station::library().files[*f]
                .1
                .text()
                .get(loc.span.shift(*start).range())
                .unwrap_or("");
        }
        ""
    }

    /// The name of the definition a place is in.
    #[must_use]
    pub fn definition(&self, loc: Loc) -> Option<&str> {
        let head = self.text(Loc::new(loc.item, Span::new(0, loc.span.start)));
        let mut words = head.split_whitespace();
        let word = words.next()?;
        matches!(word, "device" | "cable" | "connector" | "instrument")
            .then(|| words.next())
            .flatten()
    }

    fn line_in(&self, file: usize, offset: u32) -> u32 {
        let text = self.snapshot.files()[file].text();
        line_of(
            self.lines[file].get_or_init(|| LineIndex::new(text)),
            offset,
        )
    }

    fn line_in_library(&self, file: usize, offset: u32) -> u32 {
        let text = downlead_station::library().files[file].1.text();
        let index = self.library_lines[file].get_or_init(|| LineIndex::new(text));
        line_of(index, offset)
    }

    /// File, line and column in characters, both from 1.
    #[must_use]
    pub fn line_col(&self, loc: Loc) -> (String, u32, u32) {
        let (file, span, line) = self.at(loc);
        let text = match self.index.get(&loc.item) {
            Some((f, _)) => self.snapshot.files()[*f].text(),
            None => "",
        };
        let start = span.start as usize;
        let begin = text
            .get(..start)
            .and_then(|t| t.rfind('\n'))
            .map_or(0, |i| i + 1);
        let column = text.get(begin..start).map_or(1, |t| t.chars().count() + 1);
        (file, line, u32::try_from(column).unwrap_or(u32::MAX))
    }
}

fn line_of(index: &LineIndex, offset: u32) -> u32 {
    index
        .try_line_col(offset.into())
        .map_or(0, |lc| lc.line + 1)
}
