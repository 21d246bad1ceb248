//! Lines and devices: parts between the ends of a chain.

use super::bundle::{
    ABOUT_ALWAYS, ABOUT_AT, ABOUT_FIGURE, ABOUT_WARM, DIRECTED, FROM, MATCH, MATCHES, NETWORK,
    ONE_ORIGIN, ORIGINS, RATINGS, ends, noise,
};
use super::cable::SOURCE;
use super::quantity as q;
use super::top::TITLE;
use super::types::Takes::{Counted, Filler, Name, Range, Then, Value, Values};
use super::types::{
    BLOCK, Block, Context, Exclusive, Form, NameKind, Need, Slot, Stands, Subject, need, slots,
};
use super::words as w;

// ---- lines

slots! { enum Line { Length, Loss, Of, Added, Wet, Ends, Place, Connector, Adapter } }

const LINE: [Slot; 6] = [
    Slot::value(Line::Length.id(), &q::LENGTH)
        .first()
        .then(&[Then("at", &Value(&q::FREQUENCY))])
        .says("how long it is", "46 m"),
    Slot::value(Line::Loss.id(), &q::LOSS)
        .first()
        .says("its loss, where no cable is named", "1.2 dB"),
    Slot::word(Line::Of.id(), "of", &[Name(NameKind::Cable)])
        .after(
            Line::Length.id(),
            "names the cable of a length, and no length stands before it",
        )
        .says("names the cable", "of half-inch-foam"),
    Slot::word(Line::Added.id(), "added", &[Value(&q::LOSS)])
        .figure()
        .says(
            "loss a cable has beyond its table: age, water",
            "added 1.35 dB on 2m",
        )
        .also(&["extra", "ageing"]),
    Slot::word(Line::Wet.id(), "wet", &[Value(&q::LOSS)])
        .figure()
        .says(
            "further loss in rain, reported beside the result",
            "wet 0.5 dB",
        ),
    ends(Line::Ends.id()),
];

const PLACE: Slot = Slot::place(Line::Place.id()).says("where it is, for its temperature", "mast");

static LINE_SLOTS: &[Slot] = &{
    let [a, b, c, d, e, f] = LINE;
    [a, b, c, d, e, f, PLACE]
};

static PIECE_SLOTS: &[Slot] = &{
    let [a, b, c, d, e, f] = LINE;
    [
        a,
        b,
        c,
        d,
        e,
        f,
        Slot::word(
            Line::Connector.id(),
            "connector",
            &[Counted(NameKind::Connector)],
        )
        .each()
        .says(
            "connector pairs that come into the line with it",
            "connector 2 of n-pair",
        ),
        Slot::word(
            Line::Adapter.id(),
            "adapter",
            &[Counted(NameKind::Connector)],
        )
        .each()
        .says(
            "adapters that come into the line with it",
            "adapter n-to-uhf",
        ),
    ]
};

const LENGTH_OR_LOSS: u64 = Line::Length.bit() | Line::Loss.bit();

const ONE_LOSS: Exclusive = Exclusive {
    slots: Line::Loss.bit() | Line::Length.bit() | 1 << FROM,
    rule: "The loss of a line is that of its cable, a figure or a file.",
    instead: "",
};

macro_rules! line {
    ($n:ident $w:literal $also:expr, $doc:literal $tag:literal) => {
        pub(crate) static $n: Form = Form {
            word: $w,
            also: $also,
            noun: concat!("a ", $w),
            doc: $doc,
            examples: &[
                concat!($w, " ", $tag, " 46 m of half-inch-foam, mast"),
                concat!(
                    $w,
                    " ",
                    $tag,
                    " 46 m ± 0.5 m of rg-213, added 1.35 dB on 2m, read 2026-07-04"
                ),
                concat!($w, " ", $tag, " from \"m1.s2p\" reversed, accuracy 0.1 dB"),
            ],
            subject: Subject::Tag,
            slots: &[LINE_SLOTS, MATCHES, NETWORK, ABOUT_WARM],
            exclusive: &[ONE_ORIGIN, ONE_LOSS],
            needs: &[
                need(
                    LENGTH_OR_LOSS | 1 << FROM | BLOCK,
                    concat!("a ", $w, " needs a length and a cable, or a loss"),
                ),
                Need {
                    when: Line::Length.bit(),
                    one_of: Line::Of.bit(),
                    what: "`of` and the cable's name follow the length",
                },
            ],
            block: Block::Lines(
                Context::Device,
                &[&LOSS_LINE, &FROM_LINE, &RETURN_LOSS_LINE, &SWR_LINE],
            ),
            ..Form::EMPTY
        };
    };
}
line! { RUN "run" &["feeder", "feedline", "coax", "line", "mainline", "transmission-line"], "A main run of cable." "M1" }
line! { JUMPER "jumper" &["patch", "patch-lead", "patch-cable", "lead"], "A short cable between devices." "J1" }
line! { TAIL "tail" &["pigtail", "flylead"], "A flexible cable at the end of a run." "T1" }

