//! Views of values and expressions.

use downlead_base::Span;
use downlead_quantity::UnitId;

use super::{Item, NONE, Node, Tag};
use crate::lex::unit_of;

/// `46 m`, `46 m ± 0.5 m`, `32 W ± 5 % k 2`, `0.1 dB to 0.2 dB`.
#[derive(Clone, Copy, Debug)]
pub struct Value<'a> {
    item: &'a Item,
    node: u32,
}

impl<'a> Value<'a> {
    pub(super) fn new(item: &'a Item, node: u32) -> Self {
        Value { item, node }
    }

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

    /// The tolerance after `±`, and the number after `k`.
    #[must_use]
    pub fn tolerance(self) -> Option<(Expr<'a>, Option<f64>)> {
        let node = self.node();
        match node.tag {
            Tag::Tolerance => self.at(node.b).map(|half| (half, self.coverage())),
            _ => None,
        }
    }

    /// The number after `k`, also without a preceding `±` (`accuracy 4 % k 2`).
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

/// Kind of an expression, with its parts.
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
    /// `^`
    Pow,
}

impl BinOp {
    pub(crate) fn from_index(index: u8) -> BinOp {
        match index {
            0 => BinOp::Add,
            1 => BinOp::Sub,
            2 => BinOp::Mul,
            3 => BinOp::Div,
            _ => BinOp::Pow,
        }
    }

    pub(crate) fn binds_tightly(self) -> bool {
        matches!(self, BinOp::Mul | BinOp::Div | BinOp::Pow)
    }

    /// As typed.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        match self {
            BinOp::Add => "+",
            BinOp::Sub => "-",
            BinOp::Mul => "*",
            BinOp::Div => "/",
            BinOp::Pow => "^",
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

    /// Its kind; brackets are skipped.
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

/// Digits as the lexer takes them, to a finite number; of a ratio `4:1` the quotient.
pub(crate) fn read_number(digits: &str) -> Option<f64> {
    let (negative, rest) = match digits.strip_prefix(['-', '−', '–']) {
        Some(rest) => (true, rest),
        None => (false, digits.strip_prefix('+').unwrap_or(digits)),
    };
    let value: f64 = match rest.split_once(':') {
        Some((a, b)) => a.parse::<f64>().ok()? / b.parse::<f64>().ok()?,
        None => rest.parse().ok()?,
    };
    let value = Some(value).filter(|v| v.is_finite())?;
    Some(if negative { -value } else { value })
}
