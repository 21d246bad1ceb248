//! What a bench session comes to.

use downlead_base::Loc;
use downlead_physics::measure::{
    Comparison, Drift, FitError, Length, Loss, LossFit, PerLength, Source, SwrReading, Tape, Term,
    WholeCable,
};
use downlead_station::session::ReadingKind;

use crate::assume::Assumed;

/// How the loss of a piece was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    /// One meter behind the piece, against readings without it.
    Substitution,
    /// Baseline and piece read with two meters.
    OtherMeter {
        /// Whether the two were read one after the other in line.
        equalised: bool,
    },
    /// A meter at each end.
    TwoMeters {
        /// Whether the two were read one behind the other.
        equalised: bool,
    },
    /// Return loss with the far end open and shorted.
    OpenShort,
    /// The same from complex reflections: exact for any impedance.
    OpenShortExact,
    /// Return loss with one of them only.
    OneEnd,
    /// Transmission of a network file.
    Network,
}

impl Method {
    /// Whether it tells the loss between matched ends.
    #[must_use]
    pub fn matched(self) -> bool {
        matches!(
            self,
            Method::OpenShort | Method::OpenShortExact | Method::OneEnd
        )
    }

    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Method::Substitution => "substitution, one meter",
            Method::OtherMeter { equalised: true } => "substitution, two meters, equalised",
            Method::OtherMeter { equalised: false } => "substitution, two meters",
            Method::TwoMeters { equalised: true } => "a meter at each end, equalised",
            Method::TwoMeters { equalised: false } => "a meter at each end",
            Method::OpenShort => "open and short",
            Method::OpenShortExact => "open and short, complex",
            Method::OneEnd => "open or short only",
            Method::Network => "network file",
        }
    }
}

/// What a piece should lose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expected {
    /// Cable and joins, dB: between the ends of the bench, with the reflections of a cable that is
    /// not 50 ohm; between matched ends where that is what was measured.
    pub db: f64,
    /// Its standard uncertainty, dB.
    pub u_db: f64,
    /// Cable and joins between matched ends, dB.
    pub matched_db: f64,
    /// Standard uncertainty of that, dB.
    pub u_matched_db: f64,
    /// The joins' part, dB.
    pub joins_db: f64,
    /// Standard uncertainty of that, dB.
    pub u_joins_db: f64,
    /// Whether the cable's figures are guaranteed maxima.
    pub maximum: bool,
    /// Size of the piece's own reflection at each end: the one it states, else that of its impedance
    /// against 50 ohm and of its joins.
    pub reflection: f64,
    /// Size of what the whole piece reflects in circuit: both its ends, added up by its length; the one
    /// it states where it does.
    pub inserted: f64,
}

impl Expected {
    /// The same between matched ends.
    #[must_use]
    pub fn between_matched_ends(self) -> Self {
        Expected {
            db: self.matched_db,
            u_db: self.u_matched_db,
            reflection: 0.0,
            inserted: 0.0,
            ..self
        }
    }

    /// What reflections at the ends of the piece add to its loss, dB.
    #[must_use]
    pub fn mismatch_db(&self) -> f64 {
        self.db - self.matched_db
    }

    /// Standard uncertainty of that beyond the loss between matched ends, dB.
    #[must_use]
    pub fn u_mismatch_db(&self) -> f64 {
        let beyond = self.u_db * self.u_db - self.u_matched_db * self.u_matched_db;
        libm::sqrt(beyond.max(0.0))
    }
}

/// One piece on one band.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchCell {
    /// Index of the piece.
    pub piece: usize,
    /// Index of the band.
    pub band: usize,
    /// How the loss was found.
    pub method: Method,
    /// Lines of the readings it rests on (for imported ones the `readings` line).
    pub rows: Box<[Loc]>,
    /// Number of readings of the piece.
    pub count: usize,
    /// Power behind the piece, W, and when, min; of a reading of power.
    pub reading: Option<(f64, f64)>,
    /// Measured loss.
    pub measured: Loss,
    /// What its uncertainty consists of, largest first.
    pub budget: Box<[Term]>,
    /// Expected loss; none if the cable is not known.
    pub expected: Option<Expected>,
    /// The two compared; none where a reading looks like a slip.
    pub comparison: Option<Comparison>,
    /// Whether a reading it rests on looks like a slip: it takes no part in what is said of the piece.
    pub slip: bool,
    /// How many times as long the piece must be to tell; none if it can or never could.
    pub length_factor: Option<f64>,
    /// Measured loss per length, joins taken off.
    pub per_length: Option<PerLength>,
    /// Of several readings, the loss of each, dB, and whether the meters were exchanged.
    pub losses: Box<[(f64, bool)]>,
    /// Difference of half the return losses, open less short, dB.
    pub half_difference_db: Option<f64>,
}

