//! The loop that says to which slot of its form each word of a statement belongs.

use std::sync::LazyLock;

use downlead_base::Span;
use downlead_quantity::{Dim, unit};
use downlead_syntax::{Atom, AtomKind, BinOp, Expr, ExprKind, Stmt};

use rustc_hash::FxHashMap;

use super::bundle::{ABOUT, AT, DISPLAYED, GUESS, ON, ONE_WHEN, PROMISE, RATED, READ, SHEET};
use super::types::{
    BLOCK, Begins, Exclusive, Form, Many, NameKind, Slot, Stands, Subject, Takes, pack,
};
use crate::cx::Lets;

/// What the text around a statement knows: the item's places and the scope's named values, and
/// nothing else, so that a statement reads the same until its own item changes.
#[derive(Clone, Copy)]
pub struct Known<'k> {
    /// Named values.
    pub lets: &'k Lets,
    /// Places of the station.
    pub places: &'k [&'k str],
}

/// What the loop meets next.
#[derive(Clone, Copy, Debug)]
pub enum Met<'a> {
    /// The name a statement gives or uses; `true` where it is given.
    Subject(NameKind, bool, &'a Atom),
    /// A slot: what it begins with, and what follows.
    Slot {
        /// The slot.
        slot: &'static Slot,
        /// Its word, or the value, name or text it begins with.
        head: &'a Atom,
        /// What follows.
        args: &'a [Atom],
        /// What it speaks of.
        scope: Scope,
    },
    /// Something that does not belong.
    Problem(Problem<'a>),
}

/// What a slot speaks of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scope {
    /// The statement.
    Statement,
    /// The figure whose group it stands in.
    Figure(u8),
}

/// Something that does not belong.
#[derive(Clone, Copy, Debug)]
pub enum Problem<'a> {
    /// Nothing of this statement begins so.
    Stray(&'a Atom),
    /// What must follow is not there.
    Missing {
        /// Of which slot.
        slot: &'static Slot,
        /// What the slot begins with.
        head: &'a Atom,
        /// Which of its operands.
        operand: usize,
        /// What stands there instead.
        at: Option<&'a Atom>,
    },
    /// Said already.
    Twice {
        /// The slot.
        slot: &'static Slot,
        /// Where it stands again.
        again: &'a Atom,
    },
    /// Excluded by what was said before.
    Contradicts {
        /// The earlier slot.
        first: &'static Slot,
        /// The later one.
        second: &'static Slot,
        /// Where that stands.
        at: &'a Atom,
        /// The rule.
        rule: &'static Exclusive,
    },
    /// Speaks of something that does not stand before it.
    TooEarly {
        /// The slot.
        slot: &'static Slot,
        /// Where.
        at: &'a Atom,
        /// Why.
        why: &'static str,
    },
    /// The name is missing.
    SubjectMissing(NameKind),
    /// Something is missing.
    Needs(&'static str),
}

/// Why a slot may not stand somewhere.
#[derive(Clone, Copy, Debug)]
pub enum Refusal {
    /// What it speaks of does not stand before it.
    TooEarly(&'static str),
    /// It was said already.
    Again,
    /// Another slot excludes it.
    Contradicts(&'static Slot, &'static Exclusive),
    /// Not at this place.
    NotHere,
}

/// What an atom of a slot is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// A word of the language.
    Word,
    /// A name.
    Name(NameKind),
    /// A path in quotes.
    Path,
    /// A value, a date, a text.
    Value,
}

/// Reads the atoms of a statement's head.
#[derive(Clone)]
pub struct Reader<'a, 'k> {
    /// The form.
    pub form: &'static Form,
    /// First bytes of the form's words, with their slots.
    words: &'static [(u64, &'static Slot)],
    stmt: Stmt<'a>,
    atoms: &'a [Atom],
    known: Known<'k>,
    i: usize,
    /// Where the group begins that is read, once it was reached.
    start: usize,
    /// Slots met so far.
    pub have: u64,
    /// Slots met of the figure of this group.
    pub in_figure: u64,
    /// Kinds of value met after a word that stands once for each kind, and those of the figure of
    /// this group.
    kinds: (u64, u64),
    /// The figure of this group.
    pub figure: Option<u8>,
    /// Whether the main figure can still come.
    pub first: bool,
    /// Whether no comma was met.
    pub head: bool,
    subject: bool,
    needs_at: usize,
    /// The end of the line is still being typed: a last word that begins a slot is no tag.
    pub(super) typing: bool,
    queued: Option<Met<'a>>,
}

