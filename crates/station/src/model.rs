//! The typed station: what the text says, with kinds and units checked, names still by name.
//!
//! Values are in base units (see [`downlead_quantity::Dim`]). Places are item-relative, so a
//! definition survives edits elsewhere in its file.

use downlead_base::Loc;
use downlead_quantity::Measure;

/// A name as written, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Name {
    /// The text.
    pub text: Box<str>,
    /// Where it stands.
    pub loc: Loc,
}

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Basis {
    /// Written without saying.
    #[default]
    Stated,
    /// Read on an instrument.
    Read,
    /// From a data sheet.
    Sheet,
    /// The rating on the plate.
    Rated,
    /// Off the radio's own display.
    Displayed,
    /// A guess, said to be one.
    Guess,
    /// From the library.
    Library,
    /// Computed from the others.
    Computed,
}

impl Basis {
    /// Lower-case word.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Basis::Stated => "stated",
            Basis::Read => "read",
            Basis::Sheet => "sheet",
            Basis::Rated => "rated",
            Basis::Displayed => "displayed",
            Basis::Guess => "guess",
            Basis::Library => "library",
            Basis::Computed => "computed",
        }
    }
}

/// Whether a data-sheet figure is typical or a maximum.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// Typical or nominal.
    Typical,
    /// Guaranteed not to be exceeded.
    Maximum,
}

/// What is said about a figure beside its value.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Meta {
    /// Basis.
    pub basis: Basis,
    /// Typical or maximum.
    pub bound: Option<(Bound, Option<Loc>)>,
    /// Document and page.
    pub source: Option<Box<str>>,
    /// Date of a reading or installation, as written.
    pub date: Option<Box<str>>,
    /// In service since, as written.
    pub since: Option<Box<str>>,
    /// Instrument of a reading.
    pub instrument: Option<Name>,
    /// Person who read it.
    pub person: Option<Box<str>>,
}

impl Meta {
    /// The source in words, from basis, document, date, instrument and person.
    #[must_use]
    pub fn words(&self) -> Option<String> {
        let mut out = String::new();
        match self.basis {
            Basis::Read => {
                out.push_str("read");
                if let Some(d) = &self.date {
                    out.push(' ');
                    out.push_str(d);
                }
                if let Some(i) = &self.instrument {
                    out.push_str(" with ");
                    out.push_str(&i.text);
                }
                if let Some(p) = &self.person {
                    out.push_str(" by ");
                    out.push_str(p);
                }
            }
            Basis::Sheet => out.push_str("sheet"),
            Basis::Rated => out.push_str("rated"),
            Basis::Displayed => out.push_str("the radio's display"),
            Basis::Guess => out.push_str("guess"),
            Basis::Stated | Basis::Library | Basis::Computed => {}
        }
        if let Some(s) = &self.source {
            if !out.is_empty() {
                out.push_str(", ");
            }
            out.push_str(s);
        }
        if out.is_empty() { None } else { Some(out) }
    }
}

/// A [`Meta`] that mostly says nothing and then takes no room.
#[derive(Clone, Default, PartialEq)]
pub struct About(Option<Box<Meta>>);

static NOTHING: Meta = Meta {
    basis: Basis::Stated,
    bound: None,
    source: None,
    date: None,
    since: None,
    instrument: None,
    person: None,
};

impl std::ops::Deref for About {
    type Target = Meta;

    fn deref(&self) -> &Meta {
        self.0.as_deref().unwrap_or(&NOTHING)
    }
}

impl From<Meta> for About {
    fn from(m: Meta) -> Self {
        About((m != NOTHING).then(|| Box::new(m)))
    }
}

impl std::fmt::Debug for About {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        (**self).fmt(f)
    }
}

/// When a figure holds.
#[derive(Clone, Debug, PartialEq)]
pub enum When {
    /// Always.
    Always,
    /// On these bands.
    Bands(Box<[Name]>),
    /// At this frequency, Hz; between such points it is interpolated.
    At(f64),
}

