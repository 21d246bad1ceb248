//! Figures put into the statement of a part in place of those they replace.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_syntax::{Atom, Block, Stmt};

use super::figures::{Read, Said, also_replaces, read, role, role_of_line};
use super::{Cx, span, twice};
use crate::forms::{self, Form};
use crate::model::PartKind;

/// A new figure of a part.
pub(super) struct New {
    pub(super) role: String,
    /// As a line of the part's block; empty where it has no such line.
    pub(super) line: String,
    /// As it stands in the head of the part: the figure, and what is said of it.
    pub(super) head: String,
    pub(super) about: Vec<String>,
    pub(super) bands: Vec<String>,
    pub(super) uncertain: bool,
    /// Of the line: the slots it has, and the end of its figure in it.
    pub(super) slots: Vec<u8>,
    pub(super) figure_end: usize,
    /// Whether it is the main figure of the head, whose source the head says.
    pub(super) main: bool,
    /// The line of the variant, and the figure in it.
    pub(super) from: Loc,
    pub(super) at: Loc,
}

impl New {
    /// The figure in the head, with its bands and source in the same group.
    fn whole_in_head(&self) -> String {
        let mut out = self.head.clone();
        if !self.bands.is_empty() {
            out.push_str(" on ");
            out.push_str(&self.bands.join(" "));
        }
        for a in &self.about {
            out.push(' ');
            out.push_str(a);
        }
        out
    }
}

/// A part of the station with what is added to it at the end.
struct Pending<'a> {
    stmt: Stmt<'a>,
    groups: Vec<(String, Loc)>,
    lines: Vec<(String, Loc)>,
    /// What was replaced: role, bands, and where it was said.
    seen: Vec<(String, Vec<String>, Loc)>,
}

/// The parts that get new figures.
#[derive(Default)]
pub(super) struct Parts<'a>(Vec<Pending<'a>>);

impl<'a> Parts<'a> {
    fn of(&mut self, stmt: Stmt<'a>) -> &mut Pending<'a> {
        let at = self.0.iter().position(|p| p.stmt.span() == stmt.span());
        let at = at.unwrap_or_else(|| {
            self.0.push(Pending {
                stmt,
                groups: Vec::new(),
                lines: Vec::new(),
                seen: Vec::new(),
            });
            self.0.len() - 1
        });
        &mut self.0[at]
    }

    /// Writes what is added at the ends of heads and blocks.
    pub(super) fn finish(self, cx: &mut Cx<'a>) {
        for p in self.0 {
            let head = p
                .stmt
                .atoms()
                .last()
                .map_or(p.stmt.head_span().end, |a| a.span.end);
            let at = Span::new(head, head);
            for (text, from) in p.groups {
                cx.edit(at, format!(", {text}"), from);
            }
            let Some((_, from)) = p.lines.first().cloned() else {
                continue;
            };
            let lines: Vec<String> = p.lines.into_iter().map(|l| l.0).collect();
            let lines = lines.join("; ");
            match p.stmt.block() {
                None => cx.edit(at, format!(" {{ {lines} }}"), from),
                Some(b) => {
                    let end = b.span().end as usize - usize::from(b.is_closed());
                    let before = cx.base_text()[..end].trim_end_matches([' ', '\t']);
                    let gap = if before.ends_with(['\n', '{', ';']) {
                        ""
                    } else {
                        "; "
                    };
                    cx.edit(span(end, end), format!("{gap}{lines} "), from);
                }
            }
        }
    }
}

/// What the station's statement says of a role.
struct Found<'a> {
    head: Vec<Said>,
    lines: Vec<(Stmt<'a>, Read)>,
}

fn find<'a>(cx: &Cx<'a>, s: Stmt<'a>, kind: PartKind, wanted: &str) -> Found<'a> {
    let form = forms::of_part(kind);
    let head = read(form, s, cx.lets, &cx.places).said;
    let head = head
        .into_iter()
        .filter(|x| !x.is_about() && role(x.slot, kind) == wanted);
    let lines = s.block().into_iter().flat_map(Block::iter);
    let lines = lines
        .filter(|l| role_of_line(*l) == wanted)
        .filter_map(|l| {
            let f: &'static Form = form.block.form(l.keyword())?;
            Some((l, read(f, l, cx.lets, &cx.places)))
        });
    Found {
        head: head.collect(),
        lines: lines.collect(),
    }
}

fn bands(r: &Read) -> Vec<String> {
    r.said.iter().flat_map(|x| x.bands.clone()).collect()
}

/// Puts a figure into a part.
pub(super) fn put<'a>(
    cx: &mut Cx<'a>,
    parts: &mut Parts<'a>,
    (s, kind): (Stmt<'a>, PartKind),
    new: New,
) {
    let overlaps = |a: &[String], b: &[String]| {
        a.is_empty() && b.is_empty() || a.iter().any(|x| b.contains(x))
    };
    let pending = parts.of(s);
    if let Some(first) = pending
        .seen
        .iter()
        .find(|x| x.0 == new.role && overlaps(&x.1, &new.bands))
    {
        let on = match new.bands.is_empty() {
            true => String::new(),
            false => format!(" on {}", new.bands.join(", ")),
        };
        let d = twice(
            new.at,
            first.2,
            format!("The same figure (`{}`){on} is replaced twice.", new.role),
        );
        return cx.say(d);
    }
    pending
        .seen
        .push((new.role.clone(), new.bands.clone(), new.at));
    let mut found = find(cx, s, kind, &new.role);
    drops_uncertainty(cx, &found, &new);
    let nothing = found.head.is_empty() && found.lines.is_empty();
    for other in also_replaces(&new.role, kind) {
        if new.bands.is_empty() {
            let f = find(cx, s, kind, other);
            let mut head = f.head;
            // a loss in place of a length and its cable stands where the length stood
            if nothing && new.main && found.head.is_empty() && !head.is_empty() {
                found.head.push(head.remove(0));
            }
            let spans: Vec<Span> = head.iter().map(|x| x.span).collect();
            remove_slots(cx, s, &spans, new.from);
            f.lines
                .into_iter()
                .for_each(|(l, _)| cx.remove(l, Some(new.from)));
        }
    }
    if new.bands.is_empty() {
        everywhere(cx, parts.of(s), found, new, kind);
    } else {
        on_bands(cx, parts.of(s), found, new, kind);
    }
}

/// A figure that holds always takes the place of all of its role.
fn everywhere<'a>(
    cx: &mut Cx<'a>,
    pending: &mut Pending<'a>,
    found: Found<'a>,
    new: New,
    kind: PartKind,
) {
    let s = pending.stmt;
    if let Some(old) = found.head.first() {
        cx.edit(old.span, new.head.clone(), new.from);
        let about = abouts_of(cx, s, kind, old);
        let mine = |x: &&Said| (new.main || old.slot.figure) && (x.is_source() || x.is_on());
        let mut gone: Vec<Span> = about.iter().filter(mine).map(|x| x.span).collect();
        // `pep` in place of `carrier`
        let all = read(forms::of_part(kind), s, cx.lets, &cx.places).said;
        let beside =
            |x: &&Said| !x.is_about() && x.slot.id != old.slot.id && new.slots.contains(&x.slot.id);
        gone.extend(all.iter().filter(beside).map(|x| x.span));
        remove_slots(cx, s, &gone, new.from);
        match old.slot.figure {
            true => {
                let about = new.about.join(" ");
                let at = Span::new(old.span.end, old.span.end);
                if !about.is_empty() {
                    cx.edit(at, format!(" {about}"), new.from);
                }
            }
            false => pending
                .groups
                .extend(new.about.iter().map(|a| (a.clone(), new.from))),
        }
        found
            .lines
            .into_iter()
            .for_each(|(l, _)| cx.remove(l, Some(new.from)));
        return;
    }
    let mut lines = found.lines.into_iter();
    if let Some((l, r)) = lines.next() {
        cx.edit(l.head_span(), with_rest(&new, &r), new.from);
        lines.for_each(|(l, _)| cx.remove(l, Some(new.from)));
        return;
    }
    add(pending, &new);
}

