//! The keyword table: every statement word, where it may stand, how it is written.
//!
//! The language reference, completion, signature help and the highlighters are generated from
//! or tested against this table.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

/// Where a statement may stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Context {
    /// At the left margin.
    Top,
    /// In a band's block.
    Band,
    /// In a cable's block.
    Cable,
    /// In a cable's `construction` or `wires` block.
    Construction,
    /// In a connector's block.
    Connector,
    /// In an instrument's block.
    Instrument,
    /// In a station's block.
    Station,
    /// In a chain or branch.
    Chain,
    /// In a place's block.
    Place,
    /// In a device's block (also a device definition).
    Device,
    /// In a transmitter's block.
    Transmitter,
    /// In a receiver's block.
    Receiver,
    /// In an antenna's or load's block.
    Antenna,
    /// In a bench session.
    Session,
    /// Among the readings of a bench session.
    Readings,
    /// In a block of frequencies and losses.
    Table,
}

impl Context {
    /// In words.
    #[must_use]
    pub fn words(self) -> &'static str {
        match self {
            Context::Top => "at the left margin",
            Context::Band => "in a band",
            Context::Cable => "in a cable",
            Context::Construction => "in a cable's construction",
            Context::Connector => "in a connector",
            Context::Instrument => "in an instrument",
            Context::Station => "in a station",
            Context::Chain => "in a chain",
            Context::Place => "in a place",
            Context::Device => "in a device",
            Context::Transmitter => "in a transmitter",
            Context::Receiver => "in a receiver",
            Context::Antenna => "in an antenna",
            Context::Session => "in a session",
            Context::Readings => "among readings",
            Context::Table => "in a table",
        }
    }
}

/// One keyword.
#[derive(Debug)]
pub struct Keyword {
    /// The word.
    pub word: &'static str,
    /// Where it begins a statement.
    pub contexts: &'static [Context],
    /// How it is written.
    pub signature: &'static str,
    /// What it says, in one sentence.
    pub doc: &'static str,
}

use Context::{
    Antenna, Band, Cable, Chain, Connector, Construction, Device, Instrument, Place, Readings,
    Receiver, Session, Station, Top, Transmitter,
};

macro_rules! keywords {
    ($($word:literal [$($cx:ident),+] $sig:literal $doc:literal;)+) => {
        /// All statement keywords.
        pub static KEYWORDS: &[Keyword] = &[
            $(Keyword { word: $word, contexts: &[$($cx),+], signature: $sig, doc: $doc }),+
        ];
    };
}

