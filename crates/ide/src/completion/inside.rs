//! What may stand behind the first word of a statement.

use std::collections::BTreeSet;

use downlead_station::evidence::CORRECTED;
use downlead_station::keywords::Context;
use downlead_station::model::PartKind;
use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::names::NameKind;

impl List<'_> {
    /// Behind the first word of a statement.
    #[allow(clippy::too_many_lines, reason = "one table of places")]
    pub(super) fn inside(&mut self) {
        let (cx, word) = (self.at.cx, self.at.word());
        let Some(last) = self.at.last() else { return };
        if last.kind == SyntaxKind::Number {
            self.units();
            if word == "divider" {
                self.words(1, &["way"]);
            }
            if matches!(self.at.group(), "connector") {
                self.words(1, &["of"]);
            }
            return;
        }
        let kinds = self.at.kinds();
        match last.text {
            "of" if word == "accuracy" => return self.words(1, &["reading", "full scale"]),
            "of" if matches!(word, "linearity" | "repeatability") => {
                return self.words(1, &["reading", "full scale"]);
            }
            // a length follows
            "of" if word == "loss" => return,
            "of" => {
                let of = match self.at.group() {
                    group @ ("connector" | "adapter") => group,
                    _ => word,
                };
                return match of {
                    "run" | "jumper" | "tail" | "piece" => {
                        self.names(1, NameKind::Cable, CompletionKind::Cable)
                    }
                    "connector" | "adapter" => {
                        self.names(1, NameKind::Connector, CompletionKind::Connector)
                    }
                    _ => self.names(1, NameKind::Device, CompletionKind::Device),
                };
            }
            "on" => return self.names(1, NameKind::Band, CompletionKind::Band),
            "through" | "open" | "short" | "resonance" | "delay" | "phase"
                if matches!(cx, Context::Session | Context::Readings) =>
            {
                return self.tags();
            }
            "with" if word != "impedance" || self.at.head.iter().any(|t| t.text == "from") => {
                return self.names(1, NameKind::Instrument, CompletionKind::Instrument);
            }
            "with" => return self.words(1, &["reactance"]),
            "by" => return self.heard(NameKind::Person, CompletionKind::Person),
            "shared" => return self.heard(NameKind::Shared, CompletionKind::Qualifier),
            "ends" | "family" => return self.heard(NameKind::Family, CompletionKind::Family),
            "joins" if cx == Context::Connector => {
                return self.heard(NameKind::Family, CompletionKind::Family);
            }
            "joins" | "adapter" => {
                return self.names(1, NameKind::Connector, CompletionKind::Connector);
            }
            "connector" if cx != Context::Top => {
                return self.names(1, NameKind::Connector, CompletionKind::Connector);
            }
            "kind" if cx == Context::Device => {
                let kinds: Vec<&str> = PartKind::ALL.iter().map(|k| k.word()).collect();
                return self.words(1, &kinds);
            }
            "mode" => return self.words(1, MODES),
            "noise" => return self.words(1, &["figure"]),
            "full" => return self.words(1, &["scale"]),
            "foldback" => return self.words(1, &["swr"]),
            "branches" => return self.words(1, &["in phase", "apart"]),
            "in" if word == "branches" => return self.words(1, &["phase"]),
            "for" => return self.words(1, &["12 dB sinad", "10 dB sinad"]),
            "sheet" | "source" | "use" | CORRECTED if self.c.snippets => {
                let item = self.add(1, CompletionKind::Snippet, "\"…\"", None);
                item.insert = "\"${1}\"".to_owned();
                item.snippet = true;
                return;
            }
            "k" => return self.words(1, &["1", "2"]),
            "since" | "calibrated" => return,
            // a time follows
            "at" if cx == Context::Readings => return,
            _ => {}
        }
        if word == "chain" {
            if self.at.head.iter().any(|t| t.text == "on") {
                if last.kind == SyntaxKind::Comma {
                    self.names(1, NameKind::Band, CompletionKind::Band);
                } else {
                    self.words(2, &["transmit", "receive"]);
                }
            } else if self.at.head.len() > 1 {
                self.words(1, &["on"]);
            }
            return;
        }
        if self.at.last_word() == "for" {
            return self.words(1, &["sinad"]);
        }
        self.qualifiers(cx, word, last.kind);
        if !matches!(last.kind, SyntaxKind::Unit) {
            self.lets(6, &kinds);
        }
    }

    /// What is said of a reading of a session.
    fn of_reading(&mut self, word: &str, last: SyntaxKind) {
        let have = |w: &str| self.at.head.iter().any(|t| t.text == w);
        let group = last == SyntaxKind::Comma;
        let mut list: Vec<&str> = Vec::new();
        match word {
            // the first thing is what was shown
            _ if matches!(last, SyntaxKind::Word) && !have("at") => list.push("from"),
            "equalise" => list.extend(["with", "against", "at", CORRECTED]),
            "through" => {
                list.extend(["reflected", "at", "with", "adapter", "input", CORRECTED]);
            }
            "baseline" => list.extend(["reflected", "at", "with", "adapter", CORRECTED]),
            _ => list.extend(["at", "with", CORRECTED]),
        }
        // behind a comma a figure or one of these stands; before it, what belongs to the value
        list.retain(|w| {
            let begins = matches!(*w, "adapter" | "input" | "against" | CORRECTED);
            let ends = *w == "reflected";
            !(have(w) && !ends || begins && !group || ends && (group || have("at")))
        });
        self.words(2, &list);
    }

    fn qualifiers(&mut self, cx: Context, word: &str, last: SyntaxKind) {
        let common = [
            "read",
            "sheet",
            "rated",
            "displayed",
            "guess",
            "typical",
            "maximum",
            "on",
            "at",
            "since",
            "with",
            "by",
        ];
        // what a statement says once is not offered again; these may come in every group
        let again = ["added", "wet", "on", "passes", "rejects", "at"];
        let group = self
            .at
            .head
            .iter()
            .rposition(|t| t.kind == SyntaxKind::Comma)
            .unwrap_or(0);
        let have: BTreeSet<&str> = self
            .at
            .head
            .iter()
            .enumerate()
            .filter(|(i, t)| *i >= group || !again.contains(&t.text))
            .map(|(_, t)| t.text)
            .collect();
        let mut list: Vec<&str> = match (cx, word) {
            (Context::Cable, "loss") => {
                vec!["typical", "maximum", "from", "of", "accuracy"]
            }
            (_, "run" | "jumper" | "tail") => {
                vec![
                    "of",
                    "added",
                    "wet",
                    "ends",
                    "swr",
                    "return-loss",
                    "from",
                    "accuracy",
                ]
            }
            (Context::Readings, _) => return self.of_reading(word, last),
            (_, "piece") => vec!["of", "connector", "added", "ends", "at", "since"],
            (Context::Session, "readings") if self.at.head.len() > 1 => vec!["with"],
            (_, "readings") => vec!["on", "from"],
            (Context::Session, "read") => vec!["with", "by"],
            (Context::Session, "load" | "generator") => vec!["swr", "return-loss", "from"],
            (Context::Session, "phase") => vec!["over"],
            (_, "linearity" | "repeatability") => vec!["of reading", "of full scale", "k"],
            (_, "transmitter" | "power") => {
                let mut v = vec!["carrier", "pep", "mean"];
                v.extend(MODES);
                v.extend(["duty", "keyed", "foldback swr"]);
                v
            }
            (_, "receiver" | "sensitivity") => vec!["for", "noise figure"],
            (_, "antenna") => vec!["realized", "swr", "return-loss", "height", "rating", "from"],
            (Context::Antenna, "gain") => vec!["realized"],
            (_, "height") => vec!["agl", "amsl", "haat"],
            (_, "ground") => vec!["amsl"],
            (_, "load") => vec!["rating", "swr", "return-loss"],
            (_, "read") => vec!["forward", "reflected", "net", "swr", CORRECTED],
            (_, "expect") => vec!["loss", "swr", "erp", "eirp"],
            (Context::Connector, "limit") => return,
            (_, "limit") => vec!["erp", "eirp", "output", "carrier", "pep", "mean"],
            (Context::Instrument, "accuracy") => vec!["of reading", "of full scale", "k"],
            (_, "accuracy") => vec!["k", "to", "shared"],
            (_, "rating") => vec!["at", "ambient", "conductor"],
            (_, "position") => vec!["N", "S", "E", "W", "wgs84", "etrs89", "nad83", "nad27"],
            (Context::Antenna, "impedance") => vec!["with reactance", "from"],
            (_, "impedance") => vec!["with reactance"],
            (_, "coupler") => vec!["coupled", "swr", "return-loss", "rating", "reversed"],
            (_, "balun") => vec!["series", "shunt", "ratio", "rating", "from", "accuracy"],
            (_, "divider") => vec!["way", "excess", "split", "tee"],
            (_, "amplifier") => vec!["gain", "reversed"],
            (_, "preamplifier") => vec!["gain", "noise figure", "reversed"],
            (_, "connector" | "adapter" | "band" | "let" | "use" | "branch" | "branches") => {
                if word == "band" {
                    self.words(2, &["to"]);
                }
                return;
            }
            (Context::Device, "high" | "low" | "port") => {
                vec!["passes", "rejects", "from", "accuracy"]
            }
            (Context::Station | Context::Chain, w) if PartKind::from_word(w).is_some() => {
                vec![
                    "of",
                    "passes",
                    "swr",
                    "return-loss",
                    "rating",
                    "isolation",
                    "excess",
                    "ends",
                    "from",
                    "reversed",
                    "accuracy",
                ]
            }
            (Context::Top, _) => return,
            _ => Vec::new(),
        };
        // a part is from a file instead of all else; only what is has an accuracy of its own
        let from_file = self.at.head.iter().any(|t| t.text == "from");
        if matches!(cx, Context::Station | Context::Chain) && word != "readings" {
            let free = word == "antenna" || self.at.head.len() <= 2;
            list.retain(|w| match *w {
                "from" => free,
                "accuracy" => from_file,
                "reversed" => {
                    from_file || PartKind::from_word(word).is_some_and(PartKind::has_direction)
                }
                _ => true,
            });
        }
        let own = list.len();
        // figures of a session are read, as all of them are
        if cx != Context::Session {
            list.extend(common);
        }
        // `to` makes an interval of a value
        if last == SyntaxKind::Unit {
            list.push("to");
        }
        let keep: Vec<&str> = list
            .iter()
            .take(own)
            .copied()
            .filter(|w| !have.contains(w))
            .collect();
        let rest: Vec<&str> = list
            .iter()
            .skip(own)
            .copied()
            .filter(|w| !have.contains(w))
            .collect();
        self.words(2, &keep);
        if matches!(last, SyntaxKind::Comma)
            && matches!(cx, Context::Station | Context::Chain)
            && PartKind::from_word(word).is_some()
        {
            self.places(1);
        }
        if cx != Context::Top {
            self.words(3, &rest);
        }
    }
}

const MODES: &[&str] = &["fm", "data", "cw", "ssb", "ssb-processed", "am"];
