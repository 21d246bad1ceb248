//! Rows of numbers into points. A line with an odd number of numbers begins a point (a
//! frequency and pairs), one with an even number goes on with it; so a bad row costs one point.

use crate::convert;
use crate::header::{Format, Header, MatrixFormat, TwoPortOrder, Version, shown};
use crate::measures::polar_deg;
use crate::note::{Kind, Line, Notes, Words};
use crate::number::{self, Fault};
use crate::{MAX_PORTS, Parameter};
use num_complex::Complex64;
use std::ops::Range;

/// Gathers points from lines of numbers.
#[derive(Debug, Default)]
pub(crate) struct Rows {
    /// Ports, as far as they are known.
    ports: Option<usize>,
    /// Numbers a point has, with its frequency; 0 while the ports are not known.
    need: usize,
    /// Where the k-th pair of a point goes in the matrix.
    places: Vec<usize>,
    pending: Vec<f64>,
    /// The pending point holds a word that is not a number, and that was reported.
    spoilt: bool,
    /// Lines that go on with a point that was given up.
    skipping: bool,
    /// Where the pending point begins, and its frequency's word.
    line: Line,
    frequency: Range<usize>,
    last_hz: f64,
    /// The line on which the last kept point ended (0: none was kept since).
    kept_line: usize,
    /// Rows that were points of the file, good or bad.
    pub(crate) seen: usize,
    pub(crate) unsorted: bool,
    pub(crate) frequencies_hz: Vec<f64>,
    pub(crate) s: Vec<Complex64>,
    /// One-port rows with more reflection than a passive load has, and the first of them.
    pub(crate) loud: usize,
    pub(crate) first_loud: Option<(Line, Range<usize>)>,
    /// Rows with a negative magnitude, and the first of them.
    pub(crate) negative: usize,
    pub(crate) first_negative: Option<(Line, Range<usize>)>,
}

/// Outcome of a line.
#[derive(Debug, PartialEq)]
pub(crate) enum Outcome {
    /// It was read (or reported as wrong).
    Taken,
    /// It is the first of the noise table; its numbers were not taken.
    Noise,
}

/// Numbers of one line, and the first thing wrong with them.
pub(crate) struct Parsed {
    /// Number of words.
    pub(crate) count: usize,
    /// One past the last byte looked at: the line's end or a comment's `!`.
    pub(crate) end: usize,
    /// The first number's bytes.
    pub(crate) first: Range<usize>,
    fault: Option<(Fault, Range<usize>)>,
}

impl Parsed {
    /// True if all words were finite numbers.
    pub(crate) fn good(&self) -> bool {
        self.fault.is_none()
    }
}

/// Reads the numbers from `at` to the end of the line onto `out`; NaN for what is none.
#[inline]
pub(crate) fn parse_line(text: &[u8], mut at: usize, out: &mut Vec<f64>) -> Parsed {
    let mut parsed = Parsed {
        count: 0,
        end: at,
        first: at..at,
        fault: None,
    };
    loop {
        while matches!(text.get(at), Some(b' ' | b'\t' | b'\r' | 0x0B | 0x0C)) {
            at += 1;
        }
        if matches!(text.get(at), None | Some(b'\n' | b'!')) {
            parsed.end = at;
            return parsed;
        }
        let end = match number::number(text, at) {
            Ok((value, end)) => {
                out.push(value);
                end
            }
            Err((fault, end)) => {
                out.push(f64::NAN);
                parsed.fault.get_or_insert((fault, at..end));
                end
            }
        };
        if parsed.count == 0 {
            parsed.first = at..end;
        }
        parsed.count += 1;
        at = end;
    }
}

