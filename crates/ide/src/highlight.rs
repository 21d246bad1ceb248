//! Highlights: the places of a name; on a chain's head, the signal path. Linked editing.

use downlead_base::Span;
use downlead_eval::Snapshot;

use crate::names::{Class, NameKind};
use crate::references::{Occurrence, occurrences};
use crate::resolve::{local, name_at, piece, pieces_of, statements};
use crate::view::{Doc, item_at};

/// A highlighted range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Highlight {
    /// Where.
    pub span: Span,
    /// Why.
    pub kind: HighlightKind,
}

/// Why a range is highlighted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum HighlightKind {
    /// A line of the signal path.
    Text,
    /// The name is used.
    Read,
    /// The name is given.
    Write,
}

/// Highlights for an offset. On a chain's name or its `chain`: the lines the power takes, with the
/// definitions of their parts.
#[must_use]
pub fn highlights(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Highlight> {
    if let Some((placed, n)) = name_at(s, doc, offset) {
        if n.kind == NameKind::Chain {
            return path(s, doc, offset, n.span);
        }
        return occurrences(s, doc, placed, &n)
            .into_iter()
            .filter(|o| o.place.doc == doc)
            .map(|o: Occurrence| Highlight {
                span: o.place.span,
                kind: if o.def {
                    HighlightKind::Write
                } else {
                    HighlightKind::Read
                },
            })
            .collect();
    }
    let Some((placed, p)) = piece(s, doc, offset) else {
        return Vec::new();
    };
    if matches!(p.class, Class::Keyword(_)) && placed.item.slice(p.span) == "chain" {
        return path(s, doc, offset, p.span.shift(placed.start));
    }
    Vec::new()
}

fn path(s: &Snapshot, doc: Doc, offset: u32, own: Span) -> Vec<Highlight> {
    let Some(placed) = item_at(s, doc, offset) else {
        return Vec::new();
    };
    let item = &placed.item;
    let local_offset = offset - placed.start;
    let mut chain = None;
    statements(item, &mut |x| {
        if x.keyword() == Some("chain") && x.head_span().touches(local_offset) {
            chain = Some(x.span());
        }
    });
    let Some(chain) = chain else {
        return Vec::new();
    };
    let mut out = vec![Highlight {
        span: own,
        kind: HighlightKind::Write,
    }];
    for p in pieces_of(s, doc, item) {
        if !(chain.start <= p.span.start && p.span.end <= chain.end) {
            continue;
        }
        let inline = matches!(p.class, Class::Keyword(_))
            && downlead_station::model::PartKind::from_word(item.slice(p.span)).is_some();
        match p.class {
            Class::Name(NameKind::Tag, false) => {
                out.push(Highlight {
                    span: p.span.shift(placed.start),
                    kind: HighlightKind::Text,
                });
                if let Some(d) = local(s, doc, placed, NameKind::Tag, item.slice(p.span)) {
                    out.push(Highlight {
                        span: d.focus().span,
                        kind: HighlightKind::Text,
                    });
                }
            }
            _ if inline => out.push(Highlight {
                span: p.span.shift(placed.start),
                kind: HighlightKind::Text,
            }),
            _ => {}
        }
    }
    out.sort();
    out.dedup();
    out
}

/// Ranges that change together while typing: a tag and its uses in its station, a place and its
/// uses. Legs (`high`, `low`) are words of the language and stay; names that other files may use
/// are left to rename, which sees those files and the conflicts.
#[must_use]
pub fn linked_ranges(s: &Snapshot, doc: Doc, offset: u32) -> Vec<Span> {
    let Some((placed, n)) = name_at(s, doc, offset) else {
        return Vec::new();
    };
    if !matches!(n.kind, NameKind::Tag | NameKind::Place) || matches!(doc, Doc::Library(_)) {
        return Vec::new();
    }
    let all = occurrences(s, doc, placed, &n);
    // a name that is used and nowhere given has nothing to stay in step with
    if !all.iter().any(|o| o.def) || all.len() < 2 {
        return Vec::new();
    }
    all.into_iter().map(|o| o.place.span).collect()
}
