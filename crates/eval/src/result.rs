//! Results as kept between edits: numbers and places, no text.

use downlead_base::{Diagnostic, Loc, Span};
use downlead_station::model::{Basis, Direction, LimitQuantity, Name, PartKind, ReadPower};

/// Types of the numbers in a session's results and in trends.
pub use downlead_physics::measure;

use crate::assume::Assumed;

/// Three-way verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Met, or agrees, by more than the uncertainty.
    Yes,
    /// Not met, or differs, by more than the uncertainty.
    No,
    /// The uncertainty is larger than the difference.
    CannotTell,
}

impl Verdict {
    /// Word for a limit.
    #[must_use]
    pub fn limit_word(self) -> &'static str {
        match self {
            Verdict::Yes => "met",
            Verdict::No => "not-met",
            Verdict::CannotTell => "cannot-tell",
        }
    }

    /// Word for a reading.
    #[must_use]
    pub fn reading_word(self) -> &'static str {
        match self {
            Verdict::Yes => "agrees",
            Verdict::No => "differs",
            Verdict::CannotTell => "cannot-tell",
        }
    }
}

/// What an element of a chain is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NodeKind {
    /// A part, or connectors in their number.
    Part(PartKind),
    /// The pair of connectors between two neighbours that the station's `joins` names.
    Join,
}

impl NodeKind {
    /// Keyword, or `join`.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            NodeKind::Part(k) => k.word(),
            NodeKind::Join => "join",
        }
    }

    /// Whether it is such a part.
    #[must_use]
    pub fn is(self, kind: PartKind) -> bool {
        self == NodeKind::Part(kind)
    }

    /// Whether it is what a transmit chain begins with.
    #[must_use]
    pub fn sends(self) -> bool {
        matches!(self, NodeKind::Part(kind) if kind.sends())
    }

    /// Whether it is what a receive chain ends with.
    #[must_use]
    pub fn hears(self) -> bool {
        matches!(self, NodeKind::Part(kind) if kind.hears())
    }

    /// Whether it is a pair of connectors that follows from the stated ends.
    #[must_use]
    pub fn is_join(self) -> bool {
        self == NodeKind::Join
    }

    /// Whether it is connectors, written or not.
    #[must_use]
    pub fn is_connector(self) -> bool {
        use PartKind as P;
        self.is_join() || matches!(self, NodeKind::Part(P::Connector | P::Adapter))
    }

    /// Whether it is a line.
    #[must_use]
    pub fn is_line(self) -> bool {
        use PartKind as P;
        matches!(self, NodeKind::Part(P::Run | P::Jumper | P::Tail))
    }

    /// Whether a chain begins or ends with it.
    #[must_use]
    pub fn is_end(self) -> bool {
        use PartKind as P;
        matches!(
            self,
            NodeKind::Part(P::Transmitter | P::Transceiver | P::Receiver | P::Antenna | P::Load)
        )
    }
}

impl std::fmt::Display for NodeKind {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.word())
    }
}

/// One element of a chain at one frequency. There are many: places are kept short.
#[derive(Clone, Debug, PartialEq)]
pub struct NodeResult {
    /// Place of the definition.
    pub def: Loc,
    /// Line of the chain.
    pub chain: Loc,
    /// Its tag in the item of the definition; empty if it has none.
    pub(crate) tag: Span,
    /// The port that is named, in the item of the chain; empty if none is.
    pub(crate) port: Span,
    /// What it is.
    pub kind: NodeKind,
    /// Index into the band's branch names, plus one; 0 for the trunk.
    pub branch: u16,
    /// Basis of its figure.
    pub basis: Basis,
    /// Whether its own loss could be had; if not, `loss_db` stands for nothing.
    pub loss_known: bool,
    /// Whether all before and after it could be computed; if not, the net power and the loss so
    /// far stand for nothing.
    pub power_known: bool,
    /// Whether all before it could be computed; if not, the forward power and the uncertainty
    /// stand for nothing.
    pub forward_known: bool,
    /// Loss of net power, dB; where what follows is not known, the loss between matched ends.
    pub loss_db: f64,
    /// Matched loss, dB.
    pub matched_db: f64,
    /// So far, dB.
    pub cumulative_db: f64,
    /// Net power behind it, W (receive: level that just suffices; not a number without one).
    pub power_w: f64,
    /// Forward power behind it, W.
    pub forward_w: f64,
    /// Expanded uncertainty of the power behind it, dB; of the forward power where the net power
    /// is not known.
    pub uncertainty_db: f64,
    /// Expanded uncertainty of the forward power behind it, dB.
    pub forward_uncertainty_db: f64,
    /// SWR looking on; none where something after it could not be computed.
    pub swr: Option<f64>,
    /// Heat, W.
    pub heat_w: f64,
}