/// The description of a word that is not a number.
fn fault_note(notes: &mut Notes, text: &[u8], line: Line, fault: Fault, place: Range<usize>) {
    let word = shown(&text[place.clone()]);
    let kind = match fault {
        Fault::NotFinite => Kind::NotFinite,
        Fault::DecimalComma | Fault::Word => Kind::NotANumber,
    };
    let note = notes.add(kind, text, line, place, || match fault {
        Fault::NotFinite => format!("`{word}` is not a finite number"),
        Fault::DecimalComma => format!("`{word}` has a decimal comma"),
        Fault::Word => format!("`{word}` is not a number"),
    });
    let note = note.understood("the row was left out");
    match fault {
        Fault::NotFinite => note.hint("measure the point again or delete the row"),
        Fault::DecimalComma => note.hint("write a point: export the file again in another locale"),
        Fault::Word => note.hint("numbers are written 0.5 or -1.2e-3; comments begin with `!`"),
    };
}

/// The number of ports whose rows have `numbers` numbers, the frequency among them.
fn ports_of(numbers: usize, format: MatrixFormat) -> Option<usize> {
    let elements = numbers.checked_sub(1).filter(|n| n % 2 == 0 && *n > 0)? / 2;
    (1..=MAX_PORTS)
        .find(|n| element_count(*n, format) >= elements)
        .filter(|n| element_count(*n, format) == elements)
}

fn element_count(ports: usize, format: MatrixFormat) -> usize {
    match format {
        MatrixFormat::Full => ports * ports,
        MatrixFormat::Lower | MatrixFormat::Upper => ports * (ports + 1) / 2,
    }
}

/// Where the pairs of a point go in the row-major matrix.
fn pair_places(n: usize, header: &Header) -> Vec<usize> {
    let all = (0..n).flat_map(|i| (0..n).map(move |j| (i, j)));
    match header.matrix_format {
        MatrixFormat::Full if n == 2 && header.two_port_order == TwoPortOrder::N21First => {
            vec![0, 2, 1, 3]
        }
        MatrixFormat::Full => (0..n * n).collect(),
        MatrixFormat::Lower => all
            .filter(|(i, j)| j <= i)
            .map(|(i, j)| i * n + j)
            .collect(),
        MatrixFormat::Upper => all
            .filter(|(i, j)| j >= i)
            .map(|(i, j)| i * n + j)
            .collect(),
    }
}

impl Rows {
    /// Rows of so many ports; `None` derives them from the first row. `room` is the number of
    /// bytes that may hold rows.
    pub(crate) fn begin(&mut self, ports: Option<usize>, header: &Header) {
        self.last_hz = f64::NEG_INFINITY;
        if let Some(n) = ports {
            self.set_ports(n, header);
        }
    }

    fn set_ports(&mut self, n: usize, header: &Header) {
        self.ports = Some(n);
        self.need = 1 + 2 * element_count(n, header.matrix_format);
        self.places = pair_places(n, header);
    }

    /// The number of ports, given or derived from the rows.
    pub(crate) fn ports(&self) -> Option<usize> {
        self.ports
    }

    /// Makes room for the points that `bytes` of text can hold, given the bytes of the first.
    fn reserve(&mut self, first: usize, bytes: usize) {
        let points = bytes / first.max(2 * self.need) + 1;
        let n = self.ports.unwrap_or(1);
        self.frequencies_hz.reserve(points);
        self.s.reserve(points * n * n);
    }

