//! Transmitters, receivers, antennas and loads.

use super::bundle::{ABOUT_ALWAYS, ABOUT_FIGURE, FROM, MATCH, MATCH_FILE, ORIGINS, RATINGS, noise};
use super::parts::{ONE_RATING_LINE, RETURN_LOSS_LINE, SWR_LINE};
use super::quantity as q;
use super::site::{BLOCKING, NOISES, OFFSET_IN_LINE, SIDEBAND_NOISE};
use super::types::Takes::{File, OneOf, Rest, Then, Value};
use super::types::{BLOCK, Block, Context, FileKind, Form, Slot, Subject, need, slots};
use super::words as w;

slots! { enum Tx { Power, Kind, Mode, Duty, Keyed, Foldback, Noise } }
static TX_SLOTS: &[Slot] = &[
    Slot::value(Tx::Power.id(), &q::POWER)
        .first()
        .says("power into the design impedance", "32 W"),
    Slot::one_of(Tx::Kind.id(), &w::POWER_KIND).says("what the power is", "carrier"),
    Slot::one_of(Tx::Mode.id(), &w::MODES).says("the mode", "fm"),
    Slot::word(Tx::Duty.id(), "duty", &[Value(&q::SHARE)]).says(
        "mean over peak power while keyed, in place of the mode's",
        "duty 35 %",
    ),
    Slot::word(
        Tx::Keyed.id(),
        "keyed",
        &[Value(&q::SHARE), Then("in", &Value(&q::TIME))],
    )
    .says(
        "share of the time the key is down, of each such window where one is stated",
        "keyed 50 %",
    ),
    Slot::word(
        Tx::Foldback.id(),
        "foldback",
        &[OneOf(w::AT_SWR), Value(&q::SWR)],
    )
    .says(
        "the SWR at which a transmitter turns itself down",
        "foldback swr 2",
    ),
    Slot::word(
        Tx::Noise.id(),
        "noise",
        &[Value(&q::SIDEBAND), OFFSET_IN_LINE[0], OFFSET_IN_LINE[1]],
    )
    .each()
    .says(
        "noise beside the carrier in 1 Hz, at an offset",
        "noise -145 dBc/Hz ± 3 dB at 600 kHz",
    ),
];

/// A transmitter.
pub(crate) static TRANSMITTER: Form = Form {
    word: "transmitter",
    also: &["tx"],
    noun: "a transmitter",
    doc: "A transmitter and its power into its design impedance.",
    examples: &[
        "transmitter TX1 32 W ± 5 % carrier, fm, read 2026-07-04 with W1 by QY2TEC",
        "transmitter TX1 { power 32 W carrier on 2m; mode fm }",
    ],
    subject: Subject::Tag,
    slots: &[TX_SLOTS, ABOUT_FIGURE],
    exclusive: ORIGINS,
    needs: &[need(
        Tx::Power.bit() | BLOCK,
        "a transmitter needs its power",
    )],
    block: Block::Lines(
        Context::Transmitter,
        &[
            &POWER_LINE,
            &MODE_LINE,
            &DUTY_LINE,
            &KEYED_LINE,
            &FOLDBACK_LINE,
            &SIDEBAND_NOISE,
            &BANDWIDTH_LINE,
        ],
    ),
    ..Form::EMPTY
};

static POWER_LINE: Form = Form {
    word: "power",
    noun: "a transmitter",
    doc: "Power into the design impedance.",
    examples: &["power 32 W carrier on 2m"],
    slots: &[TX_SLOTS, ABOUT_FIGURE],
    exclusive: ORIGINS,
    needs: &[need(Tx::Power.bit(), "a power follows")],
    ..Form::EMPTY
};

static MODE_LINE: Form = Form {
    word: "mode",
    also: &["modulation"],
    noun: "`mode`",
    doc: "Modulation.",
    examples: &["mode fm"],
    slots: &[&[Slot::one_of(0, &w::MODES).first().says("the mode", "fm")]],
    needs: &[need(1, "the mode follows")],
    ..Form::EMPTY
};

