//! One chain at one frequency: elements, network, power, uncertainty.

mod antenna;
mod feed;
mod known;
mod receive;
mod stretch;
mod sum;
mod taps;
mod transmit;

use downlead_base::{Diagnostic, Loc, codes};
use downlead_physics::net::Network;
use downlead_physics::net::evaluate::Evaluation;
use downlead_physics::net::noise::Receiving;
use downlead_quantity::w_to_dbm;
use downlead_station::Env;
use downlead_station::model::{Branch, Chain, Direction, Name, Node, Station, Step};

use crate::assume::{Assumed, Assumptions};
use crate::element::Build;
use crate::point::{Point, band_matches};
use crate::result::{BandResult, NodeResult};
use crate::stage::Stage;
use crate::walk::Stop;

pub(crate) use antenna::{antenna_wave, gain_at};
pub(crate) use feed::{Feed, physics_mode};
pub(crate) use stretch::{Ending, Stretch, stretch};
pub(crate) use sum::budget_item;
pub(crate) use transmit::{NodeState, Reached, colder};

/// What evaluating a chain needs.
#[derive(Clone, Copy)]
pub(crate) struct Cx<'m> {
    pub(crate) station: Option<&'m Station>,
    pub(crate) chain: &'m Chain,
    pub(crate) env: &'m Env,
    pub(crate) direction: Direction,
    /// How much is computed.
    pub(crate) stage: Stage,
}

/// Parts and joins of a chain and its branches at most: every one is differentiated by every
/// other, so the cost goes with the square.
const MOST_PARTS: usize = 400;

/// A chain at a point with all that its numbers were made of.
pub(crate) struct Computed<'m> {
    pub(crate) result: BandResult,
    /// Its parts as a network.
    pub(crate) net: Network,
    /// Means and uncertainties of that.
    pub(crate) evaluation: Evaluation,
    /// The elements that the network's parts belong to, in the same order.
    pub(crate) stretch: Stretch<'m>,
    /// Whose each cause, phase and input is.
    pub(crate) wiring: crate::wiring::Wiring<'m>,
    /// What was known at each statement.
    pub(crate) states: Vec<(Loc, &'m Node, NodeState<'m>)>,
    /// The network with the fields of all antennas in phase, where their feeds' lengths say
    /// otherwise and a limit asks.
    pub(crate) in_phase: Option<Evaluation>,
    /// The stages of a receive chain whose noise figure is known.
    pub(crate) noise: Option<Receiving>,
}

/// Evaluates the chain at a point: to the stage that is asked for, or further where that would not
/// give its verdicts.
pub(crate) fn evaluate<'m>(
    cx: &Cx<'m>,
    stops: &[Stop<'m>],
    point: &Point,
    out: &mut Vec<Diagnostic>,
) -> BandResult {
    if cx.stage == Stage::First {
        let mut found = Vec::new();
        let first = compute(cx, stops, point, &mut found);
        if first.verdicts_hold() {
            out.append(&mut found);
            return first.result;
        }
    }
    let cx = &Cx {
        stage: Stage::Whole,
        ..*cx
    };
    compute(cx, stops, point, out).result
}