/// One figure of a part.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// When it holds.
    pub when: When,
    /// Value and standard uncertainty in the base unit of its kind; powers carry the
    /// uncertainty in dB.
    pub value: Measure,
    /// What is said about it.
    pub meta: About,
    /// Where the value stands.
    pub loc: Loc,
    /// Whether it was written in percent.
    pub percent: bool,
}

/// Figures of a part that stand in a network file.
#[derive(Clone, Debug, PartialEq)]
pub struct NetworkFile {
    /// When it holds and what is said about it. Its value is not used; the uncertainty is that of
    /// the file's losses, dB.
    pub figure: Figure,
    /// Path as written, without its quotes, and where.
    pub path: Name,
    /// Whether its port 2 is where its port 1 would be.
    pub reversed: bool,
}

/// Frequencies a chain may be evaluated at.
#[derive(Clone, Debug, PartialEq)]
pub enum BandKind {
    /// One frequency, Hz.
    Single(f64),
    /// A transmit and a receive frequency, Hz; either may be missing.
    Pair {
        /// Transmit.
        transmit: Option<f64>,
        /// Receive.
        receive: Option<f64>,
    },
    /// A range, Hz, evaluated at both edges and the middle.
    Range(f64, f64),
}

/// A band.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Its name.
    pub name: Name,
    /// Its frequencies.
    pub kind: BandKind,
}

/// How a cable's matched loss is known.
#[derive(Clone, Debug, PartialEq)]
pub enum CableLoss {
    /// Two coefficients at the reference temperature: dB/m per √MHz and dB/m per MHz.
    TwoTerm {
        /// Conductor term.
        k1: f64,
        /// Dielectric term.
        k2: f64,
    },
    /// Points (Hz, dB/m), rising in frequency, with their places.
    Table(Box<[(f64, f64, Loc)]>),
    /// Dimensions of a coaxial cable.
    Construction(Construction),
    /// Dimensions of a parallel-wire line.
    Wires(Wires),
    /// A network file of a piece.
    Network {
        /// The two-port.
        file: Box<NetworkFile>,
        /// Length of the piece, m.
        length: Measure,
    },
}

/// A coaxial cable by its dimensions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Construction {
    /// Diameter over the inner conductor, m.
    pub inner: f64,
    /// Inner diameter of the outer conductor, m.
    pub outer: f64,
    /// Relative permittivity.
    pub permittivity: f64,
    /// Loss tangent.
    pub loss_tangent: f64,
    /// Factor of the inner conductor's stranding on its resistance.
    pub strand: f64,
    /// Factor of the outer conductor's braid on its resistance.
    pub braid: f64,
    /// Resistivity, ohm m.
    pub resistivity: f64,
}

/// A parallel-wire line by its dimensions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wires {
    /// Diameter of each wire, m.
    pub diameter: f64,
    /// Distance of the centres, m.
    pub spacing: f64,
    /// Effective relative permittivity.
    pub permittivity: f64,
    /// Resistivity, ohm m.
    pub resistivity: f64,
}

/// A step of a cable's accuracy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AccuracyStep {
    /// Holds up to this frequency, Hz (infinite for the last).
    pub up_to_hz: f64,
    /// Relative standard uncertainty of the loss in dB.
    pub u_relative: f64,
}

/// Mean power rating.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rating {
    /// Mean power, W.
    pub watts: f64,
    /// At this frequency, Hz, if one is given.
    pub at_hz: Option<f64>,
    /// Ambient temperature of the rating, °C.
    pub ambient_c: f64,
    /// Highest conductor temperature, °C.
    pub conductor_c: f64,
    /// Whether the two temperatures were stated.
    pub temperatures_stated: bool,
    /// Where.
    pub loc: Loc,
}

