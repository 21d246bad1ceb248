//! The kinds of tokens.

/// Kind of a token. Every byte of a file belongs to exactly one token.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[repr(u8)]
pub enum SyntaxKind {
    /// Spaces and tabs (and a byte order mark at the start of the file).
    Blank,
    /// `\n` or `\r\n`.
    Newline,
    /// `//` to the end of the line.
    Comment,
    /// A name or keyword: `run`, `M1`, `DU1.high`, `7-16-pair`.
    Word,
    /// Digits with fraction and exponent, and the sign where it belongs to the number.
    Number,
    /// A unit after a number: `m`, `dB/100 m`, `°C`.
    Unit,
    /// `2026-07-04` or `2026-07`.
    Date,
    /// `49°20′00″`.
    Dms,
    /// `"…"`.
    Text,
    /// `"…` without its end on the line.
    OpenText,
    /// `{`
    LBrace,
    /// `}`
    RBrace,
    /// `(`
    LParen,
    /// `)`
    RParen,
    /// `,`
    Comma,
    /// `;`
    Semicolon,
    /// `=`
    Equals,
    /// `+` between values.
    Plus,
    /// `-` between values (or `−`, `–`).
    Minus,
    /// `*`
    Star,
    /// `/`
    Slash,
    /// `^`, in the law of a rule.
    Caret,
    /// `±` or `+/-`.
    PlusMinus,
    /// `sqrt(GHz)` or `√GHz`, as written after `per`.
    Root,
    /// A character, or a run of them, that the language does not use.
    Invalid,
}

impl SyntaxKind {
    /// True if the parser ignores the token.
    #[must_use]
    pub fn is_trivia(self) -> bool {
        matches!(
            self,
            SyntaxKind::Blank | SyntaxKind::Newline | SyntaxKind::Comment
        )
    }
}
