//! Signature help: how the statement at the cursor is written, and what may stand at each place.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::keywords::keyword;
use downlead_syntax::SyntaxKind;

use crate::situation::Situation;
use crate::view::{Doc, to32};

/// How a statement is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SignatureHelp {
    /// The ways to write it.
    pub signatures: Vec<Signature>,
    /// The one the text follows.
    pub active: usize,
}

/// One way to write a statement.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Signature {
    /// The form.
    pub label: String,
    /// What it says.
    pub documentation: String,
    /// Places to fill in.
    pub parameters: Vec<Parameter>,
    /// The one at the cursor.
    pub active: Option<usize>,
}

/// A place to fill in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Parameter {
    /// Bytes in the form.
    pub label: Span,
    /// What may stand there: units, ranges.
    pub documentation: String,
}

/// The form of the statement at an offset.
#[must_use]
pub fn signature_help(s: &Snapshot, doc: Doc, offset: u32) -> Option<SignatureHelp> {
    let at = Situation::at(s, doc, offset)?;
    if at.comment {
        return None;
    }
    let k = keyword(at.word()).filter(|k| {
        k.contexts.contains(&at.cx) || at.cx == downlead_station::keywords::Context::Chain
    })?;
    // what stands before the cursor: a value is one thing, a word another
    let mut typed: Vec<(Piece, &str)> = Vec::new();
    for t in at.head.iter().skip(1) {
        let piece = match t.kind {
            SyntaxKind::Number | SyntaxKind::Date | SyntaxKind::Dms => Piece::Value,
            SyntaxKind::Word => Piece::Word,
            SyntaxKind::Text => Piece::Text,
            _ => continue,
        };
        typed.push((piece, t.text));
    }
    // ` | ` parts whole forms where the next one begins with the keyword again
    let mut forms: Vec<String> = Vec::new();
    for piece in k.signature.split(" | ") {
        match forms.last_mut() {
            Some(last) if !piece.starts_with(k.word) => last.push_str(&format!(" | {piece}")),
            _ => forms.push(piece.to_owned()),
        }
    }
    // on the bench it says what holds for all readings; in a chain it is one
    if k.word == "read" {
        let session = at.cx == downlead_station::keywords::Context::Session;
        forms.retain(|f| f.contains("POWER") != session);
    }
    let signatures: Vec<Signature> = forms
        .into_iter()
        .map(|form| {
            let elements = elements(&form);
            let (active, parameters) = (active(&elements, &typed), parameters(&elements));
            Signature {
                documentation: k.doc.to_owned(),
                active,
                parameters,
                label: form,
            }
        })
        .collect();
    let best = signatures
        .iter()
        .enumerate()
        .max_by_key(|(i, x)| {
            (
                typed
                    .iter()
                    .filter(|(p, t)| {
                        *p == Piece::Word && x.label.split([' ', ',']).any(|w| w == *t)
                    })
                    .count(),
                x.active.is_some(),
                std::cmp::Reverse(*i),
            )
        })
        .map_or(0, |(i, _)| i);
    Some(SignatureHelp {
        signatures,
        active: best,
    })
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Piece {
    Value,
    Word,
    Text,
}

/// A word of a form, with its place; a place to fill in is in capitals.
struct Element<'a> {
    text: &'a str,
    span: Span,
    hole: bool,
}

fn elements(form: &str) -> Vec<Element<'_>> {
    let mut out = Vec::new();
    let mut from = None;
    for (i, c) in form.char_indices().chain([(form.len(), ' ')]) {
        let inside = c.is_alphanumeric() || matches!(c, '-' | '_' | '.');
        match (inside, from) {
            (true, None) => from = Some(i),
            (false, Some(start)) => {
                let text = &form[start..i];
                let hole = text.len() > 1
                    && text.chars().all(|c| c.is_uppercase() || c.is_ascii_digit())
                    && text.chars().any(char::is_uppercase)
                    || matches!(text, "F" | "T" | "D" | "E" | "S" | "R" | "X" | "I");
                out.push(Element {
                    text,
                    span: Span::new(to32(start), to32(i)),
                    hole,
                });
                from = None;
            }
            _ => {}
        }
    }
    out
}

