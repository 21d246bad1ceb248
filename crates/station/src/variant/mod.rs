//! The text of a station with the changes of a variant.
//!
//! A variant is the station as written by hand: its lines are put into the
//! station's own text, which is then read and computed as any text. So a variant gives to the last
//! bit what the edited copy gives, and the rest of a part stays as it is.

mod figures;
mod merge;
mod part;
mod steps;

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_syntax::{Block, Item, Stmt};

use crate::cx::{Lets, nearest};
use crate::model::{Change, PartKind, Passed, Variant};
use merge::Parts;

/// A station's text with the changes of a variant.
#[derive(Clone, Debug)]
pub struct Applied {
    /// The text of the station's item.
    pub text: String,
    /// What in it comes from which line of the variant.
    pub pieces: Vec<Piece>,
    /// What is wrong with the variant.
    pub diagnostics: Vec<Diagnostic>,
}

/// A piece of the changed text, and the line of the variant it is from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Piece {
    /// In the changed text.
    pub at: Span,
    /// The line of the variant.
    pub from: Loc,
}

/// What the changes are made to, and with what.
struct Cx<'a> {
    variant: &'a Item,
    base: &'a Item,
    block: Block<'a>,
    lets: &'a Lets,
    places: Vec<&'a str>,
    edits: Vec<Edit>,
    diagnostics: Vec<Diagnostic>,
}

/// One replacement in the station's text.
struct Edit {
    at: Span,
    text: String,
    from: Option<Loc>,
}

impl<'a> Cx<'a> {
    fn edit(&mut self, at: Span, text: impl Into<String>, from: Loc) {
        self.edits.push(Edit {
            at,
            text: text.into(),
            from: Some(from),
        });
    }

    fn say(&mut self, d: Diagnostic) {
        self.diagnostics.push(d);
    }

    fn base_text(&self) -> &'a str {
        self.base.text()
    }

    /// Removes a statement with its block; the lines of the text stay where they are.
    fn remove(&mut self, s: Stmt<'a>, from: Option<Loc>) {
        let text = self.base_text();
        let (mut start, mut end) = (s.span().start as usize, s.span().end as usize);
        let after = text[end..].trim_start_matches([' ', '\t']);
        let before = text[..start].trim_end_matches([' ', '\t']);
        if after.starts_with(';') {
            end = text.len() - after.len() + 1;
        } else if before.ends_with(';') {
            start = before.len() - 1;
        }
        let lines = text[start..end].matches('\n').count();
        self.edits.push(Edit {
            at: span(start, end),
            text: "\n".repeat(lines),
            from,
        });
    }

    /// The part with a tag: of the station, else of one of its chains.
    fn part(&self, tag: &str) -> Option<(Stmt<'a>, PartKind)> {
        let mut found = None;
        steps::each(self.block, &mut |s, in_chain| {
            let kind = s.keyword().and_then(PartKind::from_word);
            let named = s.atoms().get(1).is_some_and(|a| s.text(*a) == tag);
            if let Some(k) = kind.filter(|_| named)
                && (found.is_none() || !in_chain)
            {
                found = Some((s, k));
            }
        });
        found
    }

    fn unknown(&mut self, what: &str, name: &str, loc: Loc, known: &[&str]) {
        let mut d = Diagnostic::new(
            &codes::UNKNOWN_PART,
            loc,
            format!("The station has no {what} `{name}`."),
        )
        .at("not in the station");
        d = match nearest(name, known.iter().copied()) {
            Some(n) => d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), loc, n),
            None => d.help(format!("It has {}.", known.join(", "))),
        };
        self.say(d);
    }

    fn unknown_part(&mut self, p: &Passed) {
        let mut tags = Vec::new();
        steps::each(self.block, &mut |s, _| {
            let tagged = s.keyword().and_then(PartKind::from_word).is_some();
            if let Some(a) = s.atoms().get(1).filter(|_| tagged)
                && a.kind == downlead_syntax::AtomKind::Word
                && s.text(*a) != "of"
            {
                tags.push(s.text(*a));
            }
        });
        let at = Loc::new(
            p.loc.item,
            span(
                p.loc.span.start as usize,
                p.loc.span.start as usize + p.tag.len(),
            ),
        );
        self.unknown("part", &p.tag, at, &tags);
    }
}

fn span(start: usize, end: usize) -> Span {
    let at = |x: usize| u32::try_from(x).unwrap_or(u32::MAX);
    Span::new(at(start), at(end))
}

