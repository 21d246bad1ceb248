//! Lines of a block that begin at the left margin: one finding for each line, with the fix that
//! indents it, in place of those about the braces around it.

use downlead_base::{Diagnostic, ItemId, Loc, Span, codes};
use rustc_hash::FxHashSet;

use super::FileEntry;

/// Where a block is not closed, lines that mean nothing at the margin follow, and the last of them
/// has the brace that is too many: the lines belong into the block.
pub(super) fn at_the_margin(found: &mut Vec<Diagnostic>, files: &[FileEntry]) {
    let items = |id: &str| -> FxHashSet<ItemId> {
        let of = found.iter().filter(|d| d.code.id == id);
        of.map(|d| d.primary.loc.item).collect()
    };
    let open = items(codes::UNCLOSED_BLOCK.id);
    if open.is_empty() {
        return;
    }
    let too_many = items(codes::UNMATCHED_BRACE.id);
    // what begins a line at the margin and is a statement of a block
    let of_line = |d: &&Diagnostic| belongs(d);
    let wrong: FxHashSet<(ItemId, u32)> = found
        .iter()
        .filter(of_line)
        .map(|d| (d.primary.loc.item, d.primary.loc.span.start))
        .collect();
    let misplaced: FxHashSet<(ItemId, u32)> = files
        .iter()
        .flat_map(|f| f.tree.items())
        .filter_map(|p| Some((p.item.id, p.item.statement()?.head_span().start)))
        .filter(|head| wrong.contains(head))
        .collect();
    let margin: FxHashSet<ItemId> = misplaced.iter().map(|m| m.0).collect();
    let mut lines: FxHashSet<ItemId> = FxHashSet::default();
    let mut braces: FxHashSet<ItemId> = FxHashSet::default();
    for f in files {
        let ids: Vec<ItemId> = f.tree.items().iter().map(|p| p.item.id).collect();
        for (i, id) in ids.iter().enumerate().filter(|(_, id)| open.contains(id)) {
            let below = ids[i + 1..].iter().take_while(|id| margin.contains(id));
            let below: Vec<ItemId> = below.copied().collect();
            let Some(end) = below.iter().position(|id| too_many.contains(id)) else {
                continue;
            };
            lines.extend(&below[..=end]);
            braces.extend([*id, below[end]]);
        }
    }
    if lines.is_empty() {
        return;
    }
    let of_brace = [
        &codes::UNCLOSED_BLOCK,
        &codes::UNMATCHED_BRACE,
        &codes::CHAIN_WITHOUT_END,
        &codes::PART_UNUSED,
    ];
    found.retain(|d| {
        let loc = d.primary.loc;
        let follows = of_brace.contains(&d.code) && braces.contains(&loc.item);
        // further lines of the item are inside no block because the first one is
        let below = belongs(d) && !misplaced.contains(&(loc.item, loc.span.start));
        !(follows || below && lines.contains(&loc.item))
    });
    for d in found.iter_mut() {
        let loc = d.primary.loc;
        if belongs(d)
            && misplaced.contains(&(loc.item, loc.span.start))
            && lines.contains(&loc.item)
        {
            let gap = Loc::new(loc.item, Span::new(loc.span.start, loc.span.start));
            let with = d.clone().fix("indent the line", gap, "    ").preferred();
            *d = with;
        }
    }
}

/// Whether a finding can be about a line that belongs into a block.
fn belongs(d: &Diagnostic) -> bool {
    [&codes::MISPLACED_STATEMENT, &codes::UNKNOWN_STATEMENT].contains(&d.code)
}
