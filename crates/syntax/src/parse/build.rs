//! Builds one item: its lines through the grammar, its blocks with an explicit stack.

use std::sync::Arc;

use chumsky::Parser;
use downlead_base::{Diagnostic, ItemId, Loc, Span};

use super::arena::Arena;
use super::grammar::Stop;
use super::message;
use super::prepare::{Faults, MAX_DEPTH, ends_line};
use crate::SyntaxKind as S;
use crate::lex::Tok;
use crate::tree::{Atom, AtomKind, Item, NONE, StmtData};

/// An open block.
struct Open {
    stmt: usize,
    brace: Span,
    /// Indentation of the line with the brace.
    indent: u32,
}

/// Builds one item.
pub(super) struct Builder<'a, 'p, P> {
    id: ItemId,
    text: &'a str,
    toks: &'a [Tok],
    line: &'p P,
    arena: &'p mut Arena,
    errors: Vec<Diagnostic>,
    open: Vec<Open>,
    /// Blocks opened beyond the cap, whose content is passed over.
    beyond: u32,
    /// Braces do not balance: blocks are closed by indentation where that helps.
    unbalanced: bool,
    /// Width of the blanks at the start of the current line.
    indent: u32,
    /// The diagnostic for nesting is given.
    too_deep: bool,
}

