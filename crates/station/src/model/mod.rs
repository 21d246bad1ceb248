//! The typed station: what the text says, with kinds and units checked, names still by name.
//!
//! Values are in base units (see [`downlead_quantity::Dim`]). Places are item-relative, so a
//! definition survives edits elsewhere in its file.

mod accept;
mod cable;
mod chain;
mod definition;
mod ends;
mod exposure;
mod figure;
mod form;
mod kind;
mod link;
mod list;
mod node;
mod part;
mod rules;
mod site;
mod variant;

use downlead_base::Loc;

pub use accept::{Accept, Covers, acceptable};
pub use cable::{AccuracyStep, Cable, CableLoss, Construction, Wires};
pub use chain::{BandRef, Branch, Chain, Direction, Phasing, Place, Station, Step};
pub use definition::{
    Accuracy, Band, BandKind, Connector, ConnectorLoss, DeviceClass, Instrument, Recalled,
};
pub use ends::{
    Antenna, Gain, Impedance, Mode, Pattern, PowerKind, Receiver, Sensitivity, Transmitter,
};
pub use exposure::{ExposureClause, Field, Spot, SpotAt, Tier, UnreadSpot};
pub use figure::{About, Basis, Bound, Figure, Meta, NetworkFile, Rating, When};
pub use form::{FieldKind, FieldWhat, FormField, Rounding};
pub use kind::{PartKind, Role};
pub use link::{
    Around, End, Hop, Link, Model, Need as LinkNeed, Noise as LinkNoise, SiteNoise, UnreadHop,
};
pub use list::List;
pub use node::{Expect, LimitQuantity, Node, Read, ReadPower};
pub use part::{Device, Line, LineLength, Part, PartData, Port, Sits};
pub use rules::{
    Amount, Answer, Ask, Clause, Condition, Confidence, Counted, Example, Factor, Fixed, FixedWhat,
    Frequencies, Known, Law, RuleSet, StepRow, Under, Variable,
};
pub use site::{Alone, AntennaOf, AtOffset, Beside, Isolated, Isolation, Site};
pub use variant::{Change, Passed, Variant};

/// A name as written, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Name {
    /// The text.
    pub text: Box<str>,
    /// Where it stands.
    pub loc: Loc,
}

/// What one top-level item means.
#[derive(Clone, Debug, PartialEq)]
#[allow(missing_docs, reason = "named after the items")]
pub enum Meaning {
    Use(Name),
    Band(Band),
    Let(Name),
    Cable(Box<Cable>),
    Connector(Box<Connector>),
    Device(Box<DeviceClass>),
    Instrument(Box<Instrument>),
    Station(Box<Station>),
    Chain(Box<Chain>),
    Session(Box<crate::session::Session>),
    Rules(Box<RuleSet>),
    Link(Box<Link>),
    Variant(Box<Variant>),
    /// Not understood; its diagnostics say why.
    Nothing,
}

impl Meaning {
    /// The statement at a node whose line stands at `loc`, in any chain or branch.
    #[must_use]
    pub fn node(&self, loc: Loc) -> Option<&Node> {
        fn find(steps: &[Step], loc: Loc) -> Option<&Node> {
            steps.iter().find_map(|s| match s {
                Step::Node(n, l) if *l == loc => Some(&**n),
                Step::Part { branches, .. } | Step::Use { branches, .. } => {
                    branches.iter().find_map(|b| find(&b.steps, loc))
                }
                _ => None,
            })
        }
        match self {
            Meaning::Station(st) => st.chains.iter().find_map(|c| find(&c.steps, loc)),
            Meaning::Chain(c) => find(&c.steps, loc),
            _ => None,
        }
    }

    /// What is said about the reading whose line stands at `loc`.
    #[must_use]
    pub fn reading_meta(&self, loc: Loc) -> Option<&Meta> {
        match self.node(loc)? {
            Node::Read { meta, .. } => Some(meta),
            _ => None,
        }
    }

    /// The expectations of the chain whose head is at `head`, with their places, branches
    /// included.
    #[must_use]
    pub fn expectations(&self, head: Loc) -> Vec<(Loc, &Expect)> {
        fn steps<'m>(list: &'m [Step], out: &mut Vec<(Loc, &'m Expect)>) {
            for x in list {
                match x {
                    Step::Node(n, loc) => {
                        if let Node::Expect { expect, .. } = &**n {
                            out.push((*loc, expect));
                        }
                    }
                    Step::Part { branches, .. } | Step::Use { branches, .. } => {
                        branches.iter().for_each(|b| steps(&b.steps, out));
                    }
                    Step::Broken(_) => {}
                }
            }
        }
        let mut out = Vec::new();
        match self {
            Meaning::Station(st) => st
                .chains
                .iter()
                .filter(|c| c.loc == head)
                .for_each(|c| steps(&c.steps, &mut out)),
            Meaning::Chain(c) => steps(&c.steps, &mut out),
            _ => {}
        }
        out
    }
}
