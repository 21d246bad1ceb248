//! What the table of statements says of an item: which names it uses, and words that its lines say
//! twice, that exclude each other or that mean nothing where they stand.
//!
//! Runs after lowering and is silent about a line that has a finding already.

use downlead_base::{Diagnostic, Loc, Span, codes};
use downlead_syntax::{Atom, AtomKind, Block as Lines, Item, Stmt};

use crate::cx::{Cx, capital};
use crate::forms::{
    self, Begins, Block, Form, Known, Met, NameKind, Problem, Reader, Role, Slot, Stands, Subject,
    meant_word,
};
use crate::keywords::Context;
use crate::quals::exclusive;

/// The name of a definition, where it is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mention {
    /// What it names.
    pub kind: NameKind,
    /// Where it stands.
    pub loc: Loc,
}

/// Words of figures that hold once for a part, in its line or in its block.
const IN_LINE_OR_BLOCK: [&str; 7] = [
    "isolation",
    "reversed",
    "keyed",
    "duty",
    "foldback",
    "rating",
    "voltage",
];

/// Words listed in a message at most.
const LISTED: usize = 12;

/// Checks an item; gives the names it uses.
pub(super) fn check<'a>(cx: &mut Cx<'a>, item: &'a Item) -> Box<[Mention]> {
    let places = places(item);
    let lets = cx.lets;
    let mut c = Check {
        cx,
        known: Known {
            lets,
            places: &places,
        },
        names: Vec::new(),
    };
    if let Some(s) = item.statement()
        && let Some(form) = forms::top().form(s.keyword())
    {
        c.statement(s, form);
    }
    c.names.into()
}

/// Names of the places of a station.
fn places(item: &Item) -> Vec<&str> {
    let Some(st) = item.statement().filter(|s| s.keyword() == Some("station")) else {
        return Vec::new();
    };
    st.block()
        .into_iter()
        .flat_map(Lines::iter)
        .filter(|s| s.keyword() == Some("place"))
        .filter_map(|s| s.atoms().get(1).map(|a| s.text(*a)))
        .collect()
}

struct Check<'c, 'a, 'k> {
    cx: &'c mut Cx<'a>,
    known: Known<'k>,
    names: Vec<Mention>,
}

impl<'a> Check<'_, 'a, '_> {
    fn statement(&mut self, s: Stmt<'a>, form: &'static Form) {
        let mut single: Vec<(&'static str, Span)> = Vec::new();
        if !is_plain(s, form) {
            self.head(s, form, &mut single);
        }
        if let Some(block) = s.block() {
            self.block(s, form, block);
            self.line_and_block(block, &single);
        }
    }

    /// Reads the head of a statement; `single` gets what holds once for a part.
    fn head(&mut self, s: Stmt<'a>, form: &'static Form, single: &mut Vec<(&'static str, Span)>) {
        let has_block = s.block().is_some();
        let mut r = Reader::new(form, s, self.known);
        while let Some(m) = r.next() {
            match m {
                Met::Subject(kind, false, a) => self.name(s, kind, a),
                Met::Subject(..) => {}
                Met::Slot { slot, head, .. }
                    if has_block && slot.words().any(|w| IN_LINE_OR_BLOCK.contains(&w)) =>
                {
                    single.extend(slot.words().next().map(|w| (w, head.span)));
                }
                Met::Slot { slot, head, .. } if slot.names => {
                    r.roles(slot, head, &mut |a, role| {
                        if let Role::Name(kind) = role {
                            self.name(s, kind, a);
                        }
                    });
                }
                Met::Slot { .. } => {}
                Met::Problem(p) => self.problem(s, &r, &p),
            }
        }
    }

    /// Notes the names that a statement and its block use, and says nothing of the rest.
    fn names_only(&mut self, s: Stmt<'a>, form: &'static Form) {
        let mut r = Reader::new(form, s, self.known);
        while let Some(m) = r.next() {
            match m {
                Met::Subject(kind, false, a) => self.name(s, kind, a),
                Met::Slot { slot, head, .. } if slot.names => {
                    r.roles(slot, head, &mut |a, role| {
                        if let Role::Name(kind) = role {
                            self.name(s, kind, a);
                        }
                    });
                }
                _ => {}
            }
        }
        for line in s.block().into_iter().flat_map(Lines::iter) {
            if let Some(f) = form.block.form(line.keyword()) {
                self.names_only(line, f);
            }
        }
    }

    /// Figures that are in the line of a statement and in its block: which of the two counts would
    /// be a guess.
    fn line_and_block(&mut self, block: Lines<'a>, single: &[(&'static str, Span)]) {
        for line in block.iter() {
            let Some((word, first)) = single.iter().find(|x| line.keyword() == Some(x.0)) else {
                continue;
            };
            if self.said(line) {
                continue;
            }
            let at = line.atoms().first().map_or(line.head_span(), |a| a.span);
            let d = Diagnostic::new(
                &codes::SAID_TWICE,
                self.cx.loc(at),
                format!("`{word}` is in the line of this statement already."),
            )
            .at("again here")
            .also(self.cx.loc(*first), "first here")
            .help("Remove one of the two.");
            self.cx.push(d);
        }
    }

