//! The tree of one item: flat arrays of statements, atoms and expression nodes, with spans
//! relative to the item, and the views over them.
//!
//! Statements stand in the order of the text, so a statement's block is the run of statements
//! after it up to `next`, and its atoms are the run up to the first atom of the statement after it.

use downlead_base::{Diagnostic, ItemId, Span};
use downlead_quantity::UnitId;

use crate::lex::unit_of;

/// One top-level statement with its block: the unit of parsing, sharing and identity.
///
/// The items of a file cover every byte of it. Text before the first statement (comments,
/// blank lines) is an item without statements. A line that stands at depth 0 without beginning
/// in column 0, and what follows a `;` there, are further statements of the item.
#[derive(Debug)]
pub struct Item {
    /// Identity; a re-parsed item has a new one.
    pub id: ItemId,
    /// Length of the text in bytes.
    pub len: u32,
    pub(crate) text: Box<str>,
    pub(crate) stmts: Box<[StmtData]>,
    pub(crate) atoms: Box<[Atom]>,
    pub(crate) nodes: Box<[Node]>,
    pub(crate) errors: Box<[Diagnostic]>,
}

impl Item {
    /// The item's text: up to the next item, with the comments between.
    #[must_use]
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The piece of the item's text at an item-relative span.
    #[must_use]
    pub fn slice(&self, span: Span) -> &str {
        self.text.get(span.range()).unwrap_or_default()
    }

    /// The statement the item consists of; `None` when it holds only comments and blanks.
    #[must_use]
    pub fn statement(&self) -> Option<Stmt<'_>> {
        self.statements().next()
    }

    /// All statements of the item at depth 0 (more than one only after `;` or with a wrong indentation).
    #[must_use]
    pub fn statements(&self) -> Stmts<'_> {
        Stmts {
            item: self,
            at: 0,
            end: self.stmts.len() as u32,
        }
    }

    /// Syntax errors, in the order of the text.
    #[must_use]
    pub fn diagnostics(&self) -> &[Diagnostic] {
        &self.errors
    }

    /// The value behind an atom of this item.
    #[must_use]
    pub fn value(&self, id: ValueId) -> Value<'_> {
        Value {
            item: self,
            node: u32::from_ne_bytes(id.0),
        }
    }

    /// Bytes on the heap, without the allocator's own.
    #[must_use]
    pub fn heap_size(&self) -> usize {
        size_of_val(&*self.text)
            + size_of_val(&*self.stmts)
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
    /// The next statement of the same block, shifted left by one; the low bit says broken.
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
            let first = rest.first()?;
            let _ = first;
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

    /// What a text atom says, without its quotes.
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

    /// Whether the head could not be read to its end. It has a diagnostic then.
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

    /// Whether the closing brace is there.
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

/// One thing in the head of a statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Atom {
    /// What it is.
    pub kind: AtomKind,
    /// A comma stands before it: it begins a group.
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
    /// What could not be read.
    Error,
}

/// Index of a value within its item. Bytes, not a `u32`, to keep [`Atom`] at 16 bytes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ValueId(pub(crate) [u8; 4]);

/// `46 m`, `46 m ± 0.5 m`, `32 W ± 5 % k 2`, `0.1 dB to 0.2 dB`.
#[derive(Clone, Copy, Debug)]
pub struct Value<'a> {
    item: &'a Item,
    node: u32,
}

impl<'a> Value<'a> {
    fn node(self) -> Node {
        self.item.nodes[self.node as usize]
    }

    fn at(self, node: u32) -> Option<Expr<'a>> {
        (node != NONE).then_some(Expr {
            item: self.item,
            node,
        })
    }

    /// The value itself, or the lower end of a range.
    #[must_use]
    pub fn expr(self) -> Expr<'a> {
        let node = self.node();
        match node.tag {
            Tag::Tolerance | Tag::Range => Expr {
                item: self.item,
                node: node.a,
            },
            _ => Expr {
                item: self.item,
                node: self.node,
            },
        }
    }

    /// What follows `±`, and the number after `k`.
    #[must_use]
    pub fn tolerance(self) -> Option<(Expr<'a>, Option<f64>)> {
        let node = self.node();
        match node.tag {
            Tag::Tolerance => self.at(node.b).map(|half| (half, self.coverage())),
            _ => None,
        }
    }

    /// The number after `k`, also where no `±` stands before it (`accuracy 4 % k 2`).
    #[must_use]
    pub fn coverage(self) -> Option<f64> {
        let node = self.node();
        match node.tag {
            Tag::Tolerance => match self.at(node.c)?.kind() {
                ExprKind::Number(n) => Some(n.value),
                _ => None,
            },
            _ => None,
        }
    }

    /// The upper end of `a to b`.
    #[must_use]
    pub fn upper(self) -> Option<Expr<'a>> {
        let node = self.node();
        match node.tag {
            Tag::Range => self.at(node.b),
            _ => None,
        }
    }

    /// The one number with its unit this value consists of, when it is nothing more.
    #[must_use]
    pub fn number(self) -> Option<Number> {
        match (self.node().tag, self.expr().kind()) {
            (Tag::Number, ExprKind::Number(number)) => Some(number),
            _ => None,
        }
    }

    /// The whole value.
    #[must_use]
    pub fn span(self) -> Span {
        let node = self.node();
        let whole = self.expr().span();
        let end = match node.tag {
            Tag::Tolerance => self.at(node.c).or(self.at(node.b)),
            Tag::Range => self.at(node.b),
            _ => None,
        };
        end.map_or(whole, |end| whole.join(end.span()))
    }
}

