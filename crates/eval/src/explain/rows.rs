//! Which part of the network each row of a result stands on.

use downlead_physics::net::part::{End, Gain, Junction, Load, Part as Net, Stretch as Wired};

use crate::chain::{Computed, Ending, Stretch};
use crate::element::Element;
use crate::result::{NodeKind, NodeResult};

/// A row of the result.
pub(super) struct Row<'k> {
    /// The row after which the power comes in.
    pub(super) prev: Option<usize>,
    /// Node of the network before it.
    pub(super) before: usize,
    /// Node after it.
    pub(super) at: usize,
    pub(super) what: What<'k>,
}

/// What a row is.
pub(super) enum What<'k> {
    /// The transmitter, with the mismatch it sees.
    Source,
    /// The antenna of a receive chain, as a source.
    Aerial(&'k Net),
    /// A part.
    Part(&'k Net, &'k Element<'k>),
    /// A divider: what each branch gets where all get the same, else what all get together.
    /// Nodes at which the branches begin.
    Divider {
        junction: &'k Junction,
        element: &'k Element<'k>,
        starts: Vec<usize>,
        alike: bool,
    },
    /// Where a branch begins that does not get the same as the others: its number from 0.
    Arm { junction: &'k Junction, arm: usize },
    /// An antenna or load, with its number among the ends.
    End {
        load: &'k Load,
        gain: Option<&'k Gain>,
        end: usize,
    },
    /// The receiver.
    Receiver,
    /// A divider of which nothing is known.
    Unknown,
}

/// The rows of a result, in its order.
pub(super) fn rows<'k>(c: &'k Computed<'_>, nodes: &[NodeResult], receives: bool) -> Vec<Row<'k>> {
    let mut w = Walk {
        nodes,
        out: Vec::new(),
        ends: 0,
    };
    use downlead_station::model::PartKind as P;
    let first = nodes.first().map(|n| n.kind);
    if receives {
        let aerial = first.is_some_and(|k| k.is(P::Antenna));
        if let (true, Some(source)) = (aerial, c.net.feed.parts.first()) {
            w.push(None, 0, 1, What::Aerial(source));
        }
        for (i, e) in c.stretch.elements.iter().enumerate() {
            let Some(part) = c.net.feed.parts.get(i + 1) else {
                return Vec::new();
            };
            w.push(
                w.out.len().checked_sub(1),
                i + 1,
                i + 2,
                What::Part(part, e),
            );
        }
        if let Ending::Receiver(..) = c.stretch.end {
            let last = c.stretch.elements.len() + 1;
            w.push(w.out.len().checked_sub(1), last, last, What::Receiver);
        }
        return w.out;
    }
    if first.is_some_and(|k| matches!(k, NodeKind::Part(p) if p.sends())) {
        w.push(None, 0, 0, What::Source);
    }
    let prev = w.out.len().checked_sub(1);
    w.stretch(&c.stretch, Some(&c.net.feed), 0, prev);
    w.out
}

struct Walk<'k, 'n> {
    nodes: &'n [NodeResult],
    out: Vec<Row<'k>>,
    /// Ends so far.
    ends: usize,
}

impl<'k> Walk<'k, '_> {
    fn push(&mut self, prev: Option<usize>, before: usize, at: usize, what: What<'k>) -> usize {
        self.out.push(Row {
            prev,
            before,
            at,
            what,
        });
        self.out.len() - 1
    }

    fn stretch(
        &mut self,
        s: &'k Stretch<'_>,
        wired: Option<&'k Wired>,
        start: usize,
        mut prev: Option<usize>,
    ) {
        let count = s.elements.len();
        for (i, e) in s.elements.iter().enumerate() {
            let (before, at) = (start + i, start + i + 1);
            if matches!(s.end, Ending::Divider) && i + 1 == count {
                self.divider(s, e, wired, (before, at), prev);
                return;
            }
            let what = match wired.and_then(|w| w.parts.get(i)) {
                Some(part) => What::Part(part, e),
                None => What::Unknown,
            };
            prev = Some(self.push(prev, before, at, what));
        }
        let last = start + count;
        if let Some(End::Load(load, gain)) = wired.map(|w| &w.end) {
            if let Ending::Antenna(..) = s.end {
                let end = self.ends;
                let gain = gain.as_ref();
                self.push(prev, last, last, What::End { load, gain, end });
            }
            self.ends += 1;
        } else if let Ending::Antenna(..) = s.end {
            self.push(prev, last, last, What::Unknown);
        }
    }

    fn divider(
        &mut self,
        s: &'k Stretch<'_>,
        e: &'k Element<'_>,
        wired: Option<&'k Wired>,
        (before, at): (usize, usize),
        prev: Option<usize>,
    ) {
        let mut starts = Vec::with_capacity(s.branches.len());
        let mut next = at + 1;
        for (_, b) in &s.branches {
            starts.push(next);
            next += nodes_of(b);
        }
        let here = self.out.len();
        // a branch that does not get what the others get begins with a row of the divider
        let nodes = self.nodes;
        let own_row = |out: &[Row<'_>]| {
            nodes
                .get(out.len())
                .is_some_and(|n| n.def == e.def && n.kind == e.kind)
        };
        let (junction, arms) = match wired.map(|w| &w.end) {
            Some(End::Branches { junction, arms, .. }) => (Some(junction), &arms[..]),
            _ => (None, &[][..]),
        };
        // the row itself is there when the next one is looked at
        self.push(prev, before, at, What::Unknown);
        let alike = !own_row(&self.out);
        if let (Some(junction), Some(row)) = (junction, self.out.get_mut(here)) {
            if alike {
                row.at = starts.first().copied().unwrap_or(at);
            }
            row.what = What::Divider {
                junction,
                element: e,
                starts: starts.clone(),
                alike,
            };
        }
        for (arm, ((_, b), start)) in s.branches.iter().zip(&starts).enumerate() {
            let mut from = here;
            if !alike {
                let what = junction.map_or(What::Unknown, |junction| What::Arm { junction, arm });
                from = self.push(Some(here), at, *start, what);
            }
            self.stretch(b, arms.get(arm), *start, Some(from));
        }
    }
}

/// Nodes of a branch: its beginning, and one after each element.
fn nodes_of(s: &Stretch<'_>) -> usize {
    1 + s.elements.len() + s.branches.iter().map(|b| nodes_of(&b.1)).sum::<usize>()
}
