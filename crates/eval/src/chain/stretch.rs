//! The parts between a source and an end, as elements and pieces.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_station::model::{Antenna, Branch, Direction, Node, Part, PartData, PartKind};

use super::Cx;
use super::antenna::antenna_wave;
use crate::cascade::{End, Piece};
use crate::element::{Build, Element, turned};
use crate::walk::{Stop, walk};

/// A stretch of chain between a source and an end, or the branches of a divider.
pub(crate) struct Stretch<'m> {
    pub(crate) elements: Vec<Element<'m>>,
    pub(crate) pieces: Vec<Piece>,
    /// Statements behind element `n` (count of elements before them).
    pub(crate) statements: Vec<(usize, &'m Node, Loc)>,
    pub(crate) end: Ending<'m>,
    pub(crate) end_wave: End,
    pub(crate) complete: bool,
    /// The first element behind a statement that could not be understood.
    pub(crate) gap: Option<usize>,
    pub(crate) branches: Vec<(Box<str>, Stretch<'m>)>,
}

/// What a stretch ends in.
pub(crate) enum Ending<'m> {
    Nothing,
    Antenna(&'m Part, &'m Antenna, Loc),
    Receiver(&'m Part, Loc),
    Divider,
}

impl Stretch<'_> {
    /// Whether something before element `i`, or that element itself, has no loss that is known.
    pub(super) fn unknown_to(&self, i: usize) -> bool {
        self.gap.is_some_and(|g| g <= i) || self.elements.iter().take(i + 1).any(|e| !e.complete)
    }
}

/// Builds the stretch that some stops describe.
pub(super) fn stretch<'m>(
    cx: &Cx<'m>,
    b: &mut Build<'m, '_>,
    stops: &[Stop<'m>],
    out: &mut Vec<Diagnostic>,
    after_part: bool,
) -> Stretch<'m> {
    let mut s = Stretch {
        elements: Vec::new(),
        pieces: Vec::new(),
        statements: Vec::new(),
        end: Ending::Nothing,
        end_wave: End::Magnitude(0.0),
        complete: true,
        gap: None,
        branches: Vec::new(),
    };
    let joins = cx.station.and_then(|st| st.joins.as_ref());
    let outer = std::mem::take(&mut b.pieces);
    // whether the next part gets a default join in front
    let mut open = after_part;
    for stop in stops {
        match *stop {
            Stop::Gap => {
                s.complete = false;
                s.gap.get_or_insert(s.elements.len());
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
                let connector = matches!(part.kind, PartKind::Connector | PartKind::Adapter);
                if open
                    && !connector
                    && let Some(name) = joins
                {
                    let e = b.join(name, loc, s.elements.len());
                    s.complete &= e.complete;
                    s.elements.push(e);
                }
                open = !connector;
                match part.kind {
                    PartKind::Transmitter => {}
                    PartKind::Antenna | PartKind::Load
                        if cx.direction == Direction::Transmit || part.kind == PartKind::Load =>
                    {
                        if let PartData::Antenna(a) = &part.data {
                            match antenna_wave(b, part, a, loc) {
                                Some(w) => s.end_wave = w,
                                None => {
                                    // what comes back is not known, and so no power is
                                    s.complete = false;
                                    s.gap.get_or_insert(s.elements.len());
                                }
                            }
                            s.end = Ending::Antenna(part, a, loc);
                        } else {
                            s.complete = false;
                        }
                    }
                    PartKind::Antenna => {}
                    PartKind::Receiver => s.end = Ending::Receiver(part, loc),
                    _ => {
                        let from = b.pieces.len();
                        let mut e = b.part(part, port, loc, s.elements.len());
                        turned(cx.direction, part.kind, &mut e, b, from);
                        s.complete &= e.complete;
                        s.elements.push(e);
                    }
                }
                if !branches.is_empty() {
                    s.end = Ending::Divider;
                    let here = std::mem::take(&mut b.pieces);
                    for br in branches {
                        s.branches.push(branch(cx, b, part, br, out));
                    }
                    b.pieces = here;
                }
            }
        }
    }
    s.pieces = std::mem::replace(&mut b.pieces, outer);
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
