//! What stands around a cursor, from the tokens alone: works on lines that cannot be read yet.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_quantity::{Dim, UnitId, unit};
use downlead_station::keywords::{Context, keyword};
use downlead_station::model::PartKind;
use downlead_syntax::{SyntaxKind, tokens};

use crate::names::inner_context;
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
}

/// What stands around a cursor.
pub(crate) struct Situation<'a> {
    /// Open blocks, outermost first.
    pub(crate) frames: Vec<Frame>,
    /// Context of the statement the cursor is in.
    pub(crate) cx: Context,
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
                    let inner = inner_context(&word, cx).unwrap_or(Context::Table);
                    frames.push(Frame { word, cx });
                    cx = inner;
                    head.clear();
                }
                SyntaxKind::RBrace => {
                    if let Some(f) = frames.pop() {
                        cx = f.cx;
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
                    Some(Dim::GainIsotropic | Dim::GainDipole) => vec![Dim::Decibel],
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
        kinds_after(
            self.cx,
            self.word(),
            self.last_word(),
            self.head
                .iter()
                .filter(|t| t.kind == SyntaxKind::Unit)
                .count(),
            self.frames.last().map_or("", |f| &f.word),
        )
    }
}

/// Kinds of quantity behind the last word of a statement; `have` values with units stand before.
fn kinds_after(cx: Context, word: &str, last: &str, have: usize, block: &str) -> Vec<Dim> {
    use Dim::{
        Angle, Decibel, Frequency, GainDipole, GainIsotropic, Impedance, Length, Level,
        LinearCoefficient, LossRate, Percent, Power, Resistivity, RootCoefficient, Temperature,
        Voltage, Wavelengths,
    };
    if cx == Context::Table || word.is_empty() && keyword(last).is_none() {
        return if have == 0 {
            vec![Frequency]
        } else if block == "loss" && cx == Context::Table {
            vec![LossRate, Decibel]
        } else {
            vec![Decibel]
        };
    }
    match last {
        "at" if cx == Context::Readings => vec![Dim::Time],
        "at" => vec![Temperature, Frequency],
        // `loss from "reel.s2p" of 25.0 m`
        "of" if word == "loss" => vec![Length],
        "accuracy" if word != "accuracy" => vec![Decibel],
        "ambient" | "temperature" => vec![Temperature],
        "conductor" if word == "rating" => vec![Temperature],
        "on" if matches!(word, "chain" | "readings") => vec![Frequency],
        "over" => vec![Frequency],
        "added" | "wet" | "for" | "isolation" | "rejects" | "return-loss" | "excess" | "figure"
        | "coupled" => {
            vec![Decibel]
        }
        "split" => vec![Percent, Decibel],
        "passes" | "valid" => vec![Frequency],
        "duty" | "keyed" | "efficiency" => vec![Percent],
        "rating" | "scale" | "resolution" | "power" => vec![Power, Level],
        "height" | "ground" => vec![Length],
        "reactance" => vec![Impedance],
        "directivity" => vec![GainIsotropic, GainDipole],
        "swr" | "k" | "foldback" | "ratio" => Vec::new(),
        _ => match (cx, word) {
            (_, "band" | "transmit" | "receive") => vec![Frequency],
            (Context::Connector, "limit") => vec![Frequency],
            (Context::Connector, "bump") => vec![if have == 0 { Impedance } else { Length }],
            (Context::Cable, "loss") => vec![RootCoefficient, LinearCoefficient, LossRate],
            (_, "expect") if last == "loss" => vec![Decibel],
            (_, "read" | "expect" | "limit") => vec![Power, Level],
            (_, "run" | "jumper" | "tail") => vec![Length, Wavelengths, Angle, Decibel],
            (_, "piece") => vec![Length, Decibel],
            (_, "linearity" | "repeatability") => vec![Percent, Decibel],
            (_, "resonance") => vec![Frequency],
            (_, "delay") => vec![Dim::Time],
            (_, "phase") => vec![Angle],
            (_, "baseline" | "through" | "equalise") => vec![Power, Level, Decibel, Percent],
            (_, "open" | "short") => vec![Decibel],
            (_, "transmitter") => vec![Power, Level],
            (_, "receiver" | "sensitivity") => vec![Level, Voltage],
            (_, "antenna") => vec![GainIsotropic, GainDipole],
            (Context::Antenna, "gain") => vec![GainIsotropic, GainDipole],
            (_, "gain" | "loss" | "high" | "low" | "port") => vec![Decibel, Percent],
            (_, "impedance") => vec![Impedance],
            (_, "voltage") => vec![Voltage],
            (_, "size" | "inner" | "outer" | "diameter" | "spacing") => vec![Length],
            (_, "resistivity" | "inner-resistivity" | "outer-resistivity") => vec![Resistivity],
            (_, "accuracy") => vec![Percent, Decibel],
            (_, "position") => vec![Angle],
            (_, "let") => vec![Length, Decibel, Power, Frequency],
            (
                _,
                "connector" | "adapter" | "divider" | "velocity" | "permittivity" | "loss-tangent"
                | "strand" | "strand-diameter" | "braid" | "ways",
            ) => Vec::new(),
            (_, w) if PartKind::from_word(w).is_some() => vec![Decibel, Percent],
            _ => Vec::new(),
        },
    }
}
