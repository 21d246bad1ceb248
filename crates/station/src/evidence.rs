//! Readings as evidence: the readings of a text or a table, each with a key that identifies it, so
//! that they can be compared with an earlier state of the same text.

use downlead_base::{Loc, Span};
use downlead_quantity::{Dim, UnitId, sig};
use downlead_syntax::{Atom, AtomKind, File, Item, Stmt};

use crate::attach::{Cell, ReadingsFile, Row};
use crate::cx::{Cx, Lets};
use crate::model::Name;
use crate::session::ReadingKind;

/// One reading.
#[derive(Clone, Debug)]
pub struct Evidence {
    /// What tells it from other readings: block, kind, piece, time, date. Not its figures, nor
    /// who read it with what.
    pub key: Box<str>,
    /// Its figures, in the order of the text.
    pub figures: Box<[ReadFigure]>,
    /// Why it is not as it was recorded; of a table not kept.
    pub corrected: Option<Box<str>>,
    /// Where it stands.
    pub place: Place,
}

/// Where a reading stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// A statement without its block.
    Statement(Loc),
    /// A line of a table, from 1.
    Line(u64),
}

/// A figure of a reading.
#[derive(Clone, Debug)]
pub struct ReadFigure {
    /// Value in base units; powers, as levels too, in W.
    pub value: f64,
    /// Half-width of a `±`, in its own base unit.
    half: Option<f64>,
    dim: Dim,
    unit: Option<UnitId>,
    /// As written; of a table, as it is usually printed.
    pub text: Box<str>,
    /// Where it stands in a text.
    pub loc: Option<Loc>,
}

/// A figure that was rewritten in another unit may have been rounded by this, relative.
const ROUNDED: f64 = 2e-3;

impl ReadFigure {
    /// Whether both say the same, be it in different units.
    #[must_use]
    pub fn same(&self, other: &ReadFigure) -> bool {
        if self.loc.is_some() && self.text == other.text {
            return true;
        }
        let within = if self.unit == other.unit {
            1e-9
        } else {
            ROUNDED
        };
        let near = |a: f64, b: f64| (a - b).abs() <= within * a.abs().max(b.abs());
        let halves = match (self.half, other.half) {
            (None, None) => true,
            (Some(a), Some(b)) => near(a, b) || self.unit != other.unit,
            _ => false,
        };
        self.dim == other.dim && near(self.value, other.value) && halves
    }
}

impl Evidence {
    /// Whether both show the same figures.
    #[must_use]
    pub fn same(&self, other: &Evidence) -> bool {
        self.figures.len() == other.figures.len()
            && self
                .figures
                .iter()
                .zip(&other.figures)
                .all(|(a, b)| a.same(b))
    }

    /// Whether another reading shows all its figures, and maybe more: what is read beside it is no
    /// change of it.
    #[must_use]
    pub fn stands_in(&self, now: &Evidence) -> bool {
        let mut figures = now.figures.iter();
        self.figures
            .iter()
            .all(|f| figures.any(|other| f.same(other)))
    }

    /// Its figures, as written.
    #[must_use]
    pub fn shown(&self) -> String {
        let all: Vec<&str> = self.figures.iter().map(|f| &*f.text).collect();
        all.join(", ")
    }
}

/// The readings written in a text: those of bench sessions, and whatever says `read` and when.
#[must_use]
pub fn evidence(tree: &File) -> Vec<Evidence> {
    let items = tree.items().iter();
    items.flat_map(|p| item_evidence(&p.item)).collect()
}

/// Those of one item.
#[must_use]
pub fn item_evidence(item: &Item) -> Vec<Evidence> {
    let mut out = Vec::new();
    let Some(s) = item.statement() else {
        return out;
    };
    let lets = Lets::default();
    let mut cx = Cx::new(item, &lets, false);
    let mut walk = Walk {
        cx: &mut cx,
        out: &mut out,
    };
    walk.statement(s, "", "", Inside::Plain);
    out
}

/// The tables of readings that an item names, with the place of each path.
#[must_use]
pub fn item_tables(item: &Item) -> Vec<Name> {
    let mut out = Vec::new();
    if let Some(s) = item.statement() {
        tables_of(s, &mut out);
    }
    out
}

fn tables_of(s: Stmt<'_>, out: &mut Vec<Name>) {
    if let [first, from, path, ..] = s.atoms()
        && s.text(*first) == "readings"
        && s.text(*from) == "from"
        && let Some(text) = s.string(*path)
    {
        out.push(Name {
            text: text.into(),
            loc: Loc::new(s.item_id(), path.span),
        });
    }
    for inner in s.block().iter().flat_map(|b| b.iter()) {
        tables_of(inner, out);
    }
}