keywords! {
    "use" [Top] "use \"PATH\"" "Brings in the definitions of another file, which must lie below the root.";
    "band" [Top, Instrument] "band NAME FREQUENCY | band NAME LOW to HIGH | band NAME { transmit F; receive F }" "Names a frequency, a range, or a transmit and receive pair; in an instrument, where it may be used.";
    "let" [Top] "let NAME = VALUE" "Names a value; arithmetic keeps its kind.";
    "cable" [Top] "cable NAME \"title\" { … }" "Defines a cable by coefficients, data-sheet table or construction.";
    "connector" [Top, Station, Chain] "connector NAME { … } | connector [COUNT of] NAME" "Defines a mated pair, or puts pairs into a chain.";
    "adapter" [Station, Chain] "adapter [TAG] NAME" "An adapter between two connector families.";
    "device" [Top] "device NAME \"title\" { kind KIND … }" "Defines a device that parts can be examples `of`.";
    "instrument" [Top] "instrument NAME \"title\" { accuracy … }" "Defines a measuring instrument.";
    "session" [Top] "session NAME \"title\" { … }" "A bench session: pieces of cable and their readings.";
    "station" [Top] "station TAG \"title\" { … }" "A station: places, parts and chains.";
    "chain" [Top, Station] "chain NAME on BAND[, BAND] [transmit | receive] { … }" "The walk along the cable, one part a line.";
    "position" [Station] "position LATITUDE LONGITUDE, DATUM" "Where the station is.";
    "ground" [Station] "ground 612 m amsl" "Height of the ground above mean sea level.";
    "place" [Station] "place NAME { temperature T }" "A place with its temperature.";
    "joins" [Station, Connector, Chain] "joins CONNECTOR | joins FAMILY to FAMILY" "The join between two neighbours with no connector between; in a connector, the two families it joins.";
    "transmitter" [Station, Chain] "transmitter [TAG] POWER [carrier | pep | mean], MODE …" "A transmitter and its power into its design impedance.";
    "receiver" [Station, Chain] "receiver [TAG] LEVEL for CRITERION, noise figure NF" "A receiver, the end of a receive chain.";
    "run" [Station, Chain] "run [TAG] LENGTH [at FREQUENCY] of CABLE, PLACE … | run [TAG] from \"FILE\"" "A main run of cable.";
    "jumper" [Station, Chain] "jumper [TAG] LENGTH [at FREQUENCY] of CABLE, PLACE … | jumper [TAG] from \"FILE\"" "A short cable between devices.";
    "tail" [Station, Chain] "tail [TAG] LENGTH [at FREQUENCY] of CABLE, PLACE … | tail [TAG] from \"FILE\"" "A flexible cable at the end of a run.";
    "pad" [Station, Chain] "pad [TAG] LOSS | pad [TAG] from \"FILE\"" "An attenuator.";
    "filter" [Station, Chain] "filter [TAG] LOSS, passes LOW to HIGH | filter [TAG] from \"FILE\"" "A filter.";
    "isolator" [Station, Chain] "isolator [TAG] LOSS | isolator [TAG] from \"FILE\"" "An isolator with its load.";
    "circulator" [Station, Chain] "circulator [TAG] LOSS | circulator [TAG] from \"FILE\"" "A circulator.";
    "protector" [Station, Chain] "protector [TAG] LOSS | protector [TAG] from \"FILE\"" "A surge protector.";
    "switch" [Station, Chain] "switch [TAG] LOSS | switch [TAG] from \"FILE\" | switch TAG { port NAME LOSS }" "A switch or relay.";
    "coupler" [Station, Chain] "coupler [TAG] 20 dB coupled | coupler [TAG] from \"FILE\"" "A directional coupler in the main line.";
    "meter" [Station, Chain] "meter [TAG] LOSS | meter [TAG] from \"FILE\"" "A through-line meter left in the line.";
    "balun" [Station, Chain] "balun [TAG] LOSS [series | shunt], ratio 4:1 | balun [TAG] from \"FILE\"" "A balun or choke, with its ratio of impedances.";
    "tuner" [Station, Chain] "tuner [TAG] LOSS | tuner [TAG] from \"FILE\"" "A tuner: the net power into the line becomes the rated one; from a file, what it does at that setting.";
    "duplexer" [Station, Chain] "duplexer TAG { high LOSS, rejects R at F; low LOSS, rejects R at F }" "Parts transmit and receive of one band.";
    "diplexer" [Station, Chain] "diplexer TAG { high LOSS, rejects R on BAND; low LOSS, rejects R on BAND }" "Joins two bands on one line.";
    "combiner" [Station, Chain] "combiner TAG { port NAME LOSS, rejects R }" "Joins several transmitters.";
    "divider" [Station, Chain] "divider [TAG] 2 way, excess LOSS | divider [TAG] split 70 % 30 % | divider [TAG] tee" "Divides the power among branches.";
    "branch" [Chain] "branch [NAME] { … }" "One branch behind a divider.";
    "branches" [Chain] "branches in phase | branches apart" "How the fields of the branches add.";
    "amplifier" [Station, Chain] "amplifier [TAG] GAIN gain | amplifier [TAG] from \"FILE\"" "An amplifier.";
    "preamplifier" [Station, Chain] "preamplifier [TAG] GAIN gain, noise figure NF | preamplifier [TAG] from \"FILE\", noise figure NF" "A receive amplifier.";
    "load" [Station, Chain, Session] "load [TAG], rating POWER | load return-loss 26 dB | load [TAG] from \"FILE\"" "A dummy load, which ends a chain; on the bench, its match.";
    "antenna" [Station, Chain] "antenna [TAG] GAIN, from \"FILE\"" "An antenna with its gain over isotropic (dBi) or a dipole (dBd).";
    "read" [Chain, Session] "read POWER forward | reflected | net, DATE with INSTRUMENT by WHO | read DATE with INSTRUMENT by WHO" "What was read here; on the bench, `read DATE with INSTRUMENT by WHO` for all readings.";
    "expect" [Chain] "expect POWER | expect loss LOSS | expect swr SWR | expect erp POWER" "What the computed value here must be.";
    "limit" [Chain, Connector] "limit POWER erp | eirp | output [pep | carrier | mean], \"document\" | limit FREQUENCY" "What must not be exceeded; of a connector, its highest frequency.";
    "transmit" [Band] "transmit FREQUENCY" "The transmit frequency.";
    "receive" [Band] "receive FREQUENCY" "The receive frequency.";
    "temperature" [Place, Session] "temperature T | temperature T1 to T2" "The temperature there.";
    "impedance" [Cable, Antenna] "impedance 50 ohm | impedance R ohm with reactance X ohm | impedance from \"FILE\"" "Characteristic impedance; of an antenna, its feed-point impedance.";
    "velocity" [Cable] "velocity 0.88 ± 0.01" "Velocity factor.";
    "loss" [Cable, Connector, Device] "loss K1 + K2 | loss typical at 20 °C { FREQUENCY RATE } | loss from \"FILE\" of LENGTH | loss LOSS on BAND" "Loss of the cable, connector or device.";
    "construction" [Cable] "construction { inner D; outer D; permittivity E … }" "A coaxial cable by its dimensions.";
    "wires" [Cable] "wires { diameter D; spacing S }" "A parallel-wire line by its dimensions.";
    "valid" [Cable] "valid LOW to HIGH" "Frequencies the loss is good for.";
    "accuracy" [Cable, Instrument] "accuracy 5 % k 1 [to FREQUENCY], shared NAME | accuracy 5 % of reading | of full scale" "How far the figures may be off.";
    "rating" [Cable, Connector, Device, Antenna] "rating POWER [at FREQUENCY], ambient T, conductor T" "Mean power it may carry.";
    "voltage" [Cable, Connector, Device] "voltage 1900 V" "Working voltage, rms.";
    "size" [Cable] "size 10.3 mm" "Diameter over the jacket.";
    "conductor" [Cable] "conductor clad" "A copper-clad steel centre conductor.";
    "source" [Cable, Connector, Device, Instrument] "source \"document, page\"" "Where the figures come from.";
    "inner" [Construction] "inner D" "Diameter over the inner conductor.";
    "outer" [Construction] "outer D" "Inner diameter of the outer conductor.";
    "permittivity" [Construction] "permittivity E" "Relative permittivity of the dielectric.";
    "loss-tangent" [Construction] "loss-tangent T" "Loss tangent of the dielectric.";
    "strand" [Construction] "strand 1.25" "Factor of a stranded inner conductor on its resistance (1 is solid).";
    "strand-diameter" [Construction] "strand-diameter 0.97" "Effective diameter of a stranded inner conductor over the one over its strands, for the impedance.";
    "braid" [Construction] "braid 1.9" "Factor of the outer conductor on its resistance (1 is a smooth tube).";
    "resistivity" [Construction] "resistivity 1.7241e-8 ohm-m" "Resistivity of the conductors.";
    "inner-resistivity" [Construction] "inner-resistivity 2.8e-8 ohm-m" "Resistivity of the inner conductor, where the two differ.";
    "outer-resistivity" [Construction] "outer-resistivity 2.8e-8 ohm-m" "Resistivity of the outer conductor, where the two differ.";
    "diameter" [Construction] "diameter 2 mm" "Diameter of each wire.";
    "spacing" [Construction] "spacing 150 mm" "Distance between the wires' centres.";
    "family" [Connector] "family n" "Connector family.";
    "bump" [Connector] "bump 33.3 ohm 49.0 mm" "The pair as a short line of another impedance, by its electrical length.";
    "calibrated" [Instrument] "calibrated 2026-01-10" "Date of the last calibration.";
    "scale" [Instrument] "scale 100 W" "Full scale.";
    "resolution" [Instrument] "resolution 0.1 W" "Smallest step that can be read.";
    "due" [Instrument] "due 2028-01-10" "Date its next calibration is due.";
    "linearity" [Instrument] "linearity 1 %" "Part of its error that does not cancel between two of its own readings.";
    "repeatability" [Instrument] "repeatability 0.6 % k 1" "Spread of one reading.";
    "generator" [Session] "generator return-loss 20 dB | generator swr 1.2" "Match of the generator's end of the bench.";
    "piece" [Session] "piece TAG LENGTH of CABLE, connector COUNT of NAME" "A piece of cable on the bench, with the joins that come with it.";
    "readings" [Session, Chain] "readings on BAND { … } | readings from \"FILE\"" "Readings on one band, in the order of time; or those of a CSV file, in a chain the ones that were read here.";
    "resonance" [Session] "resonance TAG FREQUENCY" "Distance between two resonances of a piece whose far end is open or shorted.";
    "delay" [Session] "delay TAG TIME" "One-way delay through a piece.";
    "phase" [Session] "phase TAG ANGLE over FREQUENCY" "How far the phase of the reflection turns over a span of frequency.";
    "baseline" [Readings] "baseline READING at TIME, adapter NAME" "What the meter shows with no piece in the line.";
    "through" [Readings] "through TAG READING at TIME | through TAG from \"FILE\"" "What the meter shows behind the piece.";
    "open" [Readings] "open TAG RETURN-LOSS | open TAG from \"FILE\"" "Return loss of the piece with its far end open.";
    "short" [Readings] "short TAG RETURN-LOSS | short TAG from \"FILE\"" "Return loss of the piece with its far end shorted.";
    "equalise" [Readings] "equalise READING with INSTRUMENT, against READING with INSTRUMENT" "What two meters show one behind the other.";
    "kind" [Device] "kind KIND" "What kind of device it is.";
    "high" [Device] "high LOSS, passes LOW to HIGH, rejects LOSS at FREQUENCY | high from \"FILE\", passes LOW to HIGH" "The leg for the higher frequency.";
    "low" [Device] "low LOSS, passes LOW to HIGH, rejects LOSS at FREQUENCY | low from \"FILE\", passes LOW to HIGH" "The leg for the lower frequency.";
    "port" [Device] "port NAME LOSS, rejects LOSS on BAND | port NAME from \"FILE\"" "A port, its loss to the common one, and what it keeps off.";
    "from" [Device, Antenna] "from \"FILE\" [reversed] [on BAND], accuracy 0.1 dB" "A network file (Touchstone) with its figures: .s2p of a part, .s1p of an antenna or load.";
    "isolation" [Device] "isolation 25 dB" "What an isolator or circulator loses the wrong way round.";
    "ratio" [Device] "ratio 4:1" "Of a balun: impedance of the side away from the transmitter over that of the transmitter's side.";
    "split" [Device] "split 70 % 30 %" "Of a divider: the share of the power that each branch gets, or the loss to it in dB.";
    "tee" [Device] "tee" "Of a divider: its branches are just joined in parallel.";
    "reversed" [Device] "reversed" "The part lies the other way round: of an isolator, circulator, coupler or amplifier, or of a network file.";
    "return-loss" [Connector, Device, Antenna] "return-loss 20 dB" "Return loss: of a device's ports, the ends of a line, a pair of connectors, an antenna, an end of the bench.";
    "swr" [Connector, Device, Antenna] "swr 1.3 [on BAND]" "SWR: of a device's ports, the ends of a line, a pair of connectors, an antenna, an end of the bench.";
    "passes" [Device] "passes LOW to HIGH" "Pass band.";
    "gain" [Device, Antenna] "gain 5.2 dBi [realized] on BAND" "Gain: of an antenna in dBi or dBd, of an amplifier in dB.";
    "noise" [Device, Receiver] "noise figure 6 dB" "Noise figure.";
    "excess" [Device] "excess 0.3 dB" "Loss of a divider beyond the division.";
    "ways" [Device] "ways 2" "Number of branches.";
    "coupled" [Device] "coupled 20 dB" "Coupling of a coupler.";
    "power" [Transmitter] "power 32 W carrier on BAND" "Power into the design impedance.";
    "mode" [Transmitter] "mode fm | data | cw | ssb | ssb-processed | am" "Modulation.";
    "duty" [Transmitter] "duty 35 %" "Mean over peak power while keyed.";
    "keyed" [Transmitter] "keyed 50 %" "Share of the time it is keyed.";
    "foldback" [Transmitter] "foldback swr 2" "SWR at which it turns itself down.";
    "sensitivity" [Receiver] "sensitivity -119 dBm for 12 dB sinad" "Weakest usable signal.";
    "directivity" [Antenna, Instrument] "directivity 8 dBi | directivity 40 dB" "Of an antenna, directivity: gain is this times efficiency; of a reflection meter, how well it parts the two waves.";
    "efficiency" [Antenna] "efficiency 90 %" "Radiated over accepted power.";
    "height" [Antenna] "height 26 m agl" "Height above ground.";
}

