//! From a name to what it stands for.

use downlead_base::{Loc, Span};
use downlead_eval::Snapshot;
use downlead_station::{keyword_of, library};
use downlead_syntax::{Item, Placed, Stmt};

use crate::names::{Class, NameKind, Piece, piece_at, pieces};
use crate::view::{Doc, Place, View, env_of, item_at, scope_of, tree, visible};

/// A name at a place of a document.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Named {
    pub(crate) kind: NameKind,
    pub(crate) text: String,
    /// Relative to the item.
    pub(crate) local: Span,
    /// In the document.
    pub(crate) span: Span,
    /// Given here rather than used.
    pub(crate) def: bool,
}

/// What a name stands for.
#[derive(Clone, Copy)]
pub(crate) struct Def<'s> {
    pub(crate) doc: Doc,
    pub(crate) item: &'s Item,
    /// Offset of the item in its document.
    pub(crate) start: u32,
    pub(crate) stmt: Stmt<'s>,
    /// The name, relative to the item.
    pub(crate) name: Span,
}

impl<'s> Def<'s> {
    pub(crate) fn focus(&self) -> Place {
        Place {
            doc: self.doc,
            span: self.name.shift(self.start),
        }
    }

    pub(crate) fn full(&self) -> Place {
        Place {
            doc: self.doc,
            span: self.stmt.span().shift(self.start),
        }
    }

    pub(crate) fn text(&self) -> &'s str {
        self.item.slice(self.name)
    }

    /// Its title, if it has one.
    pub(crate) fn title(&self) -> Option<&'s str> {
        self.stmt.atoms().iter().find_map(|a| self.stmt.string(*a))
    }
}

/// The pieces of the item of a document.
pub(crate) fn pieces_of(s: &Snapshot, doc: Doc, item: &Item) -> Vec<Piece> {
    match env_of(s, doc) {
        Some(env) => pieces(item, &env.lets),
        None => pieces(item, &downlead_station::Lets::default()),
    }
}

/// The piece at an offset, with its item.
pub(crate) fn piece(s: &Snapshot, doc: Doc, offset: u32) -> Option<(&Placed, Piece)> {
    let placed = item_at(s, doc, offset)?;
    let list = pieces_of(s, doc, &placed.item);
    if let Some(p) = piece_at(&list, offset - placed.start) {
        return Some((placed, p));
    }
    // the end of the text of the item before
    None
}

/// The name at an offset.
pub(crate) fn name_at(s: &Snapshot, doc: Doc, offset: u32) -> Option<(&Placed, Named)> {
    let (placed, p) = piece(s, doc, offset)?;
    let (kind, def) = match p.class {
        Class::Name(k, d) => (k, d),
        Class::Leg => (NameKind::Port, true),
        _ => return None,
    };
    Some((
        placed,
        Named {
            kind,
            text: placed.item.slice(p.span).to_owned(),
            local: p.span,
            span: p.span.shift(placed.start),
            def,
        },
    ))
}

/// Files whose definitions a document sees.
pub(crate) fn seen(s: &Snapshot, doc: Doc) -> Vec<usize> {
    match doc {
        Doc::Library(_) => Vec::new(),
        Doc::File(f) => match scope_of(s, doc) {
            Some(scope) => visible(s, scope.file()),
            None => visible(s, f),
        },
    }
}

fn keyword_for(kind: NameKind) -> &'static str {
    match kind {
        NameKind::Band => "band",
        NameKind::Let => "let",
        NameKind::Cable => "cable",
        NameKind::Connector => "connector",
        NameKind::Device => "device",
        NameKind::Instrument => "instrument",
        NameKind::Station => "station",
        NameKind::Session => "session",
        NameKind::Chain => "chain",
        NameKind::Rules => "licence",
        _ => "",
    }
}

/// A top-level definition among the items of a document.
pub(crate) fn top<'s>(s: &'s Snapshot, doc: Doc, kind: NameKind, name: &str) -> Option<Def<'s>> {
    let word = keyword_for(kind);
    // a licence and rules are one kind of thing
    let begins = |w: Option<&str>| w == Some(word) || kind == NameKind::Rules && w == Some("rules");
    tree(s, doc)?.items().iter().find_map(|p| {
        if !begins(keyword_of(&p.item)) {
            return None;
        }
        let stmt = p.item.statement()?;
        let a = stmt.atoms().get(1)?;
        (stmt.text(*a) == name).then_some(Def {
            doc,
            item: &p.item,
            start: p.start,
            stmt,
            name: a.span,
        })
    })
}

/// What a name of a kind that is visible across files stands for in a document.
pub(crate) fn global<'s>(s: &'s Snapshot, doc: Doc, kind: NameKind, name: &str) -> Option<Def<'s>> {
    for f in seen(s, doc) {
        if let Some(d) = top(s, Doc::File(f), kind, name) {
            return Some(d);
        }
    }
    if !matches!(
        kind,
        NameKind::Cable | NameKind::Connector | NameKind::Device | NameKind::Rules
    ) {
        return None;
    }
    (0..library().files.len()).find_map(|i| top(s, Doc::Library(i), kind, name))
}

