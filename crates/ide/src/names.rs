//! What every word of an item is: keyword, word, or the name of something, and whether the name is
//! given or used there. By the table of statements alone, so broken lines have their names too.

use downlead_base::Span;
use downlead_station::Lets;
pub(crate) use downlead_station::forms::NameKind;
use downlead_station::forms::{
    self, Begins, Block, Form, Known, Met, Problem, Reader, Role, Slot, Subject, Takes, name_of,
};
use downlead_station::keywords::{Context, form_in, is_word, keyword};
use downlead_syntax::{Atom, AtomKind, Expr, ExprKind, Item, Stmt};

/// What a piece of text is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Class {
    /// Begins a statement, in this context.
    Keyword(Context),
    /// A word inside a statement, with what it says.
    Word(&'static str),
    /// A name; `true` where it is given.
    Name(NameKind, bool),
    /// Path of `use`.
    Path,
    /// The port name that is a keyword: `high`, `low` in a device's block.
    Leg,
}

/// A piece of text with what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Piece {
    /// Relative to the item.
    pub(crate) span: Span,
    pub(crate) class: Class,
}

/// Context inside the block of a statement that begins with `word`, given the statement's own.
pub(crate) fn inner_context(word: &str, cx: Context) -> Option<Context> {
    match form_in(cx, word) {
        Some(f) => f.block.context(),
        // `DV1 { branch { … } }`
        None => (cx == Context::Chain).then_some(Context::Chain),
    }
}

/// Place names of the station an item is.
pub(crate) fn places_of(item: &Item) -> Vec<&str> {
    let Some(st) = item.statement().filter(|s| s.keyword() == Some("station")) else {
        return Vec::new();
    };
    st.block()
        .into_iter()
        .flat_map(|b| b.iter())
        .filter(|s| s.keyword() == Some("place"))
        .filter_map(|s| s.atoms().get(1).map(|a| s.text(*a)))
        .collect()
}

/// The pieces of an item, in the order of the text. `lets` are the named values.
pub(crate) fn pieces(item: &Item, lets: &Lets) -> Vec<Piece> {
    let places = places_of(item);
    let mut w = Walk {
        out: Vec::new(),
        known: Known {
            lets,
            places: &places,
        },
    };
    for s in item.statements() {
        w.statement(s, forms::top());
    }
    w.out.sort_by_key(|p| (p.span.start, p.span.end));
    w.out
}

struct Walk<'k> {
    out: Vec<Piece>,
    known: Known<'k>,
}

impl<'k> Walk<'k> {
    fn put(&mut self, span: Span, class: Class) {
        self.out.push(Piece { span, class });
    }