/// A piece of cable on the bench.
pub(crate) static PIECE: Form = Form {
    word: "piece",
    also: &["sample"],
    noun: "a piece",
    doc: "A piece of cable on the bench, with the joins that come with it.",
    examples: &[
        "piece A 22.60 m ± 0.03 m of rg-213, connector 2 of n-pair",
        "piece A 22.60 m of rg-213, return-loss 26 dB",
    ],
    subject: Subject::New(NameKind::Tag),
    slots: &[PIECE_SLOTS, MATCHES, ABOUT_WARM],
    exclusive: ORIGINS,
    needs: &[
        need(
            LENGTH_OR_LOSS,
            "a piece needs a length and a cable, or a loss",
        ),
        Need {
            when: Line::Length.bit(),
            one_of: Line::Of.bit(),
            what: "`of` and the cable's name follow the length",
        },
    ],
    block: Block::Lines(Context::Device, &[&LOSS_LINE, &RETURN_LOSS_LINE, &SWR_LINE]),
    ..Form::EMPTY
};

// ---- devices

slots! {
    enum Device {
        Figure, Of, Passes, Isolation, Excess, Noise, Ends, Place, Ways, Split, Tee, Ratio, Sits,
        Coupled
    }
}

const LOSS: Slot = Slot::value(Device::Figure.id(), &q::LOSS)
    .first()
    .says("its loss", "0.55 dB ± 0.15 dB");
const OF: Slot = Slot::word(Device::Of.id(), "of", &[Name(NameKind::Device)])
    .stands(Stands::Start)
    .says("the device it is an example of", "of isolator-single");
const PASSES: Slot = Slot::word(Device::Passes.id(), "passes", &[Range(&q::FREQUENCY)])
    .each()
    .says("pass band", "passes 144 MHz to 148 MHz");
const ISOLATION: Slot = Slot::word(Device::Isolation.id(), "isolation", &[Value(&q::LOSS)]).says(
    "what an isolator or circulator loses the wrong way round",
    "isolation 25 dB",
);
const DEVICE_PLACE: Slot =
    Slot::place(Device::Place.id()).says("where it is, for its temperature", "mast");
const DEVICE_ENDS: Slot = ends(Device::Ends.id());
const AMPLIFIER_GAIN: Slot = Slot::value(Device::Figure.id(), &q::GAIN_DB)
    .first()
    .then(&[Filler(&["gain"])])
    .says("gain of an amplifier", "13 dB gain");
const SITS: Slot =
    Slot::one_of(Device::Sits.id(), &w::SITS).says("where the loss of a balun sits", "series");
const RATIO: Slot = Slot::word(Device::Ratio.id(), "ratio", &[Value(&q::NUMBER)]).says(
    "of a balun, impedance away from the transmitter over that on its side",
    "ratio 4:1",
);

