//! Lexes one item for the parser: leaves out blanks and comments, marks what is part of an
//! expression or nested too deep, and notes what needs a diagnostic though it parses.

use downlead_base::Span;

use super::message;
use crate::SyntaxKind as S;
use crate::lex::{Lexer, Tok};
use crate::tree::read_number;

/// Nesting of blocks, and of brackets within a line, that is read.
pub(super) const MAX_DEPTH: u32 = 64;

/// Results of lexing an item that need a diagnostic or special treatment.
#[derive(Default)]
pub(super) struct Faults {
    /// Comments and texts with characters in them that are no part of the language anywhere.
    pub(super) hidden: Vec<Span>,
    /// Words such as `nan` in the place of a number, and numbers without a finite value.
    pub(super) infinite: Vec<Span>,
    /// Numbers written with a decimal comma.
    pub(super) commas: Vec<Span>,
    /// Opening minus closing braces.
    pub(super) balance: i64,
}

/// Appends the tokens that the parser reads, and marks those that are part of an expression.
pub(super) fn lex(text: &str, toks: &mut Vec<Tok>) -> Faults {
    let mut faults = Faults::default();
    let mut brackets = 0u32;
    let from = toks.len();
    let mut lexer = Lexer::new(text);
    while let Some(mut tok) = lexer.next_solid() {
        let slice = || &text[tok.start as usize..tok.end as usize];
        match tok.kind {
            S::Blank => continue,
            S::Comment => {
                hidden(slice(), tok.start, &mut faults.hidden);
                continue;
            }
            S::Newline => {
                brackets = 0;
                if let Some(last) = toks[from..].last_mut().filter(|t| t.kind == S::Newline) {
                    last.end = tok.end;
                    continue;
                }
            }
            S::Semicolon => brackets = 0,
            S::LBrace => {
                brackets = 0;
                faults.balance += 1;
            }
            S::RBrace => {
                brackets = 0;
                faults.balance -= 1;
            }
            S::LParen => {
                brackets += 1;
                if brackets > MAX_DEPTH {
                    tok.flags |= Tok::DEEP;
                }
            }
            S::RParen => brackets = brackets.saturating_sub(1),
            S::Text | S::OpenText => hidden(slice(), tok.start, &mut faults.hidden),
            S::Number if tok.has(Tok::LONG) => {
                let digits = if tok.digits == 0 {
                    slice()
                } else {
                    &slice()[..usize::from(tok.digits)]
                };
                if tok.digits == 0 || read_number(digits).is_none() {
                    faults.infinite.push(tok.span());
                    tok.kind = S::Invalid;
                    tok.flags |= Tok::NOTED;
                }
            }
            S::Number => decimal_comma(&mut toks[from..], tok, &mut faults.commas),
            S::Word => {
                if matches!(tok.end - tok.start, 3 | 8) && message::is_infinite(slice()) {
                    let first = toks[from..].last().is_none_or(|t| ends_line(t.kind));
                    if !first {
                        faults.infinite.push(tok.span());
                        tok.kind = S::Invalid;
                        tok.flags |= Tok::NOTED;
                    }
                } else if tok.flags != 0 {
                    join(&mut toks[from..]);
                }
            }
            S::Plus | S::Minus | S::Star | S::Slash | S::Caret | S::PlusMinus => {
                join(&mut toks[from..])
            }
            _ => {}
        }
        toks.push(tok);
    }
    faults
}

/// Marks the last token as part of an expression.
fn join(toks: &mut [Tok]) {
    if let Some(last) = toks.last_mut() {
        last.flags |= Tok::JOINED;
    }
}

/// Notes `0,5`: a comma with a bare number directly before it and a number directly after.
fn decimal_comma(toks: &mut [Tok], tok: Tok, out: &mut Vec<Span>) {
    if let [.., left, comma] = toks
        && comma.kind == S::Comma
        && comma.end == tok.start
        && left.kind == S::Number
        && left.unit_len == 0
        && left.end == comma.start
    {
        comma.kind = S::Invalid;
        comma.flags |= Tok::NOTED;
        out.push(Span {
            start: left.start,
            end: tok.start + u32::from(tok.digits),
        });
    }
}

/// Notes characters that no editor and no terminal agrees about, inside comments and texts.
fn hidden(text: &str, start: u32, out: &mut Vec<Span>) {
    if text
        .bytes()
        .all(|b| (0x20..0x7F).contains(&b) || b == b'\t')
    {
        return;
    }
    for (at, c) in text.char_indices() {
        if message::is_forbidden(c) {
            let start = start + at as u32;
            out.push(Span {
                start,
                end: start + c.len_utf8() as u32,
            });
            return;
        }
    }
}

/// True if a statement's head ends before such a token.
pub(super) fn ends_line(kind: S) -> bool {
    matches!(kind, S::Newline | S::Semicolon | S::LBrace | S::RBrace)
}