/// A cable.
#[derive(Clone, Debug, PartialEq)]
pub struct Cable {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Nominal characteristic impedance, ohm; none when not stated (50 ohm is assumed, or it
    /// follows from the construction).
    pub impedance: Option<f64>,
    /// Velocity factor.
    pub velocity: Option<Measure>,
    /// Loss.
    pub loss: Option<CableLoss>,
    /// Where the loss stands.
    pub loss_loc: Loc,
    /// Reference temperature of the loss, °C.
    pub reference_c: f64,
    /// Whether the reference temperature was stated.
    pub reference_stated: bool,
    /// About the loss.
    pub meta: Meta,
    /// Valid frequencies, Hz.
    pub valid: Option<(f64, f64)>,
    /// Accuracy steps, rising in frequency; empty if not stated.
    pub accuracy: Box<[AccuracyStep]>,
    /// Name of the cause that its accuracy shares with other cables.
    pub shared: Option<Name>,
    /// Mean power ratings.
    pub ratings: Box<[Rating]>,
    /// Highest working voltage, V rms.
    pub voltage: Option<f64>,
    /// Diameter over the jacket, m.
    pub size: Option<f64>,
    /// Whether the centre conductor is copper-clad steel.
    pub clad: bool,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
}

/// Loss law of a connector.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ConnectorLoss {
    /// `k √(f/GHz)` dB.
    Root(f64),
    /// Constant dB.
    Constant(f64),
}

/// A connector pair or adapter.
#[derive(Clone, Debug, PartialEq)]
pub struct Connector {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Families of its two sides; equal for a mated pair.
    pub families: Option<(Box<str>, Box<str>)>,
    /// Loss per pair.
    pub loss: Option<ConnectorLoss>,
    /// Relative standard uncertainty of the loss, or absolute in dB (second).
    pub u: (f64, f64),
    /// Impedance bump: ohm and electrical length in vacuum, m.
    pub bump: Option<(f64, f64)>,
    /// Highest frequency, Hz.
    pub limit_hz: Option<f64>,
    /// Mean power rating; falls with the root of frequency.
    pub rating: Option<Rating>,
    /// Working voltage, V rms.
    pub voltage: Option<f64>,
    /// Source.
    pub meta: Meta,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
}

/// How an instrument's accuracy is stated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Accuracy {
    /// Share of the reading: standard uncertainty, relative.
    OfReading(f64),
    /// Share of full scale: standard uncertainty, relative to the scale.
    OfFullScale(f64),
    /// dB: standard uncertainty.
    Decibel(f64),
}

/// A measuring instrument.
#[derive(Clone, Debug, PartialEq)]
pub struct Instrument {
    /// Its name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Accuracy.
    pub accuracy: Option<Accuracy>,
    /// Full scale, W.
    pub scale_w: Option<f64>,
    /// Frequency range, Hz.
    pub band: Option<(f64, f64)>,
    /// Resolution, W.
    pub resolution_w: Option<f64>,
    /// Calibration date as written.
    pub calibrated: Option<Box<str>>,
    /// Date the next calibration is due, as written.
    pub due: Option<Box<str>>,
    /// What of its error does not cancel between two readings: standard uncertainty, relative.
    pub linearity: Option<f64>,
    /// Spread of one reading: standard uncertainty, relative.
    pub repeatability: Option<f64>,
    /// Directivity of a reflection meter, dB.
    pub directivity_db: Option<f64>,
}

/// Place of a part: where its temperature comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Its name.
    pub name: Name,
    /// Temperature, °C.
    pub temperature: Option<Measure>,
}

/// Length of a line as stated.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LineLength {
    /// Metres, with standard uncertainty.
    Metres(Measure),
    /// Wavelengths in the line at the chain's frequency.
    Wavelengths(Measure),
}

