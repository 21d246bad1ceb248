//! The lines of a variant that give a part new figures.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_syntax::{Atom, Block, Stmt};

use super::Cx;
use super::figures::{Alone, Said, read, role, role_of_line};
use super::merge::{New, Parts, put};
use crate::forms::{self, Begins};
use crate::model::{PartKind, Passed};

/// `A1 gain 8.15 dBi ± 0.5 dB on 2m`, `DU1.high 1.3 dB`, `TX1 { power 28 W; keyed 50 % }`.
pub(super) fn change<'a>(
    cx: &mut Cx<'a>,
    parts: &mut Parts<'a>,
    (s, kind): (Stmt<'a>, PartKind),
    (line, passed, from): (Stmt<'a>, &Passed, Loc),
) {
    let groups: Vec<&[Atom]> = line
        .groups()
        .enumerate()
        .map(|(i, g)| if i == 0 { &g[1..] } else { g })
        .filter(|g| !g.is_empty())
        .collect();
    let port = passed.port.as_deref().map(|p| {
        let plain = forms::of_part(kind).block.form(Some(p)).is_some();
        if plain {
            p.to_owned()
        } else {
            format!("port {p}")
        }
    });
    pieces(cx, parts, (s, kind), line, &groups, port.as_deref(), from);
    for row in line.block().into_iter().flat_map(Block::iter) {
        let groups: Vec<&[Atom]> = row.groups().collect();
        let port = port.as_deref().filter(|_| false);
        pieces(cx, parts, (s, kind), row, &groups, port, from);
    }
}

fn text_of(line: Stmt<'_>, groups: &[&[Atom]]) -> (String, Span) {
    let first = groups.first().and_then(|g| g.first());
    let last = groups.last().and_then(|g| g.last());
    match (first, last) {
        (Some(a), Some(b)) => {
            let span = Span::new(a.span.start, b.span.end);
            (line.slice(span).to_owned(), span)
        }
        _ => (
            String::new(),
            Span::new(line.span().start, line.span().start),
        ),
    }
}

/// Divides the groups of a line into figures: as many groups belong to one as can.
fn pieces<'a>(
    cx: &mut Cx<'a>,
    parts: &mut Parts<'a>,
    part: (Stmt<'a>, PartKind),
    line: Stmt<'a>,
    groups: &[&[Atom]],
    port: Option<&str>,
    from: Loc,
) {
    let kind = part.1;
    let mut at = 0;
    while at < groups.len() {
        let prefix = port.filter(|_| at == 0).map(|p| format!("{p} "));
        let (first, _) = text_of(line, &groups[at..=at]);
        let lead = format!("{}{first}", prefix.as_deref().unwrap_or(""));
        let word = lead.split_whitespace().next().unwrap_or("");
        let block_word = forms::of_part(kind).block.form(Some(word)).is_some();
        let as_line = prefix.is_some() || block_word && !head_reads(cx, kind, &lead);
        let mut end = at + 1;
        while end < groups.len() {
            let (more, _) = text_of(line, &groups[at..=end]);
            let more = format!("{}{more}", prefix.as_deref().unwrap_or(""));
            let fits = match as_line {
                true => line_reads(cx, kind, &more),
                false => head_reads(cx, kind, &more),
            };
            if !fits {
                break;
            }
            end += 1;
        }
        let (text, span) = text_of(line, &groups[at..end]);
        let place = Loc::new(from.item, span);
        match as_line {
            true => {
                let text = format!("{}{text}", prefix.as_deref().unwrap_or(""));
                of_line(cx, parts, part, &text, (from, place));
            }
            false => of_head(cx, parts, part, &text, (from, place)),
        }
        at = end;
    }
}

fn head_reads(cx: &Cx<'_>, kind: PartKind, text: &str) -> bool {
    let alone = Alone::head(kind, text);
    let stmt = alone.stmt().filter(|s| !s.is_broken());
    stmt.is_some_and(|s| read(forms::of_part(kind), s, cx.lets, &cx.places).all)
}

fn line_reads(cx: &Cx<'_>, kind: PartKind, text: &str) -> bool {
    let alone = Alone::line(kind, text);
    let Some(s) = alone.inner().filter(|s| !s.is_broken()) else {
        return false;
    };
    let form = forms::of_part(kind).block.form(s.keyword());
    form.is_some_and(|f| read(f, s, cx.lets, &cx.places).all)
}

/// A figure written as a line of the part's block.
fn of_line<'a>(
    cx: &mut Cx<'a>,
    parts: &mut Parts<'a>,
    part: (Stmt<'a>, PartKind),
    text: &str,
    (from, at): (Loc, Loc),
) {
    let kind = part.1;
    let alone = Alone::line(kind, text);
    let Some(s) = alone.inner() else { return };
    let Some(form) = forms::of_part(kind).block.form(s.keyword()) else {
        return;
    };
    let said = read(form, s, cx.lets, &cx.places).said;
    let start = s.head_span().start;
    let Some(figure) = said.iter().find(|x| !x.is_about()) else {
        return says_no_figure(cx, part, at);
    };
    let head: Vec<&str> = said
        .iter()
        .filter(|x| !x.is_about())
        .map(|x| x.text.as_str())
        .collect();
    let new = New {
        role: role_of_line(s),
        line: text.to_owned(),
        head: in_head(part, s, &head),
        about: abouts(&said),
        bands: said.iter().flat_map(|x| x.bands.clone()).collect(),
        uncertain: figure.uncertainty.is_some(),
        slots: said.iter().map(|x| x.slot.id).collect(),
        figure_end: (figure.span.end - start) as usize,
        main: true,
        from,
        at: figure_at(at, text, figure, start),
    };
    put(cx, parts, part, new);
}

/// How the figure of a line stands in the head of the part: with its word, unless the head has it
/// without.
fn in_head((_, kind): (Stmt<'_>, PartKind), s: Stmt<'_>, figures: &[&str]) -> String {
    let word = s.keyword().unwrap_or("");
    let worded = forms::of_part(kind)
        .all_slots()
        .any(|x| x.words().any(|w| w == word));
    match worded {
        true => format!("{word} {}", figures.join(" ")),
        false => figures.join(" "),
    }
}

/// Where the figure stands in the variant: the text of a line ends with what stands there.
fn figure_at(at: Loc, text: &str, figure: &Said, start: u32) -> Loc {
    let typed = at.span.end - at.span.start;
    let lead = u32::try_from(text.len()).unwrap_or(0).saturating_sub(typed);
    let place = |x: u32| at.span.start + (x - start).saturating_sub(lead);
    Loc::new(
        at.item,
        Span::new(place(figure.span.start), place(figure.span.end)),
    )
}

/// What is said of where a figure is from, group by group.
fn abouts(said: &[Said]) -> Vec<String> {
    let mut out: Vec<String> = Vec::new();
    let mut goes_on = false;
    for x in said {
        if !x.is_about() || x.is_on() {
            goes_on = false;
            continue;
        }
        match out.last_mut().filter(|_| goes_on && !x.begins_group) {
            Some(last) => {
                last.push(' ');
                last.push_str(&x.text);
            }
            None => out.push(x.text.clone()),
        }
        goes_on = true;
    }
    out
}

/// Figures written as they stand in the head of the part.
fn of_head<'a>(
    cx: &mut Cx<'a>,
    parts: &mut Parts<'a>,
    part: (Stmt<'a>, PartKind),
    text: &str,
    (from, at): (Loc, Loc),
) {
    let kind = part.1;
    let form = forms::of_part(kind);
    let alone = Alone::head(kind, text);
    let Some(s) = alone.stmt() else { return };
    let all = read(form, s, cx.lets, &cx.places);
    let start = u32::try_from(kind.word().len() + 3).unwrap_or(0);
    let said = all.said;
    if !all.all {
        return not_of_part(cx, part, at, text);
    }
    let Some(first) = said.iter().position(|x| !x.is_about()) else {
        return says_no_figure(cx, part, at);
    };
    let kind_word = said.iter().find(|x| role(x.slot, kind) == "kind");
    for (i, x) in said.iter().enumerate() {
        let what = role(x.slot, kind);
        if x.is_about() || what == "kind" && said[first].slot.id != x.slot.id {
            continue;
        }
        let mine: Vec<Said> = said
            .iter()
            .filter(|a| a.is_about())
            .filter(|a| match x.slot.figure {
                true => a.of_figure && follows(&said, i, a),
                false => i == first && !a.of_figure,
            })
            .cloned()
            .collect();
        let with_kind = match kind_word.filter(|_| i == first && what != "kind") {
            Some(k) => format!("{} {}", x.text, k.text),
            None => x.text.clone(),
        };
        let bands: Vec<String> = mine.iter().flat_map(|a| a.bands.clone()).collect();
        let about = abouts(&mine);
        let worded = x.slot.words().any(|w| w == what);
        let lead = if worded || form.block.form(Some(&what)).is_none() {
            String::new()
        } else {
            format!("{what} ")
        };
        let on = match bands.is_empty() {
            true => String::new(),
            false => format!(" on {}", bands.join(" ")),
        };
        let source: String = about.iter().map(|a| format!(", {a}")).collect();
        let line = match form.block.form(Some(&what)) {
            Some(_) => format!("{lead}{with_kind}{on}{source}"),
            None => String::new(),
        };
        let mut slots = vec![x.slot.id];
        slots.extend(kind_word.filter(|_| i == first).map(|k| k.slot.id));
        let valued = matches!(x.slot.begins, Begins::Value(_) | Begins::ValueAs(..));
        let is_main = valued || matches!(&*what, "of" | "from");
        let in_variant = |p: u32| at.span.start + p.saturating_sub(start);
        let new = New {
            role: what,
            figure_end: lead.len() + with_kind.len(),
            line,
            head: with_kind,
            about,
            bands,
            uncertain: x.uncertainty.is_some(),
            slots,
            main: i == first && is_main,
            from,
            at: Loc::new(
                at.item,
                Span::new(in_variant(x.span.start), in_variant(x.span.end)),
            ),
        };
        put(cx, parts, part, new);
    }
}

/// Whether a word about a figure follows this one before the next figure does.
fn follows(said: &[Said], figure: usize, about: &Said) -> bool {
    let next = said[figure + 1..].iter().find(|x| !x.is_about());
    about.span.start > said[figure].span.start
        && next.is_none_or(|n| about.span.start < n.span.start)
}

fn says_no_figure<'a>(cx: &mut Cx<'a>, (s, kind): (Stmt<'a>, PartKind), at: Loc) {
    let tag = s.atoms().get(1).map_or("", |a| s.text(*a));
    let d = Diagnostic::new(
        &codes::VARIANT_NOT_A_FIGURE,
        at,
        "A source or a band stands here, and no figure.".to_owned(),
    )
    .at("of which figure?")
    .help(format!(
        "A figure takes its source with it: write the figure of {} `{tag}` and then its source.",
        kind.with_article()
    ));
    cx.say(d);
}

fn not_of_part<'a>(cx: &mut Cx<'a>, (s, kind): (Stmt<'a>, PartKind), at: Loc, text: &str) {
    let tag = s.atoms().get(1).map_or("", |a| s.text(*a));
    let d = Diagnostic::new(
        &codes::VARIANT_NOT_A_FIGURE,
        at,
        format!(
            "`{text}` is no figure of `{tag}`, which is {}.",
            kind.with_article()
        ),
    )
    .at("not understood")
    .help(format!(
        "The figures are written as in the part itself, for example `{}`.",
        forms::of_part(kind).examples.first().unwrap_or(&"")
    ));
    cx.say(d);
}
