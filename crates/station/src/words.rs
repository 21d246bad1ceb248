//! Words inside statements: what a statement takes, and which words exclude each other.
//!
//! Lowering reads by these lists; what "did you mean" and completion offer comes from them.

use crate::keywords::Context;
use crate::model::PartKind;

/// Modes of a transmitter.
pub static MODES: &[&str] = &["fm", "data", "cw", "ssb", "ssb-processed", "am"];

/// Datums of a position.
pub static DATUMS: &[&str] = &["wgs84", "etrs89", "nad83", "nad27"];

/// What can be said about every figure.
pub static OF_FIGURES: &[&str] = &[
    "read",
    "sheet",
    "source",
    "rated",
    "displayed",
    "guess",
    "typical",
    "nominal",
    "maximum",
    "on",
    "at",
    "since",
    "with",
    "by",
    "corrected",
];

/// Words that say the same as another one: they are read, and the other one is offered.
pub static ALIKE: &[&str] = &["source", "nominal"];

/// Those of [`OF_FIGURES`] that a statement takes. A text in quotes counts as `source`, a date
/// as `read`.
#[must_use]
pub fn of_figures(cx: Context, word: &str) -> &'static [&'static str] {
    match (cx, word) {
        (Context::Chain, "limit") => &["on", "sheet", "source"],
        (Context::Chain, "expect") => &["on", "source"],
        (Context::Chain, "read") => &["read", "on", "with", "by", "source", "corrected"],
        (Context::Chain, "readings") => &["with", "on"],
        (Context::Session, "readings") => &["with"],
        (Context::Session, "read") => &["read", "with", "by", "source", "corrected"],
        (Context::Readings, _) => &["read", "with", "by", "source", "corrected"],
        _ => OF_FIGURES,
    }
}

const DEVICE: &[&str] = &[
    "of",
    "passes",
    "swr",
    "return-loss",
    "rating",
    "isolation",
    "excess",
    "noise",
    "ends",
    "from",
    "reversed",
    "accuracy",
];

const BALUN: &[&str] = &[
    "series",
    "shunt",
    "ratio",
    "of",
    "passes",
    "swr",
    "return-loss",
    "rating",
    "isolation",
    "excess",
    "noise",
    "ends",
    "from",
    "reversed",
    "accuracy",
];

const DIVIDER: &[&str] = &[
    "split",
    "tee",
    "of",
    "passes",
    "swr",
    "return-loss",
    "rating",
    "isolation",
    "excess",
    "noise",
    "ends",
];

/// Words that only some statements take, besides what can be said about figures.
#[must_use]
pub fn own(cx: Context, word: &str) -> &'static [&'static str] {
    match (cx, word) {
        (Context::Cable, "loss") => &["from", "of", "accuracy"],
        (Context::Cable, "accuracy") => &["k", "to", "shared"],
        (_, "run" | "jumper" | "tail") => &[
            "of",
            "added",
            "wet",
            "ends",
            "swr",
            "return-loss",
            "from",
            "reversed",
            "accuracy",
        ],
        (_, "piece") => &["of", "connector", "adapter", "added", "ends"],
        (_, "transmitter" | "power") => &[
            "carrier",
            "pep",
            "mean",
            "fm",
            "data",
            "cw",
            "ssb",
            "ssb-processed",
            "am",
            "duty",
            "keyed",
            "foldback",
        ],
        (_, "receiver" | "sensitivity") => &["for", "noise"],
        (_, "antenna") => &["realized", "swr", "return-loss", "height", "rating", "from"],
        (_, "load") => &["rating", "swr", "return-loss", "from"],
        (Context::Antenna, "gain" | "directivity") => &["realized"],
        (Context::Antenna, "impedance") => &["with", "reactance", "from"],
        (Context::Device, "high" | "low" | "port" | "from") => {
            &["passes", "rejects", "from", "reversed", "accuracy"]
        }
        (Context::Device, "loss") => &["passes"],
        (_, "read") => &["forward", "reflected", "net", "swr"],
        (_, "expect") => &["loss", "swr", "erp", "eirp"],
        (_, "limit") => &["erp", "eirp", "output", "carrier", "pep", "mean"],
        (_, "rating") => &["ambient", "conductor"],
        (Context::Session | Context::Readings, _) => &[],
        // more ports than a network file of a chain has
        (_, "divider") => DIVIDER,
        (_, "balun") => BALUN,
        (_, w) if PartKind::from_word(w).is_some() => DEVICE,
        _ => &[],
    }
}

/// Words of which one thing has one.
#[derive(Debug)]
pub struct OneOf {
    /// The words; those in one place mean the same.
    pub words: &'static [&'static [&'static str]],
    /// What has one of them, as a sentence.
    pub rule: &'static str,
    /// What to write where two are meant.
    pub instead: &'static str,
}

/// The groups of words that exclude each other.
pub static ONE_OF: &[OneOf] = &[
    OneOf {
        words: &[&["erp"], &["eirp"], &["output"]],
        rule: "A limit is on ERP, on EIRP or on the transmitter's output.",
        instead: "Two limits are two lines.",
    },
    OneOf {
        words: &[&["carrier"], &["pep"], &["mean"]],
        rule: "A power is that of the carrier, the peak envelope or the mean.",
        instead: "One is enough: the others follow from the mode.",
    },
    OneOf {
        words: &[
            &["fm"],
            &["data"],
            &["cw"],
            &["ssb"],
            &["ssb-processed"],
            &["am"],
        ],
        rule: "A transmitter has one mode.",
        instead: "For another mode write another transmitter, `transmitter TX2 32 W carrier, am`.",
    },
    OneOf {
        words: &[&["forward"], &["reflected"], &["net"]],
        rule: "A reading of power is forward, reflected or net power.",
        instead: "Two readings are two `read` lines.",
    },
    OneOf {
        words: &[&["typical", "nominal"], &["maximum"]],
        rule: "A figure is typical or a maximum.",
        instead: "If the sheet gives both, write the typical one with a `±` that reaches the maximum.",
    },
    OneOf {
        words: &[
            &["read"],
            &["sheet"],
            &["rated"],
            &["displayed"],
            &["guess"],
        ],
        rule: "A figure has one origin.",
        instead: "To name a document beside `guess`, write it without `sheet`: `guess, \"TX-2 p. 1\"`.",
    },
];

/// Whether other words exclude this one.
#[must_use]
pub fn is_one_of(word: &str) -> bool {
    ONE_OF.iter().any(|o| o.words.concat().contains(&word))
}

/// The group by which two words exclude each other.
#[must_use]
pub fn excludes(a: &str, b: &str) -> Option<&'static OneOf> {
    let place = |o: &OneOf, w: &str| o.words.iter().position(|alike| alike.contains(&w));
    ONE_OF
        .iter()
        .find(|o| matches!((place(o, a), place(o, b)), (Some(x), Some(y)) if x != y))
}
