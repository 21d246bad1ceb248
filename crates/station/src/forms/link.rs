//! Links: which chains are its ends, what lies between them, and what must arrive.

use super::bundle::ABOUT_ALWAYS;
use super::quantity as q;
use super::top::TITLE;
use super::types::Takes::{File, Filler, Name, Value};
use super::types::{
    BLOCK, Block, Context, FileKind, Form, NameKind, Set, Slot, Subject, Takes, need, slots, word,
};

/// Models of the loss between two stations.
const MODELS: Set = Set {
    words: &[
        word(
            "free-space",
            "nothing between the antennas; the default without a profile",
        ),
        word(
            "bullington",
            "one edge in place of the terrain, with the correction of ITU-R P.1812-6; the default with a profile",
        ),
        word("one-edge", "the highest edge of the profile alone"),
        word("cascade", "the highest edge and one on each side of it"),
        word("two-ray", "flat ground that reflects"),
        word("hata-open", "open land, by Okumura and Hata"),
        word("hata-suburban", "suburbs, by Okumura and Hata"),
        word("hata-urban", "a city, by Okumura and Hata"),
    ],
    rule: "A link has one model; the others that can be computed are beside it in the report.",
    instead: "Remove one of them.",
};

/// What surrounds a receiving antenna.
pub(super) const AROUND: Set = Set {
    words: &[
        word("city", "city, 0.3 MHz to 250 MHz"),
        word("residential", "residential area, 0.3 MHz to 250 MHz"),
        word("rural", "rural area, 0.3 MHz to 250 MHz"),
        word("quiet-rural", "quiet rural area, 0.3 MHz to 30 MHz"),
    ],
    rule: "One place has one kind of surroundings.",
    instead: "Say with `at` which station each is for.",
};

slots! { enum HopSlot { Ends } }
static HOP: Form = Form {
    word: "hop",
    noun: "a hop",
    doc: "One direction of the link: the chain that sends and the chain that hears.",
    examples: &["hop talk-out-2m of pellgarrow to hear of car"],
    slots: &[&[Slot::bare(HopSlot::Ends.id(), &Takes::Hop).first().says(
        "the chain that sends with its station, and the chain that hears with its own",
        "talk-out-2m of pellgarrow to hear of car",
    )]],
    needs: &[need(
        1,
        "the chain that sends follows, `to`, and the chain that hears",
    )],
    ..Form::EMPTY
};

static PROFILE: Form = Form {
    word: "profile",
    also: &["terrain"],
    noun: "a profile",
    doc: "The ground between the first station of the first hop and the other one, from a table: distance and height above sea level, units in the names of the columns.",
    examples: &["profile from \"thrennock-harbour.csv\""],
    slots: &[&[Slot::word(0, "from", &[File(FileKind::Readings)])
        .first()
        .says("the table", "from \"thrennock-harbour.csv\"")]],
    needs: &[need(1, "`from` and the table follow")],
    once: true,
    ..Form::EMPTY
};

static DISTANCE: Form = Form {
    word: "distance",
    noun: "a distance",
    doc: "How far apart the stations are, where there is no profile.",
    examples: &["distance 38.4 km ± 0.2 km"],
    slots: &[
        &[Slot::value(0, &q::METRES)
            .first()
            .says("a distance", "38.4 km ± 0.2 km")],
        ABOUT_ALWAYS,
    ],
    needs: &[need(1, "the distance follows")],
    once: true,
    ..Form::EMPTY
};

static K_FACTOR: Form = Form {
    word: "k-factor",
    noun: "a k factor",
    doc: "Effective radius of the earth over the real one; 4/3 where none is stated.",
    examples: &["k-factor 1.333"],
    slots: &[&[Slot::value(0, &q::NUMBER)
        .first()
        .says("a number above 0.3", "1.333")]],
    needs: &[need(1, "the k factor follows")],
    once: true,
    ..Form::EMPTY
};

