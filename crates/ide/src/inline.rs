//! Inline values: what a name in the text stands for just now, for an editor that shows such while
//! something runs.

use downlead_base::Span;
use downlead_eval::Snapshot;
use downlead_station::model::Direction;
use downlead_syntax::Item;

use crate::config::Config;
use crate::hints::in_short;
use crate::names::{Class, NameKind};
use crate::resolve::pieces_of;
use crate::view::{Doc, View, env_of, tree};
use crate::words::in_units;

/// A name, and what it comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InlineValue {
    /// The name in the text.
    pub span: Span,
    /// Name and value: `legal = 45.0 W (46.5 dBm)`, `M1 0.69 dB → 18.1 W`.
    pub text: String,
}

/// Values of the named values and of the tags in chains that lie in `range`, in the order of the
/// text. Parts have many values, one a band: that of the chain's first band that is shown is given.
#[must_use]
pub fn inline_values(s: &Snapshot, doc: Doc, range: Span, c: &Config) -> Vec<InlineValue> {
    let Some(file) = tree(s, doc) else {
        return Vec::new();
    };
    let view = View::new(s);
    let lets = env_of(s, doc).map(|e| &e.lets);
    let mut out = Vec::new();
    for placed in file.items() {
        let whole = placed.span();
        if whole.end < range.start || range.end < whole.start {
            continue;
        }
        let mut parts: Option<Vec<(Span, String)>> = None;
        for p in pieces_of(s, doc, &placed.item) {
            let span = p.span.shift(placed.start);
            if span.end < range.start || range.end < span.start {
                continue;
            }
            let name = placed.item.slice(p.span);
            let text = match p.class {
                Class::Name(NameKind::Let, _) => lets
                    .and_then(|l| l.get(name))
                    .map(|v| format!("{name} = {}", in_units(v.q))),
                Class::Name(NameKind::Tag, _) => {
                    let parts = parts.get_or_insert_with(|| in_chains(&view, doc, &placed.item, c));
                    let mine = |line: &&(Span, String)| {
                        line.0.start <= p.span.start && p.span.end <= line.0.end
                    };
                    // a divider's line holds those of its branches
                    let line = parts.iter().filter(mine).min_by_key(|l| l.0.len());
                    line.map(|l| l.1.clone())
                }
                _ => None,
            };
            out.extend(text.map(|text| InlineValue { span, text }));
        }
    }
    out
}

/// The lines of an item's chains, and what their parts come to.
fn in_chains(view: &View<'_>, doc: Doc, item: &Item, c: &Config) -> Vec<(Span, String)> {
    let mut out = Vec::new();
    let scopes = view.s.scopes().iter();
    let here = scopes.filter(|x| doc == Doc::File(x.file()));
    for (_, _, result) in here.flat_map(|x| x.items()).filter(|i| i.0.id == item.id) {
        for chain in &result.chains {
            let receive = chain.direction == Direction::Receive;
            let first = chain.bands.iter().find(|b| c.shows(&b.band));
            let nodes = first.into_iter().flat_map(|b| b.nodes.iter());
            let own = nodes.filter(|n| !n.kind.is_join() && n.chain.item == item.id);
            out.extend(own.filter_map(|n| Some((n.chain.span, in_short(view, n, receive)?))));
        }
    }
    out
}
