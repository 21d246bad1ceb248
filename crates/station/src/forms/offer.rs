//! What may come next in a statement: the reader runs up to the cursor, and what it would take
//! there is offered.

use downlead_quantity::{Dim, unit};
use downlead_syntax::Stmt;

use super::bundle::{ABOUT, FROM};
use super::quantity::FREQUENCY as OF_BAND;
use super::reader::{Known, Met, Problem, Reader};
use super::types::{
    Begins, Block, FileKind, Form, NameKind, Quantity, Slot, Stands, Subject, Takes,
};

/// Something that may come next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Offer {
    /// A word, with what it says.
    Word {
        /// The word.
        text: &'static str,
        /// The word that always follows it.
        second: Option<&'static str>,
        /// What it says.
        doc: &'static str,
        /// Words of the trade that mean it.
        also: &'static [&'static str],
        /// What the statement waits for comes before its own words, those before what every figure
        /// takes.
        rank: u8,
    },
    /// A name.
    Name(NameKind),
    /// A name, maybe with a count.
    Counted(NameKind),
    /// A name that only the author knows.
    NewName(NameKind),
    /// A value of a quantity.
    Value(&'static Quantity),
    /// A text in quotes that must follow.
    Text,
    /// A text in quotes, by itself.
    Cite,
    /// A date.
    Date,
    /// A path in quotes.
    File(FileKind),
}

/// What may stand after the head of a statement; `comma` says that a group has just begun.
#[must_use]
pub fn offers(form: &'static Form, stmt: Stmt<'_>, comma: bool, known: Known<'_>) -> Vec<Offer> {
    let mut r = Reader::new(form, stmt, known);
    let mut out = Vec::new();
    let end = Ending::of(&mut r);
    // also where a value before it swallowed the word: `46 ± of`
    let swallowed = |s: &&'static Slot| {
        let last = stmt.atoms().last().map_or("", |a| stmt.text(*a));
        s.words().all(|w| w != last)
    };
    if let Some(slot) = last_word(form, stmt)
        .filter(|s| !comma && (end.open.is_none() || stmt.is_broken() || swallowed(s)))
        && !operands(slot.takes, &mut out)
    {
        return out;
    }
    out.clear();
    if let Some(k) = end.subject {
        out.push(match form.subject {
            Subject::Use(_) => Offer::Name(k),
            _ => Offer::NewName(k),
        });
        return out;
    }
    // what follows a word that means nothing cannot be known
    if end.stray && !comma {
        return out;
    }
    if let Some((slot, n)) = end.open.filter(|_| !comma) {
        second_words(&r, slot, &mut out);
        if let Some(Takes::Then(w, t)) = slot.takes.get(n)
            && stmt.atoms().last().is_some_and(|a| stmt.text(*a) == *w)
        {
            operands(std::slice::from_ref(*t), &mut out);
            return out;
        }
        if let Begins::ValueAs(q, w) = slot.begins
            && n == 0
            && stmt.atoms().last().is_none_or(|a| stmt.text(*a) != w)
        {
            // another slot of such a value may be meant
            out.push(word(w, None, slot.doc, 1));
            value_words(&r, q, &mut out);
            return out;
        }
        if !operands(slot.takes.get(n..).unwrap_or(&[]), &mut out) {
            return out;
        }
    }
    if !comma && end.open.is_none_or(|o| o.0.takes.len() > o.1) && range_may_follow(&end, stmt) {
        out.push(word("to", None, "", 3));
    }
    if let Some(Begins::Value(q)) = end.last.filter(|_| !comma).map(|s| s.begins) {
        value_words(&r, q, &mut out);
    }
    let bare = !comma && stmt.atoms().len() <= usize::from(!form.word.is_empty());
    let tag = bare && matches!(form.subject, Subject::Tag);
    if tag {
        out.push(Offer::NewName(NameKind::Tag));
    }
    slots(&r, comma, tag, &mut out);
    out
}

/// The slot whose word ends a head, also one that cannot be read otherwise.
fn last_word(form: &'static Form, stmt: Stmt<'_>) -> Option<&'static Slot> {
    let word = stmt.item().text().split_whitespace().last()?;
    form.all_slots()
        .find(|s| matches!(s.begins, Begins::Word(w) if w == word))
}

/// Second words of phrases whose first word stands there as a slot of its own.
fn second_words(r: &Reader<'_, '_>, of: &Slot, out: &mut Vec<Offer>) {
    let Begins::Word(w) = of.begins else { return };
    for s in r.form.all_slots() {
        if let Begins::Phrase(first, second) = s.begins
            && first == w
            && r.refuses(s, r.have_for(s)).is_none()
        {
            out.push(word(second, None, s.doc, 1));
        }
    }
}