/// Run, jumper or tail.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Length; none when a fixed loss is given.
    pub length: Option<LineLength>,
    /// Where the length stands, and whether it was written in feet or inches.
    pub length_loc: Loc,
    /// Whether the length is in feet, inches or yards.
    pub imperial: bool,
    /// Cable.
    pub cable: Option<Name>,
    /// Fixed loss instead of a cable, dB.
    pub loss: Box<[Figure]>,
    /// Two-ports of the whole line instead.
    pub network: Box<[NetworkFile]>,
    /// Place.
    pub place: Option<Name>,
    /// Temperature at the part itself, °C.
    pub temperature: Option<Measure>,
    /// Loss added by age or water, dB.
    pub added: Box<[Figure]>,
    /// Further loss when wet, dB.
    pub wet: Box<[Figure]>,
}

/// A port of a device.
#[derive(Clone, Debug, PartialEq)]
pub struct Port {
    /// Name; empty for a device with a single path.
    pub name: Name,
    /// Loss between this port and the common one (or through), dB.
    pub loss: Box<[Figure]>,
    /// Pass bands, Hz.
    pub passes: Box<[(f64, f64)]>,
    /// Two-ports between this port and the common one (or through), which count before a loss.
    pub network: Box<[NetworkFile]>,
}

/// Any two-port or branching device other than a line or connector.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Device {
    /// Definition it is an example of.
    pub class: Option<Name>,
    /// Ports.
    pub ports: Box<[Port]>,
    /// Isolation between ports, dB.
    pub isolation: Option<Measure>,
    /// Reflection of each port as SWR.
    pub swr: Box<[Figure]>,
    /// Mean power rating.
    pub rating: Option<Box<Rating>>,
    /// Highest peak voltage, V rms.
    pub voltage: Option<f64>,
    /// Gain, dB (amplifiers).
    pub gain: Box<[Figure]>,
    /// Noise figure, dB.
    pub noise_figure: Option<f64>,
    /// Coupling of a coupler, dB.
    pub coupling: Option<f64>,
    /// Number of branches of a divider.
    pub ways: Option<u32>,
    /// Excess loss of a divider, dB.
    pub excess: Option<Box<Figure>>,
    /// Place.
    pub place: Option<Name>,
    /// Temperature, °C.
    pub temperature: Option<Measure>,
}

/// What a power figure counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PowerKind {
    /// Without modulation.
    Carrier,
    /// Peak envelope power.
    Pep,
    /// Mean.
    Mean,
}

impl PowerKind {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            PowerKind::Carrier => "carrier",
            PowerKind::Pep => "pep",
            PowerKind::Mean => "mean",
        }
    }
}

/// A modulation mode.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mode {
    /// Frequency modulation.
    Fm,
    /// Constant-envelope data.
    Data,
    /// Morse.
    Cw,
    /// Single sideband speech.
    Ssb,
    /// Single sideband speech, processed.
    SsbProcessed,
    /// Amplitude modulation.
    Am,
}

/// Transmitter.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Transmitter {
    /// Power, W, with the kind.
    pub power: Box<[(Figure, Option<PowerKind>)]>,
    /// Mode.
    pub mode: Option<Mode>,
    /// Mean over PEP while keyed, overriding the mode's.
    pub duty: Option<f64>,
    /// Share of the time keyed.
    pub keyed: Option<f64>,
    /// SWR at which it turns itself down.
    pub foldback_swr: Option<f64>,
}

/// Receiver.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Receiver {
    /// Sensitivity, dBm.
    pub sensitivity: Option<Measure>,
    /// Criterion in words, `12 dB sinad`.
    pub criterion: Option<Box<str>>,
    /// Noise figure, dB.
    pub noise_figure: Option<f64>,
}

/// A gain of an antenna.
#[derive(Clone, Debug, PartialEq)]
pub struct Gain {
    /// dBi.
    pub figure: Figure,
    /// Written in dBd.
    pub dipole: bool,
    /// Includes the mismatch.
    pub realized: bool,
    /// Is a directivity: efficiency still to be taken off.
    pub directivity: bool,
}

