//! Connectors and adapters of a chain.

use downlead_base::{Diagnostic, Loc, codes};
use downlead_quantity::{db, frequency, number};
use downlead_station::Env;
use downlead_station::model::{Part, PartData, PartKind};

use crate::point::Point;
use crate::walk::Stop;

pub(super) fn adapters(env: &Env, stops: &[Stop<'_>], points: &[Point], out: &mut Vec<Diagnostic>) {
    let mut row: Vec<(&str, Loc)> = Vec::new();
    let end = [None];
    let kinds = stops
        .iter()
        .filter(|s| !matches!(s, Stop::Node(..)))
        .map(|s| match s {
            Stop::Part { part, loc, .. } if part.kind == PartKind::Adapter => match &part.data {
                PartData::Connector(_, n) => Some((&*n.text, *loc)),
                _ => None,
            },
            _ => None,
        });
    for a in kinds.chain(end) {
        if let Some(a) = a {
            row.push(a);
            continue;
        }
        if row.len() >= 3 {
            let hz = points.iter().map(|p| p.hz).fold(0.0, f64::max);
            let loss: f64 = row
                .iter()
                .filter_map(|(n, _)| Some(env.connector(n)?.loss?.at(hz).value))
                .sum();
            out.push(
                Diagnostic::new(
                    &codes::ADAPTERS_IN_SERIES,
                    row[2].1,
                    format!(
                        "{} adapters in a row lose {} at {}, and are {} pairs that can work loose.",
                        row.len(),
                        db(loss),
                        frequency(hz),
                        2 * row.len()
                    ),
                )
                .at("one after the other")
                .also(row[0].1, "the first")
                .help(
                    "A short `jumper` or `tail` with the right ends does the same with two pairs.",
                ),
            );
        }
        row.clear();
    }
}

pub(super) fn connectors(
    env: &Env,
    part: &Part,
    loc: Loc,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) {
    if let PartData::Connector(_, name) = &part.data {
        connector_at(env, &name.text, loc, point, out);
    }
}

pub(super) fn connector_at(
    env: &Env,
    name: &str,
    loc: Loc,
    point: &Point,
    out: &mut Vec<Diagnostic>,
) {
    let Some(c) = env.connector(name) else { return };
    if let Some((z, l)) = c.bump {
        if point.hz > 150e6 {
            let bump = downlead_physics::connector::Bump {
                z_ohm: z.value,
                electrical_m: l.value,
            };
            let g = bump.gamma(point.hz, 50.0);
            let mut d = Diagnostic::new(
                &codes::UHF_CONNECTOR_HIGH,
                loc,
                format!(
                    "`{name}` is a piece of line of {} ohm: SWR {} and {} reflected at {}.",
                    number(z.value, 1),
                    number(downlead_physics::mismatch::swr_from_gamma(g), 2),
                    db(bump.loss(point.hz, 50.0)),
                    frequency(point.hz)
                ),
            )
            .at("above 150 MHz")
            .help("Use N or another family of constant impedance.");
            if point.hz > 500e6 {
                d.severity = downlead_base::Severity::Error;
            }
            out.push(d);
        }
    } else if let Some(limit) = c.limit_hz.filter(|l| point.hz > *l) {
        out.push(
            Diagnostic::new(
                &codes::BEYOND_RANGE,
                loc,
                format!(
                    "`{name}` is made for up to {}; {} is above.",
                    frequency(limit),
                    frequency(point.hz)
                ),
            )
            .at("above its highest frequency"),
        );
    }
    if !c.built_in && point.hz < 500e6 {
        let one = c.loss.map_or(0.0, |l| l.at(point.hz).value);
        if one > 0.15 {
            out.push(
                Diagnostic::new(
                    &codes::CONNECTOR_LOSS_HIGH,
                    loc,
                    format!(
                        "{} for a pair of `{name}` at {} is {} times the usual {}; overstated loss hides an exceeded limit.",
                        db(one),
                        frequency(point.hz),
                        number(one / (0.05 * libm::sqrt(point.hz / 1e9)), 0),
                        db(0.05 * libm::sqrt(point.hz / 1e9))
                    ),
                )
                .at("more than a good pair loses"),
            );
        }
    }
}
