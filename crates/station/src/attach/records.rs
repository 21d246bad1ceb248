//! The records of a text table, one after the other, and the lines they begin on.

use std::borrow::Cow;

/// One record.
pub(super) struct Record<'t> {
    /// Line in the file on which it begins, from 1.
    pub(super) line: u64,
    /// Its fields, without quotation marks and blanks around them.
    pub(super) fields: Vec<Cow<'t, str>>,
}

/// Reads the records of a text (RFC 4180 with a delimiter of choice). A line ends with LF, CR LF
/// or a lone CR, as editors count lines; empty lines and lines that begin with `#` are no records.
pub(super) struct Records<'t> {
    rest: &'t str,
    /// Line on which the rest begins, from 1.
    line: u64,
    delimiter: u8,
}

impl<'t> Records<'t> {
    pub(super) fn new(text: &'t str, delimiter: u8) -> Self {
        Records {
            rest: text,
            line: 1,
            delimiter,
        }
    }

    /// Goes past so many bytes and the line end that follows them.
    fn pass(&mut self, bytes: usize) {
        let (over, rest) = self.rest.split_at(bytes);
        let end = line_end(rest.as_bytes(), 0);
        self.line += line_ends(over) + u64::from(end > 0);
        self.rest = &rest[end..];
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
            let (fields, end) = split(self.rest, self.delimiter);
            self.pass(end);
            return Some(Record { line, fields });
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

/// Number of line ends in a text.
fn line_ends(text: &str) -> u64 {
    let bytes = text.as_bytes();
    let mut n = 0;
    let mut i = 0;
    while i < bytes.len() {
        let end = line_end(bytes, i);
        n += u64::from(end > 0);
        i += end.max(1);
    }
    n
}

/// The fields of the record at the start of a text, and where it ends.
fn split(text: &str, delimiter: u8) -> (Vec<Cow<'_, str>>, usize) {
    let bytes = text.as_bytes();
    let mut fields = Vec::new();
    let mut at = 0;
    loop {
        let mut quoted = None;
        if bytes.get(at) == Some(&b'"') {
            let close = closing(bytes, at + 1);
            quoted = Some(&text[at + 1..close]);
            at = usize::min(close + 1, bytes.len());
        }
        let plain = bytes[at..]
            .iter()
            .position(|b| *b == delimiter || matches!(b, b'\n' | b'\r'));
        let end = plain.map_or(bytes.len(), |n| at + n);
        let tail = &text[at..end];
        fields.push(match quoted {
            None => Cow::Borrowed(tail.trim()),
            Some(q) if tail.is_empty() && !q.contains('"') => Cow::Borrowed(q.trim()),
            // what follows the closing mark belongs to the field as it stands
            Some(q) => Cow::Owned((q.replace("\"\"", "\"") + tail).trim().to_owned()),
        });
        if bytes.get(end) != Some(&delimiter) {
            return (fields, end);
        }
        at = end + 1;
    }
}

/// Where the quotation mark is closed that was opened before `from`; the end of the text if nowhere.
fn closing(text: &[u8], from: usize) -> usize {
    let mut i = from;
    while let Some(b) = text.get(i) {
        match (b, text.get(i + 1)) {
            // a doubled mark is one that is meant
            (b'"', Some(b'"')) => i += 2,
            (b'"', _) => return i,
            _ => i += 1,
        }
    }
    text.len()
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
        for text in texts("a \",\n\r", 6).into_iter().chain(commented) {
            assert_eq!(read(&text), reference(&text), "{text:?}");
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
            "1,a",
            "2,b",
            "",
            "4,\"x\"",
            "# 5",
            "6,\"two",
            "lines\",y",
            "8,z",
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