macro_rules! figure_line {
    ($($n:ident $w:literal $q:ident $noun:literal $needs:literal $doc:literal $ex:literal;)+) => {
        $(static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[
                &[Slot::value(0, &q::$q).first().says($doc, $ex)],
                ABOUT_ALWAYS,
            ],
            exclusive: ORIGINS,
            needs: &[need(1, $needs)],
            once: true,
            ..Form::EMPTY
        };)+
    };
}
figure_line! {
    DUTY_LINE "duty" SHARE "this line" "`duty` is followed by a percentage" "Mean over peak power while keyed." "35 %";
    BANDWIDTH_LINE "bandwidth" FREQUENCY "this line" "a bandwidth follows" "Width of what it sends, or of its receive channel." "12.6 kHz";
    EFFICIENCY_LINE "efficiency" SHARE "an efficiency" "a share follows" "Radiated over accepted power." "90 %";
}

static KEYED_LINE: Form = Form {
    word: "keyed",
    noun: "this line",
    doc: "Share of the time it is keyed; of each such window where one is stated.",
    examples: &["keyed 50 %", "keyed 50 % in 6 min"],
    slots: &[
        &[Slot::value(0, &q::SHARE)
            .first()
            .then(&[Then("in", &Value(&q::TIME))])
            .says("share of the time it is keyed", "50 % in 6 min")],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "`keyed` is followed by a percentage")],
    once: true,
    ..Form::EMPTY
};

static FOLDBACK_LINE: Form = Form {
    word: "foldback",
    noun: "this line",
    doc: "SWR at which it turns itself down.",
    examples: &["foldback swr 2"],
    slots: &[
        &[Slot::word(0, "swr", &[Value(&q::SWR)])
            .first()
            .says("an SWR", "swr 2")],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "`foldback` is followed by an SWR")],
    once: true,
    ..Form::EMPTY
};

slots! { enum Rx { Level, For, Noise, Blocking } }
static RX_SLOTS: &[Slot] = &[
    Slot::value(Rx::Level.id(), &q::SENSITIVITY)
        .first()
        .says("weakest usable signal", "-119 dBm"),
    Slot::word(Rx::For.id(), "for", &[Rest]).says(
        "the criterion of a sensitivity, `12 dB sinad`",
        "for 12 dB sinad",
    ),
    noise(Rx::Noise.id()),
    Slot::word(
        Rx::Blocking.id(),
        "blocking",
        &[Value(&q::LEVEL), OFFSET_IN_LINE[0], OFFSET_IN_LINE[1]],
    )
    .each()
    .says(
        "level of a carrier at an offset that it just withstands",
        "blocking -25 dBm ± 3 dB at 600 kHz",
    ),
];

/// A receiver.
pub(crate) static RECEIVER: Form = Form {
    word: "receiver",
    also: &["rx"],
    noun: "a receiver",
    doc: "A receiver, the end of a receive chain.",
    examples: &["receiver RX1 -119 dBm for 12 dB sinad, noise figure 6 dB"],
    subject: Subject::Tag,
    slots: &[RX_SLOTS, ABOUT_ALWAYS],
    exclusive: ORIGINS,
    block: Block::Lines(
        Context::Receiver,
        &[&SENSITIVITY_LINE, &NOISE_LINE, &BLOCKING, &BANDWIDTH_LINE],
    ),
    ..Form::EMPTY
};

static SENSITIVITY_LINE: Form = Form {
    word: "sensitivity",
    noun: "a receiver",
    doc: "Weakest usable signal.",
    examples: &["sensitivity -119 dBm for 12 dB sinad"],
    slots: &[RX_SLOTS, ABOUT_ALWAYS],
    exclusive: ORIGINS,
    needs: &[need(Rx::Level.bit(), "the weakest usable signal follows")],
    ..Form::EMPTY
};

