//! Frequencies inside a band at which other clauses begin to hold or cease to.
//!
//! A band that is a range is evaluated at its ends and its middle. A clause whose own range lies
//! between those would never be judged, so its edges are evaluated too, and so is the middle of each
//! stretch that no clause of a set covers, or that is not known to be allocated.

use downlead_station::Env;
use downlead_station::model::{Clause, Direction, RuleSet, Station, Under};

use super::matching::{covers, in_range, spans};
use crate::point::Point;

/// Part of a range where a clause has an edge.
const EDGE: &str = "edge";
/// Part of a range between clauses, where none holds.
const GAP: &str = "gap";
/// Frequencies that differ by less are one, relative.
const SAME: f64 = 1e-9;

/// The points of a transmit chain, and in each band that is a range those that the clauses of the
/// station's licences and rules ask for.
pub(crate) fn with_edges(
    points: Vec<Point>,
    station: Option<&Station>,
    direction: Direction,
    env: &Env,
) -> Vec<Point> {
    let sets: Vec<(&Under, &RuleSet)> = station
        .filter(|_| direction == Direction::Transmit)
        .into_iter()
        .flat_map(|st| &st.under)
        .filter_map(|u| Some((u, env.rule_set(&u.name.text)?)))
        .collect();
    if sets.is_empty() {
        return points;
    }
    let mut out: Vec<Point> = Vec::with_capacity(points.len());
    for p in points {
        let high = p.part == Some("high");
        out.push(p);
        // low, middle and high of a range follow each other
        if high && let [.., low, _, _] = &out[..] {
            let first = out.len() - 3;
            let more: Vec<Point> = sets
                .iter()
                .flat_map(|(u, set)| inside(u, set, low, out[first + 2].hz, env))
                .collect();
            for m in more {
                let known = |o: &Point| (o.hz / m.hz - 1.0).abs() < SAME;
                if !out[first..].iter().any(known) {
                    out.push(m);
                }
            }
            out[first..].sort_by(|a, b| a.hz.total_cmp(&b.hz));
        }
    }
    out
}

/// What one set asks for between the ends of a band.
fn inside(under: &Under, set: &RuleSet, low: &Point, high: f64, env: &Env) -> Vec<Point> {
    let mine = |c: &&Clause| {
        c.is_limit()
            && (under.classes.is_empty()
                || c.classes.is_empty()
                || c.classes
                    .iter()
                    .any(|n| under.classes.iter().any(|k| k.text == n.text)))
    };
    let clauses: Vec<&Clause> = set.clauses.iter().filter(mine).collect();
    let at = |hz: f64, part| Point {
        hz,
        part: Some(part),
        ..low.clone()
    };
    let on = clauses.iter().map(|c| &c.on).chain(&under.allocated);
    let mut edges: Vec<f64> = on
        .flat_map(|on| spans(on, env))
        .flat_map(|(from, to)| [from, to])
        .collect();
    edges.retain(|e| *e > low.hz * (1.0 + SAME) && *e < high * (1.0 - SAME));
    edges.sort_by(f64::total_cmp);
    edges.dedup_by(|a, b| (*a / *b - 1.0).abs() < SAME);
    let mut out: Vec<Point> = edges.iter().map(|e| at(*e, EDGE)).collect();
    let ends = [low.hz].into_iter().chain(edges.iter().copied());
    let stretches = ends.zip(edges.iter().copied().chain([high]));
    for (from, to) in stretches.filter(|_| !edges.is_empty()) {
        let middle = at(0.5 * (from + to), GAP);
        let here = |c: &&&Clause| in_range(c, &middle, env);
        let open = clauses.iter().filter(here).any(|c| c.allocated)
            && !under.allocated.iter().any(|a| covers(a, &middle, env));
        if open || !clauses.iter().any(|c| in_range(c, &middle, env)) {
            out.push(middle);
        }
    }
    out
}
