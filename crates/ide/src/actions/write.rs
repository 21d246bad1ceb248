//! Actions that write code: what is missing is defined, what the files have is brought in, a chain
//! is turned round, and what a line comes to is written below it.

use downlead_base::{Severity, Span};
use downlead_eval::Snapshot;
use downlead_station::model::PartKind;
use downlead_syntax::{Block, Placed, Stmt};

use crate::completion::relative;
use crate::config::Config;
use crate::diagnostics::Finding;
use crate::names::NameKind;
use crate::rename::with_edits;
use crate::resolve::{local, ports, seen, top};
use crate::view::{
    Action, ActionKind, Doc, TextEdit, doc_path, doc_text, env_of, indent, item_at, line_end,
    line_start, newline, path_at,
};

/// Nodes of a chain, which say what was read or is wanted there.
const NODES: [&str; 5] = ["read", "readings", "expect", "limit", "accept"];

/// Lines that are no part of a way back: the power that a chain begins with.
const ENDS: [PartKind; 3] = [
    PartKind::Transmitter,
    PartKind::Receiver,
    PartKind::Transceiver,
];

/// Whether edits take a finding away and bring no error.
fn mends(s: &Snapshot, f: &Finding, edits: &[TextEdit]) -> bool {
    let count = |s: &Snapshot| {
        let all = s.diagnostics();
        let errors = all.iter().filter(|d| d.severity == Severity::Error);
        let same = all.iter().filter(|d| d.code.id == f.code);
        (errors.count(), same.count())
    };
    let (before, after) = (count(s), count(&with_edits(s, edits)));
    let lost = usize::from(f.severity == Severity::Error);
    after.0 + lost <= before.0 && after.1 < before.1
}

fn fix(title: String, f: &Finding, edits: Vec<TextEdit>) -> Action {
    Action {
        codes: vec![f.code],
        finding: Some(f.span),
        ..Action::new(title, ActionKind::QuickFix, edits)
    }
}

/// Defines the part or place that a finding misses; brings in the file that defines a name.
pub(super) fn missing(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let kind = match f.code {
        "unknown-part" => return part(s, doc, f, out),
        "unknown-place" => return place(s, doc, f, out),
        "unknown-cable" => NameKind::Cable,
        "unknown-connector" => NameKind::Connector,
        "unknown-device" => NameKind::Device,
        "unknown-instrument" => NameKind::Instrument,
        "unknown-band" => NameKind::Band,
        "unknown-station" => NameKind::Station,
        "unknown-rules" => NameKind::Rules,
        _ => return,
    };
    brought_in(s, doc, f, kind, out);
}

/// A `use` line for each file of the workspace that defines the name.
fn brought_in(s: &Snapshot, doc: Doc, f: &Finding, kind: NameKind, out: &mut Vec<Action>) {
    let text = doc_text(s, doc);
    let Some(name) = text.get(f.span.range()) else {
        return;
    };
    let visible = seen(s, doc);
    let others = (0..s.files().len()).filter(|i| !visible.contains(i));
    let own = doc_path(s, doc);
    for other in others.filter(|i| top(s, Doc::File(*i), kind, name).is_some()) {
        let path = relative(&own, &doc_path(s, Doc::File(other)));
        let edits = vec![use_line(s, doc, &path)];
        if mends(s, f, &edits) {
            out.push(fix(format!("Write `use \"{path}\"`"), f, edits));
        }
    }
}

/// A `use` line below the last one, else before the first statement.
fn use_line(s: &Snapshot, doc: Doc, path: &str) -> TextEdit {
    let text = doc_text(s, doc);
    let nl = newline(text);
    let items = crate::view::tree(s, doc).map_or(&[][..], |t| t.items());
    let stated = || {
        items
            .iter()
            .filter_map(|p| Some((p.start, p.item.statement()?)))
    };
    let last = stated().rfind(|x| x.1.keyword() == Some("use"));
    let (at, line) = match (last, stated().next()) {
        (Some((start, u)), _) => (
            line_end(text, start + u.head_span().end),
            format!("{nl}use \"{path}\""),
        ),
        (None, Some((start, first))) => (
            line_start(text, start + first.span().start),
            format!("use \"{path}\"{nl}{nl}"),
        ),
        (None, None) => (0, format!("use \"{path}\"{nl}")),
    };
    TextEdit {
        doc,
        span: Span::new(at, at),
        text: line,
    }
}

/// The block of the station in which an item-relative offset is.
fn station_of(placed: &Placed) -> Option<Block<'_>> {
    let st = placed.item.statement()?;
    (st.keyword() == Some("station"))
        .then(|| st.block())
        .flatten()
}

/// A line below the last of some lines of a block, else as its first line.
fn line_in(
    text: &str,
    placed: &Placed,
    block: Block<'_>,
    after: Option<Stmt<'_>>,
    line: &str,
) -> (u32, String) {
    let nl = newline(text);
    match after {
        Some(x) => {
            let span = x.span().shift(placed.start);
            let pad = indent(text, span.start);
            (line_end(text, span.end), format!("{nl}{pad}{line}"))
        }
        None => {
            let open = block.span().start + placed.start;
            let pad = indent(text, open);
            (open + 1, format!("{nl}{pad}    {line}"))
        }
    }
}

