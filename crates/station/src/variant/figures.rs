//! What a statement of a part says, figure by figure.

use downlead_base::Span;
use downlead_quantity::Dim;
use downlead_syntax::{Atom, File, Stmt};

use crate::cx::Lets;
use crate::forms::{self, Begins, Form, Known, Met, Problem, Reader, Scope, Slot};
use crate::model::{PartKind, Role};

/// The bundle of slots that say where a figure is from and when it holds begins here.
const ABOUT: u8 = forms::ABOUT;

/// A slot of a statement, as it stands there.
#[derive(Clone, Debug)]
pub(super) struct Said {
    pub(super) slot: &'static Slot,
    pub(super) span: Span,
    pub(super) text: String,
    /// Whether it speaks of a figure of its group only.
    pub(super) of_figure: bool,
    /// Whether a comma precedes it.
    pub(super) begins_group: bool,
    /// The `± …` of its value; empty where its uncertainty is written otherwise.
    pub(super) uncertainty: Option<String>,
    /// Names of bands, of `on`.
    pub(super) bands: Vec<String>,
}

impl Said {
    pub(super) fn is_about(&self) -> bool {
        self.slot.id >= ABOUT
    }

    pub(super) fn is_on(&self) -> bool {
        self.slot.id == forms::ON_SLOT
    }

    /// Where from, but not when.
    pub(super) fn is_source(&self) -> bool {
        self.is_about() && !self.is_on() && self.slot.id != forms::AT_SLOT
    }
}

/// What is read of a statement, and whether all of it belongs there.
pub(super) struct Read {
    pub(super) said: Vec<Said>,
    pub(super) all: bool,
}

/// Reads the head of a statement.
pub(super) fn read(form: &'static Form, s: Stmt<'_>, lets: &Lets, places: &[&str]) -> Read {
    let mut r = Reader::new(form, s, Known { lets, places });
    let (mut said, mut all) = (Vec::new(), true);
    while let Some(m) = r.next() {
        match m {
            Met::Slot {
                slot,
                head,
                args,
                scope,
            } => said.push(one(s, slot, head, args, scope, lets)),
            // `of CABLE` follows a length, which here may stand in the station only
            Met::Problem(Problem::TooEarly { slot, at, .. }) => {
                let group = s.groups().find(|g| g.iter().any(|a| a.span == at.span));
                let args = group.map_or(&[][..], |g| {
                    let i = g.iter().position(|a| a.span == at.span).unwrap_or(0);
                    &g[i + 1..]
                });
                said.push(one(s, slot, at, args, Scope::Statement, lets));
            }
            Met::Problem(Problem::Stray(_) | Problem::Missing { .. }) => all = false,
            _ => {}
        }
    }
    Read { said, all }
}

fn one(
    s: Stmt<'_>,
    slot: &'static Slot,
    head: &Atom,
    args: &[Atom],
    scope: Scope,
    lets: &Lets,
) -> Said {
    let end = args.last().map_or(head.span.end, |a| a.span.end);
    // the second word of a phrase is no operand
    let span = Span::new(head.span.start, end.max(head.span.end));
    let uncertainty = std::iter::once(head).chain(args).find_map(|a| {
        let text = s.text(*a);
        let half = lets
            .get(text)
            .is_some_and(|v| v.half.is_some() || v.upper.is_some());
        let own = s
            .value(*a)
            .is_some_and(|v| v.tolerance().is_some() || v.upper().is_some());
        (half || own).then(|| {
            text.find('±')
                .map_or(String::new(), |i| text[i..].to_owned())
        })
    });
    let is_on = slot.id == forms::ON_SLOT;
    Said {
        slot,
        span,
        text: s.slice(span).to_owned(),
        of_figure: matches!(scope, Scope::Figure(_)),
        begins_group: head.comma_before,
        uncertainty,
        bands: match is_on {
            true => args.iter().map(|a| s.text(*a).to_owned()).collect(),
            false => Vec::new(),
        },
    }
}

/// A statement of its own: `KIND TAG TEXT`, or a line `TEXT` in the block of one.
pub(super) struct Alone {
    file: File,
}

impl Alone {
    pub(super) fn head(kind: PartKind, text: &str) -> Alone {
        Alone {
            file: File::parse(format!("{} X {text}", kind.word())),
        }
    }

    pub(super) fn line(kind: PartKind, text: &str) -> Alone {
        Alone {
            file: File::parse(format!("{} X {{ {text} }}", kind.word())),
        }
    }

    pub(super) fn stmt(&self) -> Option<Stmt<'_>> {
        self.file.items().first()?.item.statement()
    }

    pub(super) fn inner(&self) -> Option<Stmt<'_>> {
        self.stmt()?.block()?.iter().next()
    }
}

/// What a slot of a part's head says, by the word that a line of its block would begin with.
pub(super) fn role(slot: &Slot, kind: PartKind) -> String {
    let word = |set: &forms::Set, w: &str| set.words.iter().any(|x| x.word == w);
    match slot.begins {
        Begins::Word(w) | Begins::Phrase(w, _) | Begins::ValueAs(_, w) => w.to_owned(),
        Begins::Place => "place".to_owned(),
        Begins::OneOf(set) if word(set, "carrier") => "kind".to_owned(),
        Begins::OneOf(set) if word(set, "fm") => "mode".to_owned(),
        Begins::Value(q) => main_role(kind, q.dims).to_owned(),
        _ => format!("slot {}", slot.id),
    }
}

fn main_role(kind: PartKind, dims: &[Dim]) -> &'static str {
    match kind.role() {
        Role::Transmitter => "power",
        Role::Receiver => "sensitivity",
        Role::End | Role::Active => "gain",
        Role::Line if dims.contains(&Dim::Length) => "length",
        Role::Divider if dims.contains(&Dim::Count) => "ways",
        _ => "loss",
    }
}

/// What a figure of a role takes the place of besides one of its own role.
pub(super) fn also_replaces(role: &str, kind: PartKind) -> &'static [&'static str] {
    match (role, kind.role()) {
        ("length", Role::Line) => &["loss", "from", "accuracy", "reversed"],
        ("loss", Role::Line) => &["length", "of", "from", "accuracy", "reversed"],
        ("from", Role::Line) => &["length", "of", "loss", "accuracy"],
        ("swr", Role::End) => &["return-loss", "impedance", "from"],
        ("return-loss", Role::End) => &["swr", "impedance", "from"],
        ("impedance", Role::End) => &["swr", "return-loss", "from"],
        ("from", Role::End) => &["swr", "return-loss", "impedance"],
        ("swr", _) => &["return-loss"],
        ("return-loss", _) => &["swr"],
        ("loss", _) => &["from", "accuracy"],
        ("from", _) => &["loss", "accuracy"],
        ("gain", Role::End) => &["directivity", "efficiency"],
        ("directivity", Role::End) => &["gain"],
        _ => &[],
    }
}

/// The word of a line of a block, with the name of a port.
pub(super) fn role_of_line(s: Stmt<'_>) -> String {
    let word = s.keyword().unwrap_or("");
    match (word, s.atoms().get(1)) {
        ("port", Some(a)) => format!("port {}", s.text(*a)),
        _ => word.to_owned(),
    }
}