static ONE_WAY: &[Slot] = &[LOSS, OF, PASSES, DEVICE_ENDS, DEVICE_PLACE];
static WITH_ISOLATION: &[Slot] = &[LOSS, OF, PASSES, ISOLATION, DEVICE_ENDS, DEVICE_PLACE];
static BALUN_SLOTS: &[Slot] = &[LOSS, SITS, RATIO, OF, PASSES, DEVICE_ENDS, DEVICE_PLACE];
static AMPLIFIER_SLOTS: &[Slot] = &[
    AMPLIFIER_GAIN,
    OF,
    PASSES,
    noise(Device::Noise.id()),
    DEVICE_ENDS,
    DEVICE_PLACE,
];
static COUPLER_SLOTS: &[Slot] = &[
    Slot::value_as(Device::Coupled.id(), &q::LOSS, "coupled")
        .first()
        .says("coupling of a coupler", "20 dB coupled"),
    Slot::value(Device::Figure.id(), &q::LOSS).says("loss of its main line", "0.3 dB"),
    OF,
    PASSES,
    DEVICE_ENDS,
    DEVICE_PLACE,
];
static DIVIDER_SLOTS: &[Slot] = &[
    Slot::value(Device::Ways.id(), &q::COUNT)
        .first()
        .then(&[Filler(&["way", "ways"])])
        .says("into how many branches it divides", "2 way"),
    Slot::value(Device::Figure.id(), &q::LOSS)
        .says("loss to each branch, in place of the division", "3.3 dB"),
    Slot::word(Device::Split.id(), "split", &[Values(&q::SHARE_OR_LOSS)]).says(
        "share of the power that each branch of a divider gets, in their order",
        "split 70 % 30 %",
    ),
    Slot::word(Device::Tee.id(), "tee", &[]).says(
        "a plain junction: its branches are just joined in parallel",
        "tee",
    ),
    OF,
    PASSES,
    Slot::word(Device::Excess.id(), "excess", &[Value(&q::LOSS)])
        .figure()
        .says("loss of a divider beyond the division", "excess 0.3 dB"),
    DEVICE_ENDS,
    DEVICE_PLACE,
];

macro_rules! device {
    ($n:ident $w:literal $noun:literal $also:expr, $slots:ident $network:ident $doc:literal
     [$($ex:expr),+] [$($line:ident),*]) => {
        pub(crate) static $n: Form = Form {
            word: $w,
            also: $also,
            noun: $noun,
            doc: $doc,
            examples: &[$($ex),+],
            subject: Subject::Tag,
            slots: &[$slots, MATCH, RATINGS, $network, ABOUT_WARM],
            exclusive: ORIGINS,
            block: Block::Lines(
                Context::Device,
                &[
                    &LOSS_LINE, &FROM_LINE, &RETURN_LOSS_LINE, &SWR_LINE, &ONE_RATING_LINE,
                    &VOLTAGE_LINE, &PASSES_LINE, &SOURCE, $(&$line),*
                ],
            ),
            ..Form::EMPTY
        };
    };
}

