//! The lossless lexer: logos finds the tokens, a thin layer over it decides what depends on the
//! neighbours (a unit only after a number, a sign only where no subtraction can be meant).

mod number;
mod units;

use downlead_base::Span;
use downlead_quantity::UnitId;
use logos::Logos;

use crate::SyntaxKind;

/// The tokens that logos distinguishes.
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
    #[token("^")]
    Caret,
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
    /// An invalid token that has its diagnostic already.
    pub(crate) const NOTED: u8 = 64;

    #[inline(always)]
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

#[inline(always)]
fn kind_of(raw: Result<Raw, ()>) -> SyntaxKind {
    use SyntaxKind as S;
    match raw {
        Ok(Raw::Blank) => S::Blank,
        Ok(Raw::Newline) => S::Newline,
        Ok(Raw::Word) => S::Word,
        // `token` reads the number first
        Ok(Raw::Digits) => S::Number,
        Ok(Raw::Comment) => S::Comment,
        Ok(Raw::Text) => S::Text,
        Ok(Raw::OpenText) => S::OpenText,
        Ok(Raw::LBrace) => S::LBrace,
        Ok(Raw::RBrace) => S::RBrace,
        Ok(Raw::LParen) => S::LParen,
        Ok(Raw::RParen) => S::RParen,
        Ok(Raw::Comma) => S::Comma,
        Ok(Raw::Semicolon) => S::Semicolon,
        Ok(Raw::Equals) => S::Equals,
        Ok(Raw::Plus) => S::Plus,
        Ok(Raw::Minus) => S::Minus,
        Ok(Raw::Star) => S::Star,
        Ok(Raw::Slash) => S::Slash,
        Ok(Raw::Caret) => S::Caret,
        Ok(Raw::PlusMinus) => S::PlusMinus,
        Ok(Raw::Root) => S::Root,
        Ok(Raw::Dms) => S::Dms,
        Ok(Raw::Sign) => S::Unit,
        Err(()) => S::Invalid,
    }
}

/// The lexer over one text of at most `u32::MAX` bytes.
///
/// The fields that only numbers have are passed through `number`, not in the returned [`Tok`]: a token
/// put together byte by byte in memory and copied as a whole stalls the processor, and that was two
/// thirds of the lexer's time.
pub(crate) struct Lexer<'t> {
    text: &'t str,
    raw: logos::Lexer<'t, Raw>,
    number: Tail,
    /// The token after a sign that turned out to be an operator.
    pending: Option<SyntaxKind>,
    /// The last token that is no blank.
    before: SyntaxKind,
    /// A blank directly precedes the next token.
    blank: bool,
}

/// End of a token that begins with a digit or sign, and its inner lengths.
struct Tail {
    start: u32,
    end: u32,
    digits: u16,
    unit_len: u8,
    unit: u8,
    flags: u8,
}