/// Whether `to` may make an interval of the value that ends the head.
fn range_may_follow(end: &Ending, stmt: Stmt<'_>) -> bool {
    let value = |t: &Takes| {
        matches!(
            t,
            Takes::Value(_) | Takes::Values(_) | Takes::Range(_) | Takes::Then(_, Takes::Value(_))
        )
    };
    let of_value = end
        .last
        .is_some_and(|s| matches!(s.begins, Begins::Value(_)) || s.takes.iter().any(value));
    let last = stmt.atoms().last().and_then(|a| stmt.value(*a));
    // `on 30 MHz`, and not `on 2m`
    let hertz = last
        .and_then(|v| v.number()?.unit)
        .is_some_and(|u| unit(u).dim == Dim::Frequency);
    let of_bands = end.last.is_some_and(|s| s.takes.contains(&Takes::Bands)) && hertz;
    (of_value || of_bands) && last.is_some_and(|v| v.upper().is_none() && v.tolerance().is_none())
}

/// The slot that the end of a statement's head belongs to, where its example or what it says helps
/// to go on.
#[must_use]
pub fn open_slot(
    form: &'static Form,
    stmt: Stmt<'_>,
    comma: bool,
    known: Known<'_>,
) -> Option<&'static Slot> {
    let mut r = Reader::new(form, stmt, known);
    let end = Ending::of(&mut r);
    if let Some((slot, _)) = end.open.filter(|_| !comma) {
        return Some(slot);
    }
    if end.subject.is_some() || end.stray && !comma {
        return None;
    }
    let may = |s: &&'static Slot| {
        let stands = match s.stands {
            Stands::First => r.first && r.head && !comma,
            Stands::Head => r.head && !comma,
            _ => true,
        };
        stands && s.alike.is_none() && r.refuses(s, r.have_for(s)).is_none()
    };
    let main = form.main();
    form.all_slots()
        .filter(may)
        .find(|s| main & r.have != 0 || main & s.bit() != 0)
        .or_else(|| form.all_slots().find(may))
}