/// Words that begin a qualifier or stand inside a statement.
pub static WORDS: &[&str] = &[
    "of",
    "on",
    "at",
    "to",
    "with",
    "by",
    "for",
    "k",
    "since",
    "read",
    "corrected",
    "sheet",
    "rated",
    "displayed",
    "guess",
    "typical",
    "maximum",
    "nominal",
    "forward",
    "reflected",
    "net",
    "carrier",
    "pep",
    "mean",
    "erp",
    "eirp",
    "output",
    "transmit",
    "receive",
    "agl",
    "amsl",
    "haat",
    "added",
    "wet",
    "ends",
    "shared",
    "passes",
    "rejects",
    "realized",
    "coupled",
    "way",
    "excess",
    "gain",
    "noise",
    "figure",
    "reactance",
    "reading",
    "full",
    "scale",
    "ambient",
    "conductor",
    "per",
    "in",
    "phase",
    "apart",
    "fm",
    "data",
    "cw",
    "ssb",
    "ssb-processed",
    "am",
    "sinad",
    "wgs84",
    "nad83",
    "nad27",
    "etrs89",
    "duty",
    "keyed",
    "foldback",
    "swr",
    "loss",
    "rating",
    "rated",
    "clad",
    "reference",
    "from",
    "reversed",
    "ratio",
    "series",
    "shunt",
    "split",
    "tee",
    "over",
    "input",
    "against",
    "connector",
    "adapter",
];

/// Keywords that may begin a statement there.
pub fn keywords_in(cx: Context) -> impl Iterator<Item = &'static Keyword> {
    KEYWORDS.iter().filter(move |k| k.contexts.contains(&cx))
}

/// The table's entry of a word.
#[must_use]
pub fn keyword(word: &str) -> Option<&'static Keyword> {
    // asked for every line of a text
    static BY_WORD: LazyLock<FxHashMap<&str, &Keyword>> =
        LazyLock::new(|| KEYWORDS.iter().rev().map(|k| (k.word, k)).collect());
    BY_WORD.get(word).copied()
}
