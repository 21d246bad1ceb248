//! What a derivation is made from: the chain on a band, evaluated once more when it is asked for.

use std::cell::OnceCell;

use downlead_base::Loc;
use downlead_physics::net::part::Context;
use downlead_physics::net::record::Step;
use downlead_physics::net::stated::StatedNetwork;
use downlead_quantity::frequency;
use downlead_station::Env;
use downlead_station::model::{Chain, Direction, Meaning, Part, PartData, Station};
use rustc_hash::FxHashMap;

use super::Derivation;
use super::recorded::tree;
use super::rows::{Row, rows};
use crate::chain::{Computed, compute};
use crate::element::Element;
use crate::places::Places;
use crate::point::Point;
use crate::result::{BandResult, ChainResult, NodeResult};
use crate::walk::walk;

/// A chain on a band.
pub(super) struct Cx<'a> {
    pub(super) places: &'a Places<'a>,
    pub(super) env: &'a Env,
    pub(super) parts: &'a FxHashMap<Loc, &'a Part>,
    pub(super) station: Option<&'a Station>,
    pub(super) chain: &'a ChainResult,
    pub(super) band: &'a BandResult,
    model: &'a Chain,
    kept: OnceCell<Kept<'a>>,
}

/// The chain evaluated once more, with all its numbers were made of.
pub(super) struct Kept<'a> {
    pub(super) c: Computed<'a>,
    /// At the stated figures.
    pub(super) stated: StatedNetwork,
    /// Power of the source, dB over 1 W.
    pub(super) source_db: f64,
}

impl<'a> Cx<'a> {
    pub(super) fn new(
        places: &'a Places<'a>,
        env: &'a Env,
        meaning: &'a Meaning,
        parts: &'a FxHashMap<Loc, &'a Part>,
        (chain, model): (&'a ChainResult, &'a Chain),
        band: &'a BandResult,
    ) -> Self {
        Cx {
            places,
            env,
            parts,
            station: match meaning {
                Meaning::Station(s) => Some(s),
                _ => None,
            },
            chain,
            band,
            model,
            kept: OnceCell::new(),
        }
    }

    pub(super) fn kept(&self) -> &Kept<'a> {
        self.kept.get_or_init(|| {
            // what is wrong with the chain was reported when it was evaluated
            let mut reported = Vec::new();
            let stops = walk(&self.model.steps, self.station, &mut reported);
            let cx = crate::chain::Cx {
                station: self.station,
                chain: self.model,
                env: self.env,
                direction: self.chain.direction,
                stage: crate::stage::Stage::Whole,
            };
            let c = compute(&cx, &stops, &self.point(), &mut reported);
            Kept {
                stated: c.net.stated(),
                source_db: c.net.level.nominal(),
                c,
            }
        })
    }

    /// What each row of the result stands on; empty where they do not belong together.
    pub(super) fn rows(&self) -> Vec<Row<'_>> {
        let k = self.kept();
        let rows = rows(&k.c, &self.band.nodes, self.receives());
        if rows.len() == self.band.nodes.len() {
            rows
        } else {
            Vec::new()
        }
    }

    pub(super) fn receives(&self) -> bool {
        self.chain.direction == Direction::Receive
    }

    pub(super) fn title(&self, what: &str) -> String {
        format!(
            "{what} on {}, {}",
            self.places.text(self.chain.name),
            frequency(self.band.hz)
        )
    }

    pub(super) fn point(&self) -> Point {
        Point {
            band: self.band.band.clone(),
            part: self.band.point,
            hz: self.band.hz,
            named: self.env.band(&self.band.band).is_some(),
        }
    }

    pub(super) fn context(&self) -> Context {
        self.kept().c.net.context()
    }

    pub(super) fn name(&self, n: &NodeResult) -> String {
        match n.tag() {
            Some(t) => self.places.text(t).to_owned(),
            None if n.kind.is_join() => format!("join {}", self.places.text(n.def)),
            None => n.kind.word().to_owned(),
        }
    }

    /// The name of an end, with its branch where it has no tag.
    pub(super) fn end_name(&self, n: &NodeResult) -> String {
        let branch = usize::from(n.branch)
            .checked_sub(1)
            .and_then(|b| self.band.branches.get(b));
        match (n.tag(), branch) {
            (None, Some(b)) => format!("{} of {b}", self.name(n)),
            _ => self.name(n),
        }
    }

    /// The name of row `i`.
    pub(super) fn name_of(&self, i: usize) -> String {
        self.band
            .nodes
            .get(i)
            .map_or_else(String::new, |n| self.name(n))
    }

    /// The name of what comes after row `i`, on its way.
    pub(super) fn next_name(&self, rows: &[Row<'_>], i: usize) -> Option<String> {
        let k = rows.iter().position(|r| r.prev == Some(i))?;
        Some(self.name_of(k))
    }

    /// Whether a line lies in the definition of the cable that a row's part is made of.
    pub(super) fn cable_line(&self, n: &NodeResult, path: &str, line: u32) -> bool {
        let Some(PartData::Line(l)) = self.parts.get(&n.def).map(|p| &p.data) else {
            return false;
        };
        let Some(c) = l.cable.as_ref().and_then(|n| self.env.cable(&n.text)) else {
            return false;
        };
        let (file, _, first) = self.places.at(c.name.loc);
        if file != path {
            return false;
        }
        // the loss is the last of a cable's lines that matter here
        let last = self.places.line(c.loss_loc).max(first);
        (first..=last).contains(&line)
    }

    /// The derivation of the last of some recorded steps, with the sources of what an element
    /// reads.
    pub(super) fn taped(
        &self,
        steps: &[Step],
        element: Option<&Element<'_>>,
    ) -> Option<Derivation> {
        tree(steps, &|key, name| self.origin(key, name, element))
    }
}