impl<'t> Lexer<'t> {
    pub(crate) fn new(text: &'t str) -> Self {
        let number = Tail {
            start: 0,
            end: 0,
            digits: 0,
            unit_len: 0,
            unit: NO_UNIT,
            flags: 0,
        };
        Lexer {
            text,
            raw: Raw::lexer(text),
            number,
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

    /// The next token that is no run of spaces and tabs.
    #[inline(always)]
    pub(crate) fn next_solid(&mut self) -> Option<Tok> {
        if self.pending.is_none() {
            let here = self.raw.span().end;
            let end = units::skip_blanks(self.text.as_bytes(), here);
            if end > here {
                self.raw.bump(end - here);
                self.blank = true;
            }
        }
        self.token()
    }

    #[inline(always)]
    fn token(&mut self) -> Option<Tok> {
        use SyntaxKind as S;
        let (kind, start, end) = match self.pending.take() {
            Some(kind) => {
                let tok = self.numeric(kind);
                self.before = kind;
                self.blank = false;
                return Some(tok);
            }
            None => {
                let raw = self.raw.next()?;
                let span = self.raw.span();
                if raw == Ok(Raw::Digits) {
                    let kind = self.digits(span.start, span.start, span.end);
                    self.before = kind;
                    self.blank = false;
                    return Some(self.numeric(kind));
                }
                (kind_of(raw), span.start, span.end)
            }
        };
        let mut tok = Tok::new(kind, start, end);
        match kind {
            S::Word => {
                tok.flags = match &self.text.as_bytes()[start..end] {
                    b"to" => Tok::TO,
                    b"k" => Tok::K,
                    b"per" => Tok::PER,
                    _ => 0,
                };
            }
            S::Plus | S::Minus if self.is_sign(end) => {
                let digits = self.sign(start);
                if digits == S::Number {
                    tok = self.numeric(digits);
                } else {
                    self.pending = Some(digits);
                }
            }
            // the carriage return belongs to the line end
            S::Comment
                if self.text.as_bytes()[..end + usize::from(end < self.text.len())]
                    .ends_with(b"\r\n") =>
            {
                self.jump(end - 1);
                tok.end -= 1;
            }
            S::Invalid => {
                // one whole character at a time, whatever logos made of it
                let len = self.text[start..].chars().next().map_or(1, char::len_utf8);
                self.jump(start + len);
                tok.end = (start + len) as u32;
                if start == 0 && self.text.starts_with('\u{FEFF}') {
                    tok.kind = S::Blank;
                }
            }
            _ => {}
        }
        self.blank = tok.kind == S::Blank;
        if !self.blank {
            self.before = tok.kind;
        }
        Some(tok)
    }

    /// The token described by `number`.
    #[inline(always)]
    fn numeric(&self, kind: SyntaxKind) -> Tok {
        let Tail {
            start,
            end,
            digits,
            unit_len,
            unit,
            flags,
        } = self.number;
        Tok {
            start,
            end,
            digits,
            unit_len,
            unit,
            kind,
            flags,
        }
    }

    /// A `+` or `-` that ends at `end` is a sign when a digit follows and no value can end before it.
    fn is_sign(&self, end: usize) -> bool {
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
                S::Plus | S::Minus | S::Star | S::Slash | S::Caret | S::PlusMinus
            );
        opens
            && self
                .text
                .as_bytes()
                .get(end)
                .is_some_and(u8::is_ascii_digit)
    }

    /// Lexes what follows a sign into `number`; it is a number with the sign, or something without it.
    fn sign(&mut self, start: usize) -> SyntaxKind {
        let next = self.raw.next();
        let span = self.raw.span();
        if next == Some(Ok(Raw::Digits)) {
            return self.digits(start, span.start, span.end);
        }
        self.number = Tail {
            start: span.start as u32,
            end: span.end as u32,
            digits: 0,
            unit_len: 0,
            unit: NO_UNIT,
            flags: 0,
        };
        SyntaxKind::Dms
    }

    /// Sorts out what begins with a digit: number, number with unit, date or name.
    fn digits(&mut self, sign: usize, start: usize, run_end: usize) -> SyntaxKind {
        use number::Run;
        let mut tail = Tail {
            start: start as u32,
            end: run_end as u32,
            digits: 0,
            unit_len: 0,
            unit: NO_UNIT,
            flags: 0,
        };
        let kind = match number::classify(self.text, start, run_end) {
            Run::Word => SyntaxKind::Word,
            Run::Date => SyntaxKind::Date,
            Run::Malformed => SyntaxKind::Invalid,
            Run::Number { end, long } => {
                tail.start = sign as u32;
                tail.end = end as u32;
                if long {
                    tail.flags = Tok::LONG;
                }
                // a longer number is far too large anyway: the whole token is digits then
                if let Ok(digits) = u16::try_from(end - sign) {
                    tail.digits = digits;
                    // a ratio has none
                    let ratio = long && self.text.as_bytes()[start..end].contains(&b':');
                    let unit = units::skip_blanks(self.text.as_bytes(), end);
                    if !ratio
                        && let Some((stop, id)) = units::unit_at(self.text, unit)
                        && let Ok(len) = u8::try_from(stop - unit)
                    {
                        tail.unit = id.0;
                        tail.unit_len = len;
                        tail.end = stop as u32;
                    }
                }
                self.jump(tail.end as usize);
                SyntaxKind::Number
            }
        };
        self.number = tail;
        kind
    }
}

impl Iterator for Lexer<'_> {
    type Item = Tok;

    #[inline]
    fn next(&mut self) -> Option<Tok> {
        self.token()
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