/// What a head says of one of its figures: where it is from and when it holds.
fn abouts_of<'a>(cx: &Cx<'a>, s: Stmt<'a>, kind: PartKind, figure: &Said) -> Vec<Said> {
    let all = read(forms::of_part(kind), s, cx.lets, &cx.places).said;
    all.into_iter()
        .filter(|x| {
            x.is_about()
                && match figure.slot.figure {
                    true => x.of_figure && same_group(s, figure, x),
                    false => !x.of_figure,
                }
        })
        .collect()
}

/// The same among the figures of a head. Whether the new one is put.
fn on_bands_of_head<'a>(
    cx: &mut Cx<'a>,
    (s, kind): (Stmt<'a>, PartKind),
    found: &Found<'a>,
    new: &New,
) -> bool {
    for old in &found.head {
        let about = abouts_of(cx, s, kind, old);
        let had: Vec<String> = about.iter().flat_map(|x| x.bands.clone()).collect();
        let left: Vec<String> = had
            .iter()
            .filter(|b| !new.bands.contains(b))
            .cloned()
            .collect();
        if left.len() == had.len() {
            continue;
        }
        if let (Some(on), false) = (about.iter().find(|x| x.is_on()), left.is_empty()) {
            cx.edit(on.span, format!("on {}", left.join(" ")), new.from);
            return false;
        }
        let gone: Vec<Span> = about.iter().map(|x| x.span).collect();
        remove_slots(cx, s, &gone, new.from);
        cx.edit(old.span, new.whole_in_head(), new.from);
        return true;
    }
    false
}

