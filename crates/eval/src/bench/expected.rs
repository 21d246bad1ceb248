//! What a piece should lose: its cable at the temperature of the bench, with its joins.

use downlead_base::Diagnostic;
use downlead_physics::mismatch::reflection;
use downlead_physics::net::evaluate::{Quantity, matched_loss};
use downlead_physics::net::input::{Input, Inputs};
use downlead_physics::net::part::{End, Load, Part as Net};
use downlead_physics::net::{self, Fields, Network, R0};
use downlead_station::Env;
use downlead_station::model::{Bound, Name};
use downlead_station::session::Piece;

use super::result::Expected;
use crate::assume::Assumptions;
use crate::element::{Build, Element};
use crate::point::Point;

/// The piece's expected loss on a band; none if its cable is not known.
pub(super) fn expected<'m>(
    piece: &'m Piece,
    point: &Point,
    env: &'m Env,
    assumed: &mut Assumptions,
    out: &mut Vec<Diagnostic>,
) -> Option<Expected> {
    let mut b = build(env, point, assumed);
    let mut line = b.part(&piece.part, None, piece.loc);
    let mut joins = Vec::new();
    let (mut joins_db, mut complete) = (0.0, line.complete);
    for (n, name) in &piece.connectors {
        let e = b.joins(*n, name, piece.loc);
        joins_db += e.loss_db;
        complete &= e.complete;
        joins.push(e.net);
    }
    let mut b = finish(b, assumed, out);
    if !complete {
        return None;
    }
    let (z0, maximum) = facts(&line);
    let own = downlead_physics::cx::abs(reflection(
        num_complex::Complex64::new(z0, 0.0),
        num_complex::Complex64::new(R0, 0.0),
    ));
    let u_joins_db = matched_loss(&joins, point.hz, &b).1;
    let mut parts = vec![std::mem::replace(&mut line.net, Net::Several(Vec::new()))];
    parts.extend(joins);
    let (matched_db, u_matched_db) = matched_loss(&parts, point.hz, &b);
    let all = if own > 0.0 {
        insertion(&mut b, point.hz, parts)
    } else {
        Insertion {
            db: matched_db,
            u: u_matched_db,
        }
    };
    // a cable of 50 ohm is compared by its own loss, as sheets state it: the slightly complex
    // impedance that the meter's ends see at low frequencies is no loss of the cable
    Some(Expected {
        db: all.db,
        u_db: all.u,
        matched_db,
        u_matched_db,
        joins_db,
        u_joins_db,
        maximum,
        reflection: own,
    })
}

/// Insertion loss between matched ends with its standard uncertainty, dB.
struct Insertion {
    db: f64,
    u: f64,
}

/// What parts in a row lose between matched ends of 50 ohm.
fn insertion(inputs: &mut Inputs, hz: f64, parts: Vec<Net>) -> Insertion {
    let net = Network {
        hz,
        level: Input::exact("power, dBW", 0.0),
        inputs: std::mem::take(inputs),
        feed: net::part::Stretch {
            parts,
            end: End::Load(Load::Matched, None),
        },
        phased: false,
        fields: Fields::InPhase,
    };
    let mut e = net.linear();
    net.refine(&mut e, &[], false);
    e.output(Quantity::Delivered)
        .map_or(Insertion { db: 0.0, u: 0.0 }, |o| Insertion {
            db: -o.mean + 0.0,
            u: o.u,
        })
}

/// Hands back what a build noted, and its inputs.
fn finish(mut b: Build<'_, '_>, assumed: &mut Assumptions, out: &mut Vec<Diagnostic>) -> Inputs {
    *assumed = std::mem::take(&mut b.assumed);
    out.append(&mut b.diags);
    std::mem::take(&mut b.wiring.inputs)
}

/// What makes the elements of a bench: there is no station round it.
fn build<'m, 'o>(env: &'m Env, point: &'o Point, assumed: &mut Assumptions) -> Build<'m, 'o> {
    Build {
        station: None,
        env,
        point,
        wiring: crate::wiring::Wiring::default(),
        backwards: false,
        reversed: false,
        receiving: false,
        alike: None,
        assumed: std::mem::take(assumed),
        diags: Vec::new(),
    }
}

/// Impedance of the cable and whether its figures are maxima.
fn facts(e: &Element<'_>) -> (f64, bool) {
    match &e.line {
        Some(l) => (
            l.at.z0,
            matches!(l.cable.meta.bound, Some((Bound::Maximum, _))),
        ),
        None => (R0, false),
    }
}

/// Loss of one kind of adapter or join and its standard uncertainty, dB.
pub(super) fn join_loss<'m>(
    count: u32,
    name: &'m Name,
    point: &Point,
    env: &'m Env,
    assumed: &mut Assumptions,
    out: &mut Vec<Diagnostic>,
) -> Option<(f64, f64)> {
    let mut b = build(env, point, assumed);
    let e = b.joins(count, name, name.loc);
    let inputs = finish(b, assumed, out);
    let u = matched_loss(&[e.net], point.hz, &inputs).1;
    e.complete.then_some((e.loss_db, u))
}
