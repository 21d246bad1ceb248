//! Licences and rules, and that a station is under them.

use super::quantity as q;
use super::top::TITLE;
use super::types::Takes::{Bands, Date, Name, OneOf, Text, Then, Value};
use super::types::{Block, Context, Form, NameKind, Set, Slot, Subject, Word, need, slots, word};
use super::words as w;

/// Which power a clause counts.
const RULED: Set = Set {
    words: &[
        word("erp", "radiated power over a half-wave dipole"),
        word(
            "eirp",
            "radiated power over an isotropic radiator, 2.15 dB more than ERP",
        ),
        word("output", "the power at the transmitter's output"),
        word(
            "dc-input",
            "direct-current input of the last stage: nothing here states it, so it is not judged",
        ),
    ],
    rule: "A rule is on ERP, on EIRP, on the transmitter's output or on its DC input.",
    instead: "Two rules are two lines.",
};

const CONFIDENCE: &[Word] = &[
    word("high", "the text of the rule was seen"),
    word("medium", "a source that cites the rule was seen"),
    word("low", "from memory or sources that differ: only warns"),
];
const DATUM_OF_HEIGHT: &[Word] = &[
    word("haat", "above average terrain"),
    word("height", "above ground"),
];
const YES_NO: &[Word] = &[word("yes", "it is so"), word("no", "it is not so")];

macro_rules! one {
    ($n:ident $w:literal $noun:literal $doc:literal $ex:literal $slot:expr) => {
        static $n: Form = Form {
            word: $w,
            noun: $noun,
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[$slot.first().says($doc, $ex)]],
            needs: &[need(1, "what it is follows")],
            once: true,
            ..Form::EMPTY
        };
    };
}
one! { AUTHORITY "authority" "an authority" "Who issued the paper or the rules." "\"Thrennock Spectrum Office\"" Slot::text(0) }
one! { EDITION "edition" "an edition" "Which edition of the text was read." "\"as amended to 2026-01\"" Slot::text(0) }
one! { JURISDICTION "jurisdiction" "a jurisdiction" "Where the rules hold; nothing is guessed from a position." "thrennock" Slot::bare(0, &Name(NameKind::Class)) }
one! { SERVICE "service" "a service" "For which radio service the rules are." "amateur" Slot::bare(0, &Name(NameKind::Class)) }
one! { HOLDER "holder" "a holder" "Who holds the paper." "QY4TRA" Slot::bare(0, &Name(NameKind::Person)) }
one! { DATED "dated" "a date" "The date of the paper or rules; clauses without a date of their own hold since then." "2026-01-15" Slot::date(0) }
one! { UNTIL "until" "a date" "The last day on which the paper or rules hold." "2029-03-01" Slot::date(0) }

static CLASS: Form = Form {
    word: "class",
    noun: "the classes",
    doc: "The classes that clauses may name.",
    examples: &["class novice, full, repeater"],
    slots: &[&[
        Slot::bare(0, &Name(NameKind::Class))
            .first()
            .says("a class", "novice"),
        Slot::bare(1, &Name(NameKind::Class))
            .each()
            .says("a further class", "full"),
    ]],
    needs: &[need(1, "the classes follow")],
    once: true,
    ..Form::EMPTY
};

static ASK: Form = Form {
    word: "ask",
    noun: "a question",
    doc: "A question that a station's text cannot decide; the station answers it in `under`.",
    examples: &["ask islands \"Is the station on one of the outer islands?\""],
    subject: Subject::New(NameKind::Question),
    slots: &[&[Slot::text(0)
        .first()
        .says("the question, in quotes", "\"Is it on an island?\"")]],
    needs: &[need(1, "the question follows in quotes")],
    ..Form::EMPTY
};

