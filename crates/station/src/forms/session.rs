//! The bench.

use super::bundle::{ABOUT_FIGURE, FROM, OF_IMPORT, OF_READING, ORIGINS, RETURN_LOSS, SWR};
use super::parts::PIECE;
use super::quantity as q;
use super::top::{TEMPERATURE, TITLE};
use super::types::Takes::{Band, Counted, File, Name, OneOf, Then, Value};
use super::types::{
    BLOCK, Block, Context, Exclusive, FileKind, Form, NameKind, Need, Slot, Stands, Subject, need,
    slots,
};
use super::words as w;

/// A bench session.
pub(crate) static SESSION: Form = Form {
    word: "session",
    also: &["bench"],
    noun: "a session's head",
    doc: "A bench session: pieces of cable and their readings.",
    examples: &["session reel-7 \"on the bench\" { piece A 22.60 m of rg-213 }"],
    subject: Subject::New(NameKind::Session),
    slots: &[&[TITLE]],
    needs: &[need(BLOCK, "a session has a block")],
    block: Block::Lines(
        Context::Session,
        &[
            &SESSION_LOAD,
            &SESSION_READ,
            &TEMPERATURE,
            &GENERATOR,
            &DRIFT,
            &PIECE,
            &SESSION_READINGS,
            &RESONANCE,
            &DELAY,
            &PHASE,
        ],
    ),
    ..Form::EMPTY
};

static SESSION_READ: Form = Form {
    word: "read",
    noun: "what holds for all readings",
    doc: "When, with what and by whom the readings were taken.",
    examples: &["read 2026-07-19 with W3 by QY5BEN"],
    slots: &[OF_READING],
    once: true,
    ..Form::EMPTY
};

const ONE_MATCH: Exclusive = Exclusive {
    slots: 1 << SWR | 1 << RETURN_LOSS | 1 << FROM,
    rule: "An end of the bench has one match a line.",
    instead: "Matches of several bands are several lines.",
};

macro_rules! bench_end {
    ($n:ident $w:literal $doc:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "an SWR",
            doc: $doc,
            examples: &[
                concat!($w, " return-loss 26 dB"),
                concat!($w, " swr 1.1 on 2m"),
                concat!($w, " from \"dummy.s1p\""),
            ],
            slots: &[
                &[
                    Slot::word(RETURN_LOSS, "return-loss", &[Value(&q::RETURN_LOSS)])
                        .first()
                        .says("return loss", "return-loss 26 dB"),
                    Slot::word(SWR, "swr", &[Value(&q::SWR)])
                        .first()
                        .says("standing wave ratio", "swr 1.1"),
                    Slot::word(FROM, "from", &[File(FileKind::OnePort)])
                        .first()
                        .says("a one-port network file", "from \"dummy.s1p\""),
                ],
                ABOUT_FIGURE,
            ],
            exclusive: &[ONE_MATCH],
            needs: &[need(
                1 << SWR | 1 << RETURN_LOSS | 1 << FROM,
                "its match follows",
            )],
            ..Form::EMPTY
        };
    };
}
bench_end! { SESSION_LOAD "load" "Match of the load's end of the bench." }
bench_end! { GENERATOR "generator" "Match of the generator's end of the bench." }

slots! { enum Drift { Share, Bow } }
static DRIFT: Form = Form {
    word: "drift",
    noun: "the drift of a transmitter",
    doc: "How far the transmitter of the bench may drift: where the baseline was read once, and beside the straight line between two.",
    examples: &["drift bow 10 %", "drift 0.5 % in 10 min, bow 10 %"],
    slots: &[&[
        Slot::value(Drift::Share.id(), &q::SHARE)
            .first()
            .then(&[OneOf(w::IN), Value(&q::TIME)])
            .says(
                "a share of the power, and the time it takes; where the baseline was read once",
                "0.5 % in 10 min",
            ),
        Slot::word(Drift::Bow.id(), "bow", &[Value(&q::SHARE)]).says(
            "how much of the step between two baselines the straight line may miss halfway",
            "bow 10 %",
        ),
    ]],
    needs: &[need(
        Drift::Share.bit() | Drift::Bow.bit(),
        "how far it may drift follows",
    )],
    once: true,
    ..Form::EMPTY
};

slots! { enum Group { On, Bare } }
static SESSION_READINGS: Form = Form {
    word: "readings",
    noun: "the head of `readings`",
    doc: "Readings on one band, in the order of time; or those of a CSV file.",
    examples: &[
        "readings on 2m { baseline 44.0 W at 0 min }",
        "readings on 2m with W2 { baseline 44.0 W at 0 min }",
        "readings from \"july.csv\" with W3",
    ],
    slots: &[
        &[
            Slot::word(Group::On.id(), "on", &[Band])
                .first()
                .says("the band or frequency", "on 2m"),
            Slot::bare(Group::Bare.id(), &Band)
                .first()
                .alike("on")
                .says("the band or frequency", "2m"),
            Slot::word(FROM, "from", &[File(FileKind::Readings)])
                .first()
                .says("a table of readings", "from \"july.csv\""),
        ],
        OF_IMPORT,
    ],
    needs: &[need(
        Group::On.bit() | Group::Bare.bit() | 1 << FROM,
        "a band or frequency follows",
    )],
    block: Block::Lines(
        Context::Readings,
        &[&BASELINE, &THROUGH, &OPEN, &SHORT, &EQUALISE],
    ),
    ..Form::EMPTY
};

slots! { enum Row { Shown, Reflected, At, Adapter, Input, Against, Forward } }
const AT_TIME: Slot = Slot::word(Row::At.id(), "at", &[Value(&q::TIME)])
    .says("time since the session began", "at 2 min");
