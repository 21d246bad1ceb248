//! In spots, hops, needs and laws of rules: antennas, chains with their stations, variables and their units.

use downlead_quantity::Dim;
use downlead_station::keywords::Context;
use downlead_station::model::{Chain, Direction, PartData, Station, Step, Variable};
use downlead_syntax::SyntaxKind;

use super::{CompletionKind, List};
use crate::resolve::seen;
use crate::view::{Doc, doc_text, tree};

impl<'a> List<'a> {
    /// What only these statements have; true where nothing else stands there.
    pub(super) fn radiated(&mut self) -> bool {
        match (self.at.cx, self.at.word()) {
            (Context::Link, "hop") => {
                self.hop();
                true
            }
            (Context::Rules, "limit" | "exempt" | "threshold") | (Context::Clause, _) => self.law(),
            _ => false,
        }
    }

    /// Stations that are visible here, in the order of the texts.
    fn stations(&self) -> Vec<&'a Station> {
        let Some(env) = self.env else {
            return Vec::new();
        };
        let files = seen(self.s, self.doc).into_iter();
        let trees = files.filter_map(|f| tree(self.s, Doc::File(f)));
        let items = trees.flat_map(|t| t.items());
        let named = items.filter_map(|p| {
            let s = p
                .item
                .statement()
                .filter(|s| s.keyword() == Some("station"))?;
            env.station(s.text(*s.atoms().get(1)?))
        });
        named.collect()
    }

    /// `hop CHAIN of STATION to CHAIN of STATION`.
    fn hop(&mut self) {
        let text = doc_text(self.s, self.doc);
        let from = self.at.head[0].span.end as usize;
        let before = text.get(from..self.at.replace.start as usize).unwrap_or("");
        let words: Vec<&str> = before.split_whitespace().collect();
        let (first, of) = match words.len() {
            n @ (0 | 4) => (n == 0, None),
            1 | 5 => return self.words(1, &["of"]),
            n @ (2 | 6) => (n == 2, Some(words[n - 2])),
            3 => return self.words(1, &["to"]),
            _ => return,
        };
        for st in self.stations() {
            for c in st.chains.iter().filter(|c| sends(st, c) == first) {
                let (label, detail) = match of {
                    None => (format!("{} of {}", c.name.text, st.name.text), &st.title),
                    Some(chain) if *chain == *c.name.text => (st.name.text.to_string(), &st.title),
                    Some(_) => continue,
                };
                let detail = detail.as_ref().map(ToString::to_string);
                self.add(1, CompletionKind::Tag, &label, detail);
            }
        }
    }

    /// Antennas that a distance can be from: those of the station, and those of its neighbours.
    pub(super) fn antennas(&mut self) {
        let Some(item) = self.item.and_then(|i| i.statement()) else {
            return;
        };
        let name = item.atoms().get(1).map(|a| item.text(*a));
        let (Some(env), Some(st)) = (self.env, name.and_then(|n| self.env?.station(n))) else {
            return;
        };
        for p in antennas_of(st) {
            self.add(1, CompletionKind::Tag, p, Some("antenna".to_owned()));
        }
        for other in env.on_site_of(st) {
            for p in antennas_of(other) {
                let label = format!("{p} of {}", other.name.text);
                self.add(2, CompletionKind::Tag, &label, Some("antenna".to_owned()));
            }
        }
    }

    /// Within the brackets of a law: its variables, and the units of what one is divided by.
    fn law(&mut self) -> bool {
        let head = &self.at.head;
        let open = |k: SyntaxKind| head.iter().filter(|t| t.kind == k).count();
        if open(SyntaxKind::LParen) <= open(SyntaxKind::RParen) {
            return false;
        }
        let variable = head.iter().rev().find_map(|t| Variable::from_word(t.text));
        match self.at.last().map(|t| t.kind) {
            Some(SyntaxKind::LParen | SyntaxKind::Slash) => {
                for v in Variable::ALL {
                    self.add(
                        1,
                        CompletionKind::Qualifier,
                        v.word(),
                        Some(v.noun().to_owned()),
                    );
                }
                true
            }
            Some(SyntaxKind::Number) => {
                let dims: Vec<Dim> = match variable {
                    Some(v) => vec![v.dim()],
                    None => vec![Dim::Frequency, Dim::Length],
                };
                for u in dims.into_iter().flat_map(downlead_quantity::units_of) {
                    self.add(1, CompletionKind::Unit, u.symbol(), Some(u.name.to_owned()));
                }
                true
            }
            _ => false,
        }
    }
}

/// Whether a chain sends: as it says, or by what it begins with.
fn sends(st: &Station, c: &Chain) -> bool {
    if let Some(d) = c.direction {
        return d == Direction::Transmit;
    }
    let first = c.steps.iter().find_map(|s| match s {
        Step::Part { part, .. } => Some(&**part),
        Step::Use { tag, .. } => {
            let tagged = |p: &&downlead_station::model::Part| {
                p.tag.as_ref().is_some_and(|t| t.text == tag.text)
            };
            st.parts.iter().find(tagged)
        }
        _ => None,
    });
    first.is_some_and(|p| p.kind.sends())
}

fn antennas_of(st: &Station) -> impl Iterator<Item = &str> {
    let antennas = st
        .parts
        .iter()
        .filter(|p| matches!(p.data, PartData::Antenna(_)));
    antennas.filter_map(|p| p.tag.as_ref().map(|t| &*t.text))
}
