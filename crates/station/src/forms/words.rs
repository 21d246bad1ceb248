//! Closed sets of words inside statements.

use super::types::{Set, Word, word};
use crate::model::PartKind;

/// Kinds of power a limit can be on.
pub(crate) const RADIATED: Set = Set {
    words: &[
        word("erp", "radiated power over a half-wave dipole"),
        word(
            "eirp",
            "radiated power over an isotropic radiator, 2.15 dB more than ERP",
        ),
        word("output", "the power at this place of the chain"),
    ],
    rule: "A limit is on ERP, on EIRP or on the transmitter's output.",
    instead: "Two limits are two lines.",
};

/// What a power is stated as.
pub(crate) const POWER_KIND: Set = Set {
    words: &[
        word("carrier", "power without modulation"),
        word("pep", "peak envelope power"),
        word("mean", "mean power while keyed"),
    ],
    rule: "A power is that of the carrier, the peak envelope or the mean.",
    instead: "One is enough: the others follow from the mode.",
};

/// Modes of a transmitter.
pub(crate) const MODES: Set = Set {
    words: &[
        word("fm", "frequency modulation: mean equals peak"),
        word("data", "constant envelope: mean equals peak"),
        word("cw", "Morse: 0.4 of the peak while keyed"),
        word("ssb", "single sideband speech: 0.2 of the peak while keyed"),
        word(
            "ssb-processed",
            "processed single sideband speech: 0.5 of the peak while keyed",
        ),
        word(
            "am",
            "amplitude modulation: the mean is 1.5 times, the peak 4 times the carrier",
        ),
    ],
    rule: "A transmitter has one mode.",
    instead: "For another mode write another transmitter, `transmitter TX2 32 W carrier, am`.",
};

/// Which power a reading is.
pub(crate) const WAVES: Set = Set {
    words: &[
        word("forward", "power of the wave towards the antenna"),
        word("reflected", "power of the wave coming back"),
        word("net", "forward less reflected power"),
    ],
    rule: "A reading of power is forward, reflected or net power.",
    instead: "Two readings are two `read` lines.",
};

/// What a figure of a sheet promises.
pub(crate) const PROMISE: Set = Set {
    words: &[
        word("typical", "what a sheet's figure promises: typical"),
        Word {
            word: "nominal",
            alike: Some("typical"),
            doc: "what a sheet's figure promises: typical",
        },
        word("maximum", "what a sheet's figure promises: never more"),
    ],
    rule: "A figure is typical or a maximum.",
    instead: "If the sheet gives both, write the typical one with a `±` that reaches the maximum.",
};

/// Where the loss of a balun sits.
pub(crate) const SITS: Set = Set {
    words: &[
        word(
            "series",
            "of a balun's loss: in series with the line, it grows with the current",
        ),
        word(
            "shunt",
            "of a balun's loss: across the line, it grows with the voltage",
        ),
    ],
    rule: "The loss of a balun is in series with the line or across it.",
    instead: "Write the larger of the two, or two parts.",
};

/// How the branches of a chain add.
pub(crate) const PHASING: Set = Set {
    words: &[
        word("in phase", "the fields of the branches add"),
        word(
            "apart",
            "the branches look in different directions: the strongest one counts",
        ),
    ],
    rule: "Branches add in phase or look apart.",
    instead: "",
};

/// Direction of a chain.
pub(crate) const DIRECTION: Set = Set {
    words: &[
        word(
            "transmit",
            "the chain towards the antenna, and the band's transmit frequency",
        ),
        word(
            "receive",
            "the chain from the antenna, and the band's receive frequency",
        ),
    ],
    rule: "A chain transmits or receives.",
    instead: "The other direction is another chain.",
};

/// Datums of a position.
pub(crate) const DATUMS: Set = Set {
    words: &[
        word(
            "wgs84",
            "datum of the position: what a satellite receiver shows",
        ),
        word("etrs89", "datum of the position: Europe"),
        word("nad83", "datum of the position: North America"),
        word("nad27", "datum of the position: North America, older maps"),
    ],
    rule: "A position has one datum.",
    instead: "",
};

/// Kinds of device.
pub(crate) const KINDS: Set = Set {
    words: &KIND_WORDS,
    rule: "A device is of one kind.",
    instead: "",
};

/// How many kinds of device there are.
const DEVICES: usize = {
    let (mut n, mut i) = (0, 0);
    while i < PartKind::ALL.len() {
        n += PartKind::ALL[i].is_definable() as usize;
        i += 1;
    }
    n
};

const KIND_WORDS: [Word; DEVICES] = {
    let mut out = [const { word("", "") }; DEVICES];
    let (mut n, mut i) = (0, 0);
    while i < PartKind::ALL.len() {
        if PartKind::ALL[i].is_definable() {
            out[n] = word(PartKind::ALL[i].word(), "a kind of device");
            n += 1;
        }
        i += 1;
    }
    out
};

/// Conductors a cable may say it has.
pub(crate) const CONDUCTORS: Set = Set {
    words: &[word("clad", "a copper-clad steel centre conductor")],
    rule: "A conductor is of one kind.",
    instead: "",
};

/// What stands between a drift and its time.
pub(crate) const IN: &[Word] = &[word("in", "the time it takes")];
/// What follows `noise`.
pub(crate) const FIGURE: &[Word] = &[word("figure", "how much noise it adds, in dB")];
/// What follows `foldback`.
pub(crate) const AT_SWR: &[Word] = &[word("swr", "the SWR at which it turns itself down")];
/// North or south.
pub(crate) const LATITUDE: &[Word] = &[word("N", "north"), word("S", "south")];
/// East or west.
pub(crate) const LONGITUDE: &[Word] = &[word("E", "east"), word("W", "west")];
/// What a height of an antenna is above.
pub(crate) const ABOVE_GROUND: &[Word] = &[word("agl", "above ground level")];
/// What a height of an antenna can be above in its block.
pub(crate) const ABOVE_WHAT: &[Word] = &[
    word("agl", "above ground level"),
    word("haat", "above average terrain"),
];
/// What a height of the ground is above.
pub(crate) const ABOVE_SEA: &[Word] = &[word("amsl", "above mean sea level")];
/// What a share of an instrument is of.
pub(crate) const SHARE_OF: &[Word] = &[
    word("reading", "the share is of the reading"),
    word("full scale", "the share is of the scale"),
];
/// What a share of a spread is of.
pub(crate) const OF_READING: &[Word] = &[word("reading", "the share is of the reading")];

/// The sets of which two words exclude each other.
pub(crate) static SETS: &[&Set] = &[&RADIATED, &POWER_KIND, &MODES, &WAVES, &PROMISE, &SITS];