/// Evaluates the chain at a point and keeps what that was made of.
pub(crate) fn compute<'m>(
    cx: &Cx<'m>,
    stops: &[Stop<'m>],
    point: &Point,
    out: &mut Vec<Diagnostic>,
) -> Computed<'m> {
    let mut b = Build {
        station: cx.station,
        env: cx.env,
        point,
        wiring: crate::wiring::Wiring::default(),
        backwards: false,
        reversed: false,
        receiving: cx.direction == Direction::Receive,
        foreign: false,
        alike: None,
        assumed: Assumptions::default(),
        diags: Vec::new(),
    };
    // before anything is built: what has too many parts costs nothing
    let count = parts_in(stops);
    let few: &[Stop<'m>] = if count > MOST_PARTS { &[] } else { stops };
    let mut s = stretch(cx, &mut b, few, out, false);
    let count = count.max(s.count());
    if count > MOST_PARTS {
        out.push(
            Diagnostic::new(
                &codes::CHAIN_TOO_LONG,
                cx.chain.name.loc,
                format!(
                    "This chain has {count} parts and joins, branches included; at most {MOST_PARTS} are evaluated together."
                ),
            )
            .at("too long")
            .help("Write several parts of one kind as one: one run of the whole length, `connector 40 of n-pair`, one `pad` of the sum."),
        );
        s = s.cut();
    }
    let no_connectors = cx.station.and_then(|st| st.joins.as_ref()).is_none()
        && !s.elements.iter().any(|e| e.kind.is_connector());
    if no_connectors && !s.elements.is_empty() {
        b.assumed.add(Assumed::JoinsLossless, cx.chain.name.loc);
    }
    let mut r = Run {
        cx,
        point,
        nodes: Vec::new(),
        branches: Vec::new(),
        states: Vec::new(),
        assumed: std::mem::take(&mut b.assumed),
        diags: std::mem::take(&mut b.diags),
        wiring: std::mem::take(&mut b.wiring),
        evaluated: None,
        in_phase: None,
        noise: None,
        taps: Vec::new(),
        largest: None,
    };
    let (result, net, evaluation) = match cx.direction {
        Direction::Transmit => r.transmit(&mut s, stops, out),
        Direction::Receive => r.receive(&mut s, stops),
    };
    out.append(&mut r.diags);
    Computed {
        result,
        net,
        evaluation,
        stretch: s,
        wiring: r.wiring,
        states: r.states,
        in_phase: r.in_phase,
        noise: r.noise,
    }
}

pub(crate) struct Run<'m, 'c> {
    pub(crate) cx: &'c Cx<'m>,
    pub(crate) point: &'c Point,
    pub(crate) nodes: Vec<NodeResult>,
    pub(crate) branches: Vec<Box<str>>,
    pub(crate) states: Vec<(Loc, &'m Node, NodeState<'m>)>,
    pub(crate) assumed: Assumptions,
    pub(crate) diags: Vec<Diagnostic>,
    pub(crate) wiring: crate::wiring::Wiring<'m>,
    /// What comes out elsewhere than at the antenna.
    pub(crate) taps: Vec<crate::result::TapResult>,
    /// The network evaluated, for probabilities.
    pub(crate) evaluated: Option<Evaluation>,
    /// The same with the fields of all antennas in phase, where their feeds' lengths say otherwise.
    pub(crate) in_phase: Option<Evaluation>,
    /// The stages of a receive chain.
    pub(crate) noise: Option<Receiving>,
    /// Largest reflection the source can see.
    largest: Option<f64>,
}

impl Run<'_, '_> {
    /// The network evaluated to the stage that is asked for.
    fn solved(&self, net: &Network, judged: &[usize]) -> Evaluation {
        match self.cx.stage {
            Stage::First => net.linear(),
            Stage::Whole => {
                let mut e = net.linear();
                // only a transmitter heats what it passes
                let heats = self.cx.direction == Direction::Transmit;
                net.refine(&mut e, judged, heats);
                e
            }
        }
    }
}

/// Parts of a walk, branches included.
fn parts_in(stops: &[Stop<'_>]) -> usize {
    fn of_steps(steps: &[Step]) -> usize {
        let inside = |b: &[Branch]| b.iter().map(|b| of_steps(&b.steps)).sum::<usize>();
        steps
            .iter()
            .map(|s| match s {
                Step::Use { branches, .. } | Step::Part { branches, .. } => 1 + inside(branches),
                _ => 0,
            })
            .sum()
    }
    stops
        .iter()
        .map(|s| match s {
            Stop::Part { branches, .. } => {
                1 + branches.iter().map(|b| of_steps(&b.steps)).sum::<usize>()
            }
            _ => 0,
        })
        .sum()
}

/// Names of bands a statement holds on: none means all.
pub(crate) fn holds(on: &[Name], point: &Point, env: &Env) -> bool {
    on.is_empty() || on.iter().any(|n| band_matches(&n.text, point, env))
}

/// A level in words.
pub(crate) fn dbm_words(w: f64) -> String {
    format!("{:.1} dBm", w_to_dbm(w))
}
