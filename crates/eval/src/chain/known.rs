//! What is known at the nodes of a chain of which a part could not be computed.
//!
//! The power that goes forward at a node follows from the parts before it, the SWR there from
//! those after it, the net power from both. What cannot be known is left out of every output:
//! a part of unknown loss is not one without loss.

use downlead_physics::net::R0;
use downlead_physics::net::part::{Junction, Part as Net};
use downlead_station::model::PartKind;

use super::stretch::{Stretch, nodes_of};
use crate::element::Element;

/// Of each node of the network, in its order.
#[derive(Debug)]
pub(super) struct Known {
    /// Whether what comes back is known.
    swr: Vec<bool>,
    /// Whether what goes forward is known.
    forward: Vec<bool>,
}

impl Known {
    /// Of a chain whose beginning gets a known power or not; before its parts are wired.
    pub(super) fn of(s: &Stretch<'_>, fed: bool) -> Known {
        let n = nodes_of(s);
        let mut k = Known {
            swr: vec![false; n],
            forward: vec![false; n],
        };
        k.seen(s, 0);
        k.sent(s, 0, fed);
        k
    }

    /// Whether the SWR at a node is known.
    pub(super) fn swr(&self, at: usize) -> bool {
        self.swr.get(at).copied().unwrap_or(false)
    }

    /// Whether the forward power at a node is known.
    pub(super) fn forward(&self, at: usize) -> bool {
        self.forward.get(at).copied().unwrap_or(false)
    }

    /// Whether the net power at a node is known.
    pub(super) fn net(&self, at: usize) -> bool {
        self.swr(at) && self.forward(at)
    }

    /// Notes what is seen at the nodes of a stretch that begins at node `start`, from its end on;
    /// what is known at its beginning.
    fn seen(&mut self, s: &Stretch<'_>, start: usize) -> bool {
        let n = s.elements.len();
        let mut at = start + n + 1;
        let mut known = s.load_known;
        for (_, b) in &s.branches {
            known &= self.seen(b, at);
            at += nodes_of(b);
        }
        if !s.branches.is_empty() {
            known &= s.elements.last().is_none_or(|e| e.complete);
        }
        for i in (0..=n).rev() {
            known &= !s.gaps.contains(&i);
            self.swr[start + i] = known;
            if let Some(e) = i.checked_sub(1).and_then(|k| s.elements.get(k)) {
                known = e.kind.is(PartKind::Tuner) || known && e.complete;
            }
        }
        known
    }

    /// Notes what goes out at the nodes of a stretch, from its beginning on.
    fn sent(&mut self, s: &Stretch<'_>, start: usize, mut known: bool) {
        let n = s.elements.len();
        for (i, e) in s.elements.iter().enumerate() {
            self.forward[start + i] = known;
            known &= e.complete && !s.gaps.contains(&i);
            known &= self.swr(start + i + 1) || !sends_back(e);
        }
        self.forward[start + n] = known;
        let isolated = s.elements.last().is_some_and(|e| {
            e.complete && matches!(e.junction, Some((Junction::Divider { .. }, None)))
        });
        let mut at = start + n + 1;
        for (_, b) in &s.branches {
            let into = known && !s.gaps.contains(&n) && (self.swr(start + n) || isolated);
            self.sent(b, at, into);
            at += nodes_of(b);
        }
    }
}

/// Whether a part sends out again what comes back to it, so that the power that goes forward after
/// it depends on what follows.
fn sends_back(e: &Element<'_>) -> bool {
    /// A step of impedance below this matters little, ohm.
    const SMALL_STEP: f64 = 2.5;
    fn one(net: &Net, z0: Option<f64>) -> bool {
        match net {
            Net::Line(l) => l.swr.is_some() || z0.is_some_and(|z| (z - R0).abs() > SMALL_STEP),
            Net::Device { swr, .. } | Net::OneWay { swr, .. } => swr.is_some(),
            Net::Pairs { bump, swr, .. } => bump.is_some() || swr.is_some(),
            Net::Several(all) => all.iter().any(|n| one(n, z0)),
            Net::Balun { .. } | Net::Tuner { .. } | Net::Measured { .. } | Net::Source(_) => true,
        }
    }
    one(&e.net, e.line.as_ref().map(|l| l.at.z0))
}