    /// Takes the line of numbers that begins at `at`. Gives the place where it stopped.
    #[inline]
    pub(crate) fn line(
        &mut self,
        notes: &mut Notes,
        text: &[u8],
        line: Line,
        at: usize,
        header: &Header,
    ) -> (Outcome, usize) {
        let mark = self.pending.len();
        let parsed = parse_line(text, at, &mut self.pending);
        let odd = parsed.count % 2 == 1;
        if odd {
            if mark > 0 {
                let next = self.pending.split_off(mark);
                self.flush(notes, text, header);
                self.pending.clear();
                self.pending.extend(next);
            }
            if self.is_noise(text, &parsed, header) {
                self.pending.clear();
                return (Outcome::Noise, parsed.end);
            }
            self.spoilt = false;
            self.skipping = false;
            self.line = line;
            self.frequency = parsed.first.clone();
        } else if self.skipping || mark == 0 {
            self.pending.clear();
            if !self.skipping {
                self.stray_line(notes, text, line, &parsed, header);
            }
            return (Outcome::Taken, parsed.end);
        }
        if let Some((fault, place)) = parsed.fault.clone() {
            if !self.spoilt {
                fault_note(notes, text, line, fault, place);
            }
            self.spoilt = true;
        }
        if self.need == 0 {
            return (Outcome::Taken, parsed.end);
        }
        if self.pending.len() == self.need {
            if self.seen == 0 {
                self.reserve(parsed.end - self.line.start, text.len() - self.line.start);
            }
            self.seen += 1;
            let before = self.frequencies_hz.len();
            self.point(notes, text, header);
            let kept = self.frequencies_hz.len() > before;
            self.kept_line = if kept { line.number } else { 0 };
            self.pending.clear();
        } else if self.pending.len() > self.need {
            self.seen += 1;
            self.wrong_length(notes, text, parsed.end);
            self.pending.clear();
            self.skipping = true;
        }
        (Outcome::Taken, parsed.end)
    }

    /// The noise table of a version 1 two-port: rows of five numbers from a frequency that is
    /// not above the last one (Touchstone 1.1, noise parameters).
    fn is_noise(&self, text: &[u8], parsed: &Parsed, header: &Header) -> bool {
        header.version == Version::V1
            && self.ports == Some(2)
            && parsed.count == 5
            && parsed.good()
            && !self.frequencies_hz.is_empty()
            && {
                let word = &text[parsed.first.clone()];
                number::scaled(word, self.pending[0], header.unit.exponent()) <= self.last_hz
            }
    }

    /// An even number of numbers where a point was to begin. If the first may be the next
    /// frequency, one is missing; else the line belongs to the point of several lines before it,
    /// whose numbers then are not where they should be.
    #[cold]
    fn stray_line(
        &mut self,
        notes: &mut Notes,
        text: &[u8],
        line: Line,
        parsed: &Parsed,
        header: &Header,
    ) {
        let wraps = self.ports.is_none_or(|n| n > 2);
        self.skipping = wraps;
        let word = &text[parsed.first.clone()];
        let first = number::number(word, 0).map_or(f64::NAN, |(value, _)| value);
        let rises = number::scaled(word, first, header.unit.exponent()) > self.last_hz;
        if wraps && !rises && self.kept_line > 0 && self.kept_line + 1 == line.number {
            let size = self.ports.map_or(1, |n| n * n);
            self.frequencies_hz.pop();
            self.s.truncate(self.s.len().saturating_sub(size));
            self.last_hz = self
                .frequencies_hz
                .last()
                .copied()
                .unwrap_or(f64::NEG_INFINITY);
            self.kept_line = 0;
        } else {
            self.seen += 1;
        }
        self.without_frequency(notes, text, line, parsed);
    }

    fn without_frequency(&mut self, notes: &mut Notes, text: &[u8], line: Line, parsed: &Parsed) {
        if let Some((fault, place)) = parsed.fault.clone() {
            return fault_note(notes, text, line, fault, place);
        }
        let (count, need) = (parsed.count, self.need);
        let place = parsed.first.start..trimmed(text, parsed.end);
        notes
            .add(Kind::RowLength, text, line, place, || {
                let wanted = match need {
                    0 => "a frequency and pairs make an odd number".to_owned(),
                    _ => format!("a row has {need}"),
                };
                format!("{count} numbers in the row: {wanted}")
            })
            .understood("the row was left out");
    }

    fn wrong_length(&mut self, notes: &mut Notes, text: &[u8], end: usize) {
        if self.spoilt {
            return;
        }
        let (count, need, ports) = (self.pending.len(), self.need, self.ports.unwrap_or(0));
        let place = self.frequency.start..trimmed(text, end);
        notes
            .add(Kind::RowLength, text, self.line, place, || {
                format!(
                    "{count} numbers in the row: a {ports}-port has {need}, its frequency first"
                )
            })
            .understood("the row was left out")
            .hint(match ports_of(count, MatrixFormat::Full) {
                Some(n) if n != ports => format!("it would be a row of a {n}-port"),
                _ => "a pair of numbers for each parameter".to_owned(),
            });
    }

