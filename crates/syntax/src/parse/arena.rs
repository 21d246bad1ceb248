//! Where the parser puts what it understands: growing arrays, emptied into each item.

use crate::SyntaxKind as S;
use crate::lex::{NO_UNIT, Tok};
use crate::tree::{Atom, AtomKind, BinOp, NONE, Node, StmtData, Tag, ValueId};
use downlead_base::Span;

/// At most so many operators in one value: it bounds the depth of the tree.
pub(super) const MAX_OPERATORS: u32 = 64;

#[derive(Default)]
pub(super) struct Arena {
    pub(super) stmts: Vec<StmtData>,
    pub(super) atoms: Vec<Atom>,
    pub(super) nodes: Vec<Node>,
    /// A comma was read since the last atom.
    comma: bool,
    /// Operators in the current value.
    operators: u32,
    /// The operator that was one too many.
    pub(super) too_many: Option<Tok>,
    /// The line holds a text without its end.
    pub(super) open_text: bool,
}

impl Arena {
    pub(super) fn clear(&mut self) {
        self.stmts.clear();
        self.atoms.clear();
        self.nodes.clear();
    }

    pub(super) fn begin_line(&mut self) {
        self.comma = false;
        self.operators = 0;
        self.too_many = None;
        self.open_text = false;
    }

    pub(super) fn atom(&mut self, kind: AtomKind, span: Span) {
        let comma_before = std::mem::take(&mut self.comma);
        self.atoms.push(Atom {
            kind,
            comma_before,
            span,
        });
    }

    pub(super) fn comma(&mut self) {
        self.comma = true;
    }

    pub(super) fn word(&mut self, tok: Tok) {
        self.atom(AtomKind::Word, tok.span());
    }

    /// The token as an atom of its own, unless it is part of an expression or no atom.
    pub(super) fn lone(&mut self, tok: Tok) -> Option<()> {
        let kind = match tok.kind {
            S::Text => AtomKind::Str,
            S::Date => AtomKind::Date,
            S::Dms => AtomKind::Dms,
            S::Equals => AtomKind::Equals,
            S::OpenText => {
                self.open_text = true;
                AtomKind::Str
            }
            S::Word if !tok.has(Tok::JOINED) => AtomKind::Word,
            S::Number if !tok.has(Tok::JOINED) => {
                let node = self.number(tok);
                AtomKind::Value(ValueId(node.to_ne_bytes()))
            }
            _ => return None,
        };
        self.atom(kind, tok.span());
        Some(())
    }

    fn node(&mut self, tag: Tag, a: u32, b: u32, c: u32) -> u32 {
        self.nodes.push(Node {
            tag,
            small: NO_UNIT,
            unit_len: 0,
            a,
            b,
            c,
        });
        self.nodes.len() as u32 - 1
    }

    pub(super) fn number(&mut self, tok: Tok) -> u32 {
        let node = self.node(
            Tag::Number,
            tok.start,
            tok.start + u32::from(tok.digits),
            tok.end,
        );
        let stored = &mut self.nodes[node as usize];
        stored.small = tok.unit;
        stored.unit_len = u16::from(tok.unit_len);
        node
    }

    pub(super) fn name(&mut self, tok: Tok) -> u32 {
        self.node(Tag::Name, tok.start, tok.end, 0)
    }

    pub(super) fn paren(&mut self, open: Tok, inner: u32, close: Tok) -> u32 {
        self.node(Tag::Paren, open.start, close.end, inner)
    }

    pub(super) fn negative(&mut self, minus: Tok, inner: u32) -> u32 {
        self.count(minus);
        self.node(Tag::Neg, minus.start, inner, 0)
    }

    pub(super) fn per(&mut self, inner: u32, law: Tok) -> u32 {
        self.node(Tag::Per, inner, law.start, law.end)
    }

    fn count(&mut self, operator: Tok) {
        self.operators += 1;
        if self.operators > MAX_OPERATORS && self.too_many.is_none() {
            self.too_many = Some(operator);
        }
    }

    /// Joins two operands. Called from left to right; a `*` or `/` after a sum takes the sum's right operand.
    pub(super) fn binary(&mut self, op: BinOp, at: Tok, left: u32, right: u32) -> u32 {
        self.count(at);
        let outer = self.nodes[left as usize];
        if op.binds_tightly()
            && outer.tag == Tag::Binary
            && !BinOp::from_index(outer.small).binds_tightly()
        {
            let inner = self.node(Tag::Binary, outer.b, right, 0);
            self.nodes[inner as usize].small = op as u8;
            self.nodes[left as usize].b = inner;
            return left;
        }
        let node = self.node(Tag::Binary, left, right, 0);
        self.nodes[node as usize].small = op as u8;
        node
    }

    /// Start and end of an expression.
    fn extent(&self, node: u32) -> Span {
        let (mut first, mut last) = (node, node);
        let start = loop {
            let n = self.nodes[first as usize];
            match n.tag {
                Tag::Binary | Tag::Per | Tag::Tolerance | Tag::Range => first = n.a,
                _ => break n.a,
            }
        };
        let end = loop {
            let n = self.nodes[last as usize];
            match n.tag {
                Tag::Binary | Tag::Neg | Tag::Range => last = n.b,
                Tag::Number | Tag::Per => break n.c,
                Tag::Name | Tag::Paren => break n.b,
                Tag::Tolerance => last = if n.c != NONE { n.c } else { n.b },
            }
        };
        Span { start, end }
    }

    fn finish(&mut self, node: u32) {
        self.operators = 0;
        let span = self.extent(node);
        self.atom(AtomKind::Value(ValueId(node.to_ne_bytes())), span);
    }

    /// An expression as an atom; a mere name stays a word.
    pub(super) fn value(&mut self, node: u32) {
        let last = self.nodes[node as usize];
        if last.tag == Tag::Name {
            // it is the last node, except for the remains of an incomplete tail
            self.nodes.truncate(node as usize);
            self.atom(
                AtomKind::Word,
                Span {
                    start: last.a,
                    end: last.b,
                },
            );
        } else {
            self.finish(node);
        }
    }

    pub(super) fn tolerance(&mut self, value: u32, half: Option<u32>, k: Option<u32>) {
        let node = self.node(
            Tag::Tolerance,
            value,
            half.unwrap_or(NONE),
            k.unwrap_or(NONE),
        );
        self.finish(node);
    }

    pub(super) fn range(&mut self, lower: u32, upper: u32) {
        let node = self.node(Tag::Range, lower, upper, 0);
        self.finish(node);
    }
}