/// An expression. Its nesting is bounded by the parser (at most a few hundred levels).
#[derive(Clone, Copy, Debug)]
pub struct Expr<'a> {
    item: &'a Item,
    node: u32,
}

/// What an expression is.
#[derive(Clone, Copy, Debug)]
pub enum ExprKind<'a> {
    /// A number, maybe with a unit.
    Number(Number),
    /// A named value.
    Name(Span),
    /// `-x` (a minus directly before digits belongs to the number).
    Neg(Expr<'a>),
    /// `a op b`.
    Binary(BinOp, Expr<'a>, Expr<'a>),
    /// `0.05 dB per sqrt(GHz)`: the value and the span of the law.
    Per(Expr<'a>, Span),
}

/// A number as written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// The number before its unit is applied; always finite.
    pub value: f64,
    /// The unit, `None` for a count or ratio.
    pub unit: Option<UnitId>,
    /// The digits with their sign.
    pub digits: Span,
    /// The unit text; empty, at the end of the digits, without unit.
    pub unit_span: Span,
}

/// An operator.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub enum BinOp {
    /// `+`
    Add,
    /// `-`
    Sub,
    /// `*`
    Mul,
    /// `/`
    Div,
}

impl BinOp {
    pub(crate) fn from_index(index: u8) -> BinOp {
        match index {
            0 => BinOp::Add,
            1 => BinOp::Sub,
            2 => BinOp::Mul,
            _ => BinOp::Div,
        }
    }

    pub(crate) fn binds_tightly(self) -> bool {
        matches!(self, BinOp::Mul | BinOp::Div)
    }

    /// As typed.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        match self {
            BinOp::Add => "+",
            BinOp::Sub => "-",
            BinOp::Mul => "*",
            BinOp::Div => "/",
        }
    }
}

impl<'a> Expr<'a> {
    fn to(self, node: u32) -> Expr<'a> {
        Expr {
            item: self.item,
            node,
        }
    }

    fn node(self) -> Node {
        self.item.nodes[self.node as usize]
    }

    /// What it is; brackets are seen through.
    #[must_use]
    pub fn kind(self) -> ExprKind<'a> {
        let node = self.node();
        match node.tag {
            Tag::Number => ExprKind::Number(self.number(node)),
            Tag::Name => ExprKind::Name(Span {
                start: node.a,
                end: node.b,
            }),
            Tag::Neg => ExprKind::Neg(self.to(node.b)),
            Tag::Binary => ExprKind::Binary(
                BinOp::from_index(node.small),
                self.to(node.a),
                self.to(node.b),
            ),
            Tag::Paren => self.to(node.c).kind(),
            Tag::Per => ExprKind::Per(
                self.to(node.a),
                Span {
                    start: node.b,
                    end: node.c,
                },
            ),
            // never inside an expression; read as its value all the same
            Tag::Tolerance | Tag::Range => self.to(node.a).kind(),
        }
    }

    /// Where, with its brackets.
    #[must_use]
    pub fn span(self) -> Span {
        let node = self.node();
        match node.tag {
            Tag::Number => Span {
                start: node.a,
                end: node.c,
            },
            Tag::Name | Tag::Paren => Span {
                start: node.a,
                end: node.b,
            },
            Tag::Neg => Span {
                start: node.a,
                end: self.to(node.b).span().end,
            },
            Tag::Binary | Tag::Range => self.to(node.a).span().join(self.to(node.b).span()),
            Tag::Per => Span {
                start: self.to(node.a).span().start,
                end: node.c,
            },
            Tag::Tolerance => self.to(node.a).span(),
        }
    }

    /// The source text.
    #[must_use]
    pub fn text(self) -> &'a str {
        self.item.slice(self.span())
    }

    fn number(self, node: Node) -> Number {
        let digits = Span {
            start: node.a,
            end: node.b,
        };
        Number {
            value: read_number(self.item.slice(digits)).unwrap_or_default(),
            unit: unit_of(node.small),
            digits,
            unit_span: Span {
                start: node.c - u32::from(node.unit_len),
                end: node.c,
            },
        }
    }
}

/// Digits as the lexer takes them, to a finite number.
pub(crate) fn read_number(digits: &str) -> Option<f64> {
    let (negative, rest) = match digits.strip_prefix(['-', '−', '–']) {
        Some(rest) => (true, rest),
        None => (false, digits.strip_prefix('+').unwrap_or(digits)),
    };
    let value: f64 = rest.parse().ok().filter(|v: &f64| v.is_finite())?;
    Some(if negative { -value } else { value })
}