/// One band of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchBand {
    /// Name, or the frequency as written.
    pub band: Box<str>,
    /// Whether it is the name of a band of the text.
    pub named: bool,
    /// Hz.
    pub hz: f64,
    /// Baselines by time: W, min.
    pub baselines: Box<[(f64, f64)]>,
    /// Drift of the baselines; none without.
    pub drift: Option<Drift>,
    /// Pieces by loss per length, rising: indices of cells, and the group of those that cannot
    /// be distinguished.
    pub ranking: Box<[(usize, usize)]>,
}

/// A piece as a whole.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchPiece {
    /// Its tag.
    pub name: Box<str>,
    /// Where the tag stands.
    pub tag: Loc,
    /// Its line.
    pub loc: Loc,
    /// Cable name.
    pub cable: Box<str>,
    /// Length and standard uncertainty, m.
    pub length_m: Option<(f64, f64)>,
    /// Temperature, °C.
    pub celsius: f64,
    /// Weighted ratio of measured to expected over the bands.
    pub whole: Option<WholeCable>,
    /// Cell of the worst band of `whole`.
    pub worst: Option<usize>,
    /// The two coefficients from its readings.
    pub fit: Option<Result<LossFit, FitError>>,
    /// Largest standard uncertainty of the joins over the cable's own loss, where that can be
    /// trusted: common to all points of the fit, and in it.
    pub joins_share: f64,
    /// Bands (indices) the fit rests on.
    pub fit_bands: Box<[usize]>,
    /// Readings of its electrical length, against the tape.
    pub lengths: Box<[(Loc, Length, Option<Tape>)]>,
}

/// What is shown beside the line of one reading.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchRow {
    /// Its line.
    pub loc: Loc,
    /// Kind.
    pub kind: ReadingKind,
    /// Index of the band.
    pub band: usize,
    /// Index of the cell it belongs to.
    pub cell: Option<usize>,
    /// Power against the first baseline of the band, dB (baselines).
    pub against_first_db: Option<f64>,
    /// SWR from forward and reflected power.
    pub swr: Option<SwrReading>,
}

/// The SWR of one reading of forward and reflected power, imported ones too.
#[derive(Clone, Debug, PartialEq)]
pub struct BenchSwr {
    /// Kind of the reading.
    pub kind: ReadingKind,
    /// Index of the piece.
    pub piece: Option<usize>,
    /// Index of the band.
    pub band: usize,
    /// Looking on from the meter.
    pub swr: SwrReading,
    /// Its line (of an imported one the `readings` line).
    pub loc: Loc,
    /// Path and line of the file it was imported from.
    pub from: Option<(Box<str>, u64)>,
}

/// A session computed.
#[derive(Clone, Debug, PartialEq)]
pub struct SessionResult {
    /// Its name.
    pub name: Loc,
    /// Its head.
    pub loc: Loc,
    /// Bands in the order they appear.
    pub bands: Box<[BenchBand]>,
    /// Pieces in the order of the text.
    pub pieces: Box<[BenchPiece]>,
    /// Cells by band, then piece.
    pub cells: Box<[BenchCell]>,
    /// Readings written in the text.
    pub rows: Box<[BenchRow]>,
    /// Standing-wave ratios, in the order of the readings on each band.
    pub swrs: Box<[BenchSwr]>,
    /// Number of readings taken, imported ones with them.
    pub readings: usize,
    /// Number of imported rows that could not be taken.
    pub lost: usize,
    /// Names of the instruments, by the number in [`Term`]s.
    pub meters: Box<[Box<str>]>,
    /// Assumptions.
    pub(crate) assumptions: Box<[(Assumed, Loc)]>,
}

impl BenchCell {
    /// Measured loss between matched ends, dB: what a cable's sheet states.
    #[must_use]
    pub fn matched_db(&self) -> f64 {
        self.measured.db - self.expected.map_or(0.0, |e| e.mismatch_db())
    }

    /// Standard uncertainty of that, dB.
    #[must_use]
    pub fn u_matched_db(&self) -> f64 {
        let u = self.expected.map_or(0.0, |e| e.u_mismatch_db());
        // of few readings the interval is wider than two standard uncertainties
        libm::hypot(0.5 * self.measured.expanded_db, u)
    }
}

impl BenchCell {
    /// Whether how the baseline changed meanwhile is more of the uncertainty than all the rest.
    #[must_use]
    pub fn drift_prevails(&self) -> bool {
        let of = |drift: bool| -> f64 {
            self.budget
                .iter()
                .filter(|t| matches!(t.source, Source::Drift(_)) == drift)
                .map(|t| t.u_db * t.u_db)
                .sum()
        };
        of(true) > of(false)
    }
}

impl SessionResult {
    /// The cell of a piece on a band.
    #[must_use]
    pub fn cell(&self, piece: usize, band: usize) -> Option<&BenchCell> {
        self.cells
            .iter()
            .find(|c| c.piece == piece && c.band == band)
    }
}
