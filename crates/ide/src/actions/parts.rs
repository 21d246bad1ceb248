//! Moving parts: a part written in a chain to its station, and back.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::model::PartKind;
use downlead_syntax::{Block, Item, Placed, Stmt};

use crate::names::{Class, NameKind, Piece};
use crate::references::occurrences;
use crate::resolve::{Def, Named, local, pieces_of};
use crate::view::{
    Action, ActionKind, Doc, TextEdit, doc_text, indent, item_at, line_end, line_start, newline,
    path_at, tidy,
};

/// The whole lines of a statement, with the line end.
fn lines(text: &str, span: Span) -> Span {
    let start = line_start(text, span.start);
    let end = line_end(text, span.end);
    let rest = text.get(end as usize..).unwrap_or("");
    let tail = if rest.starts_with("\r\n") {
        2
    } else {
        u32::from(rest.starts_with('\n'))
    };
    Span::new(start, end + tail)
}

/// Whether nothing else stands on the lines of a statement.
fn own_line(text: &str, span: Span) -> bool {
    let whole = lines(text, span);
    let before = text
        .get(whole.start as usize..span.start as usize)
        .unwrap_or("x");
    let after = text
        .get(span.end as usize..whole.end as usize)
        .unwrap_or("x")
        .trim();
    before.trim().is_empty() && (after.is_empty() || after.starts_with("//"))
}

fn reindent(text: &str, from: &str, to: &str, nl: &str) -> String {
    text.lines()
        .enumerate()
        .map(|(i, l)| {
            if i == 0 || l.trim().is_empty() {
                l.to_owned()
            } else {
                format!("{to}{}", l.strip_prefix(from).unwrap_or(l.trim_start()))
            }
        })
        .collect::<Vec<_>>()
        .join(nl)
}

/// The innermost statement at an offset that is a part or a line of a chain, with its chain.
fn at<'s>(placed: &'s Placed, offset: u32) -> Option<(Stmt<'s>, Stmt<'s>)> {
    let path = path_at(&placed.item, offset - placed.start);
    let chain = path.iter().position(|s| s.keyword() == Some("chain"))?;
    // the deepest line that is a part or a tag; a `branch` or a device's line is none
    let line = path.iter().skip(chain + 1).rev().find(|s| {
        let w = s.keyword().unwrap_or("");
        PartKind::from_word(w).is_some() || downlead_station::keywords::keyword(w).is_none()
    })?;
    Some((*line, path[chain]))
}

/// Gives a part written in a chain a tag and puts it into the station.
pub(super) fn extract(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    let Some((line, chain)) = at(placed, offset) else {
        return;
    };
    let Some(kind) = line.keyword().and_then(PartKind::from_word) else {
        return;
    };
    let title = format!("Move this {} to the station", kind.word());
    let refuse = |why: &str| Action {
        disabled: Some(why.to_owned()),
        ..Action::new(title.clone(), ActionKind::Extract, Vec::new())
    };
    if kind == PartKind::Connector {
        return;
    }
    let Some(station) = placed
        .item
        .statement()
        .filter(|x| x.keyword() == Some("station"))
    else {
        out.push(refuse("the chain stands outside a station"));
        return;
    };
    let text = doc_text(s, doc);
    let span = line.span().shift(placed.start);
    if !own_line(text, span) {
        out.push(refuse("other statements stand on its line"));
        return;
    }
    if line
        .block()
        .is_some_and(|b| b.iter().any(|x| x.keyword() == Some("branch")))
    {
        out.push(refuse("its branches belong to the chain"));
        return;
    }
    let pieces = pieces_of(s, doc, &placed.item);
    let Some((tag, body)) = tagged(&placed.item, line, kind, &pieces) else {
        return;
    };
    let Some(block) = station.block() else { return };
    let nl = newline(text);
    let (at, before, after, pad) = above_chains(text, placed.start, block, chain);
    let own = indent(text, span.start);
    let body = reindent(&body, own, pad, nl);
    let edits = vec![
        TextEdit {
            doc,
            span: Span::new(at, at),
            text: format!("{before}{pad}{body}{after}"),
        },
        TextEdit {
            doc,
            span,
            text: tag.clone(),
        },
    ];
    out.push(Action::new(
        format!("Move this {} to the station as `{tag}`", kind.word()),
        ActionKind::Extract,
        tidy(edits),
    ));
}

/// The tag of a part and its text with that tag; a free one where it has none.
fn tagged(
    item: &Item,
    line: Stmt<'_>,
    kind: PartKind,
    pieces: &[Piece],
) -> Option<(String, String)> {
    let named = line.atoms().get(1).filter(|a| {
        pieces
            .iter()
            .any(|p| p.span == a.span && p.class == Class::Name(NameKind::Tag, true))
    });
    let whole = line.slice(line.span());
    if let Some(a) = named {
        return Some((line.text(*a).to_owned(), whole.to_owned()));
    }
    let taken: Vec<&str> = pieces
        .iter()
        .filter(|p| matches!(p.class, Class::Name(NameKind::Tag | NameKind::Place, _)))
        .map(|p| item.slice(p.span))
        .collect();
    let tag = (1..1000)
        .map(|n| format!("{}{n}", kind.tag()))
        .find(|t| !taken.contains(&t.as_str()))?;
    let rest = whole.get(kind.word().len()..).unwrap_or("");
    let body = format!("{} {tag}{rest}", kind.word());
    Some((tag, body))
}

