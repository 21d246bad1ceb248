//! The reader: goes through the lines of a file, keeps valid data, reports the rest.

use crate::convert::Parameter;
use crate::header::{Header, MatrixFormat, TwoPortOrder, Version, Word, references, shown, words};
use crate::measures::polar_deg;
use crate::network::Network;
use crate::note::{Kind, Line, Note, Notes, Words};
use crate::number::{self, word_end};
use crate::rows::{Outcome, Rows, parse_line};
use crate::{Format, MAX_PORTS};
use num_complex::Complex64;
use std::borrow::Cow;
use std::ops::Range;

/// One row of the noise table of a two-port.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoisePoint {
    /// Frequency, Hz.
    pub frequency_hz: f64,
    /// Least noise figure, dB.
    pub minimum_noise_figure_db: f64,
    /// Source reflection that gives it, in the reference of port 1.
    pub optimum_reflection: Complex64,
    /// Effective noise resistance, ohm (version 1 files hold it divided by the reference).
    pub noise_resistance_ohm: f64,
}

/// All that could be had of a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Touchstone {
    /// The network; `None` if no row is good, or what the rows mean is not known (an error
    /// among the notes gives the reason).
    pub network: Option<Network>,
    /// The noise table, in the order of the file; empty if there is none.
    pub noise: Vec<NoisePoint>,
    /// The header.
    pub header: Header,
    /// Rows of network data that were left out.
    pub rows_left_out: usize,
    /// Errors and assumptions, in the order of the file.
    pub notes: Vec<Note>,
}

/// The number of ports according to a file's name: `load.s1p` has 1, `x.S12P` 12, `net.ts` none (its
/// text has it). Some programs write z, y, h or g instead of s.
#[must_use]
pub fn ports_from_name(name: &str) -> Option<usize> {
    let (_, extension) = name.rsplit_once('.')?;
    let lower = extension.to_ascii_lowercase();
    let digits = lower
        .strip_prefix(['s', 'z', 'y', 'h', 'g'])?
        .strip_suffix('p')?;
    let plain = !digits.is_empty() && digits.bytes().all(|b| b.is_ascii_digit());
    digits
        .parse()
        .ok()
        .filter(|n| plain && (1..=MAX_PORTS).contains(n))
}

/// Reads the bytes of a file. `ports` is the number from its name (see [`ports_from_name`]); a file
/// of version 2 declares it, and without either it is derived from the length of the rows.
///
/// Never fails and never panics: what is wrong is among the notes.
#[must_use]
pub fn read(text: &[u8], ports: Option<usize>) -> Touchstone {
    let text = unix_lines(text);
    let mut reader = Reader::new(&text, ports);
    reader.run();
    reader.finish()
}

/// Lines that end in `\r` alone get `\n`; every byte keeps its place.
fn unix_lines(text: &[u8]) -> Cow<'_, [u8]> {
    let head = &text[..text.len().min(4096)];
    if head.contains(&b'\n') || !head.contains(&b'\r') || text.contains(&b'\n') {
        return Cow::Borrowed(text);
    }
    let turned = text.iter().map(|b| if *b == b'\r' { b'\n' } else { *b });
    Cow::Owned(turned.collect())
}

/// Which part of the file is being read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    Header,
    /// Numbers that go on with `[Reference]`.
    References,
    Information,
    Network,
    Noise,
    End,
}

struct Reader<'a> {
    text: &'a [u8],
    at: usize,
    line: Line,
    part: Part,
    /// Where `[Begin Information]` leads back to.
    outer: Part,
    notes: Notes,
    header: Header,
    /// Number of ports from the name of the file.
    named_ports: Option<usize>,
    option_line: Option<Line>,
    order_said: bool,
    /// The first row of a two-port of version 2 that does not state the order.
    order_missing: Option<(Line, Range<usize>)>,
    /// The rows can be read, and what they mean is not known.
    refused: bool,
    rows: Rows,
    began: bool,
    noise: Vec<NoisePoint>,
    /// A count declared by a keyword, and its place.
    announced: Option<(usize, Line, Range<usize>)>,
    announced_noise: Option<(usize, Line, Range<usize>)>,
    /// Something makes the rows mean nothing; an error was noted.
    meaningless: bool,
    /// Numbers of `[Reference]` so far.
    references: Vec<f64>,
    impedance_said: bool,
    stray_said: bool,
}