slots! { enum ConditionSlot { What, Cite } }
static CONDITION: Form = Form {
    word: "condition",
    noun: "a condition",
    doc: "What the paper demands beyond what can be computed: listed, never judged.",
    examples: &["condition \"identify every 15 min\", \"clause 9\""],
    slots: &[&[
        // first in the list: a text that begins a group is the citation
        Slot::bare(ConditionSlot::Cite.id(), &Text).says("the clause, in quotes", "\"clause 9\""),
        Slot::text(ConditionSlot::What.id())
            .first()
            .says("what is demanded, in quotes", "\"identify every 15 min\""),
    ]],
    needs: &[need(
        ConditionSlot::What.bit(),
        "the condition follows in quotes",
    )],
    ..Form::EMPTY
};

slots! { enum FixedSlot { Position, Height, Frequency, Datum, Within, Cite } }
static FIXED: Form = Form {
    word: "fixed",
    noun: "what is fixed",
    doc: "What the paper fixes, and how far it may be off.",
    examples: &[
        "fixed height 26 m agl of A1, within 0.5 m, \"clause 6\"",
        "fixed position 49.3333° S 123.1667° W, wgs84, within 100 m, \"clause 1\"",
        "fixed frequency 146.9137 MHz, within 1 kHz, \"clause 2\"",
    ],
    slots: &[&[
        Slot::word(
            FixedSlot::Position.id(),
            "position",
            &[
                Value(&q::ANGLE),
                OneOf(w::LATITUDE),
                Value(&q::ANGLE),
                OneOf(w::LONGITUDE),
            ],
        )
        .first()
        .says("latitude and longitude", "position 49.3333° S 123.1667° W"),
        Slot::word(
            FixedSlot::Height.id(),
            "height",
            &[
                Value(&q::HEIGHT),
                OneOf(w::ABOVE_GROUND),
                Then("of", &Name(NameKind::Tag)),
            ],
        )
        .first()
        .says("height of an antenna", "height 26 m agl of A1"),
        Slot::word(
            FixedSlot::Frequency.id(),
            "frequency",
            &[Value(&q::FREQUENCY)],
        )
        .first()
        .says("a frequency of a transmitter", "frequency 146.9137 MHz"),
        Slot::one_of(FixedSlot::Datum.id(), &w::DATUMS).says("the datum of the position", "wgs84"),
        Slot::word(FixedSlot::Within.id(), "within", &[Value(&q::OFF_BY)])
            .says("how far it may be off", "within 0.5 m"),
        Slot::text(FixedSlot::Cite.id()).says("the clause, in quotes", "\"clause 6\""),
    ]],
    needs: &[need(
        0b111,
        "`position`, `height` or `frequency` and its value follow",
    )],
    ..Form::EMPTY
};

slots! { enum ClauseSlot {
    Value, Counted, Kind, Total, On, Class, Above, Below, If, Since, Until, Instead, Cite,
    Confidence, Then, Allocated, Tier, Averaging
} }

const OF_CLAUSE: [Slot; 14] = [
    Slot::value(ClauseSlot::Value.id(), &q::RULED)
        .first()
        .says("the power; a law may follow it", "30 W"),
    Slot::one_of(ClauseSlot::Counted.id(), &RULED).says("which power", "erp"),
    Slot::one_of(ClauseSlot::Kind.id(), &w::POWER_KIND).says("the kind of power", "pep"),
    Slot::word(ClauseSlot::Total.id(), "total", &[])
        .says("all transmitters of the station together", "total"),
    Slot::word(ClauseSlot::On.id(), "on", &[Bands]).says(
        "where it holds: bands, or a range of frequencies",
        "on 144 MHz to 148 MHz",
    ),
    Slot::word(ClauseSlot::Class.id(), "class", &[Name(NameKind::Class)])
        .each()
        .says("the classes it holds for", "class novice"),
    Slot::word(
        ClauseSlot::Above.id(),
        "above",
        &[Value(&q::HEIGHT), OneOf(DATUM_OF_HEIGHT)],
    )
    .says("holds above a height only", "above 7 m haat"),
    Slot::word(
        ClauseSlot::Below.id(),
        "below",
        &[Value(&q::HEIGHT), OneOf(DATUM_OF_HEIGHT)],
    )
    .says("holds up to a height only", "below 7 m haat"),
    Slot::word(ClauseSlot::If.id(), "if", &[Name(NameKind::Question)]).says(
        "holds where the question is answered with yes",
        "if islands",
    ),
    Slot::word(ClauseSlot::Since.id(), "since", &[Date]).says("its first day", "since 2026-02-13"),
    Slot::word(ClauseSlot::Until.id(), "until", &[Date]).says("its last day", "until 2026-02-12"),
    Slot::text(ClauseSlot::Cite.id()).says("its citation, in quotes", "\"clause 4\""),
    Slot::word(
        ClauseSlot::Confidence.id(),
        "confidence",
        &[OneOf(CONFIDENCE)],
    )
    .says("how sure this text is", "confidence high"),
    Slot::word(ClauseSlot::Allocated.id(), "allocated", &[]).says(
        "holds where the service is allocated, which these rules do not list",
        "allocated",
    ),
];

