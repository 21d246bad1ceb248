//! Lines and columns to bytes and back, in the three encodings of the protocol.

use downlead_base::Span;
use ls_types::{Position, PositionEncodingKind, Range};

/// The unit that columns are counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Encoding {
    Utf8,
    Utf16,
    Utf32,
}

impl Encoding {
    /// UTF-8 if offered, else UTF-32, else UTF-16, which is always allowed. Who offers UTF-32 counts
    /// so itself, and characters are nearer to bytes than halves of them are.
    pub(crate) fn choose(offered: &[&str]) -> Encoding {
        if offered.contains(&"utf-8") {
            Encoding::Utf8
        } else if offered.contains(&"utf-32") {
            Encoding::Utf32
        } else {
            Encoding::Utf16
        }
    }

    pub(crate) fn kind(self) -> PositionEncodingKind {
        match self {
            Encoding::Utf8 => PositionEncodingKind::UTF8,
            Encoding::Utf16 => PositionEncodingKind::UTF16,
            Encoding::Utf32 => PositionEncodingKind::UTF32,
        }
    }

    fn width(self, c: char) -> u32 {
        match self {
            Encoding::Utf8 => c.len_utf8() as u32,
            Encoding::Utf16 => c.len_utf16() as u32,
            Encoding::Utf32 => 1,
        }
    }

    /// Length of a text in this encoding's units.
    pub(crate) fn len(self, text: &str) -> u32 {
        if self == Encoding::Utf8 || text.is_ascii() {
            return text.len() as u32;
        }
        text.chars().map(|c| self.width(c)).sum()
    }
}

/// Where each line begins. A line ends at LF, CR LF or CR.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Lines {
    starts: Vec<u32>,
}

impl Lines {
    pub(crate) fn new(text: &str) -> Lines {
        let bytes = text.as_bytes();
        let mut starts = vec![0];
        let mut i = 0;
        while let Some(n) = bytes[i..].iter().position(|b| *b == b'\n' || *b == b'\r') {
            i += n + 1;
            if bytes[i - 1] == b'\r' && bytes.get(i) == Some(&b'\n') {
                i += 1;
            }
            starts.push(i as u32);
        }
        Lines { starts }
    }

    /// The lines after `range` of the old text was replaced by `new` characters of `text`: only the
    /// lines touched are read again.
    pub(crate) fn replaced(&mut self, text: &str, range: Span, new: u32) {
        let first = self.line_of(range.start).saturating_sub(1);
        let last = (self.line_of(range.end) + 2).min(self.starts.len());
        let by = i64::from(new) - i64::from(range.len());
        let moved = |s: u32| (i64::from(s) + by) as u32;
        let from = self.starts[first];
        let to = self
            .starts
            .get(last)
            .map_or(text.len() as u32, |s| moved(*s));
        let inner = Lines::new(&text[from as usize..to as usize]);
        let mut fresh: Vec<u32> = inner.starts.iter().map(|s| s + from).collect();
        if last < self.starts.len() && fresh.last() == Some(&to) {
            // begins the line that follows, which is kept
            fresh.pop();
        }
        let tail: Vec<u32> = self.starts[last..].iter().map(|s| moved(*s)).collect();
        self.starts.truncate(first);
        self.starts.extend(fresh);
        self.starts.extend(tail);
    }

    /// The number of lines.
    pub(crate) fn count(&self) -> usize {
        self.starts.len()
    }

    pub(crate) fn line_of(&self, offset: u32) -> usize {
        self.starts
            .partition_point(|s| *s <= offset)
            .saturating_sub(1)
    }

    /// Byte range of a line without its end.
    pub(crate) fn line(&self, text: &str, line: usize) -> Span {
        let start = self.starts[line];
        let end = self.starts.get(line + 1).map_or(text.len() as u32, |s| *s);
        let cut = text[start as usize..end as usize]
            .trim_end_matches(['\r', '\n'])
            .len() as u32;
        Span::new(start, start + cut)
    }

    /// The byte at a position; beyond the line: its end, beyond the text: its end.
    pub(crate) fn offset(&self, text: &str, at: Position, encoding: Encoding) -> u32 {
        let line = at.line as usize;
        if line >= self.starts.len() {
            return text.len() as u32;
        }
        let span = self.line(text, line);
        let slice = &text[span.range()];
        if slice.is_ascii() {
            return span.start + at.character.min(span.len());
        }
        let mut column = 0;
        for (i, c) in slice.char_indices() {
            let next = column + encoding.width(c);
            if next > at.character {
                // at this character, or inside it
                return span.start + i as u32;
            }
            column = next;
        }
        span.end
    }