/// Where a part goes in a station: below the last part before the chain, or right above the first
/// chain. The place, the text before and after the part, and the indentation.
fn above_chains<'t>(
    text: &'t str,
    start: u32,
    block: Block<'_>,
    chain: Stmt<'_>,
) -> (u32, &'t str, &'t str, &'t str) {
    let nl = newline(text);
    let anchor = block
        .iter()
        .filter(|x| {
            x.keyword().and_then(PartKind::from_word).is_some() && x.span().end < chain.span().start
        })
        .last();
    if let Some(x) = anchor {
        let end = x.span().shift(start);
        return (line_end(text, end.end), nl, "", indent(text, end.start));
    }
    let first = block
        .iter()
        .find(|x| x.keyword() == Some("chain"))
        .unwrap_or(chain)
        .span()
        .shift(start);
    (
        line_start(text, first.start),
        "",
        nl,
        indent(text, first.start),
    )
}

/// The text of a part without its tag: `load DL1, rating 300 W` becomes `load, rating 300 W`.
fn without_tag(d: &Def<'_>) -> String {
    let whole = d.stmt.slice(d.stmt.span());
    let at = d.name.start - d.stmt.span().start;
    let len = d.name.len();
    let head = whole.get(..at as usize).unwrap_or("").trim_end();
    let tail = whole.get((at + len) as usize..).unwrap_or("");
    let gap = if tail.trim_start().starts_with(',') {
        ""
    } else {
        " "
    };
    format!("{head}{gap}{}", tail.trim_start())
}

/// Writes a part that one chain uses straight into that chain.
pub(super) fn inline(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    let Some((line, _)) = at(placed, offset) else {
        return;
    };
    let Some(word) = line.keyword().filter(|w| PartKind::from_word(w).is_none()) else {
        return;
    };
    let (tag, port) = word
        .split_once('.')
        .map_or((word, None), |(t, p)| (t, Some(p)));
    let Some(d) = local(s, doc, placed, NameKind::Tag, tag) else {
        return;
    };
    let title = format!("Write `{tag}` into this chain");
    let refuse = |why: String| Action {
        disabled: Some(why),
        ..Action::new(title.clone(), ActionKind::Inline, Vec::new())
    };
    if port.is_some() {
        out.push(refuse("a part with ports stays in the station".to_owned()));
        return;
    }
    if line.block().is_some() {
        out.push(refuse("its branches belong to this line".to_owned()));
        return;
    }
    let n = Named {
        kind: NameKind::Tag,
        text: tag.to_owned(),
        local: d.name,
        span: d.focus().span,
        def: true,
    };
    let uses = occurrences(s, doc, placed, &n)
        .into_iter()
        .filter(|o| !o.def)
        .count();
    if uses > 1 {
        out.push(refuse(format!(
            "{uses} lines of chains use it, and they mean the same part"
        )));
        return;
    }
    let text = doc_text(s, doc);
    let def = d.stmt.span().shift(placed.start);
    if !own_line(text, def) {
        out.push(refuse("other statements stand on its line".to_owned()));
        return;
    }
    let body = without_tag(&d);
    let span = line.head_span().shift(placed.start);
    let body = reindent(
        body.trim_end(),
        indent(text, def.start),
        indent(text, span.start),
        newline(text),
    );
    let edits = vec![
        TextEdit {
            doc,
            span: lines(text, def),
            text: String::new(),
        },
        TextEdit {
            doc,
            span,
            text: body,
        },
    ];
    out.push(Action::new(title, ActionKind::Inline, tidy(edits)));
}

/// Moves the block of a device to a definition above its station, for others to be made of.
pub(super) fn define(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    let Some(station) = placed.item.statement() else {
        return;
    };
    let path = path_at(&placed.item, offset - placed.start);
    let Some((part, kind)) = path.iter().rev().find_map(|x| {
        let kind = PartKind::from_word(x.keyword()?)?;
        Some((*x, kind))
    }) else {
        return;
    };
    let Some(block) = part.block().filter(|b| b.is_closed()) else {
        return;
    };
    // what a definition cannot be: cables and connectors have their own, ends of a chain none
    let own = !kind.role().is_device();
    let branches = block.iter().any(|x| x.keyword() == Some("branch"));
    let [_, tag] = part.atoms() else { return };
    if own || branches || part.text(*tag) == "of" {
        return;
    }
    let text = doc_text(s, doc);
    let nl = newline(text);
    let base = part.text(*tag).to_lowercase();
    let taken = |n: &str| {
        let mut words = text.split(|c: char| !(c.is_alphanumeric() || c == '-' || c == '_'));
        words.any(|w| w == n) || crate::resolve::global(s, doc, NameKind::Device, n).is_some()
    };
    let numbered = (2..1000).map(|n| format!("{base}-{n}"));
    let Some(name) = std::iter::once(base.clone())
        .chain(numbered)
        .find(|n| !taken(n))
    else {
        return;
    };
    let inner = block.span().shift(placed.start);
    let whole = text
        .get(inner.start as usize + 1..inner.end as usize - 1)
        .unwrap_or("");
    let deep = indent(text, part.span().shift(placed.start).start);
    let lines: Vec<String> = whole
        .lines()
        .filter(|l| !l.trim().is_empty())
        .map(|l| format!("    {}", l.strip_prefix(deep).unwrap_or(l).trim_start()))
        .collect();
    let top = line_start(text, station.span().shift(placed.start).start);
    let body = lines.join(nl);
    let definition = format!(
        "device {name} {{{nl}    kind {}{nl}{body}{nl}}}{nl}{nl}",
        kind.word()
    );
    let tag_end = placed.start + tag.span.end;
    let edits = vec![
        TextEdit {
            doc,
            span: Span::new(top, top),
            text: definition,
        },
        TextEdit {
            doc,
            span: Span::new(tag_end, inner.end),
            text: format!(" of {name}"),
        },
    ];
    out.push(Action::new(
        format!(
            "Move what is said of {} to a device `{name}`",
            part.text(*tag)
        ),
        ActionKind::Extract,
        tidy(edits),
    ));
}