device! { PAD "pad" "a pad" &["attenuator", "att"], ONE_WAY NETWORK "An attenuator."
["pad P1 3 dB", "pad P1 from \"p1.s2p\""] [] }
device! { FILTER "filter" "a filter" &["cavity", "bandpass", "notch", "lowpass", "highpass", "band-pass", "low-pass", "high-pass"], ONE_WAY NETWORK "A filter."
["filter F1 0.6 dB ± 0.1 dB, passes 144 MHz to 146 MHz", "filter F1 from \"f1.s2p\", accuracy 0.1 dB"] [] }
device! { ISOLATOR "isolator" "an isolator" &[], WITH_ISOLATION DIRECTED "An isolator with its load."
["isolator IS1 0.55 dB ± 0.15 dB, isolation 25 dB", "isolator IS1 of isolator-single, reversed"]
[ISOLATION_LINE, REVERSED_LINE] }
device! { CIRCULATOR "circulator" "a circulator" &[], WITH_ISOLATION DIRECTED "A circulator."
["circulator CI1 0.4 dB, isolation 20 dB"] [ISOLATION_LINE, REVERSED_LINE] }
device! { PROTECTOR "protector" "a protector" &["arrestor", "arrester", "lightning", "surge", "lightning-arrester", "lightning-arrestor", "lightning-protector", "surge-arrester", "surge-protector"], ONE_WAY NETWORK "A surge protector."
["protector SP1 0.1 dB to 0.2 dB, guess"] [] }
device! { SWITCH "switch" "a switch" &["relay", "coax-relay", "coax-switch"], WITH_ISOLATION NETWORK "A switch or relay."
["switch SW1 0.1 dB", "switch SW1 { port a 0.1 dB, rejects 60 dB; port b 0.1 dB, rejects 60 dB }"]
[PORT_LINE, ISOLATION_LINE] }
device! { COUPLER "coupler" "a coupler" &["tap"], COUPLER_SLOTS DIRECTED "A directional coupler in the main line."
["coupler CP1 20 dB coupled, 0.3 dB"] [COUPLED_LINE, REVERSED_LINE] }
device! { METER "meter" "a meter" &["wattmeter", "swr-meter", "swr-bridge", "power-meter"], ONE_WAY NETWORK "A directional wattmeter left in the line."
["meter ME1 0.1 dB"] [] }
device! { BALUN "balun" "a balun" &["choke", "unun", "transformer"], BALUN_SLOTS NETWORK "A balun or choke, with its ratio of impedances."
["balun BA1 0.1 dB series, ratio 4:1"] [RATIO_LINE] }
device! { TUNER "tuner" "a tuner" &["atu", "matchbox", "transmatch"], ONE_WAY NETWORK "A tuner: the net power into the line becomes the rated one; from a file, what it does at that setting."
["tuner TU1 0.2 dB ± 0.1 dB"] [] }
device! { DUPLEXER "duplexer" "a duplexer" &["cavities"], WITH_ISOLATION NETWORK "Joins transmit and receive of one band on one line."
["duplexer DU1 { high 1.5 dB, rejects 85 dB at 146.3 MHz; low 1.5 dB, rejects 85 dB at 146.9 MHz }"]
[HIGH_LINE, LOW_LINE, PORT_LINE, ISOLATION_LINE] }
device! { DIPLEXER "diplexer" "a diplexer" &["triplexer"], WITH_ISOLATION NETWORK "Joins two bands on one line."
["diplexer DX1 { high 0.3 dB, rejects 50 dB on 2m; low 0.2 dB, rejects 50 dB on 70cm }"]
[HIGH_LINE, LOW_LINE, PORT_LINE, ISOLATION_LINE] }
device! { COMBINER "combiner" "a combiner" &[], WITH_ISOLATION NETWORK "Joins several transmitters."
["combiner C1 { port a 3.3 dB, rejects 30 dB; port b 3.3 dB, rejects 30 dB }"]
[PORT_LINE, ISOLATION_LINE] }
device! { AMPLIFIER "amplifier" "an amplifier" &["booster", "pa", "amp", "linear", "power-amplifier"], AMPLIFIER_SLOTS DIRECTED "An amplifier."
["amplifier PA1 13 dB gain"] [GAIN_LINE, NOISE_LINE, REVERSED_LINE] }
device! { PREAMPLIFIER "preamplifier" "a preamplifier" &["lna", "preamp", "pre-amplifier"], AMPLIFIER_SLOTS DIRECTED "A receive amplifier."
["preamplifier PR1 20 dB gain, noise figure 1 dB"] [GAIN_LINE, NOISE_LINE, REVERSED_LINE] }

/// A divider: more ports than a network file of a chain has.
pub(crate) static DIVIDER: Form = Form {
    word: "divider",
    also: &["splitter", "power-divider", "power-splitter", "hybrid"],
    noun: "a divider",
    doc: "Divides the power among branches.",
    examples: &[
        "divider DV1 2 way, excess 0.3 dB",
        "divider DV1 2 way, 3.3 dB",
        "divider DV1 split 70 % 30 %",
        "divider T1 tee",
    ],
    subject: Subject::Tag,
    slots: &[DIVIDER_SLOTS, MATCH, RATINGS, ABOUT_WARM],
    exclusive: ORIGINS,
    needs: &[need(
        Device::Ways.bit() | Device::Split.bit() | Device::Tee.bit() | Device::Of.bit() | BLOCK,
        "a divider says into how many ways it divides",
    )],
    block: Block::Lines(
        Context::Device,
        &[
            &super::chain::BRANCH,
            &LOSS_LINE,
            &RETURN_LOSS_LINE,
            &SWR_LINE,
            &ONE_RATING_LINE,
            &VOLTAGE_LINE,
            &PASSES_LINE,
            &SOURCE,
            &WAYS_LINE,
            &SPLIT_LINE,
            &TEE_LINE,
            &EXCESS_LINE,
        ],
    ),
    ..Form::EMPTY
};

// ---- connectors in a chain

