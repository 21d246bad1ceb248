//! A walk over the atoms of a group.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_quantity::similar_units;
use downlead_syntax::{Atom, AtomKind, Stmt};

use super::Cx;
use super::value::Val;
use super::word::nearest;
use crate::forms::{self, Form};
use crate::keywords::{Context, Keyword, form_in, keyword};
use crate::lower::check::known_to_table;
use crate::model::{Name, PartKind};
use crate::words::ALIKE;

/// A walk over the atoms of one group.
pub(crate) struct Cur<'a> {
    pub(crate) stmt: Stmt<'a>,
    pub(crate) atoms: &'a [Atom],
    pub(crate) i: usize,
}

impl<'a> Cur<'a> {
    pub(crate) fn new(stmt: Stmt<'a>, atoms: &'a [Atom]) -> Self {
        Cur { stmt, atoms, i: 0 }
    }

    pub(crate) fn done(&self) -> bool {
        self.i >= self.atoms.len()
    }

    pub(crate) fn peek(&self) -> Option<&'a Atom> {
        self.atoms.get(self.i)
    }

    pub(crate) fn next_span(&self) -> Span {
        match self.peek() {
            Some(a) => a.span,
            None => {
                let end = self
                    .atoms
                    .last()
                    .map_or(self.stmt.head_span().end, |a| a.span.end);
                Span::new(end, end)
            }
        }
    }

    /// The current word, if it is one.
    pub(crate) fn word(&self, cx: &Cx<'a>) -> Option<&'a str> {
        let a = self.peek()?;
        match a.kind {
            AtomKind::Word => Some(cx.text(a.span)),
            // a `±` after a word has its own finding
            _ => cx.stray(self.stmt, a).map(|word| cx.text(word)),
        }
    }

    pub(crate) fn eat(&mut self, cx: &Cx<'a>, w: &str) -> bool {
        let hit = self.word(cx) == Some(w);
        self.i += usize::from(hit);
        hit
    }

    /// A name: a word, or a value such as `2m` that is written without blanks.
    pub(crate) fn name(&mut self, cx: &Cx<'a>) -> Option<Name> {
        let a = self.peek()?;
        if let Some(word) = cx.stray(self.stmt, a) {
            self.i += 1;
            return Some(cx.name_at(word));
        }
        let text = cx.text(a.span);
        let ok = match a.kind {
            AtomKind::Word => true,
            AtomKind::Value(_) => !text.contains([' ', '\t', '±', '(']),
            _ => false,
        };
        if !ok {
            return None;
        }
        self.i += 1;
        Some(cx.name_at(a.span))
    }

    /// Whether the current atom is a value (or the name of one).
    pub(crate) fn at_value(&self, cx: &Cx<'a>) -> bool {
        match self.peek() {
            Some(a) => match a.kind {
                AtomKind::Value(_) => cx.stray(self.stmt, a).is_none(),
                AtomKind::Word => cx.lets.contains_key(cx.text(a.span)),
                _ => false,
            },
            None => false,
        }
    }

    /// A value. `None` with no diagnostic if there is none here.
    pub(crate) fn val(&mut self, cx: &mut Cx<'a>) -> Option<Val> {
        if !self.at_value(cx) {
            return None;
        }
        let a = self.peek()?;
        self.i += 1;
        cx.value(self.stmt, a)
    }

    /// The value a line cannot do without; says so if there is none.
    pub(crate) fn need(&mut self, cx: &mut Cx<'a>, what: &str, example: &str) -> Option<Val> {
        let had = cx.diags.len();
        let v = self.val(cx);
        if v.is_none() && cx.diags.len() == had {
            crate::quals::missing(cx, self, what, example);
        }
        v
    }

    pub(crate) fn string(&mut self, cx: &Cx<'a>) -> Option<Box<str>> {
        let a = self.peek().filter(|a| matches!(a.kind, AtomKind::Str))?;
        self.i += 1;
        Some(cx.text(a.span).trim_matches('"').into())
    }

    pub(crate) fn date(&mut self, cx: &Cx<'a>) -> Option<Box<str>> {
        let a = self.peek().filter(|a| matches!(a.kind, AtomKind::Date))?;
        self.i += 1;
        Some(cx.text(a.span).into())
    }

    /// `on 80m, 20m`: bands of one figure stand without commas. False if it is nothing of the kind.
    fn band_after_comma(&self, cx: &mut Cx<'a>, a: &Atom) -> bool {
        let text = cx.text(a.span);
        let name = |a: &Atom, text: &str| match a.kind {
            AtomKind::Word => true,
            AtomKind::Value(_) => !text.contains([' ', '\t', '±', '(']),
            _ => false,
        };
        // of words only `on` itself takes one: a further one could be a place
        if self.i != 0 || self.atoms.len() != 1 || a.kind == AtomKind::Word || !name(a, text) {
            return false;
        }
        // the groups before this one: names alone, and one that ends in `on` and names
        let groups: Vec<&[Atom]> = self.stmt.groups().collect();
        let here = groups.iter().position(|g| std::ptr::eq(*g, self.atoms));
        let before = &groups[..here.unwrap_or(0)];
        let all_names = |atoms: &[Atom]| atoms.iter().all(|a| name(a, cx.text(a.span)));
        let listed = before
            .iter()
            .rev()
            .find(|g| g.len() != 1 || !all_names(g))
            .is_some_and(|g| {
                let on = g.iter().rposition(|a| cx.text(a.span) == "on");
                on.is_some_and(|on| on + 1 < g.len() && all_names(&g[on + 1..]))
            });
        let Some(last) = before.last().and_then(|g| g.last()).filter(|_| listed) else {
            return false;
        };
        let comma = cx.loc(Span::new(last.span.end, a.span.start));
        let both = format!("{} {text}", cx.text(last.span));
        cx.push(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                cx.loc(a.span),
                format!(
                    "The bands of a figure follow each other without commas: `{text}` stands alone here."
                ),
            )
            .at("after a comma")
            .fix(format!("write `{both}`"), comma, " ")
            .preferred(),
        );
        true
    }

    /// Says that what follows is not understood. `allowed` lists what could stand here.
    pub(crate) fn unexpected(&self, cx: &mut Cx<'a>, in_what: &str, allowed: &[&str]) {
        let Some(a) = self.peek() else { return };
        if matches!(a.kind, AtomKind::Error) {
            return;
        }
        let loc = cx.loc(a.span);
        if cx.diags.iter().any(|d| {
            let at = d.primary.loc.span;
            at.touches(loc.span.start) && d.code.id == codes::UNKNOWN_UNIT.id
                // part of a number with a blank in it, and what follows that
                || d.code.id == codes::NOT_UNDERSTOOD.id && at.start < loc.span.start && loc.span.start < at.end
        }) {
            // said already, as the number's unit
            return;
        }
        if cx.stray(self.stmt, a).is_some() {
            return;
        }
        let text = cx.text(a.span);
        if self.band_after_comma(cx, a) {
            return;
        }
        if let Some(d) = cx.known_slip(self.stmt, self.atoms, self.i, allowed) {
            cx.push(d);
            return;
        }
        // a number followed by a word that is nearly a unit is a misspelt unit
        if matches!(a.kind, AtomKind::Word)
            && self.i > 0
            && matches!(self.atoms[self.i - 1].kind, AtomKind::Value(_))
        {
            let near = similar_units(text);
            if let Some(u) = near.first() {
                cx.push(
                    Diagnostic::new(
                        &codes::UNKNOWN_UNIT,
                        loc,
                        format!("`{text}` is no unit; `{u}` is."),
                    )
                    .at("misspelt unit")
                    .fix(format!("write `{u}`"), loc, *u)
                    .preferred(),
                );
                return;
            }
        }
        if known_to_table(cx, self.stmt, a) {
            return;
        }
        if let Some(d) = elsewhere(self.stmt, text, loc, in_what, allowed) {
            cx.push(d);
            return;
        }
        let mut d = Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            format!("`{text}` has no meaning in {in_what}."),
        )
        .at("not understood");
        // a word that has a meaning elsewhere in the line is no slip of the pen
        if let Some(n) = nearest(text, allowed.iter().copied().filter(|w| *w != text)) {
            d = d
                .help(format!("Did you mean `{n}`?"))
                .fix(format!("write `{n}`"), loc, n);
        } else if !allowed.is_empty() {
            let mut all = allowed.to_vec();
            all.retain(|w| !ALIKE.contains(w) && *w != text);
            d = d.help(format!("What can stand here: {}.", all.join(", ")));
        }
        cx.push(d);
    }
}

