//! What a piece should lose: its cable at the temperature of the bench, with its joins.

use downlead_base::Diagnostic;
use downlead_physics::mismatch::{mismatch_loss, reflection};
use downlead_physics::uncertainty::mismatch_known;
use downlead_station::Env;
use downlead_station::model::{Bound, Name};
use downlead_station::session::Piece;

use super::result::Expected;
use crate::assume::Assumptions;
use crate::cascade::R0;
use crate::cause::Budget;
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
    let line = b.part(&piece.part, None, piece.loc, 0);
    let mut joins = Budget::default();
    let (mut joins_db, mut complete) = (0.0, line.complete);
    for (n, name) in &piece.connectors {
        let e = b.joins(*n, name, piece.loc);
        joins_db += e.loss_db;
        complete &= e.complete;
        for (c, u) in e.causes {
            joins.add(c, u);
        }
    }
    *assumed = b.assumed;
    out.append(&mut b.diags);
    if !complete {
        return None;
    }
    let mut cable = Budget::default();
    for (c, u) in &line.causes {
        cable.add(c.clone(), *u);
    }
    let (z0, maximum) = facts(&line);
    let own = downlead_physics::cx::abs(reflection(
        num_complex::Complex64::new(z0, 0.0),
        num_complex::Complex64::new(R0, 0.0),
    ));
    let mut u2 = cable.standard() * cable.standard() + joins.standard() * joins.standard();
    let mut db = line.loss_db + joins_db;
    if own > 0.0 {
        // both steps of impedance reflect; how the two reflections meet is not known
        db += 2.0 * mismatch_loss(own);
        let back = own * downlead_quantity::from_db(-line.loss_db);
        let u = mismatch_known(own, back);
        u2 += u * u;
    }
    Some(Expected {
        db,
        u_db: libm::sqrt(u2),
        joins_db,
        u_joins_db: joins.standard(),
        maximum,
        reflection: own,
    })
}

/// What makes the elements of a bench: there is no station round it.
fn build<'m, 'o>(env: &'m Env, point: &'o Point, assumed: &mut Assumptions) -> Build<'m, 'o> {
    Build {
        station: None,
        env,
        point,
        pieces: Vec::new(),
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
    *assumed = b.assumed;
    out.append(&mut b.diags);
    let mut u = Budget::default();
    for (c, v) in e.causes {
        u.add(c, v);
    }
    e.complete.then_some((e.loss_db, u.standard()))
}
