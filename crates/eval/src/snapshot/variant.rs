//! A file with a variant in place of its station, computed as any text.

use std::sync::Arc;

use downlead_station::model::{Meaning, Variant};
use downlead_station::{LoadError, Loader};
use downlead_syntax::Item;
use rustc_hash::FxHashMap;

use super::later::{Later, When};
use super::recorded::Evidences;
use super::{Cache, ON, Snapshot};
use crate::variant::applied;

/// The texts of a set of files.
struct Texts<'s>(&'s Snapshot);

impl Loader for Texts<'_> {
    fn read(&self, path: &str) -> Result<Arc<str>, LoadError> {
        let file = self.0.files.iter().find(|f| f.path == path);
        match file {
            Some(f) => f
                .error
                .clone()
                .map_or_else(|| Ok(f.tree.shared_text()), Err),
            None => Err(LoadError::NotFound),
        }
    }
}

/// The two states of a file that a variant compares: each is a set of files whose first is the
/// file.
pub struct Tried {
    /// With the station as it is.
    pub base: Snapshot,
    /// With the variant.
    pub variant: Snapshot,
    /// The changed text of the file.
    pub text: String,
}

impl Snapshot {
    /// The variants of a file in the order of the text, with their items.
    #[must_use]
    pub fn variants(&self, file: usize) -> Vec<(&Item, &Variant)> {
        let scope = self.scopes.iter().find(|s| s.file == file);
        scope
            .into_iter()
            .flat_map(|s| &s.items)
            .filter_map(|(item, low, _)| match &low.meaning {
                Meaning::Variant(v) => Some((&**item, &**v)),
                _ => None,
            })
            .collect()
    }

    /// A file with a station as it is and with a variant of it, each computed. None if the file
    /// has no such variant, or the station is not there.
    #[must_use]
    pub fn try_variant(&self, file: usize, name: &str) -> Option<Tried> {
        let text = self.text_with(file, Some(name))?;
        Some(Tried {
            base: self.with_text(file, &self.text_of_base(file, name)?),
            variant: self.with_text(file, &text),
            text,
        })
    }

    /// The text of a file with a variant in place of its station. Variants are left out of it, so
    /// are readings and expectations of the station; lines keep their numbers where the station
    /// stands in this file.
    #[must_use]
    pub fn text_with(&self, file: usize, name: Option<&str>) -> Option<String> {
        let scope = self.scopes.iter().find(|s| s.file == file)?;
        let (item, v) = self
            .variants(file)
            .into_iter()
            .find(|x| Some(&*x.1.name.text) == name)?;
        let changed = applied(item, v, &scope.env)?.text;
        Some(self.replaced(file, item, v, &changed))
    }

    fn text_of_base(&self, file: usize, name: &str) -> Option<String> {
        let scope = self.scopes.iter().find(|s| s.file == file)?;
        let (item, v) = self
            .variants(file)
            .into_iter()
            .find(|x| &*x.1.name.text == name)?;
        let (base, _) = scope.env.base(&v.of.text)?;
        Some(self.replaced(file, item, v, base.text()))
    }

    /// The text of a file with the station of a variant as given, and without variants.
    fn replaced(&self, file: usize, variant: &Item, v: &Variant, station: &str) -> String {
        let Some(scope) = self.scopes.iter().find(|s| s.file == file) else {
            return String::new();
        };
        let base = scope.env.base(&v.of.text).map(|s| s.0.id);
        let items = self.files[file].tree.items();
        let own = items.iter().any(|p| Some(p.item.id) == base);
        let mut out = String::new();
        for p in items {
            let text = p.item.text();
            let is_variant = p.item.statement().and_then(|s| s.keyword()) == Some("variant");
            if own && Some(p.item.id) == base || !own && p.item.id == variant.id {
                out.push_str(station);
                if !station.ends_with('\n') {
                    out.push('\n');
                }
            } else if is_variant {
                out.push_str(&"\n".repeat(text.matches('\n').count()));
            } else {
                out.push_str(text);
            }
        }
        out
    }

    /// The set with another text of one file, which alone is named; what other files hold is as it
    /// was read for this set.
    fn with_text(&self, file: usize, text: &str) -> Snapshot {
        let path = self.files[file].path.clone();
        let mut s = Snapshot {
            files: Vec::new(),
            scopes: Vec::new(),
            load_diagnostics: Vec::new(),
            known: FxHashMap::default(),
            cache: Cache {
                attached: self.cache.attached.clone(),
                ..Cache::default()
            },
            evidences: Evidences::default(),
            unfinished: false,
            later: Later::default(),
            as_of: self.as_of.clone(),
        };
        let loader = Texts(self);
        let tree = downlead_syntax::File::parse(text);
        s.add(&path, tree, None, true, &loader, 0);
        s.compute(&loader, ON, When::Now);
        s
    }
}