fn parameters(elements: &[Element<'_>]) -> Vec<Parameter> {
    elements
        .iter()
        .filter(|e| e.hole)
        .map(|e| Parameter {
            label: e.span,
            documentation: about(e.text).to_owned(),
        })
        .collect()
}

/// The place to fill in that the cursor is at.
fn active(elements: &[Element<'_>], typed: &[(Piece, &str)]) -> Option<usize> {
    let mut at = 1;
    for (piece, text) in typed {
        if *piece == Piece::Word
            && let Some(i) = elements
                .iter()
                .enumerate()
                .skip(at)
                .find(|(_, e)| !e.hole && e.text == *text)
                .map(|(i, _)| i)
        {
            at = i + 1;
            continue;
        }
        let fits = |e: &Element<'_>| match piece {
            Piece::Value => !is_name(e.text),
            Piece::Word => is_name(e.text),
            Piece::Text => false,
        };
        if let Some(i) = elements
            .iter()
            .enumerate()
            .skip(at)
            .find(|(_, e)| e.hole && fits(e))
            .map(|(i, _)| i)
        {
            at = i + 1;
        }
    }
    let next = elements
        .iter()
        .enumerate()
        .skip(at)
        .find(|(_, e)| e.hole)
        .map(|(i, _)| i)?;
    Some(elements[..next].iter().filter(|e| e.hole).count())
}

fn is_name(hole: &str) -> bool {
    matches!(
        hole,
        "NAME"
            | "TAG"
            | "BAND"
            | "CABLE"
            | "CONNECTOR"
            | "FAMILY"
            | "PLACE"
            | "MODE"
            | "KIND"
            | "INSTRUMENT"
            | "WHO"
            | "DATUM"
            | "CRITERION"
            | "PATH"
    )
}

/// What may stand at a place.
fn about(hole: &str) -> &'static str {
    match hole {
        "LENGTH" => {
            "m, mm, cm, km, ft, in, yd, mi, or electrical: wavelengths, °; not negative; `± 0.5 m`"
        }
        "CABLE" => "a cable of the files or the library",
        "CONNECTOR" => "a connector of the files or the library",
        "LOSS" => "dB, never negative; also %; `± 0.15 dB`, `0.10 dB to 0.20 dB`",
        "POWER" => "W, mW, uW, kW, or dBm, dBW; above zero; `± 5 %`",
        "GAIN" => "of an antenna dBi or dBd, of an amplifier dB",
        "FREQUENCY" | "F" => "MHz, kHz, GHz, Hz; above zero",
        "LOW" => "lower edge: MHz, kHz, GHz, Hz",
        "HIGH" => "upper edge: MHz, kHz, GHz, Hz; above the lower",
        "LEVEL" => "dBm, or uV across 50 ohm",
        "NF" => "dB, not negative",
        "T" => "°C or °F; an interval counts as doubt",
        "T1" | "T2" => "°C or °F",
        "D" | "S" => "m, mm, cm, in; above zero",
        "E" => "relative permittivity, 1 or more, no unit",
        "R" | "X" => "ohm; a reactance may be negative",
        "I" => "dB",
        "RATE" => "dB/100 m, dB/m, dB/km, dB/100 ft, dB/ft",
        "K1" => "dB/100 m/sqrt(MHz) or dB/100 ft/sqrt(MHz)",
        "K2" => "dB/100 m/MHz or dB/100 ft/MHz",
        "SWR" => "1 or more, no unit",
        "COUNT" => "a whole number up to 1000",
        "TAG" => "a name given once in the station",
        "NAME" => "a name: letters, digits, - and _",
        "BAND" => "a band, or a frequency",
        "FAMILY" => "a connector family",
        "PLACE" => "a place of the station",
        "MODE" => "fm, data, cw, ssb, ssb-processed, am",
        "KIND" => "a kind of part",
        "DATE" => "2026-07-04 or 2026-07",
        "INSTRUMENT" => "an instrument of the files",
        "WHO" => "who read it",
        "DATUM" => "wgs84, etrs89, nad83, nad27",
        "LATITUDE" => "0° to 90° with N or S",
        "LONGITUDE" => "0° to 180° with E or W",
        "CRITERION" => "12 dB sinad",
        "VALUE" => "a number with its unit, or arithmetic",
        "PATH" => "relative to this file, below the root",
        _ => "a value",
    }
}
