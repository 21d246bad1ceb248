//! A `±` after a word: `30 W erp ± 0.5 dB`. It belongs right after the figure.

use downlead_base::{Diagnostic, Edit, Fix, Loc, Span, codes};
use downlead_syntax::{Atom, AtomKind, ExprKind, Stmt};

use super::Cx;
use crate::keywords::{WORDS, keyword};

/// Statements whose figure takes no `±`.
const WITHOUT: &[&str] = &["limit", "rating", "voltage", "duty", "keyed", "foldback"];

impl<'a> Cx<'a> {
    /// The word of an atom such as `erp ± 0.5 dB`, which is no named value: a word of the language,
    /// or a name after a figure.
    pub(crate) fn stray(&self, stmt: Stmt<'a>, atom: &Atom) -> Option<Span> {
        if !matches!(atom.kind, AtomKind::Value(_)) {
            return None;
        }
        let view = stmt.value(*atom)?;
        let ExprKind::Name(word) = view.expr().kind() else {
            return None;
        };
        view.tolerance()?;
        let text = self.text(word);
        let known = WORDS.contains(&text) || keyword(text).is_some();
        let named = !known && (self.lets.contains_key(text) || self.figure(stmt, atom).is_none());
        (!named).then_some(word)
    }

    /// The last figure without an uncertainty before an atom.
    fn figure(&self, stmt: Stmt<'a>, atom: &Atom) -> Option<Span> {
        let before = stmt.atoms().iter().rev();
        let mut before = before.filter(|a| a.span.end <= atom.span.start);
        before.find_map(|a| {
            let v = stmt.value(*a)?;
            let plain = v.tolerance().is_none() && v.upper().is_none() && v.coverage().is_none();
            let name = matches!(v.expr().kind(), ExprKind::Name(_));
            (plain && !name).then_some(a.span)
        })
    }

    /// Points out each `±` of a statement and its block that stands after a word.
    pub(crate) fn strays(&mut self, stmt: Stmt<'a>) {
        for atom in stmt.atoms() {
            if let Some(word) = self.stray(stmt, atom) {
                self.say_stray(stmt, atom, word);
            }
        }
        for inner in stmt.block().iter().flat_map(|b| b.iter()) {
            self.strays(inner);
        }
    }

    fn say_stray(&mut self, stmt: Stmt<'a>, atom: &Atom, word: Span) {
        let tail = Span::new(word.end, atom.span.end);
        let (name, half) = (self.text(word), self.text(tail).trim());
        let figure = self.figure(stmt, atom);
        let d = Diagnostic::new(
            &codes::UNEXPECTED_WORD,
            self.loc(tail),
            format!("This ± stands after `{name}`; a ± belongs right after its figure."),
        )
        .at("which figure does it belong to?");
        let edit = |span: Span, text: String| Edit {
            loc: Loc::new(stmt.item_id(), span),
            text,
        };
        let refused = stmt.keyword().is_some_and(|w| WITHOUT.contains(&w));
        let d = match figure {
            Some(f) if !refused => {
                let moved = format!("{} {half}", self.text(f));
                let mut d = d.help(format!("Write it so: `{moved}`."));
                d.fixes = vec![Fix {
                    title: format!("write `{moved}`"),
                    edits: vec![
                        edit(Span::new(f.end, f.end), format!(" {half}")),
                        edit(tail, String::new()),
                    ],
                    preferred: true,
                }];
                d
            }
            _ => {
                let d = match refused {
                    true => d.help("This figure takes no ±: no result would use it."),
                    false => d.help("Written for example `46 m ± 0.5 m`."),
                };
                d.fix("remove the ±", self.loc(tail), "").preferred()
            }
        };
        self.push(d);
    }
}
