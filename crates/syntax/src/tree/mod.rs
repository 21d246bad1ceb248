//! The tree of one item: flat arrays of statements, atoms and expression nodes, with spans
//! relative to the item, and the views over them.
//!
//! Statements are in the order of the text, so a statement's block is the run of statements
//! after it up to `next`, and its atoms are the run up to the first atom of the statement after it.

use std::sync::Arc;

use downlead_base::{Diagnostic, ItemId, Span};

mod expr;
mod stmt;

pub(crate) use expr::read_number;
pub use expr::{BinOp, Expr, ExprKind, Number, Value};
pub use stmt::{Block, Stmt, Stmts};

/// One top-level statement with its block: the unit of parsing, sharing and identity.
///
/// The items of a file cover every byte of it. Text before the first statement (comments,
/// blank lines) is an item without statements. A line at depth 0 that does not begin
/// in column 0, and what follows a `;` there, are further statements of the item.
#[derive(Debug)]
pub struct Item {
    /// Identity; a re-parsed item has a new one.
    pub id: ItemId,
    /// Length of the text in bytes.
    pub len: u32,
    /// The text it was read from: the whole file, or after an edit its own piece alone.
    pub(crate) text: Arc<str>,
    /// Where in that it begins.
    pub(crate) from: u32,
    pub(crate) stmts: Box<[StmtData]>,
    pub(crate) atoms: Box<[Atom]>,
    pub(crate) nodes: Box<[Node]>,
    pub(crate) errors: Box<[Diagnostic]>,
}

impl Item {
    /// The item's text: up to the next item, with the comments between.
    #[must_use]
    pub fn text(&self) -> &str {
        let from = self.from as usize;
        &self.text[from..from + self.len as usize]
    }

    /// The piece of the item's text at an item-relative span.
    #[must_use]
    pub fn slice(&self, span: Span) -> &str {
        let from = self.from as usize;
        let range = from + span.start as usize..from + span.end.min(self.len) as usize;
        self.text.get(range).unwrap_or_default()
    }

    /// The statement the item consists of; `None` when it holds only comments and blanks.
    #[must_use]
    pub fn statement(&self) -> Option<Stmt<'_>> {
        self.statements().next()
    }

    /// All statements of the item at depth 0 (more than one only after `;` or with a wrong indentation).
    #[must_use]
    pub fn statements(&self) -> Stmts<'_> {
        Stmts::all(self)
    }

    /// Syntax errors, in the order of the text.
    #[must_use]
    pub fn diagnostics(&self) -> &[Diagnostic] {
        &self.errors
    }

    /// The value of an atom of this item.
    #[must_use]
    pub fn value(&self, id: ValueId) -> Value<'_> {
        Value::new(self, u32::from_ne_bytes(id.0))
    }

    /// Bytes on the heap, without the allocator's own and without the text.
    #[must_use]
    pub fn heap_size(&self) -> usize {
        size_of_val(&*self.stmts)
            + size_of_val(&*self.atoms)
            + size_of_val(&*self.nodes)
            + size_of_val(&*self.errors)
    }
}

/// A statement as stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct StmtData {
    pub(crate) start: u32,
    pub(crate) head_end: u32,
    /// Of the `{`; `NONE` without block.
    pub(crate) brace: u32,
    pub(crate) end: u32,
    /// Its first atom.
    pub(crate) atoms: u32,
    /// The next statement of the same block, shifted left by one; the low bit means broken.
    pub(crate) next: u32,
}

pub(crate) const NONE: u32 = u32::MAX;

/// An expression node as stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Node {
    pub(crate) tag: Tag,
    /// Number: the unit. Binary: the operator.
    pub(crate) small: u8,
    /// Number: length of the unit text.
    pub(crate) unit_len: u16,
    pub(crate) a: u32,
    pub(crate) b: u32,
    pub(crate) c: u32,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub(crate) enum Tag {
    /// a: start, b: end of the digits, c: end.
    Number,
    /// a: start, b: end.
    Name,
    /// a: start, b: operand.
    Neg,
    /// a, b: operands.
    Binary,
    /// a: start, b: end, c: operand.
    Paren,
    /// a: operand; b: start, c: end of the law.
    Per,
    /// a: value, b: half-width or NONE, c: number of the coverage factor or NONE.
    Tolerance,
    /// a: lower, b: upper.
    Range,
}

/// One thing in the head of a statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Atom {
    /// Its kind.
    pub kind: AtomKind,
    /// A comma precedes it: it begins a group.
    pub comma_before: bool,
    /// Where, relative to the item.
    pub span: Span,
}

/// Kind of an atom.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AtomKind {
    /// A lone word: keyword, name, tag.
    Word,
    /// A text in quotes.
    Str,
    /// A date.
    Date,
    /// An angle in degrees, minutes and seconds.
    Dms,
    /// `=`
    Equals,
    /// A value; [`Stmt::value`] opens it.
    Value(ValueId),
    /// Text that could not be parsed.
    Error,
}

/// Index of a value within its item. Bytes, not a `u32`, to keep [`Atom`] at 16 bytes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ValueId(pub(crate) [u8; 4]);