    /// Ends the pending point, which another one or the end of the data follows.
    fn flush(&mut self, notes: &mut Notes, text: &[u8], header: &Header) {
        let end = self.frequency.end;
        if self.need == 0 {
            match ports_of(self.pending.len(), header.matrix_format) {
                Some(n) => {
                    self.set_ports(n, header);
                    notes
                        .add(
                            Kind::PortsInferred,
                            text,
                            self.line,
                            self.frequency.clone(),
                            || {
                                let count = self.need;
                                format!("{count} numbers in a row: the file is of {n} port(s)")
                            },
                        )
                        .hint(format!("name the file .s{n}p"));
                    self.reserve(
                        end - self.line.start + 16 * self.need,
                        text.len() - self.line.start,
                    );
                    self.seen += 1;
                    self.point(notes, text, header);
                }
                None if self.spoilt => self.seen += 1,
                None => {
                    self.seen += 1;
                    let count = self.pending.len();
                    notes
                        .add(
                            Kind::RowLength,
                            text,
                            self.line,
                            self.frequency.clone(),
                            || {
                                format!(
                                    "{count} numbers in the row: no number of ports has so many"
                                )
                            },
                        )
                        .understood("the row was left out")
                        .hint("1 port has 3 numbers, 2 have 9, 3 have 19");
                }
            }
            return;
        }
        self.seen += 1;
        self.wrong_length(notes, text, line_end(text, end));
    }

    /// Ends the data; `cut` if the file ends here, so that an incomplete point was cut off.
    pub(crate) fn finish(&mut self, notes: &mut Notes, text: &[u8], header: &Header, cut: bool) {
        if self.pending.is_empty() {
            return;
        }
        let short = self.need > 0 && self.pending.len() < self.need && !self.spoilt;
        if cut && short && self.seen > 0 {
            self.seen += 1;
            let (count, need) = (self.pending.len(), self.need);
            let place = self.frequency.start..trimmed(text, text.len());
            notes
                .add(Kind::CutOff, text, self.line, place, || {
                    format!("the file ends after {count} of {need} numbers of a row")
                })
                .understood("the rows before it were read")
                .hint("copy or export the file again");
        } else {
            self.flush(notes, text, header);
        }
        self.pending.clear();
    }

    /// A complete point: its frequency, its numbers, its matrix.
    #[inline]
    fn point(&mut self, notes: &mut Notes, text: &[u8], header: &Header) {
        if self.spoilt {
            return;
        }
        let word = &text[self.frequency.clone()];
        let hz = number::scaled(word, self.pending[0], header.unit.exponent());
        if hz <= self.last_hz || hz < 0.0 || !hz.is_finite() {
            if !self.odd_frequency(notes, text, hz) {
                return;
            }
        } else {
            self.last_hz = hz;
        }
        let n = self.ports.unwrap_or(1);
        let start = self.s.len();
        self.s.resize(start + n * n, Complex64::new(0.0, 0.0));
        let m = &mut self.s[start..];
        let pairs = self.pending[1..].chunks_exact(2);
        match header.format {
            Format::RI => {
                for (k, p) in self.places.iter().zip(pairs) {
                    m[*k] = Complex64::new(p[0], p[1]);
                }
            }
            Format::MA => {
                let mut negative = false;
                for (k, p) in self.places.iter().zip(pairs) {
                    negative |= p[0] < 0.0;
                    m[*k] = polar_deg(p[0], p[1]);
                }
                if negative {
                    self.negative += 1;
                    let place = (self.line, self.frequency.clone());
                    self.first_negative.get_or_insert(place);
                }
            }
            Format::DB => {
                for (k, p) in self.places.iter().zip(pairs) {
                    // a power of two is a tenth quicker than one of ten, and as good to some
                    // units of the last place
                    m[*k] = polar_deg(libm::exp2(p[0] * (core::f64::consts::LOG2_10 / 20.0)), p[1]);
                }
            }
        }
        if header.matrix_format != MatrixFormat::Full {
            for k in &self.places {
                m[(k % n) * n + k / n] = m[*k];
            }
        }
        if header.parameter != Parameter::S && !self.turn_to_s(notes, text, header, start)
            || header.format == Format::DB
                && !self.s[start..].iter().all(|z| z.is_finite())
                && self.overflow(notes, text)
        {
            self.s.truncate(start);
            return;
        }
        // 1.01 leaves room for the uncertainty of an analyser; a DB column above 0 does not (gotcha
        // of files whose format is not the one in the option line)
        if n == 1 && header.parameter == Parameter::S {
            let most = if header.format == Format::DB {
                1.0 + 1e-9
            } else {
                1.01
            };
            if self.s[start].norm_sqr() > most * most {
                self.loud += 1;
                let place = (self.line, self.frequency.clone());
                self.first_loud.get_or_insert(place);
            }
        }
        self.frequencies_hz.push(hz);
    }

