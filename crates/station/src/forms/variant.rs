//! Variants: a station with some figures and parts changed.

use super::bundle::ABOUT_ALWAYS;
use super::top::TITLE;
use super::types::Takes::{BandNames, Name, Rest};
use super::types::{BLOCK, Block, Context, Form, NameKind, Slot, Stands, Subject, need, slots};
use super::{ends, parts};

slots! { enum Head { Of, Title } }
/// A variant of a station.
pub(crate) static VARIANT: Form = Form {
    word: "variant",
    also: &["proposal", "alternative", "scenario"],
    noun: "a variant",
    doc: "A station with some figures and parts changed, computed beside it by `compare`.",
    examples: &[
        "variant short-run of hill \"a shorter run\" { M1 30 m }",
        "variant no-isolator of hill { take IS1 }",
    ],
    subject: Subject::New(NameKind::Variant),
    slots: &[&[
        Slot::word(Head::Of.id(), "of", &[Name(NameKind::Station)])
            .stands(Stands::Head)
            .says("the station it changes", "of hill"),
        Slot {
            id: Head::Title.id(),
            ..TITLE
        },
    ]],
    needs: &[
        need(Head::Of.bit(), "`of` and the station follow"),
        need(BLOCK, "a variant has a block"),
    ],
    block: Block::Lines(Context::Variant, LINES),
    ..Form::EMPTY
};

/// Lines of a variant, besides the parts whose figures it replaces.
pub(crate) static LINES: &[&Form] = &[
    &TAKE,
    &PUT,
    &parts::RUN,
    &parts::JUMPER,
    &parts::TAIL,
    &parts::PAD,
    &parts::FILTER,
    &parts::ISOLATOR,
    &parts::CIRCULATOR,
    &parts::PROTECTOR,
    &parts::SWITCH,
    &parts::COUPLER,
    &parts::METER,
    &parts::BALUN,
    &parts::TUNER,
    &parts::DUPLEXER,
    &parts::DIPLEXER,
    &parts::COMBINER,
    &parts::DIVIDER,
    &parts::AMPLIFIER,
    &parts::PREAMPLIFIER,
    &ends::TRANSMITTER,
    &ends::RECEIVER,
    &ends::LOAD,
    &ends::ANTENNA,
    &parts::CONNECTOR,
    &parts::ADAPTER,
];

static TAKE: Form = Form {
    word: "take",
    also: &["remove", "without"],
    noun: "`take`",
    doc: "Removes a part from the station and from all its chains.",
    examples: &["take IS1"],
    subject: Subject::Use(NameKind::Tag),
    ..Form::EMPTY
};

slots! { enum PutSlot { After, In, More } }
static PUT: Form = Form {
    word: "put",
    also: &["insert", "add"],
    noun: "`put`",
    doc: "Puts a part after another one in chains.",
    examples: &["put F9 after DU1.low in talk-in-2m"],
    subject: Subject::Use(NameKind::Tag),
    slots: &[&[
        Slot::word(PutSlot::After.id(), "after", &[Name(NameKind::Tag)])
            .stands(Stands::Head)
            .says("the part that it follows", "after DU1.low"),
        Slot::word(PutSlot::In.id(), "in", &[Name(NameKind::Chain)])
            .stands(Stands::Head)
            .says("the chain", "in talk-in-2m"),
        Slot::bare(PutSlot::More.id(), &Name(NameKind::Chain))
            .each()
            .after(PutSlot::In.id(), "has no meaning before `in`")
            .says("a further chain, after a comma", "talk-out-2m"),
    ]],
    needs: &[
        need(
            PutSlot::After.bit(),
            "`after` and the part before it follow",
        ),
        need(PutSlot::In.bit(), "`in` and the chains follow"),
    ],
    ..Form::EMPTY
};

slots! { enum Change { Of, On, First, More } }
const OF: Slot = Slot::word(Change::Of.id(), "of", &[Name(NameKind::Cable)])
    .each()
    .says("the cable or device", "of half-inch-foam");
const ON: Slot = Slot::word(Change::On.id(), "on", &[BandNames])
    .each()
    .says("the bands it holds on", "on 2m");
static FIGURES: &[Slot] = &[
    OF,
    ON,
    Slot::bare(Change::First.id(), &Rest)
        .first()
        .says("a figure as the part has it", "28 W ± 5 %"),
    Slot::bare(Change::More.id(), &Rest)
        .each()
        .says("a further figure, after a comma", "keyed 50 %"),
];

/// Figures of a part that replace those it has.
pub(crate) static CHANGE: Form = Form {
    noun: "a change of a part",
    doc: "Figures of a part, by its tag, that replace those of the same kind and band.",
    examples: &["TX1 28 W ± 5 %", "A1 gain 8.15 dBi ± 0.5 dB on 2m"],
    subject: Subject::Use(NameKind::Tag),
    slots: &[FIGURES, ABOUT_ALWAYS],
    block: Block::Rows(&ROW),
    ..Form::EMPTY
};

static ROW: Form = Form {
    noun: "a figure",
    doc: "A figure of the part.",
    examples: &["gain 8.15 dBi ± 0.5 dB on 2m"],
    slots: &[FIGURES, ABOUT_ALWAYS],
    ..Form::EMPTY
};