/// Applies a variant to the item of its station.
#[must_use]
pub fn apply(variant: &Item, v: &Variant, base: &Item, lets: &Lets) -> Applied {
    let mut out = Applied {
        text: base.text().to_owned(),
        pieces: Vec::new(),
        diagnostics: Vec::new(),
    };
    let Some(block) = base.statement().and_then(Stmt::block) else {
        return out;
    };
    let places = block
        .iter()
        .filter(|s| s.keyword() == Some("place"))
        .filter_map(|s| s.atoms().get(1).map(|a| s.text(*a)))
        .collect();
    let mut cx = Cx {
        variant,
        base,
        block,
        lets,
        places,
        edits: Vec::new(),
        diagnostics: Vec::new(),
    };
    let had = steps::without_readings(&mut cx);
    let mut parts = Parts::default();
    for c in &v.changes {
        change(&mut cx, c, v, &mut parts);
    }
    parts.finish(&mut cx);
    let changed = cx.edits.len() > had;
    let (text, pieces) = put_together(base.text(), std::mem::take(&mut cx.edits));
    if !changed && cx.diagnostics.is_empty() || changed && same_words(&text, &cx) {
        cx.say(
            Diagnostic::new(
                &codes::VARIANT_CHANGES_NOTHING,
                v.name.loc,
                format!("`{}` changes nothing of `{}`.", v.name.text, v.of.text),
            )
            .at("the same as the station")
            .help("Write the tag of a part with its new figures, `take TAG`, or `put TAG after PART in CHAIN`."),
        );
    }
    out.text = text;
    out.pieces = pieces;
    out.diagnostics = cx.diagnostics;
    out
}

/// Whether the text says, word by word, what the station says without its readings.
fn same_words(text: &str, cx: &Cx<'_>) -> bool {
    let mut plain = Cx {
        variant: cx.variant,
        base: cx.base,
        block: cx.block,
        lets: cx.lets,
        places: Vec::new(),
        edits: Vec::new(),
        diagnostics: Vec::new(),
    };
    steps::without_readings(&mut plain);
    let (was, _) = put_together(cx.base.text(), plain.edits);
    was.split_whitespace().eq(text.split_whitespace())
}

fn change<'a>(cx: &mut Cx<'a>, c: &Change, v: &Variant, parts: &mut Parts<'a>) {
    let line = cx
        .variant
        .statement()
        .and_then(Stmt::block)
        .and_then(|b| b.iter().find(|s| s.head_span() == c.loc().span));
    let Some(line) = line else { return };
    match c {
        Change::Figures { part, loc } => {
            let taken = v
                .changes
                .iter()
                .find(|o| matches!(o, Change::Take { tag, .. } if tag.text == part.tag));
            if let Some(t) = taken {
                return cx.say(twice(
                    *loc,
                    t.loc(),
                    format!("`{}` is taken out, and gets new figures here.", part.tag),
                ));
            }
            match cx.part(&part.tag) {
                Some((s, kind)) => part::change(cx, parts, (s, kind), (line, part, *loc)),
                None => cx.unknown_part(part),
            }
        }
        Change::Take { tag, loc } => {
            let first = v
                .changes
                .iter()
                .find(|o| matches!(o, Change::Take { tag: t, .. } if t.text == tag.text));
            if let Some(f) = first.filter(|f| f.loc() != *loc) {
                return cx.say(twice(
                    *loc,
                    f.loc(),
                    format!("`{}` is taken out twice.", tag.text),
                ));
            }
            steps::take(cx, tag, *loc);
        }
        Change::Put {
            part,
            after,
            chains,
            loc,
        } => {
            let new = v
                .changes
                .iter()
                .any(|o| matches!(o, Change::New { tag, .. } if tag.text == part.tag));
            if !new && cx.part(&part.tag).is_none() {
                return cx.unknown_part(part);
            }
            for chain in chains {
                steps::put(cx, part, after, chain, *loc);
            }
        }
        Change::New { loc, .. } => {
            let text = line.slice(line.span()).to_owned();
            let end = cx.block.span().end as usize - usize::from(cx.block.is_closed());
            let before = cx.base_text()[..end].trim_end_matches([' ', '\t']);
            // a line at the left margin would begin something new
            let (lead, end_of_line) = match before.ends_with('\n') {
                true => ("    ", "\n"),
                false if before.ends_with(['{', ';']) => (" ", " "),
                false => ("; ", " "),
            };
            cx.edit(span(end, end), format!("{lead}{text}{end_of_line}"), *loc);
        }
    }
}

fn twice(at: Loc, first: Loc, message: String) -> Diagnostic {
    Diagnostic::new(&codes::VARIANT_TWICE, at, message)
        .at("again here")
        .also(first, "first here")
        .help("Remove one of the two lines.")
}

/// The text with the edits, and where they are in it.
fn put_together(text: &str, mut edits: Vec<Edit>) -> (String, Vec<Piece>) {
    edits.sort_by_key(|e| (e.at.start, e.at.end));
    let (mut out, mut pieces, mut at) = (String::new(), Vec::new(), 0);
    for e in edits {
        let start = e.at.start as usize;
        // what was replaced already stays so
        if start < at {
            continue;
        }
        out.push_str(&text[at..start]);
        let from = out.len();
        out.push_str(&e.text);
        if let Some(loc) = e.from {
            pieces.push(Piece {
                at: span(from, out.len()),
                from: loc,
            });
        }
        at = e.at.end as usize;
    }
    out.push_str(&text[at..]);
    (out, pieces)
}
