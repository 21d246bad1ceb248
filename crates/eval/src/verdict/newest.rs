//! Which part before a node was installed last: what was read before that says how the station was.

use downlead_base::Loc;
use downlead_station::model::Name;

use crate::chain::{NodeState, Run};
use crate::result::BandResult;

/// The part before a node that was installed last.
#[derive(Clone, Copy)]
pub(super) struct Newest<'m> {
    pub(super) tag: &'m Name,
    /// Since when it has been there, as written.
    pub(super) since: &'m str,
}

impl Newest<'_> {
    /// Whether it was installed after a date, to the digits that both have.
    pub(super) fn is_after(&self, date: &str) -> bool {
        let n = self.since.len().min(date.len());
        !date.is_empty() && date.get(..n) < self.since.get(..n)
    }
}

/// The part with the latest date of installation among those before a node.
pub(super) fn newest_before<'m>(
    run: &Run<'m, '_>,
    result: &BandResult,
    state: &NodeState<'_>,
) -> Option<Newest<'m>> {
    let before: Vec<Loc> = result
        .nodes
        .iter()
        .take(state.nodes)
        .filter_map(|n| n.tag())
        .collect();
    let parts = run.cx.station.map_or(&[][..], |s| &s.parts);
    parts
        .iter()
        .filter_map(|p| {
            let tag = p.tag.as_ref().filter(|t| before.contains(&t.loc))?;
            let since = p.meta.since.as_deref()?;
            Some(Newest { tag, since })
        })
        .max_by_key(|p| p.since)
}