    fn name(&mut self, s: Stmt<'a>, kind: NameKind, a: &Atom) {
        if kind.is_checked() {
            let name = match s.value(*a).filter(|v| v.upper().is_some()) {
                // of `harbour to A1` the station
                Some(v) if kind == NameKind::Station => v.expr().span(),
                _ => forms::name_of(s, a),
            };
            let loc = self.cx.loc(name);
            self.names.push(Mention { kind, loc });
        }
    }

    fn block(&mut self, s: Stmt<'a>, form: &'static Form, block: Lines<'a>) {
        if matches!(form.block, Block::None) {
            if block.iter().next().is_some() && !self.said(s) {
                let at = Span::new(block.span().start, block.span().start + 1);
                let d = Diagnostic::new(
                    &codes::UNEXPECTED_WORD,
                    self.cx.loc(at),
                    format!("{} has no block.", capital(form.noun)),
                )
                .at("no block stands here");
                self.cx.push(d);
            }
            return;
        }
        let mut once: Vec<(&'static str, Span)> = Vec::new();
        for line in block.iter() {
            let Some(f) = form.block.form(line.keyword()) else {
                self.misplaced(line, form);
                continue;
            };
            // what they say is checked where the station is known
            if form.block.context() == Some(Context::Variant) && f.block.context().is_some() {
                self.names_only(line, f);
                continue;
            }
            if f.once && !f.word.is_empty() {
                let at = line.atoms().first().map_or(line.head_span(), |a| a.span);
                match once.iter().find(|o| o.0 == f.word) {
                    Some((_, first)) => self.again(line, f.word, at, *first),
                    None => once.push((f.word, at)),
                }
            }
            self.statement(line, f);
        }
    }

    /// Whether the line has a finding already, or could not be read.
    fn said(&self, s: Stmt<'a>) -> bool {
        let line = s.head_span();
        s.is_broken()
            || self.cx.diags.iter().any(|d| {
                // one finding about several lines names the others beside it
                let mut at = std::iter::once(&d.primary).chain(&d.related);
                at.any(|l| line.start <= l.loc.span.start && l.loc.span.end <= line.end)
            })
    }

    /// A line that this statement's block does not have, though others do.
    fn misplaced(&mut self, line: Stmt<'a>, form: &'static Form) {
        let (Some(word), false) = (line.keyword(), self.said(line)) else {
            return;
        };
        // said of the part as a whole
        let this = format!("this is {}", form.noun);
        if self.cx.diags.iter().any(|d| d.message.contains(&this)) {
            return;
        }
        let at = line.atoms().first().map_or(line.head_span(), |a| a.span);
        let mut words: Vec<&str> = form.block.lines().iter().map(|f| f.word).collect();
        words.retain(|w| !w.is_empty());
        self.cx.push(
            Diagnostic::new(
                &codes::MISPLACED_STATEMENT,
                self.cx.loc(at),
                format!("`{word}` has no meaning in {}.", form.noun),
            )
            .at("not here")
            .help(format!("What can stand here: {}.", words.join(", "))),
        );
    }

    fn again(&mut self, line: Stmt<'a>, word: &str, at: Span, first: Span) {
        if self.said(line) {
            return;
        }
        let d = Diagnostic::new(
            &codes::SAID_TWICE,
            self.cx.loc(at),
            format!("`{word}` stands in this block already."),
        )
        .at("again here")
        .also(self.cx.loc(first), "first here")
        .help("Remove one of the two lines.");
        self.cx.push(d);
    }

    fn problem(&mut self, s: Stmt<'a>, r: &Reader<'a, '_>, p: &Problem<'a>) {
        if !self.said(s) {
            report(self.cx, s, r, self.known, p);
        }
    }
}

/// Says what the table knows of a word that lowering did not expect: that it stands there already,
/// or that an earlier one excludes it. False if it knows nothing of the kind.
pub(crate) fn known_to_table<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, word: &Atom) -> bool {
    let Some(form) = forms::form_of(s) else {
        return false;
    };
    let places = places(cx.item);
    let known = Known {
        lets: cx.lets,
        places: &places,
    };
    let mut r = Reader::new(form, s, known);
    while let Some(m) = r.next() {
        if let Met::Problem(
            p @ (Problem::Twice { again: at, .. } | Problem::Contradicts { at, .. }),
        ) = m
            && at.span == word.span
        {
            report(cx, s, &r, known, &p);
            return true;
        }
    }
    false
}

