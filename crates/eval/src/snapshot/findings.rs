//! All findings in order, without those that one slip explains.

use downlead_base::{Diagnostic, ItemId, codes};
use downlead_syntax::File;
use rustc_hash::{FxHashMap, FxHashSet};

use super::{Found, Snapshot};

impl Snapshot {
    /// All findings that the text does not accept, in order of file and place.
    #[must_use]
    pub fn diagnostics(&self) -> Vec<Diagnostic> {
        self.found().diagnostics
    }

    /// All findings, in order of file and place, and those that the text accepts.
    #[must_use]
    pub fn found(&self) -> Found {
        let index = self.index();
        let mut out: Vec<Diagnostic> = self.load_diagnostics.clone();
        for f in &self.files {
            out.extend(quiet(f.tree.diagnostics().collect(), &f.tree));
        }
        let mut definitions: FxHashSet<ItemId> = FxHashSet::default();
        for s in &self.scopes {
            out.extend(s.diagnostics.iter().cloned());
            for (item, low, r) in &s.items {
                if definitions.insert(item.id) {
                    out.extend(low.diagnostics.iter().cloned());
                }
                out.extend(r.diagnostics.iter().cloned());
            }
            for low in &s.used {
                out.extend(low.diagnostics.iter().cloned());
            }
        }
        out.extend(self.changed_since_recorded());
        super::indented::at_the_margin(&mut out, &self.files);
        below_open_blocks(&mut out);
        let mut accepted = self.set_aside(&mut out);
        let key = |d: &Diagnostic| {
            let at = index
                .get(&d.primary.loc.item)
                .copied()
                .unwrap_or((usize::MAX, 0));
            (
                at.0,
                at.1 + d.primary.loc.span.start,
                d.primary.loc.span.end,
                d.code.id,
            )
        };
        let same = |a: &Diagnostic, b: &Diagnostic| {
            a.code.id == b.code.id && a.primary.loc == b.primary.loc && a.message == b.message
        };
        out.sort_by_cached_key(key);
        out.dedup_by(|a, b| same(a, b));
        accepted.sort_by_cached_key(|a| key(&a.finding));
        accepted.dedup_by(|a, b| same(&a.finding, &b.finding));
        Found {
            diagnostics: out,
            accepted,
        }
    }
}

/// Where a brace is missing, the statements around it are in the wrong block: findings about
/// their places follow from that one slip.
fn below_open_blocks(found: &mut Vec<Diagnostic>) {
    // where the uncertain part of an item begins, and whether the first finding there may be the
    // slip
    let mut unsure: FxHashMap<ItemId, (u32, bool)> = FxHashMap::default();
    for d in found.iter() {
        if d.code.id == codes::UNCLOSED_BLOCK.id {
            unsure.insert(d.primary.loc.item, (d.primary.loc.span.start, false));
        } else if d.code.id == codes::UNMATCHED_BRACE.id {
            unsure.insert(d.primary.loc.item, (0, true));
        }
    }
    if unsure.is_empty() {
        return;
    }
    let of_place = |d: &Diagnostic| {
        [
            &codes::MISPLACED_STATEMENT,
            &codes::UNKNOWN_STATEMENT,
            &codes::MISSING_VALUE,
        ]
        .contains(&d.code)
    };
    let of_shape = |d: &Diagnostic| {
        [
            &codes::UNKNOWN_PART,
            &codes::PART_UNUSED,
            &codes::CHAIN_WITHOUT_START,
            &codes::CHAIN_WITHOUT_END,
            &codes::PART_AFTER_END,
        ]
        .contains(&d.code)
    };
    let mut first: FxHashMap<ItemId, u32> = FxHashMap::default();
    for d in found.iter().filter(|d| of_place(d)) {
        let at = first.entry(d.primary.loc.item).or_insert(u32::MAX);
        *at = (*at).min(d.primary.loc.span.start);
    }
    found.retain(|d| {
        let (item, start) = (d.primary.loc.item, d.primary.loc.span.start);
        match unsure.get(&item) {
            Some((from, slip)) if start >= *from => {
                !of_shape(d) && (!of_place(d) || *slip && first.get(&item) == Some(&start))
            }
            _ => true,
        }
    });
}

/// One slip in the head of a block leaves all its lines inside no block: that is one finding, not
/// one a line.
fn quiet(found: Vec<Diagnostic>, tree: &File) -> Vec<Diagnostic> {
    let mut out: Vec<Diagnostic> = Vec::with_capacity(found.len());
    // items whose first line is broken, and where the finding about stray lines of an item is
    let mut broken: FxHashSet<ItemId> = FxHashSet::default();
    let mut stray: FxHashMap<ItemId, (usize, usize)> = FxHashMap::default();
    if found.is_empty() {
        return found;
    }
    let texts: FxHashMap<ItemId, &str> = tree
        .items()
        .iter()
        .map(|p| (p.item.id, p.item.text()))
        .collect();
    for d in &found {
        let item = d.primary.loc.item;
        let text = texts.get(&item).copied().unwrap_or("");
        let head = text.find('\n').unwrap_or(text.len());
        // a brace too many is what is quietened below: it is no slip of the head that explains itself away
        let follows = [&codes::MISPLACED_STATEMENT, &codes::UNMATCHED_BRACE].contains(&d.code);
        if (d.primary.loc.span.start as usize) < head && !follows {
            broken.insert(item);
        }
    }
    for d in found {
        let item = d.primary.loc.item;
        let misplaced = d.code.id == codes::MISPLACED_STATEMENT.id;
        if broken.contains(&item) && (misplaced || d.code.id == codes::UNMATCHED_BRACE.id) {
            continue;
        }
        if misplaced {
            if let Some((_, more)) = stray.get_mut(&item) {
                *more += 1;
                continue;
            }
            stray.insert(item, (out.len(), 0));
        }
        out.push(d);
    }
    for (at, more) in stray.into_values().filter(|s| s.1 > 0) {
        let words = if more == 1 {
            "One more line".to_owned()
        } else {
            format!("{more} more lines")
        };
        out[at].help.push(format!(
            "{words} below it stand{} there too.",
            if more == 1 { "s" } else { "" }
        ));
    }
    out
}
