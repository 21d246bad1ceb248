//! Limits of a chain that have no result.

use downlead_base::Loc;
use downlead_eval::Places;
use downlead_eval::result::{BandResult, ChainResult};
use downlead_station::model::{Chain, Direction, Meaning, Name, Node, Step};

use crate::shape::chain::UnjudgedReport;
use crate::shape::word::Word;

/// The limits stated for a band of a transmit chain that are not among its results.
pub(super) fn unjudged(
    places: &Places<'_>,
    meaning: &Meaning,
    chain: &ChainResult,
    band: &BandResult,
) -> Vec<UnjudgedReport> {
    if chain.direction == Direction::Receive {
        return Vec::new();
    }
    let mut stated = Vec::new();
    for c in chains(meaning).filter(|c| c.loc == chain.loc) {
        limits(&c.steps, &mut stated);
    }
    stated
        .into_iter()
        .filter(|(loc, _)| !band.limits.iter().any(|l| l.loc == *loc))
        .filter_map(|(loc, node)| match node {
            Node::Limit {
                quantity,
                watts,
                on,
                ..
            } if holds(on, band) => {
                let (file, _, line) = places.at(loc);
                Some(UnjudgedReport {
                    quantity: Word(*quantity),
                    limit_w: *watts,
                    file,
                    line,
                })
            }
            _ => None,
        })
        .collect()
}

fn chains(meaning: &Meaning) -> impl Iterator<Item = &Chain> {
    let (own, of_station) = match meaning {
        Meaning::Chain(c) => (Some(&**c), None),
        Meaning::Station(s) => (None, Some(s.chains.iter())),
        _ => (None, None),
    };
    own.into_iter().chain(of_station.into_iter().flatten())
}

fn limits<'m>(steps: &'m [Step], out: &mut Vec<(Loc, &'m Node)>) {
    for step in steps {
        match step {
            Step::Node(node, loc) => {
                if matches!(**node, Node::Limit { .. }) {
                    out.push((*loc, node));
                }
            }
            Step::Part { branches, .. } | Step::Use { branches, .. } => {
                branches.iter().for_each(|b| limits(&b.steps, out));
            }
            Step::Broken(_) => {}
        }
    }
}

fn holds(on: &[Name], band: &BandResult) -> bool {
    on.is_empty() || on.iter().any(|n| n.text == band.band)
}