impl<'a> Reader<'a> {
    fn new(text: &'a [u8], ports: Option<usize>) -> Reader<'a> {
        Reader {
            text,
            at: 0,
            line: Line {
                number: 1,
                start: 0,
            },
            part: Part::Header,
            outer: Part::Header,
            notes: Notes::default(),
            header: Header::new(),
            named_ports: ports,
            option_line: None,
            order_said: false,
            order_missing: None,
            refused: false,
            rows: Rows::default(),
            began: false,
            noise: Vec::new(),
            announced: None,
            announced_noise: None,
            meaningless: false,
            references: Vec::new(),
            impedance_said: false,
            stray_said: false,
        }
    }

    fn note(
        &mut self,
        kind: Kind,
        place: Range<usize>,
        message: impl FnOnce() -> String,
    ) -> Option<&mut Note> {
        self.notes.add(kind, self.text, self.line, place, message)
    }

    fn run(&mut self) {
        if self.text.starts_with(&[0xEF, 0xBB, 0xBF]) {
            self.at = 3;
            self.line.start = 3;
        } else if self.text.starts_with(&[0xFF, 0xFE]) || self.text.starts_with(&[0xFE, 0xFF]) {
            self.note(Kind::Encoding, 0..2, || "the file is in UTF-16".to_owned())
                .understood("nothing of it was read")
                .hint("save it as plain text (ASCII or UTF-8)");
            self.at = self.text.len();
        }
        while self.at < self.text.len() {
            self.one_line();
        }
    }

    /// One line of the file, the cursor at its first byte.
    #[inline]
    fn one_line(&mut self) {
        self.line.start = self.at;
        let mut at = self.at;
        while matches!(self.text.get(at), Some(b' ' | b'\t' | b'\r' | 0x0B | 0x0C)) {
            at += 1;
        }
        let stop = match self.text.get(at) {
            None | Some(b'\n') => at,
            Some(b'!') => self.comment(at),
            _ if self.part == Part::Information => self.information(at),
            Some(b'#') => self.options(at),
            Some(b'[') => self.keyword(at),
            Some(_) => self.data(at),
        };
        self.next_line(stop);
    }

    /// Moves past the next line break at or after `at`.
    #[inline]
    fn next_line(&mut self, at: usize) {
        self.at = if self.text.get(at) == Some(&b'\n') {
            at + 1
        } else {
            (self.line_end(at) + 1).min(self.text.len())
        };
        self.line.number += 1;
    }

    fn line_end(&self, at: usize) -> usize {
        let rest = self.text.get(at..).unwrap_or_default();
        at + rest.iter().position(|b| *b == b'\n').unwrap_or(rest.len())
    }

    fn comment(&mut self, at: usize) -> usize {
        let end = self.line_end(at);
        let body = &self.text[at + 1..end];
        if !self.began {
            let body = String::from_utf8_lossy(body);
            self.header.comments.push(body.trim_end().to_owned());
        }
        self.impedance_comment(at, end);
        end
    }

    /// `! Port Impedance 50 0 ...`, as some simulators write it: one complex number a port.
    fn impedance_comment(&mut self, at: usize, end: usize) {
        const PHRASE: &[u8] = b"port impedance";
        let body = &self.text[at + 1..end];
        let blanks = body.iter().take_while(|b| b.is_ascii_whitespace()).count();
        let Some(head) = body.get(blanks..blanks + PHRASE.len()) else {
            return;
        };
        if self.impedance_said || !head.eq_ignore_ascii_case(PHRASE) {
            return;
        }
        let mut values = Vec::new();
        parse_line(self.text, at + 1 + blanks + PHRASE.len(), &mut values);
        let reference = &self.header.reference;
        let differs = |(k, pair): (usize, &[f64])| {
            let ohm = reference.get(k).or(reference.first()).copied();
            let near = ohm.is_some_and(|ohm| (pair[0] - ohm).abs() <= 1e-9 * ohm);
            pair.iter().all(|x| x.is_finite()) && !(near && pair[1] == 0.0)
        };
        let Some((k, pair)) = values
            .chunks_exact(2)
            .enumerate()
            .find(|(k, p)| differs((*k, *p)))
        else {
            return;
        };
        let (k, re, im) = (k + 1, pair[0], pair[1]);
        let taken = reference.first().copied();
        self.impedance_said = true;
        self.note(Kind::ImpedanceInComment, at..end, || {
            format!("a comment gives port {k} an impedance of {re} {im:+}j ohm")
        })
        .understood(match taken {
            Some(ohm) => format!("comments do not count: {ohm} ohm was taken"),
            None => "comments do not count".to_owned(),
        })
        .hint("let the program that wrote the file renormalise it to one real resistance");
    }

    fn information(&mut self, at: usize) -> usize {
        if self.text[at] == b'[' {
            return self.keyword(at);
        }
        self.line_end(at)
    }

    fn options(&mut self, at: usize) -> usize {
        let end = self.line_end(at);
        if let Some(first) = self.option_line {
            let number = first.number;
            self.note(Kind::OptionLineRepeated, at..at + 1, || {
                format!("a second option line; the first is line {number}")
            })
            .understood("the first counts");
            return end;
        }
        if self.began {
            self.note(Kind::OptionLineRepeated, at..at + 1, || {
                "the option line comes after rows of data".to_owned()
            })
            .understood("it was passed over")
            .hint("put it before the first row");
            return end;
        }
        self.option_line = Some(self.line);
        let place = (at, end);
        self.header
            .option_line(&mut self.notes, self.text, self.line, place);
        end
    }

    /// A line in the place of a row of numbers.
    #[inline]
    fn data(&mut self, at: usize) -> usize {
        if self.part == Part::Network {
            let (outcome, stop) =
                self.rows
                    .line(&mut self.notes, self.text, self.line, at, &self.header);
            if outcome == Outcome::Taken {
                return stop;
            }
            self.part = Part::Noise;
            return self.noise_row(at);
        }
        self.other_data(at)
    }

    fn other_data(&mut self, at: usize) -> usize {
        match self.part {
            Part::Noise => return self.noise_row(at),
            Part::References => return self.more_references(at),
            Part::Header => {}
            Part::End | Part::Information | Part::Network => {
                let end = self.line_end(at);
                if !self.stray_said {
                    self.stray_said = true;
                    let place = at..word_end(self.text, at);
                    self.note(Kind::StrayData, place, || {
                        "rows follow after `[End]`".to_owned()
                    })
                    .understood("they were passed over");
                }
                return end;
            }
        }
        if number::number(self.text, at).is_err() {
            // a line of words before the data: not a row, nor a comment
            let end = self.line_end(at);
            let word = shown(&self.text[at..end]);
            self.note(Kind::NotANumber, at..word_end(self.text, at), || {
                format!("`{word}` is neither a row nor an option line")
            })
            .understood("the line was passed over")
            .hint("comments begin with `!`");
            return end;
        }
        if self.header.version == Version::V2 {
            let place = at..word_end(self.text, at);
            self.note(Kind::KeywordMissing, place, || {
                "`[Network Data]` is missing before the rows".to_owned()
            })
            .understood("the rows were read as network data");
        }
        self.begin_network(at);
        self.data(at)
    }

    /// Everything before the rows is known: settles ports, references and order.
    fn begin_network(&mut self, at: usize) {
        self.part = Part::Network;
        if self.began {
            return;
        }
        self.began = true;
        let place = at..word_end(self.text, at).max(at + 1).min(self.text.len());
        if self.option_line.is_none() {
            self.note(Kind::OptionLineMissing, place.clone(), || {
                "there is no option line before the rows".to_owned()
            })
            .understood("what the numbers mean is not known; nothing of the data was used")
            .hint("write for instance `# MHz S RI R 50` above");
            self.refused = true;
        }
        if self.header.version == Version::V2 && self.header.ports.is_none() {
            self.note(Kind::KeywordMissing, place.clone(), || {
                "`[Number of Ports]` is missing".to_owned()
            })
            .understood("the number was told from the file's name or its rows");
        }
        if self.header.version == Version::V2 && self.announced.is_none() {
            self.note(Kind::KeywordMissing, place.clone(), || {
                "`[Number of Frequencies]` is missing".to_owned()
            })
            .understood("all rows that are there were read")
            .hint("it tells a file that was cut off from a whole one");
        }
        let ports = self.header.ports.or_else(|| self.ports_of_name(at));
        if let Some(n) = ports
            && !(1..=MAX_PORTS).contains(&n)
        {
            self.note(Kind::PortsImpossible, place, || {
                format!("{n} ports cannot be")
            })
            .understood("nothing of the data was read");
            self.meaningless = true;
            self.part = Part::End;
            self.stray_said = true;
            return;
        }
        if ports == Some(2) && self.header.version == Version::V2 && !self.order_said {
            self.order_missing = Some((self.line, place.clone()));
            self.note(Kind::KeywordMissing, place, || {
                "`[Two-Port Data Order]` is missing".to_owned()
            })
            .understood("21_12 was taken: N11 N21 N12 N22, as long as both orders give the same")
            .hint("write `[Two-Port Data Order] 21_12` or `12_21`");
        }
        self.rows.begin(ports, &self.header);
    }

    /// The ports of the file's name, unless the first rows agree on another number.
    fn ports_of_name(&mut self, at: usize) -> Option<usize> {
        let named = self.named_ports?;
        let Some(told) = ports_of_rows(self.text, at).filter(|n| *n != named) else {
            return Some(named);
        };
        let numbers = 1 + 2 * told * told;
        let place = at..word_end(self.text, at);
        self.note(Kind::PortsMismatch, place, || {
            format!("the file's name says {named} port(s), but its rows hold {numbers} numbers")
        })
        .understood(format!("read as a {told}-port"))
        .hint(format!("name the file .s{told}p"));
        Some(told)
    }

    fn noise_row(&mut self, at: usize) -> usize {
        let mut v = Vec::with_capacity(5);
        let parsed = parse_line(self.text, at, &mut v);
        let scale = self.header.unit.exponent();
        let hz = match v.first() {
            Some(f) => number::scaled(&self.text[parsed.first.clone()], *f, scale),
            None => f64::NAN,
        };
        let good = parsed.good() && v.len() == 5 && hz.is_finite() && hz >= 0.0;
        if !good {
            let count = v.len();
            self.note(Kind::NoiseRow, parsed.first, || match count {
                5 => "a number of the noise row cannot be used".to_owned(),
                _ => format!("{count} numbers in a row of the noise table, which has 5"),
            })
            .understood("the row was left out")
            .hint("frequency, minimum noise figure in dB, |Γopt|, its angle, Rn");
            return parsed.end;
        }
        let ohm = match (self.header.version, self.header.reference.first()) {
            (Version::V1, Some(r)) => v[4] * r,
            _ => v[4],
        };
        self.noise.push(NoisePoint {
            frequency_hz: hz,
            minimum_noise_figure_db: v[1],
            optimum_reflection: polar_deg(v[2], v[3]),
            noise_resistance_ohm: ohm,
        });
        parsed.end
    }
}

/// The number of ports on which at least the first two points (at most four) agree, by their
/// numbers in lines of odd and even count.
fn ports_of_rows(text: &[u8], mut at: usize) -> Option<usize> {
    let (mut counts, mut numbers) = (Vec::new(), Vec::new());
    while at < text.len() && counts.len() < 5 {
        numbers.clear();
        let parsed = parse_line(text, at, &mut numbers);
        let rest = &text[parsed.end..];
        at = parsed.end + rest.iter().position(|b| *b == b'\n').unwrap_or(rest.len()) + 1;
        match (parsed.count % 2, counts.last_mut()) {
            (1, _) => counts.push(parsed.count),
            (_, Some(last)) => *last += parsed.count,
            (_, None) => return None,
        }
    }
    // the last one may go on beyond what was looked at
    if at < text.len() {
        counts.pop();
    }
    let first = *counts.first()?;
    let agree = counts.len() >= 2 && counts.iter().all(|c| *c == first);
    (1..=MAX_PORTS)
        .take_while(|n| 2 * n * n < first)
        .find(|n| agree && 1 + 2 * n * n == first)
}

mod finish;
mod keywords;
