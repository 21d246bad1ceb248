//! Findings of the reader: what is wrong, where, what was understood, what to write instead.

use std::fmt;
use std::ops::Range;

/// Severity of a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth knowing; nothing is lost.
    Info,
    /// The data were read, but something was assumed or looks wrong.
    Warning,
    /// Something was left out: a row, or the whole network.
    Error,
}

impl Severity {
    /// Lower-case name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Severity::Info => "information",
            Severity::Warning => "warning",
            Severity::Error => "error",
        }
    }
}

macro_rules! kinds {
    ($($(#[$doc:meta])+ $name:ident $severity:ident $id:literal;)+) => {
        /// The kinds of findings. Names are stable.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[non_exhaustive]
        pub enum Kind { $($(#[$doc])+ $name,)+ }

        impl Kind {
            /// All kinds, in the order of the table.
            pub const ALL: &[Kind] = &[$(Kind::$name),+];

            /// Stable kebab-case name.
            #[must_use]
            pub fn id(self) -> &'static str {
                match self { $(Kind::$name => $id,)+ }
            }

            /// Severity.
            #[must_use]
            pub fn severity(self) -> Severity {
                match self { $(Kind::$name => Severity::$severity,)+ }
            }
        }
    };
}

kinds! {
    /// The text is in an encoding other than ASCII or UTF-8.
    Encoding Error "encoding";
    /// There is no row that could be used.
    NoData Error "no-data";
    /// There is no option line: what the numbers mean is not known.
    OptionLineMissing Error "option-line-missing";
    /// A second option line, or one after the data; only the first counts.
    OptionLineRepeated Warning "option-line-repeated";
    /// A word of the option line that is not known.
    OptionUnknown Error "option-unknown";
    /// Two words of the option line contradict each other; the first counts.
    OptionContradicts Warning "option-contradicts";
    /// The option line names no frequency unit; GHz was taken.
    UnitDefaulted Info "unit-defaulted";
    /// `R` without a number; 50 ohm was taken.
    ReferenceMissing Warning "reference-missing";
    /// A reference resistance that is not a positive number.
    ReferenceInvalid Error "reference-invalid";
    /// A complex reference impedance, which the format does not have.
    ReferenceComplex Error "reference-complex";
    /// The number of reference resistances is not the number of ports.
    ReferenceCount Error "reference-count";
    /// Comments give port impedances that differ from the reference of the file.
    ImpedanceInComment Warning "impedance-in-comment";
    /// A version this reader does not know.
    VersionUnknown Warning "version-unknown";
    /// Keywords of version 2 without `[Version] 2.0`.
    VersionMissing Warning "version-missing";
    /// A keyword that is not known, or has no closing bracket.
    KeywordUnknown Warning "keyword-unknown";
    /// A keyword whose value is missing or cannot be read.
    KeywordValue Error "keyword-value";
    /// A keyword the specification requires is missing.
    KeywordMissing Warning "keyword-missing";
    /// The order of the elements of a two-port is not stated, and its rows depend on it.
    OrderUnknown Error "order-unknown";
    /// The number of ports is not known and does not follow from the rows.
    PortsUnknown Error "ports-unknown";
    /// The number of ports was derived from the length of the rows.
    PortsInferred Info "ports-inferred";
    /// The number of ports from the file's name is not that of the data.
    PortsMismatch Warning "ports-mismatch";
    /// More ports than can be, or none.
    PortsImpossible Error "ports-impossible";
    /// Hybrid parameters of a network that has not two ports.
    HybridPorts Error "hybrid-ports";
    /// Mixed-mode parameters, which are not supported.
    MixedMode Error "mixed-mode";
    /// A row has a word that is not a number; the row is skipped.
    NotANumber Error "not-a-number";
    /// A number in a row is infinite or "not a number"; the row is left out.
    NotFinite Error "not-finite";
    /// A row has too many or too few numbers; it is left out.
    RowLength Error "row-length";
    /// The file ends in the middle of a row.
    CutOff Error "cut-off";
    /// A negative frequency; the row is left out.
    FrequencyNegative Error "frequency-negative";
    /// Frequencies do not increase; the rows were sorted.
    FrequencyOrder Warning "frequency-order";
    /// A frequency occurs twice; the first row counts.
    FrequencyRepeated Warning "frequency-repeated";
    /// A matrix that has no S-parameters; the row is left out.
    MatrixSingular Error "matrix-singular";
    /// The numbers look like another format than the one declared.
    WrongFormat Warning "wrong-format";
    /// The number of rows is not the one the file announces.
    RowCount Warning "row-count";
    /// A row of the noise table that cannot be read.
    NoiseRow Warning "noise-row";
    /// Numbers outside the data.
    StrayData Warning "stray-data";
    /// A file of version 2 without `[End]`.
    EndMissing Warning "end-missing";
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// Its kind.
    pub kind: Kind,
    /// Severity.
    pub severity: Severity,
    /// Line, the first being 1.
    pub line: usize,
    /// Column in characters, the first being 1.
    pub column: usize,
    /// Byte range in the file as given to the reader.
    pub bytes: Range<usize>,
    /// One sentence: what is wrong.
    pub message: String,
    /// The interpretation used.
    pub understood: Option<String>,
    /// The text to write instead.
    pub hint: Option<String>,
    /// Number of further findings of this kind that are not listed.
    pub more: usize,
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (line, column, severity) = (self.line, self.column, self.severity.name());
        write!(f, "{line}:{column}: {severity}: {}", self.message)?;
        if let Some(understood) = &self.understood {
            write!(f, "; {understood}")?;
        }
        if let Some(hint) = &self.hint {
            write!(f, " ({hint})")?;
        }
        if self.more > 0 {
            write!(f, " [and {} more of this kind]", self.more)?;
        }
        Ok(())
    }
}

/// Largest number of findings of one kind that are listed.
const LISTED: usize = 10;

/// Gathers findings; a file of a million bad rows gives a handful.
#[derive(Debug, Default)]
pub(crate) struct Notes {
    list: Vec<Note>,
}

/// A line of the file: its number (from 1) and where it begins.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Line {
    pub(crate) number: usize,
    pub(crate) start: usize,
}

impl Notes {
    /// Adds a finding; `None` if its kind is listed often enough already.
    pub(crate) fn add(
        &mut self,
        kind: Kind,
        text: &[u8],
        line: Line,
        bytes: Range<usize>,
        message: impl FnOnce() -> String,
    ) -> Option<&mut Note> {
        let mut same = self.list.iter_mut().filter(|n| n.kind == kind);
        let count = same.by_ref().count();
        if count >= LISTED {
            let last = self.list.iter_mut().rev().find(|n| n.kind == kind)?;
            last.more += 1;
            return None;
        }
        let before = text.get(line.start..bytes.start).unwrap_or_default();
        let characters = before.iter().filter(|b| **b & 0xC0 != 0x80).count();
        self.list.push(Note {
            kind,
            severity: kind.severity(),
            line: line.number,
            column: characters + 1,
            bytes,
            message: message(),
            understood: None,
            hint: None,
            more: 0,
        });
        self.list.last_mut()
    }

    /// All findings in the order of their places.
    pub(crate) fn finish(mut self) -> Vec<Note> {
        self.list.sort_by_key(|n| n.bytes.start);
        self.list
    }
}

/// Adds words to a finding that may not be listed.
pub(crate) trait Words {
    /// The interpretation used.
    fn understood(self, words: impl Into<String>) -> Self;
    /// The text to write instead.
    fn hint(self, words: impl Into<String>) -> Self;
}

impl Words for Option<&mut Note> {
    fn understood(mut self, words: impl Into<String>) -> Self {
        if let Some(n) = &mut self {
            n.understood = Some(words.into());
        }
        self
    }

    fn hint(mut self, words: impl Into<String>) -> Self {
        if let Some(n) = &mut self {
            n.hint = Some(words.into());
        }
        self
    }
}
