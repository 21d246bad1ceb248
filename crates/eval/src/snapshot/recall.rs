//! What rests on an instrument or on the sheet of a cable: the items that use it, and the set with the
//! line `recalled` written into its definition.

use downlead_base::{ItemId, Span};
use downlead_station::model::Meaning;
use downlead_station::{Env, Loader, Lowered, NameKind, library};
use downlead_syntax::Item;
use rustc_hash::FxHashSet;

use super::later::When;
use super::{ON, Snapshot};
use crate::stage::Stage;

/// Why a line cannot be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoRecall {
    /// The definition says already that it was recalled; the file.
    Already(String),
    /// The definition's block is not closed; the file.
    Broken(String),
}

impl Snapshot {
    /// The stations, chains, sessions, links and variants that use a definition, directly or by what they
    /// use: index of the scope and of the item in it. Nothing is computed for it.
    #[must_use]
    pub fn resting_on(&self, kind: NameKind, name: &str) -> Vec<(usize, usize)> {
        let mut out = Vec::new();
        for (s, scope) in self.scopes.iter().enumerate() {
            if !scope.env.defines(kind, name) {
                continue;
            }
            for (i, (item, low, _)) in scope.items.iter().enumerate() {
                if uses(item, low, &scope.env, kind, name) {
                    out.push((s, i));
                }
            }
        }
        out
    }

    /// Computes these items to the last stage, where they are left for later.
    pub fn evaluate_items(&mut self, items: &[(usize, usize)]) {
        let wanted: FxHashSet<(usize, ItemId)> = items
            .iter()
            .filter_map(|(s, i)| Some((*s, self.scopes.get(*s)?.items.get(*i)?.0.id)))
            .collect();
        self.evaluate_wanted(&wanted, Stage::Whole, ON);
    }

    /// Writes `line` into the block of each definition of that name that the scopes see; of one of the
    /// built-in library a copy with the line is written at the end of the files that see it. Items keep
    /// their places in [`Snapshot::scopes`].
    ///
    /// # Errors
    /// A definition that cannot take the line; nothing is changed then.
    pub fn recall(
        &mut self,
        kind: NameKind,
        name: &str,
        line: &str,
        loader: &dyn Loader,
    ) -> Result<Vec<(usize, u32)>, NoRecall> {
        let mut edits: Vec<(usize, Span, String)> = Vec::new();
        for scope in &self.scopes {
            let (loc, recalled, built_in) = match kind {
                NameKind::Instrument => match scope.env.instrument(name) {
                    Some(i) => (i.name.loc, i.recalled.is_some(), false),
                    None => continue,
                },
                _ => match scope.env.cable(name) {
                    Some(c) => (c.name.loc, c.recalled.is_some(), c.built_in),
                    None => continue,
                },
            };
            if built_in {
                if let Some(text) = library().cable_text(name) {
                    let end = self.files[scope.file].text().len();
                    let end = u32::try_from(end).unwrap_or(u32::MAX);
                    let at = text.rfind('}').unwrap_or(text.len());
                    let text = format!("\n{}    {line}\n{}\n", &text[..at], &text[at..]);
                    edits.push((scope.file, Span::new(end, end), text));
                }
                continue;
            }
            let Some((file, _)) = self.place(loc) else {
                continue;
            };
            let path = self.files[file].path.clone();
            if recalled {
                return Err(NoRecall::Already(path));
            }
            let Some((at, text)) = self.insertion(file, loc.item, line) else {
                return Err(NoRecall::Broken(path));
            };
            if !edits.iter().any(|e| e.0 == file && e.1.start == at) {
                edits.push((file, Span::new(at, at), text));
            }
        }
        let mut out = Vec::new();
        // from the end, so that what comes before keeps its place
        edits.sort_by_key(|e| (e.0, std::cmp::Reverse(e.1.start)));
        for (file, span, text) in edits {
            out.push((file, span.start));
            // a definition uses no file, so what the files use stays
            let tree = &mut self.files[file].tree;
            *tree = tree.edit(span, &text);
        }
        self.compute(loader, ON, When::Asked);
        Ok(out)
    }

    /// Where a line goes into the block of an item, and its text.
    fn insertion(&self, file: usize, item: ItemId, line: &str) -> Option<(u32, String)> {
        let placed = self.files[file]
            .tree
            .items()
            .iter()
            .find(|p| p.item.id == item)?;
        let statement = placed.item.statement()?;
        if statement.is_broken() {
            return None;
        }
        let Some(block) = statement.block() else {
            let end = placed.start + statement.head_span().end;
            return Some((end, format!(" {{\n    {line}\n}}")));
        };
        let closing = placed.start + block.span().end - 1;
        let text = self.files[file].text();
        (text.as_bytes().get(closing as usize) == Some(&b'}'))
            .then(|| (closing, format!("\n    {line}\n")))
    }
}

/// Whether an item uses a definition.
fn uses(item: &Item, low: &Lowered, env: &Env, kind: NameKind, name: &str) -> bool {
    if !matches!(
        low.meaning,
        Meaning::Station(_)
            | Meaning::Chain(_)
            | Meaning::Session(_)
            | Meaning::Link(_)
            | Meaning::Variant(_)
    ) {
        return false;
    }
    let is = |k: NameKind, n: &str| k == kind && n == name;
    let among = |list: &[(NameKind, Box<str>)]| list.iter().any(|(k, n)| is(*k, n));
    let by_station = |station: &str| {
        among(env.used_by_station(station))
            || env.base(station).is_some_and(|(base, used)| {
                used.names
                    .iter()
                    .any(|m| is(m.kind, base.slice(m.loc.span)))
                    || in_tables(used, env, kind, name)
            })
    };
    let by_names = low.names.iter().any(|m| {
        let text = item.slice(m.loc.span);
        is(m.kind, text)
            || match m.kind {
                NameKind::Device => among(env.used_by_device(text)),
                NameKind::Rules => among(env.used_by_rules(text)),
                NameKind::Station => by_station(text),
                _ => false,
            }
    });
    let by_meaning = match &low.meaning {
        Meaning::Variant(v) => by_station(&v.of.text),
        Meaning::Station(st) => env.naming(&st.name.text).iter().any(|n| by_station(n)),
        _ => false,
    };
    by_names || by_meaning || in_tables(low, env, kind, name)
}

/// Whether a row of a table that an item takes names an instrument.
fn in_tables(low: &Lowered, env: &Env, kind: NameKind, name: &str) -> bool {
    kind == NameKind::Instrument
        && low.files.iter().any(|f| {
            let table = env.attachments.at(f.loc).and_then(|a| a.readings());
            table.is_some_and(|t| t.rows.iter().any(|r| r.instrument.as_deref() == Some(name)))
        })
}
