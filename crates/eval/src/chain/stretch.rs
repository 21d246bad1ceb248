//! The parts between a source and an end, as elements and as a network.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_station::Env;
use downlead_station::model::{
    Antenna, Branch, Direction, Node, Part, PartData, PartKind, Role, Step,
};

use downlead_physics::net::part::{End, Gain, Load, Part as Net, Stretch as Wired};

use super::Cx;
use super::antenna::{antenna_wave, gain};
use crate::element::{Build, Element};
use crate::walk::{Stop, direction, walk};

/// A stretch of chain between a source and an end, or the branches of a divider.
pub(crate) struct Stretch<'m> {
    pub(crate) elements: Vec<Element<'m>>,
    /// Statements after element `n` (count of elements before them).
    pub(crate) statements: Vec<(usize, &'m Node, Loc)>,
    pub(crate) end: Ending<'m>,
    /// What comes back from the end, and its gain.
    pub(crate) load: (Load, Option<Gain>),
    /// Whether what comes back from the end is known.
    pub(crate) load_known: bool,
    pub(crate) complete: bool,
    /// The elements before which a statement stands that could not be understood.
    pub(crate) gaps: Vec<usize>,
    pub(crate) branches: Vec<(Box<str>, Stretch<'m>)>,
}

/// What a stretch ends in.
pub(crate) enum Ending<'m> {
    Nothing,
    Antenna(&'m Part, &'m Antenna, Loc),
    Receiver(&'m Part, Loc),
    Divider,
}

/// Builds the stretch that some stops describe.
pub(crate) fn stretch<'m>(
    cx: &Cx<'m>,
    b: &mut Build<'m, '_>,
    stops: &[Stop<'m>],
    out: &mut Vec<Diagnostic>,
    after_part: bool,
) -> Stretch<'m> {
    let mut s = Stretch {
        elements: Vec::new(),
        statements: Vec::new(),
        end: Ending::Nothing,
        load: (Load::Matched, None),
        load_known: true,
        complete: true,
        gaps: Vec::new(),
        branches: Vec::new(),
    };
    let joins = cx.station.and_then(|st| st.joins.as_ref());
    // whether the next part gets a default join in front
    let mut open = after_part;
    for stop in stops {
        match *stop {
            Stop::Gap => {
                s.complete = false;
                s.gaps.push(s.elements.len());
                open = false;
            }
            Stop::Node(n, loc) => s.statements.push((s.elements.len(), n, loc)),
            // only statements follow a divider's branches; a part there has a finding
            Stop::Part { .. } if matches!(s.end, Ending::Divider) => {}
            Stop::Part {
                part,
                port,
                loc,
                branches,
            } => {
                let connector = part.kind.role() == Role::Join;
                if open
                    && !connector
                    && let Some(name) = joins
                {
                    let e = b.join(name, loc);
                    s.complete &= e.complete;
                    s.elements.push(e);
                }
                open = !connector;
                match part.kind {
                    _ if part.kind.sends() && cx.direction == Direction::Transmit => {}
                    PartKind::Antenna | PartKind::Load
                        if cx.direction == Direction::Transmit || part.kind == PartKind::Load =>
                    {
                        if let PartData::Antenna(a) = &part.data {
                            match antenna_wave(b, part, a, loc) {
                                Some(w) => s.load.0 = w,
                                None => {
                                    // what comes back is not known, and so no power is
                                    s.complete = false;
                                    s.load_known = false;
                                }
                            }
                            if part.kind == PartKind::Antenna {
                                s.load.1 = gain(b, a);
                            }
                            s.end = Ending::Antenna(part, a, loc);
                        } else {
                            s.complete = false;
                            s.load_known = false;
                        }
                    }
                    PartKind::Antenna => {}
                    _ if part.kind.hears() => s.end = Ending::Receiver(part, loc),
                    _ => {
                        b.backwards = port.is_none() && against(cx, part);
                        b.reversed = false;
                        let e = b.part(part, port, loc);
                        let turned = part.kind != PartKind::Coupler && b.backwards != b.reversed;
                        if turned {
                            out.push(passed_backwards(part, &e, loc));
                        }
                        b.backwards = false;
                        s.complete &= e.complete;
                        s.elements.push(e);
                    }
                }
                if !branches.is_empty() {
                    s.end = Ending::Divider;
                    let outer = b.alike.replace(Vec::new());
                    for br in branches {
                        s.branches.push(branch(cx, b, part, br, out));
                    }
                    b.alike = outer;
                    if let Some(d) = branch_count(part, b.env, loc, s.branches.len()) {
                        out.push(d);
                        s.complete = false;
                        if let Some(e) = s.elements.last_mut() {
                            e.complete = false;
                        }
                    }
                }
            }
        }
    }
    s
}

fn branch<'m>(
    cx: &Cx<'m>,
    b: &mut Build<'m, '_>,
    divider: &'m Part,
    br: &'m Branch,
    out: &mut Vec<Diagnostic>,
) -> (Box<str>, Stretch<'m>) {
    let stops = walk(&br.steps, cx.station, out);
    let s = stretch(cx, b, &stops, out, true);
    if matches!(s.end, Ending::Nothing) && s.complete {
        out.push(
            Diagnostic::new(
                &codes::CHAIN_WITHOUT_END,
                br.loc,
                format!("Branch `{}` ends in nothing.", br.name),
            )
            .at("an antenna or a load belongs at its end"),
        );
    }
    let tag = divider.tag.as_ref().map_or("divider", |t| &t.text);
    (format!("{tag}/{}", br.name).into(), s)
}