/// A figure that holds on bands takes their place where others hold on them.
fn on_bands<'a>(
    cx: &mut Cx<'a>,
    pending: &mut Pending<'a>,
    found: Found<'a>,
    new: New,
    kind: PartKind,
) {
    let mut put = on_bands_of_head(cx, (pending.stmt, kind), &found, &new);
    for (l, r) in &found.lines {
        let had = bands(r);
        let left: Vec<String> = had
            .iter()
            .filter(|b| !new.bands.contains(b))
            .cloned()
            .collect();
        if left.len() == had.len() {
            continue;
        }
        let mut text = String::new();
        if !left.is_empty() {
            let whole = l.slice(l.head_span());
            let on = r.said.iter().find(|x| x.is_on());
            if let Some(on) = on {
                let from = (on.span.start - l.head_span().start) as usize;
                let to = (on.span.end - l.head_span().start) as usize;
                text = format!("{}on {}{}; ", &whole[..from], left.join(" "), &whole[to..]);
            }
        }
        if !put {
            text.push_str(&with_rest(&new, r));
        }
        match text.is_empty() {
            true => cx.remove(*l, Some(new.from)),
            false => cx.edit(l.head_span(), text, new.from),
        }
        put = true;
    }
    if !put {
        add(pending, &new);
    }
}

fn add(pending: &mut Pending<'_>, new: &New) {
    match new.line.is_empty() {
        true => pending.groups.push((new.whole_in_head(), new.from)),
        false => pending.lines.push((new.line.clone(), new.from)),
    }
}

/// The new line, with what the old one says besides its figure and source.
fn with_rest(new: &New, old: &Read) -> String {
    let kept = old
        .said
        .iter()
        .enumerate()
        .filter(|(i, x)| *i > 0 && !x.is_about() && !new.slots.contains(&x.slot.id));
    let (mut beside, mut after) = (String::new(), String::new());
    for (_, x) in kept {
        match x.begins_group {
            true => after.push_str(&format!(", {}", x.text)),
            false => beside.push_str(&format!(" {}", x.text)),
        }
    }
    let (figure, rest) = new.line.split_at(new.figure_end.min(new.line.len()));
    format!("{figure}{beside}{rest}{after}")
}

fn same_group(s: Stmt<'_>, a: &Said, b: &Said) -> bool {
    s.groups().any(|g| {
        let (Some(first), Some(last)) = (g.first(), g.last()) else {
            return false;
        };
        let holds = |x: &Said| first.span.start <= x.span.start && x.span.end <= last.span.end;
        holds(a) && holds(b)
    })
}

/// Removes slots of a head, with the comma before them where they are a whole group.
fn remove_slots<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, slots: &[Span], from: Loc) {
    let text = cx.base_text();
    for g in s.groups() {
        let (Some(first), Some(last)) = (g.first(), g.last()) else {
            continue;
        };
        let within = |x: &&Span| first.span.start <= x.start && x.end <= last.span.end;
        let here: Vec<&Span> = slots.iter().filter(within).collect();
        let gone = |a: &Atom| {
            here.iter()
                .any(|x| x.start <= a.span.start && a.span.end <= x.end)
        };
        let before = text[..first.span.start as usize].trim_end();
        if !here.is_empty() && before.ends_with(',') && g.iter().all(gone) {
            cx.edit(span(before.len() - 1, last.span.end as usize), "", from);
            continue;
        }
        for x in here {
            let (start, end) = (x.start as usize, x.end as usize);
            let before = text[..start].trim_end();
            let after = text[end..].trim_start();
            // nothing is left before a comma, and no blank after one
            match before.ends_with(',') && x.start == first.span.start {
                true => cx.edit(span(start, text.len() - after.len()), "", from),
                false => cx.edit(span(before.len(), end), "", from),
            }
        }
    }
}

/// A figure without its uncertainty would look surer than the station's.
fn drops_uncertainty(cx: &mut Cx<'_>, found: &Found<'_>, new: &New) {
    if new.uncertain {
        return;
    }
    let of_lines = found.lines.iter().filter(|(_, r)| {
        let b = bands(r);
        new.bands.is_empty() || b.iter().any(|x| new.bands.contains(x))
    });
    let of_lines = of_lines.filter_map(|(_, r)| r.said.first());
    let head = found.head.iter().filter(|_| new.bands.is_empty());
    let Some((said, half)) = head
        .chain(of_lines)
        .find_map(|x| Some((x.text.clone(), x.uncertainty.clone()?)))
    else {
        return;
    };
    let text = cx.variant.slice(new.at.span).to_owned();
    let mut d = Diagnostic::new(
        &codes::VARIANT_DROPS_UNCERTAINTY,
        new.at,
        format!("`{text}` has no uncertainty, and the figure of the station has one (`{said}`): the variant would look surer than the station."),
    )
    .at("no uncertainty");
    d = match half.is_empty() {
        true => d.help("A figure takes its uncertainty and source with it: write the new ones with the new figure."),
        false => {
            let end = Loc::new(new.at.item, Span::new(new.at.span.end, new.at.span.end));
            d.help(format!("A figure takes its uncertainty and source with it. To keep the uncertainty write `{text} {half}`."))
                .fix(format!("write `{half}`"), end, format!(" {half}"))
                .preferred()
        }
    };
    cx.say(d);
}
