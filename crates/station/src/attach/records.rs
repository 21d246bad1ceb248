//! The records of a text table, one after the other, and the lines they begin on.

use std::borrow::Cow;

/// One record.
pub(super) struct Record<'t> {
    /// Line in the file on which it begins, from 1.
    pub(super) line: u64,
    /// Its fields, without quotation marks and blanks around them.
    pub(super) fields: Vec<Cow<'t, str>>,
    /// Index of the field in which a quotation mark is opened that does not belong there. The
    /// record is then its one line, read without the mark.
    pub(super) open: Option<usize>,
}

/// So many lines a field may have that goes on over several.
const MOST_LINES: u64 = 50;

/// Reads the records of a text (RFC 4180 with a delimiter of choice). A line ends with LF, CR LF
/// or a lone CR, as editors count lines; empty lines and lines that begin with `#` are no records.
///
/// A quotation mark that is not closed on its line opens a field of several lines only where no
/// row is lost by that, see [`Records::goes_on`]: a stray mark must not hide the rows below it.
pub(super) struct Records<'t> {
    rest: &'t str,
    /// Line on which the rest begins, from 1.
    line: u64,
    delimiter: u8,
    /// Number of columns by the first record that is not empty.
    columns: Option<usize>,
}

impl<'t> Records<'t> {
    pub(super) fn new(text: &'t str, delimiter: u8) -> Self {
        Records {
            rest: text,
            line: 1,
            delimiter,
            columns: None,
        }
    }

    /// Goes past so many bytes and the line end that follows them.
    fn pass(&mut self, bytes: usize) {
        let (over, rest) = self.rest.split_at(bytes);
        let end = line_end(rest.as_bytes(), 0);
        self.line += line_ends(over) + u64::from(end > 0);
        self.rest = &rest[end..];
    }

    /// Whether a record of several lines is one, and no quotation mark too many: it has as many
    /// fields as there are columns, and its lines are not rows by themselves.
    fn goes_on(&self, record: &Split<'_>) -> bool {
        let alone = |text: &str| split(text, self.delimiter, 0).fields.len();
        let columns = match self.columns {
            Some(n) => n,
            // the names of the columns have as many fields as the row that follows
            None => {
                let mut after = lines(&self.rest[record.end..]).skip(1);
                let row = after.find(|l| !l.is_empty() && !l.starts_with('#'));
                row.map_or(record.fields.len(), alone)
            }
        };
        if record.fields.len() != columns {
            return false;
        }
        let rows: Vec<bool> = lines(&self.rest[..record.end])
            .map(|l| alone(l) == columns)
            .collect();
        match &rows[..] {
            [true, .., true] => false,
            [_, within @ .., _] => !within.contains(&true),
            _ => true,
        }
    }
}

impl<'t> Iterator for Records<'t> {
    type Item = Record<'t>;

    fn next(&mut self) -> Option<Record<'t>> {
        while !self.rest.is_empty() {
            let width = self.rest.find(['\n', '\r']).unwrap_or(self.rest.len());
            if width == 0 || self.rest.starts_with('#') {
                self.pass(width);
                continue;
            }
            let line = self.line;
            let mut found = split(self.rest, self.delimiter, 0);
            if found.open.is_some() {
                let longer = split(self.rest, self.delimiter, MOST_LINES);
                if longer.open.is_none() && self.goes_on(&longer) {
                    found = longer;
                }
            }
            let Split { fields, open, end } = found;
            // a line of blanks alone names no columns
            if fields.iter().any(|f| !f.is_empty()) {
                self.columns.get_or_insert(fields.len());
            }
            self.pass(end);
            return Some(Record { line, fields, open });
        }
        None
    }
}

/// Length of the line end at `i`; 0 if there is none.
fn line_end(text: &[u8], i: usize) -> usize {
    match (text.get(i), text.get(i + 1)) {
        (Some(b'\r'), Some(b'\n')) => 2,
        (Some(b'\r' | b'\n'), _) => 1,
        _ => 0,
    }
}

/// The lines of a text, without their ends; one more than it has line ends.
fn lines(text: &str) -> impl Iterator<Item = &str> {
    let mut rest = Some(text);
    std::iter::from_fn(move || {
        let text = rest?;
        let width = text.find(['\n', '\r']);
        rest = width.map(|n| &text[n + line_end(text.as_bytes(), n)..]);
        Some(&text[..width.unwrap_or(text.len())])
    })
}

/// Number of line ends in a text.
fn line_ends(text: &str) -> u64 {
    lines(text).skip(1).count() as u64
}