/// Whether a word that follows the name of a band is the name of a further one.
pub(crate) fn names_band<'a>(cx: &Cx<'a>, s: Stmt<'a>, word: &Atom) -> bool {
    let Some(form) = forms::form_of(s) else {
        return false;
    };
    let places = places(cx.item);
    let known = Known {
        lets: cx.lets,
        places: &places,
    };
    Reader::new(form, s, known).names_band(word)
}

/// Reports a problem of a statement.
fn report<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, r: &Reader<'a, '_>, known: Known<'_>, p: &Problem<'a>) {
    let form = r.form;
    let d = match p {
        Problem::Stray(a) => stray(cx, r, a),
        Problem::Missing { slot, at, .. } => {
            let span = at.map_or_else(|| end(s), |a| a.span);
            let what = match slot.words().next() {
                Some(w) => format!("What follows `{w}` is missing."),
                None => "Something is missing here.".to_owned(),
            };
            Diagnostic::new(&codes::MISSING_VALUE, cx.loc(span), what)
                .at("something is missing")
                .help(format!("Written for example `{}`.", slot.example))
        }
        Problem::Twice { slot, again } => return twice(cx, s, form, known, (slot, again)),
        Problem::Contradicts {
            first,
            second,
            at,
            rule,
        } => {
            let Some(earlier) = place_of(s, form, known, first) else {
                return;
            };
            let _ = second;
            let loc = cx.loc(earlier);
            let text = cx.text(earlier);
            let (rule, instead) = (rule.rule, rule.instead);
            return exclusive(cx, s, at.span, (text, loc), (rule, instead));
        }
        Problem::TooEarly { slot, at, why } => Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            cx.loc(at.span),
            format!("`{}` {why}.", cx.text(at.span)),
        )
        .at("of what?")
        .help(format!(
            "Written for example `{}`.",
            example_with(form, slot)
        )),
        Problem::SubjectMissing(_) | Problem::Needs(_) => {
            let what = match p {
                Problem::Needs(what) => (*what).to_owned(),
                _ => format!("{} needs a name", form.noun),
            };
            Diagnostic::new(
                &codes::MISSING_VALUE,
                cx.loc(s.head_span()),
                format!("{}.", capital(&what)),
            )
            .at("something is missing")
            .help(format!(
                "Written for example `{}`.",
                form.examples.first().unwrap_or(&"")
            ))
        }
    };
    cx.push(d);
}