impl<'a, 'p, P> Builder<'a, 'p, P>
where
    P: Parser<'a, &'a [Tok], (), chumsky::extra::Full<Stop, Arena, ()>>,
{
    pub(super) fn new(
        id: ItemId,
        text: &'a str,
        toks: &'a [Tok],
        line: &'p P,
        arena: &'p mut Arena,
        faults: Faults,
    ) -> Self {
        arena.clear();
        let mut errors = Vec::new();
        for span in faults.hidden {
            errors.push(message::invalid(
                Loc::new(id, span),
                &text[span.range()],
                true,
            ));
        }
        for span in faults.infinite {
            errors.push(message::infinite(Loc::new(id, span), &text[span.range()]));
        }
        for span in faults.commas {
            errors.push(message::decimal_comma(
                Loc::new(id, span),
                &text[span.range()],
            ));
        }
        let unbalanced = faults.balance > 0;
        Builder {
            id,
            text,
            toks,
            line,
            arena,
            errors,
            open: Vec::new(),
            beyond: 0,
            unbalanced,
            indent: toks.first().map_or(0, |t| t.start),
            too_deep: false,
        }
    }

    pub(super) fn run(mut self, text: Arc<str>, from: u32) -> Item {
        let mut at = 0;
        while let Some(&tok) = self.toks.get(at) {
            match tok.kind {
                S::Newline => {
                    at += 1;
                    self.indent = self.toks.get(at).map_or(0, |next| next.start - tok.end);
                }
                S::Semicolon => at += 1,
                S::LBrace => {
                    self.lone_brace(tok);
                    at += 1;
                }
                S::RBrace => {
                    self.close(tok, at);
                    at += 1;
                }
                _ => {
                    let len = self.toks[at..]
                        .iter()
                        .position(|t| ends_line(t.kind))
                        .unwrap_or(self.toks.len() - at);
                    let end = at + len;
                    let next = self.toks.get(end).filter(|t| t.kind == S::LBrace);
                    if self.beyond == 0 {
                        self.statement(at, end);
                        if let Some(brace) = next {
                            self.open(self.arena.stmts.len() - 1, *brace);
                        }
                    } else if next.is_some() {
                        self.beyond += 1;
                    }
                    at = end + usize::from(next.is_some());
                }
            }
        }
        self.finish(text, from)
    }

    fn loc(&self, span: Span) -> Loc {
        Loc::new(self.id, span)
    }

    /// Parses the head `toks[from..to]` and adds its statement.
    fn statement(&mut self, from: usize, to: usize) {
        let toks: &'a [Tok] = &self.toks[from..to];
        let first_atom = self.arena.atoms.len() as u32;
        let (start, head_end) = (toks[0].start, toks[toks.len() - 1].end);
        self.place(from, toks[0]);
        self.arena.begin_line();
        let deep = toks.iter().find(|t| t.has(Tok::DEEP));
        let stop = match deep {
            Some(_) => Some(0),
            None => self
                .line
                .parse_with_state(toks, self.arena)
                .into_result()
                .err()
                .map(|errors| errors.first().map_or(0, |stop| stop.at)),
        };
        let mut broken = false;
        if let Some(tok) = deep.copied().or(self.arena.too_many) {
            broken = true;
            self.arena.atoms.truncate(first_atom as usize);
            self.arena.atoms.push(Atom {
                kind: AtomKind::Error,
                comma_before: false,
                span: Span {
                    start,
                    end: head_end,
                },
            });
            self.errors
                .push(message::too_deep(self.loc(tok.span()), deep.is_some()));
        } else if let Some(stop) = stop {
            broken = true;
            self.explain(toks, stop);
            self.rest_is_error(first_atom as usize, toks, head_end);
        }
        if self.arena.open_text {
            broken = true;
            // an invalid character cut it short: that has its own diagnostic
            let cut = |text: &Tok| {
                toks.iter()
                    .any(|t| t.kind == S::Invalid && t.start == text.end)
            };
            if let Some(text) = toks
                .iter()
                .find(|t| t.kind == S::OpenText)
                .filter(|t| !cut(t))
            {
                let span = text.span();
                self.errors.push(message::unclosed_string(
                    self.loc(span),
                    &self.text[span.range()],
                ));
            }
        }
        self.date_faults(first_atom as usize);
        let next = (self.arena.stmts.len() as u32 + 1) << 1 | u32::from(broken);
        self.arena.stmts.push(StmtData {
            start,
            head_end,
            brace: NONE,
            end: head_end,
            atoms: first_atom,
            next,
        });
    }

    /// A statement at depth 0 begins in column 0, or after a `;`.
    fn place(&mut self, at: usize, tok: Tok) {
        let begins_line = at == 0 || self.toks[at - 1].kind == S::Newline;
        if at > 0 && self.toks[at - 1].kind == S::RBrace {
            self.errors.push(message::after_brace(self.loc(tok.span())));
        } else if self.open.is_empty()
            && begins_line
            && (tok.start > 0 || !super::starts_item(self.text.as_bytes(), 0))
        {
            let line = self.text[..tok.start as usize]
                .rfind('\n')
                .map_or(0, |i| i + 1) as u32;
            let blanks = Span {
                start: line,
                end: tok.start,
            };
            self.errors.push(message::misplaced(
                self.loc(tok.span()),
                self.loc(blanks),
                tok.kind == S::Word,
            ));
        }
    }

    /// Wraps the unparsed remainder in one error atom.
    fn rest_is_error(&mut self, first_atom: usize, toks: &[Tok], head_end: u32) {
        let read = self.arena.atoms[first_atom..]
            .last()
            .map_or(0, |a| a.span.end);
        if let Some(rest) = toks
            .iter()
            .find(|t| t.start >= read && t.kind != S::Comma)
            .or(toks.last())
            && rest.start >= read
        {
            self.arena.atom(
                AtomKind::Error,
                Span {
                    start: rest.start,
                    end: head_end,
                },
            );
        }
    }

    /// One diagnostic for a line that could not be read, unless its cause has one already.
    fn explain(&mut self, toks: &[Tok], stop: usize) {
        if let Some(bad) = toks.get(stop).filter(|t| t.kind == S::Invalid) {
            if bad.has(Tok::NOTED) {
                return;
            }
            let mut span = bad.span();
            for next in toks[stop + 1..].iter().take_while(|t| t.kind == S::Invalid) {
                if next.start != span.end {
                    break;
                }
                span.end = next.end;
            }
            let before = &self.text[..span.start as usize];
            let line = before.rsplit('\n').next().unwrap_or(before);
            let mut d = match message::feet(self.loc(span), &self.text[span.range()], line) {
                Some(d) => d,
                None => message::invalid(self.loc(span), &self.text[span.range()], false),
            };
            self.other_quote(span, &mut d);
            self.errors.push(d);
            return;
        }
        self.errors
            .push(message::not_understood(self.id, self.text, toks, stop));
    }

    /// The fix of a typographic quote writes the one that closes the text too.
    fn other_quote(&self, span: Span, d: &mut downlead_base::Diagnostic) {
        let line = self.text[span.end as usize..].lines().next().unwrap_or("");
        let opens = self.text[span.range()].starts_with(['“', '„', '”', '«', '»']);
        let closing = line.char_indices().find(|c| "“”»«".contains(c.1));
        let Some((at, c)) = closing.filter(|_| opens) else {
            return;
        };
        let start = span.end + at as u32;
        let end = start + c.len_utf8() as u32;
        for fix in d
            .fixes
            .iter_mut()
            .filter(|f| f.edits.len() == 1 && f.edits[0].text == "\"")
        {
            fix.edits.push(downlead_base::Edit {
                loc: self.loc(Span { start, end }),
                text: "\"".to_owned(),
            });
        }
    }

    /// Dates that no calendar has.
    fn date_faults(&mut self, first_atom: usize) {
        for i in first_atom..self.arena.atoms.len() {
            let atom = self.arena.atoms[i];
            if atom.kind == AtomKind::Date
                && let Some(error) =
                    message::bad_date(self.loc(atom.span), &self.text[atom.span.range()])
            {
                self.errors.push(error);
            }
        }
    }

    fn open(&mut self, stmt: usize, brace: Tok) {
        if self.open.len() as u32 >= MAX_DEPTH {
            if !self.too_deep {
                self.too_deep = true;
                self.errors
                    .push(message::too_deep_block(self.loc(brace.span())));
            }
            self.beyond += 1;
            return;
        }
        self.arena.stmts[stmt].brace = brace.start;
        self.arena.stmts[stmt].end = brace.end;
        self.open.push(Open {
            stmt,
            brace: brace.span(),
            indent: self.indent,
        });
    }

    /// A `{` that does not end a head: it belongs to the statement above when that has no block.
    fn lone_brace(&mut self, brace: Tok) {
        if self.beyond > 0 {
            self.beyond += 1;
            return;
        }
        let above = self.arena.stmts.len().checked_sub(1).filter(|last| {
            let here = self.open.last().is_none_or(|open| open.stmt < *last);
            here && self.arena.stmts[*last].brace == NONE
        });
        let head = above.map(|stmt| {
            self.loc(Span {
                start: self.arena.stmts[stmt].head_end,
                end: brace.start,
            })
        });
        self.errors
            .push(message::lone_brace(self.loc(brace.span()), head));
        let stmt = above.unwrap_or_else(|| {
            let next = (self.arena.stmts.len() as u32 + 1) << 1 | 1;
            let atoms = self.arena.atoms.len() as u32;
            let start = brace.start;
            self.arena.stmts.push(StmtData {
                start,
                head_end: start,
                brace: NONE,
                end: brace.end,
                atoms,
                next,
            });
            self.arena.stmts.len() - 1
        });
        self.open(stmt, brace);
    }

    fn close(&mut self, brace: Tok, at: usize) {
        if self.beyond > 0 {
            self.beyond -= 1;
            return;
        }
        if self.unbalanced && (at == 0 || self.toks[at - 1].kind == S::Newline) {
            self.close_by_indentation(brace);
        }
        match self.open.pop() {
            Some(open) => self.seal(open.stmt, brace.end),
            None => self.errors.push(message::unmatched(self.loc(brace.span()))),
        }
    }

    /// In an item that lacks closing braces, a `}` further left than the line of the innermost block
    /// closes the block it is aligned with; the ones between lack theirs.
    fn close_by_indentation(&mut self, brace: Tok) {
        let Some(fits) = self
            .open
            .iter()
            .rposition(|open| open.indent == self.indent)
        else {
            return;
        };
        while self.open.len() > fits + 1 {
            self.leave_open(brace.start);
        }
    }

    /// Ends the innermost block, which has no closing brace.
    fn leave_open(&mut self, before: u32) {
        let Some(open) = self.open.pop() else { return };
        let last = self
            .arena
            .stmts
            .last()
            .map_or(open.brace.end, |s| s.end.max(open.brace.end))
            .min(before);
        self.errors.push(message::unclosed_block(
            self.loc(open.brace),
            self.loc(Span {
                start: last,
                end: last,
            }),
        ));
        self.seal(open.stmt, last);
    }

    fn seal(&mut self, stmt: usize, end: u32) {
        let next = self.arena.stmts.len() as u32;
        let data = &mut self.arena.stmts[stmt];
        data.end = end;
        data.next = next << 1 | (data.next & 1);
    }

    fn finish(mut self, text: Arc<str>, from: u32) -> Item {
        let end = self.text.len() as u32;
        while !self.open.is_empty() {
            self.leave_open(end);
        }
        self.errors.sort_by_key(|e| e.primary.loc.span.start);
        Item {
            id: self.id,
            len: end,
            text,
            from,
            stmts: self.arena.stmts.as_slice().into(),
            atoms: self.arena.atoms.as_slice().into(),
            nodes: self.arena.nodes.as_slice().into(),
            errors: self.errors.into(),
        }
    }
}
