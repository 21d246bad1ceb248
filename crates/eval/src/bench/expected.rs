//! What a piece should lose: its cable at the temperature of the bench, with its joins.

use core::f64::consts::TAU;

use downlead_base::Diagnostic;
use downlead_physics::line::wavelength;
use downlead_physics::mismatch::{reflection, reflection_of_line};
use downlead_physics::net::evaluate::{Quantity, matched_loss};
use downlead_physics::net::input::{Input, Inputs};
use downlead_physics::net::part::{End, Load, Part as Net};
use downlead_physics::net::{self, Fields, Network, R0};
use downlead_quantity::from_db;
use downlead_station::Env;
use downlead_station::model::{Bound, LineLength, Name};
use downlead_station::session::Piece;

use super::one_port::spread;
use super::result::Expected;
use crate::assume::{Assumed, Assumptions};
use crate::element::{Build, Element};
use crate::point::{Point, pick};

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
    let (z0, maximum) = facts(&line);
    let of_line = downlead_physics::cx::abs(reflection(
        num_complex::Complex64::new(z0, 0.0),
        num_complex::Complex64::new(R0, 0.0),
    ));
    let stated = stated_reflection(piece, point, env);
    // what was measured of the piece holds its joins and its impedance already
    let own = stated.unwrap_or_else(|| libm::hypot(of_line, joins_reflection(piece, point, env)));
    if of_line * of_line >= REFLECTIONS_MATTER {
        exact_line(&line, &mut b.assumed);
    }
    let whole = of_both_faces(&line, piece, of_line, point.hz);
    let mut b = finish(b, assumed, out);
    if !complete {
        return None;
    }
    let u_joins_db = matched_loss(&joins, point.hz, &b).1;
    let mut parts = vec![std::mem::replace(&mut line.net, Net::Several(Vec::new()))];
    parts.extend(joins);
    let (matched_db, u_matched_db) = matched_loss(&parts, point.hz, &b);
    let all = if of_line > 0.0 || stated.is_some() {
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
        inserted: stated.unwrap_or_else(|| {
            let a = from_db(-matched_db);
            let joins = joins_reflection(piece, point, env);
            let joins = joins * libm::sqrt(1.0 + a * a);
            libm::hypot(whole, joins)
        }),
    })
}

/// Size of the reflection of a line with both its faces, of which each reflects `face`.
fn of_both_faces(e: &Element<'_>, piece: &Piece, face: f64, hz: f64) -> f64 {
    let Some(at) = e.line.as_ref().map(|l| l.at) else {
        return face;
    };
    let u_v = at.u_velocity / at.velocity;
    let (phase, u) = match piece.line().and_then(|l| l.length) {
        Some(LineLength::Metres(m)) if !at.velocity_assumed => {
            let phase = 2.0 * TAU * m.value / wavelength(hz, at.velocity);
            (phase, phase * libm::hypot(m.u / m.value, u_v))
        }
        Some(LineLength::Wavelengths { length, at_hz }) => {
            let turns = 2.0 * TAU * hz / at_hz.unwrap_or(hz);
            (turns * length.value, turns * length.u)
        }
        _ => (0.0, f64::INFINITY),
    };
    reflection_of_line(face, e.loss_db, phase, u)
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
        foreign: false,
        alike: None,
        assumed: std::mem::take(assumed),
        diags: Vec::new(),
    }
}

/// Size of the reflection of a piece's ends, of its `swr` or `return-loss` on a band; the root of
/// the mean square over its ±. None where it states none there.
fn stated_reflection(piece: &Piece, point: &Point, env: &Env) -> Option<f64> {
    pick(&piece.line()?.swr, point, env).map(|p| spread(&p.value))
}

/// Size of what the joins of a piece reflect at each of its ends: bumps and SWR of pairs of which
/// half stand at either end, their phases not known.
fn joins_reflection(piece: &Piece, point: &Point, env: &Env) -> f64 {
    let squares = piece.connectors.iter().filter_map(|(n, name)| {
        let c = env.connector(&name.text)?;
        let one = match (&c.bump, &c.swr) {
            (Some((z, l)), _) => downlead_physics::connector::Bump {
                z_ohm: z.value,
                electrical_m: l.value,
            }
            .gamma(point.hz, R0),
            (None, Some(swr)) => spread(swr),
            (None, None) => return None,
        };
        Some(f64::from(n.div_ceil(2)) * one * one)
    });
    libm::sqrt(squares.sum())
}

/// Product of the reflections at both ends of a piece from which its electrical length matters:
/// they change the loss by up to 0.017 dB then, 8.7 dB times twice the product (first order of the
/// mismatch; our choice of a size).
const REFLECTIONS_MATTER: f64 = 0.001;

/// Lists what a piece that is not 50 ohm takes as exact: where its reflections add up depends on its
/// velocity factor and impedance.
fn exact_line(e: &Element<'_>, assumed: &mut Assumptions) {
    let Some(l) = &e.line else { return };
    if !l.at.velocity_assumed && l.at.u_velocity == 0.0 {
        assumed.add(Assumed::VelocityExact, e.who);
    }
    if !l.at.z0_assumed && l.at.u_z0 == 0.0 {
        assumed.add(Assumed::ImpedanceExact, e.who);
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
