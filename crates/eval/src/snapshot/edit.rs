//! How an edit changes the set.

use downlead_base::{ItemId, Span};
use downlead_station::{Loader, keyword_of};
use downlead_syntax::File;

use super::{ON, Snapshot};

impl Snapshot {
    /// Replaces a range of a file's text. Only items the edit touches are computed again.
    /// `loader` is asked for files that are used for the first time.
    pub fn edit(&mut self, file: usize, range: Span, text: &str, loader: &dyn Loader) {
        self.edit_until(file, range, text, loader, ON);
    }

    /// The same, unless `stop` says so, which is asked before each item that is computed. Whether
    /// all is computed; if not, the texts are the new ones and the results those of before, and
    /// [`Snapshot::finish`] or the next edit goes on. What was computed until then is kept.
    pub fn edit_until(
        &mut self,
        file: usize,
        range: Span,
        text: &str,
        loader: &dyn Loader,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        self.edit_all_until(file, &[(range, text)], loader, stop)
    }

    /// The same with several replacements, each of the text that those before it left. What lies
    /// between them is not touched.
    pub fn edit_all_until(
        &mut self,
        file: usize,
        edits: &[(Span, &str)],
        loader: &dyn Loader,
        stop: &dyn Fn() -> bool,
    ) -> bool {
        let Some(entry) = self.files.get_mut(file) else {
            return !self.unfinished;
        };
        let before: Vec<ItemId> = uses_of(&entry.tree);
        for (range, text) in edits {
            entry.tree = entry.tree.edit(*range, text);
        }
        entry.error = None;
        if uses_of(&entry.tree) != before {
            self.reload(loader, stop);
        } else {
            self.compute(loader, stop);
        }
        !self.unfinished
    }

    /// Computes what a stopped edit left. Whether all is computed.
    pub fn finish(&mut self, loader: &dyn Loader, stop: &dyn Fn() -> bool) -> bool {
        if self.unfinished {
            self.compute(loader, stop);
        }
        !self.unfinished
    }
}

fn uses_of(tree: &File) -> Vec<ItemId> {
    tree.items()
        .iter()
        .filter(|p| keyword_of(&p.item) == Some("use"))
        .map(|p| p.item.id)
        .collect()
}
