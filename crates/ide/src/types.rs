//! Type hierarchy: parts and what they are made of, the cable, connector or device of a definition.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::model::PartKind;
use downlead_syntax::{Placed, Stmt};

use crate::names::{Class, NameKind};
use crate::references::references;
use crate::resolve::{Def, class_of, name_at, owner, pieces_of, resolve};
use crate::symbols::SymbolKind;
use crate::view::{Doc, Place, item_at, path_at};

/// A part or a definition in the hierarchy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TypeItem {
    /// Tag or name; of a part without one, its kind.
    pub name: String,
    /// The head of its statement.
    pub detail: String,
    /// Part, cable, connector or device.
    pub kind: SymbolKind,
    /// Its statement.
    pub place: Place,
    /// Its name in it; names it in later questions.
    pub focus: Place,
}

/// The part or definition at an offset.
#[must_use]
pub fn prepare_types(s: &Snapshot, doc: Doc, offset: u32) -> Option<TypeItem> {
    if let Some((placed, n)) = name_at(s, doc, offset) {
        let d = resolve(s, doc, placed, &n)?;
        return match n.kind {
            NameKind::Tag => Some(item(&d, SymbolKind::Part)),
            k => Some(item(&d, defines(k)?)),
        };
    }
    // a part without a tag: the cursor on its line
    let placed = item_at(s, doc, offset)?;
    let path = path_at(&placed.item, offset - placed.start);
    let stmt = path.last()?;
    let part = part(s, doc, placed, *stmt)?;
    Some(item(&part, SymbolKind::Part))
}

/// What a part is made of.
#[must_use]
pub fn supertypes(s: &Snapshot, of: Place) -> Vec<TypeItem> {
    let Some(placed) = item_at(s, of.doc, of.span.start) else {
        return Vec::new();
    };
    let at = of.span.start - placed.start;
    let Some(stmt) = owner(&placed.item, Span::new(at, at)) else {
        return Vec::new();
    };
    let class = part(s, of.doc, placed, stmt).and_then(|d| class_of(s, &d));
    let kind = |d: &Def<'_>| match d.stmt.keyword() {
        Some("cable") => SymbolKind::Cable,
        Some("connector") => SymbolKind::Connector,
        _ => SymbolKind::Device,
    };
    class.map(|d| item(&d, kind(&d))).into_iter().collect()
}

/// The parts that are made of a definition, in the files of the snapshot.
#[must_use]
pub fn subtypes(s: &Snapshot, of: Place) -> Vec<TypeItem> {
    let named = name_at(s, of.doc, of.span.start);
    if named.is_none_or(|(_, n)| defines(n.kind).is_none()) {
        return Vec::new();
    }
    let mut out: Vec<TypeItem> = Vec::new();
    for p in references(s, of.doc, of.span.start, false) {
        let found = item_at(s, p.doc, p.span.start).and_then(|placed| {
            let at = p.span.start - placed.start;
            let stmt = owner(&placed.item, Span::new(at, at))?;
            let d = part(s, p.doc, placed, stmt)?;
            // a name may stand in a part otherwise than behind `of`
            class_of(s, &d).filter(|c| c.focus() == of)?;
            Some(item(&d, SymbolKind::Part))
        });
        if let Some(x) = found
            && !out.contains(&x)
        {
            out.push(x);
        }
    }
    out
}

fn defines(k: NameKind) -> Option<SymbolKind> {
    match k {
        NameKind::Cable => Some(SymbolKind::Cable),
        NameKind::Connector => Some(SymbolKind::Connector),
        NameKind::Device => Some(SymbolKind::Device),
        _ => None,
    }
}

/// A statement as a part, named by its tag or its keyword.
fn part<'s>(s: &'s Snapshot, doc: Doc, placed: &'s Placed, stmt: Stmt<'s>) -> Option<Def<'s>> {
    let word = stmt.keyword()?;
    if PartKind::from_word(word).is_none() && word != "piece" {
        return None;
    }
    let head = stmt.head_span();
    let tag = pieces_of(s, doc, &placed.item).into_iter().find(|p| {
        let inside = head.start <= p.span.start && p.span.end <= head.end;
        inside && p.class == Class::Name(NameKind::Tag, true)
    });
    let name = tag
        .map(|p| p.span)
        .or(stmt.atoms().first().map(|a| a.span))?;
    Some(Def {
        doc,
        item: &placed.item,
        start: placed.start,
        stmt,
        name,
    })
}

fn item(d: &Def<'_>, kind: SymbolKind) -> TypeItem {
    TypeItem {
        name: d.text().to_owned(),
        detail: d.stmt.slice(d.stmt.head_span()).trim().to_owned(),
        kind,
        place: d.full(),
        focus: d.focus(),
    }
}