/// The words of a form by their first bytes, in the order of its slots: a short list to search.
fn words_of(form: &'static Form) -> &'static [(u64, &'static Slot)] {
    type Words = Box<[(u64, &'static Slot)]>;
    static ALL: LazyLock<FxHashMap<usize, Words>> = LazyLock::new(|| {
        let mut all = FxHashMap::default();
        super::each(&mut |_, form| {
            let words = form.all_slots().flat_map(|s| {
                s.words()
                    .filter(|_| !matches!(s.begins, Begins::ValueAs(..)))
                    .map(move |w| (pack(w.split(' ').next().unwrap_or(w)), s))
            });
            all.insert(std::ptr::from_ref(form).addr(), words.collect());
        });
        all
    });
    ALL.get(&std::ptr::from_ref(form).addr())
        .map_or(&[], |w| &**w)
}

/// Whether a value may be a name: `2m`, `70cm` are written without a blank.
fn glued(stmt: Stmt<'_>, a: &Atom) -> bool {
    matches!(a.kind, AtomKind::Value(_)) && !stmt.text(*a).contains([' ', '\t', '±', '('])
}

/// A name at `i`: the place after it.
fn hit_name(
    r: &Reader<'_, '_>,
    i: usize,
    kind: NameKind,
    role: &mut dyn FnMut(usize, Role),
) -> Option<usize> {
    r.here(i).filter(|a| r.is_name(a))?;
    role(i, Role::Name(kind));
    Some(i + 1)
}

/// The span of the name an atom is: `rg-213 ± 5 %` is a name with a `±` that does not belong to it.
#[must_use]
pub fn name_of(stmt: Stmt<'_>, a: &Atom) -> Span {
    let Some(v) = stmt.value(*a).filter(|v| v.tolerance().is_some()) else {
        return a.span;
    };
    match v.expr().kind() {
        ExprKind::Name(word) => word,
        _ => a.span,
    }
}

fn dim_of_expr(e: Expr<'_>, lets: &Lets) -> Option<Dim> {
    match e.kind() {
        ExprKind::Number(n) => Some(n.unit.map_or(Dim::Count, |u| unit(u).dim)),
        ExprKind::Name(_) => lets.get(e.text()).map(|v| v.q.dim),
        ExprKind::Neg(x) | ExprKind::Per(x, _) => dim_of_expr(x, lets),
        ExprKind::Binary(op, l, r) => {
            let left = dim_of_expr(l, lets);
            match (op, left) {
                (BinOp::Mul, Some(Dim::Count)) => dim_of_expr(r, lets),
                (BinOp::Div, Some(d)) if d == dim_of_expr(r, lets)? => Some(Dim::Count),
                _ => left,
            }
        }
    }
}

impl<'a, 'k> Reader<'a, 'k> {
    /// Reads the head of a statement.
    #[must_use]
    pub fn new(form: &'static Form, stmt: Stmt<'a>, known: Known<'k>) -> Self {
        let atoms = stmt.atoms();
        let skip = usize::from(!form.word.is_empty() && !atoms.is_empty());
        Reader {
            form,
            words: words_of(form),
            stmt,
            atoms: &atoms[skip..],
            known,
            i: 0,
            start: if form.word.is_empty() { 0 } else { usize::MAX },
            have: if stmt.block().is_some() { BLOCK } else { 0 },
            in_figure: 0,
            kinds: (0, 0),
            figure: None,
            first: true,
            head: true,
            subject: false,
            needs_at: 0,
            typing: false,
            queued: None,
        }
    }

    /// The kind of a value, if it is one.
    fn dim(&self, a: &Atom) -> Option<Dim> {
        match a.kind {
            AtomKind::Value(_) => {
                let v = self.stmt.value(*a)?;
                match v.number() {
                    Some(n) => Some(n.unit.map_or(Dim::Count, |u| unit(u).dim)),
                    None => dim_of_expr(v.expr(), self.known.lets),
                }
            }
            AtomKind::Word => self.known.lets.get(self.stmt.text(*a)).map(|v| v.q.dim),
            AtomKind::Dms => Some(Dim::Angle),
            _ => None,
        }
    }

    fn is_value(&self, a: &Atom) -> bool {
        match a.kind {
            AtomKind::Value(_) | AtomKind::Dms => true,
            AtomKind::Word => self.known.lets.contains_key(self.stmt.text(*a)),
            _ => false,
        }
    }

    fn is_name(&self, a: &Atom) -> bool {
        a.kind == AtomKind::Word || glued(self.stmt, a) || name_of(self.stmt, a) != a.span
    }

    fn text(&self, a: &Atom) -> &'a str {
        self.stmt.text(*a)
    }

    /// The atom at a place, if it stands in the same group.
    fn here(&self, i: usize) -> Option<&'a Atom> {
        self.atoms
            .get(i)
            .filter(|a| !a.comma_before || i == self.start)
    }

    fn is(&self, i: usize, word: &str) -> bool {
        self.here(i)
            .is_some_and(|a| a.kind == AtomKind::Word && self.text(a) == word)
    }

    /// One operand at `i`: the place after it, or none where it is missing. `strict` asks for the
    /// kind of a value too.
    fn operand(
        &self,
        i: usize,
        t: &Takes,
        strict: bool,
        role: &mut dyn FnMut(usize, Role),
    ) -> Option<usize> {
        let next = self.here(i);
        let hit = |ok: bool, r: Role, role: &mut dyn FnMut(usize, Role)| {
            ok.then(|| {
                role(i, r);
                i + 1
            })
        };
        match t {
            Takes::Value(q) | Takes::Range(q) => {
                let a = next?;
                let ok = self.is_value(a)
                    && (!strict || self.dim(a).is_some_and(|d| q.dims.contains(&d)));
                hit(ok, Role::Value, role)
            }
            Takes::Values(q) => {
                let mut at = self.operand(i, &Takes::Value(q), strict, role)?;
                while let Some(n) = self.operand(at, &Takes::Value(q), strict, role) {
                    at = n;
                }
                Some(at)
            }
            Takes::Name(k) => hit(self.is_name(next?), Role::Name(*k), role),
            Takes::Names(k) => {
                let at = hit(self.is_name(next?), Role::Name(*k), role)?;
                let second = self.here(at).filter(|b| self.is_name(b));
                Some(match second {
                    Some(_) => {
                        role(at, Role::Name(*k));
                        at + 1
                    }
                    None => at,
                })
            }
            Takes::NamePair(k) => {
                let v = self.stmt.value(*next?)?;
                hit(v.upper().is_some(), Role::Name(*k), role)
            }
            Takes::Counted(k) => self.counted(i, *k, role),
            Takes::Band | Takes::Bands | Takes::BandNames => self.bands(i, t, role),
            Takes::OneOf(words) => self.word_of(i, words.iter().map(|w| w.word), role),
            Takes::Filler(words) => Some(self.word_of(i, words.iter().copied(), role).unwrap_or(i)),
            Takes::Text => hit(next?.kind == AtomKind::Str, Role::Value, role),
            Takes::Date => hit(next?.kind == AtomKind::Date, Role::Value, role),
            Takes::File(_) => hit(next?.kind == AtomKind::Str, Role::Path, role),
            Takes::May(t) => Some(self.operand(i, t, strict, role).unwrap_or(i)),
            Takes::Then(w, t) => {
                if !self.is(i, w) {
                    return Some(i);
                }
                role(i, Role::Word);
                self.operand(i + 1, t, strict, role)
            }
            // `to` makes one value of the names about it
            Takes::Hop => {
                let of = |i: usize| self.here(i).filter(|_| self.is(i, "of"));
                self.here(i).filter(|a| self.is_name(a))?;
                of(i + 1)?;
                self.stmt.value(*self.here(i + 2)?)?.upper()?;
                of(i + 3)?;
                self.here(i + 4).filter(|a| self.is_name(a))?;
                role(i, Role::Name(NameKind::Chain));
                role(i + 1, Role::Word);
                role(i + 2, Role::Value);
                role(i + 3, Role::Word);
                role(i + 4, Role::Name(NameKind::Station));
                Some(i + 5)
            }
            Takes::Antennas => {
                let mut at = self.end_of_first(i, role)?;
                if self.is(at, "of") {
                    role(at, Role::Word);
                    at = hit_name(self, at + 1, NameKind::Station, role)?;
                }
                Some(at)
            }
            Takes::Rest => {
                let mut at = i;
                while let Some(a) = self.here(at) {
                    let about = a.kind == AtomKind::Word
                        && self.find_word(at).is_some_and(|s| {
                            matches!(s.id, READ | SHEET | RATED | DISPLAYED | GUESS | PROMISE)
                                || s.id < ABOUT && self.args(s, at + 1, true).1.is_none()
                        });
                    if about {
                        break;
                    }
                    role(at, Role::Value);
                    at += 1;
                }
                Some(at)
            }
            Takes::Equals => hit(next?.kind == AtomKind::Equals, Role::Value, role),
        }
    }

    /// `A9 of harbour to A1`, `A9 to A1`, where `to` makes one value of the names about it: the
    /// place after it.
    fn end_of_first(&self, i: usize, role: &mut dyn FnMut(usize, Role)) -> Option<usize> {
        let pair = |i: usize| {
            let v = self.stmt.value(*self.here(i)?)?;
            let named = |e: Expr<'_>| matches!(e.kind(), ExprKind::Name(_));
            (named(v.expr()) && named(v.upper()?)).then_some(())
        };
        if pair(i).is_some() {
            role(i, Role::Value);
            return Some(i + 1);
        }
        let at = hit_name(self, i, NameKind::Tag, role)?;
        if !self.is(at, "of") {
            return None;
        }
        pair(at + 1)?;
        role(at, Role::Word);
        // the station is what stands before `to`
        role(at + 1, Role::Name(NameKind::Station));
        Some(at + 2)
    }

    /// `2 of n-pair`, `of n-pair`, `n-pair`.
    fn counted(
        &self,
        i: usize,
        kind: NameKind,
        role: &mut dyn FnMut(usize, Role),
    ) -> Option<usize> {
        let first = self.here(i)?;
        let counted = self.is_value(first) && (!glued(self.stmt, first) || self.is(i + 1, "of"));
        let mut at = i;
        if counted {
            role(at, Role::Value);
            at += 1;
            if !self.is(at, "of") {
                return None;
            }
        }
        if self.is(at, "of") {
            role(at, Role::Word);
            at += 1;
        }
        let name = self.here(at).filter(|a| self.is_name(a))?;
        // neither is `from "FILE"` a name
        if self.here(at + 1).is_some_and(|b| b.kind == AtomKind::Str) {
            return None;
        }
        // a bare number is none
        if self.dim(name) == Some(Dim::Count) && name.kind != AtomKind::Word {
            return None;
        }
        role(at, Role::Name(kind));
        Some(at + 1)
    }

    /// Whether the word at a place names a further band: it begins nothing, and is neither a place
    /// nor a named value.
    fn is_further_band(&self, i: usize, t: &Takes) -> bool {
        self.here(i).is_some_and(|b| match b.kind {
            AtomKind::Word => {
                let text = self.text(b);
                self.find_word(i).is_none()
                    && !self.known.places.contains(&text)
                    && !self.known.lets.contains_key(text)
            }
            _ => glued(self.stmt, b) || *t == Takes::Bands && self.dim(b) == Some(Dim::Frequency),
        })
    }

    /// Whether a word that follows the name of a band is a further one.
    #[must_use]
    pub fn names_band(&self, word: &Atom) -> bool {
        let at = self.atoms.iter().position(|a| a.span == word.span);
        at.is_some_and(|i| {
            let from = self.atoms[..=i].iter().rposition(|a| a.comma_before);
            let me = Reader {
                start: from.unwrap_or(self.start),
                ..self.clone()
            };
            me.is_further_band(i, &Takes::BandNames)
        })
    }

    /// Bands or frequencies that follow each other directly.
    fn bands(&self, i: usize, t: &Takes, role: &mut dyn FnMut(usize, Role)) -> Option<usize> {
        let a = self.here(i)?;
        let frequency = self.dim(a) == Some(Dim::Frequency) && *t != Takes::BandNames;
        if !frequency && !self.is_name(a) {
            return None;
        }
        let of = |frequency: bool| {
            if frequency {
                Role::Value
            } else {
                Role::Name(NameKind::Band)
            }
        };
        role(i, of(frequency));
        let mut at = i + 1;
        while *t != Takes::Band && self.is_further_band(at, t) {
            let frequency = self.dim(&self.atoms[at]) == Some(Dim::Frequency);
            role(at, of(frequency && *t != Takes::BandNames));
            at += 1;
        }
        Some(at)
    }

    /// One of some words, each of one or two atoms.
    fn word_of(
        &self,
        i: usize,
        words: impl Iterator<Item = &'static str>,
        role: &mut dyn FnMut(usize, Role),
    ) -> Option<usize> {
        for w in words {
            let n = w.split(' ').count();
            if w.split(' ').enumerate().all(|(k, w)| self.is(i + k, w)) {
                (i..i + n).for_each(|k| role(k, Role::Word));
                return Some(i + n);
            }
        }
        None
    }

    /// The slot that the word at a place begins.
    #[inline]
    fn find_word(&self, i: usize) -> Option<&'static Slot> {
        let text = self.text(&self.atoms[i]);
        let key = pack(text);
        for (k, s) in self.words {
            if *k != key {
                continue;
            }
            let hit = match s.begins {
                Begins::Word(w) => w == text,
                Begins::Phrase(w, second) => w == text && self.is(i + 1, second),
                Begins::OneOf(set) if s.spaced => {
                    let words = set.words.iter().map(|w| w.word);
                    self.word_of(i, words, &mut |_, _| {}).is_some()
                }
                Begins::OneOf(set) => set.words.iter().any(|w| w.word == text),
                _ => false,
            };
            if hit {
                return Some(s);
            }
        }
        None
    }

    /// The slot that a value begins: one of its kind, else the main figure that is still to come.
    fn find_value(&self, i: usize, d: Option<Dim>) -> Option<&'static Slot> {
        let (mut main, mut said) = (None, None);
        for s in self.form.all_slots() {
            let q = match s.begins {
                Begins::ValueAs(q, w) if self.is(i + 1, w) => q,
                Begins::ValueAs(q, _) => {
                    // a value that wants a word which says what it is
                    if s.stands != Stands::First && d.is_some_and(|d| q.dims.contains(&d)) {
                        said = said.or(Some(s));
                    }
                    continue;
                }
                Begins::Value(q) => q,
                _ => continue,
            };
            let is_first = s.stands == Stands::First;
            if is_first && !(self.first && self.head) {
                continue;
            }
            if d.is_some_and(|d| q.dims.contains(&d)) {
                return Some(s);
            }
            if is_first && main.is_none() {
                main = Some(s);
            }
        }
        main.or(said)
    }

    fn find(&self, i: usize) -> Option<&'static Slot> {
        let a = &self.atoms[i];
        // a named value that is called like a word is the main figure where that is due
        let named = self.first
            && self.head
            && self.known.lets.contains_key(self.text(a))
            && self.form.main() != 0;
        let word = a.kind == AtomKind::Word && !named;
        if word && let Some(s) = self.find_word(i) {
            return Some(s);
        }
        if self.is_value(a)
            && let Some(s) = self.find_value(i, self.dim(a))
        {
            return Some(s);
        }
        self.form.all_slots().find(|s| match (s.begins, a.kind) {
            (Begins::Text, AtomKind::Str) | (Begins::Date, AtomKind::Date) => true,
            (Begins::Place, AtomKind::Word) => self.known.places.contains(&self.text(a)),
            (Begins::Bare(t), _) => {
                let stands = match s.stands {
                    Stands::First => self.first && self.head,
                    _ => a.comma_before,
                };
                stands && self.operand(i, t, false, &mut |_, _| {}).is_some()
            }
            _ => false,
        })
    }

    /// Whether a word is a tag: it begins no slot, or what follows does not fit that slot.
    fn is_tag(&self, i: usize) -> bool {
        let Some(a) = self.here(i).filter(|a| a.kind == AtomKind::Word) else {
            return false;
        };
        let text = self.text(a);
        if self.known.lets.contains_key(text) || self.is(i, "of") {
            return false;
        }
        match self.find_word(i) {
            None => true,
            Some(_) if self.typing && self.here(i + 1).is_none() => false,
            // what it speaks of cannot stand before it
            Some(s) if matches!(s.stands, Stands::After(..)) => true,
            Some(s) => self.args(s, i + 1, true).1.is_some(),
        }
    }

    /// Whether the statement gives a tag: the first word after its keyword.
    #[must_use]
    pub fn has_tag(&self) -> bool {
        match self.form.subject {
            Subject::Tag => self.is_tag(0),
            Subject::TagBefore => self.is_tag(0) && self.here(1).is_some(),
            _ => false,
        }
    }

    /// What follows the word of a slot at `i`: its end, and the operand that is missing.
    fn args(&self, s: &'static Slot, i: usize, strict: bool) -> (usize, Option<usize>) {
        let mut at = i;
        for (n, t) in s.takes.iter().enumerate() {
            match self.operand(at, t, strict, &mut |_, _| {}) {
                Some(next) => at = next,
                None => return (at, Some(n)),
            }
        }
        (at, None)
    }

    /// Why a slot may not stand here; the same question for reading and for what is offered.
    #[must_use]
    pub fn refuses(&self, slot: &'static Slot, have: u64) -> Option<Refusal> {
        match slot.stands {
            Stands::After(id, why) if self.have & (1 << id) == 0 => {
                return Some(Refusal::TooEarly(why));
            }
            Stands::Head if !self.head => return Some(Refusal::NotHere),
            Stands::Start if !(self.head && self.first) => return Some(Refusal::NotHere),
            _ => {}
        }
        if have & slot.bit() != 0 && slot.many == Many::Once {
            return Some(Refusal::Again);
        }
        let clashes = |x: &&Exclusive| {
            x.slots & slot.bit() != 0 && x.slots & have & !slot.bit() & !BLOCK != 0
        };
        let rule = self.form.exclusive.iter().find(clashes)?;
        let first = rule.slots & have & !slot.bit() & !BLOCK;
        let first = self.form.slot(first.trailing_zeros() as u8)?;
        Some(Refusal::Contradicts(first, rule))
    }

    /// Slots met of what a slot would speak of.
    #[must_use]
    pub fn have_for(&self, slot: &Slot) -> u64 {
        if slot.id >= ABOUT && self.figure.is_some() {
            self.in_figure
        } else {
            self.have
        }
    }

    /// What each atom of a slot is.
    pub fn roles(&self, slot: &'static Slot, head: &'a Atom, role: &mut dyn FnMut(&'a Atom, Role)) {
        let Some(i) = self.atoms.iter().position(|a| std::ptr::eq(a, head)) else {
            return;
        };
        let me = Reader {
            start: i,
            ..self.clone()
        };
        let mut put = |k: usize, r: Role| role(&me.atoms[k], r);
        let (first, second) = match slot.begins {
            Begins::Word(_) => (Role::Word, None),
            Begins::Phrase(..) => (Role::Word, Some(Role::Word)),
            Begins::OneOf(set) => {
                let words = set.words.iter().map(|w| w.word);
                let end = me.word_of(i, words, &mut put).unwrap_or(i + 1);
                me.operands(slot, end, &mut put);
                return;
            }
            Begins::Value(_) => (Role::Value, None),
            Begins::ValueAs(_, w) => (Role::Value, me.is(i + 1, w).then_some(Role::Word)),
            Begins::Place => (Role::Name(NameKind::Place), None),
            Begins::Text | Begins::Date => (Role::Value, None),
            Begins::Bare(t) => {
                let end = me.operand(i, t, false, &mut put).unwrap_or(i + 1);
                me.operands(slot, end, &mut put);
                return;
            }
        };
        put(i, first);
        if let Some(r) = second {
            put(i + 1, r);
        }
        me.operands(slot, i + 1 + usize::from(second.is_some()), &mut put);
    }

    fn operands(&self, slot: &'static Slot, from: usize, put: &mut dyn FnMut(usize, Role)) {
        let mut at = from;
        for t in slot.takes {
            match self.operand(at, t, false, put) {
                Some(next) => at = next,
                None => return,
            }
        }
    }

    fn subject(&mut self) -> Option<Met<'a>> {
        self.subject = true;
        let a = self.here(0);
        let (kind, given) = match self.form.subject {
            Subject::Nothing | Subject::Itself(_) => return None,
            Subject::Tag | Subject::TagBefore => {
                if !self.has_tag() {
                    return None;
                }
                (NameKind::Tag, true)
            }
            Subject::MayNew(k) => {
                a.filter(|a| self.is_name(a))?;
                (k, true)
            }
            Subject::New(k) => (k, true),
            Subject::Use(k) => (k, false),
        };
        match a.filter(|a| self.is_name(a)) {
            Some(a) => {
                self.i = 1;
                Some(Met::Subject(kind, given, a))
            }
            None => Some(Met::Problem(Problem::SubjectMissing(kind))),
        }
    }

    /// The next thing of the statement.
    #[allow(
        clippy::should_implement_trait,
        reason = "it borrows nothing of the reader"
    )]
    pub fn next(&mut self) -> Option<Met<'a>> {
        if let Some(m) = self.queued.take() {
            return Some(m);
        }
        if !self.subject
            && let Some(m) = self.subject()
        {
            return Some(m);
        }
        let i = self.i;
        let atoms = self.atoms;
        let Some(a) = atoms.get(i) else {
            return self.end();
        };
        if a.comma_before {
            self.figure = None;
            self.in_figure = 0;
            self.kinds.1 = 0;
            self.head = false;
            self.start = i;
        }
        if a.kind == AtomKind::Error {
            self.i = i + 1;
            return self.next();
        }
        let Some(slot) = self.find(i) else {
            // one finding a group: what follows a stray word belongs to it
            self.i = i + 1;
            while self.here(self.i).is_some() {
                self.i += 1;
            }
            return Some(Met::Problem(Problem::Stray(a)));
        };
        Some(self.met(slot, i))
    }

    /// What is wrong with a slot at this place.
    fn refused(&self, slot: &'static Slot, a: &'a Atom) -> Option<Problem<'a>> {
        self.refuses(slot, self.have_for(slot)).map(|r| match r {
            Refusal::TooEarly(why) => Problem::TooEarly { slot, at: a, why },
            Refusal::Again => Problem::Twice { slot, again: a },
            Refusal::Contradicts(first, rule) => Problem::Contradicts {
                first,
                second: slot,
                at: a,
                rule,
            },
            Refusal::NotHere => Problem::Stray(a),
        })
    }

    /// Notes when a figure holds: twice a temperature, or on a band and at a frequency, is a problem.
    fn said_of_kind(
        &mut self,
        slot: &'static Slot,
        a: &'a Atom,
        args: &'a [Atom],
    ) -> Option<Problem<'a>> {
        if !matches!(slot.id, AT | ON) {
            return None;
        }
        let kind = match slot.many {
            Many::OncePerKind => self.dim(args.first()?)?,
            _ => Dim::Frequency,
        };
        let (bit, on) = (1u64 << (kind as u8), 1u64 << 63);
        let at_frequency = 1u64 << (Dim::Frequency as u8);
        let have = match self.figure {
            Some(_) => &mut self.kinds.1,
            None => &mut self.kinds.0,
        };
        let before = *have;
        *have |= if slot.id == ON { on } else { bit };
        let other = match slot.id {
            ON => before & at_frequency != 0,
            _ => bit == at_frequency && before & on != 0,
        };
        if other {
            let first = self.form.slot(if slot.id == ON { AT } else { ON })?;
            return Some(Problem::Contradicts {
                first,
                second: slot,
                at: a,
                rule: &ONE_WHEN,
            });
        }
        (slot.id == AT && before & bit != 0).then_some(Problem::Twice { slot, again: a })
    }

    /// Takes a slot that begins at `i`.
    fn met(&mut self, slot: &'static Slot, i: usize) -> Met<'a> {
        let atoms = self.atoms;
        let a = &atoms[i];
        let scope = match self.figure {
            Some(f) if slot.id >= ABOUT => Scope::Figure(f),
            _ => Scope::Statement,
        };
        let problem = self.refused(slot, a);
        if slot.stands == Stands::First
            || matches!(slot.begins, Begins::Value(_) | Begins::ValueAs(..))
        {
            self.first = false;
        }
        if scope == Scope::Statement {
            self.have |= slot.bit();
        } else {
            self.in_figure |= slot.bit();
        }
        if let Begins::ValueAs(_, w) = slot.begins
            && !self.is(i + 1, w)
        {
            self.i = i + 1;
            let at = self.here(i + 1);
            return Met::Problem(Problem::Missing {
                slot,
                head: a,
                operand: 0,
                at,
            });
        }
        let from = match slot.begins {
            Begins::Phrase(..) | Begins::ValueAs(..) => i + 2,
            Begins::OneOf(set) if slot.spaced => self
                .word_of(i, set.words.iter().map(|w| w.word), &mut |_, _| {})
                .unwrap_or(i + 1),
            Begins::Bare(t) => self.operand(i, t, false, &mut |_, _| {}).unwrap_or(i + 1),
            _ => i + 1,
        };
        let (end, missing) = self.args(slot, from, false);
        self.i = end;
        if slot.figure {
            self.figure = Some(slot.id);
            self.in_figure = 0;
            self.kinds.1 = 0;
        }
        if let Some(operand) = missing {
            // the operand of a word that may be missing together with it
            let then =
                matches!(slot.takes.get(operand), Some(Takes::Then(w, _)) if self.is(end, w));
            let end = end + usize::from(then);
            self.i = end;
            return Met::Problem(Problem::Missing {
                slot,
                head: a,
                operand: if end == from { 0 } else { operand },
                at: self.here(end),
            });
        }
        let problem = problem.or_else(|| self.said_of_kind(slot, a, &atoms[from.min(end)..end]));
        let met = Met::Slot {
            slot,
            head: a,
            args: &atoms[from.min(end)..end],
            scope,
        };
        match problem {
            Some(p) => {
                if !matches!(p, Problem::TooEarly { .. }) {
                    self.queued = Some(met);
                }
                Met::Problem(p)
            }
            None => met,
        }
    }

    fn end(&mut self) -> Option<Met<'a>> {
        while let Some(n) = self.form.needs.get(self.needs_at) {
            self.needs_at += 1;
            if (n.when == 0 || self.have & n.when != 0) && self.have & n.one_of == 0 {
                return Some(Met::Problem(Problem::Needs(n.what)));
            }
        }
        None
    }

    /// Whether no atom is left.
    #[must_use]
    pub fn done(&self) -> bool {
        self.i >= self.atoms.len()
    }
}