/// The fields of a record.
struct Split<'t> {
    fields: Vec<Cow<'t, str>>,
    /// Index of the first field with a quotation mark that is not closed.
    open: Option<usize>,
    /// Where the record ends, before its line end.
    end: usize,
}

/// The record at the start of a text. In its quoted fields it may go on over so many lines beyond
/// its first; a mark that is not closed by then is left out, and its line is read on without it.
fn split(text: &str, delimiter: u8, mut more_lines: u64) -> Split<'_> {
    let bytes = text.as_bytes();
    let mut fields = Vec::new();
    let mut open = None;
    let mut at = 0;
    loop {
        let mut quoted = None;
        if bytes.get(at) == Some(&b'"') {
            at += 1;
            match closing(bytes, at, delimiter, &mut more_lines) {
                Some(close) => {
                    quoted = Some(&text[at..close]);
                    at = close + 1;
                }
                None => {
                    open.get_or_insert(fields.len());
                }
            }
        }
        let ends = |b: &u8| *b == delimiter || matches!(b, b'\n' | b'\r');
        let end = bytes[at..].iter().position(ends);
        let end = end.map_or(bytes.len(), |n| at + n);
        let tail = &text[at..end];
        fields.push(match quoted {
            None => Cow::Borrowed(tail.trim()),
            Some(q) if tail.is_empty() && !q.contains('"') => Cow::Borrowed(q.trim()),
            // what follows the closing mark belongs to the field as it stands
            Some(q) => Cow::Owned((q.replace("\"\"", "\"") + tail).trim().to_owned()),
        });
        if bytes.get(end) != Some(&delimiter) {
            return Split { fields, open, end };
        }
        at = end + 1;
    }
}