/// A part that no station has, with figures that are marked as a guess.
fn part(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let text = doc_text(s, doc);
    let (Some(placed), Some(tag)) = (item_at(s, doc, f.span.start), text.get(f.span.range()))
    else {
        return;
    };
    let Some(block) = station_of(placed) else {
        return;
    };
    let letters = tag.trim_end_matches(|c: char| c.is_ascii_digit());
    // a tag whose letters say nothing could be of any part
    let Some(kind) = PartKind::ALL.into_iter().find(|k| k.tag() == letters) else {
        return;
    };
    let example = match kind {
        PartKind::Jumper | PartKind::Tail => format!("{} {tag} 1.5 m of rg-213", kind.word()),
        _ => PartKind::example_for(tag),
    };
    if !example.starts_with(kind.word()) || example.contains(['{', '"']) {
        return;
    }
    let is_part = |x: &Stmt<'_>| x.keyword().and_then(PartKind::from_word).is_some();
    let same = block
        .iter()
        .filter(|x| x.keyword() == Some(kind.word()))
        .last();
    let after = same.or_else(|| block.iter().filter(is_part).last());
    // the figures are those of the example: the line says that they are a guess
    let plain = example.split(',').next().unwrap_or(&example);
    let (at, line) = line_in(text, placed, block, after, &format!("{plain}, guess"));
    let edits = vec![TextEdit {
        doc,
        span: Span::new(at, at),
        text: line,
    }];
    if mends(s, f, &edits) {
        out.push(fix(format!("Define {} `{tag}`", kind.word()), f, edits));
    }
}

/// A place that the station does not have.
fn place(s: &Snapshot, doc: Doc, f: &Finding, out: &mut Vec<Action>) {
    let text = doc_text(s, doc);
    let (Some(placed), Some(name)) = (item_at(s, doc, f.span.start), text.get(f.span.range()))
    else {
        return;
    };
    let Some(block) = station_of(placed) else {
        return;
    };
    let last = block.iter().filter(|x| x.keyword() == Some("place")).last();
    let (at, line) = line_in(text, placed, block, last, &format!("place {name}"));
    let edits = vec![TextEdit {
        doc,
        span: Span::new(at, at),
        text: line,
    }];
    if mends(s, f, &edits) {
        out.push(fix(format!("Define place `{name}`"), f, edits));
    }
}

/// What a line of a chain comes to, as a statement below it, and a reading to be filled in.
pub(super) fn at_node(s: &Snapshot, doc: Doc, offset: u32, c: &Config, out: &mut Vec<Action>) {
    let text = doc_text(s, doc);
    let line = Span::new(line_start(text, offset), line_end(text, offset));
    let hints = crate::hints::inlay_hints(s, doc, line, c);
    let pinned = hints
        .into_iter()
        .find(|h| line.start <= h.offset && h.offset <= line.end && !h.edits.is_empty());
    let Some(pinned) = pinned else { return };
    let what = pinned.edits[0].text.trim();
    if !what.starts_with("expect ") {
        return;
    }
    let title = format!("Write `{what}` below this line");
    let (head, nl) = (indent(text, line.start), newline(text));
    let band = what
        .split_once(" on ")
        .map_or(String::new(), |b| format!(" on {}", b.1));
    let meters = env_of(s, doc).map(|e| {
        let mut names: Vec<&str> = e.instruments.keys().map(AsRef::as_ref).collect();
        names.sort_unstable();
        names
    });
    let with = match meters.as_deref() {
        Some([one]) => format!(" with {one}"),
        _ => String::new(),
    };
    out.push(Action::new(
        title,
        ActionKind::Rewrite,
        pinned.edits.clone(),
    ));
    let reading = TextEdit {
        doc,
        span: Span::new(line.end, line.end),
        text: format!("{nl}{head}read  W forward{with}{band}"),
    };
    out.push(Action::new(
        "Write a `read` line below this one, to be filled in",
        ActionKind::Rewrite,
        vec![reading],
    ));
}

