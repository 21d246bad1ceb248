//! The keywords of version 2 (Touchstone 2.0, the sections of the same names).

use super::{
    Cow, Kind, MatrixFormat, Part, Range, Reader, TwoPortOrder, Version, Word, Words, references,
    shown, word_end, words,
};

/// Small letters, one blank between words, a hyphen as it is.
fn plain(name: &[u8]) -> String {
    let name = String::from_utf8_lossy(name).to_ascii_lowercase();
    let words: Vec<&str> = name.split_ascii_whitespace().collect();
    words.join(" ")
}

impl Reader<'_> {
    /// A line that begins with `[` at `at`; gives where it ends.
    pub(super) fn keyword(&mut self, at: usize) -> usize {
        let end = self.line_end(at);
        let close = self.text[at..end].iter().position(|b| *b == b']');
        let Some(close) = close.map(|c| at + c) else {
            if self.part != Part::Information {
                self.unknown(at..word_end(self.text, at), "has no closing bracket");
            }
            return end;
        };
        let name = plain(&self.text[at + 1..close]);
        let place = at..close + 1;
        let text = self.text;
        let values = words(text, close + 1, end);
        if self.part == Part::Information {
            if name == "end information" {
                self.part = self.outer;
            }
            return end;
        }
        if self.part == Part::References && name != "reference" {
            self.end_references(place.clone());
        }
        self.first_keyword(&name, place.clone());
        match name.as_str() {
            "version" => self.version(&values, place),
            "number of ports" => self.number_of_ports(&values, place),
            "two-port data order" | "two-port order" => self.order(&values, place),
            "number of frequencies" => {
                let count = self.count(&values, place.clone());
                self.announced = count.map(|n| (n, self.line, place));
            }
            "number of noise frequencies" => {
                let count = self.count(&values, place.clone());
                self.announced_noise = count.map(|n| (n, self.line, place));
            }
            "reference" => {
                self.references.clear();
                self.header.reference_defaulted = false;
                self.part = Part::References;
                self.take_references(&values);
            }
            "matrix format" => self.matrix_format(&values, place),
            "mixed-mode order" => {
                let order = shown(&self.text[place.end..end]);
                self.note(Kind::MixedMode, place, || {
                    format!("the data are mixed-mode parameters ({})", order.trim())
                })
                .understood("they are not supported; nothing was read as single-ended")
                .hint("export single-ended parameters");
                self.meaningless = true;
            }
            "begin information" => {
                self.outer = self.part;
                self.part = Part::Information;
            }
            "end information" => {}
            "network data" => {
                if self.began {
                    self.unknown(place, "occurs twice");
                } else {
                    self.begin_network(at);
                }
            }
            "noise data" => {
                let text = self.text;
                self.rows.finish(&mut self.notes, text, &self.header, false);
                self.part = Part::Noise;
            }
            "end" => {
                let text = self.text;
                self.rows.finish(&mut self.notes, text, &self.header, false);
                self.part = Part::End;
            }
            _ => self.unknown(place, "is not a keyword of the format"),
        }
        end
    }

    /// Keywords make a file one of version 2, with or without `[Version]`.
    fn first_keyword(&mut self, name: &str, place: Range<usize>) {
        if name == "version" || self.header.version == Version::V2 || self.began {
            return;
        }
        self.header.version = Version::V2;
        self.note(Kind::VersionMissing, place, || {
            "a keyword of version 2 without `[Version] 2.0`".to_owned()
        })
        .understood("the file was read as version 2.0")
        .hint("begin the file with `[Version] 2.0`");
    }

    fn unknown(&mut self, place: Range<usize>, what: &str) {
        let name = shown(&self.text[place.clone()]);
        self.note(Kind::KeywordUnknown, place, || format!("`{name}` {what}"))
            .understood("the line was passed over");
    }

    fn value_fault(&mut self, place: Range<usize>, wanted: &str) {
        let name = shown(&self.text[place.clone()]);
        self.note(Kind::KeywordValue, place, || {
            format!("`{name}` lacks a value that can be read")
        })
        .understood("the line was passed over")
        .hint(wanted);
    }

    fn count(&mut self, values: &[Word<'_>], place: Range<usize>) -> Option<usize> {
        let word = values.first().map(|(w, _)| String::from_utf8_lossy(w));
        let count = word.as_deref().and_then(|w: &str| w.parse().ok());
        if count.is_none() {
            self.value_fault(place, "a whole number");
        }
        count
    }

    fn version(&mut self, values: &[Word<'_>], place: Range<usize>) {
        let word = values
            .first()
            .map_or(Cow::Borrowed(""), |(w, _)| String::from_utf8_lossy(w));
        match word.as_ref() {
            "1.0" | "1.1" | "1" if !self.began => self.header.version = Version::V1,
            _ if self.began => self.unknown(place, "comes after rows of data"),
            other => {
                self.header.version = Version::V2;
                if !matches!(other, "2.0" | "2.1" | "2") {
                    let other = shown(other.as_bytes());
                    self.note(Kind::VersionUnknown, place, || {
                        format!("version `{other}` of the format is not known")
                    })
                    .understood("the file was read as version 2.0")
                    .hint("`[Version] 2.0`");
                }
            }
        }
    }

    fn number_of_ports(&mut self, values: &[Word<'_>], place: Range<usize>) {
        let Some(n) = self.count(values, place.clone()) else {
            return;
        };
        if self.began {
            return self.unknown(place, "comes after rows of data");
        }
        self.header.ports = Some(n);
        if let Some(named) = self.named_ports.filter(|named| *named != n) {
            self.note(Kind::PortsMismatch, place, || {
                format!("the file's name says {named} port(s), its text {n}")
            })
            .understood("the text counts");
        }
    }

    fn order(&mut self, values: &[Word<'_>], place: Range<usize>) {
        self.header.two_port_order = match values.first().map(|(w, _)| *w) {
            Some(b"21_12") => TwoPortOrder::N21First,
            Some(b"12_21") => TwoPortOrder::N12First,
            _ => return self.value_fault(place, "`21_12` (N11 N21 N12 N22) or `12_21`"),
        };
        self.order_said = true;
    }

    fn matrix_format(&mut self, values: &[Word<'_>], place: Range<usize>) {
        let word = values.first().map(|(w, _)| w.to_ascii_lowercase());
        self.header.matrix_format = match word.as_deref() {
            Some(b"full") => MatrixFormat::Full,
            Some(b"lower") => MatrixFormat::Lower,
            Some(b"upper") => MatrixFormat::Upper,
            _ => {
                // which elements the rows hold is not known now
                self.meaningless = true;
                return self.value_fault(place, "`Full`, `Lower` or `Upper`");
            }
        };
    }

    /// A line of numbers after `[Reference]`.
    pub(super) fn more_references(&mut self, at: usize) -> usize {
        let end = self.line_end(at);
        let text = self.text;
        self.take_references(&words(text, at, end));
        end
    }

    fn take_references(&mut self, values: &[Word<'_>]) {
        if values.is_empty() || self.meaningless {
            return;
        }
        let got = references(&mut self.notes, self.text, self.line, values);
        // one of them could not be read
        self.meaningless |= got.is_empty();
        self.references.extend(got);
    }

    /// The keyword at `place` ends the list of references.
    fn end_references(&mut self, place: Range<usize>) {
        self.part = Part::Header;
        self.header.reference = std::mem::take(&mut self.references);
        let (count, ports) = (self.header.reference.len(), self.header.ports);
        if !self.meaningless && (count == 0 || ports.is_some_and(|n| n != count)) {
            self.meaningless = true;
            self.note(Kind::ReferenceCount, place, || match ports {
                Some(n) => format!("`[Reference]` gives {count} resistances for {n} port(s)"),
                None => format!("`[Reference]` gives {count} resistances"),
            })
            .understood("which port has which is not known")
            .hint("write one for each port");
        }
    }
}
