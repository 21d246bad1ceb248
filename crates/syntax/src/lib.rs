//! Lossless lexer, parser, tree and formatter of the downlead language.
//!
//! [`File::parse`] always gives a tree. A file is a list of items (one top-level statement with its
//! block each), an item holds uniform statements: groups of atoms and maybe a block. What a statement
//! means is decided later, in crate `station`; the only words known here are `to`, `k` and `per`
//! inside values. Every position is a byte offset relative to its item, so that an edit
//! ([`File::edit`]) leaves all other items, and what was computed from them, as they were.

mod dump;
mod file;
mod format;
mod kind;
mod lex;
mod parse;
mod tree;

pub use file::{File, Placed};
pub use format::{format, newline};
pub use kind::SyntaxKind;
pub use lex::tokens;
pub use parse::{date_fault, dates_meant, without};
pub use tree::{
    Atom, AtomKind, BinOp, Block, Expr, ExprKind, Item, Number, Stmt, Stmts, Value, ValueId,
};