/// A complex impedance.
#[derive(Clone, Debug, PartialEq)]
pub struct Impedance {
    /// When it holds, place, source; value is the resistance in ohm.
    pub resistance: Figure,
    /// Reactance, ohm.
    pub reactance: f64,
}

/// Antenna or dummy load.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Antenna {
    /// Gains.
    pub gain: Box<[Gain]>,
    /// SWR figures.
    pub swr: Box<[Figure]>,
    /// Impedances.
    pub impedance: Box<[Impedance]>,
    /// One-ports with its impedance.
    pub network: Box<[NetworkFile]>,
    /// Efficiency, 0 to 1.
    pub efficiency: Option<Measure>,
    /// Height above ground, m.
    pub height_agl: Option<Measure>,
    /// Mean power rating.
    pub rating: Option<Rating>,
}

/// Kind of a part; the word is the language's keyword.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs, reason = "the words speak for themselves")]
pub enum PartKind {
    Transmitter,
    Receiver,
    Run,
    Jumper,
    Tail,
    Connector,
    Adapter,
    Pad,
    Filter,
    Isolator,
    Circulator,
    Protector,
    Switch,
    Coupler,
    Meter,
    Balun,
    Tuner,
    Duplexer,
    Diplexer,
    Combiner,
    Divider,
    Amplifier,
    Preamplifier,
    Load,
    Antenna,
    /// A piece of cable on the bench: in a session, never in a chain.
    Piece,
}

impl PartKind {
    /// All kinds that a station or chain can hold.
    pub const ALL: [PartKind; 25] = [
        PartKind::Transmitter,
        PartKind::Receiver,
        PartKind::Run,
        PartKind::Jumper,
        PartKind::Tail,
        PartKind::Connector,
        PartKind::Adapter,
        PartKind::Pad,
        PartKind::Filter,
        PartKind::Isolator,
        PartKind::Circulator,
        PartKind::Protector,
        PartKind::Switch,
        PartKind::Coupler,
        PartKind::Meter,
        PartKind::Balun,
        PartKind::Tuner,
        PartKind::Duplexer,
        PartKind::Diplexer,
        PartKind::Combiner,
        PartKind::Divider,
        PartKind::Amplifier,
        PartKind::Preamplifier,
        PartKind::Load,
        PartKind::Antenna,
    ];

    /// Keyword.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            PartKind::Transmitter => "transmitter",
            PartKind::Receiver => "receiver",
            PartKind::Run => "run",
            PartKind::Jumper => "jumper",
            PartKind::Tail => "tail",
            PartKind::Connector => "connector",
            PartKind::Adapter => "adapter",
            PartKind::Pad => "pad",
            PartKind::Filter => "filter",
            PartKind::Isolator => "isolator",
            PartKind::Circulator => "circulator",
            PartKind::Protector => "protector",
            PartKind::Switch => "switch",
            PartKind::Coupler => "coupler",
            PartKind::Meter => "meter",
            PartKind::Balun => "balun",
            PartKind::Tuner => "tuner",
            PartKind::Duplexer => "duplexer",
            PartKind::Diplexer => "diplexer",
            PartKind::Combiner => "combiner",
            PartKind::Divider => "divider",
            PartKind::Amplifier => "amplifier",
            PartKind::Preamplifier => "preamplifier",
            PartKind::Load => "load",
            PartKind::Antenna => "antenna",
            PartKind::Piece => "piece",
        }
    }

    /// Keyword with its article: `an isolator`.
    #[must_use]
    pub fn with_article(self) -> String {
        let w = self.word();
        if w.starts_with(['a', 'e', 'i', 'o', 'u']) {
            format!("an {w}")
        } else {
            format!("a {w}")
        }
    }

    /// The kind behind a keyword.
    #[must_use]
    pub fn from_word(word: &str) -> Option<PartKind> {
        PartKind::ALL.into_iter().find(|k| k.word() == word)
    }

    /// Whether a chain can end there on transmit.
    #[must_use]
    pub fn ends_transmit(self) -> bool {
        matches!(self, PartKind::Antenna | PartKind::Load)
    }
}