#[derive(Clone, Copy, PartialEq)]
enum Inside {
    Plain,
    Session,
    Readings,
}

struct Walk<'w, 'a> {
    cx: &'w mut Cx<'a>,
    out: &'w mut Vec<Evidence>,
}

impl<'a> Walk<'_, 'a> {
    /// `before` is what stands before the statement in its block, readings left out.
    fn statement(&mut self, s: Stmt<'a>, path: &str, before: &str, inside: Inside) {
        if let Some(key) = self.key(s, before, inside) {
            self.reading(s, format!("{path}/{key}"));
        }
        let Some(block) = s.block() else { return };
        let mut path = format!("{path}/{}", segment(s));
        if inside == Inside::Plain && s.keyword() == Some("session") {
            // the same piece read again on another day is another reading
            let date = block.iter().find_map(date_of_reading);
            path = format!("{path} {}", date.unwrap_or(""));
        }
        let inside = match (inside, s.keyword()) {
            (Inside::Plain, Some("session")) => Inside::Session,
            (Inside::Session, Some("readings")) => Inside::Readings,
            _ => Inside::Plain,
        };
        let mut before = String::new();
        for inner in block.iter() {
            self.statement(inner, &path, &before, inside);
            if !matches!(
                inner.keyword(),
                Some("read" | "expect" | "limit" | "readings")
            ) {
                before = segment(inner);
            }
        }
    }

    /// What tells a reading from others of its block; none if the statement is no reading.
    fn key(&mut self, s: Stmt<'a>, before: &str, inside: Inside) -> Option<String> {
        let atoms = s.atoms();
        let word = s.keyword()?;
        let date = date_of_reading(s);
        let bench = match inside {
            Inside::Readings => ReadingKind::ALL.iter().any(|k| k.word() == word),
            Inside::Session => matches!(word, "resonance" | "delay" | "phase"),
            Inside::Plain => false,
        };
        if !bench && (date.is_none() || inside != Inside::Plain) {
            return None;
        }
        let mut key = word.to_owned();
        let mut add = |t: &str| {
            key.push(' ');
            key.push_str(t);
        };
        if !bench && word == "read" {
            add(before);
        }
        if let Some(a) = atoms
            .get(1)
            .filter(|a| matches!(a.kind, AtomKind::Word | AtomKind::Value(_)))
            // a piece or tag may look like a value: `2A`
            .filter(|a| {
                matches!(a.kind, AtomKind::Word) || !s.text(**a).contains(' ') && of_piece(word)
            })
        {
            add(s.text(*a));
        }
        let mut on = false;
        for (i, a) in atoms.iter().enumerate().skip(1) {
            match a.kind {
                AtomKind::Word => {
                    let t = s.text(*a);
                    on = t == "on";
                    if matches!(t, "reflected" | "net" | "swr") && !bench {
                        add(t);
                    }
                    if t == "at"
                        && bench
                        && let Some(v) = atoms.get(i + 1)
                        && let Some(v) = self.cx.value(s, v)
                    {
                        add(&format!("at {:.4}", v.q.value));
                    }
                }
                AtomKind::Value(_) if on => add(s.text(*a)),
                _ => {}
            }
        }
        if let Some(d) = date {
            add(d);
        }
        Some(key)
    }

    fn reading(&mut self, s: Stmt<'a>, key: String) {
        let mut figures = Vec::new();
        let mut corrected = None;
        let of_piece = s.keyword().is_some_and(of_piece);
        for (n, group) in s.groups().enumerate() {
            let mut elsewhere = false;
            for (i, a) in group.iter().enumerate() {
                match a.kind {
                    AtomKind::Word => {
                        let t = s.text(*a);
                        elsewhere = matches!(t, "at" | "on" | "with" | "by");
                        let reason = group.get(i + 1).and_then(|r| s.string(*r));
                        if t == CORRECTED
                            && let Some(r) = reason.filter(|r| !r.trim().is_empty())
                        {
                            corrected = Some(r.into());
                        }
                    }
                    // the piece's own name
                    AtomKind::Value(_) if n == 0 && i == 1 && of_piece => {}
                    AtomKind::Value(_) if !elsewhere => figures.extend(self.figure(s, *a)),
                    _ => {}
                }
            }
        }
        if figures.is_empty() {
            return;
        }
        self.out.push(Evidence {
            key: key.into(),
            figures: figures.into(),
            corrected,
            place: Place::Statement(self.cx.loc(s.head_span())),
        });
    }

    fn figure(&mut self, s: Stmt<'a>, a: Atom) -> Option<ReadFigure> {
        let v = self.cx.value(s, &a)?;
        let (value, dim) = match v.q.watts() {
            Some(w) => (w, Dim::Power),
            None => (v.middle().value, v.q.dim),
        };
        let half = match (&v.half, &v.upper) {
            (Some((h, _)), _) => Some(h.value),
            (None, Some(up)) => Some(up.value),
            (None, None) => None,
        };
        Some(ReadFigure {
            value,
            half,
            dim,
            unit: v.unit,
            text: collapse(s.slice(Span::new(a.span.start, a.span.end))).into(),
            loc: Some(v.loc),
        })
    }
}