static LIMIT: Form = Form {
    word: "limit",
    also: &["maximum"],
    noun: "a limit",
    doc: "The highest power that a clause allows.",
    examples: &[
        "limit 30 W erp carrier on 2m, \"clause 4\"",
        "limit 50 W * (7 m / haat)^2 erp pep above 7 m haat on 221 MHz to 222 MHz, \"3.6\", confidence low",
        "limit erp carrier on 144 MHz to 148 MHz, class repeater, \"3.5\", confidence medium { haat to 150 m 60 W; haat above 150 m 45 W }",
        "limit 1000 W erp on 1240 MHz to 1300 MHz, instead of \"3.1\", confidence medium",
        "limit 2 W/m2 on 30 MHz to 300 MHz, public, averaging 30 min, \"7.1\", confidence high",
    ],
    slots: &[
        &OF_CLAUSE,
        &[
            Slot::phrase(ClauseSlot::Instead.id(), "instead", "of", &[Text])
                .each()
                .says("the clause that it replaces", "instead of \"3.1\""),
            Slot::one_of(ClauseSlot::Tier.id(), &super::exposure::TIER)
                .says("for whom a limit of exposure is", "public"),
            Slot::word(ClauseSlot::Averaging.id(), "averaging", &[Value(&q::TIME)])
                .says("averaging time of a limit of exposure", "averaging 30 min"),
        ],
    ],
    needs: &[need(
        ClauseSlot::Value.bit() | super::types::BLOCK,
        "the power follows, or a block of steps",
    )],
    block: Block::Lines(Context::Clause, CLAUSE_LINES),
    ..Form::EMPTY
};

static THRESHOLD: Form = Form {
    word: "threshold",
    noun: "a threshold",
    doc: "A power from which on there is a duty; it gives no verdict.",
    examples: &[
        "threshold 10 W eirp total, \"3.9\", then \"notify the office before first use\", confidence high",
    ],
    slots: &[
        &OF_CLAUSE,
        &[Slot::word(ClauseSlot::Then.id(), "then", &[Text])
            .says("the duty, in quotes", "then \"notify the office\"")],
    ],
    needs: &[
        need(ClauseSlot::Value.bit(), "the power follows"),
        need(
            ClauseSlot::Then.bit(),
            "`then` and the duty follow in quotes",
        ),
    ],
    ..Form::EMPTY
};

