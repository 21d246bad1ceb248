//! The lossless lexer: logos finds the tokens, a thin layer over it decides what depends on the
//! neighbours (a unit only after a number, a sign only where no subtraction can be meant).

mod number;
mod units;

use downlead_base::Span;
use downlead_quantity::UnitId;
use logos::Logos;

use crate::SyntaxKind;

/// What logos alone can tell.
#[derive(Logos, Clone, Copy, Debug, PartialEq)]
enum Raw {
    #[regex(r"[ \t]+")]
    Blank,
    #[regex(r"\r?\n")]
    Newline,
    #[regex(r"//[^\n]*", allow_greedy = true)]
    Comment,
    #[regex(r"[A-Za-z_][A-Za-z0-9_]*(-[A-Za-z0-9_]+)*(\.[A-Za-z0-9_]+(-[A-Za-z0-9_]+)*)*")]
    Word,
    #[regex(r"[0-9][A-Za-z0-9_]*(\.[A-Za-z0-9_]+)*(-[A-Za-z0-9_]+(\.[A-Za-z0-9_]+)*)*")]
    Digits,
    #[regex(r"[0-9]+°[ ]?[0-9]+(\.[0-9]+)?′([ ]?[0-9]+(\.[0-9]+)?″)?")]
    Dms,
    #[regex(r#""[^"\r\n]*""#)]
    Text,
    #[regex(r#""[^"\r\n]*"#)]
    OpenText,
    #[token("{")]
    LBrace,
    #[token("}")]
    RBrace,
    #[token("(")]
    LParen,
    #[token(")")]
    RParen,
    #[token(",")]
    Comma,
    #[token(";")]
    Semicolon,
    #[token("=")]
    Equals,
    #[token("+")]
    Plus,
    #[token("-")]
    #[token("−")]
    #[token("–")]
    Minus,
    #[token("*")]
    Star,
    #[token("/")]
    Slash,
    #[token("±")]
    #[token("+/-")]
    PlusMinus,
    #[regex(r"sqrt\([A-Za-z]+\)")]
    #[regex(r"√[A-Za-z]+")]
    Root,
    // a unit sign that no number precedes
    #[token("%")]
    #[regex(r"°[A-Za-z]?")]
    #[regex(r"[µμΩ\u{2126}λ][A-Za-z]*")]
    Sign,
}

/// A token; a number and its unit are one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Tok {
    pub(crate) start: u32,
    pub(crate) end: u32,
    /// Number: length of the digits with their sign.
    pub(crate) digits: u16,
    /// Number: length of the unit, which ends the token; 0 for none.
    pub(crate) unit_len: u8,
    /// Number: the unit, [`NO_UNIT`] for none.
    pub(crate) unit: u8,
    pub(crate) kind: SyntaxKind,
    /// See the constants.
    pub(crate) flags: u8,
}

/// [`Tok::unit`] of a number without unit.
pub(crate) const NO_UNIT: u8 = u8::MAX;

impl Tok {
    /// The number may be too large for an `f64`.
    pub(crate) const LONG: u8 = 1;
    /// An operator follows: the token is part of an expression.
    pub(crate) const JOINED: u8 = 2;
    /// The word `to`.
    pub(crate) const TO: u8 = 4;
    /// The word `k`.
    pub(crate) const K: u8 = 8;
    /// The word `per`.
    pub(crate) const PER: u8 = 16;
    /// A bracket nested deeper than the cap.
    pub(crate) const DEEP: u8 = 32;

    fn new(kind: SyntaxKind, start: usize, end: usize) -> Tok {
        Tok {
            start: start as u32,
            end: end as u32,
            digits: 0,
            unit_len: 0,
            unit: NO_UNIT,
            kind,
            flags: 0,
        }
    }

    pub(crate) fn has(self, flag: u8) -> bool {
        self.flags & flag != 0
    }

    pub(crate) fn span(self) -> Span {
        Span {
            start: self.start,
            end: self.end,
        }
    }
}

/// The lexer over one text of at most `u32::MAX` bytes.
pub(crate) struct Lexer<'t> {
    text: &'t str,
    raw: logos::Lexer<'t, Raw>,
    pending: Option<Tok>,
    /// The last token that is no blank.
    before: SyntaxKind,
    /// A blank stands directly before the next token.
    blank: bool,
}

impl<'t> Lexer<'t> {
    pub(crate) fn new(text: &'t str) -> Self {
        Lexer {
            text,
            raw: Raw::lexer(text),
            pending: None,
            before: SyntaxKind::Newline,
            blank: false,
        }
    }

    /// Continues at another place.
    fn jump(&mut self, to: usize) {
        let here = self.raw.span().end;
        if to >= here {
            self.raw.bump(to - here);
        } else {
            self.raw = Raw::lexer(self.text);
            self.raw.bump(to);
        }
    }

