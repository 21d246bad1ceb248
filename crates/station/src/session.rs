//! What a bench session says: pieces of cable, and readings in the order of time.

use downlead_base::Loc;
use downlead_quantity::Measure;

use crate::model::{BandRef, Figure, Line, LineLength, Meta, Name, Part, PartData};

/// Cables on the bench: readings without and with each of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// Its name.
    pub name: Name,
    /// Where its head stands.
    pub loc: Loc,
    /// Title.
    pub title: Option<Box<str>>,
    /// When, with what, by whom: what holds for every reading that does not say otherwise.
    pub meta: Meta,
    /// Where that stands.
    pub meta_loc: Option<Loc>,
    /// Temperature of the bench, °C.
    pub temperature: Option<Measure>,
    /// How much of the step between two baselines a straight line may miss, a share (half-width).
    pub step_share: Option<f64>,
    /// How much the transmitter may drift where the baseline was read once, a share a minute
    /// (half-width).
    pub drift_per_minute: Option<f64>,
    /// Match of the load, as SWR.
    pub load: Match,
    /// Match of the generator, as SWR.
    pub generator: Match,
    /// The pieces.
    pub pieces: Box<[Piece]>,
    /// Readings written here.
    pub groups: Box<[Readings]>,
    /// Readings of other files.
    pub imports: Box<[Import]>,
    /// Readings of electrical length.
    pub lengths: Box<[LengthReading]>,
}

/// Match of one end of the bench.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Match {
    /// SWR, always or by band.
    pub swr: Box<[Figure]>,
    /// Measured: a one-port network file.
    pub file: Option<Name>,
}

/// A piece of cable on the bench.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Its tag.
    pub name: Name,
    /// Where its line stands.
    pub loc: Loc,
    /// Length and cable, at the temperature of the bench unless it says otherwise.
    pub part: Part,
    /// Joins that come into the line with the piece.
    pub connectors: Box<[(u32, Name)]>,
}

impl Piece {
    /// Length and cable.
    #[must_use]
    pub fn line(&self) -> Option<&Line> {
        match &self.part.data {
            PartData::Line(l) => Some(l),
            _ => None,
        }
    }

    /// Length with its standard uncertainty, m; none where a loss is given instead, or the
    /// length in wavelengths.
    #[must_use]
    pub fn metres(&self) -> Option<Measure> {
        match self.line()?.length? {
            LineLength::Metres(m) => Some(m),
            LineLength::Wavelengths { .. } => None,
        }
    }
}

/// Readings on one band.
#[derive(Clone, Debug, PartialEq)]
pub struct Readings {
    /// The band or frequency.
    pub on: BandRef,
    /// Where the head stands.
    pub loc: Loc,
    /// The readings, in the order of the text.
    pub rows: Box<[Reading]>,
}

/// What was in the line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReadingKind {
    /// The line without the piece.
    Baseline,
    /// The piece in the line.
    Through,
    /// Looking into the piece, its far end open.
    Open,
    /// Looking into the piece, its far end shorted.
    Short,
    /// Two meters one behind the other, to find what they differ by.
    Equalise,
}

impl ReadingKind {
    /// All kinds.
    pub const ALL: [ReadingKind; 5] = [
        ReadingKind::Baseline,
        ReadingKind::Through,
        ReadingKind::Open,
        ReadingKind::Short,
        ReadingKind::Equalise,
    ];

    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            ReadingKind::Baseline => "baseline",
            ReadingKind::Through => "through",
            ReadingKind::Open => "open",
            ReadingKind::Short => "short",
            ReadingKind::Equalise => "equalise",
        }
    }

    /// Whether it names a piece.
    #[must_use]
    pub fn of_piece(self) -> bool {
        matches!(
            self,
            ReadingKind::Through | ReadingKind::Open | ReadingKind::Short
        )
    }
}

/// What the instrument showed.
#[derive(Clone, Debug, PartialEq)]
pub enum Shown {
    /// Power, W.
    Watts(f64),
    /// Loss against the instrument's own reference, dB (positive is loss).
    Loss(f64),
    /// Return loss, dB.
    ReturnLoss(f64),
    /// A network file.
    File(Name),
}

/// One reading of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// What was in the line.
    pub kind: ReadingKind,
    /// The piece.
    pub piece: Option<Name>,
    /// What was shown.
    pub shown: Shown,
    /// Where the value stands (for an imported reading, the `readings` line).
    pub value_loc: Loc,
    /// Reflected power shown with it, W.
    pub reflected_w: Option<f64>,
    /// Power shown by another meter at the near end, W, and that meter.
    pub input: Option<(f64, Option<Name>)>,
    /// Time since the session began, minutes.
    pub minutes: Option<f64>,
    /// Adapters in the line.
    pub adapters: Box<[(u32, Name)]>,
    /// Instrument, where it is not the session's.
    pub instrument: Option<Name>,
    /// Where the line stands.
    pub loc: Loc,
}

/// `readings from "FILE"`.
#[derive(Clone, Debug, PartialEq)]
pub struct Import {
    /// The path.
    pub file: Name,
    /// Instrument, where it is not the session's.
    pub instrument: Option<Name>,
    /// Where the line stands.
    pub loc: Loc,
}

/// How an electrical length was found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LengthBy {
    /// Distance between resonances of the open or shorted piece, Hz.
    Resonance(Measure),
    /// One-way delay, s.
    Delay(Measure),
    /// Slope of the reflection's phase, degrees per Hz.
    Phase(Measure),
}

/// A reading of electrical length.
#[derive(Clone, Debug, PartialEq)]
pub struct LengthReading {
    /// The piece.
    pub piece: Name,
    /// What was read.
    pub by: LengthBy,
    /// Where the line stands.
    pub loc: Loc,
}