/// Pairs of a connector.
pub(crate) static CONNECTOR: Form = Form {
    word: "connector",
    also: &["plug"],
    noun: "a connector",
    doc: "Puts pairs of a connector into a chain.",
    examples: &[
        "connector 2 of n-pair",
        "connector n-pair",
        "connector C1 4 of n-pair",
    ],
    subject: Subject::TagBefore,
    slots: &[&[Slot::bare(0, &Counted(NameKind::Connector))
        .first()
        .says("how many, and the connector's name", "2 of n-pair")]],
    needs: &[need(1, "the connector's name follows")],
    ..Form::EMPTY
};

/// An adapter.
pub(crate) static ADAPTER: Form = Form {
    word: "adapter",
    noun: "a connector",
    doc: "An adapter between two connector families.",
    examples: &[
        "adapter n-to-uhf",
        "adapter AD1 n-to-uhf",
        "adapter AD1 2 of n-to-uhf",
    ],
    subject: Subject::TagBefore,
    slots: &[&[Slot::bare(0, &Counted(NameKind::Connector))
        .first()
        .says("the adapter's name", "n-to-uhf")]],
    needs: &[need(1, "the connector's name follows")],
    ..Form::EMPTY
};

// ---- lines of a device's block

/// A device definition.
pub(crate) static DEVICE_DEFINITION: Form = Form {
    word: "device",
    noun: "a device's head",
    doc: "Defines a device that parts can be examples `of`.",
    examples: &["device club-isolator \"two junctions\" { kind isolator; loss 0.55 dB ± 0.15 dB }"],
    subject: Subject::New(NameKind::Device),
    slots: &[&[TITLE]],
    block: Block::Lines(
        Context::Device,
        &[
            &KIND_LINE,
            &LOSS_LINE,
            &HIGH_LINE,
            &LOW_LINE,
            &PORT_LINE,
            &FROM_LINE,
            &ISOLATION_LINE,
            &RATIO_LINE,
            &SPLIT_LINE,
            &TEE_LINE,
            &REVERSED_LINE,
            &RETURN_LOSS_LINE,
            &SWR_LINE,
            &PASSES_LINE,
            &GAIN_LINE,
            &NOISE_LINE,
            &EXCESS_LINE,
            &WAYS_LINE,
            &COUPLED_LINE,
            &ONE_RATING_LINE,
            &VOLTAGE_LINE,
            &SOURCE,
        ],
    ),
    ..Form::EMPTY
};

static KIND_LINE: Form = Form {
    word: "kind",
    noun: "`kind`",
    doc: "What kind of device it is.",
    examples: &["kind isolator"],
    slots: &[&[Slot::one_of(0, &w::KINDS)
        .first()
        .says("a kind of part", "isolator")]],
    needs: &[need(1, "the kind of device follows")],
    once: true,
    ..Form::EMPTY
};

static LOSS_ROW: Form = Form {
    noun: "a loss table",
    doc: "A frequency and the loss there.",
    examples: &["145 MHz 0.5 dB"],
    slots: &[&[Slot::value(0, &q::FREQUENCY)
        .first()
        .then(&[Value(&q::LOSS)])
        .says("a frequency, and the loss there", "145 MHz 0.5 dB")]],
    needs: &[need(1, "a row of the table is a frequency and a loss")],
    ..Form::EMPTY
};

slots! { enum LossLine { Loss, Passes, Sits } }
static LOSS_LINE: Form = Form {
    word: "loss",
    also: &["attenuation", "insertion-loss"],
    noun: "a device's loss",
    doc: "Loss of the part, always, on a band or by frequency.",
    examples: &[
        "loss 0.55 dB ± 0.15 dB on 2m",
        "loss { 145 MHz 0.5 dB; 435 MHz 0.6 dB }",
    ],
    slots: &[
        &[
            Slot::value(LossLine::Loss.id(), &q::LOSS)
                .first()
                .says("a loss", "0.55 dB"),
            Slot::word(LossLine::Passes.id(), "passes", &[Range(&q::FREQUENCY)])
                .each()
                .says("pass band", "passes 144 MHz to 148 MHz"),
            Slot::one_of(LossLine::Sits.id(), &w::SITS)
                .says("where the loss of a balun sits", "series"),
        ],
        ABOUT_FIGURE,
    ],
    exclusive: ORIGINS,
    needs: &[need(LossLine::Loss.bit() | BLOCK, "a loss follows")],
    block: Block::Rows(&LOSS_ROW),
    ..Form::EMPTY
};

