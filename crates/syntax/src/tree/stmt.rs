//! Views of statements and blocks.

use downlead_base::{ItemId, Span};

use super::{Atom, AtomKind, Item, NONE, StmtData, Value};

/// One statement: a head of atoms and maybe a block.
#[derive(Clone, Copy, Debug)]
pub struct Stmt<'a> {
    item: &'a Item,
    index: u32,
}

impl<'a> Stmt<'a> {
    fn data(self) -> StmtData {
        self.item.stmts[self.index as usize]
    }

    /// The item it belongs to.
    #[must_use]
    pub fn item(self) -> &'a Item {
        self.item
    }

    /// Identity of the item, as a `Loc` needs it.
    #[must_use]
    pub fn item_id(self) -> ItemId {
        self.item.id
    }

    /// The whole statement with its block.
    #[must_use]
    pub fn span(self) -> Span {
        let data = self.data();
        Span {
            start: data.start,
            end: data.end,
        }
    }

    /// The statement without its block.
    #[must_use]
    pub fn head_span(self) -> Span {
        let data = self.data();
        Span {
            start: data.start,
            end: data.head_end,
        }
    }

    /// The atoms of the head; of a broken statement those before the error, and an error atom for the rest.
    #[must_use]
    pub fn atoms(self) -> &'a [Atom] {
        let from = self.data().atoms as usize;
        let to = self
            .item
            .stmts
            .get(self.index as usize + 1)
            .map_or(self.item.atoms.len(), |s| s.atoms as usize);
        &self.item.atoms[from..to]
    }

    /// The atoms by groups, which commas separate.
    pub fn groups(self) -> impl Iterator<Item = &'a [Atom]> + Clone {
        let mut rest = self.atoms();
        std::iter::from_fn(move || {
            rest.first()?;
            let len = rest[1..]
                .iter()
                .position(|a| a.comma_before)
                .map_or(rest.len(), |i| i + 1);
            let (group, tail) = rest.split_at(len);
            rest = tail;
            Some(group)
        })
    }

    /// The text of the first atom, if that is a word.
    #[must_use]
    pub fn keyword(self) -> Option<&'a str> {
        let first = self.atoms().first()?;
        (first.kind == AtomKind::Word).then(|| self.text(*first))
    }

    /// The source text of an atom, as typed.
    #[must_use]
    pub fn text(self, atom: Atom) -> &'a str {
        self.item.slice(atom.span)
    }

    /// The source text at an item-relative span.
    #[must_use]
    pub fn slice(self, span: Span) -> &'a str {
        self.item.slice(span)
    }

    /// The content of a text atom, without its quotes.
    #[must_use]
    pub fn string(self, atom: Atom) -> Option<&'a str> {
        let inner = self.text(atom).strip_prefix('"')?;
        (atom.kind == AtomKind::Str).then(|| inner.strip_suffix('"').unwrap_or(inner))
    }

    /// The value of a value atom.
    #[must_use]
    pub fn value(self, atom: Atom) -> Option<Value<'a>> {
        match atom.kind {
            AtomKind::Value(id) => Some(self.item.value(id)),
            _ => None,
        }
    }

    /// The block, if there is one (it may lack its closing brace; the statement ends the block then).
    #[must_use]
    pub fn block(self) -> Option<Block<'a>> {
        let data = self.data();
        (data.brace != NONE).then_some(Block {
            item: self.item,
            span: Span {
                start: data.brace,
                end: data.end,
            },
            first: self.index + 1,
            end: data.next >> 1,
        })
    }

    /// True if the head could not be parsed to its end. It has a diagnostic then.
    #[must_use]
    pub fn is_broken(self) -> bool {
        self.data().next & 1 == 1
    }
}

/// The statements of a block, or of an item.
#[derive(Clone, Debug)]
pub struct Stmts<'a> {
    item: &'a Item,
    at: u32,
    end: u32,
}

impl<'a> Stmts<'a> {
    /// All at depth 0.
    pub(super) fn all(item: &'a Item) -> Self {
        Stmts {
            item,
            at: 0,
            end: item.stmts.len() as u32,
        }
    }
}

impl<'a> Iterator for Stmts<'a> {
    type Item = Stmt<'a>;

    fn next(&mut self) -> Option<Stmt<'a>> {
        if self.at >= self.end {
            return None;
        }
        let stmt = Stmt {
            item: self.item,
            index: self.at,
        };
        self.at = stmt.data().next >> 1;
        Some(stmt)
    }
}

/// The block of a statement.
#[derive(Clone, Copy, Debug)]
pub struct Block<'a> {
    item: &'a Item,
    span: Span,
    first: u32,
    end: u32,
}

impl<'a> Block<'a> {
    /// From the opening to the closing brace.
    #[must_use]
    pub fn span(self) -> Span {
        self.span
    }

    /// The statements.
    #[must_use]
    pub fn iter(self) -> Stmts<'a> {
        Stmts {
            item: self.item,
            at: self.first,
            end: self.end,
        }
    }

    /// True if the closing brace is present.
    #[must_use]
    pub fn is_closed(self) -> bool {
        self.span.len() > 1 && self.item.slice(self.span).ends_with('}')
    }
}

impl<'a> IntoIterator for Block<'a> {
    type Item = Stmt<'a>;
    type IntoIter = Stmts<'a>;

    fn into_iter(self) -> Stmts<'a> {
        self.iter()
    }
}