/// The qualifier that says why a reading is not as it was recorded.
pub const CORRECTED: &str = "corrected";

fn of_piece(word: &str) -> bool {
    matches!(
        word,
        "through" | "open" | "short" | "resonance" | "delay" | "phase"
    )
}

/// The date behind `read`, or of a `read` statement.
fn date_of_reading(s: Stmt<'_>) -> Option<&str> {
    let atoms = s.atoms();
    let date = |a: &Atom| matches!(a.kind, AtomKind::Date);
    if s.keyword() == Some("read") {
        return atoms.iter().find(|a| date(a)).map(|a| s.text(*a));
    }
    atoms
        .windows(2)
        .find(|w| s.text(w[0]) == "read" && date(&w[1]))
        .map(|w| s.text(w[1]))
}

/// Whether a statement records a reading: its figures are a record, digit for digit.
pub(crate) fn is_reading(s: Stmt<'_>) -> bool {
    let word = s.keyword().unwrap_or("");
    let read = |a: &Atom| matches!(a.kind, AtomKind::Word) && s.text(*a) == "read";
    ReadingKind::ALL.iter().any(|k| k.word() == word)
        || matches!(word, "resonance" | "delay" | "phase")
        || s.atoms().iter().any(read)
}

/// A block's or part's part of the key: its keyword and name; of readings, the band.
fn segment(s: Stmt<'_>) -> String {
    if s.keyword() == Some("readings") {
        return collapse(s.slice(s.head_span()));
    }
    let words = s.atoms().iter().take(2);
    // a name that begins with a digit, `70cm`, looks like a value; `28 m` is one
    let words: Vec<&str> = words
        .filter(|a| match a.kind {
            AtomKind::Word => true,
            AtomKind::Value(_) => !s.text(**a).contains(' '),
            _ => false,
        })
        .map(|a| s.text(*a))
        .collect();
    words.join(" ")
}

fn collapse(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The readings of a table.
#[must_use]
pub fn table_evidence(table: &ReadingsFile) -> Vec<Evidence> {
    table.rows.iter().filter_map(row_evidence).collect()
}

fn row_evidence(r: &Row) -> Option<Evidence> {
    let mut key = String::new();
    for t in [&r.after, &r.band, &r.piece, &r.date] {
        key.push_str(t.as_deref().unwrap_or(""));
        key.push('/');
    }
    key.push_str(r.kind.map_or("", ReadingKind::word));
    for c in [r.hz, r.minutes] {
        key.push('/');
        if let Some((v, _)) = c {
            key.push_str(&format!("{v:.4}"));
        }
    }
    let mut figures = Vec::new();
    let mut add = |cell: Cell, dim: Dim, before: &str, after: &str| {
        if let Some((value, _)) = cell {
            let digits = sig(value, 6);
            let digits = match digits.contains('.') {
                true => digits.trim_end_matches('0').trim_end_matches('.'),
                false => &digits,
            };
            figures.push(ReadFigure {
                value,
                half: None,
                dim,
                unit: None,
                text: format!("{before}{digits}{after}").into(),
                loc: None,
            });
        }
    };
    add(r.forward_w, Dim::Power, "", " W");
    add(r.reflected_w, Dim::Power, "", " W reflected");
    add(r.input_w, Dim::Power, "", " W input");
    add(r.loss_db, Dim::Decibel, "", " dB");
    add(r.return_loss_db, Dim::Decibel, "return loss ", " dB");
    add(r.swr, Dim::Count, "SWR ", "");
    (!figures.is_empty()).then(|| Evidence {
        key: key.into(),
        figures: figures.into(),
        corrected: r.corrected.clone(),
        place: Place::Line(r.line),
    })
}
