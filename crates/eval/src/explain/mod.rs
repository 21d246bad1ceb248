//! Derivations: every number of a line back to the lines and sources it came from, in steps that
//! a pocket calculator can follow.
//!
//! A derivation is the computation written down. The chain is evaluated once more for the band in
//! question, parts are built with the recording scalar, and the steps of the tape are shown
//! ([`recorded`]). Only who asks for a derivation pays for it.

mod antenna;
mod branches;
mod cx;
mod expected;
mod hop;
mod judged;
mod logged;
mod node;
pub(crate) mod numbers;
mod origin;
mod radiated;
mod receive;
mod recorded;
mod reflect;
mod rows;
mod rules;
mod spot;
mod through;
mod totals;

use downlead_base::{ItemId, Loc, Span};
use downlead_station::keyword_of;
use downlead_station::model::{Chain, Meaning, Node, Step};
use downlead_syntax::Stmt;
use rustc_hash::FxHashMap;

use crate::origin::parts_of;
use crate::places::Places;
use crate::snapshot::{Scope, Snapshot};
use cx::Cx;

/// A number with the way it was come by.
#[derive(Clone, Debug, PartialEq)]
pub struct Derivation {
    /// What it is: `loss of M1 on talk-out-2m, 146.9137 MHz`.
    pub title: String,
    /// Its value in words.
    pub value: String,
    /// Formula in symbols.
    pub formula: String,
    /// Formula with the numbers put in. What is not empty can be computed and gives the value.
    pub substituted: String,
    /// Source.
    pub source: Option<String>,
    /// Where it stands.
    pub place: Option<Loc>,
    /// Operands.
    pub steps: Vec<Derivation>,
}

impl Derivation {
    pub(crate) fn leaf(
        title: impl Into<String>,
        value: impl Into<String>,
        source: Option<String>,
        place: Option<Loc>,
    ) -> Self {
        Derivation {
            title: title.into(),
            value: value.into(),
            formula: String::new(),
            substituted: String::new(),
            source,
            place,
            steps: Vec::new(),
        }
    }

    /// A step that says what it is and what it comes to.
    fn of(title: impl Into<String>, value: impl Into<String>) -> Self {
        Derivation::leaf(title, value, None, None)
    }

    pub(crate) fn by(mut self, formula: impl Into<String>, substituted: impl Into<String>) -> Self {
        self.formula = formula.into();
        self.substituted = substituted.into();
        self
    }

    pub(crate) fn with(mut self, step: Derivation) -> Self {
        self.steps.push(step);
        self
    }

    fn with_all(mut self, steps: impl IntoIterator<Item = Derivation>) -> Self {
        self.steps.extend(steps);
        self
    }

    fn from(mut self, source: impl Into<String>) -> Self {
        self.source = Some(source.into());
        self
    }

    fn at(mut self, place: Loc) -> Self {
        self.place = Some(place);
        self
    }
}

/// End of each statement with a block, by the place of its head.
fn blocks_of(s: Stmt<'_>, out: &mut FxHashMap<Loc, Loc>) {
    if let Some(block) = s.block() {
        let end = s.span().end;
        out.insert(
            Loc::new(s.item_id(), s.head_span()),
            Loc::new(s.item_id(), Span::new(end, end)),
        );
        block.iter().for_each(|inner| blocks_of(inner, out));
    }
}

/// The chains of an item, in the order of its results.
pub(crate) fn chains_of(meaning: &Meaning) -> &[Chain] {
    match meaning {
        Meaning::Station(s) => &s.chains,
        Meaning::Chain(c) => std::slice::from_ref(c),
        _ => &[],
    }
}

impl Snapshot {
    /// The item that alone has numbers on a line: the station or chain that stands there. None
    /// where a definition stands that others take.
    fn explained_by_one(&self, path: &str, line: u32) -> Option<ItemId> {
        let tree = &self.files.iter().find(|f| f.path == path)?.tree;
        let skipped = usize::try_from(line.checked_sub(1)?).ok()?;
        let text = tree.text();
        let offset = match skipped {
            0 => 0,
            n => text.match_indices('\n').nth(n - 1)?.0 + 1,
        };
        let placed = &tree.items()[tree.item_at(u32::try_from(offset).ok()?)?];
        matches!(keyword_of(&placed.item), Some("station" | "chain" | "link"))
            .then_some(placed.item.id)
    }

