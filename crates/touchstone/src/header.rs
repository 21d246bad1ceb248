//! The option line and the words of the header: what the numbers of a file mean.

use crate::convert::Parameter;
use crate::note::{Kind, Line, Notes, Words};
use crate::number;

/// Frequency units of the option line.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Unit {
    /// Hertz.
    Hz,
    /// Kilohertz.
    KHz,
    /// Megahertz.
    MHz,
    /// Gigahertz, the unit of a file that names none.
    #[default]
    GHz,
}

impl Unit {
    /// As it is written in the option line.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Unit::Hz => "Hz",
            Unit::KHz => "kHz",
            Unit::MHz => "MHz",
            Unit::GHz => "GHz",
        }
    }

    /// The power of ten in hertz.
    #[must_use]
    pub fn exponent(self) -> i32 {
        match self {
            Unit::Hz => 0,
            Unit::KHz => 3,
            Unit::MHz => 6,
            Unit::GHz => 9,
        }
    }
}

/// Notation of a complex number.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Format {
    /// Magnitude and angle in degrees.
    #[default]
    MA,
    /// 20·log10 of the magnitude, and angle in degrees.
    DB,
    /// Real and imaginary part.
    RI,
}

impl Format {
    /// As it is written in the option line.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Format::MA => "MA",
            Format::DB => "DB",
            Format::RI => "RI",
        }
    }
}

/// Version of the file format.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Version {
    /// 1.0 and 1.1: an option line and rows; Z, Y, H and G normalised to the reference.
    #[default]
    V1,
    /// 2.0 and 2.1: keywords in brackets; Z, Y, H and G in ohm and siemens.
    V2,
}

/// Order of the numbers of a two-port.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum TwoPortOrder {
    /// N11 N21 N12 N22, as version 1 always has it.
    #[default]
    N21First,
    /// N11 N12 N21 N22.
    N12First,
}

/// Which elements of the matrix are in the file.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum MatrixFormat {
    /// All.
    #[default]
    Full,
    /// The diagonal and what is below it; the matrix is symmetric.
    Lower,
    /// The diagonal and what is above it; the matrix is symmetric.
    Upper,
}

/// The header of a file, with defaults for missing options.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Header {
    /// Version of the format.
    pub version: Version,
    /// Number of ports; `None` if it is not known.
    pub ports: Option<usize>,
    /// Unit of the frequencies.
    pub unit: Unit,
    /// True if the file names no unit, so that GHz was taken: worth a warning where the
    /// frequencies come out in no band of the station.
    pub unit_defaulted: bool,
    /// True if the option line has a word that is not known and none that states the notation: the
    /// numbers cannot be used.
    pub format_unknown: bool,
    /// The network parameters.
    pub parameter: Parameter,
    /// Their notation.
    pub format: Format,
    /// References as written, ohm: one for all ports, or one a port. Empty if they could not be
    /// read.
    pub reference: Vec<f64>,
    /// True if the file gives no reference, so that 50 ohm was taken.
    pub reference_defaulted: bool,
    /// Order of a two-port's numbers.
    pub two_port_order: TwoPortOrder,
    /// Which elements are in the file.
    pub matrix_format: MatrixFormat,
    /// The text of the comments before the first row, one a line.
    pub comments: Vec<String>,
}

/// The options of the option line, each once.
#[derive(Default)]
struct Options {
    unit: Option<Unit>,
    parameter: Option<Parameter>,
    format: Option<Format>,
    reference: Option<Vec<f64>>,
}

/// A word and its place in the file.
pub(crate) type Word<'a> = (&'a [u8], std::ops::Range<usize>);

/// The words from `at` to the end of the line or a comment.
pub(crate) fn words(text: &[u8], mut at: usize, end: usize) -> Vec<Word<'_>> {
    let mut out = Vec::new();
    while at < end {
        if text[at] == b'!' {
            break;
        }
        if number::ends(text.get(at)) {
            at += 1;
            continue;
        }
        let stop = number::word_end(text, at).min(end);
        out.push((&text[at..stop], at..stop));
        at = stop;
    }
    out
}

/// Bytes as text, shortened for a message.
pub(crate) fn shown(word: &[u8]) -> String {
    let text = String::from_utf8_lossy(&word[..word.len().min(80)]);
    let mut out: String = text.chars().filter(|c| !c.is_control()).take(24).collect();
    if out.len() < text.len() || word.len() > 80 {
        out.push('…');
    }
    out
}

fn same<T: PartialEq + Copy>(slot: &mut Option<T>, value: T) -> bool {
    let fits = slot.is_none_or(|old| old == value);
    slot.get_or_insert(value);
    fits
}