impl NodeResult {
    /// Its tag, if it has one.
    #[must_use]
    pub fn tag(&self) -> Option<Loc> {
        (!self.tag.is_empty()).then(|| Loc::new(self.def.item, self.tag))
    }

    /// The port, if one is named.
    #[must_use]
    pub fn port(&self) -> Option<Loc> {
        (!self.port.is_empty()).then(|| Loc::new(self.chain.item, self.port))
    }

    /// Range of a name for [`NodeResult::tag`] or [`NodeResult::port`].
    pub(crate) fn range_of(name: Option<&Name>) -> Span {
        name.map_or(Span::default(), |n| n.loc.span)
    }
}

/// Noise of one stage of a receive chain, between matched ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NodeNoise {
    /// Noise figure between matched ends, dB; none of the antenna, and of an amplifier or receiver
    /// that states none.
    pub figure_db: Option<f64>,
    /// Physical temperature from which it follows, °C; none where the noise figure is stated.
    pub celsius: Option<f64>,
}

/// A limit compared.
#[derive(Clone, Debug, PartialEq)]
pub struct LimitResult {
    /// Its statement.
    pub loc: Loc,
    /// What is limited.
    pub quantity: LimitQuantity,
    /// Limit, W.
    pub limit_w: f64,
    /// Value, W.
    pub value_w: f64,
    /// Margin, dB.
    pub margin_db: f64,
    /// Expanded uncertainty, dB.
    pub uncertainty_db: f64,
    /// Probability that the limit is exceeded.
    pub exceeded: f64,
    /// Verdict.
    pub verdict: Verdict,
    /// Transmitter setting that meets it with the uncertainty allowed for, W.
    pub safe_w: Option<f64>,
}

/// A reading compared.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingResult {
    /// Its statement.
    pub loc: Loc,
    /// Which power; none for an SWR.
    pub power: Option<ReadPower>,
    /// Read: W or SWR.
    pub read: f64,
    /// Expected: W or SWR.
    pub expected: f64,
    /// Difference, dB.
    pub difference_db: f64,
    /// Expanded uncertainty of the difference, dB.
    pub uncertainty_db: f64,
    /// Verdict.
    pub verdict: Verdict,
}

/// What a row of a log says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Logged {
    /// Forward power, W.
    Forward,
    /// Reflected power, W.
    Reflected,
    /// SWR.
    Swr,
}

impl Logged {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Logged::Forward => "forward",
            Logged::Reflected => "reflected",
            Logged::Swr => "swr",
        }
    }
}

/// A row of a log, compared.
#[derive(Clone, Debug, PartialEq)]
pub struct LogRow {
    /// Line in the file.
    pub line: u64,
    /// Date as written; empty if there is none.
    pub date: Box<str>,
    /// What was read.
    pub what: Logged,
    /// With what.
    pub instrument: Option<Box<str>>,
    /// Read: W or SWR.
    pub read: f64,
    /// Read and corrected by what is known of the instrument: W or SWR.
    pub corrected: f64,
    /// Expected: W or SWR; none where it could not be computed.
    pub expected: Option<f64>,
    /// Tag of a part before it that was installed after the row was read: the row says how the
    /// station was, and is not judged.
    pub older_than: Option<Box<str>>,
    /// Difference, dB (forward power).
    pub difference_db: Option<f64>,
    /// Expanded uncertainty of it, dB.
    pub uncertainty_db: Option<f64>,
    /// Verdict.
    pub verdict: Option<Verdict>,
}

/// How dated readings of one kind move.
#[derive(Clone, Debug, PartialEq)]
pub struct LogTrend {
    /// What was read; powers count in dB.
    pub what: Logged,
    /// First date.
    pub from: Box<str>,
    /// Last date.
    pub to: Box<str>,
    /// Number of readings.
    pub count: usize,
    /// The readings with their dates, standard uncertainty of one against another.
    pub points: Box<[(Box<str>, downlead_physics::measure::TrendPoint)]>,
    /// The straight line, in dB or SWR a year.
    pub trend: downlead_physics::measure::Trend,
}

/// The readings of a log at one node.
#[derive(Clone, Debug, PartialEq)]
pub struct LogResult {
    /// Its statement.
    pub loc: Loc,
    /// Tag of the part before it.
    pub after: Option<Box<str>>,
    /// Rows by date.
    pub rows: Box<[LogRow]>,
    /// Trends of three readings or more.
    pub trends: Box<[LogTrend]>,
}

