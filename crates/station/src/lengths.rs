//! Lengths of cable as stated in a text, each with a key that identifies it, so that they can be
//! compared with an earlier state of the same text.

use downlead_base::Loc;
use downlead_quantity::{Dim, UnitId};
use downlead_syntax::{Atom, AtomKind, Item, Stmt};

use crate::cx::{Cx, Lets};
use crate::evidence::CORRECTED;

/// A length of a run, jumper, tail or piece, or a named one, written as one number.
#[derive(Clone, Debug)]
pub struct StatedLength {
    /// What tells it from others: block, keyword, tag, cable, in service since when. A line that
    /// became another cable is another line.
    pub key: Box<str>,
    /// Keyword and tag or name, `run M1`, `let tower`.
    pub name: Box<str>,
    /// Metres.
    pub metres: f64,
    /// The number as written, without its unit.
    pub digits: Box<str>,
    /// Its unit.
    pub unit: UnitId,
    /// As written, with its `±`.
    pub text: Box<str>,
    /// Where it stands.
    pub loc: Loc,
    /// The statement without its block.
    pub statement: Loc,
    /// Whether it says why it is not as it was (`corrected "…"`).
    pub corrected: bool,
}

impl StatedLength {
    /// The keyword of its line.
    #[must_use]
    pub fn keyword(&self) -> &str {
        self.name.split(' ').next().unwrap_or("")
    }

    /// Whether both say the same length in the same unit.
    #[must_use]
    pub fn same(&self, other: &StatedLength) -> bool {
        self.unit == other.unit && (self.metres - other.metres).abs() <= 1e-9 * self.metres.abs()
    }
}

/// The lengths written in one item. What is reckoned (`tower + 2 m`) or an interval is left out.
#[must_use]
pub fn item_lengths(item: &Item) -> Vec<StatedLength> {
    let mut out = Vec::new();
    let Some(s) = item.statement() else {
        return out;
    };
    let lets = Lets::default();
    let mut cx = Cx::new(item, &lets, false);
    walk(&mut cx, s, "", &mut out);
    out
}

fn walk<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, path: &str, out: &mut Vec<StatedLength>) {
    if matches!(
        s.keyword(),
        Some("run" | "jumper" | "tail" | "piece" | "let")
    ) {
        out.extend(stated(cx, s, path));
    }
    let Some(block) = s.block() else { return };
    let words = s.atoms().iter().take(2).map(|a| s.text(*a));
    let path = format!("{path}/{}", words.collect::<Vec<_>>().join(" "));
    for inner in block.iter() {
        walk(cx, inner, &path, out);
    }
}

/// `KEYWORD [TAG] LENGTH of CABLE …`: the length is what stands before `of`; `let NAME = LENGTH`.
fn stated<'a>(cx: &mut Cx<'a>, s: Stmt<'a>, path: &str) -> Option<StatedLength> {
    let first = s.groups().next()?;
    let of = match s.keyword() {
        Some("let") => first.len(),
        _ => first.iter().position(|a| is_word(s, *a, "of"))?,
    };
    let (length, before) = first.get(..of)?.split_last()?;
    let before = before.iter().filter(|a| a.kind != AtomKind::Equals);
    let name: Vec<&str> = before.map(|a| s.text(*a)).collect();
    let name = name.join(" ");
    let v = cx.value(s, length)?;
    let unit = v.unit.filter(|_| v.upper.is_none())?;
    let text = s.text(*length);
    let digits: String = text
        .chars()
        .take_while(|c| c.is_ascii_digit() || *c == '.')
        .collect();
    if v.q.dim != Dim::Length
        || v.q.value <= 0.0
        || !digits.starts_with(|c: char| c.is_ascii_digit())
    {
        return None;
    }
    let atoms = s.atoms();
    let behind = |word: &str| {
        let at = atoms.iter().position(|a| is_word(s, *a, word))?;
        atoms.get(at + 1).copied()
    };
    let cable = first.get(of + 1).map_or("", |a| s.text(*a));
    let since = behind("since").map_or("", |a| s.text(a));
    let reason = behind(CORRECTED).and_then(|a| s.string(a));
    Some(StatedLength {
        key: format!("{path}/{name}/{cable}/{since}").into(),
        name: name.into(),
        metres: v.q.value,
        digits: digits.into(),
        unit,
        text: text.split_whitespace().collect::<Vec<_>>().join(" ").into(),
        loc: v.loc,
        statement: cx.loc(s.head_span()),
        corrected: reason.is_some_and(|r| !r.trim().is_empty()),
    })
}

fn is_word(s: Stmt<'_>, a: Atom, word: &str) -> bool {
    matches!(a.kind, AtomKind::Word) && s.text(a) == word
}
