//! Semantic tokens: what each word is, by the names the editors' themes know.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_syntax::SyntaxKind;

use crate::names::{Class, NameKind};
use crate::resolve::pieces_of;
use crate::view::{Doc, env_of, tree};

/// A coloured range on one line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Token {
    /// Where.
    pub span: Span,
    /// What.
    pub kind: TokenKind,
    /// Bits by index in [`TOKEN_MODIFIERS`].
    pub modifiers: u32,
}

/// What a token is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "named after what they colour")]
pub enum TokenKind {
    Keyword,
    Qualifier,
    Number,
    Unit,
    Text,
    Comment,
    Operator,
    Station,
    Chain,
    Part,
    Port,
    Band,
    Let,
    Catalogue,
    Instrument,
    Place,
    Person,
}

/// Modifiers, by bit.
pub const TOKEN_MODIFIERS: &[&str] = &["declaration", "defaultLibrary"];

impl TokenKind {
    /// All kinds, by index.
    pub const ALL: &'static [TokenKind] = &[
        TokenKind::Keyword,
        TokenKind::Qualifier,
        TokenKind::Number,
        TokenKind::Unit,
        TokenKind::Text,
        TokenKind::Comment,
        TokenKind::Operator,
        TokenKind::Station,
        TokenKind::Chain,
        TokenKind::Part,
        TokenKind::Port,
        TokenKind::Band,
        TokenKind::Let,
        TokenKind::Catalogue,
        TokenKind::Instrument,
        TokenKind::Place,
        TokenKind::Person,
    ];

    /// The standard name that themes know.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            TokenKind::Keyword => "keyword",
            TokenKind::Qualifier => "modifier",
            TokenKind::Number => "number",
            TokenKind::Unit => "type",
            TokenKind::Text => "string",
            TokenKind::Comment => "comment",
            TokenKind::Operator => "operator",
            TokenKind::Station => "namespace",
            TokenKind::Chain => "function",
            TokenKind::Part => "variable",
            TokenKind::Port => "property",
            TokenKind::Band => "enumMember",
            TokenKind::Let => "macro",
            TokenKind::Catalogue => "class",
            TokenKind::Instrument => "struct",
            TokenKind::Place => "parameter",
            TokenKind::Person => "decorator",
        }
    }

    /// Index in [`TokenKind::ALL`].
    #[must_use]
    pub fn index(self) -> u32 {
        self as u32
    }
}

const DECLARATION: u32 = 1;
const LIBRARY: u32 = 2;

/// The tokens of a document, or of those items of it that a range touches.
#[must_use]
pub fn semantic_tokens(s: &Snapshot, doc: Doc, range: Option<Span>) -> Vec<Token> {
    let Some(t) = tree(s, doc) else {
        return Vec::new();
    };
    let env = env_of(s, doc);
    let mut out = Vec::new();
    for p in t.items() {
        if range.is_some_and(|r| p.span().end < r.start || p.start > r.end) {
            continue;
        }
        let item = &p.item;
        let pieces = pieces_of(s, doc, item);
        let mut next = 0;
        for (kind, span) in downlead_syntax::tokens(item.text()) {
            while pieces.get(next).is_some_and(|x| x.span.end <= span.start) {
                next += 1;
            }
            // a name covers the tokens in it: `2m` is a band, `DU1.high` a part and a port
            let here = pieces.get(next).filter(|x| x.span.start < span.end);
            if let Some(first) = here {
                let mut i = next;
                let _ = first;
                while let Some(x) = pieces.get(i).filter(|x| x.span.start < span.end) {
                    if x.span.start >= span.start {
                        let text = item.slice(x.span);
                        let (kind, modifiers) = match x.class {
                            Class::Keyword(_) | Class::Leg => (TokenKind::Keyword, 0),
                            Class::Word(_) => (TokenKind::Qualifier, 0),
                            Class::Path => (TokenKind::Text, 0),
                            Class::Name(k, def) => {
                                let library = match k {
                                    NameKind::Cable => {
                                        env.is_none_or(|e| !e.cables.contains_key(text))
                                    }
                                    NameKind::Connector => {
                                        env.is_none_or(|e| !e.connectors.contains_key(text))
                                    }
                                    NameKind::Device => {
                                        env.is_none_or(|e| !e.devices.contains_key(text))
                                    }
                                    _ => false,
                                };
                                (
                                    name_kind(k),
                                    u32::from(def) * DECLARATION
                                        + u32::from(library && !def) * LIBRARY,
                                )
                            }
                        };
                        out.push(Token {
                            span: x.span.shift(p.start),
                            kind,
                            modifiers,
                        });
                    }
                    i += 1;
                }
                continue;
            }
            let kind = match kind {
                SyntaxKind::Number | SyntaxKind::Date | SyntaxKind::Dms => TokenKind::Number,
                SyntaxKind::Unit | SyntaxKind::Root => TokenKind::Unit,
                SyntaxKind::Text | SyntaxKind::OpenText => TokenKind::Text,
                SyntaxKind::Comment => TokenKind::Comment,
                SyntaxKind::Equals
                | SyntaxKind::Plus
                | SyntaxKind::Minus
                | SyntaxKind::Star
                | SyntaxKind::Slash
                | SyntaxKind::PlusMinus => TokenKind::Operator,
                SyntaxKind::Word if matches!(item.slice(span), "to" | "k" | "per") => {
                    TokenKind::Qualifier
                }
                _ => continue,
            };
            out.push(Token {
                span: span.shift(p.start),
                kind,
                modifiers: 0,
            });
        }
    }
    if let Some(r) = range {
        out.retain(|t| t.span.end >= r.start && t.span.start <= r.end);
    }
    out
}

fn name_kind(k: NameKind) -> TokenKind {
    match k {
        NameKind::Band => TokenKind::Band,
        NameKind::Let => TokenKind::Let,
        NameKind::Cable
        | NameKind::Connector
        | NameKind::Device
        | NameKind::Family
        | NameKind::Rules
        | NameKind::Shared => TokenKind::Catalogue,
        NameKind::Instrument => TokenKind::Instrument,
        NameKind::Station | NameKind::Session | NameKind::Link | NameKind::Variant => {
            TokenKind::Station
        }
        NameKind::Chain | NameKind::Branch => TokenKind::Chain,
        NameKind::Tag => TokenKind::Part,
        NameKind::Port => TokenKind::Port,
        NameKind::Place | NameKind::Spot => TokenKind::Place,
        // words of one's own, which nothing defines elsewhere
        NameKind::Person | NameKind::Class | NameKind::Question | NameKind::Finding => {
            TokenKind::Person
        }
    }
}
