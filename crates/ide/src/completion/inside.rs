//! What may stand after the first word of a statement: what the table of statements would read next.

use downlead_station::Lets;
use downlead_station::forms::{Known, Offer};
use downlead_station::keywords::Context;
use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::names::{NameKind, places_of};
use crate::view::item_at;

impl List<'_> {
    /// After the first word of a statement.
    pub(super) fn inside(&mut self) {
        let Some(last) = self.at.last() else { return };
        if self.radiated() {
            return;
        }
        let kinds = self.at.kinds();
        let in_station = self.at.cx == Context::Station;
        if in_station && self.at.word() == "isolation" && self.isolated() {
            return;
        }
        // a limit in decibels is one of a desense
        if self.at.word() == "limit" && last.text == "dB" {
            return self.words(1, &["desense"]);
        }
        match last.kind {
            SyntaxKind::Number => return self.after_number(),
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
        if self.half_a_phrase(last.text) {
            return;
        }
        let offers = self.offers(self.at.head.len());
        if offers.iter().any(|o| matches!(o, Offer::NewName(_)))
            && offers.iter().all(|o| matches!(o, Offer::NewName(_)))
        {
            return;
        }
        let tag = offers.contains(&Offer::NewName(NameKind::Tag));
        // a part of a station has a tag, which only the author knows
        if tag && self.at.cx == Context::Station {
            return;
        }
        for o in &offers {
            self.offer(*o, last.kind);
        }
        if last.kind == SyntaxKind::Unit {
            // a share that is an uncertainty says which
            if matches!(self.at.word(), "accuracy" | "linearity" | "repeatability") {
                self.words(2, &["k"]);
            }
        } else if !tag && offers.iter().any(|o| matches!(o, Offer::Value(_))) {
            self.lets(6, &kinds);
        }
    }

    /// A number stands there: its unit, and what may follow a number without one.
    fn after_number(&mut self) {
        self.units();
        let before = self.at.head.len() - 1;
        if self.at.word() == "divider" {
            self.words(1, &["way"]);
        }
        let count = |o: &Offer| matches!(o, Offer::Counted(_));
        if self.offers(before).iter().any(count) {
            self.words(1, &["of"]);
        }
        if self.at.last_word() == "for" {
            self.words(1, &["sinad"]);
        }
    }

    /// What follows words that are read together with the next one. True if they stand there.
    fn half_a_phrase(&mut self, last: &str) -> bool {
        let word = self.at.word();
        match last {
            "k" => self.words(1, &["1", "2"]),
            "for" => self.words(1, &["12 dB sinad", "10 dB sinad"]),
            "full" => self.words(1, &["scale"]),
            "in" if word == "branches" => self.words(1, &["phase"]),
            "of" if matches!(self.at.group(), "connector" | "adapter") => {
                self.names(1, NameKind::Connector, CompletionKind::Connector);
            }
            _ => {
                let sinad =
                    self.at.head.iter().any(|t| t.text == "for") && self.at.last_word() == "for";
                if sinad {
                    self.words(1, &["sinad"]);
                }
                return sinad;
            }
        }
        true
    }

    /// What the table would read after the first `n` tokens.
    fn offers(&self, n: usize) -> Vec<Offer> {
        let none = Lets::default();
        let places = item_at(self.s, self.doc, self.at.replace.start)
            .map(|p| places_of(self.base.unwrap_or(&p.item)))
            .unwrap_or_default();
        let known = Known {
            lets: self.env.map_or(&none, |e| &e.lets),
            places: &places,
        };
        self.at.offers(n, Some(known))
    }

    fn offer(&mut self, o: Offer, last: SyntaxKind) {
        match o {
            Offer::Word {
                text,
                second,
                doc,
                rank,
                also,
            } => {
                let label = match second {
                    Some(w) => format!("{text} {w}"),
                    None => text.to_owned(),
                };
                let detail = (!doc.is_empty()).then(|| doc.to_owned());
                self.add(rank, CompletionKind::Qualifier, &label, detail)
                    .also = also;
            }
            Offer::Name(kind) | Offer::Counted(kind) => self.name(kind, last),
            Offer::Text | Offer::File(_) => {
                if self.c.snippets {
                    let item = self.add(1, CompletionKind::Snippet, "\"…\"", None);
                    item.insert = "\"${1}\"".to_owned();
                    item.snippet = true;
                }
            }
            Offer::NewName(_) | Offer::Value(_) | Offer::Cite | Offer::Date => {}
        }
    }

    fn name(&mut self, kind: NameKind, last: SyntaxKind) {
        match kind {
            NameKind::Band => self.names(1, NameKind::Band, CompletionKind::Band),
            NameKind::Cable => self.names(1, NameKind::Cable, CompletionKind::Cable),
            NameKind::Connector => self.names(1, NameKind::Connector, CompletionKind::Connector),
            NameKind::Device => self.names(1, NameKind::Device, CompletionKind::Device),
            NameKind::Instrument => self.names(1, NameKind::Instrument, CompletionKind::Instrument),
            NameKind::Rules => self.names(1, NameKind::Rules, CompletionKind::File),
            NameKind::Station => self.names(1, NameKind::Station, CompletionKind::File),
            NameKind::Tag if matches!(self.at.cx, Context::Session | Context::Readings) => {
                self.tags()
            }
            NameKind::Tag if self.at.cx == Context::Station && self.at.word() == "spot" => {
                self.antennas();
            }
            NameKind::Tag if self.at.cx == Context::Variant => {
                if let Some(b) = self.base {
                    self.tags_of(b);
                }
                if let Some(v) = self.item.filter(|_| self.at.word() == "put") {
                    self.tags_of_variant(v);
                }
            }
            NameKind::Chain if self.at.cx == Context::Variant => {
                if let Some(b) = self.base {
                    self.chains_of(b);
                }
            }
            NameKind::Finding => self.codes(1),
            NameKind::Person => self.heard(NameKind::Person, CompletionKind::Person),
            NameKind::Class => self.heard(NameKind::Class, CompletionKind::Qualifier),
            NameKind::Question => self.heard(NameKind::Question, CompletionKind::Qualifier),
            NameKind::Shared => self.heard(NameKind::Shared, CompletionKind::Qualifier),
            NameKind::Family => self.heard(NameKind::Family, CompletionKind::Family),
            // a place stands in a group of its own
            NameKind::Place if last == SyntaxKind::Comma => self.places(1),
            _ => {}
        }
    }
}