/// Where the quotation mark is closed that was opened before `from`; at most so many lines below,
/// and there only where the field ends with it.
fn closing(text: &[u8], from: usize, delimiter: u8, more_lines: &mut u64) -> Option<usize> {
    let mut left = *more_lines;
    let mut i = from;
    loop {
        match (text.get(i)?, text.get(i + 1)) {
            // a doubled mark is one that is meant
            (b'"', Some(b'"')) => i += 2,
            (b'"', next) => {
                let ends = next.is_none_or(|b| *b == delimiter || matches!(b, b'\n' | b'\r'));
                if left < *more_lines && !ends {
                    return None;
                }
                *more_lines = left;
                return Some(i);
            }
            (b'\n' | b'\r', _) => {
                left = left.checked_sub(1)?;
                i += line_end(text, i);
            }
            _ => i += 1,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Vec<Vec<String>> {
        Records::new(text, b',')
            .map(|r| r.fields.iter().map(|f| f.clone().into_owned()).collect())
            .collect()
    }

    /// The `csv` crate's reader, set up as a table of readings needs it.
    fn reference(text: &str) -> Vec<Vec<String>> {
        let mut reader = csv::ReaderBuilder::new()
            .comment(Some(b'#'))
            .flexible(true)
            .has_headers(false)
            .trim(csv::Trim::All)
            .from_reader(text.as_bytes());
        reader
            .records()
            .map(|r| r.expect("text").iter().map(str::to_owned).collect())
            .collect()
    }

    /// All texts of up to so many of these characters.
    fn texts(of: &str, most: usize) -> Vec<String> {
        let mut all = vec![String::new()];
        let mut from = 0;
        for _ in 0..most {
            let to = all.len();
            for i in from..to {
                for c in of.chars() {
                    all.push(format!("{}{c}", all[i]));
                }
            }
            from = to;
        }
        all
    }

    #[test]
    fn fields_are_those_of_the_csv_crate() {
        let commented = texts("#a\n,", 6).into_iter().map(|t| t + "\n");
        let mut compared = 0;
        for text in texts("a \",\n\r", 6).into_iter().chain(commented) {
            let whole = |l: &str| split(l, b',', 0).open.is_none();
            if !lines(&text).all(whole) {
                continue;
            }
            compared += 1;
            assert_eq!(read(&text), reference(&text), "{text:?}");
        }
        assert!(compared > 30_000, "{compared}");
    }

    /// Fields of the records, those of open marks in brackets.
    fn shown(text: &str) -> Vec<String> {
        Records::new(text, b',')
            .map(|r| match r.open {
                Some(i) => format!("{} ({i}) {}", r.line, r.fields.join("|")),
                None => format!("{} {}", r.line, r.fields.join("|")),
            })
            .collect()
    }

    #[test]
    fn a_field_of_several_lines_is_as_the_csv_crate_reads_it() {
        for text in [
            "a,b,note\n1,2,\"two\nlines\"\n3,4,x\n",
            "a,b,note\r\n1,2,\"two\r\n\r\nlines, of \"\"text\"\"\"\r\n3,4,x",
            "note,a,b\n\"two\nlines\",1,2\nx,3,4\n",
            "a,note,b\n1,\"two\nlines\",2\n3,x,4\n",
            "a,note,hint\n1,\"two\nlines\",\"and\nthree\nmore\"\n3,x,y\n",
            "a,\"two\nlines\",b\n1,2,3\n",
            "a,b,\"two\nlines\"",
        ] {
            assert_eq!(read(text), reference(text), "{text:?}");
            assert!(Records::new(text, b',').all(|r| r.open.is_none()));
        }
    }

    #[test]
    fn a_mark_too_many_costs_its_line_only() {
        for (text, want) in [
            // nothing closes it
            (
                "a,b,c\n1,2,\"x\n3,4,y\n5,6,z\n",
                &["1 a|b|c", "2 (2) 1|2|x", "3 3|4|y", "4 5|6|z"][..],
            ),
            ("a,b,c\n1,\"2,x", &["1 a|b|c", "2 (1) 1|2|x"]),
            // another stray mark, which would close it
            (
                "a,b,c\n1,2,\"x\n3,4,y\n5,6,\"z\n7,8,v\n",
                &[
                    "1 a|b|c",
                    "2 (2) 1|2|x",
                    "3 3|4|y",
                    "4 (2) 5|6|z",
                    "5 7|8|v",
                ],
            ),
            (
                "a,b,c\n1,2,\"x\n3,4,\"\n5,6,z\n",
                &["1 a|b|c", "2 (2) 1|2|x", "3 (2) 3|4|", "4 5|6|z"],
            ),
            // a field in marks further down
            (
                "a,b,c\n1,2,\"x\n3,4,\"y, w\"\n",
                &["1 a|b|c", "2 (2) 1|2|x", "3 3|4|y, w"],
            ),
            (
                "a,b,c\n1,2,\"x\n3,\"4\",y\n5,\"6\",z\n",
                &["1 a|b|c", "2 (2) 1|2|x", "3 3|4|y", "4 5|6|z"],
            ),
            // in a row that is cut off besides
            (
                "a,b,c,d\n1,\"2\n3,4,y,v\n5,6\",z,w\n7,8,x,u\n",
                &[
                    "1 a|b|c|d",
                    "2 (1) 1|2",
                    "3 3|4|y|v",
                    "4 5|6\"|z|w",
                    "5 7|8|x|u",
                ],
            ),
            // in the names of the columns
            (
                "a,\"b,c\n1,2,x\n3,4,\"y\"\n",
                &["1 (1) a|b|c", "2 1|2|x", "3 3|4|y"],
            ),
        ] {
            for end in ["\n", "\r\n", "\r"] {
                let text = text.replace('\n', end);
                assert_eq!(shown(&text), want, "{text:?}");
            }
        }
    }

    #[test]
    fn a_comment_ends_with_its_line_whatever_ends_it() {
        for end in ["\n", "\r\n", "\r"] {
            let text = ["# of July", "a,b", "#", "", "1,2"].join(end);
            let found: Vec<(u64, usize)> = Records::new(&text, b',')
                .map(|r| (r.line, r.fields.len()))
                .collect();
            assert_eq!(found, [(2, 2), (5, 2)], "{text:?}");
        }
    }

    #[test]
    fn records_begin_on_the_lines_an_editor_counts() {
        // each record names the line it is written on
        let pieces = [
            "1,a", "2,b", "", "4,\"x\"", "# 5", "6,\"two", "lines\"", "8,z",
        ];
        let ends = ["\n", "\r\n", "\r"];
        // every mixture of the three, but an empty line after CR that LF would take away
        for mixture in 0..3_usize.pow(pieces.len() as u32) {
            let mut text = String::new();
            let mut m = mixture;
            for p in pieces {
                if p.is_empty() && text.ends_with('\r') && m % 3 == 0 {
                    m += 2;
                }
                text.push_str(p);
                text.push_str(ends[m % 3]);
                m /= 3;
            }
            for r in Records::new(&text, b',') {
                assert_eq!(r.fields[0], r.line.to_string(), "{text:?}");
            }
            assert_eq!(Records::new(&text, b',').count(), 5, "{text:?}");
        }
    }
}