    /// Derivations of the numbers on a line (from 1) of a file: of a part, all chains and bands
    /// it takes part in; of a chain's line, that chain; of a chain's head, its totals.
    #[must_use]
    pub fn explain_line(&self, path: &str, line: u32) -> Vec<Derivation> {
        let places = Places::new(self);
        let mut out = Vec::new();
        let only = self.explained_by_one(path, line);
        for scope in &self.scopes {
            for item in &scope.items {
                session(&places, item, path, line, &mut out);
                radiated::of_line(self, &places, (scope, item), (path, line), &mut out);
                if item.2.chains.is_empty() || only.is_some_and(|id| id != item.0.id) {
                    continue;
                }
                chains(&places, scope, item, path, line, &mut out);
            }
        }
        out
    }
}

/// Derivations of what a bench session has on a line.
fn session(
    places: &Places<'_>,
    (_, low, result): &crate::snapshot::Evaluated,
    path: &str,
    line: u32,
    out: &mut Vec<Derivation>,
) {
    let Some(s) = &result.session else { return };
    let on_line = |loc| {
        let (file, _, at) = places.at(loc);
        file == path && at == line
    };
    out.extend(s.cells_at(on_line).map(|c| s.derivation(c)));
    if let Meaning::Session(text) = &low.meaning {
        let here = text.lengths.iter().filter(|r| on_line(r.loc));
        out.extend(here.filter_map(|r| s.length_derivation(r)));
    }
}

/// Whether an expectation stands on some lines of a chain.
fn expects(steps: &[Step], on_line: &dyn Fn(Loc) -> bool) -> bool {
    steps.iter().any(|s| match s {
        Step::Node(n, loc) => matches!(**n, Node::Expect { .. }) && on_line(*loc),
        Step::Part { branches, .. } | Step::Use { branches, .. } => {
            branches.iter().any(|b| expects(&b.steps, on_line))
        }
        _ => false,
    })
}

/// Derivations of what an item's chains have on a line.
fn chains(
    places: &Places<'_>,
    scope: &Scope,
    (item, low, result): &crate::snapshot::Evaluated,
    path: &str,
    line: u32,
    out: &mut Vec<Derivation>,
) {
    let parts = parts_of(&low.meaning);
    let mut blocks = FxHashMap::default();
    item.statements().for_each(|s| blocks_of(s, &mut blocks));
    for (c, model) in result.chains.iter().zip(chains_of(&low.meaning)) {
        let (file, _, head) = places.at(c.loc);
        let here = file == path;
        for b in &c.bands {
            let cx = Cx::new(places, &scope.env, &low.meaning, &parts, (c, model), b);
            if here && head == line {
                out.push(cx.totals());
            }
            for (i, n) in b.nodes.iter().enumerate() {
                let (def_file, _, def_line) = places.at(n.def);
                let last = blocks.get(&n.def).map_or(def_line, |end| places.line(*end));
                // a divider's block holds its branches, whose lines are about themselves
                let own = n.def != n.chain || line == def_line;
                let on_part = def_file == path
                    && own
                    && (def_line..=last).contains(&line)
                    && !n.kind.is_join();
                let on_chain = here && places.line(n.chain) == line && !n.kind.is_join();
                if cx.cable_line(n, path, line) {
                    out.push(cx.loss_alone(i));
                } else if on_part || on_chain {
                    out.push(cx.node(i));
                    out.extend(cx.taps_at(n));
                }
            }
            for l in b.limits.iter().filter(|_| here) {
                if places.line(l.loc) == line {
                    out.push(cx.limit(l));
                }
            }
            for r in &b.rules {
                let on = |loc: Loc| {
                    let (file, _, at) = places.at(loc);
                    file == path && at == line
                };
                if on(r.under) || r.clause.is_some_and(on) {
                    out.push(cx.rule(r));
                }
            }
            if here && expects(&model.steps, &|loc| places.line(loc) == line) {
                out.extend(cx.expectations(|loc| places.line(loc) == line));
            }
            for r in b.readings.iter().filter(|_| here) {
                if places.line(r.loc) == line {
                    out.push(cx.reading(r));
                }
            }
            for l in b.logs.iter().filter(|l| here && places.line(l.loc) == line) {
                out.extend(cx.logged(l));
            }
        }
    }
}
