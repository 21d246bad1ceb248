//! Checks of chains, stations and definitions that are not results: shape, plausibility, habits
//! that lead astray.

mod age;
mod definition;
mod electrical;
mod figures;
mod fittings;
mod logs;
mod pass_band;
mod passive;
mod per_point;
mod protectors;
mod station;
mod swr;

use downlead_base::{Diagnostic, Loc};
use downlead_station::model::Part;

use crate::chain::Cx;
use crate::point::Point;
use crate::walk::Stop;
use figures::{bases, lengths, many_bands, percents};
use fittings::{adapters, connector_at, connectors};
use pass_band::pass_band;
use protectors::protectors;

pub(crate) use definition::{cable, replaced};
pub(crate) use electrical::electrical;
pub(crate) use logs::logs;
pub(crate) use per_point::PerPoint;
pub(crate) use station::station;
pub(crate) use swr::swr_cost;

/// Checks of one chain over all its frequencies.
pub(crate) fn chain(cx: &Cx<'_>, stops: &[Stop<'_>], points: &[Point], out: &mut Vec<Diagnostic>) {
    let parts: Vec<(&Part, Option<&str>, Loc)> = stops
        .iter()
        .filter_map(|s| match s {
            Stop::Part {
                part, port, loc, ..
            } => Some((*part, port.map(|p| &*p.text), *loc)),
            _ => None,
        })
        .collect();
    lengths(cx.chain, &parts, out);
    percents(&parts, out);
    bases(cx, &parts, out);
    many_bands(&parts, points, out);
    adapters(cx.env, stops, points, out);
    protectors(stops, cx.direction, out);
    let mut found = PerPoint::default();
    for p in points {
        let mut here = Vec::new();
        for (part, port, loc) in &parts {
            pass_band(cx.env, part, *port, *loc, p, &mut here);
            connectors(cx.env, part, *loc, p, &mut here);
            passive::passive(cx.env, part, *port, *loc, p, &mut here);
        }
        if let Some(name) = cx.station.and_then(|s| s.joins.as_ref()) {
            connector_at(cx.env, &name.text, name.loc, p, &mut here);
            passive::pair(cx.env, name, name.loc, p, &mut here);
        }
        found.add(p, here);
    }
    found.finish(out);
}
