//! What stands around a cursor, from the tokens alone: works on lines that cannot be read yet.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_quantity::{Dim, UnitId, unit};
use downlead_station::Lets;
use downlead_station::forms::{self, Begins, Block, Form, Known, Offer, offers};
use downlead_station::keywords::Context;
use downlead_syntax::{File, Stmt, SyntaxKind, tokens};

use crate::view::{Doc, doc_text, item_at, to32};

/// A token before the cursor, with its text.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Tok<'a> {
    pub(crate) kind: SyntaxKind,
    pub(crate) text: &'a str,
    pub(crate) span: Span,
}

/// An open block.
#[derive(Clone, Debug)]
pub(crate) struct Frame {
    pub(crate) word: String,
    pub(crate) cx: Context,
    pub(crate) block: Block,
}

/// What stands around a cursor.
pub(crate) struct Situation<'a> {
    /// Open blocks, outermost first.
    pub(crate) frames: Vec<Frame>,
    /// Context of the statement the cursor is in.
    pub(crate) cx: Context,
    /// The statements that may stand there.
    pub(crate) block: Block,
    /// Tokens of the statement before what is being typed, without blanks.
    pub(crate) head: Vec<Tok<'a>>,
    /// What is being typed, up to the cursor.
    pub(crate) partial: &'a str,
    /// Its range, reaching to the end of the word behind the cursor.
    pub(crate) replace: Span,
    /// In a comment.
    pub(crate) comment: bool,
    /// In a text in quotes: what stands in it before the cursor, and where it begins.
    pub(crate) quoted: Option<(&'a str, u32)>,
    /// Directly after the closing quote of a text.
    pub(crate) after_text: bool,
}

fn part_of_word(c: char) -> bool {
    c.is_alphanumeric() || matches!(c, '-' | '_' | '.' | '°' | '%' | 'µ' | 'Ω' | '/' | 'λ')
}

impl<'a> Situation<'a> {
    /// At an offset of a document.
    pub(crate) fn at(s: &'a Snapshot, doc: Doc, offset: u32) -> Option<Situation<'a>> {
        let text = doc_text(s, doc);
        let offset = crate::view::clamp(text, offset);
        let placed = item_at(s, doc, offset)?;
        let mut start = placed.start;
        // a new line at the left margin begins something new, though it may still be empty
        let line = crate::view::line_start(text, offset);
        if line > start
            && text
                .get(line as usize..offset as usize)
                .is_some_and(|l| !l.starts_with([' ', '\t', '}']))
        {
            start = line;
        }
        let before = text.get(start as usize..offset as usize)?;
        let mut frames: Vec<Frame> = Vec::new();
        let mut cx = Context::Top;
        let mut block = forms::top();
        let mut head: Vec<Tok<'a>> = Vec::new();
        let mut all: Vec<Tok<'a>> = Vec::new();
        for (kind, span) in tokens(before) {
            let tok = Tok {
                kind,
                text: &before[span.range()],
                span: span.shift(start),
            };
            all.push(tok);
            match kind {
                SyntaxKind::Newline | SyntaxKind::Semicolon => head.clear(),
                SyntaxKind::LBrace => {
                    let word = head.first().map_or("", |t| t.text).to_owned();
                    let inner = match block.form(Some(&word)) {
                        Some(f) => f.block,
                        None => Block::None,
                    };
                    frames.push(Frame { word, cx, block });
                    cx = inner.context().unwrap_or(Context::Table);
                    block = inner;
                    head.clear();
                }
                SyntaxKind::RBrace => {
                    if let Some(f) = frames.pop() {
                        cx = f.cx;
                        block = f.block;
                    }
                    head.clear();
                }
                SyntaxKind::Blank => {}
                _ => head.push(tok),
            }
        }
        let last = all.last().copied();
        let comment = last.is_some_and(|t| t.kind == SyntaxKind::Comment);
        let quoted = last
            .filter(|t| t.kind == SyntaxKind::OpenText)
            .map(|t| (&t.text[1..], t.span.start + 1));
        let after_text = last.is_some_and(|t| t.kind == SyntaxKind::Text);
        // the word being typed, letters before and behind the cursor
        let back: usize = before
            .chars()
            .rev()
            .take_while(|c| part_of_word(*c))
            .map(char::len_utf8)
            .sum();
        let mut from = before.len() - back;
        // `46m`: what follows the digits is the unit
        let digits = before[from..].len()
            - before[from..]
                .trim_start_matches(|c: char| c.is_ascii_digit() || c == '.')
                .len();
        let rest = &before[from + digits..];
        if digits > 0
            && !head.is_empty()
            && !rest.contains(|c: char| c.is_ascii_digit() || c == '-' || c == '_')
            && head.len() > 1
        {
            from += digits;
        }
        let partial = &before[from..];
        let at = start + to32(from);
        let ahead: usize = text[offset as usize..]
            .chars()
            .take_while(|c| part_of_word(*c))
            .map(char::len_utf8)
            .sum();
        let replace = Span::new(at, offset + to32(ahead));
        head.retain(|t| t.span.end <= at);
        Some(Situation {
            frames,
            cx,
            block,
            head,
            partial,
            replace,
            comment,
            quoted,
            after_text,
        })
    }

    /// The statement's keyword; empty at its beginning.
    pub(crate) fn word(&self) -> &'a str {
        self.head
            .first()
            .filter(|t| t.kind == SyntaxKind::Word)
            .map_or("", |t| t.text)
    }

