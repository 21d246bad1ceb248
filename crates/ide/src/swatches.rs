//! Swatches of status: a colour at each value that a hint judges.
//!
//! What is judged, and how, is the hints' matter; here it gets a place in the text.

use std::collections::BTreeMap;

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_syntax::{AtomKind, Item};

use crate::config::{Config, HintDetails, HintKinds};
use crate::hints::HintsByItem;
use crate::names::{Class, NameKind, Piece};
use crate::resolve::pieces_of;
use crate::status::Status;
use crate::view::{Doc, path_at};

/// A value that was judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Swatch {
    /// The value: the power of a limit or of a reading, the file of readings, the tag of a piece.
    pub span: Span,
    /// What was found; of several bands, the worst.
    pub status: Status,
}

/// The kinds of hints that judge.
const JUDGING: HintKinds = HintKinds {
    enabled: true,
    loss: false,
    power: false,
    radiated: false,
    limits: true,
    readings: true,
    cables: false,
};

/// The swatches of a document in the order of the text, if they are wanted. Which hints are shown
/// makes no difference.
#[must_use]
pub fn swatches(s: &Snapshot, doc: Doc, c: &Config) -> Vec<Swatch> {
    if !c.swatches {
        return Vec::new();
    }
    let c = Config {
        hints: JUDGING,
        hint_details: HintDetails::Never,
        ..c.clone()
    };
    let hints = HintsByItem::new(s, doc, &c);
    let mut worst: BTreeMap<Span, Status> = BTreeMap::new();
    for (start, item) in hints.items() {
        let judged = hints.judged(item);
        if judged.is_empty() {
            continue;
        }
        let pieces = pieces_of(s, doc, &item.0);
        for (loc, status) in judged {
            if let Some(span) = subject(&item.0, &pieces, loc.span) {
                let mine = worst.entry(span.shift(start)).or_insert(status);
                *mine = status.max(*mine);
            }
        }
    }
    let swatch = |(span, status)| Swatch { span, status };
    worst.into_iter().map(swatch).collect()
}

/// What a statement is about, relative to the item: its first value, named value or file; else
/// what it names first, as a piece of cable.
fn subject(item: &Item, pieces: &[Piece], stmt: Span) -> Option<Span> {
    let path = path_at(item, stmt.start);
    let s = path.into_iter().rfind(|s| s.span().start == stmt.start)?;
    let atoms = s.atoms().get(1..)?;
    let name = |span: Span| {
        pieces.iter().find_map(|p| match p.class {
            Class::Name(kind, _) if p.span == span => Some(kind),
            _ => None,
        })
    };
    // the length of a piece is not what is judged
    let value = atoms.iter().find_map(|a| match a.kind {
        _ if s.keyword() == Some("piece") => None,
        // a tag may begin with a digit, and is then a value to the parser
        AtomKind::Value(_) if name(a.span).is_none_or(|k| k == NameKind::Let) => {
            Some(s.value(*a)?.expr().span())
        }
        AtomKind::Word if name(a.span) == Some(NameKind::Let) => Some(a.span),
        AtomKind::Str => Some(a.span),
        _ => None,
    });
    value.or_else(|| atoms.first().map(|a| a.span))
}
