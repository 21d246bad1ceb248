//! Signature help: how the statement at the cursor is written, and what may stand at each place.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::forms::{Begins, Form, Slot, Subject, Takes, open_slot, signature};
use downlead_syntax::SyntaxKind;

use crate::situation::Situation;
use crate::view::{Doc, to32};

/// How a statement is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SignatureHelp {
    /// The ways to write it.
    pub signatures: Vec<Signature>,
    /// The one the text follows.
    pub active: usize,
}

/// One way to write a statement.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Signature {
    /// The form.
    pub label: String,
    /// What it says.
    pub documentation: String,
    /// Places to fill in.
    pub parameters: Vec<Parameter>,
    /// The one at the cursor.
    pub active: Option<usize>,
}

/// A place to fill in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Parameter {
    /// Bytes in the form.
    pub label: Span,
    /// What may stand there: units, ranges.
    pub documentation: String,
}

/// The form of the statement at an offset.
#[must_use]
pub fn signature_help(s: &Snapshot, doc: Doc, offset: u32) -> Option<SignatureHelp> {
    let at = Situation::at(s, doc, offset)?;
    if at.comment {
        return None;
    }
    let form = at.form().filter(|f| !f.word.is_empty())?;
    let (label, places) = signature(form);
    let mut parameters = Vec::new();
    let mut ids = Vec::new();
    if let Some((hole, doc)) = subject(form) {
        let from = form.word.len() + 1 + usize::from(matches!(form.subject, Subject::Tag));
        parameters.push(Parameter {
            label: Span::new(to32(from), to32(from + hole.len())),
            documentation: doc.to_owned(),
        });
        ids.push(None);
    }
    for (id, range) in places {
        let documentation = form.slot(id).map_or_else(String::new, about);
        parameters.push(Parameter {
            label: Span::new(to32(range.start), to32(range.end)),
            documentation,
        });
        ids.push(Some(id));
    }
    // a number or text that is being typed belongs to the place it is typed at
    let typed = at
        .head
        .iter()
        .rev()
        .take_while(|t| matches!(t.kind, SyntaxKind::Number | SyntaxKind::OpenText));
    let n = at.head.len() - typed.count();
    let open = at.read(n, None, open_slot).flatten();
    let wanted = if n == 1 && ids.first() == Some(&None) {
        None
    } else {
        open.map(|s| s.id)
    };
    let active = match (wanted, n) {
        (None, 1) if ids.first() == Some(&None) => Some(0),
        (None, _) => None,
        (Some(id), _) => ids.iter().position(|x| *x == Some(id)),
    };
    Some(SignatureHelp {
        signatures: vec![Signature {
            label,
            documentation: form.doc.to_owned(),
            parameters,
            active,
        }],
        active: 0,
    })
}

/// The place of the name a statement gives or uses, and what may stand there.
fn subject(form: &Form) -> Option<(&'static str, &'static str)> {
    match form.subject {
        Subject::Tag => Some(("TAG", "a name given once in the station")),
        Subject::New(k) => Some((k.hole(), "a name: letters, digits, - and _")),
        Subject::Use(k) => Some((k.hole(), "the tag of a part or piece")),
        _ => None,
    }
}

/// What a slot says, and what may stand at its place.
fn about(s: &'static Slot) -> String {
    let units = |t: &Takes| match t {
        Takes::Value(q) | Takes::Values(q) | Takes::Range(q) => Some(q.units),
        _ => None,
    };
    let of = match s.begins {
        Begins::Value(q) | Begins::ValueAs(q, _) => Some(q.units),
        _ => s.takes.iter().find_map(units),
    };
    match of {
        Some(units) => format!("{}: {units}", s.doc.trim_end_matches('.')),
        None => format!(
            "{}, for example `{}`",
            s.doc.trim_end_matches('.'),
            s.example
        ),
    }
}
