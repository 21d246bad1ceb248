//! What may stand in a variant: the parts and chains of its station, and the figures of a part.

use downlead_base::Span;
use downlead_station::Env;
use downlead_station::forms::{self, Begins, Form};
use downlead_station::keywords::Context;
use downlead_station::model::PartKind;
use downlead_syntax::{Item, Stmt, SyntaxKind};

use super::{CompletionKind, List};
use crate::situation::{Situation, Tok};

/// The station that the variant of an item changes.
pub(crate) fn base<'e>(item: &Item, env: Option<&'e Env>) -> Option<&'e Item> {
    let s = item
        .statement()
        .filter(|s| s.keyword() == Some("variant"))?;
    let mut atoms = s.atoms().iter();
    atoms.find(|a| s.text(**a) == "of")?;
    let name = s.text(*atoms.next()?);
    env?.base(name).map(|b| &**b.0)
}

/// The part of a station with a tag.
fn part<'i>(station: &'i Item, tag: &str) -> Option<(Stmt<'i>, PartKind)> {
    parts(station).find(|(s, _)| s.atoms().get(1).is_some_and(|a| s.text(*a) == tag))
}

fn parts(station: &Item) -> impl Iterator<Item = (Stmt<'_>, PartKind)> {
    let block = station.statement().and_then(Stmt::block);
    let lines = block.into_iter().flat_map(downlead_syntax::Block::iter);
    lines.filter_map(|s| Some((s, PartKind::from_word(s.keyword()?)?)))
}

/// The situation as it would be in the part whose figures are written, and whether it is one of
/// these.
pub(super) fn in_part<'a>(at: &mut Situation<'a>, station: &Item) -> Option<&'static Form> {
    let in_row =
        at.cx == Context::Table && at.frames.last().is_some_and(|f| f.cx == Context::Variant);
    if in_row {
        let tag = at.frames.last()?.word.clone();
        let form = forms::of_part(part(station, tag.split('.').next()?)?.1);
        at.block = form.block;
        at.cx = form.block.context()?;
        return Some(form);
    }
    if at.cx != Context::Variant {
        return None;
    }
    let first = *at.head.first()?;
    let kind = part(station, first.text.split('.').next()?)?.1;
    let form = forms::of_part(kind);
    let second = at.head.get(1).map(|t| t.text);
    let of_head = |w: &str| form.all_slots().any(|s| s.words().any(|x| x == w));
    let port = first.text.split_once('.').map(|x| x.1);
    if let Some(p) = port {
        // a leg is written as its line
        at.head[0].text = p;
        at.block = form.block;
        at.cx = form.block.context()?;
    } else if second.is_some_and(|w| form.block.form(Some(w)).is_some() && !of_head(w)) {
        at.head.remove(0);
        at.block = form.block;
        at.cx = form.block.context()?;
    } else {
        let moved = u32::try_from(kind.word().len()).unwrap_or(0) + 1;
        let lead = Tok {
            kind: SyntaxKind::Word,
            text: kind.word(),
            span: Span::new(first.span.start, first.span.start + moved - 1),
        };
        at.head
            .iter_mut()
            .for_each(|t| t.span = t.span.shift(moved));
        at.head.insert(0, lead);
        at.block = forms::top().form(Some("station"))?.block;
        at.cx = Context::Station;
        return Some(form);
    }
    None
}

impl List<'_> {
    /// Tags of the station, with the ports of those that have several.
    pub(super) fn tags_of(&mut self, station: &Item) {
        for (s, kind) in parts(station) {
            let Some(tag) = s.atoms().get(1).map(|a| s.text(*a)) else {
                continue;
            };
            let detail = s.slice(s.head_span()).trim().to_owned();
            self.add(1, CompletionKind::Tag, tag, Some(detail.clone()));
            if !kind.has_legs() {
                continue;
            }
            for l in s.block().into_iter().flat_map(downlead_syntax::Block::iter) {
                let port = match l.keyword() {
                    Some("port") => l.atoms().get(1).map(|a| l.text(*a)),
                    w => w.filter(|w| matches!(*w, "high" | "low")),
                };
                if let Some(p) = port {
                    let label = format!("{tag}.{p}");
                    self.add(2, CompletionKind::Port, &label, Some(detail.clone()));
                }
            }
        }
    }

    /// Tags of parts that the variant itself defines.
    pub(super) fn tags_of_variant(&mut self, variant: &Item) {
        for (s, _) in parts(variant) {
            if let Some(a) = s.atoms().get(1) {
                let detail = s.slice(s.head_span()).trim().to_owned();
                self.add(1, CompletionKind::Tag, s.text(*a), Some(detail));
            }
        }
    }

    /// Chains of the station.
    pub(super) fn chains_of(&mut self, station: &Item) {
        let block = station.statement().and_then(Stmt::block);
        for s in block.into_iter().flat_map(downlead_syntax::Block::iter) {
            if let (Some("chain"), Some(a)) = (s.keyword(), s.atoms().get(1)) {
                self.add(1, CompletionKind::Tag, s.text(*a), Some("chain".to_owned()));
            }
        }
    }

    /// Words with which a line of the part's block begins.
    pub(super) fn lines_of(&mut self, form: &'static Form) {
        for f in form.block.lines().iter().filter(|f| !f.word.is_empty()) {
            let main = f
                .all_slots()
                .next()
                .is_some_and(|s| matches!(s.begins, Begins::Value(_)));
            let rank = if main { 1 } else { 2 };
            let label = f.word;
            self.add(rank, CompletionKind::Keyword, label, Some(f.doc.to_owned()));
        }
    }
}
