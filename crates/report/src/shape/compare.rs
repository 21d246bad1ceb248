//! Two states of a file compared.

use downlead_eval::difference::Moved;
use downlead_eval::facts::Differs;
use downlead_eval::licence::RuleVerdict;
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
    /// Stations of both states.
    pub stations: Vec<StationChange>,
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
    /// The station; empty for a chain by itself.
    pub station: String,
    /// Word for its direction: then, now.
    pub direction: Pair<&'static str>,
    /// The frequencies it is evaluated at; none of a chain in which nothing can have changed.
    pub bands: Vec<BandChange>,
}

/// A chain at one frequency in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct BandChange {
    /// Band, with `low`, `middle` or `high` of a range.
    pub band: String,
    /// Figures, if it was there.
    pub figures: Pair<Figures>,
    /// By how much the results moved, with the uncertainty of that.
    pub moved: Moved,
    /// Parts that came, went, are written otherwise or lose another amount.
    pub parts: Vec<PartChange>,
    /// Parts that have another name and are the same otherwise: then, now.
    pub renamed: Vec<(String, String)>,
    /// Whether the parts that stayed stand in another order.
    pub reordered: bool,
    /// Limits, all of both states.
    pub limits: Vec<LimitChange>,
    /// Readings that came, went, or have another verdict.
    pub readings: Vec<ReadingChange>,
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
    /// Power into the antenna or load, W.
    pub antenna_w: Option<f64>,
    /// ERP, W.
    pub erp_w: Option<f64>,
    /// EIRP, W.
    pub eirp_w: Option<f64>,
    /// Receive: sensitivity at the antenna, dBm.
    pub sensitivity_dbm: Option<f64>,
    /// Its expanded uncertainty (k = 2), dB.
    pub sensitivity_u_db: Option<f64>,
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
    /// How what is said of it differs; a part that says the same may lose another amount.
    pub how: Differs,
    /// How it is in each state.
    pub state: Pair<PartState>,
}

/// A part in one state.
#[derive(Clone, Debug, PartialEq)]
pub struct PartState {
    /// As written, on one line.
    pub text: String,
    /// Its loss, dB, if that is known.
    pub loss_db: Option<f64>,
    /// Line of its statement, from 1.
    pub line: u32,
}

impl PartChange {
    /// By how much its loss grew, dB, if that is known. A part that is not there loses nothing.
    #[must_use]
    pub fn added_db(&self) -> Option<f64> {
        let loss = |x: &Option<PartState>| x.as_ref().map_or(Some(0.0), |s| s.loss_db);
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
#[derive(Clone, Debug, PartialEq)]
pub struct LimitState {
    /// The document and clause it cites.
    pub source: Option<String>,
    /// The licence or rules of a clause.
    pub set: Option<String>,
    /// Limit, W; none where a clause cannot be judged.
    pub limit_w: Option<f64>,
    /// Margin, dB.
    pub margin_db: Option<f64>,
    /// Its uncertainty (k = 2), dB.
    pub uncertainty_db: Option<f64>,
    /// Verdict.
    pub verdict: RuleVerdict,
    /// Whether it only warns: the text of the clause is not sure.
    pub warns: bool,
    /// Line of its statement, from 1.
    pub line: u32,
}

/// A reading in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingChange {
    /// `forward`, `reflected`, `net` or `swr`.
    pub what: &'static str,
    /// What was read: W or SWR.
    pub read: f64,
    /// How it compares with the computed value.
    pub verdict: Pair<Verdict>,
}

/// A station in both states.
#[derive(Clone, Debug, PartialEq)]
pub struct StationChange {
    /// Its tag.
    pub name: String,
    /// Whether it was there.
    pub was: bool,
    /// Whether it is there.
    pub is: bool,
    /// Line of its head in the new state, from 1; 0 where it is gone.
    pub line: u32,
    /// What of its place and use was changed: `position`, `height of A1`, `time keyed of TX1`.
    pub placed: Vec<String>,
    /// Spots whose exposure moved, came or went.
    pub spots: Vec<super::exposure::SpotStep>,
}

/// A definition in both states.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DefinitionChange {
    /// `cable club-foam`, of a station `hill: place mast`.
    pub name: String,
    /// How it differs.
    pub how: Differs,
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
    /// Whether it is an error.
    pub error: bool,
    /// Its message, first line.
    pub message: String,
    /// Its line, from 1.
    pub line: u32,
}

impl<T> Pair<T> {
    /// The same from new to old.
    #[must_use]
    pub fn reversed(self) -> Pair<T> {
        Pair {
            old: self.new,
            new: self.old,
        }
    }
}

impl Comparison {
    /// The comparison of the new state with the old one.
    #[must_use]
    pub fn reversed(mut self) -> Comparison {
        for s in &mut self.stations {
            std::mem::swap(&mut s.was, &mut s.is);
        }
        for d in &mut self.definitions {
            std::mem::swap(&mut d.was, &mut d.is);
        }
        for f in &mut self.findings {
            f.new = !f.new;
        }
        for c in &mut self.chains {
            c.direction = c.direction.clone().reversed();
            c.bands = std::mem::take(&mut c.bands)
                .into_iter()
                .map(BandChange::reversed)
                .collect();
        }
        self
    }
}

impl BandChange {
    /// The same from new to old.
    #[must_use]
    pub fn reversed(self) -> BandChange {
        let step = |s: Option<downlead_eval::difference::Step>| s.map(|s| s.reversed());
        BandChange {
            figures: self.figures.reversed(),
            moved: Moved {
                radiated: step(self.moved.radiated),
                delivered: step(self.moved.delivered),
                loss: step(self.moved.loss),
            },
            parts: self
                .parts
                .into_iter()
                .map(|p| PartChange {
                    state: p.state.reversed(),
                    ..p
                })
                .collect(),
            renamed: self.renamed.into_iter().map(|(a, b)| (b, a)).collect(),
            limits: self
                .limits
                .into_iter()
                .map(|l| LimitChange {
                    state: l.state.reversed(),
                    ..l
                })
                .collect(),
            readings: self
                .readings
                .into_iter()
                .map(|r| ReadingChange {
                    verdict: r.verdict.reversed(),
                    ..r
                })
                .collect(),
            ..self
        }
    }
}