slots! { enum NoiseSlot { Around, Figure, At } }
static SITE_NOISE: Form = Form {
    word: "site-noise",
    noun: "the noise of a site",
    doc: "Noise from outside at the receiving antennas: by the surroundings (ITU-R P.372), or as read, in dB of degradation.",
    examples: &[
        "site-noise rural",
        "site-noise 3 dB at car, read 2026-05-02",
    ],
    slots: &[
        &[
            Slot::value(NoiseSlot::Figure.id(), &q::RATIO_DB)
                .first()
                .says("by how much it degrades the receiver, as read", "3 dB"),
            Slot::one_of(NoiseSlot::Around.id(), &AROUND).says("the surroundings", "rural"),
            Slot::word(NoiseSlot::At.id(), "at", &[Name(NameKind::Station)])
                .says("the station it is for; both, where none is named", "at car"),
        ],
        ABOUT_ALWAYS,
    ],
    needs: &[need(0b11, "the surroundings or a figure in dB follow")],
    ..Form::EMPTY
};

/// What a signal can be measured by.
const CRITERIA: &[&str] = &["sinad", "snr", "quieting"];

slots! { enum NeedSlot { Ratio, Share, Spread } }
static NEED: Form = Form {
    word: "need",
    noun: "what is needed",
    doc: "What must arrive: the criterion, at which share of the places, and how far levels spread from place to place (one standard deviation).",
    examples: &["need 20 dB sinad, 90 % of places, spread 8 dB"],
    slots: &[&[
        Slot::value(NeedSlot::Ratio.id(), &q::RATIO_DB)
            .first()
            .then(&[Filler(CRITERIA)])
            .says("the criterion", "20 dB sinad"),
        Slot::value_as(NeedSlot::Share.id(), &q::SHARE, "of")
            .then(&[Filler(&["places"])])
            .says("the share of the places", "90 % of places"),
        Slot::word(NeedSlot::Spread.id(), "spread", &[Value(&q::RATIO_DB)]).says(
            "one standard deviation of the level from place to place",
            "spread 8 dB",
        ),
    ]],
    needs: &[need(1, "the criterion follows")],
    once: true,
    ..Form::EMPTY
};

static MODEL: Form = Form {
    word: "model",
    noun: "a model",
    doc: "How the loss between the stations is computed.",
    examples: &["model bullington"],
    slots: &[&[Slot::one_of(0, &MODELS)
        .first()
        .says("a model", "bullington")]],
    needs: &[need(1, "the model follows")],
    once: true,
    ..Form::EMPTY
};

static COVERAGE: Form = Form {
    word: "coverage",
    noun: "distances",
    doc: "Distances at which the margin that free space would leave is listed.",
    examples: &["coverage 10 km, 20 km, 40 km"],
    slots: &[&[
        Slot::value(0, &q::METRES)
            .first()
            .says("a distance", "10 km"),
        Slot::value(1, &q::METRES)
            .each()
            .says("a further distance", "20 km"),
    ]],
    needs: &[need(1, "the distances follow")],
    once: true,
    ..Form::EMPTY
};

pub(crate) static LINK: Form = Form {
    word: "link",
    also: &["path"],
    noun: "a link",
    doc: "A link between two stations: what arrives of what is sent, and whether it suffices.",
    examples: &[
        "link harbour-quay \"to a car on the quay\" { hop talk-out-2m of pellgarrow to hear of car; distance 38.4 km ± 0.2 km; need 20 dB sinad, 90 % of places, spread 8 dB }",
    ],
    subject: Subject::New(NameKind::Link),
    slots: &[&[TITLE]],
    needs: &[need(BLOCK, "a link has a block")],
    block: Block::Lines(
        Context::Link,
        &[
            &HOP,
            &PROFILE,
            &DISTANCE,
            &K_FACTOR,
            &SITE_NOISE,
            &NEED,
            &MODEL,
            &COVERAGE,
        ],
    ),
    ..Form::EMPTY
};