slots! { enum StepSlot { To, Above } }
macro_rules! step {
    ($n:ident $w:literal $q:expr, $ex:literal, $to:literal, $above:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "a step",
            doc: "A step of a limit: the edge belongs to the row below it, and nothing is read between rows.",
            examples: &[concat!($w, " ", $to, " 60 W"), concat!($w, " ", $above, " 30 W")],
            slots: &[&[
                Slot::word(StepSlot::To.id(), "to", &[Value(&$q), Value(&q::POWER)])
                    .first()
                    .says("up to this value, and the power", concat!($to, " 60 W")),
                Slot::word(StepSlot::Above.id(), "above", &[Value(&$q), Value(&q::POWER)])
                    .first()
                    .says("above this value, and the power", concat!($above, " 30 W")),
            ]],
            needs: &[need(0b11, "`to` or `above` follows, with the power")],
            ..Form::EMPTY
        };
    };
}
step! { HAAT "haat" q::HEIGHT, "150 m", "to 150 m", "above 300 m" }
step! { HEIGHT "height" q::HEIGHT, "20 m", "to 20 m", "above 20 m" }
step! { BANDWIDTH "bandwidth" q::FREQUENCY, "3 kHz", "to 3 kHz", "above 3 kHz" }
step! { DISTANCE "distance" q::METRES, "10 km", "to 10 km", "above 10 km" }
step! { RADIUS "radius" q::METRES, "8 km", "to 8 km", "above 64 km" }

slots! { enum ExampleSlot { Value, At, Haat, Height, Distance, Radius, Bandwidth } }
macro_rules! example {
    ($n:ident $w:literal $doc:literal $ex:literal) => {
        static $n: Form = Form {
            word: $w,
            noun: "a worked example",
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[
                Slot::value(ExampleSlot::Value.id(), &q::POWER)
                    .first()
                    .says("a power of the quantity that the clause counts", "24.7 W"),
                Slot::word(ExampleSlot::At.id(), "at", &[Value(&q::FREQUENCY)])
                    .says("its frequency", "at 146.9137 MHz"),
                Slot::word(ExampleSlot::Haat.id(), "haat", &[Value(&q::HEIGHT)])
                    .says("its height above average terrain", "haat 30 m"),
                Slot::word(ExampleSlot::Height.id(), "height", &[Value(&q::HEIGHT)])
                    .says("its height above ground", "height 26 m"),
                Slot::word(ExampleSlot::Distance.id(), "distance", &[Value(&q::METRES)])
                    .says("its distance", "distance 5 km"),
                Slot::word(ExampleSlot::Radius.id(), "radius", &[Value(&q::METRES)])
                    .says("its service radius", "radius 16 km"),
                Slot::word(
                    ExampleSlot::Bandwidth.id(),
                    "bandwidth",
                    &[Value(&q::FREQUENCY)],
                )
                .says("its bandwidth", "bandwidth 2.8 kHz"),
            ]],
            needs: &[
                need(ExampleSlot::Value.bit(), "the power follows"),
                need(ExampleSlot::At.bit(), "`at` and the frequency follow"),
            ],
            ..Form::EMPTY
        };
    };
}
example! { PASSES "passes" "A worked example that keeps the clause; `check` runs it." "24.7 W at 146.9137 MHz" }
example! { FAILS "fails" "A worked example that does not keep the clause; `check` runs it." "30.8 W at 146.9137 MHz" }

static CLAUSE_LINES: &[&Form] = &[
    &HAAT, &HEIGHT, &BANDWIDTH, &DISTANCE, &RADIUS, &PASSES, &FAILS,
];

static RULE_LINES: &[&Form] = &[
    &AUTHORITY,
    &JURISDICTION,
    &SERVICE,
    &EDITION,
    &DATED,
    &UNTIL,
    &HOLDER,
    &CLASS,
    &ASK,
    &LIMIT,
    &THRESHOLD,
    &FIXED,
    &CONDITION,
    &super::exposure::REFLECTION,
    &super::form::FIELD,
];

pub(crate) static LICENCE: Form = Form {
    word: "licence",
    also: &["license", "permit"],
    noun: "a licence",
    doc: "A paper of one's own: what it allows, fixes and demands, clause by clause.",
    examples: &[
        "licence tso-14-0093 \"Pellgarrow hill\" { limit 30 W erp carrier on 2m, \"clause 4\" }",
    ],
    subject: Subject::New(NameKind::Rules),
    slots: &[&[TITLE]],
    needs: &[need(super::types::BLOCK, "a licence has a block")],
    block: Block::Lines(Context::Rules, RULE_LINES),
    ..Form::EMPTY
};