/// Figures of a part by kind.
#[derive(Clone, Debug, PartialEq)]
#[allow(missing_docs, reason = "named after the kinds")]
pub enum PartData {
    Transmitter(Box<Transmitter>),
    Receiver(Box<Receiver>),
    Line(Box<Line>),
    /// Count and connector or adapter name.
    Connector(u32, Name),
    Device(Box<Device>),
    Antenna(Box<Antenna>),
    /// The statement could not be understood; the chain is incomplete there.
    Broken,
}

/// A part.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// Kind.
    pub kind: PartKind,
    /// Tag, if it has one.
    pub tag: Option<Name>,
    /// The whole statement without its block.
    pub loc: Loc,
    /// Families of its ends, if stated.
    pub ends: Option<Box<(Box<str>, Box<str>)>>,
    /// Qualifiers of the statement.
    pub meta: About,
    /// Figures.
    pub data: PartData,
}

/// A band in a chain's head.
#[derive(Clone, Debug, PartialEq)]
pub enum BandRef {
    /// By name.
    Named(Name),
    /// A frequency, Hz, as written.
    Frequency(f64, Name),
}

/// Direction of a chain.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Direction {
    /// From the transmitter to the antenna.
    Transmit,
    /// From the antenna to the receiver.
    Receive,
}

impl Direction {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Direction::Transmit => "transmit",
            Direction::Receive => "receive",
        }
    }
}

/// What a limit limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LimitQuantity {
    /// ERP over a half-wave dipole.
    Erp,
    /// EIRP.
    Eirp,
    /// Transmitter output.
    Output,
}

impl LimitQuantity {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            LimitQuantity::Erp => "erp",
            LimitQuantity::Eirp => "eirp",
            LimitQuantity::Output => "output",
        }
    }
}

/// A reading's quantity.
#[derive(Clone, Debug, PartialEq)]
pub enum Read {
    /// Power, W with u in dB.
    Power(ReadPower, Measure),
    /// SWR.
    Swr(Measure),
}

/// Which power a wattmeter shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReadPower {
    /// Forward wave.
    Forward,
    /// Reflected wave.
    Reflected,
    /// Forward minus reflected.
    Net,
}

impl ReadPower {
    /// Word of the language.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            ReadPower::Forward => "forward",
            ReadPower::Reflected => "reflected",
            ReadPower::Net => "net",
        }
    }
}

/// An expected value.
#[derive(Clone, Debug, PartialEq)]
pub enum Expect {
    /// Net power at the node, W; tolerance half-width in dB.
    Power(f64, f64),
    /// Loss so far, dB; half-width in dB.
    Loss(f64, f64),
    /// SWR looking on; half-width.
    Swr(f64, f64),
    /// ERP or EIRP, W; half-width in dB.
    Radiated(LimitQuantity, f64, f64),
}

/// A statement at a node.
#[derive(Clone, Debug, PartialEq)]
pub enum Node {
    /// `read`.
    Read {
        /// What was read.
        read: Read,
        /// Whether its own tolerance was stated.
        own_tolerance: bool,
        /// When, with what, by whom.
        meta: Meta,
        /// Bands it holds on (empty: all).
        on: Box<[Name]>,
    },
    /// `readings from`: a log of readings here.
    Log {
        /// The file.
        file: Name,
        /// Instrument, where a row names none.
        instrument: Option<Name>,
        /// Bands it holds on (empty: all).
        on: Box<[Name]>,
    },
    /// `expect`.
    Expect {
        /// What.
        expect: Expect,
        /// Bands.
        on: Box<[Name]>,
    },
    /// `limit`.
    Limit {
        /// What is limited.
        quantity: LimitQuantity,
        /// Limit, W.
        watts: f64,
        /// Kind of power it counts.
        kind: Option<PowerKind>,
        /// Document and clause.
        source: Option<Box<str>>,
        /// Bands.
        on: Box<[Name]>,
    },
}