/// The kind of a contribution to the uncertainty.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "see the words")]
pub enum CauseKind {
    Power,
    Instrument,
    Cable,
    Velocity,
    Impedance,
    Construction,
    Length,
    Connectors,
    Bump,
    Loss,
    Coupling,
    Share,
    Noise,
    Isolation,
    Reflection,
    Reactance,
    Gain,
    Efficiency,
    Sits,
    Phases,
    AllPhases,
    Multiple,
    Temperature,
    AddedLoss,
}

impl CauseKind {
    /// In words, before whose it is.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            CauseKind::Power => "power of",
            CauseKind::Instrument => "scale of instrument",
            CauseKind::Cable => "cable loss,",
            CauseKind::Length => "length of",
            CauseKind::Connectors => "connectors of family",
            CauseKind::Loss => "loss of",
            CauseKind::Gain => "gain of",
            CauseKind::Velocity => "velocity factor of",
            CauseKind::Impedance => "impedance of",
            CauseKind::Construction => "dimensions of",
            CauseKind::Bump => "impedance bump of",
            CauseKind::Coupling => "coupling of",
            CauseKind::Share => "division in",
            CauseKind::Noise => "noise figure of",
            CauseKind::Isolation => "isolation of",
            CauseKind::Reflection => "reflection of",
            CauseKind::Reactance => "reactance of",
            CauseKind::Efficiency => "efficiency of",
            CauseKind::Sits => "place of the loss in",
            CauseKind::Phases => "unknown phase of",
            CauseKind::AllPhases => "unknown phases of reflections",
            CauseKind::Multiple => "second-order effects",
            CauseKind::Temperature => "temperature of",
            CauseKind::AddedLoss => "added loss of",
        }
    }
}

/// How an uncertainty was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    /// By derivatives (JCGM 100).
    Derivatives,
    /// By a sample of all inputs together (JCGM 101).
    Sample,
    /// Between the two.
    Both,
}

impl Method {
    /// Word of the JSON.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Method::Derivatives => "derivatives",
            Method::Sample => "sample",
            Method::Both => "both",
        }
    }
}

/// Power at a coupler's side arm, or at a leg that rejects it.
#[derive(Clone, Debug, PartialEq)]
pub struct TapResult {
    /// Tag of the part, or its statement.
    pub part: Loc,
    /// The chain's line.
    pub chain: Loc,
    /// Port, or `coupled`.
    pub port: Box<str>,
    /// Power there into a matched load, W.
    pub power_w: f64,
    /// Expanded uncertainty (k = 2), dB.
    pub uncertainty_db: f64,
    /// What the power was computed from.
    pub made: TapMade,
}

/// What the power at a port is computed from: a wave of the main line, less a coupling or a
/// rejection.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TapMade {
    /// Forward power where the part takes it from the line, W, and its standard uncertainty, dB.
    pub forward: (f64, f64),
    /// Coupling or rejection, dB, and its standard uncertainty, dB.
    pub less: (f64, f64),
    /// Share of the forward power that comes back there, 0 to 1.
    pub back: f64,
    /// Whether the port takes the wave that comes back instead of the forward one.
    pub reversed: bool,
    /// Standard uncertainty of the waves' sum or of the share that comes back, dB.
    pub waves_db: f64,
}

/// A contribution to the uncertainty.
#[derive(Clone, Debug, PartialEq)]
pub struct BudgetItem {
    /// The kind of a contribution to the uncertainty.
    pub cause: CauseKind,
    /// Whose that is.
    pub name: CauseName,
    /// Standard uncertainty, dB.
    pub standard_db: f64,
}

/// How a cause is named.
#[derive(Clone, Debug, PartialEq)]
pub enum CauseName {
    /// By the part at a place.
    At(Loc),
    /// By a name.
    Named(Box<str>),
    /// Needs none.
    None,
}