static NOISE_LINE: Form = Form {
    word: "noise",
    noun: "a receiver",
    doc: "Noise figure.",
    examples: &["noise figure 6 dB"],
    slots: &[
        &[Slot::word(0, "figure", &[Value(&q::NOISE)])
            .first()
            .says("a noise figure", "figure 6 dB")],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "a noise figure follows")],
    once: true,
    ..Form::EMPTY
};

/// A radio that sends and receives.
pub(crate) static TRANSCEIVER: Form = Form {
    word: "transceiver",
    also: &["radio", "trx"],
    noun: "a transceiver",
    doc: "A radio that sends and receives on one line: first in the chain it sends on, last in the one it hears on.",
    examples: &[
        "transceiver TR1 25 W ± 10 % carrier, fm { sensitivity -117 dBm for 12 dB sinad; noise figure 8 dB }",
        "transceiver TR1 { power 25 W carrier; mode fm; sensitivity -117 dBm for 12 dB sinad; sensitivity -111 dBm for 20 dB sinad }",
    ],
    subject: Subject::Tag,
    slots: &[TX_SLOTS, ABOUT_FIGURE],
    exclusive: ORIGINS,
    needs: &[need(
        Tx::Power.bit() | BLOCK,
        "a transceiver needs its power",
    )],
    block: Block::Lines(
        Context::Transceiver,
        &[
            &POWER_LINE,
            &MODE_LINE,
            &DUTY_LINE,
            &KEYED_LINE,
            &FOLDBACK_LINE,
            &SENSITIVITY_LINE,
            &NOISES,
            &BLOCKING,
            &BANDWIDTH_LINE,
        ],
    ),
    ..Form::EMPTY
};

slots! { enum Antenna { Gain, Realized, Height, Size } }
const REALIZED: Slot = Slot::word(Antenna::Realized.id(), "realized", &[])
    .after(
        Antenna::Gain.id(),
        "is said of a gain, and none stands before it",
    )
    .says("the gain has the mismatch in it already", "realized");

/// An antenna.
pub(crate) static ANTENNA: Form = Form {
    word: "antenna",
    also: &["aerial", "dipole", "yagi", "collinear", "vertical", "whip"],
    noun: "an antenna",
    doc: "An antenna with its gain over isotropic (dBi) or a dipole (dBd).",
    examples: &[
        "antenna A1 4.5 dBi ± 0.5 dB, height 26 m agl",
        "antenna A1 { gain 5.2 dBi ± 0.5 dB on 2m; swr 1.3 on 2m }",
        "antenna A1 5.2 dBi, from \"a1.s1p\"",
    ],
    subject: Subject::Tag,
    slots: &[
        &[
            Slot::value(Antenna::Gain.id(), &q::GAIN)
                .first()
                .says("its gain", "4.5 dBi"),
            REALIZED,
            Slot::word(
                Antenna::Height.id(),
                "height",
                &[Value(&q::HEIGHT), OneOf(w::ABOVE_GROUND)],
            )
            .says(
                "height of its highest point above ground",
                "height 26 m agl",
            ),
            Slot::word(Antenna::Size.id(), "size", &[Value(&q::METRES)])
                .says("its length, from its highest point down", "size 2.7 m"),
        ],
        MATCH,
        RATINGS,
        MATCH_FILE,
        ABOUT_FIGURE,
    ],
    exclusive: ORIGINS,
    block: Block::Lines(
        Context::Antenna,
        &[
            &GAIN_LINE,
            &DIRECTIVITY_LINE,
            &EFFICIENCY_LINE,
            &IMPEDANCE_LINE,
            &MATCH_FILE_LINE,
            &RETURN_LOSS_LINE,
            &SWR_LINE,
            &HEIGHT_LINE,
            &SIZE_LINE,
            &super::pattern::PATTERN,
            &ONE_RATING_LINE,
        ],
    ),
    ..Form::EMPTY
};