/// A branch of a divider in a chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Branch {
    /// Name, or its number from 1.
    pub name: Box<str>,
    /// Where.
    pub loc: Loc,
    /// Its steps.
    pub steps: Box<[Step]>,
}

/// One line of a chain.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// A part of the station by tag.
    Use {
        /// Tag.
        tag: Name,
        /// Port.
        port: Option<Name>,
        /// The whole line.
        loc: Loc,
        /// Branches, for a divider.
        branches: Box<[Branch]>,
    },
    /// A part written in the chain.
    Part {
        /// The part.
        part: Box<Part>,
        /// Branches, for a divider.
        branches: Box<[Branch]>,
    },
    /// A statement at the node.
    Node(Box<Node>, Loc),
    /// A line that was not understood: results after it are incomplete.
    Broken(Loc),
}

/// How the fields of a divider's branches add.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Phasing {
    /// In phase in the main beam.
    InPhase,
    /// Not at all: each branch radiates for itself.
    Apart,
}

/// A chain.
#[derive(Clone, Debug, PartialEq)]
pub struct Chain {
    /// Name.
    pub name: Name,
    /// Head line.
    pub loc: Loc,
    /// Bands.
    pub bands: Box<[BandRef]>,
    /// Direction, if stated.
    pub direction: Option<Direction>,
    /// Steps.
    pub steps: Box<[Step]>,
    /// Branch phasing, if stated.
    pub phasing: Option<Phasing>,
}

/// A station.
#[derive(Clone, Debug, PartialEq)]
pub struct Station {
    /// Tag.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Places.
    pub places: Box<[Place]>,
    /// Default join.
    pub joins: Option<Name>,
    /// Parts.
    pub parts: Box<[Part]>,
    /// Chains.
    pub chains: Box<[Chain]>,
    /// Position, degrees north and east.
    pub position: Option<(f64, f64)>,
    /// Datum as written.
    pub datum: Option<Box<str>>,
    /// Ground above mean sea level, m.
    pub ground_amsl: Option<f64>,
}

/// A reusable device definition of a library.
#[derive(Clone, Debug, PartialEq)]
pub struct DeviceClass {
    /// Name.
    pub name: Name,
    /// Title.
    pub title: Option<Box<str>>,
    /// Kind of part.
    pub kind: PartKind,
    /// Its figures.
    pub device: Device,
    /// Source.
    pub meta: Meta,
    /// Whether it is part of the built-in library.
    pub built_in: bool,
}

/// What one top-level item means.
#[derive(Clone, Debug, PartialEq)]
#[allow(missing_docs, reason = "named after the items")]
pub enum Meaning {
    Use(Name),
    Band(Band),
    Let(Name),
    Cable(Box<Cable>),
    Connector(Box<Connector>),
    Device(Box<DeviceClass>),
    Instrument(Box<Instrument>),
    Station(Box<Station>),
    Chain(Box<Chain>),
    Session(Box<crate::session::Session>),
    /// Not understood; its diagnostics say why.
    Nothing,
}

impl Meaning {
    /// The statement at a node whose line stands at `loc`, in any chain or branch.
    #[must_use]
    pub fn node(&self, loc: Loc) -> Option<&Node> {
        fn find(steps: &[Step], loc: Loc) -> Option<&Node> {
            steps.iter().find_map(|s| match s {
                Step::Node(n, l) if *l == loc => Some(&**n),
                Step::Part { branches, .. } | Step::Use { branches, .. } => {
                    branches.iter().find_map(|b| find(&b.steps, loc))
                }
                _ => None,
            })
        }
        match self {
            Meaning::Station(st) => st.chains.iter().find_map(|c| find(&c.steps, loc)),
            Meaning::Chain(c) => find(&c.steps, loc),
            _ => None,
        }
    }
}