/// What to say of a word that stands in a block only: in that of the statement itself, or in a
/// definition.
fn elsewhere(
    stmt: Stmt<'_>,
    text: &str,
    loc: Loc,
    in_what: &str,
    allowed: &[&str],
) -> Option<Diagnostic> {
    let k = keyword(text).filter(|_| !allowed.contains(&text))?;
    let head = stmt.keyword().unwrap_or("");
    let form = forms::form_of(stmt);
    let part = PartKind::from_word(head);
    let in_block = |f: &'static Form| f.block.form(Some(text)).filter(|l| l.word == text);
    let (place, example) = if let Some(line) = form.and_then(in_block) {
        let example = line.examples.first().unwrap_or(&text);
        (
            format!("in the block of the {head}"),
            format!("{head} … {{ {example} }}"),
        )
    } else if part.is_some()
        && let Some(of) = said_of(text)
    {
        let this = part.map_or_else(String::new, PartKind::with_article);
        return Some(
            Diagnostic::new(
                &codes::UNEXPECTED_WORD,
                loc,
                format!("`{text}` is said of {of}, and this is {this}."),
            )
            .at("not here"),
        );
    } else {
        definition(k)?
    };
    Some(
        Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            loc,
            format!("`{text}` stands {place}, not in {in_what}."),
        )
        .at("not on this line")
        .help(format!("Written so: `{example}`.")),
    )
}