/// A dummy load.
pub(crate) static LOAD: Form = Form {
    word: "load",
    also: &["dummy", "termination", "terminator", "dummy-load"],
    noun: "a load",
    doc: "A dummy load, which ends a chain.",
    examples: &[
        "load DL1, return-loss 30 dB, rating 300 W",
        "load DL1 from \"dl1.s1p\"",
    ],
    subject: Subject::Tag,
    slots: &[MATCH, RATINGS, MATCH_FILE, ABOUT_FIGURE],
    exclusive: ORIGINS,
    block: Block::Lines(
        Context::Antenna,
        &[
            &IMPEDANCE_LINE,
            &MATCH_FILE_LINE,
            &RETURN_LOSS_LINE,
            &SWR_LINE,
            &ONE_RATING_LINE,
        ],
    ),
    ..Form::EMPTY
};

macro_rules! gain_line {
    ($n:ident $w:literal $doc:literal $ex:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "a gain",
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[
                &[
                    Slot::value(Antenna::Gain.id(), &q::GAIN)
                        .first()
                        .says($doc, $ex),
                    REALIZED,
                ],
                ABOUT_FIGURE,
            ],
            exclusive: ORIGINS,
            needs: &[need(Antenna::Gain.bit(), "a gain follows")],
            ..Form::EMPTY
        };
    };
}
gain_line! { GAIN_LINE "gain" "Gain of an antenna in dBi or dBd." "5.2 dBi on 2m" }
gain_line! { DIRECTIVITY_LINE "directivity" "Of an antenna, directivity: gain is this times efficiency." "8 dBi" }

figure_line! {
    SIZE_LINE "size" METRES "a size" "a length follows" "Length of an antenna, from its highest point down." "2.7 m";
}

static HEIGHT_LINE: Form = Form {
    word: "height",
    noun: "a height",
    doc: "Height above ground, or above average terrain, which rules go by.",
    examples: &["height 26 m agl", "height 312 m ± 15 m haat"],
    slots: &[
        &[Slot::value(0, &q::HEIGHT)
            .first()
            .then(&[OneOf(w::ABOVE_WHAT)])
            .says("height of its highest point", "26 m agl")],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "a height follows")],
    ..Form::EMPTY
};

slots! { enum Impedance { Resistance, With, Reactance } }
static IMPEDANCE_LINE: Form = Form {
    word: "impedance",
    noun: "an impedance",
    doc: "Feed-point impedance of an antenna, or impedance of a load.",
    examples: &[
        "impedance 12 ohm with reactance -900 ohm on 80m",
        "impedance from \"a1.s1p\", read 2026-11-07 with V1",
    ],
    slots: &[
        &[
            Slot::value(Impedance::Resistance.id(), &q::IMPEDANCE)
                .first()
                .says("a resistance", "12 ohm"),
            Slot::phrase(
                Impedance::With.id(),
                "with",
                "reactance",
                &[Value(&q::REACTANCE)],
            )
            .says(
                "the reactance, negative for a capacitive one",
                "with reactance -900 ohm",
            ),
            Slot::word(
                Impedance::Reactance.id(),
                "reactance",
                &[Value(&q::REACTANCE)],
            )
            .alike("with")
            .says("the reactance", "reactance -900 ohm"),
        ],
        MATCH_FILE,
        ABOUT_FIGURE,
    ],
    exclusive: ORIGINS,
    needs: &[need(
        Impedance::Resistance.bit() | 1 << FROM,
        "a resistance follows",
    )],
    ..Form::EMPTY
};

static MATCH_FILE_LINE: Form = Form {
    word: "from",
    also: &["file", "touchstone"],
    noun: "an antenna's file",
    doc: "A one-port network file (Touchstone) with the match of an antenna or load.",
    examples: &["from \"a1.s1p\" on 2m"],
    slots: &[
        &[Slot::bare(FROM, &File(FileKind::OnePort))
            .first()
            .says("a network file", "\"a1.s1p\"")],
        ABOUT_FIGURE,
    ],
    exclusive: ORIGINS,
    needs: &[need(1 << FROM, "a path in quotes follows")],
    ..Form::EMPTY
};