slots! { enum Leg { Loss, Passes, Rejects } }
static LEG_SLOTS: &[Slot] = &[
    Slot::value(Leg::Loss.id(), &q::LOSS).first().says(
        "loss between this port and the common one",
        "1.45 dB ± 0.15 dB",
    ),
    Slot::word(Leg::Passes.id(), "passes", &[Range(&q::FREQUENCY)])
        .each()
        .says("pass band", "passes 144 MHz to 148 MHz"),
    Slot::word(Leg::Rejects.id(), "rejects", &[Value(&q::LOSS)])
        .figure()
        .says(
            "what a leg or port keeps off, at a frequency or on a band",
            "rejects 80 dB at 146.3 MHz",
        )
        .also(&["notch", "stops"]),
];
macro_rules! leg {
    ($n:ident $w:literal $subject:expr, $noun:literal $needs:literal $doc:literal $start:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[
                concat!(
                    $start,
                    " 1.45 dB ± 0.15 dB, passes 146.8 MHz to 147.0 MHz, rejects 85 dB at 146.3 MHz"
                ),
                concat!($start, " from \"leg.s2p\""),
                concat!($start, " rejects 85 dB at 146.3 MHz"),
            ],
            subject: $subject,
            slots: &[LEG_SLOTS, NETWORK, ABOUT_FIGURE],
            exclusive: &[
                ONE_ORIGIN,
                Exclusive {
                    slots: Leg::Loss.bit() | 1 << FROM,
                    rule: "The loss of a leg or port is a figure, a table or a file.",
                    instead: "",
                },
            ],
            needs: &[need(
                Leg::Loss.bit() | Leg::Passes.bit() | Leg::Rejects.bit() | 1 << FROM | BLOCK,
                $needs,
            )],
            block: Block::Rows(&LOSS_ROW),
            ..Form::EMPTY
        };
    };
}
leg! { HIGH_LINE "high" Subject::Itself(NameKind::Port), "a leg's loss" "a leg's loss follows" "The leg for the higher frequency." "high" }
leg! { LOW_LINE "low" Subject::Itself(NameKind::Port), "a leg's loss" "a leg's loss follows" "The leg for the lower frequency." "low" }
leg! { PORT_LINE "port" Subject::New(NameKind::Port), "a port's loss" "a port's loss follows" "A port, its loss to the common one, and what it keeps off." "port a" }

slots! { enum FromLine { Passes } }
pub(crate) static FROM_LINE: Form = Form {
    word: "from",
    also: &["file", "touchstone"],
    noun: "a device's file",
    doc: "A two-port network file (Touchstone) with the figures of the part.",
    examples: &["from \"f1.s2p\" reversed on 2m, accuracy 0.1 dB"],
    slots: &[
        &[
            Slot::bare(
                FROM,
                &super::types::Takes::File(super::types::FileKind::TwoPort),
            )
            .first()
            .says("a network file", "\"f1.s2p\""),
            Slot::word(FromLine::Passes.id(), "passes", &[Range(&q::FREQUENCY)])
                .each()
                .says("pass band", "passes 144 MHz to 148 MHz"),
            Slot::word(super::bundle::REVERSED, "reversed", &[])
                .says("lies the other way round than it was measured", "reversed"),
            Slot::word(
                super::bundle::FILE_ACCURACY,
                "accuracy",
                &[Value(&q::ACCURACY_DB)],
            )
            .says("how far the loss of the file may be off", "accuracy 0.1 dB"),
        ],
        ABOUT_FIGURE,
    ],
    exclusive: ORIGINS,
    needs: &[need(1 << FROM, "a path in quotes follows")],
    ..Form::EMPTY
};