const ADAPTERS: Slot = Slot::word(
    Row::Adapter.id(),
    "adapter",
    &[Counted(NameKind::Connector)],
)
.each()
.says("an adapter that was in the line", "adapter n-to-uhf");
const REFLECTED: Slot = Slot::value_as(Row::Reflected.id(), &q::POWER, "reflected")
    .says("reflected power shown with it", "0.05 W reflected");
const FORWARD: Slot = Slot::word(Row::Forward.id(), "forward", &[]).says(
    "the reading is of the forward wave, as it is without the word",
    "forward",
);
const SHOWN: Slot = Slot::value(Row::Shown.id(), &q::SHOWN)
    .first()
    .says("what the meter shows", "44.0 W");
const SHOWN_FILE: Slot = Slot::word(FROM, "from", &[File(FileKind::TwoPort)])
    .first()
    .says("a network file", "from \"a.s2p\"");
const SHOWN_MATCH: Slot = Slot::value(Row::Shown.id(), &q::RETURN_LOSS)
    .first()
    .says("return loss", "4.1 dB");
const MATCH_FILE: Slot = Slot::word(FROM, "from", &[File(FileKind::OnePort)])
    .first()
    .says("a network file", "from \"a-open.s1p\"");
const INPUT: Slot = Slot::word(
    Row::Input.id(),
    "input",
    &[Value(&q::POWER), Then("with", &Name(NameKind::Instrument))],
)
.says(
    "power shown by another meter at the near end",
    "input 43.5 W with W2",
);
const AGAINST: Slot = Slot::word(
    Row::Against.id(),
    "against",
    &[Value(&q::POWER), Then("with", &Name(NameKind::Instrument))],
)
.says("what the other meter shows", "against 43.6 W with W2");

static BASELINE_SLOTS: &[Slot] = &[
    SHOWN, SHOWN_FILE, REFLECTED, AT_TIME, ADAPTERS, INPUT, FORWARD,
];
static THROUGH_SLOTS: &[Slot] = &[
    SHOWN, SHOWN_FILE, REFLECTED, AT_TIME, ADAPTERS, INPUT, FORWARD,
];
static MATCH_SLOTS: &[Slot] = &[SHOWN_MATCH, MATCH_FILE, AT_TIME, ADAPTERS];
static EQUALISE_SLOTS: &[Slot] = &[SHOWN, AGAINST, REFLECTED, AT_TIME, ADAPTERS, INPUT, FORWARD];

macro_rules! reading {
    ($n:ident $w:literal $subject:expr, $slots:ident $doc:literal [$($ex:literal),+] $($need:expr),*) => {
        static $n: Form = Form {
            word: $w,
            noun: "a reading",
            doc: $doc,
            examples: &[$($ex),+],
            subject: $subject,
            slots: &[$slots, OF_READING],
            needs: &[need(Row::Shown.bit() | 1 << FROM, "what was read follows") $(, $need)*],
            ..Form::EMPTY
        };
    };
}
reading! { BASELINE "baseline" Subject::Nothing, BASELINE_SLOTS "What the meter shows with no piece in the line." ["baseline 44.0 W at 0 min, adapter n-to-uhf"] }
reading! { THROUGH "through" Subject::Use(NameKind::Tag), THROUGH_SLOTS "What the meter shows after the piece." ["through A 22.8 W at 2 min, 0.05 W reflected", "through A from \"a.s2p\""] }
reading! { OPEN "open" Subject::Use(NameKind::Tag), MATCH_SLOTS "Return loss of the piece with its far end open." ["open A 4.1 dB", "open A from \"a-open.s1p\""] }
reading! { SHORT "short" Subject::Use(NameKind::Tag), MATCH_SLOTS "Return loss of the piece with its far end shorted." ["short A 4.3 dB", "short A from \"a-short.s1p\""] }

static EQUALISE: Form = Form {
    word: "equalise",
    also: &["equalize"],
    noun: "a reading",
    doc: "What two meters show one after the other.",
    examples: &["equalise 44.0 W with W1, against 43.6 W with W2"],
    slots: &[EQUALISE_SLOTS, OF_READING],
    needs: &[
        need(Row::Shown.bit(), "what was read follows"),
        Need {
            when: 0,
            one_of: Row::Against.bit() | Row::Input.bit(),
            what: "the other meter's reading follows",
        },
    ],
    ..Form::EMPTY
};

macro_rules! length_line {
    ($n:ident $w:literal $q:ident $noun:literal $needs:literal $doc:literal $ex:literal [$($more:expr),*]) => {
        static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[concat!($w, " A ", $ex)],
            subject: Subject::Use(NameKind::Tag),
            slots: &[
                &[Slot::value(0, &q::$q).first().says($doc, $ex) $(, $more)*],
                ABOUT_FIGURE,
            ],
            exclusive: ORIGINS,
            needs: &[need(1, $needs)],
            ..Form::EMPTY
        };
    };
}
length_line! { RESONANCE "resonance" FREQUENCY "Resonance" "a frequency follows" "Distance between two resonances of a piece whose far end is open or shorted." "3.951 MHz" [] }
length_line! { DELAY "delay" DELAY "Delay" "a time follows" "One-way delay through a piece." "126.5 ns" [] }
length_line! { PHASE "phase" ANGLE "Phase" "an angle follows" "How far the phase of the reflection turns over a span of frequency." "911° over 10 MHz"
[Slot::word(1, "over", &[Value(&q::FREQUENCY)]).stands(Stands::Head).says("a span of frequency", "over 10 MHz")] }
