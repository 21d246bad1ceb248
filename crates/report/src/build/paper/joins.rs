//! Connector pairs between parts. Several chains pass the same pair: two parts are joined once.

use std::collections::BTreeMap;

use downlead_base::Loc;
use downlead_eval::result::{BandResult, ChainResult, NodeResult};
use downlead_eval::{Places, origin};
use downlead_station::model::{Part, PartData};
use rustc_hash::FxHashMap;

/// A side of a join: a part, or the end of a chain.
#[derive(Clone, Debug, PartialEq)]
struct Side {
    key: Loc,
    name: String,
}

/// What joins two parts.
pub(super) struct Joined {
    /// Names of both parts.
    pub(super) sides: [String; 2],
    /// Pairs by name of the connector.
    pub(super) pairs: BTreeMap<String, u32>,
    /// Chains that say another number, and what they say.
    pub(super) otherwise: Vec<String>,
    /// Chain that was counted.
    pub(super) chain: String,
}

/// All joins of some chains, in the order in which they are first passed.
pub(super) fn joined(
    places: &Places<'_>,
    parts: &FxHashMap<Loc, &Part>,
    chains: &[ChainResult],
) -> Vec<Joined> {
    let mut out: Vec<(Loc, Loc, Joined)> = Vec::new();
    for c in chains {
        let Some(b) = c.bands.first() else { continue };
        let name = places.text(c.name);
        for (a, z, pairs) in of_band(places, parts, c, b) {
            // a receive chain passes the pair the other way round
            let same = |x: &&mut (Loc, Loc, Joined)| {
                (x.0, x.1) == (a.key, z.key) || (x.0, x.1) == (z.key, a.key)
            };
            let known = out.iter_mut().find(same);
            match known.map(|x| &mut x.2) {
                None => out.push((
                    a.key,
                    z.key,
                    Joined {
                        sides: [a.name, z.name],
                        pairs,
                        otherwise: Vec::new(),
                        chain: name.to_owned(),
                    },
                )),
                Some(j) if j.pairs == pairs => {}
                Some(j) => {
                    let sum = |p: &BTreeMap<String, u32>| p.values().sum::<u32>();
                    let (more, said) = match sum(&pairs) > sum(&j.pairs) {
                        true => (true, std::mem::replace(&mut j.pairs, pairs)),
                        false => (false, pairs),
                    };
                    let who = match more {
                        true => std::mem::replace(&mut j.chain, name.to_owned()),
                        false => name.to_owned(),
                    };
                    j.otherwise.push(format!("{} in {who}", listed(&said)));
                }
            }
        }
    }
    out.into_iter().map(|x| x.2).collect()
}

/// `3 n-pair, 1 n-to-uhf`.
pub(super) fn listed(pairs: &BTreeMap<String, u32>) -> String {
    let all: Vec<String> = pairs
        .iter()
        .map(|(name, n)| format!("{n} {name}"))
        .collect();
    match all.is_empty() {
        true => "none".to_owned(),
        false => all.join(", "),
    }
}

type Between = (Side, Side, BTreeMap<String, u32>);

fn of_band(
    places: &Places<'_>,
    parts: &FxHashMap<Loc, &Part>,
    c: &ChainResult,
    b: &BandResult,
) -> Vec<Between> {
    let end = || Side {
        // the chain's own head: no part stands there
        key: c.loc,
        name: String::new(),
    };
    let mut out = Vec::new();
    let mut before = end();
    let mut pairs: BTreeMap<String, u32> = BTreeMap::new();
    let mut branch = 0;
    for n in &b.nodes {
        if n.branch != branch {
            // what follows a branch is no neighbour of what it ended with; a branch begins at its divider
            branch = n.branch;
            before = divider(places, b, n).unwrap_or_else(end);
            pairs.clear();
        }
        if let Some((name, count)) = connector(places, parts, n) {
            *pairs.entry(name).or_default() += count;
            continue;
        }
        let here = side(places, n);
        if !pairs.is_empty() {
            out.push((before, here.clone(), std::mem::take(&mut pairs)));
        }
        before = here;
    }
    if !pairs.is_empty() {
        out.push((before, end(), pairs));
    }
    out
}

fn side(places: &Places<'_>, n: &NodeResult) -> Side {
    Side {
        key: n.def,
        name: n
            .tag()
            .map_or_else(|| origin::who(places, n.def), |t| places.text(t).to_owned()),
    }
}

/// The divider that a branch begins at: the last part before it in the branch above.
fn divider(places: &Places<'_>, b: &BandResult, first: &NodeResult) -> Option<Side> {
    let name = |i: u16| b.branches.get(usize::from(i).checked_sub(1)?).map(|n| &**n);
    let above = name(first.branch)?;
    let at = b.nodes.iter().position(|n| std::ptr::eq(n, first))?;
    let is_above = |n: &&NodeResult| match name(n.branch) {
        None => true,
        Some(x) => x != above && above.starts_with(&format!("{x}/")),
    };
    let found = b.nodes[..at]
        .iter()
        .rev()
        .filter(|n| !n.kind.is_connector())
        .find(is_above)?;
    Some(side(places, found))
}

fn connector(
    places: &Places<'_>,
    parts: &FxHashMap<Loc, &Part>,
    n: &NodeResult,
) -> Option<(String, u32)> {
    if n.kind.is_join() {
        return Some((places.text(n.def).to_owned(), 1));
    }
    match parts.get(&n.def).map(|p| &p.data) {
        Some(PartData::Connector(count, name)) => Some((name.text.to_string(), *count)),
        _ => None,
    }
}