/// The kinds of part that have a line or a word of their own in their block, at most three.
fn said_of(word: &str) -> Option<String> {
    let has = |k: &PartKind| {
        let form = forms::of_part(*k);
        form.block.lines().iter().any(|l| l.word == word)
    };
    let kinds: Vec<String> = PartKind::ALL
        .into_iter()
        .filter(has)
        .map(PartKind::with_article)
        .collect();
    match &kinds[..] {
        [] => None,
        [one] => Some(one.clone()),
        [first @ .., last] if kinds.len() <= 3 => Some(format!("{} or {last}", first.join(", "))),
        _ => None,
    }
}

/// The definition in whose block a word stands, and how it is written.
fn definition(k: &Keyword) -> Option<(String, String)> {
    let (c, (what, word)) = k.contexts.iter().find_map(|c| {
        Some((
            *c,
            match c {
                Context::Cable => Some(("the block of a cable definition", "cable NAME")),
                Context::Construction => Some((
                    "the `construction` or `wires` of a cable definition",
                    "cable NAME { construction",
                )),
                Context::Connector => {
                    Some(("the block of a connector definition", "connector NAME"))
                }
                Context::Instrument => {
                    Some(("the block of an instrument definition", "instrument NAME"))
                }
                Context::Place => Some(("the block of a place", "place NAME")),
                Context::Device => Some(("the block of a device", "device NAME")),
                Context::Transmitter => Some(("the block of a transmitter", "transmitter TX1")),
                Context::Receiver => Some(("the block of a receiver", "receiver RX1")),
                Context::Antenna => Some(("the block of an antenna", "antenna A1")),
                Context::Band => Some(("the block of a band", "band NAME")),
                _ => None,
            }?,
        ))
    })?;
    let example = form_in(c, k.word)
        .and_then(|f| f.examples.first())
        .map_or(k.word, |e| *e);
    let closing = if word.contains('{') { " }" } else { "" };
    Some((
        format!("in {what}"),
        format!("{word} {{ {example} }}{closing}"),
    ))
}
