//! What a line of a site comes to: an isolation, a limit of a desense.

use downlead_base::Loc;
use downlead_eval::Snapshot;
use downlead_report::build::desense as words;

use crate::view::{Doc, item_at, scope_of};

/// Of the line at an offset, a sentence each; nothing for other lines.
pub(crate) fn lines(s: &Snapshot, doc: Doc, offset: u32) -> Vec<String> {
    let (Some(placed), Some(scope)) = (item_at(s, doc, offset), scope_of(s, doc)) else {
        return Vec::new();
    };
    let item = scope.items().iter().find(|x| x.0.id == placed.item.id);
    let Some(site) = item.and_then(|x| x.2.site.as_deref()) else {
        return Vec::new();
    };
    let here =
        |loc: Loc| loc.item == placed.item.id && loc.span.shift(placed.start).touches(offset);
    let isolations = site.isolations.iter().filter(|i| here(i.loc));
    let mut out: Vec<String> = isolations.map(words::isolated_in_short).collect();
    let limits = site
        .desense
        .iter()
        .filter(|r| r.limit.as_ref().is_some_and(|l| here(l.loc)));
    for r in limits {
        out.push(words::in_short(r));
        out.extend(words::sources_in_short(r));
    }
    out
}
