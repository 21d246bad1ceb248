//! Cables.

use super::bundle::{ABOUT_ALWAYS, ABOUT_WARM, CITE, FILE_ACCURACY, FROM, ONE_ORIGIN, ORIGINS};
use super::quantity as q;
use super::top::TITLE;
use super::types::Takes::{File, Name, Text, Then, Value};
use super::types::{
    BLOCK, Block, Context, Exclusive, FileKind, Form, NameKind, Slot, Subject, need, slots,
};
use super::words as w;

/// A cable.
pub(crate) static CABLE: Form = Form {
    word: "cable",
    also: &["coax", "feeder", "feedline"],
    noun: "a cable's head",
    doc: "Defines a cable by coefficients, data-sheet table or construction.",
    examples: &[
        "cable foam-10 \"10 mm foam\" { loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz; source \"club sheet 12\" }",
    ],
    subject: Subject::New(NameKind::Cable),
    slots: &[&[TITLE]],
    block: Block::Lines(
        Context::Cable,
        &[
            &IMPEDANCE,
            &VELOCITY,
            &LOSS,
            &CONSTRUCTION,
            &WIRES,
            &VALID,
            &ACCURACY,
            &super::parts::RATING_LINE,
            &super::parts::VOLTAGE_LINE,
            &SIZE,
            &CONDUCTOR,
            &SOURCE,
            &super::recalled::RECALLED_CABLE,
        ],
    ),
    ..Form::EMPTY
};

macro_rules! figure_line {
    ($n:ident $w:literal $q:ident $noun:literal $needs:literal $doc:literal $ex:literal) => {
        static $n: Form = Form {
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
        };
    };
}
figure_line! { IMPEDANCE "impedance" IMPEDANCE "a cable" "an impedance follows" "Characteristic impedance." "50 ohm" }
figure_line! { VELOCITY "velocity" VELOCITY "a cable" "a velocity factor follows" "Velocity factor." "0.88 ± 0.01" }
figure_line! { VALID "valid" FREQUENCY "a cable" "a range follows" "Frequencies the loss is good for." "0.5 MHz to 3000 MHz" }
figure_line! { SIZE "size" DIAMETER "a cable" "the diameter over the jacket follows" "Diameter over the jacket." "10.3 mm" }

slots! { enum Loss { Terms } }
static LOSS: Form = Form {
    word: "loss",
    also: &["attenuation"],
    noun: "a cable's loss",
    doc: "Loss of the cable: two coefficients, a table, or a measured piece.",
    examples: &[
        "loss 0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz",
        "loss typical at 20 °C { 100 MHz 4.1 dB/100 m }",
        "loss from \"reel.s2p\" of 25 m ± 0.05 m at 12 °C, accuracy 0.05 dB",
    ],
    slots: &[
        &[
            Slot::value(Loss::Terms.id(), &q::COEFFICIENT).first().says(
                "two coefficients: the conductors' part and the dielectric's",
                "0.4 dB/100 m/sqrt(MHz) + 0.0016 dB/100 m/MHz",
            ),
            Slot::word(
                FROM,
                "from",
                &[File(FileKind::TwoPort), Then("of", &Value(&q::METRES))],
            )
            .first()
            .says(
                "a network file of a measured piece, and its length",
                "from \"reel.s2p\" of 25 m",
            ),
            Slot::word(FILE_ACCURACY, "accuracy", &[Value(&q::ACCURACY_DB)])
                .after(FROM, "is said of a network file, and none stands before it")
                .says(
                    "how far the loss of the file may be off",
                    "accuracy 0.05 dB",
                ),
        ],
        ABOUT_WARM,
    ],
    exclusive: &[
        ONE_ORIGIN,
        Exclusive {
            slots: Loss::Terms.bit() | 1 << FROM | BLOCK,
            rule: "A cable's loss is two coefficients, a table or a file.",
            instead: "Two cables are two definitions.",
        },
    ],
    needs: &[need(
        Loss::Terms.bit() | 1 << FROM | BLOCK,
        "a loss is two coefficients or a table",
    )],
    block: Block::Rows(&RATE_ROW),
    once: true,
    ..Form::EMPTY
};

static RATE_ROW: Form = Form {
    noun: "a loss table",
    doc: "A frequency and the loss per length there.",
    examples: &["100 MHz 4.1 dB/100 m"],
    slots: &[&[Slot::value(0, &q::FREQUENCY)
        .first()
        .then(&[Value(&q::RATE)])
        .says(
            "a frequency, and the loss per length there",
            "100 MHz 4.1 dB/100 m",
        )]],
    needs: &[need(1, "a row of a loss table is a frequency and a loss")],
    ..Form::EMPTY
};