    fn token(&mut self) -> Option<Tok> {
        use SyntaxKind as S;
        let raw = self.raw.next()?;
        let span = self.raw.span();
        let (start, end) = (span.start, span.end);
        let tok = |kind| Tok::new(kind, start, end);
        Some(match raw {
            Ok(Raw::Blank) => tok(S::Blank),
            Ok(Raw::Newline) => tok(S::Newline),
            Ok(Raw::Word) => {
                let mut word = tok(S::Word);
                match &self.text.as_bytes()[start..end] {
                    b"to" => word.flags = Tok::TO,
                    b"k" => word.flags = Tok::K,
                    b"per" => word.flags = Tok::PER,
                    _ => {}
                }
                word
            }
            Ok(Raw::Digits) => self.digits(start, start, end),
            Ok(Raw::Comment) => {
                // the carriage return belongs to the line end
                let cut = usize::from(
                    self.text.as_bytes()[..end].ends_with(b"\r") && self.line_ends(end),
                );
                if cut > 0 {
                    self.jump(end - cut);
                }
                Tok::new(S::Comment, start, end - cut)
            }
            Ok(Raw::Text) => tok(S::Text),
            Ok(Raw::OpenText) => tok(S::OpenText),
            Ok(Raw::LBrace) => tok(S::LBrace),
            Ok(Raw::RBrace) => tok(S::RBrace),
            Ok(Raw::LParen) => tok(S::LParen),
            Ok(Raw::RParen) => tok(S::RParen),
            Ok(Raw::Comma) => tok(S::Comma),
            Ok(Raw::Semicolon) => tok(S::Semicolon),
            Ok(Raw::Equals) => tok(S::Equals),
            Ok(Raw::Plus) => self.sign(S::Plus, start, end),
            Ok(Raw::Minus) => self.sign(S::Minus, start, end),
            Ok(Raw::Star) => tok(S::Star),
            Ok(Raw::Slash) => tok(S::Slash),
            Ok(Raw::PlusMinus) => tok(S::PlusMinus),
            Ok(Raw::Root) => tok(S::Root),
            Ok(Raw::Dms) => tok(S::Dms),
            Ok(Raw::Sign) => tok(S::Unit),
            Err(()) => {
                // one whole character at a time, whatever logos made of it
                let len = self.text[start..].chars().next().map_or(1, char::len_utf8);
                self.jump(start + len);
                let mark = start == 0 && self.text.starts_with('\u{FEFF}');
                Tok::new(if mark { S::Blank } else { S::Invalid }, start, start + len)
            }
        })
    }

    fn line_ends(&self, at: usize) -> bool {
        self.text.as_bytes().get(at) == Some(&b'\n')
    }

    /// A `+` or `-` is a sign when a digit follows and no value can end before it.
    fn sign(&mut self, kind: SyntaxKind, start: usize, end: usize) -> Tok {
        use SyntaxKind as S;
        let opens = self.blank
            || matches!(
                self.before,
                S::Newline
                    | S::Semicolon
                    | S::LBrace
                    | S::RBrace
                    | S::LParen
                    | S::Comma
                    | S::Equals
            )
            || matches!(
                self.before,
                S::Plus | S::Minus | S::Star | S::Slash | S::PlusMinus
            );
        if !opens
            || !self
                .text
                .as_bytes()
                .get(end)
                .is_some_and(u8::is_ascii_digit)
        {
            return Tok::new(kind, start, end);
        }
        let next = self.raw.next();
        let span = self.raw.span();
        let tok = match next {
            Some(Ok(Raw::Digits)) => self.digits(start, span.start, span.end),
            _ => Tok::new(S::Dms, span.start, span.end),
        };
        if tok.kind == S::Number {
            return tok;
        }
        self.pending = Some(tok);
        Tok::new(kind, start, end)
    }

    /// Sorts out what begins with a digit: number, number with unit, date or name.
    fn digits(&mut self, sign: usize, start: usize, run_end: usize) -> Tok {
        use number::Run;
        let (kind, end) = match number::classify(self.text, start, run_end) {
            Run::Word => (SyntaxKind::Word, run_end),
            Run::Date => (SyntaxKind::Date, run_end),
            Run::Number { end, long } => {
                let mut tok = Tok::new(SyntaxKind::Number, sign, end);
                if long {
                    tok.flags |= Tok::LONG;
                }
                let Ok(digits) = u16::try_from(end - sign) else {
                    // far too large anyway: the whole token is digits
                    self.jump(end);
                    return tok;
                };
                tok.digits = digits;
                let unit = units::skip_blanks(self.text.as_bytes(), end);
                if let Some((stop, id)) = units::unit_at(self.text, unit)
                    && let Ok(len) = u8::try_from(stop - unit)
                {
                    tok.unit = id.0;
                    tok.unit_len = len;
                    tok.end = stop as u32;
                }
                self.jump(tok.end as usize);
                return tok;
            }
        };
        Tok::new(kind, start, end)
    }
}

impl Iterator for Lexer<'_> {
    type Item = Tok;

    fn next(&mut self) -> Option<Tok> {
        let tok = match self.pending.take() {
            Some(tok) => tok,
            None => self.token()?,
        };
        self.blank = tok.kind == SyntaxKind::Blank;
        if !self.blank {
            self.before = tok.kind;
        }
        Some(tok)
    }
}

/// The tokens of a text, covering every byte in order.
pub fn tokens(text: &str) -> impl Iterator<Item = (SyntaxKind, Span)> + '_ {
    Lexer::new(text).flat_map(|tok| {
        let whole = (tok.kind, tok.span());
        if tok.kind != SyntaxKind::Number || tok.unit == NO_UNIT {
            return [Some(whole), None, None].into_iter().flatten();
        }
        let digits = tok.start + u32::from(tok.digits);
        let unit = tok.end - u32::from(tok.unit_len);
        [
            Some((
                SyntaxKind::Number,
                Span {
                    start: tok.start,
                    end: digits,
                },
            )),
            (digits < unit).then_some((
                SyntaxKind::Blank,
                Span {
                    start: digits,
                    end: unit,
                },
            )),
            Some((
                SyntaxKind::Unit,
                Span {
                    start: unit,
                    end: tok.end,
                },
            )),
        ]
        .into_iter()
        .flatten()
    })
}

/// The unit of a number token.
pub(crate) fn unit_of(unit: u8) -> Option<UnitId> {
    (unit != NO_UNIT).then_some(UnitId(unit))
}
