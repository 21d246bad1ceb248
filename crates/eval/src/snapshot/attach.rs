//! Files of readings and networks that take part.

use std::sync::Arc;

use downlead_base::{Diagnostic, codes};
use downlead_station::{Attachment, Attachments, LoadError, Loader, Lowered, normalise};
use downlead_syntax::Item;

use super::outside::outside;
use super::{ON, Snapshot};

impl Snapshot {
    /// Paths of the files of readings and networks that take part.
    pub fn attachments(&self) -> impl Iterator<Item = &str> {
        self.cache.attached.keys().map(String::as_str)
    }

    /// The file of readings or the network of that path, if something takes it.
    pub(crate) fn attached(&self, path: &str) -> Option<Arc<Attachment>> {
        self.cache.attached.get(path).cloned()
    }

    /// Takes the changed contents of another file. False if no item uses the file.
    pub fn refresh_attachment(&mut self, path: &str, loader: &dyn Loader) -> bool {
        if self.cache.attached.remove(path).is_none() {
            return false;
        }
        self.compute(loader, ON);
        true
    }

    /// Reads the files of readings and networks that the items of a file name. Those that are
    /// read already are kept.
    pub(super) fn attach(
        &mut self,
        file: usize,
        lowered: &[(Arc<Item>, Arc<Lowered>)],
        loader: &dyn Loader,
        to: &mut Attachments,
        out: &mut Vec<Diagnostic>,
    ) {
        for (_, low) in lowered {
            for n in &low.files {
                let Some(path) = normalise(&self.files[file].path, &n.text) else {
                    out.push(outside(n, loader));
                    continue;
                };
                let a = self
                    .cache
                    .attached
                    .entry(path)
                    .or_insert_with_key(|p| Arc::new(Attachment::load(p, loader)));
                if let Err(LoadError::OutsideRoot) = &a.content {
                    out.push(outside(n, loader));
                } else if let Err(e) = &a.content {
                    let mut d = Diagnostic::new(
                        &codes::USE_NOT_FOUND,
                        n.loc,
                        format!("`{}` cannot be used: {e}.", n.text),
                    )
                    .at("not read");
                    if *e == LoadError::NotFound {
                        d = d.help(format!(
                            "Looked for `{}` below the root. The path is relative to this file.",
                            a.path
                        ));
                    }
                    out.push(d);
                }
                to.insert(n.loc, Arc::clone(a));
            }
        }
    }
}