/// The way back of a transmit chain: from the antenna to a receiver, through the other leg of what
/// joins the two.
pub(super) fn receive(s: &Snapshot, doc: Doc, offset: u32, out: &mut Vec<Action>) {
    let Some(placed) = item_at(s, doc, offset) else {
        return;
    };
    let path = path_at(&placed.item, offset - placed.start);
    let [station, chain] = path[..] else { return };
    if chain.keyword() != Some("chain")
        || !chain.atoms().iter().any(|a| chain.text(*a) == "transmit")
    {
        return;
    }
    let (Some(all), Some(lines)) = (station.block(), chain.block()) else {
        return;
    };
    const TITLE: &str = "Write the receive chain back from this one";
    let refuse = |why: &str| Action {
        disabled: Some(why.to_owned()),
        ..Action::new(TITLE, ActionKind::Rewrite, Vec::new())
    };
    let steps = match back(s, doc, placed, lines) {
        Ok(steps) => steps,
        Err(why) => return out.push(refuse(&why)),
    };
    let receivers = all
        .iter()
        .filter(|x| matches!(x.keyword(), Some("receiver")))
        .filter_map(|x| x.atoms().get(1).map(|a| x.text(*a)));
    let used = |tag: &str| {
        let chains = all.iter().filter(|x| x.keyword() == Some("chain"));
        chains
            .flat_map(|x| x.block().into_iter().flat_map(Block::iter))
            .any(|x| x.keyword() == Some(tag))
    };
    let tags: Vec<&str> = receivers.collect();
    let Some(receiver) = tags.iter().find(|t| !used(t)).or(tags.first()) else {
        return out.push(refuse("the station has no receiver"));
    };
    let text = doc_text(s, doc);
    let nl = newline(text);
    let span = chain.span().shift(placed.start);
    let pad = indent(text, span.start);
    let Some(name) = chain.atoms().get(1).map(|a| chain.text(*a)) else {
        return;
    };
    let head = chain.slice(chain.head_span()).trim();
    let name = free_name(all, &turned(name));
    let head = head
        .splitn(3, ' ')
        .nth(2)
        .unwrap_or_default()
        .replace("transmit", "receive");
    let mut body = format!("{nl}{nl}{pad}chain {name} {head}");
    body.push_str(" {");
    for step in steps.iter().map(String::as_str).chain([*receiver]) {
        body.push_str(&format!("{nl}{pad}    {step}"));
    }
    body.push_str(&format!("{nl}{pad}}}"));
    let at = line_end(text, span.end);
    let edits = vec![TextEdit {
        doc,
        span: Span::new(at, at),
        text: body,
    }];
    let errors = |s: &Snapshot| {
        let all = s.diagnostics();
        all.iter().filter(|d| d.severity == Severity::Error).count()
    };
    match errors(&with_edits(s, &edits)) <= errors(s) {
        true => out.push(Action::new(TITLE, ActionKind::Rewrite, edits)),
        false => out.push(refuse("the chain would have an error: its band has no receive frequency, or the way back is not clear")),
    }
}

/// The lines from the antenna to the other leg of the part that joins transmitter and receiver.
fn back(s: &Snapshot, doc: Doc, placed: &Placed, lines: Block<'_>) -> Result<Vec<String>, String> {
    let mut out = Vec::new();
    let all: Vec<Stmt<'_>> = lines.iter().collect();
    for x in all.iter().rev() {
        let Some(word) = x.keyword() else { continue };
        if NODES.contains(&word) {
            continue;
        }
        if x.block().is_some() {
            return Err(format!("`{word}` has branches"));
        }
        match PartKind::from_word(word) {
            Some(PartKind::Connector) => {
                out.push(x.slice(x.head_span()).trim().to_owned());
                continue;
            }
            Some(k) if ENDS.contains(&k) => continue,
            Some(k) => {
                return Err(format!(
                    "a {} is written in the chain: move it to the station",
                    k.word()
                ));
            }
            None => {}
        }
        let Some((tag, port)) = word.split_once('.') else {
            out.push(word.to_owned());
            continue;
        };
        let part = local(s, doc, placed, NameKind::Tag, tag);
        let names = part.map_or_else(Vec::new, |d| ports(s, &d));
        let others: Vec<&&str> = names.iter().filter(|p| **p != port).collect();
        return match others[..] {
            [other] => {
                out.push(format!("{tag}.{other}"));
                Ok(out)
            }
            _ => Err(format!(
                "it is not clear by which way of `{tag}` the receiver hears"
            )),
        };
    }
    Err("nothing on it leads to a receiver: a duplexer or switch".to_owned())
}

/// The name of a chain for the other direction.
fn turned(name: &str) -> String {
    for (from, to) in [
        ("transmit", "receive"),
        ("out", "in"),
        ("tx", "rx"),
        ("send", "hear"),
    ] {
        let parts: Vec<&str> = name.split('-').collect();
        if parts.contains(&from) {
            let new: Vec<&str> = parts
                .iter()
                .map(|p| if *p == from { to } else { p })
                .collect();
            return new.join("-");
        }
    }
    format!("{name}-receive")
}

fn free_name(all: Block<'_>, name: &str) -> String {
    let taken = |n: &str| {
        all.iter()
            .filter(|x| x.keyword() == Some("chain"))
            .any(|x| x.atoms().get(1).is_some_and(|a| x.text(*a) == n))
    };
    let numbered = (2..1000).map(|i| format!("{name}-{i}"));
    std::iter::once(name.to_owned())
        .chain(numbered)
        .find(|n| !taken(n))
        .unwrap_or_else(|| name.to_owned())
}
