//! Chains, and what stands at their nodes.

use super::bundle::{OF_EXPECTATION, OF_LIMIT, OF_LOG, OF_NODE_READING};
use super::quantity as q;
use super::types::Takes::{Bands, File, Value};
use super::types::{
    BLOCK, Block, Context, Exclusive, FileKind, Form, NameKind, Need, Slot, Stands, Subject, need,
    slots,
};
use super::words as w;

/// Lines of a chain, besides the parts of its station.
pub(crate) static CHAIN_LINES: &[&Form] = &[
    &super::parts::CONNECTOR,
    &super::parts::ADAPTER,
    &super::ends::TRANSMITTER,
    &super::ends::RECEIVER,
    &super::ends::TRANSCEIVER,
    &super::parts::RUN,
    &super::parts::JUMPER,
    &super::parts::TAIL,
    &super::parts::PAD,
    &super::parts::FILTER,
    &super::parts::ISOLATOR,
    &super::parts::CIRCULATOR,
    &super::parts::PROTECTOR,
    &super::parts::SWITCH,
    &super::parts::COUPLER,
    &super::parts::METER,
    &super::parts::BALUN,
    &super::parts::TUNER,
    &super::parts::DUPLEXER,
    &super::parts::DIPLEXER,
    &super::parts::COMBINER,
    &super::parts::DIVIDER,
    &BRANCHES,
    &super::parts::AMPLIFIER,
    &super::parts::PREAMPLIFIER,
    &super::ends::LOAD,
    &super::ends::ANTENNA,
    &READ,
    &EXPECT,
    &LIMIT,
    &READINGS,
    &super::accept::ACCEPT,
];

slots! { enum Head { On, More, Direction } }
/// A chain.
pub(crate) static CHAIN: Form = Form {
    word: "chain",
    also: &["path"],
    noun: "a chain's head",
    doc: "The walk along the cable, one part a line.",
    examples: &[
        "chain talk-out on 2m transmit { transmitter 50 W }",
        "chain what-if on 145.3 MHz, 433 MHz { transmitter 50 W }",
    ],
    subject: Subject::New(NameKind::Chain),
    slots: &[&[
        Slot::word(Head::On.id(), "on", &[Bands])
            .stands(Stands::Head)
            .says("bands or frequencies it is computed on", "on 2m"),
        Slot::bare(Head::More.id(), &Bands)
            .each()
            .after(Head::On.id(), "has no meaning before `on`")
            .says("a further band or frequency, after a comma", "433 MHz"),
        Slot::one_of(Head::Direction.id(), &w::DIRECTION)
            .stands(Stands::Within)
            .says("the direction of the power", "transmit"),
    ]],
    needs: &[
        need(Head::On.bit(), "a chain says on which bands"),
        need(BLOCK, "a chain has a block"),
    ],
    block: Block::Lines(Context::Chain, CHAIN_LINES),
    ..Form::EMPTY
};

/// A part of the station, written by its tag.
pub(crate) static TAG_LINE: Form = Form {
    noun: "a chain's line, which names one part",
    doc: "A part of the station, by its tag and port.",
    examples: &["DU1.high"],
    subject: Subject::Use(NameKind::Tag),
    block: Block::Lines(Context::Chain, &[&BRANCH]),
    ..Form::EMPTY
};

/// A branch after a divider.
pub(crate) static BRANCH: Form = Form {
    word: "branch",
    noun: "`branch`",
    doc: "One branch after a divider.",
    examples: &["branch { antenna 6 dBi }"],
    subject: Subject::MayNew(NameKind::Branch),
    needs: &[need(BLOCK, "a branch has a block")],
    block: Block::Lines(Context::Chain, CHAIN_LINES),
    ..Form::EMPTY
};

static BRANCHES: Form = Form {
    word: "branches",
    noun: "`branches`",
    doc: "How the fields of the branches add.",
    examples: &["branches in phase", "branches apart"],
    slots: &[&[Slot::one_of(0, &w::PHASING)
        .first()
        .says("how the branches add", "in phase")]],
    needs: &[need(1, "how the branches add follows")],
    once: true,
    ..Form::EMPTY
};

