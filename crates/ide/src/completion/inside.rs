//! What may stand behind the first word of a statement.

use downlead_station::evidence::CORRECTED;
use downlead_station::keywords::Context;
use downlead_station::model::PartKind;
use downlead_station::words::{ALIKE, DATUMS, MODES, excludes, of_figures, own};
use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::names::{NameKind, places_of};
use crate::situation::Tok;
use crate::view::item_at;

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
        if self.new_name_follows() {
            return;
        }
        match last.kind {
            // the rest of a value follows
            SyntaxKind::PlusMinus
            | SyntaxKind::Plus
            | SyntaxKind::Minus
            | SyntaxKind::Star
            | SyntaxKind::Slash
            | SyntaxKind::LParen
            | SyntaxKind::Equals => return self.lets(1, &kinds),
            _ => {}
        }
        match last.text {
            "of" if word == "accuracy" => return self.words(1, &["reading", "full scale"]),
            "of" if matches!(word, "linearity" | "repeatability") => {
                return self.words(1, &["reading"]);
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
            "sheet" | "source" | "use" | "from" | CORRECTED => {
                if self.c.snippets {
                    let item = self.add(1, CompletionKind::Snippet, "\"…\"", None);
                    item.insert = "\"${1}\"".to_owned();
                    item.snippet = true;
                }
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

    /// Whether a name is due that only the author knows: nothing can be offered for it.
    fn new_name_follows(&self) -> bool {
        if self.at.head.len() != 1 {
            return false;
        }
        let word = self.at.word();
        match self.at.cx {
            Context::Top => word != "use",
            Context::Session => word == "piece",
            Context::Station => {
                matches!(word, "chain" | "place")
                    || PartKind::from_word(word)
                        .is_some_and(|k| !matches!(k, PartKind::Connector | PartKind::Adapter))
            }
            Context::Device => word == "port",
            _ => false,
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

    /// Words that begin what is said about the statement, its own first.
    fn qualifiers(&mut self, cx: Context, word: &str, last: SyntaxKind) {
        match (cx, word) {
            (Context::Readings, _) => return self.of_reading(word, last),
            (Context::Session, "readings") if self.at.head.len() > 1 => {
                let from = self.at.head.iter().any(|t| t.text == "from");
                return self.words(2, if from { &["with"] } else { &[] });
            }
            (_, "readings") => return self.words(2, &["on", "from"]),
            (_, "band") => return self.words(2, &["to"]),
            (Context::Connector, "limit") | (Context::Top, _) => return,
            (_, "connector" | "adapter" | "let" | "use" | "branch" | "branches" | "mode") => return,
            _ => {}
        }
        let own: Vec<&str> = match (cx, word) {
            (Context::Session, "read") => Vec::new(),
            (Context::Session, "load" | "generator") => vec!["swr", "return-loss", "from"],
            (Context::Session, "phase") => vec!["over"],
            (Context::Instrument, "linearity" | "repeatability") => vec!["of reading", "k"],
            (Context::Instrument, "accuracy") => vec!["of reading", "of full scale", "k"],
            (_, "height") => vec!["agl"],
            (_, "ground") => vec!["amsl"],
            (_, "position") if self.at.head.iter().any(|t| t.kind == SyntaxKind::Comma) => {
                DATUMS.to_vec()
            }
            (_, "position") => vec!["N", "S", "E", "W"],
            (Context::Antenna, "impedance") => vec!["with reactance", "from"],
            (Context::Session | Context::Construction | Context::Place, _) => {
                own(cx, word).to_vec()
            }
            _ => {
                // what a kind of device has before what all have
                let kind: &[&str] = match word {
                    "coupler" => &["coupled"],
                    "divider" => &["way"],
                    "amplifier" | "preamplifier" => &["gain"],
                    _ => &[],
                };
                kind.iter().chain(own(cx, word)).copied().collect()
            }
        };
        let common: Vec<&str> = match (cx, word) {
            // statements of which nothing more is said
            (Context::Band | Context::Instrument | Context::Construction, _)
            | (_, "position" | "kind" | "source" | "conductor") => Vec::new(),
            (Context::Connector, w) if !matches!(w, "loss" | "rating") => Vec::new(),
            (Context::Session, "piece") if !self.length_follows() => vec!["at", "since"],
            // figures of a session are read, as all of them are
            (Context::Session, w) if w != "read" => Vec::new(),
            _ if self.length_follows() || self.tag_may_follow() => Vec::new(),
            _ => of_figures(cx, word).to_vec(),
        };
        let own: Vec<&str> = own.into_iter().filter(|w| self.may_follow(w)).collect();
        let mut rest: Vec<&str> = common.into_iter().filter(|w| self.may_follow(w)).collect();
        // `to` makes an interval of a value
        if last == SyntaxKind::Unit {
            rest.push("to");
        }
        let own: Vec<&str> = own.into_iter().map(phrase).collect();
        self.words(2, &own);
        if last == SyntaxKind::Comma && self.takes_place() {
            self.places(1);
        }
        self.words(3, &rest);
    }

    /// Whether the length of a line is still to come.
    fn length_follows(&self) -> bool {
        let head = &self.at.head;
        let named = |t: &Tok<'_>| self.env.is_some_and(|e| e.lets.contains_key(t.text));
        matches!(self.at.word(), "run" | "jumper" | "tail" | "piece")
            && head.len() <= 2
            && head
                .last()
                .is_some_and(|t| t.kind == SyntaxKind::Word && !named(t))
    }

    /// Whether the next word would be a part's tag.
    fn tag_may_follow(&self) -> bool {
        self.at.head.len() == 1
            && self.at.cx == Context::Chain
            && PartKind::from_word(self.at.word())
                .is_some_and(|k| !matches!(k, PartKind::Connector | PartKind::Adapter))
    }

    /// Whether the statement is a part that stands in a place and does not say in which.
    fn takes_place(&self) -> bool {
        let cx = matches!(self.at.cx, Context::Station | Context::Chain);
        let part = PartKind::from_word(self.at.word()).is_some_and(|k| {
            !matches!(
                k,
                PartKind::Transmitter
                    | PartKind::Receiver
                    | PartKind::Antenna
                    | PartKind::Load
                    | PartKind::Connector
                    | PartKind::Adapter
            )
        });
        let places = item_at(self.s, self.doc, self.at.replace.start)
            .map(|p| places_of(&p.item))
            .unwrap_or_default();
        let has = |t: &Tok<'_>| places.contains(&t.text);
        cx && part && !self.at.head.iter().skip(2).any(has)
    }

    /// Whether a word may come after what the statement says already.
    fn may_follow(&self, word: &str) -> bool {
        let head = &self.at.head;
        let have = |w: &str| head.iter().any(|t| t.text == w);
        let first = head.len() == 1;
        if ALIKE.contains(&word)
            || head
                .iter()
                .skip(1)
                .any(|t| excludes(t.text, word).is_some())
        {
            return false;
        }
        let group = head.iter().rposition(|t| t.kind == SyntaxKind::Comma);
        let part = matches!(self.at.cx, Context::Station | Context::Chain);
        let line = matches!(self.at.word(), "run" | "jumper" | "tail" | "piece");
        match word {
            // a part is from a file instead of all else; only what is has an accuracy of its own
            "from" if part && matches!(self.at.word(), "antenna" | "load") => {}
            "from" if head.len() > if self.at.word() == "loss" { 1 } else { 2 } => return false,
            "reversed"
                if PartKind::from_word(self.at.word()).is_some_and(PartKind::has_direction) => {}
            "accuracy" | "reversed" if !have("from") => return false,
            // the first word is a tag, and a line says how long it is before all else
            "of" | "from" if self.tag_may_follow() => return word == "from" || !line,
            w if w != "from" && (self.length_follows() || self.tag_may_follow()) => return false,
            "of" if self.at.word() == "loss" => return have("from") && !have("of"),
            // the cable of a length, the class of a device
            "of" if line => {
                let unit = |t: &Tok<'_>| matches!(t.text, "dB" | "%");
                return group.is_none() && !have("of") && !have("from") && !head.iter().any(unit);
            }
            "of" => return head.len() <= 2,
            "coupled" | "way" | "gain" => return group.is_none() && !have(word),
            _ => {}
        }
        // what a statement says once is not offered again; these may come in every group
        let in_group = |w: &str| head.iter().skip(group.unwrap_or(1)).any(|t| t.text == w);
        match (self.at.word(), word) {
            // before the value says what it is
            ("expect", "loss" | "swr" | "erp" | "eirp") | ("read", "swr") => first,
            ("read", "forward" | "reflected" | "net") => !first && group.is_none(),
            (_, "added" | "wet" | "on" | "passes") => !in_group(word),
            _ => !have(word),
        }
    }
}

/// A word with those that always follow it.
fn phrase(word: &str) -> &str {
    match word {
        "foldback" => "foldback swr",
        "noise" => "noise figure",
        w => w,
    }
}