impl Options {
    /// Takes a word other than `R`: whether it is known, and whether it fits the others.
    fn word(&mut self, lower: &[u8]) -> Option<bool> {
        Some(match lower {
            b"hz" => same(&mut self.unit, Unit::Hz),
            b"khz" => same(&mut self.unit, Unit::KHz),
            b"mhz" => same(&mut self.unit, Unit::MHz),
            b"ghz" => same(&mut self.unit, Unit::GHz),
            b"s" => same(&mut self.parameter, Parameter::S),
            b"z" => same(&mut self.parameter, Parameter::Z),
            b"y" => same(&mut self.parameter, Parameter::Y),
            b"h" => same(&mut self.parameter, Parameter::H),
            b"g" => same(&mut self.parameter, Parameter::G),
            b"ma" => same(&mut self.format, Format::MA),
            b"db" => same(&mut self.format, Format::DB),
            b"ri" => same(&mut self.format, Format::RI),
            _ => return None,
        })
    }
}

impl Header {
    pub(crate) fn new() -> Header {
        Header {
            unit_defaulted: true,
            format_unknown: false,
            reference_defaulted: true,
            reference: vec![50.0],
            ..Header::default()
        }
    }

    /// Reads the option line that begins with `#` at `at`: its words in any order, any missing.
    pub(crate) fn option_line(
        &mut self,
        notes: &mut Notes,
        text: &[u8],
        line: Line,
        (at, end): (usize, usize),
    ) {
        let mut said = Options::default();
        let mut unknown = false;
        let list = words(text, at + 1, end);
        let mut rest = list.iter().peekable();
        while let Some((word, place)) = rest.next() {
            let lower = word.to_ascii_lowercase();
            if lower == b"r" {
                let mut values = Vec::new();
                while let Some(next) = rest.next_if(|(w, _)| is_numeric(w)) {
                    values.push(next.clone());
                }
                if values.is_empty() {
                    notes
                        .add(Kind::ReferenceMissing, text, line, place.clone(), || {
                            "`R` stands without a resistance".to_owned()
                        })
                        .understood("50 ohm was taken")
                        .hint("write `R 50`");
                    continue;
                }
                said.reference = Some(references(notes, text, line, &values));
                continue;
            }
            if let Some(glued) = lower.strip_prefix(b"r").filter(|g| is_numeric(g)) {
                let value = (&word[word.len() - glued.len()..], place.clone());
                said.reference = Some(references(notes, text, line, &[value]));
                continue;
            }
            match said.word(&lower) {
                Some(true) => {}
                Some(false) => {
                    notes
                        .add(Kind::OptionContradicts, text, line, place.clone(), || {
                            format!("`{}` contradicts what stands before it", shown(word))
                        })
                        .understood("the first counts");
                }
                None => {
                    unknown = true;
                    notes
                        .add(Kind::OptionUnknown, text, line, place.clone(), || {
                            format!("the option line does not know `{}`", shown(word))
                        })
                        .understood("it was passed over")
                        .hint("a unit (Hz kHz MHz GHz), S Y Z G H, MA DB RI, and R with ohms");
                }
            }
        }
        if said.unit.is_none() {
            notes
                .add(Kind::UnitDefaulted, text, line, at..at + 1, || {
                    "the option line names no frequency unit".to_owned()
                })
                .understood("GHz was taken, as the format says")
                .hint("write for instance `# MHz S RI R 50`");
        }
        // an unknown word may have been meant for the format that no other word states
        self.format_unknown = unknown && said.format.is_none();
        self.unit_defaulted = said.unit.is_none();
        self.unit = said.unit.unwrap_or_default();
        self.parameter = said.parameter.unwrap_or_default();
        self.format = said.format.unwrap_or_default();
        if let Some(reference) = said.reference {
            self.reference_defaulted = false;
            self.reference = reference;
        }
    }
}

/// True if a word was meant as a number, a complex one too.
fn is_numeric(word: &[u8]) -> bool {
    let first = word
        .iter()
        .find(|b| !matches!(b, b'+' | b'-' | b'(' | b'.'));
    first.is_some_and(u8::is_ascii_digit)
        || number::number(word, 0).is_err_and(|(f, _)| f == number::Fault::NotFinite)
}

/// Reference resistances; empty with a note if one is not a positive number.
pub(crate) fn references(
    notes: &mut Notes,
    text: &[u8],
    line: Line,
    list: &[Word<'_>],
) -> Vec<f64> {
    let mut out = Vec::with_capacity(list.len());
    for (word, place) in list {
        match number::number(word, 0) {
            Ok((ohm, _)) if ohm > 0.0 => out.push(ohm),
            _ if word
                .iter()
                .any(|b| matches!(b, b'j' | b'J' | b'i' | b'I' | b'('))
                && word.iter().any(u8::is_ascii_digit) =>
            {
                notes
                    .add(Kind::ReferenceComplex, text, line, place.clone(), || {
                        format!("the reference {} is complex", shown(word))
                    })
                    .understood("the format has real references only; nothing was guessed")
                    .hint("let the program that wrote the file renormalise it to 50 ohm");
                return Vec::new();
            }
            _ => {
                notes
                    .add(Kind::ReferenceInvalid, text, line, place.clone(), || {
                        format!(
                            "the reference {} is not a resistance above zero",
                            shown(word)
                        )
                    })
                    .understood("without a reference the data mean nothing")
                    .hint("write for instance `R 50`");
                return Vec::new();
            }
        }
    }
    out
}