slots! { enum Read { Power, Wave, Swr } }
static READ: Form = Form {
    word: "read",
    also: &["measured", "reading"],
    noun: "a reading",
    doc: "What was read here.",
    examples: &[
        "read 16.2 W forward, 2026-07-04 with W1 by QY2TEC",
        "read swr 1.3, 2026-07-04",
    ],
    slots: &[
        &[
            Slot::value(Read::Power.id(), &q::POWER)
                .first()
                .says("the power shown", "16.2 W"),
            Slot::one_of(Read::Wave.id(), &w::WAVES)
                .after(
                    Read::Power.id(),
                    "says which power, and no power stands before it",
                )
                .says("which power", "forward"),
            Slot::word(Read::Swr.id(), "swr", &[Value(&q::SWR)])
                .first()
                .says("the SWR shown", "swr 1.3"),
        ],
        &[Slot::word(
            super::bundle::READ,
            "read",
            &[super::types::Takes::May(&super::types::Takes::Date)],
        )
        .alike("read")
        .says("the day of the reading", "read 2026-07-04")],
        READING_ABOUT,
    ],
    exclusive: &[Exclusive {
        slots: Read::Power.bit() | Read::Swr.bit(),
        rule: "A reading is of a power or of an SWR.",
        instead: "Two readings are two `read` lines.",
    }],
    needs: &[
        need(Read::Power.bit() | Read::Swr.bit(), "what was read follows"),
        Need {
            when: Read::Power.bit(),
            one_of: Read::Wave.bit(),
            what: "a reading of power says whether it is forward, reflected or net",
        },
    ],
    ..Form::EMPTY
};
/// What else can be said about a reading: all but the word `read`, which it begins with.
static READING_ABOUT: &[Slot] = match OF_NODE_READING.split_first() {
    Some((_, rest)) => rest,
    None => &[],
};

slots! { enum Expect { Power, Loss, Swr, Erp, Eirp } }
static EXPECT: Form = Form {
    word: "expect",
    also: &["assert"],
    noun: "an expectation",
    doc: "What the computed value here must be.",
    examples: &[
        "expect 16 W ± 0.3 dB",
        "expect loss 2.1 dB",
        "expect swr 1.4",
        "expect erp 24 W",
    ],
    slots: &[
        &[
            Slot::value(Expect::Power.id(), &q::POWER)
                .first()
                .says("power here", "16 W ± 0.3 dB"),
            Slot::word(Expect::Loss.id(), "loss", &[Value(&q::LOSS)])
                .first()
                .says("loss so far, counted from the transmitter", "loss 2.1 dB"),
            Slot::word(Expect::Swr.id(), "swr", &[Value(&q::SWR)])
                .first()
                .says("SWR here", "swr 1.4"),
            Slot::word(Expect::Erp.id(), "erp", &[Value(&q::POWER)])
                .first()
                .says("radiated power over a half-wave dipole", "erp 24 W"),
            Slot::word(Expect::Eirp.id(), "eirp", &[Value(&q::POWER)])
                .first()
                .says("radiated power over an isotropic radiator", "eirp 39 W"),
        ],
        OF_EXPECTATION,
    ],
    exclusive: &[Exclusive {
        slots: 0b1_1111,
        rule: "An expectation is of one figure.",
        instead: "Two expectations are two `expect` lines.",
    }],
    needs: &[need(0b1_1111, "the expected value follows")],
    ..Form::EMPTY
};

slots! { enum Limit { Value, Quantity, Kind, Desense } }
/// What a limit of a desense does not have.
const fn not_of_desense(slot: u64) -> Exclusive {
    Exclusive {
        slots: Limit::Desense.bit() | slot,
        rule: "A limit is on a power or on a desense.",
        instead: "Two limits are two lines.",
    }
}

static LIMIT: Form = Form {
    word: "limit",
    also: &["licence", "maximum"],
    noun: "a limit",
    doc: "What must not be exceeded here.",
    examples: &[
        "limit 30 W erp, \"licence clause 4\"",
        "limit 100 W output pep on 2m, \"clause 4\"",
        "limit 1 dB desense, \"club rule 5\"",
    ],
    slots: &[
        &[
            Slot::value(Limit::Value.id(), &q::POWER)
                .first()
                .says("the highest power", "30 W"),
            Slot::one_of(Limit::Quantity.id(), &w::RADIATED).says("which power", "erp"),
            Slot::one_of(Limit::Kind.id(), &w::POWER_KIND).says("the kind of power", "carrier"),
            Slot::value_as(Limit::Desense.id(), &q::RATIO_DB, "desense").says(
                "by how much the transmitters of the site may raise the noise of this receive chain",
                "1 dB desense",
            ),
        ],
        OF_LIMIT,
    ],
    exclusive: &[
        not_of_desense(Limit::Value.bit()),
        not_of_desense(Limit::Quantity.bit()),
        not_of_desense(Limit::Kind.bit()),
    ],
    needs: &[
        need(
            Limit::Value.bit() | Limit::Desense.bit(),
            "the limit follows",
        ),
        Need {
            when: Limit::Value.bit(),
            one_of: Limit::Quantity.bit(),
            what: "a limit says which power it is on: erp, eirp or output",
        },
    ],
    ..Form::EMPTY
};

static READINGS: Form = Form {
    word: "readings",
    also: &["log"],
    noun: "`readings from`",
    doc: "Readings of a CSV file that were read here.",
    examples: &["readings from \"site.csv\" with W1"],
    slots: &[
        &[
            Slot::word(super::bundle::FROM, "from", &[File(FileKind::Readings)])
                .first()
                .says("a table of readings", "from \"site.csv\""),
        ],
        OF_LOG,
    ],
    needs: &[need(1 << super::bundle::FROM, "`from` and the file follow")],
    ..Form::EMPTY
};
