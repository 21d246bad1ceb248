//! The formatter: one space between tokens, four per level of indentation, nothing aligned.
//!
//! It walks the tokens and changes blanks only. A line that could not be parsed keeps its inner
//! blanks; an item whose braces do not match keeps its indentation, because that is all there is to
//! tell where its blocks end. So the tree is the same before and after.

use downlead_base::codes;

use crate::SyntaxKind as S;
use crate::lex::{Lexer, Tok};
use crate::{File, Item, Stmt};

const INDENT: usize = 4;

/// The text with its blanks put in order. Numbers, comments and line ends stay as typed.
#[must_use]
pub fn format(text: &str) -> String {
    let file = File::parse(text);
    let mut out = Output {
        text: String::with_capacity(text.len() + text.len() / 8),
        blank: None,
    };
    let line_end = newline(text);
    let mut toks = Vec::new();
    for (index, placed) in file.items().iter().enumerate() {
        let item = &*placed.item;
        let layout = Layout::of(item);
        let mut depth = 0;
        toks.clear();
        for tok in Lexer::new(item.text()) {
            if tok.kind == S::Newline {
                line(
                    item,
                    &layout,
                    &toks,
                    &mut depth,
                    &mut out,
                    &item.text()[tok.span().range()],
                );
                toks.clear();
            } else if tok.kind != S::Blank {
                toks.push(tok);
            } else if index == 0 && tok.start == 0 && item.text().starts_with('\u{FEFF}') {
                out.text.push('\u{FEFF}');
            }
        }
        if !toks.is_empty() {
            line(item, &layout, &toks, &mut depth, &mut out, line_end);
        }
    }
    out.text
}

/// The line ending of a text: that of its first line.
#[must_use]
pub fn newline(text: &str) -> &'static str {
    if text.find('\n').is_some_and(|i| text[..i].ends_with('\r')) {
        "\r\n"
    } else {
        "\n"
    }
}

struct Output {
    text: String,
    /// An empty line waiting for a line after it.
    blank: Option<String>,
}

/// The parts of an item that the formatter must not change.
struct Layout {
    /// Ranges of statement heads that could not be read.
    broken: Vec<(u32, u32)>,
    /// Indentation and inner blanks of the whole item.
    as_typed: bool,
}

impl Layout {
    fn of(item: &Item) -> Layout {
        let as_typed = item.diagnostics().iter().any(|d| {
            [
                &codes::UNCLOSED_BLOCK,
                &codes::UNMATCHED_BRACE,
                &codes::TOO_DEEP,
            ]
            .iter()
            .any(|c| c.id == d.code.id)
        });
        let mut broken = Vec::new();
        if !item.diagnostics().is_empty() {
            // nesting is capped by the parser, so a list of open blocks stays short
            let mut open = vec![item.statements()];
            while let Some(stmts) = open.last_mut() {
                match stmts.next() {
                    Some(stmt) => {
                        if stmt.is_broken() {
                            broken.push(range(stmt));
                        }
                        open.extend(stmt.block().map(|b| b.iter()));
                    }
                    None => {
                        open.pop();
                    }
                }
            }
        }
        Layout { broken, as_typed }
    }

    fn is_broken(&self, from: u32, to: u32) -> bool {
        let next = self.broken.partition_point(|(_, end)| *end <= from);
        self.broken.get(next).is_some_and(|(start, _)| *start < to)
    }
}

fn range(stmt: Stmt<'_>) -> (u32, u32) {
    let span = stmt.head_span();
    // a lone brace has an empty head
    (span.start, span.end.max(span.start + 1))
}

/// Writes one line and follows its braces.
fn line(
    item: &Item,
    layout: &Layout,
    toks: &[Tok],
    depth: &mut usize,
    out: &mut Output,
    line_end: &str,
) {
    let (Some(first), Some(last)) = (toks.first(), toks.last()) else {
        if !out.text.trim_start_matches('\u{FEFF}').is_empty() && out.blank.is_none() {
            out.blank = Some(line_end.to_owned());
        }
        return;
    };
    if let Some(blank) = out.blank.take() {
        out.text.push_str(&blank);
    }
    let text = item.text();
    let out = &mut out.text;
    let closing = toks.iter().take_while(|t| t.kind == S::RBrace).count();
    if layout.as_typed {
        let start = text[..first.start as usize]
            .rfind('\n')
            .map_or(0, |i| i + 1);
        out.push_str(text[start..first.start as usize].trim_start_matches('\u{FEFF}'));
    } else {
        let width = depth.saturating_sub(closing) * INDENT;
        out.extend(std::iter::repeat_n(' ', width));
    }
    if out.is_empty() && text[first.start as usize..].starts_with('\u{FEFF}') {
        // a misplaced byte order mark must not become a good one
        out.push(' ');
    }
    if layout.as_typed || layout.is_broken(first.start, last.end) {
        let typed = &text[first.start as usize..last.end as usize];
        out.push_str(if last.kind == S::Comment {
            trimmed(typed)
        } else {
            typed
        });
    } else {
        for (i, tok) in toks.iter().enumerate() {
            if i > 0 && space_between(&toks[..i], *tok) {
                out.push(' ');
            }
            token(text, *tok, out);
        }
    }
    if out.ends_with('\r') {
        // a stray carriage return must not become half of a line end
        out.push(' ');
    }
    out.push_str(line_end);
    for tok in toks {
        match tok.kind {
            S::LBrace => *depth += 1,
            S::RBrace => *depth = depth.saturating_sub(1),
            _ => {}
        }
    }
}

fn token(text: &str, tok: Tok, out: &mut String) {
    let slice = &text[tok.span().range()];
    match tok.kind {
        S::Number if tok.unit_len > 0 => {
            let (digits, rest) = slice.split_at(usize::from(tok.digits));
            let unit = &slice[slice.len() - usize::from(tok.unit_len)..];
            out.push_str(digits);
            // `2m` may be a name: glued stays glued
            if rest.len() > unit.len() {
                out.push(' ');
            }
            out.push_str(unit);
        }
        S::Comment => out.push_str(trimmed(slice)),
        _ => out.push_str(slice),
    }
}

/// Without the blanks at the end, unless a stray carriage return would then precede the line end.
fn trimmed(text: &str) -> &str {
    let short = text.trim_end_matches([' ', '\t']);
    if short.ends_with('\r') { text } else { short }
}

/// True if a space separates `next` from `line`, which it follows.
fn space_between(line: &[Tok], next: Tok) -> bool {
    let last = line[line.len() - 1].kind;
    match next.kind {
        S::Comma | S::Semicolon | S::RParen | S::Caret => return false,
        _ => {}
    }
    match last {
        S::LParen | S::Caret => false,
        // a sign before a name or bracket; before digits a blank keeps it an operator
        S::Minus => {
            !(begins_operand(&line[..line.len() - 1]) && matches!(next.kind, S::Word | S::LParen))
        }
        _ => true,
    }
}

/// True if a value begins after these tokens, so that a `-` is a sign.
fn begins_operand(line: &[Tok]) -> bool {
    line.last().is_none_or(|t| {
        matches!(
            t.kind,
            S::Plus
                | S::Minus
                | S::Star
                | S::Slash
                | S::PlusMinus
                | S::LParen
                | S::Comma
                | S::Semicolon
                | S::Equals
        ) || t.has(Tok::TO)
    })
}
