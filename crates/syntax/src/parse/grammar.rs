//! The grammar of one statement's head, in chumsky over the tokens of its line.
//!
//! Blocks are not part of it: braces are matched with an explicit stack in [`super::build`], so
//! that nesting needs no recursion and a line that cannot be read costs that line only.

use chumsky::error::{Error, LabelError};
use chumsky::extra;
use chumsky::input::{Checkpoint, Cursor, MapExtra};
use chumsky::inspector::Inspector;
use chumsky::prelude::*;
use chumsky::primitive::select;
use chumsky::util::MaybeRef;

use super::arena::Arena;
use crate::SyntaxKind as S;
use crate::lex::Tok;
use crate::tree::BinOp;

/// The error type: the index of the token that fits nowhere. What was expected there follows from
/// the token before it, so nothing else is collected while parsing.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stop {
    pub(super) at: usize,
}

type Input<'t> = &'t [Tok];
type Extra = extra::Full<Stop, Arena, ()>;

impl<'t> Error<'t, Input<'t>> for Stop {}

impl<'t, L> LabelError<'t, Input<'t>, L> for Stop {
    #[inline(always)]
    fn expected_found<E: IntoIterator<Item = L>>(
        _: E,
        _: Option<MaybeRef<'t, Tok>>,
        span: SimpleSpan<usize>,
    ) -> Self {
        Stop { at: span.start }
    }
}

/// The arena is the parser's state. Nothing needs to be taken back on a rewind: an atom is added
/// only when it is complete, and nodes nothing points to do no harm (they come from broken lines only).
impl<'t> Inspector<'t, Input<'t>> for Arena {
    type Checkpoint = ();
    #[inline(always)]
    fn on_token(&mut self, _: &Tok) {}
    #[inline(always)]
    fn on_save<'p>(&self, _: &Cursor<'t, 'p, Input<'t>>) {}
    #[inline(always)]
    fn on_rewind<'p>(&mut self, _: &Checkpoint<'t, 'p, Input<'t>, ()>) {}
}

/// A token of that kind.
fn token<'t>(kind: S) -> impl Parser<'t, Input<'t>, Tok, Extra> + Copy {
    select(move |t: Tok, _: &mut MapExtra<'t, '_, Input<'t>, Extra>| (t.kind == kind).then_some(t))
}

/// A word with that flag.
fn word<'t>(flag: u8) -> impl Parser<'t, Input<'t>, Tok, Extra> + Copy {
    select(move |t: Tok, _: &mut MapExtra<'t, '_, Input<'t>, Extra>| t.has(flag).then_some(t))
}

/// The rest of a value after its first expression.
enum Tail {
    Tolerance(u32, Option<u32>),
    Coverage(u32),
    Upper(u32),
}

/// Numbers, names and brackets with operators between them; gives the node.
fn expression<'t>() -> impl Parser<'t, Input<'t>, u32, Extra> + Clone {
    let number = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| {
        (t.kind == S::Number).then(|| e.state().number(t))
    });
    let name = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| {
        (t.kind == S::Word).then(|| e.state().name(t))
    });

    recursive(|expression| {
        let group = token(S::LParen)
            .then(expression)
            .then(token(S::RParen))
            .map_with(|((open, inner), close), e| e.state().paren(open, inner, close));
        let operand = choice((number, name, group)).boxed();
        let negative = token(S::Minus)
            .then(operand.clone())
            .map_with(|(minus, inner), e| e.state().negative(minus, inner));
        let law = word(Tok::PER).ignore_then(token(S::Root));
        // the power of a ratio, in the law of a rule
        let power = token(S::Caret).then(number);
        let primary = operand
            .or(negative)
            .then(power.or_not())
            .map_with(|(node, power), e| match power {
                Some((at, exponent)) => e.state().binary(BinOp::Pow, at, node, exponent),
                None => node,
            })
            .then(law.or_not())
            .map_with(|(node, law), e| match law {
                Some(law) => e.state().per(node, law),
                None => node,
            })
            .boxed();
        let operator = select(
            |t: Tok, _: &mut MapExtra<'t, '_, Input<'t>, Extra>| match t.kind {
                S::Plus => Some((BinOp::Add, t)),
                S::Minus => Some((BinOp::Sub, t)),
                S::Star => Some((BinOp::Mul, t)),
                S::Slash => Some((BinOp::Div, t)),
                _ => None,
            },
        );
        primary
            .clone()
            .foldl_with(
                operator.then(primary).repeated(),
                |left, ((op, at), right), e| e.state().binary(op, at, left, right),
            )
            .boxed()
    })
}

/// An expression with its tolerance, coverage factor or upper limit.
fn value<'t>() -> impl Parser<'t, Input<'t>, (), Extra> + Clone {
    let number = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| {
        (t.kind == S::Number).then(|| e.state().number(t))
    });
    let expression = expression();
    let coverage = word(Tok::K).ignore_then(number);
    let tail = choice((
        token(S::PlusMinus)
            .ignore_then(expression.clone())
            .then(coverage.or_not())
            .map(|(half, k)| Tail::Tolerance(half, k)),
        coverage.map(Tail::Coverage),
        word(Tok::TO)
            .ignore_then(expression.clone())
            .map(Tail::Upper),
    ))
    .boxed();
    expression
        .then(tail.or_not())
        .map_with(|(node, tail), e| {
            let state: &mut Arena = e.state();
            match tail {
                None => state.value(node),
                Some(Tail::Tolerance(half, k)) => state.tolerance(node, Some(half), k),
                Some(Tail::Coverage(k)) => state.tolerance(node, None, Some(k)),
                Some(Tail::Upper(upper)) => state.range(node, upper),
            }
        })
        .boxed()
}

/// `WORD (atom | , atom)*`, or the same beginning with a value.
pub(super) fn line<'t>() -> impl Parser<'t, Input<'t>, (), Extra> {
    let value = value();
    // nearly every atom is one token, and no operator after it: one test finds it
    let lone = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| e.state().lone(t));
    let comma = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| {
        (t.kind == S::Comma).then(|| e.state().comma())
    });
    let first_word = select(|t: Tok, e: &mut MapExtra<'t, '_, Input<'t>, Extra>| {
        (t.kind == S::Word).then(|| e.state().word(t))
    });
    let first = choice((first_word, lone, value.clone())).boxed();
    let atom = lone.or(value);
    let element = choice((lone, comma.ignore_then(atom.clone()), atom)).boxed();
    // a fold, because what is ignored runs in chumsky's check mode, where `map_with` does nothing
    first.foldl(element.repeated(), |(), ()| ())
}
