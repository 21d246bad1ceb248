//! Two states of a file compared.

use downlead_eval::result::Verdict;

/// Differences below this are rounding, dB.
pub const SAME_DB: f64 = 0.005;

/// Something before and after; none where it was not there.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair<T> {
    /// Then.
    pub old: Option<T>,
    /// Now.
    pub new: Option<T>,
}

impl<T> Pair<T> {
    /// Both, if it was there then and is there now.
    #[must_use]
    pub fn both(&self) -> Option<(&T, &T)> {
        self.old.as_ref().zip(self.new.as_ref())
    }
}

/// What differs between two states of a file.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Comparison {
    /// Whether the texts of the file and of all it uses are the same to the byte.
    pub same_text: bool,
    /// All chains of both states, those of the new one first, in the order of the text.
    pub chains: Vec<ChainChange>,
    /// Definitions that differ outside the chains' own parts: cables, bands, places, ….
    pub definitions: Vec<DefinitionChange>,
    /// Errors and warnings that came, and that went: code and message.
    pub findings: Vec<FindingChange>,
}

/// A chain in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct ChainChange {
    /// `STATION/CHAIN`, or the chain alone.
    pub name: String,
    /// Word for its direction: then, now.
    pub direction: Pair<&'static str>,
    /// The frequencies at which it is computed.
    pub bands: Vec<BandChange>,
}

/// A chain at one frequency in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct BandChange {
    /// Band, with `low`, `middle` or `high` of a range.
    pub band: String,
    /// Figures, if it was there.
    pub figures: Pair<Figures>,
    /// Parts that came, went, are written otherwise or lose another amount.
    pub parts: Vec<PartChange>,
    /// Parts that have another name and are the same otherwise: then, now.
    pub renamed: Vec<(String, String)>,
    /// Whether the parts that stayed stand in another order.
    pub reordered: bool,
    /// Limits, all of both states.
    pub limits: Vec<LimitChange>,
}

/// The figures of a chain at one frequency.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figures {
    /// Hz.
    pub hz: f64,
    /// Whether all parts could be computed.
    pub complete: bool,
    /// Loss of the chain, dB; none, like what follows from it, where a part could not be computed.
    pub loss_db: Option<f64>,
    /// Power of the transmitter into the chain, W.
    pub transmitter_w: Option<f64>,
    /// Gain of the antenna, dBi.
    pub gain_dbi: Option<f64>,
    /// ERP, W.
    pub erp_w: Option<f64>,
    /// EIRP, W.
    pub eirp_w: Option<f64>,
    /// Receive: sensitivity at the antenna, dBm.
    pub sensitivity_dbm: Option<f64>,
    /// SWR at the beginning.
    pub swr: Option<f64>,
    /// Expanded uncertainty (k = 2) of the result, dB.
    pub uncertainty_db: Option<f64>,
}

/// A part of a chain in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct PartChange {
    /// Tag with port, or kind; a number tells untagged ones of a kind apart.
    pub name: String,
    /// As written, and its loss in dB if that is known.
    pub state: Pair<(String, Option<f64>)>,
}

impl PartChange {
    /// By how much its loss grew, dB, if that is known. A part that is not there loses nothing.
    #[must_use]
    pub fn added_db(&self) -> Option<f64> {
        let loss = |x: &Option<(String, Option<f64>)>| x.as_ref().map_or(Some(0.0), |s| s.1);
        Some(loss(&self.state.new)? - loss(&self.state.old)?)
    }
}

/// A limit in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct LimitChange {
    /// `erp`, `eirp` or `output`.
    pub quantity: &'static str,
    /// How it stands.
    pub state: Pair<LimitState>,
}

/// How a limit stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LimitState {
    /// Limit, W.
    pub limit_w: f64,
    /// Margin, dB.
    pub margin_db: f64,
    /// Its uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// Verdict.
    pub verdict: Verdict,
}

/// A definition in both states.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DefinitionChange {
    /// `cable club-foam`, of a station `hill: place mast`.
    pub name: String,
    /// Whether it was there.
    pub was: bool,
    /// Whether it is there.
    pub is: bool,
}

/// A finding that came or went.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FindingChange {
    /// Whether it is new.
    pub new: bool,
    /// Code of the diagnostics table.
    pub code: &'static str,
    /// Its message, first line.
    pub message: String,
}