    fn statement<'a>(&mut self, s: Stmt<'a>, block: Block) {
        let cx = block.context().unwrap_or(Context::Table);
        let word = s.keyword();
        // a statement of another place has its words too
        let elsewhere = || word.and_then(keyword)?.forms.first().copied();
        let tag =
            |f: &&'static Form| f.word.is_empty() && word.is_some_and(|w| keyword(w).is_some());
        let form = match block.form(word).filter(|f| !tag(f)) {
            Some(f) => Some(f),
            None => elsewhere(),
        };
        let Some(form) = form else { return };
        if let (Some(first), false) = (s.atoms().first(), form.word.is_empty()) {
            match form.subject {
                Subject::Itself(_) => self.put(first.span, Class::Leg),
                _ => self.put(first.span, Class::Keyword(cx)),
            }
        }
        self.head(s, form);
        for x in s.block().into_iter().flat_map(|b| b.iter()) {
            self.statement(x, form.block);
        }
    }

    fn head<'a>(&mut self, s: Stmt<'a>, form: &'static Form) {
        let mut r = Reader::new(form, s, self.known);
        while let Some(m) = r.next() {
            match m {
                Met::Subject(NameKind::Tag, false, a) => self.tag_use(s, a),
                Met::Subject(kind, given, a) => self.put(a.span, Class::Name(kind, given)),
                Met::Slot { slot, head, .. } => self.slot(s, &r, slot, head),
                Met::Problem(
                    Problem::Missing { slot, head, .. } | Problem::TooEarly { slot, at: head, .. },
                ) => self.slot(s, &r, slot, head),
                Met::Problem(Problem::Stray(a)) => self.stray(s, form, a),
                Met::Problem(_) => {}
            }
        }
    }

    /// The word and the operands of a slot.
    fn slot<'a>(&mut self, s: Stmt<'a>, r: &Reader<'a, '_>, slot: &'static Slot, head: &'a Atom) {
        let mut found: Vec<(&'a Atom, Role)> = Vec::new();
        r.roles(slot, head, &mut |a, role| found.push((a, role)));
        let antennas = matches!(slot.begins, Begins::Bare(Takes::Antennas));
        for (a, role) in found {
            if antennas && self.ends_of_isolation(s, a, role) {
                continue;
            }
            match role {
                Role::Word => {
                    let doc = said_by(slot, s.text(*a));
                    self.put(a.span, Class::Word(doc));
                }
                Role::Name(kind) => self.name(s, kind, a),
                Role::Path if form_is_use(r.form) => self.put(a.span, Class::Path),
                Role::Path => {}
                Role::Value => self.value(s, a),
            }
        }
    }

    /// The names about `to` in `A9 of harbour to A1`, which are one value; false of what is none.
    fn ends_of_isolation<'a>(&mut self, s: Stmt<'a>, a: &Atom, role: Role) -> bool {
        let Some((from, to)) = s.value(*a).and_then(|v| Some((v.expr(), v.upper()?))) else {
            return false;
        };
        let first = match role {
            Role::Name(kind) => kind,
            _ => NameKind::Tag,
        };
        self.put(from.span(), Class::Name(first, false));
        self.put(to.span(), Class::Name(NameKind::Tag, false));
        true
    }

    /// A name, or the two of `n to uhf`.
    fn name<'a>(&mut self, s: Stmt<'a>, kind: NameKind, a: &Atom) {
        match s.value(*a).and_then(|v| Some((v.expr(), v.upper()?))) {
            Some((from, to)) => {
                self.put(from.span(), Class::Name(kind, false));
                self.put(to.span(), Class::Name(kind, false));
            }
            None => self.put(name_of(s, a), Class::Name(kind, false)),
        }
    }

    /// `DU1` or `DU1.high`, in a chain or among readings.
    fn tag_use<'a>(&mut self, s: Stmt<'a>, a: &Atom) {
        let Some((tag, _)) = s.text(*a).split_once('.') else {
            self.put(a.span, Class::Name(NameKind::Tag, false));
            return;
        };
        let dot = a.span.start + crate::view::to32(tag.len());
        self.put(
            Span::new(a.span.start, dot),
            Class::Name(NameKind::Tag, false),
        );
        if dot + 1 < a.span.end {
            self.put(
                Span::new(dot + 1, a.span.end),
                Class::Name(NameKind::Port, false),
            );
        }
    }

    /// A group that begins with a word of no meaning here: its values and known words all the same.
    fn stray<'a>(&mut self, s: Stmt<'a>, form: &'static Form, first: &'a Atom) {
        let atoms = s.atoms();
        let Some(from) = atoms.iter().position(|a| std::ptr::eq(a, first)) else {
            return;
        };
        let len = atoms[from + 1..]
            .iter()
            .position(|a| a.comma_before)
            .map_or(atoms.len() - from, |n| n + 1);
        for (n, a) in atoms[from..from + len].iter().enumerate() {
            let text = s.text(*a);
            match a.kind {
                AtomKind::Value(_) => self.value(s, a),
                AtomKind::Word if self.known.lets.contains_key(text) => self.value(s, a),
                AtomKind::Word if is_word(text) || keyword(text).is_some() => {
                    self.put(a.span, Class::Word(""));
                }
                // a lone word in its own group of a part is a place that is not defined
                AtomKind::Word if n == 0 && a.comma_before && has_place(form) => {
                    self.put(a.span, Class::Name(NameKind::Place, false));
                }
                _ => {}
            }
        }
    }

    fn value<'a>(&mut self, s: Stmt<'a>, a: &Atom) {
        if a.kind == AtomKind::Word && self.known.lets.contains_key(s.text(*a)) {
            self.put(a.span, Class::Name(NameKind::Let, false));
            return;
        }
        if a.kind == AtomKind::Word && is_word(s.text(*a)) {
            self.put(
                a.span,
                Class::Word("signal, noise and distortion over noise and distortion"),
            );
            return;
        }
        let Some(v) = s.value(*a) else { return };
        self.expr(v.expr());
        if let Some((t, _)) = v.tolerance() {
            self.expr(t);
        }
        if let Some(u) = v.upper() {
            self.expr(u);
        }
    }

    fn expr(&mut self, e: Expr<'_>) {
        match e.kind() {
            ExprKind::Name(span) => self.put(span, Class::Name(NameKind::Let, false)),
            ExprKind::Neg(x) | ExprKind::Per(x, _) => self.expr(x),
            ExprKind::Binary(_, l, r) => {
                self.expr(l);
                self.expr(r);
            }
            ExprKind::Number(_) => {}
        }
    }
}

fn form_is_use(form: &Form) -> bool {
    form.word == "use"
}

fn has_place(form: &'static Form) -> bool {
    form.all_slots().any(|s| s.begins == Begins::Place)
}

/// What a word says in a slot: of a closed set what the word itself says, else what the slot does.
fn said_by(slot: &'static Slot, text: &str) -> &'static str {
    let among = |words: &'static [forms::Word]| {
        words
            .iter()
            .find(|w| w.word.split(' ').any(|w| w == text))
            .map(|w| w.doc)
    };
    let of_set = match slot.begins {
        Begins::OneOf(set) => among(set.words),
        _ => None,
    };
    let of_operand = |t: &'static Takes| match t {
        Takes::OneOf(words) | Takes::Then(_, Takes::OneOf(words)) => among(words),
        _ => None,
    };
    of_set
        .or_else(|| slot.takes.iter().find_map(of_operand))
        .unwrap_or(slot.doc)
}

/// The piece that an offset touches, names before words.
pub(crate) fn piece_at(pieces: &[Piece], offset: u32) -> Option<Piece> {
    let touching = pieces.iter().filter(|p| p.span.touches(offset));
    touching
        .max_by_key(|p| {
            (
                matches!(p.class, Class::Name(..) | Class::Path),
                p.span.start,
            )
        })
        .copied()
}