pub(crate) static RULES: Form = Form {
    word: "rules",
    also: &["regulations", "law"],
    noun: "rules",
    doc: "Rules for everybody, clause by clause, each with its citation and confidence.",
    examples: &[
        "rules thrennock-amateur { limit 400 W output pep on 1.8 MHz to 450 MHz, \"3.1\", confidence high }",
    ],
    subject: Subject::New(NameKind::Rules),
    slots: &[&[TITLE]],
    needs: &[need(super::types::BLOCK, "rules have a block")],
    block: Block::Lines(Context::Rules, RULE_LINES),
    ..Form::EMPTY
};

slots! { enum UnderSlot { Class, More, Reflection } }
slots! { enum AnswerSlot { Answer, Radius, Distance, Bandwidth, Allocated, By } }
static ANSWER: Form = Form {
    noun: "an answer",
    doc: "The answer to a question of the rules, or a figure they go by.",
    examples: &[
        "islands no, \"chart 4, QY4TRA 2026-05-02\"",
        "radius 16 km",
        "allocated 144 MHz to 148 MHz, \"table of allocations, QY4TRA 2026-05-02\"",
    ],
    slots: &[&[
        Slot::bare(AnswerSlot::Answer.id(), &Name(NameKind::Question))
            .first()
            .then(&[OneOf(YES_NO)])
            .says("the question and its answer", "islands no"),
        Slot::word(AnswerSlot::Radius.id(), "radius", &[Value(&q::METRES)])
            .first()
            .says("the service radius", "radius 16 km"),
        Slot::word(AnswerSlot::Distance.id(), "distance", &[Value(&q::METRES)])
            .first()
            .says("the distance the rules go by", "distance 5 km"),
        Slot::word(
            AnswerSlot::Bandwidth.id(),
            "bandwidth",
            &[Value(&q::FREQUENCY)],
        )
        .first()
        .says("the bandwidth of the emission", "bandwidth 11 kHz"),
        Slot::word(AnswerSlot::Allocated.id(), "allocated", &[Bands])
            .first()
            .says(
                "where the table of allocations lets the station's service and class send",
                "allocated 144 MHz to 148 MHz",
            ),
        Slot::text(AnswerSlot::By.id())
            .says("who says so, and when, in quotes", "\"QY4TRA 2026-05-02\""),
    ]],
    needs: &[need(0b1_1111, "a question and its answer follow")],
    ..Form::EMPTY
};

/// That a station is under a licence or rules.
pub(crate) static UNDER: Form = Form {
    word: "under",
    also: &["licensed"],
    noun: "`under`",
    doc: "The licence or rules that the station is under: its transmit chains are judged by them.",
    examples: &[
        "under tso-14-0093",
        "under thrennock-amateur, class full, repeater { islands no, \"chart 4, QY4TRA 2026-05-02\" }",
    ],
    subject: Subject::Use(NameKind::Rules),
    slots: &[&[
        Slot::word(UnderSlot::Class.id(), "class", &[Name(NameKind::Class)])
            .each()
            .says("the station's class", "class full"),
        Slot::word(
            UnderSlot::Reflection.id(),
            "reflection",
            &[Value(&q::NUMBER)],
        )
        .says(
            "factor on the field by reflection, in the place of that of the rules",
            "reflection 2",
        ),
        Slot::bare(UnderSlot::More.id(), &Name(NameKind::Class))
            .each()
            .after(UnderSlot::Class.id(), "is said after `class`")
            .says("a further class of the station", "repeater"),
    ]],
    block: Block::Rows(&ANSWER),
    ..Form::EMPTY
};