    /// The position of a byte.
    pub(crate) fn position(&self, text: &str, offset: u32, encoding: Encoding) -> Position {
        let mut offset = offset.min(text.len() as u32) as usize;
        while !text.is_char_boundary(offset) {
            offset -= 1;
        }
        let line = self.line_of(offset as u32);
        let span = self.line(text, line);
        let to = offset.min(span.end as usize);
        Position {
            line: line as u32,
            character: encoding.len(&text[span.start as usize..to]),
        }
    }

    pub(crate) fn range(&self, text: &str, span: Span, encoding: Encoding) -> Range {
        Range {
            start: self.position(text, span.start, encoding),
            end: self.position(text, span.end, encoding),
        }
    }

    /// Bytes of a range; a range the wrong way round is turned.
    pub(crate) fn span(&self, text: &str, range: Range, encoding: Encoding) -> Span {
        let a = self.offset(text, range.start, encoding);
        let b = self.offset(text, range.end, encoding);
        Span::new(a.min(b), a.max(b))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Encoding; 3] = [Encoding::Utf8, Encoding::Utf16, Encoding::Utf32];
    const TEXT: &str = "a°b\r\n𝄞 Ω\rµ\n\nend";

    #[test]
    fn every_character_comes_back() {
        let lines = Lines::new(TEXT);
        for e in ALL {
            for (i, _) in TEXT.char_indices().chain([(TEXT.len(), ' ')]) {
                let at = lines.position(TEXT, i as u32, e);
                let back = lines.offset(TEXT, at, e) as usize;
                // the LF of CR LF belongs to the line's end
                let want = if TEXT[i..].starts_with('\n') && TEXT[..i].ends_with('\r') {
                    i - 1
                } else {
                    i
                };
                assert_eq!(back, want, "{e:?} {i} {at:?}");
            }
        }
    }

    #[test]
    fn columns_count_as_the_encoding_says() {
        let lines = Lines::new(TEXT);
        let omega = TEXT.find('Ω').unwrap() as u32;
        let columns = ALL.map(|e| lines.position(TEXT, omega, e).character);
        assert_eq!(columns, [5, 3, 2]);
    }

    #[test]
    fn what_lies_outside_is_clamped() {
        let lines = Lines::new(TEXT);
        for e in ALL {
            let at = |line, character| lines.offset(TEXT, Position { line, character }, e);
            assert_eq!(at(0, u32::MAX), 4);
            assert_eq!(at(u32::MAX, 0), TEXT.len() as u32);
            assert_eq!(at(3, 5) as usize, TEXT.find("\n\n").unwrap() + 1);
            let turned = Range {
                start: Position {
                    line: 4,
                    character: 3,
                },
                end: Position {
                    line: 0,
                    character: 0,
                },
            };
            assert_eq!(lines.span(TEXT, turned, e), Span::new(0, TEXT.len() as u32));
        }
        // inside a surrogate pair, inside a byte sequence: its start
        assert_eq!(
            lines.offset(
                TEXT,
                Position {
                    line: 1,
                    character: 1
                },
                Encoding::Utf16
            ),
            6
        );
        assert_eq!(
            lines.offset(
                TEXT,
                Position {
                    line: 1,
                    character: 3
                },
                Encoding::Utf8
            ),
            6
        );
    }

    #[test]
    fn encodings_are_chosen_as_offered() {
        assert_eq!(Encoding::choose(&[]), Encoding::Utf16);
        assert_eq!(Encoding::choose(&["utf-16"]), Encoding::Utf16);
        assert_eq!(
            Encoding::choose(&["utf-32", "utf-8", "utf-16"]),
            Encoding::Utf8
        );
        assert_eq!(Encoding::choose(&["utf-16", "utf-32"]), Encoding::Utf32);
        assert_eq!(Encoding::choose(&["utf-32"]), Encoding::Utf32);
        assert_eq!(Encoding::choose(&["utf-7"]), Encoding::Utf16);
    }

    #[test]
    fn replaced_equals_new() {
        let pieces = [
            "", "\n", "\r", "\r\n", "x", "µ\r", "\n\r", "a\nb\nc", "\r\r\n\n",
        ];
        let mut seed = 7u32;
        let mut next = |n: usize| {
            seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (seed >> 8) as usize % n
        };
        for _ in 0..3000 {
            let mut text: String = (0..6).map(|_| pieces[next(pieces.len())]).collect();
            let mut lines = Lines::new(&text);
            let bounds: Vec<usize> = (0..=text.len())
                .filter(|i| text.is_char_boundary(*i))
                .collect();
            let (a, b) = (bounds[next(bounds.len())], bounds[next(bounds.len())]);
            let (a, b) = (a.min(b), a.max(b));
            let new = pieces[next(pieces.len())];
            let before = text.clone();
            text.replace_range(a..b, new);
            lines.replaced(&text, Span::new(a as u32, b as u32), new.len() as u32);
            assert_eq!(lines, Lines::new(&text), "{before:?} {a}..{b} {new:?}");
        }
    }
}