/// A chain at one frequency.
#[derive(Clone, Debug, PartialEq)]
pub struct BandResult {
    /// Band name or frequency as written.
    pub band: Box<str>,
    /// `low`, `middle`, `high` of a range; `edge` where a clause of the station's licence or rules has
    /// one inside it, `gap` between clauses.
    pub point: Option<&'static str>,
    /// Hz.
    pub hz: f64,
    /// Whether all parts could be computed.
    pub complete: bool,
    /// Whether there is a tuner.
    pub tuner: bool,
    /// Elements in order.
    pub nodes: Box<[NodeResult]>,
    /// Names of branches, `DV1/1`.
    pub branches: Box<[Box<str>]>,
    /// Total loss, dB; none, like all that follows from it, where a part could not be computed.
    pub total_db: Option<f64>,
    /// Power into the antenna, W.
    pub antenna_w: Option<f64>,
    /// EIRP, W.
    pub eirp_w: Option<f64>,
    /// Antenna gain used, dBi (the effective one of several branches).
    pub gain_dbi: Option<f64>,
    /// Expanded uncertainty of the result, dB.
    pub uncertainty_db: Option<f64>,
    /// Interval of 95 % (2.275 % to 97.725 %) of EIRP, or of the power delivered or the loss,
    /// about its value, dB.
    pub interval_db: Option<[f64; 2]>,
    /// How uncertainty and interval were found.
    pub method: Option<Method>,
    /// The least loss that passive parts of these figures can have, dB.
    pub floor_db: Option<f64>,
    /// Loss over all open phases, dB: reached by some, exceeded by none that the search met.
    pub worst_db: Option<[f64; 2]>,
    /// Extra when wet, dB.
    pub wet_db: Option<f64>,
    /// SWR at the transmitter; none on receive.
    pub swr: Option<f64>,
    /// Its largest value over phases.
    pub swr_worst: Option<f64>,
    /// Receive: sensitivity at the antenna, dBm.
    pub sensitivity_dbm: Option<f64>,
    /// Receive: system noise figure, dB.
    pub noise_figure_db: Option<f64>,
    /// Receive: what each node adds to it, in the order of the nodes; empty where that is not
    /// known.
    pub noise: Box<[NodeNoise]>,
    /// Expanded uncertainty of that sensitivity, dB.
    pub sensitivity_u_db: Option<f64>,
    /// Expanded uncertainty of that noise figure, dB.
    pub noise_figure_u_db: Option<f64>,
    /// Mean power at the antenna, W.
    pub mean_w: Option<f64>,
    /// Limits.
    pub limits: Box<[LimitResult]>,
    /// Clauses of the licences and rules that the station is under.
    pub rules: Box<[crate::licence::RuleResult]>,
    /// Readings.
    pub readings: Box<[ReadingResult]>,
    /// Readings of logs.
    pub logs: Box<[LogResult]>,
    /// Budget, largest first.
    pub budget: Box<[BudgetItem]>,
    /// What of the transmitter's power comes out elsewhere than at the antenna.
    pub taps: Box<[TapResult]>,
    /// What the transmitter does to rated parts; until the station is judged as a whole.
    pub(crate) loads: Box<[crate::shared::Load]>,
    /// Assumptions.
    pub(crate) assumptions: Box<[(Assumed, Loc)]>,
}

impl BandResult {
    /// The band with the point of its range: `2m low`; inside the range by the frequency.
    #[must_use]
    pub fn place(&self) -> String {
        crate::point::place(&self.band, self.point, self.hz)
    }

    /// ERP, W: EIRP over 1.64 (2.15 dB).
    #[must_use]
    pub fn erp_w(&self) -> Option<f64> {
        self.eirp_w
            .map(|e| downlead_physics::radiated::DipoleConvention::Itu215.erp(e))
    }
}

/// A chain on all its bands.
#[derive(Clone, Debug, PartialEq)]
pub struct ChainResult {
    /// Its name.
    pub name: Loc,
    /// Its head.
    pub loc: Loc,
    /// Direction.
    pub direction: Direction,
    /// Per frequency.
    pub bands: Box<[BandResult]>,
}

/// Everything computed from one item.
#[derive(Clone, Debug, Default)]
pub struct ItemResult {
    /// Chains in the order of the text.
    pub chains: Vec<ChainResult>,
    /// A bench session.
    pub session: Option<Box<crate::bench::result::SessionResult>>,
    /// What the licences and rules of a station say of it as a whole.
    pub rules: Option<Box<crate::licence::StationRules>>,
    /// A link.
    pub link: Option<Box<crate::link::LinkResult>>,
    /// Exposure of people at the spots of a station.
    pub exposure: Option<Box<crate::exposure::Exposure>>,
    /// What the carriers of its site do to its receive channels.
    pub site: Option<Box<crate::site::SiteResult>>,
    /// Findings.
    pub diagnostics: Vec<Diagnostic>,
    /// Whether there is only the first stage of its chains: the sample and the bounds over all
    /// phases are still to come.
    pub provisional: bool,
    /// What it rests on: names and files, and what they were.
    pub(crate) depends: Vec<(downlead_station::RestsOn, Box<str>, u64)>,
}

impl ItemResult {
    /// Whether there is nothing in it, and nothing it depends on.
    pub(crate) fn is_empty(&self) -> bool {
        let Self {
            chains,
            session,
            rules,
            link,
            exposure,
            site,
            diagnostics,
            depends,
            provisional: _,
        } = self;
        rules.is_none()
            && link.is_none()
            && exposure.is_none()
            && site.is_none()
            && chains.is_empty()
            && session.is_none()
            && diagnostics.is_empty()
            && depends.is_empty()
    }
}