    /// A frequency that is negative, repeated or out of order: whether the row can be kept.
    #[cold]
    fn odd_frequency(&mut self, notes: &mut Notes, text: &[u8], hz: f64) -> bool {
        let (line, place) = (self.line, self.frequency.clone());
        let word = shown(&text[place.clone()]);
        if hz < 0.0 || !hz.is_finite() {
            notes
                .add(Kind::FrequencyNegative, text, line, place, || {
                    format!("{word} cannot be a frequency")
                })
                .understood("the row was left out");
            return false;
        }
        if hz == self.last_hz {
            notes
                .add(Kind::FrequencyRepeated, text, line, place, || {
                    format!("the frequency {word} occurs twice")
                })
                .understood("the first row counts");
            return false;
        }
        notes
            .add(Kind::FrequencyOrder, text, line, place, || {
                format!("the frequency {word} is below the one before")
            })
            .understood("the rows were put in order")
            .hint("frequencies increase from row to row");
        self.unsorted = true;
        self.last_hz = hz;
        true
    }

    /// Turns the last matrix into S-parameters; false, with a note, if it has none.
    fn turn_to_s(&mut self, notes: &mut Notes, text: &[u8], header: &Header, start: usize) -> bool {
        let n = self.ports.unwrap_or(1);
        let m = &mut self.s[start..];
        if header.parameter.is_hybrid() && n != 2 {
            return false;
        }
        if header.version == Version::V2 {
            let z0 = match header.reference.as_slice() {
                [one] => vec![*one; n],
                list if list.len() == n => list.to_vec(),
                _ => return false,
            };
            convert::normalise(header.parameter, m, &z0);
        }
        if convert::s_from_normalised(header.parameter, m, n) {
            return true;
        }
        let letter = header.parameter.letter();
        notes
            .add(
                Kind::MatrixSingular,
                text,
                self.line,
                self.frequency.clone(),
                || format!("these {letter}-parameters have no S-parameters"),
            )
            .understood("the row was left out");
        false
    }

    /// A level so high that its magnitude is no finite number.
    fn overflow(&mut self, notes: &mut Notes, text: &[u8]) -> bool {
        notes
            .add(
                Kind::NotFinite,
                text,
                self.line,
                self.frequency.clone(),
                || "a level of thousands of dB stands in the row".to_owned(),
            )
            .understood("the row was left out");
        true
    }
}

/// The end of the line that holds `at`, without the line break.
fn line_end(text: &[u8], at: usize) -> usize {
    let rest = &text[at..];
    at + rest.iter().position(|b| *b == b'\n').unwrap_or(rest.len())
}

/// `end` without the blanks before it.
fn trimmed(text: &[u8], end: usize) -> usize {
    let blanks = text[..end]
        .iter()
        .rev()
        .take_while(|b| b.is_ascii_whitespace())
        .count();
    end - blanks
}