    /// The token before the cursor.
    pub(crate) fn last(&self) -> Option<Tok<'a>> {
        self.head.last().copied()
    }

    /// The word its group begins with: behind the last comma, else the keyword.
    pub(crate) fn group(&self) -> &'a str {
        let comma = self.head.iter().rposition(|t| t.kind == SyntaxKind::Comma);
        let first = comma.and_then(|i| self.head.get(i + 1));
        first
            .filter(|t| t.kind == SyntaxKind::Word)
            .map_or_else(|| self.word(), |t| t.text)
    }

    /// The last word before the cursor and before any number right there.
    pub(crate) fn last_word(&self) -> &'a str {
        self.head
            .iter()
            .rev()
            .find(|t| t.kind == SyntaxKind::Word)
            .map_or("", |t| t.text)
    }

    /// Name of the enclosing station.
    pub(crate) fn in_station(&self) -> bool {
        self.frames.iter().any(|f| f.word == "station")
    }

    /// Kinds of quantity that fit where the cursor is, the likeliest first.
    pub(crate) fn kinds(&self) -> Vec<Dim> {
        let dim_of = |t: &Tok<'_>| UnitId::parse(t.text).map(|u| unit(u).dim);
        let stated = || {
            self.head
                .iter()
                .rev()
                .filter(|t| t.kind == SyntaxKind::Unit)
                .find_map(dim_of)
        };
        let mut back = self
            .head
            .iter()
            .rev()
            .skip_while(|t| matches!(t.kind, SyntaxKind::Number));
        match back.next() {
            Some(t) if t.kind == SyntaxKind::PlusMinus => {
                return match stated() {
                    Some(Dim::Power | Dim::Level) => vec![Dim::Percent, Dim::Decibel, Dim::Power],
                    Some(Dim::GainIsotropic | Dim::GainDipole | Dim::SidebandNoise) => {
                        vec![Dim::Decibel]
                    }
                    Some(d) => vec![d, Dim::Percent],
                    None => vec![Dim::Percent],
                };
            }
            Some(t) if t.text == "to" => {
                if self.word() == "accuracy" {
                    return vec![Dim::Frequency];
                }
                return stated().into_iter().collect();
            }
            Some(t) if matches!(t.kind, SyntaxKind::Plus | SyntaxKind::Minus) => {
                if self.word() == "loss" && self.cx == Context::Cable {
                    return vec![Dim::LinearCoefficient];
                }
                return stated().into_iter().collect();
            }
            _ => {}
        }
        self.expected()
    }

    /// Kinds of the values that may stand where the cursor is, a number that is being typed left
    /// aside.
    fn expected(&self) -> Vec<Dim> {
        let typed = usize::from(
            self.head
                .last()
                .is_some_and(|t| t.kind == SyntaxKind::Number),
        );
        // the criterion of a sensitivity is free text, `for 12 dB sinad`
        if self.last_word() == "for" {
            return vec![Dim::Decibel];
        }
        let mut out: Vec<Dim> = Vec::new();
        // the first value of a row, before which nothing stands
        if typed == self.head.len()
            && let Some(form) = self.form()
        {
            for s in form.all_slots() {
                if let Begins::Value(q) = s.begins {
                    out.extend(q.dims);
                }
            }
        }
        for o in self.offers(self.head.len() - typed, None) {
            if let Offer::Value(q) = o {
                out.extend(q.dims);
            }
        }
        let mut seen = Vec::new();
        out.retain(|d| {
            *d != Dim::Count && !seen.contains(d) && {
                seen.push(*d);
                true
            }
        });
        out
    }

    /// The form of the statement.
    pub(crate) fn form(&self) -> Option<&'static Form> {
        let first = self.head.first()?;
        self.block
            .form((first.kind == SyntaxKind::Word).then_some(first.text))
    }

    /// What may stand after the first `n` tokens of the statement. `env` knows named values and
    /// places.
    pub(crate) fn offers(&self, n: usize, known: Option<Known<'_>>) -> Vec<Offer> {
        self.read(n, known, offers).unwrap_or_default()
    }

    /// Reads the first `n` tokens of the statement; says too whether a comma ends them.
    pub(crate) fn read<T>(
        &self,
        n: usize,
        known: Option<Known<'_>>,
        f: impl FnOnce(&'static Form, Stmt<'_>, bool, Known<'_>) -> T,
    ) -> Option<T> {
        let form = self.form()?;
        let mut head = self.head.get(..n)?;
        let comma = head.last().is_some_and(|t| t.kind == SyntaxKind::Comma);
        if comma {
            head = &head[..n - 1];
        }
        let from = head.first().map_or(self.replace.start, |t| t.span.start);
        let mut text = String::new();
        for t in head {
            // blanks as they are: `2m` is a name
            let at = (t.span.start - from) as usize;
            while text.len() < at {
                text.push(' ');
            }
            text.push_str(t.text);
        }
        // a row stands in a block
        let row = form.word.is_empty() && self.cx == Context::Table;
        if row {
            text = format!("row {{ {text}");
        }
        let tree = File::parse(text);
        let lets = Lets::default();
        let known = known.unwrap_or(Known {
            lets: &lets,
            places: &[],
        });
        let outer = tree.items().first()?.item.statement()?;
        let stmt = if row {
            outer.block()?.iter().next()?
        } else {
            outer
        };
        Some(f(form, stmt, comma, known))
    }
}