/// A divider of other ways than the chain has branches: how the power divides is then not known.
fn branch_count(part: &Part, env: &Env, chain: Loc, branches: usize) -> Option<Diagnostic> {
    let PartData::Device(d) = &part.data else {
        return None;
    };
    let class = d.class.as_ref().and_then(|n| env.device(&n.text));
    let base = class.map(|c| &c.device);
    let ways = d.ways.or(base.and_then(|b| b.ways)).unwrap_or(2) as usize;
    let tee = d.tee || base.is_some_and(|b| b.tee);
    // the ports of a junction are its branches, unless the text counts them
    let counted = d.ways.is_some() || base.is_some_and(|b| b.ways.is_some());
    if ways == branches || tee && !counted {
        return None;
    }
    let name = part
        .tag
        .as_ref()
        .map_or_else(|| "The divider".to_owned(), |t| t.text.to_string());
    Some(
        Diagnostic::new(
            &codes::BRANCH_COUNT,
            chain,
            format!("{name} divides among {ways} branches, and the chain has {branches} there: how the power divides is not known."),
        )
        .at(format!("{branches} branches"))
        .also(part.loc, format!("{ways} ways"))
        .help(format!(
            "Write `{branches} way` (with a share for each branch where they are unequal), or end what is not used in a branch with a `load`."
        )),
    )
}

/// Whether an isolator or circulator lies the other way round than the chain walks: a part that a
/// transmit chain goes through passes power towards the antenna.
fn against(cx: &Cx<'_>, part: &Part) -> bool {
    if !matches!(part.kind, PartKind::Isolator | PartKind::Circulator)
        || cx.direction == Direction::Transmit
    {
        return false;
    }
    let (Some(station), Some(tag)) = (cx.station, &part.tag) else {
        return false;
    };
    station.chains.iter().any(|c| {
        let steps = walk(&c.steps, cx.station, &mut Vec::new());
        direction(c, &steps) == Direction::Transmit && goes_through(&c.steps, &tag.text)
    })
}

fn goes_through(steps: &[Step], tag: &str) -> bool {
    steps.iter().any(|s| match s {
        Step::Use {
            tag: t, branches, ..
        } => *t.text == *tag || branches.iter().any(|b| goes_through(&b.steps, tag)),
        Step::Part { branches, .. } => branches.iter().any(|b| goes_through(&b.steps, tag)),
        _ => false,
    })
}

fn passed_backwards(part: &Part, e: &Element<'_>, chain: Loc) -> Diagnostic {
    let what = part.kind.with_article();
    let name = e.subject();
    let loses = if e.complete {
        format!(
            "it loses its isolation of {}.",
            downlead_quantity::db(e.loss_db)
        )
    } else {
        "what passes it that way is not stated, so the loss is not known.".to_owned()
    };
    let mut d = Diagnostic::new(
        &codes::PASSED_BACKWARDS,
        chain,
        format!("{name} is {what}, and this chain goes through it backwards: {loses}"),
    )
    .at("passed backwards")
    .also(e.who, "where it is defined")
    .help("Take `reversed` off if it lies the right way; else take the receiver's way off before it, for example at a duplexer after the isolator.");
    if !e.complete {
        d.severity = downlead_base::Severity::Error;
    }
    d
}

/// Nodes of a stretch: its beginning, and one after each element.
pub(super) fn nodes_of(s: &Stretch<'_>) -> usize {
    1 + s.elements.len() + s.branches.iter().map(|b| nodes_of(&b.1)).sum::<usize>()
}

impl<'m> Stretch<'m> {
    /// Parts and joins, branches included; of pairs that reflect each counts.
    pub(super) fn count(&self) -> usize {
        let one = |e: &Element<'_>| match e.connector {
            Some((c, n)) if c.bump.is_some() || c.swr.is_some() => n as usize,
            _ => 1,
        };
        self.elements.iter().map(one).sum::<usize>()
            + self.branches.iter().map(|b| b.1.count()).sum::<usize>()
    }

    /// Whether all its parts and those of its branches could be computed.
    pub(super) fn whole(&self) -> bool {
        self.complete && self.branches.iter().all(|b| b.1.whole())
    }

    /// The stretch without its parts: nothing is known of it.
    pub(super) fn cut(self) -> Self {
        Stretch {
            elements: Vec::new(),
            statements: Vec::new(),
            end: Ending::Nothing,
            load: (Load::Matched, None),
            load_known: false,
            complete: false,
            gaps: vec![0],
            branches: Vec::new(),
        }
    }

    /// The stretch as a network; takes the parts out of the elements.
    pub(crate) fn wired(&mut self) -> Wired {
        let mut parts: Vec<Net> = Vec::with_capacity(self.elements.len());
        let mut junction = None;
        let divided = matches!(self.end, Ending::Divider);
        for e in &mut self.elements {
            let mut net = std::mem::replace(&mut e.net, Net::Several(Vec::new()));
            if divided && e.junction.is_some() {
                junction = e.junction.take();
                net = Net::Several(Vec::new());
            }
            parts.push(if e.complete {
                net
            } else {
                Net::Several(Vec::new())
            });
        }
        let arms: Vec<Wired> = self.branches.iter_mut().map(|b| b.1.wired()).collect();
        let end = match junction {
            Some((junction, swr)) if !arms.is_empty() => End::Branches {
                junction,
                swr,
                arms,
            },
            _ => End::Load(
                std::mem::replace(&mut self.load.0, Load::Matched),
                self.load.1.take(),
            ),
        };
        Wired { parts, end }
    }
}