fn stray<'a>(cx: &Cx<'a>, r: &Reader<'a, '_>, a: &Atom) -> Diagnostic {
    let loc = cx.loc(a.span);
    let text = cx.text(a.span);
    let d = Diagnostic::new(
        &codes::UNEXPECTED_WORD,
        loc,
        format!("`{text}` has no meaning in {}.", r.form.noun),
    )
    .at("not understood");
    if let Some(n) = meant_word(text, r).filter(|n| *n != text) {
        return d
            .help(format!("Did you mean `{n}`?"))
            .fix(format!("write `{n}`"), loc, n);
    }
    let mut words: Vec<&str> = r
        .form
        .all_slots()
        .filter(|s| s.alike.is_none() && s.stands != Stands::First)
        .filter(|s| r.refuses(s, r.have_for(s)).is_none())
        .flat_map(Slot::words)
        .collect();
    words.truncate(LISTED);
    match words.is_empty() {
        true => d,
        false => d.help(format!("What can still stand here: {}.", words.join(", "))),
    }
}

/// A slot that stands again: two words of a set exclude each other, a second figure is one too
/// many.
fn twice<'a>(
    cx: &mut Cx<'a>,
    s: Stmt<'a>,
    form: &'static Form,
    known: Known<'_>,
    (slot, again): (&'static Slot, &'a Atom),
) {
    let Some(first) = place_of(s, form, known, slot) else {
        return;
    };
    let (text, earlier) = (cx.text(again.span), cx.text(first));
    let loc = cx.loc(first);
    if let Begins::OneOf(set) = slot.begins
        && text != earlier
    {
        // `typical nominal` says one thing in two words
        let means = |w: &str| {
            let of = set.words.iter().find(|x| x.word == w);
            of.map(|x| x.alike.unwrap_or(x.word))
        };
        if means(text) == means(earlier) {
            return;
        }
        return exclusive(cx, s, again.span, (earlier, loc), (set.rule, set.instead));
    }
    let what = match slot.words().next() {
        Some(_) => format!("`{text}` is said twice."),
        None => format!("`{earlier}` and `{text}` say the same thing twice."),
    };
    let d = Diagnostic::new(&codes::SAID_TWICE, cx.loc(again.span), what)
        .at("again here")
        .also(loc, "first here")
        .help("Remove one of them.");
    cx.push(d);
}

/// Whether a line is one name of a part, or one figure after its word: lowering has read all of it,
/// and it says nothing twice. Most lines are such.
fn is_plain(s: Stmt<'_>, form: &'static Form) -> bool {
    let value = |a: &Atom| matches!(a.kind, AtomKind::Value(_)) && !a.comma_before;
    match s.atoms() {
        [_] => form.subject == Subject::Use(NameKind::Tag) && form.word.is_empty(),
        [_, figure] => form.has_plain_figure() && value(figure),
        _ => false,
    }
}

/// The end of a statement's head.
fn end(s: Stmt<'_>) -> Span {
    let end = s.head_span().end;
    Span::new(end.saturating_sub(1), end)
}

/// Where a slot stands first: the statement is read once more, since this is rare.
fn place_of<'a>(
    s: Stmt<'a>,
    form: &'static Form,
    known: Known<'_>,
    slot: &'static Slot,
) -> Option<Span> {
    let mut r = Reader::new(form, s, known);
    while let Some(m) = r.next() {
        if let Met::Slot { slot: x, head, .. } = m
            && x.id == slot.id
        {
            return Some(head.span);
        }
    }
    None
}

/// An example of the statement that has the slot in it.
fn example_with(form: &'static Form, slot: &'static Slot) -> &'static str {
    let word = slot.words().next().unwrap_or("");
    let has = |e: &&&str| e.split([' ', ',']).any(|w| w == word);
    form.examples.iter().find(has).unwrap_or(&slot.example)
}