macro_rules! figure_line {
    ($($(#[$m:meta])* $n:ident $w:literal $q:ident $about:ident $once:literal $noun:literal $needs:literal $doc:literal $ex:literal;)+) => {
        $($(#[$m])* pub(crate) static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[
                &[Slot::value(0, &q::$q).first().says($doc, $ex)],
                $about,
            ],
            exclusive: ORIGINS,
            needs: &[need(1, $needs)],
            once: $once,
            ..Form::EMPTY
        };)+
    };
}
figure_line! {
    RETURN_LOSS_LINE "return-loss" RETURN_LOSS ABOUT_FIGURE false "an SWR" "a figure follows" "Return loss of a device's ports, or of the ends of a line." "20 dB";
    SWR_LINE "swr" SWR ABOUT_FIGURE false "an SWR" "a figure follows" "SWR of a device's ports, or of the ends of a line." "1.3 on 2m";
    ISOLATION_LINE "isolation" LOSS ABOUT_ALWAYS true "a device" "an isolation follows" "What an isolator or circulator loses the wrong way round." "25 dB";
    VOLTAGE_LINE "voltage" VOLTAGE ABOUT_ALWAYS true "a device" "a working voltage follows" "Working voltage, rms." "500 V";
    PASSES_LINE "passes" FREQUENCY ABOUT_ALWAYS false "a device" "a pass band follows" "Pass band." "144 MHz to 148 MHz";
    GAIN_LINE "gain" GAIN_DB ABOUT_FIGURE false "a gain" "a gain follows" "Gain of an amplifier." "13 dB on 2m";
    EXCESS_LINE "excess" LOSS ABOUT_FIGURE false "an excess loss" "an excess loss follows" "Loss of a divider beyond the division." "0.3 dB";
    WAYS_LINE "ways" COUNT ABOUT_ALWAYS true "a device" "a number of branches follows" "Number of branches." "2";
    COUPLED_LINE "coupled" LOSS ABOUT_ALWAYS true "a device" "a coupling follows" "Coupling of a coupler." "20 dB";
    RATIO_LINE "ratio" NUMBER ABOUT_ALWAYS true "a device" "a ratio of impedances follows" "Of a balun: impedance of the side away from the transmitter over that of the transmitter's side." "4:1";
}

static NOISE_LINE: Form = Form {
    word: "noise",
    noun: "a device",
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

static SPLIT_LINE: Form = Form {
    word: "split",
    noun: "a device",
    doc: "Of a divider: the share of the power that each branch gets, or the loss to it in dB.",
    examples: &["split 70 % 30 %"],
    slots: &[
        &[Slot::bare(0, &Values(&q::SHARE_OR_LOSS))
            .first()
            .says("one share a branch, in their order", "70 % 30 %")],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(1, "the share of each branch follows")],
    once: true,
    ..Form::EMPTY
};

macro_rules! flag_line {
    ($n:ident $w:literal $doc:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "a device",
            doc: $doc,
            examples: &[$w],
            slots: &[ABOUT_ALWAYS],
            exclusive: ORIGINS,
            once: true,
            ..Form::EMPTY
        };
    };
}
flag_line! { TEE_LINE "tee" "Of a divider: its branches are just joined in parallel." }
flag_line! { REVERSED_LINE "reversed" "The part lies the other way round: of an isolator, circulator, coupler or amplifier." }

slots! { enum Rating { Power, Ambient, Conductor } }
macro_rules! rating_line {
    ($(#[$m:meta])* $n:ident $once:literal) => {
$(#[$m])*
pub(crate) static $n: Form = Form {
    word: "rating",
    noun: "a rating",
    doc: "Mean power it may carry.",
    examples: &["rating 1.1 kW at 100 MHz, ambient 40 °C, conductor 80 °C"],
    slots: &[
        &[
            Slot::value(Rating::Power.id(), &q::POWER)
                .first()
                .says("mean power it may carry", "300 W"),
            Slot::word(Rating::Ambient.id(), "ambient", &[Value(&q::TEMPERATURE)])
                .says("temperature around, for a rating", "ambient 40 °C"),
            Slot::word(
                Rating::Conductor.id(),
                "conductor",
                &[Value(&q::TEMPERATURE)],
            )
            .says(
                "highest temperature of the conductor, for a rating",
                "conductor 80 °C",
            ),
        ],
        ABOUT_AT,
    ],
    exclusive: ORIGINS,
    needs: &[need(Rating::Power.bit(), "a power follows")],
    once: $once,
    ..Form::EMPTY
};
    };
}
rating_line! {
    /// Mean power a cable may carry, at several frequencies.
    RATING_LINE false
}
rating_line! {
    /// Mean power a part may carry.
    ONE_RATING_LINE true
}