/// All statements of an item, depth first.
pub(crate) fn statements<'a>(item: &'a Item, f: &mut dyn FnMut(Stmt<'a>)) {
    fn go<'a>(s: Stmt<'a>, f: &mut dyn FnMut(Stmt<'a>)) {
        f(s);
        for x in s.block().into_iter().flat_map(|b| b.iter()) {
            go(x, f);
        }
    }
    for s in item.statements() {
        go(s, f);
    }
}

/// The innermost statement whose head holds a range.
pub(crate) fn owner(item: &Item, span: Span) -> Option<Stmt<'_>> {
    let mut found = None;
    statements(item, &mut |s| {
        let h = s.head_span();
        if h.start <= span.start && span.end <= h.end {
            found = Some(s);
        }
    });
    found
}

/// The statement a place lies in, with the place and the item it belongs to.
pub(crate) fn statement_of<'s>(view: &View<'s>, loc: Loc) -> Option<(Place, &'s Placed, Stmt<'s>)> {
    let place = view.place(loc)?;
    let placed = tree(view.s, place.doc)?
        .items()
        .iter()
        .find(|p| p.item.id == loc.item)?;
    Some((place, placed, owner(&placed.item, loc.span)?))
}

/// A name given inside an item: tag, place, chain, branch.
pub(crate) fn local<'s>(
    s: &Snapshot,
    doc: Doc,
    placed: &'s Placed,
    kind: NameKind,
    name: &str,
) -> Option<Def<'s>> {
    let item: &'s Item = &placed.item;
    pieces_of(s, doc, item).into_iter().find_map(|p| {
        if p.class != Class::Name(kind, true) || item.slice(p.span) != name {
            return None;
        }
        Some(Def {
            doc,
            item,
            start: placed.start,
            stmt: owner(item, p.span)?,
            name: p.span,
        })
    })
}

/// The port of a part: in its own block, or in that of the device it is an example of.
pub(crate) fn port<'s>(s: &'s Snapshot, part: &Def<'s>, port: &str) -> Option<Def<'s>> {
    if let Some(d) = port_in(part, port) {
        return Some(d);
    }
    let class = class_of(s, part)?;
    port_in(&class, port)
}

/// The device definition a part is an example of.
pub(crate) fn class_of<'s>(s: &'s Snapshot, part: &Def<'s>) -> Option<Def<'s>> {
    let atoms = part.stmt.atoms();
    let of = atoms.iter().position(|a| part.stmt.text(*a) == "of")?;
    let name = part.stmt.text(*atoms.get(of + 1)?);
    let kind = match part.stmt.keyword()? {
        "run" | "jumper" | "tail" | "piece" => NameKind::Cable,
        "connector" | "adapter" => NameKind::Connector,
        _ => NameKind::Device,
    };
    global(s, part.doc, kind, name)
}

fn port_in<'s>(d: &Def<'s>, port: &str) -> Option<Def<'s>> {
    for x in d.stmt.block()?.iter() {
        let word = x.keyword();
        let at = match word {
            Some("port") => x.atoms().get(1),
            Some("high" | "low") => x.atoms().first(),
            _ => None,
        };
        let Some(a) = at else { continue };
        if x.text(*a) == port {
            return Some(Def {
                stmt: x,
                name: a.span,
                ..*d
            });
        }
    }
    None
}

/// Names of the ports of a part.
pub(crate) fn ports<'s>(s: &'s Snapshot, part: &Def<'s>) -> Vec<&'s str> {
    let list = |d: &Def<'s>| -> Vec<&'s str> {
        let lines = d.stmt.block().into_iter().flat_map(|b| b.iter());
        let named = lines.filter_map(|x| match x.keyword() {
            Some("port") => x.atoms().get(1).map(|a| x.text(*a)),
            Some(w @ ("high" | "low")) => Some(w),
            _ => None,
        });
        // a leg may have several lines
        let mut once: Vec<&str> = Vec::new();
        named.for_each(|n| {
            if !once.contains(&n) {
                once.push(n);
            }
        });
        once
    };
    let own = list(part);
    if own.is_empty() {
        class_of(s, part).map(|c| list(&c)).unwrap_or_default()
    } else {
        own
    }
}

/// What the name at an offset stands for.
pub(crate) fn resolve<'s>(
    s: &'s Snapshot,
    doc: Doc,
    placed: &'s Placed,
    n: &Named,
) -> Option<Def<'s>> {
    match n.kind {
        k if k.is_global() => {
            if n.def {
                return here(doc, placed, n);
            }
            global(s, doc, k, &n.text)
        }
        NameKind::Port if !n.def => {
            // `DU1.high`: the tag stands right before it
            let stmt = owner(&placed.item, n.local)?;
            let tag = stmt.keyword()?.split_once('.')?.0;
            let part = local(s, doc, placed, NameKind::Tag, tag)?;
            port(s, &part, &n.text)
        }
        NameKind::Tag | NameKind::Place if !n.def => local(s, doc, placed, n.kind, &n.text),
        NameKind::Person | NameKind::Family | NameKind::Shared => None,
        _ => here(doc, placed, n),
    }
}

fn here<'s>(doc: Doc, placed: &'s Placed, n: &Named) -> Option<Def<'s>> {
    let item: &'s Item = &placed.item;
    Some(Def {
        doc,
        item,
        start: placed.start,
        stmt: owner(item, n.local)?,
        name: n.local,
    })
}
