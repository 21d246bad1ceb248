//! Reading typed values out of statements: the cursor over a group of atoms, and the
//! checks of unit and kind with their messages.

mod cursor;
mod expression;
mod kind;
mod quantity;
mod slip;
mod stray;
mod uncertainty;
mod value;
mod word;

use downlead_base::{Diagnostic, Loc, Span};
use downlead_syntax::Item;

use crate::model::Name;

pub(crate) use cursor::Cur;
pub(crate) use uncertainty::first_of;
pub use value::{Lets, Val};
pub use word::{capital, nearest};

/// What lowering an item needs and gathers.
pub(crate) struct Cx<'a> {
    pub(crate) item: &'a Item,
    pub(crate) lets: &'a Lets,
    pub(crate) diags: Vec<Diagnostic>,
    /// Other files the item names, see [`crate::Lowered::files`].
    pub(crate) files: Vec<Name>,
    pub(crate) built_in: bool,
}

impl<'a> Cx<'a> {
    /// Nothing is found yet in the item.
    pub(crate) fn new(item: &'a Item, lets: &'a Lets, built_in: bool) -> Cx<'a> {
        Cx {
            item,
            lets,
            diags: Vec::new(),
            files: Vec::new(),
            built_in,
        }
    }

    pub(crate) fn loc(&self, span: Span) -> Loc {
        Loc::new(self.item.id, span)
    }

    pub(crate) fn text(&self, span: Span) -> &'a str {
        self.item.text().get(span.range()).unwrap_or("")
    }

    pub(crate) fn push(&mut self, d: Diagnostic) {
        self.diags.push(d);
    }

    /// Adds what to write instead to a finding that was just reported; `had` is how many there
    /// were before.
    pub(crate) fn help_if_new(&mut self, had: usize, help: &str) {
        if let Some(d) = self.diags.get_mut(had) {
            d.help.push(help.to_owned());
        }
    }

    pub(crate) fn name_at(&self, span: Span) -> Name {
        Name {
            text: self.text(span).into(),
            loc: self.loc(span),
        }
    }
}