slots! { enum Accuracy { Share, To, Shared } }
static ACCURACY: Form = Form {
    word: "accuracy",
    noun: "an accuracy",
    doc: "How far the figures of the cable may be off.",
    examples: &[
        "accuracy 5 % k 1 to 450 MHz",
        "accuracy 4 % k 2, shared sheet-7",
    ],
    slots: &[
        &[
            Slot::value(Accuracy::Share.id(), &q::SHARE).first().says(
                "a share of the loss; with `k` a standard or expanded uncertainty",
                "5 % k 1",
            ),
            Slot::word(Accuracy::To.id(), "to", &[Value(&q::FREQUENCY)])
                .says("up to this frequency", "to 450 MHz"),
            Slot::word(Accuracy::Shared.id(), "shared", &[Name(NameKind::Shared)])
                .says("one cause for all cables that name it", "shared sheet-7"),
        ],
        ABOUT_ALWAYS,
    ],
    exclusive: ORIGINS,
    needs: &[need(Accuracy::Share.bit(), "the accuracy follows")],
    ..Form::EMPTY
};

static CONDUCTOR: Form = Form {
    word: "conductor",
    noun: "`conductor`",
    doc: "A copper-clad steel centre conductor.",
    examples: &["conductor clad"],
    slots: &[&[Slot::one_of(0, &w::CONDUCTORS)
        .first()
        .says("thin copper on steel", "clad")]],
    needs: &[need(1, "the kind of conductor follows")],
    once: true,
    ..Form::EMPTY
};

/// `source "document, page"`.
pub(crate) static SOURCE: Form = Form {
    word: "source",
    noun: "this line",
    doc: "Where the figures come from.",
    examples: &["source \"sheet 7, page 2\""],
    slots: &[&[Slot::bare(CITE, &Text)
        .first()
        .says("document and page, in quotes", "\"sheet 7, page 2\"")]],
    needs: &[need(1 << CITE, "the document follows in quotes")],
    once: true,
    ..Form::EMPTY
};

static CONSTRUCTION: Form = Form {
    word: "construction",
    noun: "this line",
    doc: "A coaxial cable by its dimensions.",
    examples: &["construction { inner 0.92 mm; outer 2.98 mm; permittivity 2.07 }"],
    needs: &[need(BLOCK, "the dimensions follow in a block")],
    block: Block::Lines(
        Context::Construction,
        &[
            &INNER,
            &OUTER,
            &PERMITTIVITY,
            &LOSS_TANGENT,
            &STRAND,
            &STRAND_DIAMETER,
            &BRAID,
            &RESISTIVITY,
            &INNER_RESISTIVITY,
            &OUTER_RESISTIVITY,
        ],
    ),
    once: true,
    ..Form::EMPTY
};

static WIRES: Form = Form {
    word: "wires",
    also: &["ladder-line", "open-wire"],
    noun: "this line",
    doc: "A parallel-wire line by its dimensions.",
    examples: &["wires { diameter 2 mm; spacing 150 mm }"],
    needs: &[need(BLOCK, "the dimensions follow in a block")],
    block: Block::Lines(
        Context::Construction,
        &[&PERMITTIVITY, &RESISTIVITY, &DIAMETER, &SPACING],
    ),
    once: true,
    ..Form::EMPTY
};

macro_rules! dimension {
    ($($n:ident $w:literal $q:ident $doc:literal $ex:literal;)+) => {
        $(static $n: Form = Form {
            word: $w,
            noun: "a construction",
            doc: $doc,
            examples: &[concat!($w, " ", $ex)],
            slots: &[&[Slot::value(0, &q::$q).first().says($doc, $ex)]],
            needs: &[need(1, "its value follows")],
            once: true,
            ..Form::EMPTY
        };)+
    };
}
dimension! {
    INNER "inner" DIAMETER "Diameter over the inner conductor." "0.92 mm";
    OUTER "outer" DIAMETER "Inner diameter of the outer conductor." "2.98 mm";
    PERMITTIVITY "permittivity" NUMBER "Relative permittivity of the dielectric." "2.07";
    LOSS_TANGENT "loss-tangent" NUMBER "Loss tangent of the dielectric." "0.0002";
    STRAND "strand" NUMBER "Factor of a stranded inner conductor on its resistance (1 is solid)." "1.25";
    STRAND_DIAMETER "strand-diameter" NUMBER "Effective diameter of a stranded inner conductor over the one over its strands, for the impedance." "0.97";
    BRAID "braid" NUMBER "Factor of the outer conductor on its resistance (1 is a smooth tube)." "1.9";
    RESISTIVITY "resistivity" RESISTIVITY "Resistivity of the conductors." "1.7241e-8 ohm-m";
    INNER_RESISTIVITY "inner-resistivity" RESISTIVITY "Resistivity of the inner conductor, where the two differ." "2.8e-8 ohm-m";
    OUTER_RESISTIVITY "outer-resistivity" RESISTIVITY "Resistivity of the outer conductor, where the two differ." "2.8e-8 ohm-m";
    DIAMETER "diameter" DIAMETER "Diameter of each wire." "2 mm";
    SPACING "spacing" DIAMETER "Distance between the wires' centres." "150 mm";
}