/// How the head of a statement ends.
struct Ending {
    /// A slot that waits for an operand, and which.
    open: Option<(&'static Slot, usize)>,
    /// The slot that was read last.
    last: Option<&'static Slot>,
    /// The name that is due.
    subject: Option<NameKind>,
    /// A word that means nothing stands last.
    stray: bool,
}

impl Ending {
    fn of(r: &mut Reader<'_, '_>) -> Ending {
        let mut e = Ending {
            open: None,
            last: None,
            subject: None,
            stray: false,
        };
        r.typing = true;
        while let Some(m) = r.next() {
            match m {
                Met::Problem(Problem::Missing {
                    slot, operand, at, ..
                }) => {
                    e.open = at.is_none().then_some((slot, operand));
                    e.last = None;
                }
                Met::Problem(Problem::SubjectMissing(k)) => e.subject = Some(k),
                Met::Problem(Problem::Stray(_)) => (e.stray, e.open) = (true, None),
                Met::Problem(_) => {}
                Met::Slot { slot, args, .. } => {
                    e.open = open_operand(r, slot, args.len()).map(|n| (slot, n));
                    e.last = Some(slot);
                    e.stray = false;
                }
                Met::Subject(..) => e.open = None,
            }
        }
        e
    }
}

/// The first operand of a slot that may still come, when all that is there was taken.
fn open_operand(r: &Reader<'_, '_>, slot: &'static Slot, args: usize) -> Option<usize> {
    let may = |t: &Takes| {
        matches!(
            t,
            Takes::May(_) | Takes::Filler(_) | Takes::Then(..) | Takes::Values(_)
        )
    };
    let n = slot
        .takes
        .iter()
        .rposition(|t| !may(t))
        .map_or(0, |i| i + 1);
    // an optional operand that was taken is not offered again
    (r.done() && n < slot.takes.len() && args <= n).then_some(n)
}

fn word(text: &'static str, second: Option<&'static str>, doc: &'static str, rank: u8) -> Offer {
    Offer::Word {
        text,
        second,
        doc,
        also: &[],
        rank,
    }
}

/// Words that would say what the value before them is.
fn value_words(r: &Reader<'_, '_>, of: &Quantity, out: &mut Vec<Offer>) {
    for s in r.form.all_slots() {
        if let Begins::ValueAs(q, w) = s.begins
            && q.dims == of.dims
            && r.refuses(s, r.have_for(s)).is_none()
        {
            out.push(word(w, None, s.doc, 1));
        }
    }
}

/// Offers the slots that may come; `tag` says that a tag may stand before them.
fn slots(r: &Reader<'_, '_>, comma: bool, tag: bool, out: &mut Vec<Offer>) {
    let first = r.first && r.head && !comma;
    // before its main figure is there, a statement offers that alone
    let main = r.form.main();
    let wanted = r
        .form
        .needs
        .iter()
        .filter(|n| n.when == 0 && n.one_of & main != 0 && n.one_of & r.have == 0)
        .map(|n| n.one_of)
        // a table may follow what is said of it
        .find(|_| first && !matches!(r.form.block, Block::Rows(_)));
    for s in r.form.all_slots() {
        if s.alike.is_some() || wanted.is_some_and(|w| w & s.bit() == 0) {
            continue;
        }
        let stands = match s.stands {
            Stands::First => first,
            Stands::Head => r.head && !comma,
            Stands::Within => !comma,
            Stands::Start => true,
            _ => (!tag || s.id == FROM) && (comma || !matches!(s.begins, Begins::Bare(_))),
        };
        let have = if comma { r.have } else { r.have_for(s) };
        if stands && r.refuses(s, have).is_none() {
            one_slot(s, out);
        }
    }
}

fn one_slot(s: &'static Slot, out: &mut Vec<Offer>) {
    let rank = if s.id >= ABOUT { 3 } else { 2 };
    let word = |text, second, doc| Offer::Word {
        text,
        second,
        doc,
        also: s.also,
        rank,
    };
    match s.begins {
        Begins::Word(w) => {
            let second = match s.takes.first() {
                Some(Takes::Filler(f)) => Some(f[0]),
                // the one word that follows
                Some(Takes::OneOf([w])) => Some(w.word),
                _ => None,
            };
            out.push(word(w, second, s.doc));
        }
        Begins::Phrase(a, b) => out.push(word(a, Some(b), s.doc)),
        Begins::OneOf(set) => {
            let words = set.words.iter().filter(|w| w.alike.is_none());
            out.extend(words.map(|w| word(w.word, None, w.doc)));
        }
        Begins::Value(q) | Begins::ValueAs(q, _) => out.push(Offer::Value(q)),
        Begins::Place => out.push(Offer::Name(NameKind::Place)),
        Begins::Bare(t) => {
            operands(std::slice::from_ref(t), out);
        }
        Begins::Text => out.push(Offer::Cite),
        Begins::Date => out.push(Offer::Date),
    }
}

/// Offers the first operand, and those after it that can be reached; true if all may be missing.
fn operands(takes: &'static [Takes], out: &mut Vec<Offer>) -> bool {
    for t in takes {
        let (t, may) = match t {
            Takes::May(t) => (*t, true),
            t => (t, matches!(t, Takes::Filler(_) | Takes::Then(..))),
        };
        match t {
            Takes::Value(q) | Takes::Values(q) | Takes::Range(q) => out.push(Offer::Value(q)),
            Takes::Name(k) | Takes::Names(k) | Takes::NamePair(k) => out.push(Offer::Name(*k)),
            Takes::Counted(k) => out.push(Offer::Counted(*k)),
            Takes::BandNames => out.push(Offer::Name(NameKind::Band)),
            Takes::Band | Takes::Bands => {
                out.push(Offer::Name(NameKind::Band));
                out.push(Offer::Value(&OF_BAND));
            }
            Takes::OneOf(words) => {
                let words = words.iter().filter(|w| w.alike.is_none());
                out.extend(words.map(|w| word(w.word, None, w.doc, 1)));
            }
            Takes::Filler(w) => out.push(word(w[0], None, "", 1)),
            Takes::Then(w, Takes::OneOf(words)) => {
                out.extend(words.iter().map(|x| word(w, Some(x.word), x.doc, 1)));
            }
            Takes::Then(w, _) => out.push(word(w, None, "", 1)),
            Takes::Text => out.push(Offer::Text),
            Takes::Date => out.push(Offer::Date),
            Takes::File(k) => out.push(Offer::File(*k)),
            Takes::Hop => out.push(Offer::Name(NameKind::Chain)),
            Takes::Antennas => out.push(Offer::Name(NameKind::Tag)),
            Takes::Rest | Takes::May(_) | Takes::Equals => {}
        }
        if !may {
            return false;
        }
    }
    true
}
