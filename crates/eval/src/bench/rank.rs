//! The pieces of a band by loss per length.

use std::collections::HashMap;

use downlead_physics::measure::{Source, ranking_with};
use downlead_station::session::Session;

use super::result::BenchCell;

/// Cells from `from` on by loss per length, with groups of those that cannot be distinguished. What two
/// of them share (the baseline, an adapter, kinds of joins) counts once, in their difference.
pub(super) fn ranked(s: &Session, cells: &[BenchCell], from: usize) -> Box<[(usize, usize)]> {
    let with: Vec<&BenchCell> = cells[from..]
        .iter()
        .filter(|c| c.per_length.is_some())
        .collect();
    let values: Vec<(f64, f64)> = with
        .iter()
        .filter_map(|c| c.per_length)
        .map(|p| (p.db_per_m, 2.0 * p.u_db_per_m))
        .collect();
    let apart = |a: usize, b: usize| {
        let (ua, ub) = (values[a].1, values[b].1);
        libm::sqrt((ua * ua + ub * ub - 8.0 * covariance(s, with[a], with[b])).max(0.0))
    };
    let at: Vec<usize> = (from..cells.len())
        .filter(|i| cells[*i].per_length.is_some())
        .collect();
    ranking_with(&values, apart)
        .into_iter()
        .map(|r| (at[r.item], r.group))
        .collect()
}

/// Covariance of the losses per length of two pieces, (dB/m)² (GUM, JCGM 100:2008, 5.2.2).
fn covariance(s: &Session, a: &BenchCell, b: &BenchCell) -> f64 {
    let metres = |c: &BenchCell| {
        s.pieces[c.piece]
            .metres()
            .map_or(f64::INFINITY, |m| m.value)
    };
    // a loss of few readings has its uncertainty widened by k
    let scale = 0.25 * a.measured.k * b.measured.k / (metres(a) * metres(b));
    let theirs: HashMap<Source, f64> = b.budget.iter().map(|t| (t.source, t.u_db)).collect();
    let readings: f64 = a
        .budget
        .iter()
        .filter(|t| !matches!(t.source, Source::Other(_)))
        .map(|t| t.u_db * theirs.get(&t.source).copied().unwrap_or(0.0))
        .sum();
    let joins = match (
        &s.pieces[a.piece].connectors[..],
        &s.pieces[b.piece].connectors[..],
    ) {
        // joins of one kind are off alike
        ([(_, x)], [(_, y)]) if x.text == y.text => {
            let u = |c: &BenchCell| c.expected.map_or(0.0, |e| e.u_joins_db) / metres(c);
            u(a) * u(b)
        }
        _ => 0.0,
    };
    scale * readings + joins
}
